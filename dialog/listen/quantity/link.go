package quantity

// link is how two neighbouring items are joined.
type link uint8

const (
	apart  link = iota
	beside      // nothing between
	and         // "and", ",", "&"
	per         // "per", "/", "each"
	over        // "over", "across", "on"
	to          // "to", "to the"
	within      // "in"
	forOf       // "for"
	is          // "=", "is", "measure"
	colon       // ":"
)

// maxLink is how many tokens may stand between two items that are joined.
const maxLink = 7

// linkOf reads the tokens from i to j between two items. The word that joins
// comes last, but for "the" and its like; what is before it must be words
// that say nothing more ("40 stitches of my swatch measure 14.2 cm").
func (s *scanner) linkOf(i, j int) link {
	if i == j {
		return beside
	}
	if j-i > maxLink || j < i {
		return apart
	}
	for j-1 > i && s.at(j-1).isWord("the", "each", "every", "a", "an", "exactly", "my", "out", "at") {
		j--
	}
	if j-2 >= i && s.at(j-1).is("to") && s.at(j-2).isWord("come", "comes", "came") {
		j--
	}
	l := joint(s.at(j - 1))
	if l == and && j-i == 2 && joint(s.at(i)) == and {
		return and // ", and"
	}
	for k := i; k < j-1; k++ {
		if !filler(s.at(k)) {
			return apart
		}
	}
	return l
}

// joint is how the word or mark t joins.
func joint(t *token) link {
	switch t.text {
	case "and", ",", "&", ";", "+":
		return and
	case "per", "/", "each", "every", "@":
		return per
	case "over", "across", "on", "along":
		return over
	case "to":
		return to
	case "in":
		return within
	case "for":
		return forOf
	case ":":
		return colon
	case "=", "is", "are", "was", "were", "measure", "measures", "measured", "measuring", "make", "makes", "made",
		"give", "gives", "gave", "span", "spans", "cover", "covers", "covered", "equals", "equal", "take", "takes",
		"took", "has", "come", "comes", "came":
		return is
	}
	return apart
}

// filler knows the words that may stand between a count and what joins it to
// a length without changing what is said.
func filler(t *token) bool {
	return t.isWord("of", "in", "on", "my", "the", "this", "a", "that", "swatch", "sample", "square", "piece", "knitting",
		"fabric", "plain", "measured", "together", "wide", "across", "high", "deep", "there", "i", "we", "get", "got",
		"have", "count", "knit") || t.is(",")
}

// fillers reports that only such words stand between i and j.
func (s *scanner) fillers(i, j int) bool {
	if j-i > maxLink {
		return false
	}
	for ; i < j; i++ {
		if !filler(s.at(i)) && !s.at(i).isWord("is", "are") && !s.at(i).is(":") {
			return false
		}
	}
	return true
}

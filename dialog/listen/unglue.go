package listen

import (
	"regexp"
	"strings"

	"foldrow/dialog/listen/quantity"
)

var ribSaid = regexp.MustCompile(`(?:^|[ =])([1-5]|one|two|three|four|five)( and | to | on | plus | an' |/| / |:| : |&| & | by )([1-5]|one|two|three|four|five)(?:$|[ ,.!])`)

// ribSides counts the columns by the side their stitches are worked on, as many
// tongues do: "two right, two left".
var ribSides = regexp.MustCompile(`\b([1-5]|one|two|three|four|five) (?:stitch(?:es)? )?(?:that |which )?(?:sticks? |stands? |comes? )?(?:right|plain|out|up)s?,?(?: and)?(?: then)?(?: the next)? ([1-5]|one|two|three|four|five) (?:stitch(?:es)? )?(?:that |which )?(?:goes |go |lies |lie |sinks? )?(?:left|in|down)s?\b`)

// ribPair is a rib said with "and" beside another: "one-and-one or two-and-two".
var ribPair = regexp.MustCompile(`\b(one|two|three|four|five)[- ]and[- ](one|two|three|four|five)(?: or | ribb?(?:s|ing|ings)?\b)`)

// unglue sets the blanks that a thumb left out: "neck42cm rib2x2" is "neck
// 42cm rib 2x2", "40vm" is "40cm". Only a word that rules/ knows is parted
// from figures, so needles (L55) and written patterns (k2p2) stay whole.
func (x *Lexicon) unglue(text string) string {
	var b strings.Builder
	done := 0
	for i := 0; i < len(text); {
		from, to := letterRun(text, i)
		if from == to {
			break
		}
		i = to
		before, after := from > 0 && digit(text[from-1]), to < len(text) && digit(text[to])
		if !before && !after {
			continue
		}
		w := lower(text[from:to])
		if s, ok := x.slips[w]; ok && before && !after && unitWord(s) {
			b.WriteString(text[done:from] + s)
			done = to
			continue
		}
		if len(w) < 2 || !x.knows(token{text: w, stem: stem(w)}) || before && unitWord(w) && !after {
			continue
		}
		b.WriteString(text[done:from])
		if before && !unitWord(w) {
			b.WriteByte(' ')
		}
		b.WriteString(text[from:to])
		if after {
			b.WriteByte(' ')
		}
		done = to
	}
	if done == 0 {
		return text
	}
	return b.String() + text[done:]
}

// ribSigns writes a rib that is said with other signs as one: "two and two"
// or "2/1" where the rib is asked for, "ribs 2/1" anywhere.
func ribSigns(text string, open bool) string {
	low := lower(text)
	if open {
		if at := ribSides.FindStringSubmatchIndex(low); at != nil {
			return text[:at[2]] + figureOf(low[at[2]:at[3]]) + "x" + figureOf(low[at[4]:at[5]]) + text[at[1]:]
		}
	}
	if strings.Contains(low, "rib") {
		for at := ribPair.FindStringSubmatchIndex(low); at != nil; at = ribPair.FindStringSubmatchIndex(low) {
			text = text[:at[2]] + figureOf(low[at[2]:at[3]]) + "x" + figureOf(low[at[4]:at[5]]) + text[at[5]:]
			low = lower(text)
		}
	}
	if !open && !strings.Contains(low, "rib") && !strings.Contains(low, "k:p") {
		return text
	}
	at := ribSaid.FindStringSubmatchIndex(low)
	if at == nil || mixedNumber(low, at[2], at[7]) {
		return text
	}
	lead := strings.TrimSpace(low[:at[2]])
	named := false
	for _, w := range []string{"rib", "ribs", "ribbing", "k:p =", "rib is", "rib of", "ribs of"} {
		named = named || strings.HasSuffix(lead, w)
	}
	if !named && !(open && len(strings.Fields(lead)) <= 5) {
		return text
	}
	return text[:at[2]] + figureOf(low[at[2]:at[3]]) + "x" + figureOf(low[at[6]:at[7]]) + text[at[7]:]
}

// mixedNumber: the pair from..to is the fraction of "16 1/4 inches".
func mixedNumber(text string, from, to int) bool {
	before := strings.TrimRight(text[:from], " -&")
	before = strings.TrimRight(strings.TrimSuffix(before, " and"), " ")
	after := strings.TrimLeft(text[to:], " ")
	return strings.Contains(text[from:to], "/") && (before != "" && before[len(before)-1] >= '0' && before[len(before)-1] <= '9' ||
		strings.HasPrefix(after, "in") || strings.HasPrefix(after, "\"") || strings.HasPrefix(after, "of"))
}

func figureOf(w string) string {
	for n, name := range []string{"one", "two", "three", "four", "five"} {
		if w == name {
			return string(rune('1' + n))
		}
	}
	return w
}

// letterRun is the next run of letters in text from i on.
func letterRun(text string, i int) (from, to int) {
	letter := func(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }
	for i < len(text) && !letter(text[i]) {
		i++
	}
	from = i
	for i < len(text) && letter(text[i]) {
		i++
	}
	return from, i
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

// unitWord reports whether a number right before w has it as its unit, or
// makes a rib or a place of it.
func unitWord(w string) bool {
	switch w {
	case "x", "by", "st", "nd", "rd", "th", "k", "p":
		return true
	}
	qs := quantity.Scan("2" + w)
	return len(qs) == 1 && qs[0].Unit != quantity.None
}

// parted is a word that rules/ does not know as the two known words it was
// run together from: "whatif", "ifi".
func (x *Lexicon) parted(w string) (string, bool) {
	if len(w) < 3 || len(w) > 16 || !letters(w) {
		return "", false
	}
	found := ""
	for i := 1; i < len(w); i++ {
		a, b := w[:i], w[i:]
		if !x.part(a) || !x.part(b) {
			continue
		}
		if found != "" {
			return "", false
		}
		found = a + " " + b
	}
	return found, found != ""
}

func (x *Lexicon) part(w string) bool {
	switch w {
	case "i", "a", "in", "it", "if", "is", "at", "to", "of", "on", "by", "my", "me", "we", "do", "so", "up", "no", "be", "or", "an":
		return true
	}
	if len(w) < 3 {
		return false
	}
	if x.whole[w] {
		return true
	}
	for _, s := range []*shelf{x.howto, x.trouble, x.steps} {
		if s.whole[w] {
			return true
		}
	}
	return false
}

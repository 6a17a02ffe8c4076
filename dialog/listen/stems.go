package listen

import "strings"

// stems gives the stems of phrases in rules/. The same few thousand words stand
// there again and again, so each is stemmed once and its answer shared. It is
// for one goroutine; what it gives must not be written to.
type stems struct {
	words map[string][]string
	// offered are the words of phrasings that spelling knows already.
	offered map[string]bool
	elems   chunk[elem]
	alts    chunk[[]string]
	kept    chunk[string]
	named   chunk[name]
}

func newStems(size int) *stems {
	return &stems{words: make(map[string][]string, size), offered: make(map[string]bool, size/2)}
}

// of is the stems of a phrase, its contractions opened.
func (t *stems) of(phrase string) []string {
	if !strings.Contains(phrase, " ") {
		return t.word(phrase)
	}
	var room [16]string
	out := room[:0]
	for w := range strings.FieldsSeq(phrase) {
		out = append(out, t.word(w)...)
	}
	return t.kept.keep(out)
}

// word is the stems of one word: more than one of a contraction, none of "".
func (t *stems) word(w string) []string {
	if have, ok := t.words[w]; ok {
		return have
	}
	out := stemsOf(w)
	t.words[w] = t.kept.keep(out)
	return t.words[w]
}

// chunk keeps many short lists in few long ones: some thousand are made at a
// start, and each by itself would be as much work again.
type chunk[T any] struct{ free []T }

func (c *chunk[T]) keep(list []T) []T {
	n := len(list)
	if n == 0 {
		return nil
	}
	if len(c.free) < n {
		c.free = make([]T, max(n, 256))
	}
	kept := c.free[:n:n]
	c.free = c.free[n:]
	copy(kept, list)
	return kept
}

// stemsOf is the stems of a phrase by itself.
func stemsOf(phrase string) []string {
	var out []string
	for w := range strings.FieldsSeq(phrase) {
		for open := range strings.FieldsSeq(openContraction(bare(w))) {
			out = append(out, stem(open))
		}
	}
	return out
}

// bare is a word of rules/ in lower case without the marks around it. Nearly
// all are bare already, and trimming by a set of marks costs more than looking.
func bare(w string) string {
	letter := func(c byte) bool { return c >= 'a' && c <= 'z' || c >= '0' && c <= '9' }
	if w == "" || letter(w[0]) && letter(w[len(w)-1]) && strings.ToLower(w) == w {
		return w
	}
	return strings.ToLower(strings.Trim(w, ".,?!'\"()"))
}

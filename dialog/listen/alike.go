package listen

import "strings"

// leastAlike is the weight and the share of a line that a card must have in
// common with it to be offered where the line was not understood.
const (
	leastAlikeMass  = 3.6
	leastAlikeShare = 0.3
)

// alike adds to a line that was not understood the titles of the technique and
// the trouble nearest to it, each of which leads to its card if it is typed.
func (x *Lexicon) alike(m Meaning, clean string, ctx Context) Meaning {
	if m.Kind != Unclear || m.Problem.Code != "not-understood" || m.HasFig || ctx.Open != "" && ctx.Open != "keep" {
		return m
	}
	l := x.line(clean)
	if fixed := x.respell(l); fixed != nil {
		l = fixed
	}
	trouble, _ := x.trouble.best(l)
	way, _ := x.howto.best(l)
	near := []found{trouble, way}
	if way.score() > trouble.score() {
		near = []found{way, trouble}
	}
	for _, f := range near {
		if f.mass < leastAlikeMass || f.share < leastAlikeShare || f.cover < 0.45 {
			continue
		}
		title := x.howto.titles[f.card]
		if title == "" {
			title = x.trouble.titles[f.card]
		}
		title = strings.ToLower(title)
		if got := x.readLine(title, ctx); got.Card == f.card && (got.Kind == HowTo || got.Kind == Trouble) {
			m.Alike = append(m.Alike, title)
		}
	}
	return m
}

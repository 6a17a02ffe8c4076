package listen

import (
	"strconv"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// pickUp reads the edge that stitches are picked up along.
func (r *reading) pickUp(p *Part) bool {
	r.length(p)
	p.Bare = strings.Contains(r.l.text, "without the neckband") || strings.Contains(r.l.text, "with the neckband") || strings.Contains(r.l.text, "neckband included")
	edge := r.says("front", "edge", "ratio") || strings.Contains(r.l.text, "pick up") || strings.Contains(r.l.text, "pick-up")
	if r.says("dropped", "neck", "neckline") && !r.says("front", "ratio") || !edge {
		return false
	}
	return p.Length.Sign() > 0 || p.Rows > 0 || r.says("ratio", "many")
}

// buttonholes reads how many holes of which size lie over how many stitches.
func (r *reading) buttonholes(p *Part) bool {
	r.length(p)
	for _, i := range r.l.quantities() {
		n, unit := r.whole(i), r.l.tokens[i].q.Unit
		switch {
		case n == 0 || unit == quantity.Row:
		case oneOf(r.near(i, 1), []string{"buttonhole", "button", "hole"}):
			p.Holes = n
		case r.wordBefore(i, "over", "on", "across", "along", "in", "band"):
			p.Stitches = n
		case r.wordBefore(i, "margin", "end", "edge") || r.wordAfter(i, "margin"):
			p.Margin = n
		case r.wordBefore(i, "of") || r.wordAfter(i, "wide", "each", "apiece"):
			p.Size = n
		case p.Stitches == 0 && n >= 20:
			p.Stitches = n
		}
	}
	if r.says("no", "without") && r.says("margin") {
		p.Margin = 0
	}
	if !r.says("buttonhole", "hole") && r.says("neck", "neckline", "head", "gauge") {
		return false
	}
	where := p.Stitches > 0 || p.Length.Sign() > 0
	return p.Holes > 0 && (where || r.says("buttonhole", "hole", "space", "where")) || where && r.says("buttonhole")
}

// buttonSize reads the button for which overlap and hole are asked.
func (r *reading) buttonSize(p *Part) bool {
	r.length(p)
	if p.Button.Sign() == 0 {
		p.Button, p.Length = p.Length, engine.Num{}
	}
	return p.Button.Sign() > 0
}

// countWords are the words of the yarn counts, longest first where one holds
// another.
func countWords() []struct {
	word  string
	count engine.YarnCount
} {
	return []struct {
		word  string
		count engine.YarnCount
	}{
		{"dtex", engine.Decitex}, {"decitex", engine.Decitex}, {"tex", engine.TexCount}, {"denier", engine.Denier},
		{"nek", engine.WorstedNeK}, {"worsted", engine.WorstedNeK}, {"nm", engine.MetricCount}, {"metric", engine.MetricCount},
		{"ne", engine.CottonCount}, {"cotton", engine.CottonCount}, {"woollen", engine.WoollenSkein}, {"yorkshire", engine.WoollenSkein},
		{"linen", engine.LinenLea}, {"lea", engine.LinenLea}, {"typp", engine.Typp},
	}
}

// yarnCount reads a yarn told by one count and asked for in another.
func (r *reading) yarnCount(p *Part) bool {
	from, to := r.l.text, ""
	for _, sep := range []string{" in ", " as ", " into ", " to "} {
		if i := strings.LastIndex(r.l.text, sep); i >= 0 {
			if c := countNamed(r.l.text[i+len(sep):]); c != "" {
				from, to = r.l.text[:i], r.l.text[i+len(sep):]
				break
			}
		}
	}
	p.To = countNamed(to)
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if m, ok := q.MetresPer100g(); ok && q.Problem == "" && q.Unit != quantity.Gram && r.asks() && !r.says("if", "band", "need") {
			p.Count, p.CountValue, p.Plies = engine.MetresPer, m, 1
			if q.Unit == quantity.Yard {
				p.Count, p.CountValue = engine.YardsPer100, m.Div(engine.Frac(9144, 10000))
			} else if p.To == "" {
				p.To = engine.TexCount
			}
			return true
		}
	}
	p.Count = countNamed(from)
	p.CountValue, p.Plies = countFigure(from)
	return p.Count != "" && p.Count != engine.MetresPer && p.CountValue.Sign() > 0
}

// countNamed is the count that a text names, "" for none.
func countNamed(text string) engine.YarnCount {
	words := strings.FieldsFunc(text, func(c rune) bool { return c < 'a' || c > 'z' })
	for _, c := range countWords() {
		for _, w := range words {
			if w == c.word {
				return c.count
			}
		}
	}
	for _, w := range words {
		switch {
		case w == "metres" || w == "meters" || w == "metre" || w == "meter" || w == "m":
			return engine.MetresPer
		case (w == "yards" || w == "yd" || w == "yds" || w == "yard") && strings.Contains(text, "100"):
			return engine.YardsPer100
		case w == "yards" || w == "yd" || w == "yds" || w == "yard":
			if strings.Contains(text, "pound") || strings.Contains(text, "lb") {
				return engine.YardsPound
			}
			return engine.YardsOunce
		}
	}
	return ""
}

// countFigure reads "2/24", "24/2" or "28": of two figures the smaller is the
// plies.
func countFigure(text string) (value engine.Num, plies int) {
	for _, w := range strings.Fields(text) {
		w = strings.Trim(w, ",;:?!'s")
		w = strings.TrimLeft(w, "nmek")
		w = strings.TrimRight(w, "nmektx")
		a, b, two := strings.Cut(w, "/")
		x, err := strconv.ParseFloat(a, 64)
		if err != nil || x <= 0 {
			continue
		}
		n, ok := engine.ParseNum(a)
		if !ok {
			continue
		}
		if !two {
			return n, 1
		}
		m, ok := engine.ParseNum(b)
		if !ok || m.Sign() <= 0 {
			continue
		}
		if m.Less(n) {
			n, m = m, n
		}
		return m, max(1, n.Floor())
	}
	return engine.Num{}, 0
}

package answer

import (
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// Fill puts the plan's numbers into a card's text. A paragraph with a
// placeholder that has no value yet is left out, so a card always reads whole.
func (v Voice) Fill(text string, p *engine.Plan) string {
	return fill(onlyFor(text, p), func(name string) string {
		k := engine.Key(rules.PlaceKey(name))
		f, ok := p.Float(k)
		switch {
		case strings.HasPrefix(name, rules.BarePlace) && ok:
			return v.Figure(k, f-p.Overlap().Float())
		case strings.HasPrefix(name, rules.ClosedPlace) && p.Overlap().Sign() == 0:
			return ""
		}
		return v.placeholder(p, k)
	})
}

// onlyFor leaves out the paragraphs that are for other plans: those beginning
// with a condition that does not hold, as "(when layers=2)".
func onlyFor(text string, p *engine.Plan) string {
	if !strings.Contains(text, Condition) {
		return text
	}
	var out []string
	for _, para := range strings.Split(text, "\n\n") {
		cond, rest, has := strings.Cut(strings.TrimPrefix(para, Condition), ") ")
		if !strings.HasPrefix(para, Condition) || !has {
			out = append(out, para)
		} else if holds, _ := condition(cond, p); holds {
			out = append(out, rest)
		}
	}
	return strings.Join(out, "\n\n")
}

// Condition begins a paragraph of a card that is only for some plans.
const Condition = "(when "

// fill replaces {name} by value(name), paragraph by paragraph.
func fill(text string, value func(string) string) string {
	var out []string
	for _, para := range strings.Split(text, "\n\n") {
		if s, ok := fillParagraph(para, value); ok {
			out = append(out, s)
		}
	}
	return strings.Join(out, "\n\n")
}

func fillParagraph(para string, value func(string) string) (string, bool) {
	var b strings.Builder
	for {
		i := strings.IndexByte(para, '{')
		if i < 0 {
			b.WriteString(para)
			return b.String(), true
		}
		j := strings.IndexByte(para[i:], '}')
		if j < 0 {
			b.WriteString(para)
			return b.String(), true
		}
		s := value(para[i+1 : i+j])
		if s == "" {
			return "", false
		}
		b.WriteString(para[:i])
		b.WriteString(s)
		para = para[i+j+1:]
	}
}

// placeholder is a value as cards write it: counts bare ("{layer_rows} rows"),
// measures with their unit.
func (v Voice) placeholder(p *engine.Plan, k engine.Key) string {
	s := v.Value(p, k)
	if k == engine.YokeDecreases && p.YokeDecreases <= 0 {
		return "" // no pairs, or a yoke that is too small
	}
	if k == engine.PickRatio || k == engine.FrontRatio {
		return s // a number that reads as words: "7 of 10 rows"
	}
	switch v.unit(k) {
	case "stitches", "rows", "needles", "columns", "loops", "bumps", "layers", "clicks":
		if f, ok := p.Float(k); ok {
			return trim(f, 0)
		}
	case "":
		if f, ok := p.Float(k); ok {
			return trim(f, 2)
		}
	}
	return s
}

// Warning is one caution of the plan in words.
func (v Voice) Warning(w engine.Warning) string {
	card, ok := v.Book.Card("warnings", w.Code)
	if !ok {
		return w.Code
	}
	words := card.Text
	if paper := card.Section("paper"); paper != "" && v.Paper {
		words = paper
	}
	text := fill(words, func(name string) string {
		if name == "need_for" {
			return yarnFor(w)
		}
		n, ok := w.Values[name]
		if !ok {
			return ""
		}
		switch name {
		case "slit":
			return v.Slit(n.Float())
		case "neck", "choice_neck", "depth", "depth_result", "front_band", "head_opening", "needed", "overlap_low":
			return v.Len(n.Float())
		case "need_low", "need_high", "yarn_left":
			return trim(n.Float(), 0) + " g"
		}
		if name == "button" {
			return trim(n.Float(), 1) + " mm"
		}
		return trim(n.Float(), 2)
	})
	if low, high := w.Values["need_low"], w.Values["need_high"]; trim(low.Float(), 0) == trim(high.Float(), 0) {
		g := trim(low.Float(), 0) + " g"
		text = strings.Replace(text, g+" to "+g, g, 1)
	}
	return text
}

// yarnFor is what the yarn that is needed is for.
func yarnFor(w engine.Warning) string {
	if w.Values["fronts"].Sign() > 0 {
		return "the neckband and both front bands together"
	}
	return "the band"
}

// Cautions is every caution of the plan in words.
func (v Voice) Cautions(p *engine.Plan) []string {
	out := []string{}
	for _, w := range p.Warnings() {
		out = append(out, v.Warning(w))
	}
	return out
}

package listen

import (
	"strconv"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// Thread is a yarn's thickness as it was told, and the count it is asked for
// in, "" where none is.
type Thread struct {
	Count, To engine.YarnCount
	Value     engine.Num
	Plies     int
}

// yarnCount reads a yarn told by a count: asked for in another one it serves
// that answer, told outright it sets the metres in 100 g.
func (r *reading) yarnCount() (Meaning, bool) {
	if !r.cue(Parts) || r.cues[Parts].topic != "yarn-count" && !r.x.partCue(r.l, "yarn-count") || r.cue(Why) {
		return Meaning{}, false
	}
	t, ok := r.thread()
	if !ok {
		return Meaning{}, false
	}
	if r.asks() || t.To != "" {
		return Meaning{Kind: Number, Topic: "yarn-count", Thread: t}, true
	}
	tex, ok := engine.Tex(t.Count, t.Value, t.Plies)
	metres, there := engine.FromTex(tex, engine.MetresPer)
	if !ok || !there {
		return Meaning{}, false
	}
	m := Meaning{Kind: Values, Sets: []Set{{Key: engine.YarnLength, Value: metres, Near: 1}}}
	if r.cue(WhatIf) {
		m.Kind = WhatIf
	}
	return m, true
}

// compareThreads: "compare Nm 2/30 and Nm 2/28", yarns told by their counts.
func (r *reading) compareThreads() (Meaning, bool) {
	if !r.comparesOnly() && !r.l.has("versus", "vs", "against") {
		return Meaning{}, false
	}
	m := Meaning{Kind: Compare}
	for _, part := range strings.FieldsFunc(strings.NewReplacer(" and ", "|", " versus ", "|", " vs ", "|", " against ", "|", " or ", "|").Replace(r.l.text), func(c rune) bool { return c == '|' }) {
		count := countNamed(part)
		value, plies := countFigure(strings.TrimPrefix(strings.TrimSpace(part), "compare"))
		tex, ok := engine.Tex(count, value, plies)
		metres, there := engine.FromTex(tex, engine.MetresPer)
		if count == "" || count == engine.MetresPer || !ok || !there {
			return Meaning{}, false
		}
		m.Choices = append(m.Choices, []Set{{Key: engine.YarnLength, Value: metres, Near: 1}})
	}
	return m, len(m.Choices) > 1
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
		{"run", engine.WoollenRun}, {"linen", engine.LinenLea}, {"lea", engine.LinenLea}, {"typp", engine.Typp},
	}
}

// thread reads the count of the line.
func (r *reading) thread() (Thread, bool) {
	from, to := r.l.text, ""
	for _, sep := range []string{" in ", " as ", " into ", " to "} {
		if i := strings.LastIndex(r.l.text, sep); i >= 0 {
			if c := countNamed(r.l.text[i+len(sep):]); c != "" {
				from, to = r.l.text[:i], r.l.text[i+len(sep):]
				break
			}
		}
	}
	t := Thread{To: countNamed(to)}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if m, ok := q.MetresPer100g(); ok && q.Problem == "" && q.Unit != quantity.Gram && r.asks() && !r.says("if", "band", "need") {
			t.Count, t.Value, t.Plies = engine.MetresPer, m, 1
			if q.Unit == quantity.Yard {
				t.Count, t.Value = engine.YardsPer100, m.Div(engine.Frac(9144, 10000))
			} else if t.To == "" {
				t.To = engine.TexCount
			}
			return t, true
		}
	}
	t.Count = countNamed(from)
	t.Value, t.Plies = countFigure(from)
	return t, t.Count != "" && t.Count != engine.MetresPer && t.Value.Sign() > 0
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

package listen

import (
	"strings"

	"foldrow/engine"
)

// drawnRow reads a repeat drawn in signs ("x..x..", "xooxoo", "#--#"): x, # or *
// is contrast, the rest main. The line must also say that it is a row of so
// many stitches, so that kisses at the end of a message are no pattern.
func (r *reading) drawnRow() ([]bool, bool) {
	for _, w := range strings.Fields(r.l.text) {
		w = strings.Trim(w, ",;:?!\"'")
		if len(w) < 2 || len(w) > 200 || strings.Trim(w, "x#*.-_o") != "" || !strings.ContainsAny(w, "x#*") || !strings.ContainsAny(w, ".-_o") {
			continue
		}
		if len(r.l.quantities()) == 0 && !r.says("row", "pattern", "contrast", "card", "repeat") {
			continue
		}
		out := make([]bool, len(w))
		for i := range w {
			out[i] = strings.IndexByte("x#*", w[i]) >= 0
		}
		return out, true
	}
	return nil, false
}

// colourRow reads the repeat, the stitches it runs over and its anchor.
func (r *reading) colourRow(p *Part) bool {
	main, contrast, every := 0, 0, 0
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		n := r.whole(i)
		switch {
		case n == 0:
		case q.Ordinal || r.wordBefore(i, "every", "each"):
			every = n
		case oneOf(r.near(i, 1), []string{"contrast"}):
			contrast = n
		case oneOf(r.near(i, 1), []string{"main", "plain", "background"}):
			main = n
		case r.wordBefore(i, "limit", "float"):
		default:
			p.Stitches = n
		}
	}
	if every == 0 && strings.Contains(r.l.text, "every other") {
		every = 2
	}
	switch {
	case p.Pattern != nil:
	case every > 1 && every <= 100:
		p.Pattern = make([]bool, every)
		for i := range min(max(contrast, 1), every-1) {
			p.Pattern[i] = true
		}
	case main > 0 && contrast > 0 && main+contrast <= 200:
		p.Pattern = make([]bool, main+contrast)
		for i := range contrast {
			p.Pattern[i] = true
		}
	}
	p.Anchor = engine.Centred
	switch {
	case r.says("left"):
		p.Anchor = engine.FromLeft
	case r.says("right"):
		p.Anchor = engine.FromRight
	}
	r.length(p)
	return p.Pattern != nil || r.says("card")
}

// floatLimit: how long a float may be left.
func (r *reading) floatLimit(p *Part) bool {
	r.length(p)
	return !r.says("catch", "why") && !r.howBeatsFloat()
}

// howBeatsFloat: "how do I shorten a float" asks for the way.
func (r *reading) howBeatsFloat() bool {
	return r.says("how") && !r.says("long", "length", "many", "far", "allow", "limit")
}

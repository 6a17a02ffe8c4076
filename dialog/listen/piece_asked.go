package listen

import "foldrow/engine"

// pieceAsked: questions about the pieces of a band that the bed does not take
// at once: why, where one begins on the yoke, its stitches, its needles, the
// joins. Count is the piece that is meant, 0 for all, -1 for the last.
func (r *reading) pieceAsked() (Meaning, bool) {
	counted, front := r.joinsCounted(), r.l.has("front", "fronts")
	if !r.l.has("piece", "pieces") && !counted || !r.onlyPiece() || r.cue(WhatIf) && r.l.has("if") ||
		r.l.has("stage", "stages", "chart", "row", "rows", "pattern", "sleeve", "back", "neckline") {
		return Meaning{}, false
	}
	if front && counted {
		return Meaning{}, false
	}
	if front {
		return Meaning{Kind: Number, Keys: []engine.Key{engine.FrontPieces}}, r.asks() && r.l.has("stitch", "stitches", "needle", "needles") && r.pieceNamed() != 0
	}
	m := Meaning{Kind: Number, Count: r.pieceNamed()}
	asked := r.asks() || r.l.question
	switch {
	case r.l.has("why") && !r.l.has("yoke"):
		m.Topic = "piece-why"
	case counted || asked && r.l.has("join", "joins", "joined", "joining", "sew", "sewn", "seam", "seamed", "attach", "connect", "together"):
		m.Topic = "piece-join"
	case asked && (r.l.has("where") || r.l.has("which", "what") && r.l.has("stitch", "stitches")) && !r.l.has("needle", "needles", "decrease", "decreases"):
		m.Topic = "piece-where"
	case asked && r.l.has("many") && r.l.has("stitch", "stitches", "sts", "decrease", "decreases"):
		m.Topic = "piece-stitches"
	case asked && m.Count != 0 && r.l.has("needle", "needles"):
		m.Topic = "piece-needles"
	default:
		return Meaning{}, false
	}
	return m, true
}

// pieceNamed is the number of the piece a line names: "piece 2", "the second
// piece", "the last piece"; 0 where it names none.
func (r *reading) pieceNamed() int {
	for i := r.l.begin; i < r.l.end; i++ {
		t := r.l.tokens[i]
		switch {
		case t.q != nil && r.whole(i) > 0 && (t.q.Ordinal || r.isPiece(i-1)):
			return r.whole(i)
		case t.q == nil && t.text == "last" && r.isPiece(i+1):
			return -1
		case t.q == nil && t.text == "first" && r.isPiece(i+1):
			return 1
		case t.q == nil && (t.text == "other" || t.text == "next") && r.isPiece(i+1):
			return 2
		}
	}
	return 0
}

// onlyPiece reports whether the line sets nothing but what was made of the
// piece's number.
func (r *reading) onlyPiece() bool {
	for _, s := range r.b.sets {
		if s.Key == engine.YokeStitches && r.pieceNamed() > 0 && r.asks() && s.Value.Equal(engine.Int(int64(r.pieceNamed()))) {
			continue // "which yoke stitches go on piece 2"
		}
		if !s.Bare || !s.Value.Equal(engine.Int(int64(max(1, r.pieceNamed())))) {
			return false
		}
	}
	return true
}

// joinsCounted: "how many joins", "how many seams are there".
func (r *reading) joinsCounted() bool {
	for i := r.l.begin; i+1 < r.l.end; i++ {
		if r.l.tokens[i].text == "many" && oneOf(r.l.tokens[i+1].text, []string{"joins", "joints", "seams", "join"}) {
			return r.l.words() <= 6
		}
	}
	return false
}

func (r *reading) isPiece(i int) bool {
	return i >= r.l.begin && i < r.l.end && r.l.tokens[i].q == nil && (r.l.tokens[i].text == "piece" || r.l.tokens[i].text == "pieces")
}

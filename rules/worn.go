package rules

import "foldrow/engine"

// headOverNeck is the head over the neck halfway up of the youngest measured
// children, 2 to 3 1/2 years (snyder-1977). No neck was found of younger ones.
var headOverNeck = engine.Frac(207, 100)

// Body is what the tables give for somebody, cm, each with the table it comes
// from; a girth that no table has is 0. Bust is a women's size alone.
type Body struct {
	Head, NeckMid, NeckBase, Bust        engine.Num
	HeadSource, NeckSource, BaseSource   string
	Size                                 string // of the women's standard, "" where it was not used
	HeadLow, HeadHigh, NeckLow, NeckHigh engine.Num
	NeckGuessed                          bool // from the head: no table has it
	LetterOfMan                          bool // a letter size, which no table of men has
}

// Body is the published body of w.
func (t Tables) Body(w engine.Whom) (b Body) {
	if s, ok := t.sizeOf(w); ok {
		return Body{Head: s.Head, NeckMid: s.MidNeck, NeckBase: s.NeckBase, Bust: s.Bust, Size: s.Name,
			HeadSource: s.Source, NeckSource: s.Source, BaseSource: s.Source}
	}
	who := Wearer{Years: engine.Frac(int64(w.Months), 12), Sex: Sex(w.Sex), Adult: w.Adult}
	at := func(s Spread) engine.Num { return s.Mid }
	if w.Adult && w.Size != "" {
		b.LetterOfMan = true
		switch w.Size {
		case "XS", "S":
			at = func(s Spread) engine.Num { return s.Low }
		case "L", "XL", "XXL":
			at = func(s Spread) engine.Num { return s.High }
		}
	}
	if s, ok := t.girth(Head, who); ok {
		b.Head, b.HeadSource, b.HeadLow, b.HeadHigh = at(s), s.Source, s.Low, s.High
	}
	if s, ok := t.girth(MidNeck, who); ok {
		b.NeckMid, b.NeckSource, b.NeckLow, b.NeckHigh = at(s), s.Source, s.Low, s.High
	}
	if s, ok := t.girth(NeckBase, who); ok {
		b.NeckBase, b.BaseSource = at(s), s.Source
	}
	if b.NeckMid.Sign() == 0 && b.Head.Sign() > 0 {
		b.NeckMid, b.NeckSource, b.NeckGuessed = tenth(b.Head.Div(headOverNeck)), "own", true
	}
	return b
}

// lettersToBust is the bust, in inches, up to which a women's letter size
// goes, as one published pattern that follows the common standard has it.
var lettersToBust = map[string]int64{"XS": 30, "S": 34, "M": 38, "L": 42, "XL": 46, "XXL": 50}

// sizeOf is the row of the women's standard for a numbered size, or for a
// letter the row whose bust is nearest, the larger on a tie.
func (t Tables) sizeOf(w engine.Whom) (Size, bool) {
	if w.Sex != "female" || !w.Adult || w.Size == "" {
		return Size{}, false
	}
	if s, ok := t.WomansSize(w.Size); ok {
		return s, true
	}
	return t.SizeOfBust(engine.Frac(lettersToBust[w.Size]*254, 100))
}

// SizeOfBust is the women's size whose bust is nearest, the larger on a tie.
func (t Tables) SizeOfBust(bust engine.Num) (Size, bool) {
	var best Size
	for _, s := range t.Sizes {
		if best.Name == "" || !best.Bust.Sub(bust).Abs().Less(s.Bust.Sub(bust).Abs()) {
			best = s
		}
	}
	return best, best.Name != ""
}

// worn is what is presupposed of the body that was named: its head, and its
// neck halfway up with the base over it.
func (b *Book) worn(said engine.Inputs) (in engine.Inputs) {
	w, ok := engine.ParseWhom(said.Text(engine.KeyWearer))
	if !ok {
		return in
	}
	body := b.Tables.Body(w)
	if body.Head.Sign() > 0 {
		in = in.With(engine.Head, body.Head)
	}
	if body.NeckMid.Sign() > 0 {
		in = in.With(engine.NeckMid, body.NeckMid)
		if body.NeckBase.Sign() > 0 {
			in = in.With(engine.NeckFactor, body.NeckBase.Div(body.NeckMid))
		}
	}
	return in
}

func tenth(n engine.Num) engine.Num {
	return engine.Frac(int64(n.Mul(engine.Int(10)).Round()), 10)
}

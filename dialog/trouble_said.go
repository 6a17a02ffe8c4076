package dialog

import (
	"strings"

	"foldrow/dialog/listen"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// slip is what a line says about rows knitted at a wrong setting.
type slip struct {
	rows  int // how many, 0 where not said
	at    int // the first of them, 0 where not said
	used  engine.Num
	meant engine.Num
	// off is how far out in dial numbers, clicks in clicks; without direction.
	off, clicks               engine.Num
	hasUsed, hasMeant, hasOff bool
}

// slipSaid reads "3 rows at dial 5 instead of 4", "rows 5 to 7 one number too
// loose", "a row with the wrong dial".
func slipSaid(said string) slip {
	var s slip
	low := strings.ToLower(said)
	for _, q := range quantity.Scan(low) {
		if q.Problem != "" || q.Sign < 0 {
			continue
		}
		switch {
		case q.Unit == quantity.Row && q.After:
			s.at, s.rows = q.Value.Floor(), q.High.Sub(q.Value).Floor()+1
		case q.Unit == quantity.Row && !q.Ordinal:
			s.rows = q.Value.Floor()
		case q.Unit == quantity.Click:
			s.clicks, s.hasOff = q.Value, true
		case q.Unit == quantity.Number && !q.After:
			s.off, s.hasOff = q.Value, true
		case q.Unit != quantity.None && q.Unit != quantity.Number || q.Ordinal:
		case !s.hasUsed:
			s.used, s.hasUsed = q.Value, true
		case !s.hasMeant:
			s.meant, s.hasMeant = q.Value, true
		}
	}
	if s.rows == 0 && (strings.Contains(low, "a row") || strings.Contains(low, "one row") || strings.Contains(low, "last row")) {
		s.rows = 1
	}
	return s
}

// needleSaid is the needle that the line names, in its column of the band.
func needleSaid(said string, p engine.Plan) (col int, name string, ok bool) {
	for _, w := range strings.FieldsFunc(strings.ToUpper(said), func(r rune) bool {
		return (r < 'A' || r > 'Z') && (r < '0' || r > '9')
	}) {
		if col, ok := engine.NeedleColumn(w, p.BandStitches); ok {
			return col, w, true
		}
	}
	return 0, "", false
}

// countSaid is the bare or stitch count that the line names.
func countSaid(said string) (int, bool) {
	for _, q := range quantity.Scan(strings.ToLower(said)) {
		if q.Problem == "" && (q.Unit == quantity.None || q.Unit == quantity.Stitch) && q.Value.IsInt() && q.Value.Sign() > 0 && !q.Ordinal {
			return q.Value.Floor(), true
		}
	}
	return 0, false
}

// heardSlip takes rows said with the dial they were knitted at as the trouble
// they are, where the numbers in the line would pass for a change of the
// plan: "3 rows at dial 5 instead of 4".
func (c *turn) heardSlip() bool {
	if !c.s.Making.On || c.m.Kind != listen.Unclear && c.m.Kind != listen.Values && c.m.Kind != listen.Trouble {
		return false
	}
	s, low := slipSaid(c.said), strings.ToLower(c.said)
	has := func(list ...string) bool {
		for _, x := range list {
			if strings.Contains(low, x) {
				return true
			}
		}
		return false
	}
	wrong := has("instead", "rather than", "wrong", "should have") || s.at > 0 && has("knitted", "were ", "was ")
	if s.rows == 0 || !s.hasUsed || !wrong || !has("dial", "tension", "number", " at ", " on ") {
		return false
	}
	return true
}

// slipCard is the trouble of such rows: too loose or too tight.
func (c *turn) slipCard() string {
	s, p := slipSaid(c.said), c.kept()
	meant := s.meant
	if !s.hasMeant {
		at := s.at
		if at == 0 {
			at = c.s.Making.Row
		}
		if rows := p.Tension(); at > 0 && at <= len(rows) && p.In.Has(engine.MainTension) {
			meant = p.In.Num(engine.MainTension).Sub(engine.Frac(int64(rows[at-1].Clicks), int64(max(1, p.In.Int(engine.ClicksPerNumber)))))
		}
	}
	if s.used.Less(meant) {
		return "wrong-dial-tight"
	}
	return "wrong-dial-loose"
}

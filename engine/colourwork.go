package engine

// ColourworkNumbers is how many whole dial numbers looser than plain a
// two-colour row is knitted (common practice).
const ColourworkNumbers = 1

// Float limits where the knitter names none: 2.5 cm, or 5 stitches where no
// gauge is known. Published limits run from 3 to 7 stitches; the two agree at
// 20 stitches to 10 cm.
const (
	floatMillimetres = 25
	floatStitches    = 5
)

// endRun is how many main stitches at an end of a row ask for the end needle
// to be brought out, so that both yarns are caught there.
const endRun = 3

// RowSpec is what a colour row is judged by. Every field may be left 0.
type RowSpec struct {
	Gauge         Num // stitches per 10 cm of the stranded knitting; 0: no lengths
	LimitLength   Num // longest float to leave alone, cm; 0: 2.5
	LimitStitches int // the same in stitches, instead
	Loop          Num // yarn in one stitch, cm; 0: three times the stitch's width
}

// Float is a stretch of yarn behind stitches of the other colour.
type Float struct {
	Contrast bool // the contrast yarn floats, behind main stitches
	First    int  // column of the first stitch it passes
	Stitches int
	Length   Num   // cm, 0 without a gauge
	Catches  []int // columns to catch it at, so that no part is over the limit
}

// RowCard is a colour row as it is worked on the bed. Columns count from 0 at
// the left edge as the knitter faces the purl side.
type RowCard struct {
	Left, Right     []int   // columns to bring forward on each side, from the centre out
	Ends            []int   // those of them that only catch both yarns at an end
	Main, Contrast  int     // stitches of each colour
	LongestMain     Float   // of the main yarn; Stitches is 0 where there is none
	LongestContrast Float   // of the contrast yarn
	Limit           int     // stitches
	Over            []Float // floats past the limit, from the left, with their catches
	Width           Num     // cm, 0 without a gauge
	MainYarn        Num     // cm, 0 without a gauge
	ContrastYarn    Num
}

// Row is the card of one row; true is a contrast stitch. A row of a single
// colour has no floats and needs no needles brought out for its ends.
func Row(pattern []bool, spec RowSpec) RowCard {
	c := RowCard{Limit: spec.limit()}
	for _, contrast := range pattern {
		if contrast {
			c.Contrast++
		} else {
			c.Main++
		}
	}
	out := append([]bool(nil), pattern...)
	if c.Contrast > 0 {
		c.Ends = ends(pattern)
		for _, col := range c.Ends {
			out[col] = true
		}
	}
	c.bring(out)
	if c.Contrast > 0 && c.Main > 0 {
		c.floats(pattern, out, spec)
	}
	c.yarn(spec)
	return c
}

func (s RowSpec) limit() int {
	cm := s.LimitLength
	if cm.Sign() <= 0 {
		cm = Frac(floatMillimetres, 10)
	}
	switch {
	case s.LimitStitches > 0:
		return s.LimitStitches
	case s.Gauge.Sign() > 0:
		return max(1, cm.Mul(s.Gauge).Div(Int(10)).Floor())
	}
	return floatStitches
}

// ends are the end columns that stand before endRun main stitches or more.
func ends(pattern []bool) []int {
	n := len(pattern)
	var cols []int
	if run(pattern, 0, 1) >= endRun {
		cols = append(cols, 0)
	}
	if run(pattern, n-1, -1) >= endRun {
		cols = append(cols, n-1)
	}
	return cols
}

// run counts the main stitches from column at onward in one direction.
func run(pattern []bool, at, step int) int {
	n := 0
	for at >= 0 && at < len(pattern) && !pattern[at] {
		n++
		at += step
	}
	return n
}

// bring lists the needles that are out, from the centre outward; of an odd
// row the middle needle counts to the left.
func (c *RowCard) bring(out []bool) {
	left := (len(out) + 1) / 2
	for col := left - 1; col >= 0; col-- {
		if out[col] {
			c.Left = append(c.Left, col)
		}
	}
	for col := left; col < len(out); col++ {
		if out[col] {
			c.Right = append(c.Right, col)
		}
	}
}

// floats finds the floats of both yarns. The main yarn passes every run of
// contrast stitches, also at an end, where the carriage takes it; the contrast
// yarn passes only what lies between two needles that are out.
func (c *RowCard) floats(pattern, out []bool, spec RowSpec) {
	n := len(pattern)
	for col := 0; col < n; {
		end := col
		for end < n && out[end] == out[col] && pattern[end] == pattern[col] {
			end++
		}
		caught := pattern[col] != out[col] // an end needle that takes both yarns
		if pattern[col] || !caught && col > 0 && end < n {
			c.float(Float{Contrast: !pattern[col], First: col, Stitches: end - col}, spec)
		}
		col = end
	}
}

func (c *RowCard) float(f Float, spec RowSpec) {
	if spec.Gauge.Sign() > 0 {
		f.Length = Int(int64(10 * f.Stitches)).Div(spec.Gauge)
	}
	longest := &c.LongestMain
	if f.Contrast {
		longest = &c.LongestContrast
	}
	if f.Stitches > c.Limit {
		f.Catches = catches(f, c.Limit)
		c.Over = append(c.Over, f)
	}
	if f.Stitches > longest.Stitches {
		*longest = f
	}
}

// catches spreads the fewest catches over a float: each takes one needle, and
// the parts between are as equal as whole stitches allow.
func catches(f Float, limit int) []int {
	n := f.Stitches / (limit + 1) // n catches make n+1 parts: stitches <= n + (n+1)*limit
	var cols []int
	at := f.First
	for _, part := range evenGaps(f.Stitches-n, n+1)[:n] {
		at += part
		cols = append(cols, at)
		at++
	}
	return cols
}

// yarn is what the row takes of each colour: its stitches' loops, and one
// straight width for every stitch it floats behind. With the three-widths
// rule for a plain row (blacksquirrelberkeley.com) that is W*(1+2p) for a
// colour of share p; our own derivation, slack not counted.
func (c *RowCard) yarn(spec RowSpec) {
	if spec.Gauge.Sign() <= 0 {
		return
	}
	stitch := Int(10).Div(spec.Gauge)
	loop := spec.Loop
	if loop.Sign() <= 0 {
		loop = stitch.Mul(Int(3))
	}
	main, contrast := Int(int64(c.Main)), Int(int64(c.Contrast))
	c.Width = main.Add(contrast).Mul(stitch)
	if c.Main > 0 {
		c.MainYarn = main.Mul(loop).Add(contrast.Mul(stitch))
	}
	if c.Contrast > 0 {
		c.ContrastYarn = contrast.Mul(loop).Add(main.Mul(stitch))
	}
}

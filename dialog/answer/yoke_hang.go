package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Hang says how stage i, from 0, is hung from the one before, piece by piece,
// with a picture of the needles; the neck is the last stage.
func (v Voice) Hang(p *engine.Plan, i int) string {
	y := p.Yoke
	s := y.Stages[i]
	name := stageName(y, i)
	head := fmt.Sprintf("**%s: %d stitches**", upper(name), s.Count)
	if i == 0 {
		return head + ", " + startPieces(s) + "."
	}
	before := y.Stages[i-1]
	head += fmt.Sprintf(", from %d", before.Stitches())
	if before.Had > 0 && before.Had != before.Count {
		head += fmt.Sprintf(", the count you have (planned %d)", before.Count)
	}
	head += stageLost(s.Decreases) + repeatsOf(y, i) + "."
	text := head + "\n\n" + v.hanging(before, s)
	for _, w := range stageWarnings(y, i) {
		text += "\n\n**Caution:** " + w
	}
	if i < len(y.Stages)-1 {
		text += "\n\nKnit one plain row before a pattern row, and count before you go on."
	}
	return text
}

// stageLost is what a hanging takes, "" where it takes nothing.
func stageLost(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("; %d to lose", n)
}

// repeatsOf is the repeats that lie in stage i, "" where any count will do or
// the count is no whole number of them.
func repeatsOf(y *engine.YokePlan, i int) string {
	if i >= len(y.Spec.Stages) {
		return ""
	}
	spec, n := y.Spec.Stages[i], y.Stages[i].Count-y.Spec.Stages[i].Edge
	if spec.Repeat < 2 || n%spec.Repeat != 0 {
		return ""
	}
	return fmt.Sprintf("; %s of %d", Count(n/spec.Repeat, "repeat", "repeats"), spec.Repeat)
}

// HangWords is what a sheet says of hanging stage i, from 0: a title with its
// counts, and the needles that carry two, piece by piece.
func (v Voice) HangWords(p *engine.Plan, i int) (title, text string) {
	y := p.Yoke
	s := y.Stages[i]
	title = fmt.Sprintf("%s: %d stitches", upper(stageName(y, i)), s.Count)
	if i == 0 {
		return title, upper(startPieces(s)) + "."
	}
	before := y.Stages[i-1]
	return title + fmt.Sprintf(", from %d", before.Stitches()), v.hanging(before, s)
}

func startPieces(s engine.Stage) string {
	if len(s.Pieces) < 2 {
		return "in one piece, one stitch on each needle"
	}
	return fmt.Sprintf("in %d pieces: %s", len(s.Pieces), pieceNeedles(s.Pieces))
}

// pieceNeedles is "L67 to R67, then L67 to R67".
func pieceNeedles(ps []engine.Piece) string {
	var out []string
	for _, p := range ps {
		out = append(out, fmt.Sprintf("%s to %s", engine.NeedleName(0, p.Stitches), engine.NeedleName(p.Stitches-1, p.Stitches)))
	}
	return strings.Join(out, ", then ")
}

// Pieces names the needles of every piece of every stage.
func (v Voice) Pieces(p *engine.Plan) string {
	y := p.Yoke
	var lines []string
	for i, s := range y.Stages {
		lines = append(lines, fmt.Sprintf("- %s, %d stitches: %s", stageName(y, i), s.Count, pieceNeedles(s.Pieces)))
	}
	return strings.Join(lines, "\n") + "\n\n" + onePiece(y) + " Pieces are split between two repeats, so the seam falls where a repeat ends."
}

// hanging is the words and the picture of one stage's hangings.
func (v Voice) hanging(before, s engine.Stage) string {
	switch {
	case s.Decreases == 0:
		return "Hang one stitch to a needle: nothing is lost."
	case len(s.Hangings) > 1:
		var steps []string
		for n, m := range s.Hangings {
			steps = append(steps, fmt.Sprintf("- hanging %d, on %d needles: %s", n+1, len(m), MapWords(m)))
		}
		return fmt.Sprintf("%d decreases in %d hangings, with a plain row between:\n\n%s", s.Decreases, len(s.Hangings), strings.Join(steps, "\n"))
	case len(s.Pieces) < 2:
		words := upper(MapWords(s.Hangings[0])) + "."
		if v.Paper { // it draws needles in its own way
			return words
		}
		return words + "\n\n" + MapStrip(s.Hangings[0])
	}
	var parts []string
	taken := 0
	for j, p := range s.Pieces {
		hung := 0
		for _, n := range p.Hang {
			hung += n
		}
		parts = append(parts, fmt.Sprintf("- piece %d, %s to %s, takes %d: %s", j+1,
			engine.NeedleName(0, p.Stitches), engine.NeedleName(p.Stitches-1, p.Stitches), hung, MapWords(p.Hang)))
		taken += hung
		if split := splitAt(before.Pieces, j); split > 0 && split != taken && j < len(s.Pieces)-1 {
			parts = append(parts, fmt.Sprintf("- the split moves by %s against the stage before: hang on across it, and seam where the new one falls", Count(abs(split-taken), "stitch", "stitches")))
		}
	}
	return strings.Join(parts, "\n")
}

// Spread says how so many stitches are hung on so many needles, in the hangings
// that it takes.
func (v Voice) Spread(stitches, needles int, hangings [][]int) string {
	s := engine.Stage{Count: needles, Decreases: stitches - needles, Hangings: hangings}
	return v.hanging(engine.Stage{Count: stitches}, s)
}

// Hangings says how every stage is hung from the one before.
func (v Voice) Hangings(p *engine.Plan) string {
	var parts []string
	for i := 1; i < len(p.Yoke.Stages); i++ {
		parts = append(parts, v.Hang(p, i))
	}
	return strings.Join(parts, "\n\n")
}

// splitAt is the stitches of the first j+1 pieces, 0 where there are not so
// many and one more.
func splitAt(ps []engine.Piece, j int) int {
	if j+1 >= len(ps) {
		return 0
	}
	return ps[j+1].First
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}

// MapStrip draws a hanging by needle.
func MapStrip(m []int) string {
	two := make([]bool, len(m))
	for c, stitches := range m {
		two[c] = stitches == 2
	}
	lanes := []lane{{name: "two", sign: '=', on: two}}
	lines := bed(len(m), lanes)
	if lines == nil {
		return ""
	}
	return picture(bedLabel, "=", lines) + "\n" + legend(bedWords(lanes))
}

// MapWords says which needles of a piece carry two.
func MapWords(m []int) string {
	two := 0
	for _, s := range m {
		if s == 2 {
			two++
		}
	}
	switch {
	case two == 0:
		return "one on every needle"
	case two == len(m):
		return "two on every needle"
	case 2*two > len(m):
		return "one only on " + walk(engine.Singles(m), len(m)) + "; two on all the rest"
	}
	return "two on " + walk(m, len(m)) + "; one on all the rest"
}

package answer

import (
	"fmt"
	"math"
	"strings"

	"foldrow/engine"
)

// profileWide is how many signs the widest stage of the picture has: with its
// margin it fits a window of 40 columns.
const profileWide = 34

// Profile draws the yoke laid flat, its neck above: width against depth, each
// stage in its own sign. Words stand beside it.
func (v Voice) Profile(p *engine.Plan) string {
	y := p.Yoke
	n := len(y.Stages) - 1
	widest := 0
	for _, s := range y.Stages {
		widest = max(widest, s.Count)
	}
	var b strings.Builder
	b.WriteString(bar(y.Stages[n].Count, widest, "="))
	for i := n - 1; i >= 0; i-- {
		line := bar(y.Stages[i].Count, widest, stageSign(i))
		b.WriteString(strings.Repeat(line, profileLines(p, i, widest)))
	}
	words := "The yoke laid flat, neck at the top: = is the neck, each figure a stage, each edge a hanging."
	if p.Yoke.HasDepth && p.In.Num(engine.StitchGauge).Sign() > 0 {
		words += " Width and depth are to one scale."
	}
	lines := strings.Split(strings.TrimSuffix(b.String(), "\n"), "\n")
	return picture(0, "=", lines) + "\n" + legend(words) + "\n" + v.profileWords(p)
}

// bar is one line of the picture, centred.
func bar(count, widest int, sign string) string {
	w := max(1, count*profileWide/widest)
	return strings.Repeat(" ", (profileWide-w)/2) + strings.Repeat(sign, w) + "\n"
}

// stageSign is 1 to 9, then a to k.
func stageSign(i int) string { return string("123456789abcdefghijk"[i]) }

// profileLines is how many lines a stage takes: a character is about twice as
// high as wide, and what is drawn is the yoke laid flat, half its way round.
func profileLines(p *engine.Plan, i, widest int) int {
	y, gauge := p.Yoke, p.In.Num(engine.StitchGauge)
	if !y.HasDepth || gauge.Sign() <= 0 {
		return 2
	}
	flat := float64(widest) * 10 / gauge.Float() / 2
	height := float64(y.Rows[i]) * 10 / p.In.Num(engine.RowGauge).Float()
	return max(1, int(math.Round(height*profileWide/flat/2)))
}

// profileWords is the picture as a list: width and depth stage by stage, from
// the first.
func (v Voice) profileWords(p *engine.Plan) string {
	y := p.Yoke
	n := len(y.Stages) - 1
	var lines []string
	below := 0
	for i, s := range y.Stages {
		line := fmt.Sprintf("- %s: %d stitches", stageName(y, i), s.Count)
		if s.Width.Sign() > 0 {
			line += fmt.Sprintf(", %s around", v.Len(s.Width.Float()))
		}
		if g := p.In.Num(engine.RowGauge); y.HasDepth && g.Sign() > 0 {
			line += fmt.Sprintf(", from %s up", v.Len(float64(below)*10/g.Float()))
			if i < n {
				below += y.Rows[i]
			}
		}
		lines = append(lines, line)
	}
	return strings.Join(lines, "\n") + "\n\n" + v.yokeDepthLine(p)
}

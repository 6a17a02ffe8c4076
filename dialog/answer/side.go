package answer

import (
	"fmt"
	"math"
	"strings"

	"foldrow/engine"
)

// Room for the side view: columns from the seam to the middle of the neck at
// the most, and lines of the band's height.
const (
	sideRadius = 27
	sideHigh   = 12
	sideYoke   = 7 // columns of the yoke, left of the seam
)

// Side is the band cut through, in words and as a picture to scale: how it
// stands on the seam and leans in toward the neck. "" where the lean is not
// known.
func (v Voice) Side(p *engine.Plan) string {
	lean, ok := p.Float(engine.LeanDegrees)
	if !ok || p.BandStitches == 0 || p.LayerRows == 0 {
		return ""
	}
	end := "fold"
	if !p.Doubled {
		end = "edge"
	}
	spread := func(k engine.Key) string { return v.Value(p, k) + v.spreadText(p, k) }
	lines := []string{
		fmt.Sprintf("- **%s deep**, from the seam to the %s", v.Len(p.DepthResult.Float()), end),
		fmt.Sprintf("- **%s round** at the seam", v.Len(p.NeckResult.Float())),
		fmt.Sprintf("- **%s round** at the %s", spread(engine.FoldCircumference), end),
		fmt.Sprintf("- **leans in %s**; 0 is upright, 90 lies flat", spread(engine.LeanDegrees)),
	}
	if s := v.Value(p, engine.RelaxedCircumference); s != "" && !p.In.Rib.IsPlain() {
		lines = append(lines, fmt.Sprintf("- the rib draws the %s in to %s when nothing holds it open, and so leans the band further", end, s))
	}
	return strings.Join(lines, "\n") + "\n\n" + picture(0, "", sideView(p, lean, end)) +
		"\n" + legend("To scale, cut through at the side: the yoke comes from the left, : is the middle of the neck. The lean is an estimate from the grading alone.")
}

// sideView draws half of the neck: a column is half as wide as a line is high.
func sideView(p *engine.Plan, lean float64, end string) []string {
	radius, deep := p.NeckResult.Float()/(2*math.Pi), p.DepthResult.Float()
	scale := min(sideRadius/max(radius, 0.1), 2*sideHigh/max(deep, 0.1)) // columns to the cm
	sin, cos := math.Sincos(lean * math.Pi / 180)
	across, up := int(math.Round(deep*sin*scale)), int(math.Round(deep*cos*scale/2))
	middle := sideYoke + int(math.Round(radius*scale))
	c := newCanvas(40, up+4)
	seam := up + 2 // the line of the yoke
	for y := 0; y <= seam; y++ {
		c.put(middle, y, ":")
	}
	c.put(0, seam, strings.Repeat("_", sideYoke))
	c.put(sideYoke-4, seam+1, "seam")
	c.put(0, seam-1, "yoke")
	layers := []int{0}
	if p.Doubled {
		layers = []int{0, 2}
	}
	for _, x := range layers {
		sideLine(c, sideYoke+x, seam, across, up)
	}
	top := sideYoke + across
	if p.Doubled && up > 0 {
		c.put(top+1, seam-up, "_")
	}
	c.put(top+4, max(0, seam-up), end)
	return c.lines()
}

// sideLine draws one layer from the seam: across columns to the right on the
// way of up lines.
func sideLine(c canvas, x, y, across, up int) {
	if up == 0 {
		c.put(x, y, strings.Repeat("_", max(across, 1)))
		return
	}
	at := func(i int) int { return x + int(math.Round(float64(across)*float64(i)/float64(up))) }
	for i := range up {
		from, to := at(i), at(i+1)
		switch {
		case to == from:
			c.put(from, y-i, "|")
		default:
			c.put(from, y-i, "/"+strings.Repeat("_", to-from-1))
		}
	}
}

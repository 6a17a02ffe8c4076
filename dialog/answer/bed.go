package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

const (
	bedLabel = 6  // columns of a lane's name
	tenWide  = 11 // ten needles and the gap after them
)

// Bed is the bed in words and as a picture: which needles are dropped and
// latched, which bumps are hung, which needles carry two.
func Bed(p *engine.Plan) string {
	if p.BandStitches == 0 {
		return ""
	}
	pieces := p.OnBed()
	var parts []string
	for i, q := range pieces {
		if len(pieces) > 1 {
			parts = append(parts, fmt.Sprintf("**Piece %d of %d**", i+1, len(pieces)))
		}
		parts = append(parts, bedOf(q))
	}
	if len(pieces) > 1 {
		parts = append(parts, "Each piece goes through all steps by itself. Then "+Joints(p)+".")
	}
	return strings.Join(parts, "\n\n")
}

// bedOf is Bed for what hangs at once.
func bedOf(p *engine.Plan) string {
	n := p.BandStitches
	lines := []string{fmt.Sprintf("- **%d needles**, %s", n, ends(n))}
	if p.Piece != nil {
		if s := SeamNeedles(p.Piece.Part); s != "" {
			lines[0] += "; " + s
		}
		if s := PieceYoke(p); s != "" {
			lines = append(lines, "- **place:** "+s)
		}
	}
	if words := RehangWords(p); words != "" {
		lines = append(lines, "- **hang again:** "+words)
	}
	if len(p.RibColumns) > 0 {
		lines = append(lines, "- **drop and latch:** "+NeedleRuns(p.RibColumns, n))
	}
	if len(p.EmptyColumns) > 0 {
		lines = append(lines, "- **leave out of work:** "+NeedleRuns(p.EmptyColumns, n))
	}
	if len(p.HemColumns) > 0 {
		lines = append(lines, "- **hang the bump:** "+NeedleRuns(p.HemColumns, n))
	}
	return strings.Join(lines, "\n") + "\n\n" + Strip(p)
}

// lane is one line of signs under the needles.
type lane struct {
	name string
	sign byte
	on   []bool
	each []byte // a sign of its own for every needle, instead of sign and on
}

// Strip draws the bed from left to right, as long as it is. Needles stand in
// tens counted from the centre, so that a line can be cut between them.
func Strip(p *engine.Plan) string {
	lanes := lanesOf(p)
	lines := bed(p.BandStitches, lanes)
	if lines == nil {
		return ""
	}
	var signs string
	for _, l := range lanes {
		signs += string(l.sign)
	}
	return picture(bedLabel, signs, lines) + "\n" + legend(bedWords(lanes))
}

// CutStrip is the strip for a page that cuts no lines itself: so many tens to
// a line, and the words for its signs.
func CutStrip(p *engine.Plan, tens int) (lines []string, words string) {
	if len(p.OnBed()) > 1 {
		return nil, "" // its needles are those of its pieces
	}
	lanes := lanesOf(p)
	whole := bed(p.BandStitches, lanes)
	if whole == nil {
		return nil, ""
	}
	middle := bedLabel + tenWide*tensOf((p.BandStitches+1)/2) + 2
	for _, half := range [][2]int{{bedLabel, middle}, {middle, len(whole[0])}} {
		for from := half[0]; from+2 < half[1]; from += tens * tenWide {
			to := from + tens*tenWide
			if to+2 >= half[1] {
				to = half[1] // the centre mark stays with the needle before it
			}
			for _, line := range whole {
				lines = append(lines, strings.TrimRight(line[:bedLabel]+line[from:to], " "))
			}
			lines = append(lines, "")
		}
	}
	return lines[:len(lines)-1], bedWords(lanes)
}

// tensOf is how many groups of ten n needles of one half make.
func tensOf(n int) int { return (n + 9) / 10 }

// lanesOf are the lanes that this plan has.
func lanesOf(p *engine.Plan) []lane {
	var lanes []lane
	for _, l := range []lane{
		{name: "two", sign: '=', on: marks(Doubled(p), p.BandStitches)},
		{name: "latch", sign: 'v', on: marks(p.RibColumns, p.BandStitches)},
		{name: "empty", sign: 'o', on: marks(p.EmptyColumns, p.BandStitches)},
		{name: "hem", sign: 'u', on: marks(p.HemColumns, p.BandStitches)},
	} {
		if l.on != nil {
			lanes = append(lanes, l)
		}
	}
	return lanes
}

func bedWords(lanes []lane) string {
	return "Each column is one needle, with the last figure of its number on top; the bar is the centre." + laneWords(lanes)
}

func laneWords(lanes []lane) string {
	words := map[byte]string{'=': "= hangs two stitches", 'v': "v is dropped and latched", 'o': "o stays out of work", 'u': "u takes a bump of the hem"}
	var parts []string
	for _, l := range lanes {
		parts = append(parts, words[l.sign])
	}
	if len(parts) == 0 {
		return ""
	}
	return " " + strings.Join(parts, ", ") + "."
}

// bed draws n needles with their numbers and the lanes under them; nil where
// there are none, or more than any bed has.
func bed(n int, lanes []lane) []string {
	left := (n + 1) / 2
	if n == 0 || n > 400 {
		return nil
	}
	tensLeft, tensRight := tensOf(left), tensOf(n-left)
	c := newCanvas(bedLabel+tenWide*(tensLeft+tensRight)+2, 2+len(lanes))
	for col := range n {
		x := needleAt(col, left, tensLeft)
		name := engine.NeedleName(col, n)
		c.put(x, 1, name[len(name)-1:])
		for i, l := range lanes {
			sign := "."
			if l.each != nil {
				sign = string(l.each[col])
			} else if l.on[col] {
				sign = string(l.sign)
			}
			c.put(x, 2+i, sign)
		}
	}
	for i, l := range lanes {
		c.put(0, 2+i, l.name)
	}
	for y := 1; y < len(c); y++ {
		c.put(bedLabel+tenWide*tensLeft, y, "|")
	}
	for ten := range tensLeft {
		last := left - 1 - 10*ten
		nameTen(c, n, max(0, last-9), last, left, tensLeft)
	}
	for first := left; first < n; first += 10 {
		nameTen(c, n, first, min(n, first+10)-1, left, tensLeft)
	}
	return c.lines()
}

// needleAt is the column of the picture where a needle stands.
func needleAt(col, left, tensLeft int) int {
	if col < left {
		d := left - 1 - col // 0 for L1
		return bedLabel + tenWide*(tensLeft-d/10) - 2 - d%10
	}
	d := col - left
	return bedLabel + tenWide*tensLeft + 2 + tenWide*(d/10) + d%10
}

// nameTen writes the name of the needle that is furthest from the centre over
// a group of ten, where it has room: a short group lets it stand out.
func nameTen(c canvas, n, first, last, left, tensLeft int) {
	if first < left {
		name := engine.NeedleName(first, n)
		x := needleAt(first, left, tensLeft)
		if room := last - first + 1; room < len(name) {
			x -= len(name) - room
		}
		c.put(x, 0, name)
		return
	}
	name := engine.NeedleName(last, n)
	c.put(max(needleAt(first, left, tensLeft), needleAt(last, left, tensLeft)+1-len(name)), 0, name)
}

// marks are the columns of a list among n, nil for an empty one.
func marks(cols []int, n int) []bool {
	if len(cols) == 0 {
		return nil
	}
	m := make([]bool, n)
	for _, c := range cols {
		if c >= 0 && c < n {
			m[c] = true
		}
	}
	return m
}

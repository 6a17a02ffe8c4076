package engine

// YokeParts is in how many parts a yoke with more stitches than the bed has
// needles is knitted plain and taken off; YokePlaces are the stitches of each,
// the first and the last. WorkNeedles are the outermost needles of the widest
// row of each stage of the work, MostNeedles is how many the widest takes.
const (
	YokeParts   Key = "yoke_parts"
	YokePlaces  Key = "yoke_places"
	WorkNeedles Key = "work_needles"
	MostNeedles Key = "most_needles"
)

// Hanging is one hanging of the band on needles that the bed has. Where a
// needle would take more than two, the yoke is hung in rounds with a plain row
// between, and a round wider than the bed in pieces.
type Hanging struct {
	Round, Rounds int // from 1
	Piece, Pieces int // from 1
	Map           []int
	From          int // the first of the stitches it takes, from 1, of those that the round finds
}

// Stitches is how many stitches are hung.
func (h Hanging) Stitches() int {
	n := 0
	for _, s := range h.Map {
		n += s
	}
	return n
}

// To is the last of the stitches it takes.
func (h Hanging) To() int { return h.From + h.Stitches() - 1 }

// Stretch is some of the yoke's waiting stitches side by side, counted from 1
// from the left as it hangs, purl side toward her.
type Stretch struct{ From, To int }

// Stitches is how many they are.
func (s Stretch) Stitches() int { return s.To - s.From + 1 }

// WaitingParts is the waiting yoke as the bed takes it one stitch to a needle,
// before anything is decreased: the stretch of each piece of the band and of
// each hanging, and of these as many as the bed needs. nil where nothing waits
// that the band can be hung from.
func (p *Plan) WaitingParts() []Stretch {
	var out []Stretch
	first := 1
	for _, lot := range p.waitingLots() {
		for _, n := range p.onBed(lot) {
			out = append(out, Stretch{first, first + n - 1})
			first += n
		}
	}
	return out
}

// waitingLots is the waiting stitches that are hung at once, from the left.
func (p *Plan) waitingLots() []int {
	if _, ok := p.waiting(); !ok || !p.has.band || !p.FitsYoke {
		return nil
	}
	var lots []int
	for _, q := range p.OnBed() {
		if len(q.Hangings) == 0 {
			lots = append(lots, q.YokeDecreases+q.BandStitches)
		}
		for _, h := range q.Hangings {
			if h.Round == 1 {
				lots = append(lots, h.Stitches())
			}
		}
	}
	return lots
}

// onBed is n stitches in as many parts as the bed needs.
func (p *Plan) onBed(n int) []int {
	bed := p.In.Int(BedNeedles)
	if bed < 1 {
		return []int{n}
	}
	return evenGaps(n, max(1, (n+bed-1)/bed))
}

// BedStage is a stage of the work on the bed: how wide it hangs at most, in how many parts.
type BedStage struct {
	Needles, Parts int
	Round          int // of the hanging, 0 for the waiting stitches, -1 for the band
}

// BedStages are the stages of the work from the waiting stitches, one to a
// needle, over the hangings to the band; of a neck edge that is picked up the
// band alone.
func (p *Plan) BedStages() []BedStage {
	var out []BedStage
	if !p.has.band {
		return nil
	}
	add := func(round, needles int) {
		if n := len(out); n > 0 && out[n-1].Round == round {
			out[n-1].Parts++
			out[n-1].Needles = max(out[n-1].Needles, needles)
			return
		}
		out = append(out, BedStage{needles, 1, round})
	}
	if !p.has.picks {
		for _, s := range p.WaitingParts() {
			add(0, s.Stitches())
		}
	}
	pieces := p.OnBed()
	for round := 1; round < p.Stages; round++ {
		for _, q := range pieces {
			for _, h := range q.Hangings {
				if h.Round == round && round < h.Rounds {
					add(round, len(h.Map))
				}
			}
		}
	}
	for _, q := range pieces {
		add(-1, q.BandStitches)
	}
	return out
}

// mostNeedles is the widest row of the work.
func (p *Plan) mostNeedles() int {
	most := 0
	for _, s := range p.BedStages() {
		most = max(most, s.Needles)
	}
	return most
}

// workNeedles is the outermost needles of each stage.
func (p *Plan) workNeedles() [][]string {
	var out [][]string
	for _, s := range p.BedStages() {
		out = append(out, []string{NeedleName(0, s.Needles), NeedleName(s.Needles-1, s.Needles)})
	}
	return out
}

// yokePlaces is the first and the last stitch of each part of the waiting yoke,
// false where the bed takes it at once.
func (p *Plan) yokePlaces() ([][2]int, bool) {
	var out [][2]int
	for _, s := range p.WaitingParts() {
		out = append(out, [2]int{s.From, s.To})
	}
	return out, len(out) > 1
}

func hangingMaps(hs []Hanging) [][]int {
	maps := make([][]int, len(hs))
	for i, h := range hs {
		maps[i] = h.Map
	}
	return maps
}

package engine

// YokeMethod says how the counts of a round yoke's stages are found.
type YokeMethod string

// The methods. The sequences are published ratios, from the lower edge up:
//
//	A: 1/3, 1/3, 1/3 off (1971 handbook and a 1981 newsletter pattern)
//	B: 1/4, 1/3, 2/5 off (1989 handbook)
//	C: 1/3, 1/4, 1/4, 1/5 off (the four-decrease yoke)
//
// A and B after handmadestitchbystitch.wordpress.com, C after
// whitknits.wordpress.com 2009; the ring ratios after schoolhousepress.com
// blog 38. All three leave about 30 % of the stitches.
const (
	EqualCuts    YokeMethod = "equal_cuts" // the same number of stitches off at each cut
	SequenceA    YokeMethod = "sequence_a"
	SequenceB    YokeMethod = "sequence_b"
	SequenceC    YokeMethod = "sequence_c"
	StraightCone YokeMethod = "straight_cone" // stitches in proportion to the height
)

// cuts are the shares taken off at each cut, nil for the other methods.
func (m YokeMethod) cuts() []Num {
	switch m {
	case SequenceA:
		return []Num{Frac(1, 3), Frac(1, 3), Frac(1, 3)}
	case SequenceB:
		return []Num{Frac(1, 4), Frac(1, 3), Frac(2, 5)}
	case SequenceC:
		return []Num{Frac(1, 3), Frac(1, 4), Frac(1, 4), Frac(1, 5)}
	}
	return nil
}

// StageSpec is one stage of a yoke as the knitter gives it.
type StageSpec struct {
	Repeat int // stitches of its pattern repeat; 0 or 1 where any count will do
	Edge   int // stitches beside the repeats, both ends together
	Height Num // cm; only StraightCone needs it
}

// YokeSpec is a yoke from its first stage to the neck. Each stage is knitted
// on one count; a cut follows each, the last cut leaving the neck.
type YokeSpec struct {
	Start  int // stitches of the first stage
	Neck   int // stitches of the neckband
	Method YokeMethod
	Stages []StageSpec
	Bed    int // needles of the bed, 0: pieces are not asked for
	Gauge  Num // stitches per 10 cm, 0: widths are not asked for
	// Had is the stitches found on the needles, by stage from 0, where they
	// are not the planned ones: the next stage is hung from these.
	Had map[int]int
}

// Cuts is for how many stages the method is published, 0 for any.
func (m YokeMethod) Cuts() int { return len(m.cuts()) }

// Stage is one stage as planned. The last of a plan is the neck itself.
type Stage struct {
	Exact     Num // stitches before rounding
	Count     int // stitches it is planned on
	Had       int // stitches found instead, 0 where none were told
	Decreases int // stitches lost against the stage before
	// Hangings are the maps that bring the stage before to this one, each as
	// Spread gives it; none for the first stage.
	Hangings [][]int
	Gap      int // fewest single needles between two doubled ones, -1 where no two are
	Pieces   []Piece
	Width    Num // cm laid flat once around, 0 without a gauge
	Below    Num // cm from the lower edge of the yoke, 0 without heights
	Warnings []YokeWarning
}

// Stitches is what the stage is hung from: those found, else the planned.
func (s Stage) Stitches() int {
	if s.Had > 0 {
		return s.Had
	}
	return s.Count
}

// RoundedBy is how far rounding moved the count, in stitches.
func (s Stage) RoundedBy() Num { return Int(int64(s.Count)).Sub(s.Exact) }

// WarningCode names what a stage's plan should be looked at for.
type WarningCode string

// The warnings of a stage.
const (
	// SteepCut: more than one stitch in three goes at once, and the knitting
	// puckers: needles that carry two then
	// stand side by side. Value is the share lost. (Common practice; sequence B's
	// published last cut of two in five is over it.)
	SteepCut WarningCode = "steep_cut"
	// BrokenRepeat: the count was given and is no whole number of repeats.
	// Lower and Higher are the counts beside it that are.
	BrokenRepeat WarningCode = "broken_repeat"
	// SeveralHangings: a needle would need more than two stitches, so the cut
	// is made in Value hangings.
	SeveralHangings WarningCode = "several_hangings"
)

// YokeWarning is a warning with the numbers its sentence needs.
type YokeWarning struct {
	Code          WarningCode
	Value         Num
	Lower, Higher int
}

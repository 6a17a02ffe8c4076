package engine

// Plan is a neckband worked out from its inputs. It is not changed once it is
// solved, so one plan may be read from everywhere. What could not be worked out
// yet reads as zero: Value and Float tell whether a result is there. Lengths
// are cm unless noted.
type Plan struct {
	In Inputs

	// Stitches.
	NeckWanted     Num // said, or from the body's neck
	WantedStitches Num
	BandStitches   int
	NeckResult     Num
	Smaller        Choice // the next closing count down
	Larger         Choice // the next closing count up
	SeamWidth      Num

	// Bed and yoke.
	FitsBed       bool
	Pieces        int    // pieces the bed needs
	BedChoice     Choice // most stitches that fit the bed
	YokeDecreases int    // below 0: the yoke is too small
	FitsYoke      bool
	YokeChoice    Choice      // most stitches that the yoke fills
	Parts         []Part      // the pieces, nil where the bed takes the band at once
	Shares        []int       // stitches of each piece, with those for its joins
	Piece         *PiecePlace // of a piece of the band, see OnBed; nil for a whole band
	Stages        int         // stages of decreasing; more than one where decreases > N
	Hangings      []Hanging   // where Stages is more than one
	Rehang        []int       // stitches per needle from the left, for one stage

	// Rows.
	LayerRows      int
	TotalRows      int
	DepthResult    Num
	DepthReachable bool
	Doubled        bool
	Click          Num // change in stitch size per click, a fraction
	LayerClicks    int // sum of the clicks of one layer's rows
	FoldClicks     int // clicks of a layer's last row; the fold of a doubled band
	FoldRow        int // clicks looser of the fold row, 0 none
	TensionHeld    bool

	// Widths.
	FoldWidth              Num
	FoldCircumference      Num
	RelaxedCircumference   Num
	StretchedCircumference Num
	LeanDegrees            float64
	LeanClamped            bool
	HeadOpening            Num  // pullover
	EdgeOpening            Num  // what the sewn-off edge stretches to
	EdgeIsTighter          bool // the sewn-off edge decides, not the rib

	// Columns, from the left edge.
	RibColumns []int // to drop and latch
	HemColumns []int // bumps to hang
	HemWished  int   // bumps on the list before latched ones gave way

	// Yarn.
	LoopLength    float64 // cm in one stitch
	OffYarn       Num     // cm, sewing off
	YarnRows      Num     // the band's rows in rows at the garment's tension
	BandYarn      float64 // m
	BandYarnLow   float64 // m
	BandYarnHigh  float64 // m
	BandYarnGrams float64
	Yarn          YarnState
	YarnRate      Num // m in 100 g, said or from a weighed swatch

	Front *Front // the front bands, nil where nothing is said of them

	// The wearer.
	NeckBase    Num // from the girth halfway up
	HeadNeeded  Num // opening that the head asks for
	HeadMissing Num // of it, with the slit there is
	SlitExact   Num // slit that makes up what is missing
	SlitLength  Num // the same up to the next half centimetre
	BandSlope   float64
	TopRoom     Num // upper edge at rest less the neck halfway up; below 0 it stretches

	PitchRatio Num // stitch width over needle pitch

	// A mock rib.
	EmptyColumns []int // needles out of work, from the left edge
	WorkStitches int

	// A shaped neck edge.
	PickFront, PickBack, PickSleeves, PickTotal int
	PickDifference                              int // band's stitches less those picked up
	// The work above the band, nil where nothing was said of it.
	Yoke  *YokePlan
	Chart *ChartPlan

	has         known
	grading     grading
	layers      int
	bandTooWide bool

	loopLow, loopHigh float64 // cm, the ends of the estimate
}

// known is which groups of results could be worked out.
type known struct {
	neck, wanted, band, yoke, rows, depth, fold, relaxed, stretched, head,
	hem, loop, off, yarn, yarnSpan, grams, rate, neckBase, slope, topRoom, needed,
	mock, picks, front, back, pitch bool
}

// Solve works out what in allows. in has its defaults filled in; results that
// need what is not said are left out. It never fails.
func Solve(in Inputs) *Plan {
	p := &Plan{In: in}
	p.solveStitches()
	p.solveYoke()
	p.solveRows()
	p.solveWidths()
	p.solveComfort()
	p.solveRib()
	p.solvePieces()
	p.solveMock()
	p.solveWaiting()
	p.solveHem()
	p.solveYarn()
	p.solveShaped()
	p.solveMachine()
	p.solveFronts()
	p.solveChart()
	return p
}

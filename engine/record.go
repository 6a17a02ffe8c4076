package engine

import "strconv"

// Record is how one number came about, so that a reason can be told from the
// thing that made it. Expr is arithmetic with this plan's figures, in + - * /
// ( ) and sqrt, asin (radians), floor, min and max; it comes to Unrounded,
// within what its written figures leave (0.1 %).
type Record struct {
	Key       Key
	Rule      string // one of the Rule names
	From      []Key  // inputs and results it is made from
	Expr      string
	Inch      string // Expr in inches and stitches to the inch, where it is of lengths that were typed so; else ""
	Check     string // where the rounded value has a sum of its own: comes to Value
	Value     float64
	Unrounded float64
	Rounding  string // one of the Round codes: by it Value follows from Unrounded, which tests hold
}

// How a number was made whole.
const (
	RoundNone     = "none"
	RoundClosing  = "closing-nearest" // to the nearest count that closes, the larger on a tie
	RoundRows     = "rows-nearest"    // to the rows whose depth is nearest, the larger on a tie
	RoundRowsHeld = "rows-held"       // to the fewest or the most rows planned
	RoundDown     = "whole-down"
	RoundSlopes   = "slopes-nearest" // each of two equal parts to the nearest
	RoundHalfUp   = "half-up"        // up to the next half
	RoundUp       = "whole-up"
	RoundNearest  = "whole-nearest"
	RoundFraction = "fraction-nearest" // to the nearest fraction with a denominator up to 10
	RoundRepeat   = "repeats-nearest"  // to whole repeats, the larger on a tie
)

// The rules a number can come from.
const (
	RuleSaid       = "said"
	RuleBody       = "neck-from-body"
	RuleClick      = "click-from-number"
	RuleWanted     = "width-times-gauge"
	RuleCloses     = "closing-count"
	RuleNeck       = "neck-of-count"
	RuleYoke       = "yoke-less-band"
	RuleCentred    = "centred-on-bed"
	RuleRows       = "rows-for-depth"
	RuleTotal      = "rows-of-layers"
	RuleDepth      = "depth-of-rows"
	RuleFoldClicks = "clicks-at-fold"
	RuleSeam       = "width-of-count"
	RuleFold       = "width-at-fold"
	RuleRelaxed    = "rib-relaxed"
	RuleStretched  = "rib-stretched"
	RuleLean       = "lean-of-cone"
	RuleColumns    = "purl-columns"
	RuleLoops      = "columns-times-rows"
	RuleHem        = "hem-bumps"
	RuleOff        = "backstitch-yarn"
	RuleYarn       = "yarn-of-rows"
	RuleGrams      = "grams-of-length"
	RuleLoop       = "loop-from-gauge"
	RuleHead       = "weaker-edge"

	RuleNeckBase       = "base-from-middle"
	RuleHeadNeeded     = "head-and-room"
	RuleHeadMissing    = "head-less-opening"
	RuleHeadLargest    = "opening-less-room"
	RuleSlit           = "half-of-missing"
	RuleSlope          = "slope-of-cone"
	RuleTopRoom        = "edge-less-neck"
	RuleMock           = "needles-in-work"
	RuleMockYarn       = "yarn-of-mock-rib"
	RulePickPiece      = "stitches-of-piece"
	RulePickTotal      = "sum-of-pieces"
	RulePickDifference = "band-less-picked"
	RulePitchRatio     = "stitch-over-pitch"
	RuleFollows        = "as-the-neckband"
	RuleUsual          = "usual"
	RuleFrontEdge      = "rows-of-edge"
	RulePickUp         = "edge-times-gauge"
	RuleFraction       = "best-fraction"
	RuleFractionOff    = "error-of-fraction"
	RuleFrontLength    = "edge-of-count"
	RulePieces         = "pieces-of-bed"
	RuleJoins          = "joins-of-pieces"
	RuleParts          = "parts-of-yoke"
	RuleMost           = "widest-row"
	RuleFrontRows      = "rows-of-width"
	RuleFrontTotal     = "front-rows-of-layers"
	RuleFrontWidth     = "width-of-rows"
	RuleHoleGap        = "gaps-between-holes"
	RuleHoleDistance   = "hole-to-hole"
	RuleHolesAt        = "holes-at-distance"
	RuleButton         = "fit-of-button"
	RuleFrontYarn      = "yarn-of-front-bands"
	RuleClosing        = "closing-row"
	RuleAllYarn        = "yarn-together"
	RuleFromWeight     = "length-from-weight"
	RuleLoopWeight     = "loop-from-weight"
	RuleTex            = "tex-of-length"
	RuleTightness      = "tightness-factor"
	RuleBodyCount      = "body-of-bust"
	RuleYokeBase       = "percentages"
	RuleQuarter        = "quarter-of-girth"
	RulePublished      = "between-published"
	RuleStages         = "stages-told"
	RuleYokeNeck       = "neck-of-band"
	RuleWaiting        = "last-stage"
	RuleStage          = "stage-between"
	RuleCut            = "share-of-cut"
	RuleGap            = "closest-doubled"
	RuleOnePiece       = "bed-from-stage"
	RuleYokeRows       = "rows-of-yoke"
	RuleYokeDepth      = "depth-of-yoke"
	RuleChart          = "chart-as-said"
	RuleFloat          = "float-in-row"
	RuleFloatMost      = "float-limit"
	RuleColourDial     = "looser-for-colour"
	RuleChartYarn      = "yarn-of-chart"
)

// Record is how number k of the plan came about; ok is false where it is not
// there or is no single number. An input that is no number (the garment, the
// rib) has a record without figures.
func (p *Plan) Record(k Key) (Record, bool) {
	if p.In.Has(k) {
		return p.said(k, k), true
	}
	for _, part := range [...]func(Key) (Record, bool){p.recordStitches, p.recordOnBed, p.recordRows, p.recordWidths, p.recordYarn,
		p.recordComfort, p.recordMock, p.recordShaped, p.recordMachine, p.recordYarns, p.recordFront, p.recordYoke, p.recordChart} {
		if r, ok := part(k); ok {
			r.Key = k
			if r.Rounding == "" {
				r.Rounding = RoundNone
			}
			if r.Rounding == RoundNone {
				r.Unrounded = r.Value
			}
			return r, true
		}
	}
	return Record{}, false
}

// said is the record of a number under k that the knitter gave as from.
func (p *Plan) said(k, from Key) Record {
	r := Record{Key: k, Rule: RuleSaid, From: []Key{from}, Rounding: RoundNone}
	if IsNumber(from) {
		n := p.In.Num(from)
		r.Expr, r.Value, r.Unrounded = fig(n), n.Float(), n.Float()
	}
	return r
}

// fig is a number as it is written in an expression: up to four decimals, more
// only where a small number would lose its figures.
func fig(n Num) string {
	if n.IsInt() && n.Sign() >= 0 {
		return n.String()
	}
	return figure(n.Float())
}

func figure(f float64) string {
	decimals := 4
	for small := f; small != 0 && small < 0.1 && small > -0.1 && decimals < 12; small *= 10 {
		decimals++
	}
	s := strconv.FormatFloat(f, 'f', decimals, 64)
	if n, err := strconv.ParseFloat(s, 64); err == nil {
		s = strconv.FormatFloat(n, 'f', -1, 64)
	}
	if f < 0 {
		return "(" + s + ")"
	}
	return s
}

// percent is a click's effect as it is written: a share of the stitch.
func (p *Plan) percent() string { return fig(p.Click.Mul(Int(100))) + " / 100" }

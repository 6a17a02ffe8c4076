package engine

import "slices"

// Key names one thing the conversation is about: something the knitter says
// (an input) or something the plan works out (a result). The text is the one
// used in JSON and in rules/.
type Key string

// WithoutKey is list without k, which stays as it is.
func WithoutKey(list []Key, k Key) []Key {
	return slices.DeleteFunc(slices.Clone(list), func(x Key) bool { return x == k })
}

// What the knitter says. Lengths are cm, gauges per 10 cm, unless noted.
const (
	KeyGarment      Key = "garment"
	StitchGauge     Key = "stitch_gauge"
	RowGauge        Key = "row_gauge"
	Neck            Key = "neck"
	KeyRib          Key = "rib"
	Depth           Key = "depth"
	DepthRows       Key = "depth_rows"
	Layers          Key = "layers"
	EdgeStitches    Key = "edge_stitches"
	FrontBand       Key = "front_band"
	SeamStitches    Key = "seam_stitches"
	HemEvery        Key = "hem_every"
	MainTension     Key = "main_tension"
	DialMin         Key = "dial_min"
	ClicksPerNumber Key = "clicks_per_number"
	RowsPerClick    Key = "rows_per_click"
	StartClicks     Key = "start_clicks"
	NumberEffect    Key = "number_effect" // percent
	ClickEffect     Key = "click_effect"  // percent
	FoldRow         Key = "fold_row"      // clicks looser
	BedNeedles      Key = "bed_needles"
	NeedlePitch     Key = "needle_pitch" // mm
	YokeStitches    Key = "yoke_stitches"
	RibDraw         Key = "rib_draw"
	RibStretch      Key = "rib_stretch"
	EdgeStretch     Key = "edge_stretch"
	Head            Key = "head"
	NeckBody        Key = "neck_body"
	Ease            Key = "ease"
	YarnLength      Key = "yarn_length" // m per 100 g
	YarnLeft        Key = "yarn_left"   // g
	RowYarn         Key = "row_yarn"    // cm per stitch
	YokeFirst       Key = "yoke_first"  // stitches of the yoke's first stage
	BodyStitches    Key = "body_stitches"
	Bust            Key = "bust"
	YokeNeck        Key = "yoke_neck" // stitches the yoke ends on
	YokeStages      Key = "stages"
	StageEdge       Key = "stage_edge"
	YokeDepthWanted Key = "yoke_depth"
	YokeRows        Key = "yoke_rows"
	ChartStage      Key = "chart_stage"
	ChartStitches   Key = "chart_stitches"
	ChartTimes      Key = "chart_times"
	FloatLimit      Key = "float_limit"    // cm
	FloatStitches   Key = "float_stitches" // the same in stitches, instead
)

// What the knitter says in words or lists rather than one number.
const (
	KeyYokeMethod Key = "yoke_method"
	StageRepeats  Key = "stage_repeats" // whole numbers, by stage
	StageHeights  Key = "stage_heights" // cm, by stage
	StageHad      Key = "stage_had"     // counts found on the needles: "2=131"
	KeyChart      Key = "chart"         // rows of x and . in the order of knitting
	ChartPlace    Key = "chart_place"
)

// What the plan works out.
const (
	WantedStitches         Key = "wanted_stitches"
	BandStitches           Key = "band_stitches"
	NeckResult             Key = "neck_result"
	YokeDecreases          Key = "yoke_decreases"
	Rehang                 Key = "rehang"
	LeftNeedle             Key = "left_needle"
	RightNeedle            Key = "right_needle"
	LayerRows              Key = "layer_rows"
	TotalRows              Key = "total_rows"
	DepthResult            Key = "depth_result"
	Tension                Key = "tension"
	FoldClicks             Key = "fold_clicks"
	SeamWidth              Key = "seam_width"
	FoldCircumference      Key = "fold_circumference"
	RelaxedCircumference   Key = "relaxed_circumference"
	StretchedCircumference Key = "stretched_circumference"
	LeanDegrees            Key = "lean_degrees"
	RibColumns             Key = "rib_columns"
	ColumnCount            Key = "column_count"
	LoopsToLatch           Key = "loops_to_latch"
	HemNeedles             Key = "hem_needles"
	HemCount               Key = "hem_count"
	OffYarn                Key = "off_yarn"
	BandYarn               Key = "band_yarn"
	BandYarnLow            Key = "band_yarn_low"
	BandYarnHigh           Key = "band_yarn_high"
	BandYarnGrams          Key = "band_yarn_grams"
	LoopLength             Key = "loop_length"
	HeadOpening            Key = "head_opening"
)

// What is worked out of the yoke above the band. Lists are by stage, the neck
// last unless noted.
const (
	StageCounts     Key = "stage_counts"
	StageDecreases  Key = "stage_decreases" // lost on the way to each stage after the first
	StageErrors     Key = "stage_errors"    // stitches that rounding moved each count
	StageCuts       Key = "stage_cuts"      // percent lost, as stage_decreases
	StagePieces     Key = "stage_pieces"
	StageNeedles    Key = "stage_needles" // first and last needle of each piece
	StageRehang     Key = "stage_rehang"  // stitches per needle, every hanging of each stage
	StageRowsKey    Key = "stage_rows"    // without the neck
	LargestCut      Key = "largest_cut"   // percent
	DoubledGap      Key = "doubled_gap"   // fewest single needles between two doubled ones
	OnePieceFrom    Key = "one_piece_from"
	YokeRowsResult  Key = "yoke_rows_result"
	YokeDepthResult Key = "yoke_depth_result"
	YokeDepthLow    Key = "yoke_depth_low"  // published for the bust
	YokeDepthHigh   Key = "yoke_depth_high" // the same
	YokeDepthRule   Key = "yoke_depth_rule" // a quarter of the girth
	YokeSlope       Key = "yoke_slope"
)

// What is worked out of a colour chart. Lists are by row as it is knitted.
const (
	ChartRows       Key = "chart_rows"
	ChartRepeat     Key = "chart_repeat"
	ChartWidth      Key = "chart_width"   // stitches of a row
	ChartNeedles    Key = "chart_needles" // to bring forward, from the centre out
	ChartContrast   Key = "chart_contrast"
	ChartMain       Key = "chart_main"
	ChartCatches    Key = "chart_catches"
	FloatLongest    Key = "float_longest"
	FloatLongestCm  Key = "float_longest_cm"
	FloatMost       Key = "float_most" // stitches a float may pass
	ColourDial      Key = "colour_dial"
	MainYarn        Key = "main_yarn"     // m, of the stage
	ContrastYarn    Key = "contrast_yarn" // the same
	MainGrams       Key = "main_grams"
	ContrastGrams   Key = "contrast_grams"
	ChartMainYarn   Key = "chart_main_yarn" // cm, by row
	ChartSecondYarn Key = "chart_contrast_yarn"
)

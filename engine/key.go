package engine

// Key names one thing the conversation is about: something the knitter says
// (an input) or something the plan works out (a result). The text is the one
// used in JSON and in rules/.
type Key string

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
)

// What the knitter says in words or lists rather than one number.
const (
	KeyYokeMethod Key = "yoke_method"
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

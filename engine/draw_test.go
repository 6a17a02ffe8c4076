package engine

import "pgregory.net/rapid"

// fataler is what the helpers need of a test, a benchmark or a rapid draw.
type fataler interface{ Fatalf(string, ...any) }

// with is in with one input after another set from its text.
func with(t fataler, in Inputs, pairs ...string) Inputs {
	for i := 0; i+1 < len(pairs); i += 2 {
		next, ok := in.Parse(Key(pairs[i]), pairs[i+1])
		if !ok {
			t.Fatalf("cannot set %s to %q", pairs[i], pairs[i+1])
		}
		in = next
	}
	return in
}

// usual is the defaults of the design's table, with 1x1 rib's factors.
func usual(t fataler) Inputs {
	return with(t, Inputs{},
		"layers", "2", "edge_stitches", "2", "front_band", "3", "seam_stitches", "1",
		"hem_every", "2", "dial_min", "1", "clicks_per_number", "2", "rows_per_click", "2",
		"start_clicks", "0", "number_effect", "9/2", "fold_row", "0", "bed_needles", "150",
		"needle_pitch", "13/2", "rib_draw", "7/10", "rib_stretch", "49/25",
		"edge_stretch", "7/5", "ease", "2")
}

// cardigan is a whole plan on the usual defaults: 22/30 in 10 cm, a 42 cm
// neck, 1x1, 3 cm deep.
func cardigan(t fataler) Inputs {
	return with(t, usual(t), "garment", "cardigan", "stitch_gauge", "22", "row_gauge", "30",
		"neck", "42", "rib", "1x1", "depth", "3", "main_tension", "5",
		"yoke_stitches", "120", "yarn_length", "225", "yarn_left", "50")
}

// pullover is a whole plan in 2x2 with a head to pass, in inches and a swatch:
// 40 stitches measured 18 cm, 16 in of neck, 10 rows, one fold row.
func pullover(t fataler) Inputs {
	return with(t, usual(t), "garment", "pullover", "stitch_gauge", "200/9", "row_gauge", "31",
		"neck", "1016/25", "rib", "2x2", "depth_rows", "10", "fold_row", "6",
		"rib_stretch", "223/100", "head", "56", "row_yarn", "9/5", "yarn_length", "200")
}

// fronts is in with front bands: a 52 cm edge and seven buttonholes for 20 mm
// buttons.
func fronts(t fataler, in Inputs) Inputs {
	return with(t, in, "front_edge", "52", "neckband_end", "1", "buttonholes", "7", "hole_margin", "3", "button", "20")
}

// near reports whether two numbers agree to all digits that are shown.
func near(a, b float64) bool { return a-b < 1e-6 && b-a < 1e-6 }

// drawInputs is a whole plan's inputs drawn from the possible spans, in tenths
// and thirds as people give them, with what may be unsaid now and then unsaid.
func drawInputs(t *rapid.T) Inputs {
	in := usual(t)
	tenths := func(k Key, low, high int) {
		in = in.With(k, Frac(int64(rapid.IntRange(low*10, high*10).Draw(t, string(k))), 10))
	}
	whole := func(k Key, low, high int) {
		in = in.With(k, wholeNum(rapid.IntRange(low, high).Draw(t, string(k))))
	}
	maybe := func(k Key, draw func(Key, int, int), low, high int) {
		if rapid.Bool().Draw(t, "has "+string(k)) {
			draw(k, low, high)
		}
	}
	in = in.WithGarment(rapid.SampledFrom([]Garment{Cardigan, Pullover}).Draw(t, "garment"))
	in = in.WithRib(rapid.SampledFrom([]Rib{Plain(), {1, 1}, {2, 1}, {2, 2}, {3, 1}, {1, 2}, {3, 2}, {3, 3}}).Draw(t, "rib"))
	// A swatch: stitches over its width, and so for the rows.
	in = in.With(StitchGauge, Frac(int64(rapid.IntRange(100, 400).Draw(t, "swatch stitches")), int64(rapid.IntRange(80, 120).Draw(t, "swatch mm"))).Mul(Int(10)))
	tenths(RowGauge, 12, 60)
	tenths(Neck, 25, 90)
	tenths(Depth, 1, 12)
	maybe(DepthRows, whole, 2, 80)
	whole(Layers, 1, 2)
	whole(EdgeStitches, 0, 6)
	tenths(FrontBand, 1, 12)
	whole(SeamStitches, 0, 2)
	whole(HemEvery, 1, 6)
	maybe(MainTension, tenths, 0, 12)
	whole(ClicksPerNumber, 1, 4)
	whole(RowsPerClick, 0, 4)
	whole(StartClicks, 0, 4)
	tenths(NumberEffect, 1, 9)
	maybe(ClickEffect, tenths, 1, 5)
	whole(FoldRow, 0, 9)
	maybe(YokeStitches, whole, 40, 300)
	maybe(Head, whole, 30, 70)
	maybe(YarnLength, whole, 30, 900)
	maybe(YarnLeft, whole, 1, 100)
	maybe(RowYarn, tenths, 1, 4)
	for _, k := range []Key{NeckMid, Slit} {
		maybe(k, tenths, 1, 50)
	}
	in = in.With(NeckFactor, Frac(111, 100)).With(PickRatio, Frac(4, 5))
	for _, k := range []Key{FrontHeld, FrontRows, BackHeld, BackRows, SleeveHeld} {
		maybe(k, whole, 0, 60)
	}
	in, _ = in.WithText(KeyBandKind, rapid.SampledFrom([]string{BandLatched, BandMock, BandRolled}).Draw(t, "kind"))
	maybe(StitchWeight, tenths, 1, 20)
	if rapid.Bool().Draw(t, "fronts") {
		in, _ = in.WithText(KeyFrontRib, rapid.SampledFrom([]string{"", "plain", "1x1", "2x2"}).Draw(t, "front rib"))
		maybe(FrontEdge, tenths, 2, 200)
		maybe(EdgeRows, whole, 10, 900)
		whole(NeckbandEnd, 0, 1)
		maybe(FrontGauge, tenths, 5, 60)
		maybe(FrontRowGauge, tenths, 6, 90)
		maybe(FrontLayers, whole, 1, 2)
		maybe(FrontCount, whole, 5, 400)
		maybe(Holes, whole, 1, 20)
		maybe(HoleSpacing, tenths, 1, 20)
		maybe(HoleStitches, whole, 1, 8)
		whole(HoleMargin, 0, 20)
		maybe(Button, whole, 3, 60)
	}
	if rapid.Bool().Draw(t, "a yoke") {
		in = drawYoke(t, in)
	}
	in = in.With(RibDraw, Frac(int64(rapid.IntRange(40, 100).Draw(t, "draw")), 100))
	return in
}

// drawYoke adds a yoke and a chart, drawn from what a knitter may say.
func drawYoke(t *rapid.T, in Inputs) Inputs {
	whole := func(k Key, low, high int) {
		if rapid.Bool().Draw(t, "has "+string(k)) {
			in = in.With(k, wholeNum(rapid.IntRange(low, high).Draw(t, string(k))))
		}
	}
	text := func(k Key, choices ...string) {
		if rapid.Bool().Draw(t, "has "+string(k)) {
			next, ok := in.WithText(k, rapid.SampledFrom(choices).Draw(t, string(k)))
			if !ok {
				t.Fatalf("%s takes none of %q", k, choices)
			}
			in = next
		}
	}
	whole(YokeFirst, 20, 600)
	whole(BodyStitches, 60, 400)
	whole(Bust, 40, 160)
	whole(YokeNeck, 10, 200)
	whole(YokeStages, 1, 9)
	whole(StageEdge, 0, 3)
	whole(YokeDepthWanted, 8, 40)
	whole(YokeRows, 10, 120)
	whole(ChartStage, 1, 6)
	whole(ChartStitches, 4, 400)
	whole(ChartTimes, 1, 3)
	whole(FloatLimit, 1, 5)
	whole(FloatStitches, 2, 8)
	text(KeyYokeMethod, TextChoices(KeyYokeMethod)...)
	text(StageRepeats, "12 8 6", "4", "6 6 3 2 2", "24 12")
	text(StageHeights, "8 6 4", "5", "17/2 4 3 2")
	text(StageHad, "1=240", "2=131 3=98", "1=90")
	text(KeyChart, "x...", "x..x../.xx.", "xx", ".x/x./..", "x......x........")
	text(ChartPlace, TextChoices(ChartPlace)...)
	return in
}

package rules

import (
	"testing"

	"foldrow/engine"
)

func num(t *testing.T, s string) engine.Num {
	t.Helper()
	n, ok := engine.ParseNum(s)
	if !ok {
		t.Fatalf("not a number: %s", s)
	}
	return n
}

// The spans that the design lays down.
func TestSpans(t *testing.T) {
	b := book(t)
	tests := []struct {
		key                                  engine.Key
		usualLow, usualHigh, posLow, posHigh string
	}{
		{engine.Neck, "34", "60", "25", "90"},
		{engine.Depth, "1.5", "6", "0.5", "20"},
		{engine.StitchGauge, "12", "40", "5", "60"},
		{engine.RowGauge, "14", "60", "6", "90"},
		{engine.FrontBand, "1.5", "6", "0.8", "12"},
		{engine.Head, "33", "64", "30", "70"},
		{engine.NeckBody, "22", "50", "18", "60"},
		{engine.BedNeedles, "100", "250", "20", "300"},
		{engine.NeedlePitch, "3.5", "9", "2", "12"},
		{engine.YokeStitches, "40", "300", "10", "800"},
		{engine.DepthRows, "4", "24", "2", "80"},
		{engine.MainTension, "1", "10", "0", "15"},
		{engine.EdgeStitches, "1", "3", "0", "6"},
		{engine.HemEvery, "1", "3", "1", "6"},
		{engine.YarnLength, "80", "500", "30", "3000"},
	}
	for _, tt := range tests {
		k, _ := b.Key(tt.key)
		got := [4]engine.Num{k.Usual[0], k.Usual[1], k.Possible[0], k.Possible[1]}
		for i, s := range []string{tt.usualLow, tt.usualHigh, tt.posLow, tt.posHigh} {
			if !got[i].Equal(num(t, s)) {
				t.Errorf("%s: usual %v, possible %v", tt.key, k.Usual, k.Possible)
				break
			}
		}
		if k.SpanReason == "" {
			t.Errorf("%s: no reason for its span", tt.key)
		}
	}
}

func TestEveryNumberHasAReasonForItsSpan(t *testing.T) {
	for _, k := range book(t).Keys {
		if engine.IsNumber(k.Key) != (k.SpanReason != "") {
			t.Errorf("%s: span reason %q", k.Key, k.SpanReason)
		}
	}
}

// The defaults that the design lays down, and nothing else.
func TestDefaults(t *testing.T) {
	b := book(t)
	want := map[engine.Key]string{
		engine.Layers: "2", engine.EdgeStitches: "2", engine.FrontBand: "3", engine.SeamStitches: "1",
		engine.HemEvery: "2", engine.DialMin: "1", engine.ClicksPerNumber: "2", engine.RowsPerClick: "2",
		engine.StartClicks: "0", engine.NumberEffect: "4.5", engine.FoldRow: "0", engine.BedNeedles: "150",
		engine.NeedlePitch: "6.5", engine.EdgeStretch: "1.4", engine.Ease: "2",
	}
	for _, tt := range []struct{ rib, draw, stretch string }{
		{"", "", ""}, {"1x1", "0.70", "1.96"}, {"2x2", "0.62", "2.23"}, {"plain", "1", "1.2"},
	} {
		rib, _ := engine.ParseRib(tt.rib)
		in := b.Defaults(rib)
		for _, k := range engine.InputKeys() {
			text := want[k]
			switch k {
			case engine.RibDraw:
				text = tt.draw
			case engine.RibStretch:
				text = tt.stretch
			}
			if engine.IsText(k) {
				text = ""
			}
			if in.Has(k) != (text != "") {
				t.Errorf("rib %q: %s set is %v", tt.rib, k, in.Has(k))
				continue
			}
			if text != "" && !in.Num(k).Equal(num(t, text)) {
				t.Errorf("rib %q: %s = %s, want %s", tt.rib, k, in.Num(k), text)
			}
		}
	}
}

func TestDimensions(t *testing.T) {
	b := book(t)
	for key, want := range map[engine.Key]Dimension{
		engine.KeyGarment: Choice, engine.KeyRib: Choice, engine.StitchGauge: Gauge, engine.RowGauge: Gauge,
		engine.Neck: Girth, engine.Head: Girth, engine.NeckBody: Girth, engine.Depth: Length,
		engine.DepthRows: Rows, engine.RowsPerClick: Rows, engine.Layers: LayersDim, engine.HemEvery: Bumps,
		engine.FrontBand: Length, engine.Ease: Length, engine.MainTension: Dial, engine.DialMin: Dial,
		engine.StartClicks: Clicks, engine.FoldRow: Clicks, engine.ClicksPerNumber: Clicks,
		engine.NumberEffect: Percent, engine.ClickEffect: Percent, engine.RibDraw: Ratio,
		engine.RibStretch: Ratio, engine.EdgeStretch: Ratio, engine.BedNeedles: Needles,
		engine.NeedlePitch: Millimetres, engine.EdgeStitches: Stitches, engine.SeamStitches: Stitches,
		engine.YokeStitches: Stitches, engine.YarnLength: YarnCount, engine.YarnLeft: Grams, engine.RowYarn: PerStitch,
	} {
		if k, _ := b.Key(key); k.Dimension != want {
			t.Errorf("%s is %s, want %s", key, k.Dimension, want)
		}
	}
}

// A knitter's names for a thing, and the card that must own each.
func TestWordsOfKeys(t *testing.T) {
	owner := map[string]engine.Key{}
	for _, k := range book(t).Keys {
		for _, w := range k.Words {
			owner[w] = k.Key
		}
	}
	for word, want := range map[string]engine.Key{
		"neckline": engine.Neck, "neck opening": engine.Neck, "circumference": engine.Neck,
		"hang every": engine.HemEvery, "every other bump": engine.HemEvery, "hem spacing": engine.HemEvery,
		"gauge": engine.StitchGauge, "sts per inch": engine.StitchGauge, "rows to the inch": engine.RowGauge,
		"ribbing": engine.KeyRib, "band width": engine.Depth, "button band": engine.FrontBand, "selvage": engine.EdgeStitches,
		"stitch dial": engine.MainTension, "tension": engine.MainTension, "yoke": engine.YokeStitches, "draw in": engine.RibDraw,
		"hat size": engine.Head, "my neck": engine.NeckBody, "ease": engine.Ease, "yardage": engine.YarnLength,
		"leftover yarn": engine.YarnLeft, "yarn per row": engine.RowYarn, "fold row": engine.FoldRow,
	} {
		if owner[word] != want {
			t.Errorf("%q names %q, want %s", word, owner[word], want)
		}
	}
}

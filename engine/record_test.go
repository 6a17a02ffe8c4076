package engine

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// TestRecordsByHand: the arithmetic reads as a person would write it.
func TestRecordsByHand(t *testing.T) {
	c, pl := Solve(cardigan(t)), Solve(pullover(t))
	for _, r := range []struct {
		plan        *Plan
		key         Key
		rule        string
		expr, check string
		rounding    string
	}{
		{c, WantedStitches, RuleWanted, "(42 - 3) * 22 / 10 + 2 * 1", "", RoundNone},
		{c, BandStitches, RuleCloses, "(42 - 3) * 22 / 10 + 2 * 1", "2 * 2 + 42 * 1 + 41 * 1", RoundClosing},
		{c, NeckResult, RuleNeck, "(87 - 2 * 1) * 10 / 22 + 3", "", RoundNone},
		{c, LayerRows, RuleRows, "3 * 30 / 10 + 16 * 2.25 / 100", "", RoundRows},
		{c, DepthResult, RuleDepth, "(9 - 16 * 2.25 / 100) * 10 / 30", "", RoundNone},
		{c, FoldClicks, RuleFoldClicks, "0 + floor((9 - 1) / 2)", "", RoundNone},
		{c, ClickEffect, RuleClick, "4.5 / 2", "", RoundNone},
		{c, YokeDecreases, RuleYoke, "120 - 87", "", RoundNone},
		{c, HemCount, RuleHem, "floor((87 - 3) / 2) + 1", "", RoundNone},
		{c, LeftNeedle, RuleCentred, "(87 + 1) / 2", "", RoundDown},
		{c, LeanDegrees, RuleLean, "asin(38.6364 * 4 * 2.25 / 100 / (2 * 3.1416 * 2.88)) * 180 / 3.1416", "", RoundNone},
		{c, BandYarnLow, RuleYarn, "(87 * sqrt(19 * 100 / (22 * 30)) * (2 * (9 - 16 * 2.25 / 100) + 1) + 199.65) / 100", "", RoundNone},
		{c, Neck, RuleSaid, "42", "", RoundNone},
		{c, KeyRib, RuleSaid, "", "", RoundNone},
		{pl, LayerRows, RuleSaid, "10", "", RoundNone},
		{pl, LoopLength, RuleSaid, "1.8", "", RoundNone},
		{pl, WantedStitches, RuleWanted, "40.64 * 22.2222 / 10 + 2 * 1", "", RoundNone},
		{pl, HeadOpening, RuleHead, "min(41.4 * (1 - 4 * 2.25 / 100) * 0.7 * 2.23, 41.4 * 1.4)", "", RoundNone},
		{pl, BandYarn, RuleYarn, "(94 * 1.8 * (2 * (10 - 20 * 2.25 / 100) + 1 + 6 * 2.25 / 100 + 1) + 213.3) / 100", "", RoundNone},
	} {
		got, ok := r.plan.Record(r.key)
		if !ok || got.Key != r.key || got.Rule != r.rule || got.Expr != r.expr || got.Check != r.check || got.Rounding != r.rounding {
			t.Errorf("%s: %+v (%v)", r.key, got, ok)
		}
	}
	body := Solve(with(t, cardigan(t).Without(Neck), "neck_body", "38"))
	if r, ok := body.Record(Neck); !ok || r.Rule != RuleBody || r.Expr != "38 + 2" || r.Value != 40 {
		t.Errorf("neck from the body: %+v (%v)", r, ok)
	}
	for _, k := range []Key{Rehang, Tension, RibColumns, HemNeedles, HeadOpening} {
		if r, ok := c.Record(k); ok {
			t.Errorf("%s has a record: %+v", k, r)
		}
	}
}

// TestRecordsComeTrue: for any plan, every number that is there has a record,
// made from things that are there; its arithmetic comes to the unrounded
// number, its rounding to the number.
func TestRecordsComeTrue(t *testing.T) {
	rules := Rules()
	rapid.Check(t, func(t *rapid.T) {
		p := Solve(drawInputs(t))
		for _, k := range append(InputKeys(), ResultKeys()...) {
			value, there := p.Float(k)
			r, ok := p.Record(k)
			if there && !ok {
				t.Fatalf("%s = %v has no record", k, value)
			}
			if !ok || r.Expr == "" {
				continue
			}
			if there && r.Value != value {
				t.Fatalf("%s = %v, its record says %v", k, value, r.Value)
			}
			if !slices.Contains(rules, r.Rule) || len(r.From) == 0 {
				t.Fatalf("%s: rule %q from %v", k, r.Rule, r.From)
			}
			for _, from := range r.From {
				if _, known := p.Value(from); !known && !p.In.Has(from) {
					if _, known = p.Float(from); !known {
						t.Fatalf("%s is made from %s, which is not there", k, from)
					}
				}
			}
			checkSums(t, r)
		}
		for i := 0; p.Yoke != nil && i < len(p.Yoke.Stages); i++ {
			if r, ok := p.StageRecord(i); !ok || r.Value != float64(p.Yoke.Stages[i].Count) {
				t.Fatalf("stage %d of %d has %d stitches, its record %+v", i+1, len(p.Yoke.Stages), p.Yoke.Stages[i].Count, r)
			} else if r.Expr != "" {
				checkSums(t, r)
			}
		}
	})
}

func checkSums(t *rapid.T, r Record) {
	got, err := evaluate(r.Expr)
	tolerance := 0.001*math.Abs(r.Unrounded) + 1e-9
	if (r.Key == LeanDegrees || r.Key == YokeSlope) && math.Abs(r.Value) > 80 {
		tolerance = 1 // the arcsine runs steep near lying flat, and figures are cut
	}
	switch r.Key {
	case TopRoom, HeadMissing, HeadLargest, SlitLength, FrontLength:
		tolerance += 0.0002 // differences of figures cut at four decimals
	case BandSlope:
		tolerance += 0.05
		if math.Abs(r.Value) > 80 {
			tolerance = 1
		}
	}
	if err != nil || math.Abs(got-r.Unrounded) > tolerance {
		t.Fatalf("%s: %s = %v (%v), want %v", r.Key, r.Expr, got, err, r.Unrounded)
	}
	if r.Check != "" {
		if got, err = evaluate(r.Check); err != nil || got != r.Value {
			t.Fatalf("%s: %s = %v (%v), want %v", r.Key, r.Check, got, err, r.Value)
		}
	}
	off := math.Abs(r.Value - r.Unrounded)
	switch r.Rounding {
	case RoundNone:
		if off != 0 {
			t.Fatalf("%s: %v is not rounded, yet %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundDown:
		if r.Value != math.Floor(r.Unrounded) {
			t.Fatalf("%s: %v down to %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundUp:
		if r.Value != math.Ceil(r.Unrounded) {
			t.Fatalf("%s: %v up to %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundNearest:
		if r.Value != math.Floor(r.Unrounded+0.5) {
			t.Fatalf("%s: %v to %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundFraction:
		if off > 0.05+1e-9 && off > r.Unrounded/2 {
			t.Fatalf("%s: %v to %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundRows:
		if off > 0.5+1e-9 {
			t.Fatalf("%s: %v rows to %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundHalfUp:
		if r.Value != math.Ceil(2*r.Unrounded-1e-9)/2 {
			t.Fatalf("%s: %v up to %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundSlopes:
		if off > 1+1e-9 {
			t.Fatalf("%s: %v to %v", r.Key, r.Unrounded, r.Value)
		}
	case RoundClosing, RoundRowsHeld, RoundRepeat:
		// Held against the plan itself in the tests of counts and of rows.
	default:
		t.Fatalf("%s: rounding %q", r.Key, r.Rounding)
	}
}

// Rules lists every rule a record can name.
func Rules() []string {
	return []string{RuleSaid, RuleBody, RuleClick, RuleWanted, RuleCloses, RuleNeck,
		RuleYoke, RuleCentred, RuleRows, RuleTotal, RuleDepth, RuleFoldClicks, RuleSeam,
		RuleFold, RuleRelaxed, RuleStretched, RuleLean, RuleColumns, RuleLoops, RuleHem,
		RuleOff, RuleYarn, RuleGrams, RuleLoop, RuleHead, RuleNeckBase, RuleHeadNeeded,
		RuleHeadMissing, RuleHeadLargest, RuleSlit, RuleSlope, RuleTopRoom, RuleMock, RuleMockYarn,
		RulePickPiece, RulePickTotal, RulePickDifference, RulePitchRatio,
		RuleFollows, RuleUsual, RuleFrontEdge, RulePickUp, RuleFraction, RuleFractionOff, RuleFrontLength,
		RulePieces, RuleJoins, RuleParts, RuleMost, RuleFrontRows, RuleFrontTotal, RuleFrontWidth, RuleHoleGap, RuleHoleDistance, RuleHolesAt,
		RuleButton, RuleFrontYarn, RuleClosing, RuleAllYarn, RuleFromWeight, RuleLoopWeight, RuleTex, RuleTightness,
		RuleBodyCount, RuleYokeBase, RuleQuarter,
		RulePublished, RuleStages, RuleYokeNeck, RuleWaiting, RuleStage, RuleCut, RuleGap, RuleOnePiece,
		RuleYokeRows, RuleYokeDepth, RuleChart, RuleFloat, RuleFloatMost, RuleColourDial, RuleChartYarn}
}

package engine

import "testing"

// aroundTheBand are the results that need something said about the wearer,
// the kind of band or its shaped edge.
func aroundTheBand() []Key {
	return []Key{HeadNeeded, HeadMissing, SlitLength, NeckBase, TopRoom, WorkStitches, EmptyNeedles,
		PickFront, PickBack, PickSleeves, PickTotal, PickDifference}
}

// TestAround: results about the wearer, the kind of band and a shaped edge,
// worked by hand.
func TestAround(t *testing.T) {
	p := pullover(t) // 94 stitches, 41.4 cm at the seam, 37.674 at the fold, opens to 57.96 at the sewn edge
	for _, c := range []struct {
		name string
		in   Inputs
		key  Key
		want float64
	}{
		{"head and 2 cm", p, HeadNeeded, 58},
		{"58 - 41.4*1.4", p, HeadMissing, 0.04},
		{"41.4*1.4 - 2", p, HeadLargest, 55.96},
		{"half of 0.04, up to the next half", p, SlitLength, 0.5},
		{"a slit opens twice: 57.96 + 2*3", with(t, p, "slit", "3"), HeadOpening, 63.96},
		{"and leaves nothing missing", with(t, p, "slit", "3"), HeadMissing, 0},
		{"but the slit it asks for stays", with(t, p, "slit", "3"), SlitLength, 0.5},
		{"70 - 57.96 = 12.04, half 6.02", with(t, p, "head", "68"), SlitLength, 6.5},
		{"33 * 1.126", with(t, p, "neck_mid", "33", "neck_factor", "1126/1000"), NeckBase, 37.158},
		{"37.674*0.7 - 33", with(t, p, "neck_mid", "33"), TopRoom, -6.6282},
		{"20 + 2*19 (24 rows * 0.8 = 19.2)", with(t, p, "neck_front_held", "20", "neck_front_rows", "24", "pick_ratio", "4/5"), PickFront, 58},
		{"40 + 2*5 (6 rows * 0.8 = 4.8)", with(t, p, "neck_back_held", "40", "neck_back_rows", "6", "pick_ratio", "4/5"), PickBack, 50},
		{"3 of 4 of 24 rows: 18 each", with(t, p, "neck_front_rows", "24", "pick_ratio", "3/4"), PickFront, 36},
		{"two sleeves of 8", with(t, p, "neck_sleeve_held", "8"), PickSleeves, 16},
		{"94 - 58 - 40 - 16", with(t, p, "neck_front_held", "20", "neck_front_rows", "24", "pick_ratio", "4/5", "neck_back_held", "40", "neck_sleeve_held", "8"), PickDifference, -20},
		{"100/22.2222 mm over 6.5", p, StitchPitch, 100 / (200.0 / 9) / 6.5},
		{"94 stitches of 2x2 less 46 purls", with(t, p, "band_kind", "mock"), WorkStitches, 48},
		{"nothing is latched", with(t, p, "band_kind", "mock"), LoopsToLatch, 0},
		{"a bump on every empty needle", with(t, p, "band_kind", "mock"), HemCount, 46},
		// (48 * 1.8 * (2 * 9.55 + 1.135) + 94 * 1.8 + 46 * 0.65 * 21 + 213.3) / 100
		{"yarn of a mock rib", with(t, p, "band_kind", "mock"), BandYarn, 27.58704},
	} {
		got, ok := Solve(c.in).Float(c.key)
		if !ok || !near(got, c.want) {
			t.Errorf("%s: %s = %v (%v), want %v", c.name, c.key, got, ok, c.want)
		}
	}
	if v, ok := Solve(with(t, p, "band_kind", "mock")).Value(EmptyNeedles); !ok || v.([]string)[0] != "L45" {
		t.Errorf("the first empty needle is %v", v)
	}
}

// TestSmallestNeck: no smaller closing count passes, and the one found does.
func TestSmallestNeck(t *testing.T) {
	for _, head := range []int64{40, 50, 56, 64} {
		p, ok := SmallestNeck(pullover(t), Int(head))
		passes, known := p.HeadPasses()
		if !ok || !passes || !known || !p.In.Num(Head).Equal(Int(head)) {
			t.Fatalf("head %d: %v %v %v", head, ok, passes, known)
		}
		less := Solve(p.In.With(Neck, p.Smaller.Neck))
		if passes, known = less.HeadPasses(); passes || !known || less.BandStitches != p.Smaller.Stitches {
			t.Errorf("head %d: %d stitches pass as well", head, p.Smaller.Stitches)
		}
	}
	if _, ok := SmallestNeck(cardigan(t), Int(56)); ok {
		t.Error("a cardigan has no smallest neck")
	}
}

// TestWhom: what is written is read back, and what names nobody is refused.
func TestWhom(t *testing.T) {
	for text, want := range map[string]Whom{
		"5 years": {Months: 60}, "girl 18 months": {Sex: "female", Months: 18}, "boy 1 year": {Sex: "male", Months: 12},
		"0 months": {}, "1 month": {Months: 1}, "woman 12": {Adult: true, Sex: "female", Size: "12"}, "woman 00": {Adult: true, Sex: "female", Size: "00"},
		"man XL": {Adult: true, Sex: "male", Size: "XL"}, "adult": {Adult: true},
	} {
		if got, ok := ParseWhom(text); !ok || got != want || got.String() != text {
			t.Errorf("%s: %+v (%v) %s", text, got, ok, got)
		}
	}
	for _, text := range []string{"", "5", "years", "man 12", "woman 13", "woman 22", "25 years", "-1 years", "girl", "dog 3 years", "woman 08"} {
		if w, ok := ParseWhom(text); ok {
			t.Errorf("%q is read as %+v", text, w)
		}
	}
}

package engine

import (
	"errors"
	"reflect"
	"slices"
	"testing"
)

func counts(stages []Stage) []int {
	var ns []int
	for _, s := range stages {
		ns = append(ns, s.Count)
	}
	return ns
}

func TestStagesPublished(t *testing.T) {
	for _, row := range published(t, "yoke-stages.csv") {
		want, outside := wholes(t, row["counts"]), whole(t, row["outside"])
		for i := range want {
			want[i] -= outside
		}
		n := len(want) - 1
		got, err := Stages(YokeSpec{
			Start: want[0], Neck: want[n], Method: YokeMethod(row["method"]), Stages: make([]StageSpec, n),
		})
		if err != nil || !slices.Equal(counts(got), want) {
			t.Errorf("%s: %v %v, want %v", row["id"], counts(got), err, want)
		}
	}
}

func TestStages(t *testing.T) {
	h := func(cm ...int64) []StageSpec {
		var s []StageSpec
		for _, c := range cm {
			s = append(s, StageSpec{Height: Int(c)})
		}
		return s
	}
	tests := []struct {
		name string
		y    YokeSpec
		want []int
	}{
		{"cone on equal heights is equal cuts", YokeSpec{Start: 184, Neck: 74, Method: StraightCone, Stages: h(3, 3, 3, 3, 3)},
			[]int{184, 162, 140, 118, 96, 74}},
		{"cone on other heights", YokeSpec{Start: 240, Neck: 100, Method: StraightCone, Stages: h(10, 6, 4)},
			[]int{240, 170, 128, 100}},
		{"the repeat wins over equal cuts", YokeSpec{Start: 241, Neck: 97, Method: EqualCuts,
			Stages: []StageSpec{{Repeat: 12, Edge: 1}, {Repeat: 10, Edge: 1}, {Repeat: 6, Edge: 1}}}, []int{241, 191, 145, 97}},
		{"a tie takes the larger", YokeSpec{Start: 100, Neck: 50, Method: EqualCuts,
			Stages: []StageSpec{{}, {Repeat: 10}}}, []int{100, 80, 50}},
		{"no more than the stage before", YokeSpec{Start: 104, Neck: 90, Method: EqualCuts,
			Stages: []StageSpec{{}, {Repeat: 20}}}, []int{104, 100, 90}},
		{"the nearest is over the stage before", YokeSpec{Start: 99, Neck: 60, Method: EqualCuts,
			Stages: []StageSpec{{}, {Repeat: 25}, {}, {}}}, []int{99, 75, 75, 70, 60}},
		{"the nearest is under the neck", YokeSpec{Start: 99, Neck: 60, Method: EqualCuts,
			Stages: []StageSpec{{}, {}, {Repeat: 29}, {Repeat: 29}}}, []int{99, 89, 87, 87, 60}},
		{"a neck over the sequence's own", YokeSpec{Start: 268, Neck: 97, Method: SequenceB, Stages: h(0, 0, 0)},
			[]int{268, 201, 134, 97}},
	}
	for _, tt := range tests {
		got, err := Stages(tt.y)
		if err != nil || !slices.Equal(counts(got), tt.want) {
			t.Errorf("%s: %v %v, want %v", tt.name, counts(got), err, tt.want)
		}
	}
}

func TestStageDetail(t *testing.T) {
	got, err := Stages(YokeSpec{
		Start: 268, Neck: 80, Method: SequenceB, Bed: 150, Gauge: Int(20),
		Stages: []StageSpec{{Repeat: 12, Edge: 2, Height: Int(9)}, {Repeat: 12, Edge: 1, Height: Int(4)}, {Repeat: 6, Edge: 2, Height: Int(5)}},
	})
	if err != nil {
		t.Fatal(err)
	}
	// 268 is not 12n+2; 205 is the 12n+1 nearest to 201; the ratios run on the counts before rounding.
	if want := []int{268, 205, 134, 80}; !slices.Equal(counts(got), want) {
		t.Fatalf("counts %v, want %v", counts(got), want)
	}
	if w := got[0].Warnings; len(w) != 1 || w[0].Code != BrokenRepeat || w[0].Lower != 266 || w[0].Higher != 278 {
		t.Errorf("first stage: %+v", w)
	}
	if w := got[3].Warnings; len(w) != 1 || w[0].Code != SteepCut || !w[0].Value.Equal(Frac(54, 134)) {
		t.Errorf("neck: %+v", w)
	}
	if got[1].RoundedBy().String() != "4" || got[1].Decreases != 63 || got[1].Below.String() != "9" || got[3].Below.String() != "18" {
		t.Errorf("second stage: %s %d %s, neck at %s", got[1].RoundedBy(), got[1].Decreases, got[1].Below, got[3].Below)
	}
	if got[3].Width.String() != "40" {
		t.Errorf("neck is %s cm, want 40", got[3].Width)
	}
	type piece struct{ first, stitches, left, right int }
	want := [][]piece{
		{{0, 134, 67, 67}, {134, 134, 67, 67}},
		{{0, 97, 49, 48}, {97, 108, 54, 54}},
		{{0, 134, 67, 67}},
		{{0, 80, 40, 40}},
	}
	for i, s := range got {
		var ps []piece
		var hung []int
		for _, p := range s.Pieces {
			ps = append(ps, piece{p.First, p.Stitches, p.Left, p.Right})
			hung = append(hung, p.Hang...)
		}
		if !slices.Equal(ps, want[i]) {
			t.Errorf("stage %d: pieces %v, want %v", i, ps, want[i])
		}
		if i > 0 && !slices.Equal(hung, Spread(got[i-1].Count, s.Count)) {
			t.Errorf("stage %d: the pieces do not hang the stage before", i)
		}
	}
}

func TestStagesSeveralHangings(t *testing.T) {
	got, err := Stages(YokeSpec{Start: 268, Neck: 80, Method: EqualCuts, Stages: make([]StageSpec, 1)})
	if err != nil || len(got[1].Hangings) != 2 || len(got[1].Warnings) != 2 || got[1].Warnings[1].Code != SeveralHangings {
		t.Errorf("%+v %v", got, err)
	}
}

func TestStagesImpossible(t *testing.T) {
	three := make([]StageSpec, 3)
	tests := []struct {
		y    YokeSpec
		want error
	}{
		{YokeSpec{Start: 268, Neck: 80, Method: SequenceC, Stages: three}, &CutsError{SequenceC, 3, 4}},
		{YokeSpec{Start: 268, Neck: 80, Method: EqualCuts}, &CutsError{EqualCuts, 0, 1}},
		{YokeSpec{Start: 80, Neck: 80, Method: EqualCuts, Stages: three}, &NeckError{80, 79}},
		{YokeSpec{Start: 268, Neck: 140, Method: SequenceB, Stages: three}, &NeckError{140, 134}},
		{YokeSpec{Start: 268, Neck: 80, Method: StraightCone, Stages: []StageSpec{{Height: Int(3)}, {}}}, &HeightError{1}},
		{YokeSpec{Start: 104, Neck: 90, Method: EqualCuts, Stages: []StageSpec{{}, {Repeat: 40, Edge: 1}}},
			&RepeatError{Stage: 1, Repeat: 40, Edge: 1, Least: 90, Most: 104, Lower: 81, Higher: 121}},
		{YokeSpec{Start: 120, Neck: 50, Method: EqualCuts, Bed: 50, Stages: []StageSpec{{Repeat: 60}}}, &PieceError{0, 60, 0, 50}},
	}
	for _, tt := range tests {
		_, err := Stages(tt.y)
		if !reflect.DeepEqual(err, tt.want) {
			t.Errorf("%+v: %v, want %v", tt.y, err, tt.want)
		}
	}
	// A NeckError's Most is a neck that works.
	y := YokeSpec{Start: 268, Neck: 140, Method: SequenceB, Stages: three}
	_, err := Stages(y)
	var neck *NeckError
	if !errors.As(err, &neck) {
		t.Fatal(err)
	}
	y.Neck = neck.Most
	if _, err := Stages(y); err != nil {
		t.Errorf("the neck offered instead does not work: %v", err)
	}
}

func TestImpossibleMessages(t *testing.T) {
	tests := []struct {
		err  error
		want string
	}{
		{&CutsError{SequenceC, 3, 4}, "yoke: 3 cuts by sequence_c, which has 4"},
		{&NeckError{140, 134}, "yoke: a neck of 140 where the stages allow 1 to 134"},
		{&HeightError{1}, "yoke: stage 1 has no height"},
		{&RepeatError{Stage: 1, Repeat: 40, Edge: 1, Least: 90, Most: 104}, "yoke: stage 1 has no 40n+1 from 90 to 104"},
		{&PieceError{0, 60, 2, 50}, "yoke: one repeat of stage 0 (60+2) is wider than 50 needles"},
		{&HolesError{5, 4}, "buttonholes: 5 do not fit, at most 4"},
	}
	for _, tt := range tests {
		if got := tt.err.Error(); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

package answer

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
	"foldrow/rules"
)

func TestStepsBelong(t *testing.T) {
	in := engine.Inputs{}.WithGarment(engine.Pullover).WithRib(engine.Rib{Knit: 2, Purl: 1}).
		With(engine.Layers, engine.Int(2)).With(engine.FoldRow, engine.Int(1))
	tests := []struct {
		when      string
		holds, ok bool
	}{
		{"layers=2", true, true}, {"layers=1", false, true}, {"rib!=plain", true, true}, {"rib=plain", false, true},
		{"garment=pullover", true, true}, {"garment=cardigan", false, true},
		{"fold_row>0", true, true}, {"fold_row>1", false, true}, {"yoke_stitches>0", false, true},
		{"not fold_row>0", false, true}, {"not fold_row>1", true, true}, {"yoke_stitches=", true, true}, {"layers=", false, true},
		{"work_stitches>0", false, true}, {"not whenever", false, false},
		{"whenever", false, false}, {"layers>many", false, false},
	}
	for _, tt := range tests {
		holds, ok := condition(tt.when, &engine.Plan{In: in})
		require.Equal(t, [2]bool{tt.holds, tt.ok}, [2]bool{holds, ok}, tt.when)
	}
	p := &engine.Plan{In: in}
	for when, want := range map[string]bool{"": true, "layers=2 ; fold_row>0": true, "layers=2 ; rib=plain": false, "whenever": true} {
		require.Equal(t, want, StepFits(rules.Card{Fields: map[string]string{"when": when}}, p), when)
	}
}

func TestEveryConditionOfTheStepsCanBeRead(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	n := 0
	for _, c := range book.Cards("steps") {
		for _, cond := range c.List("when") {
			_, ok := condition(cond, &engine.Plan{})
			require.True(t, ok, "%s: %s", c.ID, cond)
			key := regexp.MustCompile(`^[a-z_]+`).FindString(strings.TrimPrefix(cond, "not "))
			require.Contains(t, append(engine.InputKeys(), engine.ResultKeys()...), engine.Key(key), c.ID)
			n++
		}
	}
	require.NotZero(t, n)
}

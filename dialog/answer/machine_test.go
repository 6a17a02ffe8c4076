package answer

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
	"foldrow/rules"
)

// In pieces the plan says as many bumps and columns as hang on the beds, and as
// the results say, in full and in brief.
func TestPiecesCountTheirOwnEnds(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	v := Voice{Book: book, Unit: "cm"}
	for _, rib := range []engine.Rib{{Knit: 1, Purl: 1}, {Knit: 2, Purl: 2}, {Knit: 3, Purl: 3}, {Knit: 1, Purl: 2}} {
		for _, bed := range []int64{40, 60, 100, 150} {
			in := engine.Inputs{}.WithGarment(engine.Cardigan).WithRib(rib).With(engine.StitchGauge, engine.Int(28)).
				With(engine.RowGauge, engine.Int(40)).With(engine.Neck, engine.Int(42)).With(engine.Depth, engine.Int(3)).
				With(engine.BedNeedles, engine.Int(bed))
			p := engine.Solve(book.Filled(in))
			hem, ok := p.Float(engine.HemCount)
			require.True(t, ok)
			want := fmt.Sprintf("**%d bumps to hang**", int(hem))
			require.Contains(t, v.hemPart(p), want, "%v on %d", rib, bed)
			require.Contains(t, v.briefHem(p), want, "%v on %d", rib, bed)
			cols, _ := p.Float(engine.ColumnCount)
			want = fmt.Sprintf("**%d columns to drop and latch**", int(cols))
			require.Contains(t, v.ribPart(p), want, "%v on %d", rib, bed)
			require.Contains(t, v.briefRib(p), want, "%v on %d", rib, bed)
		}
	}
}

// A change that moves every needle says how many rather than push its table off
// the window, and sends to where each is named.
func TestManyNeedlesAreToldByTheirCount(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	v := Voice{Book: book, Unit: "cm"}
	solve := func(neck, bed int64) *engine.Plan {
		return engine.Solve(book.Filled(engine.Inputs{}.WithGarment(engine.Cardigan).WithRib(engine.Rib{Knit: 2, Purl: 1}).
			With(engine.StitchGauge, engine.Int(28)).With(engine.RowGauge, engine.Int(40)).With(engine.Neck, engine.Int(neck)).
			With(engine.Depth, engine.Int(3)).With(engine.BedNeedles, engine.Int(bed)).With(engine.YokeStitches, engine.Int(152))))
	}
	before, after := solve(42, 150), solve(45, 80)
	text := v.atTheMachine(before, after)
	require.LessOrEqual(t, len(text), mostChanged)
	require.Contains(t, text, "*Show the needles* names each.")
	require.Contains(t, text, fmt.Sprintf("lose %d stitches", after.YokeDecreases))
	for _, q := range after.OnBed() {
		require.NotContains(t, text, NeedleRuns(q.HemColumns, q.BandStitches))
	}
	few := v.atTheMachine(before, solve(42, 150))
	require.False(t, strings.Contains(few, "names each"), "nothing moved: %s", few)
}

// Where the dial or the limit ends the grading early, the row it is reached in
// is said, not the last.
func TestTheTightestRowIsTheFirstOfIts(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	base := engine.Inputs{}.WithGarment(engine.Cardigan).WithRib(engine.Rib{Knit: 1, Purl: 1}).
		With(engine.StitchGauge, engine.Int(28)).With(engine.RowGauge, engine.Int(40)).With(engine.Neck, engine.Int(40))
	for _, tt := range []struct {
		in   engine.Inputs
		want string
	}{
		{base.With(engine.DepthRows, engine.Int(13)), "from the garment's dial number to 6 clicks tighter at row 13, then back"},
		{base.With(engine.DepthRows, engine.Int(14)), "from the garment's dial number to 6 clicks tighter at row 14, then back"},
		{base.With(engine.DepthRows, engine.Int(50)), "from the garment's dial number to 8 clicks tighter at row 17, held to row 50, then back"},
		{base.With(engine.DepthRows, engine.Int(12)).With(engine.MainTension, engine.Int(2)), "from dial 2 to dial 1 at row 5, held to row 12, then back"},
		{base.With(engine.DepthRows, engine.Int(12)).With(engine.StartClicks, engine.Int(8)), "all rows at 8 clicks tighter"},
		{base.With(engine.DepthRows, engine.Int(2)), "all rows at the garment's dial number"},
	} {
		p := engine.Solve(book.Filled(tt.in))
		require.Contains(t, gradingWords(p, p.Tension()), tt.want)
	}
}

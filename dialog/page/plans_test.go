package page

import (
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// sample is a plan to print: what was said, by key, in canonical units.
type sample struct {
	name string // of its files in testdata/page
	unit quantity.Unit
	said map[engine.Key]string
}

// samples are an everyday cardigan, a single band in inches, and a band wider
// than the bed in a rib with wide columns; a mock rib with front bands and
// buttonholes; a yoke with its chart, and front bands in two pieces.
var samples = []sample{
	{"cardigan", "cm", map[engine.Key]string{
		"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "40", "rib": "1x1", "depth": "3",
		"main_tension": "5", "yoke_stitches": "132", "yarn_length": "230", "yarn_left": "20",
	}},
	{"pullover-inches", "in", map[engine.Key]string{
		"garment": "pullover", "stitch_gauge": "7000/254", "row_gauge": "10000/254", "neck": "4572/100", "rib": "2x1",
		"depth_rows": "12", "layers": "1", "head": "56",
	}},
	{"wide", "cm", map[engine.Key]string{
		"garment": "pullover", "stitch_gauge": "50", "row_gauge": "66", "neck": "60", "rib": "3x3", "depth": "5",
		"main_tension": "7", "clicks_per_number": "3", "fold_row": "2", "yoke_stitches": "400", "head": "58",
	}},
	{"fronts-mock", "cm", map[engine.Key]string{
		"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "42", "rib": "1x1", "depth": "3",
		"band_kind": "mock", "front_edge": "40", "buttonholes": "7", "button": "20",
	}},
	{"yoke", "cm", map[engine.Key]string{
		"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "42", "rib": "1x1", "depth": "3", "main_tension": "5",
		"yoke_first": "264", "stages": "4", "stage_repeats": "12", "bust": "94", "chart": "x..x../.xx...", "front_edge": "52", "front_rib": "2x2",
		"buttonholes": "7", "button": "20",
	}},
}

func (s sample) solve(t testing.TB) (answer.Voice, *engine.Plan, engine.Inputs) {
	t.Helper()
	book, err := rules.Load()
	require.NoError(t, err)
	var said engine.Inputs
	for k, text := range s.said {
		var ok bool
		said, ok = said.Parse(k, text)
		require.True(t, ok, "%s %s", k, text)
	}
	return answer.Voice{Book: book, Unit: s.unit}, engine.Solve(book.Filled(said)), said
}

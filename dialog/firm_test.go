package dialog_test

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

// However often a value is changed by a part of itself, the notebook keeps it.
func TestPartsOfPartsAreKept(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	for i := range 60 {
		way := []string{"bigger", "smaller"}[i%2]
		s, _ = tk.Turn(s, "neck 1.2345678% "+way)
		s, _ = tk.Turn(s, fmt.Sprintf("depth 1/9999999%d cm %s", i%10, []string{"deeper", "shallower"}[i%2]))
	}
	raw, err := json.Marshal(s)
	require.NoError(t, err)
	var back dialog.State
	require.NoError(t, json.Unmarshal(raw, &back))
	require.Equal(t, inputs(s), inputs(back))
	require.NotEmpty(t, inputs(back)["neck"])
	require.NotEmpty(t, inputs(back)["depth"])
}

// Front bands with fewer stitches than the neckband's end is high are drawn.
func TestFewFrontStitches(t *testing.T) {
	tk := talk(t)
	for _, lines := range [][]string{
		{"7 stitches on the front band", "1 buttonhole", "1 stitch a hole", "show the buttons"},
		{"depth 20 cm", "20 stitches on the front band", "2 buttonholes", "show the buttons"},
	} {
		s := arrive(t, tk, "plan")
		var r dialog.Reply
		for _, l := range lines {
			s, r = tk.Turn(s, l)
		}
		require.NotEmpty(t, r.Markdown)
	}
}

// A dial that was forgotten, in a plan that since has fewer rows than are
// knitted.
func TestForgottenDialInFewerRows(t *testing.T) {
	tk := talk(t)
	raw, err := json.Marshal(arrive(t, tk, "making hem"))
	require.NoError(t, err)
	shorter := strings.Replace(string(raw), `"depth":"3"`, `"depth":"1"`, 1)
	require.NotEqual(t, string(raw), shorter)
	var s dialog.State
	require.NoError(t, json.Unmarshal([]byte(shorter), &s))
	_, r := tk.Turn(s, "I forgot to change the dial at row 3")
	require.Equal(t, "trouble", r.Kind)
}

// No card's placeholder comes out unfilled.
func TestNoPlaceholderIsShown(t *testing.T) {
	tk := talk(t)
	for _, said := range []string{"why the yoke stitches", "why the neck", "why the depth", "why 1x1", "compare with and without a fold row"} {
		s, _ := tk.Turn(arrive(t, tk, "plan"), "132 stitches on the yoke")
		_, r := tk.Turn(s, said)
		require.NotContains(t, r.Markdown, "{", said)
	}
}

// Every reply says what kind it is, also where the default is taken and none is
// offered.
func TestDefaultHasAKind(t *testing.T) {
	tk := talk(t)
	for _, lines := range [][]string{{}, {"cardigan"}, {"cardigan", "28/40"}, {"cardigan", "28/40", "42 cm"}} {
		s, _ := tk.Begin()
		for _, l := range lines {
			s, _ = tk.Turn(s, l)
		}
		want := map[int]string{0: "measure", 1: "measure", 2: "measure", 3: "answer"}[len(lines)]
		for _, line := range []string{"default", "take the default"} {
			_, r := tk.Turn(s, line)
			require.Equal(t, want, r.Kind, "%q after %q: %s", line, lines, r.Markdown)
		}
	}
}

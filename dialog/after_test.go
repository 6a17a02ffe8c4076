package dialog_test

import (
	"fmt"
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"
)

// The finished band is held against the plan: 105 stitches at 28 in 10 cm with
// a front band of 3 cm are (105-2)/2.8 + 3 = 39.8 cm; 11 rows are 2.6 cm.
func TestAfter(t *testing.T) {
	tests := []struct {
		said string
		want []string
	}{
		{"the band measures 39.5 cm", []string{"planned 39.8 cm, came out 39.5 cm: as planned"}},
		// 103 stitches over 35 cm are 29.43 in 10 cm: 39.8 cm want 111.
		{"the neck came out at 38 cm with the front bands", []string{"1.8 cm (4 %) less", "29.43 stitches in 10 cm", "**111 stitches**"}},
		{"it came out 2.4 cm deep", []string{"planned 2.6 cm, came out 2.4 cm", "**12 rows a layer**"}},
		{"it measures 39.2 cm and is 3 cm deep", []string{"Neck at the join", "Depth"}},
		// The piece before the front bands is 103/2.8 = 36.8 cm; at 38.5 cm it
		// was knitted at 103/3.85 = 26.75, and (39.8 - 3) cm then want 36.79*2.675 + 2 = 100.4, so 101.
		{"it measures 38.5 cm without the front bands", []string{"before the front bands:** planned 36.8 cm, came out 38.5 cm: 1.7 cm (5 %) more", "26.75 stitches in 10 cm", "**101 stitches**"}},
		{"the band measures 36.8 cm", []string{"before the front bands:** planned 36.8 cm, came out 36.8 cm: as planned"}},
		{"the band measures 38 cm closed and 2.6 cm deep", []string{"1.8 cm (4 %) less", "planned 2.6 cm, came out 2.6 cm: as planned"}},
	}
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, append(append([]string(nil), bandPlan...), "start knitting", "start from setting the rib")...)
	for _, tt := range tests {
		after, r := tk.Turn(s, tt.said)
		require.Equal(t, "step", r.Kind, "%s: %s", tt.said, r.Markdown)
		for _, w := range tt.want {
			require.Contains(t, r.Markdown, w, tt.said)
		}
		require.Equal(t, s.Said, after.Said, "the knitted plan stays")
		require.NotEqual(t, s.Making.After, after.Making.After, "the measure is kept")
	}
}

// What is advised for the next band can be said as it stands, and gives the
// count that is promised.
func TestAfterAdvice(t *testing.T) {
	say0 := regexp.MustCompile(`\*\*(\d+) stitches\*\*; say \*([^*]+)\*`)
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, append(append([]string(nil), bandPlan...), "start knitting", "start from setting the rib")...)
	_, r := tk.Turn(s, "the neck came out at 38 cm with the front bands on")
	m := say0.FindStringSubmatch(r.Markdown)
	require.NotNil(t, m, r.Markdown)
	next, _ := tk.Begin()
	_, r = say(t, tk, next, append(append([]string(nil), bandPlan...), m[2])...)
	require.Equal(t, "change", r.Kind, r.Markdown)
	require.EqualValues(t, m[1], str(r.Facts().Results["band_stitches"]))
}

// A perfect band measured before its front bands is no error of the gauge:
// 119 stitches at 29 in 10 cm are 117/2.9 = 40.3 cm, with 3 cm of front band
// 43.3 cm. Between the two it is asked which was measured, and nothing kept.
func TestAfterBeforeFronts(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "29/41", "43 cm", "2x1", "3 cm", "start knitting", "start from checking the band")
	require.Contains(t, r.Markdown, "Aim: 40.3 cm end to end. With front bands: 43.3 cm.")
	_, r = tk.Turn(s, "start from setting the rib")
	require.Contains(t, r.Markdown, "Relaxed edge: about 25.1 cm.") // 28.1 - 3
	for said, want := range map[string]string{
		"the band measures 40.3 cm": "planned 40.3 cm, came out 40.3 cm: as planned",
		"the band measures 43 cm":   "planned 43.3 cm, came out 43 cm: as planned",
	} {
		_, r = tk.Turn(s, said)
		require.Contains(t, r.Markdown, want)
	}
	after, r := tk.Turn(s, "the band measures 41.8 cm")
	require.Equal(t, "unclear", r.Kind)
	require.Contains(t, r.Markdown, "the piece is planned at 40.3 cm and the closed neck at 43.3 cm")
	require.Equal(t, s.Making, after.Making)
}

// The free edge gives the rib's own factors. The fold is (105-2)/2.8 cm wide,
// 25 of its 11 rows' clicks less: with 5 clicks of 2.25 % 32.65 cm. With the
// front bands 3 cm of what is measured are theirs.
func TestAfterEdge(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, append(append([]string(nil), bandPlan...), "start knitting", "start from setting the rib")...)
	after, r := tk.Turn(s, "the edge measures 22 cm relaxed and 45 cm stretched with the front bands")
	require.Equal(t, "change", r.Kind, r.Markdown)
	require.InDelta(t, (22-3)/32.647, r.Changes["rib_draw"], 1e-3)
	require.InDelta(t, 42.0/19, r.Changes["rib_stretch"], 1e-3)
	require.EqualValues(t, s.Making.Step, after.Making.Step)
	require.InDelta(t, 22, r.Facts().Results["relaxed_circumference"], 1e-2)
	require.InDelta(t, 45, r.Facts().Results["stretched_circumference"], 1e-2)
	_, r = tk.Turn(s, "the edge measures 22 cm relaxed")
	require.InDelta(t, 22/32.647, r.Changes["rib_draw"], 1e-3, "at this step there are none yet")
	back, _ := tk.Turn(after, "undo")
	require.Equal(t, s.Said, back.Said)
}

// Before the band is made the same words are inputs, not measures.
func TestNotAfter(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, append(append([]string(nil), bandPlan...), "start knitting")...)
	for _, line := range []string{"it came out 2.5 cm deep", "the band measures 38 cm", "the neck measures 38 cm"} {
		after, _ := tk.Turn(s, line)
		require.Equal(t, s.Making.After, after.Making.After, line)
	}
}

func str(v any) string { return fmt.Sprint(v) }

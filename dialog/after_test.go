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
		{"the neck came out at 38 cm", []string{"1.8 cm (4 %) less", "29.43 stitches in 10 cm", "**111 stitches**"}},
		{"it came out 2.4 cm deep", []string{"planned 2.6 cm, came out 2.4 cm", "**12 rows a layer**"}},
		{"it measures 41 cm and is 3 cm deep", []string{"Neck at the join", "Depth"}},
		{"the band measures 38 cm round and 2.6 cm deep", []string{"1.8 cm (4 %) less", "planned 2.6 cm, came out 2.6 cm: as planned"}},
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
	_, r := tk.Turn(s, "the neck came out at 38 cm")
	m := say0.FindStringSubmatch(r.Markdown)
	require.NotNil(t, m, r.Markdown)
	next, _ := tk.Begin()
	_, r = say(t, tk, next, append(append([]string(nil), bandPlan...), m[2])...)
	require.Equal(t, "change", r.Kind, r.Markdown)
	require.EqualValues(t, m[1], str(r.Facts().Results["band_stitches"]))
}

// The free edge gives the rib's own factors. The fold is (105-2)/2.8 cm wide,
// 25 of its 11 rows' clicks less: with 5 clicks of 2.25 % 32.65 cm.
func TestAfterEdge(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, append(append([]string(nil), bandPlan...), "start knitting", "start from setting the rib")...)
	after, r := tk.Turn(s, "the edge measures 22 cm relaxed and 45 cm stretched")
	require.Equal(t, "change", r.Kind, r.Markdown)
	require.InDelta(t, (22-3)/32.647, r.Changes["rib_draw"], 1e-3)
	require.InDelta(t, 42.0/19, r.Changes["rib_stretch"], 1e-3)
	require.EqualValues(t, s.Making.Step, after.Making.Step)
	require.InDelta(t, 22, r.Facts().Results["relaxed_circumference"], 1e-2)
	require.InDelta(t, 45, r.Facts().Results["stretched_circumference"], 1e-2)
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

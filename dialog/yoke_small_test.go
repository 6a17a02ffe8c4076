package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// 41.9 cm at 28 in 10 cm take 111 stitches; 90 on the yoke fill 89 at most:
// (89 - 2) / 2.8 + 3 = 34.1 cm.
func TestYokeTooSmallIsSaid(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "yoke stitches 90")
	require.Contains(t, r.Markdown, "fewer than the 111 of this band")
	require.Contains(t, r.Markdown, "stitches to lose | - | none, the yoke has 21 too few")
	for _, line := range []string{"start knitting", "start from hang again", "next"} {
		after, r := tk.Turn(s, line)
		require.False(t, after.Making.On, line)
		require.Contains(t, r.Markdown, "*neck 34.1 cm*", line)
		require.NotContains(t, r.Markdown, "-21", line)
	}
	_, r = say(t, tk, s, "neck 34.1 cm", "start from hang again")
	require.Contains(t, r.Markdown, "Pairs in all: 1.")
}

// A count found on a stage that is far from the plan's is asked about, and a
// yes takes it; a slip of a few stitches is taken at once. 264 over 4 stages to
// 111 are 226 at the second, two pieces of 113.
func TestFarFromStageIsAsked(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, "cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "264 stitches on the yoke in 4 stages")
	for _, line := range []string{"I have 131 on stage 2", "I have 113 on stage 2"} {
		after, r := tk.Turn(s, line)
		require.Equal(t, "unclear", r.Kind, line)
		require.Contains(t, r.Markdown, "one of the 2 pieces (113 + 113)", line)
		require.Equal(t, s.Said, after.Said, line)
		after, r = tk.Turn(after, "yes")
		require.Equal(t, "change", r.Kind, line)
		require.NotEqual(t, s.Said, after.Said, line)
	}
	asked, _ := tk.Turn(s, "I have 131 on stage 2")
	_, r := tk.Turn(asked, "I have 113 on stage 2")
	require.Equal(t, "unclear", r.Kind, "another count is another doubt")
	_, r = tk.Turn(s, "I have 224 on stage 2")
	require.Equal(t, "change", r.Kind)
}

// Where nobody told how many stitches wait, hanging again asks for them.
func TestHangingAsksForTheWaiting(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "29/41", "43 cm", "2x1", "3 cm", "start from hang again")
	require.Contains(t, r.Markdown, "Say how many stitches wait and I spread the decreases: *148 on the yoke*.") // 119 and a quarter
	require.NotContains(t, r.Markdown, "one stitch on each")
	_, r = say(t, tk, s, "148 on the yoke", "repeat")
	require.Contains(t, r.Markdown, "Pairs in all: 29.")
}

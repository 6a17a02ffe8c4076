package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What is told as not done, or asked, moves no place; what was counted and is
// not done is said so.
func TestNotDone(t *testing.T) {
	tk := talk(t)
	for _, c := range []struct{ context, said, want string }{
		{"making rows", "I haven't done that", "row 5 of"},
		{"making rows", "nearly done with row 10", "row 5 of"},
		{"making rows", "need to knit row 7", "say *row 6 done*"},
		{"making rows", "is row 5 done", "(Not yet: row 5 is to be done now.)"},
		{"making rows", "is row 4 done?", "(Yes, row 4 is counted as done.)"},
		{"making rows", "have I done row 9", "(No, row 9 is still to come.)"},
		{"making rows", "have I done 9 rows", "row 5 of"},
		{"making rows", "done?", "row 5 of"},
		{"making rows", "hem done?", "(No, that step is still to come.)"},
		{"making rows", "I have not knitted row 3", "row 3 of"},
		{"making rows", "done, next?", "row 7 of"},
		{"making rows", "I've done row 6 but not row 7", "row 7 of"},
		{"making rows", "row 5 done, row 6 not yet", "row 6 of"},
		{"making rows", "I'm not on row 3, I'm on row 2", "row 2 of"},
		{"making rows", "starting row 3", "row 3 of"},
		{"making rows", "I stopped after row 9", "row 10 of"},
		{"making rows", "I must go to row 9", "row 9 of"},
		{"making rows", "done row 1", "row 2 of"},
		{"making rows", "I am almost at row 9", "(Nothing counted: 4 rows are knitted so far."},
		{"making latch", "I have not latched L46", "(L46 is not among those of this step.)"},
		{"making latch", "I forgot to latch L49", "(L49 is still to come.)"},
		{"making latch", "I've not hung all the bumps", "Nothing counted"},
		{"making latch", "not all columns are latched", "Nothing counted"},
		{"making latch", "some columns are latched", "Nothing counted"},
		{"making latch", "half the bumps are hung", "Nothing counted"},
		{"making latch", "I need to latch L49", "(L49 is still to come.)"},
		{"making latch", "I can't latch L49", "(L49 is still to come.)"},
		{"making latch", "the outer layer is not finished", "(It was counted as done."},
		{"making latch", "hung all", "Nothing counted"},
		{"making latch", "latched all but L49", "(Not counted yet: do L49 now, then say *all latched*.)"},
		{"making latch", "up to L40, except L43", "(Left out: L43. Do that now, then go on here.)"},
		{"making latch", "latched to L43, L45 still to do", "(Left out: L45."},
		{"making latch", "up to L43, except L44", "(Not among those of this step: L44.)"},
		{"making rows", "I have 5 rows left", "4 rows knitted"},
		{"making rows", "must I do row 3 again", "(Yes, row 3 is counted as done.)"},
		{"making rows", "should I stop at row 8", "(No, row 8 is still to come.)"},
		{"making rows", "almost there", "row 5 of"},
		{"making latch", "do I start at L49", "(No, L49 is still to come.)"},
		{"making latch", "not yet", "Nothing counted"},
		{"making latch", "all latched?", "Not yet"},
		{"making latch", "latched all", "Hang the hem"},
		{"making latch", "starting L45", "L45"},
		{"making latch", "starting L45", "Column 4 of"},
		{"making latch", "done the first 3 columns", "Column 4 of"},
		{"making latch", "first 5 columns latched", "Columns 6 "},
		{"making latch", "first 5 columns latched?", "Columns 1 to"},
		{"making rows", "all hung", "row 5 of"},
		{"making rows", "go back 3 rows", "row 2 of"},
		{"making hem", "all hung", "Knit the closing row"},
		{"making hem", "is it finished", "The ends, then the middle"},
	} {
		_, r := tk.Turn(arrive(t, tk, c.context), c.said)
		require.Equal(t, "step", r.Kind, c.said)
		require.Contains(t, r.Markdown, c.want, c.said)
	}
	s, _ := tk.Turn(arrive(t, tk, "making latch"), "latched up to L43")
	_, r := tk.Turn(s, "I have not latched L45")
	require.Contains(t, r.Markdown, "(L45 was counted already: do it now, then go on here.)")
	require.Contains(t, r.Markdown, "L41", "the place is kept")
}

// Nobody knits on at a dial that stands where rows taken back have left it.
func TestDialSetAnewGoingBack(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Turn(arrive(t, tk, "making rows"), "row 8 done")
	_, r := tk.Turn(s, "I'm on row 3")
	require.Contains(t, r.Markdown, "Set the dial")
	_, r = tk.Turn(s, "row 9 done")
	require.NotContains(t, r.Markdown, "Set the dial")
}

// A band that is still on the machine is measured in vain, and its width is no
// neck to plan.
func TestBandMeasuredOnMachine(t *testing.T) {
	tk := talk(t)
	at := arrive(t, tk, "making latch")
	s, r := tk.Turn(at, "the band measures 40 cm")
	require.Equal(t, "unclear", r.Kind)
	require.Contains(t, r.Markdown, "still on the machine")
	require.Equal(t, at.Said, s.Said)
	_, r = tk.Turn(at, "I've done 5 rows")
	require.Contains(t, r.Markdown, "rows of the band are knitted")
}

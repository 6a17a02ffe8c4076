package dialog_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
	"foldrow/rules"
)

var bandPlan = []string{"cardigan", "28 stitches and 40 rows in 10 cm", "40 cm", "1x1", "11 rows a layer", "main tension 5", "132 stitches on the yoke"}

// Every trouble that a card tells is answered with what to do now first, then
// the mend, with a plan and without one, at the machine and away from it.
func TestEveryTrouble(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	tk := talk(t)
	start, _ := tk.Begin()
	planned, _ := say(t, tk, start, bandPlan...)
	making, _ := say(t, tk, planned, "I'm on row 8")
	cards := book.Cards("troubles")
	require.GreaterOrEqual(t, len(cards), 30)
	for _, card := range cards {
		heard := 0
		for _, w := range card.List("words") {
			for i, s := range []dialog.State{start, planned, making} {
				_, r := tk.Turn(s, w)
				if r.Kind != "trouble" || !strings.HasPrefix(r.Markdown, "**"+card.Fields["title"]+".**") {
					continue
				}
				heard |= 1 << i
				now, mend := strings.Index(r.Markdown, "**Now:**"), strings.Index(r.Markdown, "**Mend:**")
				require.True(t, 0 < now && now < mend, "%s:\n%s", w, r.Markdown)
				require.NotContains(t, r.Markdown, "{", w)
				require.Empty(t, r.Changes)
				if i > 0 && strings.Contains(card.Section("plan"), "{band_stitches}") {
					require.Contains(t, r.Markdown, "**The plan:**", w)
				}
			}
		}
		require.NotZero(t, heard&6, "nothing the card says leads to %s", card.ID)
	}
}

// What a trouble means for this plan, with the engine's numbers. The sums:
// a row of the garment is 2.5 mm, a click is 2.25 % of it.
func TestTroubleNumbers(t *testing.T) {
	tests := []struct {
		name, at, said string
		want           []string
	}{
		// Rows 5 and 6 are 2 clicks out, row 7 is 3: 7 * 2.25 % * 2.5 mm =
		// 0.39 mm; 11 rows hold 25 clicks: (11 - 0.5625) / 4 = 2.61 cm.
		{"three rows too loose", "I'm on row 8", "3 rows at dial 5 instead of 4", []string{"Rows 5 to 7 at dial 5 instead of dial 4", "2.65 cm instead of 2.61 cm (0.4 mm more)", "Knit 11 rows inside as planned"}},
		// 8 rows at 10 clicks looser instead of 12 clicks together: 92 clicks
		// are 5.2 mm, two rows of the garment.
		{"many rows far too loose", "I'm on row 9", "8 rows at dial 10 instead of 4", []string{"(5.2 mm more)", "Knit 13 rows inside: 2 rows more comes nearest."}},
		{"inside too loose", "row 22 done", "rows 13 to 22 were knitted at dial 10 instead of 4", []string{"inner layer comes to", "Rows 13 to 22"}},
		{"one row, dial not said", "I'm on row 8", "knitted a row with the wrong dial", []string{"Each row a whole number looser changes the depth by 0.1 mm more", "Row 7 was to be at dial 3.5"}},
		// Rows 5 and 6 are 1 click out, row 7 is 2: 4 * 2.25 % * 2.5 mm = 0.2 mm.
		{"a change forgotten", "I'm on row 8", "I forgot to change the dial at row 5", []string{"Rows 5 to 7 at dial 4.5 instead of dial 4", "2.63 cm instead of 2.61 cm (0.2 mm more)"}},
		{"the last change forgotten", "I'm on row 8", "I forgot to change the dial", []string{"too loose", "Row 7 at dial 4 instead of dial 3.5"}},
		{"forgotten on the way back", "row 16 done", "forgot to loosen the dial", []string{"too tight", "Rows 15 and 16 at dial 3 instead of dial 3.5"}},
		{"no change due", "I'm on row 8", "forgot to turn the dial at row 6", []string{"No change was due at row 6:** it is knitted at dial 4"}},
		{"still to be turned", "I'm on row 8", "I forgot to change the dial at row 9", []string{"Nothing is lost:** row 9", "Set dial 3 now"}},
		{"row count", "I'm on row 8", "lost count of the rows", []string{"The steps have 7 rows knitted", "With 8 knitted, the next is at dial 3."}},
		{"a row comes back", "I'm on row 8", "want to take back a row", []string{"6 rows are knitted; row 7 is at dial 3.5"}},
		// (104 - 2) / 2.8 + 3 = 39.4 cm.
		{"count one out", "I'm on row 3", "the count is one out", []string{"104 stitches give a neck of 39.4 cm (the rib ends unevenly)", "103 for 39.1 cm"}},
		{"pair at the wrong needle", "I'm on row 1", "doubled the wrong needle at L50", []string{"L50 is not on the map. The pairs next to it: L52, L48."}},
		// the needles' width, three times, and 30 cm of tails: 0.65 cm a needle.
		{"short in the sewing", "sewn off to L10", "the tail is too short", []string{"From L10 on: 148.9 cm if you sew toward the right (61 stitches left), 113.8 cm toward the left (43 stitches)"}},
		{"a plain column", "I'm on row 8", "dropped a stitch at L10", []string{"L10 is a plain column: latched up from behind."}},
		{"a rib column", "I'm on row 8", "dropped a stitch at L11", []string{"L11 is a column of the rib"}},
		{"flare", "start from setting the rib", "the band flares", []string{"1 row before each click brings the fold from"}},
		{"elsewhere it is the count", "I'm on row 8", "too many stitches", []string{"The count is one out"}},
	}
	tk := talk(t)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, _ := tk.Begin()
			s, r := say(t, tk, s, append(append([]string(nil), bandPlan...), "start knitting", tt.at)...)
			require.Equal(t, "step", r.Kind, r.Markdown)
			after, r := tk.Turn(s, tt.said)
			require.Equal(t, "trouble", r.Kind, r.Markdown)
			for _, w := range tt.want {
				require.Contains(t, r.Markdown, w)
			}
			require.Equal(t, s.Said, after.Said)
			require.Equal(t, s.Making, after.Making)
		})
	}
}

// The line after such a question answers it, or closes it.
func TestAnswersApart(t *testing.T) {
	tests := []struct{ asked, said, title string }{
		{"dropped a stitch", "longer", "A stitch dropped many rows ago"},
		{"dropped a stitch", "the second", "A stitch dropped many rows ago"},
		{"dropped a stitch", "no", "A stitch dropped many rows ago"},
		{"dropped a stitch", "about 6 rows", "A stitch dropped many rows ago"},
		{"dropped a stitch", "yes", "The first, then"},
		{"dropped a stitch", "the first", "The first, then"},
		{"dropped a stitch", "2 rows", "The first, then"},
		{"dropped a stitch", "purple", "I cannot tell which"},
		{"dropped a stitch", "where am I", "5 of 14"},
		{"dropped a stitch", "the yarn broke", "The yarn broke"},
	}
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, append(append([]string(nil), bandPlan...), "I'm on row 8")...)
	for _, tt := range tests {
		asked, r := tk.Turn(s, tt.asked)
		require.NotEmpty(t, asked.Apart[0], tt.asked)
		require.Contains(t, lastParagraph(r.Markdown), "To be sure:")
		after, r := tk.Turn(asked, tt.said)
		require.Contains(t, r.Markdown, tt.title, tt.said)
		require.Empty(t, r.Changes, tt.said)
		require.Equal(t, tt.said == "purple", after.Apart == asked.Apart, tt.said)
	}
	// a question outlives a restart
	asked, _ := tk.Turn(s, "dropped a stitch")
	b, err := asked.MarshalJSON()
	require.NoError(t, err)
	var again dialog.State
	require.NoError(t, again.UnmarshalJSON(b))
	_, r := tk.Turn(again, "longer")
	require.Contains(t, r.Markdown, "A stitch dropped many rows ago")
}

func lastParagraph(s string) string {
	parts := strings.Split(s, "\n\n")
	return parts[len(parts)-1]
}

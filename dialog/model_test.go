package dialog_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"foldrow/dialog"
)

// said draws a line from the table of lines a knitter might type, or noise.
func said(rows []row) *rapid.Generator[string] {
	return rapid.Custom(func(t *rapid.T) string {
		if rapid.IntRange(0, 9).Draw(t, "noise") == 0 {
			return rapid.String().Draw(t, "line")
		}
		return rows[rapid.IntRange(0, len(rows)-1).Draw(t, "row")].said
	})
}

// standing is all of a state that decides the plan and where she stands.
func standing(t require.TestingT, s dialog.State) string {
	s.Turn = 0
	b, err := json.Marshal(struct {
		Said    any
		OnTable bool
		Table   any
	}{inputs(s), s.OnTable, s.Table})
	require.NoError(t, err)
	return string(b)
}

func inputs(s dialog.State) map[string]string {
	b, _ := json.Marshal(s)
	var j struct {
		Said  map[string]string `json:"said"`
		Table map[string]string `json:"table"`
	}
	_ = json.Unmarshal(b, &j)
	if s.OnTable {
		return j.Table
	}
	return j.Said
}

// Whatever is said in whatever order, what holds must hold after every line.
func TestAnySequenceKeepsTheInvariants(t *testing.T) {
	book, tk := talkOf(t)
	rows := readRows(t, "../testdata/lines.txt")
	rapid.Check(t, func(rt *rapid.T) {
		s, _ := tk.Begin()
		for range rapid.IntRange(1, 25).Draw(rt, "turns") {
			line := said(rows).Draw(rt, "said")
			next, r := tk.Turn(s, line)
			holds(rt, book, s, line, next, r)
			s = next
		}
	})
}

// changesSaid are the lines of the tables that change a standing plan outright.
func changesSaid(t require.TestingT, tk *dialog.Talk, rows []row, start dialog.State) []string {
	var lines []string
	for _, r := range rows {
		if r.context != "plan" || r.kind != "change" || r.changes == "-" {
			continue
		}
		if _, got := tk.Turn(start, r.said); got.Kind == "change" && len(got.Changes) > 0 {
			lines = append(lines, r.said)
		}
	}
	require.Greater(t, len(lines), 50)
	return lines
}

// A what-if that is dropped leaves the plan bit for bit; kept, it equals the
// change said outright, from wherever it was said.
func TestWhatIfDropAndKeep(t *testing.T) {
	tk := talk(t)
	start := arrive(t, tk, "plan")
	lines := changesSaid(t, tk, readRows(t, "../testdata/lines.txt"), start)
	supposed := 0
	rapid.Check(t, func(rt *rapid.T) {
		s := start
		for range rapid.IntRange(0, 3).Draw(rt, "before") {
			s, _ = tk.Turn(s, rapid.SampledFrom(lines).Draw(rt, "said"))
		}
		if s.OnTable {
			return
		}
		const show = "show the plan in cm" // what-ifs said in inches leave her in inches
		_, was := tk.Turn(s, show)
		line := rapid.SampledFrom(lines).Draw(rt, "supposed")
		outright, o := tk.Turn(s, line)
		table, r := tk.Turn(s, "what if "+line)
		if r.Kind != "whatif" || o.Kind != "change" || !maps.Equal(r.Changes, o.Changes) {
			return // a line that cannot be supposed as it stands
		}
		supposed++
		dropped, _ := tk.Turn(table, "drop")
		require.Equal(rt, standing(rt, s), standing(rt, dropped), line)
		_, is := tk.Turn(dropped, show)
		require.Equal(rt, was.Facts().Results, is.Facts().Results, line)
		require.Equal(rt, was.Markdown, is.Markdown, line)
		undone, _ := tk.Turn(table, "undo")
		require.Equal(rt, standing(rt, s), standing(rt, undone), line)
		kept, k := tk.Turn(table, "keep")
		require.Equal(rt, standing(rt, outright), standing(rt, kept), line)
		require.Equal(rt, o.Facts().Results, k.Facts().Results, line)
		require.Equal(rt, o.Changes, k.Changes, line)
	})
	require.Positive(t, supposed)
}

// n changes, then undo n times or "undo n" once, restore what stood before,
// also over the notebook.
func TestUndoRestores(t *testing.T) {
	tk := talk(t)
	start := arrive(t, tk, "plan")
	lines := changesSaid(t, tk, readRows(t, "../testdata/lines.txt"), start)
	rapid.Check(t, func(rt *rapid.T) {
		s, states := start, []dialog.State{start}
		n := 0
		for range rapid.IntRange(1, 8).Draw(rt, "turns") {
			next, _ := tk.Turn(s, rapid.SampledFrom(lines).Draw(rt, "change"))
			n += next.Depth - s.Depth
			s = next
			states = append(states, s)
		}
		resumed := resume(rt, states)
		atOnce, _ := tk.Turn(s, fmt.Sprintf("undo %d", max(n, 1)))
		for range n {
			s, _ = tk.Turn(s, "undo")
			resumed, _ = tk.Turn(resumed, "undo")
		}
		if n == 0 {
			return
		}
		require.Equal(rt, standing(rt, start), standing(rt, s))
		require.Equal(rt, standing(rt, start), standing(rt, resumed))
		require.Equal(rt, standing(rt, start), standing(rt, atOnce))
		require.Equal(rt, start.Depth, s.Depth)
		require.Equal(rt, start.Making, s.Making)
	})
}

// Leaving and coming back, at any point of any conversation, is as if one had
// never left: the same lines get the same replies, word for word.
func TestResumeIsNeverHavingLeft(t *testing.T) {
	tk := talk(t)
	rows := readRows(t, "../testdata/lines.txt")
	rapid.Check(t, func(rt *rapid.T) {
		stayed, _ := tk.Begin()
		back := stayed
		var states []dialog.State
		for range rapid.IntRange(1, 20).Draw(rt, "turns") {
			line := said(rows).Draw(rt, "said")
			var a, b dialog.Reply
			stayed, a = tk.Turn(stayed, line)
			back, b = tk.Turn(back, line)
			require.Equal(rt, a, b, line)
			states = append(states, back)
			if rapid.IntRange(0, 2).Draw(rt, "leave") == 0 {
				back = resume(rt, states)
				require.Equal(rt, tk.Welcome(stayed), tk.Welcome(back))
			}
		}
	})
}

// resume writes the states as the notebook does and folds them again.
func resume(t require.TestingT, states []dialog.State) dialog.State {
	var read []dialog.State
	for _, s := range states {
		raw, err := json.Marshal(s)
		require.NoError(t, err)
		var back dialog.State
		require.NoError(t, json.Unmarshal(raw, &back))
		// the first state of a notebook has nothing before it
		read = append(read, back)
	}
	s, ok := dialog.Resume(read)
	require.True(t, ok)
	return s
}

// FuzzTurn: no lines, one after the other from any place, panic, loop, or
// break what must hold.
func FuzzTurn(f *testing.F) {
	book, tk := talkOf(f)
	names := slices.Sorted(maps.Keys(contexts))
	place := map[string]uint{}
	starts := make([]dialog.State, len(names))
	for i, name := range names {
		place[name], starts[i] = uint(i), arrive(f, tk, name)
	}
	for _, table := range tables {
		for _, r := range readRows(f, table) {
			f.Add(place[r.context], r.said)
		}
	}
	f.Add(place["plan"], "\x1b[31m red \x1b]52;c;xx\x07")
	f.Add(place["plan"], "no, I mean the neck") // took the depth back and set nothing
	f.Add(place["plan"], "r70")                 // a needle that is not in work began the making
	f.Add(place["plan"], strings.Repeat("what if ", 300))
	f.Add(place["plan"], "what if 2x2\nand 4 cm\nundo\nkeep\nundo 2\nno, I meant rows")
	f.Add(place["making"], "next\nback\n2x2\nundo\ndone 3 rows\nneck 45 cm\nyes")
	f.Fuzz(func(t *testing.T, at uint, text string) {
		s := starts[at%uint(len(starts))]
		lines := strings.SplitN(text, "\n", 9)
		for _, line := range lines[:min(len(lines), 8)] {
			next, r := tk.Turn(s, line)
			holds(t, book, s, line, next, r)
			s = next
		}
	})
}

package dialog_test

import (
	"encoding/json"
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

// A what-if that is dropped leaves the plan bit for bit; kept, it equals the
// change said outright.
func TestWhatIfDropAndKeep(t *testing.T) {
	tk := talk(t)
	changes := []string{"2x2", "neck 42 cm", "3.5 cm deep", "hang every bump", "single layer", "3 rows per click", "front bands 2.5 cm", "one edge stitch", "plain", "11 rows a layer", "my bed has 200 needles"}
	for _, ch := range changes {
		s := arrive(t, tk, "plan")
		supposed, r := tk.Turn(s, "what if "+ch)
		require.Equal(t, "whatif", r.Kind, ch)
		dropped, _ := tk.Turn(supposed, "drop")
		require.Equal(t, standing(t, s), standing(t, dropped), ch)
		kept, k := tk.Turn(supposed, "keep")
		outright, o := tk.Turn(s, ch)
		require.Equal(t, standing(t, outright), standing(t, kept), ch)
		require.Equal(t, o.Results, k.Results, ch)
		require.Equal(t, k.Changes, o.Changes, ch)
	}
}

// n changes and undo n restore what stood before, also over the notebook.
func TestUndoRestores(t *testing.T) {
	tk := talk(t)
	changes := []string{"2x2", "neck 42 cm", "3.5 cm deep", "hang every bump", "3 rows per click", "front bands 2.5 cm"}
	rapid.Check(t, func(rt *rapid.T) {
		start := arrive(t, tk, "plan")
		s, states := start, []dialog.State{start}
		n := rapid.IntRange(1, 6).Draw(rt, "n")
		for range n {
			s, _ = tk.Turn(s, rapid.SampledFrom(changes).Draw(rt, "change"))
			states = append(states, s)
		}
		resumed := resume(rt, states)
		for range n {
			s, _ = tk.Turn(s, "undo")
			resumed, _ = tk.Turn(resumed, "undo")
		}
		require.Equal(rt, standing(rt, start), standing(rt, s))
		require.Equal(rt, standing(rt, start), standing(rt, resumed))
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

package dialog_test

import (
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
	"foldrow/rules"
)

const readmePath = "../README.md"

// TestReadme holds the lists of the README against rules/: what is assumed
// and what can be asked. With -update it writes them anew.
func TestReadme(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	for name, want := range map[string]string{"assumed": assumedTable(book), "asked": askedList(book)} {
		t.Run(name, func(t *testing.T) {
			readme, err := os.ReadFile(readmePath)
			require.NoError(t, err)
			got, next := block(t, string(readme), name, want)
			if *update {
				require.NoError(t, os.WriteFile(readmePath, []byte(next), 0o644))
				return
			}
			require.Equal(t, want, got, "rules/ say something else now: go test ./dialog -run TestReadme -update")
		})
	}
}

// block is what stands between the marks of that name in text, and text with
// want in its place.
func block(t *testing.T, text, name, want string) (got, next string) {
	open, end := "<!-- "+name+" -->\n", "<!-- end of "+name+" -->"
	before, rest, found := strings.Cut(text, open)
	require.True(t, found, "no %s", open)
	got, after, found := strings.Cut(rest, end)
	require.True(t, found, "no %s", end)
	return got, before + open + want + end + after
}

// assumedTable lists every default, and the two factors of the commonest rib.
func assumedTable(b *rules.Book) string {
	rows := []string{"| What | Taken as | Say, for instance |", "| --- | --- | --- |"}
	in := b.Defaults(engine.Rib{Knit: 1, Purl: 1})
	for _, k := range b.Keys {
		if !engine.IsNumber(k.Key) || !in.Has(k.Key) {
			continue
		}
		value := fmt.Sprintf("%g", in.Num(k.Key).Float())
		if k.Unit != "" && !strings.Contains(k.Label, k.Unit) {
			value += " " + k.Unit
		}
		label := k.Label
		switch k.Key {
		case engine.RibDraw, engine.RibStretch:
			label += ", 1x1"
		}
		rows = append(rows, "| "+label+" | "+value+" | *"+k.Example+"* |")
	}
	return strings.Join(rows, "\n") + "\n"
}

// askedList is the help as it stands in rules/, with where it can be asked unless
// that is the plan.
func askedList(b *rules.Book) string {
	only := map[string]string{"question": " (at a question)", "keep": " (while a what-if stands)", "making": " (at the machine)"}
	var rows []string
	for _, c := range b.Cards("help") {
		rows = append(rows, "- "+c.Fields["title"]+only[c.Fields["when"]]+": *"+strings.Join(c.List("words"), "*, *")+"*")
	}
	return strings.Join(rows, "\n") + "\n"
}

// TestReadmeLinesAreUnderstood: whatever the README offers to be said (set in
// single stars) means something once the plan is there, or at the machine.
func TestReadmeLinesAreUnderstood(t *testing.T) {
	readme, err := os.ReadFile(readmePath)
	require.NoError(t, err)
	_, text := block(t, string(readme), "conversation", "") // holds sums, where a star means times
	said := regexp.MustCompile(`(?:^|[^*\w])\*([^*]+)\*`).FindAllStringSubmatch(text, -1)
	require.NotEmpty(t, said)
	tk := talk(t)
	for _, m := range said {
		line := strings.Join(strings.Fields(m[1]), " ")
		_, r := tk.Turn(arrive(t, tk, "plan"), line)
		for _, at := range []string{"whatif", "making"} { // some lines belong to one of these
			if r.Kind == "unclear" {
				_, r = tk.Turn(arrive(t, tk, at), line)
			}
		}
		require.NotContains(t, []string{"unclear", "outside"}, r.Kind, line)
	}
}

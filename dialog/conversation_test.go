package dialog_test

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

var update = flag.Bool("update", false, "write the conversations anew from what is said now; read the difference before you keep it")

// TestConversations runs every conversation in testdata/conversations whole.
// A line that begins with "> " is what the knitter types; what follows is the
// reply as it must come, in Markdown.
func TestConversations(t *testing.T) {
	replay(t, "../testdata/conversations/*.txt", converse)
}

// replay holds every file that matches against what play makes of it today.
func replay(t *testing.T, pattern string, play func(*testing.T, string) string) {
	files, err := filepath.Glob(pattern)
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, path := range files {
		t.Run(filepath.Base(path), func(t *testing.T) {
			want, err := os.ReadFile(path)
			require.NoError(t, err)
			got := play(t, string(want))
			if *update {
				require.NoError(t, os.WriteFile(path, []byte(got), 0o644))
				return
			}
			require.Equal(t, string(want), got, "if this is meant: go test ./dialog -run '%s' -update", t.Name())
		})
	}
}

// converse says the lines of a conversation again and writes it with the
// replies of today.
func converse(t *testing.T, text string) string {
	tk := talk(t)
	s, _ := tk.Begin()
	var b strings.Builder
	for _, line := range strings.Split(text, "\n") {
		switch {
		case strings.HasPrefix(line, "# "):
			b.WriteString(line + "\n")
			continue
		case !strings.HasPrefix(line, "> "):
			continue
		}
		b.WriteString("\n" + line + "\n\n")
		next, r := tk.Turn(s, strings.TrimPrefix(line, "> "))
		s = next
		b.WriteString(indent(r))
	}
	return b.String()
}

func indent(r dialog.Reply) string {
	var b strings.Builder
	for _, l := range strings.Split(strings.TrimRight(r.Markdown, "\n"), "\n") {
		if l == "" {
			b.WriteString("\n")
			continue
		}
		b.WriteString("    " + l + "\n")
	}
	return b.String()
}

package engine_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// mayImport is the ladder of rooms: each may use the rooms below it.
var mayImport = map[string][]string{
	"engine": {},
	"rules":  {"engine"},
	"dialog": {"engine", "rules", "dialog"},
	"cmd":    {"engine", "rules", "dialog", "cmd"},
}

// keepOut is what the pure rooms must not touch: no files, no clock.
var keepOut = []string{"os", "time", "net", "net/http", "math/rand", "math/rand/v2", "path/filepath", "os/exec"}

// TestLadder: engine imports nothing of ours, rules only engine, dialog both,
// cmd dialog; and only the notebook and cmd know files and the clock.
func TestLadder(t *testing.T) {
	seen := map[string]bool{}
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		rel := filepath.ToSlash(strings.TrimPrefix(path, ".."+string(filepath.Separator)))
		room, _, _ := strings.Cut(rel, "/")
		seen[room] = true
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		require.NoError(t, err)
		for _, im := range file.Imports {
			name, err := strconv.Unquote(im.Path.Value)
			require.NoError(t, err)
			if ours, ok := strings.CutPrefix(name, "foldrow/"); ok {
				other, _, _ := strings.Cut(ours, "/")
				require.True(t, slices.Contains(mayImport[room], other), "%s may not import %s", rel, name)
			}
			pure := room != "cmd" && !strings.HasPrefix(rel, "dialog/notebook/")
			require.False(t, pure && slices.Contains(keepOut, name), "%s must not know %s", rel, name)
		}
		return nil
	})
	require.NoError(t, err)
	require.Len(t, seen, len(mayImport))
}

// TestOneFileEach: the two terminal libraries stand behind one file each, so
// that either can be replaced.
func TestOneFileEach(t *testing.T) {
	users := map[string][]string{}
	for _, dir := range []string{"../cmd/foldrow", "../dialog", "../dialog/answer", "../dialog/listen", "../rules"} {
		entries, err := os.ReadDir(dir)
		require.NoError(t, err)
		for _, e := range entries {
			if !strings.HasSuffix(e.Name(), ".go") || strings.HasSuffix(e.Name(), "_test.go") {
				continue
			}
			file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(dir, e.Name()), nil, parser.ImportsOnly)
			require.NoError(t, err)
			for _, im := range file.Imports {
				for _, lib := range []string{"charmbracelet/glamour\"", "chzyer/readline\""} {
					if strings.HasSuffix(im.Path.Value, lib) {
						users[lib] = append(users[lib], e.Name())
					}
				}
			}
		}
	}
	require.Len(t, users, 2)
	for lib, files := range users {
		require.Len(t, files, 1, "%s is used by %v", lib, files)
	}
}

// TestTopLevel: only the rooms that the design names stand at the top.
func TestTopLevel(t *testing.T) {
	entries, err := os.ReadDir("..")
	require.NoError(t, err)
	allowed := []string{"cmd", "dialog", "engine", "rules", "testdata", "go.mod", "go.sum", "README.md", "DEVELOPERS.md"}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") {
			require.Contains(t, allowed, e.Name())
		}
	}
}

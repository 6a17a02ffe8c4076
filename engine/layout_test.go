package engine_test

import (
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

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

package main

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"io"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// room is what go list tells of one of our packages.
type room struct {
	ImportPath, Dir  string
	GoFiles, Imports []string
	Deps             []string // whatever it is built from, however far down
}

func rooms(t *testing.T) []room {
	t.Helper()
	out, err := exec.Command("go", "list", "-json=ImportPath,Dir,GoFiles,Imports,Deps", "foldrow/...").Output()
	require.NoError(t, err)
	var list []room
	for d := json.NewDecoder(strings.NewReader(string(out))); ; {
		var r room
		if err := d.Decode(&r); err == io.EOF {
			break
		} else {
			require.NoError(t, err)
		}
		list = append(list, r)
	}
	require.NotEmpty(t, list)
	return list
}

// TestRoomsBelow: the ladder also holds for what a room reaches through
// others, and none but the program reaches a terminal library.
func TestRoomsBelow(t *testing.T) {
	reach := map[string][]string{
		"foldrow/engine":  {},
		"foldrow/rules":   {"foldrow/engine"},
		"foldrow/dialog/": {"foldrow/engine", "foldrow/rules", "foldrow/dialog/"},
		"foldrow/cmd/":    {"foldrow/engine", "foldrow/rules", "foldrow/dialog/", "foldrow/cmd/foldrow/early"},
	}
	for _, r := range rooms(t) {
		name := r.ImportPath + "/"
		var may []string
		known := false
		for from, to := range reach {
			if strings.HasPrefix(name, strings.TrimSuffix(from, "/")+"/") {
				may, known = to, true
			}
		}
		require.True(t, known, "%s stands in no room", r.ImportPath)
		for _, dep := range r.Deps {
			if !strings.HasPrefix(dep, "foldrow/") {
				terminal := strings.Contains(dep, "chzyer/readline") || strings.Contains(dep, "charmbracelet/glamour")
				require.False(t, terminal && r.ImportPath != "foldrow/cmd/foldrow", "%s reaches %s", r.ImportPath, dep)
				continue
			}
			below := slices.ContainsFunc(may, func(m string) bool { return strings.HasPrefix(dep+"/", strings.TrimSuffix(m, "/")+"/") })
			require.True(t, below, "%s reaches %s", r.ImportPath, dep)
		}
		if r.ImportPath == "foldrow/cmd/foldrow" {
			require.NotContains(t, r.Imports, "foldrow/engine", "the program asks the conversation, not the numbers")
		}
	}
}

// TestPureRooms: only the program and the notebook know files, the clock, the
// network or chance.
func TestPureRooms(t *testing.T) {
	keepOut := []string{"os", "os/exec", "time", "net", "net/http", "math/rand", "math/rand/v2", "path/filepath", "syscall"}
	knowing := []string{"foldrow/cmd/foldrow", "foldrow/cmd/foldrow/early", "foldrow/dialog/notebook"}
	found := map[string]bool{}
	for _, r := range rooms(t) {
		for _, im := range r.Imports {
			if slices.Contains(keepOut, im) {
				found[r.ImportPath] = true
				require.Contains(t, knowing, r.ImportPath, "it must not know %s", im)
			}
		}
	}
	require.Len(t, found, len(knowing))
}

// TestNoChangingGlobals: nothing at the level of a package is written to after
// it was made, by its name, an element or a field, and none is a lock or a
// store that is written to by its methods.
func TestNoChangingGlobals(t *testing.T) {
	globals := 0
	for _, r := range rooms(t) {
		fset := token.NewFileSet()
		var files []*ast.File
		for _, name := range r.GoFiles {
			f, err := parser.ParseFile(fset, filepath.Join(r.Dir, name), nil, 0)
			require.NoError(t, err)
			files = append(files, f)
		}
		own := map[string]*ast.ValueSpec{}
		for _, f := range files {
			for _, d := range f.Decls {
				if g, ok := d.(*ast.GenDecl); ok && g.Tok == token.VAR {
					for _, s := range g.Specs {
						for _, n := range s.(*ast.ValueSpec).Names {
							own[n.Name] = s.(*ast.ValueSpec)
						}
					}
				}
			}
		}
		globals += len(own)
		for name, s := range own {
			if sel, ok := s.Type.(*ast.SelectorExpr); ok {
				from, _ := sel.X.(*ast.Ident)
				require.False(t, from != nil && (from.Name == "sync" || from.Name == "atomic"), "%s: %s is a %s.%s",
					r.ImportPath, name, from, sel.Sel)
			}
		}
		for _, f := range files {
			for _, w := range writes(f) {
				// A name the parser bound inside this file is a local one, unless it is bound to the package's own.
				if s := own[w.Name]; s != nil && (w.Obj == nil || w.Obj.Decl == s) {
					t.Errorf("%s: %s is written to", fset.Position(w.Pos()), w.Name)
				}
			}
		}
	}
	require.Positive(t, globals)
}

// writes are the names at the root of whatever a file assigns to, counts up or
// takes the address of.
func writes(f *ast.File) []*ast.Ident {
	var names []*ast.Ident
	add := func(e ast.Expr) {
		if id := root(e); id != nil {
			names = append(names, id)
		}
	}
	for _, d := range f.Decls {
		body, ok := d.(*ast.FuncDecl)
		if !ok {
			continue
		}
		ast.Inspect(body, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.AssignStmt:
				if n.Tok != token.DEFINE {
					for _, e := range n.Lhs {
						add(e)
					}
				}
			case *ast.IncDecStmt:
				add(n.X)
			case *ast.UnaryExpr:
				if n.Op == token.AND {
					add(n.X)
				}
			}
			return true
		})
	}
	return names
}

func root(e ast.Expr) *ast.Ident {
	for {
		switch x := e.(type) {
		case *ast.Ident:
			return x
		case *ast.IndexExpr:
			e = x.X
		case *ast.SelectorExpr:
			e = x.X
		case *ast.StarExpr:
			e = x.X
		case *ast.ParenExpr:
			e = x.X
		default:
			return nil
		}
	}
}

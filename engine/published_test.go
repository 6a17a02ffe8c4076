package engine

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// published reads a table of testdata/published: lines that begin with # name
// the sources, the first other line names the columns. It fails a table with
// no rows, so that a lost file cannot pass.
func published(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "testdata", "published", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 2 {
		t.Fatalf("%s: no rows", name)
	}
	var out []map[string]string
	for _, row := range rows[1:] {
		m := map[string]string{}
		for i, key := range rows[0] {
			m[key] = row[i]
		}
		out = append(out, m)
	}
	return out
}

// whole reads a whole number of a published table.
func whole(t *testing.T, s string) int {
	t.Helper()
	n, err := strconv.Atoi(strings.TrimSpace(s))
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// wholes reads whole numbers with spaces between.
func wholes(t *testing.T, s string) []int {
	t.Helper()
	var ns []int
	for _, f := range strings.Fields(s) {
		ns = append(ns, whole(t, f))
	}
	return ns
}

// number reads a decimal of a published table.
func number(t *testing.T, s string) Num {
	t.Helper()
	n, ok := ParseNum(strings.TrimSpace(s))
	if !ok {
		t.Fatalf("%q is no number", s)
	}
	return n
}

package engine_test

import (
	"encoding/csv"
	"math"
	"os"
	"os/exec"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// check is one row of testdata/checks.csv; testdata/README.md tells the
// columns.
type check struct {
	id, what, given, expected, tolerance, unit, kind, source, note string
}

// fewest is how many checks there must at least be, so that a lost table or a
// lost half of it cannot pass.
const fewest = 150

// checkKinds are the kinds of checks, in the order in which they are counted.
func checkKinds() []string {
	return []string{
		"published", "published rule", "published with a slip", "standard", "data set",
		"reference program", "common practice", "second way",
	}
}

func readChecks(t *testing.T) []check {
	t.Helper()
	f, err := os.Open("../testdata/checks.csv")
	require.NoError(t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	require.Equal(t, []string{"id", "what", "given", "expected", "tolerance", "unit", "kind", "source", "note"}, rows[0])
	var list []check
	for _, c := range rows[1:] {
		list = append(list, check{c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8]})
	}
	return list
}

// TestChecks works out every row of the table of outside checks from what is
// given there, and prints how many of each kind hold. Nothing expected stands
// in this code.
func TestChecks(t *testing.T) {
	list := readChecks(t)
	require.GreaterOrEqual(t, len(list), fewest)
	ways, others := allWays(), otherWays()
	held, all := map[string]int{}, map[string]int{}
	seen, used := map[string]bool{}, map[string]bool{}
	for _, c := range list {
		ok := t.Run(c.id, func(t *testing.T) {
			require.False(t, seen[c.id], "two rows are called %s", c.id)
			require.Contains(t, checkKinds(), c.kind)
			require.NotEmpty(t, c.source, "no source")
			way, ok := wayOf(ways, c.what)
			require.True(t, ok, "nothing works out %q", c.what)
			g := readGiven(t, c.given)
			require.True(t, c.holds(t, way(g)))
			g.noneLeft()
			if c.kind == "second way" {
				other, ok := others[c.what]
				require.True(t, ok, "no second way to %q", c.what)
				require.True(t, c.holds(t, other(readGiven(t, c.given))), "the second way differs")
			}
		})
		seen[c.id], used[c.what] = true, true
		all[c.kind]++
		if ok {
			held[c.kind]++
		}
	}
	for what := range ways {
		require.True(t, used[what], "no row asks for %q", what)
	}
	for _, kind := range checkKinds() {
		t.Logf("%-22s %3d of %3d hold", kind, held[kind], all[kind])
	}
	t.Logf("%-22s %3d rows", "in all", len(list))
}

// holds compares word by word: numbers within the tolerance, anything else as
// it stands.
func (c check) holds(t *testing.T, got string) bool {
	t.Helper()
	want, have := strings.Fields(c.expected), strings.Fields(got)
	same := len(want) > 0 && len(want) == len(have)
	for i := range want {
		if !same {
			break
		}
		w, err := strconv.ParseFloat(want[i], 64)
		h, err2 := strconv.ParseFloat(have[i], 64)
		if err != nil || err2 != nil {
			same = want[i] == have[i]
			continue
		}
		same = math.Abs(w-h) <= c.margin(t, w)
	}
	if !same {
		t.Errorf("%s of %s: %s %s, want %s within %s (%s)", c.what, c.given, got, c.unit, c.expected, c.tolerance, c.source)
	}
	return same
}

// margin is how far a number may be from want; the last digits of floating
// point are free.
func (c check) margin(t *testing.T, want float64) float64 {
	t.Helper()
	text, percent := strings.CutSuffix(c.tolerance, "%")
	m, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	if percent {
		m *= math.Abs(want) / 100
	}
	return m + 1e-9*math.Abs(want) + 1e-12
}

// TestChecksAgainstUnits asks GNU Units itself for every row that names what
// it was asked.
func TestChecksAgainstUnits(t *testing.T) {
	units, err := exec.LookPath("units")
	if err != nil {
		t.Skip("GNU Units is not installed")
	}
	asked := 0
	for _, c := range readChecks(t) {
		g := readGiven(t, c.given)
		if !g.has("units_from") {
			continue
		}
		args := slices.DeleteFunc([]string{"-t", "-o", "%.10g", g.text("units_from"), g.text("units_to")}, func(s string) bool { return s == "" })
		out, err := exec.Command(units, args...).CombinedOutput()
		require.NoError(t, err, "%s: %s", c.id, out)
		require.True(t, c.holds(t, string(out)), c.id)
		asked++
	}
	require.Positive(t, asked)
}

package dialog_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
	"foldrow/engine"
)

// worked is a sum of a reply worked out by Go's own reading of expressions,
// which is not the one that the engine's records are checked with.
func worked(expr string) (float64, error) {
	tree, err := parser.ParseExpr(expr)
	if err != nil {
		return 0, err
	}
	v := valueOf(tree)
	if math.IsNaN(v) {
		return 0, fmt.Errorf("not a sum: %s", expr)
	}
	return v, nil
}

func valueOf(e ast.Expr) float64 {
	switch e := e.(type) {
	case *ast.BasicLit:
		if v, err := strconv.ParseFloat(e.Value, 64); err == nil {
			return v
		}
	case *ast.ParenExpr:
		return valueOf(e.X)
	case *ast.UnaryExpr:
		if e.Op == token.SUB {
			return -valueOf(e.X)
		}
	case *ast.BinaryExpr:
		x, y := valueOf(e.X), valueOf(e.Y)
		switch e.Op {
		case token.ADD:
			return x + y
		case token.SUB:
			return x - y
		case token.MUL:
			return x * y
		case token.QUO:
			return x / y
		}
	case *ast.CallExpr:
		return called(e)
	}
	return math.NaN()
}

func called(e *ast.CallExpr) float64 {
	var args []float64
	for _, a := range e.Args {
		args = append(args, valueOf(a))
	}
	name := e.Fun.(*ast.Ident).Name
	one := map[string]func(float64) float64{"sqrt": math.Sqrt, "asin": math.Asin, "floor": math.Floor}
	two := map[string]func(a, b float64) float64{"min": math.Min, "max": math.Max}
	switch {
	case one[name] != nil && len(args) == 1:
		return one[name](args[0])
	case two[name] != nil && len(args) == 2:
		return two[name](args[0], args[1])
	}
	return math.NaN()
}

// A sum is one thing that a reply says of its own numbers: what matches, and
// what the matched numbers must be. The numbers are those in brackets, in
// their order.
type sum struct {
	name  string
	shape *regexp.Regexp
	holds func(n []float64) bool
}

var sums = []sum{
	{"rows of both layers", regexp.MustCompile(`\b(\d+) rows a layer, (\d+) in all`), func(n []float64) bool { return n[1] == n[0] || n[1] == 2*n[0] || n[1] == 2*n[0]+1 }},
	{"needles of the band", regexp.MustCompile(`\b(\d+) stitches,? (?:needles )?\(?L(\d+) to R(\d+)`), func(n []float64) bool { return n[0] == n[1]+n[2] }},
	{"colours of a row", regexp.MustCompile(`over \*\*(\d+) stitches\*\*(?s:.*?)\n\| 1 \| \S+ \| (\d+) \| (\d+) \|`), func(n []float64) bool { return n[0] == n[1]+n[2] }},
	{"repeats of a row", regexp.MustCompile(`over \*\*(\d+) stitches\*\*(?s:.*?)\((\d+) repeats? of (\d+) and (\d+) stitch`), func(n []float64) bool { return n[0] == n[1]*n[2]+n[3] }},
	{"needles of a colour", regexp.MustCompile(`Left, out from the centre: .*?(\d+) in all\.\n- Right: .*?(\d+) in all\.\n- (\d+) contrast`), func(n []float64) bool { more := n[0] + n[1] - n[2]; return more >= 0 && more <= 2 }},
	{"pieces of a stage", regexp.MustCompile(`\| \w+ \| (\d+) \| [^|\n]* \| [^|\n]* \| [^|\n]*(?: \| \d*)? \| 2: (\d+) \+ (\d+) \|`), func(n []float64) bool { return n[0] == n[1]+n[2] }},
	{"rounding of a stage", regexp.MustCompile(`\| (\d+) \| ([\d.]+) \(([+-][\d.]+)\) \|`), func(n []float64) bool { return math.Abs(n[0]-n[1]-n[2]) < 0.006 }},
	{"stitches that a stage loses", regexp.MustCompile(`\n\| \w+ \| (\d+) \|[^\n]*\n\| \w+ \| (\d+) \| [^|\n]* \| (\d+) \|`), func(n []float64) bool { return n[0]-n[1] == n[2] }},
	{"buttonholes", regexp.MustCompile(`\*\*(\d+) buttonholes of (\d+) stitches over (\d+) stitches\*\*, (\d+) outside each end(?s:.*?)Gaps between them: (.*?) \(`), func(n []float64) bool {
		total := n[0]*n[1] + 2*n[3]
		for _, gap := range n[4:] {
			total += gap
		}
		return total == n[2]
	}},
}

var (
	inCode  = regexp.MustCompile("`([^`=]+) = ([-0-9.]+)(?: -> ([0-9]+))?`")
	numeral = regexp.MustCompile(`[+-]?[0-9]+(?:\.[0-9]+)?`)
)

// recompute works out every sum of a reply and counts them by name.
func recompute(t *testing.T, said, text string, count map[string]int) {
	t.Helper()
	for _, m := range inCode.FindAllStringSubmatch(text, -1) {
		count["written out"]++
		want, err := strconv.ParseFloat(m[2], 64)
		require.NoError(t, err)
		got, err := worked(m[1])
		// the parts are shown with four decimals, so the whole may be off in its fourth digit
		if err != nil || math.Abs(got-want) > 5e-4*math.Max(1, math.Abs(want)) {
			t.Errorf("%q: %s comes to %v (%v)", said, m[0], got, err)
		}
		if to, err := strconv.ParseFloat(m[3], 64); err == nil && math.Abs(to-want) > 20 {
			t.Errorf("%q: %s is rounded too far", said, m[0])
		}
	}
	for _, s := range sums {
		for _, m := range overlapping(s.shape, text) {
			count[s.name]++
			var n []float64
			for _, group := range m[1:] {
				for _, figure := range numeral.FindAllString(group, -1) {
					v, err := strconv.ParseFloat(figure, 64)
					require.NoError(t, err)
					n = append(n, v)
				}
			}
			if !s.holds(n) {
				t.Errorf("%q: %s: %v in %s", said, s.name, n, m[0])
			}
		}
	}
}

// overlapping is every place where shape stands in text, also within another:
// a row of a table is the second of one pair and the first of the next.
func overlapping(shape *regexp.Regexp, text string) [][]string {
	var all [][]string
	for {
		at := shape.FindStringSubmatchIndex(text)
		if at == nil {
			return all
		}
		all = append(all, shape.FindStringSubmatch(text))
		_, text, _ = strings.Cut(text[at[0]:], " ")
	}
}

// TestRepliesAddUp recomputes, from the text alone, every sum in the replies
// to all lines of the tables and of the kept conversations, and to a why for
// every number in every place.
func TestRepliesAddUp(t *testing.T) {
	_, tk := talkOf(t)
	count := map[string]int{}
	for _, table := range tables {
		for _, r := range readRows(t, table) {
			_, got := tk.Turn(arrive(t, tk, r.context), r.said)
			recompute(t, r.said, got.Markdown, count)
		}
	}
	for context := range contexts {
		s := arrive(t, tk, context)
		for _, k := range append(engine.ResultKeys(), engine.InputKeys()...) {
			for _, line := range []string{"why " + strings.ReplaceAll(string(k), "_", " ")} {
				_, got := tk.Turn(s, line)
				recompute(t, line, got.Markdown, count)
			}
		}
	}
	for _, line := range around {
		_, got := tk.Turn(arrive(t, tk, "plan"), line)
		recompute(t, line, got.Markdown, count)
	}
	conversations(t, tk, func(said string, r dialog.Reply) { recompute(t, said, r.Markdown, count) })
	for _, s := range append(sums, sum{name: "written out"}) {
		t.Logf("%-28s %d", s.name, count[s.name])
		if count[s.name] == 0 {
			t.Errorf("no reply has a sum of the kind %q any more: mend its shape", s.name)
		}
	}
}

// around are questions about the work around the band whose replies add up.
var around = []string{
	"what does contrast every fourth over 105 stitches take, card for row 1", "what would x..x.. over 77 take, card for row 1",
	"3 stages 240 to 105, repeats 12 8 6", "four stages from 240 heights 8 6 5 4 cm", "6 stages 300 to 97", "2 stages 160 to 105",
	"5 buttonholes of 3 stitches over 96, margins 4", "7 buttonholes of 2 stitches over 110, margins 3", "6 buttonholes of 4 stitches over 131, margins 5",
	"x..x.. over 105, x being contrast", "contrast every fourth over 105 stitches", "every other over 96 stitches",
}

// conversations says every line of the kept conversations again.
func conversations(t *testing.T, tk *dialog.Talk, each func(said string, r dialog.Reply)) {
	t.Helper()
	files, err := filepath.Glob("../testdata/conversations/*.txt")
	require.NoError(t, err)
	more, err := filepath.Glob("../testdata/making/*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, append(files, more...))
	for _, file := range append(files, more...) {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		s, _ := tk.Begin()
		for line := range strings.Lines(string(text)) {
			if said, ok := strings.CutPrefix(strings.TrimRight(line, "\n"), "> "); ok {
				var r dialog.Reply
				s, r = tk.Turn(s, said)
				each(said, r)
			}
		}
	}
}

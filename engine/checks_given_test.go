package engine_test

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// A way works one check out from what is given: words with spaces between.
type way func(*given) string

// allWays are the ways by the name that stands in the table's column what.
// The results of a plan need none: they are asked for by their key.
func allWays() map[string]way {
	all := map[string]way{}
	for _, group := range []map[string]way{bandWays(), rowWays(), yokeWays(), edgeWays(), frontWays(), tableWays(), yarnWays(), aroundWays()} {
		for what, w := range group {
			all[what] = w
		}
	}
	return all
}

func wayOf(ways map[string]way, what string) (way, bool) {
	if w, ok := ways[what]; ok {
		return w, true
	}
	for _, k := range engine.ResultKeys() {
		if string(k) == what {
			return func(g *given) string { return g.result(k) }, true
		}
	}
	return nil, false
}

// given is the column of that name: key=value, with ; between. It knows which
// keys were asked for, so that a slip of the pen in a key is found.
type given struct {
	t      *testing.T
	values map[string]string
	asked  map[string]bool
}

func readGiven(t *testing.T, column string) *given {
	t.Helper()
	g := &given{t: t, values: map[string]string{}, asked: map[string]bool{"units_from": true, "units_to": true}}
	for pair := range strings.SplitSeq(column, ";") {
		if column == "" {
			break
		}
		k, v, ok := strings.Cut(pair, "=")
		require.True(t, ok, "%q is no key=value", pair)
		g.values[strings.TrimSpace(k)] = strings.TrimSpace(v)
	}
	return g
}

func (g *given) has(k string) bool { _, ok := g.values[k]; return ok }

func (g *given) noneLeft() {
	g.t.Helper()
	for k := range g.values {
		require.True(g.t, g.asked[k], "%q is given and not used", k)
	}
}

func (g *given) text(k string) string {
	g.t.Helper()
	v, ok := g.values[k]
	require.True(g.t, ok, "%q is not given", k)
	g.asked[k] = true
	return v
}

func (g *given) int(k string) int {
	g.t.Helper()
	n, err := strconv.Atoi(g.text(k))
	require.NoError(g.t, err)
	return n
}

func (g *given) float(k string) float64 { return g.num(k).Float() }

// num is a bare number, or a measure in words, which is read as a line of
// conversation is: in cm, per 10 cm, g or m per 100 g.
func (g *given) num(k string) engine.Num {
	g.t.Helper()
	return measured(g.t, g.text(k))
}

func measured(t *testing.T, s string) engine.Num {
	t.Helper()
	if n, ok := engine.ParseNum(s); ok {
		return n
	}
	qs := quantity.Scan(s)
	require.Len(t, qs, 1, s)
	read := []func(quantity.Quantity) (engine.Num, bool){
		quantity.Quantity.Length, quantity.Quantity.Grams, quantity.Quantity.Per10cm, quantity.Quantity.MetresPer100g,
	}
	for _, f := range read {
		if v, ok := f(qs[0]); ok {
			return v
		}
	}
	require.Fail(t, "no measure", s)
	return engine.Num{}
}

// inputs is everything given that is an input of a plan, over the defaults of
// the rules.
func (g *given) inputs() engine.Inputs {
	g.t.Helper()
	var in engine.Inputs
	for _, k := range engine.InputKeys() {
		if !g.has(string(k)) {
			continue
		}
		if engine.IsNumber(k) {
			in = in.With(k, g.num(string(k)))
			continue
		}
		next, ok := in.Parse(k, g.text(string(k)))
		require.True(g.t, ok, "%s", k)
		in = next
	}
	return g.book().Filled(in)
}

func (g *given) book() *rules.Book {
	g.t.Helper()
	book, err := rules.Load()
	require.NoError(g.t, err)
	return book
}

func (g *given) plan() *engine.Plan { return engine.Solve(g.inputs()) }

func (g *given) result(k engine.Key) string {
	g.t.Helper()
	v, ok := g.plan().Float(k)
	require.True(g.t, ok, "the plan has no %s", k)
	return floats(v)
}

func ints(list ...int) string {
	words := make([]string, len(list))
	for i, n := range list {
		words[i] = strconv.Itoa(n)
	}
	return strings.Join(words, " ")
}

func floats(list ...float64) string {
	words := make([]string, len(list))
	for i, v := range list {
		words[i] = strconv.FormatFloat(v, 'g', 14, 64)
	}
	return strings.Join(words, " ")
}

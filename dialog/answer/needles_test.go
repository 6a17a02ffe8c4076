package answer

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"foldrow/engine"
)

// The words must give the needles back: a reader written apart from the
// writer follows them as a knitter would, with a finger on the bed.
var (
	everyNeedle = regexp.MustCompile(`^every (\d+)(?:st|nd|rd|th) needle from (\S+) to (\S+) \((\d+) needles\)$`)
	groupsAt    = regexp.MustCompile(`^(\d+) side by side at every (\d+)(?:st|nd|rd|th) needle, first (\S+?)(?:\+\S+| to \S+), last (\S+?)(?:\+\S+| to \S+) \((\d+) groups\)$`)
	thenEvery   = regexp.MustCompile(`^then every (\d+)(?:st|nd|rd|th) needle (once|twice|\d+ times) \(to (\S+)\)$`)
	thenTurn    = regexp.MustCompile(`^then the (.+) in turn (once|twice|\d+ times) \(to (\S+)\)$`)
	takeTurns   = regexp.MustCompile(`^from (\S+): (take .+), (twice|\d+ times) \(to (\S+)\)$`)
	takeLeaves  = regexp.MustCompile(`take (\d+), leave (\d+)`)
	ordinal     = regexp.MustCompile(`(\d+)(?:st|nd|rd|th)`)
)

type follower struct {
	t *rapid.T
	n int
}

func (f follower) col(name string) int {
	c, ok := engine.NeedleColumn(name, f.n)
	require.True(f.t, ok, name)
	return c
}

func (f follower) times(s string) int {
	switch s {
	case "once":
		return 1
	case "twice":
		return 2
	}
	n, err := strconv.Atoi(strings.TrimSuffix(s, " times"))
	require.NoError(f.t, err)
	return n
}

func atoi(s string) int { n, _ := strconv.Atoi(s); return n }

// group reads "L3", "L3+L2" or "L5 to L3".
func (f follower) group(s string) []int {
	if a, b, ok := strings.Cut(s, "+"); ok {
		return []int{f.col(a), f.col(b)}
	}
	if a, b, ok := strings.Cut(s, " to "); ok {
		var out []int
		for c := f.col(a); c <= f.col(b); c++ {
			out = append(out, c)
		}
		return out
	}
	return []int{f.col(s)}
}

// walkOrList follows a walk, or a list in which each needle has its name.
func (f follower) walkOrList(words string) []int {
	if strings.Contains(words, ", then ") {
		return f.walk(words)
	}
	var out []int
	for _, name := range strings.Split(words, ", ") {
		out = append(out, f.col(name))
	}
	return out
}

// A walk in turns is told needle by needle, as long as that can be read.
func TestUnevenDecreasesAreListed(t *testing.T) {
	for _, words := range []string{
		rehangWords(t, 103, 140, "two on L51, L48, L45, L43, L40, "), // turns
		rehangWords(t, 100, 125, "two on L48, then every 4th needle 24 times (to R49)"),
	} {
		require.NotContains(t, words, "in turn")
	}
}

func rehangWords(t *testing.T, band, yoke int, begins string) string {
	p := &engine.Plan{BandStitches: band, Rehang: engine.Spread(yoke, band)}
	words := RehangWords(p)
	require.True(t, strings.HasPrefix(words, begins), words)
	return words
}

// taken follows what to take and what to leave.
func (f follower) taken(words string) []int {
	var out []int
	for _, part := range strings.Split(strings.TrimPrefix(words, "the needles "), "; then ") {
		m := takeTurns.FindStringSubmatch(part)
		if m == nil {
			for _, name := range strings.Split(part, ", ") {
				out = append(out, f.group(name)...)
			}
			continue
		}
		at := f.col(m[1])
		for range f.times(m[3]) {
			for _, t := range takeLeaves.FindAllStringSubmatch(m[2], -1) {
				for range atoi(t[1]) {
					out = append(out, at)
					at++
				}
				at += atoi(t[2])
			}
		}
		require.Equal(f.t, f.col(m[4]), at-1, part)
	}
	return out
}

// needles follows a list of stretches, what to take and leave, or a walk.
func (f follower) needles(words string) []int {
	if strings.Contains(words, "take ") || strings.Contains(words, ", ") && !strings.ContainsAny(words, ";(") {
		return f.taken(words)
	}
	if strings.Contains(words, ", then ") || !strings.ContainsAny(words, "; ") {
		return f.walk(words)
	}
	var out []int
	for _, part := range strings.Split(words, "; ") {
		if m := everyNeedle.FindStringSubmatch(part); m != nil {
			last, step := f.col(m[3]), atoi(m[1])
			for c := f.col(m[2]); c <= last; c += step {
				out = append(out, c)
			}
			continue
		}
		if m := groupsAt.FindStringSubmatch(part); m != nil {
			for g := range atoi(m[5]) {
				for w := range atoi(m[1]) {
					out = append(out, f.col(m[3])+g*atoi(m[2])+w)
				}
			}
			continue
		}
		for _, g := range strings.Split(part, " and ") {
			out = append(out, f.group(g)...)
		}
	}
	return out
}

func (f follower) walk(words string) []int {
	parts := strings.Split(words, ", then ")
	at := f.col(parts[0])
	out := []int{at}
	for _, part := range parts[1:] {
		var steps []int
		times, to := "", ""
		if m := thenEvery.FindStringSubmatch("then " + part); m != nil {
			steps, times, to = []int{atoi(m[1])}, m[2], m[3]
		} else {
			m := thenTurn.FindStringSubmatch("then " + part)
			require.NotNil(f.t, m, part)
			for _, o := range ordinal.FindAllStringSubmatch(m[1], -1) {
				steps = append(steps, atoi(o[1]))
			}
			times, to = m[2], m[3]
		}
		for range f.times(times) {
			for _, s := range steps {
				at += s
				out = append(out, at)
			}
		}
		require.Equal(f.t, f.col(to), at, part)
	}
	return out
}

func drawnPlan(t *rapid.T) *engine.Plan {
	rib := engine.Rib{Knit: rapid.IntRange(1, 4).Draw(t, "knit"), Purl: rapid.IntRange(1, 4).Draw(t, "purl")}
	in := engine.Inputs{}.WithGarment(engine.Pullover).WithRib(rib).
		With(engine.StitchGauge, engine.Int(28)).With(engine.RowGauge, engine.Int(40)).
		With(engine.Neck, engine.Int(int64(rapid.IntRange(26, 60).Draw(t, "neck")))).
		With(engine.Depth, engine.Int(3)).With(engine.Layers, engine.Int(2)).
		With(engine.EdgeStitches, engine.Int(int64(rapid.IntRange(0, 3).Draw(t, "edge")))).
		With(engine.HemEvery, engine.Int(int64(rapid.IntRange(1, 4).Draw(t, "hem")))).
		With(engine.BedNeedles, engine.Int(200))
	p := engine.Solve(in)
	over := rapid.IntRange(0, p.BandStitches).Draw(t, "decreases")
	return engine.Solve(in.With(engine.YokeStitches, engine.Int(int64(p.BandStitches+over))))
}

func TestNeedleWordsGiveTheNeedlesBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := drawnPlan(rt)
		f := follower{rt, p.BandStitches}
		for _, cols := range [][]int{p.RibColumns, p.HemColumns} {
			want := slices.Clone(cols)
			slices.Sort(want)
			require.Equal(rt, want, f.needles(NeedleRuns(cols, p.BandStitches)), NeedleRuns(cols, p.BandStitches))
		}
	})
}

func TestRehangWordsGiveTheMapBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := drawnPlan(rt)
		f := follower{rt, p.BandStitches}
		words := RehangWords(p)
		got := slices.Repeat([]int{1}, p.BandStitches)
		if words == "two on every needle" {
			got = slices.Repeat([]int{2}, p.BandStitches)
		} else if rest, ok := strings.CutPrefix(words, "two on "); ok {
			for _, c := range f.walkOrList(strings.TrimSuffix(rest, "; one on all the rest")) {
				got[c] = 2
			}
		} else if rest, ok := strings.CutPrefix(words, "one only on "); ok {
			got = slices.Repeat([]int{2}, p.BandStitches)
			for _, c := range f.walkOrList(strings.TrimSuffix(rest, "; two on all the rest")) {
				got[c] = 1
			}
		} else {
			require.True(rt, strings.HasPrefix(words, "one stitch on every needle"), words)
		}
		require.Equal(rt, p.Rehang, got, words)
	})
}

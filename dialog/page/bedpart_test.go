package page

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// checkLists wants a box for every needle of piece i, plan q, and counts them.
func checkLists(t *testing.T, parts []bedPart, i int, q *engine.Plan, sec map[string]string) int {
	n := q.BandStitches
	if n == 0 {
		return 0
	}
	if parts[i].Name != "" {
		sec = sectionsAt(sec[parts[i].Name], "h3")
	}
	require.Equal(t, names(q.RibColumns, n), ticked(sec[fmt.Sprintf("Drop and latch %d columns", len(q.RibColumns))]))
	require.Equal(t, names(q.EmptyColumns, n), ticked(sec[fmt.Sprintf("Leave %d needles out of work", len(q.EmptyColumns))]))
	require.Equal(t, names(q.HemColumns, n), ticked(sec[fmt.Sprintf("Hang %d bumps of the first band row", len(q.HemColumns))]))
	want := names(columns(q.Rehang, 2), n)
	if len(q.Hangings) > 0 {
		want = []string{}
	}
	for _, h := range q.Hangings {
		few, all := columns(h.Map, 2), len(h.Map)
		if 2*len(few) > all {
			few = columns(h.Map, 1)
		}
		want = append(want, names(few, all)...)
	}
	require.Equal(t, want, ticked(sec["Hang again"]))
	return len(want) + len(q.RibColumns) + len(q.EmptyColumns) + len(q.HemColumns)
}

func TestTheStripShowsEveryNeedle(t *testing.T) {
	for _, s := range all() {
		t.Run(s.name, func(t *testing.T) {
			v, p, _ := s.solve(t)
			parts := bedParts(v, p)
			require.Equal(t, p.BandStitches > 0, len(parts) > 0)
			for i, b := range parts {
				checkStrip(t, b, p.OnBed()[i])
			}
		})
	}
}

// checkStrip wants every needle of plan q in its picture, and every sign.
func checkStrip(t *testing.T, part bedPart, q *engine.Plan) {
	var numbers, want []string
	var pictures strings.Builder
	for _, b := range part.Strip() {
		pictures.WriteString(b.SVG)
		for _, m := range svgText.FindAllStringSubmatch(b.SVG, -1) {
			if m[1] == mm(large) {
				numbers = append(numbers, m[2])
			}
		}
	}
	doubled := answer.Doubled(q)
	if len(q.RibColumns)+len(q.HemColumns)+len(q.EmptyColumns)+len(doubled) > 0 {
		for c := range q.BandStitches {
			want = append(want, engine.NeedleName(c, q.BandStitches)[1:])
		}
	}
	require.Equal(t, want, numbers)
	all := pictures.String()
	require.Equal(t, len(q.RibColumns), strings.Count(all, "l1.9 2.8"), "columns to latch")
	require.Equal(t, len(q.HemColumns), strings.Count(all, "a2.1 2.1"), "bumps to hang")
	require.Equal(t, 2*len(q.EmptyColumns), strings.Count(all, "a1.8 1.8"), "needles out of work")
	require.Equal(t, 2*len(doubled), strings.Count(all, `r="1.1"`), "two stitches on a needle")
	if q.BandStitches > 1 && want != nil {
		require.Equal(t, 2, strings.Count(all, `class="heavy"`), "the centre, from both sides")
	}
}

// A path's own letters are no needles.
var drawn = regexp.MustCompile(` d="[^"]*"`)

var needleNamed = regexp.MustCompile(`\b[LR](\d+)\b`)

// TestNoNeedleBeyondTheBed: whatever is planned, the sheets name needles that
// the bed has.
func TestNoNeedleBeyondTheBed(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	pieces, hangs := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		said := randomSaid(t)
		p := engine.Solve(book.Filled(said))
		if len(p.OnBed()) > 1 {
			pieces++
		}
		if len(p.Hangings) > 0 {
			hangs++
		}
		v := answer.Voice{Book: book, Unit: "cm"}
		html, err := HTML(v, p, said, Notes{})
		require.NoError(t, err)
		most := (p.In.Int(engine.BedNeedles) + 1) / 2
		for _, page := range []string{drawn.ReplaceAllString(html, ""), Markdown(v, p, said, Notes{})} {
			for _, m := range needleNamed.FindAllStringSubmatchIndex(page, -1) {
				n, err := strconv.Atoi(page[m[2]:m[3]])
				require.NoError(t, err)
				require.LessOrEqual(t, n, most, "%s", page[max(0, m[0]-160):m[1]])
			}
		}
	})
	if testing.Short() {
		return // too few plans to meet every kind
	}
	require.Positive(t, pieces, "no plan in pieces was tried")
	require.Positive(t, hangs, "no plan in hangings was tried")
}

// randomSaid is what a knitter with any gauge, neck, bed and yoke says.
func randomSaid(t *rapid.T) engine.Inputs {
	var said engine.Inputs
	say := func(k engine.Key, text string) {
		in, ok := said.Parse(k, text)
		require.True(t, ok, "%s %s", k, text)
		said = in
	}
	number := func(k engine.Key, low, high int) {
		say(k, fmt.Sprint(rapid.IntRange(low, high).Draw(t, string(k))))
	}
	some := func(name string) bool { return rapid.IntRange(0, 2).Draw(t, name) == 0 }
	say(engine.KeyGarment, rapid.SampledFrom([]string{"cardigan", "pullover"}).Draw(t, "garment"))
	say(engine.KeyRib, rapid.SampledFrom([]string{"1x1", "2x1", "2x2", "3x3", "plain"}).Draw(t, "rib"))
	number(engine.StitchGauge, 16, 60)
	number(engine.RowGauge, 24, 80)
	number(engine.Neck, 30, 90)
	number(engine.DepthRows, 3, 20)
	number(engine.BedNeedles, 60, 200)
	if some("yoke told") {
		number(engine.YokeStitches, 60, 900)
	}
	if some("mock") {
		say(engine.KeyBandKind, "mock")
	}
	if some("fronts") {
		number(engine.FrontEdge, 20, 80)
		number(engine.Holes, 1, 9)
	}
	if some("stages") {
		number(engine.YokeFirst, 100, 500)
		number(engine.YokeStages, 2, 5)
	}
	return said
}

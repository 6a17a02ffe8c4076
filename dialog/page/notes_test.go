package page

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// TestAWhatIfIsMarked: sheets of a what-if say so in the head and in every
// margin, and name what is supposed; those of the kept plan do not.
func TestAWhatIfIsMarked(t *testing.T) {
	v, p, said := samples[0].with(map[engine.Key]string{"rib": "2x2"}).solve(t)
	n := Notes{Name: "Blue", Supposed: []engine.Key{engine.KeyRib}}
	page, err := HTML(v, p, said, n)
	require.NoError(t, err)
	require.Contains(t, page, "<b>WHAT IF</b> Only supposed, not the plan that is kept: rib 2x2.")
	require.Contains(t, footStyle(lay(v, p, said, n)), "WHAT IF")
	require.Contains(t, Markdown(v, p, said, n), "**WHAT IF.** Only supposed")

	n.Supposed = nil
	page, err = HTML(v, p, said, n)
	require.NoError(t, err)
	require.NotContains(t, page, "WHAT IF")
	require.NotContains(t, Markdown(v, p, said, n), "WHAT IF")
}

// TestTheMarginHoldsNoMoreThanText: no name can end the string of the style.
func TestTheMarginHoldsNoMoreThanText(t *testing.T) {
	for in, want := range map[string]string{
		"Blue 2": `"Blue 2"`, `a"b`: `"a\000022 b"`, `a\b`: `"a\00005c b"`, "a}</style>": `"a\00007d \00003c \00002f style\00003e "`, "ä": `"\0000e4 "`,
	} {
		require.Equal(t, want, cssText(in))
	}
	require.Equal(t, 80, len([]rune(short(strings.Repeat("x", 200), mostFoot))))
}

// TestTheDateIsGiven: the page knows no day of its own.
func TestTheDateIsGiven(t *testing.T) {
	v, p, said := samples[0].solve(t)
	require.Equal(t, "Blue · 105 stitches · 3 May 2026", lay(v, p, said, Notes{Name: "Blue", Date: "3 May 2026"}).foot())
	require.Equal(t, "The neckband · 105 stitches", lay(v, p, said, Notes{}).foot())
}

// TestGaugesAsTold: a gauge stands as it was told, whatever unit came later.
func TestGaugesAsTold(t *testing.T) {
	for _, tt := range []struct{ unit, stitches, rows, want string }{
		{"cm", "28", "40", "28 stitches in 10 cm, 40 rows in 10 cm"},
		{"in", "28", "40", "28 stitches in 10 cm (7.11 stitches to the inch), 40 rows in 10 cm (10.16 rows to the inch)"},
		{"in", "7000/254", "10000/254", "7 stitches to the inch (27.56 stitches in 10 cm), 10 rows to the inch (39.37 rows in 10 cm)"},
		{"cm", "7000/254", "40", "7 stitches to the inch (27.56 stitches in 10 cm), 40 rows in 10 cm"},
		{"cm", "400/14", "40", "28.57 stitches in 10 cm, 40 rows in 10 cm"},
	} {
		s := samples[0].with(map[engine.Key]string{"stitch_gauge": tt.stitches, "row_gauge": tt.rows})
		v, p, _ := s.solve(t)
		v.Unit = "cm"
		if tt.unit == "in" {
			v.Unit = "in"
		}
		require.Equal(t, tt.want, gauges(v, p))
	}
}

// TestABabysCautionsComeFirst, though no step of a pullover has a button.
func TestABabysCautionsComeFirst(t *testing.T) {
	v, p, _ := samples[1].with(map[engine.Key]string{"wearer": "6 months"}).solve(t)
	list := cautions(v, p)
	for i, id := range []string{"baby-neck", "buttons-children", "cords-children"} {
		c, ok := v.Book.Card("cautions", id)
		require.True(t, ok)
		require.Equal(t, c.Fields["title"], list[i].Title)
	}
}

// TestPaperAsksNothing: what can be answered in the conversation only is not
// printed.
func TestPaperAsksNothing(t *testing.T) {
	asks := regexp.MustCompile(`(?i)\bsay \*|\btell me\b|\bsay what\b|\bsay the\b|\*how do i|i will check|for example: \*`)
	for _, s := range all() {
		v, p, said := s.solve(t)
		require.Empty(t, asks.FindAllString(Markdown(v, p, said, Notes{}), -1), s.name)
	}
}

// TestWhatCannotBePrintedIsSaid: a yoke without an end, one that cannot be, a
// chart over nothing and one wider than its row each leave a plain line.
func TestWhatCannotBePrintedIsSaid(t *testing.T) {
	for want, said := range map[string]map[engine.Key]string{
		"The stages of the yoke are not printed, since they cannot be as told.": {"yoke_first": "90"},
		"The chart is not laid out here":                                        {"chart": "x..x..", "yoke_stitches": ""},
		"The chart is not printed, since it cannot be laid out.":                {"chart": "x..x..", "chart_stitches": "4"},
	} {
		s := samples[0].with(said)
		for k, text := range said {
			if text == "" {
				delete(s.said, k)
			}
		}
		v, p, in := s.solve(t)
		require.Contains(t, Markdown(v, p, in, Notes{}), want)
		page, err := HTML(v, p, in, Notes{})
		require.NoError(t, err)
		require.Contains(t, page, want)
	}
}

// TestFrontPieces: in pieces each column is named on the needles of its piece,
// with a stitch more at each side of a join; buttons sit at the middles.
func TestFrontPieces(t *testing.T) {
	for _, s := range samples {
		if s.name != "yoke" {
			continue
		}
		v, p, _ := s.solve(t)
		f := layFronts(v, p)
		require.Equal(t, 2, p.Front.Pieces)
		require.Equal(t, 83, f.Parts[0].Needles())
		require.Equal(t, 73, f.Parts[1].Needles())
		require.Equal(t, "L42", f.Parts[0].Needle(0))  // 83 needles: 42 on the left
		require.Equal(t, "R40", f.Parts[0].Needle(81)) // R41 is the stitch for the join
		require.Equal(t, "L36", f.Parts[1].Needle(82)) // L37 is the stitch for the join
		require.Equal(t, hole{"4 to 9", "L39 to L34, piece 1", "7"}, f.Holes[0])
		require.Equal(t, hole{"99 to 104", "L20 to L15, piece 2", "102"}, f.Holes[4])
		picked := 0
		for _, pin := range f.Pins {
			n := 0
			_, err := fmt.Sscan(pin.Stitches, &n)
			require.NoError(t, err)
			picked += n
		}
		sum := 0
		for _, n := range p.Front.Map {
			sum += n
		}
		require.Equal(t, sum, picked)
	}
}

// TestTheChartIsDrawnAsSaid: the drawn rows bring out the needles that the
// cards name.
func TestTheChartIsDrawnAsSaid(t *testing.T) {
	for _, s := range samples {
		v, p, _ := s.solve(t)
		if p.Chart == nil {
			continue
		}
		contrast := 0
		for i := range p.Chart.Chart {
			for _, card := range p.Chart.Cards[i] {
				contrast += card.Contrast
			}
		}
		drawn := 0
		for _, b := range chartBeds(p) {
			for _, block := range b.Strip {
				drawn += strings.Count(block.SVG, "h3.8 v3.8")
			}
		}
		require.Equal(t, contrast, drawn)
		require.Equal(t, 8, strings.Count(chartGrid(p), `class="square"`), "x..x.. and .xx... twice")
		require.Len(t, layChart(v, p).Cards, 2)
		require.Contains(t, layChart(v, p).Cards[0].Lines[0], "out from the centre")
	}
}

package page

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/yuin/goldmark"

	"foldrow/engine"
)

// odd are plans at the edges: nothing known, no rib, one stage too few, a
// dial that runs out, a deep band, clicks in sevenths, a lean that lies flat.
var odd = []sample{
	{"nothing", "cm", nil},
	{"stitches only", "cm", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "neck": "40", "rib": "1x1"}},
	{"plain", "cm", map[engine.Key]string{"garment": "pullover", "stitch_gauge": "24", "row_gauge": "34", "neck": "44", "rib": "plain", "depth": "2"}},
	{"two stages", "in", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "20", "row_gauge": "28", "neck": "40", "rib": "2x2", "depth": "3", "yoke_stitches": "190"}},
	{"yoke too small", "cm", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "40", "rib": "2x2", "depth": "3", "yoke_stitches": "70"}},
	{"every second needle", "cm", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "40", "rib": "1x1", "depth": "3", "yoke_stitches": "105"}},
	{"dial ends", "cm", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "40", "rib": "1x1", "depth": "3", "main_tension": "2", "fold_row": "3"}},
	{"deepest", "cm", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "40", "rib": "1x1", "depth_rows": "80", "click_effect": "1/2", "main_tension": "9"}},
	{"sevenths", "cm", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "40", "rib": "3x2", "depth_rows": "3", "clicks_per_number": "7", "rows_per_click": "1", "main_tension": "6"}},
	{"flat", "cm", map[engine.Key]string{"garment": "pullover", "stitch_gauge": "28", "row_gauge": "40", "neck": "80", "rib": "1x1", "depth_rows": "3", "rows_per_click": "1", "number_effect": "7", "clicks_per_number": "1"}},
	{"single fronts", "in", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "42", "rib": "2x2", "depth": "3", "front_edge": "62", "front_layers": "1", "buttonholes": "1", "hole_stitches": "1"}},
	{"many holes", "cm", map[engine.Key]string{"garment": "cardigan", "stitch_gauge": "28", "row_gauge": "40", "neck": "42", "rib": "1x1", "depth": "3", "front_edge": "30", "buttonholes": "22", "hole_stitches": "1"}},
	{"not graded", "cm", map[engine.Key]string{"garment": "pullover", "stitch_gauge": "28", "row_gauge": "40", "neck": "42", "rib": "1x1", "depth": "3", "rows_per_click": "0"}},
}

func all() []sample { return append(append([]sample{}, samples...), odd...) }

// sections cuts an HTML page at its headings of the second level.
func sections(page string) map[string]string { return sectionsAt(page, "h2") }

func sectionsAt(page, level string) map[string]string {
	m := map[string]string{}
	for _, part := range strings.Split(page, "<"+level+">")[1:] {
		title, rest, _ := strings.Cut(part, "</"+level+">")
		m[title], _, _ = strings.Cut(rest, "</section>")
	}
	return m
}

var (
	tick     = regexp.MustCompile(`<label>(?:<input type="checkbox"> )+([^<]*)</label>`)
	dialRow  = regexp.MustCompile(`(?s)<tr><th class="dial">([^<]*)</th>(.*?)</tr>`)
	svgText  = regexp.MustCompile(`<text [^>]*font-size="([^"]*)"[^>]*>([^<]*)</text>`)
	svgWhole = regexp.MustCompile(`(?s)<svg .*?</svg>`)
)

// named is how many needles a list of groups names.
func named(groups [][]string) int {
	n := 0
	for _, g := range groups {
		n += len(g)
	}
	return n
}

// lettersOnly is what stands in the margin's style by number.
var lettersOnly = regexp.MustCompile(`[^a-zA-Z0-9 ]`)

func ticked(html string) []string {
	out := []string{}
	for _, m := range tick.FindAllStringSubmatch(html, -1) {
		out = append(out, m[1])
	}
	return out
}

func names(cols []int, n int) []string {
	out := []string{}
	for _, c := range cols {
		out = append(out, engine.NeedleName(c, n))
	}
	return out
}

func TestEveryRowAndNeedleHasItsBox(t *testing.T) {
	for _, s := range all() {
		t.Run(s.name, func(t *testing.T) {
			v, p, said := s.solve(t)
			page, err := HTML(v, p, said, Notes{Name: "Blue"})
			require.NoError(t, err)
			sec := sections(page)

			var rows, dials []string
			for _, m := range dialRow.FindAllStringSubmatch(sec["Rows and tension"], -1) {
				for _, r := range ticked(m[2]) {
					rows, dials = append(rows, r), append(dials, m[1])
				}
			}
			sh := lay(v, p, said, Notes{Name: "Blue"})
			require.Len(t, rows, p.TotalRows)
			require.Equal(t, p.TotalRows*len(sh.Boxes()), strings.Count(sec["Rows and tension"], `type="checkbox"`), "a box for every piece")
			for i, r := range p.Tension() {
				require.Equal(t, fmt.Sprint(r.Row), rows[i])
				require.Equal(t, setting(p, r), strings.ReplaceAll(dials[i], "\u00a0", " "), "row %d", r.Row)
			}
			lists := 0
			for i, q := range p.OnBed() {
				lists += checkLists(t, sh.Parts, i, q, sec)
			}

			md := Markdown(v, p, said, Notes{Name: "Blue"})
			holes := 0
			if p.Front.HasHoles() { // on each layer
				holes = len(p.Front.Holes.First) * min(2, p.Front.Layers)
			}
			if p.Front != nil && p.Front.Stitches > 0 { // rows and needles of both fronts
				holes += 2 * p.Front.TotalRows * max(1, p.Front.Pieces)
				latch, hem := 0, 0
				for _, part := range frontParts(p) {
					holes += 2 * (len(part.Latch) + len(part.Hem))
					latch, hem = latch+named(part.Latch), hem+named(part.Hem)
				}
				require.Equal(t, len(p.FrontRibColumns()), latch)
				require.Equal(t, len(p.FrontHem()), hem)
				require.Equal(t, holes+len(layFronts(v, p).Pins), strings.Count(sec["The front bands"], `type="checkbox"`))
			}
			stages, cards := 0, 0
			if p.Yoke != nil {
				stages = len(p.Yoke.Stages)
			}
			if p.Chart != nil {
				cards = len(p.Chart.Cards)
			}
			require.Equal(t, stages, strings.Count(sec["The yoke"], `type="checkbox"`))
			require.Equal(t, cards, strings.Count(sec["The chart"], `type="checkbox"`))
			want := stages + cards + holes + lists + p.TotalRows*len(sh.Boxes())
			for _, st := range sh.Order {
				want += len(st.Boxes)
			}
			require.Equal(t, want, strings.Count(md, "[ ]"), "boxes in the Markdown")
		})
	}
}

func TestThePageNeedsNothingElse(t *testing.T) {
	bad := regexp.MustCompile(`(?i)<script|https?:|//|\ssrc\s*=|href\s*=|url\(|@import|\son[a-z]+\s*=|<iframe|<link|javascript|<img|raw HTML omitted`)
	for _, s := range all() {
		t.Run(s.name, func(t *testing.T) {
			v, p, said := s.solve(t)
			page, err := HTML(v, p, said, Notes{Name: "Blue"})
			require.NoError(t, err)
			require.Empty(t, bad.FindAllString(page, -1))
			bare := strings.Replace(page, styleText+footStyle(lay(v, p, said, Notes{Name: "Blue"})), "", 1)
			require.False(t, strings.Contains(bare, "{"), "a name between braces was not filled in")
		})
	}
}

func TestPicturesAreWellFormed(t *testing.T) {
	for _, s := range all() {
		t.Run(s.name, func(t *testing.T) {
			v, p, said := s.solve(t)
			page, err := HTML(v, p, said, Notes{Name: "Blue"})
			require.NoError(t, err)
			pictures := svgWhole.FindAllString(page, -1)
			require.Equal(t, strings.Count(page, "<svg"), len(pictures))
			for _, pic := range pictures {
				require.NoError(t, wellFormed(pic), pic)
				require.NotContains(t, pic, "NaN")
				require.Contains(t, pic, `aria-label="`)
				for _, m := range svgText.FindAllStringSubmatch(pic, -1) {
					require.Contains(t, []string{mm(large), mm(small)}, m[1], "a letter height of its own: %s", m[2])
				}
			}
		})
	}
}

func wellFormed(text string) error {
	d := xml.NewDecoder(strings.NewReader(text))
	d.Strict = true
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return nil
		} else if err != nil {
			return err
		}
	}
}

func TestNamesAreOnlyNames(t *testing.T) {
	_, p, said := samples[0].solve(t)
	v, _, _ := samples[0].solve(t)
	tests := []struct{ name, shown string }{
		{"Blue yoke", "Blue yoke"},
		{"", "The neckband"},
		{" \t\n", "The neckband"},
		{"Söta bär 2", "Söta bär 2"},
		{"<script>alert(1)</script>", "&lt;script&gt;alert(1)&lt;/script&gt;"},
		{`"><img src=x onerror=alert(1)>`, "&#34;&gt;&lt;img src=x onerror=alert(1)&gt;"},
		{"</title></style><b>", "&lt;/title&gt;&lt;/style&gt;&lt;b&gt;"},
		{"a\nb\r\n# c\u2028d", "a b # c d"},
		{"turn\u202eround\u0000\u200b", "turn round"},
		{"{{.Under}}", "{{.Under}}"},
		{"*bold* _x_ `y` [z](x) ![i](j)", "*bold* _x_ `y` [z](x) ![i](j)"},
		{"&amp; &copy;", "&amp;amp; &amp;copy;"},
		{"1. [ ] x\\", "1. [ ] x\\"},
		{"see www.example.org", "see www.example.org"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			page, err := HTML(v, p, said, Notes{Name: tt.name})
			require.NoError(t, err)
			require.Contains(t, page, "<h1>"+tt.shown+"</h1>")
			require.Contains(t, page, "<title>"+tt.shown+" · 105 stitches</title>")
			_, body, _ := strings.Cut(page, "</style>")
			require.Equal(t, 1, strings.Count(body, tt.shown), "only in the heading")
			if plain := lettersOnly.ReplaceAllString(tt.shown, ""); plain != tt.shown {
				require.Equal(t, 2, strings.Count(page, tt.shown), "in the margin only by number")
			}

			// As Markdown the name must come out as the same letters.
			var b bytes.Buffer
			require.NoError(t, goldmark.New().Convert([]byte(Markdown(v, p, said, Notes{Name: tt.name})), &b))
			first, _, _ := strings.Cut(b.String(), "\n")
			require.Equal(t, "<h1>"+strings.ReplaceAll(tt.shown, "&#34;", "&quot;")+"</h1>", first)
		})
	}
}

func TestAnUnfinishedPlanShowsWhatIsKnown(t *testing.T) {
	for name, want := range map[string][]string{"nothing": {}, "stitches only": {"The needles", "Drop and latch 51 columns"}} {
		for _, s := range odd {
			if s.name != name {
				continue
			}
			v, p, said := s.solve(t)
			page, err := HTML(v, p, said, Notes{Name: ""})
			require.NoError(t, err)
			sec := sections(page)
			for _, w := range want {
				require.Contains(t, sec, w)
			}
			for _, absent := range []string{"Rows and tension", "Order of work", "How it will sit"} {
				require.NotContains(t, sec, absent)
			}
		}
	}
}

func TestAssumptionsNameTheirSources(t *testing.T) {
	for _, s := range all() {
		v, p, said := s.solve(t)
		for _, a := range assumed(v, p, said) {
			if a.Label == "" { // the value says what it is of: "hang every 2nd bump"
				require.Regexp(t, "^[a-z]+ ?[a-z ]*", a.Value, s.name)
				require.NotRegexp(t, `^[\d.,]`, a.Value, s.name)
			}
			require.NotEmpty(t, a.Value, "%s: %s", s.name, a.Label)
			require.NotEmpty(t, a.Source, "%s: %s", s.name, a.Label)
		}
		list := assumed(v, p, p.In)
		require.Empty(t, list, "%s: what was said is not assumed", s.name)
	}
}

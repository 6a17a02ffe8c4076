package page

import (
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the pages of testdata/page anew")

const golden = "../../testdata/page"

func TestPagesAreAsTheyWere(t *testing.T) {
	for _, s := range samples {
		v, p, said := s.solve(t)
		page, err := HTML(v, p, said, Notes{Name: "Blue yoke"})
		require.NoError(t, err)
		for file, got := range map[string]string{s.name + ".html": page, s.name + ".md": Markdown(v, p, said, Notes{Name: "Blue yoke"})} {
			path := filepath.Join(golden, file)
			if *update {
				require.NoError(t, os.MkdirAll(golden, 0o755))
				require.NoError(t, os.WriteFile(path, []byte(got), 0o644))
				continue
			}
			want, err := os.ReadFile(path)
			require.NoError(t, err)
			if line, a, b := firstDifference(string(want), got); line > 0 {
				t.Errorf("%s line %d:\nwas %s\nis  %s\nlook at it, then: go test ./dialog/page -update", file, line, a, b)
			}
		}
	}
}

// firstDifference is the first line, from 1, in which two texts differ, 0
// where they do not.
func firstDifference(a, b string) (int, string, string) {
	as, bs := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range max(len(as), len(bs)) {
		x, y := "(end)", "(end)"
		if i < len(as) {
			x = as[i]
		}
		if i < len(bs) {
			y = bs[i]
		}
		if x != y {
			return i + 1, x, y
		}
	}
	return 0, "", ""
}

func TestDialNumbers(t *testing.T) {
	tests := []struct {
		dial   float64
		clicks int
		want   string
	}{
		{5, 2, "5"}, {4.5, 2, "4.5"}, {14.0 / 3, 3, "4 2/3"}, {1.0 / 3, 3, "1/3"}, {4.25, 4, "4.25"},
		{40.0 / 7, 7, "5 5/7"}, {10, 3, "10"}, {0, 2, "0"}, {5.3 - 1.0/3, 3, "4.97"}, {9.99999999999, 3, "10"},
	}
	for _, tt := range tests {
		require.Equal(t, tt.want, dialNumber(tt.dial, tt.clicks), "%v in %d", tt.dial, tt.clicks)
	}
}

func TestOrderAndCautions(t *testing.T) {
	v, p, _ := samples[0].solve(t)
	titles := map[string]bool{}
	for _, s := range order(v, p) {
		titles[s.Title] = true
		require.NotContains(t, s.Text, "{")
	}
	for _, id := range []string{"ready", "hang-again", "outer-rows", "inner-rows", "latch-columns", "hem", "close", "sew-off", "waste-out", "set-band", "bands-next"} {
		c, ok := v.Book.Card("steps", id)
		require.True(t, ok, id)
		require.True(t, titles[c.Fields["title"]], id)
	}
	for _, id := range []string{"only-rows", "fold", "sew-off-single", "set-plain", "close-ends"} {
		c, _ := v.Book.Card("steps", id)
		require.False(t, titles[c.Fields["title"]], id)
	}
	seen := map[string]bool{}
	for _, c := range cautions(v, p) {
		require.False(t, seen[c.Title], "%s twice", c.Title)
		require.NotEmpty(t, c.Text)
		seen[c.Title] = true
	}
	for _, id := range []string{"carriage", "weights", "sharp-tools", "scissors", "steam", "acrylic-heat", "buttons-children", "cords-children"} {
		c, _ := v.Book.Card("cautions", id)
		require.True(t, seen[c.Fields["title"]], id)
	}
}

// heavyLine reads the tension line back from its picture: the setting at which
// each row is drawn, as clicks.
func heavyLine(t *testing.T, s scale, pic string) []int {
	m := regexp.MustCompile(`class="heavy" d="([^"]*)"`).FindStringSubmatch(pic)
	require.NotNil(t, m)
	var x, y float64
	var out []int
	for _, c := range regexp.MustCompile(`M\S+ \S+|[HV]\S+`).FindAllString(m[1], -1) {
		var to float64
		switch c[0] {
		case 'M':
			_, err := fmt.Sscanf(c, "M%f %f", &x, &y)
			require.NoError(t, err)
		case 'V':
			_, err := fmt.Sscanf(c, "V%f", &y)
			require.NoError(t, err)
		case 'H':
			_, err := fmt.Sscanf(c, "H%f", &to)
			require.NoError(t, err)
			require.InDelta(t, rowWide, to-x, 0.011)
			x = to
			out = append(out, int(math.Round((y-gradeTop)/s.gap))+s.min)
		}
	}
	return out
}

func TestTheTensionIsDrawnRowByRow(t *testing.T) {
	for _, s := range all() {
		t.Run(s.name, func(t *testing.T) {
			_, p, _ := s.solve(t)
			rows := p.Tension()
			if rows == nil {
				require.Empty(t, grade(p))
				return
			}
			var want, got []int
			pics := grade(p)
			folds, foldDrawn, all := 0, false, 0
			for _, part := range gradeParts(p) {
				all += len(part)
				if s := scaleOf(part); s.min == s.max {
					continue // one setting needs no picture
				}
				for _, r := range part {
					want = append(want, r.Clicks)
					foldDrawn = foldDrawn || p.Doubled && r.Row == p.LayerRows
				}
				require.NotEmpty(t, pics)
				got = append(got, heavyLine(t, scaleOf(part), pics[0])...)
				folds += strings.Count(pics[0], ">fold<")
				pics = pics[1:]
			}
			require.Empty(t, pics)
			require.Len(t, rows, all)
			require.Equal(t, want, got)
			require.Equal(t, foldDrawn, folds == 1)
		})
	}
}

func TestTheBandLeansByItsAngle(t *testing.T) {
	for _, deg := range []float64{0, 15, 45, 90} {
		a := deg * math.Pi / 180
		var x1, y1, x2, y2 float64
		_, err := fmt.Sscanf(bandPath(false, math.Sin(a), math.Cos(a)), "M%f %f L%f %f", &x1, &y1, &x2, &y2)
		require.NoError(t, err)
		require.InDelta(t, deg, math.Atan2(x2-x1, y1-y2)*180/math.Pi, 0.05, "from upright, toward the neck on the right")
		require.InDelta(t, bandLong, math.Hypot(x2-x1, y2-y1), 0.02)
		require.GreaterOrEqual(t, y2, 0.0)
		require.Less(t, x2, sectionWide)
	}
}

func TestStagesAreSpelledOut(t *testing.T) {
	for _, s := range odd {
		v, p, _ := s.solve(t)
		switch s.name {
		case "two stages":
			require.Greater(t, p.Stages, 1)
			require.Contains(t, rehang(p), fmt.Sprintf("190 stitches on %d needles, in %d hangings", p.BandStitches, p.Stages))
			hangs := bedParts(v, p)[0].Hangs
			require.Len(t, hangs, len(p.Hangings))
			require.Contains(t, hangs[0].Words, "190 stitches on ")
			require.Contains(t, hangs[len(hangs)-1].Words, fmt.Sprintf(" on %d needles, ", p.BandStitches))
		case "yoke too small":
			require.Less(t, p.YokeDecreases, 0)
			require.Empty(t, rehang(p))
		}
	}
}

package page

import (
	"context"
	"encoding/xml"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// paper is a size of paper in points.
type paper struct {
	name          string
	width, height float64
}

var papers = []paper{{"A4", 595.3, 841.9}, {"Letter", 612, 792}}

const point = 72 / 25.4 // points in a mm

// printer finds a browser and the tools that read a PDF, or skips the test.
func printer(t *testing.T) string {
	for _, tool := range []string{"pdfinfo", "pdftotext"} {
		if _, err := exec.LookPath(tool); err != nil {
			t.Skip("not printed: " + tool + " is missing (Debian package poppler-utils)")
		}
	}
	for _, name := range []string{"chromium", "chromium-browser"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	t.Skip("not printed: no chromium found (Debian package chromium)")
	return ""
}

// run is what a tool writes; a tool that hangs is ended.
func run(t *testing.T, name string, args ...string) string {
	ctx, cancel := context.WithTimeout(context.Background(), 2*time.Minute)
	defer cancel()
	cmd := exec.CommandContext(ctx, name, args...)
	cmd.WaitDelay = time.Second
	var errs strings.Builder
	cmd.Stderr = &errs
	out, err := cmd.Output()
	require.NoError(t, err, "%s: %s", name, errs.String())
	return string(out)
}

// printed prints a page on the paper and gives the PDF's path. The page itself
// leaves the paper to the printer, so the size is put in here.
func printed(t *testing.T, browser, page string, on paper) string {
	dir := t.TempDir()
	html, pdf := filepath.Join(dir, "page.html"), filepath.Join(dir, "page.pdf")
	sized := strings.Replace(page, "</head>", "<style>@page { size: "+on.name+" }</style></head>", 1)
	require.NoError(t, os.WriteFile(html, []byte(sized), 0o600))
	run(t, browser, "--headless", "--no-sandbox", "--disable-gpu", "--user-data-dir="+filepath.Join(dir, "profile"),
		"--no-pdf-header-footer", "--print-to-pdf="+pdf, "file://"+html)
	return pdf
}

// word is a printed word and its box in points from the top left.
type word struct {
	XMin float64 `xml:"xMin,attr"`
	YMin float64 `xml:"yMin,attr"`
	XMax float64 `xml:"xMax,attr"`
	YMax float64 `xml:"yMax,attr"`
	Text string  `xml:",chardata"`
}

type printedPage struct {
	Words []word `xml:"word"`
}

func boxes(t *testing.T, pdf string) []printedPage {
	var doc struct {
		Pages []printedPage `xml:"body>doc>page"`
	}
	out := run(t, "pdftotext", "-bbox", pdf, "-")
	require.NoError(t, xml.Unmarshal([]byte(out), &doc))
	return doc.Pages
}

func TestPrintsOnBothPapers(t *testing.T) {
	if testing.Short() {
		t.Skip("not printed: -short")
	}
	browser := printer(t)
	for _, s := range append(samples, deepest()) {
		v, p, said := s.solve(t)
		page, err := HTML(v, p, said, Notes{Name: "Blue yoke"})
		require.NoError(t, err)
		for _, on := range papers {
			t.Run(s.name+" "+on.name, func(t *testing.T) {
				pdf := printed(t, browser, page, on)
				checkPaper(t, run(t, "pdfinfo", "-l", "99", pdf), on)
				pages := boxes(t, pdf)
				checkMargins(t, pages, on, lay(v, p, said, Notes{Name: "Blue yoke"}).foot())
				checkFilled(t, pages, on)
				checkNumbers(t, pages, lay(v, p, said, Notes{Name: "Blue yoke"}))
				text := strings.Join(strings.Fields(run(t, "pdftotext", "-raw", pdf, "-")), " ")
				for _, h := range heads(v, p) {
					require.Contains(t, text, h.Figure+" "+h.Label)
				}
				for _, a := range assumed(v, p, said) {
					require.Contains(t, text, a.Value)
				}
				for _, z := range sizes(v, p) {
					require.Contains(t, text, z.Value)
				}
			})
		}
	}
}

// checkPaper wants every page of the paper's size.
func checkPaper(t *testing.T, info string, on paper) {
	sizes := regexp.MustCompile(`Page +\d+ size: +([\d.]+) x ([\d.]+) pts`).FindAllStringSubmatch(info, -1)
	require.NotEmpty(t, sizes)
	for _, m := range sizes {
		var w, h float64
		_, err := fmt.Sscan(m[1], &w)
		require.NoError(t, err)
		_, err = fmt.Sscan(m[2], &h)
		require.NoError(t, err)
		require.InDelta(t, on.width, w, 1)
		require.InDelta(t, on.height, h, 1)
	}
}

// checkMargins wants every word within the margins, but for the page's own
// number below: what overflows or is cut by the page's end is not.
func checkMargins(t *testing.T, pages []printedPage, on paper, foot string) {
	const side, under, slack = 12 * point, 15 * point, 1.0
	for i, pg := range pages {
		var below []string
		for _, w := range pg.Words {
			require.GreaterOrEqual(t, w.XMin, side-slack, "page %d, %s", i+1, w.Text)
			require.LessOrEqual(t, w.XMax, on.width-side+slack, "page %d, %s", i+1, w.Text)
			require.GreaterOrEqual(t, w.YMin, side-slack, "page %d, %s", i+1, w.Text)
			if w.YMin > on.height-under-slack {
				below = append(below, w.Text)
				continue
			}
			require.LessOrEqual(t, w.YMax, on.height-under+slack, "page %d, %s", i+1, w.Text)
		}
		require.Equal(t, fmt.Sprintf("%s page %d of %d", foot, i+1, len(pages)), strings.Join(below, " "), "what tells loose sheets apart")
	}
}

// checkFilled wants no sheet but the last to be less than half full.
func checkFilled(t *testing.T, pages []printedPage, on paper) {
	for i, pg := range pages[:len(pages)-1] {
		low := 0.0
		for _, w := range pg.Words {
			if w.YMax < on.height-15*point {
				low = max(low, w.YMax)
			}
		}
		require.Greater(t, low, on.height/2, "sheet %d of %d", i+1, len(pages))
	}
}

// needlesHigh is the height of a word's box set in 12 points, the least for a
// number in a picture or a row; listHigh in 18, the least for a needle in a
// list, which is read from a metre. The faces used are 1.1 and more of their
// size high.
const (
	needlesHigh = 12 * 1.1
	listHigh    = 18 * 1.1
)

// checkNumbers wants every needle of every list, every row and every needle of
// the strip on paper, as often as it should be and large enough.
func checkNumbers(t *testing.T, pages []printedPage, s sheet) {
	needles, numbers := map[string]int{}, map[string]int{}
	isNeedle, isNumber := regexp.MustCompile(`^[LR]\d+$`), regexp.MustCompile(`^\d+$`)
	for _, pg := range pages {
		for _, w := range pg.Words {
			switch high := w.YMax - w.YMin; {
			case high < needlesHigh:
			case isNeedle.MatchString(w.Text) && high >= listHigh:
				needles[w.Text]++
			case isNumber.MatchString(w.Text):
				numbers[w.Text]++
			}
		}
	}
	for _, b := range s.Parts {
		lists := []needleList{b.Latch, b.Empty, b.Hem}
		for _, h := range b.Hangs {
			lists = append(lists, h.Boxes)
		}
		for _, l := range lists {
			for _, name := range names(l.Cols, l.n) {
				needles[name]--
			}
		}
		for c := range b.n {
			numbers[engine.NeedleName(c, b.n)[1:]]--
		}
	}
	for name, n := range needles {
		require.GreaterOrEqual(t, n, 0, "%s is missing from a list or small", name)
	}
	for _, g := range s.Groups {
		for _, r := range g.Rows {
			numbers[fmt.Sprint(r)]--
		}
	}
	for number, n := range numbers {
		require.GreaterOrEqual(t, n, 0, "needle or row %s is missing or small", number)
	}
}

// deepest is the band with the most rows there can be.
func deepest() sample {
	for _, s := range odd {
		if s.name == "deepest" {
			return s
		}
	}
	return sample{}
}

package dialog_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/glamour"
	"github.com/stretchr/testify/require"

	"foldrow/dialog/listen"
	"foldrow/rules"
)

// slowest is how long hearing a line of 200 characters may take: well under
// what a knitter could notice.
const slowest = 2 * time.Millisecond

// mostOfRendering is how much hearing and answering may take of what rendering
// the answer takes.
const mostOfRendering = 0.2

// BenchmarkHear is the listener alone, on lines of 200 characters: words that
// name many things, words that name nothing, several sentences, and slips that want correcting.
func BenchmarkHear(b *testing.B) {
	book, err := rules.Load()
	require.NoError(b, err)
	lex, err := listen.NewLexicon(book)
	require.NoError(b, err)
	for name, text := range map[string]string{
		"craft": "what if the neck is 43 cm and the rib is 2x2 and the band is 3 1/2 cm deep with 2 edge stitches ",
		"other": "my aunt went to the market on a rainy day and came home late with eleven apples and an umbrella ",
		"told":  "my aunt went to the market on a rainy day. she came home with eleven apples and an umbrella? I knitted the neck last week and it gapes quite a lot. Now please take 2 cm off the neck of this thing. ",
		"slips": "waht if teh nekc is 43 cm annd the ribb is 2x2 adn the bnad is 3.5 cm depe wiht 2 edeg sttiches ",
	} {
		line := strings.Repeat(text, 3)[:200]
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			best := time.Hour // other work on the machine slows only some lines
			for b.Loop() {
				start := time.Now()
				lex.Read(line, listen.Context{Unit: "cm"})
				best = min(best, time.Since(start))
			}
			if best > slowest {
				b.Errorf("%v for a line, %v allowed", best, slowest)
			}
		})
	}
}

// BenchmarkWhatIf is a what-if from the line to its Markdown, beside the
// rendering library's time for that Markdown. What we do ourselves is to be a
// small part, a fifth at most: the ratio is ours over the library's.
func BenchmarkWhatIf(b *testing.B) {
	tk := talk(b)
	s := arrive(b, tk, "plan")
	page, err := glamour.NewTermRenderer(glamour.WithStandardStyle("dark"), glamour.WithWordWrap(72))
	require.NoError(b, err)
	var ours, library []time.Duration
	for b.Loop() {
		start := time.Now()
		_, r := tk.Turn(s, "what if I use 2x2 and it is 4 cm deep")
		heard := time.Now()
		_, err := page.Render(r.Markdown)
		ours, library = append(ours, heard.Sub(start)), append(library, time.Since(heard))
		if err != nil || r.Kind != "whatif" {
			b.Fatal(r.Kind, err)
		}
	}
	ratio := float64(median(ours)) / float64(median(library))
	b.ReportMetric(float64(median(ours).Microseconds()), "µs-ours")
	b.ReportMetric(float64(median(library).Microseconds()), "µs-library")
	b.ReportMetric(ratio, "ratio")
	if ratio > mostOfRendering {
		b.Errorf("hearing and answering take %.2f of what rendering takes", ratio)
	}
}

func median(d []time.Duration) time.Duration {
	slices.Sort(d)
	return d[len(d)/2]
}

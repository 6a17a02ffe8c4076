package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// asking is one line said where the lines before it were, what comes of it,
// and words that its reply must hold; kind "-" where only the words count.
type asking struct {
	before []string
	said   string
	kind   string
	says   []string
}

// What a word that was chosen is good for can be asked, whether the plan has
// it or not; two of them can be set beside each other.
func TestChoicesAreAskedAbout(t *testing.T) {
	for _, tt := range []asking{
		{nil, "compare wool and acrylic", "compare", []string{"| way of setting | wetting it | damp without heat |", "| resting time | 24 hours | 24 hours |", "**Caution:** Direct heat flattens acrylic"}},
		{nil, "compare wool, cotton and acrylic", "compare", []string{"| | wool yarn | cotton yarn | acrylic yarn |"}},
		{nil, "is cotton better than wool", "compare", []string{"springs back less than in wool"}},
		{nil, "wool or acrylic", "compare", []string{"common practice"}},
		{nil, "steam or wet", "compare", []string{"**Caution:** Steam burns"}},
		{nil, "compare standard and chunky", "compare", []string{"| needles on the bed | 200 | 110 |"}},
		{nil, "compare with and without a fold row", "compare", []string{"| | 0 clicks | 6 clicks |", "sharp line"}},
		{nil, "why mock rib", "why", []string{"not in your plan", "nothing is latched", "0.85", "Source: "}},
		{nil, "why cotton", "why", []string{"springs back less", "resting time 24 hours", "common practice"}},
		{[]string{"the yarn is wool"}, "why wool", "why", []string{"because you told me", "water or steam"}},
		{[]string{"the yarn is wool"}, "why wet", "why", []string{"comes with what you told me", "kind to a rib"}},
		{nil, "why latched rib", "why", []string{"is assumed"}},
		{nil, "why not steam", "why", []string{"Nothing forbids it", "**Caution:**"}},
		{nil, "why 1x1", "why", []string{"because you told me", "good for"}},
		{[]string{"fold row 2"}, "why a fold row", "why", []string{"because you told me", "sharp line"}},
		{[]string{"mock rib"}, "no mock rib", "change", []string{"latched rib"}},
		{[]string{"rolled neck"}, "why the rib", "why", []string{"kind of band: rolled neck"}},
		{[]string{"rolled neck"}, "what if mock rib", "whatif", []string{"mock rib", "| rows in all | 15 | 30 |"}},
		{[]string{"rolled neck", "latched rib"}, "plan", "show", []string{"51 columns to drop and latch"}},
		{nil, "what changes in the steps", "show", []string{"**mock rib** leaves out: drop and latch", "**a single layer**"}},
		{[]string{"mock rib"}, "which steps change", "show", []string{"leave the rib's needles empty"}},
		{[]string{"mock rib"}, "how many needles out of work", "number", []string{"(51 needles)"}},
		{[]string{"mock rib"}, "which numbers are estimates", "show", []string{"| draw-in of the rib | 0.85 | 0.7 to 1 |", "is not published"}},
	} {
		answersAround(t, tt)
	}
}

// Sums by hand: 121 stitches fill 43.0475 cm at 28 in 10 cm (1x1 with two edge
// stitches closes on odd counts from 5), 160 rows and 13 of the neckband make
// 173; a button of 17 mm asks for 1.7 to 1.7 + 1.27 = 2.97 cm of overlap, one of
// 30 mm for 3 at least (half an inch is 1.27 cm); 56 cm from 40 stitches are
// 1.4 cm each.
func TestFrontsAndYarnAreAskedAbout(t *testing.T) {
	edge := []string{"front edge 40 cm"}
	holes := append(edge, "seven buttonholes")
	yarn := []string{"400 m per 100 g", "18 g left"}
	for _, tt := range []asking{
		{edge, "why so many on the front", "why", []string{"**Stitches for the front band: 121 stitches.**"}},
		{edge, "why 7 of 10", "why", []string{"121 / (160 + 13) = 0.6994"}},
		{edge, "why 3 of 4", "why", []string{"**7 of 10**, not 3 of 4"}},
		{append(edge, "front rib 2x2"), "why 2x2 on the front", "why", []string{"Rib of the front bands"}},
		{holes, "show the buttonholes", "show", []string{"```picture", "L58+L57"}},
		{holes, "draw the buttons", "show", []string{"O is a buttonhole"}},
		{holes, "where do the buttonholes go", "number", []string{"stitches 4 to 5"}},
		{holes, "are the holes mirrored", "number", []string{"mirrored about the fold", "6 and 19"}},
		{holes, "why the second buttonhole row", "why", []string{"6 and 19"}},
		{holes, "compare 2 and 3 stitch buttonholes", "compare", []string{"| | 2 stitches | 3 stitches |"}},
		{edge, "how big a button", "backwards", []string{"**30 mm**", "**17 mm**"}},
		{edge, "biggest button for a 2.5 cm band", "backwards", []string{"**25 mm**", "**12 mm**"}},
		{[]string{"20 mm buttons"}, "how wide must the overlap be", "number", []string{"20 mm to 33 mm"}},
		{nil, "what overlap", "number", []string{"3 cm here", "20 mm buttons"}},
		{nil, "front band first or neckband first", "howto", []string{"Sources disagree"}},
		{nil, "why the buttons first", "howto", []string{"Which front first"}},
		{nil, "how deep a band can I make with the yarn I have", "backwards", []string{"350 m per 100 g", "25 g left"}},
		{yarn, "how deep a band can I make with the yarn I have", "backwards", []string{"**22 rows a layer, 4.9 cm deep**"}},
		{yarn, "which band does the yarn allow", "backwards", []string{"| 1x1 | 105 | 22 | 4.9 cm |"}},
		{append(yarn, "front edge 40 cm"), "deepest band", "backwards", []string{"not enough", "Both front bands have their share first"}},
		{nil, "one row of 40 stitches took 56 cm", "change", []string{"1.4 cm a stitch"}},
		{nil, "what if the swatch weighs 7 g", "unclear", []string{"stitches and rows"}},
		{nil, "what if a swatch of 50 stitches and 60 rows weighs 9 g", "whatif", []string{"3 mg"}},
		{nil, "2 oz left", "change", []string{"(56.7 g of yarn left)"}},
		{nil, "why 39 m", "why", []string{"**Yarn for the band: 39 m.**"}},
		{nil, "what does tightness 1.4 mean", "number", []string{"firm"}},
		{nil, "head size of a man", "measure", []string{"57.4 cm"}},
		{nil, "what neck for a 2 year old", "measure", []string{"23.9 cm"}},
		{nil, "which machines are there", "measure", []string{"Fine 3.6 mm"}},
		{nil, "why so big an opening for a baby", "howto", []string{"twice as far round"}},
		{nil, "how do I pick up from the neck edge", "howto", []string{"one to one"}},
		{holes, "compare single and doubled front bands", "compare", []string{"| rows of the buttonholes | 6 | 6 and 19 |"}},
		{edge, "compare 1x1 and 2x2 on the front", "compare", []string{"| stitches for the front band | 121 | 122 |"}},
		{nil, "compare Nm 2/7 and Nm 2/20", "compare", []string{"350 m in 100 g", "1000 m in 100 g"}},
		{nil, "compare neck 42 depth 3", "unclear", []string{"nothing is changed"}},
		{holes, "where is the third buttonhole", "number", []string{"**stitches 42 to 43, needles L20+L19**", "right front"}},
		{holes, "where is the top button", "number", []string{"Buttonhole 7 of 7"}},
		{holes, "where is the 9th buttonhole", "number", []string{"There are 7"}},
		{yarn, "how many rows can I knit with 12 g", "backwards", []string{"From 12 g"}},
		{[]string{"mock rib"}, "why four numbers tighter", "why", []string{"8 clicks"}},
		{nil, "can I use a knitting needle as a rod", "howto", []string{"Rod through the fold"}},
		{nil, "row card 1", "number", []string{"chart"}},
		{[]string{"chart x..x / .xx. over 110"}, "card 2", "number", []string{"**Row 2 of 2:**"}},
	} {
		answersAround(t, tt)
	}
}

func answersAround(t *testing.T, tt asking) {
	t.Helper()
	tk := talk(t)
	s, _ := say(t, tk, arrive(t, tk, "plan"), tt.before...)
	after, r := tk.Turn(s, tt.said)
	require.Equal(t, tt.kind, r.Kind, "%s: %s", tt.said, r.Markdown)
	for _, w := range tt.says {
		require.Contains(t, r.Markdown, w, tt.said)
	}
	if r.Kind != "change" {
		require.Equal(t, s.Said, after.Said, "%s sets nothing", tt.said)
	}
}

package page

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestFiguresAreNotCutByALineEnd(t *testing.T) {
	const nb = "\u00a0"
	for in, want := range map[string]string{
		"<p>13 7/8 to 15 1/4 in</p>":      "<p>13" + nb + "7/8 to 15" + nb + "1/4" + nb + "in</p>",
		"<b>3 cm</b>, 4.5 %, 16 degrees":  "<b>3" + nb + "cm</b>, 4.5 %, 16 degrees", // what no tag ends is left
		"<p>28 in all, 2 gaps, 3 men</p>": "<p>28" + nb + "in all, 2 gaps, 3 men</p>",
		`<path d="M1 2 h5.5 m-2 -1.6"/>`:  `<path d="M1 2 h5.5 m-2 -1.6"/>`,
	} {
		require.Equal(t, "<body>"+want, wholeFigures("<body>"+in))
	}
	const style = "<style>p > b { margin: 0 4 mm }</style>"
	require.Equal(t, style, wholeFigures(style))
	for _, s := range all() {
		v, p, said := s.solve(t)
		page, err := HTML(v, p, said, Notes{Name: "Blue yoke"})
		require.NoError(t, err)
		for _, text := range shownText.FindAllString(page, -1) {
			require.NotRegexp(t, `\d (cm|mm|yd|degrees)\b|\d \d/\d`, text, s.name)
		}
	}
}

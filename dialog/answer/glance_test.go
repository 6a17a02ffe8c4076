package answer

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestGlance(t *testing.T) {
	for text, want := range map[string]int{
		"one":                                 1,
		"**" + strings.Repeat("a", 60) + "**": 1,
		strings.Repeat("a", 59) + " b":        2,
		"a\n\n- b\n- " + strings.Repeat("cc ", 19) + "c":                                4, // 2+19*3+1 = 60
		"- " + strings.Repeat("dd ", 20) + "\n- " + strings.Repeat("e", 30) + " " + "f": 3,
	} {
		require.Equal(t, want, Glance(text), "%q", text)
	}
}

package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestNotParts: lines that share words with the parts keep their meaning.
func TestNotParts(t *testing.T) {
	tk := talk(t)
	for said, kind := range map[string]string{
		"how do I make buttonholes in the front band?": "howto",
		"the front bands will be 2.5 cm wide":          "change",
		"yoke 128":                                     "change",
		"what if my neck is 42 cm":                     "whatif",
		"how do I pick up a dropped stitch":            "howto",
		"make the nek 43":                              "change",
		"how do I catch the float":                     "howto",
		"what if I have 350 m per 100 g":               "whatif",
	} {
		_, r := tk.Turn(arrive(t, tk, "plan"), said)
		require.Equal(t, kind, r.Kind, said)
	}
}

package answer

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Half of 7.54 cm is 3.77 cm, 1.484 in; half of 5.8 cm is 2.9 cm, 1.142 in:
// rounded once, up, to half a centimetre or an eighth of an inch.
func TestSlitIsRoundedOnce(t *testing.T) {
	for _, tt := range []struct {
		cm         float64
		metric, in string
	}{
		{3.77, "4 cm", "1 1/2 in"},
		{2.90, "3 cm", "1 1/4 in"},
		{2.54, "3 cm", "1 in"},
		{7.5, "7.5 cm", "3 in"},
		{0, "0 cm", "0 in"},
	} {
		require.Equal(t, tt.metric, Voice{Unit: "cm"}.Slit(tt.cm))
		require.Equal(t, tt.in, Voice{Unit: "in"}.Slit(tt.cm))
	}
}

package page

import (
	"maps"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// with is the sample with more said.
func (s sample) with(said map[engine.Key]string) sample {
	all := maps.Clone(s.said)
	maps.Copy(all, said)
	return sample{s.name, s.unit, all}
}

// TestEstimatesFollowWhatIsTold: an estimate speaks of the rib of the plan, and
// of no spread once the knitter has told her own figure.
func TestEstimatesFollowWhatIsTold(t *testing.T) {
	for _, tt := range []struct {
		said        map[engine.Key]string
		says, isOut []string
	}{
		{nil, []string{"draw-in of the rib, 0.5 to 0.75 for 1x1", "dial number, 3 to 7 %"}, []string{"as you told it"}},
		{map[engine.Key]string{"rib": "2x1"}, []string{"0.5 to 0.82 for 2x1"}, []string{"1x1"}},
		{map[engine.Key]string{"rib": "2x1", "rib_draw": "0.8"}, []string{"draw-in of the rib, 0.8 as you told it", "1.4 to 2.4 for 2x1"}, []string{"0.5 to"}},
		{map[engine.Key]string{"number_effect": "5"}, []string{"dial number, 5 % as you told it"}, []string{"3 to 7 %"}},
		{map[engine.Key]string{"click_effect": "2"}, []string{"dial number, 2 % a click as you told it"}, []string{"3 to 7 %"}},
	} {
		v, p, said := samples[0].with(tt.said).solve(t)
		_, text, found := strings.Cut(Markdown(v, p, said, Notes{Name: ""}), "## How it will sit")
		require.True(t, found)
		text, _, _ = strings.Cut(text, "\n## ")
		for _, s := range tt.says {
			require.Contains(t, text, s, "%v", tt.said)
		}
		for _, s := range tt.isOut {
			require.NotContains(t, text, s, "%v", tt.said)
		}
	}
}

// TestChildCautions: the cautions for small children stand where the wearer is
// not known or is small, and not where a grown person or a big child is told.
func TestChildCautions(t *testing.T) {
	for wearer, want := range map[string]bool{"": true, "4 years": true, "10 years": false, "woman": false} {
		s := samples[0]
		if wearer != "" {
			s = s.with(map[engine.Key]string{"wearer": wearer})
		}
		v, p, said := s.solve(t)
		page := Markdown(v, p, said, Notes{Name: ""})
		for _, title := range []string{"Buttons for small children", "Cords at a child's neck"} {
			if want {
				require.Contains(t, page, title, wearer)
			} else {
				require.NotContains(t, page, title, wearer)
			}
		}
		require.Contains(t, page, "Steam burns", wearer)
	}
}

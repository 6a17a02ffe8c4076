package engine

import "testing"

// TestRepeatsOf: whole repeats beside the edge make up the count, and no other
// repeat does: counted out one by one.
func TestRepeatsOf(t *testing.T) {
	for n := 3; n < 300; n++ {
		for edge := range 3 {
			fits := map[int]bool{}
			for _, r := range RepeatsOf(n, edge) {
				fits[r] = true
			}
			for r := 2; r < n; r++ {
				at, times := edge, 0
				for at < n {
					at, times = at+r, times+1
				}
				if want := at == n && times >= 2; fits[r] != want {
					t.Fatalf("%d stitches, %d of them edge: repeat %d fits: %t", n, edge, r, fits[r])
				}
			}
		}
	}
}

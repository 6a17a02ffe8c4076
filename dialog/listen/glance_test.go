package listen

import (
	"testing"

	"foldrow/rules"
)

// TestGlance: no phrasing that a line of the tables holds is missed by the sieve
// or by the quick look before the close one, and the quick look spares most of the work.
func TestGlance(t *testing.T) {
	book, err := rules.Load()
	if err != nil {
		t.Fatal(err)
	}
	x, err := NewLexicon(book)
	if err != nil {
		t.Fatal(err)
	}
	held, looked, all := 0, 0, 0
	for _, said := range seeds(t) {
		l := newLine(said)
		x.mark(l)
		sifted := map[int]bool{}
		for n := range x.set.held(l) {
			sifted[n] = true
		}
		for n, s := range x.sets {
			close := *s.pattern
			close.must, close.need = 0, nil
			_, quick := s.match(l)
			_, slow := close.match(l)
			if quick != slow || sifted[n] != slow {
				t.Errorf("%q and a phrasing of %s: %v, sifted %v, looked at closely %v", said, s.key, quick, sifted[n], slow)
			}
			all++
			if slow {
				held++
			}
			if l.mayHold(s.pattern) {
				looked++
			}
		}
	}
	t.Logf("%d phrasings held, %d looked at closely of %d", held, looked, all)
	if held == 0 || looked*5 > all {
		t.Errorf("%d held, %d looked at of %d: the quick look spares nothing", held, looked, all)
	}
}

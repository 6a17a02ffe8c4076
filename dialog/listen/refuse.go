package listen

import (
	"foldrow/dialog/listen/quantity"
)

// noNumber: a question or an order about a figure that is none, such as one
// over 0 or one of 400 digits.
func (r *reading) noNumber() (Meaning, bool) {
	for _, i := range r.l.quantities() {
		switch r.l.tokens[i].q.Problem {
		case quantity.DivisionByZero, quantity.TooLong:
			return r.unclear(), true
		}
	}
	return Meaning{}, false
}

// refused: a number that cannot be taken where it was named or asked for.
func (r *reading) refused() (Meaning, bool) {
	p := r.b.problem
	if p.Code == "" || p.Key == "" || p.Code == "range" && r.aboutRow() || r.cue(Why) || p.Code == "two-values" && (r.cue(Compare) || r.asks()) {
		return Meaning{}, false
	}
	return r.unclear(), true
}

// Package quantity finds the quantities in one line of a knitter's text:
// "28 sts and 40 rows to 10 cm", "fifteen and a half inches", "400m/100g".
//
// It is a small exact grammar, not a guesser. A line is cut into tokens
// (tokens.go, literal.go); a number is read from digits, marks or words
// (number.go, fraction.go, spoken.go, cardinal.go, words.go); a number and its
// unit make an item (item.go, unit.go, inches.go, compound.go); neighbouring
// items are joined to pairs and ribs (pair.go), ranges (range.go) and rates
// (rate.go, link.go, count.go, share.go). What looks like a number but is not
// a quantity is passed over (skip.go), and what can be read in two ways is
// returned with a Problem instead of a choice.
//
// Every stage walks the tokens once with a bounded look ahead, so the time is
// linear in the length of the line. Nothing here depends on the question that
// is open: a bare number stays bare.
package quantity

import "foldrow/engine"

// Unit is what is counted or measured.
type Unit string

// The units that are read. Dial numbers are Number; kilograms are given in
// Gram, pounds in Ounce and kilometres in Metre, exactly.
const (
	None       Unit = ""
	Centimetre Unit = "cm"
	Millimetre Unit = "mm"
	Inch       Unit = "in"
	Foot       Unit = "ft"
	Metre      Unit = "m"
	Yard       Unit = "yd"
	Stitch     Unit = "st"
	Row        Unit = "row"
	Needle     Unit = "needle"
	Click      Unit = "click"
	Number     Unit = "number"
	Gram       Unit = "g"
	Ounce      Unit = "oz"
	Percent    Unit = "%"
)

// The codes of Quantity.Problem.
const (
	DivisionByZero = "division-by-zero" // "1/0"
	TwoNumbers     = "two-numbers"      // "1.5 1/2", "1 inch 5", "28/4"
	Grouping       = "grouping"         // "4,500 cm": 4500 or 4.5; "28,40": 28.4, or 28 and 40
	TooLong        = "too-long"         // more than 12 digits, or an exponent
)

// Quantity is one quantity of a line.
type Quantity struct {
	Start, End int        // byte span in the line; hedge and sign included
	Value      engine.Num // with its sign; the low end of a range
	High       engine.Num // Value, unless Range or Rib
	Unit       Unit

	// Over and OverUnit make a rate: 28 st over 10 cm, 400 m over 100 g. A
	// count over a length and a length over a weight always stand this way
	// round, however they were said. Over is 0 where there is no rate. Where
	// two counts share one length, both carry it.
	Over     engine.Num
	OverUnit Unit

	Range   bool // "42-43", "between 42 and 43"
	From    bool // a Range said as "from 4 to 5": it may tell of a change
	Down    bool // a Range said with its high end first: "240 to 105"
	Or      bool // it follows another with "or": "4 or 5 cm"
	Hedged  bool // "about 40", "40ish", "a couple of"
	Ordinal bool // "5th", "third", "every other"
	Words   bool // said in words: "one" may be a pronoun after all
	After   bool // the unit came before: "row 11"
	Pair    bool // one of two, "28/40", "28 x 40", "28 sts by 40 rows"
	Rib     bool // "2x2": Value knit, High purl

	Sign    int    // -1 for "-3" and "minus 3", +1 for "+3", else 0
	Problem string // a code; Value is then not to be used
}

// IsRate reports whether q is said over something.
func (q Quantity) IsRate() bool { return q.Over.Sign() != 0 }

// Length is q in cm, exactly, where q is a plain length without a problem.
func (q Quantity) Length() (engine.Num, bool) {
	f, ok := cmPer(q.Unit)
	if !ok || q.IsRate() || q.Problem != "" {
		return engine.Num{}, false
	}
	return q.Value.Mul(f), true
}

// Per10cm is how many in 10 cm, where q is a count over a length; a count
// without a unit ("28 over 4 inches") is one.
func (q Quantity) Per10cm() (engine.Num, bool) {
	f, ok := cmPer(q.OverUnit)
	if !ok || !q.IsRate() || q.Problem != "" || !(isCount(q.Unit) || q.Unit == None) {
		return engine.Num{}, false
	}
	return q.Value.Mul(engine.Int(10)).Div(q.Over.Mul(f)), true
}

// MetresPer100g is the yarn length of 100 g, where q is a length over a
// weight.
func (q Quantity) MetresPer100g() (engine.Num, bool) {
	f, ok1 := cmPer(q.Unit)
	g, ok2 := gramsPer(q.OverUnit)
	if !ok1 || !ok2 || !q.IsRate() || q.Problem != "" {
		return engine.Num{}, false
	}
	// cm to m and "in 100 g" cancel: x/100*100.
	return q.Value.Mul(f).Div(q.Over.Mul(g)), true
}

// Grams is q in grams, exactly, where q is a plain weight without a problem.
func (q Quantity) Grams() (engine.Num, bool) {
	f, ok := gramsPer(q.Unit)
	if !ok || q.IsRate() || q.Problem != "" {
		return engine.Num{}, false
	}
	return q.Value.Mul(f), true
}

// MaxQuantities is how many quantities of a line are returned at most.
const MaxQuantities = 64

// maxItems bounds the work on a line that is nothing but numbers. An item
// may be half of a pair or the length of a rate, so it is more than
// MaxQuantities.
const maxItems = 4 * MaxQuantities

// Scan finds the quantities of line, in order and without overlap. It reads
// any string: bytes that are not text are passed over.
func Scan(line string) []Quantity {
	s := &scanner{toks: tokenize(line), none: token{kind: mark, gap: true}}
	s.collect()
	if len(s.items) == 0 {
		return nil
	}
	s.pairs()
	s.ranges()
	s.rates()
	s.refuse()
	n := min(len(s.items), MaxQuantities)
	out := make([]Quantity, n)
	for i, it := range s.items[:n] {
		out[i] = it.Quantity
		out[i].Start = s.toks[it.from].start
		out[i].End = s.toks[it.to-1].end
	}
	return out
}

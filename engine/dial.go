package engine

// offMark is how far a decimal may lie from the third that it stands for: "6.3"
// and "6.33" are both the first dot after 6 (own choice).
var offMark = Frac(5, 100)

// DialMark is the setting that v names on a dial with so many marks from one
// number to the next. Thirds, which no decimal writes, may be rounded, and .1
// and .2 stand for the first and the second dot, as a published list of
// abbreviations has it (trade-6). ok is false where v lies between two marks.
func DialMark(v Num, marks int) (mark Num, ok bool) {
	if marks < 1 || v.Mul(wholeNum(marks)).IsInt() {
		return v, marks > 0
	}
	if marks != 3 || v.Sign() < 0 {
		return v, false
	}
	whole := wholeNum(v.Floor())
	for dot := range int64(2) {
		mark = whole.Add(Frac(dot+1, 3))
		if tenth := whole.Add(Frac(dot+1, 10)); v.Equal(tenth) || !offMark.Less(v.Sub(mark).Abs()) {
			return mark, true
		}
	}
	return v, false
}

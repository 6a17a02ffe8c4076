package engine

import (
	"math/big"
	"math/bits"
	"strings"
)

// Num is an exact rational number. Its zero value is 0. A Num is a value:
// operations return new ones and never change their operands.
//
// Small numbers, which are nearly all of them, are kept in two int64 words
// because a plan does a few hundred operations and big.Rat allocates on each;
// a result that does not fit falls back to big.Rat, so no digit is ever lost.
type Num struct {
	num int64
	den int64 // 0 stands for 1, so that the zero value is usable
	big *big.Rat
}

// Int is the whole number i.
func Int(i int64) Num { return Num{num: i, den: 1} }

// Frac is n/d. A zero d gives 0: callers check divisors where they are read.
func Frac(n, d int64) Num { return Int(n).Div(Int(d)) }

// ParseNum reads "12", "-2.54" or "31/2", the forms that String writes.
func ParseNum(s string) (Num, bool) {
	if len(s) > 64 || strings.ContainsAny(s, "eEpPxX_ ") {
		return Num{}, false
	}
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		return Num{}, false
	}
	return FromRat(r), true
}

// FromRat is the Num equal to r.
func FromRat(r *big.Rat) Num {
	if r.Num().IsInt64() && r.Denom().IsInt64() {
		return Num{num: r.Num().Int64(), den: r.Denom().Int64()}
	}
	return Num{big: new(big.Rat).Set(r)}
}

// Rat is a fresh big.Rat equal to n.
func (n Num) Rat() *big.Rat {
	if n.big != nil {
		return new(big.Rat).Set(n.big)
	}
	return big.NewRat(n.num, n.denom())
}

func (n Num) denom() int64 {
	if n.den == 0 {
		return 1
	}
	return n.den
}

// Add is n + m.
func (n Num) Add(m Num) Num {
	if n.big == nil && m.big == nil {
		a, ok1 := mul64(n.num, m.denom())
		b, ok2 := mul64(m.num, n.denom())
		d, ok3 := mul64(n.denom(), m.denom())
		if s := a + b; ok1 && ok2 && ok3 && (s > a) == (b > 0) {
			return reduced(s, d)
		}
	}
	return FromRat(new(big.Rat).Add(n.Rat(), m.Rat()))
}

// Neg is -n.
func (n Num) Neg() Num { return n.Mul(Int(-1)) }

// Sub is n - m.
func (n Num) Sub(m Num) Num { return n.Add(m.Neg()) }

// Mul is n * m.
func (n Num) Mul(m Num) Num {
	if n.big == nil && m.big == nil {
		a, ok1 := mul64(n.num, m.num)
		d, ok2 := mul64(n.denom(), m.denom())
		if ok1 && ok2 {
			return reduced(a, d)
		}
	}
	return FromRat(new(big.Rat).Mul(n.Rat(), m.Rat()))
}

// Div is n / m, and 0 where m is 0.
func (n Num) Div(m Num) Num {
	if m.Sign() == 0 {
		return Num{}
	}
	if m.big != nil {
		return FromRat(new(big.Rat).Quo(n.Rat(), m.Rat()))
	}
	if m.num == minInt64 {
		return FromRat(new(big.Rat).Quo(n.Rat(), m.Rat()))
	}
	inv := Num{num: m.denom(), den: m.num}
	if m.num < 0 {
		inv = Num{num: -m.denom(), den: -m.num}
	}
	return n.Mul(inv)
}

// Cmp is -1, 0 or +1 as n is less than, equal to or greater than m.
func (n Num) Cmp(m Num) int { return n.Sub(m).Sign() }

// Less reports n < m.
func (n Num) Less(m Num) bool { return n.Cmp(m) < 0 }

// Equal reports n = m.
func (n Num) Equal(m Num) bool { return n.Cmp(m) == 0 }

// Sign is -1, 0 or +1.
func (n Num) Sign() int {
	switch {
	case n.big != nil:
		return n.big.Sign()
	case n.num > 0:
		return 1
	case n.num < 0:
		return -1
	}
	return 0
}

// Abs is n without its sign.
func (n Num) Abs() Num {
	if n.Sign() < 0 {
		return n.Neg()
	}
	return n
}

// IsInt reports whether n is a whole number.
func (n Num) IsInt() bool {
	if n.big != nil {
		return n.big.IsInt()
	}
	return n.num%n.denom() == 0
}

// Floor is the largest whole number not above n, held to what fits an int.
func (n Num) Floor() int {
	if n.big != nil {
		q := new(big.Int).Div(n.big.Num(), n.big.Denom())
		switch {
		case q.IsInt64():
			return int(q.Int64())
		case q.Sign() < 0:
			return minInt64
		}
		return maxInt64
	}
	q := n.num / n.denom()
	if n.num%n.denom() < 0 {
		q--
	}
	return int(q)
}

// Ceil is the smallest whole number not below n.
func (n Num) Ceil() int { return -n.Neg().Floor() }

// Round is the nearest whole number; a half goes up, since a tight neck is
// the worse fault.
func (n Num) Round() int { return n.Add(Num{num: 1, den: 2}).Floor() }

// Float is the nearest float64.
func (n Num) Float() float64 {
	if n.big != nil {
		f, _ := n.big.Float64()
		return f
	}
	return float64(n.num) / float64(n.denom())
}

// String is exact: "12" or "31/2". ParseNum reads it back.
func (n Num) String() string {
	return n.Rat().RatString()
}

// MarshalText writes n as String does.
func (n Num) MarshalText() ([]byte, error) { return []byte(n.String()), nil }

// UnmarshalText reads what MarshalText wrote.
func (n *Num) UnmarshalText(b []byte) error {
	v, ok := ParseNum(string(b))
	if !ok {
		return &NumError{Text: string(b)}
	}
	*n = v
	return nil
}

// NumError tells of a text that is not an exact number.
type NumError struct{ Text string }

func (e *NumError) Error() string { return "not an exact number: " + e.Text }

const (
	maxInt64 = 1<<63 - 1
	minInt64 = -1 << 63
)

// reduced is n/d in lowest terms; d > 0.
func reduced(n, d int64) Num {
	a, b := n, d
	if a < 0 {
		a = -a
	}
	for b != 0 {
		a, b = b, a%b
	}
	if a > 1 {
		n, d = n/a, d/a
	}
	return Num{num: n, den: d}
}

// mul64 is a*b, and whether it fits with room for one addition.
func mul64(a, b int64) (int64, bool) {
	if a == minInt64 || b == minInt64 {
		return 0, false
	}
	neg := (a < 0) != (b < 0)
	if a < 0 {
		a = -a
	}
	if b < 0 {
		b = -b
	}
	hi, lo := bits.Mul64(uint64(a), uint64(b))
	if hi != 0 || lo > maxInt64/2 {
		return 0, false
	}
	if neg {
		return -int64(lo), true
	}
	return int64(lo), true
}

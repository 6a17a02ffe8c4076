package engine

import (
	"math"
	"slices"
)

// LMS is a growth reference at one age: the median M, the coefficient of
// variation S and the power L that makes the girth normal.
type LMS struct{ L, M, S float64 }

// At is the girth, in the unit of M, at so many standard deviations from the
// median: M*(1 + L*S*z)^(1/L), and M*exp(S*z) for L = 0 (the method of the
// WHO child growth standards). NaN where the power has no real value.
func (r LMS) At(z float64) float64 {
	if r.L == 0 {
		return r.M * math.Exp(r.S*z)
	}
	return r.M * math.Pow(1+r.L*r.S*z, 1/r.L)
}

// Percentile is At for a share p of the children, 0 < p < 1.
func (r LMS) Percentile(p float64) float64 { return r.At(Deviations(p)) }

// Share is the share of the children with a smaller girth: Percentile turned
// around.
func (r LMS) Share(girth float64) float64 {
	z := math.Log(girth/r.M) / r.S
	if r.L != 0 {
		z = (math.Pow(girth/r.M, r.L) - 1) / (r.L * r.S)
	}
	return math.Erfc(-z/math.Sqrt2) / 2
}

// Deviations is how many standard deviations from the mean the share p of a
// normal distribution ends; infinite at 0 and 1.
func Deviations(p float64) float64 { return -math.Sqrt2 * math.Erfcinv(2*p) }

// Bin is a girth and how many people have it.
type Bin struct {
	Value float64
	Count int
}

// Histogram is a survey as counts for each girth, in any order.
type Histogram []Bin

// Total is how many people were measured.
func (h Histogram) Total() int {
	n := 0
	for _, b := range h {
		n += max(b.Count, 0)
	}
	return n
}

// Moments are the mean and the standard deviation (n-1) of a survey. The mean
// is NaN with nobody, the deviation with fewer than two.
func (h Histogram) Moments() (mean, sd float64) {
	n := float64(h.Total())
	sum, squares := 0.0, 0.0
	for _, b := range h {
		sum += b.Value * float64(max(b.Count, 0))
	}
	mean = sum / n
	for _, b := range h {
		squares += (b.Value - mean) * (b.Value - mean) * float64(max(b.Count, 0))
	}
	if n < 2 {
		return mean, math.NaN()
	}
	return mean, math.Sqrt(squares / (n - 1))
}

// Percentile is the girth that ends the share p, held to 0 and 1: with the
// people in order it lies at rank (n-1)p, between neighbours in proportion,
// which spreadsheets call the inclusive percentile. NaN with nobody.
func (h Histogram) Percentile(p float64) float64 {
	n := h.Total()
	if n == 0 {
		return math.NaN()
	}
	order := slices.Clone(h)
	slices.SortFunc(order, func(a, b Bin) int {
		switch {
		case a.Value < b.Value:
			return -1
		case a.Value > b.Value:
			return 1
		}
		return 0
	})
	rank := float64(n-1) * min(max(p, 0), 1)
	below := int(rank)
	a, b := order.person(below), order.person(min(below+1, n-1))
	return a + (rank-float64(below))*(b-a)
}

// person is the girth of person i, counted from 0, of a histogram in order.
func (h Histogram) person(i int) float64 {
	for _, b := range h {
		if i < b.Count {
			return b.Value
		}
		i -= max(b.Count, 0)
	}
	return math.NaN()
}

package engine

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
)

// evaluate works out a record's arithmetic: + - * / ( ), unary minus, numbers
// and the functions a record may use.
func evaluate(expr string) (v float64, err error) {
	e := &evaluator{rest: expr}
	v = e.sum()
	if e.rest != "" && e.err == nil {
		e.err = fmt.Errorf("left over: %q", e.rest)
	}
	return v, e.err
}

type evaluator struct {
	rest string
	err  error
}

// next takes one of the marks, 0 where none of them is next.
func (e *evaluator) next(marks string) byte {
	e.rest = strings.TrimLeft(e.rest, " ")
	if e.rest == "" || !strings.Contains(marks, e.rest[:1]) {
		return 0
	}
	c := e.rest[0]
	e.rest = e.rest[1:]
	return c
}

func (e *evaluator) sum() float64 {
	v := e.product()
	for {
		switch e.next("+-") {
		case '+':
			v += e.product()
		case '-':
			v -= e.product()
		default:
			return v
		}
	}
}

func (e *evaluator) product() float64 {
	v := e.value()
	for {
		switch e.next("*/") {
		case '*':
			v *= e.value()
		case '/':
			v /= e.value()
		default:
			return v
		}
	}
}

func (e *evaluator) value() float64 {
	if e.next("-") != 0 {
		return -e.value()
	}
	if e.next("(") != 0 {
		args := e.list()
		return args[0]
	}
	end := strings.IndexFunc(e.rest, func(r rune) bool { return !strings.ContainsRune("0123456789.abcdefghijklmnopqrstuvwxyz", r) })
	if end < 0 {
		end = len(e.rest)
	}
	word := e.rest[:end]
	e.rest = e.rest[end:]
	if n, err := strconv.ParseFloat(word, 64); err == nil {
		return n
	}
	if e.next("(") == 0 {
		e.err = fmt.Errorf("not understood: %q before %q", word, e.rest)
		return math.NaN()
	}
	return e.call(word, e.list())
}

// list is the values up to the closing bracket.
func (e *evaluator) list() []float64 {
	args := []float64{e.sum()}
	for e.next(",") != 0 {
		args = append(args, e.sum())
	}
	if e.next(")") == 0 {
		e.err = fmt.Errorf("no closing bracket before %q", e.rest)
	}
	return args
}

func (e *evaluator) call(name string, args []float64) float64 {
	one := map[string]func(float64) float64{"sqrt": math.Sqrt, "asin": math.Asin, "floor": math.Floor}
	two := map[string]func(a, b float64) float64{"min": math.Min, "max": math.Max}
	switch {
	case one[name] != nil && len(args) == 1:
		return one[name](args[0])
	case two[name] != nil && len(args) == 2:
		return two[name](args[0], args[1])
	}
	e.err = fmt.Errorf("%s of %d numbers", name, len(args))
	return math.NaN()
}

func TestEvaluate(t *testing.T) {
	for expr, want := range map[string]float64{
		"1 + 2 * 3 - 4 / 8": 6.5, "(1 + 2) * 3": 9, "10 - 3 - 2": 5, "16 / 4 / 2": 2,
		"2 * (-3) + min(4, floor(5.7))": -2, "sqrt(max(9, 2 + 2))": 3, "asin(1) * 2 / 3.1416": 1,
	} {
		if got, err := evaluate(expr); err != nil || math.Abs(got-want) > 1e-4 {
			t.Errorf("%s = %v (%v), want %v", expr, got, err, want)
		}
	}
	for _, expr := range []string{"", "1 +", "2 3", "(1", "root(4)", "min(1)", "2 ** 3"} {
		if got, err := evaluate(expr); err == nil {
			t.Errorf("%q = %v, want an error", expr, got)
		}
	}
}

package engine

import "testing"

func TestDialMark(t *testing.T) {
	for _, c := range []struct {
		said  Num
		marks int
		want  string // "" where it is between two marks
	}{
		{Int(6), 2, "6"},
		{Frac(13, 2), 2, "13/2"},
		{Frac(63, 10), 2, ""},
		{Frac(61, 10), 3, "19/3"}, // the first dot
		{Frac(62, 10), 3, "20/3"}, // the second dot
		{Frac(63, 10), 3, "19/3"},
		{Frac(633, 100), 3, "19/3"},
		{Frac(67, 10), 3, "20/3"},
		{Frac(13, 2), 3, ""},
		{Frac(27, 4), 4, "27/4"},
		{Frac(62, 10), 4, ""},
		{Frac(62, 10), 1, ""},
		{Int(6), 0, ""},
		{Frac(1, 10), 3, "1/3"},
	} {
		got, ok := DialMark(c.said, c.marks)
		if ok != (c.want != "") || ok && got.String() != c.want {
			t.Errorf("%s on %d marks: %s %v, want %q", c.said, c.marks, got, ok, c.want)
		}
	}
}

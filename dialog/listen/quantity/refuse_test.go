package quantity

import "testing"

// nothing lists lines that hold no quantity, though they look it.
var nothing = []string{
	"", " ", ".", ",", "-", "/", "x", "%", `"`, "'",
	"inch", "cm", "rows", "stitches", "in", "m", "in.",
	"K1 P1", "k1p1", "k2, p2", "K2P2", "K 2 P 2", "knit 2 purl 2", "knit one, purl one", "purl 1, knit 1",
	"L55", "R12", "L55 R52", "L 55", "from L55 to R52", "sewn off to L10.", "R51?",
	"I'm", "I’m here", "I'm in", "in total", "in each", "put it in", "it's in the neck", "a m",
	"the one", "that one", "this one", "which one", "no one", "one of them", "one another", "the pretty one", "the old one",
	"a stitch", "a row", "the rows", "a needle", "to the inch", "per inch", "row by row",
	"the other half", "half way", "halfway", "first", "at first", "first of all", "wait a second", "just a second",
	"few", "a few rows", "several stitches", "some rows", "none", "many",
	"6pm", "6 pm", "9am", "6 a.m.", "6 p.m.", "six o'clock", "10:30", "at 10:30",
	"12/05/2024", "2024-05-12", "12.05.2024", "5 June", "June 5", "5 May 2024", "May 5, 2024", "March 2024", "12 Sept 2023",
	"4 ply", "4-ply", "4ply", "8 ply wool", "2/30 yarn", "50/50 wool",
	"£5", "√45 cm", "45² cm", "4⁵", "$5", "€5", "5€", "30°C", "30°", "v2", "mp3", "h2o", "A4", "M1", "m2", "1.2.3", "v1.2.3", "0x12", "0x2",
	"3x", "2k2p", "5cx", "55q", "B5", "C4", "cotton", "often", "weight", "height", "oneself", "\xff\xfe", "２",
}

func TestNothing(t *testing.T) {
	for _, line := range nothing {
		if got := say(line); got != "" {
			t.Errorf("%q: found %s", line, got)
		}
	}
}

// TestNoUnit holds numbers whose neighbour is not their unit, and joins that
// must not be made.
func TestNoUnit(t *testing.T) {
	readAll(t, []reading{
		{"I'm 40", "40 [40]"},
		{"put 2 in each", "2 [2]"},
		{"40 in total", "40 [40]"},
		{"97 in white", "97 [97]"},
		{"97 in 2x2", "97 [97]; 2..2 rib [2x2]"},
		{"1 in 3", "1 [1]; 3 [3]"},
		{"2 in the middle", "2 [2]"},
		{"2 in a row", "2 [2]"},
		{"2 in ~10 cm", "2 [2]; 10 cm hedged [~10 cm]"},
		{"16 in, or 17 in?", "16 in [16 in]; 17 in [17 in]"},
		{"the 40's", "40 [40]"},
		{"'40'", "40 [40]"},
		{`make it "40"`, `40 [40]`},
		{`2 "`, `2 [2]`},
		{"5 ' 6", "5 [5]; 6 [6]"},
		{"60s 5", "5 [5]"},
		{"28 r", "28 [28]"},
		{"T5 40cm", "5 [5]; 40 cm [40cm]"},
		{"half the depth", "1/2 words [half]"},
		{"1 mile in km", "1 [1]"},
		{"1 2 m", "1 [1]; 2 m [2 m]"},
		{"latch them one by one", "1 words [one]; 1 words [one]"},
		{"3 cm. 4 rows", "3 cm [3 cm]; 4 row [4 rows]"},
		{"3 x 40", "3 [3]; 40 [40]"},
		{"28 st to 40 row", "28 st [28 st]; 40 row [40 row]"},
		{"40 cm - 2x2", "40 cm [40 cm]; 2..2 rib [2x2]"},
		{"2 needles in, 3 needles out", "2 needle [2 needles]; 3 needle [3 needles]"},
		{"97 stitches 4 in", "97 st [97 stitches]; 4 in [4 in]"},
		{"97 stitches, 4 cm", "97 st [97 stitches]; 4 cm [4 cm]"},
	})
}

// TestRefused holds what can be read in two ways, or not at all.
func TestRefused(t *testing.T) {
	readAll(t, []reading{
		{"1/0", "division-by-zero [1/0]"},
		{"2 1/0", "division-by-zero [2 1/0]"},
		{"0/0 cm", "division-by-zero [0/0 cm]"},
		{"1.5 1/2", "two-numbers [1.5 1/2]"},
		{"1,5 ½", "two-numbers [1,5 ½]"},
		{"1/2 1/2", "two-numbers [1/2 1/2]"},
		{"1/1 1/2", "two-numbers [1/1 1/2]"},
		{"1 1/2 3/4", "two-numbers [1 1/2 3/4]"},
		{"15 3/2", "two-numbers [15 3/2]"},
		{"28/4", "two-numbers [28/4]"},
		{"2x2x2", "two-numbers [2x2x2]"},
		{"45..5 cm", "two-numbers [45..5 cm]"},
		{"45․5 cm", "two-numbers [45․5 cm]"},
		{"45☃5 cm", "two-numbers [45☃5 cm]"},
		{"40+5 cm", "two-numbers [40+5 cm]"},
		{"28 sts per 0 cm", "division-by-zero [28 sts per 0 cm]"},
		{"400 m per 0 g", "division-by-zero [400 m per 0 g]"},
		{"5/1", "two-numbers [5/1]"},
		{"one forty", "two-numbers [one forty]"},
		{"1 inch 5", "two-numbers [1 inch 5]"},
		{"5 cm 5", "two-numbers [5 cm 5]"},
		{"1 m 5", "two-numbers [1 m 5]"},
		{"1 m 120", "two-numbers [1 m 120]"},
		{"5 ft 13", "two-numbers [5 ft 13]"},
		{"4,500 cm", "grouping [4,500 cm]"},
		{"4,500", "grouping [4,500]"},
		{"4,500 in", "grouping [4,500 in]"},
		{"28,40", "grouping [28,40]"},
		{"1234567890123", "too-long [1234567890123]"},
		{"0.1234567890123 cm", "too-long [0.1234567890123 cm]"},
		{"1e308", "too-long [1e308]"},
		{"1e-9 cm", "too-long [1e-9 cm]"},
	})
	for _, line := range []string{"1/0 cm", "4,500 cm", "1 inch 5"} {
		q := Scan(line)[0]
		if _, ok := q.Length(); ok {
			t.Errorf("%q has a length", line)
		}
	}
}

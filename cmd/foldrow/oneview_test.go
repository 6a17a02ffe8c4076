package main

import (
	"strings"
	"testing"
)

// heldPlans are plans with more and more to tell; each is said one line at a time.
var heldPlans = map[string][]string{
	"band":     {"cardigan", "28 stitches and 40 rows", "40 cm", "1x1", "3 cm"},
	"inches":   {"cardigan", "7 sts and 10 rows to the inch", "16 1/2 in", "2x2", "1 1/4 in"},
	"yoke":     {"cardigan", "7 sts and 10 rows to the inch", "16 1/2 in", "2x2", "1 1/4 in", "152 stitches on the yoke", "main tension 6"},
	"pieces":   {"cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "the bed has 100 needles", "132 stitches on the yoke"},
	"pullover": {"pullover", "30 sts and 42 rows", "44 cm", "2x1", "2.5 cm", "main tension 7"},
	"slit":     {"pullover", "30 sts and 42 rows", "44 cm", "2x1", "2.5 cm", "single layer", "head 56 cm"},
	"mock":     {"pullover", "24 stitches and 34 rows", "46 cm", "3x3", "4 cm", "fold row 4 clicks looser", "three clicks to a number", "180 stitches on the yoke", "mock rib"},
}

// A plan and the line to type on are seen at once in the usual window, and what
// it leaves out for that is one question away.
func TestPlanFitsOneView(t *testing.T) {
	const window, toType = 24, 1
	for name, lines := range heldPlans {
		for _, flag := range []string{"-width=80", "-plain"} {
			out := lastReply(t, flag, lines, "plan")
			n := strings.Count(out, "\n")
			if flag != "-plain" {
				n-- // a title is underlined with characters only where there is no colour
			}
			if n > window-toType && flag != "-plain" {
				t.Errorf("%s %s: %d lines\n%s", name, flag, n, out)
			}
			if flat := strings.Join(strings.Fields(out), " "); !strings.Contains(flat, "Assumed, change any by saying so: ") {
				t.Errorf("%s: nothing is said of what is assumed\n%s", name, out)
			}
		}
		needles := strings.Join(strings.Fields(lastReply(t, "-width=80", lines, "show the needles")), " ")
		for _, list := range []string{"hang the bump: ", "hang again: "} {
			told := strings.Contains(strings.Join(lines, " "), "yoke")
			if list == "hang the bump: " {
				told = name != "slit"
			}
			if strings.Contains(needles, list) != told {
				t.Errorf("%s: %q is not where the plan sends to\n%s", name, list, needles)
			}
		}
		if all := lastReply(t, "-width=80", lines, "what do you assume"); !strings.Contains(all, "needle pitch 6.5 mm") {
			t.Errorf("%s: not all that is assumed\n%s", name, all)
		}
	}
}

// lastReply is what the program answers to the last line after the others.
func lastReply(t *testing.T, flag string, lines []string, last string) string {
	t.Helper()
	s := newStage(t)
	before := lines
	if s.run(s.lines(before...), flag) != 0 {
		t.Fatal(s.err.String())
	}
	first := s.out.String()
	if s.run(s.lines(append(append([]string{}, before...), last)...), flag) != 0 {
		t.Fatal(s.err.String())
	}
	first, _, _ = strings.Cut(first, "\nGoodbye")
	rest, _, _ := strings.Cut(strings.TrimPrefix(s.out.String(), first), "\nGoodbye")
	return strings.Trim(rest, "\n") + "\n"
}

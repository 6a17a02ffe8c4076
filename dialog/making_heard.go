package dialog

import (
	"strings"

	"foldrow/dialog/listen"
	"foldrow/dialog/listen/quantity"
)

// heardMaking takes the few lines that mean a move only at the machine and at
// this step, which the words alone do not tell: from which side the columns
// are latched, what can go wrong here, rows taken out again.
func (c *turn) heardMaking() {
	p := c.kept()
	if !c.s.Making.On || c.open(c.s) != "" || p.BandStitches == 0 || p.LayerRows == 0 {
		return
	}
	switch c.m.Kind {
	case listen.Unclear, listen.Outside, listen.Trouble, listen.HowTo:
	default:
		return
	}
	low := " " + strings.Join(words(c.said), " ") + " "
	has := func(list ...string) bool {
		for _, s := range list {
			if strings.Contains(low, s) {
				return true
			}
		}
		return false
	}
	move := listen.Move{}
	w := c.standing(p)
	switch {
	case w.card().Fields["needles"] == "latch" && wayOf(c.said) != "" && len(words(c.said)) <= 6 && has(" from ", " outward", " way ", " right to left ", " left to right "):
		move.What = "way"
	case has(" what can go wrong ", " what spoil", " what could go wrong ", " what might go wrong ", " watch for ", " watch out "):
		move.What = "spoils"
	case has(" ripp", " took out ", " tak out ", " unravel", " pull back ", " undid "):
		n, ok := rowsTold(c.said)
		if !ok || n > c.s.Making.Row {
			return
		}
		move.What, move.Row = "row", c.s.Making.Row-n+1
	default:
		return
	}
	c.m = listen.Meaning{Kind: listen.Step, Move: move}
}

// rowsTold is the count of rows that a line tells; false where it names a row
// ("back to row 5") or none.
func rowsTold(said string) (int, bool) {
	for _, q := range quantity.Scan(strings.ToLower(said)) {
		if q.Unit == quantity.Row && !q.After && !q.Ordinal && q.Problem == "" && q.Value.IsInt() {
			return q.Value.Floor(), true
		}
	}
	return 0, false
}

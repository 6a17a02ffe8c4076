package listen

import "strings"

// inTurn: "30/42 44cm 2x2 3cm yoke 160" answers the questions in their order, so
// the length behind the gauge or the rib is of no other part.
func (b *binder) inTurn(i int) bool {
	if i == 0 {
		return false
	}
	q := b.l.tokens[i-1].q
	return q != nil && (q.Rib || q.Pair)
}

// moves: "go up an inch", "neck down 2 cm", but not "wrote down 38".
func (b *binder) moves(at int) bool {
	for j := at - 1; j >= max(b.l.begin, at-3); j-- {
		switch b.l.tokens[j].stem {
		case "go", "went", "gone", "bump", "take", "tak", "bring", "mov", "move", "push", "nudg", "nudge", "shift", "step", "neck", "depth", "band", "neckband", "increas", "come", "turn":
			return true
		}
	}
	return false
}

// plusJoins: the plus before the quantity at i joins two things said, as in
// "2x2 + 3.5 cm deep".
func (b *binder) plusJoins(i int) bool {
	lead := strings.TrimRight(b.l.text[:b.l.tokens[i].start], " ")
	return i > 0 && b.l.tokens[i-1].q != nil && lead != b.l.text[:b.l.tokens[i].start]
}

// ofUnknown: "my zork is 56 cm": what the length is of was said, and it is
// nothing that the plan has.
func (b *binder) ofUnknown(i int) bool {
	t := b.l.tokens
	if i < 3 || t[i-1].stem != "be" && t[i-1].stem != "measur" || t[i-2].q != nil || t[i-2].needle != "" {
		return false
	}
	return oneOf(t[i-3].text, []string{"my", "the", "her", "his", "our", "their"}) &&
		!b.x.senses["measured"][t[i-2].stem] && !b.x.senses["measured"][t[i-2].text]
}

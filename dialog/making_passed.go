package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
)

// skipped names all that a jump to step i takes as done.
func (w where) skipped(i int) string { return w.passed(i, w.rowsOf(i).from) }

// passed names the rows up to so many, the columns and the bumps of the steps
// before step i, as far as they were not told as done, on one line at the
// machine; "" where none is passed over.
func (w where) passed(i, rows int) string {
	var parts []string
	if rows > w.m.Row {
		parts = append(parts, answer.RowSpan(w.m.Row+1, rows))
	}
	for at := w.at; at < i; at++ {
		there := w
		if there.at = at; at != w.at {
			there.m.Done = 0
		}
		left := len(there.along()) - there.m.Done
		switch needles := there.card().Fields["needles"]; {
		case left > 0 && needles == "latch":
			parts = append(parts, answer.Count(left, "column", "columns"))
		case left > 0 && needles == "hem":
			parts = append(parts, answer.Count(left, "bump", "bumps"))
		}
	}
	if _, last := w.pieceSteps(); i > last && w.m.Piece < len(w.pieces)-1 {
		parts = append(parts, "the other pieces")
	}
	switch {
	case len(parts) == 0:
		return ""
	case len(parts) == 1 && rows > w.m.Row:
		return "(" + title(answer.RowSpan(w.m.Row+1, rows)) + " taken as knitted.)"
	}
	return fmt.Sprintf("(Taken as done: %s.)", strings.Join(parts, ", "))
}

package main

import "slices"

// ctrlK takes away what stands after the cursor.
const ctrlK = 11

// filter is asked about each key before the library, on its goroutine, and gives the
// key that the library is to answer. To drop one here would let it read ahead.
func (e *editor) filter(r rune) (key rune, answer bool) {
	e.erase = r == deleteKey
	switch {
	case r == ctrlZKey:
		e.stop()
		return bellKey, true
	case r == deleteKey:
		return bellKey, true // which only ends completing; change does the rest
	case r == ctrlK && e.rl.Operation.IsInCompleteMode():
		// The library would show again a choice that it has forgotten.
		e.rl.Operation.ExitCompleteMode(false)
	}
	return r, true
}

// change is told of the line after each key and may put another in its place: less
// what Delete takes, and short enough to draw.
func (e *editor) change(line []rune, pos int, _ rune) ([]rune, int, bool) {
	switch {
	case e.erase && pos < len(line):
		return slices.Delete(line, pos, pos+1), pos, true
	case len(line) > maxTyped:
		e.cut += len(line) - maxTyped
		return line[:maxTyped], min(pos, maxTyped), true
	}
	return nil, 0, false
}

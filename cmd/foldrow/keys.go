package main

import (
	"slices"
	"unicode"
	"unicode/utf8"
)

// Keys that take away what stands after the cursor, before it, and the word before it;
// the last as the library numbers Alt and Backspace.
const (
	ctrlK   = 11
	ctrlU   = 21
	ctrlW   = 23
	altBack = -4
)

// filter is asked about each key before the library, on its goroutine, and gives the
// key that the library is to answer. To drop one here would let it read ahead.
func (e *editor) filter(r rune) (key rune, answer bool) {
	e.erase = r == deleteKey
	if !e.rl.Operation.IsInCompleteMode() && int64(e.row()) != e.width.Load() {
		// Terminals set the line anew in a window that changed. Reckoned in the old
		// width, each key would take away a row above it.
		e.resized()
	}
	switch {
	case r == ctrlZKey:
		e.stop()
		return bellKey, true
	case r == deleteKey:
		return bellKey, true // which only ends completing; change does the rest
	case r == ctrlK && e.rl.Operation.IsInCompleteMode():
		// The library would show again a choice that it has forgotten.
		e.rl.Operation.ExitCompleteMode(false)
	case e.rl.Operation.IsInCompleteSelectMode():
		e.first = false // change is not told of all keys there
	case e.first && (r == ctrlW || r == altBack):
		return ctrlU, true // the library would take away the whole line
	}
	return r, true
}

// change is told of the line after each key and may put another in its place: less
// what Delete takes, and short enough to draw.
func (e *editor) change(line []rune, pos int, _ rune) (now []rune, at int, changed bool) {
	switch {
	case e.erase && pos < len(line):
		line, changed = slices.Delete(line, pos, pos+1), true
	case len(line) > maxTyped:
		e.cut += len(line) - maxTyped
		line, pos, changed = line[:maxTyped], min(pos, maxTyped), true
	}
	e.first = inFirstWord(line[:pos])
	return line, pos, changed
}

// inFirstWord reports that no word begins before the cursor but at the line's
// beginning. A word is what the library takes for one.
func inFirstWord(before []rune) bool {
	inWord := func(r rune) bool { return r < utf8.RuneSelf && (unicode.IsLetter(r) || unicode.IsDigit(r)) }
	for i := 1; i < len(before); i++ {
		if inWord(before[i]) && !inWord(before[i-1]) {
			return false
		}
	}
	return true
}

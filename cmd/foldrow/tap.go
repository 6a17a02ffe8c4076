package main

import (
	"io"
	"sync/atomic"
	"time"
)

// ahead is how soon after the prompt nobody can have pressed a key for it: what
// comes by then was typed before.
const ahead = 50 * time.Millisecond

// On a busy machine the first read may begin some time after the prompt, late at
// most; what it then finds waiting, within atOnce, was typed before as well.
const (
	atOnce = 5 * time.Millisecond
	late   = 2 * time.Second
)

// ctrlD is the key that ends the input on an empty line.
const ctrlD = 4

// deleteKey stands in the editor's input for the key Delete, whose own sequence the
// library takes for ctrlD. Nobody can type it: the tap drops it.
const (
	deleteKey      = 29
	deleteSequence = "\x1b[3~"
)

// tap stands between the terminal and the line editor and keeps from it the
// bytes that it answers badly: NUL (Ctrl-Space), which it takes for the end of
// input; Ctrl-R and Ctrl-S, whose search races with a change of the window; Ctrl-T,
// which breaks a line of one character; Delete, which would end the input on an empty
// line; the second half of a pasted CR LF, which would be an empty answer; and every
// control byte that it would show as it is.
type tap struct {
	in io.Reader
	cr bool         // the last byte was a carriage return
	de int          // bytes of deleteSequence that are held back, its rest may follow
	to atomic.Int64 // line ends in the last read that no line has answered yet
	at atomic.Int64 // when the prompt was shown, in nanoseconds

	ahead atomic.Bool // the last read came before anyone can have seen the prompt
	tail  atomic.Bool // it went on after its last line end
}

// prompted notes that a prompt is being shown.
func (t *tap) prompted(now time.Time) { t.at.Store(now.UnixNano()) }

// Read is the terminal's, less those bytes.
func (t *tap) Read(p []byte) (int, error) {
	// What was held back of the read before has to fit as well.
	buf := make([]byte, max(1, len(p)-len(deleteSequence)))
	for {
		began := time.Now()
		n, err := t.in.Read(buf)
		early := t.early(began, time.Now())
		kept, ends := p[:0], 0
		for _, c := range buf[:n] {
			// A Ctrl-D typed while no line was being read waits in the
			// terminal as a NUL at the beginning of a line.
			if c == 0 && lineStart(kept, early) {
				c = ctrlD
			}
			pair := c == '\n' && t.cr
			t.cr = c == '\r'
			if pair || !key(c) {
				continue
			}
			if c == '\r' || c == '\n' {
				ends++
			}
			kept = t.keep(kept, c)
		}
		// A read is only asked for when everything before it is used up.
		t.to.Store(int64(ends))
		t.ahead.Store(early)
		t.tail.Store(ends > 0 && kept[len(kept)-1] >= ' ')
		if len(kept) > 0 || err != nil {
			return len(kept), err
		}
	}
}

// keep adds a byte to those for the editor, and puts deleteKey in the place of its
// sequence.
func (t *tap) keep(kept []byte, c byte) []byte {
	if c != deleteSequence[t.de] {
		kept = append(kept, deleteSequence[:t.de]...)
		t.de = 0
	}
	switch {
	case c != deleteSequence[t.de]:
		return append(kept, c)
	case t.de < len(deleteSequence)-1:
		t.de++
		return kept
	}
	t.de = 0
	return append(kept, deleteKey)
}

// early reports that what a read gave, which began and ended then, was typed
// before the prompt could be seen.
func (t *tap) early(began, ended time.Time) bool {
	prompt := t.at.Load()
	return ended.UnixNano()-prompt < int64(ahead) ||
		ended.Sub(began) < atOnce && began.UnixNano()-prompt < int64(late)
}

// lineStart reports that what comes after kept begins a line; first says so for
// an empty kept.
func lineStart(kept []byte, first bool) bool {
	if len(kept) == 0 {
		return first
	}
	last := kept[len(kept)-1]
	return last == '\r' || last == '\n'
}

// Close is there because the editor wants one; the terminal stays open.
func (t *tap) Close() error { return nil }

// line counts one line as answered and reports whether others came with it and
// are still to come, the beginning of one among them, and whether they came
// ahead of the prompt.
func (t *tap) line() (more, ahead bool) {
	left := t.to.Add(-1)
	return left > 0 || left == 0 && t.tail.Load(), t.ahead.Load()
}

// key reports a byte that the editor handles: text, the beginning of an escape
// sequence, or one of its editing keys.
func key(c byte) bool {
	if c >= ' ' && c != 127 {
		return true
	}
	switch c {
	case 1, 2, 3, 4, 5, 6, 7, 8, 9, '\n', 11, 12, '\r', 14, 16, 21, 23, 25, ctrlZKey, 27, 127:
		return true
	}
	return false
}

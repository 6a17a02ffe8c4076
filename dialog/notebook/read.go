package notebook

import (
	"bytes"
	"errors"
	"io"
	"os"
)

// ErrLarge says that a file is too large to be a notebook.
var ErrLarge = errors.New("the file is too large for a notebook")

// maxSize is the largest file read, in bytes: some hundred thousand turns. What is
// larger came there by mistake and would not fit in memory.
const maxSize = 1 << 30

// tailSize is how much of a file's end is read for its last entry, in bytes: many
// times what one takes.
const tailSize = 1 << 18

// readAll reads f whole with one buffer of its size, not a growing one. Errors are
// *ReadError.
func readAll(f *os.File) ([]byte, error) {
	info, err := f.Stat()
	if err == nil && info.Size() > maxSize {
		err = ErrLarge
	}
	if err != nil {
		return nil, &ReadError{f.Name(), err}
	}
	return readFrom(f, 0, info.Size())
}

// readFrom reads size bytes, or less if the file ends before.
func readFrom(f *os.File, from, size int64) ([]byte, error) {
	data := make([]byte, size)
	n, err := io.ReadFull(io.NewSectionReader(f, from, size), data)
	if err != nil && !errors.Is(err, io.EOF) && !errors.Is(err, io.ErrUnexpectedEOF) {
		return nil, &ReadError{f.Name(), err}
	}
	return data[:n], nil
}

// Last is the latest turn of a project, for telling it apart from others, without
// opening it: the end of the file is enough where that is whole. False if there is
// none or it cannot be read.
func Last(folder, project string) (Entry, bool) {
	name, _, err := resolve(folder, project)
	if err != nil {
		return Entry{}, false
	}
	if e, ok := lastLine((&Book{name: name, folder: folder}).path(ending)); ok {
		return e, true
	}
	b, _, err := Read(folder, name)
	if err != nil {
		return Entry{}, false
	}
	return b.Last()
}

// lastLine is the entry in a file's last line, false if that is not a whole one.
func lastLine(path string) (Entry, bool) {
	f, err := openFile(path, os.O_RDONLY)
	if err != nil {
		return Entry{}, false
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil || info.Size() > maxSize {
		return Entry{}, false
	}
	from := max(0, info.Size()-tailSize)
	tail, err := readFrom(f, from, info.Size()-from)
	if err != nil {
		return Entry{}, false
	}
	line, ended := bytes.CutSuffix(tail, []byte("\n"))
	start := bytes.LastIndexByte(line, '\n') + 1
	if !ended || start == 0 && from > 0 {
		return Entry{}, false
	}
	return decode(line[start:])
}

// reading is what a notebook's bytes hold. The entries before the first bad
// line stand; nothing after it is believed.
type reading struct {
	entries []Entry
	good    int    // bytes from the start that hold the entries
	open    bool   // the last entry is whole but its newline is missing
	bad     []byte // everything from the first bad line on
	torn    bool   // bad is one half-written line at the very end
	newer   bool   // bad begins with a line of a later format
}

// read sorts data into entries and what follows them. Cost: one pass.
func read(data []byte) reading {
	var r reading
	for r.good < len(data) {
		rest := data[r.good:]
		end, ended := lineEnd(rest)
		line := rest[:end]
		if newer(line) {
			r.bad, r.newer = rest, true
			return r
		}
		e, ok := decode(line)
		if !ok || e.Seq != len(r.entries)+1 {
			r.bad, r.torn = rest, !ended && unfinished(line)
			return r
		}
		r.entries = append(r.entries, e)
		r.good += end
		if ended {
			r.good++
		} else {
			r.open = true
		}
	}
	return r
}

func lineEnd(b []byte) (end int, ended bool) {
	for i, c := range b {
		if c == '\n' {
			return i, true
		}
	}
	return len(b), false
}

// unfinished reports a last line that a stopped write can have left: the
// beginning of one of our lines, or the zero bytes that some file systems put
// where the data had not arrived. Anything else is worth a side copy.
func unfinished(line []byte) bool {
	const start = `{"v":1,"seq":`
	n := min(len(line), len(start))
	if string(line[:n]) == start[:n] {
		return true
	}
	for _, c := range line {
		if c != 0 {
			return false
		}
	}
	return true
}

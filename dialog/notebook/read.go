package notebook

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

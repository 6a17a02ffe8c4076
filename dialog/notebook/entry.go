package notebook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"hash/crc32"
	"strconv"
	"time"
)

// version is the format written here. A line of a higher version is left
// alone: see Report.Newer.
const version = 1

// Entry is one accepted turn. Seq counts from 1 without gaps; Said is the line
// as the conversation took it; State is whatever JSON the caller gave, on one
// line.
type Entry struct {
	Seq   int
	At    time.Time
	Said  string
	State json.RawMessage
}

// sumTail is what follows the summed bytes of a line, less the digits.
const (
	sumHead = `,"sum":"`
	sumEnd  = `"}`
	sumSize = 8
)

// encode appends the line for e, newline included, to buf and gives the state
// as it stands in the line. The checksum is the
// CRC-32 (IEEE) of everything in the line before `,"sum":`, in hexadecimal, so
// that it can be checked without decoding and with any common tool.
func encode(buf *bytes.Buffer, e Entry) (state []byte, err error) {
	start := buf.Len()
	buf.WriteString(`{"v":` + strconv.Itoa(version) + `,"seq":` + strconv.Itoa(e.Seq))
	buf.WriteString(`,"at":"` + e.At.Format(time.RFC3339) + `","said":`)
	enc := json.NewEncoder(buf)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(e.Said); err != nil {
		return nil, fmt.Errorf("notebook: said: %w", err)
	}
	buf.Truncate(buf.Len() - 1) // the encoder ends with a newline
	buf.WriteString(`,"state":`)
	from := buf.Len()
	if err := json.Compact(buf, e.State); err != nil {
		return nil, fmt.Errorf("notebook: state: %w", err)
	}
	to := buf.Len()
	fmt.Fprintf(buf, sumHead+"%08x"+sumEnd+"\n", crc32.ChecksumIEEE(buf.Bytes()[start:]))
	return buf.Bytes()[from:to], nil
}

// decode reads one line without its newline. It reports false for any line
// that encode would not have written with these bytes.
func decode(line []byte) (Entry, bool) {
	body := len(line) - len(sumHead) - sumSize - len(sumEnd)
	if body < 0 || !bytes.HasSuffix(line, []byte(sumEnd)) || !bytes.HasPrefix(line[body:], []byte(sumHead)) {
		return Entry{}, false
	}
	digits := line[body+len(sumHead) : len(line)-len(sumEnd)]
	sum, err := strconv.ParseUint(string(digits), 16, 32)
	if err != nil || uint32(sum) != crc32.ChecksumIEEE(line[:body]) {
		return Entry{}, false
	}
	var l struct {
		V     int
		Seq   int
		At    time.Time
		Said  string
		State raw
	}
	if json.Unmarshal(line, &l) != nil || l.V != version {
		return Entry{}, false
	}
	return Entry{Seq: l.Seq, At: l.At, Said: l.Said, State: json.RawMessage(l.State)}, true
}

// raw is json.RawMessage without the copy: the line it was cut from is kept.
type raw []byte

// UnmarshalJSON keeps b itself. That is safe here because decode's caller owns
// the bytes of the line and never changes them.
func (r *raw) UnmarshalJSON(b []byte) error {
	*r = b
	return nil
}

// newer reports a line of a later format: it carries a version number above
// ours, whatever else it holds, even if the line is cut short after it.
func newer(line []byte) bool {
	var l struct{ V json.Number }
	if rest, ok := bytes.CutPrefix(line, []byte(`{"v":`)); ok {
		end := bytes.IndexFunc(rest, func(r rune) bool { return r < '0' || r > '9' })
		if end > 0 {
			l.V = json.Number(rest[:end])
		}
	} else if json.Unmarshal(line, &l) != nil {
		return false
	}
	v, err := l.V.Int64()
	return err == nil && v > version
}

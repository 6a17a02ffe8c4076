package rules

import "strings"

// Card is one piece of knowledge: fields, a text, and named sections of text.
// Paragraphs of a text are separated by blank lines.
type Card struct {
	ID, File string // File without folder and ending, such as "keys"
	Fields   map[string]string
	Text     string
	Sections map[string]string
	Line     int // where the card opens, from 1
}

// List is the field split at " ; ", nil where the field is absent or empty.
func (c Card) List(field string) []string {
	v := c.Fields[field]
	if v == "" {
		return nil
	}
	list := strings.Split(v, " ; ")
	for i := range list {
		list[i] = strings.TrimSpace(list[i])
	}
	return list
}

// Section is the text under "## name", "" where there is none.
func (c Card) Section(name string) string { return c.Sections[name] }

// cardReader reads one file. Where it stands in a card is kept in state.
type cardReader struct {
	file  string
	src   string
	pos   int
	line  int
	cards []Card
	ids   map[string]bool
	bad   *faults

	state      int
	field      string // being read, "" for none
	valueStart int
	valueEnd   int    // of what was read of it so far
	section    string // whose text is being read, "" for the card's own
	textStart  int
}

// States of the reader within a card.
const (
	beforeCards = iota
	inFields
	inText
)

// readCards reads the cards of one file. What cannot be read goes to bad, and
// the rest is still read.
func readCards(file, src string, bad *faults) []Card {
	r := &cardReader{file: file, src: src, bad: bad, ids: map[string]bool{}}
	for r.pos < len(src) {
		start := r.pos
		end := strings.IndexByte(src[start:], '\n')
		if end < 0 {
			end = len(src) - start
		}
		r.pos = min(start+end+1, len(src))
		r.line++
		r.take(strings.TrimSuffix(src[start:start+end], "\r"), start)
	}
	r.close(len(src))
	return r.cards
}

// take reads one line that starts at offset start.
func (r *cardReader) take(line string, start int) {
	switch {
	case strings.HasPrefix(line, "# "):
		r.close(start)
		r.open(strings.TrimSpace(line[2:]))
	case r.state == beforeCards:
	case strings.HasPrefix(line, "## "):
		r.close(start)
		r.openSection(strings.TrimSpace(line[3:]))
	case r.state == inFields && strings.TrimSpace(line) == "":
		r.closeField()
		r.state, r.section, r.textStart = inText, "", r.pos
	case r.state == inFields:
		r.takeField(line, start)
	}
}

func (r *cardReader) current() *Card { return &r.cards[len(r.cards)-1] }

func (r *cardReader) open(id string) {
	c := Card{ID: id, File: r.file, Line: r.line, Fields: map[string]string{}}
	switch {
	case !isID(id):
		r.bad.card(c, BadCard, "an id is lower-case words joined by hyphens")
	case r.ids[id]:
		r.bad.card(c, DuplicateID, "")
	}
	r.ids[id] = true
	r.cards = append(r.cards, c)
	r.state, r.field = inFields, ""
}

func (r *cardReader) openSection(name string) {
	c := r.current()
	if _, twice := c.Sections[name]; twice || name == "" {
		r.fault("section " + name + " is there twice or has no name")
	}
	if c.Sections == nil {
		c.Sections = map[string]string{}
	}
	c.Sections[name] = ""
	r.state, r.section, r.textStart = inText, name, r.pos
}

// close stores what is being read, a field or a text that ends at offset end.
func (r *cardReader) close(end int) {
	r.closeField()
	if r.state != inText {
		return
	}
	text := strings.TrimSpace(r.src[r.textStart:end])
	if r.section == "" {
		r.current().Text = text
		return
	}
	r.current().Sections[r.section] = text
}

// takeField reads "name: value", or a line that goes on with the last value.
func (r *cardReader) takeField(line string, start int) {
	if strings.HasPrefix(line, "  ") && r.field != "" {
		r.valueEnd = start + len(line)
		return
	}
	r.closeField()
	name, _, found := strings.Cut(line, ":")
	if !found || !isID(name) {
		r.fault("not a field: " + line)
		return
	}
	if _, twice := r.current().Fields[name]; twice {
		r.fault("field " + name + " is there twice")
	}
	r.field, r.valueStart, r.valueEnd = name, start+len(name)+1, start+len(line)
}

// closeField stores the field being read; the lines of a long value are joined
// by single spaces.
func (r *cardReader) closeField() {
	if r.field == "" {
		return
	}
	value := strings.TrimSpace(r.src[r.valueStart:r.valueEnd])
	if strings.Contains(value, "\n") {
		lines := strings.Split(value, "\n")
		for i := range lines {
			lines[i] = strings.TrimSpace(lines[i])
		}
		value = strings.Join(lines, " ")
	}
	r.current().Fields[r.field], r.field = value, ""
}

// fault tells of something at the present line.
func (r *cardReader) fault(detail string) {
	r.bad.add(Error{File: r.file + ".md", Line: r.line, Card: r.current().ID, Problem: BadCard, Detail: detail})
}

// isID reports lower-case letters and digits joined by hyphens or underscores.
func isID(s string) bool {
	for i := 0; i < len(s); i++ {
		b := s[i]
		joiner := (b == '-' || b == '_') && i > 0 && i < len(s)-1
		if !joiner && !(b >= 'a' && b <= 'z') && !(b >= '0' && b <= '9') {
			return false
		}
	}
	return s != ""
}

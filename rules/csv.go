package rules

import (
	"io/fs"
	"strings"

	"foldrow/engine"
)

// table is one CSV file: comment lines start with #, the first other line
// names the columns, and no value holds a comma.
type table struct {
	file   string
	column map[string]int
	bad    *faults
}

// row is one line of a table. It holds only until the next is read.
type row struct {
	t      *table
	line   int
	values []string
}

// readTable gives every row of tables/name to each.
func readTable(fsys fs.FS, name string, bad *faults, each func(row)) {
	t := &table{file: "tables/" + name, bad: bad}
	text, err := fs.ReadFile(fsys, t.file)
	if err != nil {
		bad.add(Error{File: t.file, Problem: BadTable, Detail: "absent"})
		return
	}
	line, width := 0, 0
	var values []string
	for rest, more := string(text), true; more; {
		var l string
		l, rest, more = strings.Cut(rest, "\n")
		line++
		l = strings.TrimSuffix(l, "\r")
		if l == "" || l[0] == '#' {
			continue
		}
		values = splitComma(l, values[:0])
		if t.column == nil {
			t.column = map[string]int{}
			for i, name := range values {
				if _, twice := t.column[name]; twice {
					bad.add(Error{File: t.file, Line: line, Problem: BadTable, Detail: "two columns are called " + name})
				}
				t.column[name] = i
			}
			width = len(values)
			continue
		}
		if len(values) != width {
			bad.add(Error{File: t.file, Line: line, Problem: BadTable, Detail: "another number of columns"})
			continue
		}
		each(row{t: t, line: line, values: values})
	}
}

// splitComma appends the parts of l to parts.
func splitComma(l string, parts []string) []string {
	for {
		part, rest, more := strings.Cut(l, ",")
		parts = append(parts, part)
		if !more {
			return parts
		}
		l = rest
	}
}

// text is the value under a column, "" where it is empty.
func (r row) text(column string) string {
	i, ok := r.t.column[column]
	if !ok {
		r.fault("no column " + column)
		return ""
	}
	return r.values[i]
}

// num is the number under a column.
func (r row) num(column string) engine.Num {
	n, ok := decimal(r.text(column))
	if !ok {
		r.fault(column + " is not a number")
	}
	return n
}

// optional is the number under a column that may be empty.
func (r row) optional(column string) (engine.Num, bool) {
	if r.text(column) == "" {
		return engine.Num{}, false
	}
	return r.num(column), true
}

func (r row) fault(detail string) {
	r.t.bad.add(Error{File: r.t.file, Line: r.line, Problem: BadTable, Detail: detail})
}

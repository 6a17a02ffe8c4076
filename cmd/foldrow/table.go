package main

import (
	"slices"
	"strings"
)

// table is what is known of a table before its cells are rendered.
type table struct {
	rows  int // header included, rule not
	right []bool
}

// tableAt reports a table with leading bars at the start of lines.
func tableAt(lines []string) bool {
	if len(lines) < 2 || !strings.HasPrefix(lines[0], "|") || !strings.HasPrefix(lines[1], "|") {
		return false
	}
	return strings.Contains(lines[1], "-") && strings.Trim(lines[1], "|-: ") == ""
}

// cutTable gives the rows as one marked line each. The header is bold where
// there is bold.
func cutTable(lines []string, plain bool) (table, []string) {
	t := table{rows: len(lines) - 1}
	for _, rule := range cells(lines[1]) {
		t.right = append(t.right, strings.HasSuffix(rule, ":") && !strings.HasPrefix(rule, ":"))
	}
	var out []string
	for i, line := range lines {
		if i == 1 {
			continue
		}
		row := cells(line)
		for j, c := range row {
			if i == 0 && c != "" && !plain && !strings.Contains(c, "*") {
				row[j] = "**" + c + "**"
			}
		}
		out = append(out, rowMark+strings.Join(row, cellMark))
	}
	return t, out
}

// cells splits "| a | b |" at the bars that no backslash stands before.
func cells(line string) []string {
	line = strings.ReplaceAll(strings.TrimSpace(line), `\|`, blockMark)
	line = strings.TrimSuffix(strings.TrimPrefix(line, "|"), "|")
	row := strings.Split(line, "|")
	for i, c := range row {
		row[i] = strings.ReplaceAll(strings.TrimSpace(c), blockMark, `\|`)
	}
	return row
}

// draw sets rendered rows in columns with two spaces between, or as a list if
// that is wider than the window or is to be read aloud.
func (t table) draw(lines []string, width int, read bool) []string {
	rows := make([][]string, len(lines))
	wide := make([]int, len(t.right))
	for i, line := range lines {
		rows[i] = strings.Split(strings.Replace(line, rowMark, "", 1), cellMark)
		for j := range min(len(rows[i]), len(wide)) {
			wide[j] = max(wide[j], columns(rows[i][j]))
		}
	}
	total := 2 * (len(wide) - 1)
	for _, w := range wide {
		total += w
	}
	if read || total > width {
		return asList(rows, width, read)
	}
	var out []string
	for i, row := range rows {
		var b strings.Builder
		for j := range min(len(row), len(wide)) {
			pad := strings.Repeat(" ", wide[j]-columns(row[j]))
			if t.right[j] {
				b.WriteString(pad + row[j] + "  ")
			} else {
				b.WriteString(row[j] + pad + "  ")
			}
		}
		out = append(out, strings.TrimRight(b.String(), " "))
		if i == 0 {
			out = append(out, rule(wide))
		}
	}
	return out
}

func rule(wide []int) string {
	var parts []string
	for _, w := range wide {
		parts = append(parts, strings.Repeat("-", w))
	}
	return strings.Join(parts, "  ")
}

// asList says each row in words: "row 3: clicks 1, dial 4.5". Where a cell is
// a list itself, semicolons part the cells.
func asList(rows [][]string, width int, read bool) []string {
	mark := itemMark
	if read {
		mark = readMark
	}
	between := ", "
	for _, row := range rows[1:] {
		if slices.ContainsFunc(row[min(1, len(row)):], func(c string) bool { return strings.Contains(c, ",") }) {
			between = "; "
		}
	}
	var out []string
	for _, row := range rows[1:] {
		var parts []string
		for j, c := range row {
			switch {
			case strings.TrimSpace(c) == "":
			case j == 0 && len(row) > 1 && !startsWithNumber(c):
				parts = append(parts, c) // "neck: stitches 110", not "stage neck"
			case c == "-" && j < len(rows[0]):
				parts = append(parts, rows[0][j]+" none")
			case j < len(rows[0]) && rows[0][j] != "":
				parts = append(parts, rows[0][j]+" "+c)
			default:
				parts = append(parts, c)
			}
		}
		line := strings.Join(parts, between)
		if len(parts) > 1 {
			line = parts[0] + ": " + strings.Join(parts[1:], between)
		}
		out = append(out, wrap(mark+line, width)...)
	}
	return out
}

// startsWithNumber reports a cell that needs its column's name to be understood.
func startsWithNumber(c string) bool {
	return c == "-" || strings.ContainsAny(c[:1], "0123456789+-(")
}

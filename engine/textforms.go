package engine

import (
	"slices"
	"strconv"
	"strings"
)

// MostStages is how many stages a yoke may have.
const MostStages = 20

// normalList is a list of numbers from low to high, written with single
// spaces; at most one a stage.
func normalList(s string, low, high Num, whole bool) (string, bool) {
	words := strings.Fields(s)
	if len(words) == 0 || len(words) > MostStages {
		return "", false
	}
	for i, w := range words {
		n, ok := ParseNum(w)
		if !ok || n.Less(low) || high.Less(n) || whole && !n.IsInt() {
			return "", false
		}
		words[i] = n.String()
	}
	return strings.Join(words, " "), true
}

// listOf is the numbers of a list that normalList made.
func listOf(s string) []Num {
	var out []Num
	for _, w := range strings.Fields(s) {
		if n, ok := ParseNum(w); ok {
			out = append(out, n)
		}
	}
	return out
}

// normalPairs is "stage=count" for each stage named, by stage; of two counts
// for one stage the later holds.
func normalPairs(s string) (string, bool) {
	had := map[int]int{}
	for _, w := range strings.Fields(s) {
		l, r, _ := strings.Cut(w, "=")
		stage, err1 := strconv.Atoi(l)
		count, err2 := strconv.Atoi(r)
		if err1 != nil || err2 != nil || stage < 1 || stage > MostStages || count < 1 || count > maxStitches {
			return "", false
		}
		had[stage] = count
	}
	var out []string
	for stage := 1; stage <= MostStages; stage++ {
		if had[stage] > 0 {
			out = append(out, itoa(stage)+"="+itoa(had[stage]))
		}
	}
	return strings.Join(out, " "), len(out) > 0
}

// pairsOf is the counts by stage, from 0.
func pairsOf(s string) map[int]int {
	if s == "" {
		return nil
	}
	had := map[int]int{}
	for _, w := range strings.Fields(s) {
		l, r, _ := strings.Cut(w, "=")
		stage, _ := strconv.Atoi(l)
		had[stage-1], _ = strconv.Atoi(r)
	}
	return had
}

// Limits of a chart: a repeat wider than 200 stitches or more than 60 rows are
// no yoke's.
const (
	mostChartWide = 200
	mostChartRows = 60
)

// normalChart is rows of x (contrast) and . (main) joined by slashes, all as
// wide as the least common repeat of them.
func normalChart(s string) (string, bool) {
	rows := strings.Split(strings.ToLower(s), "/")
	if len(rows) > mostChartRows {
		return "", false
	}
	wide := 1
	for i, r := range rows {
		rows[i] = strings.TrimSpace(r)
		if rows[i] == "" || strings.Trim(rows[i], "x.") != "" {
			return "", false
		}
		if wide = lcm(wide, len(rows[i])); wide > mostChartWide {
			return "", false
		}
	}
	for i, r := range rows {
		rows[i] = strings.Repeat(r, wide/len(r))
	}
	return strings.Join(rows, "/"), strings.ContainsRune(s, 'x') || strings.ContainsRune(s, 'X')
}

func lcm(a, b int) int {
	x, y := a, b
	for y != 0 {
		x, y = y, x%y
	}
	return a / x * b
}

// chartOf is the rows of a chart that normalChart made.
func chartOf(s string) [][]bool {
	if s == "" {
		return nil
	}
	var out [][]bool
	for _, r := range strings.Split(s, "/") {
		row := make([]bool, len(r))
		for i := range r {
			row[i] = r[i] == 'x'
		}
		out = append(out, row)
	}
	return out
}

// ChartText is a chart as it is kept, "" and false where it is none; rows may
// be of different widths.
func ChartText(rows [][]bool) (string, bool) {
	var out []string
	for _, r := range rows {
		b := slices.Repeat([]byte{'.'}, len(r))
		for i, contrast := range r {
			if contrast {
				b[i] = 'x'
			}
		}
		out = append(out, string(b))
	}
	return normalChart(strings.Join(out, "/"))
}

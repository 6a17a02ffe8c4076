package page

import (
	"slices"
	"strconv"
	"strings"

	"foldrow/dialog/answer"
)

// cite gathers where the figures of a sheet come from, each place once, and
// leaves its numbers beside what rests on it.
func (s *sheet) cite(v answer.Voice) {
	for i := range s.Sizes {
		s.Sizes[i].Refs = s.refs(v, s.Sizes[i].Source)
	}
	for i := range s.Assumed {
		s.Assumed[i].Refs = s.refs(v, s.Assumed[i].Source)
	}
}

// refs is the numbers under which the sources stand in the list, "1, 4"; what
// is not in it yet is put there.
func (s *sheet) refs(v answer.Voice, ids []string) string {
	var at []int
	for _, id := range ids {
		src, ok := v.Book.Source(id)
		if !ok {
			continue
		}
		i := slices.Index(s.Sources, src.Where)
		if i < 0 {
			i = len(s.Sources)
			s.Sources = append(s.Sources, src.Where)
		}
		if !slices.Contains(at, i+1) {
			at = append(at, i+1)
		}
	}
	slices.Sort(at)
	words := make([]string, len(at))
	for i, n := range at {
		words[i] = strconv.Itoa(n)
	}
	return strings.Join(words, ", ")
}

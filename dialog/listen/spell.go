package listen

import "strings"

// speller offers the craft word that a misspelt one stands for: at distance
// one (a letter wrong, missing, too many, or two changed about), at distance
// two for long words. It keeps every word under each of its shortenings, so a
// look-up costs the same however many words there are.
//
// bones keeps a word under its consonants, for those who leave the vowels out.
type speller struct {
	byShort map[string][]string
	bones   map[string]string
	three   []string // words of three letters
}

// longWord is the length from which two slips are forgiven.
const longWord = 8

func newSpeller(words []string) *speller {
	s := &speller{byShort: make(map[string][]string, 12*len(words)), bones: make(map[string]string, len(words))}
	seen := map[string]bool{}
	for _, w := range words {
		if seen[w] || len(w) < 3 || !letters(w) {
			continue
		}
		seen[w] = true
		if len(w) == 3 {
			s.three = append(s.three, w)
			continue
		}
		for _, d := range shortenings(w) {
			s.byShort[d] = append(s.byShort[d], w)
		}
		if b := bones(w); len(b) >= fewestBones && len(b) < len(w) {
			if old := s.bones[b]; old != "" && stem(old) != stem(w) {
				w = "?" // two words have them
			}
			s.bones[b] = w
		}
	}
	return s
}

func letters(w string) bool {
	for _, c := range w {
		if c < 'a' || c > 'z' {
			return false
		}
	}
	return true
}

// shortenings are w itself and w with one letter left out, two for long words.
func shortenings(w string) []string {
	out := []string{w}
	for i := range w {
		d := w[:i] + w[i+1:]
		out = append(out, d)
		if len(w) >= longWord {
			for j := i; j < len(d); j++ {
				out = append(out, d[:j]+d[j+1:])
			}
		}
	}
	return out
}

// correct gives the one nearest word, or false where there is none or two are
// equally near.
func (s *speller) correct(w string) (string, bool) {
	if len(w) < 3 || len(w) > 20 || !letters(w) {
		return "", false
	}
	most := 1
	if len(w) >= longWord {
		most = 2
	}
	best, bestAt, ties := "", most+1, 0
	tried := map[string]bool{}
	for _, d := range shortenings(w) {
		for _, c := range s.byShort[d] {
			if tried[c] {
				continue
			}
			tried[c] = true
			at := distance(w, c, most)
			if at > 1 && len(c) < longWord {
				continue
			}
			switch {
			case at < bestAt:
				best, bestAt, ties = c, at, 1
			case at == bestAt && stem(c) != stem(best):
				ties++
			}
		}
	}
	if ties > 1 {
		best = sameStart(w, tried, bestAt, most)
		if single := undoubled(w, tried); single != "" {
			return single, true
		}
		if swap := swapped(w, tried); swap != "" && len(w) > 4 { // "donw" may be done or down
			best, bestAt = swap, 1
		}
		if near := likeliest(w, tried); near != "" && bestAt == 1 {
			best = near
		}
	}
	if best == "" || bestAt > most {
		best = s.bones[bones(w)]
		return best, len(best) > len(w)
	}
	return best, true
}

// fewestBones is how many consonants make a word known by them alone.
const fewestBones = 4

// bones is a word without the vowels behind its first letter, and each letter
// once where it is doubled.
func bones(w string) string {
	out := make([]byte, 0, len(w))
	for i := range len(w) {
		if i == 0 || strings.IndexByte("aeiou", w[i]) < 0 && w[i] != out[len(out)-1] {
			out = append(out, w[i])
		}
	}
	return string(out)
}

// sameStart breaks a tie for the word that begins with the same letter and
// has the same length, if there is just one: most slips are inside a word.
func sameStart(w string, tried map[string]bool, at, most int) string {
	only := ""
	for c := range tried {
		if c[0] != w[0] || len(c) != len(w) || distance(w, c, most) != at {
			continue
		}
		if only != "" && stem(only) != stem(c) {
			return ""
		}
		if only == "" || c < only {
			only = c
		}
	}
	return only
}

// undoubled breaks a tie for the word with one letter fewer of two that are the
// same: "plann" is plan, not plain.
func undoubled(w string, tried map[string]bool) string {
	for i := 1; i < len(w); i++ {
		if c := w[:i] + w[i+1:]; w[i] == w[i-1] && tried[c] {
			return c
		}
	}
	return ""
}

// swapped breaks a tie for the one word of the same letters with two
// neighbours changed about: "needel" is needle, not needed.
func swapped(w string, tried map[string]bool) string {
	only := ""
	for c := range tried {
		if len(c) != len(w) || c == w {
			continue
		}
		i := 0
		for c[i] == w[i] {
			i++
		}
		if i+1 < len(w) && c[i] == w[i+1] && c[i+1] == w[i] && c[i+2:] == w[i+2:] {
			if only != "" {
				return ""
			}
			only = c
		}
	}
	return only
}

// distance counts the slips between a and b (a letter put in, left out,
// changed, or two neighbours changed about), and gives most+1 for more.
func distance(a, b string, most int) int {
	if len(a)-len(b) > most || len(b)-len(a) > most {
		return most + 1
	}
	before, prev, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range prev {
		prev[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(prev[j]+1, row[j-1]+1, prev[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, prev, row = prev, row, before
	}
	return min(prev[len(b)], most+1)
}

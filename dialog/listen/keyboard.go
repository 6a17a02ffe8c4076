package listen

import "strings"

// keyRows are the letters of a keyboard as they lie under the fingers, each
// row half a key to the right of the one above.
var keyRows = [...]string{"qwertyuiop", "asdfghjkl", "zxcvbnm"}

// besideKey reports whether a finger that wanted one key may have met the other.
func besideKey(a, b byte) bool {
	ra, ca := keyAt(a)
	rb, cb := keyAt(b)
	if ra < 0 || rb < 0 {
		return false
	}
	if ra > rb {
		ra, ca, rb, cb = rb, cb, ra, ca
	}
	switch rb - ra {
	case 0:
		return ca-cb == 1 || cb-ca == 1
	case 1:
		return cb == ca || cb == ca-1
	}
	return false
}

func keyAt(c byte) (row, column int) {
	for r, keys := range keyRows {
		if i := strings.IndexByte(keys, c); i >= 0 {
			return r, i
		}
	}
	return -1, -1
}

// likeliest breaks a tie for the one word at distance one whose slip is the
// likeliest: a key met beside the one meant, a letter left out or put in, then a
// vowel for another, then any other letter. "nexk" is neck, not next; "lach" is
// latch, not lace.
func likeliest(w string, tried map[string]bool) string {
	only, least := "", 4
	for c := range tried {
		at := slipOf(w, c)
		switch {
		case at < least:
			only, least = c, at
		case at == least && only != "" && stem(only) != stem(c):
			only = ""
		case at == least && only != "" && c < only:
			only = c
		}
	}
	return only
}

// slipOf tells how unlikely it is that w was meant as c, from 1; 4 where more
// than one letter differs.
func slipOf(w, c string) int {
	if w == c || distance(w, c, 1) != 1 {
		return 4
	}
	if len(w) != len(c) && w[0] == c[0] {
		return 1
	}
	if len(w) != len(c) {
		return 3
	}
	i := 0
	for w[i] == c[i] {
		i++
	}
	switch {
	case w[0] != c[0]:
		return 3 // the first letter is seldom the wrong one
	case w[i+1:] != c[i+1:], besideKey(w[i], c[i]):
		return 1
	case vowel(w[i]) && vowel(c[i]):
		return 2
	}
	return 3
}

func vowel(c byte) bool { return strings.IndexByte("aeiouy", c) >= 0 }

// correctShort gives the one word of three letters that w, as long, is with one
// key missed or two letters changed about: "wgy" is why. Of three letters nearly
// anything can be made, so no other slip is forgiven.
func (s *speller) correctShort(w string) (string, bool) {
	if len(w) != 3 || !letters(w) {
		return "", false
	}
	only := ""
	for _, c := range s.three {
		off, at := 0, 0
		for i := range 3 {
			if c[i] != w[i] {
				off, at = off+1, i
			}
		}
		swapped := off == 2 && (c[0] == w[1] && c[1] == w[0] || c[1] == w[2] && c[2] == w[1])
		if !swapped && !(off == 1 && besideKey(c[at], w[at])) {
			continue
		}
		if only != "" {
			return "", false
		}
		only = c
	}
	return only, only != ""
}

package main

import (
	"bytes"
	"testing"
)

// TestSteady: what the editor writes, and what reaches the terminal.
func TestSteady(t *testing.T) {
	tests := []struct {
		name   string
		writes []string
		want   string
	}{
		{"a prompt", []string{"> "}, "> "},
		{"a key", []string{takenAway, "> ca"}, "\r> ca\x1b[J"},
		{"a key within", []string{takenAway, "> cXa\b"}, "\r> cXa\x1b[J\b"},
		{"a full row", []string{takenAway, "> abc \b"}, "\r> abc \b\x1b[J"},
		{"the end of the line", []string{takenAway, "> ca\n"}, "\r> ca\n\x1b[J"},
		{"two rows", []string{"\x1b[J\x1b[2K\r\x1b[A\x1b[2K\r", "> ca"}, "\x1b[J\x1b[2K\r\x1b[A\x1b[2K\r> ca"},
		{"back over a row's end", []string{"> ab\b\b\x1b[A\r\x1b[40C\b"}, "> ab\b\x1b[A\r\x1b[40C\b"},
		{"a bell", []string{takenAway, "\a"}, takenAway + "\a"},
		{"nothing more", []string{takenAway}, takenAway},
		{"the offers below", []string{takenAway, "> ca", "\n\x1b[Jcardigan"}, "\r> ca\x1b[J\n\x1b[Jcardigan"},
	}
	for _, tt := range tests {
		var out bytes.Buffer
		s := &steady{out: &out}
		for _, w := range tt.writes {
			if n, err := s.Write([]byte(w)); n != len(w) || err != nil {
				t.Errorf("%s: %d, %v", tt.name, n, err)
			}
		}
		s.flush()
		s.flush()
		if out.String() != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, out.String(), tt.want)
		}
	}
}

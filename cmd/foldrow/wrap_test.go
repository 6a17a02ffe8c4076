package main

import (
	"strings"
	"testing"
)

// TestWhatStaysTogether: "~" stands where no line may end, whatever its width.
func TestWhatStaysTogether(t *testing.T) {
	for _, want := range []string{
		"Last used on 26~November~2026 at 15:04.",
		"at every 4th needle, (29~groups), then every 5~doubled needles",
		"float main float~3, contrast float 12~stitches",
		"of every 4~take~1, then go on",
		"stage~1: 96~+~96~stitches, 192~in all",
		"neck 41~7/8~in, you want 42~cm; 109 gives 41.2~cm",
		"hold 1~1/4~in or 16~½~in",
		"from L54~to~R53, row~5, dial~4.5, rows~2~to~8",
		"from a gauge, 28~stitches and 40~rows",
		"counts: 97, 99, 101",
	} {
		words := strings.Fields(strings.ReplaceAll(want, "~", " "))
		got := strings.Join(units(strings.Join(words, " "), 1000), "|")
		want = strings.ReplaceAll(strings.ReplaceAll(want, " ", "|"), "~", " ")
		if got != want {
			t.Errorf("got  %s\nwant %s", got, want)
		}
	}
}

package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// Notes is what stands on the sheets beside the plan itself.
type Notes struct {
	Name     string       // the project's, "" where it has none
	Date     string       // as it is to be read, "" for none
	Supposed []engine.Key // what a what-if supposes; nil for the plan that is kept
}

// supposed says that the sheets show a what-if, and what it supposes; "" for
// the plan that is kept.
func supposed(v answer.Voice, p *engine.Plan, keys []engine.Key) string {
	if len(keys) == 0 {
		return ""
	}
	parts := make([]string, len(keys))
	for i, k := range keys {
		parts[i] = v.Label(k) + " " + v.Value(p, k)
	}
	return "Only supposed, not the plan that is kept: " + strings.Join(parts, ", ") + "."
}

// foot is what tells loose sheets apart: whose they are, of how many stitches,
// from which day.
func (s sheet) foot() string {
	parts := []string{s.Title}
	if s.Stitches > 0 {
		parts = append(parts, answer.Count(s.Stitches, "stitch", "stitches"))
	}
	if s.Date != "" {
		parts = append(parts, s.Date)
	}
	if s.Supposed != "" {
		parts = append(parts, "WHAT IF, not kept")
	}
	return strings.Join(parts, " · ")
}

// footStyle puts the foot into the margin of every sheet. It repeats on each,
// which nothing within the page can.
func footStyle(s sheet) string {
	return fmt.Sprintf("@page { @bottom-left { content: %s; font: 10pt Arial, Helvetica, sans-serif; } }\n", cssText(short(s.foot(), mostFoot)))
}

// mostFoot is how many letters the margin takes beside the number of the page.
const mostFoot = 80

func short(s string, most int) string {
	if r := []rune(s); len(r) > most {
		return string(r[:most-1]) + "…"
	}
	return s
}

// cssText is s as a string of a style sheet. All but plain letters, figures
// and spaces are written by number, so that a name can end neither the string
// nor the style.
func cssText(s string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range s {
		switch {
		case r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || r == ' ':
			b.WriteRune(r)
		default:
			fmt.Fprintf(&b, "\\%06x ", r) // the space ends the number
		}
	}
	b.WriteByte('"')
	return b.String()
}

// Package answer writes what the conversation has found out as Markdown: one
// voice, short, numbers first, the knitter's own unit first. It takes facts
// (plans, records, cards) and changes nothing.
package answer

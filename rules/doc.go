// Package rules holds what the trade knows as data that a knitter can read:
// cards in Markdown files and tables in CSV, embedded in the program. It
// knows how they are read and checked, not what is said with them.
//
// Start with Load (everything, checked) and Book (what it gives).
package rules

// Package listen turns one line of a knitter's words into its meaning. It
// knows the words (from rules/), the open question and the unit she has used
// so far, and nothing else: no plan, no files, no clock.
//
// The way of a line: Clean drops what must never be printed back; tokens cuts
// it into words and quantities; the lexicon marks what the words name (an
// input, a result, a rib, a technique, a trouble) and which phrasings of
// rules/phrases.md they hold; bind gives each quantity to the thing it is
// about; Read decides what kind of line it is. A line that is not understood,
// or that can be read in two ways with different effect, has kind Unclear and
// sets nothing.
//
// The files: bind*.go are steps of the binder, in the order of bind.go. Those
// named ..._asked.go hold questions about one topic each, the others the readers
// of the groups in read.go. lexicon*.go, stem*.go, shelf.go and sieve.go are how
// words are found, signs.go, unglue.go, respell.go and spell.go how a line is
// mended before it is read.
package listen

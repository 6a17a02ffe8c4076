// Package engine holds the numbers of a neckband: pure functions from what
// the knitter said to a plan. It knows no words for people, no files and no
// clock, and imports nothing of ours.
//
// Start with Inputs (what a plan is made from), Solve (the plan) and Record
// (how one number came about).
package engine

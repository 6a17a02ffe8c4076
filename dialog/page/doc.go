// Package page lays a neckband's plan out to be printed and pinned above the
// machine: as Markdown, and as one HTML file that needs no network, no script
// and no fonts of its own. It is pure: it takes a plan and gives text.
package page

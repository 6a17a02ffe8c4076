package dialog

import (
	"foldrow/dialog/page"
)

// Page is the plan of a state as one HTML page to print, and whether there is
// a plan to print yet. name stands at its head.
func (t *Talk) Page(s State, name string) (html string, ok bool, err error) {
	c := t.at(s, "")
	p := c.plan()
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return "", false, nil
	}
	html, err = page.HTML(c.voice(), p, c.base(), name)
	return html, true, err
}

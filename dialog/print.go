package dialog

import (
	"foldrow/dialog/page"
)

// Pages is the plan of a state as a page to print, in HTML and in Markdown;
// ok is false where there is no plan to print yet. name stands at its head.
func (t *Talk) Pages(s State, name string) (html, markdown string, ok bool, err error) {
	c := t.at(s, "")
	p := c.plan()
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return "", "", false, nil
	}
	html, err = page.HTML(c.voice(), p, c.base(), name)
	return html, page.Markdown(c.voice(), p, c.base(), name), true, err
}

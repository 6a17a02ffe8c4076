package dialog

import (
	"foldrow/dialog/page"
)

// Pages is the plan of a state as a page to print, in HTML and in Markdown;
// ok is false where there is no plan to print yet. name and date, as it is to
// be read, stand on every sheet; so does that a what-if lies on the table.
func (t *Talk) Pages(s State, name, date string) (html, markdown string, ok bool, err error) {
	c := t.at(s, "")
	p := c.plan()
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return "", "", false, nil
	}
	n := page.Notes{Name: name, Date: date}
	if s.OnTable {
		n.Supposed = s.Chain
	}
	html, err = page.HTML(c.voice(), p, c.base(), n)
	return html, page.Markdown(c.voice(), p, c.base(), n), true, err
}

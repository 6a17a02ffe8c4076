package page

import (
	"regexp"
	"strings"
)

var (
	shownText = regexp.MustCompile(`>[^<]+<`)
	fraction  = regexp.MustCompile(`(\d) (\d+/\d)`)
	withUnit  = regexp.MustCompile(`(\d) (cm|mm|m|in|yd|g|degrees|%)([^\p{L}\d]|$)`)
)

// wholeFigures keeps the space inside a figure and before its unit from being
// the end of a line: "15 1/4 in" is read at once or not at all.
func wholeFigures(html string) string {
	head, body, found := strings.Cut(html, "<body>")
	if !found {
		return html
	}
	return head + "<body>" + shownText.ReplaceAllStringFunc(body, func(s string) string {
		const keep = "\u00a0"
		return withUnit.ReplaceAllString(fraction.ReplaceAllString(s, "$1"+keep+"$2"), "$1"+keep+"$2$3")
	})
}

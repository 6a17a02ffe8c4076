package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Assumed names what the plan takes for granted.
func (v Voice) Assumed(p *engine.Plan, said engine.Inputs) string {
	return assumedLine(v.assumed(p, said))
}

// assumed is every value taken for granted, so that nothing is assumed in
// silence.
func (v Voice) assumed(p *engine.Plan, said engine.Inputs) []string {
	var list []string
	for _, k := range engine.InputKeys() {
		if said.Has(k) || !p.In.Has(k) || !Matters(k, p) || AddsNothing(k, p) {
			continue
		}
		label, value := v.Taken(p, k)
		list = append(list, strings.TrimSpace(label+" "+value))
	}
	return list
}

// Taken is what an input is called and the value it is taken to have; in the
// trade's words alone, and no label, where there are such.
func (v Voice) Taken(p *engine.Plan, k engine.Key) (label, value string) {
	if words := Setting(k, p.In.Int(k)); words != "" {
		return "", words
	}
	return v.Label(k), v.plainValue(p, k)
}

const changeAny = "**Assumed**, change any by saying so: "

func assumedLine(list []string) string {
	if len(list) == 0 {
		return ""
	}
	return changeAny + strings.Join(list, "; ") + "."
}

// assumedBrief names as much of what was assumed as two lines hold, and how to
// see the rest.
func assumedBrief(list []string) string {
	for n := len(list) - 1; n > 0; n-- {
		s := fmt.Sprintf("%s%s; %d more (*what do you assume* names all).", changeAny, strings.Join(list[:n], "; "), len(list)-n)
		if height(s) <= 2 {
			return s
		}
	}
	return ""
}

package answer

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"foldrow/engine"
)

// Why tells how k came about: the rule, the arithmetic with this plan's
// figures, the rounding and its reason, the source. It is made from the record
// that the engine keeps of the number.
func (v Voice) Why(p *engine.Plan, said engine.Inputs, k engine.Key) (string, bool) {
	if said.Has(k) && said.Same(p.In, k) {
		text := fmt.Sprintf("%s is **%s** because you told me.", upper(v.Label(k)), v.Value(p, k))
		if card, ok := v.Book.Key(k); ok && card.Question == "" && card.Why != "" {
			text += " " + v.Fill(card.Why, p)
		}
		return text, true
	}
	rec, ok := p.Record(k)
	if !ok {
		return v.whyList(p, k)
	}
	if rec.Rule == engine.RuleSaid {
		return v.whyAssumed(p, k), true
	}
	var b strings.Builder
	fmt.Fprintf(&b, "**%s: %s.**", upper(v.Label(k)), v.Value(p, k))
	card, ok := v.Book.Result(k)
	if in, follows := v.Book.Key(k); !ok && follows {
		card.Rule, card.Source = in.Rule, in.Source // an input that follows from others
	}
	if own := card.RibSource[p.In.Rib.String()]; own != nil {
		card.Source = own
	}
	if card.Rule != "" {
		b.WriteString(" " + card.Rule)
	}
	if rec.Expr != "" {
		fmt.Fprintf(&b, "\n\n`%s`", v.Arithmetic(rec))
	}
	if card.Rounding != "" {
		b.WriteString("\n\n" + card.Rounding)
	}
	if own := v.OwnEstimate(p, k); own != "" {
		card.Estimate, card.Source = own, []string{"own"}
	}
	if card.Estimate != "" {
		b.WriteString("\n\nAn estimate: " + lowerFirst(v.Estimate(p, card)))
		if s := v.spreadText(p, k); s != "" {
			b.WriteString(" Here" + s + ".")
		}
	}
	if s := v.Sources(card.Source); s != "" {
		b.WriteString("\n\nSource: " + s + ".")
	}
	return b.String(), true
}

// Arithmetic is the sum with its outcome, in the engine's units (cm), or in
// inches for who reads those where the sum is one of what she typed, so that it
// can be checked by hand.
func (v Voice) Arithmetic(rec engine.Record) string {
	s := rec.Expr
	if v.Unit == "in" && rec.Inch != "" {
		s = rec.Inch
	}
	if rec.Unrounded != 0 || rec.Expr != "" {
		s += " = " + trim(rec.Unrounded, 4)
	}
	if math.Abs(rec.Unrounded-rec.Value) > 1e-9 {
		s += " -> " + trim(rec.Value, 4)
	}
	return s
}

// WhyDeeper goes one level down: every number that k was made from, and where
// each comes from.
func (v Voice) WhyDeeper(p *engine.Plan, said engine.Inputs, k engine.Key) (string, bool) {
	rec, ok := p.Record(k)
	if !ok || len(rec.From) == 0 {
		return v.Why(p, said, k)
	}
	lines := []string{fmt.Sprintf("%s: made from", upper(v.Label(k)))}
	for _, from := range rec.From {
		lines = append(lines, "- "+v.Label(from)+" "+v.Value(p, from)+": "+v.origin(p, said, from))
	}
	return lines[0] + ":\n\n" + strings.Join(lines[1:], "\n"), true
}

// origin is where one number comes from, in a few words.
func (v Voice) origin(p *engine.Plan, said engine.Inputs, k engine.Key) string {
	if said.Has(k) && said.Same(p.In, k) {
		return "you told me"
	}
	if _, ok := v.Book.Key(k); ok {
		if s := v.Sources(v.sourceOf(p, k)); s != "" && p.In.Has(k) {
			return "assumed (" + s + ")"
		}
		return "worked out from what you told me"
	}
	if card, ok := v.Book.Result(k); ok {
		return lowerFirst(strings.TrimSuffix(card.Rule, "."))
	}
	return "worked out"
}

func (v Voice) whyAssumed(p *engine.Plan, k engine.Key) string {
	card, _ := v.Book.Key(k)
	text := fmt.Sprintf("%s **%s** is assumed: you have not said otherwise.", upper(v.Label(k)), v.Value(p, k))
	if by := v.Book.GivenBy(p.In, k); by != "" {
		text = fmt.Sprintf("%s **%s** comes with what you told me (%s: %s), until you say otherwise.", upper(v.Label(k)), v.Value(p, k), v.Label(by), v.Text(by, p.In.Text(by)))
		if s := v.tableOf(p.In, by, k); s != "" {
			return text + "\n\nSource: " + s + "."
		}
		if giver, _ := v.Book.Key(by); by == engine.KeyBandKind && giver.Texts[p.In.Text(by)] != "" { // what the choice brings has the choice's reason
			return text + " " + v.Fill(giver.Texts[p.In.Text(by)], p) + "\n\nSource: " + v.Sources(giver.Source) + "."
		}
	}
	if r := v.Book.Factors(p.In); r.Text != "" && (k == engine.RibDraw || k == engine.RibStretch) {
		text = fmt.Sprintf("%s **%s** is the figure for %s, until you tell me your own. %s", upper(v.Label(k)), v.Value(p, k), r.Label, r.Text)
	} else if card.UsualText != "" {
		text += " " + firstParagraph(card.UsualText)
	}
	if s := v.Sources(v.sourceOf(p, k)); s != "" {
		text += "\n\nSource: " + s + "."
	}
	return text
}

// sourceOf is where the figure of an input comes from that the knitter has not
// said: a rib's factors have the sources of that rib's card.
func (v Voice) sourceOf(p *engine.Plan, k engine.Key) []string {
	if k == engine.RibDraw || k == engine.RibStretch {
		if r := v.Book.Factors(p.In); len(r.Source) > 0 {
			return r.Source
		}
	}
	card, _ := v.Book.Key(k)
	return card.Source
}

// whyList gives the reason for a result that is a list and so has no sum.
func (v Voice) whyList(p *engine.Plan, k engine.Key) (string, bool) {
	card, ok := v.Book.Result(k)
	val := v.Value(p, k)
	if !ok || val == "" {
		return "", false
	}
	text := fmt.Sprintf("**%s:** %s.\n\n%s", upper(card.Label), val, card.Rule)
	if card.Rounding != "" {
		text += " " + card.Rounding
	}
	if s := v.Sources(card.Source); s != "" {
		text += "\n\nSource: " + s + "."
	}
	return text, true
}

// Sources names where a card's facts come from, each place once.
func (v Voice) Sources(ids []string) string {
	var names []string
	for _, id := range ids {
		if s, ok := v.Book.Source(id); ok && !slices.Contains(names, s.Where) {
			names = append(names, s.Where)
		}
	}
	return strings.Join(names, "; ")
}

func upper(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func lowerFirst(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

func firstParagraph(s string) string {
	p, _, _ := strings.Cut(s, "\n\n")
	return p
}

// UnitFits reports whether a figure said in unit u may mean k.
func UnitFits(v Voice, k engine.Key, u string) bool {
	own := v.unit(k)
	switch u {
	case "":
		return true
	case "st":
		return own == "stitches" || own == "stitches per 10 cm"
	case "row":
		return own == "rows" || own == "rows per 10 cm"
	case "cm", "in", "mm", "ft", "m", "yd":
		return own == "cm" || own == "mm" || own == "m" || u == "m" && own == "m per 100 g"
	case "needle":
		return own == "needles" || own == "stitches"
	case "%":
		return own == "%"
	case "g", "oz":
		return own == "g"
	case "click":
		return own == "clicks"
	}
	return true
}

// Shows reports whether k, which is f, is shown as the figure fig.
func Shows(v Voice, k engine.Key, f, fig float64, u string) bool {
	switch own := v.unit(k); {
	case u == "mm" && own == "cm":
		fig /= 10
	case u == "cm" && own == "mm":
		fig *= 10
	case (u == "m" || u == "yd") && own == "cm":
		fig *= map[string]float64{"m": 100, "yd": 91.44}[u]
	case u == "cm" && own == "m":
		fig /= 100
	}
	near := func(a, b float64) bool { return math.Abs(a-b) < 0.051 && (math.Abs(a-b) < 1e-6 || b != math.Trunc(b)) }
	if near(f, fig) || (v.unit(k) == "m" || v.unit(k) == "g" || v.unit(k) == "m per 100 g") && math.Round(f) == fig {
		return true
	}
	if v.unit(k) == "cm" && (u == "in" || v.Unit == "in") {
		return math.Abs(f/2.54-fig) < 0.0626
	}
	if v.unit(k) == "cm" {
		return math.Abs(f-fig) < 0.051
	}
	return false
}

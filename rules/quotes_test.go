package rules

import (
	"fmt"
	"strings"
	"testing"

	"foldrow/engine"
)

// Figures that the cards quote, made again from the tables: a card that
// drifts from its source is found here.
func TestQuotedFigures(t *testing.T) {
	b := book(t)
	g := func(m Measure, w Wearer) Spread {
		for _, x := range b.Tables.Girths {
			if x.Measure == m && x.Adult && x.Sex == w.Sex && w.Adult {
				return x
			}
		}
		x, ok := b.Tables.girth(m, w)
		if !ok {
			t.Fatalf("no %s for %+v", m, w)
		}
		return x
	}
	women, men := Wearer{Sex: Female, Adult: true}, Wearer{Sex: Male, Adult: true}
	boy := func(years int64) Wearer { return Wearer{Sex: Male, Years: engine.Int(years)} }
	child := func(years int64) Wearer { return Wearer{Years: engine.Int(years)} }
	span := func(x Spread) string { return fmt.Sprintf("%.1f to %.1f cm", x.Low.Float(), x.High.Float()) }
	yarn := func(category int) string {
		c, _ := b.Tables.Class(category)
		return c.Low.String() + " to " + c.High.String()
	}
	name := func(i int) string {
		n := b.Tables.YarnNames[i]
		return n.Name + " " + n.Low.String() + " to " + n.High.String()
	}
	necks := b.Tables.FinishedNecks
	tests := []struct {
		key   engine.Key
		quote string
	}{
		{engine.NeckBody, span(g(NeckBase, women))},
		{engine.NeckBody, span(g(NeckBase, men))},
		{engine.NeckBody, fmt.Sprintf("about %.0f cm at two to three years", g(MidNeck, child(2)).Mid.Float())},
		{engine.NeckBody, fmt.Sprintf("%.0f cm at eight", g(MidNeck, child(8)).Mid.Float())},
		{engine.NeckBody, fmt.Sprintf("%.0f cm at fifteen", g(MidNeck, child(15)).Mid.Float())},
		{engine.Head, span(g(Head, women))},
		{engine.Head, span(g(Head, men))},
		{engine.Head, fmt.Sprintf("newborn boys measure %.1f cm", g(Head, boy(0)).Mid.Float())},
		{engine.Head, fmt.Sprintf("one-year-olds %.1f cm", g(Head, boy(1)).Mid.Float())},
		{engine.Head, fmt.Sprintf("three-year-olds %.1f cm", g(Head, boy(3)).Mid.Float())},
		{engine.Neck, fmt.Sprintf("about %.0f cm round the base for women and %.0f cm for men",
			g(NeckBase, women).Mid.Float(), g(NeckBase, men).Mid.Float())},
		{engine.Neck, fmt.Sprintf("from %.1f cm to %.0f cm over %d women's sizes", necks[0].Float(), necks[10].Float(), len(necks))},
		{engine.StitchGauge, yarn(3) + " stitches in 10 cm for DK"},
		{engine.StitchGauge, yarn(4) + " for aran and worsted"},
		{engine.StitchGauge, yarn(2) + " for sport"},
		{engine.StitchGauge, yarn(1) + " for fingering or 4 ply"},
		{engine.YarnLength, name(0)},
		{engine.YarnLength, name(1)},
		{engine.YarnLength, name(2)},
		{engine.YarnLength, name(3)},
		{engine.YarnLength, name(4)},
	}
	for _, tt := range tests {
		k, _ := b.Key(tt.key)
		if !strings.Contains(k.Measure+k.UsualText, tt.quote) {
			t.Errorf("%s does not say %q:\n%s", tt.key, tt.quote, k.UsualText)
		}
	}
}

// Neck halfway up against neck base: the difference that the cards call about
// 4 cm is 3.7 and 4.1 cm on average.
func TestTwoNecks(t *testing.T) {
	mid := map[Sex]float64{}
	for _, g := range book(t).Tables.Girths {
		if g.Adult && g.Measure == MidNeck {
			mid[g.Sex] = g.Mid.Float()
		}
	}
	for _, sex := range []Sex{Female, Male} {
		base, _ := book(t).Tables.Necks(Wearer{Sex: sex, Adult: true})
		if d := base.Mid.Float() - mid[sex]; d < 3.5 || d > 4.5 {
			t.Errorf("%s: base is %.1f cm more", sex, d)
		}
	}
}

// One calm voice: no exclamation marks, no card part longer than a screen can
// show at once, paragraphs on one line each.
func TestProse(t *testing.T) {
	b := book(t)
	check := func(c Card, part, text string) {
		if strings.Contains(text, "!") {
			t.Errorf("%s %s: exclamation mark", c.ID, part)
		}
		if n := len(strings.Fields(text)); n > 90 {
			t.Errorf("%s %s: %d words", c.ID, part, n)
		}
		for _, p := range strings.Split(text, "\n\n") {
			if strings.Contains(p, "\n") {
				t.Errorf("%s %s: a paragraph runs over several lines: %q", c.ID, part, p)
			}
		}
	}
	for _, file := range needed {
		for _, c := range b.Cards(file) {
			check(c, "text", c.Text)
			for name, text := range c.Sections {
				check(c, name, text)
			}
		}
	}
	for _, r := range b.Results {
		for _, s := range []string{r.Rule, r.Rounding} {
			if !strings.HasSuffix(s, ".") || s[0] < 'A' || s[0] > 'Z' {
				t.Errorf("%s: not a sentence: %q", r.Key, s)
			}
		}
	}
}

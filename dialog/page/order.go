package page

import (
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// step is one step of the work: its title, and the sentences of it that carry
// this plan's numbers.
type step struct{ Title, Text string }

// caution is one warning about hands, children or the work.
type caution struct{ Title, Text string }

// order is the steps of this plan, first to last.
func order(v answer.Voice, p *engine.Plan) []step {
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return nil
	}
	var steps []step
	for _, c := range stepCards(v, p) {
		var texts []string
		for _, para := range strings.Split(c.Text, "\n\n") {
			if !strings.Contains(para, "{") {
				continue
			}
			if t := v.Fill(para, p); t != "" {
				texts = append(texts, t)
			}
		}
		steps = append(steps, step{c.Fields["title"], strings.Join(texts, "\n\n")})
	}
	return steps
}

func stepCards(v answer.Voice, p *engine.Plan) []rules.Card {
	var cards []rules.Card
	for _, c := range v.Book.Cards("steps") {
		if answer.StepFits(c, p) {
			cards = append(cards, c)
		}
	}
	return cards
}

// pastSmall is the age in months from which the cautions for small children are
// left out: seven years, our own limit, as in the conversation.
const pastSmall = 7 * 12

// cautions are those of the plan's steps, each once, in the order in which the
// work meets them.
func cautions(v answer.Voice, p *engine.Plan) []caution {
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return nil
	}
	var out []caution
	seen := map[string]bool{}
	w, told := engine.ParseWhom(p.In.Text(engine.KeyWearer))
	grown := told && (w.Adult || w.Months >= pastSmall)
	for _, s := range stepCards(v, p) {
		for _, id := range s.List("caution") {
			c, ok := v.Book.Card("cautions", id)
			if !ok || seen[id] || grown && strings.HasSuffix(id, "-children") {
				continue
			}
			seen[id] = true
			out = append(out, caution{c.Fields["title"], v.Fill(c.Text, p)})
		}
	}
	return out
}

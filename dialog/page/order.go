package page

import (
	"slices"
	"strconv"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// step is one step of the work: its title, and the sentences of it that carry
// this plan's numbers. It has a box for each piece that goes through it.
type step struct {
	Title, Text string
	Boxes       []int
}

// caution is one warning about hands, children or the work.
type caution struct{ Title, Text string }

// order is the steps of this plan, first to last.
func order(v answer.Voice, p *engine.Plan) []step {
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return nil
	}
	var steps []step
	pieces := p.OnBed()
	by := pieces[:1] // the pieces that go through a step, one for the whole band
	cutNow := false  // the step before has just cut the tail to length
	for _, c := range stepCards(v, p) {
		if slices.Contains(pieceFirst[:], c.ID) {
			by = pieces
		}
		texts := numbered(c, func(para string) string { return fillPieces(v, para, p, by) })
		if dial := foldDial(p); c.Fields["rows"] == "fold" && dial != "" {
			texts = []string{dial}
		}
		if c.Fields["joins"] != "" {
			texts = []string{capital(answer.Joints(p)) + ". Left and right are as the pieces hang, purl side toward you."}
		}
		if cutNow {
			texts = slices.DeleteFunc(texts, func(s string) bool { return strings.Contains(s, "The tail: ") })
		}
		cutNow = strings.Contains(c.Text, "{off_yarn}")
		steps = append(steps, step{c.Fields["title"], strings.Join(texts, "\n\n"), upTo(len(by))})
		if strings.HasPrefix(c.ID, "sew-off") {
			by = pieces[:1]
		}
	}
	return steps
}

// pieceFirst are the steps with which each piece of a band begins; it ends
// with being sewn off.
var pieceFirst = [...]string{"hang-again", "pick-up-edge", "empty-needles"}

// numbered are the paragraphs of a card that carry numbers, filled.
func numbered(c rules.Card, filled func(string) string) []string {
	var texts []string
	kept := false // what stands under a condition goes with the paragraph before it
	for _, para := range strings.Split(c.Text, "\n\n") {
		if kept = strings.Contains(para, "{") || kept && strings.HasPrefix(para, answer.Condition); !kept {
			continue
		}
		if t := filled(para); t != "" {
			texts = append(texts, t)
		}
	}
	return texts
}

// fillPieces fills a paragraph with the numbers of each piece: once where all
// say the same, and with those of the plan where no piece has its own.
func fillPieces(v answer.Voice, para string, p *engine.Plan, pieces []*engine.Plan) string {
	whole := v.Fill(para, p)
	if len(pieces) == 1 {
		return whole
	}
	var texts []string // each once
	of := map[string][]int{}
	for i, q := range pieces {
		t := v.Fill(para, q)
		if of[t] == nil {
			texts = append(texts, t)
		}
		of[t] = append(of[t], i+1)
	}
	if len(texts) == 1 && texts[0] == whole {
		return whole
	}
	if len(texts) == 1 {
		return "Each piece: " + texts[0]
	}
	for i, t := range texts {
		name := "Piece "
		if len(of[t]) > 1 {
			name = "Pieces "
		}
		texts[i] = name + answer.Counts(of[t]) + ": " + t
	}
	return strings.Join(texts, " ")
}

// foldDial is the setting for the fold row, "" where the dial is not known.
func foldDial(p *engine.Plan) string {
	rows := p.Tension()
	if p.FoldRow == 0 || len(rows) <= p.LayerRows || rows[p.LayerRows].Dial == nil {
		return ""
	}
	return "Row " + strconv.Itoa(p.LayerRows+1) + ", " + words(p, rows[p.LayerRows]) + "."
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

// forSmall are the cautions for a small child, whatever the steps say: they
// come first on its sheets.
var forSmall = [...]string{"baby-neck", "buttons-children", "cords-children"}

// cautions are those of the plan's steps, each once, in the order in which the
// work meets them, after those for the wearer. A chart brings that of floats.
func cautions(v answer.Voice, p *engine.Plan) []caution {
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return nil
	}
	var out []caution
	seen := map[string]bool{}
	w, told := engine.ParseWhom(p.In.Text(engine.KeyWearer))
	grown := told && (w.Adult || w.Months >= pastSmall)
	var ids []string
	if told && !grown {
		ids = append(ids, forSmall[:]...)
	}
	for _, s := range stepCards(v, p) {
		ids = append(ids, s.List("caution")...)
	}
	if p.Chart != nil {
		ids = append(ids, "loose-floats")
	}
	for _, id := range ids {
		c, ok := v.Book.Card("cautions", id)
		if !ok || seen[id] || grown && strings.HasSuffix(id, "-children") {
			continue
		}
		seen[id] = true
		out = append(out, caution{c.Fields["title"], v.Fill(c.Text, p)})
	}
	return out
}

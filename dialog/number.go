package dialog

import (
	"fmt"
	"math"
	"strings"

	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onNumber answers with one number of the plan, or one member of a list.
func (c *turn) onNumber() (State, Reply) {
	p := c.plan()
	switch c.m.Topic {
	case "yarn-count":
		return c.s, c.reply("number", c.yarnCount())
	case "yarn-named":
		return c.yarnNamed(p)
	case "yarn-right":
		return c.yarnRight()
	case "tightness":
		return c.tightness(p)
	case "yarn-after":
		return c.yarnAfter(p)
	case "yarn-allows":
		return c.yarnAllows()
	case "spread", "spread-lost", "spread-band":
		return c.spreadReply()
	case "piece-why", "piece-where", "piece-stitches", "piece-join", "piece-needles":
		return c.pieceReply(p)
	case "fold":
		return c.foldReply(p)
	case "convert":
		return c.converted()
	case "span":
		return c.overSpan(p)
	case "unfolded":
		return c.unfolded(p)
	case "balls":
		return c.balls(p)
	case "fits", "enough":
		return c.suffices()
	case "machine-fit":
		return c.machineFit()
	}
	switch {
	case len(c.m.Sets) > 0:
		return c.withValues()
	case hasKey(c.m.Keys, engine.RestHours) && !p.In.Has(engine.RestHours):
		c.m.Topic, c.m.Keys = "usual", []engine.Key{engine.RestHours}
		return c.onMeasure()
	}
	return c.numbers(p)
}

// numbers says the numbers asked for, one after the other.
func (c *turn) numbers(p *engine.Plan) (State, Reply) {
	if s, ok := c.oneHole(p); ok {
		return c.s, c.reply("number", s)
	}
	var lines []string
	if s := c.frontText(p, c.m.Keys); s != "" {
		lines, c.s.Topic = append(lines, s), c.m.Keys[0]
	}
	for _, k := range headFirst(withCompanions(c.m.Keys, c.partAsked()), p) {
		if len(lines) > 0 && blockOf(k) != "" {
			continue
		}
		if s, ok := c.one(p, k); ok {
			lines = append(lines, s)
			c.s.Topic = k
		}
	}
	if len(lines) == 0 && hasKey(c.m.Keys, engine.HolePositions) {
		if card, ok := c.book.Card("howto", "buttonholes"); ok {
			return c.s, c.reply("howto", c.cardText(card)+"\n\n"+c.frontNotYet(engine.HolePositions))
		}
	}
	if len(lines) == 0 {
		return c.s, c.reply("number", c.notYet(c.m.Keys))
	}
	if hasKey(c.m.Keys, engine.HeadOpening) && p.In.Garment == engine.Cardigan {
		lines = append([]string{c.notYet([]engine.Key{engine.HeadOpening})}, lines...)
	}
	if c.m.Topic == "edges" {
		lines = append(lines, c.edgesText(p))
	}
	if hasKey(c.m.Keys, engine.LoopsToLatch) && hasKey(c.m.Keys, engine.HemCount) {
		// "how long will it take": hands differ, and no published time was found
		lines = append(lines, "For the time, look at the clock while you latch one column and hang ten bumps, and multiply: the columns are most of the work.")
	}
	return c.s, c.reply("number", strings.Join(lines, "\n\n"))
}

// edgesText says by how much the fold is shorter than the seam, both with what
// the front band closes.
func (c *turn) edgesText(p *engine.Plan) string {
	seam, ok1 := p.Float(engine.NeckResult)
	fold, ok2 := p.Float(engine.FoldCircumference)
	switch {
	case !ok1 || !ok2:
		return ""
	case math.Abs(seam-fold) < 0.05:
		return "Closed as worn, the two are equal: this band is not graded."
	case seam < fold:
		return fmt.Sprintf("Closed as worn, the fold is **%s longer** than the seam.", c.voice().Figure(engine.NeckResult, fold-seam))
	}
	return fmt.Sprintf("Closed as worn, the fold is **%s shorter** than the seam.", c.voice().Figure(engine.NeckResult, seam-fold))
}

// one is the sentence for k, or for the part of its list that was asked for.
func (c *turn) one(p *engine.Plan, k engine.Key) (string, bool) {
	if listed := k == engine.LeftNeedle || k == engine.RightNeedle || k == engine.BandShares; listed && p.Pieces > 1 || k == engine.StagePieces && p.Yoke == nil && p.BandStitches > 0 {
		return c.piecesText(p), true
	}
	if s := c.frontInPieces(p, k); s != "" {
		return s, true
	}
	switch k {
	case engine.Tension:
		return c.tensionPart(p)
	case engine.RibColumns:
		return c.needlePart(p, k, p.RibColumns, "latched column")
	case engine.HemNeedles:
		return c.needlePart(p, k, p.HemColumns, "hem needle")
	case engine.Rehang:
		return c.rehangPart(p)
	case engine.FrontRatio:
		return c.frontRatio()
	}
	if k == engine.NeckBody && !p.In.Has(k) {
		k = engine.Neck // "what is my neck", where the opening was given
	}
	all := k == engine.AllYarn || k == engine.AllYarnGrams
	if _, ok := p.Float(k); all && !ok {
		k = map[engine.Key]engine.Key{engine.AllYarn: engine.BandYarn, engine.AllYarnGrams: engine.BandYarnGrams}[k] // there are no front bands
	}
	if k == engine.Slit && !p.In.Has(k) {
		k = engine.SlitLength // "how long must the slit be", where none was said
	}
	if _, ok := p.Float(engine.FrontWidth); k == engine.FrontWidth && !ok {
		k = engine.FrontBand // as it was told, while its rows are not worked out
	}
	if k == engine.FrontBand && p.In.Garment == engine.Pullover && !c.base().Has(k) {
		return "A pullover has no front bands.", true
	}
	v, ok := valueJSON(p, k)
	if !ok {
		return "", false
	}
	c.answer(k, v)
	switch k {
	case engine.ChartCatches:
		return c.voice().Catches(p), true
	case engine.ChartNeedles:
		return c.voice().ChartNeedles(p), true
	case engine.StageRehang:
		return c.voice().Hangings(p), true
	}
	text := fmt.Sprintf("%s: **%s**.", title(c.voice().Label(k)), c.voice().Value(p, k)) + c.estimated(p, k)
	if card, ok := c.book.Result(k); ok {
		text += " " + title(card.Meaning) + "."
	} else if !c.base().Has(k) && (engine.IsNumber(k) || engine.IsText(k)) {
		text += " That is assumed; say another value to change it."
	}
	if own := c.voice().OwnEstimate(p, k); own != "" {
		text += " " + own
	}
	if k == engine.HeadOpening && p.In.Num(engine.Slit).Sign() == 0 && !p.In.Has(engine.Head) {
		text += " " + title(weakerEdge(p)) + " is the weaker edge and decides it."
	}
	switch {
	case k == engine.HeadOpening && p.In.Has(engine.Head):
		text = strings.TrimSpace(c.headWords(p, []engine.Key{engine.Head})) + "\n\n" + text // first what was asked
	case k == engine.HeadOpening:
		text += c.usualHeads(p)
		c.wanted = engine.Head
	}
	if all {
		text += "\n\n" + c.voice().YarnTogether(p) + c.yarnVerdict(p)
	}
	return text, true
}

// estimated is between what k may lie, "" where it is no estimate.
func (c *turn) estimated(p *engine.Plan, k engine.Key) string {
	low, high, ok := p.Spread(k, c.voice().Spans(p))
	if k == engine.BandYarn {
		low, high = p.BandYarnLow, p.BandYarnHigh
	}
	if !ok || high-low <= 1e-9 {
		return ""
	}
	text := ""
	switch from, to := c.voice().Figure(k, low), c.voice().Figure(k, high); {
	case from == to: // the same to the eye
	case k == engine.TotalRows || k == engine.LayerRows || k == engine.LoopsToLatch:
		text += fmt.Sprintf(" The plan fixes it; with other effects of a click it would plan %s to %s.", from, to)
	default:
		text += fmt.Sprintf(" An estimate: %s to %s.", from, to)
	}
	if f, _ := p.Float(k); k == engine.SlitLength && f > 0 && high > 2*f {
		text += " So wide because the rib's draw-in and stretch are guessed." + c.narrower(k)
	}
	return text
}

// title is s with a capital at its start.
func title(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// notYet says what is missing before the number can be known.
func (c *turn) notYet(keys []engine.Key) string {
	if len(keys) > 0 {
		if s := c.aroundNotYet(keys[0]); s != "" {
			return s
		}
		switch k := keys[0]; k {
		case engine.YokeDecreases, engine.Rehang:
			c.wanted = engine.YokeStitches
			return "Tell me how many stitches wait on the waste yarn (\"132 stitches on the yoke\") and I will work it out."
		case engine.BandYarnGrams:
			c.wanted = engine.YarnLength
			return "Tell me the metres in 100 g (\"350 m per 100 g\") and I will give grams."
		case engine.HeadOpening:
			return "A cardigan opens in front, so nothing has to pass the head."
		default:
			if engine.AboutFronts(k) || k == engine.AllYarn || k == engine.AllYarnGrams {
				return c.frontNotYet(k)
			}
			if q := c.open(c.s); listen.OpenOf(k) == q {
				return "That is what I am asking."
			} else if q != "" && q != "keep" {
				return fmt.Sprintf("I cannot say the %s yet: the %s is still open.", c.voice().Label(k), q)
			}
			if card, ok := c.book.Result(k); ok && card.Without != "" {
				return card.Without
			}
			if engine.IsNumber(k) {
				c.wanted = k
			}
			return fmt.Sprintf("The %s is not known. Tell it, for instance \"%s\".", c.voice().Label(k), c.exampleFor(k))
		}
	}
	return "I cannot say that yet."
}

// exampleFor is a line that would set k, or ask for it where it is worked out
// and cannot be set.
func (c *turn) exampleFor(k engine.Key) string {
	card, ok := c.book.Key(k)
	if !ok {
		return "what is the " + c.voice().Label(k)
	}
	if (k == engine.Neck || k == engine.Depth) && listen.OpenOf(k) != c.open(c.s) {
		return card.Label + " " + c.voice().Figure(k, float64(card.Usual[0].Add(card.Usual[1]).Div(engine.Int(2)).Round()))
	}
	return c.exampleOf(card)
}

func hasKey(list []engine.Key, k engine.Key) bool {
	for _, x := range list {
		if x == k {
			return true
		}
	}
	return false
}

// headFirst puts the opening over the head first where a head is known: whether
// it passes is what such a question wants to know.
func headFirst(keys []engine.Key, p *engine.Plan) []engine.Key {
	if !p.In.Has(engine.Head) || !hasKey(keys, engine.HeadOpening) {
		return keys
	}
	return append([]engine.Key{engine.HeadOpening}, engine.WithoutKey(keys, engine.HeadOpening)...)
}

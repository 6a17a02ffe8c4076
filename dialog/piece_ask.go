package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// pieceReply answers what is asked about the pieces of the band: why there are
// several, where one lies on the yoke, its stitches, its needles, the joins.
func (c *turn) pieceReply(p *engine.Plan) (State, Reply) {
	if p.BandStitches == 0 {
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.BandStitches}))
	}
	if w, ok := c.atMachine(); ok && w.amongFronts() && !w.m.Over && c.m.Topic != "piece-join" && len(p.Front.Parts) > 1 {
		c.answersOf(p, engine.FrontShares)
		return c.s, c.reply("number", w.frontNeedlesOf())
	}
	pieces := p.OnBed()
	n := c.m.Count
	if n < 0 {
		n = len(pieces)
	}
	switch {
	case len(pieces) == 1:
		return c.s, c.reply("number", c.onePiece(p))
	case n > len(pieces):
		return c.s, c.reply("number", fmt.Sprintf("The band has %d pieces: %s.", len(pieces), answer.PartsSpan(p.Parts)))
	}
	c.answersOf(p, engine.BandShares)
	if n > 0 {
		pieces = pieces[n-1 : n]
	}
	switch c.m.Topic {
	case "piece-why":
		return c.s, c.reply("why", c.whyPieces(p))
	case "piece-join":
		return c.joinReply(p)
	}
	tell := map[string]func(*engine.Plan) string{"piece-where": pieceBegins, "piece-stitches": pieceStitches, "piece-needles": answer.PieceNeedles}[c.m.Topic]
	var lines []string
	for _, q := range pieces {
		lines = append(lines, fmt.Sprintf("**Piece %d of %d:** %s.", q.Piece.No, q.Piece.Of, tell(q)))
	}
	if _, _, told := p.Waiting(); !told && c.m.Topic == "piece-where" {
		lines = append(lines, fmt.Sprintf("Say how many stitches wait and I tell its place on the yoke: *%d on the yoke*.", p.Knitted()*5/4))
	}
	return c.s, c.reply("number", strings.Join(lines, "\n\n"))
}

// onePiece says that nothing is in pieces; what of the yoke is, is told.
func (c *turn) onePiece(p *engine.Plan) string {
	text := fmt.Sprintf("The band is in one piece: its %d stitches fit %s, so there is nothing to join.", p.BandStitches, c.voice().Value(p, engine.BedNeedles))
	if places := answer.YokePlaces(p); places != "" {
		yoke, _, _ := p.Waiting()
		text += fmt.Sprintf(" Only the %d stitches of the yoke do not: before they are hung again they go onto the bed part by part, counted from the left: %s.", yoke, places)
	}
	if p.Front != nil && len(p.Front.Parts) > 1 {
		text += fmt.Sprintf(" A front band's %d stitches do not fit: its pieces are %s.", p.Front.Stitches, answer.PartsSpan(p.Front.Parts))
	}
	return text
}

// frontInPieces tells the needles of a front band that the bed does not take at
// once, "" where it does or k asks for something else.
func (c *turn) frontInPieces(p *engine.Plan, k engine.Key) string {
	if p.Front == nil || len(p.Front.Parts) < 2 {
		return ""
	}
	span := fmt.Sprintf("%d pieces, from the lower end: %s", len(p.Front.Parts), answer.PartsSpan(p.Front.Parts))
	switch k {
	case engine.FrontLeft, engine.FrontRight, engine.FrontShares, engine.FrontPieces:
		c.answersOf(p, engine.FrontShares, engine.FrontPieces)
		return fmt.Sprintf("A front band's %d stitches hang in **%s**.", p.Front.Stitches, span)
	case engine.FrontColumns:
		c.answersOf(p, k)
		if latch := answer.FrontLatch(p); latch != "" {
			return fmt.Sprintf("%s: **%s**.", title(c.voice().Label(k)), latch)
		}
	}
	return ""
}

// whyPieces gives the reason with the numbers of this plan.
func (c *turn) whyPieces(p *engine.Plan) string {
	text := fmt.Sprintf("A needle holds one stitch of the band, and %d stitches are more than %s. So **%d pieces**, the fewest that fit",
		p.BandStitches, c.voice().Value(p, engine.BedNeedles), len(p.Parts))
	text += ": " + answer.PartsSpan(p.Parts)
	if p.Knitted() > p.BandStitches {
		text += fmt.Sprintf(". The seams take those up, so the finished neck stays %s", c.voice().Value(p, engine.NeckResult))
	}
	text += "."
	if p.BedChoice.Stitches > 0 {
		text += fmt.Sprintf(" In one piece at most %d fit, for a neck of %s.", p.BedChoice.Stitches, c.voice().Len(p.BedChoice.Neck.Float()))
	}
	return text
}

// joinReply tells the joins and how they are sewn, with the caution for it.
func (c *turn) joinReply(p *engine.Plan) (State, Reply) {
	c.answersOf(p, engine.BandJoins)
	text := "**" + strings.Replace(answer.Joints(p), ": ", ":** ", 1) + ". Left and right are as the pieces hang, purl side toward you."
	if card, ok := c.book.Card("howto", "join-pieces"); ok {
		text += "\n\n" + c.cardText(card)
	}
	return c.s, c.reply("howto", text)
}

// pieceBegins is where a piece lies: on the yoke, in the band and on the bed.
func pieceBegins(q *engine.Plan) string {
	if place := answer.PieceYoke(q); place != "" {
		return fmt.Sprintf("it hangs %s as the yoke hangs purl side toward you, on %s", place, answer.PieceEnds(q))
	}
	return fmt.Sprintf("it begins with stitch %d of the band, on %s", q.Piece.First+1, answer.PieceEnds(q))
}

// pieceStitches is how many stitches a piece has, and what they are.
func pieceStitches(q *engine.Plan) string {
	text := fmt.Sprintf("**%d stitches**", q.BandStitches)
	if more := q.Piece.Left + q.Piece.Right; more > 0 {
		text += fmt.Sprintf(", %d of them for the join", more)
		if q.Piece.Left > 0 && q.Piece.Right > 0 {
			text += "s"
		}
	}
	if q.Piece.To > 0 {
		text += fmt.Sprintf("; hung from %d of the yoke, so %s", q.Piece.To-q.Piece.From+1, answer.Count(q.YokeDecreases, "decrease", "decreases"))
	}
	return text
}

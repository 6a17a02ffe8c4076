package dialog

import (
	"errors"
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// usualStages is how many stages are planned where none are said: three
// decreases are the commonest (common practice).
const usualStages = 3

// mostStages is how many stages are planned at most.
const mostStages = 20

// yokeStages plans the stages that the line tells, laid over the yoke asked
// about before.
func (c *turn) yokeStages() (string, []string) {
	said := merged(c.s.Yoke, c.m.Parts.Yoke)
	var notes []string
	if said.Start == 0 {
		var note string
		if said.Start, note = c.yokeStart(said); note != "" {
			notes = append(notes, note)
		}
	}
	if said.Start == 0 {
		return "For the stages I need the stitches of the first one, or of the body below it; three or four stages are usual (common practice). For example: *3 stages 240 to 105, repeats 12 8 6*, or *yoke for a body of 180 stitches*.", nil
	}
	if said.Neck == 0 {
		said.Neck = c.plan().BandStitches
		if said.Neck == 0 {
			c.s.Yoke = said
			return fmt.Sprintf("The yoke begins with %d stitches. How many has the neckband? Answer the five questions first, or say for example *3 stages %d to 105*.", said.Start, said.Start), nil
		}
		notes = append(notes, fmt.Sprintf("taking the neckband's %d stitches as the end", said.Neck))
	}
	if tooMany(said.Start) || said.Start < 2 {
		return fmt.Sprintf("A yoke of that size is beyond what I plan (%d stitches at most). For example: *3 stages 240 to 105*.", mostStitches), nil
	}
	if said.Stages > mostStages {
		return fmt.Sprintf("I plan at most %d stages; three or four are usual (common practice). For example: *3 stages %d to %d*.", mostStages, max(said.Start, said.Neck), min(said.Start, said.Neck)), nil
	}
	y, more := c.yokeSpec(&said)
	notes = append(notes, more...)
	c.s.Yoke = said
	stages, err := engine.Stages(y)
	if err != nil {
		return c.voice().YokeFault(err) + c.nearest(y, err), nil
	}
	counts, lost, pieces := []int{}, []int{}, []int{}
	for i, s := range stages {
		counts = append(counts, s.Count)
		pieces = append(pieces, len(s.Pieces))
		if i > 0 {
			lost = append(lost, s.Decreases)
		}
	}
	c.answer("stage_counts", counts)
	c.answer("stage_decreases", lost)
	c.answer("stage_pieces", pieces)
	text, cautions := c.voice().Stages(y, stages, notes)
	if said.Bust.Sign() > 0 {
		text += "\n\n" + c.depthFor(said.Bust, len(y.Stages))
	}
	return text, cautions
}

// merged is the new question over the yoke asked about before. A question
// with a first stage of its own is a new yoke.
func merged(old, now listen.Yoke) listen.Yoke {
	if now.Start > 0 || now.Body > 0 || now.Bust.Sign() > 0 {
		return now
	}
	if now.Neck > 0 {
		old.Neck = now.Neck
	}
	if now.Stages > 0 {
		old.Stages = now.Stages
	}
	if len(now.Repeats) > 0 {
		old.Repeats = now.Repeats
	}
	if now.Edge > 0 {
		old.Edge = now.Edge
	}
	if now.Method != "" {
		old.Method = now.Method
	} else if now.Stages > 0 {
		old.Method = "" // the sequences have their own number of stages
	}
	old.Heights = now.Heights
	return old
}

// yokeStart is the first stage from the body, or from bust and gauge.
func (c *turn) yokeStart(y listen.Yoke) (int, string) {
	body := y.Body
	how := fmt.Sprintf("body %d", body)
	if g := c.known(engine.StitchGauge); body == 0 && y.Bust.Sign() > 0 && g.Sign() > 0 {
		body = y.Bust.Mul(g).Div(engine.Int(10)).Round()
		how = fmt.Sprintf("bust %s at your gauge, body %d", c.voice().Len(y.Bust.Float()), body)
	}
	if body == 0 || body > mostStitches {
		return 0, ""
	}
	start := engine.YokeBase(body)
	return start, fmt.Sprintf("from %s: body and two sleeves less the underarms make %d by the published percentages", how, start)
}

// yokeSpec is the engine's question, with what was assumed in words.
func (c *turn) yokeSpec(y *listen.Yoke) (engine.YokeSpec, []string) {
	var notes []string
	n := y.Stages
	switch {
	case n > 0:
	case len(y.Repeats) > 1:
		n = min(len(y.Repeats), mostStages)
	case len(y.Heights) > 1:
		n = len(y.Heights)
	case y.Method == engine.SequenceC:
		n = 4
	default:
		n = usualStages
		if y.Method == "" || y.Method == engine.EqualCuts || y.Method == engine.StraightCone {
			notes = append(notes, fmt.Sprintf("taking %d stages, as none were said", n))
		}
	}
	method := y.Method
	switch {
	case method == "":
		method = engine.EqualCuts
	case method == "percent" && n == 4:
		method = engine.SequenceC
	case method == "percent":
		method = engine.SequenceA
	}
	spec := engine.YokeSpec{Start: y.Start, Neck: y.Neck, Method: method, Bed: c.known(engine.BedNeedles).Floor(), Gauge: c.known(engine.StitchGauge)}
	for i := range n {
		s := engine.StageSpec{Edge: y.Edge, Height: engine.Int(1)}
		if len(y.Repeats) > 0 {
			s.Repeat = y.Repeats[min(i, len(y.Repeats)-1)]
		}
		if i < len(y.Heights) {
			s.Height = y.Heights[i]
		}
		spec.Stages = append(spec.Stages, s)
	}
	if method == engine.StraightCone && len(y.Heights) < n {
		notes = append(notes, "taking the stages as equally high, which makes a cone the same as equal cuts; say *heights 8 6 4 cm* for others")
	}
	if k := len(y.Repeats); k > 1 && k < n {
		notes = append(notes, fmt.Sprintf("taking the repeat of %d for the remaining stages too", y.Repeats[k-1]))
	}
	return spec, notes
}

// nearest is a line that works in place of a yoke that does not, found by
// trying; "" where none was found.
func (c *turn) nearest(y engine.YokeSpec, err error) string {
	var cuts *engine.CutsError
	var neck *engine.NeckError
	switch {
	case errors.As(err, &cuts):
		y.Method = engine.EqualCuts
		if len(y.Stages) == 0 {
			return ""
		}
	case errors.As(err, &neck) && y.Neck < y.Start && y.Method != engine.EqualCuts:
		y.Method = engine.EqualCuts
	case errors.As(err, &neck) && neck.Most >= 1:
		y.Neck = min(y.Neck, neck.Most)
	default:
		return ""
	}
	stages, err := engine.Stages(y)
	if err != nil {
		return ""
	}
	return " The nearest that works: " + answer.StageCounts(stages) + " (" + answer.MethodName(y.Method) + ")."
}

// yokeDepth is how deep a yoke is for a bust.
func (c *turn) yokeDepth() string {
	bust := c.m.Parts.Bust
	if bust.Sign() == 0 {
		return "For the depth I need the bust or chest. For example: *how deep is the yoke for a 94 cm bust*."
	}
	if bust.Less(engine.Int(30)) || engine.Int(250).Less(bust) {
		return fmt.Sprintf("A bust of %s is outside what is knitted (30 to 250 cm). For example: *how deep is the yoke for a 94 cm bust*.", c.voice().Len(bust.Float()))
	}
	return c.depthFor(bust, 0)
}

// depthFor is the published depth for a bust, with rows where the gauge is
// known, over so many stages where they are.
func (c *turn) depthFor(bust engine.Num, stages int) string {
	d := engine.YokeDepthFor(bust)
	c.answer("yoke_depth_low", round4(d.Low.Float()))
	c.answer("yoke_depth_high", round4(d.High.Float()))
	c.answer("yoke_depth_rule", round4(d.Rule.Float()))
	text := c.voice().YokeDepth(bust, d)
	g := c.known(engine.RowGauge)
	if g.Sign() <= 0 {
		return text
	}
	rows := func(cm engine.Num) int { return cm.Mul(g).Div(engine.Int(10)).Round() }
	c.answer("yoke_rows_low", rows(d.Low))
	c.answer("yoke_rows_high", rows(d.High))
	text += fmt.Sprintf(" At your row gauge that is %d to %d rows.", rows(d.Low), rows(d.High))
	if stages > 1 {
		mid := d.Low.Add(d.High).Div(engine.Int(2))
		text += fmt.Sprintf(" Shared over %d stages: %s rows.", stages, answer.Counts(engine.StageRows(mid, g, stages)))
	}
	return text
}

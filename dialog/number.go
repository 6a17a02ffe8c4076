package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onNumber answers with one number of the plan, or one member of a list.
func (c *turn) onNumber() (State, Reply) {
	p := c.plan()
	if c.m.Topic == "fits" || c.m.Topic == "enough" {
		return c.suffices()
	}
	if len(c.m.Sets) > 0 {
		return c.withValues()
	}
	var lines []string
	for _, k := range withCompanions(c.m.Keys, c.partAsked()) {
		if s, ok := c.one(p, k); ok {
			lines = append(lines, s)
			c.s.Topic = k
		}
	}
	if len(lines) == 0 {
		return c.s, c.reply("number", c.notYet(c.m.Keys))
	}
	return c.s, c.reply("number", strings.Join(lines, "\n\n"))
}

// partAsked is which part of a list is asked about: "first", "last", "nth",
// "row", or "needle" for one named needle.
func (c *turn) partAsked() string {
	if c.m.Needle != "" {
		return "needle"
	}
	return c.m.Part
}

// withCompanions adds what is asked in the same breath: the ends of a range,
// the other end of the bed, the count of a list.
func withCompanions(keys []engine.Key, part string) []engine.Key {
	out := append([]engine.Key(nil), keys...)
	pair := map[engine.Key]engine.Key{
		engine.BandYarnLow: engine.BandYarnHigh, engine.BandYarnHigh: engine.BandYarnLow,
		engine.RibColumns: engine.ColumnCount, engine.HemNeedles: engine.HemCount, engine.FoldClicks: engine.Tension,
	}
	if part == "needle" {
		return out
	}
	if part == "" {
		pair[engine.LeftNeedle], pair[engine.RightNeedle] = engine.RightNeedle, engine.LeftNeedle
	}
	for _, k := range keys {
		if other, ok := pair[k]; ok && part == "" && !hasKey(out, other) {
			out = append(out, other)
		}
	}
	return out
}

// withValues answers a number with circumstances that came with the question.
func (c *turn) withValues() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	s, r := c.forValues(a)
	r.Kind = "number"
	return s, r
}

// suffices answers whether the bed or the yarn is enough, with what the
// question itself brought.
func (c *turn) suffices() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	p := engine.Solve(c.filled(a.in))
	if c.m.Topic == "fits" {
		return c.fitsBed(p)
	}
	if p.BandYarn == 0 {
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.BandYarn}))
	}
	c.answer(engine.BandYarn, round4(p.BandYarn))
	if p.Yarn == engine.YarnUnknown {
		return c.s, c.reply("number", fmt.Sprintf("The band takes about **%s**. Tell me the metres in 100 g and the grams you have (\"350 m per 100 g, 30 g left\") and I will say whether it lasts.",
			c.voice().Value(p, engine.BandYarn)))
	}
	c.answer(engine.BandYarnGrams, round4(p.BandYarnGrams))
	word := map[engine.YarnState]string{engine.YarnEnough: "Yes, it lasts", engine.YarnTight: "It is tight", engine.YarnShort: "No, it will not last"}[p.Yarn]
	return c.s, c.reply("number", fmt.Sprintf("%s: the band takes about **%s**, and a tenth more should be there; you have %s.",
		word, c.voice().Value(p, engine.BandYarnGrams), c.voice().Value(p, engine.YarnLeft)))
}

// fitsBed says whether the band goes on the bed in one piece.
func (c *turn) fitsBed(p engine.Plan) (State, Reply) {
	if p.BandStitches == 0 {
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.BandStitches}))
	}
	c.answer(engine.BandStitches, p.BandStitches)
	c.answer(engine.BedNeedles, p.In.Int(engine.BedNeedles))
	if p.FitsBed {
		return c.s, c.reply("number", fmt.Sprintf("Yes: **%d stitches** on %d needles, in one piece.", p.BandStitches, p.In.Int(engine.BedNeedles)))
	}
	return c.s, c.reply("number", fmt.Sprintf("No: **%d stitches** want %d pieces on %d needles.", p.BandStitches, p.Pieces, p.In.Int(engine.BedNeedles)))
}

// one is the sentence for k, or for the part of its list that was asked for.
func (c *turn) one(p engine.Plan, k engine.Key) (string, bool) {
	switch k {
	case engine.Tension:
		return c.tensionPart(p)
	case engine.RibColumns:
		return c.needlePart(p, k, p.RibColumns, "latched column")
	case engine.HemNeedles:
		return c.needlePart(p, k, p.HemColumns, "hem needle")
	case engine.Rehang:
		return c.rehangPart(p)
	}
	v, ok := valueJSON(p, k)
	if !ok {
		return "", false
	}
	c.answer(k, v)
	text := fmt.Sprintf("%s: **%s**.", title(c.voice().Label(k)), c.voice().Value(p, k))
	low, high, ok := p.Spread(k, c.voice().Spans(p))
	if k == engine.BandYarn {
		low, high = p.BandYarnLow, p.BandYarnHigh
	}
	if ok && high-low > 1e-9 {
		text += fmt.Sprintf(" An estimate: %s to %s.", c.voice().Figure(k, low), c.voice().Figure(k, high))
	}
	if card, ok := c.book.Result(k); ok {
		text += " " + title(card.Meaning) + "."
	} else if !c.base().Has(k) && engine.IsNumber(k) {
		text += " That is assumed; say another value to change it."
	}
	return text, true
}

// title is s with a capital at its start.
func title(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// tensionPart is the dial on one row, or the whole grading.
func (c *turn) tensionPart(p engine.Plan) (string, bool) {
	rows := p.Tension()
	if len(rows) == 0 {
		return "", false
	}
	pick := -1
	switch {
	case c.m.HasFig && (c.m.Part == "row" || c.m.Part == "nth"):
		pick = c.m.Figure.Floor() - 1
		if pick < 0 || pick >= len(rows) {
			return fmt.Sprintf("The band has rows 1 to %d.", len(rows)), true
		}
	case c.m.Part == "first":
		pick = 0
	case c.m.Part == "last":
		pick = len(rows) - 1
	}
	if pick < 0 {
		c.answer(engine.Tension, rows)
		return "Tension: " + c.voice().Value(p, engine.Tension) + ".", true
	}
	c.answer(engine.Tension, rows[pick:pick+1])
	text := fmt.Sprintf("Row %d: **%s**.", rows[pick].Row, answer.DialAt(rows[pick]))
	if pick+1 < len(rows) && rows[pick+1].Clicks != rows[pick].Clicks {
		text += fmt.Sprintf(" After it: %s.", answer.DialAt(rows[pick+1]))
	}
	return text, true
}

func (c *turn) needlePart(p engine.Plan, k engine.Key, cols []int, what string) (string, bool) {
	if len(cols) == 0 {
		if p.BandStitches == 0 {
			return "", false
		}
		return fmt.Sprintf("There is no %s in this band.", what), true
	}
	pick := -1
	switch {
	case c.m.Part == "first":
		pick = 0
	case c.m.Part == "last":
		pick = len(cols) - 1
	case c.m.Part == "nth" && c.m.HasFig:
		pick = c.m.Figure.Floor() - 1
	}
	if pick >= len(cols) {
		return fmt.Sprintf("There are %d; the last is %s.", len(cols), engine.NeedleName(cols[len(cols)-1], p.BandStitches)), true
	}
	if pick >= 0 {
		name := engine.NeedleName(cols[pick], p.BandStitches)
		c.answer(k, []string{name})
		return fmt.Sprintf("%s **%s** (from the left; needle %d of the band).", title(what), name, cols[pick]+1), true
	}
	if c.m.Needle != "" {
		return c.needleIs(p, k, cols, what)
	}
	v, _ := p.Value(k)
	c.answer(k, v)
	return fmt.Sprintf("%s: **%s**, %d in all.", title(c.voice().Label(k)), answer.NeedleRuns(cols, p.BandStitches), len(cols)), true
}

// needleIs answers "is R12 a hem needle".
func (c *turn) needleIs(p engine.Plan, k engine.Key, cols []int, what string) (string, bool) {
	v, _ := p.Value(k)
	c.answer(k, v)
	at, ok := engine.NeedleColumn(c.m.Needle, p.BandStitches)
	if !ok {
		return fmt.Sprintf("%s is not in work: the band runs from %s to %s.", c.m.Needle,
			engine.NeedleName(0, p.BandStitches), engine.NeedleName(p.BandStitches-1, p.BandStitches)), true
	}
	for _, col := range cols {
		if col == at {
			return fmt.Sprintf("Yes, %s is a %s.", c.m.Needle, what), true
		}
	}
	return fmt.Sprintf("No, %s is not a %s.", c.m.Needle, what), true
}

func (c *turn) rehangPart(p engine.Plan) (string, bool) {
	if !p.In.Has(engine.YokeStitches) || p.BandStitches == 0 {
		return "Tell me how many stitches wait on the waste yarn (\"132 stitches on the yoke\") and I will spread the decreases.", true
	}
	if v, ok := p.Value(engine.Rehang); ok {
		c.answer(engine.Rehang, v)
		return title(answer.RehangWords(p)) + ".", true
	}
	return "", false
}

// notYet says what is missing before the number can be known.
func (c *turn) notYet(keys []engine.Key) string {
	if len(keys) > 0 {
		switch k := keys[0]; k {
		case engine.YokeDecreases, engine.Rehang:
			return "Tell me how many stitches wait on the waste yarn (\"132 stitches on the yoke\") and I will work it out."
		case engine.BandYarnGrams:
			return "Tell me the metres in 100 g (\"350 m per 100 g\") and I will give grams."
		case engine.HeadOpening:
			return "A cardigan opens in front, so nothing has to pass the head."
		default:
			if q := c.open(c.s); q != "" && q != "keep" {
				return fmt.Sprintf("I cannot say the %s yet: the %s is still open.", c.voice().Label(k), q)
			}
			return fmt.Sprintf("The %s is not known. Tell it, for instance \"%s\".", c.voice().Label(k), c.exampleFor(k))
		}
	}
	return "I cannot say that yet."
}

// exampleFor is a line that would set k.
func (c *turn) exampleFor(k engine.Key) string {
	card, ok := c.book.Key(k)
	if !ok {
		return "what is the plan"
	}
	if (k == engine.Neck || k == engine.Depth) && openOf(k) != c.open(c.s) {
		return card.Label + " " + c.voice().Figure(k, float64(card.Usual[0].Add(card.Usual[1]).Div(engine.Int(2)).Round()))
	}
	return card.Example
}

// onBackwards answers a question that brings its own value, which serves this
// answer only.
func (c *turn) onBackwards() (State, Reply) {
	switch c.m.Topic {
	case "deepest":
		return c.deepest()
	case "longest":
		return c.longest()
	case "gauge":
		return c.gaugeSpan()
	}
	var plain []listen.Set
	stitches := 0
	for _, s := range c.m.Sets {
		if s.Key == engine.BandStitches {
			stitches = s.Value.Floor()
			continue
		}
		plain = append(plain, s)
	}
	a := c.apply(c.base(), plain)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	if stitches > 0 {
		if next, r, ok := c.fromStitches(a.in, stitches); ok {
			return next, r
		}
	}
	return c.forValues(a)
}

// fromStitches: the neck, or the gauge, that so many stitches give.
func (c *turn) fromStitches(in engine.Inputs, n int) (State, Reply, bool) {
	full := c.filled(in)
	down, up, closes := engine.Closing(full, n)
	note := ""
	if !closes && full.Rib.IsSet() {
		note = fmt.Sprintf(" %d does not close a %s rib; %d and %d do.", n, full.Rib, down, up)
	}
	if hasKey(c.m.Keys, engine.StitchGauge) {
		g, ok := engine.GaugeFor(full, n)
		if !ok {
			return c.s, Reply{}, false
		}
		c.answer(engine.StitchGauge, round4(g.Float()))
		return c.s, c.reply("backwards", fmt.Sprintf("%d stitches make your neck at **%s**.%s", n, c.voice().Figure(engine.StitchGauge, g.Float()), note)), true
	}
	neck, ok := engine.NeckOf(full, n)
	if !ok {
		return c.s, Reply{}, false
	}
	c.answer(engine.NeckResult, round4(neck.Float()))
	return c.s, c.reply("backwards", fmt.Sprintf("%d stitches give a neck of **%s**.%s", n, c.voice().Both(neck.Float()), note)), true
}

// forValues answers the asked keys from a plan with the values put in.
func (c *turn) forValues(a applied) (State, Reply) {
	p := engine.Solve(c.filled(a.in))
	var lines []string
	for _, k := range c.m.Keys {
		if hasKey(a.keys, k) {
			continue
		}
		if r := resultOf(k); r != "" {
			k = r
		}
		v, ok := valueJSON(p, k)
		if !ok {
			continue
		}
		c.answer(k, v)
		lines = append(lines, fmt.Sprintf("%s: **%s**.", title(c.voice().Label(k)), c.voice().Value(p, k)))
	}
	if len(lines) == 0 {
		for _, k := range []engine.Key{engine.BandStitches, engine.NeckResult, engine.DepthResult} {
			if v, ok := valueJSON(p, k); ok {
				c.answer(k, v)
			}
		}
		lines = append(lines, title(c.voice().Short(p))+".")
	}
	var told []string
	for _, k := range a.keys {
		told = append(told, c.voice().Label(k)+" "+c.voice().Value(p, k))
	}
	text := "With " + strings.Join(told, ", ") + ": " + strings.Join(lines, " ")
	text += c.headWords(p, a.keys)
	if c.open(c.s) == "" {
		text += "\n\nThe plan is not changed; say *" + strings.Join(told, ", ") + "* to set it."
	}
	return c.s, c.reply("backwards", text)
}

// headWords says whether the opening passes the head that was asked about.
func (c *turn) headWords(p engine.Plan, keys []engine.Key) string {
	if !hasKey(keys, engine.Head) {
		return ""
	}
	passes, ok := p.HeadPasses()
	switch {
	case !ok:
		return " A cardigan opens in front, so nothing has to pass the head."
	case passes:
		return " It passes."
	}
	need, _ := p.HeadNeeds()
	return fmt.Sprintf(" It does not pass: %s is wanted.", c.voice().Len(need.Float()))
}

// resultOf is the result that answers a question about an input.
func resultOf(k engine.Key) engine.Key {
	switch k {
	case engine.Neck, engine.NeckBody:
		return engine.NeckResult
	case engine.Depth:
		return engine.DepthResult
	case engine.DepthRows:
		return engine.LayerRows
	case engine.Head:
		return engine.HeadOpening
	}
	return ""
}

func hasKey(list []engine.Key, k engine.Key) bool {
	for _, x := range list {
		if x == k {
			return true
		}
	}
	return false
}

// deepest: the deepest band that the yarn left allows.
func (c *turn) deepest() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	in := c.filled(a.in)
	if !in.Has(engine.YarnLength) || !in.Has(engine.YarnLeft) {
		return c.s, c.reply("backwards", "For that I need the yarn: how many metres in 100 g, and how many grams are left. For example: *deepest band from 25 g at 350 m per 100 g*.")
	}
	p, ok := engine.DeepestBand(in, in.Num(engine.YarnLeft))
	if !ok {
		return c.s, c.reply("backwards", "That yarn is not enough for even three rows a layer, with a tenth to spare.")
	}
	for _, k := range []engine.Key{engine.DepthResult, engine.LayerRows} {
		v, _ := valueJSON(p, k)
		c.answer(k, v)
	}
	return c.s, c.reply("backwards", fmt.Sprintf("From %s: at most **%s a layer, %s deep**, counted at the high end of the estimate and with a tenth to spare.",
		c.voice().Value(p, engine.YarnLeft), answer.Count(p.LayerRows, "row", "rows"), c.voice().Len(p.DepthResult.Float())))
}

// longest: the longest neck that the bed takes in one piece.
func (c *turn) longest() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	p, ok := engine.LongestNeck(c.filled(a.in))
	if !ok {
		return c.s, c.reply("backwards", c.notYet([]engine.Key{engine.NeckResult}))
	}
	for _, k := range []engine.Key{engine.NeckResult, engine.BandStitches} {
		v, _ := valueJSON(p, k)
		c.answer(k, v)
	}
	return c.s, c.reply("backwards", fmt.Sprintf("Your %s hold at most **%d stitches, a neck of %s**.",
		c.voice().Value(p, engine.BedNeedles), p.BandStitches, c.voice().Both(p.NeckResult.Float())))
}

// gaugeSpan: the loosest and tightest gauge for which the count still holds.
func (c *turn) gaugeSpan() (State, Reply) {
	in := c.filled(c.base())
	low, high, ok := engine.GaugeSpan(in)
	if !ok {
		return c.s, c.reply("backwards", c.notYet([]engine.Key{engine.BandStitches}))
	}
	p := engine.Solve(in)
	c.answer(engine.StitchGauge, []float64{round4(low.Float()), round4(high.Float())})
	return c.s, c.reply("backwards", fmt.Sprintf("%d stitches stay right from **%s** to just under **%s**.", p.BandStitches,
		c.voice().Figure(engine.StitchGauge, low.Float()), c.voice().Figure(engine.StitchGauge, high.Float())))
}

package listen

import (
	"strconv"
	"strings"

	"foldrow/engine"
)

// yoke reads a line about the yoke above the band or its colour chart: what it
// says becomes sets of their keys, and the form of the line tells whether they
// are said, supposed, compared or serve a question only.
func (r *reading) yoke() (Meaning, bool) {
	cue, ok := r.cues[Parts]
	topic := cue.topic
	switch topic {
	case "stages", "yoke-depth", "chart", "float-limit", "had", "fewest", "first", "repeats-fit":
	default:
		ok = false
	}
	if !ok && r.sequenceTold() {
		topic, ok = "stages", true
	}
	if !ok && r.ofChartRow() {
		topic, ok = "chart", true
	}
	chart, drawn := r.chartSets()
	if !ok && !drawn || r.cue(Why) || r.ctx.Making && r.cue(Step) && !r.asks() && !drawn {
		return Meaning{}, false
	}
	switch {
	case topic == "float-limit" && (r.says("catch") && len(r.l.quantities()) == 0 || r.howBeatsFloat()):
		return Meaning{}, false
	case topic == "float-limit" && r.floatJudged() > 0:
		return Meaning{Kind: Parts, Topic: topic, Count: r.floatJudged()}, true
	case topic == "repeats-fit":
		m := Meaning{Kind: Parts, Topic: topic}
		if qs := r.l.quantities(); len(qs) == 1 {
			m.Count = r.whole(qs[0])
		}
		return m, true
	case topic == "fewest" || topic == "first":
		return r.yokeBackwards(topic), true
	}
	sets, choices := chart, [][]Set(nil)
	switch {
	case drawn, topic == "chart":
	case topic == "float-limit":
		sets = r.chartNumbers(false)
	default:
		sets, choices = r.yokeSets(topic)
	}
	m := r.partMeaning(topic, sets, choices)
	if len(sets) == 0 && !r.asks() && m.Count+m.Move.Row == 0 && len(r.l.quantities()) > 0 && r.b.problem.Code == "" {
		return Meaning{}, false // a number that says nothing of the yoke
	}
	return m, true
}

// partMeaning is what a line of a part means, by its form.
func (r *reading) partMeaning(topic string, sets []Set, choices [][]Set) Meaning {
	m := Meaning{Topic: topic, Sets: sets, Choices: choices, Count: r.stageNamed(), Part: r.lookedAt(), Move: Move{Row: r.rowNamed()}}
	supposed := r.cue(WhatIf) && (r.l.has("if", "suppos", "about") || r.ctx.Open == "keep")
	switch {
	case len(choices) > 1 && (r.cue(Compare) || r.asks() || supposed || r.l.has("or", "vs", "versus")):
		m.Kind, m.Sets = Compare, nil
	case len(sets) == 0:
		m.Kind = Parts
	case supposed:
		m.Kind = WhatIf
	case r.asks():
		m.Kind = Parts
	default:
		m.Kind = Values
	}
	return m
}

// yokeSets is what the line sets of the yoke, and the numbers of stages beside
// each other where there are several.
func (r *reading) yokeSets(topic string) (sets []Set, choices [][]Set) {
	num := func(k engine.Key, n int) {
		if n > 0 {
			sets = append(sets, Set{Key: k, Value: engine.Int(int64(n)), Near: 1})
		}
	}
	text := func(k engine.Key, s string) {
		if s != "" {
			sets = append(sets, Set{Key: k, Text: s, Near: 1})
		}
	}
	if topic == "had" {
		text(engine.StageHad, r.hadOnStage())
		return sets, nil
	}
	y := r.yokeSaid()
	num(engine.YokeFirst, y.start)
	num(engine.BodyStitches, y.body)
	if y.bust.Sign() > 0 {
		sets = append(sets, Set{Key: engine.Bust, Value: y.bust, Unit: y.bustUnit, Bare: y.bustUnit == "", Near: 1})
	}
	if y.depth.Sign() > 0 {
		sets = append(sets, Set{Key: engine.YokeDepthWanted, Value: y.depth, Near: 1})
	}
	num(engine.YokeRows, y.rows)
	num(engine.YokeNeck, y.neck)
	num(engine.YokeStitches, y.waiting)
	if len(y.stages) > 0 {
		num(engine.YokeStages, y.stages[0])
	}
	num(engine.StageEdge, y.edge)
	text(engine.KeyYokeMethod, y.method)
	text(engine.StageRepeats, y.repeats)
	text(engine.StageHeights, y.heights)
	if len(y.stages) > 1 {
		for _, n := range y.stages {
			choices = append(choices, []Set{{Key: engine.YokeStages, Value: engine.Int(int64(n)), Near: 1}})
		}
	}
	return sets, choices
}

// hadOnStage is "2=131" of "I have 131 on stage 2"; "" where it is not said.
func (r *reading) hadOnStage() string {
	stage, count := 0, 0
	for _, i := range r.l.quantities() {
		n := r.whole(i)
		switch {
		case n == 0:
		case oneOf(r.near(i, -1), []string{"stage"}) || r.l.tokens[i].q.Ordinal && oneOf(r.near(i, 1), []string{"stage"}):
			stage = n
		default:
			count = n
		}
	}
	if stage == 0 || count == 0 {
		return ""
	}
	return strconv.Itoa(stage) + "=" + strconv.Itoa(count)
}

// yokeBackwards: "how many stages so that no cut is over a third", "what first
// stage gives 132 at stage 3".
func (r *reading) yokeBackwards(topic string) Meaning {
	m := Meaning{Kind: Backwards, Topic: topic}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		switch {
		case oneOf(r.near(i, -1), []string{"stage"}):
			m.Count = r.whole(i)
		case oneOf(r.near(i, 1), []string{"stage"}) && topic == "first" && r.whole(i) > 0:
			m.Sets = append(m.Sets, Set{Key: engine.YokeStages, Value: q.Value, Near: 1})
		case q.Unit == "%":
			m.Figure, m.HasFig = q.Value.Div(engine.Int(100)), true
		case q.Value.Sign() > 0:
			m.Figure, m.HasFig = q.Value, true
		}
	}
	if !m.HasFig && strings.Contains(r.l.text, "third") || strings.Contains(r.l.text, "one in three") || strings.Contains(r.l.text, "1 in 3") {
		m.Figure, m.HasFig = engine.Frac(1, 3), true
	}
	return m
}

// sequenceTold: the shares of a published sequence are told one after the
// other: "a quarter, a third, two fifths".
func (r *reading) sequenceTold() bool {
	if r.ctx.Open != "" && r.ctx.Open != "keep" || r.says("dial", "click", "number", "gauge", "neck", "depth") {
		return false
	}
	shares := 0
	for _, w := range strings.FieldsFunc(r.l.text, func(c rune) bool { return strings.ContainsRune(" ,;.-", c) }) {
		switch w {
		case "third", "thirds", "quarter", "quarters", "fifth", "fifths", "1/3", "1/4", "1/5", "2/5":
			shares++
		}
	}
	return shares >= 3
}

// method is the way of cutting that the words tell, "" where none.
func (r *reading) method(stages int) string {
	t := " " + r.l.text + " "
	hasAny := func(ws ...string) bool {
		for _, w := range ws {
			if strings.Contains(t, w) {
				return true
			}
		}
		return false
	}
	m := engine.YokeMethod("")
	switch {
	case hasAny(" cone"):
		m = engine.StraightCone
	case hasAny("equal cut", "equal step", "equal decrease", "evenly", " same cut", "same number"):
		m = engine.EqualCuts
	case hasAny("sequence b ", "method b ", "percentages b ", "percentage b ", "2/5", "two fifth", "two-fifth"):
		m = engine.SequenceB
	case hasAny("sequence c ", "method c ", "percentages c ", "percentage c ", "1/5", "fifth", "four decrease", "four-decrease"):
		m = engine.SequenceC
	case hasAny("sequence a ", "method a ", "percentages a ", "percentage a ", "1/3", "a third", "one third", "thirds"):
		m = engine.SequenceA
	case hasAny("percent") && stages == 4:
		m = engine.SequenceC
	case hasAny("percent"):
		m = engine.SequenceA
	}
	return string(m)
}

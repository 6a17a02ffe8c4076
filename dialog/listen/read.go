package listen

import (
	"strings"

	"foldrow/engine"
)

// Read gives the meaning of one line as typed. It never fails: a line without
// a meaning has kind Unclear or Outside and sets nothing.
func (x *Lexicon) Read(text string, ctx Context) Meaning {
	clean, cut := Clean(text)
	if strings.TrimSpace(clean) == "" {
		return Meaning{Kind: Nothing}
	}
	if cut {
		return Meaning{Kind: Unclear, Problem: Problem{Code: "long", Count: len(text)}}
	}
	l := newLine(clean)
	if len(l.tokens) == 0 {
		return x.marks(clean, ctx)
	}
	fixed := x.respell(l)
	if fixed != nil {
		if m := x.read(fixed, ctx); m.Kind != Unclear && m.Kind != Outside {
			m.Fixes = fixed.fixes
			return m
		}
	}
	return x.read(l, ctx)
}

// marks reads a line of nothing but signs: "?" asks for help with the open
// question.
func (x *Lexicon) marks(clean string, ctx Context) Meaning {
	if strings.Trim(clean, "? ") == "" {
		if ctx.Open != "" && ctx.Open != "keep" {
			return Meaning{Kind: Measure, Topic: "how"}
		}
		return Meaning{Kind: Help}
	}
	return Meaning{Kind: Unclear, Problem: Problem{Code: "no-words"}}
}

// mostFixes is how many words of a line may be misspelt; a line with more is
// not about the craft.
const mostFixes = 4

// respell is the line with its unknown words corrected, nil where there is
// nothing to correct.
func (x *Lexicon) respell(l *Line) *Line {
	text := l.text
	var fixes []Fix
	for i := len(l.tokens) - 1; i >= 0 && len(fixes) <= mostFixes; i-- {
		t := l.tokens[i]
		if t.q != nil || t.needle != "" || i+1 < len(l.tokens) && l.tokens[i+1].start == t.start {
			continue
		}
		if to, ok := x.slips[t.text]; ok {
			text = text[:t.start] + to + text[t.end:]
			fixes = append(fixes, Fix{t.text, to})
			continue
		}
		if x.whole[t.text] || x.known[t.stem] && t.stem != t.text {
			continue
		}
		if to, ok := x.spell().correct(t.text); ok {
			text = text[:t.start] + to + text[t.end:]
			fixes = append(fixes, Fix{t.text, to})
		}
	}
	if len(fixes) == 0 || len(fixes) > mostFixes {
		return nil
	}
	n := newLine(text)
	n.question = l.question
	for i, j := 0, len(fixes)-1; i < j; i, j = i+1, j-1 {
		fixes[i], fixes[j] = fixes[j], fixes[i]
	}
	n.fixes = fixes
	return n
}

// reading is one line being decided.
type reading struct {
	x    *Lexicon
	l    *Line
	ctx  Context
	cues map[Kind]cueHit
	b    *binder
}

type cueHit struct {
	hit
	topic, card string
}

// read decides what kind of line l is: the readers are asked in turn, and the
// first that knows the line gives its meaning. Their order is the order of
// precedence.
func (x *Lexicon) read(l *Line, ctx Context) Meaning {
	x.mark(l)
	r := &reading{x: x, l: l, ctx: ctx, cues: x.findCues(l, ctx)}
	r.b = x.bind(l, ctx, r.asks() || r.cue(WhatIf) || r.cue(Compare) || r.cue(Shake) || ctx.Open == "keep")
	for _, reader := range []func() (Meaning, bool){
		r.theDefault, r.beyond, r.keepOrDrop, r.openChoice, r.undo, r.notebook, r.revise, r.calibrate, r.measure, r.shake, r.compare,
		r.refused, r.troubleFirst, r.why, r.place, r.passes, r.whatIf, r.show, r.fits, r.backwards, r.number, r.helpFirst, r.howTo, r.step,
		r.trouble, r.values, r.help, r.outside,
	} {
		if m, ok := reader(); ok {
			return m
		}
	}
	return r.unclear()
}

// findCues is the wordiest phrasing of each kind that the line holds.
func (x *Lexicon) findCues(l *Line, ctx Context) map[Kind]cueHit {
	found := map[Kind]cueHit{}
	try := func(n int) {
		c := x.cues[n]
		if c.topic == "only-open" && ctx.Open != "keep" && !ctx.Confirm {
			return
		}
		h, ok := c.match(l)
		if !ok {
			return
		}
		if old, have := found[c.kind]; !have || h.weight > old.weight {
			found[c.kind] = cueHit{hit: h, topic: c.topic, card: c.card}
		}
	}
	seen := map[string]bool{}
	for _, t := range l.tokens {
		st := t.stem
		if st == "" || seen[st] {
			continue
		}
		seen[st] = true
		for _, n := range x.byFirst[st] {
			try(n)
		}
	}
	for _, n := range x.anyCue {
		try(n)
	}
	return found
}

func (r *reading) cue(k Kind) bool { _, ok := r.cues[k]; return ok }

// asks reports whether the line has the form of a question.
func (r *reading) asks() bool {
	if r.l.question {
		return true
	}
	if r.l.begin >= len(r.l.tokens) {
		return false
	}
	i := r.l.begin
	for i < len(r.l.tokens) && (r.l.tokens[i].text == "and" || r.l.tokens[i].text == "ok" || r.l.tokens[i].text == "but") {
		i++
	}
	if i >= len(r.l.tokens) {
		return false
	}
	if t := r.l.tokens[i].text; (t == "do" || t == "does" || t == "have" || t == "did") && i+1 < len(r.l.tokens) {
		switch r.l.tokens[i+1].text {
		case "i", "you", "we", "they", "it", "this", "people", "most":
			return true
		}
		return t == "does"
	}
	switch r.l.tokens[i].text {
	case "what", "which", "how", "where", "when", "why", "who", "is", "are", "can", "could", "would", "should", "will", "must", "may", "am", "whose", "goes":
		return true
	}
	return strings.HasPrefix(r.l.text, "tell me") || strings.HasPrefix(r.l.text, "give me") || strings.HasPrefix(r.l.text, "show me")
}

func (r *reading) keepOrDrop() (Meaning, bool) {
	if len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	drop, dropped := r.cues[Drop]
	keep, kept := r.cues[Keep]
	switch {
	case dropped && (!kept || drop.weight >= keep.weight) && (r.ctx.Open == "keep" || r.l.words() <= 5 && !r.asks()):
		if r.ctx.Open != "keep" && r.cue(Trouble) {
			return Meaning{}, false
		}
		return Meaning{Kind: Drop}, true
	case kept && (r.ctx.Open == "keep" || r.l.words() <= 4):
		return Meaning{Kind: Keep}, true
	}
	return Meaning{}, false
}

// openChoice takes a word that answers the open question before anything
// else can claim it ("open at the front").
func (r *reading) openChoice() (Meaning, bool) {
	if r.ctx.Open != "garment" || r.asks() || r.cue(WhatIf) {
		return Meaning{}, false
	}
	for _, s := range r.b.sets {
		if s.Key == engine.KeyGarment && r.b.problem.Code == "" {
			return r.setsMeaning(Values), true
		}
	}
	return Meaning{}, false
}

func (r *reading) undo() (Meaning, bool) {
	if c, ok := r.cues[Undo]; ok && (!r.b.sure() || r.l.tokens[c.from].stem == "undo") {
		m := Meaning{Kind: Undo, Count: 1}
		for _, i := range r.l.quantities() {
			if q := r.l.tokens[i].q; q.Unit == "" && q.Value.IsInt() && q.Value.Sign() > 0 {
				m.Count = q.Value.Floor()
			}
		}
		if r.l.has("twice") {
			m.Count = 2
		}
		return m, true
	}
	return Meaning{}, false
}

func (r *reading) notebook() (Meaning, bool) {
	c, ok := r.cues[Notebook]
	named := c.topic == "open" || c.topic == "save" || c.topic == "rename" || c.topic == "copy" || c.topic == "delete"
	if !ok || len(r.b.sets) > 0 && !named || c.topic == "list" && r.namesResult() {
		return Meaning{}, false
	}
	if c.topic == "open" && len(r.b.sets) > 0 && (r.ctx.Open == "garment" || r.b.sure() && !r.l.has("project", "notebook", "call", "name", "new")) {
		return Meaning{}, false
	}
	if s, ok := r.cues[Show]; ok && s.weight >= c.weight {
		return Meaning{}, false
	}
	m := Meaning{Kind: Notebook, Topic: c.topic}
	m.Name, m.Name2 = r.projectNames(c)
	return m, true
}

// projectNames takes the words after the order as a name; "a to b" as two.
func (r *reading) projectNames(c cueHit) (string, string) {
	switch c.topic {
	case "open", "rename", "copy", "delete", "save":
	default:
		return "", ""
	}
	var words []string
	second := -1
	for i := c.from + 1; i < r.l.end; i++ {
		t := r.l.tokens[i]
		if i < c.to || len(words) == 0 {
			switch t.text {
			case "the", "my", "a", "new", "project", "notebook", "called", "named", "name", "it", "this", "that", "to", "as", "with", "on", "plan", "start", "begin", "for", "under", "one":
				continue
			}
		}
		if (t.text == "to" || t.text == "as") && len(words) > 0 && second < 0 {
			second = len(words)
			continue
		}
		words = append(words, r.l.text[t.start:t.end])
	}
	if second >= 0 {
		return strings.Join(words[:second], " "), strings.Join(words[second:], " ")
	}
	return strings.Join(words, " "), ""
}

func (r *reading) namesResult() bool {
	for _, m := range r.l.mentions {
		if m.result {
			return true
		}
	}
	return false
}

// refused: a number that cannot be taken where it was named or asked for.
func (r *reading) refused() (Meaning, bool) {
	p := r.b.problem
	if p.Code == "" || p.Key == "" || r.cue(Why) || p.Code == "two-values" && (r.cue(Compare) || r.asks()) {
		return Meaning{}, false
	}
	return r.unclear(), true
}

// helpFirst takes the wordier ways to ask for help before a card can.
func (r *reading) helpFirst() (Meaning, bool) {
	if r.cues[Help].weight < 4 {
		return Meaning{}, false
	}
	return Meaning{Kind: Help}, true
}

func (r *reading) help() (Meaning, bool) {
	if r.cue(Help) {
		return Meaning{Kind: Help}, true
	}
	return Meaning{}, false
}

// theDefault: "the usual" takes the shown default, as Enter alone does.
func (r *reading) theDefault() (Meaning, bool) {
	if !r.cue("default") || r.ctx.Open == "" || r.ctx.Open == "keep" || len(r.b.sets) > 0 || r.l.question {
		return Meaning{}, false
	}
	return Meaning{Kind: Nothing, Topic: "default"}, true
}

// beyond: a subject named that is plainly not ours, before its words can be
// taken for something else ("a good film to watch while I knit").
func (r *reading) beyond() (Meaning, bool) {
	named := len(r.inputs()) > 0 || len(r.results()) > 0
	if !r.cue(Outside) || r.b.sure() || named && r.cues[Outside].weight < 2 || r.ctx.Open == "keep" && r.l.words() <= 2 {
		return Meaning{}, false
	}
	h, _ := r.x.howto.best(r.l)
	t, _ := r.x.trouble.best(r.l)
	if h.cover >= 0.7 && h.mass > 2.5 || t.cover >= 0.7 && t.mass > 2.5 || !r.asks() && r.l.words() < 2 {
		return Meaning{}, false
	}
	return Meaning{Kind: Outside}, true
}

// outside: a subject that is not ours, or a question with no word of the
// craft in it.
func (r *reading) outside() (Meaning, bool) {
	craft := 0
	words := 0
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q == nil && r.x.craft[t.stem] && !slight(t.stem) {
			craft++
		}
		if t.q == nil {
			words++
		}
	}
	if r.cue(Outside) && craft <= words/2 && words > 1 || r.asks() && words >= 3 && craft == 0 && !r.pronounOnly() {
		return Meaning{Kind: Outside}, true
	}
	return Meaning{}, false
}

// pronounOnly: "can it be a bit different" is about the plan, only not clear.
func (r *reading) pronounOnly() bool {
	return r.l.has("it", "this", "that", "them", "one", "bit", "same", "other", "thing") && !r.cue(Outside)
}

func (r *reading) unclear() Meaning {
	m := Meaning{Kind: Unclear, Problem: r.b.problem}
	if m.Problem.Code == "" {
		m.Problem.Code = "not-understood"
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if m.Problem.Code == "not-understood" && (q.Range || q.Problem != "") {
			m.Problem = Problem{Code: q.Problem, Low: q.Value, High: q.High, Unit: q.Unit}
			if q.Range {
				m.Problem.Code = "range"
			}
		}
		m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		m.Problem.Read = strings.TrimSpace(r.l.text[q.Start:q.End])
	}
	for _, n := range r.l.mentions {
		if n.key != "" {
			m.Keys = append(m.Keys, n.key)
		}
	}
	return m
}

// setsMeaning is a meaning with what the line sets, Unclear where that is
// doubtful.
func (r *reading) setsMeaning(k Kind) Meaning {
	if r.b.problem.Code != "" {
		return r.unclear()
	}
	m := Meaning{Kind: k, Sets: dedupe(r.b.sets)}
	for _, s := range m.Sets {
		if s.Hedged {
			m.Notes = append(m.Notes, "hedged")
			break
		}
	}
	return m
}

func dedupe(in []Set) []Set {
	var out []Set
	for _, s := range in {
		dup := false
		for _, o := range out {
			dup = dup || o.Key == s.Key && same(o, s)
		}
		if !dup {
			out = append(out, s)
		}
	}
	return out
}

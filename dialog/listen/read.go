package listen

import "strings"

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
	if m, ok := x.byLabel(clean, ctx); ok {
		return m
	}
	clean = signs(clean)
	if rest, unit, ok := inUnit(clean); ok {
		if m := x.readLine(rest, ctx); len(m.Sets) == 0 && (m.Kind == Number || m.Kind == Backwards || m.Kind == Shake) || m.Kind == Backwards {
			m.In = unit
			return m
		}
	}
	clean = ribSigns(clean, ctx.Open == "rib")
	if apart := x.unglue(clean); apart != clean {
		if m := x.readLine(apart, ctx); m.Kind != Unclear && m.Kind != Outside && m.Kind != Notebook {
			return m
		}
	}
	return x.alike(x.readLine(clean, ctx), clean, ctx)
}

// readLine reads a clean line, with its slips of spelling mended where it then
// means something.
func (x *Lexicon) readLine(clean string, ctx Context) Meaning {
	if ctx.Holes {
		clean = buttonholes(clean)
	}
	l := x.line(clean)
	if len(l.tokens) == 0 {
		return x.marks(clean, ctx)
	}
	fixed := x.respell(l)
	if fixed != nil {
		if m := x.read(fixed, ctx); m.Kind == Notebook {
			if own := x.read(l, ctx); own.Kind == Notebook {
				return own // a project may be called what it likes
			}
			if first := x.respellFirst(l, l.begin+1); first != nil && m.Name != "" {
				if own := x.read(first, ctx); own.Kind == Notebook {
					own.Fixes = first.fixes
					return own // "sve as blue": only the order is mended
				}
			}
			m.Fixes = fixed.fixes
			return m
		} else if m.Kind != Unclear && m.Kind != Outside {
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
		if ctx.Making && ctx.Open == "" {
			return Meaning{Kind: Step, Move: Move{What: "where"}}
		}
		if ctx.Open != "" && ctx.Open != "keep" {
			return Meaning{Kind: Measure, Topic: "how"}
		}
		return Meaning{Kind: Help}
	}
	return Meaning{Kind: Unclear, Problem: Problem{Code: "no-words"}}
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
	r.b = x.bind(l, ctx, r.asks() || r.nounFor() || r.cue(WhatIf) || r.cue(Compare) || r.cue(Shake) || ctx.Open == "keep")
	for _, reader := range [...]func(*reading) (Meaning, bool){
		(*reading).amount,
		(*reading).decidedAnd,
		(*reading).chat,
		(*reading).term,
		(*reading).tale,
		(*reading).vague,
		(*reading).safety,
		(*reading).theDefault,
		(*reading).machineFit,
		(*reading).whyChoice,
		(*reading).babyOpening,
		(*reading).compareChoices,
		(*reading).compareThreads,
		(*reading).askedChoice,
		(*reading).kindsAsked,
		(*reading).beyond,
		(*reading).keepOrDrop,
		(*reading).openChoice,
		(*reading).openAnswer,
		(*reading).lastRowOut,
		(*reading).undo,
		(*reading).notebook,
		(*reading).noNumber,
		(*reading).toldByMe,
		(*reading).revise,
		(*reading).spreadAsked,
		(*reading).rowAsked,
		(*reading).loneButtons,
		(*reading).tableNeck,
		(*reading).yoke,
		(*reading).yarnCount,
		(*reading).yarnAsked,
		(*reading).bodyOf,
		(*reading).weakerEdge,
		(*reading).tightnessMeans,
		(*reading).stepsChange,
		(*reading).estimates,
		(*reading).whichFirst,
		(*reading).largestButton,
		(*reading).overlapAsked,
		(*reading).fronts,
		(*reading).atMachine,
		(*reading).calibrate,
		(*reading).gaugeFor,
		(*reading).sureSentence,
		(*reading).bestRib,
		(*reading).judged,
		(*reading).stillSo,
		(*reading).aboutThat,
		(*reading).order,
		(*reading).meaningOf,
		(*reading).measure,
		(*reading).shake,
		(*reading).compare,
		(*reading).refused,
		(*reading).ribFor,
		(*reading).countDoubted,
		(*reading).asked,
		(*reading).ifMishap,
		(*reading).edges,
		(*reading).surelyHow,
		(*reading).plainNumber,
		(*reading).foreseen,
		(*reading).troubleFirst,
		(*reading).why,
		(*reading).place,
		(*reading).smallestNeck,
		(*reading).passes,
		(*reading).passesWearer,
		(*reading).mayHow,
		(*reading).served,
		(*reading).whatIf,
		(*reading).show,
		(*reading).fits,
		(*reading).backwards,
		(*reading).number,
		(*reading).howTo,
		(*reading).step,
		(*reading).trouble,
		(*reading).guarded,
		(*reading).atPast,
		(*reading).countSaid,
		(*reading).values,
		(*reading).help,
		(*reading).likelySentence,
		(*reading).likelyResult,
		(*reading).likelyHow,
		(*reading).aboutOpen,
		(*reading).greeting,
		(*reading).parted,
		(*reading).outside,
	} {
		if m, ok := reader(r); ok {
			return r.settled(m)
		}
	}
	return r.settled(r.unclear())
}

// findCues is the wordiest phrasing of each kind that the line holds, of two
// as wordy the first in rules/.
func (x *Lexicon) findCues(l *Line, ctx Context) map[Kind]cueHit {
	found := map[Kind]cueHit{}
	for n, h := range x.cued.held(l) {
		c := &x.cues[n]
		if c.topic == "only-open" && ctx.Open != "keep" && !ctx.Confirm {
			continue
		}
		if old, have := found[c.kind]; !have || h.weight > old.weight {
			found[c.kind] = cueHit{hit: h, topic: c.topic, card: c.card}
		}
	}
	return found
}

// hasSense reports whether the line holds a word of that sense, as rules/words.md
// lists them.
func (r *reading) hasSense(sense string) bool {
	words := r.x.senses[sense]
	for i := range r.l.tokens {
		if t := &r.l.tokens[i]; t.q == nil && (words[t.stem] || words[t.text]) {
			return true
		}
	}
	return false
}

func (r *reading) cue(k Kind) bool { _, ok := r.cues[k]; return ok }

func (r *reading) namesResult() bool {
	for _, m := range r.l.mentions {
		if m.result {
			return true
		}
	}
	return false
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

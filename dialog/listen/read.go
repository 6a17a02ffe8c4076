package listen

import "strings"

// Read gives the meaning of one line as typed. It never fails: a line without
// a meaning has kind Unclear or Outside and sets nothing. Tried in turn: a value
// behind its whole label, an answer wanted in a unit, the line with words taken
// apart that ran together, the line as it stands, and last of all what the
// cards nearest to it could make of it.
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
		if m, ok := x.converted(rest, unit); ok {
			return m
		}
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

// reader reads a line as one kind of thing, or passes it on with false.
type reader func(*reading) (Meaning, bool)

// read decides what kind of line l is. The groups of readers are asked from
// the surest to the least sure, in each group the readers in turn, and the
// first that knows the line gives its meaning.
func (x *Lexicon) read(l *Line, ctx Context) Meaning {
	x.mark(l)
	r := &reading{x: x, l: l, ctx: ctx, cues: x.findCues(l, ctx)}
	r.b = x.bind(l, ctx, r.asks() || r.nounFor() || r.cue(WhatIf) || r.cue(Compare) || r.cue(Shake) || ctx.Open == "keep")
	m, ok := r.first((*reading).justAsked, (*reading).oneTopic, (*reading).decision, (*reading).partOrMachine,
		(*reading).surely, (*reading).ofPlan, (*reading).likely)
	if !ok {
		m = r.unclear()
	}
	return r.settled(m)
}

// first is the meaning given by the first of the readers that knows the line.
func (r *reading) first(readers ...reader) (Meaning, bool) {
	for _, known := range readers {
		if m, ok := known(r); ok {
			return m, true
		}
	}
	return Meaning{}, false
}

// justAsked: what answers the amount or the keeping that was just asked for,
// what is no more than politeness or a word to explain, and a tale told in
// several sentences, which no reader of single things may take apart.
func (r *reading) justAsked() (Meaning, bool) {
	return r.first(
		(*reading).amount,
		(*reading).wanted,
		(*reading).wholeLine,
		(*reading).progress,
		(*reading).decidedAnd,
		(*reading).andThen,
		(*reading).chat,
		(*reading).term,
		(*reading).tale,
		(*reading).vague,
	)
}

// oneTopic: readers that know one question each, by words that no other line
// of theirs holds. Their order among themselves is free; a new question with
// words of its own belongs here.
func (r *reading) oneTopic() (Meaning, bool) {
	return r.first(
		(*reading).otherNeck,
		(*reading).yarnNamed,
		(*reading).walkAsked,
		(*reading).rowAtBand,
		(*reading).doubledAsked,
		(*reading).convertAsked,
		(*reading).spanCounted,
		(*reading).deepEnough,
		(*reading).unfolded,
		(*reading).countJudged,
		(*reading).machineFit,
		(*reading).whyChoice,
		(*reading).cardAsked,
		(*reading).compareChoices,
		(*reading).compareThreads,
		(*reading).tableAsked,
		(*reading).toldByMe,
		(*reading).spreadAsked,
		(*reading).pieceAsked,
		(*reading).rowAsked,
		(*reading).startAt,
		(*reading).rowSet,
		(*reading).whyFactor,
		(*reading).explainStep,
		(*reading).yarnCount,
		(*reading).ballsAsked,
		(*reading).yarnAsked,
		(*reading).tightnessMeans,
		(*reading).stepsChange,
		(*reading).estimates,
		(*reading).howSure,
		(*reading).largestButton,
		(*reading).overlapAsked,
		(*reading).gaugeFor,
		(*reading).stillSo,
		(*reading).ribFor,
		(*reading).countDoubted,
		(*reading).edges,
		(*reading).headAsked,
		(*reading).mayHow,
	)
}

// decision: what is decided, answered, taken back or put on disk. Before it
// stands only what has nothing to do with us or with the plan.
func (r *reading) decision() (Meaning, bool) {
	return r.first(
		(*reading).safety,
		(*reading).theDefault,
		(*reading).askedChoice,
		(*reading).beyond,
		(*reading).keepOrDrop,
		(*reading).openAnswer,
		(*reading).undo,
		(*reading).notebook,
		(*reading).noNumber,
		(*reading).revise,
	)
}

// partOrMachine: what is said of the yoke and the fronts, of the step she is
// at, and of what was measured.
func (r *reading) partOrMachine() (Meaning, bool) {
	return r.first(
		(*reading).yoke,
		(*reading).fronts,
		(*reading).atMachine,
		(*reading).calibrate,
	)
}

// surely: readers that take a line only where nearly all its words are theirs.
// Some have a twin in ofPlan or likely that takes what is left.
func (r *reading) surely() (Meaning, bool) {
	return r.first(
		(*reading).stretchiestRib,
		(*reading).sureSentence,
		(*reading).bestRib,
		(*reading).judged,
		(*reading).aboutThat,
		(*reading).order,
		(*reading).meaningOf,
		(*reading).measure,
		(*reading).shake,
		(*reading).compare,
		(*reading).refused,
		(*reading).asked,
		(*reading).ifMishap,
		(*reading).surelyHow,
		(*reading).plainNumber,
		(*reading).foreseen,
		(*reading).troubleFirst,
	)
}

// ofPlan: questions about the plan and about plans supposed.
func (r *reading) ofPlan() (Meaning, bool) {
	return r.first(
		(*reading).why,
		(*reading).place,
		(*reading).served,
		(*reading).whatIf,
		(*reading).show,
		(*reading).fits,
		(*reading).backwards,
		(*reading).number,
	)
}

// likely: the best of what is left, from cards over plain values to guesses.
func (r *reading) likely() (Meaning, bool) {
	return r.first(
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
	)
}

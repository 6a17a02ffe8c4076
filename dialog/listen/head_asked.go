package listen

import "foldrow/engine"

// headAsked: what goes over which head.
func (r *reading) headAsked() (Meaning, bool) {
	return r.first((*reading).smallestNeck, (*reading).passes, (*reading).passesWearer, (*reading).weakerEdge)
}

// smallestNeck: "smallest neck that passes a 56 cm head", answered backwards
// with a head, or a wearer, that serves this answer only.
func (r *reading) smallestNeck() (Meaning, bool) {
	asked := (r.beginsWith([]string{"what", "neck"}) || r.beginsWith([]string{"which", "neck"})) && len(r.b.sets) > 0
	least := (asked || r.l.has("smallest", "narrowest", "tightest", "least", "closest", "fewest")) && r.l.has("neck", "opening", "stitch") &&
		r.l.has("head", "pass", "fit", "go", "over", "through")
	if !least && !r.neckForHead() || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	for _, s := range r.b.sets {
		if s.Key != engine.Head && s.Key != engine.KeyWearer {
			return Meaning{}, false
		}
	}
	return Meaning{Kind: Backwards, Topic: "smallest-neck", Keys: []engine.Key{engine.NeckResult}, Sets: r.b.sets}, true
}

// neckForHead: "which neck do I need for a head of 60", "how big must the neck
// be that the head goes through": the neck is wanted, not what the present one
// does.
func (r *reading) neckForHead() bool {
	return r.asks() && r.l.has("what", "which", "how") && r.l.has("neck", "stitch") && r.l.has("head") && !r.b.has(engine.Neck) && !r.cue(WhatIf) &&
		!r.l.has("stretch", "open", "opening", "pull", "take", "body", "measure", "help") &&
		(r.b.has(engine.Head) && r.l.has("for") || r.l.has("need", "must", "should", "want", "require") && r.l.has("for", "that", "so", "go", "over", "through", "pass", "fit"))
}

// passes: "will it go over a 55 cm head" asks, with a head that serves this
// answer only.
func (r *reading) passes() (Meaning, bool) {
	fits := r.l.tokens[r.l.begin].stem == "fit" || r.l.tokens[r.l.begin].stem == "go" || r.l.tokens[r.l.begin].stem == "pass"
	if !r.asks() && !fits || len(r.b.sets) != 1 || r.b.sets[0].Key != engine.Head || r.cue(WhatIf) && r.l.tokens[r.l.begin].text == "what" || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.HeadOpening}, Sets: r.b.sets}, true
}

// passesWearer: "will it go over the head of a 5 year old": the table's head
// serves this answer only.
func (r *reading) passesWearer() (Meaning, bool) {
	if !r.asks() || len(r.b.sets) != 1 || r.b.sets[0].Key != engine.KeyWearer || r.l.has("if") || r.b.problem.Code != "" ||
		!r.l.has("fit", "pass", "over", "through") {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.HeadOpening}, Sets: r.b.sets}, true
}

// weakerEdge: "which edge is the weaker" asks about the opening over the head.
func (r *reading) weakerEdge() (Meaning, bool) {
	if !r.l.has("edge") || !r.l.has("weak", "weaker", "weakest") || !r.asks() || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.HeadOpening}}, true
}

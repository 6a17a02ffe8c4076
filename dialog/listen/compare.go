package listen

import "foldrow/engine"

// alternatives groups the sets of the line into choices of one key: "1x1 or
// 2x2", "3, 3.5 or 4 cm".
func (r *reading) alternatives() [][]Set {
	byKey := map[engine.Key][]Set{}
	for _, s := range r.b.sets {
		dup := false
		for _, o := range byKey[s.Key] {
			dup = dup || same(o, s)
		}
		if !dup {
			byKey[s.Key] = append(byKey[s.Key], s)
		}
	}
	for _, s := range r.b.sets {
		if len(byKey[s.Key]) > 1 {
			var out [][]Set
			for _, c := range byKey[s.Key] {
				out = append(out, []Set{c})
			}
			return out
		}
	}
	return nil
}

func (r *reading) compare() (Meaning, bool) {
	alts := r.alternatives()
	cue, ok := r.cues[Compare]
	if r.b.problem.Code == "range" || len(alts) > 1 && !ok && !r.asks() && !r.cue(WhatIf) {
		return Meaning{}, false
	}
	if len(alts) > 1 && (ok || r.l.has("or", "vs", "versus")) {
		return Meaning{Kind: Compare, Choices: alts}, true
	}
	if ok && len(alts) == 0 && cue.weight >= 1 && len(dedupe(r.b.sets)) == 1 && r.l.has("compar", "against", "vs", "versus", "differenc", "than") {
		return Meaning{Kind: Compare, Choices: [][]Set{{r.b.sets[0]}}}, true
	}
	if len(r.b.sets) == 0 && r.asks() && (r.ctx.Open == "" || r.ctx.Open == "keep") && r.l.has("stretchier", "stretchiest", "elastic", "springiest", "springier", "firmer", "firmest") && r.l.has("which", "what") {
		return Meaning{Kind: Compare, Keys: []engine.Key{engine.KeyRib}}, true
	}
	if ok && len(r.b.sets) == 0 && r.l.has("compar", "differenc") && !r.l.has("mock", "latch", "real") && contains(r.inputs(), engine.KeyRib) {
		return Meaning{Kind: Compare, Keys: []engine.Key{engine.KeyRib}}, true
	}
	return Meaning{}, false
}

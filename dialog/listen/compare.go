package listen

import (
	"slices"

	"foldrow/engine"
)

// alternatives groups the sets of the line into choices: of one key, "1x1 or
// 2x2", "3, 3.5 or 4 cm", or of several a side, "2x1 at 42 with 1x1 at 44". A
// side ends where a key comes a second time; what only the last side has, led
// in by "with" or the like, holds for all ("3 or 4 cm with 2x2").
func (r *reading) alternatives() [][]Set {
	var sides [][]Set
	for n, s := range r.b.sets {
		if n == 0 || holds(sides[len(sides)-1], s.Key) || r.partedBetween(r.b.at[n-1], r.b.at[n]) {
			sides = append(sides, nil)
		}
		sides[len(sides)-1] = append(sides[len(sides)-1], s)
	}
	if sides = distinct(sides); len(sides) < 2 || !r.compares(sides) {
		return nil
	}
	return spread(sides)
}

// compares: some key is said on more than one side, else nothing is compared.
func (r *reading) compares(sides [][]Set) bool {
	for _, s := range sides[len(sides)-1] {
		if holds(sides[0], s.Key) {
			return true
		}
	}
	return false
}

func holds(side []Set, k engine.Key) bool {
	for _, s := range side {
		if s.Key == k {
			return true
		}
	}
	return false
}

// partedBetween: "against" or the like stands between the tokens i and j.
func (r *reading) partedBetween(i, j int) bool {
	for k := i + 1; k < j; k++ {
		switch r.l.tokens[k].text {
		case "vs", "versus", "against", "or", "v", "next", "beside", "than":
			return true
		}
	}
	return false
}

// distinct drops a side that says just what an earlier one said.
func distinct(sides [][]Set) [][]Set {
	var out [][]Set
	for _, side := range sides {
		again := false
		for _, o := range out {
			again = again || sameAll(o, side)
		}
		if !again {
			out = append(out, side)
		}
	}
	return out
}

func sameAll(a, b []Set) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Key != b[i].Key || !same(a[i], b[i]) {
			return false
		}
	}
	return true
}

// spread gives every side what only the last one has, where all sides before
// it say one and the same thing alone.
func spread(sides [][]Set) [][]Set {
	last := sides[len(sides)-1]
	k := sides[0][0].Key
	for _, side := range sides[:len(sides)-1] {
		if len(side) != 1 || side[0].Key != k {
			return sides
		}
	}
	for _, s := range last {
		if s.Key == k {
			continue
		}
		for i := range sides[:len(sides)-1] {
			sides[i] = append(sides[i], s)
		}
	}
	return sides
}

func layersSet(n int64) Set { return Set{Key: engine.Layers, Value: engine.Int(n), Near: 1} }

// compare: choices set side by side.
func (r *reading) compare() (Meaning, bool) {
	alts := r.alternatives()
	cue, ok := r.cues[Compare]
	if r.b.problem.Code == "range" || len(alts) > 1 && !ok && !r.asks() && !r.cue(WhatIf) && !r.l.has("beside", "versus", "against") {
		return Meaning{}, false
	}
	if len(r.b.sets) == 1 && r.b.sets[0].Key == engine.Layers && r.l.has("single") && r.l.has("double", "doubl") {
		return Meaning{Kind: Compare, Choices: [][]Set{{layersSet(1)}, {layersSet(2)}}}, ok || r.asks()
	}
	if r.l.has("with") && r.l.has("without") && slices.Contains(r.inputs(), engine.FoldRow) && len(r.l.quantities()) == 0 {
		return Meaning{Kind: Compare, Topic: "with-without", Keys: []engine.Key{engine.FoldRow}}, true
	}
	if r.l.has("single") && r.l.has("double", "doubl", "doubled") && r.l.has("front", "fronts") && !r.l.has("neckband") && (ok || r.asks()) {
		return Meaning{Kind: Compare, Choices: [][]Set{
			{{Key: engine.FrontLayers, Value: engine.Int(1), Near: 1}}, {{Key: engine.FrontLayers, Value: engine.Int(2), Near: 1}},
		}}, true
	}
	if ok && r.l.has("pick", "ratio", "slope") && len(r.ratiosSaid()) > 1 {
		m := Meaning{Kind: Compare}
		for _, ratio := range r.ratiosSaid() {
			m.Choices = append(m.Choices, []Set{{Key: engine.PickRatio, Value: ratio, Near: 1}})
		}
		return m, true
	}
	if ok && r.l.has("compar") && r.l.has("rib", "ribb") && !r.b.has(engine.KeyRib) && r.onlyBody() {
		return Meaning{Kind: Compare, Topic: "most-stretch", Keys: []engine.Key{engine.KeyRib}, Sets: r.b.sets}, true
	}
	if len(alts) > 1 && (ok || r.l.has("or", "vs", "versus", "beside", "next", "v", "than")) {
		return Meaning{Kind: Compare, Topic: r.heldAgainst(), Choices: alts}, true
	}
	if ok && len(alts) == 0 && cue.weight >= 1 && len(dedupe(r.b.sets)) == 1 && r.l.has("compar", "against", "vs", "versus", "differenc", "than") {
		return Meaning{Kind: Compare, Choices: [][]Set{{r.b.sets[0]}}}, true
	}
	if ok && len(r.b.sets) == 0 && r.l.has("compar", "differenc") && !r.l.has("mock", "latch", "real") && slices.Contains(r.inputs(), engine.KeyRib) {
		return Meaning{Kind: Compare, Keys: []engine.Key{engine.KeyRib}}, true
	}
	return Meaning{}, false
}

// bestRib: "which rib is quickest" sets the ribs side by side; the topic is
// what they are held against.
func (r *reading) bestRib() (Meaning, bool) {
	return r.ribBestIn("least-work", "most-stretch", "least-stretch")
}

// stretchiestRib is bestRib where the line can mean nothing else.
func (r *reading) stretchiestRib() (Meaning, bool) {
	return r.ribBestIn("most-stretch", "least-stretch")
}

func (r *reading) ribBestIn(topics ...string) (Meaning, bool) {
	if len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || !r.l.has("rib", "ribb", "column", "latch") && r.ctx.Open != "rib" || !r.l.has("which", "whichever", "what") || r.ctx.Making {
		return Meaning{}, false
	}
	for _, topic := range topics {
		if r.spokenSense(topic) {
			return Meaning{Kind: Compare, Topic: topic, Keys: []engine.Key{engine.KeyRib}}, true
		}
	}
	return Meaning{}, false
}

// onlyBody reports whether the line brings a head or a wearer, and no more.
func (r *reading) onlyBody() bool {
	for _, s := range r.b.sets {
		if s.Key != engine.Head && s.Key != engine.KeyWearer {
			return false
		}
	}
	return len(r.b.sets) > 0
}

// heldAgainst is what choices are held against ("which is better for stretch,
// 1x1 or 2x2"), "" where the line does not say.
func (r *reading) heldAgainst() string {
	if r.l.has("head") {
		return "most-stretch"
	}
	for _, topic := range []string{"least-work", "most-stretch", "least-stretch"} {
		if r.spokenSense(topic) {
			return topic
		}
	}
	return ""
}

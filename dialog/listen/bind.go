package listen

import (
	"cmp"
	"sort"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// binder gives every quantity of a line to the thing it is about.
type binder struct {
	x       *Lexicon
	l       *Line
	ctx     Context
	asked   bool // the line asks or supposes: a lone number may be matched by plausibility
	used    []bool
	dropped []bool // quantities taken back in the line itself ("16, no, 17")
	sets    []Set
	at      []int // token of each set
	problem Problem
	inList  bool // answers told in the order of the questions: what is left over answers none
	hearing bool // a value of others, or of another time, was put aside
}

// bind lists what the line sets. A problem tells of a quantity that is there
// but cannot be taken.
func (x *Lexicon) bind(l *Line, ctx Context, asked bool) *binder {
	b := &binder{x: x, l: l, ctx: ctx, asked: asked,
		used: make([]bool, len(l.tokens)), dropped: make([]bool, len(l.tokens))}
	b.oneByOne()
	b.balls()
	b.notOurs()
	b.takeBack()
	b.holes()
	b.marksBetween()
	b.wearer()
	b.frontPair()
	b.phrasings()
	b.marks()
	b.choices()
	b.texts()
	b.blend()
	b.hours()
	b.ribWords()
	b.swatchTold()
	b.rates()
	b.shares()
	b.named()
	b.rowsWere()
	b.others()
	b.inOrder()
	b.byUnit()
	b.everySo()
	b.others()
	b.fronts()
	b.swatchWeight()
	b.onBody()
	b.order()
	b.unsay()
	b.hearsay()
	b.saidAgain()
	b.twice()
	return b
}

// saidAgain: "they run about an inch, so one inch" says one value twice.
func (b *binder) saidAgain() {
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		for _, at := range b.at {
			if o := b.l.tokens[at].q; o != nil && at != i && q.Unit != "" && o.Unit == q.Unit && o.Value.Equal(q.Value) && !q.Range && !o.Range && q.Over.Equal(o.Over) {
				b.used[i] = true
			}
		}
	}
}

// onBody: a neck "measured on the body" is the body's own.
func (b *binder) onBody() {
	for i := 2; i < len(b.l.tokens); i++ {
		t := b.l.tokens
		if t[i].text != "body" && t[i].text != "skin" || !oneOf(t[i-2].text, []string{"on", "from", "of"}) && t[i-1].text != "on" || b.names(engine.MainTension) || b.has(engine.NeckBody) {
			continue
		}
		for n := range b.sets {
			if b.sets[n].Key == engine.Neck && !b.sets[n].Relative {
				b.sets[n].Key = engine.NeckBody
			}
		}
	}
}

// free lists quantity tokens still to be bound.
func (b *binder) free() []int {
	var out []int
	for i, t := range b.l.tokens {
		if t.q != nil && !b.used[i] && !b.dropped[i] {
			out = append(out, i)
		}
	}
	return out
}

// put notes what the line sets, and the token that says it.
func (b *binder) put(s Set, at int) {
	b.sets, b.at = append(b.sets, s), append(b.at, at)
}

// cut takes set n back; who still walks over the old list keeps it whole.
func (b *binder) cut(n int) {
	b.sets, b.at = append(b.sets[:n:n], b.sets[n+1:]...), append(b.at[:n:n], b.at[n+1:]...)
}

// add binds the quantity at token i to key k; near is how far its name stood.
func (b *binder) add(k engine.Key, i int, near int) bool {
	t := b.l.tokens[i]
	if (k == engine.StitchGauge || k == engine.RowGauge) && i > 0 && t.q.Unit == "" && oneOf(b.l.tokens[i-1].text, []string{"t", "mt", "dial", "tension"}) {
		return false // "the swatch at T7" tells a dial
	}
	s, p := b.x.value(k, t.q, b.ctx)
	if p.Code == "negative" && b.lessBy(k, i) { // "depth -1"
		less := *t.q
		less.Value, less.High, less.Sign = less.Value.Neg(), less.High.Neg(), 0
		if less.Unit == "" {
			less.Unit = cmp.Or(b.ctx.Unit, quantity.Centimetre)
		}
		s, p = b.x.value(k, &less, b.ctx)
		s.Value, s.Relative = s.Value.Neg(), true
		s.Key, s.Near = k, near
		b.used[i] = true
		b.put(s, i)
		return p.Code == ""
	}
	if p.Code != "" {
		if b.problem.Code == "" {
			p.Key = k
			b.problem = p
		}
		b.used[i] = true
		return false
	}
	s.Key, s.Near = k, near
	plus := strings.HasPrefix(t.text, "plus") && i > b.l.begin && (k == engine.Neck || k == engine.Depth || k == engine.DepthRows)
	if t.q.Sign > 0 && (plus || b.l.text[t.start] == '+') {
		s.Relative = true
	} else if sign, times := b.comparative(i, k); sign != 0 {
		s.Relative = true
		s.Times = times
		if sign < 0 {
			s.Value = s.Value.Neg()
		}
	}
	if s.Relative && !s.Times && b.newThing(k) {
		s.Relative = false // "add a slit of 6 cm"
	}
	if k == engine.NeckBody && s.Relative {
		s.Key = engine.Neck // nobody's own neck grows
	}
	if k == engine.DepthRows && b.inAll(i) {
		s.InAll = true
	}
	b.used[i] = true
	b.put(s, i)
	return true
}

// lessBy: so small a measure below nothing cannot be the thing itself written
// with a dash, and takes that much away.
func (b *binder) lessBy(k engine.Key, at int) bool {
	q := b.l.tokens[at].q
	named := false
	for _, m := range b.l.mentions {
		named = named || m.key == k && m.to == at
	}
	if !named || b.ctx.Making || k != engine.Neck && k != engine.Depth || q.Range || q.Problem != "" || !accepts(b.x.spans[k].Dimension, q) {
		return false
	}
	v := q.Value.Neg()
	if cm, ok := q.Length(); ok && q.Unit != "" {
		v = cm.Neg()
	}
	return v.Sign() > 0 && v.Less(b.x.spans[k].Usual[0])
}

// newThing: the name of k has "a" before it: it is brought in, not made more.
func (b *binder) newThing(k engine.Key) bool {
	for _, m := range b.l.mentions {
		if m.key == k && m.from > 0 && (b.l.tokens[m.from-1].text == "a" || b.l.tokens[m.from-1].text == "an") {
			return b.l.has("add", "put")
		}
	}
	return false
}

// inAll: "22 rows in all" counts both layers.
func (b *binder) inAll(i int) bool {
	for j := i + 1; j < len(b.l.tokens) && j <= i+3; j++ {
		switch t := b.l.tokens[j].text; {
		case t == "all" && b.l.tokens[j-1].text == "in", t == "altogether", t == "total", t == "together", t == "overall":
			return true
		}
	}
	if b.l.has("fold") && b.l.has("half") {
		return true // "24 rows, folded in half"
	}
	return i > 0 && b.l.tokens[i-1].text == "total"
}

// addFixed sets k to a value that a phrasing holds ("every other bump").
func (b *binder) addFixed(s *setting, i int) {
	set := Set{Key: s.key, Value: s.fixed, Near: 1, Relative: s.times, Times: s.times}
	b.put(set, i)
}

// sure reports whether any value was named, rather than bound by its unit or
// by the open question alone.
func (b *binder) sure() bool {
	for _, s := range b.sets {
		if s.Near > 0 {
			return true
		}
	}
	return false
}

func (b *binder) has(k engine.Key) bool {
	for _, s := range b.sets {
		if s.Key == k {
			return true
		}
	}
	return false
}

// names reports whether the line names k.
func (b *binder) names(k engine.Key) bool {
	for _, m := range b.l.mentions {
		if m.key == k && m.text == "" {
			return true
		}
	}
	return false
}

// order puts the sets in the order of the line.
func (b *binder) order() {
	idx := make([]int, len(b.sets))
	for i := range idx {
		idx[i] = i
	}
	sort.SliceStable(idx, func(i, j int) bool { return b.at[idx[i]] < b.at[idx[j]] })
	sets, at := make([]Set, len(idx)), make([]int, len(idx))
	for i, j := range idx {
		sets[i], at[i] = b.sets[j], b.at[j]
	}
	b.sets, b.at = sets, at
}

// twice looks for two different values of one key, which only choices to
// compare may have.
func (b *binder) twice() {
	for i, s := range b.sets {
		for _, t := range b.sets[:i] {
			if t.Key == s.Key && !same(s, t) && b.problem.Code == "" {
				b.problem = Problem{Code: "two-values", Key: s.Key, Low: t.Value, High: s.Value}
			}
		}
	}
}

func same(a, b Set) bool {
	return a.Rib == b.Rib && a.Garment == b.Garment && a.Text == b.Text && a.Value.Equal(b.Value) && a.Relative == b.Relative
}

// addOnce binds the quantity where the key is not bound yet.
func (b *binder) addOnce(k engine.Key, i int) {
	if !b.has(k) {
		b.add(k, i, 1)
	}
}

// unset takes back what the line set for k.
func (b *binder) unset(k engine.Key) {
	for i := 0; i < len(b.sets); {
		if b.sets[i].Key != k {
			i++
			continue
		}
		b.cut(i)
	}
}

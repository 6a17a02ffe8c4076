package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// heads are the numbers to be read from a distance.
func heads(v answer.Voice, p *engine.Plan) []head {
	var hs []head
	add := func(figure, label, note string) {
		if figure != "" {
			hs = append(hs, head{figure, label, note})
		}
	}
	count := func(k engine.Key) string {
		f, ok := p.Float(k)
		if !ok || f == 0 {
			return ""
		}
		return fmt.Sprint(int(f))
	}
	n, pieces := p.BandStitches, p.OnBed()
	add(count(engine.BandStitches), "stitches", needlesNote(pieces))
	if p.YokeDecreases > 0 {
		add(count(engine.YokeDecreases), "stitches to lose", "from "+v.Value(p, engine.YokeStitches)+" on the yoke")
	}
	add(rowHead(p))
	add(dialSpan(p))
	add(count(engine.ColumnCount), "columns to latch", loops(p))
	if n := total(pieces, func(q *engine.Plan) []int { return q.EmptyColumns }); n > 0 {
		add(fmt.Sprint(n), "needles out of work", v.Value(p, engine.WorkStitches)+" in work")
	}
	if n := total(pieces, func(q *engine.Plan) []int { return q.HemColumns }); n > 0 {
		add(fmt.Sprint(n), "bumps to hang", "of the first band row")
	}
	if n > 0 {
		add(v.Value(p, engine.NeckResult), "neck", aside(v, p.NeckResult.Float(), p.NeckWanted.Float()))
	}
	add(v.Value(p, engine.DepthResult), "deep", aside(v, p.DepthResult.Float(), wantedDepth(p)))
	add(tails(v, pieces))
	add(yarn(v, p))
	add(frontYarn(v, p))
	return hs
}

// needlesNote says where the stitches hang.
func needlesNote(pieces []*engine.Plan) string {
	if len(pieces) > 1 {
		return fmt.Sprintf("in %d pieces of %s", len(pieces), perPiece(pieces, func(q *engine.Plan) string { return fmt.Sprint(q.BandStitches) }))
	}
	n := pieces[0].BandStitches
	return "needles " + engine.NeedleName(0, n) + " to " + engine.NeedleName(n-1, n)
}

// tails is the yarn to sew off: the longest tail where each piece has its own.
func tails(v answer.Voice, pieces []*engine.Plan) (figure, label, note string) {
	most := pieces[0]
	for _, q := range pieces {
		if q.OffYarn.Cmp(most.OffYarn) > 0 {
			most = q
		}
	}
	figure, label, note = v.Value(most, engine.OffYarn), "of yarn to sew off", "backstitch, with tails"
	if len(pieces) > 1 {
		label = "of yarn to sew off a piece"
		note = "backstitch; " + perPiece(pieces, func(q *engine.Plan) string { return v.Value(q, engine.OffYarn) })
	}
	return figure, label, note
}

func rowHead(p *engine.Plan) (figure, label, note string) {
	if p.LayerRows == 0 {
		return "", "", ""
	}
	figure = fmt.Sprint(p.LayerRows)
	if !p.Doubled {
		return figure, "rows", "one layer"
	}
	note = fmt.Sprintf("%d in all", p.TotalRows)
	if p.FoldRow > 0 {
		note += ", one of them the fold row"
	}
	return figure, "rows a layer", note
}

func loops(p *engine.Plan) string {
	if p.TotalRows == 0 {
		return ""
	}
	return fmt.Sprintf("%d loops in all", len(p.RibColumns)*p.TotalRows)
}

// wantedDepth is the depth asked for, 0 where rows were.
func wantedDepth(p *engine.Plan) float64 {
	if p.In.Has(engine.DepthRows) {
		return 0
	}
	return p.In.Num(engine.Depth).Float()
}

// aside is the note beside a length: the other unit, and the wish it misses.
func aside(v answer.Voice, cm, wanted float64) string {
	var parts []string
	if v.Unit == "in" {
		parts = append(parts, answer.Voice{Book: v.Book}.Len(cm))
	}
	if wanted > 0 && v.Len(wanted) != v.Len(cm) {
		parts = append(parts, v.Len(wanted)+" wanted")
	}
	return strings.Join(parts, ", ")
}

func yarn(v answer.Voice, p *engine.Plan) (figure, label, note string) {
	what := "of yarn in all"
	if _, fronts := p.Float(engine.FrontYarn); fronts {
		what = "of yarn for the neckband"
	}
	figure, label = v.Value(p, engine.BandYarn), what
	if g := v.Value(p, engine.BandYarnGrams); g != "" {
		note = "about " + g
	}
	low, high := v.Value(p, engine.BandYarnLow), v.Value(p, engine.BandYarnHigh)
	if low != "" && low != high {
		number, _, _ := strings.Cut(low, " ")
		figure, label = number+" to "+high, what+" (estimate)"
	}
	return figure, label, note
}

// frontYarn is what both front bands take, where that is known.
func frontYarn(v answer.Voice, p *engine.Plan) (figure, label, note string) {
	figure = v.Value(p, engine.FrontYarn)
	if g := v.Value(p, engine.FrontYarnGrams); g != "" {
		note = "about " + g
	}
	return figure, "of yarn for both front bands (estimate)", note
}

package engine

// Piece is a part of a stage that the bed takes at once.
type Piece struct {
	First       int   // the first of its stitches, counted from 0 at the left end of the stage
	Stitches    int   // stitches, one to a needle
	Left, Right int   // needles used to the left and to the right of the centre
	Hang        []int // stitches to hang on each needle, from the last hanging; nil for the first stage
}

// pieces splits stage i for the bed: as few pieces as will do, each of whole
// repeats, as equal as the repeats allow. The edge stitches stand at the two
// ends of the whole stage, an odd one at the left.
func (y YokeSpec) pieces(i int, s Stage, spec StageSpec) ([]Piece, error) {
	if y.Bed < 1 {
		return nil, nil
	}
	if s.Count <= y.Bed {
		return []Piece{s.piece(0, s.Count)}, nil
	}
	repeat := max(spec.Repeat, 1)
	edge := max(spec.Edge, 0)
	if s.Count%repeat == 0 {
		edge = 0 // a count given in whole repeats has none
	}
	repeats, odd := (s.Count-edge)/repeat, (s.Count-edge)%repeat
	// What breaks the repeat, if the count was given, goes with the edges.
	edge += odd
	for n := 2; n <= repeats; n++ {
		if pieces := s.split(n, repeat, repeats, edge); widest(pieces) <= y.Bed {
			return pieces, nil
		}
	}
	return nil, &PieceError{Stage: i, Repeat: repeat, Edge: edge, Bed: y.Bed}
}

// split is s in n pieces.
func (s Stage) split(n, repeat, repeats, edge int) []Piece {
	pieces := make([]Piece, n)
	first := 0
	for i, share := range evenGaps(repeats, n) {
		stitches := share * repeat
		if i == 0 {
			stitches += (edge + 1) / 2
		}
		if i == n-1 {
			stitches += edge / 2
		}
		pieces[i] = s.piece(first, stitches)
		first += stitches
	}
	return pieces
}

func (s Stage) piece(first, stitches int) Piece {
	p := Piece{First: first, Stitches: stitches, Left: (stitches + 1) / 2, Right: stitches / 2}
	if n := len(s.Hangings); n > 0 {
		p.Hang = s.Hangings[n-1][first : first+stitches]
	}
	return p
}

func widest(pieces []Piece) int {
	w := 0
	for _, p := range pieces {
		w = max(w, p.Stitches)
	}
	return w
}

// CutsError: the method is published for Want cuts, or at least one stage is
// needed, and Have were asked for.
type CutsError struct {
	Method     YokeMethod
	Have, Want int
}

func (e *CutsError) Error() string {
	return "yoke: " + itoa(e.Have) + " cuts by " + string(e.Method) + ", which has " + itoa(e.Want)
}

// NeckError: the neck does not come below the stages: Most is the largest
// neck that this start and method reach.
type NeckError struct{ Neck, Most int }

func (e *NeckError) Error() string {
	return "yoke: a neck of " + itoa(e.Neck) + " where the stages allow 1 to " + itoa(e.Most)
}

// HeightError: a straight cone needs the height of every stage, and Stage has
// none.
type HeightError struct{ Stage int }

func (e *HeightError) Error() string { return "yoke: stage " + itoa(e.Stage) + " has no height" }

// RepeatError: no whole number of repeats lies between Least, the neck, and
// Most, the stage before. Lower (0: none) and Higher are the nearest that do
// have whole repeats.
type RepeatError struct {
	Stage, Repeat, Edge, Least, Most, Lower, Higher int
}

func (e *RepeatError) Error() string {
	return "yoke: stage " + itoa(e.Stage) + " has no " + itoa(e.Repeat) + "n+" + itoa(e.Edge) +
		" from " + itoa(e.Least) + " to " + itoa(e.Most)
}

// PieceError: not even one repeat with its share of the edge stitches fits
// the bed.
type PieceError struct{ Stage, Repeat, Edge, Bed int }

func (e *PieceError) Error() string {
	return "yoke: one repeat of stage " + itoa(e.Stage) + " (" + itoa(e.Repeat) + "+" + itoa(e.Edge) +
		") is wider than " + itoa(e.Bed) + " needles"
}

// HadError: the stitches found on a stage are fewer than the neck, or more
// than the stage could have.
type HadError struct{ Stage, Had, Least int }

func (e *HadError) Error() string {
	return "yoke: " + itoa(e.Had) + " stitches on stage " + itoa(e.Stage) + " where the neck needs " + itoa(e.Least)
}

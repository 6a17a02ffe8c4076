package answer

import (
	"errors"
	"fmt"
	"strconv"

	"foldrow/engine"
)

func stageName(y *engine.YokePlan, i int) string {
	if i == len(y.Stages)-1 {
		return "the neckband"
	}
	return "stage " + strconv.Itoa(i+1)
}

// yokeCautions are what every stage should be looked at for.
func yokeCautions(y *engine.YokePlan) []string {
	var out []string
	for i := range y.Stages {
		out = append(out, stageWarnings(y, i)...)
	}
	return out
}

func stageWarnings(y *engine.YokePlan, i int) []string {
	s, name := y.Stages[i], stageName(y, i)
	var out []string
	for _, w := range s.Warnings {
		switch w.Code {
		case engine.SteepCut:
			text := fmt.Sprintf("The cut to %s takes %s %% of the stitches. More than one in three puckers", name, trim(100*w.Value.Float(), 0))
			if s.Gap == 0 {
				text += ", and doubled needles stand side by side"
			}
			out = append(out, text+"; another stage would share it.")
		case engine.SeveralHangings:
			out = append(out, fmt.Sprintf("The cut to %s is more than two on a needle: hang it %s times, with a plain row between.", name, w.Value))
		case engine.BrokenRepeat:
			low := ""
			if w.Lower > 0 {
				low = strconv.Itoa(w.Lower) + " or "
			}
			out = append(out, fmt.Sprintf("The %d stitches of %s break its repeat; %s%d would close it.", s.Stitches(), name, low, w.Higher))
		}
	}
	return out
}

// YokeFault says why the yoke of a plan cannot be, and what is nearest.
func (v Voice) YokeFault(y *engine.YokePlan) string {
	if y.Spec.Neck >= y.Spec.Start {
		return fmt.Sprintf("The neck's %d stitches are not fewer than the %d that the yoke begins with, at most %d is reached. For this neck it begins with %d or more: *yoke of %d stitches*.",
			y.Spec.Neck, y.Spec.Start, y.Spec.Start-1, y.Spec.Neck+1, y.Spec.Neck*3/2)
	}
	text := v.faultText(y.Fault)
	if near, ok := engine.NearestYoke(y.Spec); ok {
		text += " The nearest that works: " + StageCounts(near.Stages) + " (" + v.nearWords(y.Spec, near.Spec) + ")."
	}
	return text
}

// nearWords says what differs in the yoke that works.
func (v Voice) nearWords(was, now engine.YokeSpec) string {
	switch {
	case was.Method != now.Method:
		return v.MethodName(now.Method)
	case was.Neck != now.Neck:
		return fmt.Sprintf("with %d at the neck", now.Neck)
	case len(was.Stages) != len(now.Stages):
		return Count(len(now.Stages), "stage", "stages")
	}
	for i := range now.Stages {
		if was.Stages[i].Repeat != now.Stages[i].Repeat {
			return fmt.Sprintf("a repeat of %d in stage %d", max(now.Stages[i].Repeat, 1), i+1)
		}
	}
	return v.MethodName(now.Method)
}

func (v Voice) faultText(err error) string {
	var cuts *engine.CutsError
	var neck *engine.NeckError
	var repeat *engine.RepeatError
	var piece *engine.PieceError
	var height *engine.HeightError
	var had *engine.HadError
	switch {
	case errors.As(err, &had):
		return fmt.Sprintf("%d stitches on stage %d are fewer than the %d of the neck: nothing can be lost from them any more.", had.Had, had.Stage+1, had.Least)
	case errors.As(err, &cuts) && cuts.Want > 1:
		return fmt.Sprintf("That sequence (%s) is published for %d stages, not %d.", v.MethodName(cuts.Method), cuts.Want, cuts.Have)
	case errors.As(err, &neck):
		return fmt.Sprintf("A neck of %d stitches does not come below these stages: at most %d is reached.", neck.Neck, neck.Most)
	case errors.As(err, &repeat):
		low := ""
		if repeat.Lower > 0 {
			low = strconv.Itoa(repeat.Lower) + " or "
		}
		return fmt.Sprintf("No whole number of repeats of %d fits stage %d: it must lie from %d to %d stitches, and the nearest counts are %s%d.",
			repeat.Repeat, repeat.Stage+1, repeat.Least, repeat.Most, low, repeat.Higher)
	case errors.As(err, &piece):
		return fmt.Sprintf("One repeat of %d in stage %d is wider than your %d needles; a repeat of %d or fewer fits.", piece.Repeat, piece.Stage+1, piece.Bed, piece.Bed-piece.Edge)
	case errors.As(err, &height):
		return fmt.Sprintf("A straight cone needs the height of every stage; stage %d has none. For example: *heights 8 6 4 cm*.", height.Stage+1)
	}
	return "That yoke cannot be planned. For example: *yoke from 240 to 105 in 3 stages*."
}

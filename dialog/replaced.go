package dialog

import (
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// otherCuts is the inputs without what a new text puts aside: a published
// sequence brings its own number of stages, unless the same line says another.
func (a applied) otherCuts(s listen.Set) engine.Inputs {
	in := a.replaced(s.Key)
	if s.Key == engine.KeyYokeMethod && !hasKey(a.keys, engine.YokeStages) {
		if cuts := engine.YokeMethod(s.Text).Cuts(); cuts > 0 && cuts != in.Int(engine.YokeStages) {
			in = in.Without(engine.YokeStages)
		}
	}
	return in
}

// replaced is the inputs without what a new value of k puts aside in the work
// around the band. What the same line has said stays.
func (a applied) replaced(k engine.Key) engine.Inputs {
	in := a.in
	drop := func(keys ...engine.Key) {
		for _, other := range keys {
			if !hasKey(a.keys, other) {
				in = in.Without(other)
			}
		}
	}
	switch k {
	case engine.YokeFirst:
		drop(engine.BodyStitches, engine.StageHad)
	case engine.BodyStitches:
		drop(engine.YokeFirst, engine.StageHad)
	case engine.YokeStages:
		// the published sequences have their own number of stages
		if engine.YokeMethod(in.Text(engine.KeyYokeMethod)).Cuts() > 0 {
			drop(engine.KeyYokeMethod)
		}
		drop(engine.StageHad)
	case engine.KeyYokeMethod:
		drop(engine.StageHad)
	case engine.StageRepeats:
		drop(engine.StageHad)
	case engine.YokeDepthWanted:
		drop(engine.YokeRows, engine.StageHeights)
	case engine.YokeRows:
		drop(engine.YokeDepthWanted, engine.StageHeights)
	case engine.StageHeights:
		drop(engine.YokeDepthWanted, engine.YokeRows)
	case engine.FloatLimit:
		drop(engine.FloatStitches)
	case engine.FloatStitches:
		drop(engine.FloatLimit)
	case engine.ChartStage:
		drop(engine.ChartStitches)
	case engine.ChartStitches:
		drop(engine.ChartStage)
	}
	return in
}

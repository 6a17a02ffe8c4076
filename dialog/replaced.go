package dialog

import (
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// otherStages asks where a published sequence is said outright though the yoke
// was told to have another number of stages: the count is not dropped in silence.
func (c *turn) otherStages(a *applied, s listen.Set) listen.Problem {
	if c.m.Kind != listen.Values || s.Key != engine.KeyYokeMethod || hasKey(a.keys, engine.YokeStages) || !a.in.Has(engine.YokeStages) {
		return listen.Problem{}
	}
	cuts, stages := engine.YokeMethod(s.Text).Cuts(), a.in.Int(engine.YokeStages)
	if cuts == 0 || cuts == stages {
		return listen.Problem{}
	}
	return listen.Problem{Code: "cuts", Key: s.Key, Read: s.Text, Count: cuts, Low: engine.Int(int64(stages))}
}

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

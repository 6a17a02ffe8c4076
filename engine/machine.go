package engine

// KeyMachine is the class of bed by its needle pitch; its pitch, needles and
// dial are inputs of their own, which the class only presupposes.
const KeyMachine Key = "machine"

// The classes of bed, finest first.
const (
	MachineFine     = "fine"
	MachineStandard = "standard"
	MachineMid      = "mid"
	MachineChunky   = "chunky"
)

// StitchPitch is how wide a stitch is against the needle pitch.
const StitchPitch Key = "pitch_ratio"

// The span of that ratio in which a yarn sits well on a bed (common practice).
var bedLow, bedHigh = Frac(3, 5), Frac(17, 20)

// PitchOf is the width of a stitch over the needle pitch in mm, 0 where either
// is missing.
func PitchOf(stitchGauge, pitch Num) Num { return Int(100).Div(stitchGauge).Div(pitch) }

// SuitsBed is how a stitch sits on a bed: -1 it is too small for the pitch, 0
// usual, +1 too large; possible says whether it can be knitted there all the
// same.
func SuitsBed(ratio Num) (side int, possible bool) {
	switch {
	case ratio.Less(bedLow):
		side = -1
	case bedHigh.Less(ratio):
		side = 1
	}
	return side, !outside(ratio, pitchLow, pitchHigh)
}

// solveMachine fills in how the stitch sits on the bed.
func (p *Plan) solveMachine() {
	p.has.pitch = p.In.Num(StitchGauge).Sign() > 0 && p.In.Num(NeedlePitch).Sign() > 0
	if p.has.pitch {
		p.PitchRatio = PitchOf(p.In.Num(StitchGauge), p.In.Num(NeedlePitch))
	}
}

func (p *Plan) recordMachine(k Key) (Record, bool) {
	if k != StitchPitch || !p.has.pitch {
		return Record{}, false
	}
	return Record{Rule: RulePitchRatio, From: []Key{StitchGauge, NeedlePitch}, Value: p.PitchRatio.Float(),
		Expr: "100 / " + p.num(StitchGauge) + " / " + p.num(NeedlePitch)}, true
}

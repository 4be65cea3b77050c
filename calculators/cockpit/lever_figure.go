package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// leverFigure draws the arm of the standing rider and the lever that continues
// its forearm.
func leverFigure(v calculators.Values, bike fit.Ridden, r *calculators.Result) *drawing.Figure {
	level := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	_, b := riderBuild(v, bike, level)
	grip := bike.Turn(level)
	angle, reach := r.At(leverAngle), r.At(leverReach)
	f := &drawing.Figure{Title: words.Of("The lever continues the forearm")}
	f.Add(figure.HeadEndBare(b)...)
	now, ok := leverStance(v, grip)
	if !ok || !now.Reaches() || !angle.Exists() {
		f.Description = words.Of("The front of the bike at sag from the side. The rider is left out, because the "+
			"hands do not reach the grips in this posture. Set the lever’s reach to {0}.", reach.Uncertain())
		return f
	}
	f.Description = words.Of("The arm of a rider who stands ready, on the bike at sag from the side. The lever’s "+
		"blade, set {0} below the horizontal on the level bike, continues the forearm, and stands {1} out from the "+
		"grip.", angle.Uncertain(), reach.Uncertain())
	pose := figure.Pose{Shoulder: figure.At(now.Trunk.Shoulder), Elbow: figure.At(now.Elbow),
		Hand: figure.At(now.Hand)}
	f.Add(figure.Limbs(pose)...)
	at := figure.At(grip)
	dip := float64(angle.Value) + bike.Tilt
	ahead := drawing.Polar(-dip, 1)
	pivot := at.Along(ahead, 16).Along(ahead.Left(), -8)
	f.Add(
		drawing.Limb{Role: drawing.Hot, Fill: drawing.Sheet, A: pivot.Along(ahead, 8),
			B: pivot.Along(ahead, 16+float64(reach.Value)+22), Ra: 9, Rb: 6},
		drawing.Angle{Role: drawing.Hot, Vertex: at, From: -dip, To: 0, Radius: 190, ArmFrom: 190, ArmTo: 190,
			Text: words.Of("{0}", angle.Amount())},
	)
	return f
}

package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// heightFigure draws the reader at the bottom of the stroke on a bike of the
// reader's size, with both lengths that are called saddle height.
func heightFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	h, pedal, knee := r.At(saddleHeight), r.At(pedalToSaddle), r.At(kneeBend)
	height := words.Of("{0}", h.Uncertain())
	b := figure.Demo(v.Of(measure.Inseam), float64(h.Value))
	b.Crank = v.Of(measure.CrankLength)
	b = b.SeatAt(v.Of(measure.SeatAngle)).AtBottom()

	f := &drawing.Figure{Title: words.Of("Where the saddle goes, seen from the side")}
	bend := knee.Amount()
	bend.Extra = -1 // a drawing is no place for tenths of a degree
	if pose, ok := seatedPose(v, &b, float64(h.Value)); ok {
		f.Description = words.Of("A rider seated with one foot at the bottom of the stroke. The saddle’s top is "+
			"{0} from the crank axle along the seat line, and {1} from the pedal. The knee bends {2}. The bike and "+
			"the upper body are drawn for a rider of that leg length; only the leg is computed.",
			height, pedal.Amount(), knee.Amount())
		f.Add(figure.Scene(b, &pose)...)
		f.Add(figure.KneeBend(pose, drawing.Ink, words.Of("{0}", bend)))
	} else {
		f.Description = words.Of("The saddle’s top is {0} from the crank axle along the seat line, and {1} from "+
			"the pedal. The rider is left out, because the leg does not reach.", height, pedal.Amount())
		f.Add(figure.Scene(b, nil)...)
	}
	f.Add(figure.SeatLine(b), figure.SaddleHeight(b, drawing.Hot, height),
		figure.SpindleToSaddle(b, drawing.Ink, words.Of("{0}", pedal.Amount())))
	return f
}

// seatedPose returns the reader at the bottom of the stroke on the bike, and sets
// the bike's pedals under the feet.
func seatedPose(v calculators.Values, b *figure.Build, height float64) (figure.Pose, bool) {
	rider, ok := fit.Seated(v)
	if !ok {
		return figure.Pose{}, false
	}
	near, ok := rider.AtBottom(height)
	if !ok {
		return figure.Pose{}, false
	}
	var far *posture.LegPose
	if pose, ok := rider.At(height, rider.Bottom()+180); ok {
		far, b.FarPedalAngle = &pose, pose.HeelUp
	}
	b.PedalAngle = near.HeelUp
	pose := figure.Legs(near, far, v.Of(measure.SoleHeight))
	if upper, ok := figure.UpperOf(v.Of(measure.Inseam), fit.Sex(v)); ok {
		pose = pose.Sit(b.Grip(), upper)
	}
	return pose, true
}

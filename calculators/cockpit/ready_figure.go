package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// riderBuild makes the reader's bike ready to be drawn with its grips at a place,
// level and at sag.
func riderBuild(v calculators.Values, bike fit.Ridden, grip geometry.Point) (level, sagged figure.Build) {
	level = figure.Build{Bike: bike.Level, FrontRim: v.Of(measure.FrontRim), RearRim: v.Of(measure.RearRim),
		Crank: v.Of(measure.CrankLength)}
	if v.Declares(measure.RearTravel) && v.Has(measure.RearTravel) {
		level.RearTravel = v.Of(measure.RearTravel)
	}
	level = level.Holding(grip)
	return level, level.Sagging(bike.Sagged)
}

// dropped is how far the saddle is lowered for the standing rider's picture, mm.
const dropped = 170

// sitter is a seated rider for a picture. saddle is the saddle's height, mm; 0 stands
// for the height at which the leg model's knee is neutral.
type sitter struct {
	leg    body.Leg
	setup  posture.Setup
	upper  posture.Upper
	saddle float64
}

// sitterOf returns the reader as a sitter.
func sitterOf(v calculators.Values) sitter {
	leg, _ := fit.Leg(v)
	s := sitter{leg: leg, setup: fit.Feet(v), upper: fit.Upper(v)}
	if v.Has(measure.SaddleHeight) {
		s.saddle = v.Of(measure.SaddleHeight)
	}
	return s
}

// seat returns the leg on a seat line and the saddle's height.
func (s sitter) seat(seatAngle float64) (rider posture.Seated, height float64, ok bool) {
	s.setup.SeatAngle = seatAngle
	rider, ok = posture.NewSeated(s.leg, s.setup)
	rider = rider.Still()
	if s.saddle > 0 {
		return rider, s.saddle, ok
	}
	return rider, rider.Neutral(), ok
}

// seatedScene returns the rider seated on the bike at sag with the near foot at
// the bottom, the elbows bent as seated riders are taken to hold them, and the
// trunk's angle then.
func (s sitter) seatedScene(b figure.Build, grip geometry.Point) (marks []drawing.Mark, trunk float64, ok bool) {
	b, pose, trunk, ok := s.seatedPose(b, grip)
	if !ok {
		return nil, 0, false
	}
	marks = figure.Scene(b, &pose)
	marks = append(marks, figure.LeanAt(pose, drawing.Ink, words.Of("{0}", whole(measure.Degrees(trunk))))...)
	return marks, trunk, true
}

// seatedPose returns the rider of that scene, with the bike's saddle and pedals under them.
func (s sitter) seatedPose(b figure.Build, grip geometry.Point) (on figure.Build, pose figure.Pose, trunk float64,
	ok bool) {
	rider, height, ok := s.seat(b.Bike.SeatAngle)
	if !ok {
		return b, pose, 0, false
	}
	near, ok := rider.AtBottom(height)
	far, fine := rider.At(height, rider.Bottom()+180)
	if !ok || !fine {
		return b, pose, 0, false
	}
	chord, ok := s.upper.Arm.Chord(fit.SeatedElbow)
	if !ok {
		return b, pose, 0, false
	}
	t, ok := posture.SolveTrunk(near.Hip, grip, s.upper.Trunk, chord)
	if !ok {
		return b, pose, 0, false
	}
	elbow, ok := s.upper.Arm.Elbow(t.Shoulder, grip)
	if !ok {
		return b, pose, 0, false
	}
	b.Saddle, b.SeatTube = height, height-dropped-115
	b = b.AtBottom()
	b.PedalAngle, b.FarPedalAngle = near.HeelUp, far.HeelUp
	pose = figure.Legs(near, &far, s.setup.SoleHeight).Hold(t.Shoulder, elbow, grip)
	return b, pose, t.Angle, true
}

// standingScene returns the rider standing ready on the bike at sag.
func (s sitter) standingScene(b figure.Build, r posture.Ready, slope float64) []drawing.Mark {
	b = b.Level(r)
	if _, height, ok := s.seat(b.Bike.SeatAngle); ok {
		b.SeatTube, b.Saddle = height-dropped-115, height-dropped
	}
	pose := figure.Standing(r, s.setup.SoleHeight)
	marks := figure.Scene(b, &pose)
	marks = append(marks, figure.Plumb(r.Centre, slope)...)
	marks = append(marks, figure.TrunkAngle(pose, drawing.Hot, words.Of("{0}", whole(measure.Degrees(r.Trunk.Angle)))))
	marks = append(marks, figure.KneeAt(pose, drawing.Ink,
		words.Of("{0}", whole(measure.Degrees(r.Front.KneeBend))))...)
	if r.Reaches() {
		marks = append(marks, figure.ElbowBend(pose, drawing.Ink, words.Of("{0}",
			whole(measure.Degrees(r.ElbowBend)))))
	}
	return append(marks,
		figure.HipBehind(pose, drawing.Ink, b.Bike.Ground()-120, words.Of("{0}", measure.Millimetres(r.HipBehind()))))
}

// readyFigure draws the reader seated and standing ready on the same bike at sag;
// where the grips are moved, the earlier rider and cockpit show thin over the
// later ones.
func readyFigure(v calculators.Values, s stand, now posture.Ready, r *calculators.Result) *drawing.Figure {
	move := moveOf(v)
	level := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	_, b := riderBuild(v, s.bike, level.Add(move))
	grip := s.grip.Add(s.move)
	f := &drawing.Figure{Title: words.Of("Seated and standing ready on the same bike at sag")}
	who := sitterOf(v)
	left, trunk, seated := who.seatedScene(b, grip)
	right := who.standingScene(b, now, geometry.SlopeAngle(v.Of(measure.Grade)))
	right = append(right, roomBand(figure.At(now.Centre), r)...)
	if s.move != (geometry.Point{}) {
		right = append(right, before(v, s, level)...)
	}
	elbow := words.Of("the elbows bend {0}", r.At(readyElbow).Uncertain())
	if !now.Reaches() {
		elbow = words.Of("the straight arms end {0} before the grips", measure.Millimetres(-now.Slack))
	}
	stands := words.Of("Standing ready, the trunk {0} above the ground, the hips lie {1} behind the crank axle, "+
		"{2}, and the front knee bends {3}. The centre of mass is marked on the plumb line over the crank axle.",
		measure.Degrees(now.Trunk.Angle), measure.Millimetres(now.HipBehind()), elbow,
		measure.Degrees(now.Front.KneeBend))
	if !seated {
		f.Title = words.Of("Standing ready on the bike at sag")
		f.Description = stands
		f.Add(right...)
		return f
	}
	f.Description = words.Of("One rider on one bike at sag, seated and standing ready. Seated "+
		"with the elbows bent {0}, the trunk leans {1} above the ground. {2}", measure.Degrees(fit.SeatedElbow),
		measure.Degrees(trunk), stands)
	bothWaysOf(f, left, right)
	standing := &f.Frames[len(f.Frames)-1]
	standing.Details = append(roomShown(figure.At(now.Centre), r), gripsShown(figure.At(s.grip), figure.At(grip))...)
	return f
}

// roomShown is the room of the hips, larger: its shorter way is often a few line widths.
func roomShown(centre drawing.Point, r *calculators.Result) []drawing.Detail {
	back, ahead := r.At(roomBack), r.At(roomForward)
	if !back.Exists() || !ahead.Exists() || back.Value < 0 || ahead.Value < 0 {
		return nil
	}
	from, to := -float64(back.Value), float64(ahead.Value)
	return []drawing.Detail{{At: centre.Plus(drawing.Point{X: (from + to) / 2}), Radius: max(60, (to-from)/2+24),
		Caption: words.Of("the room of your hips"), Apart: min(-from, to) / 3}}
}

// gripsShown are the grips before and after they were moved.
func gripsShown(was, is drawing.Point) []drawing.Detail {
	apart := is.Minus(was).Length()
	if apart < 0.5 || apart > 200 {
		return nil
	}
	return []drawing.Detail{{At: was.Plus(is).Times(0.5), Radius: max(50, 0.5*apart+34), Apart: apart,
		Caption: words.Of("the grips, before and after"), Marks: []drawing.Mark{
			drawing.Line{Role: drawing.Hot, Points: []drawing.Point{was, is}}}}}
}

// bothWaysOf puts the seated rider and the standing one beside or below each other.
func bothWaysOf(f *drawing.Figure, seated, standing []drawing.Mark) {
	f.Least = 18
	f.Frame(words.Of("Seated"), seated...)
	f.Frame(words.Of("Standing ready"), standing...)
}

// roomBand shades how far the centre of mass can go back until the arms are straight, and
// forward until they fold.
func roomBand(centre drawing.Point, r *calculators.Result) []drawing.Mark {
	back, ahead := r.At(roomBack), r.At(roomForward)
	if !back.Exists() || !ahead.Exists() || back.Value < 0 || ahead.Value < 0 {
		return nil
	}
	const half = 34
	from, to := centre.Plus(
		drawing.Point{X: -float64(back.Value)},
	), centre.Plus(
		drawing.Point{X: float64(ahead.Value)},
	)
	return []drawing.Mark{
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Fill: drawing.Wash, Closed: true, Points: []drawing.Point{
			from.Plus(drawing.Point{Y: half}), to.Plus(drawing.Point{Y: half}), to.Plus(drawing.Point{Y: -half}),
			from.Plus(drawing.Point{Y: -half})}},
		drawing.Circle{Role: drawing.Body, Fill: drawing.Sheet, Centre: centre, Radius: 24},
		drawing.Cross{Role: drawing.Body, At: centre, Size: 24},
		drawing.Label{
			Role:     drawing.Hot,
			At:       from,
			Text:     words.Of("back {0}", back.Amount()),
			Side:     drawing.Point{X: -1},
			Priority: 2,
		},
		drawing.Label{
			Role:     drawing.Hot,
			At:       to,
			Text:     words.Of("forward {0}", ahead.Amount()),
			Side:     drawing.Point{X: 1},
			Priority: 2,
		},
	}
}

// before returns the rider and the cockpit as they were, in thin soft lines.
func before(v calculators.Values, s stand, level geometry.Point) []drawing.Mark {
	was, err := s.rider.Ready(s.grip)
	if err != nil {
		return nil
	}
	_, b := riderBuild(v, s.bike, level)
	marks := figure.FrontOutline(b)
	marks = append(marks, figure.PoseOutline(figure.Standing(was, v.Of(measure.SoleHeight)))...)
	return append(marks, drawing.Label{Role: drawing.Before, At: figure.At(was.Trunk.Shoulder),
		Text: words.Of("before"), Side: drawing.Point{X: -1, Y: 1}})
}

// emptyReady draws the bike without a rider.
func emptyReady(v calculators.Values, s stand) *drawing.Figure {
	_, b := riderBuild(v, s.bike, geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}.Add(moveOf(v)))
	f := &drawing.Figure{Title: words.Of("The bike at sag"),
		Description: words.Of("The bike alone, because no rider of these lengths stands ready on it like that.")}
	b.CrankAngle = 90
	f.Add(figure.Scene(b, nil)...)
	return f
}

// whole rounds an angle to whole degrees when it is said: a figure has no room for
// decimals, and nobody can hold a posture to a tenth of a degree.
func whole(a measure.Amount) measure.Amount { a.Extra = -1; return a }

package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// readyMotion raises and lowers the chest of the reader who stands ready.
func readyMotion() *calculators.Motion {
	return &calculators.Motion{Name: "chest-goes-down",
		Title: words.Of("The lower the chest, the more the elbows bend"),
		Description: words.Of("A rider stands ready on the bike at sag, no weight on the hands. The lower the chest, " +
			"the further back the hips and the more the elbows bend. Grips, feet and knees stay as they are."),
		Label: "Raise the chest", Unit: measure.Deg, From: 30, To: 60, Step: 1,
		States: []float64{30, 45, 60}, Least: threeAbreast, Swept: []*measure.Quantity{measure.TrunkAngle},
		Draw: drawChestAt,
	}
}

func drawChestAt(v calculators.Values, r *calculators.Result, at float64) drawing.Frame {
	s, ok, p := standOf(v)
	if p != nil {
		return drawing.Frame{}
	}
	k, tall := s.bike.Sagged, v.Of(measure.Stature)
	f := drawing.Frame{Low: drawing.Point{X: k.Rear.X - k.RearRadius - 40, Y: k.Ground() - 60},
		High: drawing.Point{X: k.Front.X + k.FrontRadius + 40, Y: 0.95 * tall}}
	grip := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	_, b := riderBuild(v, s.bike, grip.Add(moveOf(v)))
	trunk := whole(measure.Degrees(at))
	now, err := s.rider.Ready(s.grip.Add(s.move))
	switch {
	case !ok || err != nil:
		f.Caption = words.Of("Trunk at {0}: nobody stands ready like that", trunk)
		f.Marks = figure.Scene(b, nil)
		return f
	case now.Reaches():
		f.Caption = words.Of("Trunk at {0}: elbows bend {1}", trunk, whole(r.At(readyElbow).Amount()))
	default:
		f.Caption = words.Of("Trunk at {0}: straight arms do not reach", trunk)
	}
	b = b.Level(now)
	if _, height, ok := sitterOf(v).seat(b.Bike.SeatAngle); ok {
		b.SeatTube, b.Saddle = height-dropped-115, height-dropped
	}
	pose := figure.Standing(now, v.Of(measure.SoleHeight))
	f.Marks = append(figure.Scene(b, &pose), figure.TrunkAngle(pose, drawing.Hot, words.Text{}))
	if now.Reaches() {
		f.Marks = append(f.Marks, figure.ElbowBend(pose, drawing.Ink, words.Text{}))
	}
	return f
}

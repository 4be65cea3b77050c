package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainSetback(v calculators.Values, r *calculators.Result) {
	back, angle, knee := r.At(saddleSetback), r.At(angleAtSaddle), r.At(kneeAhead)
	if back.Exists() {
		back.Meaning = words.Of("Further back loads the rear wheel and lightens the front on a climb; further " +
			"forward holds the front down and puts more on your hands. It is right when you can sit in the middle " +
			"of the saddle on a steep pitch.")
	} else {
		back.Meaning = words.Of("No saddle can be there: check the saddle height and the angles.")
	}
	switch {
	case angle.Exists():
		angle.Meaning = words.Of("The angle you sit on, which need not be the printed one. On a climb of 20 % it "+
			"falls to {0} against gravity, and sag takes more.",
			measure.Degrees(geometry.SeatAngleOnGrade(float64(angle.Value), 20)))
	default:
		angle.Meaning = words.Of("Not guessed: many seat tubes do not point at the crank axle. Type {0}, or "+
			"hang a plumb line and type {1}.", measure.SeatTubeAngle.Named(), measure.NoseSetback.Named())
	}
	if knee.Exists() {
		knee.Meaning = words.Of("The old plumb-line rule. It describes where you sit and is no target: allow it "+
			"{0} to {1} either way. It means the joint here; books hang the thread from points {1} to {2} further "+
			"forward.",
			measure.Millimetres(10), measure.Millimetres(20), measure.Millimetres(40))
	} else {
		knee.Meaning = words.Of("With these lengths the leg does not reach the pedal there.")
	}
	explainMove(v, r)
	noteSeatLine(v, r)
	if back.Exists() {
		r.Tables = append(r.Tables, railTable(v, r, float64(back.Value)))
	}
	r.Note(calculators.PlainNote, "It is often said that a saddle further forward loads the kneecap. Two "+
		"laboratory studies do not support it; sitting back raised other loads in the knee by 14 to 19 %. Neither "+
		"study looked for injuries, and no study ties the plumb line to injuries.")
	r.At(wantedSetback).Meaning = words.Of("The setback you want. Taken over, it is the next thing to set.")
	if !v.Has(measure.NewSaddleSetback) {
		r.At(wantedSetback).Meaning = words.Of("Say above which setback you want, and it can go on your sheet.")
	}
	r.Figure = setbackFigure(v, r)
}

// explainMove says whether the rails allow the move to the setback that is wanted.
func explainMove(v calculators.Values, r *calculators.Result) {
	move := r.At(moveBack)
	if !move.Exists() {
		return
	}
	m := float64(move.Value)
	by := measure.Uncertain{Amount: measure.Millimetres(math.Abs(m)), Plus: float64(move.Uncertainty)}
	ends := v.Of(measure.RailShift) + m
	switch {
	case math.Abs(m) < 1:
		r.Note(calculators.PlainNote, "The saddle stands where you want it.")
	case math.Abs(ends) <= railZone && m > 0:
		r.Note(calculators.PlainNote, "For the setback you want, move it back by {0}, in steps of 5 mm. That stays "+
			"inside a usual marked zone of the rails; the marks on yours decide.", by)
	case math.Abs(ends) <= railZone:
		r.Note(calculators.PlainNote, "For the setback you want, move it forward by {0}, in steps of 5 mm. That "+
			"stays inside a usual marked zone of the rails; the marks on yours decide.", by)
	case m > 0:
		r.Note(calculators.CheckNote, "For the setback you want it would go back by {0}, which is more than rails "+
			"usually allow: about {1} from where they are now. The rest needs a post whose clamp is further back.",
			by, measure.Millimetres(max(0, railZone-v.Of(measure.RailShift))))
	default:
		r.Note(calculators.CheckNote, "For the setback you want it would go forward by {0}, which is more than "+
			"rails usually allow: about {1} from where they are now. The rest needs a post whose clamp is further "+
			"forward.", by, measure.Millimetres(max(0, railZone+v.Of(measure.RailShift))))
	}
}

// noteSeatLine says how far to trust the chart, or whether the plumb line agrees with it.
func noteSeatLine(v calculators.Values, r *calculators.Result) {
	if !v.Has(measure.NoseSetback) && !v.Has(measure.SeatTubeAngle) {
		r.Note(calculators.CheckNote, "The saddle was placed on the printed angle, which holds at one height only. "+
			"On a frame whose seat tube is slacker than that a high saddle is {0} or more further back: hang the "+
			"plumb line, or type the tube’s own angle.", measure.Millimetres(10))
		return
	}
	tape, chart := r.At(setbackByTape), r.At(setbackByChart)
	// Where only one of the two exists nothing is said: NaN is not larger than anything.
	apart := math.Abs(float64(tape.Value - chart.Value))
	if apart > 5+math.Hypot(float64(tape.Uncertainty), float64(chart.Uncertainty)) {
		r.Note(calculators.CheckNote, "Plumb line and chart disagree by {0}. The plumb line was used. "+
			"Check the nose’s length and the floor; if both hold, the printed angle is read at another height "+
			"or the tube does not point at the crank axle.", measure.Millimetres(apart))
	}
}

// railTable shows where the saddle would be for each 5 mm along the rails, its height
// being set again after each step.
func railTable(v calculators.Values, r *calculators.Result, setback float64) calculators.Table {
	t := calculators.Table{Name: "rails",
		Caption: words.Of("Along the rails, the height set again after each step"), Columns: []calculators.Column{
			{Name: "rail-shift", Label: words.Of("Saddle on its rails"), Unit: "mm"},
			{Name: "setback", Label: words.Of("Setback"), Unit: "mm"},
			{Name: "seat-angle-at-saddle", Label: words.Of("Seat angle"), Unit: "deg"},
			{Name: "knee-over-spindle", Label: words.Of("Knee ahead of the spindle"), Unit: "mm"},
		}}
	height, now := v.Of(measure.SaddleHeight), v.Of(measure.RailShift)
	chart := byChart(v, now)
	for s := -float64(railZone); s <= railZone; s += 5 {
		at := setback + s - now
		if moved := byChart(v, s) - chart; !math.IsNaN(moved) {
			at = setback + moved
		}
		angle := math.NaN()
		if r.At(angleAtSaddle).Exists() {
			angle = angleAt(height, at)
		}
		t.Rows = append(t.Rows, []words.Sayer{measure.Millimetres(s), measure.Millimetres(at), measure.Degrees(angle),
			measure.Millimetres(kneeOver(v, height, at))})
	}
	return t
}

// setbackFigure draws the leg at three o'clock with the plumb line from the knee.
func setbackFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	back, knee := r.At(saddleSetback), r.At(kneeAhead)
	height := v.Of(measure.SaddleHeight)
	f := &drawing.Figure{Title: words.Of("How far behind the cranks you sit, the crank level and forward")}
	angle := angleAt(height, float64(back.Value))
	if math.IsNaN(angle) {
		angle = v.Of(measure.SeatAngle)
	}
	b := figure.Demo(v.Of(measure.Inseam), height).SeatAt(angle)
	b.Crank, b.CrankAngle = v.Of(measure.CrankLength), 90
	rider, _ := seatedAt(v, angle)
	pose, _ := rider.At(height, 90)
	top := b.SaddleTop()
	if knee.Exists() {
		p := figure.Legs(pose, nil, v.Of(measure.SoleHeight))
		b.PedalAngle = pose.HeelUp
		f.Add(figure.Scene(b, &p)...)
		f.Add(kneeThread(b, p, float64(knee.Value))...)
		f.Description = words.Of("A leg with the crank level and forward. The saddle point lies {0} behind the "+
			"crank axle, and the knee joint {1} ahead of the pedal’s spindle, minus meaning behind.",
			back.Uncertain(), knee.Uncertain())
	} else {
		f.Add(figure.Pedalling(b, nil)...)
		f.Description = words.Of("A saddle whose point lies {0} behind the crank axle. The leg is left out, "+
			"because it does not reach the pedal.", back.Uncertain())
	}
	f.Add(figure.HiddenSaddle(b), drawing.Axis{Role: drawing.Soft, B: figure.Point{Y: top.Y + 60}}, figure.SeatLine(b))
	if back.Exists() {
		f.Add(figure.Level(drawing.Hot, top, figure.Point{}, top.Y+150, words.Of("Setback {0}", back.Uncertain())))
	}
	return f
}

// kneeThread hangs the plumb line from the knee, beside the pedal's spindle, and says which
// side of it the knee is: ahead where positive, mm.
func kneeThread(b figure.Build, p figure.Pose, ahead float64) []drawing.Mark {
	floor := b.Bike.Ground()
	low := figure.Point{X: p.Knee.X, Y: floor + 40}
	said := words.Of("Knee {0} ahead of the spindle", measure.Millimetres(ahead))
	if ahead < 0 {
		said = words.Of("Knee {0} behind the spindle", measure.Millimetres(-ahead))
	}
	return []drawing.Mark{
		drawing.Axis{Role: drawing.Body, A: p.Knee, B: low},
		drawing.Limb{Role: drawing.Body, Fill: drawing.Sheet, A: low.Plus(figure.Point{Y: 24}), B: low, Ra: 11, Rb: 3},
		figure.Level(drawing.Ink, low, b.Spindle(), floor-70, said),
	}
}

package cockpit

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// kneeBend returns how far the knee of a pose bends, degrees.
func kneeBend(pose figure.Pose) float64 {
	thigh, shank := pose.Knee.Minus(pose.Hip), pose.Ankle.Minus(pose.Knee)
	return math.Abs(shank.Angle() - thigh.Angle())
}

// kneeReading draws how a knee is read on the bike: three points, and a goniometer or the
// lines of a photo on them.
func kneeReading(b figure.Build, pose figure.Pose) *drawing.Figure {
	pose.Shoulder, pose.Elbow, pose.Hand, pose.Head = drawing.Point{}, drawing.Point{}, drawing.Point{}, drawing.Point{}
	bend := kneeBend(pose)
	f := &drawing.Figure{
		Title: words.Of("Your knee, read with a goniometer or from a photo"),
		Description: words.Of("A rider sits on the bike, seen square from the side, the crank in line with the seat. "+
			"Three points are marked: the knob of the hip, the bump at the outer side of the knee, the outer ankle "+
			"knob. The goniometer’s middle lies on the knee; one arm points to the hip and the other to the ankle. "+
			"The bend is the angle between the lower leg and the thigh’s line run on past the knee, {0} here.",
			whole(measure.Degrees(bend))),
		Least: 18,
	}
	low := drawing.Point{X: pose.Hip.X - 320, Y: b.Spindle().Y - 130}
	high := drawing.Point{X: pose.Knee.X + 320, Y: pose.Hip.Y + 200}
	mark := func(at drawing.Point, side float64, english words.English) []drawing.Mark {
		return []drawing.Mark{
			drawing.Circle{Role: drawing.Hot, Fill: drawing.Solid, Centre: at, Radius: 13},
			drawing.Label{Role: drawing.Ink, At: at, Side: drawing.Point{X: side, Y: 0.2}, Leader: true,
				Text: words.Of(english), Priority: 2}}
	}
	points := append(figure.Pedalling(b, &pose), figure.SeatLine(b))
	points = append(points, mark(pose.Hip, -1, "Knob of the hip")...)
	points = append(points, mark(pose.Knee, 1, "Bump outside the knee")...)
	points = append(points, mark(pose.Ankle, -1, "Outer ankle knob")...)
	read := append(figure.Pedalling(b, &pose), goniometer(pose)...)
	read = append(read, figure.KneeBend(pose, drawing.Hot, words.Of("{0}", whole(measure.Degrees(bend)))))
	f.Frames = []drawing.Frame{
		{Caption: words.Of("1. Seated, crank in line with the seat: mark three points"), Low: low, High: high,
			Marks: points},
		{Caption: words.Of("2. Lay the goniometer on them and read"), Low: low, High: high, Marks: read},
	}
	return f
}

// goniometer is the tool as it lies on a leg: a disc on the knee and an arm to each side.
func goniometer(pose figure.Pose) []drawing.Mark {
	const disc, half = 62, 15
	arm := func(to drawing.Point) drawing.Mark {
		return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: pose.Knee,
			B: pose.Knee.Along(to.Minus(pose.Knee), 0.8), Ra: half, Rb: half}
	}
	marks := []drawing.Mark{arm(pose.Hip), arm(pose.Ankle),
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: pose.Knee, Radius: disc}}
	for angle := 0.0; angle < 360; angle += 30 {
		d := drawing.Polar(angle, 1)
		marks = append(marks, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin,
			Points: []drawing.Point{pose.Knee.Along(d, 0.74*disc), pose.Knee.Along(d, disc)}})
	}
	line := func(to drawing.Point) drawing.Mark {
		return drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []drawing.Point{pose.Knee, to}}
	}
	return append(marks, line(pose.Hip), line(pose.Ankle), drawing.Cross{Role: drawing.Hot, At: pose.Knee, Size: 16})
}

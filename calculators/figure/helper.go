package figure

import "plumbline/calculators/drawing"

// Helper draws somebody of middle size who stands on the far side of a bike, faces the
// reader and holds the bike with one hand or both: in thin lines, to be drawn before the bike.
// The place is that between the shoes.
func Helper(stands Point, holds ...Point) []drawing.Mark {
	side := 1.0
	if len(holds) > 0 && holds[0].X < stands.X {
		side = -1
	}
	at := func(x, y float64) Point { return stands.Plus(Point{X: side * x, Y: y}) }
	limb := func(a, b Point, ra, rb float64) drawing.Mark {
		return drawing.Limb{Role: drawing.Before, Pen: drawing.Thin, Fill: drawing.Sheet, A: a, B: b, Ra: ra, Rb: rb}
	}
	marks := []drawing.Mark{
		limb(at(185, 1370), at(225, 1120), 48, 40), limb(at(-185, 1370), at(-225, 1120), 48, 40),
	}
	for _, x := range [2]float64{-95, 95} {
		marks = append(marks, limb(at(x, 60), at(1.35*x, 35), 38, 34), limb(at(x, 500), at(x, 110), 58, 40),
			limb(at(x, 900), at(x, 500), 85, 62))
	}
	trunk := drawing.Line{Role: drawing.Before, Pen: drawing.Thin, Fill: drawing.Sheet, Closed: true, Smooth: true,
		Points: torsoFront(95, 900, 1430, 1)}
	for i, p := range trunk.Points {
		trunk.Points[i] = stands.Plus(p)
	}
	marks = append(marks, limb(at(0, 1420), at(0, 1520), 55, 52), trunk)
	for _, m := range faceFront(1740, 226) {
		face := faint(m).(drawing.Line)
		face.Fill = drawing.Sheet
		for i, p := range face.Points {
			face.Points[i] = stands.Plus(p)
		}
		marks = append(marks, face)
	}
	// The forearms: each hangs, or reaches for the bike with its fist.
	for i, x := range [2]float64{225, -225} {
		elbow := at(x, 1120)
		if i >= len(holds) {
			marks = append(marks, limb(elbow, elbow.Plus(Point{Y: -240}), 40, 30))
			continue
		}
		wrist := holds[i].Along(elbow.Minus(holds[i]).Unit(), 60)
		marks = append(marks, limb(elbow, wrist, 40, 28), limb(wrist, holds[i], 38, 32))
	}
	return marks
}

package figure

import "plumbline/calculators/drawing"

// Radii of chainring and sprocket as drawn, mm: 30 and 18 teeth.
const (
	ringRadius = 61
	cogRadius  = 37
)

// farCrank returns the crank and pedal on the far side.
func farCrank(b Build) []drawing.Mark {
	spindle := b.FarSpindle()
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, A: Point{}, B: spindle, Ra: 17,
			Rb: 13},
		pedal(spindle, b.FarPedalAngle, drawing.Thin),
	}
}

// drive returns chain, chainring, near crank and pedal.
func drive(b Build) []drawing.Mark {
	axle := At(b.Bike.Rear)
	spindle := b.Spindle()
	u := axle.Unit()
	n := u.Left()
	chain := func(side float64) drawing.Mark {
		return drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{
			Point{}.Along(n, side*ringRadius), axle.Along(n, side*cogRadius),
		}}
	}
	return []drawing.Mark{
		chain(1), chain(-1),
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Centre: axle, Radius: cogRadius},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Centre: Point{}, Radius: ringRadius},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{}, B: spindle, Ra: 19, Rb: 14},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: Point{}, Radius: 10},
		pedal(spindle, b.PedalAngle, drawing.Wide),
	}
}

// pedal returns a platform pedal whose face slopes by an angle, heel-up positive.
func pedal(spindle Point, slope float64, pen drawing.Pen) drawing.Mark {
	u := drawing.Polar(-slope, 1)
	return drawing.Tube{Role: drawing.Ink, Pen: pen, Fill: drawing.Sheet,
		A: spindle.Along(u, -48), B: spindle.Along(u, 48), Ra: 9, Rb: 9}
}

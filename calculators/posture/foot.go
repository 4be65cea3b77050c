package posture

import "plumbline/calculators/geometry"

// Foot is a foot on a pedal with the sole level: distances in mm from the pedal
// spindle's centre.
type Foot struct {
	// Behind and Above place the ankle behind and above the spindle.
	Behind, Above float64
	// Heel, Ball and Toe place the foot's own marks ahead of the spindle, heel
	// negative, and Sole their height above it. They are for drawing and leave
	// the chain alone.
	Heel, Ball, Toe, Sole float64
}

// mark returns a mark of the foot in the bike's axes, the foot turned heel up
// about the spindle.
func (f Foot) mark(spindle geometry.Point, ahead, above, sin, cos float64) geometry.Point {
	return geometry.Point{
		X: spindle.X + float64(ahead*cos) + float64(above*sin),
		Y: spindle.Y - float64(ahead*sin) + float64(above*cos),
	}
}

// Ankle returns the ankle joint with the heel raised by an angle in degrees.
//
//	A = P + Lf·(cos α, sin α)    α = 180° − β − φ
//
// Lf and β are the ankle's distance and elevation seen from the spindle P with
// the sole level, φ the heel-up angle.
func (f Foot) Ankle(spindle geometry.Point, heelUp float64) geometry.Point {
	sin, cos := sincos(heelUp)
	return f.mark(spindle, -f.Behind, f.Above, sin, cos)
}

// Ankling is how the heel rises and falls through the pedal circle.
//
//	φ = Mean − Swing·sin(θ − Phase)
//
// All in degrees; θ is the crank angle from the top.
type Ankling struct{ Mean, Swing, Phase float64 }

// HeelUp returns the foot's heel-up angle at a crank angle.
func (a Ankling) HeelUp(crank float64) float64 {
	if a.Swing == 0 {
		return a.Mean
	}
	sin, _ := sincos(crank - a.Phase)
	return a.Mean - float64(a.Swing*sin)
}

package geometry

// Cockpit is what sits on the steering axis above the head tube, in mm and
// degrees.
type Cockpit struct {
	// Headset is the height of the upper bearing cover above the head tube, and
	// Spacers the stack of rings between that cover and the stem.
	Headset, Spacers float64
	// ClampHeight is the stem's height on the steerer.
	ClampHeight float64
	// Stem is the stem's length from the steering axis to the bar's centre, and
	// StemAngle its angle above the square to the steering axis.
	Stem, StemAngle float64
	// Rise is the grip centre's height above the bar's clamp centre and Back its
	// distance behind it, both with the bar rolled to 0.
	Rise, Back float64
	// Roll turns the bar forward about its clamp centre.
	Roll float64
}

// Hold is where a cockpit puts the hands, in the bike's axes.
type Hold struct {
	// StemClamp is the stem's centre on the steering axis.
	StemClamp Point
	// Bar is the bar's clamp centre.
	Bar Point
	// Grip is the middle of the grips.
	Grip Point
}

// Hold returns the cockpit's points on a bike.
//
//	K = T + k·(−cos θ, sin θ)           k = headset + spacers + clamp/2
//	B = K + ℓ·(sin(θ − ψ), cos(θ − ψ))
//	G = B + (−b·cos ρ + h·sin ρ, b·sin ρ + h·cos ρ)
//
// ℓ and ψ are the stem's length and angle, b and h the bar's back sweep and
// rise at the grip centre, ρ its roll. It returns false when a value is not a
// number.
//
// Source: plane geometry.
func (c Cockpit) Hold(b Bike) (Hold, bool) {
	var h Hold
	h.StemClamp = b.OnAxis(-(c.Headset + c.Spacers + c.ClampHeight/2))
	h.Bar = h.StemClamp.Add(c.StemVector(b.HeadAngle))
	h.Grip = h.Bar.Add(c.BarVector())
	return h, h.StemClamp.Finite() && h.Bar.Finite() && h.Grip.Finite()
}

// StemVector returns the way from the steering axis to the bar's centre on a
// head angle.
func (c Cockpit) StemVector(headAngle float64) Point {
	return Polar(c.Stem, 90-(headAngle-c.StemAngle))
}

// BarVector returns the way from the bar's clamp centre to the grip's centre.
func (c Cockpit) BarVector() Point {
	return Point{-c.Back, c.Rise}.Turn(-c.Roll)
}

// SpacerVector returns the way that a stack of spacers moves the bar, on a head
// angle.
//
//	(−s·cos θ, s·sin θ)
func SpacerVector(spacers, headAngle float64) Point {
	return Polar(spacers, 180-headAngle)
}

// SweepBack returns the rearward offset of the grip's centre, in mm, of a bar
// with a back sweep in degrees over a length of swept bar in mm.
//
//	length·sin(sweep)
func SweepBack(length, sweep float64) float64 {
	sin, _ := sincos(sweep)
	return length * sin
}

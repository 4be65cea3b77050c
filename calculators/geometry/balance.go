package geometry

import "math"

// Balance is a loaded bike seen as one weight on two wheels. All three lengths
// share a unit.
type Balance struct {
	// Ahead is the centre of mass's distance ahead of the rear contact, and
	// Height its height above the ground, both with the bike on the level.
	Ahead, Height float64
	// Wheelbase is the distance between the contacts.
	Wheelbase float64
}

// Valid reports whether all three are numbers, and height and wheelbase above 0.
func (b Balance) Valid() bool {
	return finite(b.Ahead, b.Height, b.Wheelbase) && b.Height > 0 && b.Wheelbase > 0
}

// orNothing returns a value, or 0 where it is too large to be a number.
func orNothing(v float64) float64 {
	if !finite(v) {
		return 0
	}
	return v
}

// FrontLoad returns the front wheel's normal force as a share of the weight, on
// a slope in degrees (uphill positive) with a forward acceleration along it in g.
//
//	N_f/mg = (x·cos α − h·sin α − h·a) / w
//
// Negative means that the wheel has left the ground. It returns 0 for a balance
// that is not Valid.
//
// Source: equilibrium of forces and moments on a plane figure.
func (b Balance) FrontLoad(slope, acceleration float64) float64 {
	if !b.Valid() || !finite(slope, acceleration) {
		return 0
	}
	sin, cos := sincos(slope)
	return orNothing(float64(b.Ahead/b.Wheelbase*cos) - float64(b.Height/b.Wheelbase*(sin+acceleration)))
}

// RearLoad returns the rear wheel's normal force as a share of the weight; with
// FrontLoad it sums to the cosine of the slope.
//
//	N_r/mg = ((w − x)·cos α + h·sin α + h·a) / w
func (b Balance) RearLoad(slope, acceleration float64) float64 {
	if !b.Valid() || !finite(slope, acceleration) {
		return 0
	}
	sin, cos := sincos(slope)
	return orNothing(float64((1-b.Ahead/b.Wheelbase)*cos) + float64(b.Height/b.Wheelbase*(sin+acceleration)))
}

// FrontShare returns the front wheel's share of the two wheel loads, steady on a
// grade in percent (the tangent of the slope), 0 to 1 while both wheels touch.
//
//	x/w − (h/w)·tan α
func (b Balance) FrontShare(grade float64) float64 {
	if !b.Valid() || !finite(grade) {
		return 0
	}
	return orNothing(b.Ahead/b.Wheelbase - float64(b.Height/b.Wheelbase*(grade/100)))
}

// LightSlope returns the slope, in degrees, at which the front wheel goes light
// in each pedal push, when the drive force swings by a share κ about its mean.
//
//	tan α = x / ((1 + κ)·h)
//
// κ of 0 is the steady push; 0.6 to 1.0 is what seated pedalling is said to
// reach (from memory). It returns 0 for a balance that is not Valid or κ below 0.
func (b Balance) LightSlope(swing float64) float64 {
	if !b.Valid() || !finite(swing) || swing < 0 {
		return 0
	}
	return orNothing(math.Atan2(b.Ahead, b.Height*(1+swing)) / radian)
}

// PitchOver returns the deceleration, in g, at which the rear wheel lifts, on a
// slope in degrees (downhill negative), if the front tyre grips.
//
//	(w − x)/h·cos α + sin α
//
// Source: Riel 2005, equation 6, gives the same for a descent; 0.7 g on the
// level becomes 0.6 g on a grade of 10 % down.
func (b Balance) PitchOver(slope float64) float64 {
	if !b.Valid() || !finite(slope) {
		return 0
	}
	sin, cos := sincos(slope)
	return orNothing(float64((b.Wheelbase-b.Ahead)/b.Height*cos) + sin)
}

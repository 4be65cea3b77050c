package geometry

import "math"

// CentreByScale returns where the centre of mass of a bike is that stood on a scale
// by its rear wheel twice: on the level, and with the front axle raised.
//
//	x  = w·(1 − R/m)                       ahead of the rear axle, on the level
//	x′ = w′·(1 − R′/m)                     the same, raised
//	y  = (x·cos θ − x′)/sin θ              above the rear axle, on the level
//	θ  = asin((d + rise)/D) − atan2(d, w)  d = r_F − r_R, D the distance of the axles
//
// rearLevel R and rearRaised R′ are the rear wheel's readings and total m the bike's
// mass, in one unit; rise in mm. The balance is the level bike's. It returns false
// unless the readings are shares of the mass and the bike can be raised so far.
//
// Source: moments about the rear axle, level and turned; Riel 2005 weighs a bike so.
func CentreByScale(b Bike, total, rearLevel, rearRaised, rise float64) (Balance, bool) {
	w, step := b.Wheelbase(), b.FrontRadius-b.RearRadius
	apart := Point{w, step}.Length()
	if !finite(total, rearLevel, rearRaised, rise) || !(total > 0) || !(rise > 0) || !(step+rise < apart) {
		return Balance{}, false
	}
	angle := (math.Asin((step+rise)/apart) - math.Atan2(step, w)) / radian
	sin, cos := sincos(angle)
	level := w * (1 - rearLevel/total)
	raised := (float64(w*cos) - float64(step*sin)) * (1 - rearRaised/total)
	at := Balance{Ahead: level, Height: b.RearRadius + (float64(level*cos)-raised)/sin, Wheelbase: w}
	return at, at.Valid() && level > 0 && level < w
}

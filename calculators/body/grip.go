package body

// GripDiameter returns the diameter, in mm, of the cylinder that hands of a
// length in mm rated most comfortable to grip.
//
//	0.197·hand length
//
// It was found for short squeezes of a still handle, not for hours of
// vibration: take it as a middle, with 30 to 40 mm as the span that people rated
// best.
//
// Source: Kong and Lowe 2005, Int J Ind Ergon 35:495-507 (abstract).
func GripDiameter(handLength float64) float64 { return 0.197 * handLength }

// GripHeld returns the diameter, in mm, of the bicycle grip that hands of a length in
// mm liked best.
//
//	0.233·hand length
//
// It stands against GripDiameter: there people squeezed bare metal as hard as they
// could, here 17 people held grips of a bicycle and liked those made for their own
// hand.
//
// Source: Hwang and others, Determination of bicycle handle diameters considering
// hand anthropometric data and user satisfaction (abstract).
func GripHeld(handLength float64) float64 { return 0.233 * handLength }

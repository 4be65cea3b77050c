package saddle

// Published rules for the saddle's height. Each names its own two ends, because
// two different lengths are called saddle height in books: from the bottom
// bracket, and from the pedal spindle with the crank in line with the seat tube,
// which is one crank longer.

// InsideLegFactor returns the saddle height from the bottom bracket's centre to
// the saddle's top along the seat line, in mm.
//
//	0.883·I
//
// inseam I: inside leg, mm. The rule was made with cranks of 170 to 175 mm and
// ignores their length; saddle-height moves it by the difference from 172.5.
//
// Source: factor in Peveler et al. 2005, J Exerc Physiol online 8(1):51-55; its
// origin is one coach's practice in the 1980s, no controlled study.
func InsideLegFactor(inseam float64) float64 { return 0.883 * inseam }

// HundredNine returns the saddle height from the pedal spindle at its farthest to
// the saddle's top, in mm.
//
//	1.09·I
//
// inseam I: inside leg, mm. It equals InsideLegFactor plus the crank at an inside
// leg of crank/0.207.
//
// Source: Hamley and Thomas 1967, J Physiol 191:55P-57P (from memory); factor in
// Peveler et al. 2005.
func HundredNine(inseam float64) float64 { return 1.09 * inseam }

// KneeRegression returns the saddle height from the pedal spindle at its farthest
// to the saddle's top, in mm, for a knee bend in degrees while pedalling.
//
//	221 + 0.896·I − 1.5·K
//
// inseam I: inside leg, mm, 780 to 920: below, its intercept carries short riders
// too high. knee K: 30 to 40 degrees, crank in line with the seat tube. Its slope
// over K lies between riders and is not what one rider's knee does.
//
// Source: Ferrer-Roca et al. 2012, J Strength Cond Res 26(11):3025-3029, 23 elite
// men; coefficients from memory, checked against the abstract's 108.6 to 110.4 %
// of the inside leg at 40 and 30 degrees.
func KneeRegression(inseam, knee float64) float64 {
	return 221 + float64(0.896*inseam) - float64(1.5*knee)
}

// Trochanteric returns the saddle height from the pedal spindle at its farthest
// to the saddle's top, in mm: all of the trochanter's height.
//
//	1.00·T
//
// trochanterHeight T: floor to the greater trochanter, barefoot, mm.
//
// Source: Nordeen-Snyder 1977, Med Sci Sports 9:113-117, ten women (from memory);
// the survey's trochanter stands at 106.5 % (men) and 108.1 % (women) of the
// inside leg, which supports the 107.1 % also printed there.
func Trochanteric(trochanterHeight float64) float64 { return trochanterHeight }

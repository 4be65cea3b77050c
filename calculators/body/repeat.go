package body

import "math"

// TechnicalError returns the technical error of measurement of pairs of
// repeated readings, in the unit of the readings.
//
//	TEM = √(Σ d² / 2N)
//
// d is the difference within a pair and N the number of pairs. It returns false
// for no pairs or a reading that is not a number.
//
// Source: the usual anthropometric definition, as printed in Anthropometry,
// Apparel Sizing and Design, second edition, equation 2.2.
func TechnicalError(pairs [][2]float64) (float64, bool) {
	if len(pairs) == 0 {
		return 0, false
	}
	sum := 0.0
	for _, p := range pairs {
		d := p[0] - p[1]
		sum += float64(d * d)
	}
	tem := math.Sqrt(sum / float64(2*len(pairs)))
	return tem, !math.IsNaN(tem) && !math.IsInf(tem, 0)
}

// Package body is the rider as lengths and masses: a missing length estimated
// from a measured one with its honest error, the segments of a leg, the share
// of mass that each segment carries, and where the whole body's centre of mass
// lies.
//
// Lengths are mm, masses kg. The regressions come from one open survey of 4082
// men and 1986 women: soldiers, adults of 17 to 58 years, barefoot. They are no
// guide for anyone still growing.
package body

import "math"

// Sex picks a reference sample, nothing else. It may be left Unknown.
type Sex int

// The reference samples.
const (
	Unknown Sex = iota
	Female
	Male
)

// Estimate is a length with its standard uncertainty (one standard deviation),
// both in mm.
type Estimate struct{ Value, SD float64 }

// mix joins the estimates of both samples for a rider without a stated sex.
//
//	value = (f + m)/2    SD = √(residual² + ((m − f)/2)²)
//
// residual² is the mean of both squared residuals. Half the gap between the
// lines enters as an error, so leaving the sex out is never more certain than
// stating it.
func mix(female, male Estimate) Estimate {
	half := (male.Value - female.Value) / 2
	residual := (float64(female.SD*female.SD) + float64(male.SD*male.SD)) / 2
	return Estimate{(female.Value + male.Value) / 2, math.Sqrt(residual + float64(half*half))}
}

// of picks the estimate of a sex.
func (s Sex) of(female, male Estimate) Estimate {
	switch s {
	case Female:
		return female
	case Male:
		return male
	}
	return mix(female, male)
}

// usable reports whether a length can be measured at all.
func usable(v float64) bool { return v > 0 && !math.IsInf(v, 0) }

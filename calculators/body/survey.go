package body

import "math"

// Sample is one sex's numbers for one length: mean, standard deviation and the
// 5th and 95th percentile, in mm, and the least-squares line on stature with
// the standard deviation left around it.
type Sample struct {
	Mean, SD, P5, P95          float64
	Intercept, Slope, Residual float64
}

// Survey is one length of the open anthropometric survey.
//
// Source: ANSUR II, U.S. Army 2010-2012, 4082 men and 1986 women, measured to
// the mm by trained observers; Gordon et al. 2014, NATICK/TR-15/007, public
// domain. Means, percentiles and lines were computed from the public table.
type Survey struct{ Female, Male Sample }

// The numbers of people behind every Sample.
const (
	SurveyMen   = 4082
	SurveyWomen = 1986
)

// The statures, in mm, between which the lines on stature hold. Outside them
// they extrapolate beyond all but about a hundred of the people measured.
const (
	StatureFrom    = 1500
	StatureTo      = 1950
	StatureFromMen = 1600
)

// Extrapolates reports whether a stature in mm lies outside the span that the
// sample of a sex covers.
func Extrapolates(stature float64, sex Sex) bool {
	from := float64(StatureFrom)
	if sex == Male {
		from = StatureFromMen
	}
	return !(stature >= from && stature <= StatureTo)
}

// LeastStature is the stature, mm, below which nothing is estimated: our own choice. It
// lies 2.8 standard deviations below the survey's mean woman, so that hardly anybody
// who was measured is shorter, and many who are shorter still grow.
const LeastStature = 1450

// LeastInseam returns the inside leg, mm, that the survey's line has at LeastStature: what
// tells of a small rider where nobody gave a height. It is 677 for women, 668 for men and
// 672 where the sex was not given.
func LeastInseam(sex Sex) float64 {
	e, _ := Inseam.Proportion(LeastStature, sex)
	return e.Value
}

// Small tells whether somebody is too small for anything to be estimated: by the stature,
// or, where that is NaN, by the inside leg. Both are in mm. Where neither is known it is
// false.
func Small(stature, inseam float64, sex Sex) bool {
	if !math.IsNaN(stature) {
		return stature < LeastStature
	}
	return inseam < LeastInseam(sex)
}

// FromStature estimates the length of a rider of a stature in mm.
//
//	value = a + b·stature    SD = residual
//
// Without a sex it is the mean of both lines with the residual and half their
// gap in quadrature. It returns false for a stature below LeastStature.
func (s Survey) FromStature(stature float64, sex Sex) (Estimate, bool) {
	e, ok := s.Proportion(stature, sex)
	return e, ok && stature >= LeastStature
}

// Proportion returns the length that the survey's line has at a stature, however short:
// for drawing somebody, and for the parts of a body model that nobody measures, such as
// the share of a foot behind the ankle. It is never offered as a reader's own length. It
// returns false for a stature or a length that is not above 0.
func (s Survey) Proportion(stature float64, sex Sex) (Estimate, bool) {
	if !usable(stature) {
		return Estimate{}, false
	}
	e := sex.of(s.Female.at(stature), s.Male.at(stature))
	return e, usable(e.Value) && !math.IsInf(e.SD, 0)
}

// Typical returns the mean and standard deviation of the whole sample of a sex:
// what is known of a rider of whom nothing was measured.
func (s Survey) Typical(sex Sex) Estimate {
	return sex.of(Estimate{s.Female.Mean, s.Female.SD}, Estimate{s.Male.Mean, s.Male.SD})
}

// at reads the sample's line.
func (s Sample) at(stature float64) Estimate {
	return Estimate{s.Intercept + float64(s.Slope*stature), s.Residual}
}

// StatureFromInseam returns the stature whose mean inside leg in the survey is
// the one given, in mm: the survey's line read backwards. It keeps a rider's
// foot and ankle in the survey's own proportion to a measured leg, and is meant
// for that only: as a guess of a person's stature its error is large, and that
// error is returned.
//
//	stature = (inseam − a)/b    SD = residual/b
//
// It returns false for an inside leg that is not above 0.
func StatureFromInseam(inseam float64, sex Sex) (Estimate, bool) {
	if !usable(inseam) {
		return Estimate{}, false
	}
	back := func(s Sample) Estimate {
		return Estimate{(inseam - s.Intercept) / s.Slope, s.Residual / math.Abs(s.Slope)}
	}
	e := sex.of(back(Inseam.Female), back(Inseam.Male))
	return e, usable(e.Value) && !math.IsInf(e.SD, 0)
}

package body

import "math"

// Ratio is one length as a share of another, mean and standard deviation over
// the people of a sample.
type Ratio struct{ Female, Male Estimate }

// Of returns the share for a sex; without one, the mean of both with half their
// gap as a further error.
func (r Ratio) Of(sex Sex) Estimate { return sex.of(r.Female, r.Male) }

// Proportions of the open survey; see Survey for the source.
var (
	// BallPerFoot is heel to ball as a share of the foot's length.
	BallPerFoot = Ratio{Estimate{0.7392, 0.0134}, Estimate{0.7410, 0.0147}}
)

// line is a least-squares line on the inside leg.
type line struct{ intercept, slope, residual float64 }

// at reads the line.
func (l line) at(inseam float64) Estimate {
	return Estimate{l.intercept + float64(l.slope*inseam), l.residual}
}

// Lines of the survey on the inside leg: the only ones at hand. They are to be
// preferred to shares of stature, because they use what was measured.
var (
	trochanterFromInseam = [2]line{{113.7, 0.9352, 15.9}, {77.9, 0.9729, 19.3}}
	kneeFromInseam       = [2]line{{34.2, 0.5518, 11.4}, {50.3, 0.5218, 10.9}}
)

// TrochanterFromInseam estimates the height of the greater trochanter from the
// inside leg, in mm.
//
//	women 113.7 + 0.9352·I (SD 15.9)    men 77.9 + 0.9729·I (SD 19.3)
//
// It returns false for an inside leg that is not above 0.
//
// Source: ANSUR II, computed from the public table.
func TrochanterFromInseam(inseam float64, sex Sex) (Estimate, bool) {
	return fromInseam(trochanterFromInseam, inseam, sex)
}

// KneeFromInseam estimates the height of the knee's outer landmark from the
// inside leg, in mm.
//
//	women 34.2 + 0.5518·I (SD 11.4)    men 50.3 + 0.5218·I (SD 10.9)
//
// It returns false for an inside leg that is not above 0.
//
// Source: ANSUR II, computed from the public table.
func KneeFromInseam(inseam float64, sex Sex) (Estimate, bool) {
	return fromInseam(kneeFromInseam, inseam, sex)
}

// fromInseam reads the pair of lines, women first.
func fromInseam(lines [2]line, inseam float64, sex Sex) (Estimate, bool) {
	if !usable(inseam) {
		return Estimate{}, false
	}
	e := sex.of(lines[0].at(inseam), lines[1].at(inseam))
	return e, usable(e.Value)
}

// HeelToBallOf returns the heel-to-ball length of a foot of a length in mm, with
// the spread of that share over people. It returns false for a foot whose length
// is not above 0.
func HeelToBallOf(footLength float64, sex Sex) (Estimate, bool) {
	if !usable(footLength) {
		return Estimate{}, false
	}
	share := BallPerFoot.Of(sex)
	e := Estimate{footLength * share.Value, footLength * share.SD}
	return e, usable(e.Value)
}

// UpperArmShare returns what share of the arm, shoulder to grip centre, lies
// above the elbow.
//
// Source: ANSUR II means of acromion to elbow and elbow to grip centre.
func UpperArmShare(sex Sex) float64 {
	share := func(upper, lower Sample) float64 { return upper.Mean / (upper.Mean + lower.Mean) }
	female := share(UpperArm.Female, ForearmToGrip.Female)
	male := share(UpperArm.Male, ForearmToGrip.Male)
	return sex.of(Estimate{female, 0}, Estimate{male, 0}).Value
}

// ArmFromStature estimates the arm from shoulder to grip centre, in mm: the sum
// of upper arm and forearm to grip. What is left of each beside the line on stature is
// taken to be independent of the other, so the two are added as squares. It returns
// false for a stature below LeastStature.
//
//	SD = √(upper² + lower²)
//
// Source: JCGM 100:2008, 5.1.2, for independent quantities.
func ArmFromStature(stature float64, sex Sex) (Estimate, bool) {
	if !(stature >= LeastStature) || !usable(stature) {
		return Estimate{}, false
	}
	sum := func(upper, lower Estimate) Estimate {
		return Estimate{upper.Value + lower.Value, geometricSum(upper.SD, lower.SD)}
	}
	e := sex.of(sum(UpperArm.Female.at(stature), ForearmToGrip.Female.at(stature)),
		sum(UpperArm.Male.at(stature), ForearmToGrip.Male.at(stature)))
	return e, usable(e.Value) && !math.IsInf(e.SD, 0)
}

// ArmTypical returns the mean arm of a sex's whole sample, and its spread, in mm: what
// is known of the arm of a rider whose stature nobody gave. Both parts follow the
// stature, and beside it they are independent, as in ArmFromStature.
//
//	SD = √((slope of upper + slope of lower)²·SD² of stature + upper² + lower²)
func ArmTypical(sex Sex) Estimate {
	of := func(upper, lower, stature Sample) Estimate {
		return Estimate{upper.Mean + lower.Mean, geometricSum((upper.Slope+lower.Slope)*stature.SD,
			geometricSum(upper.Residual, lower.Residual))}
	}
	return sex.of(of(UpperArm.Female, ForearmToGrip.Female, Stature.Female),
		of(UpperArm.Male, ForearmToGrip.Male, Stature.Male))
}

// geometricSum is the standard uncertainty of a sum of two independent quantities.
func geometricSum(a, b float64) float64 { return math.Sqrt(float64(a*a) + float64(b*b)) }

// ShoulderJointSpacing returns the distance between the two shoulder joints,
// which lie inside the bony tips that ShoulderWidth is measured between.
//
//	0.88·biacromial breadth
//
// From memory.
func ShoulderJointSpacing(biacromial float64) float64 { return 0.88 * biacromial }

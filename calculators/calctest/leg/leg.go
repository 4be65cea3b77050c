// Package leg is the seated leg solved once more for the tests, independently of
// posture, body and geometry: points are complex numbers (x ahead of the bottom
// bracket, y above it, mm), the knee is where two circles meet, and every unknown
// length is found by halving an interval.
//
// Sources: the closed chain of Hull and Jorge 1985, J Biomech 18:631-644; the
// regressions of ANSUR II (Gordon et al. 2014, NATICK/TR-15/007); how heel and
// pelvis give is the model's own calibration to Ferrer-Roca et al. 2012 and 2014, as
// posture/calibration.go states it, and is written down here a second time.
package leg

import (
	"math"
	"math/cmplx"
)

// Rider is somebody's leg, with what stands under the foot and where the saddle is.
type Rider struct {
	Inseam, Trochanter        float64 // mm; trochanter: 0 where it is estimated
	Thigh, Shank, Foot, Ball  float64 // mm; 0 where they are estimated
	Sex                       string  // "f", "m" or "": the mean of both
	Crank, Pedal, Sole, Cleat float64 // mm
	Seat                      float64 // direction to the saddle, degrees above the horizontal
	Trunk                     float64 // degrees above the horizontal
	TrochanterOff             float64 // mm, an error of the estimate, for the propagation of uncertainty
}

// ansur is a line of ANSUR II, intercept and slope, for women and for men.
type ansur struct{ f0, f1, m0, m1 float64 }

// Lines on the inside leg, and on stature, in mm.
var (
	trochanterOnInseam = ansur{113.7, 0.9352, 77.9, 0.9729}
	kneeOnInseam       = ansur{34.2, 0.5518, 50.3, 0.5218}
	inseamOnStature    = ansur{-179.096, 0.590377, -176.319, 0.582075}
	malleolusOnStature = ansur{6.006, 0.034844, 4.983, 0.038675}
	footOnStature      = ansur{18.498, 0.139883, 30.134, 0.137252}
	ballOnFoot         = ansur{0, 0.7392, 0, 0.7410}
)

// mean is the value for a sex, the mean of both where it is not known.
func mean(sex string, f, m float64) float64 {
	switch sex {
	case "f":
		return f
	case "m":
		return m
	}
	return (f + m) / 2
}

func (a ansur) at(sex string, x float64) float64 { return mean(sex, a.f0+a.f1*x, a.m0+a.m1*x) }

// back reads the line the other way round.
func (a ansur) back(sex string, y float64) float64 {
	return mean(sex, (y-a.f0)/a.f1, (y-a.m0)/a.m1)
}

// Joints are one solved position.
type Joints struct {
	Hip, Knee, Ankle, Spindle complex128
	Sole                      complex128 // the sole's direction, not a point
}

// lengths returns thigh and shank, and where the ankle is from the spindle with the
// sole level.
func (l Rider) lengths() (thigh, shank float64, ankle complex128) {
	trochanter, knee := trochanterOnInseam.at(l.Sex, l.Inseam), kneeOnInseam.at(l.Sex, l.Inseam)
	if l.Trochanter != 0 {
		trochanter = l.Trochanter
	}
	stature := inseamOnStature.back(l.Sex, l.Inseam)
	foot, malleolus := footOnStature.at(l.Sex, stature), malleolusOnStature.at(l.Sex, stature)
	if l.Foot != 0 {
		foot = l.Foot
	}
	thigh, shank = trochanter+l.TrochanterOff-knee, knee-malleolus
	if l.Thigh != 0 {
		thigh = l.Thigh
	}
	if l.Shank != 0 {
		shank = l.Shank
	}
	ball := ballOnFoot.at(l.Sex, foot)
	if l.Ball != 0 {
		ball = l.Ball
	}
	// The ankle is 22 % of the foot ahead of the heel; the spindle is under the ball,
	// less the cleat's shift.
	ahead := 0.22*foot - (ball - l.Cleat)
	return thigh, shank, complex(ahead, malleolus+l.Sole+l.Pedal)
}

// Turned turns z counterclockwise by an angle in degrees.
func Turned(z complex128, degrees float64) complex128 {
	return z * cmplx.Rect(1, degrees*math.Pi/180)
}

// AngleBetween returns the angle between two directions, degrees.
func AngleBetween(a, b complex128) float64 {
	return math.Abs(cmplx.Phase(a/b)) * 180 / math.Pi
}

// Solve puts the leg on a saddle with the heel and the pelvis giving for a rise above
// the neutral height; crank counts from straight up, forward. False where the leg does
// not reach.
func (l Rider) Solve(height, crank, rise, neutral float64) (j Joints, ok bool) {
	up := Turned(1, 180-l.Seat)
	j.Hip = complex(height-0.27*rise, 0)*up + complex(0.61*rise, 19)
	heel := 20 + 1.25*100*rise/(neutral+l.Crank) - 12*math.Sin((crank-20)*math.Pi/180)
	j.Spindle = Turned(complex(0, l.Crank), -crank)
	thigh, shank, ankle := l.lengths()
	j.Ankle = j.Spindle + Turned(ankle, -heel) // heel up: clockwise about the spindle
	j.Sole = Turned(1, -heel)
	way := j.Ankle - j.Hip
	d := cmplx.Abs(way)
	along := (thigh*thigh - shank*shank + d*d) / (2 * d) // from the hip to the circles' chord
	aside := thigh*thigh - along*along
	if !(aside >= 0) {
		return j, false
	}
	// Of the two places the knee takes the one ahead of the line from hip to ankle,
	// which runs down.
	j.Knee = j.Hip + way/complex(d, 0)*complex(along, math.Sqrt(aside))
	return j, true
}

// Bend is by how much the knee is bent.
func (j Joints) Bend() float64 { return AngleBetween(j.Knee-j.Hip, j.Ankle-j.Knee) }

// Halve finds where a function that falls from positive to negative crosses zero.
func Halve(low, high float64, f func(float64) float64) float64 {
	for range 200 {
		if x := (low + high) / 2; f(x) > 0 {
			low = x
		} else {
			high = x
		}
	}
	return (low + high) / 2
}

// longest is a saddle height that no leg reaches.
const longest = 1600

// bendAt is the knee's bend at the bottom, below zero where the leg does not reach.
func (l Rider) bendAt(height, rise, neutral float64) float64 {
	j, ok := l.Solve(height, 90+l.Seat, rise, neutral)
	if !ok {
		return -1
	}
	return j.Bend()
}

// Neutral is the height at which the knee bends 35 degrees at the bottom with nothing
// giving.
func (l Rider) Neutral() float64 {
	return Halve(300, longest, func(h float64) float64 { return l.bendAt(h, 0, 1) - 35 })
}

// At is the leg at a saddle height and crank angle, as a rider pedals: heel and pelvis
// give up to 5 % of the distance from spindle to saddle.
func (l Rider) At(height, crank float64) (Joints, bool) {
	neutral := l.Neutral()
	return l.Solve(height, crank, l.rise(height, neutral), neutral)
}

func (l Rider) rise(height, neutral float64) float64 {
	most := 0.05 * (neutral + l.Crank)
	return min(max(height-neutral, -most), most)
}

// HeightFor is the saddle height for a knee bend at the bottom.
func (l Rider) HeightFor(bend float64) float64 {
	neutral := l.Neutral()
	return Halve(300, longest, func(h float64) float64 { return l.bendAt(h, l.rise(h, neutral), neutral) - bend })
}

// HipAngle is the inner angle between trunk and thigh.
func (l Rider) HipAngle(j Joints) float64 { return AngleBetween(Turned(1, l.Trunk), j.Knee-j.Hip) }

// AnkleAngle is the inner angle between shank and sole.
func (j Joints) AnkleAngle() float64 { return AngleBetween(j.Knee-j.Ankle, j.Sole) }

// Least is where in the circle the knee is bent least, and by how much: a search of
// every tenth of a degree, and of ever smaller steps around the best.
func (l Rider) Least(height float64) (crank, bend float64) {
	neutral := l.Neutral()
	rise := l.rise(height, neutral)
	bend = math.Inf(1)
	try := func(c float64) {
		if j, ok := l.Solve(height, c, rise, neutral); ok && j.Bend() < bend {
			crank, bend = c, j.Bend()
		}
	}
	for i := range 3600 {
		try(float64(i) / 10)
	}
	for step := 0.05; step > 1e-7; step /= 2 {
		try(crank - step)
		try(crank + step)
	}
	return crank, bend
}

// Expanded is the expanded uncertainty (k = 2) that standard uncertainties of some
// inputs leave in a number: JCGM 100:2008, 5.1.2, the sensitivities by differences.
func Expanded(effects ...func(off float64) float64) float64 {
	sum := 0.0
	for _, f := range effects {
		half := (f(1) - f(-1)) / 2
		sum += half * half
	}
	return 2 * math.Sqrt(sum)
}

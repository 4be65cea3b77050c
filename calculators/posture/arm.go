package posture

import (
	"math"

	"plumbline/calculators/geometry"
)

// Arm is one arm between shoulder joint and grip centre, in mm.
type Arm struct {
	// Upper is shoulder to elbow and Fore elbow to grip centre.
	Upper, Fore float64
	// Aside is how far the grip lies outside the shoulder joint: half of grip
	// spacing less shoulder-joint spacing. It may be negative.
	Aside float64
}

// Valid reports whether the lengths are above 0 and the offset is a number.
func (a Arm) Valid() bool {
	return finite(a.Upper, a.Fore, a.Aside) && a.Upper > 0 && a.Fore > 0
}

// Chord returns the distance from shoulder to grip seen from the side, in mm, for
// an elbow bend in degrees (0 straight).
//
//	a² = U² + V² + 2·U·V·cos bend − aside²
//
// It returns false when the bend is outside 0 to 180 degrees or the grips are
// wider than such an arm reaches.
//
// Source: law of cosines in three dimensions; leaving the offset out reads the
// elbow about 3 degrees wrong on an ordinary bar.
func (a Arm) Chord(bend float64) (float64, bool) {
	if !a.Valid() || !(bend >= 0 && bend <= 180) {
		return 0, false
	}
	full := legReach(a.Upper, a.Fore, bend)
	rest := float64(full*full) - float64(a.Aside*a.Aside)
	if !(rest >= 0) || !finite(rest) {
		return 0, false
	}
	return math.Sqrt(rest), true
}

// Bend returns the elbow's bend, in degrees, for a distance from shoulder to grip
// seen from the side, in mm. It returns false when the arm does not reach.
func (a Arm) Bend(chord float64) (float64, bool) {
	if !a.Valid() || !finite(chord) || chord < 0 {
		return 0, false
	}
	full := geometry.Point{X: chord, Y: a.Aside}.Length()
	inner, ok := geometry.OppositeAngle(a.Upper, a.Fore, full)
	return 180 - inner, ok
}

// Slack returns how much nearer the grip is than the straight arm reaches, seen
// from the side, in mm; negative when it is out of reach. It returns false when
// even the straight arm cannot span the grips' width.
func (a Arm) Slack(chord float64) (float64, bool) {
	straight, ok := a.Chord(0)
	return straight - chord, ok && finite(chord)
}

// Elbow returns the elbow's place seen from the side, for drawing: below the
// line from shoulder to grip, at its true distance from that line. It returns
// false when the arm does not reach.
func (a Arm) Elbow(shoulder, grip geometry.Point) (geometry.Point, bool) {
	way := grip.Sub(shoulder)
	chord := way.Length()
	full := geometry.Point{X: chord, Y: a.Aside}.Length()
	// Rounding may leave a straight arm a hair short.
	const hair = 1e-12
	if !a.Valid() || !finite(full) || !(full <= (1+hair)*(a.Upper+a.Fore) &&
		full >= (1-hair)*math.Abs(a.Upper-a.Fore)) || chord == 0 {
		return geometry.Point{}, false
	}
	along, aside := sides(a.Upper, a.Fore, full)
	level := way.Scale(along / full)
	below := geometry.Point{X: way.Y, Y: -way.X}.Scale(aside / chord)
	return shoulder.Add(level).Add(below), true
}

// sides places the joint between two limbs a and b whose ends are d apart: how far it
// lies along the line between the ends, from a's end, and how far aside of that line.
//
//	along = (a² + d² − b²) / 2d    aside = √(a² − along²)
//
// Source: law of cosines.
func sides(a, b, d float64) (along, aside float64) {
	along = (float64(a*a) + float64(d*d) - float64(b*b)) / (2 * d)
	return along, math.Sqrt(math.Max(0, float64(a*a)-float64(along*along)))
}

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
	corner, ok := geometry.OppositeAngle(a.Upper, full, a.Fore)
	if !ok || chord == 0 {
		return geometry.Point{}, false
	}
	sin, cos := sincos(corner)
	along := way.Scale(a.Upper * cos / full)
	below := geometry.Point{X: way.Y, Y: -way.X}.Scale(a.Upper * sin / chord)
	return shoulder.Add(along).Add(below), true
}

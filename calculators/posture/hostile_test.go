package posture_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

// floats draws any float at all.
func floats() *rapid.Generator[float64] {
	return rapid.OneOf(
		rapid.SampledFrom([]float64{
			0, math.Copysign(0, -1), 1, -1, 90, 180, 170, 420, 1e-300, 5e-324, 1e300, -1e300,
			math.MaxFloat64, -math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN(),
		}),
		rapid.Float64(),
		rapid.Float64Range(-1000, 1000),
	)
}

func number(t rapid.TB, what string, values ...float64) {
	t.Helper()
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			t.Fatalf("%s: %v", what, values)
		}
	}
}

func whole(t rapid.TB, p posture.LegPose) {
	t.Helper()
	number(t, "angles", p.Crank, p.HeelUp, p.KneeBend, p.ThighDip, p.AnkleAngle, p.HipToAnkle)
	for _, q := range []geometry.Point{p.Hip, p.Knee, p.Ankle, p.Spindle, p.Heel, p.Ball, p.Toe} {
		number(t, "joints", q.X, q.Y)
	}
}

func TestAnySeatedRiderIsAPoseOrARefusal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		next := func() float64 { return floats().Draw(t, "value") }
		leg := body.Leg{Thigh: 409, Shank: 419, FootLength: 271, HeelToBall: 201, Malleolus: 73}
		setup := posture.Setup{Crank: 170, PedalHeight: 15, SoleHeight: 15, SeatAngle: 75}
		fields := []*float64{
			&leg.Thigh, &leg.Shank, &leg.FootLength, &leg.HeelToBall, &leg.Malleolus,
			&setup.Crank, &setup.PedalHeight, &setup.SoleHeight, &setup.CleatBehindBall, &setup.SeatAngle,
		}
		for range rapid.IntRange(0, 3).Draw(t, "spoilt") {
			*fields[rapid.IntRange(0, len(fields)-1).Draw(t, "field")] = next()
		}
		s, ok := posture.NewSeated(leg, setup)
		if !ok {
			return
		}
		number(t, "neutral", s.Neutral())
		if h, ok := s.HeightFor(next()); ok {
			number(t, "height", h)
		}
		if p, ok := s.At(next(), next()); ok {
			whole(t, p)
		}
		if p, ok := s.AtBottom(s.Neutral()); ok {
			whole(t, p)
		}
		if p, ok := s.Straightest(next()); ok {
			whole(t, p)
		}
		if c, ok := s.Circle(next(), 8); ok {
			whole(t, c.Straightest)
			whole(t, c.MostBent)
		}
	})
}

func TestAnyTrunkOrArmIsAnAnswerOrARefusal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		next := func() float64 { return floats().Draw(t, "value") }
		place := func() geometry.Point { return geometry.Point{X: next(), Y: next()} }
		a := posture.Arm{Upper: next(), Fore: next(), Aside: next()}
		if v, ok := a.Chord(next()); ok {
			number(t, "chord", v)
		}
		if v, ok := a.Bend(next()); ok {
			number(t, "bend", v)
		}
		if v, ok := a.Slack(next()); ok {
			number(t, "slack", v)
		}
		if p, ok := a.Elbow(place(), place()); ok {
			number(t, "elbow", p.X, p.Y)
		}
		if trunk, ok := posture.SolveTrunk(place(), place(), next(), next()); ok {
			number(t, "trunk", trunk.Angle, trunk.Shoulder.X, trunk.Shoulder.Y)
		}
		if h, ok := posture.HeadOn(posture.Trunk{Shoulder: place(), Angle: next()}, next(), body.Unknown); ok {
			number(t, "head", h.Vertex.X, h.Vertex.Y, h.Neck.X, h.Centre.X, h.Radius)
		}
		if knee, bend, dip, ok := posture.Knee(place(), place(), next(), next()); ok {
			number(t, "knee", knee.X, knee.Y, bend, dip)
		}
		c := posture.Chain{
			Hip: place(), Thigh: next(), Shank: next(), Crank: next(),
			Foot: posture.Foot{Behind: next(), Above: next(), Heel: next(), Ball: next(), Toe: next(),
				Sole: next()},
			Ankling: posture.Ankling{Mean: next(), Swing: next(), Phase: next()},
		}
		if p, ok := c.At(next()); ok {
			whole(t, p)
		}
	})
}

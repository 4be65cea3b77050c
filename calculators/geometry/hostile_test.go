package geometry_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/geometry"
)

// floats draws any float at all: infinities, not-a-numbers, zeros, the smallest
// and the largest, and ordinary ones.
func floats() *rapid.Generator[float64] {
	return rapid.OneOf(
		rapid.SampledFrom([]float64{
			0, math.Copysign(0, -1), 1, -1, 90, 180, 372, 1e-300, 5e-324, 1e300, -1e300,
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

func points(t rapid.TB, what string, ps ...geometry.Point) {
	t.Helper()
	for _, p := range ps {
		number(t, what, p.X, p.Y)
	}
}

func TestAnyChartIsABikeOrAFault(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		next := func() float64 { return floats().Draw(t, "value") }
		c := geometry.Chart{
			Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
			ForkOffset: 44, FrontRadius: 372, RearRadius: 353, HeadTube: 120, ForkLength: 550,
		}
		fields := []*float64{
			&c.Reach, &c.Stack, &c.HeadAngle, &c.SeatAngle, &c.SeatAngleHeight, &c.SeatTubeAngle,
			&c.HeadTube, &c.LowerHeadset, &c.ForkLength, &c.ForkOffset, &c.Chainstay, &c.Drop,
			&c.BBHeight, &c.FrontRadius, &c.RearRadius,
		}
		for range rapid.IntRange(1, 4).Draw(t, "spoilt") {
			*fields[rapid.IntRange(0, len(fields)-1).Draw(t, "field")] = next()
		}
		b, err := c.Solve()
		if err != nil {
			if b != (geometry.Bike{}) {
				t.Fatalf("a fault and a bike: %+v", b)
			}
			return
		}
		numbersOf(t, b)
		if !(c.BBHeight > 0) {
			near(t, "drop", b.Drop(), c.Drop, 1e-6*(1+math.Abs(c.Drop)+math.Abs(c.FrontRadius)+math.Abs(c.RearRadius)))
		}
		after, err := geometry.Settle(b, geometry.Change{
			Fork: next(), Offset: next(), FrontRadius: next(), RearRadius: next(),
			FrontSag: next(), RearSag: next(), HeadsetAngle: next(), HeadsetPivot: next(),
		})
		if err == nil {
			numbersOf(t, after)
		}
		hold, ok := geometry.Cockpit{
			Headset: next(), Spacers: next(), ClampHeight: next(), Stem: next(),
			StemAngle: next(), Rise: next(), Back: next(), Roll: next(),
		}.Hold(b)
		if ok {
			points(t, "hold", hold.StemClamp, hold.Bar, hold.Grip)
		}
		if p, ok := b.SaddlePoint(next()); ok {
			points(t, "saddle", p)
		}
		if a, ok := b.SeatAngleAt(next()); ok {
			number(t, "seat angle", a)
		}
	})
}

func numbersOf(t rapid.TB, b geometry.Bike) {
	t.Helper()
	points(t, "points", b.HeadTop, b.HeadBottom, b.AxisTop, b.Crown, b.Front, b.Rear,
		b.FrontContact(), b.RearContact(), b.AxisGround(), b.AxleFoot())
	number(t, "numbers", b.HeadAngle, b.SeatAngle, b.AxisLength, b.Offset, b.Reach(), b.Stack(),
		b.BBHeight(), b.Wheelbase(), b.Trail(), b.MechanicalTrail(), b.WheelFlop(), b.FrontCentre(),
		b.FrontCentreLevel(), b.Drop(), b.EffectiveTopTube())
}

func TestAnyNumberGivesANumberOrARefusal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		next := func() float64 { return floats().Draw(t, "value") }
		refuse := func(what string) func(float64, bool) {
			return func(v float64, ok bool) {
				if ok {
					number(t, what, v)
				}
			}
		}
		refuse("tyre")(geometry.TyreRadius(next(), next()))
		refuse("fork, axis")(geometry.ForkLengthOnAxis(next(), next()))
		refuse("lean")(geometry.PedalLean(next(), next(), next(), next()))
		refuse("angle")(geometry.OppositeAngle(next(), next(), next()))
		p, q := geometry.Point{X: next(), Y: next()}, geometry.Point{X: next(), Y: next()}
		refuse("tilt")(geometry.GroundTilt(p, q, next(), next()))
		if r, ok := geometry.Triangulate(p, q, next(), next(), true); ok {
			points(t, "third corner", r)
		}
		b := geometry.Balance{Ahead: next(), Height: next(), Wheelbase: next()}
		slope, push := next(), next()
		answers := []float64{
			b.FrontLoad(slope, push), b.RearLoad(slope, push), b.FrontShare(slope),
			b.LightSlope(push), b.PitchOver(slope),
		}
		number(t, "load", answers...)
		for _, v := range answers {
			if !b.Valid() && v != 0 {
				t.Fatalf("%+v is no balance and answers %v", b, v)
			}
		}
	})
}

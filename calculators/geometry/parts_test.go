package geometry_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/geometry"
)

// The head's fall is a minimum search over the rim of a turned disc: the axle is
// turned about the steering axis and the lowest point of the wheel found by brute
// force.
func TestHeadDropAgainstATurnedDisc(t *testing.T) {
	lowest := func(radius, head, offset, steer float64) float64 {
		s, c := math.Sincos(head * math.Pi / 180)
		cs, ss := math.Cos(steer*math.Pi/180), math.Sin(steer*math.Pi/180)
		// Axes of the frame: x ahead, y up, z to the side; the steering axis runs
		// along (-c, s, 0).
		turn := func(x, y, z float64) (float64, float64) {
			along := -c*x + s*y
			ahead, side := s*x+c*y, z
			a := ahead*cs + side*ss
			return a, along*s + a*c
		}
		least := math.Inf(1)
		for i := range 200000 {
			phi := 2 * math.Pi * float64(i) / 200000
			x := offset*s + radius*math.Cos(phi)
			y := offset*c + radius*math.Sin(phi)
			_, height := turn(x, y, 0)
			least = math.Min(least, height)
		}
		return least
	}
	for _, test := range []struct{ radius, head, offset, steer float64 }{
		{372, 65, 44, 10}, {372, 65, 44, 90}, {364, 67, 51, 35}, {340, 74, 45, 60}, {300, 90, 30, 45},
	} {
		got := geometry.HeadDrop(test.radius, test.head, test.offset, test.steer)
		want := lowest(test.radius, test.head, test.offset, test.steer) - lowest(test.radius, test.head,
			test.offset, 0)
		near(t, "head drop", got, want, 1e-5)
	}
}

func TestHeadFallsTheSameEitherWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(200, 400).Draw(t, "radius")
		head := rapid.Float64Range(55, 80).Draw(t, "head")
		o := rapid.Float64Range(0, 70).Draw(t, "offset")
		steer := rapid.Float64Range(0, 90).Draw(t, "steer")
		near(t, "left and right", geometry.HeadDrop(r, head, o, steer), geometry.HeadDrop(r, head, o, -steer), 1e-9)
	})
}

func TestAnUprightForkTrailsByItsOffset(t *testing.T) {
	if trail := geometry.Trail(350, 90, 40); trail != -40 {
		t.Errorf("an upright fork trails by its offset: %v", trail)
	}
}

// A seat tube ahead of the bottom bracket: the chart's reading comes back at its
// own level, and the angle slackens above it.
func TestSeatTubeAheadSlackensAsTheSaddleRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := charts().Draw(t, "chart")
		c.SeatAngleHeight = rapid.Float64Range(500, 750).Draw(t, "level")
		c.SeatTubeAngle = c.SeatAngle - rapid.Float64Range(0.5, 10).Draw(t, "slacker by")
		b := solve(t, c)
		read, ok := b.SeatAngleAt(c.SeatAngleHeight)
		if !ok {
			t.Fatal("no angle")
		}
		near(t, "as read", read, c.SeatAngle, 1e-9)
		higher, _ := b.SeatAngleAt(c.SeatAngleHeight + 100)
		if higher >= read {
			t.Fatalf("%v at the level, %v above it", read, higher)
		}
		height := rapid.Float64Range(500, 900).Draw(t, "saddle height")
		p, ok := b.SaddlePoint(height)
		if !ok {
			t.Fatal("no saddle")
		}
		near(t, "saddle height", p.Length(), height, 1e-9)
		near(t, "on the seat line", p.X, b.SeatLineX(p.Y), 1e-9)
		angle, _ := b.SeatAngleAt(p.Y)
		near(t, "setback", geometry.Setback(height, angle), -p.X, 1e-9)
	})
}

func TestSeatAngleAtTheSaddleIsNotGuessed(t *testing.T) {
	b := solve(t, charts().Example(1))
	if _, ok := b.SeatAngleAt(700); ok && b.SeatAngleHeight != 700 {
		t.Error("an angle without the seat tube's own")
	}
	if a, ok := b.SeatAngleAt(b.SeatAngleHeight); !ok || a != b.SeatAngle {
		t.Errorf("at its own level the chart's angle stands: %v, %v", a, ok)
	}
}

func TestRoomShrinksAsTheBarRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := charts().Draw(t, "chart")
		b := solve(t, c)
		near(t, "at the stack", b.RoomAt(b.Stack()), b.EffectiveTopTube(), 1e-9)
		near(t, "reach at the stack", b.ReachAt(b.Stack()), b.Reach(), 1e-9)
		cot := func(a float64) float64 { return 1 / math.Tan(a*math.Pi/180) }
		fall := 50 * (cot(b.HeadAngle) - cot(b.SeatAngle))
		near(t, "50 mm up", b.EffectiveTopTube()-b.RoomAt(b.Stack()+50), fall, 1e-9)
	})
}

func TestCockpitLengthsAreKept(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := settle(t, solve(t, charts().Draw(t, "chart")), changes().Draw(t, "change"))
		within := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		c := geometry.Cockpit{
			Headset: within("headset", 0, 40), Spacers: within("spacers", 0, 60), ClampHeight: within("clamp", 30, 50),
			Stem: within("stem", 20, 140), StemAngle: within("stem angle", -40, 45),
			Rise: within("rise", -20, 110), Back: within("back", 0, 120), Roll: within("roll", -15, 15),
		}
		h, ok := c.Hold(b)
		if !ok {
			t.Fatal("no hold")
		}
		near(t, "on the axis", aheadOfAxis(b, h.StemClamp), 0, 1e-9)
		near(t, "up the axis", h.StemClamp.Distance(b.AxisTop), c.Headset+c.Spacers+c.ClampHeight/2, 1e-9)
		near(t, "stem", h.Bar.Distance(h.StemClamp), c.Stem, 1e-9)
		near(t, "stem ahead of axis", aheadOfAxis(b, h.Bar), c.Stem*math.Cos(c.StemAngle*math.Pi/180), 1e-9)
		near(t, "grip from bar", h.Grip.Distance(h.Bar), math.Sqrt(c.Rise*c.Rise+c.Back*c.Back), 1e-9)
		taller := c
		taller.Spacers += 10
		up, _ := taller.Hold(b)
		move := geometry.SpacerVector(10, b.HeadAngle)
		near(t, "10 mm of spacer", up.Grip.Sub(h.Grip).Distance(move), 0, 1e-9)
	})
}

// Loads from three equations of equilibrium, solved as such.
func TestLoadsBalanceForcesAndMoments(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		within := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		b := geometry.Balance{Ahead: within("x", 100, 700), Height: within("h", 600, 1300), Wheelbase: within("w",
			950, 1400)}
		slope, a := within("slope", -30, 30), within("acceleration", -0.8, 0.8)
		rad := slope * math.Pi / 180
		// Unknown: front load, rear load, drive force, as shares of the weight.
		x := newton(t, []float64{0, 0, 0}, func(x []float64) []float64 {
			front, rear, drive := x[0], x[1], x[2]
			return []float64{
				front + rear - math.Cos(rad),
				drive - math.Sin(rad) - a,
				// Moments about the centre of mass, in wheelbases.
				(front*(b.Wheelbase-b.Ahead) - rear*b.Ahead + drive*b.Height) / b.Wheelbase,
			}
		})
		near(t, "front", b.FrontLoad(slope, a), x[0], 1e-9)
		near(t, "rear", b.RearLoad(slope, a), x[1], 1e-9)
		near(t, "nothing behind at the pitch-over", b.RearLoad(slope, -b.PitchOver(slope)), 0, 1e-12)
		near(t, "nothing in front at the loop-out", b.FrontShare(100*math.Tan(b.LightSlope(0)*math.Pi/180)), 0, 1e-12)
		near(t, "share", b.FrontShare(100*math.Tan(rad)), b.FrontLoad(slope, 0)/math.Cos(rad), 1e-9)
		if b.LightSlope(0.6) >= b.LightSlope(0) || b.LightSlope(1) >= b.LightSlope(0.6) {
			t.Fatal("a stronger swing must lift earlier")
		}
	})
}

func TestClearances(t *testing.T) {
	b := solve(t, geometry.Chart{
		Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
		ForkOffset: 44, FrontRadius: 372, RearRadius: 372,
	})
	near(t, "5 mm of crank is 5 mm of toe room", b.ToeGap(165)-b.ToeGap(170), 5, 1e-12)
	if lean, ok := geometry.PedalLean(337, 400, 8, 200); ok {
		t.Errorf("a crank longer than the bottom bracket is high leans %v", lean)
	}
	near(t, "20 % is an angle of", geometry.SlopeAngle(20), 11.309932474020213, 1e-12)
	near(t, "swept bar", geometry.SweepBack(200, 8), 200*math.Sin(8*math.Pi/180), 1e-12)
}

func TestTriangulateIsTheMeetingOfTwoCircles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		within := func(name string) float64 { return rapid.Float64Range(-900, 900).Draw(t, name) }
		p, q, r := geometry.Point{X: within("px"), Y: within("py")}, geometry.Point{X: within("qx"),
			Y: within("qy")}, geometry.Point{X: within("rx"), Y: within("ry")}
		area := q.Sub(p).Cross(r.Sub(p))
		if math.Abs(area) < 100 || p.Distance(q) < 1 {
			t.Skip("no triangle")
		}
		got, ok := geometry.Triangulate(p, q, p.Distance(r), q.Distance(r), area > 0)
		if !ok {
			t.Fatal("no corner")
		}
		near(t, "third corner", got.Distance(r), 0, 1e-4)
	})
	if _, ok := geometry.Triangulate(geometry.Point{}, geometry.Point{X: 10}, 3, 3, true); ok {
		t.Error("two circles that do not meet have no corner")
	}
}

// aheadOfAxis is how far a point lies ahead of the steering axis, square to it.
func aheadOfAxis(b geometry.Bike, p geometry.Point) float64 {
	return p.Sub(b.AxisTop).Dot(b.AxisAhead())
}

// A bike on two scales, with a smaller wheel behind. Its centre of mass is 503 mm ahead of the rear
// contact and 611 mm above the ground; then the front is lifted until the bike has turned by 13°. About the
// rear axle, 357 mm high, the centre turns to 503·cos 13° − (611 − 357)·sin 13° ahead of it, and the front
// axle, 15 mm higher and 1197 ahead, to 1197·cos 13° − 15·sin 13°. The front scale carries the first as a
// share of the second, the rear scale the rest (moments about the rear contact).
func TestACentreIsFoundByScaleWithUnlikeWheels(t *testing.T) {
	b := geometry.Bike{Rear: geometry.Point{X: -430, Y: 20}, Front: geometry.Point{X: 767, Y: 35},
		RearRadius: 357, FrontRadius: 372}
	sin, cos := math.Sincos(13 * math.Pi / 180)
	rise := 1197*sin + 15*cos - 15
	front := (503*cos - (611-357)*sin) / (1197*cos - 15*sin)
	found, ok := geometry.CentreByScale(b, 14.3, 14.3*(1-503.0/1197), 14.3*(1-front), rise)
	if !ok {
		t.Fatal("no centre")
	}
	near(t, "ahead", found.Ahead, 503, 1e-9)
	near(t, "height", found.Height, 611, 1e-9)
}

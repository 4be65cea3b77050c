package geometry_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/geometry"
)

// changes draws a change that a workshop could make.
func changes() *rapid.Generator[geometry.Change] {
	return rapid.Custom(func(t *rapid.T) geometry.Change {
		within := func(name string, low, high float64) float64 {
			return rapid.Float64Range(low, high).Draw(t, name)
		}
		return geometry.Change{
			Fork: within("fork", -40, 40), Offset: within("offset", -10, 10),
			FrontRadius: within("front radius", -20, 20), RearRadius: within("rear radius", -20, 20),
			FrontSag: within("front sag", 0, 60), RearSag: within("rear sag", 0, 60),
			HeadsetAngle: within("headset", -2, 2), HeadsetPivot: within("pivot", 0, 120),
		}
	})
}

func settle(t rapid.TB, b geometry.Bike, c geometry.Change) geometry.Bike {
	t.Helper()
	after, err := geometry.Settle(b, c)
	if err != nil {
		t.Fatalf("%+v: %v", c, err)
	}
	return after
}

// same compares two bikes point by point.
func same(t rapid.TB, what string, got, want geometry.Bike) {
	t.Helper()
	for _, pair := range [][2]geometry.Point{
		{got.HeadTop, want.HeadTop}, {got.HeadBottom, want.HeadBottom}, {got.AxisTop, want.AxisTop},
		{got.Crown, want.Crown}, {got.Front, want.Front}, {got.Rear, want.Rear},
	} {
		near(t, what, pair[0].Distance(pair[1]), 0, 1e-8)
	}
	near(t, what+", head angle", got.HeadAngle, want.HeadAngle, 1e-9)
	near(t, what+", seat angle", got.SeatAngle, want.SeatAngle, 1e-9)
	near(t, what+", offset", got.Offset, want.Offset, 1e-9)
	near(t, what+", radii", got.FrontRadius-got.RearRadius, want.FrontRadius-want.RearRadius, 1e-9)
}

func TestNoChangeChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		for _, none := range []geometry.Change{{}, {HeadsetPivot: 57.5}} {
			if after := settle(t, b, none); after != b {
				t.Fatalf("%+v became %+v", b, after)
			}
		}
	})
}

// A bike that stands level needs no second settling.
func TestSettledBikeStaysSettled(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := settle(t, solve(t, charts().Draw(t, "chart")), changes().Draw(t, "change"))
		near(t, "front wheel on the ground", b.Front.Y-b.FrontRadius, b.Ground(), 1e-9)
		tilt, ok := geometry.GroundTilt(b.Rear, b.Front, b.RearRadius, b.FrontRadius)
		if !ok {
			t.Fatal("no ground")
		}
		near(t, "tilt left", tilt, 0, 1e-10)
		// A change so small that it only makes Settle turn the bike once more.
		same(t, "settled again", settle(t, b, geometry.Change{RearRadius: 1e-300}), b)
	})
}

// Parts of one change made one after the other give the same bike, because every
// part is measured in the frame. Rear sag is the exception: it is vertical on the
// bike as it stands.
func TestPartsOfAChangeMayBeMadeOneByOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		c := changes().Draw(t, "change")
		c.RearSag = 0
		first := geometry.Change{HeadsetAngle: c.HeadsetAngle, HeadsetPivot: c.HeadsetPivot, Offset: c.Offset,
			RearRadius: c.RearRadius}
		second := geometry.Change{Fork: c.Fork, FrontSag: c.FrontSag, FrontRadius: c.FrontRadius}
		same(t, "one by one", settle(t, settle(t, b, first), second), settle(t, b, c))
	})
}

func TestAChangeCanBeTakenBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		c := changes().Draw(t, "change")
		c.RearSag = 0
		back := geometry.Change{
			Fork: -c.Fork, FrontSag: -c.FrontSag, Offset: -c.Offset,
			FrontRadius: -c.FrontRadius, RearRadius: -c.RearRadius,
			HeadsetAngle: -c.HeadsetAngle, HeadsetPivot: c.HeadsetPivot,
		}
		same(t, "there and back", settle(t, settle(t, b, c), back), b)
	})
}

// The frame is rigid: whatever is bolted on, its own lengths stay.
func TestTheFrameKeepsItsShape(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		c := changes().Draw(t, "change")
		after := settle(t, b, c)
		near(t, "bottom bracket to head tube", after.HeadTop.Length(), b.HeadTop.Length(), 1e-9)
		near(t, "head tube", after.HeadTop.Distance(after.HeadBottom), b.HeadTop.Distance(b.HeadBottom), 1e-9)
		near(t, "crown to axle",
			after.Crown.Distance(after.AxleFoot()),
			math.Abs(b.Crown.Sub(b.AxleFoot()).Dot(b.AxisDown())+c.FrontSag-c.Fork), 1e-8)
		near(t, "offset", aheadOfAxis(after, after.Front), b.Offset+c.Offset, 1e-9)
		near(t, "angle between tubes", after.SeatAngle-after.HeadAngle+c.HeadsetAngle, b.SeatAngle-b.HeadAngle, 1e-9)
	})
}

// An independent solve: the bike's tilt is the unknown, and both wheels touch the
// ground. The fork, offset and axis are laid out in frame axes by hand.
func TestSettledTiltFromTouchingWheelsAlone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		c := changes().Draw(t, "change")
		after := settle(t, b, c)

		head := (b.HeadAngle + c.HeadsetAngle) * math.Pi / 180
		was := b.HeadAngle * math.Pi / 180
		pivot := geometry.Point{X: b.HeadTop.X + c.HeadsetPivot*math.Cos(was),
			Y: b.HeadTop.Y - c.HeadsetPivot*math.Sin(was)}
		down := b.AxisLength - c.HeadsetPivot + c.Fork - c.FrontSag
		offset := b.Offset + c.Offset
		front := geometry.Point{
			X: pivot.X + down*math.Cos(head) + offset*math.Sin(head),
			Y: pivot.Y - down*math.Sin(head) + offset*math.Cos(head),
		}
		rear := geometry.Point{X: b.Rear.X, Y: b.Rear.Y + c.RearSag}
		lowest := func(p geometry.Point, radius, tilt float64) float64 {
			return p.Y*math.Cos(tilt) - p.X*math.Sin(tilt) - radius
		}
		x := newton(t, []float64{0}, func(x []float64) []float64 {
			return []float64{lowest(front, b.FrontRadius+c.FrontRadius, x[0]) - lowest(rear,
				b.RearRadius+c.RearRadius, x[0])}
		})
		near(t, "tilt", after.SeatAngle-b.SeatAngle, x[0]*180/math.Pi, 1e-9)
		near(t, "bottom bracket", after.BBHeight(), -lowest(rear, b.RearRadius+c.RearRadius, x[0]), 1e-6)
		near(t, "front axle", after.Front.X, front.X*math.Cos(x[0])+front.Y*math.Sin(x[0]), 1e-6)
	})
}

func TestLongerForkSlackensAndRaises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		by := rapid.Float64Range(1, 40).Draw(t, "fork")
		after := settle(t, b, geometry.Change{Fork: by})
		if after.HeadAngle >= b.HeadAngle || after.BBHeight() <= b.BBHeight() || after.Stack() <= b.Stack() ||
			after.Reach() >= b.Reach() {
			t.Fatalf("fork +%v: head %v to %v, stack %v to %v", by, b.HeadAngle, after.HeadAngle, b.Stack(),
				after.Stack())
		}
		// The first-order rule of thumb: −Δ·sin θ / wheelbase.
		rule := -by * math.Sin(b.HeadAngle*math.Pi/180) / b.Wheelbase() * 180 / math.Pi
		near(t, "rule of thumb", after.HeadAngle-b.HeadAngle, rule, 0.1*math.Abs(rule))
		near(t, "sag is a shorter fork",
			settle(t, b, geometry.Change{FrontSag: by}).HeadAngle, settle(t, b,
				geometry.Change{Fork: -by}).HeadAngle, 0)
	})
}

func TestSagInPercentOfTravel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		sagged, err := geometry.Sagged(b, 150, 20, 140, 30)
		if err != nil {
			t.Fatal(err)
		}
		same(t, "sag", sagged, settle(t, b, geometry.Change{FrontSag: 30, RearSag: 42}))
	})
}

func TestImpossibleChangesNameTheirFault(t *testing.T) {
	b := solve(t, geometry.Chart{
		Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
		ForkOffset: 44, FrontRadius: 372, RearRadius: 372,
	})
	for _, test := range []struct {
		fault  geometry.Fault
		change geometry.Change
	}{
		{geometry.NotANumber, geometry.Change{Fork: math.NaN()}},
		{geometry.NotANumber, geometry.Change{HeadsetPivot: math.Inf(1)}},
		{geometry.HeadAngleRange, geometry.Change{HeadsetAngle: -70}},
		{geometry.HeadAngleRange, geometry.Change{HeadsetAngle: 40}},
		{geometry.RadiusRange, geometry.Change{FrontRadius: -400, RearRadius: 10}},
		{geometry.WheelsOverlap, geometry.Change{FrontRadius: 5000}},
		{geometry.ForkTooShort, geometry.Change{FrontSag: 700}},
	} {
		if after, err := geometry.Settle(b, test.change); err != error(test.fault) {
			t.Errorf("%+v: got %+v, %v, want %q", test.change, after, err, test.fault)
		}
	}
	if _, err := geometry.Settle(geometry.Bike{}, geometry.Change{Fork: 1}); err == nil {
		t.Error("no bike at all was settled")
	}
}

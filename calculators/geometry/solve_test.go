package geometry_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"plumbline/calculators/geometry"
)

// charts draws a bike that somebody could own, with unequal wheels and steep,
// slack, tall and small ones among them.
func charts() *rapid.Generator[geometry.Chart] {
	return rapid.Custom(func(t *rapid.T) geometry.Chart {
		within := func(name string, low, high float64) float64 {
			return rapid.Float64Range(low, high).Draw(t, name)
		}
		return geometry.Chart{
			Reach: within("reach", 320, 560), Stack: within("stack", 470, 740),
			HeadAngle: within("head angle", 58, 76), SeatAngle: within("seat angle", 68, 84),
			Chainstay: within("chainstay", 370, 500), Drop: within("drop", -30, 80),
			ForkOffset:  within("offset", 30, 60),
			FrontRadius: within("front radius", 300, 400), RearRadius: within("rear radius", 300, 400),
			HeadTube: within("head tube", 80, 200), ForkLength: within("fork", 400, 640),
		}
	})
}

func solve(t rapid.TB, c geometry.Chart) geometry.Bike {
	t.Helper()
	b, err := c.Solve()
	if err != nil {
		t.Fatalf("%+v: %v", c, err)
	}
	return b
}

func near(t rapid.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Fatalf("%s: got %v, want %v ± %v", what, got, want, tolerance)
	}
}

// newton solves f = 0 from a start by Newton's steps with a difference quotient
// for the derivatives and gonum's linear solver: it knows nothing of the closed
// forms under test.
func newton(t rapid.TB, start []float64, f func([]float64) []float64) []float64 {
	t.Helper()
	x := append([]float64(nil), start...)
	n := len(x)
	for range 200 {
		value := f(x)
		worst := 0.0
		for _, v := range value {
			worst = math.Max(worst, math.Abs(v))
		}
		if worst < 1e-10 {
			return x
		}
		slope := mat.NewDense(n, n, nil)
		for j := range n {
			const step = 1e-4
			high, low := append([]float64(nil), x...), append([]float64(nil), x...)
			high[j] += step
			low[j] -= step
			up, down := f(high), f(low)
			for i := range n {
				slope.Set(i, j, (up[i]-down[i])/(2*step))
			}
		}
		var move mat.VecDense
		if err := move.SolveVec(slope, mat.NewVecDense(n, value)); err != nil {
			t.Fatalf("linear solve: %v", err)
		}
		length := mat.Norm(&move, 2)
		damp := math.Min(1, 100/length)
		for i := range n {
			x[i] -= damp * move.AtVec(i)
		}
		if length < 1e-11 {
			return x
		}
	}
	t.Fatal("the independent solve did not settle")
	return nil
}

// The unknowns are both axles and the square's foot; the equations are raw
// distances, a right angle, the head angle, and level ground under both wheels.
func TestBikePointsSatisfyTheRawDistances(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := charts().Draw(t, "chart")
		b := solve(t, c)
		head := geometry.Point{X: c.Reach, Y: c.Stack}
		slope := math.Tan(c.HeadAngle * math.Pi / 180)
		x := newton(t, []float64{900, 100, -300, 60, 650, 30}, func(x []float64) []float64 {
			front, rear, foot := geometry.Point{X: x[0], Y: x[1]}, geometry.Point{X: x[2], Y: x[3]},
				geometry.Point{X: x[4], Y: x[5]}
			axis, square := head.Sub(foot), front.Sub(foot)
			line := rear.Y + (front.Y-rear.Y)*(0-rear.X)/(front.X-rear.X)
			return []float64{
				rear.Length() - c.Chainstay,
				line - c.Drop,
				(front.Y - c.FrontRadius) - (rear.Y - c.RearRadius),
				axis.Y + slope*axis.X,
				axis.Dot(square) / axis.Length(),
				square.Length() - c.ForkOffset,
			}
		})
		near(t, "front axle x", b.Front.X, x[0], 1e-6)
		near(t, "front axle y", b.Front.Y, x[1], 1e-6)
		near(t, "rear axle x", b.Rear.X, x[2], 1e-6)
		near(t, "rear axle y", b.Rear.Y, x[3], 1e-6)
		near(t, "foot x", b.AxleFoot().X, x[4], 1e-6)
		near(t, "foot y", b.AxleFoot().Y, x[5], 1e-6)
	})
}

func TestDropAndHeightDescribeTheSameBike(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := charts().Draw(t, "chart")
		b := solve(t, c)
		near(t, "drop", b.Drop(), c.Drop, 1e-9)
		c.BBHeight, c.Drop = b.BBHeight(), 0
		again := solve(t, c)
		near(t, "front axle", again.Front.Distance(b.Front), 0, 1e-8)
		near(t, "rear axle", again.Rear.Distance(b.Rear), 0, 1e-8)
	})
}

func TestBikeGrowsWithItsChart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := charts().Draw(t, "chart")
		k := rapid.Float64Range(0.1, 10).Draw(t, "scale")
		big := c
		for _, v := range []*float64{
			&big.Reach, &big.Stack, &big.Chainstay, &big.Drop, &big.ForkOffset, &big.FrontRadius,
			&big.RearRadius, &big.HeadTube, &big.ForkLength,
		} {
			*v *= k
		}
		small, large := solve(t, c), solve(t, big)
		for what, pair := range map[string][2]float64{
			"wheelbase":         {small.Wheelbase(), large.Wheelbase()},
			"trail":             {small.Trail(), large.Trail()},
			"front centre":      {small.FrontCentre(), large.FrontCentre()},
			"top tube":          {small.EffectiveTopTube(), large.EffectiveTopTube()},
			"bottom bracket":    {small.BBHeight(), large.BBHeight()},
			"crown":             {small.Crown.Length(), large.Crown.Length()},
			"head tube, bottom": {small.HeadBottom.Y, large.HeadBottom.Y},
		} {
			near(t, what, pair[1], k*pair[0], 1e-9*k*1000)
		}
		near(t, "head angle", large.HeadAngle, small.HeadAngle, 0)
	})
}

// The crown's seat stands the fork's length above the square from the axle, whatever the
// rest of the chart leaves room for.
func TestTheCrownStandsAForkAboveTheAxle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := charts().Draw(t, "chart")
		c.ForkLength = rapid.Float64Range(300, 700).Draw(t, "fork")
		b := solve(t, c)
		near(t, "crown", b.Crown.Distance(b.AxleFoot()), c.ForkLength, 1e-9)
	})
}

func TestForkLengthReadBothWays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		straight := rapid.Float64Range(300, 700).Draw(t, "straight")
		offset := rapid.Float64Range(-70, 70).Draw(t, "offset")
		axis, ok := geometry.ForkLengthOnAxis(straight, offset)
		if !ok || axis > straight {
			t.Fatalf("axis %v of straight %v", axis, straight)
		}
		near(t, "the way back", math.Hypot(axis, offset), straight, 1e-9)
	})
	axis, _ := geometry.ForkLengthOnAxis(551, 44)
	near(t, "551 mm with 44 mm offset differs by", 551-axis, 1.76, 0.005)
}

func TestImpossibleChartsNameTheirFault(t *testing.T) {
	good := geometry.Chart{
		Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
		ForkOffset: 44, FrontRadius: 372, RearRadius: 372,
	}
	for _, test := range []struct {
		fault geometry.Fault
		spoil func(*geometry.Chart)
	}{
		{geometry.NotANumber, func(c *geometry.Chart) { c.Reach = math.NaN() }},
		{geometry.NotANumber, func(c *geometry.Chart) { c.RearRadius = math.Inf(1) }},
		{geometry.HeadAngleRange, func(c *geometry.Chart) { c.HeadAngle = 0 }},
		{geometry.HeadAngleRange, func(c *geometry.Chart) { c.HeadAngle = 91 }},
		{geometry.SeatAngleRange, func(c *geometry.Chart) { c.SeatAngle = 180 }},
		{geometry.SeatAngleRange, func(c *geometry.Chart) { c.SeatAngleHeight = -1 }},
		{geometry.SeatTubeRange, func(c *geometry.Chart) { c.SeatTubeAngle = -70 }},
		{geometry.RadiusRange, func(c *geometry.Chart) { c.RearRadius = 0 }},
		{geometry.ChainstayTooShort, func(c *geometry.Chart) { c.Chainstay = 35 }},
		{geometry.ChainstayTooShort, func(c *geometry.Chart) { c.Chainstay, c.RearRadius = 10, 340 }},
		{geometry.ForkTooShort, func(c *geometry.Chart) { c.Stack = 10 }},
		{geometry.WheelsOverlap, func(c *geometry.Chart) { c.Reach = -2000 }},
		{geometry.WheelsOverlap, func(c *geometry.Chart) { c.Reach, c.RearRadius = -2000, 340 }},
	} {
		c := good
		test.spoil(&c)
		if _, err := c.Solve(); err != error(test.fault) {
			t.Errorf("%+v: got %v, want %q", c, err, test.fault)
		}
		if test.fault.Error() == "" {
			t.Errorf("%q says nothing", test.fault)
		}
	}
}

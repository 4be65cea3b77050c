package figure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// plateOf returns the plate that is named after a quantity.
func plateOf(t *testing.T, q *measure.Quantity) Plate {
	for _, p := range Plates() {
		if p.Of == q {
			return p
		}
	}
	require.Fail(t, "no plate", q.Key)
	return Plate{}
}

// TestPlatesShowTheChart types a chart and a set of parts and measures the first span
// of each plate as its instruction says: level, upright, straight or as an angle. What
// comes out is what was typed, by the definitions of the trade (common practice).
func TestPlatesShowTheChart(t *testing.T) {
	b := DemoWith(830, 705, func(c *geometry.Chart) {
		c.Reach, c.Stack, c.HeadAngle, c.SeatAngle, c.Chainstay, c.Drop, c.HeadTube = 480, 640, 64, 77, 440, 30, 115
	})
	b.CrankAngle = 90
	for q, want := range map[*measure.Quantity]float64{
		measure.Reach: 480, measure.Stack: 640, measure.HeadAngle: 64, measure.SeatAngle: 77,
		measure.Chainstay: 440, measure.BBDrop: 30, measure.SaddleHeight: 705, measure.CrankLength: 170,
		measure.HeadTubeLength: 115, measure.ForkOffset: 44, measure.SeatTubeLength: 420,
		// The 622 mm bead seat and two tyres of 61 mm.
		measure.RearRadius: 372, measure.FrontAxleHeight: 372, measure.BBHeight: 342,
		// The parts that a plate shows in a size that can be seen.
		measure.StemLength: 60, measure.StemAngle: 12, measure.Spacers: 20, measure.SpacersAbove: 10,
		measure.StemClampHeight: 40, measure.HeadsetHeight: 10, measure.BarRise: 30, measure.BarRoll: 20,
		// The marking 57-622 of ISO 5775-1: the bead sits on a diameter of 622 mm.
		measure.FrontRim:  622,
		measure.ScaleRise: 400, measure.ToeOutLeft: 12, measure.CleatAngleLeft: 10,
		// The arm's outer face is 56 + 16 from the bike's middle at the axle, 78 + 10 at the pedal.
		measure.ArmSetIn: 16,
	} {
		p := plateOf(t, q)
		s, shown := p.Spans[0], b
		if p.On.Fit != nil {
			shown = p.On.Fit(b)
		}
		way := s.To.At(shown).Minus(s.From.At(shown))
		got := way.Length()
		switch {
		case s.Way == Plumbed || s.Way == LevelWay:
			got = math.Abs(way.X)
		case s.Way == UprightWay:
			got = math.Abs(way.Y)
		case s.Against.At != nil:
			got = math.Abs(way.Angle() - s.Against.At(shown).Minus(s.From.At(shown)).Angle())
		case s.Way == Tilt:
			got = math.Min(way.Angle(), 180-way.Angle())
		}
		assert.InDelta(t, want, got, 1e-6, q.Key)
	}
}

// TestTheRaisedBikeIsTheSameBike: a bike that is tipped back keeps every distance between
// its points, and its seat and steering axes lean back by as much as the line of its axles.
func TestTheRaisedBikeIsTheSameBike(t *testing.T) {
	level := Demo(830, 705)
	up := raise(level, 400)
	points := func(b Build) []Point {
		k := b.Bike
		return []Point{{}, At(k.Rear), At(k.Front), At(k.HeadTop), At(k.HeadBottom), At(k.Crown), b.SaddleTop()}
	}
	before, after := points(level), points(up)
	for i := range before {
		for j := range i {
			want, got := before[i].Minus(before[j]).Length(), after[i].Minus(after[j]).Length()
			assert.InDelta(t, want, got, 1e-6, "%d to %d", i, j)
		}
	}
	axles := func(p []Point) float64 { return p[2].Minus(p[1]).Angle() }
	assert.InDelta(t, axles(after)-axles(before), level.Bike.HeadAngle-up.Bike.HeadAngle, 1e-9)
	assert.InDelta(t, axles(after)-axles(before), level.Bike.SeatAngle-up.Bike.SeatAngle, 1e-9)
}

// TestFeetPointAsTheyAreLabelled: the drawn outline's own second toe lies on the line whose
// angle is shown, on a left foot and on a right one.
func TestFeetPointAsTheyAreLabelled(t *testing.T) {
	const toe = 13 // of soleForm: the tip of the second toe
	for _, left := range []bool{true, false} {
		foot := pointing(outline(266), Point{X: 5, Y: 9}, 12, left)
		assert.InDelta(t, 12, foot.Points[toe].Minus(Point{X: 5, Y: 9}).Angle(), 1e-9)
		// The great toe lies on the inner side: to the right of a left foot's line.
		great := foot.Points[11].Minus(Point{X: 5, Y: 9}).Angle()
		assert.Equal(t, left, great < 12)
	}
}

// TestEveryPlateIsWhole: each says in words what it shows, and its name is its
// quantity's own.
func TestEveryPlateIsWhole(t *testing.T) {
	b := Demo(830, 705)
	for _, p := range Plates() {
		f := p.Draw(b)
		assert.NotEmpty(t, p.Of.How.Figure, p.Of.Key)
		assert.Contains(t, f.Description.Say(nil), p.Of.Label, p.Of.Key)
		assert.NotContains(t, f.Description.Say(nil), "{", p.Of.Key)
		assert.NotContains(t, f.SVG("x", nil, 530), "NaN", p.Of.Key)
	}
}

// A chart that makes no bike leaves the stand-in as it was.
func TestAnImpossibleChartIsNotDrawn(t *testing.T) {
	b := DemoWith(830, 705, func(c *geometry.Chart) { c.HeadAngle = math.NaN() })
	assert.Equal(t, Demo(830, 705), b)
}

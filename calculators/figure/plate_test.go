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

// TestEveryPlateIsWhole: each says in words what it shows, and its name is its
// quantity's own.
func TestEveryPlateIsWhole(t *testing.T) {
	b := Demo(830, 705)
	for _, p := range Plates() {
		f := p.Draw(b)
		assert.NotEmpty(t, p.Of.How.Figure, p.Of.Key)
		assert.Contains(t, f.Description.Say(nil), p.Of.Label, p.Of.Key)
		assert.NotContains(t, f.Description.Say(nil), "{", p.Of.Key)
		assert.NotContains(t, f.SVG("x", nil), "NaN", p.Of.Key)
	}
}

// A chart that makes no bike leaves the stand-in as it was.
func TestAnImpossibleChartIsNotDrawn(t *testing.T) {
	b := DemoWith(830, 705, func(c *geometry.Chart) { c.HeadAngle = math.NaN() })
	assert.Equal(t, Demo(830, 705), b)
}

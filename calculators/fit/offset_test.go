package fit

import (
	"math"
	"math/cmplx"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/geometry"
)

// The rest of a bike whose seat tube is all that counts here.
func bikeWithTube(effective, tube float64) geometry.Bike {
	b, err := geometry.Chart{Reach: 460, Stack: 625, HeadAngle: 65.5, SeatAngle: effective, SeatTubeAngle: tube,
		Chainstay: 437, Drop: 32, ForkOffset: 44, FrontRadius: 372, RearRadius: 372}.Solve()
	if err != nil {
		panic(err)
	}
	return b
}

// A post's offset stands square to the tube and rails lie level: on a tube of 72 degrees
// through the bottom bracket, 30 mm of offset put the saddle 30/sin 72° = 31.5439 mm
// back at the same height, and 30 mm on the rails 30 mm.
func TestOffsetIsSquareAndRailsAreLevel(t *testing.T) {
	b := bikeWithTube(72, 72)
	assert.InDelta(t, 30/0.951056516, b.SeatLineX(700)-WithOffset(b, 30, 0).SeatLineX(700), 1e-6)
	assert.InDelta(t, 30, b.SeatLineX(700)-WithOffset(b, 0, 30).SeatLineX(700), 1e-9)
	assert.InDelta(t, -30/0.951056516, b.SeatLineX(700)-WithOffset(b, -30, 0).SeatLineX(700), 1e-6)
}

// The saddle's point, put together from vectors along the tube, square to it and level,
// is on the seat line that WithOffset gives, and RailShift finds the shift again.
func TestRailShiftIsTheOffsetReadTheOtherWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		effective, tube := draw("effective", 73, 80), draw("tube", 66, 79)
		offset, shift, along := draw("offset", -25, 35), draw("shift", -25, 25), draw("along", -150, 250)
		up := cmplx.Exp(complex(0, (180-tube)*math.Pi/180))
		read := complex(-625/math.Tan(effective*math.Pi/180), 625) // where the effective angle is read
		at := read + complex(along, 0)*up + complex(0, offset)*up - complex(shift, 0)
		b := bikeWithTube(effective, tube)
		saddle := geometry.Point{X: real(at), Y: imag(at)}
		require.InDelta(t, shift, RailShift(b, saddle, offset), 1e-8)
		p, ok := WithOffset(b, offset, shift).SaddlePoint(cmplx.Abs(at))
		require.True(t, ok)
		require.InDelta(t, real(at), p.X, 1e-8)
		require.InDelta(t, imag(at), p.Y, 1e-8)
	})
}

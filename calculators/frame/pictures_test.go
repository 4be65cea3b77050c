package frame

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

// The ring stands at the seal, at the seal, and as far from it as sag is of the travel:
// 24 % of 170 mm are 40.8, 31 % of a stroke of 65 mm are 20.15. While the rider sits, the
// tube has slid in by as much.
func TestTheRingStandsWhereTheSagIs(t *testing.T) {
	for _, c := range []struct {
		picture     *calculators.Illustration
		travel, sag string
		all, part   float64
	}{
		{ForkRing(), "fork-travel", "sag-front", 170, 24}, {ShockRing(), "shock-stroke", "sag-rear", 65, 31},
	} {
		f := c.picture.Figure([]calculators.Pair{{Key: c.travel, Typed: fmtFloat(c.all)}, {Key: c.sag,
			Typed: fmtFloat(c.part)}}, nil)
		require.Len(t, f.Frames, 3)
		sag := c.all * c.part / 100
		for i, want := range []struct{ ring, in float64 }{{0, 0}, {0, sag}, {sag, 0}} {
			var tubes []drawing.Tube
			var ring drawing.Tube
			for _, m := range f.Frames[i].Marks {
				if m, ok := m.(drawing.Tube); ok {
					tubes = append(tubes, m)
					if m.Role == drawing.Hot {
						ring = m
					}
				}
			}
			require.Equal(t, drawing.Hot, ring.Role)
			assert.InDelta(t, want.ring, ring.A.Y, 1e-9, "ring in frame %d", i+1)
			assert.InDelta(t, 1.08*c.all-want.in, tubes[0].B.Y, 1e-9, "tube in frame %d", i+1)
		}
		for _, m := range f.Frames[2].Marks {
			if d, ok := m.(drawing.Dimension); ok {
				assert.InDelta(t, sag, d.B.Y-d.A.Y, 1e-9)
			}
		}
		said := f.Description.Say(nil)
		assert.Contains(t, said, fmtFloat(c.all)+"\u00a0mm")
		assert.Contains(t, said, fmtFloat(c.part)+"\u00a0%")
	}
}

// Both bikes of one reach keep it, the bar of the lower one comes to the other's height,
// and the way back is that of 40 mm along an axis of 65.5 degrees: 40 / tan 65.5 = 18.23.
func TestSpacersBringTheGripsBack(t *testing.T) {
	f := SameReach().Figure([]calculators.Pair{{Key: "inseam", Typed: "812"}}, nil)
	levels, uprights := 0, []float64(nil)
	for _, m := range f.Marks {
		if d, ok := m.(drawing.Dimension); ok {
			if d.Along.X == 1 {
				levels++
				assert.InDelta(t, 460, d.B.X-d.A.X, 1e-9)
			} else {
				uprights = append(uprights, d.B.Y-d.A.Y)
			}
		}
	}
	assert.Equal(t, 1, levels)
	assert.InDeltaSlice(t, []float64{625, 585}, uprights, 1e-9)
	require.Len(t, f.Details, 1)
	back := f.Details[0].Marks[0].(drawing.Dimension)
	assert.InDelta(t, 40/math.Tan(65.5*math.Pi/180), back.B.X-back.A.X, 1e-9)
	assert.InDelta(t, back.A.Y, back.B.Y, 1e-9)
	assert.Contains(t, f.Description.Say(nil), "come back by 18\u00a0mm")
}

// In each pair one number differs, and the arrows point the way that it moves a part:
// forward; up, and the wheel forward along the steering axis; forward; forward; back; and up
// for both wheels.
func TestOneNumberMovesWhatItSays(t *testing.T) {
	f := OneNumberAtATime().Figure(nil, nil)
	require.Len(t, f.Frames, 6)
	for i, want := range [6]drawing.Point{{X: 1}, {X: 0.7, Y: 0.7}, {X: 1}, {X: 1}, {X: -1}, {Y: 1}} {
		arrows := 0
		for _, m := range f.Frames[i].Marks {
			if l, ok := m.(drawing.Line); ok && l.Role == drawing.Hot && l.Pen == drawing.Heavy {
				arrows++
				way := l.Points[1].Minus(l.Points[0]).Unit()
				assert.Greater(t, way.Dot(want), 0.5, "frame %d", i+1)
			}
		}
		assert.Positive(t, arrows, "frame %d", i+1)
	}
}

func fmtFloat(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// Each size has a frame of its own, in the order of the table, on which the ring is where
// the reader's own grips would be: on a bike that does not sink, where they were typed.
func TestEachSizeIsDrawnWithYourGrips(t *testing.T) {
	const sizes = "sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length,stand-over,fork-travel,rear-travel|" +
		"Two,478,634,64.8,76.2,430,730,0,0|One,441,612,65.1,76.9,405,715,0,0 "
	r := calctest.Answer(t, Size(), sizes+"inseam=812 stature=1715 saddle-height=718 grip-x=433 grip-y=702")
	require.Len(t, r.Figure.Frames, 2)
	wheels := [2]float64{}
	for i, frame := range r.Figure.Frames {
		assert.True(t, strings.HasPrefix(frame.Caption.Say(nil), [2]string{"Two: ", "One: "}[i]))
		rings, limbs := 0, 0
		for _, m := range frame.Marks {
			switch m := m.(type) {
			case drawing.Circle:
				if m.Role == drawing.Hot {
					rings++
					assert.InDelta(t, 433, m.Centre.X, 1e-9)
					assert.InDelta(t, 702, m.Centre.Y, 1e-9)
				}
			case drawing.Wheel:
				wheels[i] = m.Centre.X
			case drawing.Cross:
				if m.Role == drawing.Body {
					limbs++
				}
			}
		}
		assert.Equal(t, 1, rings)
		assert.GreaterOrEqual(t, limbs, 6, "a rider's joints")
	}
	// A front axle lies ahead of the bottom bracket by reach, and by the fork along an axis
	// that is slacker: the larger size's further.
	assert.Greater(t, wheels[0], wheels[1]+30)
	assert.Contains(t, r.Figure.Description.Say(nil), "saddle at 718\u00a0mm")
}

// The bike sinks and its rear wheel stays where it stands: both rear tyres rest on one
// ground, the bottom bracket comes down by what the dimension says, and that is what the
// answers' heights differ by.
func TestTheBikeSinksOnOneGround(t *testing.T) {
	r := calctest.Answer(t, Sag(), "fork-travel=160 sag-front=22 rear-travel=145 sag-rear=30 reach=471 stack=633 "+
		"head-angle=64.5 seat-angle=77 chainstay=439 bb-drop=28 fork-offset=42 front-rim=622 rear-rim=622")
	down := calctest.Value(r, unloaded.bbHeight) - calctest.Value(r, sagHeight)
	require.Greater(t, down, 20.0)
	var before, after drawing.Point
	for _, m := range r.Figure.Marks {
		switch m := m.(type) {
		case drawing.Wheel:
			if after == (drawing.Point{}) {
				after = m.Centre
			}
		case drawing.Circle:
			if m.Role == drawing.Before && before == (drawing.Point{}) {
				before = m.Centre
			}
		case drawing.Dimension:
			if m.Role == drawing.Hot {
				assert.InDelta(t, down, m.B.Y-m.A.Y, 1e-9)
			}
		}
	}
	assert.InDelta(t, after.X, before.X, 1e-9)
	assert.InDelta(t, after.Y, before.Y, 1e-9)
}

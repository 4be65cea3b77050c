package cockpit

import (
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Each dimension of the lever's picture is drawn as long as it says, and its marks stand
// where it ends. Reach 61 and grip 31.5 by themselves; the legal span is both together,
// 92.5 (16 CFR 1512.5); the free gap is the reach without a blade 9 mm thick, 52; the bar
// in the grip is 22.2 mm thick.
func TestTheLeverIsDrawnAsItIsMeasured(t *testing.T) {
	f := LeverSpan().Figure([]calculators.Pair{{Key: "lever-reach", Typed: "61"},
		{Key: "grip-diameter", Typed: "31.5"}}, nil)
	lengths := map[string]float64{}
	var radii, rulers []float64
	var blade drawing.Limb
	require.Len(t, f.Frames, 2)
	for _, m := range f.Frames[0].Marks {
		switch m := m.(type) {
		case drawing.Dimension:
			lengths[m.Text.Say(nil)] = m.B.X - m.A.X
			require.Zero(t, m.A.Y, "level")
			require.Zero(t, m.B.Y, "level")
		case drawing.Circle:
			radii = append(radii, m.Radius)
		case drawing.Limb:
			blade = m
		case drawing.Line:
			if m.Closed {
				rulers = append(rulers, m.Points[0].X)
			}
		}
	}
	// The scales begin where the lengths do: at the grip's back, and at its front.
	require.InDeltaSlice(t, []float64{-15.75, 15.75}, rulers, 1e-9)
	above := map[string]float64{}
	for _, m := range f.Frames[1].Marks {
		if m, ok := m.(drawing.Dimension); ok {
			above[m.Text.Say(nil)] = m.B.Y - m.A.Y
		}
	}
	require.InDeltaMapValues(
		t,
		map[string]float64{"Over both": 92.5, string(measure.LeverReach.Label): 61},
		above,
		1e-9,
	)
	said := func(format words.English, x float64) string { return words.Of(format, measure.Millimetres(x)).Say(nil) }
	require.InDeltaMapValues(t, map[string]float64{
		words.Of("{0} {1}", words.Of(measure.LeverReach.Label), measure.Millimetres(61)).Say(nil):     61,
		words.Of("{0} {1}", words.Of(measure.GripDiameter.Label), measure.Millimetres(31.5)).Say(nil): 31.5,
		said("Over both: {0}", 92.5): 92.5,
		said("Free gap {0}", 52):     52,
	}, lengths, 1e-9)
	require.InDeltaSlice(t, []float64{15.75, 11.1}, radii, 1e-9)
	require.InDelta(t, 15.75+61, blade.A.X+blade.Ra, 1e-9, "the blade's outer face")
	require.InDelta(t, 15.75+52, blade.B.X-blade.Rb, 1e-9, "and its inner one")
	require.InDelta(t, blade.A.Y, -blade.B.Y, 1e-9)
}

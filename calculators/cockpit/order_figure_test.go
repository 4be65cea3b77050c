package cockpit

import (
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
)

// The numbers go from the pedal, 170 mm from the crank axle on the stand-in bike of this
// rider, over the saddle, which is above and behind it, to the hands ahead; each arrow runs
// from one number to the next.
func TestTheOrderOfWorkOnTheRider(t *testing.T) {
	var picture *calculators.Illustration
	for _, p := range Riders() {
		if p.Name == "order-of-work" {
			picture = p
		}
	}
	f := picture.Figure([]calculators.Pair{{Key: "inseam", Typed: "805"}, {Key: "stature", Typed: "1690"}}, nil)
	numbers := map[string]drawing.Point{}
	var arrows []drawing.Line
	for _, m := range f.Marks {
		switch m := m.(type) {
		case drawing.Label:
			numbers[m.Text.Say(nil)] = m.At
		case drawing.Line:
			if m.Role == drawing.Hot && m.Pen == drawing.Heavy && len(m.Points) == 2 {
				arrows = append(arrows, m)
			}
		}
	}
	feet, saddle, hands := numbers["1"], numbers["2"], numbers["3"]
	require.InDelta(t, 170, feet.Length(), 1e-9)
	require.Negative(t, feet.Y)
	require.Greater(t, saddle.Y, 500.0)
	require.Negative(t, saddle.X, "behind the pedals")
	require.Greater(t, hands.X, 300.0)
	require.Len(t, arrows, 2)
	for i, to := range []drawing.Point{saddle, hands} {
		from := []drawing.Point{feet, saddle}[i]
		way := arrows[i].Points[1].Minus(arrows[i].Points[0]).Unit()
		require.InDelta(t, 1, way.Dot(to.Minus(from).Unit()), 1e-9)
	}
	require.NotEqual(t, figure.Point{}, numbers["saddle"])
}

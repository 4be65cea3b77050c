package geometry_test

import (
	"fmt"

	"plumbline/calculators/geometry"
)

// A trail bike's chart: what the maker does not print.
func ExampleChart_Solve() {
	bike, err := geometry.Chart{
		Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
		ForkOffset: 44, FrontRadius: 372, RearRadius: 372,
	}.Solve()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("front centre %.1f, bottom bracket %.1f, trail %.1f, top tube %.1f mm\n",
		bike.FrontCentre(), bike.BBHeight(), bike.Trail(), bike.EffectiveTopTube())
	// Output: front centre 801.8, bottom bracket 337.0, trail 124.9, top tube 620.4 mm
}

// An angle headset of one degree changes the head angle by three quarters,
// because the front drops as well.
func ExampleSettle() {
	bike, _ := geometry.Chart{
		Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
		ForkOffset: 44, FrontRadius: 372, RearRadius: 372,
	}.Solve()
	after, err := geometry.Settle(bike, geometry.Change{HeadsetAngle: -1, HeadsetPivot: 57.5})
	fmt.Printf("%.2f degrees, bottom bracket %.1f mm, %v\n", after.HeadAngle, after.BBHeight(), err)
	// Output: 64.25 degrees, bottom bracket 335.1 mm, <nil>
}

// What 20 mm of spacers do to the bar on a head angle of 65 degrees.
func ExampleSpacerVector() {
	move := geometry.SpacerVector(20, 65)
	fmt.Printf("%.1f mm back, %.1f mm up\n", -move.X, move.Y)
	// Output: 8.5 mm back, 18.1 mm up
}

// A tyre marked 61-622.
func ExampleTyreRadius() {
	radius, ok := geometry.TyreRadius(622, 61)
	fmt.Printf("%.0f mm %v\n", radius, ok)
	// Output: 372 mm true
}

// Riel 2005: a limit of 0.7 g on the level is about 0.6 g on 10 % down.
func ExampleBalance_PitchOver() {
	bike := geometry.Balance{Ahead: 300, Height: 1000, Wheelbase: 1000}
	fmt.Printf("%.2f g, %.2f g\n", bike.PitchOver(0), bike.PitchOver(-geometry.SlopeAngle(10)))
	// Output: 0.70 g, 0.60 g
}

package posture_test

import (
	"fmt"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

// What shoes with flat soles on flat pedals cost at the saddle.
func ExampleSeated_Neutral() {
	leg, _, _ := body.NewLeg(body.Measured{Inseam: 846}, body.Male)
	clip, _ := posture.NewSeated(leg, posture.Setup{Crank: 170, PedalHeight: 15, SoleHeight: 15, SeatAngle: 73.5})
	flat, _ := posture.NewSeated(leg, posture.Setup{Crank: 170, PedalHeight: 10, SoleHeight: 12,
		CleatBehindBall: 20, SeatAngle: 73.5})
	fmt.Printf("%.0f mm\n", flat.Neutral()-clip.Neutral())
	// Output: -16 mm
}

// The knee through the circle: straightest before the bottom.
func ExampleSeated_Circle() {
	leg, _, _ := body.NewLeg(body.Measured{Inseam: 846}, body.Male)
	rider, _ := posture.NewSeated(leg, posture.Setup{Crank: 170, PedalHeight: 15, SoleHeight: 15, SeatAngle: 76})
	circle, ok := rider.Circle(rider.Neutral(), 72)
	fmt.Printf("%.0f degrees at %.0f, %.0f at the top, %v\n",
		circle.Straightest.KneeBend, circle.Straightest.Crank, circle.Poses[0].KneeBend, ok)
	// Output: 35 degrees at 167, 116 at the top, true
}

// A seated rider's trunk from hip, grips and the length of trunk and arms.
func ExampleSolveTrunk() {
	arm := posture.Arm{Upper: 335, Fore: 349, Aside: 120}
	chord, _ := arm.Chord(30)
	trunk, ok := posture.SolveTrunk(geometry.Point{X: -190, Y: 760}, geometry.Point{X: 470, Y: 720}, 540, chord)
	fmt.Printf("%.0f degrees %v\n", trunk.Angle, ok)
	// Output: 61 degrees true
}

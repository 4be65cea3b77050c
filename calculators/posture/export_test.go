package posture

import "plumbline/calculators/body"

// Leg returns the leg that a seated rider was made from: tests compare a pose with it.
func (s Seated) Leg() body.Leg { return s.leg }

// Setup returns the set-up that a seated rider was made from.
func (s Seated) Setup() Setup { return s.setup }

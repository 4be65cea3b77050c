// Package catalog is the one list of all calculators and standing figures, in
// guide order.
package catalog

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/feet"
	"plumbline/calculators/finish"
	"plumbline/calculators/frame"
	"plumbline/calculators/saddle"
	"plumbline/calculators/start"
)

// calculators in guide order.
var all = []*calculators.Calculator{
	start.Depth(), start.Repeat(), start.Missing(), start.Mobility(), start.Tape(),
	frame.Geometry(), frame.Sag(), frame.Climb(), frame.ChangeOfParts(), frame.Size(), frame.Trial(),
	feet.Pedals(), feet.Cleat(), feet.FootAngle(), feet.Stance(), feet.Crank(), feet.Shoe(), feet.Difference(),
	saddle.Height(), saddle.Knee(), saddle.Setback(), saddle.Tilt(), saddle.Width(), saddle.Dropper(),
	cockpit.Grip(), cockpit.Ready(), cockpit.Seated(), cockpit.Stem(), cockpit.Width(),
	cockpit.Roll(), cockpit.Lever(), cockpit.Same(),
	finish.Scores(),
}

// figures that belong to no calculator.
var figures = slices.Concat(start.Figures(), frame.Figures(), feet.Figures(), saddle.Figures(), cockpit.Figures(),
	finish.Figures())

// All returns the calculators in guide order.
func All() []*calculators.Calculator { return all }

// Figures returns the standing figures in guide order: those that are drawn anew for a
// reader.
func Figures() []*calculators.Illustration { return figures }

// Pictures returns those and the pictures that no number of a reader changes. The
// engine does not call it, so that the linker leaves those out.
func Pictures() []*calculators.Illustration {
	return slices.Concat(figures, start.Stills(), saddle.Stills())
}

// Named returns the calculator of that name, or nil.
func Named(name string) *calculators.Calculator {
	for _, c := range all {
		if c.Name == name {
			return c
		}
	}
	return nil
}

// Package cockpit has the calculators of the cockpit section, one file each:
// where the grips stand, what that leaves of the arms standing and seated, and
// which parts move them.
package cockpit

import "plumbline/calculators"

// assume stands in for an input that was left empty; see calculators.Input.
type assume = func(calculators.Values) (calculators.Assumption, bool)

// Calculators are the section's calculators, in guide order.
func Calculators() []*calculators.Calculator {
	return []*calculators.Calculator{
		Grip(), Ready(), Seated(), Stem(), Width(), Roll(), Lever(), Same(),
	}
}

// Package saddle has the calculators of the saddle section, one file each.
package saddle

import "plumbline/calculators"

// Calculators are the section's calculators, in guide order.
func Calculators() []*calculators.Calculator {
	return []*calculators.Calculator{
		Height(), Knee(), Setback(), Tilt(), Width(), Dropper(),
	}
}

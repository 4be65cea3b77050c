// Package start has the calculators that come before everything else: how far to
// trust a tape, what may stand in for a missing length, and a bike without a
// chart. The standing figures of measuring are here too.
package start

import "plumbline/calculators"

// Calculators are the section's calculators, in guide order.
func Calculators() []*calculators.Calculator {
	return []*calculators.Calculator{
		Depth(), Repeat(), Missing(), Mobility(), Tape(),
	}
}

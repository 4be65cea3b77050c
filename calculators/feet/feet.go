// Package feet has the calculators of the feet section: cleats, stance, cranks,
// shoes and legs that differ.
package feet

import "plumbline/calculators"

// Calculators are the section's calculators, in guide order.
func Calculators() []*calculators.Calculator {
	return []*calculators.Calculator{
		Pedals(), Cleat(), FootAngle(), Stance(), Crank(), Shoe(), Difference(),
	}
}

// Package finish has the calculators that come after the setting: what test rides tell.
package finish

import "plumbline/calculators"

// Calculators are the section's calculators, in guide order.
func Calculators() []*calculators.Calculator {
	return []*calculators.Calculator{
		Scores(),
	}
}

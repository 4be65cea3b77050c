// Package feet has the calculators of the feet section: cleats, stance, cranks,
// shoes and legs that differ.
package feet

package posture

import "math"

// root finds where a function is 0 between two places at which its signs differ, by
// the Illinois form of regula falsi: the straight line between the ends gives the next
// place, and an end that stays twice running counts half, so that both ends close in.
// It returns false where the function has no value or the ends do not close in. The last
// place that f is asked about is the one that is returned.
//
// Source: Dowell and Jarratt 1971, BIT 11:168-174 (from memory).
func root(low, atLow, high, atHigh float64, f func(t float64) (float64, bool)) (float64, bool) {
	const enough = 1e-8
	if atLow == 0 {
		_, ok := f(low)
		return low, ok
	}
	const lowStayed, highStayed = 1, 2
	last := 0
	for range 100 {
		t := low + (high-low)*atLow/(atLow-atHigh)
		value, ok := f(t)
		if !ok {
			return 0, false
		}
		if math.Abs(value) < enough || math.Abs(high-low) < 1e-12 {
			return t, true
		}
		if (value > 0) == (atHigh > 0) {
			high, atHigh = t, value
			if last == lowStayed {
				atLow /= 2
			}
			last = lowStayed
		} else {
			low, atLow = t, value
			if last == highStayed {
				atHigh /= 2
			}
			last = highStayed
		}
	}
	return 0, false
}

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

// lowest finds where a function that falls and then rises is below 0, or else where it is
// lowest, by ternary search. One that only falls is lowest at high, where it is atHigh. It
// returns false where the function has no value.
func lowest(low, high, atHigh float64, f func(t float64) (float64, bool)) (t, value float64, ok bool) {
	if before, ok := f(high - (high-low)/1024); !ok || before >= atHigh {
		return high, atHigh, ok
	}
	for range 40 {
		third := (high - low) / 3
		left, fine := f(low + third)
		right, ok := f(high - third)
		switch {
		case !ok || !fine:
			return 0, 0, false
		case left < 0:
			return low + third, left, true
		case left < right:
			high -= third
		default:
			low += third
		}
	}
	value, ok = f(low)
	return low, value, ok
}

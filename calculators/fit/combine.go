package fit

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// NearGrips is how near a combination has to come to its target to be listed, mm.
const NearGrips = 5

// Stems that are sold, their usual length, and the height of a ring, mm: common practice.
const (
	ShortestStem, LongestStem, stemSize = 30, 60, 5
	NormStem                            = 40
	spacerRing                          = 5
)

// Combination is one set of parts above the head tube.
type Combination struct {
	Parts geometry.Cockpit
	// Miss is where it puts the grips, less the target, and Off the length of that, mm.
	Miss geometry.Point
	Off  float64
	// Changed counts the parts that have to be had: stem and bar. Spacers and roll cost
	// nothing.
	Changed int
	// Over is by how much its spacers are beyond what the steerer allows, mm; 0 where
	// nobody knows.
	Over float64
}

// Combine returns, for each stem, angle and rise that is sold and each roll of the bar in
// degrees that is tried, the spacers in whole rings that come nearest to a target on a
// bike. parts are there now. The nearest come first, and near tells how many come within
// NearGrips. allowed is the greatest stack of spacers, mm, NaN where nobody knows.
func Combine(b geometry.Bike, parts geometry.Cockpit, target geometry.Point, allowed float64,
	rolls ...float64) (list []Combination, near int) {
	stems := []float64{parts.Stem}
	for s := float64(ShortestStem); s <= LongestStem; s += stemSize {
		if s != parts.Stem {
			stems = append(stems, s)
		}
	}
	angles := []float64{parts.StemAngle}
	for _, a := range []float64{0, 6, -6, -parts.StemAngle} {
		if !slices.Contains(angles, a) {
			angles = append(angles, a)
		}
	}
	for _, stem := range stems {
		for _, angle := range angles {
			for _, more := range [5]float64{0, 10, -10, 20, -20} {
				for _, roll := range rolls {
					c := Combination{Parts: parts}
					c.Parts.Stem, c.Parts.StemAngle, c.Parts.Rise, c.Parts.Roll = stem, angle, parts.Rise+more, roll
					if stem != parts.Stem || angle != parts.StemAngle {
						c.Changed++
					}
					if more != 0 {
						c.Changed++
					}
					if c.stack(b, parts.Spacers, target, allowed) {
						list = append(list, c)
					}
				}
			}
		}
	}
	slices.SortStableFunc(list, func(a, b Combination) int {
		// What differs by less than a millionth of a mm differs by rounding alone:
		// there the one with fewer parts to buy comes first.
		switch x, y := math.Round(1e6*a.Off), math.Round(1e6*b.Off); {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return a.Changed - b.Changed
	})
	for near < len(list) && list[near].Off <= NearGrips+1e-6 {
		near++
	}
	return list, near
}

// stack puts the rings under the stem that come nearest to the target, from the spacers
// that are there now, and says how far off the grips then are.
func (c *Combination) stack(b geometry.Bike, spacers float64, target geometry.Point, allowed float64) bool {
	h, ok := c.Parts.Hold(b)
	if !ok {
		return false
	}
	steps := math.Round(target.Sub(h.Grip).Dot(geometry.SpacerVector(1, b.HeadAngle)) / spacerRing)
	c.Parts.Spacers = math.Max(0, spacers+steps*spacerRing)
	if h, ok = c.Parts.Hold(b); !ok {
		return false
	}
	c.Miss = h.Grip.Sub(target)
	c.Off = c.Miss.Length()
	if !math.IsNaN(allowed) {
		c.Over = math.Max(0, c.Parts.Spacers-allowed)
	}
	return true
}

// AllowedSpacers returns the greatest stack under the stem: the maker's limit and
// what the steerer holds now, whichever is less; NaN where neither is known.
func AllowedSpacers(v calculators.Values) float64 {
	allowed := math.NaN()
	if v.Has(measure.SpacersAbove) {
		allowed = v.Of(measure.Spacers) + v.Of(measure.SpacersAbove)
	}
	if v.Has(measure.SpacersLimit) {
		if limit := v.Of(measure.SpacersLimit); math.IsNaN(allowed) || limit < allowed {
			allowed = limit
		}
	}
	return allowed
}

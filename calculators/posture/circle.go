package posture

// Circle is a leg through one whole turn of the cranks.
type Circle struct {
	// Poses are evenly spaced from the top of the stroke.
	Poses []LegPose
	// Straightest is where the knee is least bent: shortly before the bottom,
	// not at it. MostBent is where it is most bent.
	Straightest, MostBent LegPose
}

// Circle returns the leg at a number of evenly spaced crank angles, 72 for every
// 5 degrees, with both extremes of the knee found between them. It returns false
// when the leg cannot reach the whole circle or fewer than 8 angles are asked
// for.
func (c Chain) Circle(count int) (Circle, bool) {
	if count < 8 || count > 3600 {
		return Circle{}, false
	}
	step := 360 / float64(count)
	result := Circle{Poses: make([]LegPose, count)}
	far, near := 0, 0
	for i := range result.Poses {
		p, ok := c.At(float64(i) * step)
		if !ok {
			return Circle{}, false
		}
		result.Poses[i] = p
		if p.HipToAnkle > result.Poses[far].HipToAnkle {
			far = i
		}
		if p.HipToAnkle < result.Poses[near].HipToAnkle {
			near = i
		}
	}
	var ok, fine bool
	result.Straightest, ok = c.At(c.extreme(float64(far)*step, step, 1))
	result.MostBent, fine = c.At(c.extreme(float64(near)*step, step, -1))
	return result, ok && fine
}

// extreme returns the crank angle within a step of a start at which sign times
// the hip-to-ankle distance is greatest, in [0, 360).
//
// Golden-section search: it needs no derivative, and 36 steps shrink the bracket to a
// thirty-millionth of its width.
func (c Chain) extreme(start, step, sign float64) float64 {
	const golden = 0.6180339887498949
	low, high := start-step, start+step
	a := high - golden*(high-low)
	b := low + golden*(high-low)
	fa, fb := sign*c.hipToAnkle(a), sign*c.hipToAnkle(b)
	for range 36 {
		if fa > fb {
			high, b, fb = b, a, fa
			a = high - golden*(high-low)
			fa = sign * c.hipToAnkle(a)
		} else {
			low, a, fa = a, b, fb
			b = low + golden*(high-low)
			fb = sign * c.hipToAnkle(b)
		}
	}
	angle := (low + high) / 2
	if angle < 0 {
		angle += 360
	}
	return angle
}

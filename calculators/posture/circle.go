package posture

import "math"

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
	result.Straightest, ok = c.At(c.extreme(float64(far)*step, step))
	result.MostBent, fine = c.At(c.extreme(float64(near)*step, step))
	return result, ok && fine
}

// Straightest returns the leg where the knee is least bent, without the rest of the
// circle. It returns false when the leg does not reach there.
func (c Chain) Straightest() (LegPose, bool) {
	away := math.Atan2(-c.Hip.X, -c.Hip.Y) / radian // the crank points away from the hip
	return c.At(c.extreme(away, 20))
}

// extreme returns the crank angle, in [0, 360), near a start within a step of it at
// which the hip-to-ankle distance is greatest or least, whichever is there.
//
// The distance goes nearly as a cosine of the crank's angle, so the top of the parabola
// through three angles is close to the extreme. Each round takes three angles closer
// together round the last top, and leaves less than a hundredth of its error.
func (c Chain) extreme(angle, step float64) float64 {
	for ; step > 0.02; step /= 8 {
		before, at, after := c.hipToAnkle(angle-step), c.hipToAnkle(angle), c.hipToAnkle(angle+step)
		if curve := before + after - float64(2*at); curve != 0 {
			angle += math.Max(-step, math.Min(step, step*(before-after)/(2*curve)))
		}
	}
	angle = math.Mod(angle, 360)
	if angle < 0 {
		angle += 360
	}
	return angle
}

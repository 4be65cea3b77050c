package geometry

import "math"

// leg returns the other short side of a right-angled triangle, false when there
// is none. The product of sum and difference loses no digits where a difference
// of squares would.
func leg(hypotenuse, side float64) (float64, bool) {
	if !(hypotenuse > math.Abs(side)) {
		return 0, false
	}
	other := math.Sqrt((hypotenuse - side) * (hypotenuse + side))
	return other, finite(other)
}

// Solve returns the bike that a chart describes, or a Fault.
//
// The points come from reach, stack, head angle, offset, chainstay and drop by
// closing the front triangle on the stack:
//
//	L = (S − d + o·cos θ) / sin θ
//	F = T + L·(cos θ, −sin θ) + o·(sin θ, cos θ)
//
// T is the head tube's top, d the front axle's height above the bottom bracket,
// and L the distance from T down the steering axis to the square from the axle.
// Fork length, head tube and lower cup are not needed for this.
//
// Source: plane geometry; checked against an independent solve of the same
// figure from pairwise distances.
func (c Chart) Solve() (Bike, error) {
	front, rear, err := c.AxleHeights()
	if err != nil {
		return Bike{}, err
	}
	back, ok := leg(c.Chainstay, rear)
	if !ok {
		return Bike{}, ChainstayTooShort
	}
	b := Bike{
		HeadTop:         Point{c.Reach, c.Stack},
		AxisTop:         Point{c.Reach, c.Stack},
		HeadAngle:       c.HeadAngle,
		Offset:          c.ForkOffset,
		Front:           Point{c.frontCentre(front), front},
		Rear:            Point{-back, rear},
		FrontRadius:     c.FrontRadius,
		RearRadius:      c.RearRadius,
		SeatAngle:       c.SeatAngle,
		SeatTubeAngle:   c.SeatAngle,
		SeatAngleHeight: c.seatAngleHeight(),
	}
	sin, cos := sincos(c.HeadAngle)
	b.AxisLength = (c.Stack - front + float64(c.ForkOffset*cos)) / sin
	b.HeadBottom = b.OnAxis(c.HeadTube)
	b.Crown = b.OnAxis(b.AxisLength - c.ForkLength)
	if c.ForkLength == 0 {
		b.Crown = b.OnAxis(c.HeadTube + c.LowerHeadset)
	}
	if c.SeatTubeAngle > 0 {
		b.SeatTubeKnown = true
		b.SeatTubeAngle = c.SeatTubeAngle
		tube, _ := sincos(c.SeatTubeAngle)
		ahead := b.SeatAngleHeight * (cot(c.SeatTubeAngle) - cot(c.SeatAngle))
		b.SeatTubeAhead = ahead * tube
	}
	if err := b.check(); err != nil {
		return Bike{}, err
	}
	return b, nil
}

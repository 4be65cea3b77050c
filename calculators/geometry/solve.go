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
// Fork length, head tube and lower cup are not needed for this; where they
// disagree with L, Mismatch says by how much.
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

// ImpliedForkLength returns the fork length along the steering axis, in mm, that
// the chart's reach, stack, angle, wheels, drop, head tube and lower cup leave
// room for.
//
//	a = L − head tube − lower cup
//
// It returns the Fault of a chart that has no bike.
func (c Chart) ImpliedForkLength() (float64, error) {
	b, err := c.Solve()
	if err != nil {
		return 0, err
	}
	return b.AxisLength - c.HeadTube - c.LowerHeadset, nil
}

// Mismatch is how far the redundant numbers of a chart contradict the rest,
// stated minus implied, in mm; 0 for a number that was not given.
type Mismatch struct {
	// ForkLength compares the fork, head tube and lower cup with the stack.
	ForkLength float64
	// Wheelbase compares the printed wheelbase with the axles' distance.
	Wheelbase float64
	// Drop compares a printed drop with the one that a printed bottom-bracket
	// height and the wheels leave, where both are given and the drop is not 0.
	Drop float64
}

// Mismatch compares the redundant numbers of a chart with the bike that the
// rest describes. It returns the Fault of a chart that has no bike.
func (c Chart) Mismatch() (Mismatch, error) {
	b, err := c.Solve()
	if err != nil {
		return Mismatch{}, err
	}
	var m Mismatch
	if c.ForkLength > 0 && c.HeadTube > 0 {
		m.ForkLength = c.ForkLength + c.HeadTube + c.LowerHeadset - b.AxisLength
	}
	if c.Wheelbase > 0 {
		m.Wheelbase = c.Wheelbase - b.Wheelbase()
	}
	if c.BBHeight > 0 && c.Drop != 0 {
		m.Drop = c.Drop - b.Drop()
	}
	return m, nil
}

package geometry

import "math"

// Chart is what a maker prints about a frame, or a tape finds: mm and degrees.
// Fields marked optional may be left 0.
type Chart struct {
	// Reach and Stack place the head tube's top centre ahead of and above the
	// bottom bracket.
	Reach, Stack float64
	// HeadAngle is the steering axis above the horizontal.
	HeadAngle float64
	// SeatAngle is the effective one: the line from the bottom bracket to the
	// seat tube's axis at the level SeatAngleHeight above the bottom bracket
	// (optional: 0 stands for the stack).
	SeatAngle, SeatAngleHeight float64
	// SeatTubeAngle is the tube's own angle (optional). With it the tube may
	// pass ahead of or behind the bottom bracket; without it the seat line is
	// taken to run through the bottom bracket.
	SeatTubeAngle float64
	// HeadTube is the head tube's length, LowerHeadset the lower cup below it,
	// and ForkLength the length from crown seat to axle along the steering axis
	// (all optional: the points follow without them).
	HeadTube, LowerHeadset, ForkLength float64
	// ForkOffset is the axle's distance ahead of the steering axis.
	ForkOffset float64
	// Chainstay is the straight distance from bottom bracket to rear axle.
	Chainstay float64
	// Drop is how far the bottom bracket lies below the line between the axles,
	// taken at the bottom bracket. It may be 0 or negative.
	Drop float64
	// BBHeight, where above 0, is the bottom bracket's height above the floor
	// and stands in for Drop.
	BBHeight float64
	// FrontRadius and RearRadius are the wheels' outer radii.
	FrontRadius, RearRadius float64
}

// check returns the first reason why no bike can follow from the chart.
func (c Chart) check() error {
	switch {
	case !finite(c.Reach, c.Stack, c.HeadAngle, c.SeatAngle, c.SeatAngleHeight, c.SeatTubeAngle,
		c.HeadTube, c.LowerHeadset, c.ForkLength, c.ForkOffset, c.Chainstay, c.Drop, c.BBHeight,
		c.FrontRadius, c.RearRadius):
		return NotANumber
	case c.HeadAngle <= 0 || c.HeadAngle > 90:
		return HeadAngleRange
	case c.SeatAngle <= 0 || c.SeatAngle >= 180 || c.seatAngleHeight() <= 0:
		return SeatAngleRange
	case c.SeatTubeAngle < 0 || c.SeatTubeAngle >= 180:
		return SeatTubeRange
	case c.FrontRadius <= 0 || c.RearRadius <= 0:
		return RadiusRange
	}
	return nil
}

// seatAngleHeight is the level at which the effective seat angle is read.
func (c Chart) seatAngleHeight() float64 {
	if c.SeatAngleHeight == 0 {
		return c.Stack
	}
	return c.SeatAngleHeight
}

// AxleHeights returns how far the front and the rear axle lie above the bottom
// bracket, in mm.
//
//	d_rear = drop − (r_front − r_rear)·c/w    d_front = d_rear + r_front − r_rear
//
// c is the horizontal distance from bottom bracket to rear axle and w the
// wheelbase: both depend on the drops a little, so the pair is found by
// repetition, each step of which shrinks the error more than tenfold on any bike
// that is ridden. From a bottom-bracket height both follow at once. It returns a
// Fault where the chart has no bike.
func (c Chart) AxleHeights() (front, rear float64, err error) {
	if err := c.check(); err != nil {
		return 0, 0, err
	}
	step := c.FrontRadius - c.RearRadius
	if c.BBHeight > 0 {
		return c.FrontRadius - c.BBHeight, c.RearRadius - c.BBHeight, nil
	}
	rear = c.Drop
	if step == 0 {
		return rear, rear, nil
	}
	for range 60 {
		back, ok := leg(c.Chainstay, rear)
		if !ok {
			return 0, 0, ChainstayTooShort
		}
		wheelbase := c.frontCentre(rear+step) + back
		if !(wheelbase > 0) {
			return 0, 0, WheelsOverlap
		}
		next := c.Drop - float64(step*(back/wheelbase))
		if math.Abs(next-rear) <= 1e-11 {
			return next + step, next, nil
		}
		rear = next
	}
	return 0, 0, DropRange
}

// frontCentre returns the horizontal distance from bottom bracket to front axle
// when that axle lies drop above the bottom bracket.
//
//	FC = R + (S − d)/tan θ + o/sin θ
func (c Chart) frontCentre(drop float64) float64 {
	sin, _ := sincos(c.HeadAngle)
	return c.Reach + float64((c.Stack-drop)*cot(c.HeadAngle)) + c.ForkOffset/sin
}

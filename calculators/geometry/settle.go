package geometry

import "math"

// Change is what is different about a bike. Its zero value changes nothing, and
// every field is a difference, so two changes of unlike parts may be joined.
type Change struct {
	// Fork is how much longer the fork is along the steering axis, mm.
	Fork float64
	// Offset is how much more fork offset there is, mm.
	Offset float64
	// FrontRadius and RearRadius are how much larger the wheels are, mm.
	FrontRadius, RearRadius float64
	// FrontSag is the fork's compression along the steering axis, mm.
	FrontSag float64
	// RearSag is how far the rear axle rises in the frame, straight up, mm. A
	// linkage's real path curves a little: this is its usual stand-in.
	RearSag float64
	// HeadsetAngle is an angle headset's marked degrees, negative slackens, and
	// HeadsetPivot the distance below the head tube's top, along the steering
	// axis, of the point about which it turns the axis, mm.
	HeadsetAngle, HeadsetPivot float64
}

// finite reports whether every part of the change is a number.
func (c Change) finite() bool {
	return finite(c.Fork, c.Offset, c.FrontRadius, c.RearRadius, c.FrontSag, c.RearSag,
		c.HeadsetAngle, c.HeadsetPivot)
}

// Settle returns the bike after a change, standing level on both wheels again.
// It is the one way in which anything about a bike changes: the axles are moved
// in the frame, and then frame, axles and axis turn together about the bottom
// bracket until the ground is level.
//
//	F′ = M + (L − p + Δ − sag)·u(θ + δ) + (o + Δo)·n(θ + δ)    M = T + p·u(θ)
//	R′ = R + (0, rear sag)
//	β  = atan2(D_y, D_x) − asin((r_F − r_R)/|D|)               D = F′ − R′
//
// u runs down the steering axis and n square to it, forward; every angle grows
// by β. The frame is rigid, tyres keep their shape and the bar is straight. A
// change of 0 returns the same bike. It returns a Fault when the changed bike
// cannot stand.
//
// Source: plane geometry; β is the steer-axis tilt of Moore 2012, chapter on
// physical parameters, for a bike measured by distances with unequal wheels.
func Settle(b Bike, c Change) (Bike, error) {
	if !c.finite() {
		return Bike{}, NotANumber
	}
	if err := b.check(); err != nil {
		return Bike{}, err
	}
	if c == (Change{HeadsetPivot: c.HeadsetPivot}) {
		return b, nil
	}
	b.tiltAxis(c.HeadsetAngle, c.HeadsetPivot)
	if b.HeadAngle <= 0 || b.HeadAngle > 90 {
		return Bike{}, HeadAngleRange
	}
	travel := c.Fork - c.FrontSag
	crownToAxle := b.AxisLength - b.Crown.Sub(b.AxisTop).Dot(b.AxisDown())
	b.AxisLength += travel
	b.Offset += c.Offset
	b.FrontRadius += c.FrontRadius
	b.RearRadius += c.RearRadius
	switch {
	case b.FrontRadius <= 0 || b.RearRadius <= 0:
		return Bike{}, RadiusRange
	case b.AxisLength <= 0:
		return Bike{}, ForkTooShort
	}
	b.Front = b.AxleFoot().Add(b.AxisAhead().Scale(b.Offset))
	b.Crown = b.OnAxis(b.AxisLength - (crownToAxle + travel))
	b.Rear = b.Rear.Add(Point{0, c.RearSag})
	tilt, ok := GroundTilt(b.Rear, b.Front, b.RearRadius, b.FrontRadius)
	if !ok {
		return Bike{}, WheelsOverlap
	}
	b.turn(tilt)
	if err := b.check(); err != nil {
		return Bike{}, err
	}
	return b, nil
}

// tiltAxis turns the steering axis by an angle about a point of it.
func (b *Bike) tiltAxis(angle, pivot float64) {
	if angle == 0 {
		return
	}
	crown := b.Crown.Sub(b.AxisTop).Dot(b.AxisDown())
	centre := b.OnAxis(pivot)
	b.HeadAngle += angle
	b.AxisTop = centre.Sub(b.AxisDown().Scale(pivot))
	b.Crown = b.OnAxis(crown)
}

// turn puts every point and angle into axes whose ground direction rose tilt
// degrees in the old ones.
func (b *Bike) turn(tilt float64) {
	if tilt == 0 {
		return
	}
	for _, p := range []*Point{&b.HeadTop, &b.HeadBottom, &b.AxisTop, &b.Crown, &b.Front, &b.Rear} {
		*p = p.Turn(-tilt)
	}
	b.HeadAngle += tilt
	b.SeatAngle += tilt
	b.SeatTubeAngle += tilt
}

// GroundTilt returns how many degrees the line touching both wheels from below
// rises forward, in the axes in which the axles are given.
//
//	β = atan2(D_y, D_x) − asin((r_F − r_R)/|D|)
//
// It returns false when one wheel stands inside the other or the radii are not
// above 0.
func GroundTilt(rear, front Point, rearRadius, frontRadius float64) (float64, bool) {
	way := front.Sub(rear)
	distance := way.Length()
	step := frontRadius - rearRadius
	if !finite(distance, step) || rearRadius <= 0 || frontRadius <= 0 || distance <= math.Abs(step) {
		return 0, false
	}
	return (math.Atan2(way.Y, way.X) - math.Asin(clamp(step/distance))) / radian, true
}

// Sagged returns the bike with its suspension pressed in by percentages of the
// fork's travel, along the steering axis, and of the rear travel, straight up.
func Sagged(b Bike, forkTravel, frontPercent, rearTravel, rearPercent float64) (Bike, error) {
	return Settle(b, Change{
		FrontSag: forkTravel * frontPercent / 100,
		RearSag:  rearTravel * rearPercent / 100,
	})
}

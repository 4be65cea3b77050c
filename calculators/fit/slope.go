package fit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// Springs are the suspension of a bike on a slope. Both ends are taken as linear: an
// end sinks in proportion to its wheel's load. How stiff they are follows from the sag
// that was set, under the loads that both wheels carried on the level.
//
// Loads are shares of the weight of rider and bike. Tyres keep their shape, and what
// a linkage or a damper adds is left out.
type Springs struct {
	stand, level           geometry.Bike  // with nobody on it, and at sag on the level
	forkTravel, rearTravel float64        // mm
	front, rear            float64        // sag on the level, as a share of the travel
	frontLoad, rearLoad    float64        // that made that sag
	down                   geometry.Point // the steering axis of the bike with nobody on it
	tilt                   float64        // by which sag tips the bike forward, degrees
}

// NewSprings returns the springs that sink by the reader's sag when a bike is loaded on
// the level as a balance says; stand is that bike with nobody on it. It returns false
// where the bike cannot stand at that sag or one wheel carries nothing.
func NewSprings(v calculators.Values, stand geometry.Bike, on geometry.Balance) (Springs, bool) {
	level, ok := Sunk(v, stand)
	s := Springs{stand: stand, level: level,
		forkTravel: v.Of(measure.ForkTravel), front: v.Of(measure.SagFront) / 100,
		rearTravel: v.Of(measure.RearTravel), rear: v.Of(measure.SagRear) / 100,
		frontLoad: on.FrontLoad(0, 0), rearLoad: on.RearLoad(0, 0)}
	s.down, s.tilt = stand.AxisDown(), level.HeadAngle-stand.HeadAngle
	return s, ok && s.frontLoad > 0 && s.rearLoad > 0
}

// Settled is a bike that came to rest on its springs under other loads than on the
// level.
type Settled struct {
	// Balance is that of the bike as it stands now, seen along the slope.
	geometry.Balance
	// FrontSag and RearSag are how far both ends have sunk, mm, as geometry.Change
	// takes them.
	FrontSag, RearSag float64
	// Front is the share of the weight on the front wheel.
	Front float64
	// Tip is by how many degrees the bike has tipped back, against the slope, beyond
	// its sag on the level.
	Tip float64
}

// sunk returns how far an end sinks under a load, as a share of its travel: not at all
// with its wheel in the air, and no further than the travel goes.
func sunk(sag, load, level float64) float64 { return min(max(sag*load/level, 0), 1) }

// under returns the bike as it stands with loads on its wheels. The rider moves with
// the bike as one stiff figure, from the balance on the level.
func (s Springs) under(on geometry.Balance, front, rear float64) (Settled, bool) {
	at := Settled{Front: front, FrontSag: s.forkTravel * sunk(s.front, front, s.frontLoad),
		RearSag: s.rearTravel * sunk(s.rear, rear, s.rearLoad)}
	// What geometry.Settle does, for the axles alone: it is done some ten thousand times
	// for one answer with its ±.
	axle, hub := s.stand.Front.Sub(s.down.Scale(at.FrontSag)), s.stand.Rear.Add(geometry.Point{Y: at.RearSag})
	tilt, ok := geometry.GroundTilt(hub, axle, s.stand.RearRadius, s.stand.FrontRadius)
	if !ok {
		return at, false
	}
	at.Tip = s.tilt - tilt
	axle, hub = axle.Turn(-tilt), hub.Turn(-tilt)
	centre := geometry.Point{X: on.Ahead + s.level.Rear.X, Y: on.Height + s.level.Ground()}.Turn(at.Tip)
	at.Balance = geometry.Balance{Ahead: centre.X - hub.X, Height: centre.Y - hub.Y + s.stand.RearRadius,
		Wheelbase: on.Wheelbase + axle.X - hub.X - s.level.Wheelbase()}
	return at, axle.X > hub.X
}

// The search for rest ends where the loads change by less than settledBy of the weight.
const (
	settledBy  = 1e-10
	mostRounds = 60
)

// settle goes from loads to sag, from sag to the bike's attitude and from there to the
// loads again until they stay. loads returns both wheels' loads for a balance.
//
// Each round changes the loads by a nearly constant share of what the last one did, so
// two rounds tell where they lead, and the next one starts there.
//
// Source: Irons and Tuck 1969, Int J Numer Methods Eng 1:275-277 (from memory).
func (s Springs) settle(on geometry.Balance, loads func(geometry.Balance) (front, rear float64)) (Settled, bool) {
	front, rear := loads(on)
	var lastF, lastR float64 // by how much the last round changed the loads
	step := 1.0
	for round := range mostRounds {
		at, ok := s.under(on, front, rear)
		if !ok {
			return at, false
		}
		f, r := loads(at.Balance)
		f, r = f-front, r-rear
		if math.Abs(f) < settledBy && math.Abs(r) < settledBy {
			return at, true
		}
		if dF, dR := f-lastF, r-lastR; round > 0 {
			step *= -(float64(lastF*dF) + float64(lastR*dR)) / (float64(dF*dF) + float64(dR*dR))
		}
		front, rear = front+float64(step*f), rear+float64(step*r)
		lastF, lastR = f, r
	}
	return Settled{}, false
}

// On returns the bike at rest on its springs on a slope in degrees, uphill positive,
// that is ridden at a steady speed, or rolling freely: then the slope's pull goes into
// speed, the rider feels weight square to the ground only, and both wheels share it as
// on the level. on is the balance on the level at sag. It returns false where the bike
// cannot stand or finds no rest.
func (s Springs) On(on geometry.Balance, slope float64, rolling bool) (Settled, bool) {
	gain := 0.0
	if rolling {
		gain = -math.Sin(slope * math.Pi / 180)
	}
	return s.settle(on, func(b geometry.Balance) (front, rear float64) {
		return b.FrontLoad(slope, gain), b.RearLoad(slope, gain)
	})
}

// Light returns the slope, in degrees, on which the front wheel carries nothing at the
// height of each pedal push that swings by a share about its mean, as
// geometry.Balance.LightSlope does, with the bike settled under the mean load there.
func (s Springs) Light(on geometry.Balance, swing float64) (float64, bool) {
	at, ok := s.settle(on, func(b geometry.Balance) (front, rear float64) {
		slope := b.LightSlope(swing)
		return b.FrontLoad(slope, 0), b.RearLoad(slope, 0)
	})
	return at.LightSlope(swing), ok
}

// PitchOver returns the deceleration, in g, at which the rear wheel lifts on a slope in
// degrees. All the weight is then on the front wheel: the fork has dived and the rear
// end has come up.
func (s Springs) PitchOver(on geometry.Balance, slope float64) (float64, bool) {
	at, ok := s.under(on, math.Cos(slope*math.Pi/180), 0)
	return at.PitchOver(slope), ok
}

package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// A chart prints more numbers than a frame needs, so some can be had in two
// ways. What follows compares the two, and asks which single entry could be a
// slip: the one that, changed alone within its plausible range, brings every
// comparison inside what rounding allows, when no other entry does.

// The entries of a chart, each an index into stated.
const (
	eReach = iota
	eStack
	eHead
	eSeat
	eChainstay
	eDrop
	eHeight
	eOffset
	eHeadTube
	eFork
	eFrontRim
	eFrontTyre
	eRearRim
	eRearTyre
	eWheelbase
	eFrontCentre
	eTopTube
	entries
)

// entry is one number of a chart that may be a slip.
type entry struct {
	*measure.Quantity
	step float64 // between the values that are tried
}

// chartEntries are the entries in the order of their indices.
var chartEntries = [entries]entry{
	{measure.Reach, 1}, {measure.Stack, 1}, {measure.HeadAngle, 0.1}, {measure.SeatAngle, 0.1},
	{measure.Chainstay, 1}, {measure.BBDrop, 1}, {measure.BBHeight, 1}, {measure.ForkOffset, 1},
	{measure.HeadTubeLength, 1}, {measure.ForkLength, 1},
	{measure.FrontRim, 0}, {measure.FrontTyre, 1}, {measure.RearRim, 0}, {measure.RearTyre, 1},
	{measure.Wheelbase, 1}, {measure.FrontCentre, 1}, {measure.EffectiveTopTube, 1},
}

// rims are the bead-seat diameters that a mountain bike may have, mm.
var rims = [...]float64{406, 507, 559, 584, 622}

// stated is a chart as it was typed, before anything is made of it.
type stated struct {
	x        [entries]float64
	has      [entries]bool    // given, or assumed
	given    [entries]bool    // given by the reader
	rounding [entries]float64 // how far each may be off and still be right, mm or degrees

	radiusFront, radiusRear float64 // measured; 0 where rim and tyre decide
	seatHeight, tube        float64 // 0 where not given
	straight                bool    // the fork length is the straight one
	cup                     float64 // lower headset
	cupKnown                bool
}

// stateChart takes the chart from what was typed.
func stateChart(v calculators.Values) stated {
	s := stated{}
	for i, e := range chartEntries {
		if s.has[i] = v.Has(e.Quantity); !s.has[i] {
			continue
		}
		s.x[i], s.given[i] = v.Of(e.Quantity), v.Given(e.Quantity)
		s.rounding[i] = roundingOf(v, e.Quantity)
	}
	of := func(q *measure.Quantity) float64 {
		if v.Has(q) {
			return v.Of(q)
		}
		return 0
	}
	s.radiusFront, s.radiusRear = of(measure.FrontRadius), of(measure.RearRadius)
	s.seatHeight, s.tube = of(measure.SeatAngleHeight), of(measure.SeatTubeAngle)
	s.straight = v.Is(measure.ForkMeasure, "straight")
	s.cup, s.cupKnown = of(measure.LowerHeadset), v.Given(measure.LowerHeadset)
	return s
}

// roundingOf tells how far a printed number may lie from the one that the maker
// drew with: half a step of the last digit. Angles that end on a half or a whole
// degree may have been rounded to half degrees. A reader who typed a ± of their
// own measured, and twice that counts; so does twice what is not known of an
// assumed value.
func roundingOf(v calculators.Values, q *measure.Quantity) float64 {
	x, sd := v.Nominal(q), v.SD(q)
	switch {
	case !v.Given(q) || sd != q.Repeat:
		return 2 * sd
	case q == measure.FrontRim || q == measure.RearRim:
		return 0
	case q == measure.FrontTyre || q == measure.RearTyre:
		return 2 // tyres come up larger or smaller with the rim's width
	case q.Unit == measure.Deg && whole(2*x):
		return 0.25
	case q.Unit == measure.Deg || !whole(x):
		return 0.05
	}
	return 0.5
}

func whole(x float64) bool { return math.Abs(x-math.Round(x)) < 1e-6 }

// chart makes the geometry of what is stated.
func (s *stated) chart() geometry.Chart {
	c := geometry.Chart{
		Reach: s.x[eReach], Stack: s.x[eStack], HeadAngle: s.x[eHead], SeatAngle: s.x[eSeat],
		SeatAngleHeight: s.seatHeight, SeatTubeAngle: s.tube, HeadTube: s.x[eHeadTube],
		ForkOffset: s.x[eOffset], Chainstay: s.x[eChainstay], Drop: s.x[eDrop],
		FrontRadius: s.radiusFront, RearRadius: s.radiusRear,
	}
	if c.FrontRadius == 0 {
		c.FrontRadius, _ = geometry.TyreRadius(s.x[eFrontRim], s.x[eFrontTyre])
	}
	if c.RearRadius == 0 {
		c.RearRadius, _ = geometry.TyreRadius(s.x[eRearRim], s.x[eRearTyre])
	}
	if !s.has[eDrop] {
		c.BBHeight = s.x[eHeight]
	}
	return c
}

// The comparisons that a chart may allow.
const (
	cFork = iota
	cWheelbase
	cFrontCentre
	cTopTube
	cHeight
	checks
)

// gap is one comparison: what is stated less what the rest implies, and between
// what bounds it may lie with every number right.
type gap struct {
	made             bool
	stated, implied  float64
	apart, low, high float64
}

// excess returns how far the gap lies outside its bounds, mm.
func (g gap) excess() float64 {
	switch {
	case !g.made:
		return 0
	case g.apart > g.high:
		return g.apart - g.high
	case g.apart < g.low:
		return g.low - g.apart
	}
	return 0
}

// gaps makes every comparison that the chart allows, and false where it has no
// bike. The bounds are the roundings of all numbers that a comparison uses, each
// times its share, added up: a chart inside them contradicts nothing.
//
//	L  = (S − d + o·cos θ)/sin θ        FC = R + (S − d)/tan θ + o/sin θ
//
// and their slopes over each number.
func (s *stated) gaps() (all [checks]gap, ok bool) {
	b, err := s.chart().Solve()
	if err != nil {
		return all, false
	}
	theta := b.HeadAngle * math.Pi / 180
	sin, cos := math.Sin(theta), math.Cos(theta)
	cot, above := cos/sin, b.Stack()-b.Front.Y
	r := &s.rounding
	place := r[eDrop] // how far the axles may stand off, mm
	if !s.has[eDrop] {
		place = r[eHeight] + r[eFrontTyre]
	}
	turn := r[eHead] * math.Pi / 180 / (sin * sin)
	ahead := r[eReach] + float64(cot*(r[eStack]+place)) + r[eOffset]/sin + float64(turn*(above+float64(b.Offset*cos)))

	if s.has[eFork] && s.has[eHeadTube] {
		fork := s.x[eFork]
		if s.straight {
			fork, _ = geometry.ForkLengthOnAxis(fork, b.Offset)
		}
		room := b.AxisLength - s.x[eHeadTube] - s.cup
		all[cFork] = between(
			fork,
			room,
			r[eFork]+r[eHeadTube]+(r[eStack]+place)/sin+float64(
				cot*r[eOffset],
			)+float64(
				turn*(float64(above*cos)+b.Offset),
			),
		)
		if !s.cupKnown {
			all[cFork].low -= 2 * fit.LowerCupSD
		}
	}
	back := -b.Rear.X
	if s.has[eWheelbase] {
		all[cWheelbase] = between(s.x[eWheelbase], b.Wheelbase(), r[eWheelbase]+ahead+
			float64(r[eChainstay]*(s.x[eChainstay]/back))+float64(place*(math.Abs(b.Rear.Y)/back)))
	}
	if s.has[eFrontCentre] {
		// Charts print it straight or level; both may be meant.
		level, straight := b.FrontCentreLevel(), b.FrontCentre()
		all[cFrontCentre] = between(s.x[eFrontCentre], straight, r[eFrontCentre]+ahead)
		all[cFrontCentre].low -= straight - level
	}
	if s.has[eTopTube] {
		phi := b.SeatAngle * math.Pi / 180
		lean := math.Cos(phi) / math.Sin(phi)
		all[cTopTube] = between(s.x[eTopTube], b.EffectiveTopTube(), r[eTopTube]+r[eReach]+float64(r[eStack]*lean)+
			float64(r[eSeat]*math.Pi/180*b.Stack()/(math.Sin(phi)*math.Sin(phi))))
	}
	if s.has[eHeight] && s.has[eDrop] {
		all[cHeight] = between(s.x[eHeight], b.BBHeight(), r[eHeight]+r[eDrop]+max(r[eFrontTyre], r[eRearTyre]))
	}
	return all, true
}

// between compares a stated number with an implied one that may differ by an
// allowance.
func between(stated, implied, allowed float64) gap {
	return gap{made: true, stated: stated, implied: implied, apart: stated - implied, low: -allowed, high: allowed}
}

// worst returns the largest excess, mm, and whether anything was compared.
func worst(all [checks]gap) (excess float64, made bool) {
	for _, g := range all {
		made = made || g.made
		excess = max(excess, g.excess())
	}
	return excess, made
}

// agrees tells whether every comparison that the chart allows lies inside its bounds.
func (s *stated) agrees() bool {
	all, ok := s.gaps()
	excess, _ := worst(all)
	return ok && excess == 0
}

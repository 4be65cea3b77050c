package frame

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// Climb answers how the two wheels share the weight on a slope, and where the
// front one goes light. Its centre of mass feeds nothing: put in the place of a
// weighed one it would switch the body model off.
func Climb() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "climb-balance", Section: calculators.Frame,
		Title: "Climbing and descending balance", Question: "Where does the front wheel lift, and what would a change buy you?",
		Scenario: "Larch Hollow’s test rider, 1740 mm tall and 75 kg, seated on the test bike on a climb of 15 %.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830", Optional: true}, {Quantity: measure.Stature, Example: "1740", Optional: true}, fit.SexInput(""),
				{Quantity: measure.Mass, Example: "75", Assume: calculators.Fixed(75, 12, "a usual adult")},
				{Quantity: measure.SaddleHeight, Example: "736", Optional: true},
				{Quantity: measure.GripX, Example: "442", Optional: true}, {Quantity: measure.GripY, Example: "715", Optional: true},
				{Quantity: measure.Grade, Example: "15±0", Slide: [2]float64{0, 40}, Assume: calculators.Fixed(0, 0, "on the level")},
				{Quantity: measure.SaddleSetback, Optional: true, Folded: true},
				{Quantity: measure.ElbowBend, Folded: true, Assume: calculators.Fixed(30, 0, "soft elbows, common practice")},
				{Quantity: measure.BikeMass, Folded: true, Assume: calculators.Fixed(15, 1.5, "a usual trail bike")},
				{Quantity: measure.Load, Folded: true, Assume: calculators.Fixed(3, 1, "shoes, helmet and a small pack; counted where your own mass is")},
			},
			foldedBar(), fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")}, climbPedals(), fit.UnderGripsInputs(),
			[]calculators.Input{
				{Quantity: measure.COMForward, Optional: true, Folded: true},
				{Quantity: measure.COMHeight, Optional: true, Folded: true},
				{Quantity: measure.Wheelbase, Optional: true, Folded: true},
				{Quantity: measure.COMForwardError, Folded: true, Assume: modelError},
				{Quantity: measure.COMHeightError, Folded: true, Assume: modelError},
			}),
		Readings: []calculators.Measured{
			{Name: "front-load", Label: "On the front wheel", Unit: measure.Percent, Finer: 1,
				Between: "the front wheel’s share of both wheel loads, seated, a steady push, on the chosen grade"},
			{Name: "lift-off-grade", Label: "Front lifts at", Unit: measure.Percent,
				Between: "grade at which a steady push leaves nothing on the front wheel"},
			{Name: "wander-grade", Label: "Front wanders at", Unit: measure.Percent,
				Between: "grade at which the front wheel goes light in each push of the pedal"},
			{Name: "pitch-over-deceleration", Label: "Rear lifts when braking at", Unit: measure.Gravity,
				Between: "deceleration on the level, standing ready with the saddle dropped, the front tyre gripping"},
			{Name: "trunk-angle", Label: "Trunk, seated", Unit: measure.Deg, Folded: true, Between: "the ground and the line from hip to shoulder, at sag; upright is 90"},
			{Name: "com-forward", Label: "Centre of mass, ahead", Unit: measure.Mm, Folded: true, Between: "rear wheel’s contact forward to the centre of mass of rider and bike, level"},
			{Name: "com-height", Label: "Centre of mass, high", Unit: measure.Mm, Folded: true, Between: "ground up to the centre of mass of rider and bike"},
		},
		Workings: climbWorkings(),
		Sources: []*literature.Source{literature.DeLeva1996, literature.Riel2005, literature.Moore2012, literature.Meijaard2007, literature.ISO4210Part2,
			literature.Gordon2014, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteadyBike, caution.FirstRide},
		Solve:    solveClimb,
		Explain:  explainClimb,
	}
}

// foldedBar asks how far apart the hands are, behind "More settings".
func foldedBar() []calculators.Input {
	inputs := fit.BarInputs()
	for i := range inputs {
		inputs[i].Folded = true
	}
	return inputs
}

// climbPedals ask, folded, for what the legs stand on. It moves the centre of mass
// by a few mm, so nothing of it is held uncertain.
func climbPedals() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.CrankLength, Folded: true, Assume: calculators.Fixed(170, 0, "the length most adult bikes are sold with")},
		{Quantity: measure.PedalHeight, Folded: true, Assume: calculators.Fixed(12, 0, "between flat and clipped pedals")},
		{Quantity: measure.SoleHeight, Folded: true, Assume: calculators.Fixed(13, 0, "between shoes for flat and for clipped pedals")},
		{Quantity: measure.CleatBehindBall, Folded: true, Assume: calculators.Fixed(5, 0, "between clipped in and flat")},
	}
}

// modelErrorSD is half of the ±25 mm by which two models of one measured rider
// differ (Moore 2012), mm.
const modelErrorSD = 12.5

// modelError is what is not known of the body model; a weighed centre has none.
func modelError(v calculators.Values) (calculators.Assumption, bool) {
	return calculators.Assumption{SD: modelErrorSD, From: "how far two body models of one measured rider lie apart"}, !weighed(v)
}

// weighed tells whether the centre of mass was found on a scale.
func weighed(v calculators.Values) bool { return v.Has(measure.COMForward) && v.Has(measure.COMHeight) }

// The bike's own centre of mass: ahead of the rear contact as a share of the
// wheelbase, and above the ground, mm. From memory.
const bikeAhead, bikeUp = 0.42, 520

// Swing is by what share of its mean the drive force of a seated rider swings
// above it in each push: between the two, from memory.
const swingLeast, swingMost = 0.6, 1.0

// The two changes whose worth is computed.
const (
	postForward = 25 // less setback of the post, mm
	seatSteeper = 2  // of seat angle, degrees
)

// saddleMoves are the same two as moves of the saddle: forward, and about the bottom
// bracket.
var saddleMoves = [2]struct{ forward, steeper float64 }{{forward: postForward}, {steeper: seatSteeper}}

// climbs are the grades of the table, percent.
var climbs = [9]float64{0, 5, 10, 15, 20, 25, 30, 35, 40}

// steepDescent is the descent whose braking limit is shown, percent, unless the
// reader chose one.
const steepDescent = -60

// descent returns the grade of the descent that is shown, percent.
func descent(v calculators.Values) float64 {
	if grade := v.Of(measure.Grade); grade < 0 {
		return grade
	}
	return steepDescent
}

// Where the workings stand.
const (
	wClimbs   = 0
	wDescent  = wClimbs + len(climbs)
	wPost     = wDescent + 1
	wSeat     = wPost + 4
	wRearmost = wSeat + 4
)

func climbWorkings() []calculators.Measured {
	var m []calculators.Measured
	for range climbs {
		m = append(m, calculators.Measured{Name: "load", Label: "On the front wheel", Unit: measure.Percent, Finer: 1})
	}
	m = append(m, calculators.Measured{Name: "brake", Label: "Rear lifts when braking at", Unit: measure.Gravity})
	for _, name := range [2]string{"post", "seat"} {
		m = append(m, calculators.Measured{Name: name + "-load", Label: "On the front wheel, level", Unit: measure.Percent, Finer: 1},
			calculators.Measured{Name: name + "-load-change", Label: "On the front wheel, level", Unit: measure.Percent, Finer: 1},
			calculators.Measured{Name: name + "-lift", Label: "Front lifts at", Unit: measure.Percent, Finer: 1},
			calculators.Measured{Name: name + "-lift-change", Label: "Front lifts at", Unit: measure.Percent, Finer: 1})
	}
	return append(m, calculators.Measured{Name: "rearmost", Label: "On the front wheel, saddle back", Unit: measure.Percent, Finer: 1})
}

// mount is a bike at sag with the legs that turn its cranks.
type mount struct {
	bike    fit.Ridden
	leg     body.Leg
	feet    posture.Setup
	saddle  geometry.Point // at sag
	ok      bool           // no length is missing, and they make a leg
	problem *calculators.Problem
}

// mountOf is the reader's.
var mountOf = calculators.Part[mount]{Compute: func(v calculators.Values) mount {
	bike, p := fit.Ride(v)
	if p != nil {
		return mount{problem: p}
	}
	saddle, ok := fit.SaddlePoint(v, bike.Level)
	leg, fine := fit.Leg(v)
	return mount{bike: bike, leg: leg, feet: fit.Feet(v), saddle: bike.Turn(saddle), ok: ok && fine}
}}

// sitters are the legs of the seated rider: as the saddle stands, and after each of
// the moves of it. What is above the hips does not count yet.
type sitters [1 + len(saddleMoves)]struct {
	fit.Sitter
	ok bool
}

var sittersOf = calculators.Part[sitters]{Compute: func(v calculators.Values) (s sitters) {
	m, upper := mountOf.Of(v), posture.Upper{Sex: fit.Sex(v)}
	for i := range s {
		saddle := m.saddle
		if i > 0 {
			move := saddleMoves[i-1]
			saddle = saddle.Add(geometry.Point{X: move.forward}).Turn(-move.steeper)
		}
		s[i].Sitter, s[i].ok = fit.Sit(m.leg, m.feet, upper, saddle)
	}
	return s
}}

// climber is a rider on a mount.
type climber struct {
	mount
	upper posture.Upper
	elbow float64
	grip  geometry.Point // at sag
}

// climberOf is the reader.
var climberOf = calculators.Part[climber]{Compute: func(v calculators.Values) climber {
	m := mountOf.Of(v)
	return climber{mount: *m, upper: fit.Upper(v), elbow: v.Of(measure.ElbowBend), grip: m.bike.Turn(geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)})}
}}

// sit returns the reader seated: as the saddle stands, or after one of the moves.
func sit(v calculators.Values, move int) (fit.Seating, bool) {
	c, legs := climberOf.Of(v), &sittersOf.Of(v)[move]
	if !legs.ok {
		return fit.Seating{}, false
	}
	whole := legs.Sitter
	whole.Upper = c.upper
	return whole.Reach(c.grip, c.elbow)
}

// balance returns the weight of bike and rider on the two wheels, for a rider
// whose centre of mass lies somewhere above the bottom bracket.
func (c *climber) balance(v calculators.Values, rider geometry.Point) geometry.Balance {
	b := c.bike.Sagged
	w := b.Wheelbase()
	rear, ground := b.Rear.X, b.Ground()
	all, _ := body.Combine(
		body.Part{Mass: v.Of(measure.Mass) + v.Of(measure.Load), X: rider.X - rear, Y: rider.Y - ground},
		body.Part{Mass: v.Of(measure.BikeMass), X: bikeAhead * w, Y: bikeUp})
	return geometry.Balance{Ahead: all.X + v.Of(measure.COMForwardError), Height: all.Y + v.Of(measure.COMHeightError), Wheelbase: w}
}

// centre is where a rider's own centre of mass lies, if there is such a pose.
type centre struct {
	at geometry.Point
	ok bool
}

// seats are the seated rider: as the saddle stands, and after each of the moves.
type seats struct {
	as    centre
	trunk float64 // its angle, degrees
	moved [len(saddleMoves)]centre
}

// seatsOf seats the reader. What is weighed does not count yet, so an uncertain
// mass seats nobody anew.
var seatsOf = calculators.Part[seats]{Compute: func(v calculators.Values) (s seats) {
	seated, ok := sit(v, 0)
	if !ok {
		return s
	}
	s.as, s.trunk = centreOf(seated), seated.Trunk.Angle
	for i := range s.moved {
		if moved, ok := sit(v, i+1); ok {
			s.moved[i] = centreOf(moved)
		}
	}
	return s
}}

func centreOf(s fit.Seating) centre {
	at, ok := s.Joints.CentreOfMass(s.Upper.Sex)
	return centre{at, ok}
}

// readyOf stands the reader ready on the level, and descending on the descent.
var (
	readyOf      = calculators.Part[centre]{Compute: func(v calculators.Values) centre { return climberOf.Of(v).stand(0) }}
	descendingOf = calculators.Part[centre]{Compute: func(v calculators.Values) centre {
		return climberOf.Of(v).stand(geometry.SlopeAngle(descent(v)))
	}}
)

// stand returns where the rider's centre of mass lies who stands ready on a slope,
// degrees.
func (c *climber) stand(slope float64) centre {
	stance := posture.ReadyStance
	stance.Slope = slope
	feet := c.feet
	feet.CleatBehindBall = posture.StandingCleat
	s, ok := posture.NewStanding(c.leg, feet, c.upper, stance)
	if !ok {
		return centre{}
	}
	at, err := s.CentreOfMass(c.grip)
	return centre{at, err == nil}
}

// needs asks for what the body model cannot do without.
func needs(v calculators.Values) *calculators.Problem {
	if weighed(v) {
		if !v.Has(measure.Wheelbase) && !(v.Has(measure.Reach) && v.Has(measure.Stack)) {
			return &calculators.Problem{Input: measure.Wheelbase.Key, Needed: true, Text: words.Of("{0} is needed with a weighed centre of mass.", measure.Wheelbase.Named())}
		}
		return nil
	}
	for _, q := range [...]*measure.Quantity{measure.Inseam, measure.Stature, measure.SaddleHeight, measure.GripX, measure.GripY} {
		if !v.Has(q) {
			return &calculators.Problem{Input: q.Key, Needed: true,
				Text: words.Of("{0} is needed, or else a centre of mass from weighing: {1} and {2}.", q.Named(), measure.COMForward.Named(), measure.COMHeight.Named())}
		}
	}
	return nil
}

func solveClimb(v calculators.Values, out []float64) *calculators.Problem {
	for i := range out {
		out[i] = math.NaN()
	}
	if p := needs(v); p != nil {
		return p
	}
	if weighed(v) {
		return solveWeighed(v, out)
	}
	c := climberOf.Of(v)
	if c.problem != nil || !c.ok {
		return c.problem
	}
	if s := seatsOf.Of(v); s.as.ok {
		b := c.balance(v, s.as.at)
		share(v, b, out)
		out[4] = s.trunk
		moves(v, c, b, s, out[7:])
	}
	if at := readyOf.Of(v); at.ok {
		out[3] = c.balance(v, at.at).PitchOver(0)
	}
	if at := descendingOf.Of(v); at.ok {
		out[7+wDescent] = c.balance(v, at.at).PitchOver(geometry.SlopeAngle(descent(v)))
	}
	return nil
}

// moves fills in what the two changes do, and the saddle pushed all the way back.
func moves(v calculators.Values, c *climber, b geometry.Balance, s *seats, w []float64) {
	for i, moved := range s.moved {
		if moved.ok {
			after, x := c.balance(v, moved.at), w[wPost+4*i:]
			x[0], x[2] = 100*after.FrontShare(0), 100*after.Ahead/after.Height
			x[1], x[3] = x[0]-100*b.FrontShare(0), x[2]-100*b.Ahead/b.Height
		}
	}
	// As far back costs what as far forward gains: the share is straight in the
	// saddle's place to a twentieth of a percent.
	w[wRearmost] = 100*b.FrontShare(0) - w[wPost+1]
}

// share fills in what follows from one balance.
func share(v calculators.Values, b geometry.Balance, out []float64) {
	lift := 100 * b.Ahead / b.Height
	out[0] = 100 * b.FrontShare(v.Of(measure.Grade))
	out[1], out[2] = lift, lift/(1+(swingLeast+swingMost)/2)
	out[5], out[6] = b.Ahead, b.Height
	for i, grade := range climbs {
		out[7+wClimbs+i] = 100 * b.FrontShare(grade)
	}
}

// weighedBalance returns the balance that a scale found.
func weighedBalance(v calculators.Values) (geometry.Balance, *calculators.Problem) {
	b := geometry.Balance{Ahead: v.Of(measure.COMForward), Height: v.Of(measure.COMHeight)}
	if v.Has(measure.Wheelbase) {
		b.Wheelbase = v.Of(measure.Wheelbase)
		return b, nil
	}
	bike, p := fit.Ride(v)
	if p == nil {
		b.Wheelbase = bike.Sagged.Wheelbase()
	}
	return b, p
}

// solveWeighed leaves the body model out: the braking limits then hold for the
// posture in which the rider was weighed.
func solveWeighed(v calculators.Values, out []float64) *calculators.Problem {
	b, p := weighedBalance(v)
	if p != nil {
		return p
	}
	if b.Ahead >= b.Wheelbase {
		return &calculators.Problem{Input: measure.COMForward.Key, Text: words.Of("The centre of mass lies ahead of the front wheel, {0} against a wheelbase of {1}: on such a bike the rear wheel would hang in the air. Check both.",
			measure.COMForward.Amount(b.Ahead), measure.Wheelbase.Amount(b.Wheelbase))}
	}
	share(v, b, out)
	out[3] = b.PitchOver(0)
	out[7+wDescent] = b.PitchOver(geometry.SlopeAngle(descent(v)))
	return nil
}

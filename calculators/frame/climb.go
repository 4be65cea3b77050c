package frame

import (
	"slices"
	"strconv"

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
		Title:    "Climbing and descending balance",
		Question: "Where does the front wheel lift, and what would a change buy you?",
		Scenario: "The test rider, 1740 mm tall and 75 kg, seated on the test bike on a climb of 15 %.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830", Optional: true},
				{Quantity: measure.Stature, Example: "1740", Optional: true}, fit.SexInput(""),
				{Quantity: measure.Mass, Example: "75", Assume: calculators.Fixed(75, 12, "a usual adult")},
				{Quantity: measure.SaddleHeight, Example: "736", Optional: true},
				{Quantity: measure.GripX, Example: "442", Optional: true},
				{Quantity: measure.GripY, Example: "715", Optional: true},
				{Quantity: measure.Grade, Example: "15±0", Slide: [2]float64{0, 40},
					Assume: calculators.Fixed(0, 0, "on the level")},
				{Quantity: measure.SaddleSetback, Optional: true, Folded: true},
				{Quantity: measure.ElbowBend, Folded: true,
					Assume: fit.UsualElbow.Assume},
				{Quantity: measure.BikeMass, Folded: true, Assume: calculators.Fixed(15, 1.5, "a usual trail bike")},
				{Quantity: measure.Load, Folded: true,
					Assume: calculators.Fixed(3, 1, "shoes, helmet and a small pack; counted where your own mass is")},
			},
			foldedBar(), fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")}, climbPedals(),
			fit.UnderGripsInputs(),
			[]calculators.Input{
				{Quantity: measure.COMForward, Optional: true, Folded: true},
				{Quantity: measure.COMHeight, Optional: true, Folded: true},
				{Quantity: measure.Wheelbase, Optional: true, Folded: true},
				{Quantity: measure.COMForwardError, Folded: true, Assume: modelError},
				{Quantity: measure.COMHeightError, Folded: true, Assume: modelError},
			}),
		Answers: []*calculators.Output{frontLoad, liftGrade, wanderGrade, pitchOver, trunkSeated, comForward,
			comHeight},
		Workings: climbWorkings(),
		Sources: []*literature.Source{literature.DeLeva1996, literature.Riel2005, literature.Moore2012,
			literature.Meijaard2007, literature.ISO4210Part2,
			literature.Gordon2014, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteadyBike, caution.FirstRide},
		Solve:    solveClimb,
		Explain:  explainClimb,
	}
}

// What it answers.
var (
	frontLoad = &calculators.Output{Name: "front-load", Label: "On the front wheel", Unit: measure.Percent, Finer: 1,
		Between: "the front wheel’s share of both wheel loads, seated, a steady push, on the chosen grade"}
	liftGrade = &calculators.Output{Name: "lift-off-grade", Label: "Front lifts at", Unit: measure.Percent,
		Between: "grade at which a steady push leaves nothing on the front wheel"}
	wanderGrade = &calculators.Output{Name: "wander-grade", Label: "Front wanders at", Unit: measure.Percent,
		Between: "grade at which the front wheel goes light in each push of the pedal"}
	pitchOver = &calculators.Output{Name: "pitch-over-deceleration", Label: "Rear lifts when braking at",
		Unit:    measure.Gravity,
		Between: "deceleration on the level, standing ready with the saddle dropped, the front tyre gripping"}
	trunkSeated = &calculators.Output{Name: "trunk-angle", Label: "Trunk, seated", Unit: measure.Deg, Folded: true,
		Between: "the ground and the line from hip to shoulder, at sag; upright is 90"}
	comForward = &calculators.Output{Name: "com-forward", Label: "Centre of mass, ahead", Unit: measure.Mm,
		Folded:  true,
		Between: "rear wheel’s contact forward to the centre of mass of rider and bike, level"}
	comHeight = &calculators.Output{Name: "com-height", Label: "Centre of mass, high", Unit: measure.Mm, Folded: true,
		Between: "ground up to the centre of mass of rider and bike"}
)

// Further numbers: the braking limit on a descent, and the front wheel's share on the
// level with the saddle moved back.
var (
	descentBrake = &calculators.Output{Name: "descent-brake", Label: "Rear lifts when braking at",
		Unit: measure.Gravity}
	saddleBack = &calculators.Output{Name: "saddle-back-load", Label: "On the front wheel, saddle back",
		Unit: measure.Percent, Finer: 1}
)

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
	feet := fit.Exact(fit.FootInputs())
	for i := range feet {
		feet[i].Example = "" // as the pages that explain them have it
	}
	return feet
}

// modelErrorSD is half of the ±25 mm by which two models of one measured rider
// differ (Moore 2012), mm.
const modelErrorSD = 12.5

// modelError is what is not known of the body model; a weighed centre has none.
func modelError(v calculators.Values) (calculators.Assumption, bool) {
	return calculators.Assumption{SD: modelErrorSD, From: "how far two body models of one measured rider lie apart"},
		!weighed(v)
}

// weighed tells whether the centre of mass was found on a scale.
func weighed(v calculators.Values) bool { return v.Has(measure.COMForward) && v.Has(measure.COMHeight) }

// The bike's own centre of mass: ahead of the rear contact as a share of the
// wheelbase, and above the ground, mm. From memory.
const bikeAhead, bikeUp = 0.42, 520

// By what share of its mean the drive force of a seated rider swings above it in
// each push: between these two, from memory.
const swingLeast, swingMost = 0.6, 1.0

// The two changes whose worth is computed.
const (
	postForward = 25 // less setback of the post, mm
	seatSteeper = 2  // of seat angle, degrees
)

// saddleMove is a change of the saddle's place, and what it does to the front wheel's
// share on the level and to the grade at which the front lifts.
type saddleMove struct {
	forward, steeper           float64 // mm; degrees about the bottom bracket
	load, loadBy, lift, liftBy *calculators.Output
}

var (
	postMove    = newSaddleMove("post", postForward, 0)
	seatMove    = newSaddleMove("seat", 0, seatSteeper)
	saddleMoves = [...]saddleMove{postMove, seatMove}
)

func newSaddleMove(name string, forward, steeper float64) saddleMove {
	one := func(number, label string) *calculators.Output {
		return &calculators.Output{Name: name + "-" + number, Label: label, Unit: measure.Percent, Finer: 1}
	}
	return saddleMove{forward: forward, steeper: steeper,
		load: one("load", "On the front wheel, level"), loadBy: one("load-change", "On the front wheel, level"),
		lift: one("lift", "Front lifts at"), liftBy: one("lift-change", "Front lifts at")}
}

// climbs are the grades of the table, percent, each with the front wheel's share on
// it; the first is level.
var climbs = newClimbs(0, 5, 10, 15, 20, 25, 30, 35, 40)

type climbLoad struct {
	grade float64
	load  *calculators.Output
}

func newClimbs(grades ...float64) (list []climbLoad) {
	for _, grade := range grades {
		name := "load-at-" + strconv.FormatFloat(grade, 'f', -1, 64)
		list = append(list, climbLoad{grade, &calculators.Output{Name: name, Label: "On the front wheel",
			Unit: measure.Percent, Finer: 1}})
	}
	return list
}

// levelLoad is the front wheel's share on the level.
var levelLoad = climbs[0].load

func climbWorkings() []*calculators.Output {
	list := []*calculators.Output{descentBrake, saddleBack}
	for _, c := range climbs {
		list = append(list, c.load)
	}
	for _, m := range saddleMoves {
		list = append(list, m.load, m.loadBy, m.lift, m.liftBy)
	}
	return list
}

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

// climber is the reader on the bike at sag.
type climber struct {
	bike         fit.Ridden
	leg          body.Leg
	feet         posture.Setup
	upper        posture.Upper
	elbow        float64
	saddle, grip geometry.Point // at sag
}

// climberOf reads the rider and the bike. It returns false where the lengths make no
// leg or the saddle has no place, and a problem where there is no bike.
func climberOf(v calculators.Values) (climber, bool, *calculators.Problem) {
	bike, p := fit.Ride(v)
	if p != nil {
		return climber{}, false, p
	}
	saddle, placed := fit.SaddlePoint(v, bike.Level)
	leg, ok := fit.Leg(v)
	grip := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	return climber{bike: bike, leg: leg, feet: fit.Feet(v), upper: fit.Upper(v), elbow: v.Of(measure.ElbowBend),
		saddle: bike.Turn(saddle), grip: bike.Turn(grip)}, placed && ok, nil
}

// sit returns the rider seated on the saddle.
func (c *climber) sit() (fit.Seating, bool) {
	s, ok := fit.Sit(c.leg, c.feet, c.upper, c.saddle)
	if !ok {
		return fit.Seating{}, false
	}
	return s.Reach(c.grip, c.elbow)
}

// moved returns the rider with the saddle moved forward, and then turned about the
// bottom bracket as a steeper seat tube would turn it.
func (c climber) moved(m saddleMove) climber {
	c.saddle = c.saddle.Add(geometry.Point{X: m.forward}).Turn(-m.steeper)
	return c
}

// stand returns where the rider's centre of mass lies who stands ready on a slope,
// degrees.
func (c *climber) stand(slope float64) (geometry.Point, bool) {
	stance := posture.ReadyStance
	stance.Slope = slope
	s, ok := posture.NewStanding(c.leg, c.feet, c.upper, stance)
	if !ok {
		return geometry.Point{}, false
	}
	at, err := s.CentreOfMass(c.grip)
	return at, err == nil
}

// balance returns the weight of bike and rider on the two wheels, for a rider
// whose own centre of mass lies somewhere, as seen from the bottom bracket.
func (c *climber) balance(v calculators.Values, rider geometry.Point) geometry.Balance {
	b := c.bike.Sagged
	w := b.Wheelbase()
	all, _ := body.Combine(
		body.Part{Mass: v.Of(measure.Mass) + v.Of(measure.Load), X: rider.X - b.Rear.X, Y: rider.Y - b.Ground()},
		body.Part{Mass: v.Of(measure.BikeMass), X: bikeAhead * w, Y: bikeUp})
	return geometry.Balance{Ahead: all.X + v.Of(measure.COMForwardError), Height: all.Y + v.Of(measure.COMHeightError),
		Wheelbase: w}
}

// seatedBalance returns the balance of the rider seated, and how the rider sits.
func (c *climber) seatedBalance(v calculators.Values) (geometry.Balance, fit.Seating, bool) {
	seated, ok := c.sit()
	if !ok {
		return geometry.Balance{}, seated, false
	}
	centre, ok := seated.Joints.CentreOfMass(seated.Upper.Sex)
	return c.balance(v, centre), seated, ok
}

// needs asks for what the body model cannot do without.
func needs(v calculators.Values) *calculators.Problem {
	if weighed(v) {
		if !v.Has(measure.Wheelbase) && !(v.Has(measure.Reach) && v.Has(measure.Stack)) {
			return &calculators.Problem{Input: measure.Wheelbase.Key, Needed: true,
				Text: words.Of("{0} is needed with a weighed centre of mass.", measure.Wheelbase.Named())}
		}
		return nil
	}
	for _, q := range [...]*measure.Quantity{measure.Inseam, measure.Stature, measure.SaddleHeight, measure.GripX,
		measure.GripY} {
		if !v.Has(q) {
			return &calculators.Problem{Input: q.Key, Needed: true,
				Text: words.Of("{0} is needed, or else a centre of mass from weighing: {1} and {2}.", q.Named(),
					measure.COMForward.Named(), measure.COMHeight.Named())}
		}
	}
	return nil
}

func solveClimb(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.Unmeasured(v); p != nil {
		return p
	}
	if p := needs(v); p != nil {
		return p
	}
	if weighed(v) {
		return solveWeighed(v, out)
	}
	c, ok, p := climberOf(v)
	if p != nil || !ok {
		return p
	}
	if b, seated, ok := c.seatedBalance(v); ok {
		setShares(v, b, out)
		out.Set(trunkSeated, seated.Trunk.Angle)
		c.setMoves(v, b, out)
	}
	if at, ok := c.stand(0); ok {
		out.Set(pitchOver, c.balance(v, at).PitchOver(0))
	}
	slope := geometry.SlopeAngle(descent(v))
	if at, ok := c.stand(slope); ok {
		out.Set(descentBrake, c.balance(v, at).PitchOver(slope))
	}
	return nil
}

// setMoves sets what the two changes do to the balance b, and the front wheel's
// share with the saddle moved back.
func (c *climber) setMoves(v calculators.Values, b geometry.Balance, out calculators.Numbers) {
	level, lift := 100*b.FrontShare(0), liftOff(b)
	for _, m := range saddleMoves {
		moved := c.moved(m)
		if after, _, ok := moved.seatedBalance(v); ok {
			out.Set(m.load, 100*after.FrontShare(0))
			out.Set(m.loadBy, 100*after.FrontShare(0)-level)
			out.Set(m.lift, liftOff(after))
			out.Set(m.liftBy, liftOff(after)-lift)
		}
	}
	// As far back costs what as far forward gains: the share is straight in the
	// saddle's place to a twentieth of a percent.
	out.Set(saddleBack, level-out.At(postMove.loadBy))
}

// liftOff returns the grade at which a steady push leaves nothing on the front wheel,
// percent.
func liftOff(b geometry.Balance) float64 { return 100 * b.Ahead / b.Height }

// setShares sets what follows from the balance of the seated rider alone.
func setShares(v calculators.Values, b geometry.Balance, out calculators.Numbers) {
	out.Set(frontLoad, 100*b.FrontShare(v.Of(measure.Grade)))
	out.Set(liftGrade, liftOff(b))
	out.Set(wanderGrade, liftOff(b)/(1+(swingLeast+swingMost)/2))
	out.Set(comForward, b.Ahead)
	out.Set(comHeight, b.Height)
	for _, c := range climbs {
		out.Set(c.load, 100*b.FrontShare(c.grade))
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
func solveWeighed(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	b, p := weighedBalance(v)
	if p != nil {
		return p
	}
	if b.Ahead >= b.Wheelbase {
		return &calculators.Problem{Input: measure.COMForward.Key,
			Text: words.Of("The centre of mass lies ahead of the front wheel, {0} against a wheelbase of {1}: on such a bike the rear wheel would hang in the air. Check both.",
				measure.COMForward.Amount(b.Ahead), measure.Wheelbase.Amount(b.Wheelbase))}
	}
	setShares(v, b, out)
	out.Set(pitchOver, b.PitchOver(0))
	out.Set(descentBrake, b.PitchOver(geometry.SlopeAngle(descent(v))))
	return nil
}

package frame

import (
	"math"
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
		Question: "Where does the front wheel lift, and what would a change do?",
		Scenario: "The test rider, 1740 mm tall and 75 kg, seated on the test bike on a climb of 15 %.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830", Optional: true},
				{Quantity: measure.Stature, Example: "1740", Optional: true}, fit.SexInput(""),
				{Quantity: measure.Mass, Example: "75", Grown: true,
					Assume: calculators.Fixed(75, 12, "a usual adult")},
				{Quantity: measure.SaddleHeight, Example: "736", Optional: true},
				{Quantity: measure.GripX, Example: "442", Optional: true},
				{Quantity: measure.GripY, Example: "715", Optional: true},
				{Quantity: measure.Grade, Example: "15±0", Slide: [2]float64{0, 40},
					Assume: calculators.Fixed(0, 0, "on the level")},
				{Quantity: measure.Riding, Assume: calculators.Fixed(steady, 0, "as most of a climb is ridden")},
				{Quantity: measure.BikeKind, Assume: calculators.Fixed(0, 0, "the usual one here")},
				{Quantity: measure.SaddleSetback, Optional: true},
				{Quantity: measure.ElbowBend,
					Assume: fit.UsualElbow.Assume},
				bikeMass(),
				{Quantity: measure.Load,
					Assume: calculators.Fixed(3, 1, "shoes, helmet and a small pack; counted where the rider’s own "+
						"mass is")},
			},
			scaleInputs(), fit.BarInputs(), fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")},
			fit.LegInputs(), climbPedals(),
			fit.UnderGripsInputs(),
			[]calculators.Input{
				{Quantity: measure.COMForward, Optional: true},
				{Quantity: measure.COMHeight, Optional: true},
				{Quantity: measure.Wheelbase, Optional: true},
			}),
		Unasked: unknowns(),
		First:   []*measure.Quantity{measure.Inseam, measure.Stature, measure.Mass, measure.Grade},
		Answers: []*calculators.Output{frontLoad, liftGrade, wanderGrade, pitchOver, slopeTip, slopeSeat, trunkSeated,
			comForward, comHeight},
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
		Between: "the front wheel’s share of both wheel loads, seated, on the chosen grade, the suspension at rest"}
	liftGrade = &calculators.Output{Name: "lift-off-grade", Label: "Front lifts at", Unit: measure.Percent,
		Between: "grade at which a steady push leaves nothing on the front wheel"}
	wanderGrade = &calculators.Output{Name: "wander-grade", Label: "Front wanders at", Unit: measure.Percent,
		Between: "grade at which the front wheel goes light in each push of the pedal"}
	pitchOver = &calculators.Output{Name: "pitch-over-deceleration", Label: "Rear lifts when braking at",
		Unit: measure.Gravity,
		Between: "deceleration on the level, standing ready with the saddle dropped, the front tyre gripping, the " +
			"fork dived"}
	slopeTip = &calculators.Output{Name: "slope-tip", Label: "The slope tips the bike by", Unit: measure.Deg,
		Folded:  true,
		Between: "the bike at sag on the level and at rest on the chosen grade, against its ground; back is plus"}
	slopeSeat = &calculators.Output{Name: "seat-on-grade", Label: "Seat angle on the slope", Unit: measure.Deg,
		Folded: true, Between: "effective, above the horizontal, the suspension at rest on the chosen grade"}
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

// climbPedals ask for what the legs stand on. It moves the centre of mass
// by a few mm, so nothing of it is held uncertain.
func climbPedals() []calculators.Input {
	feet := fit.Exact(fit.FootInputs())
	for i := range feet {
		feet[i].Example = "" // as the pages that explain them have it
	}
	return feet
}

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
	one := func(number string, label words.English) *calculators.Output {
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
	c, ok := climberOn(v, bike)
	return c, ok, nil
}

// climberOn puts the reader on a bike; false where the lengths make no leg or the saddle
// has no place.
func climberOn(v calculators.Values, bike fit.Ridden) (climber, bool) {
	saddle, placed := fit.SaddlePoint(v, bike.Level)
	leg, ok := fit.Leg(v)
	grip := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	return climber{bike: bike, leg: leg, feet: fit.Feet(v), upper: fit.Upper(v), elbow: v.Of(measure.ElbowBend),
		saddle: bike.Turn(saddle), grip: bike.Turn(grip)}, placed && ok
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

// stand returns where the rider's centre of mass lies who stands ready as on level
// ground. A slope does not move this rider back: what moving back would add is neither
// counted on nor advised.
func (c *climber) stand() (geometry.Point, bool) {
	s, ok := posture.NewStanding(c.leg, c.feet, c.upper, posture.ReadyStance)
	if !ok {
		return geometry.Point{}, false
	}
	at, err := s.CentreOfMass(c.grip)
	return at, err == nil
}

// balance returns the weight of bike and rider on the two wheels, at sag on the level,
// for a rider whose own centre of mass lies somewhere, as seen from the bottom bracket.
func (c *climber) balance(v calculators.Values, rider geometry.Point) geometry.Balance {
	b := c.bike.Sagged
	bike := bikeCentre(v, c.bike)
	all, _ := body.Combine(
		body.Part{Mass: v.Of(measure.Mass) + v.Of(measure.Load), X: rider.X - b.Rear.X, Y: rider.Y - b.Ground()},
		body.Part{Mass: v.Of(measure.BikeMass), X: bike.X, Y: bike.Y})
	return geometry.Balance{Ahead: all.X + v.Of(bodyAhead), Height: all.Y + v.Of(bodyUp), Wheelbase: b.Wheelbase()}
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
	if p := needs(v); p != nil {
		return p
	}
	if weighed(v) {
		return solveWeighed(v, out)
	}
	if p := fit.Unmeasured(v); p != nil {
		return p
	}
	c, ok, p := climberOf(v)
	if p != nil || !ok {
		return p
	}
	b, seated, sits := c.seatedBalance(v)
	at, stands := c.stand()
	standing := c.balance(v, at)
	set := b // the posture in which the sag was set
	if !sits {
		set = standing
	}
	springs, ok := fit.NewSprings(v, c.bike.Level, set)
	if ok && stands {
		setBraking(v, springs, standing, out)
	}
	if !ok || !sits {
		return nil
	}
	setShares(v, springs, b, out)
	out.Set(slopeSeat, c.bike.Sagged.SeatAngle-out.At(slopeTip)-geometry.SlopeAngle(v.Of(measure.Grade)))
	out.Set(trunkSeated, seated.Trunk.Angle)
	c.setMoves(v, springs, b, out)
	return nil
}

// setMoves sets what the two changes do to the balance b, and the front wheel's
// share with the saddle moved back. The springs stay as they were set.
func (c *climber) setMoves(v calculators.Values, springs fit.Springs, b geometry.Balance, out calculators.Numbers) {
	level, lift := out.At(levelLoad), out.At(liftGrade)
	for _, m := range saddleMoves {
		if !out.Wants(m.load, m.loadBy, m.lift, m.liftBy, saddleBack) {
			continue
		}
		moved := c.moved(m)
		after, _, ok := moved.seatedBalance(v)
		if !ok {
			continue
		}
		if at, ok := springs.On(after, 0, false); ok {
			out.Set(m.load, 100*at.FrontShare(0))
			out.Set(m.loadBy, 100*at.FrontShare(0)-level)
		}
		if at, ok := lightAt(springs, after, 0); ok {
			out.Set(m.lift, at)
			out.Set(m.liftBy, at-lift)
		}
	}
	// As far back costs what as far forward gains: the share is straight in the
	// saddle's place to a twentieth of a percent.
	out.Set(saddleBack, level-out.At(postMove.loadBy))
}

// lightAt returns the grade, percent, on which nothing is left on the front wheel at
// the height of pushes that swing by a share about their mean.
func lightAt(springs fit.Springs, b geometry.Balance, swing float64) (float64, bool) {
	slope, ok := springs.Light(b, swing)
	return 100 * math.Tan(slope*math.Pi/180), ok
}

// setShares sets what follows from the balance of the seated rider alone.
func setShares(v calculators.Values, springs fit.Springs, b geometry.Balance, out calculators.Numbers) {
	set := func(o *calculators.Output, x float64, ok bool) {
		if ok {
			out.Set(o, x)
		}
	}
	rolling := v.Is(measure.Riding, "rolling")
	at, ok := springs.On(b, geometry.SlopeAngle(v.Of(measure.Grade)), rolling)
	set(frontLoad, frontShare(at, v.Of(measure.Grade), rolling), ok)
	set(slopeTip, at.Tip, ok)
	lift, ok := lightAt(springs, b, 0)
	set(liftGrade, lift, ok)
	wander, ok := lightAt(springs, b, (swingLeast+swingMost)/2)
	set(wanderGrade, wander, ok)
	out.Set(comForward, b.Ahead)
	out.Set(comHeight, b.Height)
	for _, c := range climbs {
		if c.load == levelLoad || out.Wants(c.load) { // setMoves compares with the level
			at, ok := springs.On(b, geometry.SlopeAngle(c.grade), rolling)
			set(c.load, frontShare(at, c.grade, rolling), ok)
		}
	}
}

// frontShare returns the front wheel's share of both wheel loads on a grade, percent.
// Rolling freely it is that of level ground.
func frontShare(at fit.Settled, grade float64, rolling bool) float64 {
	if rolling {
		grade = 0
	}
	return 100 * at.FrontShare(grade)
}

// setBraking sets at what deceleration the rear wheel lifts, for one balance.
func setBraking(v calculators.Values, springs fit.Springs, b geometry.Balance, out calculators.Numbers) {
	if at, ok := springs.PitchOver(b, 0); ok {
		out.Set(pitchOver, at)
	}
	if at, ok := springs.PitchOver(b, geometry.SlopeAngle(descent(v))); ok {
		out.Set(descentBrake, at)
	}
}

// weighedOn returns the balance that a scale found, and the springs under it: of the
// bike on the chart, or else of a usual one with that wheelbase.
func weighedOn(v calculators.Values) (fit.Springs, geometry.Balance, *calculators.Problem) {
	b := geometry.Balance{Ahead: v.Of(measure.COMForward), Height: v.Of(measure.COMHeight)}
	var stand geometry.Bike
	if v.Has(measure.Reach) && v.Has(measure.Stack) {
		bike, p := fit.Ride(v)
		if p != nil {
			return fit.Springs{}, b, p
		}
		stand, b.Wheelbase = bike.Level, bike.Sagged.Wheelbase()
	}
	if v.Has(measure.Wheelbase) {
		b.Wheelbase = v.Of(measure.Wheelbase)
	}
	if b.Ahead >= b.Wheelbase {
		return fit.Springs{}, b, &calculators.Problem{Input: measure.COMForward.Key,
			Text: words.Of("The centre of mass lies ahead of the front wheel, {0} against a wheelbase of {1}: on "+
				"such a bike the rear wheel would hang in the air. Check both.",
				measure.COMForward.Amount(b.Ahead), measure.Wheelbase.Amount(b.Wheelbase))}
	}
	if stand.FrontRadius == 0 {
		stand, _ = fit.AxlesOf(v, 0, 0).Standing(b.Wheelbase, v.Of(measure.BBDrop))
	}
	springs, ok := fit.NewSprings(v, stand, b)
	if !ok {
		return springs, b, &calculators.Problem{Input: measure.Wheelbase.Key,
			Text: words.Of("With these travels, sags and wheels the bike cannot stand. Check them and the wheelbase.")}
	}
	return springs, b, nil
}

// solveWeighed leaves the body model out: the braking limits then hold for the
// posture in which the rider was weighed.
func solveWeighed(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	springs, b, p := weighedOn(v)
	if p != nil {
		return p
	}
	setShares(v, springs, b, out)
	setBraking(v, springs, b, out)
	return nil
}

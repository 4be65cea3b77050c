package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// FootAngle answers how far the cleats turn for the feet's own angles, and what room
// the heels then have.
func FootAngle() *calculators.Calculator {
	pedal := fit.PedalInputs("")
	return &calculators.Calculator{
		Name: "foot-angle", Section: calculators.Feet,
		Title:    "Rotation and float",
		Question: "How far do your cleats turn, and have your heels room?",
		Scenario: "The test rider, whose right foot points further out than the left, on cleats bolted nearly " +
			"straight.",
		Inputs: []calculators.Input{
			{Quantity: measure.ToeOutLeft, Example: "5"},
			{Quantity: measure.ToeOutRight, Example: "9"},
			{Quantity: measure.CleatAngleLeft, Example: "1", Assume: calculators.Fixed(0, 2,
				"cleats bolted straight by eye")},
			{Quantity: measure.CleatAngleRight, Example: "2", Assume: calculators.Fixed(0, 2,
				"cleats bolted straight by eye")},
			{Quantity: measure.PedalFloat, Example: "6", Assume: calculators.Fixed(6, 1.5, "usual for a trail pedal")},
			{Quantity: measure.FootOffset, Example: "56", Assume: calculators.Fixed(56, 4, "usual for a trail pedal")},
			{Quantity: measure.FootLength, Example: "262", Grown: true, Assume: anyFoot},
			fit.HeightInput(), fit.BallInput(""),
			fit.CrankInput("170"),
			{Quantity: measure.QFactor, Example: "174", Assume: fit.UsualQFactor.Assume},
			{Quantity: measure.ArmSetIn, Assume: calculators.Fixed(8, 4,
				"usual for a mountain-bike crank")},
			{Quantity: measure.StayWidth, Assume: calculators.Fixed(120, 8,
				"usual for a trail bike with a wide tyre")},
			{Quantity: measure.RearEndWidth,
				Assume: calculators.Fixed(180, 8, "usual for a wide rear hub, with frame and gear mechanism")},
			{Quantity: measure.Chainstay, Example: "437", Assume: fit.UsualChainstay.Assume},
			pedal[0], pedal[3],
			{Quantity: measure.HeelCup, Assume: calculators.Fixed(4, 1.5, "usual for a riding shoe")},
			fit.SexInput(""),
		},
		First:    []*measure.Quantity{measure.CleatAngleLeft, measure.CleatAngleRight},
		Answers:  []*calculators.Output{leftFoot.turn, rightFoot.turn, leftFoot.least, rightFoot.least},
		Workings: append(leftFoot.workings(), rightFoot.workings()...),
		Sources: []*literature.Source{literature.Morton1932, literature.Losel1996, literature.Boyd1997,
			literature.WoottenHull1992, literature.Johnston2017, literature.Gordon2014, literature.GUM2008,
			literature.CommonPractice},
		Cautions: []*caution.Caution{caution.ClipRelease, caution.Torque, caution.Pain, caution.Clinician,
			caution.FirstRide},
		Solve:   solveFootAngle,
		Explain: explainFootAngle,
	}
}

// oneFoot are the numbers of one foot.
type oneFoot struct {
	turn, least   *calculators.Output
	inNow, outNow *calculators.Output // float left now before release, heel inwards and outwards
	each          *calculators.Output // float left each way once the cleat is turned
	armOwn, armIn *calculators.Output // room to the crank, at the own angle and fully in
	stay, frame   *calculators.Output // room to the stays (crank upright) and the rear end (crank back)
}

// newOneFoot declares them. turn and least are the labels of what a reader sees.
func newOneFoot(name string, label, turn, least words.English) oneFoot {
	o := func(what string, says words.English, unit *measure.Unit) *calculators.Output {
		return &calculators.Output{Name: name + "-" + what, Label: label + " " + says, Unit: unit}
	}
	f := oneFoot{
		turn: o("turn", "", measure.Deg), least: o("room", "", measure.Mm),
		inNow: o("in-now", "heel, float inwards now", measure.Deg), outNow: o("out-now", "heel, float outwards now",
			measure.Deg),
		each:   o("each-way", "heel, float each way then", measure.Deg),
		armOwn: o("arm-own", "heel to the crank, at the foot’s own angle", measure.Mm),
		armIn:  o("arm-in", "heel to the crank, heel fully in", measure.Mm),
		stay:   o("stay-in", "heel to the chainstay, heel fully in", measure.Mm),
		frame:  o("frame-in", "heel to the rear end, heel fully in", measure.Mm),
	}
	f.turn.Label, f.least.Label = turn, least
	f.turn.Beside = name == "right" // one cleat is not set without the other
	f.turn.Between = "cleat as it is to the foot’s own angle, on the shoe, seen from above; minus turns the nose " +
		"outwards"
	f.least.Between = "heel’s inner edge, fully in, to crank arm or frame, the least of the whole circle; minus is " +
		"contact"
	return f
}

func (f oneFoot) workings() []*calculators.Output {
	return []*calculators.Output{f.inNow, f.outNow, f.each, f.armOwn, f.armIn, f.stay, f.frame}
}

var (
	leftFoot  = newOneFoot("left", "Left", "Left cleat: turn its nose inwards by", "Left heel: least room")
	rightFoot = newOneFoot("right", "Right", "Right cleat: turn its nose inwards by", "Right heel: least room")
)

// staysReadAt is how far behind the bottom bracket the stays' width is taken, mm.
const staysReadAt = 180

// rearEnd is what stands beside the heels, mm: half widths from the bike's middle
// plane.
type rearEnd struct{ face, setIn, crank, stays, axle, chainstay float64 }

// besides returns how far the frame reaches from the middle plane at a level distance
// behind the bottom bracket: a straight face from where the stays are measured to the
// axle, and as wide as at these ends beyond them.
func (e rearEnd) besides(behind float64) float64 {
	share := (behind - staysReadAt) / (e.chainstay - staysReadAt)
	return e.stays + float64((e.axle-e.stays)*max(0, min(1, share)))
}

// heelPlace is where the inner edge of a heel is on a pedal: how far behind the spindle
// and how far from the bike's middle plane.
type heelPlace struct{ behind, out float64 }

// heelAt turns a foot about its spindle.
//
//	behind = L·cos a − half heel·sin a
//	out    = Q/2 + offset − L·sin a − half heel·cos a
//
// L is from the shoe's heel to the spindle, a the toes' angle outwards. Heel up or down
// changes neither much: the foot then tilts about the spindle, and its heel stays as
// far from the middle plane.
func heelAt(outer, length, toeOut float64) heelPlace {
	sin, cos := math.Sincos(toeOut * math.Pi / 180)
	return heelPlace{behind: float64(length*cos) - float64(heelHalf*sin),
		out: outer - float64(length*sin) - float64(heelHalf*cos)}
}

// toArm is the room to the crank arm while the crank points forward, the only place of
// the circle where the arm lies beside the heel. The arm's face runs straight from the
// pedal to the axle, where it is set in.
func (e rearEnd) toArm(h heelPlace) float64 {
	return h.out - e.face + float64(e.setIn*min(1, h.behind/e.crank))
}

// toFrame is the room to the frame with the spindle a level distance ahead of the
// bottom bracket.
func (e rearEnd) toFrame(h heelPlace, ahead float64) float64 {
	return h.out - e.besides(h.behind-ahead)
}

// leastRoom is the least of the whole circle. With the crank forward the arm is beside
// the heel; all round it is the frame, whose face is straight, so that the least is at
// one of the circle's ends.
func (e rearEnd) leastRoom(h heelPlace) float64 {
	return min(e.toArm(h), e.toFrame(h, e.crank), e.toFrame(h, -e.crank))
}

func solveFootAngle(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	length := v.Of(measure.HeelToBallInner) - v.Of(measure.CleatBehindBall) + v.Of(measure.HeelCup)
	solveFoot(v, out, leftFoot, v.Of(measure.ToeOutLeft), v.Of(measure.CleatAngleLeft), length)
	solveFoot(v, out, rightFoot, v.Of(measure.ToeOutRight), v.Of(measure.CleatAngleRight), length)
	return nil
}

// rearEndOf reads what stands beside the heels.
func rearEndOf(v calculators.Values) rearEnd {
	return rearEnd{face: v.Of(measure.QFactor) / 2, setIn: v.Of(measure.ArmSetIn), crank: v.Of(measure.CrankLength),
		stays: v.Of(measure.StayWidth) / 2, axle: v.Of(measure.RearEndWidth) / 2, chainstay: v.Of(measure.Chainstay)}
}

// solveFoot sets one foot's numbers.
//
//	turn         = own angle − cleat’s angle
//	heel inwards = float/2 − turn now, float/2 once turned
//	heel out     = float/2 + turn now, float/2 once turned
func solveFoot(v calculators.Values, out calculators.Numbers, f oneFoot, own, cleat, length float64) {
	half := v.Of(measure.PedalFloat) / 2
	turn := own - cleat
	out.Set(f.turn, turn)
	out.Set(f.inNow, half-turn)
	out.Set(f.outNow, half+turn)
	out.Set(f.each, half)
	e := rearEndOf(v)
	outer := e.face + v.Of(measure.FootOffset)
	in := heelAt(outer, length, own+half)
	out.Set(f.armOwn, e.toArm(heelAt(outer, length, own)))
	out.Set(f.armIn, e.toArm(in))
	out.Set(f.stay, e.toFrame(in, 0))
	out.Set(f.frame, e.toFrame(in, -e.crank))
	out.Set(f.least, e.leastRoom(in))
}

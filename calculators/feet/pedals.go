package feet

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// Pedals answers what other pedals or shoes change for the leg, and what to set so
// that it feels as before.
func Pedals() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "pedal-change", Section: calculators.Feet,
		Title:    "Other pedals, other shoes",
		Question: "What do other pedals or shoes change for your leg, and what do you set?",
		Scenario: "The test rider, clipped in until now, puts on flat pedals and a thinner shoe.",
		Inputs: slices.Concat(
			fit.YoungInputs(),
			[]calculators.Input{{Quantity: measure.Inseam, Example: "830"}},
			fit.PedalInputs("clip"),
			fit.NewPedalInputs("flat"),
			[]calculators.Input{
				{Quantity: measure.SaddleHeight, Example: "736", Assume: fit.NeutralSaddle},
				{Quantity: measure.SaddleSetback, Example: "172", Assume: setbackFromAngle},
				fit.CrankInput("170"),
				fit.SexInput(""), fit.TrochanterInput(""), fit.SeatAngleInput(""),
				{Quantity: measure.SeatedTrunk, Assume: fit.UsualSeatedTrunk.Assume},
			}, fit.LegInputs()),
		First: []*measure.Quantity{measure.Pedals},
		Answers: []*calculators.Output{pedalSaddleChange, pedalSaddleHeight, pedalSetback, footForward, footHigher,
			kneeIfLeft},
		Workings: pedalRows.all(),
		Sources: []*literature.Source{literature.StrawKram2016, literature.Seo2016, literature.VanSickleHull2007,
			literature.HullJorge1985, literature.FerrerRoca2014, literature.Gordon2014, literature.GUM2008,
			literature.CommonPractice},
		Cautions: []*caution.Caution{caution.ClipRelease, caution.PedalThread, caution.PostInsertion,
			caution.FirstRide,
			caution.Pain, caution.Growing},
		Solve:   solvePedals,
		Explain: explainPedals,
	}
}

// What it answers.
var (
	pedalSaddleChange = &calculators.Output{Name: "saddle-change", Label: "The saddle then moves", Unit: measure.Mm,
		Between: "up the seat line, so that the leg reaches as it did; minus is down"}
	pedalSaddleHeight = &calculators.Output{
		Name:    "saddle-height",
		Label:   "Set the saddle to",
		Beside:  true,
		Unit:    measure.Mm,
		Between: "crank axle to saddle top, along the seat line",
	}
	pedalSetback = &calculators.Output{Name: "setback", Label: "Setback for the same foot", Unit: measure.Mm,
		Between: "crank axle level back to the saddle’s point, so that you sit as far behind your feet as before"}
	footForward = &calculators.Output{Name: "foot-forward", Label: "The foot comes forward by", Unit: measure.Mm,
		Between: "ball of the foot before to the ball after, along a level sole; minus is back"}
	footHigher = &calculators.Output{Name: "foot-higher", Label: "The foot comes up by", Unit: measure.Mm,
		Between: "skin under the ball before to after, above the spindle; minus is down"}
	kneeIfLeft = &calculators.Output{Name: "knee-if-left", Label: "With nothing set anew, the knee bends more by",
		Unit: measure.Deg, Between: "at the bottom of the stroke, while pedalling; minus is straighter"}
)

// pedalRow is one row of the table: a saddle, and the leg on it.
type pedalRow struct{ height, setback, kneeBottom, kneeTop, hipBottom, hipTop *calculators.Output }

// newPedalRow declares a row's numbers.
func newPedalRow(name string, label words.English) pedalRow {
	o := func(what string, says words.English, unit *measure.Unit) *calculators.Output {
		return &calculators.Output{Name: name + "-" + what, Label: label + ": " + says, Unit: unit}
	}
	return pedalRow{
		height: o("height", "saddle height", measure.Mm), setback: o("setback", "setback", measure.Mm),
		kneeBottom: o("knee-bottom", "knee at the bottom", measure.Deg), kneeTop: o("knee-top", "knee at the top",
			measure.Deg),
		hipBottom: o("hip-bottom", "hip at the bottom", measure.Deg), hipTop: o("hip-top", "hip at the top",
			measure.Deg),
	}
}

func (r pedalRow) all() []*calculators.Output {
	return []*calculators.Output{r.height, r.setback, r.kneeBottom, r.kneeTop, r.hipBottom, r.hipTop}
}

// pedalTable holds the rows: as it is now; the new pedals with nothing set; with the
// height set; with height and setback set.
type pedalTable struct{ now, left, height, both pedalRow }

var pedalRows = pedalTable{
	now:    newPedalRow("now", "Now"),
	left:   newPedalRow("left", "Nothing set"),
	height: newPedalRow("raised", "Height set"),
	both:   newPedalRow("both", "Height and setback set"),
}

func (t pedalTable) rows() [4]pedalRow { return [4]pedalRow{t.now, t.left, t.height, t.both} }

func (t pedalTable) all() (list []*calculators.Output) {
	for _, r := range t.rows() {
		list = append(list, r.all()...)
	}
	return list
}

// setbackFromAngle stands in for a setback that nobody measured.
func setbackFromAngle(v calculators.Values) (calculators.Assumption, bool) {
	level := v.Of(measure.SaddleHeight) * math.Cos(v.Of(measure.SeatAngle)*math.Pi/180)
	return calculators.Assumption{Value: level, From: "from the saddle’s height and the seat angle"},
		v.Has(measure.SaddleHeight)
}

// needsSetback says that the saddle's two numbers do not fit together.
var needsSetback = &calculators.Problem{Input: measure.SaddleSetback.Key,
	Text: words.Of("{0} cannot be longer than {1}, along which the saddle stands. Measure both again.",
		measure.SaddleSetback.Named(), measure.SaddleHeight.Named())}

// lineAngle is the direction from the bottom bracket to a saddle, degrees above the
// horizontal, from its height along the seat line and its setback: acos(s / h).
func lineAngle(height, setback float64) float64 { return math.Acos(setback/height) * 180 / math.Pi }

// solvePedals moves the same leg from one pedal to another.
//
//	change  = neutral height after − neutral height before
//	forward = cleat behind the ball after − before
//	higher  = (pedal + sole) after − (pedal + sole) before
//	setback = setback before − forward
//
// Source: plane geometry on the leg of posture.Seated.
func solvePedals(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	height, setback := v.Of(measure.SaddleHeight), v.Of(measure.SaddleSetback)
	forward := v.Of(measure.NewCleatBehindBall) - v.Of(measure.CleatBehindBall)
	out.Set(footForward, forward)
	out.Set(footHigher,
		v.Of(measure.NewPedalHeight)+v.Of(measure.NewSoleHeight)-v.Of(measure.PedalHeight)-v.Of(measure.SoleHeight))
	if !v.Has(measure.SaddleHeight) {
		return nil
	}
	if !(math.Abs(setback) < height) {
		return needsSetback
	}
	out.Set(pedalSetback, setback-forward)
	before := fit.Setup(v)
	before.SeatAngle = lineAngle(height, setback)
	after := newSetup(v, before)
	leg, ok := fit.Leg(v)
	if !ok {
		return nil
	}
	trunk := v.Of(measure.SeatedTrunk)
	now := setRow(out, pedalRows.now, leg, before, height, trunk)
	left := setRow(out, pedalRows.left, leg, after, height, trunk)
	out.Set(kneeIfLeft, left-now)
	change, ok := fit.NeutralChange(leg, before, after)
	if !ok {
		return nil
	}
	out.Set(pedalSaddleChange, change)
	out.Set(pedalSaddleHeight, height+change)
	if out.Wants(pedalRows.height.all()...) {
		setRow(out, pedalRows.height, leg, after, height+change, trunk)
	}
	if out.Wants(pedalRows.both.all()...) {
		if both, h, ok := alongSetback(leg, before, after, height, setback-forward); ok {
			setRow(out, pedalRows.both, leg, both, h, trunk)
		}
	}
	return nil
}

// newSetup returns the new pedals and shoes under the same seat line.
func newSetup(v calculators.Values, now posture.Setup) posture.Setup {
	now.PedalHeight, now.SoleHeight = v.Of(measure.NewPedalHeight), v.Of(measure.NewSoleHeight)
	now.CleatBehindBall = v.Of(measure.NewCleatBehindBall)
	return now
}

// setRow sets a row's numbers and returns the knee at the bottom; where the leg does
// not reach, the angles stay unset and the knee is NaN.
func setRow(out calculators.Numbers, row pedalRow, leg body.Leg, setup posture.Setup, height, trunk float64) float64 {
	out.Set(row.height, height)
	out.Set(row.setback, height*math.Cos(setup.SeatAngle*math.Pi/180))
	rider, ok := posture.NewSeated(leg, setup)
	if !ok {
		return math.NaN()
	}
	if out.Wants(row.kneeTop, row.hipTop) {
		if top, ok := rider.At(height, 0); ok {
			out.Set(row.kneeTop, top.KneeBend)
			out.Set(row.hipTop, top.HipAngle(trunk))
		}
	}
	bottom, ok := rider.AtBottom(height)
	if !ok {
		return math.NaN()
	}
	out.Set(row.kneeBottom, bottom.KneeBend)
	out.Set(row.hipBottom, bottom.HipAngle(trunk))
	return bottom.KneeBend
}

// alongSetback returns the new set-up with its saddle at a setback, and the saddle
// height there that leaves the leg as far from its neutral height as it was. The line
// to the saddle and its height rest on each other; each round of putting one into the
// other leaves less than a tenth of the error.
func alongSetback(leg body.Leg, before, after posture.Setup, height, setback float64) (posture.Setup, float64, bool) {
	h := height
	for range 20 {
		if !(math.Abs(setback) < h) {
			return after, h, false
		}
		after.SeatAngle = lineAngle(h, setback)
		change, ok := fit.NeutralChange(leg, before, after)
		if !ok {
			return after, h, false
		}
		last := h
		if h = height + change; math.Abs(h-last) < 1e-10 {
			break
		}
	}
	return after, h, true
}

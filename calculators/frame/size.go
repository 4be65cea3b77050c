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

// Size answers what each size of a bike would ask of one rider. It gives no
// marks: millimetres of saddle cannot be added to degrees of trunk.
func Size() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "size-match", Section: calculators.Frame,
		Title: "Choosing a size", Question: "What would each size of this bike ask you to change?",
		Scenario: "The test rider against five invented sizes of one trail bike, with the grips of the bike at home.",
		Inputs: slices.Concat(
			[]calculators.Input{fit.GrowingInput()},
			[]calculators.Input{
				{Quantity: measure.Sizes, Example: demoSizes},
				{Quantity: measure.Inseam, Example: "830"}, {Quantity: measure.Stature, Example: "1740"},
				fit.SexInput(""),
				{Quantity: measure.SaddleHeight, Example: "736", Assume: fit.NeutralSaddle},
				{Quantity: measure.GripX, Example: "442", Optional: true},
				{Quantity: measure.GripY, Example: "715", Optional: true},
			},
			fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")}, fit.LegInputs(),
			fit.BarInputs(), climbPedals(),
			sizeParts(),
			[]calculators.Input{
				{Quantity: measure.PedalWidth, Assume: fit.UsualPedalWidth.Exact},
				{Quantity: measure.PedalThickness,
					Assume: fit.UsualPedalThickness.Exact},
				{Quantity: measure.QFactor, Assume: fit.UsualQFactor.Exact},
				{Quantity: measure.SagFront, Assume: fit.UsualSagFront.Exact},
				{Quantity: measure.SagRear, Assume: fit.UsualSagRear.Exact},
				{Quantity: measure.SaddleStack,
					Assume: fit.UsualSaddleStack.Assume},
				{Quantity: measure.PostCollar,
					Assume: fit.UsualPostCollar.Assume},
				{Quantity: measure.PostHead,
					Assume: fit.UsualPostHead.Assume},
				{Quantity: measure.PostLength, Optional: true},
				{Quantity: measure.PostActuator,
					Assume: fit.UsualPostActuator.Exact},
				{Quantity: measure.InsertionPost, Optional: true},
			}),
		First:    []*measure.Quantity{measure.SaddleHeight, measure.GripX, measure.GripY},
		Answers:  []*calculators.Output{sizeAhead, sizeAbove, sizeDropper, sizeTrunk},
		Workings: sizeWorkings(),
		Sources: []*literature.Source{literature.CFR1512, literature.Gordon2014,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PostInsertion, caution.SteererAndStem, caution.Growing},
		Solve:    solveSize,
		Explain:  explainSize,
	}
}

// What it answers, of the size whose grips lie nearest to the reader's.
var (
	sizeAhead = &calculators.Output{Name: "size-ahead", Label: "Nearest size, grips further forward than " +
		"now", Unit: measure.Mm,
		Between: "the grips now, forward to where this size puts them, level; negative is nearer"}
	sizeAbove = &calculators.Output{Name: "size-above", Label: "Nearest size, grips higher than now", Unit: measure.Mm,
		Between: "the grips now, up to where this size puts them; negative is lower"}
	sizeDropper = &calculators.Output{Name: "dropper-travel", Label: "Dropper travel that fits it",
		Unit: measure.SoldInMm, Between: "post fully up at your saddle height, to fully down"}
	sizeTrunk = &calculators.Output{Name: "trunk-angle", Label: "Trunk, seated on it", Unit: measure.Deg,
		Between: "the ground and the line from hip to shoulder, at sag; upright is 90"}
)

// sizeOutputs are the numbers of one line of the table.
type sizeOutputs struct {
	dropper, highest, standOver, trunk, toe, lean, ahead, above, elbow *calculators.Output
}

// lines are the numbers of the table's lines, as many as it takes.
var lines = newLines(measure.Sizes.Rows)

func newLines(n int) []sizeOutputs {
	all := make([]sizeOutputs, n)
	for i := range all {
		one := func(name string, label words.English, unit *measure.Unit) *calculators.Output {
			return &calculators.Output{Name: "line-" + strconv.Itoa(i+1) + "-" + name, Label: label, Unit: unit}
		}
		all[i] = sizeOutputs{
			dropper:   one("dropper-travel", "Dropper travel", measure.Mm),
			highest:   one("highest-saddle", "Highest saddle", measure.Mm),
			standOver: one("stand-over-room", "Room to stand over", measure.Mm),
			trunk:     one("trunk-angle", "Trunk seated", measure.Deg),
			toe:       one("toe-room", "Pedal to front tyre", measure.Mm),
			lean:      one("strike-lean", "Pedal strikes at", measure.Deg),
			ahead:     one("grips-ahead", "Grips further forward than now", measure.Mm),
			above:     one("grips-above", "Grips higher than now", measure.Mm),
			elbow:     one("elbow-bend", "Elbows standing", measure.Deg),
		}
	}
	return all
}

func sizeWorkings() (list []*calculators.Output) {
	for _, x := range lines {
		list = append(list, x.dropper, x.highest, x.standOver, x.trunk, x.toe, x.lean, x.ahead, x.above, x.elbow)
	}
	return list
}

// demoSizes are the five sizes of an invented trail bike. The same table ships as
// content/frame/sizes.csv.
const demoSizes = `name,reach,stack,head-angle,seat-angle,seat-tube-length,stand-over,chainstay,` +
	`bb-drop,fork-offset,fork-travel,rear-travel,front-rim,rear-rim,front-tyre,rear-tyre,` +
	`crank-length,free-depth,insertion-frame,stem-length,spacers-limit
XS,410,592,65.5,77,365,690,430,22,44,150,140,584,584,61,61,160,190,90,40,30
S,435,610,65.5,76.8,390,710,434,32,44,150,140,622,622,61,61,165,215,90,40,30
M,460,625,65.5,76.5,420,725,437,32,44,150,140,622,622,61,61,170,245,100,45,30
L,485,640,65.5,76.5,450,740,440,32,44,150,140,622,622,61,61,170,275,100,45,30
XL,510,658,65.5,76.5,480,755,443,32,44,150,140,622,622,61,61,175,305,110,50,30`

// sizeParts ask for the cockpit that every size is given, so that frames
// are compared and not handlebars. A size's own stem wins.
func sizeParts() []calculators.Input {
	const same = "the same on every size, so that frames are compared"
	return []calculators.Input{
		{Quantity: measure.Spacers, Assume: calculators.Fixed(15, 0, same)},
		{Quantity: measure.StemLength, Assume: calculators.Fixed(45, 0, same)},
		{Quantity: measure.BarRise, Assume: calculators.Fixed(30, 0, same)},
		{Quantity: measure.BarSweep, Assume: calculators.Fixed(fit.UsualBarSweep.Value, 0, same)},
		{Quantity: measure.HeadsetHeight, Assume: calculators.Fixed(10, 0, same)},
		{Quantity: measure.StemClampHeight, Assume: calculators.Fixed(40, 0, same)},
		{Quantity: measure.SpacersLimit,
			Assume: calculators.Fixed(30, 0, "usual where nobody looked up the maker’s; look it up")},
	}
}

// Parts of a chart that a row may leave out, and what stands in.
const (
	standInChainstay = 437
	standInDrop      = 32
	standInOffset    = 44
	standInRim       = 622
	standInTyre      = 61
)

// columnOf finds a quantity's cell in a row of sizes.
func columnOf(q *measure.Quantity) int {
	for i, c := range measure.Sizes.Columns {
		if c.Quantity == q {
			return i
		}
	}
	return -1
}

// The columns by index, found once.
var (
	cReach, cStack, cHead, cSeat = columnOf(measure.Reach), columnOf(measure.Stack),
		columnOf(measure.HeadAngle), columnOf(measure.SeatAngle)
	cSeatHeight, cTube, cSeatTube, cStand = columnOf(measure.SeatAngleHeight), columnOf(measure.SeatTubeAngle),
		columnOf(measure.SeatTubeLength), columnOf(measure.StandOver)
	cOffset, cStay, cDrop, cBBHeight = columnOf(measure.ForkOffset), columnOf(measure.Chainstay),
		columnOf(measure.BBDrop), columnOf(measure.BBHeight)
	cFrontRim, cRearRim, cFrontTyre, cRearTy = columnOf(measure.FrontRim), columnOf(measure.RearRim),
		columnOf(measure.FrontTyre), columnOf(measure.RearTyre)
	cForkTravel, cRearTravel, cCrank = columnOf(measure.ForkTravel), columnOf(measure.RearTravel),
		columnOf(measure.CrankLength)
	cTravel, cDepth, cInsertion = columnOf(measure.TravelPost), columnOf(measure.FreeDepth),
		columnOf(measure.InsertionFrame)
	cStem, cSpacers = columnOf(measure.StemLength), columnOf(measure.SpacersLimit)
)

// cell returns a row's number, or what stands in for an empty cell.
func cell(row calculators.Row, column int, otherwise float64) float64 {
	if x := row.Cells[column]; !math.IsNaN(x) {
		return x
	}
	return otherwise
}

// sizeBike solves a row's bike. It returns false where the row makes none.
func sizeBike(row calculators.Row) (geometry.Bike, bool) {
	rim := cell(row, cFrontRim, standInRim)
	tyre := cell(row, cFrontTyre, standInTyre)
	front, _ := geometry.TyreRadius(rim, tyre)
	rear, _ := geometry.TyreRadius(cell(row, cRearRim, rim), cell(row, cRearTy, tyre))
	c := geometry.Chart{
		Reach: row.Cells[cReach], Stack: row.Cells[cStack], HeadAngle: row.Cells[cHead], SeatAngle: row.Cells[cSeat],
		SeatAngleHeight: cell(row, cSeatHeight, 0), SeatTubeAngle: cell(row, cTube, 0),
		ForkOffset: cell(row, cOffset, standInOffset), Chainstay: cell(row, cStay, standInChainstay),
		Drop: cell(row, cDrop, standInDrop), FrontRadius: front, RearRadius: rear,
	}
	if math.IsNaN(row.Cells[cDrop]) {
		c.BBHeight = cell(row, cBBHeight, 0)
	}
	b, err := c.Solve()
	return b, err == nil
}

// sizeCockpit is the cockpit that every frame is given but for the stem, which a row
// may bring.
func sizeCockpit(v calculators.Values) geometry.Cockpit {
	return geometry.Cockpit{
		Headset: v.Of(measure.HeadsetHeight), Spacers: v.Of(measure.Spacers),
		ClampHeight: v.Of(measure.StemClampHeight),
		Stem:        v.Of(measure.StemLength), Rise: v.Of(measure.BarRise), Back: v.Of(measure.BarSweep),
	}
}

// rowCockpit is the cockpit of a row's frame: a size's own stem wins.
func rowCockpit(row calculators.Row, c geometry.Cockpit) geometry.Cockpit {
	c.Stem = cell(row, cStem, c.Stem)
	return c
}

// matcher is the rider, read once for all rows. Lengths in mm.
type matcher struct {
	v                 calculators.Values
	leg               body.Leg
	feet              posture.Setup
	upper             posture.Upper
	hasLeg            bool
	target            geometry.Point // the reader's grips, nowhere if not given
	nominal           geometry.Point // the same as the reader gave them, with no error on them
	saddle, inseam    float64
	crank             float64 // where a row has none
	halfPedal         float64 // half the pedal's thickness
	pedalEdge         float64 // from the bike's middle to the pedal's outer edge
	hardware          float64 // of the post: collar and head
	sagFront, sagRear float64 // percent
	standing          posture.Standing
	stands            bool
	parts             geometry.Cockpit // what every row's frame is given
}

func matcherOf(v calculators.Values) matcher {
	m := matcher{v: v, feet: fit.Feet(v), upper: fit.Upper(v), parts: sizeCockpit(v),
		target: nowhere, nominal: nowhere,
		saddle: v.Of(measure.SaddleHeight), inseam: v.Of(measure.Inseam), crank: v.Of(measure.CrankLength),
		halfPedal: v.Of(measure.PedalThickness) / 2, pedalEdge: v.Of(measure.QFactor)/2 + v.Of(measure.PedalWidth),
		hardware: v.Of(measure.PostCollar) + v.Of(measure.PostHead), sagFront: v.Of(measure.SagFront),
		sagRear: v.Of(measure.SagRear)}
	m.leg, m.hasLeg = fit.Leg(v)
	if v.Has(measure.GripX) && v.Has(measure.GripY) {
		m.target = geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
		m.nominal = geometry.Point{X: v.Nominal(measure.GripX), Y: v.Nominal(measure.GripY)}
	}
	if m.hasLeg {
		m.standing, m.stands = posture.NewStanding(m.leg, m.feet, m.upper, posture.ReadyStance)
	}
	return m
}

// nowhere is the place of what there is not.
var nowhere = geometry.Point{X: math.NaN(), Y: math.NaN()}

// set sets the numbers of one row, as far as they can be told. It returns the grips' place,
// nowhere if the row describes no bike.
func (m *matcher) set(out calculators.Numbers, x sizeOutputs, row calculators.Row) geometry.Point {
	m.setPost(out, x, row)
	out.Set(x.standOver, m.inseam-row.Cells[cStand])
	b, ok := sizeBike(row)
	if !ok {
		return nowhere
	}
	crank := cell(row, cCrank, m.crank)
	out.Set(x.toe, b.ToeGap(crank))
	hold, ok := rowCockpit(row, m.parts).Hold(b)
	if !ok {
		return nowhere
	}
	out.Set(x.ahead, hold.Grip.X-m.target.X)
	out.Set(x.above, hold.Grip.Y-m.target.Y)
	m.setSagged(out, x, row, b, hold.Grip)
	return hold.Grip
}

// setSagged sets the numbers of a row's bike at sag.
func (m *matcher) setSagged(out calculators.Numbers, x sizeOutputs, row calculators.Row, b geometry.Bike,
	grip geometry.Point) {
	sagged, err := geometry.Sagged(b, cell(row, cForkTravel, 0), m.sagFront, cell(row, cRearTravel, 0), m.sagRear)
	if err != nil {
		return
	}
	if lean, ok := geometry.PedalLean(sagged.BBHeight(), cell(row, cCrank, m.crank), m.halfPedal, m.pedalEdge); ok {
		out.Set(x.lean, lean)
	}
	tilt := sagged.HeadAngle - b.HeadAngle
	grip = grip.Turn(-tilt)
	if trunk, ok := m.trunk(b, tilt, grip); ok {
		out.Set(x.trunk, trunk)
	}
	if m.stands {
		if r, err := m.standing.Balance(grip); err == nil && r.Reaches() {
			out.Set(x.elbow, r.ElbowBend)
		}
	}
}

// trunk returns the trunk's angle of the rider seated on a bike that tips as it
// sinks, degrees.
func (m *matcher) trunk(b geometry.Bike, tilt float64, grip geometry.Point) (float64, bool) {
	saddle, ok := b.SaddlePoint(m.saddle)
	if !ok || !m.hasLeg {
		return 0, false
	}
	s, ok := fit.Sit(m.leg, m.feet, m.upper, saddle.Turn(-tilt))
	if !ok {
		return 0, false
	}
	on, ok := s.Reach(grip, fit.SeatedElbow)
	return on.Trunk.Angle, ok
}

// setPost sets the dropper travel that fits and the highest saddle that a post of
// the reader's allows.
func (m *matcher) setPost(out calculators.Numbers, x sizeOutputs, row calculators.Row) {
	v, tube, stack := m.v, row.Cells[cSeatTube], m.v.Of(measure.SaddleStack)
	exposed := fit.Exposed(m.saddle, tube, stack)
	travel := fit.TravelForRoom(exposed, m.hardware)
	if v.Has(measure.PostLength) {
		length := v.Of(measure.PostLength)
		if known, depth := row.Cells[cTravel], row.Cells[cDepth]; !math.IsNaN(known) && !math.IsNaN(depth) {
			travel = min(travel, fit.TravelForDepth(known, length, depth, exposed))
		}
		least := cell(row, cInsertion, 0)
		if v.Has(measure.InsertionPost) {
			least = max(least, v.Of(measure.InsertionPost))
		}
		if least > 0 {
			out.Set(x.highest, tube+stack+length-v.Of(measure.PostActuator)-least)
		}
	}
	out.Set(x.dropper, travel)
}

// nearest returns the place of the shortest of some ways from the reader's grips to those
// of a line, 0 where there is none: ways that are no number are passed over.
func nearest(ways []geometry.Point) int {
	best, least := 0, math.Inf(1)
	for i, way := range ways {
		if d := way.Length(); d < least {
			best, least = i, d
		}
	}
	return best
}

func solveSize(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.Unmeasured(v); p != nil {
		return p
	}
	rows := v.Rows(measure.Sizes)
	if !v.Has(measure.SaddleHeight) {
		return &calculators.Problem{Input: measure.SaddleHeight.Key, Needed: true,
			Text: words.Of("{0} is needed: these lengths make no leg to take it from.", measure.SaddleHeight.Named())}
	}
	m := matcherOf(v)
	ways := make([]geometry.Point, len(rows))
	for i, row := range rows {
		ways[i] = m.set(out, lines[i], row).Sub(m.nominal)
	}
	near := lines[nearest(ways)]
	out.Set(sizeAhead, out.At(near.ahead))
	out.Set(sizeAbove, out.At(near.above))
	out.Set(sizeDropper, out.At(near.dropper))
	out.Set(sizeTrunk, out.At(near.trunk))
	return nil
}

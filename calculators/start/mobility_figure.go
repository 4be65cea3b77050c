package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// mobilityFigure draws the two tests that need a picture, to scale on a body of the test
// rider's size: the lunge at the wall, and the thigh held upright. A test that was not
// taken is drawn at what is usual, without a number.
func mobilityFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	p := figure.PersonOf(drawnStature, 0, fit.Sex(v))
	lunge, _ := sides(v, measure.LungeLeft, measure.LungeRight)
	knee, _ := sides(v, measure.KneeShortLeft, measure.KneeShortRight)
	f := &drawing.Figure{
		Title: words.Of("Knee to wall, and knee short of straight"),
		Description: words.Of("On the left a foot before a wall, the heel on the floor and the knee against the "+
			"wall: the big toe is {0} from it. On the right somebody lies on the back with one thigh upright; the "+
			"shin stops {1} short of upright.",
			said(measure.LungeLeft, lunge), said(measure.KneeShortLeft, knee)),
	}
	f.Add(figure.Floor(0, 2300))
	drawLunge(f, p, lunge)
	drawLying(f, p, knee)
	frame(f, -60, -130, 2340, p.Hip+210)
	return f
}

// said says a test's number, or that there is none.
func said(q *measure.Quantity, x float64) words.Sayer {
	if math.IsNaN(x) {
		return words.Of("an unknown distance")
	}
	return q.Amount(x)
}

// orUsual returns x, or what is usual where nobody gave one.
func orUsual(x float64, u usual) float64 {
	if math.IsNaN(x) {
		return u.Mean
	}
	return x
}

// drawLunge draws shin and foot before a wall at 0. The ankle stands a quarter of the
// foot ahead of the heel, the knee touches the wall a shin away from it. It returns the
// middle of the knee.
func drawLunge(f *drawing.Figure, p figure.Person, given float64) (kneeAt drawing.Point) {
	toe := orUsual(given, lungeUsual)
	heel := toe + p.Foot
	shin := p.Knee - p.Ankle
	ankle := at(heel-0.25*p.Foot, p.Ankle)
	const half = 52 // of the knee's breadth, mm
	across := min(ankle.X-half, 0.97*shin)
	kneeAt = at(ankle.X-across, ankle.Y+math.Sqrt(float64(shin*shin)-float64(across*across)))
	hip := kneeAt.Plus(drawing.Polar(35, p.Hip-p.Knee))
	f.Add(figure.Wall(0, kneeAt.Y+330)...)
	f.Add(figure.LegOf{Hip: hip, Knee: kneeAt, Ankle: ankle, Heel: at(heel, 3), Toe: at(toe, 3), Left: true}.Marks()...)
	f.Add(note(at(heel, 10), at(1, 0.4), "Heel stays down"))
	if !math.IsNaN(given) {
		f.Add(drawing.Dimension{Role: drawing.Hot, A: at(0, 0), B: at(toe, 0), Along: at(1, 0), Offset: -60,
			Text: words.Of("{0}", measure.LungeLeft.Amount(given))})
	}
	return kneeAt
}

// lying returns the hip of somebody who is drawn on the back, head to the left, and draws
// trunk, head and the other leg, whose knee stands off the floor: it lies flat where that
// is 0.
func lying(f *drawing.Figure, p figure.Person, off float64) (hip drawing.Point) {
	thigh, shin := p.Hip-p.Knee, p.Knee-p.Ankle
	hip = at(1420, 95)
	kneeAt := at(hip.X+math.Sqrt(float64(thigh*thigh)-float64(off*off)), 64+off)
	ankle := at(kneeAt.X+math.Sqrt(float64(shin*shin)-float64(off*off)), 46)
	f.Add(figure.LegOf{Hip: hip, Knee: kneeAt, Ankle: ankle, Thin: true, Heel: at(ankle.X+0.25*p.Foot, 10),
		Toe: at(ankle.X+0.3*p.Foot, p.Foot)}.Marks()...)
	f.Add(figure.TrunkOf(hip, at(hip.X-500, 118), 6)...)
	if off == 0 {
		f.Add(note(at(hip.X+thigh+0.4*shin, 90), at(0.4, 1), "Other leg flat"))
	}
	return hip
}

// bentLeg draws the leg that is moved: the thigh turned up from flat and the shin from
// flat, degrees. It returns knee and ankle.
func bentLeg(f *drawing.Figure, p figure.Person, hip drawing.Point, thighUp, shinUp float64) (kneeAt,
	ankle drawing.Point) {
	kneeAt = hip.Plus(drawing.Polar(thighUp, p.Hip-p.Knee))
	ankle = kneeAt.Plus(drawing.Polar(shinUp, p.Knee-p.Ankle))
	heel := ankle.Plus(drawing.Polar(shinUp-25, 0.28*p.Foot))
	f.Add(figure.LegOf{Hip: hip, Knee: kneeAt, Ankle: ankle, Heel: heel,
		Toe: heel.Plus(drawing.Polar(shinUp+82, p.Foot))}.Marks()...)
	return kneeAt, ankle
}

// drawLying draws somebody on the back, head to the left, one leg flat and the other
// thigh upright. It returns the knee and the ankle of that one.
func drawLying(f *drawing.Figure, p figure.Person, given float64) (kneeAt, ankle drawing.Point) {
	short := orUsual(given, kneeUsualMen)
	thigh, shin := p.Hip-p.Knee, p.Knee-p.Ankle
	hip := lying(f, p, 0)
	kneeAt, ankle = bentLeg(f, p, hip, 90, 90-short)
	f.Add(note(hip.Plus(at(0, thigh/2)), at(-1, 0.2), "Thigh held upright"))
	if !math.IsNaN(given) {
		f.Add(drawing.Angle{Role: drawing.Hot, Vertex: kneeAt, From: 90 - short, To: 90, Radius: 0.8 * shin,
			ArmTo: shin,
			Text:  words.Of("{0}", measure.KneeShortLeft.Amount(given))})
	}
	return kneeAt, ankle
}

package cockpit

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// How high scale and block are in the picture of weighing, and how far the front wheel is
// raised for the second reading, mm.
const scaleHigh, frontRaised = 55, 225

// weighing draws how bike and rider are weighed, seen from the wall that the rider's elbow
// touches: the rear wheel on a bathroom scale, the front wheel on a block as high and then
// on blocks, and beyond the bike two helpers who steady it.
func weighing(b figure.Build, pose figure.Pose) *drawing.Figure {
	f := &drawing.Figure{
		Title: words.Of("Weigh bike and rider: the rear wheel on the scale, twice"),
		Description: words.Of("A rider sits on the bike, seen from the wall that one elbow touches. On the other "+
			"side stand two helpers: one steadies the saddle, the other the bar. First the rear wheel stands on "+
			"a bathroom scale and the front wheel on a block as high. Then the front wheel stands on firm "+
			"blocks, raised by {0} here, and the rear wheel on the same scale carries more.",
			measure.Millimetres(frontRaised)),
		Least: 18,
	}
	var scene []drawing.Mark
	for _, m := range figure.Scene(b, &pose) {
		if _, floor := m.(drawing.Ground); !floor { // it is lower here
			scene = append(scene, m)
		}
	}
	rear, front := figure.At(b.Bike.RearContact()), figure.At(b.Bike.FrontContact())
	tilt := math.Asin(frontRaised/front.Minus(rear).Length()) * 180 / math.Pi
	for _, state := range []struct {
		caption words.Text
		tilt    float64
		under   words.Text
	}{
		{words.Of("1. On the level: read the scale"), 0, words.Of("block")},
		{words.Of("2. Front raised: read it again"), tilt, words.Of("blocks")},
	} {
		// The wheels stay round and roll where they are: the bike turns about the rear axle.
		axle := figure.At(b.Bike.Rear)
		along := drawing.Polar(state.tilt, 1)
		by := axle.Minus(drawing.Point{}.Along(along, axle.X).Along(along.Left(), axle.Y))
		turned := func(p drawing.Point) drawing.Point { return by.Along(along, p.X).Along(along.Left(), p.Y) }
		wheel := turned(figure.At(b.Bike.Front))
		floor := rear.Y - scaleHigh
		helper := drawing.Point{X: rear.X - 190, Y: floor}
		marks := figure.Helper(helper, turned(b.SaddleTop().Plus(drawing.Point{X: -90, Y: -40})))
		bar := turned(b.Grip().Plus(drawing.Point{X: 60}))
		marks = append(marks, figure.Helper(drawing.Point{X: bar.X + 400, Y: floor}, bar)...)
		marks = append(marks, figure.Turned(state.tilt, by, scene...)...)
		box := func(x, half, top float64, role drawing.Role) drawing.Mark {
			return drawing.Tube{Role: role, Fill: drawing.Wash, A: drawing.Point{X: x, Y: floor},
				B: drawing.Point{X: x, Y: top}, Ra: half, Rb: half}
		}
		top := wheel.Y - b.Bike.FrontRadius
		marks = append(marks, drawing.Ground{A: drawing.Point{X: rear.X - 420, Y: floor},
			B: drawing.Point{X: front.X + 420, Y: floor}},
			box(rear.X, 170, rear.Y, drawing.Hot), box(wheel.X, 150, top, drawing.Ink),
			drawing.Label{Role: drawing.Hot, At: drawing.Point{X: rear.X, Y: floor}, Side: drawing.Point{Y: -1},
				Text: words.Of("scale"), Priority: 3},
			drawing.Label{Role: drawing.Ink, At: drawing.Point{X: wheel.X, Y: floor}, Side: drawing.Point{Y: -1},
				Text: state.under, Priority: 2},
			drawing.Label{Role: drawing.Soft, At: helper.Plus(drawing.Point{Y: 1740}), Side: drawing.Point{Y: 1},
				Text: words.Of("helper")})
		f.Frame(state.caption, marks...)
	}
	return f
}

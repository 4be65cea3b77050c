package cockpit

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// labelled is how many combinations of the plot have their stem's length beside them.
const labelled = 4

// stemPlot shows where the listed combinations put the grips, seen from the target: the
// grips now, the way that spacers alone move them, and a ring of 5 mm round the target. star
// is the row to begin with, counted from 1; 0 for none.
func stemPlot(w wanted, list []combination, star int) drawing.Frame {
	now := figure.At(w.now.Grip.Sub(w.target))
	reach := 9.0
	for _, p := range append(points(list), now) {
		reach = math.Max(reach, math.Max(math.Abs(p.X), math.Abs(p.Y))+2)
	}
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
	dot := reach / 45
	f := drawing.Frame{Low: at(-1.15*reach, -reach), High: at(1.15*reach, reach),
		Caption: words.Of("Where each set of parts puts the grips, by its stem’s length")}
	up := figure.At(w.bike.AxisDown()).Times(-1)
	axis := func(a, b drawing.Point) drawing.Mark {
		return drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{a, b}}
	}
	f.Marks = []drawing.Mark{
		axis(at(-1.1*reach, 0), at(1.1*reach, 0)), axis(at(0, -0.95*reach), at(0, 0.95*reach)),
		drawing.Label{Role: drawing.Soft, At: at(1.1*reach, 0), Side: at(-0.4, -1), Fixed: true,
			Text: words.Of("forward")},
		drawing.Label{Role: drawing.Soft, At: at(0, 0.95*reach), Side: at(1, 0), Text: words.Of("up"), Fixed: true},
		drawing.Circle{Role: drawing.Hot, Pen: drawing.Thin, Fill: drawing.Wash, Radius: near5},
		drawing.Cross{Role: drawing.Hot},
		drawing.Line{Role: drawing.Before, Pen: drawing.Hidden,
			Points: []drawing.Point{now.Along(up, -0.6*reach), now.Along(up, 0.6*reach)}},
		drawing.Label{Role: drawing.Before, At: now.Along(up, 0.5*reach), Side: at(-1, 0.3), Leader: true,
			Text: words.Of("spacers alone")},
		drawing.Circle{Role: drawing.Before, Fill: drawing.Sheet, Centre: now, Radius: 1.6 * dot},
		drawing.Label{Role: drawing.Before, At: now, Side: at(1, -0.4), Text: words.Of("now"), Priority: 2},
		drawing.Label{Role: drawing.Hot, At: at(-near5*0.7, -near5*0.7), Side: at(-1, -1), Leader: true,
			Text: words.Of("target, within {0}", measure.Millimetres(near5))},
	}
	for i, p := range points(list) {
		role, fill := drawing.Ink, drawing.Solid
		if list[i].over > 0 {
			fill = drawing.Sheet // what cannot be done
		}
		if i+1 == star {
			role = drawing.Hot
		}
		f.Marks = append(f.Marks, drawing.Circle{Role: role, Fill: fill, Centre: p, Radius: dot})
		if i < labelled || i+1 == star {
			f.Marks = append(f.Marks, drawing.Label{Role: role, At: p, Side: p, Priority: 1, Leader: true,
				Text: words.Of("{0}", measure.Sold(list[i].parts.Stem))})
		}
	}
	return f
}

// points are where combinations put the grips, from the target.
func points(list []combination) []drawing.Point {
	out := make([]drawing.Point, len(list))
	for i, c := range list {
		out[i] = figure.At(c.miss)
	}
	return out
}

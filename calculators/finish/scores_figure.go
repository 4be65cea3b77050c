package finish

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// Lengths of the picture: a point of score is perScore wide, and a dot of a ride has the
// radius dot.
const perScore, dot = 60.0, 11.0

// scoresFigure draws every ride as a dot over its score, old setting above new, the means
// as upright lines and the difference between them.
func scoresFigure(r *calculators.Result, before, after rides, bounded bool) *drawing.Figure {
	d, old, new := r.At(difference), r.At(meanBefore), r.At(meanAfter)
	f := &drawing.Figure{Title: words.Of("Every ride a dot over its score"),
		Description: words.Of("Two rows of dots on a scale from 0, no trouble, to 10, unbearable. {0} rides with "+
			"the old setting have a mean of {1}, {2} with the new one a mean of {3}.",
			number(float64(len(before))), old.Amount(), number(float64(len(after))), new.Amount())}
	row := 110.0 // how far the rows lie apart: room for the dots of the lower one
	for i := range after {
		row = max(row, 2*dot*float64(after.under(i))+110)
	}
	f.Add(scoreRow(row, drawing.Before, words.Of("old"), before, float64(old.Value))...)
	f.Add(scoreRow(0, drawing.Ink, words.Of("new"), after, float64(new.Value))...)
	for s := 0; s <= 10; s += 2 {
		f.Add(drawing.Label{Role: drawing.Soft, At: on(float64(s), -8), Side: drawing.Point{Y: -1},
			Text: words.Of("{0}", number(float64(s))), Fixed: true})
	}
	f.Add(drawing.Label{Role: drawing.Soft, At: on(0, -62), Side: drawing.Point{X: 1},
		Text: words.Of("no trouble"), Fixed: true},
		drawing.Label{Role: drawing.Soft, At: on(10, -62), Side: drawing.Point{X: -1},
			Text: words.Of("unbearable"), Fixed: true})
	if old.Value != new.Value {
		f.Add(drawing.Line{Role: drawing.Hot, Pen: drawing.Thin,
			Points: []drawing.Point{on(float64(new.Value), 5*dot), on(float64(new.Value), row-32)}},
			drawing.Dimension{Role: drawing.Hot, A: on(float64(old.Value), row), B: on(float64(new.Value), row),
				Along:  drawing.Point{X: 1},
				Offset: -26, Text: words.Of("{0}", points(abs(float64(d.Value)))), Bare: true})
	}
	if bounded {
		f.Add(rangeBar(float64(old.Value+d.Low), float64(old.Value+d.High))...)
	}
	return f
}

// on is a place over a score.
func on(score, y float64) drawing.Point { return drawing.Point{X: score * perScore, Y: y} }

func abs(x float64) float64 { return max(x, -x) }

// scoreRow draws the scale, the dots of one setting, those of equal scores on top of one
// another, and the mean.
func scoreRow(y float64, role drawing.Role, name words.Text, x rides, mean float64) []drawing.Mark {
	marks := []drawing.Mark{
		drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{on(0, y), on(10, y)}},
		drawing.Label{Role: role, At: on(-0.2, y+14), Side: drawing.Point{X: -1}, Text: name, Fixed: true},
	}
	for s := 0; s <= 10; s++ {
		marks = append(marks, drawing.Line{Role: drawing.Soft, Pen: drawing.Thin,
			Points: []drawing.Point{on(float64(s), y), on(float64(s), y-6)}})
	}
	for i, s := range x {
		marks = append(marks, drawing.Circle{Role: role, Fill: drawing.Wash,
			Centre: on(s, y+dot+2+float64(x.under(i))*2*dot), Radius: dot})
	}
	return append(marks, drawing.Line{Role: drawing.Hot, Pen: drawing.Wide,
		Points: []drawing.Point{on(mean, y-26), on(mean, y+5*dot)}})
}

// under counts the earlier rides that the dot of ride i would cover, so stands on.
func (x rides) under(i int) (n int) {
	for _, earlier := range x[:i] {
		if abs(earlier-x[i])*perScore < 2*dot {
			n++
		}
	}
	return n
}

// rangeBar draws where the new mean may lie, seen from the old one.
func rangeBar(low, high float64) []drawing.Mark {
	const y, half = -112.0, 8.0
	bar := func(a, b drawing.Point) drawing.Mark {
		return drawing.Line{Role: drawing.Hot, Points: []drawing.Point{a, b}}
	}
	return []drawing.Mark{bar(on(low, y), on(high, y)), bar(on(low, y-half), on(low, y+half)),
		bar(on(high, y-half), on(high, y+half)),
		drawing.Label{Role: drawing.Hot, At: on((low+high)/2, y-half), Side: drawing.Point{Y: -1},
			Text: words.Of("new mean: range"), Fixed: true}}
}

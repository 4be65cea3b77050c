package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainSame(v calculators.Values, r *calculators.Result) {
	c, p := carry(v)
	if p != nil {
		return
	}
	explainSaddlePart(v, c, r)
	r.At(aheadOfHead).Meaning = words.Of("Give {0}, or {1} and {2}, to have it.", measure.GripX.Named(),
		measure.NoseToGrip.Named(), measure.NoseSetback.Named())
	r.At(aboveHead).Meaning = words.Of("Give {0}, or {1} and {2}, to have it.", measure.GripY.Named(),
		measure.GripFloor.Named(), measure.BBHeight.Named())
	var parts []combination // those listed, the one to begin with at best
	best := -1
	w := c.wanted(v)
	if c.gripped() {
		var t calculators.Table
		t, parts, best = partsFor(v, w, r)
		r.Tables = append(r.Tables, t)
		if t, ok := sagTable(v, c); ok {
			r.Tables = append(r.Tables, t)
		}
	}
	if !v.Has(measure.NewSeatTubeAngle) {
		r.Note(calculators.CheckNote, "Without {0} the seat line is taken straight through the effective angle. On "+
			"many frames the tube itself leans back more, and then a saddle that stands higher than the chart’s level "+
			"sits further back.", measure.NewSeatTubeAngle.Named())
	}
	r.Note(calculators.PlainNote, "A fair target is {0} at both points; {1} is a wish. Measure both on the new "+
		"bike from the floor, in the same way as on the old one, and find the wrong number before you correct the "+
		"bike.", measure.Millimetres(5), measure.Millimetres(2))
	r.Note(calculators.PlainNote, "If only one of the two points can be met, keep the saddle: legs forgive less "+
		"than arms. Head angle, wheels, suspension and weight stay the new bike’s own.")
	r.Figure = sameFigure(w, c, parts, best, r)
}

// partsFor says which parts bring the grips to their old place on the new bike, and
// returns their table, the combinations listed, and the index of the one to begin
// with, -1 for none.
func partsFor(v calculators.Values, w wanted, r *calculators.Result) (calculators.Table, []combination, int) {
	allowed := math.NaN()
	if v.Has(measure.NewSpacersLimit) {
		allowed = v.Of(measure.NewSpacersLimit)
	}
	all, n := w.combine(allowed)
	best := nearestAllowed(all)
	explainGripPart(r, all, best)
	list := nearest(all, n)
	// The one to begin with is listed even where it is not among the nearest.
	if best >= len(list) {
		list = append(list[:len(list):len(list)], all[best])
	}
	list = allowedFirst(list)
	best = nearestAllowed(list)
	shown, star := shortList(list, best)
	return carryTable(w, shown, star, n > 0), list, best
}

// wanted returns what the parts are looked for on the new bike: the grips' old place,
// starting from a plain cockpit on the new head tube.
func (c carried) wanted(v calculators.Values) wanted {
	w := wanted{bike: c.bike, target: c.grip, parts: geometry.Cockpit{
		Headset: v.Of(measure.NewHeadsetHeight), Spacers: 10, ClampHeight: 40, Stem: normStem,
		Rise: v.Of(measure.NewBarRise), Back: v.Of(measure.NewBarSweep)}}
	w.now, _ = w.parts.Hold(w.bike)
	return w
}

// nearestAllowed returns the index of the combination to begin with: the first one
// within 5 mm whose stem is a usual one and whose spacers the steerer allows, or else
// the first one that the steerer allows; -1 for none.
func nearestAllowed(list []combination) int {
	any := -1
	for i, c := range list {
		if c.over > 0 {
			continue
		}
		if any < 0 {
			any = i
		}
		if c.off <= near5 && c.parts.Stem >= normStem-normWindow && c.parts.Stem <= normStem+normWindow {
			return i
		}
	}
	return any
}

// noSaddle says why there is no saddle height, if there is none.
func (c carried) noSaddle(v calculators.Values) (why words.Text, none bool) {
	switch {
	case !v.Has(measure.SaddleHeight):
		return words.Of("Give {0} to have it, or {1}, {2} and {3}, which a tape finds from the floor.",
			measure.SaddleHeight.Named(), measure.SaddleFloor.Named(), measure.BBHeight.Named(),
			measure.SaddleSetback.Named()), true
	case !(c.height > 0):
		return words.Of("{0} and {1} leave no height for the saddle. Check both, and that neither is in another "+
			"unit.", measure.SaddleHeight.Named(), measure.NewCrankLength.Named()), true
	case v.Has(measure.SaddleSetback) && !c.seated:
		return words.Of("{0} and {1} contradict each other: the saddle cannot be further back than it is from the "+
			"crank axle.", measure.SaddleHeight.Named(), measure.SaddleSetback.Named()), true
	}
	return words.Text{}, false
}

// railRoom is how far a saddle can move from the middle of its marked zone, mm:
// common practice for the length of the zone, less the clamp.
const railRoom = 20

func explainSaddlePart(v calculators.Values, c carried, r *calculators.Result) {
	height, rails, setback := r.At(sameHeight), r.At(railShift), r.At(sameSetback)
	if why, missing := c.noSaddle(v); missing {
		height.Meaning, rails.Meaning, setback.Meaning = why, why, why
		return
	}
	change := c.height - v.Of(measure.SaddleHeight)
	height.Meaning = words.Of("The old height, because crank, pedal and sole are the same.")
	if math.Abs(change) >= 0.5 {
		height.Meaning = words.Of("{0} against the old bike, because crank, pedal or sole move the foot at the "+
			"bottom of the stroke, and the saddle’s height is measured from the foot.",
			measure.Difference{Amount: measure.Millimetres(change)})
	}
	if !c.seated {
		why := words.Of("Give {0} or {1} to have it: without one of them we do not know how far back the saddle is "+
			"on the old bike.", measure.SaddleSetback.Named(), measure.NoseSetback.Named())
		rails.Meaning, setback.Meaning = why, why
		return
	}
	setback.Meaning = words.Of("The same direction from the crank axle as on the old bike. Measure it with a plumb " +
		"line before you trust the rails.")
	shift := float64(rails.Value)
	switch {
	case shift > railRoom:
		rails.Meaning = words.Of("More than rails have, about {0}: the new seat tube is steeper than your "+
			"position. A post with {1} more offset would do it, where the frame’s maker allows one; else you sit "+
			"that much further forward.", measure.Millimetres(railRoom), measure.Millimetres(shift-railRoom))
	case shift < -railRoom:
		rails.Meaning = words.Of("More than rails have, about {0}: the new seat tube is slacker than your "+
			"position, and you would sit {1} further back.", measure.Millimetres(railRoom),
			measure.Millimetres(-shift-railRoom))
	default:
		rails.Meaning = words.Of("Within what most rails have. The clamp has to stay inside the rails’ marks.")
	}
}

func explainGripPart(r *calculators.Result, list []combination, best int) {
	ahead, above := r.At(aheadOfHead), r.At(aboveHead)
	ahead.Meaning = words.Of("What headset, spacers, stem and bar have to make together on the new frame; the " +
		"table shows which parts do.")
	above.Meaning = words.Of("Know this number before you pay for a frame: if spacers and rise cannot make it up, " +
		"no stem can.")
	if len(list) == 0 || best >= 0 && list[best].off <= near5 {
		return
	}
	c := list[max(best, 0)]
	r.Note(calculators.CheckNote, "No usual parts that the steerer allows bring the grips within {0} of their old "+
		"place. The nearest leave them {1} forward and {2} up of it.", measure.Millimetres(near5),
		measure.Difference{Amount: measure.Millimetres(c.miss.X)},
		measure.Difference{Amount: measure.Millimetres(c.miss.Y)})
}

// carryTable lists the parts for the new bike.
func carryTable(w wanted, list []combination, star int, within bool) calculators.Table {
	t := combinationTable(w, list, star, within)
	for i, c := range list {
		switch {
		case c.over > 0:
		case c.parts.Stem < normStem-normWindow || c.parts.Stem > normStem+normWindow:
			t.Rows[i][markColumn] = words.Of("outside the usual stems")
		case c.parts.Rise != w.parts.Rise:
			t.Rows[i][markColumn] = words.Of("needs a different bar")
		default:
			t.Rows[i][markColumn] = words.Of("with the bar named")
		}
	}
	return t
}

// sagTable compares both bikes level and at sag, and false where a travel is
// missing.
func sagTable(v calculators.Values, c carried) (calculators.Table, bool) {
	t := calculators.Table{Name: "at-sag", Caption: words.Of("The same position once both bikes have sunk"),
		Columns: []calculators.Column{
			{Name: "what", Label: words.Of("What")}, {Name: "level", Label: words.Of("Level")},
			{Name: "sag", Label: words.Of("At sag")},
		}}
	for _, q := range [6]*measure.Quantity{measure.ForkTravel, measure.RearTravel, measure.NewForkTravel,
		measure.NewRearTravel, measure.SagFront, measure.SagRear} {
		if !v.Has(q) {
			return t, false
		}
	}
	front, rear := v.Of(measure.SagFront), v.Of(measure.SagRear)
	chart := geometry.Chart{Reach: c.grip.X + 18, Stack: c.grip.Y - 90, HeadAngle: 65.5, SeatAngle: 76.5,
		Chainstay: usualChainstay, Drop: usualDrop, ForkOffset: usualOffset, FrontRadius: usualRadius,
		RearRadius: usualRadius}
	old, err := chart.Solve()
	if err != nil {
		return t, false
	}
	oldSagged, err := geometry.Sagged(old, v.Of(measure.ForkTravel), front, v.Of(measure.RearTravel), rear)
	newSagged, err2 := geometry.Sagged(c.bike, v.Of(measure.NewForkTravel), front, v.Of(measure.NewRearTravel), rear)
	if err != nil || err2 != nil {
		return t, false
	}
	tips := (newSagged.HeadAngle - c.bike.HeadAngle) - (oldSagged.HeadAngle - old.HeadAngle)
	grip := c.grip.Turn(-tips).Sub(c.grip)
	zero := measure.Difference{Amount: measure.Millimetres(0)}
	said := func(x float64) words.Sayer { return measure.Difference{Amount: measure.Millimetres(x)} }
	t.Rows = append(t.Rows,
		[]words.Sayer{words.Of("New bike tips forward, against the old"),
			measure.Difference{Amount: measure.Degrees(0)}, measure.Difference{Amount: measure.Degrees(tips)}},
		[]words.Sayer{words.Of("Grips forward"), zero, said(grip.X)},
		[]words.Sayer{words.Of("Grips up"), zero, said(grip.Y)})
	if c.seated {
		saddle := c.saddle.Turn(-tips).Sub(c.saddle)
		t.Rows = append(t.Rows, []words.Sayer{words.Of("Saddle forward"), zero, said(saddle.X)})
	}
	return t, true
}

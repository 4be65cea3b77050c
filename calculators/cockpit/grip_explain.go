package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainGrip(v calculators.Values, r *calculators.Result) {
	b, p := fit.Front(v)
	if p != nil {
		return
	}
	r.At(gripX).Meaning = words.Of("What you feel standing: how far your hands are out in front of your feet. Drop " +
		"a plumb line from the middle of one grip and measure to the crank axle; if that disagrees by more than " +
		"the ±, one of the numbers above is wrong.")
	r.At(gripY).Meaning = words.Of("What you feel standing: how low you bend to hold on. The frame’s stack ends {0} "+
		"lower, at the top of the head tube.",
		measure.Millimetres(float64(r.At(gripY).Value)-b.Stack()))
	explainFromSaddle(v, r)
	explainAtBar(v, b, r)
	r.Tables = append(r.Tables, stepTable(r))
	r.Note(calculators.PlainNote, "A spacer goes up along the leaning steering axis, so it brings the grips back "+
		"as it lifts them; rise in a bar that stands upright lifts them straight.")
	r.Note(calculators.PlainNote, "To come up or down a little, move a spacer, because that can be undone. Move "+
		"one thing, ride it twice, then judge.")
	r.Note(calculators.PlainNote, "Tingling fingers, a sore neck or a low back that aches on climbs: check the "+
		"saddle’s height and tilt first, then raise the bar by one spacer. If it comes back or outlasts the ride, "+
		"stop and see a clinician.")
	r.Figure = gripFigure(v, b, r)
}

// explainFromSaddle says what the seated pair means, or what is missing for it.
func explainFromSaddle(v calculators.Values, r *calculators.Result) {
	x, drop := r.At(gripFromSaddle), r.At(gripDrop)
	if !x.Exists() {
		why := words.Of("Give {0}, and {1} or {2}, to have it.", measure.SaddleHeight.Named(),
			measure.SeatAngle.Named(), measure.SaddleSetback.Named())
		if v.Has(measure.SaddleHeight) && (v.Has(measure.SeatAngle) || v.Has(measure.SaddleSetback)) {
			why = words.Of("{0} leaves no place for a saddle this far back or on this seat tube. Check it, and "+
				"that none of the numbers is in another unit.", measure.SaddleHeight.Named())
		}
		x.Meaning, drop.Meaning = why, why
		return
	}
	x.Meaning = words.Of("What you feel seated, together with the drop. It is the number to carry over when you " +
		"compare two bikes from the saddle.")
	switch d := float64(drop.Value); {
	case d > -15 && d < 15:
		drop.Meaning = words.Of("Hands and seat are about level, which most riders find easy on neck and hands " +
			"while the front wheel still carries its share.")
	case d > 0:
		drop.Meaning = words.Of("Your hands are lower than your seat: more weight on the front wheel, more work " +
			"for neck and hands.")
	default:
		drop.Meaning = words.Of("Your hands are {0} higher than your seat: easy on neck and hands, lighter on the "+
			"front wheel.", measure.Millimetres(-d))
	}
}

// explainAtBar says what a higher bar does to the frame's own numbers.
func explainAtBar(v calculators.Values, b geometry.Bike, r *calculators.Result) {
	const higher = 10
	lost := b.ReachAt(b.Stack()) - b.ReachAt(b.Stack()+higher)
	r.At(reachAtBar).Meaning = words.Of("What is left of the chart’s {0} of reach once headset, spacers and stem "+
		"have brought you up here: the steering axis leans back {1} for every {2} up.",
		measure.Millimetres(v.Of(measure.Reach)), tenth(lost), measure.Millimetres(higher))
	x := r.At(roomAtBar)
	if !x.Exists() {
		x.Meaning = words.Of("Give {0} to have it.", measure.SeatAngle.Named())
		return
	}
	change := b.RoomAt(b.Stack()+higher) - b.RoomAt(b.Stack())
	if change < 0 {
		x.Meaning = words.Of("The room between seat and steering axis where the bar is. Every {0} that spacers "+
			"raise the bar take {1} off it, so a raised bar makes the bike feel smaller. With the same reach kept, "+
			"as on a frame with more stack, it would grow by {2} instead: do not mix the two.",
			measure.Millimetres(higher), tenth(-change), tenth(change+lost))
		return
	}
	x.Meaning = words.Of("The room between seat and steering axis where the bar is. On this bike the seat leans "+
		"back more than the steering axis, so every {0} that spacers raise the bar add {1}.",
		measure.Millimetres(higher), tenth(change))
}

// tenth is a length said to a tenth of a millimetre.
func tenth(x float64) measure.Amount { return measure.Amount{Value: x, Unit: measure.Mm, Extra: 1} }

// stepTable lists what one step of each part does, seen from the feet and from
// the saddle.
func stepTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "steps", Caption: words.Of("What one step of each part does to the grips; the " +
		"other way round it does the opposite"),
		Columns: []calculators.Column{
			{Name: "step", Label: words.Of("Step")},
			{Name: "forward", Label: words.Of("Forward"), Unit: "mm"},
			{Name: "up", Label: words.Of("Up"), Unit: "mm"},
		}}
	seated := r.At(gripFromSaddle).Exists()
	if seated {
		t.Columns = append(t.Columns, calculators.Column{Name: "saddle-to-grip", Label: words.Of("From the saddle"),
			Unit: "mm"})
	}
	for _, s := range gripSteps {
		ahead, up := r.At(s.ahead), r.At(s.up)
		if !ahead.Exists() {
			continue
		}
		row := []words.Sayer{s.said, ahead.Uncertain(), up.Uncertain()}
		if seated {
			row = append(row, r.At(s.fromSaddle).Uncertain())
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainStance(v calculators.Values, r *calculators.Result) {
	feet, line := r.At(stance), r.At(kneeLine)
	feet.Meaning = words.Of("Cranks and frame fix most of it. Wider than the hips is normal on a mountain bike and no " +
		"fault to be cured; good is a sole that presses evenly and knees you do not think of.")
	switch d := float64(line.Value); {
	case math.Abs(d) <= float64(line.Uncertainty):
		line.Meaning = words.Of("Within the errors the foot stands under its hip. Most of the ± comes from the hips, " +
			"whose joints nobody can touch.")
	case d > 0:
		line.Meaning = words.Of("The foot stands outside its hip, as on nearly every mountain bike. Act only on what you " +
			"feel: pressure on the inner edge of the foot, or an ache inside the knee, asks for less.")
	default:
		line.Meaning = words.Of("The foot stands inside its hip, which is rare on a mountain bike. Act only on what you " +
			"feel: pressure on the outer edge of the foot, or an ache outside the knee, asks for more.")
	}
	r.Tables = append(r.Tables, kneeLineTable(r), waysTable(v, feet))
	noteStance(v, r)
	r.Figure = stanceFigure(v, r)
}

// kneeLineTable gives the few degrees, the heel's room and the thread.
func kneeLineTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "knee-line", Caption: words.Of("The hips, the knee line, the heel and the thread"),
		Columns: []calculators.Column{
			{Name: "what", Label: words.Of("What")},
			{Name: "value", Label: words.Of("Value")},
			{Name: "uncertainty", Label: words.Of("±")},
			{Name: "know", Label: words.Of("To know")},
		}}
	know := map[*calculators.Output]words.Text{
		hipsApart: words.Of("0.72 of the distance between the front hip points, unless you gave it; the ± holds how far " +
			"that may be off"),
		kneeSlant: words.Of("from the hip joint to the foot, for a straight leg; a few degrees either way are ordinary"),
		heelRoom: words.Of("to the plane of its face at the pedal, with your toe-out; many arms lie further in at the " +
			"heel. Turn the heel fully in and look at crank, ankle and chainstay"),
		threadLeft: words.Of("what the crank holds of the pedal’s thread; its maker says how much that must be"),
	}
	for _, o := range [4]*calculators.Output{hipsApart, kneeSlant, heelRoom, threadLeft} {
		if w := r.At(o); w.Exists() {
			t.Rows = append(t.Rows, []words.Sayer{w.Label, w.Amount(), measure.Error{Amount: w.Margin()}, know[o]})
		}
	}
	return t
}

// waysTable lists what changes the stance, on one side.
func waysTable(v calculators.Values, feet *calculators.Answer) calculators.Table {
	t := calculators.Table{Name: "ways", Caption: words.Of("What changes it, on one side"), Columns: []calculators.Column{
		{Name: "way", Label: words.Of("What you do")},
		{Name: "foot", Label: words.Of("Foot goes out by"), Unit: "mm"},
		{Name: "stance", Label: words.Of("Stance with both sides done"), Unit: "mm"},
	}}
	row := func(what words.Text, out float64) {
		t.Rows = append(t.Rows, []words.Sayer{what, measure.Millimetres(out), measure.Millimetres(float64(feet.Value) +
			2*out)})
	}
	shift := v.Of(measure.CleatShift)
	row(words.Of("Cleat one step towards the inner edge of the sole"), 2)
	row(words.Of("Cleat to the inner end of its slots"), math.Max(slot-shift, 0))
	row(words.Of("Cleat one step towards the outer edge of the sole"), -2)
	row(words.Of("Cleat to the outer end of its slots"), -math.Max(slot+shift, 0))
	row(words.Of("A washer of 1 mm, if the crank’s maker allows it"), 1)
	if spacer := v.Of(measure.PedalSpacer); spacer > 0 {
		row(words.Of("Take the spacers out"), -spacer)
	}
	return t
}

func noteStance(v calculators.Values, r *calculators.Result) {
	if room := r.At(heelRoom); room.Exists() && room.Value < 0 {
		r.Note(calculators.CheckNote, "Turned out like this the heel reaches {0} past the plane of the crank’s outer "+
			"face. Many arms lie further in there, but turn the cranks backwards by hand with the heel fully in and look "+
			"before you ride.", measure.Millimetres(-float64(room.Value)))
	}
	if left := r.At(threadLeft); left.Exists() && v.Of(measure.PedalSpacer) > 0 {
		r.Note(calculators.CheckNote, "With these spacers {0} of thread are left in the crank. Whether that is enough, "+
			"only the crank’s maker can say.", left.Amount())
	}
	r.Note(calculators.PlainNote, "Known well: your stance and how the hips follow from the two points. When ten "+
		"riders could "+
		"choose, they settled on a Q factor of {0}, narrower than any common mountain-bike crank. Known poorly: what wider "+
		"costs. In 24 riders it was 1.5 to 2 % of efficiency; in 15 who went from {1} wider by up to 8 % of their leg, the "+
		"sideways moment at the knee was over 30 % higher at the widest; comfort and effort hardly changed in another group.",
		measure.Millimetres(142), measure.Millimetres(160))
	r.Note(calculators.PlainNote, "Not known at all: which stance is best off road. No stance is tied to knee injury.")
	r.Note(calculators.PlainNote, "The slots of a sole are taken as {0} to each side and the shoe’s heel as {1} wide: "+
		"common practice.", measure.Millimetres(slot), measure.Millimetres(2*heelHalf))
}

// stanceFigure draws both legs from the front, at their true width and a true
// length of leg.
func stanceFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	feet, line := r.At(stance), r.At(kneeLine)
	hips, q := v.Of(measure.HipWidth)/2, v.Of(measure.QFactor)/2
	foot := float64(feet.Value) / 2
	length := 600.0
	if leg, ok := body.TrochanterFromInseam(v.Of(measure.Inseam), fit.Sex(v)); ok {
		length = leg.Value
	}
	// Only widths are to scale: the legs are shortened so that they can be seen.
	length *= 0.45
	f := &drawing.Figure{Title: words.Of("Your stance against your hips, seen from the front"),
		Description: words.Of("Both legs seen from the front. The middles of the feet stand {0} apart, and each foot {1} "+
			"outside its hip joint. The widths are to scale; the legs are drawn short.", feet.Uncertain(), line.Uncertain())}
	at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
	for _, side := range [2]float64{-1, 1} {
		hip, sole := at(side*hips, length), at(side*foot, 0)
		knee := hip.Along(sole.Minus(hip), 0.5)
		f.Add(
			drawing.Limb{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, A: at(side*q, -14), B: at(side*(q-18),
				34), Ra: 9, Rb: 9},
			drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(side*q, -14), B: at(side*(foot+45), -14), Ra: 8, Rb: 8},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: hip, B: knee, Ra: 46, Rb: 32},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: knee, B: sole.Plus(at(0, 26)), Ra: 32, Rb: 21},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Wash, A: sole.Plus(at(-12, 16)), B: sole.Plus(at(12, 16)), Ra: 22,
				Rb: 22},
			drawing.Axis{Role: drawing.Body, A: hip, B: sole},
			drawing.Cross{Role: drawing.Body, At: hip}, drawing.Cross{Role: drawing.Body, At: knee},
		)
	}
	f.Add(
		figure.Level(drawing.Ink, at(-hips, length), at(hips, length), length+75, words.Of("hips {0}",
			measure.Millimetres(2*hips))),
		figure.Level(drawing.Ink, at(-q, -24), at(q, -24), -65, words.Of("Q factor {0}", measure.Millimetres(2*q))),
		figure.Level(drawing.Hot, at(-foot, 0), at(foot, 0), -115, words.Of("{0}", feet.Uncertain())),
	)
	return f
}

package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainMobility(v calculators.Values, r *calculators.Result) {
	knee := kneeUsual(fit.Sex(v))
	explainPlace(r.At(hamstrings), knee,
		words.Of("The bar starts level with the saddle or above it, and comes down only if that feels easy. Among "+
			"fifty trained road cyclists supple hamstrings went with a lower bar. By how many millimetres was not "+
			"published, so no number here is changed."),
		words.Of("You can have a lower bar, but you need not. Supple road cyclists had lower bars; nobody has "+
			"shown that they should."))
	explainPlace(r.At(ankles), lungeUsual,
		words.Of("On the bike the ankle seldom bends that far. Dropped heels on descents are where you would feel "+
			"it: do not force them, let the knees bend instead. Nobody has tested a setting for stiff ankles."),
		words.Of("Nothing on the bike follows from it: nobody has tested a setting for supple ankles."))
	explainPlace(r.At(hip), hipUsual,
		words.Of("At the top of the stroke the hip is bent most. If it pinches there, a higher bar, a shorter "+
			"crank or toes turned out a little give it room. That is common practice; no trial was found."),
		words.Of("The top of the stroke leaves you room. Nothing follows for the settings."))
	explainSides(r.At(hamstringSides), words.Of("left"), words.Of("right"))
	explainSides(r.At(ankleSides), words.Of("right"), words.Of("left"))
	r.Tables = append(r.Tables, mobilityTable(v, knee))
	if v.Has(measure.SitAndReach) {
		r.Note(calculators.PlainNote, "Sit and reach ({0}) has no average here, because it depends on arms and legs "+
			"as much as on suppleness. It follows the hamstrings only in part, and the back hardly. Compare it with "+
			"the same test in three months.", measure.SitAndReach.Amount(v.Of(measure.SitAndReach)))
	}
	if (v.Has(measure.KneeShortLeft) || v.Has(measure.KneeShortRight)) && v.Choice(measure.Sex) == "" {
		r.Note(calculators.CheckNote, "Women’s hamstrings let the knee go about 11 degrees further than men’s. "+
			"Without {0} the average of both stands in.", measure.Sex.Named())
	}
	if v.Small() || v.Is(measure.Growing, "yes") {
		r.Note(calculators.CheckNote, "The averages are those of grown people. For somebody who grows, or is under "+
			"{0}, they mean nothing: compare left with right only, and with yourself three months ago.",
			measure.Millimetres(body.LeastStature))
	}
	r.Note(calculators.CheckNote, "The averages and how far people differ are quoted from memory: nobody opened the "+
		"papers again for this guide. Take “stiffer than most” as a hint and no more. What you can rely on is left "+
		"against right, and you against yourself.")
	r.Note(calculators.PlainNote, "No setting of the bike is changed by these tests: nobody has shown which setting a "+
		"stiff or a supple joint asks for.")
	r.Note(calculators.PlainNote, "Warm up for five minutes first, take each test three times and keep the middle "+
		"one. Stop where it pulls; a test that hurts is no test.")
	r.Figure = mobilityFigure(v, r)
}

// explainPlace says where in its group somebody is, what that bears on, and between what
// two of three people lie.
func explainPlace(x *calculators.Answer, u usual, stiff, supple words.Text) {
	off, margin := float64(x.Value), float64(x.Uncertainty)
	x.Low, x.High = calculators.Number(-u.SD), calculators.Number(u.SD)
	switch {
	case !x.Exists():
		x.Low, x.High = 0, 0
		x.Meaning = words.Of("Not tested.")
	case off+margin < -u.SD:
		x.Meaning = words.Of("Stiffer than about five people in six. {0}", stiff)
	case off-margin > u.SD:
		x.Meaning = words.Of("More supple than about five people in six. {0}", supple)
	case off < -u.SD:
		x.Meaning = words.Of("Stiffer than most, as far as one test can tell. {0}", stiff)
	case off > u.SD:
		x.Meaning = words.Of("More supple than most, as far as one test can tell. {0}", supple)
	default:
		x.Meaning = words.Of("Among the middle two thirds of people. Nothing on the bike follows from it.")
	}
}

// explainSides says whether the sides differ, by their stiffer one where the difference is
// positive and where it is negative.
func explainSides(x *calculators.Answer, above, below words.Text) {
	stiffer := above
	if x.Value < 0 {
		stiffer = below
	}
	switch {
	case !x.Exists():
		x.Meaning = words.Of("It takes both sides to tell.")
	case math.Abs(float64(x.Value)) <= float64(x.Uncertainty):
		x.Meaning = words.Of("No more than two tests of one side differ. Both sides count as alike.")
	default:
		x.Meaning = words.Of("The {0} side is stiffer by more than the test’s own error. A test on another day "+
			"tells more. If it stays, saddle height goes by the stiffer leg (common practice), and ask a "+
			"professional if that side aches.", stiffer)
	}
}

// mobilityTable shows each test beside what is usual.
func mobilityTable(v calculators.Values, knee usual) calculators.Table {
	t := calculators.Table{Name: "usual", Caption: words.Of("Each test, and where two of three people lie"),
		Folded: true,
		Columns: []calculators.Column{
			{Name: "test", Label: words.Of("Test")},
			{Name: "yours", Label: words.Of("Measured")},
			{Name: "from", Label: words.Of("Usual from")},
			{Name: "to", Label: words.Of("to")},
		}}
	for _, x := range []struct {
		q *measure.Quantity
		u usual
	}{
		{measure.KneeShortLeft, knee}, {measure.KneeShortRight, knee}, {measure.LungeLeft, lungeUsual},
		{measure.LungeRight, lungeUsual}, {measure.HipBend, hipUsual},
	} {
		if v.Has(x.q) {
			t.Rows = append(t.Rows, []words.Sayer{words.Of(x.q.Label), x.q.Amount(v.Of(x.q)),
				x.q.Amount(x.u.Mean - x.u.SD), x.q.Amount(x.u.Mean + x.u.SD)})
		}
	}
	return t
}

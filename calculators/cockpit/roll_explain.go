package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainRoll(v calculators.Values, r *calculators.Result) {
	ahead, up, tips := r.At(rollAhead), r.At(rollUp), r.At(rollTips)
	ahead.Meaning = words.Of("If your arms then feel shorter or longer, the stem’s length or a spacer gives it back.")
	up.Meaning = words.Of("From {0} on, correct it with a spacer: roll is for wrists, spacers are for height.",
		measure.Millimetres(5))
	tips.Meaning = words.Of("The brake levers turn by the whole {0}, the grips’ direction by this much. So a roll "+
		"changes the levers first: set them back to their angle.",
		measure.Degrees(math.Abs(v.Of(measure.BarRoll))))
	t := calculators.Table{Name: "rolls", Caption: words.Of("What other rolls do, from the bar as it stands"),
		Columns: []calculators.Column{
			{Name: "roll", Label: words.Of("Roll")},
			{Name: "ahead", Label: words.Of("Grips ahead"), Unit: "mm"},
			{Name: "up", Label: words.Of("Grips up"), Unit: "mm"},
			{Name: "tips", Label: words.Of("Ends tip up"), Unit: "deg"},
		}}
	for _, s := range rollSteps {
		way := words.Of("Forward {0}", measure.Degrees(s.roll))
		if s.roll < 0 {
			way = words.Of("Back {0}", measure.Degrees(-s.roll))
		}
		t.Rows = append(t.Rows, []words.Sayer{way, r.At(s.ahead).Uncertain(), r.At(s.up).Uncertain(),
			r.At(s.tips).Uncertain()})
	}
	r.Tables = append(r.Tables, t)
	r.Note(calculators.PlainNote, "The grips are taken as level before the roll. A bar whose ends point up already "+
		"keeps most of that: only another bar changes it by much.")
	r.Figure = rollFigure(v, r)
}

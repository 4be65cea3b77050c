package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

func explainKneeBend(v calculators.Values, r *calculators.Result) {
	bottom, still := r.At(kneeAtBottom), r.At(kneeHeldStill)
	explainBottom(bottom, still, v.Has(measure.KneeReading))
	explainTop(v, r)
	explainLeast(v, r)
	rider, ok := fit.Seated(v)
	if v.Has(measure.KneeReading) {
		compareReading(v, r)
	}
	if ok {
		r.Tables = append(r.Tables, stepTable(v, rider))
		if circle, fine := rider.Circle(v.Of(measure.SaddleHeight), 72); fine {
			r.Tables = append(r.Tables, circleTable(v, circle))
		}
	}
	r.Note(calculators.PlainNote, "The leg is a chain of straight segments in which heel and pelvis give as they "+
		"did in measured riders. It knows a rider’s lengths but not the style: one rider’s knee may differ from it "+
		"by {0}.", measure.Degrees(riderSpread))
	if u := float64(bottom.Uncertainty); u > straightBends {
		r.Note(calculators.CheckNote, "The straighter a leg, the more each millimetre turns the knee, and the "+
			"answer is only good to ± {0} here. A measured hip-bone height narrows it most.", measure.Degrees(u))
	}
	r.Figure = kneeFigure(v, r, rider, ok)
}

// straightBends is the ± of the knee at the bottom, degrees, above which it is said what
// narrows it: that is half of what is advised, 30 to 40 degrees.
const straightBends = 5

// outOfReach is said where an angle does not exist.
var outOfReach = words.Of("With these lengths the leg does not reach the pedal there. Check the inside leg, the " +
	"saddle height and the crank.")

// explainBottom says what the model's bend calls for. Where the knee was read, the reading calls
// for it, and two orders would be one too many.
func explainBottom(bottom, still *calculators.Answer, read bool) {
	if !bottom.Exists() {
		bottom.Meaning, still.Meaning = outOfReach, outOfReach
		return
	}
	switch bend := float64(bottom.Value); {
	case read && bend < movingFrom:
		bottom.Meaning = words.Of("By the model, straighter than the 30 to 40 degrees that are advised. What the " +
			"saddle needs, the reading says below.")
	case read && bend > movingTo:
		bottom.Meaning = words.Of("By the model, more bent than the 30 to 40 degrees that are advised. What the " +
			"saddle needs, the reading says below.")
	case read:
		bottom.Meaning = words.Of("By the model, inside the 30 to 40 degrees that are advised. What the saddle " +
			"needs, the reading says below.")
	case bend < movingFrom:
		bottom.Meaning = words.Of("Straighter than the 30 to 40 degrees that are advised. If your hips rock or you " +
			"reach with the toes, lower the saddle by 5 mm.")
	case bend > movingTo:
		bottom.Meaning = words.Of("More bent than the 30 to 40 degrees that are advised. If the front of the knee " +
			"tires, raise the saddle by 5 mm; on long descents a low saddle is no fault.")
	default:
		bottom.Meaning = words.Of("Inside the 30 to 40 degrees that are advised. If it feels right, leave the " +
			"saddle alone and ride.")
	}
	if !still.Exists() {
		still.Meaning = words.Of("Held still, this leg would be straight before it got there.")
		return
	}
	still.Low, still.High = still.Value-posture.StaticLessSD, still.Value+posture.StaticLessSD
	still.Low = max(still.Low, 0)
	still.Meaning = words.Of("The heel drops when you stop, so the knee reads about 5 degrees less, give or take " +
		"5. Compare a goniometer with this number and with the window of 25 to 35, never with 30 to 40.")
}

func explainTop(v calculators.Values, r *calculators.Result) {
	knee, hip := r.At(kneeAtTop), r.At(hipAtTop)
	if !knee.Exists() {
		knee.Meaning, hip.Meaning = outOfReach, outOfReach
		return
	}
	knee.Meaning = words.Of("How tightly the knee folds. If this feels cramped while the bottom is right, the " +
		"saddle cannot help: look at the crank’s length.")
	hip.Meaning = words.Of("The room left between trunk and thigh with the trunk at {0}. A lower bar or a longer "+
		"crank takes from it. If the front of the hip pinches, it needs more.",
		measure.Degrees(v.Of(measure.SeatedTrunk)))
}

func explainLeast(v calculators.Values, r *calculators.Result) {
	least, at := r.At(leastBend), r.At(leastBendAt)
	if !least.Exists() {
		least.Meaning, at.Meaning = outOfReach, outOfReach
		return
	}
	gap := float64(at.Value) - posture.Bottom(v.Of(measure.SeatAngle))
	least.Meaning = words.Of("The knee never gets straighter than this. It differs from the bottom because the " +
		"foot tips while the crank turns.")
	if gap < 0 {
		at.Meaning = words.Of("That is {0} before the crank comes in line with the seat. 90 degrees is level and "+
			"forward, 180 straight down.", measure.Degrees(-gap))
	} else {
		at.Meaning = words.Of("That is {0} after the crank has come in line with the seat. 90 degrees is level and "+
			"forward, 180 straight down.", measure.Degrees(gap))
	}
}

// compareReading shows the reader's own reading beside the model's, and says whether they
// differ by more than their errors and the differences between riders allow.
func compareReading(v calculators.Values, r *calculators.Result) {
	d := r.At(readingDifference)
	read := v.Of(measure.KneeReading)
	still := v.Is(measure.KneeRead, "still")
	of := r.At(kneeAtBottom)
	way := words.Of("while pedalling")
	spread := riderSpread
	if still {
		of, way = r.At(kneeHeldStill), words.Of("holding still")
		spread = math.Hypot(spread, posture.StaticLessSD)
	}
	t := calculators.Table{
		Name: "own-reading",
		Caption: words.Of("The reading beside the model’s, at a saddle of {0}",
			measure.Millimetres(v.Of(measure.SaddleHeight))),
		Columns: []calculators.Column{
			{Name: "read", Label: words.Of("Read")},
			{Name: "yours", Label: words.Of("Reading"), Unit: "deg"},
			{Name: "model", Label: words.Of("The model’s"), Unit: "deg"},
			{Name: "difference", Label: words.Of("Reading less the model’s"), Unit: "deg"},
			{Name: "uncertainty", Label: words.Of("±"), Unit: "deg"},
		},
	}
	t.Rows = [][]words.Sayer{{way, measure.Degrees(read), of.Amount(), d.Amount(), measure.Error{Amount: d.Margin()}}}
	if d.Exists() {
		r.Tables = append(r.Tables, t)
	}
	window(r, read, 2*v.SD(measure.KneeReading), still)
	switch allowed := math.Hypot(float64(d.Uncertainty), 2*spread); {
	case !d.Exists():
	case math.Abs(float64(d.Value)) > allowed:
		r.Note(calculators.CheckNote, "Reading and model are further apart than the measurements and the "+
			"differences between riders allow ({0}). Measure the inside leg again and mark the joints anew on the "+
			"bike; if both hold, trust the reading and not the model.", measure.Degrees(allowed))
	case allowed > movingTo-movingFrom:
		r.Note(
			calculators.CheckNote,
			"Reading and model agree, but only to within {0}, and the window is {1} wide. That confirms neither of "+
				"them, so no saddle is set by this comparison.",
			measure.Degrees(allowed),
			wholeDegrees(movingTo-movingFrom),
		)
	default:
		r.Note(calculators.PlainNote, "Reading and model differ by less than the measurements and the differences "+
			"between riders allow ({0}), so its hints about steps of the saddle can be trusted.",
			measure.Degrees(allowed))
	}
	if !still {
		r.Note(calculators.PlainNote, "A film from the side shows about 2 degrees too little bend. Nothing was "+
			"added here: add the 2 degrees yourself before you type the reading.")
	}
}

// window says where the reader's own reading lies in the window for a knee that was read
// in that way. One that its own ± carries over the edge moves no saddle.
func window(r *calculators.Result, read, margin float64, still bool) {
	from, to := wholeDegrees(movingFrom), wholeDegrees(movingTo)
	low, high := float64(movingFrom), float64(movingTo)
	if still {
		from, to = wholeDegrees(stillFrom), wholeDegrees(stillTo)
		low, high = stillFrom, stillTo
	}
	switch {
	case read < low && low-read < margin, read > high && read-high < margin:
		r.Note(calculators.CheckNote, "The reading of {0} lies outside the {1} to {2} for a knee read that way, but "+
			"by less than the {3} it may be off. Such a reading is taken again before the saddle moves.",
			measure.Degrees(read), from, to, measure.Degrees(margin))
	case read < low:
		r.Note(calculators.CheckNote, "The reading of {0} is straighter than the {1} to {2} for a knee read that "+
			"way. Such a reading asks for a saddle 5 mm lower, then two rides and a new "+
			"reading.", measure.Degrees(read), from, to)
	case read > high:
		r.Note(calculators.CheckNote, "The reading of {0} is more bent than the {1} to {2} for a knee read that "+
			"way. Such a reading asks for a saddle 5 mm higher, then two rides and a new "+
			"reading.", measure.Degrees(read), from, to)
	default:
		r.Note(calculators.PlainNote, "The reading of {0} lies inside the {1} to {2} for a knee read that way. Such "+
			"a reading asks for no change of the saddle.", measure.Degrees(read), from, to)
	}
}

// stepTable shows what a step of the saddle does.
func stepTable(v calculators.Values, rider posture.Seated) calculators.Table {
	t := calculators.Table{Name: "steps", Caption: words.Of("What a step of the saddle does"),
		Columns: []calculators.Column{
			{Name: "saddle-height", Label: words.Of("Saddle height"), Unit: "mm"},
			{Name: "step", Label: words.Of("Step"), Unit: "mm"},
			{Name: "knee-bottom", Label: words.Of("Knee at the bottom, moving"), Unit: "deg"},
			{Name: "knee-bottom-static", Label: words.Of("Sitting still"), Unit: "deg"},
			{Name: "knee-top", Label: words.Of("Knee at the top"), Unit: "deg"},
			{Name: "hip-at-top", Label: words.Of("Hip at the top"), Unit: "deg"},
		}}
	now := v.Of(measure.SaddleHeight)
	for _, step := range [5]float64{-10, -5, 0, 5, 10} {
		bottom, still, top, hip := math.NaN(), math.NaN(), math.NaN(), math.NaN()
		if p, ok := rider.AtBottom(now + step); ok {
			bottom, still = p.KneeBend, stillBend(p.KneeBend)
		}
		if p, ok := rider.At(now+step, 0); ok {
			top, hip = p.KneeBend, p.HipAngle(v.Of(measure.SeatedTrunk))
		}
		t.Rows = append(t.Rows, []words.Sayer{measure.Millimetres(now + step), measure.Millimetres(step),
			measure.Degrees(bottom), measure.Degrees(still), measure.Degrees(top), measure.Degrees(hip)})
	}
	return t
}

// circleTable shows the leg's angles through the whole pedal circle.
func circleTable(v calculators.Values, circle posture.Circle) calculators.Table {
	t := calculators.Table{Name: "circle", Caption: words.Of("The whole pedal circle, every 5 degrees"),
		Folded: true, Columns: []calculators.Column{
			{Name: "crank", Label: words.Of("Crank from the top"), Unit: "deg"},
			{Name: "knee", Label: words.Of("Knee"), Unit: "deg"},
			{Name: "hip", Label: words.Of("Hip, inner angle"), Unit: "deg"},
			{Name: "ankle", Label: words.Of("Ankle, lower leg to sole"), Unit: "deg"},
		}}
	trunk := v.Of(measure.SeatedTrunk)
	for _, p := range circle.Poses {
		t.Rows = append(t.Rows, []words.Sayer{measure.Degrees(p.Crank), measure.Degrees(p.KneeBend),
			measure.Degrees(p.HipAngle(trunk)), measure.Degrees(p.AnkleAngle)})
	}
	return t
}

// wholeDegrees says an angle that is a round number.
func wholeDegrees(x float64) measure.Amount {
	return measure.Amount{Value: x, Unit: measure.Deg, Extra: -measure.Deg.Digits}
}

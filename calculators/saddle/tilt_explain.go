package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainTilt(v calculators.Values, r *calculators.Result) {
	sag, grade, level := r.At(tiltAtSag), r.At(tiltOnGrade), r.At(tiltToBeLevel)
	slope := measure.Percentage(v.Of(measure.Grade))
	stand := r.At(tiltOnStand)
	stand.Low, stand.High = 0, tiltUsualTo
	stand.Meaning = words.Of("What you set and read in the garage. Level first; on steep trails 2 to 5 degrees " +
		"nose-down is common practice, and the small end is the place to begin.")
	if !sag.Exists() {
		none := words.Of("With these travels, sags and wheels the bike cannot stand. Check them.")
		sag.Meaning, grade.Meaning, level.Meaning = none, none, none
		r.Figure = tiltFigure(v, r)
		return
	}
	pitch, tip := r.At(pitchAtSag), r.At(slopeTip)
	if p := float64(pitch.Value); p >= 0 {
		sag.Meaning = words.Of("The rear sinks more than the front and tips the saddle back by {0}. It is right "+
			"when you rest on the bones without holding on.", pitch.Amount())
	} else {
		sag.Meaning = words.Of("The front sinks more than the rear and tips the saddle forward by {0}. It is right "+
			"when you rest on the bones without sliding.", measure.Degrees(-p))
	}
	switch t := float64(grade.Value); {
	case !grade.Exists():
	case t < 0:
		grade.Meaning = words.Of("On {0} the nose points {1} up. If it presses, or you creep forward on every "+
			"climb, go one degree nose-down and ride twice.", slope, measure.Degrees(-t))
	default:
		grade.Meaning = words.Of("On {0} the nose still points down.", slope)
	}
	if level.Exists() {
		explainLevel(level)
	}
	if tip.Exists() {
		r.Tables = append(r.Tables, tiltTable(v, float64(pitch.Value), float64(tip.Value)))
	} else {
		none := words.Of("With the weight there one wheel carries nothing on this slope, so there is no answer. " +
			"Check the grade and the place of the weight.")
		grade.Meaning, level.Meaning = none, none
	}
	if stand.Value < 0 {
		r.Note(calculators.CheckNote, "On the stand the nose points up. Bring it to level first, one degree at a "+
			"time: for many riders that is all.")
	} else if stand.Value > tiltUsualTo {
		r.Note(calculators.CheckNote, "That is more nose-down than is usual. Ask whether the saddle is too high, "+
			"too far back or the wrong shape, and watch your hands.")
	}
	if t := float64(tip.Value); t >= 0.05 {
		r.Note(calculators.PlainNote, "The climb takes load off the fork and puts it on the rear. At a steady speed "+
			"that tips the bike back by {0} beyond the sag as typed; the answer includes it.", tip.Uncertain())
	} else if t <= -0.05 {
		r.Note(calculators.PlainNote, "The descent puts load on the fork and takes it off the rear. At a steady "+
			"speed that tips the bike forward by {0} beyond the sag as typed; the answer includes it.",
			measure.Degrees(-t))
	}
	r.Note(calculators.PlainNote, "Laboratory climbs at 8 degrees and 20 % gained 1.4 and about 3 % of efficiency "+
		"with the nose down. Most riders with low back pain in one study improved. In one race the tilt went with "+
		"pain in the buttocks. How far it may be tilted before the hands suffer, nobody has measured.")
	r.Figure = tiltFigure(v, r)
}

// explainLevel offers the tilt that is level on the climb as the far end of a range only,
// and never beyond the usual: nothing supports more.
func explainLevel(level *calculators.Answer) {
	level.Low, level.High = 0, calculators.Number(min(max(float64(level.Value), 0), tiltUsualTo))
	switch t := float64(level.Value); {
	case t > tiltUsualTo:
		level.Meaning = words.Of("The far end, not a target, and further than is usual: stay within 5 degrees. A " +
			"saddle made level for such a pitch throws you onto your hands everywhere else.")
	case t >= 0:
		level.Meaning = words.Of("The far end of what to try, not a target. Go there one degree at a time, ride " +
			"twice, and stop before your hands hurt.")
	default:
		level.Meaning = words.Of("Downhill this would ask for a nose that points up. Nobody sits there for long: " +
			"leave it level.")
	}
}

// tiltTable shows tilts on the stand from level to the usual end.
func tiltTable(v calculators.Values, pitch, tip float64) calculators.Table {
	t := calculators.Table{Name: "tilts", Caption: words.Of("One degree at a time"), Columns: []calculators.Column{
		{Name: "saddle-tilt", Label: words.Of("On the stand"), Unit: "deg"},
		{Name: "tilt-at-sag", Label: words.Of("With the rider aboard"), Unit: "deg"},
		{Name: "tilt-on-grade", Label: words.Of("On the climb"), Unit: "deg"},
	}}
	slope := geometry.SlopeAngle(v.Of(measure.Grade))
	for tilt := 0.0; tilt <= tiltUsualTo; tilt++ {
		t.Rows = append(t.Rows, []words.Sayer{measure.Degrees(tilt), measure.Degrees(tilt - pitch),
			measure.Degrees(tilt - pitch - tip - slope)})
	}
	return t
}

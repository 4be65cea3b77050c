package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

func explainReady(v calculators.Values, r *calculators.Result) {
	s, ok, p := standOf(v)
	if p != nil {
		return
	}
	r.At(feetToHands).Meaning = words.Of("The distance that legs, trunk and arms have to span when you stand. It " +
		"changes with the grips alone.")
	if !ok {
		noStand(r, words.Of("These lengths make no rider. Check the inside leg, the height and the lengths behind "+
			"“Refine”."))
		r.Figure = emptyReady(v, s)
		return
	}
	grip := s.grip.Add(s.move)
	now, err := s.rider.Ready(grip)
	if err != nil {
		noStand(r, unready(err))
		r.Figure = emptyReady(v, s)
		return
	}
	here := stood{Balanced: now.Balanced}
	here.look(s.rider, grip)
	explainElbow(r, &here)
	explainKept(r)
	explainRooms(r, &here)
	r.At(hipBehind).Meaning = words.Of("Where your hips have to be for your weight to stand over your feet. If " +
		"your saddle or your habit keeps them further forward, your hands carry the difference.")
	r.At(frontKnee).Meaning = words.Of("The front foot is ahead, so this knee is straighter than the mean that you " +
		"chose.")
	r.At(rearKnee).Meaning = words.Of("The rear foot is behind, so this knee is bent more.")
	r.At(armSlack).Meaning = slackMeaning(&here)
	t, trunk, stem := changeTable(v, s, &here)
	r.Tables = append(r.Tables, t)
	if s.move != (geometry.Point{}) {
		r.Tables = append(r.Tables, moveTable(s, &here))
	}
	if trunk.known && stem.known {
		r.Note(calculators.PlainNote, "Do not judge a bike’s size by the elbow alone. Leaning the trunk by 5 "+
			"degrees is worth {0} of elbow; a stem 10 mm longer is worth {1}.",
			measure.Degrees(trunk.elbow), measure.Degrees(stem.elbow))
	}
	r.Note(calculators.PlainNote, "This is the bike at sag, which tips it {0} by {1}. The model is plain mechanics "+
		"with a posture that was chosen: it holds while you stand still in balance, not while you brake, pump or "+
		"jump.",
		tipped(s.bike.Tilt), measure.Degrees(max(s.bike.Tilt, -s.bike.Tilt)))
	if wide := !v.Given(measure.ArmLength) || !v.Given(measure.TrunkLength) ||
		!v.Given(measure.TrochanterHeight); wide {
		r.Note(calculators.CheckNote, "Lengths of your body that were estimated leave a wide margin for elbow and "+
			"room. Let a helper measure arm, trunk and hip bone: nothing else narrows it as much.")
	} else if now.ElbowBend < straightish {
		r.Note(calculators.CheckNote, "When your arm is nearly straight, each millimetre changes the elbow a lot.")
	}
	r.Note(calculators.PlainNote, "Heavy or tingling hands, a sore neck or back after descents: try hips back and "+
		"chest low first, because it costs nothing. Then one spacer up. If it comes back or outlasts the ride, "+
		"stop and see a clinician.")
	r.Figure = readyFigure(v, s, now, r)
}

// straightish is the bend, in degrees, below which the elbow follows the distance to
// the grips so unevenly that this is said.
const straightish = 40

func tipped(tilt float64) words.Text {
	if tilt < 0 {
		return words.Of("back")
	}
	return words.Of("forward")
}

// unready says in the reader's words why nobody can stand like that.
func unready(err error) words.Text {
	switch err {
	case posture.TooFarBack:
		return words.Of("This position is impossible: your front leg is too short for your weight to come back " +
			"over your feet. Bend the knees more, or choose a gentler slope.")
	case posture.TooFarForward:
		return words.Of("This position is impossible: your rear leg is too short for your weight to come forward " +
			"over your feet. Bend the knees more, or choose a gentler slope.")
	case posture.LegsFold:
		return words.Of("This position is impossible: your legs cannot hold this knee bend with the cranks level. " +
			"Try about 50 degrees.")
	}
	return words.Of("This position is impossible: the lengths or angles make no rider. Check those behind “Refine”.")
}

// noStand gives every answer that needs a pose the reason why there is none.
func noStand(r *calculators.Result, why words.Text) {
	for i := range r.Answers {
		if r.Answers[i].Output != feetToHands {
			r.Answers[i].Meaning = why
		}
	}
	r.Note(calculators.CheckNote, "{0}", why)
}

// The span of elbow bends that is common practice for standing ready, degrees.
const elbowFrom, elbowTo = 45, 80

func explainElbow(r *calculators.Result, now *stood) {
	x := r.At(readyElbow)
	if !x.Exists() {
		x.Meaning = words.Of("In this posture your arms are straight {0} before the grips. Lower the chest or bend "+
			"the knees more and look again; if they stay straight with the chest low, bring the grips nearer.",
			measure.Millimetres(-now.Slack))
		r.Note(calculators.CheckNote, "Your arms are straight {0} before the grips.", measure.Millimetres(-now.Slack))
		return
	}
	x.Low, x.High = elbowFrom, elbowTo
	from, to := measure.Degrees(elbowFrom), measure.Degrees(elbowTo)
	switch bend := float64(x.Value); {
	case bend < elbowFrom:
		x.Meaning = words.Of("Straighter than the {0} to {1} of common practice: little left to give when the "+
			"front wheel drops. Look at the trunk beside it before you change a part.", from, to)
	case bend > elbowTo:
		x.Meaning = words.Of("More than the {0} to {1} of common practice: little left to fold when the front "+
			"wheel comes up. Standing taller helps as much as any new part.", from, to)
	default:
		x.Meaning = words.Of("Between the {0} and {1} of common practice: bend left to give when the front wheel "+
			"drops, and to take when it comes up.", from, to)
	}
}

func explainKept(r *calculators.Result) {
	x := r.At(trunkAtElbow)
	if !x.Exists() {
		x.Meaning = words.Of("No trunk angle leaves that much bend with the weight over the feet: the grips are " +
			"too far for it, or too near.")
		return
	}
	x.Meaning = words.Of("Lean your chest to this angle and your elbows keep 60 degrees, the middle of common " +
		"practice. If you can hold that easily on a descent, the bike leaves you room.")
}

func explainRooms(r *calculators.Result, now *stood) {
	back, forward := r.At(roomBack), r.At(roomForward)
	switch room := now.back; {
	case !back.Exists():
		back.Meaning = words.Of("Wherever you stand at this trunk angle, the grips stay out of reach.")
	case room.Length < 0:
		back.Meaning = words.Of("None: you would have to come forward by this much, and lean on your hands, before " +
			"they reach the grips at this trunk angle.")
	case room.Limit == posture.FrontLegEnds:
		back.Meaning = words.Of("How far you can move back over the rear wheel before your front leg reaches no " +
			"further; your arms would still reach.")
	default:
		back.Meaning = words.Of("How far you can move back before your arms are straight. It is what you have when " +
			"the front wheel drops off a ledge and the bike pulls away from you.")
	}
	switch room := now.forward; {
	case !forward.Exists():
		forward.Meaning = words.Of("Wherever you stand at this trunk angle, your arms have no room in front.")
	case room.Length < 0:
		forward.Meaning = words.Of("None: at this trunk angle your arms have nothing left to fold. Stand taller, " +
			"or move the hips back.")
	case room.Limit == posture.ElbowsFolded:
		forward.Meaning = words.Of("How far you can come forward before your elbows fold past 120 degrees. It is " +
			"what you have when the front wheel comes up at you.")
	case room.Limit == posture.RearLegEnds:
		forward.Meaning = words.Of("How far you can come forward before your rear leg reaches no further. It is " +
			"what you have when you load the front wheel in a flat turn.")
	default:
		forward.Meaning = words.Of("How far you can come forward before your shoulders stand over the grips. It is " +
			"what you have when you load the front wheel in a flat turn.")
	}
}

func slackMeaning(now *stood) words.Text {
	if !now.Reaches() {
		return words.Of("Your straight arms end this much before the grips.")
	}
	return words.Of("If the grips were this much further from your shoulders, your arms would be straight.")
}

// stood is a rider in balance, with how far the centre of mass can move.
type stood struct {
	posture.Balanced
	back, forward posture.Room
	roomy         bool // there is room both ways, be it negative
}

// look finds how far the rider can move back and forward.
func (d *stood) look(rider posture.Standing, grip geometry.Point) {
	var behind, ahead bool
	d.back, behind = rider.RoomBack(&d.Balanced, grip)
	d.forward, ahead = rider.RoomForward(&d.Balanced, grip)
	d.roomy = behind && ahead
}

// effect is what a change does to the elbow and to the room.
type effect struct {
	known                bool
	elbow, back, forward float64
}

// effectOf compares a rider on other grips or in another stance with the one now. The
// effect is known where the arms reach and leave room both times.
func effectOf(now *stood, after posture.Standing, grip geometry.Point) effect {
	balanced, err := after.Balance(grip)
	then := stood{Balanced: balanced}
	if err != nil || !then.Reaches() || !now.Reaches() {
		return effect{}
	}
	then.look(after, grip)
	return effect{now.roomy && then.roomy, then.ElbowBend - now.ElbowBend, then.back.Length - now.back.Length,
		then.forward.Length - now.forward.Length}
}

// changeTable says what changes of posture and of parts are worth; it returns the
// effects of the trunk and of the stem as well. The differences carry no ± of
// their own: the same rider stands on both sides of each, so most of the error
// cancels.
func changeTable(v calculators.Values, s stand, now *stood) (t calculators.Table, trunk, stem effect) {
	grip := s.grip.Add(s.move)
	head := s.bike.Sagged.HeadAngle
	leg, _ := fit.Leg(v)
	upper := fit.Upper(v)
	as := func(upper posture.Upper, stance posture.Stance) effect {
		other, ok := posture.NewStanding(leg, fit.Feet(v), upper, stance)
		if !ok {
			return effect{}
		}
		return effectOf(now, other, grip)
	}
	on := func(change func(*posture.Stance)) effect {
		stance := stanceOf(v)
		change(&stance)
		return as(upper, stance)
	}
	moved := func(x, y float64) effect {
		return effectOf(now, s.rider, grip.Add(geometry.Point{X: x, Y: y}))
	}
	stemWay, spacerWay := geometry.Cockpit{Stem: 10}.StemVector(head), geometry.SpacerVector(10, head)
	wide := upper
	wide.Arm.Aside += 10
	trunk, stem = on(func(p *posture.Stance) { p.Trunk -= 5 }), moved(stemWay.X, stemWay.Y)
	rows := []struct {
		what words.Text
		effect
	}{
		{words.Of("Chest lower: trunk leaned {0} more", measure.Degrees(5)), trunk},
		{words.Of("Knees bent {0} more", measure.Degrees(10)), on(func(p *posture.Stance) { p.Knee += 10 })},
		{words.Of("{0} more of spacers", measure.Sold(10)), moved(spacerWay.X, spacerWay.Y)},
		{words.Of("Stem {0} longer", measure.Sold(10)), stem},
		{words.Of("Grips {0} higher", measure.Millimetres(20)), moved(0, 20)},
		{words.Of("Reach {0} longer, all else kept", measure.Millimetres(20)), moved(20, 0)},
		{words.Of("Bar {0} wider", measure.Millimetres(20)), as(wide, stanceOf(v))},
	}
	t = calculators.Table{Name: "changes", Caption: words.Of("What a change does. The differences are surer than " +
		"the angle itself, because the same rider stands on both sides of each"),
		Columns: []calculators.Column{
			{Name: "change", Label: words.Of("Change")},
			{Name: "elbow", Label: words.Of("Elbows bend"), Unit: "deg"},
			{Name: "room-back", Label: words.Of("Room back"), Unit: "mm"},
			{Name: "room-forward", Label: words.Of("Room forward"), Unit: "mm"},
		}}
	for _, row := range rows {
		if row.known {
			t.Rows = append(t.Rows, []words.Sayer{row.what, measure.Difference{Amount: measure.Degrees(row.elbow)},
				measure.Difference{Amount: measure.Millimetres(row.back)},
				measure.Difference{Amount: measure.Millimetres(row.forward)}})
		}
	}
	return t, trunk, stem
}

// moveTable compares the grips where they are with where the reader would move
// them.
func moveTable(s stand, after *stood) calculators.Table {
	t := calculators.Table{Name: "move", Caption: words.Of("Before and after the move of the grips"),
		Columns: []calculators.Column{
			{Name: "what", Label: words.Of("Standing ready")},
			{Name: "before", Label: words.Of("Before")}, {Name: "after", Label: words.Of("After")},
		}}
	before, err := s.rider.Balance(s.grip)
	if err != nil {
		return t
	}
	said := func(r *posture.Balanced) words.Sayer {
		if !r.Reaches() {
			return words.Of("straight {0} before the grips", measure.Millimetres(-r.Slack))
		}
		return measure.Degrees(r.ElbowBend)
	}
	t.Rows = append(t.Rows,
		[]words.Sayer{words.Of("Elbow bend"), said(&before), said(&after.Balanced)},
		[]words.Sayer{words.Of("Arms straight after"), measure.Millimetres(before.Slack),
			measure.Millimetres(after.Slack)})
	return t
}

// Package caution holds the safety texts that travel with results and pages. A
// guide may add cautions of its own; it can neither reword nor drop these.
package caution

import "plumbline/calculators/words"

// Caution is one safety text: how much hangs on it, a short heading and what to do, in
// English.
type Caution struct {
	Key   string
	Grade Grade
	Title words.English
	Text  words.English
}

// Grade tells how much hangs on a caution. It travels with the words: on the page each
// grade has a look of its own, and in JSON, in tables and on paper its name stands there.
type Grade string

// The grades.
const (
	Stop  Grade = "stop"  // danger to life, or of lasting harm
	Check Grade = "check" // to be checked before the ride
	Know  Grade = "know"  // worth knowing before the act
)

// Grades returns the grades, the gravest first.
func Grades() []Grade { return []Grade{Stop, Check, Know} }

// Label is the grade's name as it stands before a caution, English.
func (g Grade) Label() words.English {
	switch g {
	case Stop:
		return "Stop"
	case Check:
		return "Check"
	}
	return "Know"
}

// The cautions, by what they guard.
var (
	PostInsertion = &Caution{"post-insertion", Stop, "The post",
		"Keep the post’s minimum-insertion mark hidden inside the frame, and meet the frame maker’s own minimum " +
			"too: the deeper of the two counts."}
	Torque = &Caution{"torque", Check, "Bolts",
		"Tighten every bolt you touched to the value its maker prints on the part or in the manual, with a torque " +
			"wrench, and check it again after the first ride. Carbon parts need the maker’s assembly paste and " +
			"limits."}
	FirstRide = &Caution{"first-ride", Check, "First ride",
		"After any change ride slowly on safe ground first, seated and standing, brake hard once at walking " +
			"pace, then check the bolts again."}
	Pain = &Caution{"pain", Stop, "Pain",
		"These figures are a starting point, not treatment. If a joint hurts, or anything tingles or goes numb " +
			"and it comes back or outlasts the ride, stop and see a clinician."}
	Growing = &Caution{"growing", Know, "Still growing, or under 1.45 m",
		"Use measured values only, no estimates, and measure again every three months."}
	Clinician = &Caution{"clinician", Stop, "See a professional first",
		"Leg-length differences, wedges, children, pregnancy, recent surgery, prostheses and adaptive bikes need " +
			"a licensed professional before this guide."}
	Numbness = &Caution{"numbness", Stop, "Numbness",
		"Stop riding and see a clinician if numbness between the legs or in the hands comes back or outlasts the " +
			"ride, or if there is blood in your urine. With any bladder or bowel trouble do so at once."}
	Emergency = &Caution{"emergency", Stop, "Stop and call the emergency number",
		"Chest pain, breathlessness, a swollen painful calf, back pain with leg weakness, a numb saddle area, " +
			"bladder or bowel trouble, or a blow to the head: stop, and call the emergency number."}
	ForkAndWheels = &Caution{"fork-and-wheels", Stop, "Fork, headset and wheels",
		"Fit only the fork length, wheel size, tyre and headset that the makers of frame and fork both allow. " +
			"Leave room for mud when the suspension is pressed to its end. No answer from a maker means no."}
	AirSpring = &Caution{"air-spring", Stop, "Air springs",
		"Use a shock pump, stay inside the pressures that the maker prints, and let all air out before you open " +
			"anything. A spring under pressure can throw parts."}
	SteadyBike = &Caution{"steady-bike", Know, "Hold the bike steady",
		"Sit on a standing bike only beside a wall with a helper who holds it. Put blocks and scale on firm, " +
			"level ground, and never raise an end higher than you can step down from."}
)

// All returns every caution, for the pages. The engine never calls it.
func All() []*Caution {
	return []*Caution{PostInsertion, Torque, FirstRide, Pain, Growing, Clinician, Numbness, Emergency,
		ForkAndWheels, AirSpring, SteadyBike,
		SteererAndStem, HoseCheck, CarbonParts, BrakeCheck, NoWayBack, ClipRelease, PedalThread}
}

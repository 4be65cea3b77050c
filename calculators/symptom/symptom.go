// Package symptom is the table behind "Find a symptom": what a rider feels, the
// likely causes in the order in which to try them, what speaks for each, and the
// smallest change that would tell. Signs that are not for tools come first and
// stand apart. Nothing here diagnoses; a cause is a guess about the bike.
package symptom

import (
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// Symptom is one thing that a rider notices.
type Symptom struct {
	Key   string        // stable: in addresses
	Label words.English // English, as a rider would say it
	Place Place
	Flags []words.English // signs that send this rider to a clinician and not to the tools
	Causes
}

// Causes are likely ones, the one to try first in front.
type Causes []Cause

// Cause is a guess about the bike or the riding.
type Cause struct {
	Why      words.English // English
	Evidence Evidence
	Sources  []*literature.Source

	// First is the smallest first change. It names no number: Of and More say which
	// setting moves which way, and the setup sheet says by how much.
	First words.English
	Of    *measure.Quantity // nil where nothing is set
	More  bool              // towards the greater value

	Chapter string // where the guide explains it, without .md
}

// Evidence is what speaks for a cause.
type Evidence words.English

// The kinds of evidence, strongest first. None of them is proof for one rider.
const (
	Linked   Evidence = "A study found the two together; that does not show that one brings the other"
	Measured Evidence = "Measured in a laboratory on the load or the angle, not on the complaint"
	Geometry Evidence = "Follows from the geometry; nobody has tested it rider by rider"
	Clinical Evidence = "Clinical habit, untested"
	Trade    Evidence = "Common practice, untested"
)

// Place is where on rider and bike a symptom is felt.
type Place string

// The places, from the head down and then the bike.
const (
	Neck      Place = "neck"
	Arms      Place = "arms"
	Hands     Place = "hands"
	LowBack   Place = "low-back"
	Hip       Place = "hip"
	Seat      Place = "seat"
	Knee      Place = "knee"
	Calf      Place = "calf"
	Forefoot  Place = "forefoot"
	FrontHub  Place = "front-wheel"
	RearHub   Place = "rear-wheel"
	CentreOfM Place = "weight"
)

// Change says the first change in the reader's units: "Raise the saddle, by 5 mm
// at most."
func (c *Cause) Change() words.Text {
	set := sheet.SettingOf(c.Of)
	if c.Of == nil || set == nil || set.Step == 0 {
		return words.Of(c.First)
	}
	return words.Of("{0}, by {1} at most.", words.Of(c.First), measure.Amount{Value: set.Step, Unit: c.Of.Unit})
}

// Clinician are the signs that call for one, whatever the symptom. Emergencies go
// before them: caution.Emergency.
var Clinician = []words.English{
	"numbness or tingling that comes back, or outlasts the ride",
	"weakness in a hand, a leg or a foot",
	"a joint that swells, locks or gives way",
	"pain that comes at night or at rest, or after a fall or any injury",
	"pain that has not eased after two to three weeks of rest and easy riding",
	"fever, blood in the urine, or a sore that is infected",
}

// All returns the symptoms in the order of the list: the body from knee to hand,
// then the bike.
func All() []*Symptom { return all }

// Named returns the symptom with that key, nil for none.
func Named(key string) *Symptom {
	for _, s := range all {
		if s.Key == key {
			return s
		}
	}
	return nil
}

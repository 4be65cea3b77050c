package request

import (
	"slices"

	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Question is something that no tape finds. Every question may be left out; the
// answer stays on the client's device until the client sends it.
type Question struct {
	Key     string
	Text    words.English
	Help    words.English    // why it is asked, or what to do
	Choices []measure.Choice // none: a few words of the client's own
	Health  bool             // asked only where the fitter asks about health
}

var noYes = []measure.Choice{{Key: "no", Label: "No"}, {Key: "yes", Label: "Yes"}}

// Questions are all that is ever asked, in order. General guidance, from memory;
// what a yes leads to stands in the guide's safety texts.
var Questions = []Question{
	{Key: "ask-riding", Text: "What do you ride, how often, and what should get better?",
		Help: "For example: two rides a week of two hours, steep climbs; hands go to sleep on the way down."},
	{Key: "ask-signs", Health: true, Choices: noYes,
		Text: "Is there numbness or tingling that comes back, a joint that swells, locks or gives way, pain at " +
			"night or at rest, or blood in the urine?",
		Help: "If yes, please see a clinician before you come. A fitting can wait."},
	{Key: "ask-ache", Health: true, Text: "Does anything ache when you ride? Where, on which side, since when?",
		Help: "A few words are enough. The fitter does not diagnose."},
	{Key: "ask-care", Health: true, Choices: noYes,
		Text: "Are you pregnant, still growing, recently operated on or injured, or do you ride with a prosthesis " +
			"or an adapted bike?",
		Help: "If yes, a licensed professional should be asked first. You need not say which."},
}

// longestAnswer is how much of an answer is kept, in bytes.
const longestAnswer = 500

// Answered is a question with its answer in a record, made plain.
type Answered struct {
	Question *Question
	Text     string // a choice in English
	chosen   words.English
}

// Said is the answer as r reads it: a choice in the reader's language, all else as it was
// written.
func (a Answered) Said(r *words.Reader) string {
	if a.chosen != "" {
		return a.chosen.Say(r)
	}
	return a.Text
}

// Answers returns the questions that a record answers, in their order.
func Answers(r *record.Record) []Answered {
	var list []Answered
	for i := range Questions {
		q := &Questions[i]
		e := r.At(q.Key)
		if e == nil {
			continue
		}
		text := record.Plain(e.Text, longestAnswer, true)
		a := Answered{q, text, ""}
		for _, c := range q.Choices {
			if c.Key == text {
				a.Text, a.chosen = string(c.Label), c.Label
			}
		}
		if text != "" {
			list = append(list, a)
		}
	}
	return list
}

// Before returns what a fitter should know before the appointment: the questions about
// health that are answered with yes or in words.
func Before(r *record.Record) []Answered {
	return slices.DeleteFunc(Answers(r), func(a Answered) bool {
		return !a.Question.Health || a.Question.Choices != nil && r.At(a.Question.Key).Text == noYes[0].Key
	})
}

// IsQuestion tells whether a record's key is one of the questions.
func IsQuestion(key string) bool {
	for i := range Questions {
		if Questions[i].Key == key {
			return true
		}
	}
	return false
}

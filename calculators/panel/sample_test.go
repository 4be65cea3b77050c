package panel_test

import (
	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/drawing"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

var (
	length = &measure.Quantity{Key: "length", Label: "Length <of it>", Unit: measure.Mm, Low: 500, High: 1000,
		Least: 250, Most: 1500, Repeat: 5, How: measure.Instruction{Text: "Hold a tape & read."}}
	tilt = &measure.Quantity{Key: "tilt", Label: "Tilt", Unit: measure.Deg, Low: 0, High: 10, Least: -20,
		Most: 20, How: measure.Instruction{Text: "Lay a level on it."}}
	mass = &measure.Quantity{Key: "mass", Label: "Mass", Unit: measure.Kg, Low: 40, High: 120, Least: 20,
		Most: 200, Repeat: 1, How: measure.Instruction{Text: "Stand on a scale."}}
	kind = &measure.Quantity{Key: "kind", Label: "Kind", Unit: measure.One,
		How: measure.Instruction{Text: "Look."}, Choices: []measure.Choice{{Key: "a", Label: "First"}, {Key: "b",
			Label: "Second"}}}
	colour = &measure.Quantity{Key: "colour", Label: "Colour", Unit: measure.One,
		How: measure.Instruction{Text: "Look."}, Choices: []measure.Choice{{Key: "r", Label: "Red"}, {Key: "g",
			Label: "Green"}, {Key: "b", Label: "Blue"}, {Key: "w", Label: "White"}}}
	rows = &measure.Quantity{Key: "rows", Label: "Rows", Unit: measure.One,
		How: measure.Instruction{
			Text: "One a line.",
		}, Rows: 9, Table: measure.Grid,
		Columns: []*measure.Column{{Quantity: length}, {Quantity: tilt, Optional: true}}}
	height = &measure.Quantity{Key: "height", Label: "Height", Unit: measure.Mm, Low: 500, High: 1000, Least: 100,
		Most: 3000, How: measure.Instruction{Text: "Measure."}}
)

var (
	twice = &calculators.Output{Name: "twice", Label: "Twice that", Unit: measure.Mm,
		Between: "one end to the other", Feeds: height}
	slope  = &calculators.Output{Name: "slope", Label: "Slope", Unit: measure.Deg, Between: "from level"}
	none   = &calculators.Output{Name: "none", Label: "Nothing", Unit: measure.Mm}
	folded = &calculators.Output{Name: "folded", Label: "Folded", Unit: measure.Mm, Between: "somewhere",
		Folded: true, Feeds: height}
)

// sample has every shape of input, reading, table and note.
var sample = &calculators.Calculator{
	Name: "sample", Section: calculators.Saddle, Title: "Sample",
	Question: "How does it all look?", Scenario: "A rider who exists nowhere.",
	Inputs: []calculators.Input{
		{Quantity: length, Example: "830"},
		{Quantity: kind, Example: "a"},
		{Quantity: colour, Optional: true},
		{Quantity: tilt, Assume: calculators.Fixed(3, 1, "usual")},
		{Quantity: mass, Optional: true},
		{Quantity: rows, Optional: true, Example: "name;length;tilt\nM;440;2\nL;460;"},
	},
	Answers:  []*calculators.Output{twice, slope, none, folded},
	Sources:  []*literature.Source{literature.Peveler2005, literature.CommonPractice},
	Cautions: []*caution.Caution{caution.Torque},
	Solve: func(v calculators.Values, out calculators.Numbers) *calculators.Problem {
		if v.Of(tilt) > 15 {
			return &calculators.Problem{Text: words.Of("These two cannot be.")}
		}
		out.Set(twice, 2*v.Of(length))
		out.Set(slope, v.Of(tilt))
		out.Set(folded, v.Of(length)+v.Of(tilt))
		return nil
	},
	Explain: func(v calculators.Values, r *calculators.Result) {
		x := r.At(twice)
		x.Low, x.High, x.Meaning = x.Value-10, x.Value+10, words.Of("Twice as long as {0}.",
			length.Amount(v.Of(length)))
		r.At(none).Meaning = words.Of("There is none.")
		r.Tables = []calculators.Table{
			{Name: "ways", Caption: words.Of("Ways"), Starred: 2, Columns: []calculators.Column{{Name: "way",
				Label: words.Of("Way")}, {Name: "length", Label: words.Of("Length"), Unit: "mm"}},
				Rows: [][]words.Sayer{{words.Of("One"), measure.Millimetres(800)}, {words.Of("Other"),
					measure.Millimetres(900)}}},
			{Name: "more", Caption: words.Of("More"), Folded: true, Columns: []calculators.Column{{Name: "name",
				Label: words.Of("Name")}}, Rows: [][]words.Sayer{{words.Name("<i>")}}},
		}
		r.Note(calculators.CautionNote, "Take care of this one.")
		r.Note(calculators.PlainNote, "Good to know.")
		r.Figure = &drawing.Figure{Title: words.Of("A line"), Description: words.Of("A line of {0}.",
			length.Amount(v.Of(length)))}
		r.Figure.Add(drawing.Line{Points: []drawing.Point{{X: 0, Y: 0}, {X: v.Of(length), Y: 100}}})
	},
}

var samples = []*calculators.Calculator{sample}

package desk

import (
	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// open reads a record that somebody kept, in whichever form.
func open(a Ask) Reply {
	r, problems := exchange.Open(a.Text)
	if r == nil {
		return Reply{Problems: problems}
	}
	return Reply{Text: r.Fragment(), Problems: problems,
		Spoken: words.Of("{0} values were read.", measure.Amount{Value: float64(len(r.Entries)),
			Unit: measure.One}).Say(a.reader())}
}

// save writes the record as a file.
func save(a Ask) Reply {
	r, problems := record.Decode(a.Record)
	if a.Name == CSV {
		return Reply{Text: exchange.CSV(r), Problems: problems}
	}
	return Reply{Text: exchange.JSON(r), Problems: problems}
}

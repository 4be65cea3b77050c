package desk

import (
	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// open reads what somebody kept, in whichever form. Text is it as a page keeps it.
func open(a Ask) Reply {
	b, problems := exchange.OpenBook(a.Text)
	if b == nil {
		return Reply{Problems: problems}
	}
	n := 0
	for _, rider := range b.Riders {
		n += len(rider.Entries)
		for _, bike := range rider.Bikes {
			n += len(bike.Entries)
		}
	}
	return Reply{Text: exchange.Device(b), Problems: problems,
		Spoken: words.Count(n, "{0} value was read.", "{0} values were read.").Say(a.reader())}
}

// save writes the record as a file, and all riders and bikes where Text has them as a
// page keeps them.
func save(a Ask) Reply {
	r, problems := record.Decode(a.Record)
	switch {
	case a.Name == CSV:
		return Reply{Text: exchange.CSV(r), Problems: problems}
	case a.Text != "":
		return Reply{Text: exchange.BookJSON(exchange.FromDevice(a.Text))}
	}
	return Reply{Text: exchange.JSON(r), Problems: problems}
}

package measure

// allow widens or narrows what is possible where half the low end and one and a
// half times the high end would make no sense, as around zero.
func (q *Quantity) allow(least, most float64) *Quantity {
	q.Least, q.Most = least, most
	return q
}

// angle makes a quantity in degrees.
func angle(key, label string, low, high, repeat, least, most float64, how string) *Quantity {
	return &Quantity{Key: key, Label: label, Unit: Deg, Low: low, High: high, Least: least, Most: most, Repeat: repeat, How: how}
}

// mass makes a quantity in kilograms.
func mass(key, label string, low, high, repeat, least, most float64, how string) *Quantity {
	return &Quantity{Key: key, Label: label, Unit: Kg, Low: low, High: high, Least: least, Most: most, Repeat: repeat, How: how}
}

// percent makes a quantity in percent.
func percent(key, label string, low, high, repeat, least, most float64, how string) *Quantity {
	return &Quantity{Key: key, Label: label, Unit: Percent, Low: low, High: high, Least: least, Most: most, Repeat: repeat, How: how}
}

// choice makes a quantity that is picked: its value is an index into choices.
func choice(key, label, how string, choices ...Choice) *Quantity {
	last := float64(len(choices) - 1)
	return &Quantity{Key: key, Label: label, Unit: One, High: last, Most: last, Choices: choices, How: how}
}

// table makes a list quantity with at most the given rows.
func table(key, label string, rows int, how string, columns ...*Column) *Quantity {
	return &Quantity{Key: key, Label: label, Unit: One, Low: 1, High: float64(rows), Least: 1, Most: float64(rows), Rows: rows, Columns: columns, How: how}
}

// after makes the same quantity as it will be once the bike has been changed, or
// as it is on the next bike. Ranges and repeat error are those of q.
func after(q *Quantity, label, how string) *Quantity {
	n := *q
	n.Key, n.Label, n.How = "new-"+q.Key, label, how
	return &n
}

package calculators

import "plumbline/calculators/words"

// Answer computes the readings with their ± as Run does, and nothing that people
// read around them: no range, meaning, table, note or figure. It is for whoever
// asks every calculator about thousands of records; what it answers is shown with
// the calculator's cautions.
func (c *Calculator) Answer(typed []Pair, in *words.Reader) ([]Reading, []Problem) {
	v, _, problems := c.read(typed, in)
	if problems != nil {
		return nil, problems
	}
	v.fill()
	y, p := c.carry(v, &Result{})
	if p != nil {
		return nil, []Problem{*p}
	}
	readings := make([]Reading, len(c.Readings))
	for j := range c.Readings {
		readings[j] = y.reading(j, &c.Readings[j])
	}
	return readings, nil
}

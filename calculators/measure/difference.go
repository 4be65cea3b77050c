package measure

import (
	"strings"

	"plumbline/calculators/words"
)

// Difference is an amount by which something changes: said with a plus or a minus
// in front, so that nobody takes it for the thing itself. What rounds to zero has
// no sign.
type Difference struct{ Amount }

// Say writes the difference with its unit.
func (d Difference) Say(r *words.Reader) string { return WithUnit(d.Number(r), d.Unit.ReadIn(r)) }

// Number writes the difference without its unit.
func (d Difference) Number(r *words.Reader) string {
	s := d.Amount.Number(r)
	if d.Value > 0 && strings.ContainsAny(s, "123456789") {
		return "+" + s
	}
	return s
}

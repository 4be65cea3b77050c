package measure

// Others are the units that a reader may change u for beside a field, the next one
// first; none where it has no other.
func (u *Unit) Others() []*Unit {
	for _, round := range [][]*Unit{{Mm, Cm, Inch}, {Kg, Pound}} {
		for i, x := range round {
			if x == u {
				return append(append([]*Unit{}, round[i+1:]...), round[:i]...)
			}
		}
	}
	return nil
}

// Keyboard is the kind of keyboard that a phone should show for q in u, as HTML's
// inputmode names it: a pad of digits has neither the stroke of a fraction nor a minus.
func (q *Quantity) Keyboard(u *Unit) string {
	if u == Inch || q.Least < 0 {
		return "text"
	}
	return "decimal"
}

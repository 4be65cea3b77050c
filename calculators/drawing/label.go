package drawing

import "plumbline/calculators/words"

// Label is a word or number beside a place. It is put where it is free, as near
// as can be, with a leader line where it has to stand off.
type Label struct {
	Role Role
	At   Point
	Text words.Text
	// Side is where the label would best stand, seen from At; the zero Point
	// leaves the choice open.
	Side Point
	// Leader asks for a leader line even where there is room beside At.
	Leader bool
	// Fixed puts the label beside At on its Side, or centred on At where Side is zero,
	// wherever another label does not stand there already.
	Fixed bool
	// Optional leaves the label out where no place is free: one number of many along an
	// axis, which the others tell. All else is always written.
	Optional bool
	Priority int
}

func (m Label) draw(s *sheet) {
	if s.bare {
		return
	}
	if s.em == 0 {
		s.shape(m.Role, NoPen, Open, kindOpen, 0, 0, m.At)
		return
	}
	if !m.Text.None() && drawable(m.At, m.Side) {
		s.wantAt(m)
	}
}

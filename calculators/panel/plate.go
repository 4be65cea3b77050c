package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Plate writes the named illustration of list at the size of whoever has this
// record, numbers, to stand in place of what Figure wrote; "" if there is no such figure.
// Every id in it begins with id; r reads it; width is that of the place, in pixels. A figure that
// moves is drawn at a place of its slider, in base units, or with its states side by side
// where at is NaN. It takes any text.
func Plate(list []*calculators.Illustration, name, id, numbers string, r *words.Reader, width,
	at float64) string {
	for _, s := range list {
		if s.Name == name {
			own, _ := record.Decode(numbers)
			if s.Motion != nil {
				return moved(s, own.Pairs(), at, safeID(id), r, width)
			}
			return Figure(s.Figure(own.Pairs(), nil), safeID(id), r, width)
		}
	}
	return ""
}

// safeID keeps an id of letters, digits and hyphens.
func safeID(id string) string {
	for _, c := range []byte(id) {
		if !(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-') {
			return "figure"
		}
	}
	return id
}

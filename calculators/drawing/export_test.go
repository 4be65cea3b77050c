package drawing

import (
	"strings"

	"plumbline/calculators/words"
)

// Struck returns the labels of a figure, drawn for a width, that stand on a strong line.
// Those with a fixed place are where their figure wants them.
func Struck(f *Figure, r *words.Reader, width float64) (list []string) {
	p := f.arrange(r, width)
	for i := range p.cells {
		s := p.cells[i].sheet
		s.segments, s.rings = nil, nil
		s.gather()
		for i := range s.wants {
			if w := &s.wants[i]; w.placed && !w.fixed && s.struck(w) {
				list = append(list, strings.Join(w.lines, " "))
			}
		}
	}
	return list
}

func (s *sheet) struck(w *want) bool {
	for _, l := range s.segments {
		if l.weight >= strong && crosses(w, &w.chosen, l.p, l.q) {
			return true
		}
	}
	for _, r := range s.rings {
		if r.weight >= strong && touches(w, &w.chosen, r) {
			return true
		}
	}
	return false
}

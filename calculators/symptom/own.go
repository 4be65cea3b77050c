package symptom

import (
	"slices"
	"strings"

	"plumbline/calculators/measure"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// Own is what a guide says of a symptom in words of its own, and what it has a rider try
// first. It cannot touch the signs that are not for tools.
type Own struct {
	Key   string        // of the symptom
	Label words.English // "" for the built-in words
	Move  Move          // no Do for the built-in first move
}

// Move is a first change of a guide's own.
type Move struct {
	Do      words.English     // without a stop where something is set
	Why     words.English     // without a stop; "" where the built-in list has the same move
	Of      *measure.Quantity // nil where nothing is set; the step is the sheet's
	More    bool              // towards the greater value
	Chapter string            // where the guide explains it, without .md
}

// House is the evidence of a guide's own move.
const House Evidence = "Advice from those who publish this guide, untested"

// With returns the symptoms with a guide's own words and moves laid over them.
func With(own []Own) []*Symptom {
	list := slices.Clone(all)
	for _, o := range own {
		i := slices.IndexFunc(list, func(s *Symptom) bool { return s.Key == o.Key })
		if i < 0 {
			continue
		}
		s := *list[i]
		if o.Label != "" {
			s.Label = o.Label
		}
		if o.Move.Do != "" {
			s.Causes = s.Causes.after(o.Move)
		}
		list[i] = &s
	}
	return list
}

// Same returns the built-in cause that asks for the same move, nil for none.
func (s *Symptom) Same(m Move) *Cause {
	for i := range s.Causes {
		if c := &s.Causes[i]; m.Of != nil && c.Of == m.Of && c.More == m.More {
			return c
		}
	}
	return nil
}

// after puts a move before the causes. A cause that asks for the same move gives way, and
// lends what the move leaves out.
func (list Causes) after(m Move) Causes {
	first := Cause{Why: m.Why, Evidence: House, First: m.Do, Of: m.Of, More: m.More, Chapter: m.Chapter}
	same := (&Symptom{Causes: list}).Same(m)
	if same != nil {
		if first.Why == "" {
			first.Why, first.Evidence, first.Sources = same.Why, same.Evidence, same.Sources
		}
		if first.Chapter == "" {
			first.Chapter = same.Chapter
		}
	}
	out := Causes{first}
	for i := range list {
		if &list[i] != same {
			out = append(out, list[i])
		}
	}
	return out
}

// Movable are the quantities that a first move may change: those of the setup sheet that
// have a step.
func Movable() (keys []string) {
	for _, q := range measure.All() {
		if set := sheet.SettingOf(q); set != nil && set.Step != 0 {
			keys = append(keys, q.Key)
		}
	}
	return keys
}

// WriteOwn is a guide's own words as its page hands them to the engine: a line for each
// symptom, with tabs between its parts.
func WriteOwn(own []Own) string {
	var lines []string
	for _, o := range own {
		key, way := "", "less"
		if o.Move.Of != nil {
			key = o.Move.Of.Key
		}
		if o.Move.More {
			way = "more"
		}
		parts := []string{o.Key, string(o.Label), string(o.Move.Do), string(o.Move.Why), key, way, o.Move.Chapter}
		for i, p := range parts {
			parts[i] = strings.Join(strings.Fields(p), " ") // a tab or a line's end would end the part
		}
		lines = append(lines, strings.Join(parts, "\t"))
	}
	return strings.Join(lines, "\n")
}

// ReadOwn reads what WriteOwn wrote; what has another form is passed over.
func ReadOwn(text string) (own []Own) {
	for line := range strings.SplitSeq(text, "\n") {
		p := strings.Split(line, "\t")
		if len(p) != 7 {
			continue
		}
		own = append(own, Own{p[0], words.English(p[1]), Move{words.English(p[2]), words.English(p[3]),
			measure.Named(p[4]), p[5] == "more", p[6]}})
	}
	return own
}

package site

import (
	"slices"
	"strings"

	"plumbline/calculators/measure"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// A shop says symptoms in words of its own and names the first move that it would try, in
// symptoms.yaml:
//
//	knee-front:
//	  label: It hurts below the kneecap
//	  first:
//	    do: Raise the saddle
//	    why: Most people who come to us sit too low
//	    more: saddle-height   # or less; left out where nothing is set
//	    chapter: saddle/height
//
// The signs that send a rider to a clinician, and the cautions, cannot be changed.

// symptomsFile lays a shop's words over the built-in symptoms.
const symptomsFile = "symptoms.yaml"

// fixedOfSymptoms are keys that somebody may try in order to change what stays.
var fixedOfSymptoms = []string{"flags", "signs", "stop", "clinician", "caution", "cautions"}

// readSymptoms reads symptoms.yaml, and then what another language says of it.
func (g *Guide) readSymptoms() (bad []Mistake) {
	for _, layer := range []map[string]source{g.layers.local, g.layers.localSaid} {
		from, ok := layer[symptomsFile]
		if !ok {
			continue
		}
		y := yamlOf(from.file, 0)
		for _, e := range y.Root(from.text) {
			g.readSymptom(y, e)
		}
		bad = append(bad, y.bad()...)
	}
	return bad
}

func (g *Guide) readSymptom(y *yamlReader, e entry) {
	s := symptom.Named(e.Key)
	switch {
	case slices.Contains(fixedOfSymptoms, e.Key):
		y.fixed(e)
		return
	case s == nil:
		var keys []string
		for _, s := range symptom.All() {
			keys = append(keys, s.Key)
		}
		y.Mistake(
			e.At,
			told.Of("there is no symptom “{0}”", e.Key),
			meant(e.Key, keys, told.Of("the symptoms are {0}", listed(keys))),
		)
		return
	}
	i := slices.IndexFunc(g.ownSymptoms, func(o symptom.Own) bool { return o.Key == e.Key })
	if i < 0 {
		i = len(g.ownSymptoms)
		g.ownSymptoms = append(g.ownSymptoms, symptom.Own{Key: e.Key})
	}
	own := &g.ownSymptoms[i]
	for _, e := range y.Mapping(e.Value, told.Of("a symptom")) {
		switch {
		case slices.Contains(fixedOfSymptoms, e.Key):
			y.fixed(e)
		case !y.Known(e, "label", "first"):
		case e.Key == "label":
			own.Label = sayable(y.text(e))
		default:
			g.readMove(y, e, s, &own.Move)
		}
	}
}

// fixed says that a shop tried to change what keeps its readers safe.
func (y *yamlReader) fixed(e entry) {
	y.Mistake(e.At, told.Of("the signs to stop at, and the cautions, cannot be changed"),
		told.Of("take “{0}” out; a caution of your own belongs into cautions.yaml and a chapter of yours", e.Key))
}

// readMove reads a first move of a shop's own.
func (g *Guide) readMove(y *yamlReader, e entry, s *symptom.Symptom, m *symptom.Move) {
	at := e.At
	for _, e := range y.Mapping(e.Value, told.Of("“{0}”", e.Key)) {
		switch {
		case !y.Known(e, "do", "why", "more", "less", "chapter"):
		case e.Key == "do":
			m.Do = sayable(y.text(e))
		case e.Key == "why":
			m.Why = sayable(y.text(e))
		case e.Key == "chapter":
			m.Chapter = strings.TrimSuffix(y.Raw(e), ".md")
			if g.byPath[m.Chapter+".md"] == nil {
				y.Mistake(
					e.Value.GetToken(),
					told.Of("there is no chapter “{0}”", m.Chapter),
					meant(m.Chapter, g.ways(),
						told.Of("write it as part/chapter, without .md")),
				)
			}
		default:
			key := y.Raw(e)
			if m.Of != nil {
				y.Mistake(
					e.At,
					told.Of("a first move changes one setting, one way"),
					told.Of("keep one of “more” and “less”"),
				)
			}
			if !slices.Contains(symptom.Movable(), key) {
				y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no setting that a move can change", key), meant(key,
					symptom.Movable(), told.Of("the settings are {0}", listed(symptom.Movable()))))
				continue
			}
			m.Of, m.More = measure.Named(key), e.Key == "more"
		}
	}
	if m.Do == "" {
		y.Mistake(at, told.Of("the first move of “{0}” does not say what to do", s.Key), told.Of("add “do:”"))
	} else if m.Of == nil {
		m.Do += "."
	}
	if m.Why == "" && s.Same(*m) == nil {
		y.Mistake(
			at,
			told.Of("the first move of “{0}” does not say why", s.Key),
			told.Of("add “why:”, which readers see above the move"),
		)
	}
}

// sayable is a text as symptoms have it: the stop at its end is written with it.
func sayable(text string) words.English { return words.English(strings.TrimRight(text, ".")) }

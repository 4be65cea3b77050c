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
		y := &yamlReader{file: from.file}
		for _, e := range y.root(from.text) {
			g.readSymptom(y, e)
		}
		bad = append(bad, y.bad...)
	}
	return bad
}

func (g *Guide) readSymptom(y *yamlReader, e entry) {
	s := symptom.Named(e.key)
	switch {
	case slices.Contains(fixedOfSymptoms, e.key):
		y.fixed(e)
		return
	case s == nil:
		var keys []string
		for _, s := range symptom.All() {
			keys = append(keys, s.Key)
		}
		y.mistake(
			e.at,
			told.Of("there is no symptom “{0}”", e.key),
			meant(e.key, keys, told.Of("the symptoms are {0}", listed(keys))),
		)
		return
	}
	i := slices.IndexFunc(g.ownSymptoms, func(o symptom.Own) bool { return o.Key == e.key })
	if i < 0 {
		i = len(g.ownSymptoms)
		g.ownSymptoms = append(g.ownSymptoms, symptom.Own{Key: e.key})
	}
	own := &g.ownSymptoms[i]
	for _, e := range y.mapping(e.value, told.Of("a symptom")) {
		switch {
		case slices.Contains(fixedOfSymptoms, e.key):
			y.fixed(e)
		case !y.known(e, "label", "first"):
		case e.key == "label":
			own.Label = sayable(y.text(e))
		default:
			g.readMove(y, e, s, &own.Move)
		}
	}
}

// fixed says that a shop tried to change what keeps its readers safe.
func (y *yamlReader) fixed(e entry) {
	y.mistake(e.at, told.Of("the signs to stop at, and the cautions, cannot be changed"),
		told.Of("take “{0}” out; a caution of your own belongs into cautions.yaml and a chapter of yours", e.key))
}

// readMove reads a first move of a shop's own.
func (g *Guide) readMove(y *yamlReader, e entry, s *symptom.Symptom, m *symptom.Move) {
	at := e.at
	for _, e := range y.mapping(e.value, told.Of("“{0}”", e.key)) {
		switch {
		case !y.known(e, "do", "why", "more", "less", "chapter"):
		case e.key == "do":
			m.Do = sayable(y.text(e))
		case e.key == "why":
			m.Why = sayable(y.text(e))
		case e.key == "chapter":
			m.Chapter = strings.TrimSuffix(y.raw(e), ".md")
			if g.byPath[m.Chapter+".md"] == nil {
				y.mistake(
					e.value.GetToken(),
					told.Of("there is no chapter “{0}”", m.Chapter),
					meant(m.Chapter, g.ways(),
						told.Of("write it as part/chapter, without .md")),
				)
			}
		default:
			key := y.raw(e)
			if m.Of != nil {
				y.mistake(
					e.at,
					told.Of("a first move changes one setting, one way"),
					told.Of("keep one of “more” and “less”"),
				)
			}
			if !slices.Contains(symptom.Movable(), key) {
				y.mistake(e.value.GetToken(), told.Of("“{0}” is no setting that a move can change", key), meant(key,
					symptom.Movable(), told.Of("the settings are {0}", listed(symptom.Movable()))))
				continue
			}
			m.Of, m.More = measure.Named(key), e.key == "more"
		}
	}
	if m.Do == "" {
		y.mistake(at, told.Of("the first move of “{0}” does not say what to do", s.Key), told.Of("add “do:”"))
	} else if m.Of == nil {
		m.Do += "."
	}
	if m.Why == "" && s.Same(*m) == nil {
		y.mistake(
			at,
			told.Of("the first move of “{0}” does not say why", s.Key),
			told.Of("add “why:”, which readers see above the move"),
		)
	}
}

// sayable is a text as symptoms have it: the stop at its end is written with it.
func sayable(text string) words.English { return words.English(strings.TrimRight(text, ".")) }

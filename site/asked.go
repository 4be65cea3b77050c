package site

import (
	"slices"

	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// asked is search.yaml of both layers, one after the other: what people type when
// they look for something, beside the words of the chapters.
type asked struct {
	same     [][]string          // words that mean the same, the guide's own first
	pages    map[string][]string // questions that lead to a page, by its path without .md
	symptoms map[string][]string // the same, by a symptom's key
	numbers  []numberAsked
}

// numberAsked is what is said when a number belongs into a calculator's field.
type numberAsked struct {
	calculator, input string
	said              []string
}

// readAsked reads search.yaml of both layers. A built-in line about a page that the shop
// leaves out is passed over; a shop's own line must name something that is there.
func (g *Guide) readAsked() (bad []Mistake) {
	g.asked = asked{same: [][]string{}, pages: map[string][]string{}, symptoms: map[string][]string{}}
	for _, layer := range []map[string]source{g.layers.baseSaid, g.layers.base, g.layers.localSaid, g.layers.local} {
		from, ok := layer[searchFile]
		if !ok {
			continue
		}
		y := yamlOf(from.file, 0)
		for _, e := range y.Root(from.text) {
			switch {
			case !y.Known(e, "same", "pages", "symptoms", "numbers"):
			case e.Key == "same":
				g.readSame(y, e)
			case e.Key == "pages":
				g.readPhrases(y, e, g.asked.pages, from.local, "there is no page “{0}”", g.ways())
			case e.Key == "symptoms":
				var keys []string
				for _, s := range symptom.All() {
					keys = append(keys, s.Key)
				}
				g.readPhrases(y, e, g.asked.symptoms, true, "there is no symptom “{0}”", keys)
			default:
				g.readNumbers(y, e)
			}
		}
		bad = append(bad, y.bad()...)
	}
	return bad
}

func (g *Guide) readSame(y *yamlReader, e entry) {
	for _, n := range y.Items(e) {
		group := texts(y.List(entry{Key: e.Key, At: n.GetToken(), Value: n}))
		if len(group) == 1 {
			y.Mistake(
				n.GetToken(),
				told.Of("“{0}” stands alone", group[0]),
				told.Of("name two words or more that mean the same"),
			)
		}
		g.asked.same = append(g.asked.same, group)
	}
}

// readPhrases reads lists of questions by what they lead to.
func (g *Guide) readPhrases(
	y *yamlReader,
	e entry,
	into map[string][]string,
	strict bool,
	missing words.English,
	known []string,
) {
	for _, e := range y.Mapping(e.Value, told.Of("“{0}”", e.Key)) {
		if strict && !slices.Contains(known, e.Key) {
			y.Mistake(e.At, told.Of(missing, e.Key), meant(e.Key, known, told.Of("they are {0}", listed(known))))
		}
		into[e.Key] = append(into[e.Key], texts(y.List(e))...)
	}
}

func (g *Guide) readNumbers(y *yamlReader, e entry) {
	for _, e := range y.Mapping(e.Value, told.Of("“numbers”")) {
		c := g.shelf.calculator(e.Key)
		if c == nil {
			y.Mistake(e.At, told.Of("there is no calculator “{0}”", e.Key), meant(e.Key, g.shelf.calculatorNames(),
				told.Of("plumbline calc lists them")))
			continue
		}
		for _, in := range y.Mapping(e.Value, told.Of("a calculator’s fields")) {
			if inputOf(c, in.Key) == nil {
				var keys []string
				for i := range c.Inputs {
					keys = append(keys, c.Inputs[i].Key)
				}
				y.Mistake(
					in.At,
					told.Of("“{0}” asks for no number “{1}”", e.Key, in.Key),
					meant(in.Key, keys, told.Of("it asks for {0}", listed(keys))),
				)
				continue
			}
			g.asked.numbers = append(g.asked.numbers, numberAsked{e.Key, in.Key, texts(y.List(in))})
		}
	}
}

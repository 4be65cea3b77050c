package site

import (
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// library is every source and caution that a page may name: those of the
// calculators, and those that only chapters use.
type library struct {
	sources  map[string]*literature.Source
	cautions map[string]*caution.Caution

	sourceKeys, cautionKeys []string // sorted
	ours                    map[string]bool
}

// accesses are the ways a source may have been read.
var accesses = []string{string(literature.Text), string(literature.Abstract), string(literature.Data),
	string(literature.SecondHand), string(literature.Memory), string(literature.Practice)}

// strengths are the kinds of work a source may be.
func strengths() (list []string) {
	for _, s := range literature.Strengths() {
		list = append(list, string(s))
	}
	return list
}

// library reads sources.yaml and cautions.yaml of both layers. A key that the
// calculators have already is a mistake: a guide adds cautions and sources, and never
// rewords or drops one.
func (l *layers) library() (*library, []Mistake) {
	b := &library{sources: map[string]*literature.Source{}, cautions: map[string]*caution.Caution{},
		ours: map[string]bool{}}
	for _, s := range literature.All() {
		b.sources[s.Key] = s
		b.ours["source "+s.Key] = true
	}
	for _, c := range caution.All() {
		b.cautions[c.Key] = c
		b.ours["caution "+c.Key] = true
	}
	var bad []Mistake
	for _, layer := range []map[string]source{l.base, l.local} {
		if s, ok := layer[sourcesFile]; ok {
			bad = append(bad, b.readSources(s)...)
		}
		if s, ok := layer[cautionsFile]; ok {
			bad = append(bad, b.readCautions(s)...)
		}
	}
	for _, said := range []map[string]source{l.baseSaid, l.localSaid} {
		if s, ok := said[sourcesFile]; ok {
			bad = append(bad, b.translateSources(s)...)
		}
		if s, ok := said[cautionsFile]; ok {
			bad = append(bad, b.translateCautions(s)...)
		}
	}
	for k := range b.sources {
		b.sourceKeys = append(b.sourceKeys, k)
	}
	for k := range b.cautions {
		b.cautionKeys = append(b.cautionKeys, k)
	}
	slices.Sort(b.sourceKeys)
	slices.Sort(b.cautionKeys)
	return b, bad
}

// translateSources reads what is taken from each source in another language.
func (b *library) translateSources(from source) []Mistake {
	y := yamlOf(from.file, 0)
	for _, e := range y.Root(from.text) {
		s := b.sources[e.Key]
		if s == nil {
			y.Mistake(
				e.At,
				told.Of("there is no source “{0}”", e.Key),
				told.Of("take it out, or write its key as sources.yaml has it"),
			)
			continue
		}
		own := *s
		for _, e := range y.Mapping(e.Value, told.Of("a source")) {
			// Names are the same in every language, but not “authors from memory”.
			switch {
			case !y.Known(e, "for", "authors", "where"):
			case e.Key == "authors":
				own.Authors = y.text(e)
			case e.Key == "where":
				own.Where = y.text(e)
			default:
				own.For = y.text(e)
			}
		}
		b.sources[e.Key] = &own
	}
	return y.bad()
}

// translateCautions reads the guide's own cautions in another language.
func (b *library) translateCautions(from source) []Mistake {
	y := yamlOf(from.file, 0)
	for _, e := range y.Root(from.text) {
		c := b.cautions[e.Key]
		if c == nil || b.ours["caution "+e.Key] {
			y.Mistake(e.At, told.Of("the guide has no caution “{0}” of its own", e.Key),
				told.Of("take it out, or write its key as cautions.yaml has it"))
			continue
		}
		own := *c
		for _, e := range y.Mapping(e.Value, told.Of("a caution")) {
			switch {
			case !y.Known(e, "title", "text"):
			case e.Key == "title":
				own.Title = words.English(y.text(e))
			default:
				own.Text = words.English(y.text(e))
			}
		}
		b.cautions[e.Key] = &own
	}
	return y.bad()
}

func (b *library) readSources(from source) []Mistake {
	y := yamlOf(from.file, 0)
	for _, e := range y.Root(from.text) {
		if b.ours["source "+e.Key] {
			y.Mistake(e.At, told.Of("the calculators have a source “{0}” already", e.Key),
				told.Of("cite that one, or give yours another key"))
			continue
		}
		if !y.key(e, "“{0}” cannot be the key of a source") {
			continue
		}
		s := &literature.Source{Key: e.Key}
		for _, e := range y.Mapping(e.Value, told.Of("a source")) {
			if !y.Known(e, "authors", "year", "title", "where", "doi", "url", "opened", "strength", "for") {
				continue
			}
			v := y.Raw(e)
			switch e.Key {
			case "authors":
				s.Authors = typeset(v)
			case "year":
				n, err := strconv.Atoi(v)
				if err != nil || n < 1500 || n > 2200 {
					y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no year", v), told.Of("write four digits"))
				}
				s.Year = n
			case "title":
				s.Title = typeset(v)
			case "where":
				s.Where = typeset(v)
			case "doi":
				s.DOI = v
			case "url":
				if s.URL = v; !strings.HasPrefix(v, "https://") {
					y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no address that a page may link to", v),
						told.Of("begin it with https://"))
				}
			case "strength":
				if s.Strength = literature.Strength(v); !slices.Contains(strengths(), v) {
					y.Mistake(
						e.Value.GetToken(),
						told.Of("“{0}” is no kind of source", v),
						told.Of("write one of {0}", listed(strengths())),
					)
				}
			case "opened":
				if s.Opened = literature.Access(v); !slices.Contains(accesses, v) {
					y.Mistake(e.Value.GetToken(), told.Of("“{0}” does not tell how the source was read", v),
						told.Of("write one of {0}", listed(accesses)))
				}
			case "for":
				s.For = typeset(v)
			}
		}
		if s.Title == "" || s.Where == "" || s.Opened == "" {
			y.Mistake(e.At, told.Of("the source “{0}” lacks “title”, “where” or “opened”", e.Key),
				told.Of("say what it is called, where it was published and what of it was read"))
		}
		b.sources[e.Key] = s
	}
	return y.bad()
}

// readCautions reads a caution as its text alone, or as grade, title and text.
func (b *library) readCautions(from source) []Mistake {
	y := yamlOf(from.file, 0)
	for _, e := range y.Root(from.text) {
		if b.ours["caution "+e.Key] {
			y.Mistake(e.At, told.Of("the calculators have a caution “{0}” already", e.Key),
				told.Of("a guide may add cautions, never reword one: give yours another key"))
			continue
		}
		if !y.key(e, "“{0}” cannot be the key of a caution") {
			continue
		}
		c := &caution.Caution{Key: e.Key, Grade: caution.Know, Title: words.English(titled(e.Key))}
		if _, single := scalar(e.Value); single {
			c.Text = words.English(y.text(e))
		} else {
			for _, e := range y.Mapping(e.Value, told.Of("a caution")) {
				switch {
				case !y.Known(e, "grade", "title", "text"):
				case e.Key == "grade":
					if c.Grade = caution.Grade(y.Raw(e)); !slices.Contains(caution.Grades(), c.Grade) {
						y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no grade of a caution", string(c.Grade)),
							told.Of("write stop (danger to life or of lasting harm), check (before the ride) or know"))
					}
				case e.Key == "title":
					c.Title = words.English(y.text(e))
				default:
					c.Text = words.English(y.text(e))
				}
			}
		}
		if c.Text == "" {
			y.Mistake(e.At, told.Of("the caution “{0}” has no text", e.Key), told.Of("say what to do"))
		}
		b.cautions[e.Key] = c
	}
	return y.bad()
}

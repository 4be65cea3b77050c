package site

import (
	"slices"

	"golang.org/x/text/language"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// The words of guide.yaml in another language stand in a guide.yaml in that language's
// folder. It says the same things again and settles nothing.

// saidSettings are the keys that such a file may have.
var saidSettings = []string{"name", "tagline", "contact", "booking", "notice", "local", "licence", "parts", "request",
	"requests"}

// translate reads such a file.
func (s *settings) translate(from source) []Mistake {
	y := yamlOf(from.file, 0)
	for _, e := range y.Root(from.text) {
		if !y.Known(e, saidSettings...) {
			continue
		}
		switch e.Key {
		case "name":
			s.Name = y.text(e)
		case "tagline":
			s.Tagline = y.text(e)
		case "contact":
			s.Contact = y.contact(e)
		case "booking":
			s.Booking = y.web(e)
		case "notice":
			s.Notice = y.text(e)
		case "local":
			s.Local = y.text(e)
		case "licence":
			s.Licence = y.text(e)
		case "parts":
			s.titles(y, e)
		case "request":
			for _, x := range y.Mapping(e.Value, told.Of("a request")) {
				switch {
				case !y.Known(x, "by", "note"):
				case x.Key == "by":
					s.asking.by, s.asking.byGiven = y.text(x), true
				default:
					s.asking.note = y.text(x)
				}
			}
		case "requests":
			s.requestsSaid(y, e)
		}
	}
	return y.bad()
}

// titles reads the titles of parts by their keys.
func (s *settings) titles(y *yamlReader, e entry) {
	s.Parts = slices.Clone(s.Parts)
	for _, x := range y.outlines(e, s.Parts) {
		i := slices.IndexFunc(s.Parts, func(p outline) bool { return p.Key == x.Key })
		if i < 0 {
			var keys []string
			for _, p := range s.Parts {
				keys = append(keys, p.Key)
			}
			y.Mistake(
				x.at,
				told.Of("the guide has no part “{0}”", x.Key),
				meant(x.Key, keys, told.Of("its parts are {0}", listed(keys))),
			)
			continue
		}
		s.Parts[i].Title = x.Title
	}
}

// requestsSaid reads names and notes of the requests in their order.
func (s *settings) requestsSaid(y *yamlReader, e entry) {
	s.templates = slices.Clone(s.templates)
	for i, n := range y.Items(e) {
		if i >= len(s.templates) {
			y.Mistake(
				n.GetToken(),
				told.Of("there are fewer requests in guide.yaml"),
				told.Of("take this one out, or add it there"),
			)
			break
		}
		for _, x := range y.Mapping(n, told.Of("a request")) {
			switch {
			case !y.Known(x, "name", "note"):
			case x.Key == "name":
				s.templates[i].name = y.text(x)
			default:
				s.templates[i].note = y.text(x)
			}
		}
	}
}

// checkLanguages fills in Languages and finds what is wrong with them.
func (s *settings) checkLanguages() (bad []Mistake) {
	s.Languages = []string{s.Language}
	own := len(s.languages) == 0
	for _, i := range s.languages {
		wrong := func(what, remedy words.Text) {
			at := i.At.Position
			bad = append(bad, Mistake{i.File, at.Line, at.Column, what, remedy})
		}
		_, err := language.Parse(i.Text)
		switch {
		case err != nil || !plainName.MatchString(i.Text):
			wrong(
				told.Of("“{0}” is no language that the web knows", i.Text),
				told.Of("write one like en, en-GB or de (BCP 47)"),
			)
		case baseOf(i.Text) == baseOf(s.Language):
			own = true
		case slices.Contains(s.Languages, i.Text):
			wrong(told.Of("“{0}” is listed twice", i.Text), told.Of("keep one of them"))
		case slices.ContainsFunc(s.Parts, func(p outline) bool { return p.Key == i.Text }):
			wrong(
				told.Of("a part of the guide has the key “{0}”, and the language needs a folder of that name", i.Text),
				told.Of("give the part another key"),
			)
		default:
			s.Languages = append(s.Languages, i.Text)
		}
	}
	if !own {
		i := s.languages[0]
		bad = append(bad, Mistake{i.File, i.At.Position.Line, i.At.Position.Column,
			told.Of("the language of the chapters, “{0}”, is not among the languages", s.Language),
			told.Of("add it, or set “language” to the one that you write in")})
	}
	return bad
}

// languageFolders are the folders of all languages that the guide may have: the shop's,
// and those that the built-in guide is there in.
func (l *layers) languageFolders(s settings) (list []string) {
	built := settings{Language: builtInLanguage}
	if base, ok := l.base[settingsFile]; ok {
		built.read(base, nil)
	}
	for _, i := range built.languages {
		list = append(list, i.Text)
	}
	for _, tag := range s.Languages {
		list = append(list, tag, baseOf(tag))
	}
	return slices.DeleteFunc(list, func(f string) bool { return f == builtInLanguage })
}

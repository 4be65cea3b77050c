package site

import (
	"slices"

	"golang.org/x/text/language"
)

// The words of guide.yaml in another language stand in a guide.yaml in that language's
// folder. It says the same things again and settles nothing.

// saidSettings are the keys that such a file may have.
var saidSettings = []string{"name", "tagline", "contact", "booking", "notice", "local", "licence", "parts", "request",
	"requests"}

// translate reads such a file.
func (s *settings) translate(from source) []Mistake {
	y := &yamlReader{file: from.file}
	for _, e := range y.root(from.text) {
		if !y.known(e, saidSettings...) {
			continue
		}
		switch e.key {
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
			for _, x := range y.mapping(e.value, "a request") {
				switch {
				case !y.known(x, "by", "note"):
				case x.key == "by":
					s.asking.by, s.asking.byGiven = y.text(x), true
				default:
					s.asking.note = y.text(x)
				}
			}
		case "requests":
			s.requestsSaid(y, e)
		}
	}
	return y.bad
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
			y.mistake(x.at, "the guide has no part “"+x.Key+"”", meant(x.Key, keys, "its parts are "+listed(keys)))
			continue
		}
		s.Parts[i].Title = x.Title
	}
}

// requestsSaid reads names and notes of the requests in their order.
func (s *settings) requestsSaid(y *yamlReader, e entry) {
	s.templates = slices.Clone(s.templates)
	for i, n := range y.items(e) {
		if i >= len(s.templates) {
			y.mistake(n.GetToken(), "there are fewer requests in guide.yaml", "take this one out, or add it there")
			break
		}
		for _, x := range y.mapping(n, "a request") {
			switch {
			case !y.known(x, "name", "note"):
			case x.key == "name":
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
		wrong := func(what, remedy string) {
			at := i.at.Position
			bad = append(bad, Mistake{i.file, at.Line, at.Column, what, remedy})
		}
		_, err := language.Parse(i.text)
		switch {
		case err != nil || !plainName.MatchString(i.text):
			wrong("“"+i.text+"” is no language that the web knows", "write one like en, en-GB or de (BCP 47)")
		case baseOf(i.text) == baseOf(s.Language):
			own = true
		case slices.Contains(s.Languages, i.text):
			wrong("“"+i.text+"” is listed twice", "keep one of them")
		case slices.ContainsFunc(s.Parts, func(p outline) bool { return p.Key == i.text }):
			wrong("a part of the guide has the key “"+i.text+"”, and the language needs a folder of that name",
				"give the part another key")
		default:
			s.Languages = append(s.Languages, i.text)
		}
	}
	if !own {
		i := s.languages[0]
		bad = append(bad, Mistake{i.file, i.at.Position.Line, i.at.Position.Column,
			"the language of the chapters, “" + s.Language + "”, is not among the languages",
			"add it, or set “language” to the one that you write in"})
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
		list = append(list, i.text)
	}
	for _, tag := range s.Languages {
		list = append(list, tag, baseOf(tag))
	}
	return slices.DeleteFunc(list, func(f string) bool { return f == builtInLanguage })
}

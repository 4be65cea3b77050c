package site

import (
	"net/url"
	"slices"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"
	"golang.org/x/text/language"

	"plumbline/calculators/desk"
	"plumbline/calculators/measure"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// settings are a guide's own name, people and order of chapters: guide.yaml.
type settings struct {
	Name     string // the shop or the rider whose guide this is
	Tagline  string
	Contact  string // an address for post, or a web address
	Address  string // where the guide will be on the web; may be empty
	Booking  string // where an appointment is made, a web address; may be empty
	Notice   string // whose guide it is and what it does not replace
	Local    string // local notice: opening hours, local law; may be empty
	Licence  string // how the shop's own chapters may be used; may be empty
	Units    string // what lengths are shown in at first: mm, cm or in
	Language string // BCP 47, of the chapters' text
	// Languages are those in which the guide is published, Language among them.
	Languages []string
	LeftOut   []string
	Parts     []outline
	Path      []string        // the way through the guide for a newcomer, as part/chapter
	Request   string          // what a client is asked before a fitting, as a fragment
	Requests  []desk.Template // requests that a fitter keeps for kinds of appointments

	languages []item   // Languages, with their places
	hostFiles []string // files for hosts that the guide is published with
	hide      []item   // sections that are not shown, as part/chapter#heading
	asking    asking   // what Request is made of
	templates []asking // what Requests are made of
	nameAt    *token.Token

	leaveOut []item // LeftOut, with its places

	brand  brand
	broken bool // some key of the shop’s guide.yaml could not be read

	steps     []item // Path, with its places
	stepsFile string
}

// lengthUnits are what a reader may read lengths in.
var lengthUnits = []string{"mm", "cm", "in"}

// outline is a part and the order of its chapters, by file name without .md.
type outline struct {
	Key, Title string
	Chapters   []string

	at       *token.Token
	chapters []item
	file     string
}

// settings reads guide.yaml of both layers, the shop's keys over the built-in
// ones.
func (l *layers) settings() (settings, []Mistake) {
	s := settings{Units: "mm", Language: "en"}
	var bad []Mistake
	base, ok := l.base[settingsFile]
	if ok {
		_, bad = s.read(base, nil)
	}
	if said, ok := l.baseSaid[settingsFile]; ok {
		bad = append(bad, s.translate(said)...)
	}
	local, has := l.local[settingsFile]
	if !has {
		if !ok {
			bad = append(bad, Mistake{File: settingsFile, What: told.Of("the guide has no guide.yaml"),
				Remedy: told.Of("write one with name, tagline, contact, notice and parts")})
		}
		s.ask()
		return s, append(bad, s.checkLanguages()...)
	}
	before := s
	s.languages = nil // a shop's own are read by who speaks them
	// Who asks and where the record goes follow from the shop's own name and contact.
	s.asking.byGiven, s.asking.replyGiven = false, false
	for i := range s.templates {
		s.templates[i].byGiven, s.templates[i].replyGiven = false, false
	}
	given, more := s.read(local, before.Parts)
	bad = append(bad, more...)
	if ok && s.Name != before.Name && before.Name != "" {
		bad = append(bad, s.own(before, given, local.file)...)
	}
	if said, ok := l.localSaid[settingsFile]; ok {
		bad = append(bad, s.translate(said)...)
	}
	s.ask()
	return s, append(bad, s.checkLanguages()...)
}

// ask makes the requests, once name and contact are known.
func (s *settings) ask() {
	s.Request = s.asking.fragment(s.Name, s.Contact)
	s.Requests = nil
	for _, a := range s.templates {
		s.Requests = append(s.Requests, desk.Template{Name: a.name, Fragment: a.fragment(s.Name, s.Contact)})
	}
}

// own checks a guide that has another name than the one below it: it may inherit
// nothing that names or reaches the people of that guide, to whom its readers would
// otherwise send their measurements and their answers about health.
func (s *settings) own(before settings, given []string, file string) (bad []Mistake) {
	lacks := func(what, remedy words.Text) {
		at := s.nameAt.Position
		bad = append(bad, Mistake{file, at.Line, at.Column, what, remedy})
	}
	if !slices.Contains(given, "contact") {
		s.Contact = ""
		lacks(told.Of("the name is yours but the contact is still that of {0}", before.Name),
			told.Of("add a “contact” with your mail or web address"))
	}
	if !slices.Contains(given, "booking") {
		s.Booking = ""
	}
	if !slices.Contains(given, "address") {
		s.Address = ""
	}
	if !slices.Contains(given, "local") {
		s.Local = ""
	}
	for _, text := range []struct{ key, says string }{
		{"notice", s.Notice}, {"tagline", s.Tagline}, {"request", s.asking.note},
	} {
		if !slices.Contains(given, text.key) && strings.Contains(text.says, before.Name) {
			lacks(told.Of("the name is yours but the {0} still speaks of {1}", text.key, before.Name),
				told.Of("add a “{0}” of your own", text.key))
		}
	}
	return bad
}

// read lays one guide.yaml over s and returns the keys that it gave. titles are
// the parts whose titles an outline may leave out.
func (s *settings) read(from source, titles []outline) (given []string, bad []Mistake) {
	y := yamlOf(from.file, 0)
	var added []outline
	for _, e := range y.Root(from.text) {
		if !y.Known(e, settingsKeys()...) {
			continue
		}
		given = append(given, e.Key)
		switch e.Key {
		case "name":
			if name := y.text(e); name != "" {
				s.Name, s.nameAt = name, e.At
			} else {
				y.Mistake(e.At, told.Of("the name is empty"), told.Of("write the name of your shop, or your own"))
			}
		case "tagline":
			s.Tagline = y.text(e)
		case "contact":
			s.Contact = y.contact(e)
		case "address":
			s.Address = y.web(e)
		case "booking":
			s.Booking = y.web(e)
		case "notice":
			s.Notice = y.text(e)
		case "local":
			s.Local = y.text(e)
		case "licence":
			s.Licence = y.text(e)
		case "mark":
			s.brand.mark = item{Text: y.Raw(e), At: e.Value.GetToken(), File: y.File}
		case "host_files":
			for _, i := range y.List(e) {
				if hostFiles[i.Text] == "" {
					y.Mistake(i.At, told.Of("there is no file for “{0}”", i.Text), told.Of("write apache or headers"))
					continue
				}
				s.hostFiles = append(s.hostFiles, i.Text)
			}
		case "colours":
			s.brand.colours = y.colours(e)
		case "units":
			if s.Units = y.Raw(e); !slices.Contains(lengthUnits, s.Units) {
				y.Mistake(
					e.Value.GetToken(),
					told.Of("“{0}” is not a unit for lengths here", s.Units),
					told.Of("write mm, cm or in"),
				)
				s.Units = "mm"
			}
		case "language":
			s.Language = y.Raw(e)
			if _, err := language.Parse(s.Language); err != nil {
				y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no language that the web knows", s.Language),
					told.Of("write one like en, en-GB or de (BCP 47)"))
				s.Language = "en"
			}
		case "languages":
			s.languages = y.List(e)
		case "leave_out":
			s.leaveOut = y.chapters(e)
			s.LeftOut = texts(s.leaveOut)
		case "parts":
			s.Parts = y.outlines(e, titles)
		case "hide":
			s.hide = y.List(e)
		case "add":
			added = y.additions(e)
		case "path":
			s.steps, s.stepsFile = y.chapters(e), y.File
			s.Path = texts(s.steps)
		case "request":
			s.asking = y.request(e.Value, false)
		case "requests":
			s.templates = nil
			for _, n := range y.Items(e) {
				s.templates = append(s.templates, y.request(n, true))
			}
		}
	}
	s.add(added)
	s.broken = y.Broken
	return append(given, y.Lost...), y.bad()
}

// add adds chapters to parts, and parts of the shop's own at the end, whichever of
// “parts” and “add” stands first in the file.
func (s *settings) add(added []outline) {
	s.Parts = slices.Clone(s.Parts)
	for _, o := range added {
		i := slices.IndexFunc(s.Parts, func(p outline) bool { return p.Key == o.Key })
		if i < 0 {
			if o.Title == "" {
				o.Title = o.Key
			}
			s.Parts = append(s.Parts, o)
			continue
		}
		p := &s.Parts[i]
		p.chapters = append(slices.Clone(p.chapters), o.chapters...)
		p.Chapters = texts(p.chapters)
		if o.Title != "" {
			p.Title = o.Title
		}
	}
}

// additions reads what is added to the parts: the part's key with its chapters, or with
// a title and chapters for a part of the shop's own.
func (y *yamlReader) additions(e entry) (list []outline) {
	for _, part := range y.Mapping(e.Value, told.Of("“add”")) {
		o := outline{Key: part.Key, at: part.At, file: y.File}
		switch part.Value.(type) {
		case *ast.MappingNode, *ast.MappingValueNode:
			for _, x := range y.Mapping(part.Value, told.Of("what is added to “{0}”", part.Key)) {
				switch {
				case !y.Known(x, "title", "chapters"):
				case x.Key == "title":
					o.Title = y.text(x)
				default:
					o.chapters = y.chapters(x)
				}
			}
		default:
			o.chapters = y.chapters(part)
		}
		o.Chapters = texts(o.chapters)
		list = append(list, o)
	}
	return list
}

// chapters reads a list of chapters. Their files end in .md, and who writes that too means
// the same.
func (y *yamlReader) chapters(e entry) []item {
	list := y.List(e)
	for i := range list {
		list[i].Text = strings.TrimSuffix(list[i].Text, ".md")
	}
	return list
}

// outlines reads the list of parts.
func (y *yamlReader) outlines(e entry, titles []outline) []outline {
	var list []outline
	for _, n := range y.Items(e) {
		o := outline{at: n.GetToken(), file: y.File}
		for _, e := range y.Mapping(n, told.Of("a part")) {
			switch {
			case !y.Known(e, "key", "title", "chapters"):
			case e.Key == "key":
				o.Key, o.at = y.Raw(e), e.Value.GetToken()
			case e.Key == "title":
				o.Title = y.text(e)
			default:
				o.chapters = y.chapters(e)
				o.Chapters = texts(o.chapters)
			}
		}
		if o.Title == "" {
			for _, t := range titles {
				if t.Key == o.Key {
					o.Title = t.Title
				}
			}
		}
		switch {
		case o.Key == "":
			y.Mistake(o.at, told.Of("this part has no key"), told.Of("add “key:” with the name of its folder"))
			continue
		case o.Title == "":
			y.Mistake(o.at, told.Of("the part “{0}” has no title", o.Key), told.Of("add “title:”"))
		case slices.ContainsFunc(list, func(p outline) bool { return p.Key == o.Key }):
			y.Mistake(o.at, told.Of("the part “{0}” is listed twice", o.Key), told.Of("keep one of them"))
			continue
		}
		list = append(list, o)
	}
	return list
}

// asking is what a client is asked to measure before a fitting, as guide.yaml says it.
type asking struct {
	name                string   // of a request that is kept for a kind of appointment
	ask                 []string // keys of quantities; none for the usual ones
	by, note, reply     string
	byGiven, replyGiven bool // an empty text is given too
	health              bool
}

// fragment is the request as a fragment. Where the guide does not say otherwise, the
// guide's name asks and the record goes to its contact, if that is a mail address.
func (a asking) fragment(name, contact string) string {
	if !a.byGiven {
		a.by = name
	}
	if !a.replyGiven {
		a.reply = ""
		if strings.Contains(contact, "@") && !strings.Contains(contact, "://") {
			a.reply = contact
		}
	}
	// Keys and reply were checked when they were read.
	fragment, _ := desk.RequestOf(a.ask, a.by, a.note, a.reply, a.health)
	return fragment
}

// request reads what a client is asked to measure before a fitting. One of several has
// a name.
func (y *yamlReader) request(n ast.Node, named bool) (a asking) {
	keys := []string{"ask", "by", "note", "reply", "health"}
	if named {
		keys = append(keys, "name")
		defer func() {
			if a.name == "" {
				y.Mistake(
					n.GetToken(),
					told.Of("this request has no name"),
					told.Of("add “name:”, for example “First fitting”"),
				)
			}
		}()
	}
	for _, e := range y.Mapping(n, told.Of("a request")) {
		if !y.Known(e, keys...) {
			continue
		}
		switch e.Key {
		case "name":
			a.name = y.text(e)
		case "ask":
			for _, i := range y.List(e) {
				if measure.Named(i.Text) == nil {
					near := told.Of("the keys are those of “plumbline calc NAME --help”")
					if q := measure.Nearest(i.Text); q != nil {
						near = told.Of("did you mean “{0}”?", q.Key)
					}
					y.Mistake(i.At, told.Of("there is no measurement “{0}”", i.Text), near)
					continue
				}
				a.ask = append(a.ask, i.Text)
			}
		case "by":
			a.by, a.byGiven = y.text(e), true
		case "note":
			a.note = y.text(e)
		case "reply":
			a.reply, a.replyGiven = y.Raw(e), true
			if _, why, ok := request.ReadReply(a.reply); !ok {
				y.Mistake(e.Value.GetToken(), why, told.Of("write a mail address, a phone number, or nothing"))
				a.reply = ""
			}
		case "health":
			switch v := y.Raw(e); v {
			case "yes", "true":
				a.health = true
			case "no", "false":
			default:
				y.Mistake(e.Value.GetToken(), told.Of("“{0}” is neither yes nor no", v), told.Of("write yes or no"))
			}
		}
	}
	return a
}

// contact reads a mail address or a web address.
func (y *yamlReader) contact(e entry) string {
	s := y.Raw(e)
	if s == "" || strings.HasPrefix(s, "https://") || strings.HasPrefix(s, "http://") {
		return y.web(e)
	}
	// Records are sent to it, so it has to be an address that a request can carry.
	if to, _, ok := request.ReadReply("mailto:" + s); !ok || to.To != s {
		y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no mail or web address", s),
			told.Of("write one like you@example.org or https://example.org/contact"))
		return ""
	}
	return s
}

// mount is the path of the guide on its web server, beginning and ending with a slash,
// or "./" where nobody said where it will be.
func (s *settings) mount() string {
	u, err := url.Parse(s.Address)
	if s.Address == "" || err != nil {
		return "./"
	}
	return strings.TrimRight(u.EscapedPath(), "/") + "/"
}

// web reads a web address.
func (y *yamlReader) web(e entry) string {
	s := y.Raw(e)
	if s == "" {
		return ""
	}
	u, err := url.Parse(s)
	if err != nil || u.Host == "" || u.Scheme != "https" && u.Scheme != "http" {
		y.Mistake(
			e.Value.GetToken(),
			told.Of("“{0}” is no web address", s),
			told.Of("write it in full, like https://example.org/book"),
		)
		return ""
	}
	return u.String()
}

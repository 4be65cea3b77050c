package site

import (
	"bytes"
	"html/template"
	"slices"
	"strings"
	"sync"

	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/told"
	"plumbline/templates"
)

// policy is what a page may do, as a meta tag says it. frame-ancestors works as
// a header only, and Handler adds it there.
const policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; " +
	"connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; " +
	"require-trusted-types-for 'script'; trusted-types plumbline-fragment plumbline-script"

// The addresses of the pages that have no Markdown file.
const (
	lostURL     = "404.html"
	findURL     = "find.html"
	glossaryURL = "glossary.html"
	sourcesURL  = "sources.html"
	indexURL    = "find.json"
)

// view is what the templates are filled with.
type view struct {
	teller
	Language, Units, Policy          string
	SpeaksTo                         string // the direction of that, where it is another
	Speaks                           string // of the page’s own text, where it is not in Language
	Untranslated                     bool   // the page is there in another language alone
	Carried                          string // keys of what a rider takes along to another bike
	Kind, Title, Summary, Question   string
	Name, Tagline, Notice, Local     string
	Contact, ContactURL, Booking     string
	Root, Assets, Engine             string // ways from this page
	Home, Find, Glossary, SourceList string
	Licences, Licence, Elsewhere     string
	Icon                             string
	Mark                             string // way to the shop's mark, or ""
	MarkWidth, MarkHeight            int
	MarkWide                         bool        // it has the name in it, and on a phone stands alone
	Canonical                        string      // the page's address on the web, where the shop said it
	Card, CardSays                   string      // the picture for those who show a link, and what it shows
	CardWidth, CardHeight            int         // in pixels
	Structured                       template.JS // what search engines read of the page (JSON-LD)
	Near                             string      // the engine that the page needs first, "" for none
	BikePage, BikeList               string      // ways to the shop's bikes, "" where there are none
	Texts                            string      // the files of the language beside the engine, "" in English
	Direction                        string      // "rtl" where the language is written from right to left, else ""
	Said                             string      // the language of the page's modules, "" in English
	Modules, Preloads                []string
	Boot                             string
	Languages                        []languageView // the same page in each language; none where there is one
	Worker, Manifest                 string         // the service worker and the web app's manifest
	Rail                             []railPart

	PartTitle, PartURL string
	Number, Count      int
	Opens              template.HTML // the short list that a step of measurements opens on
	Needs              template.HTML
	Body               template.HTML
	Stops              []template.HTML // cautions that stand at no act of the page
	Checks             []checkView     // the same, as a list to tick
	Sources            []sourceView
	Before, After      *entryView
	Way                wayView    // where the page stands on the newcomer's way
	Sheet              string     // the address of the setup sheet, from other pages
	Ride, Setup        *entryView // where every chapter ends

	Listed      []entryView
	Calculators []entryView
	Library     []topicView
	Known       []knowledgeView
	Terms       []termView
	Embeds      []embedView
	Bikes       []bikeView
	Hosts       []hostView
	HostFolder  string // where the guide lies on a server's disk, in those settings
	Exchanged   string // keys of the bikes' parts that a rider may have exchanged
	Index       string
}

type railPart struct {
	Title, URL string
	Here       bool   // this page is in the part
	Page       bool   // this page is the part's own
	Current    string // value of aria-current in the header
	Chapters   []railItem
}

type railItem struct {
	Title, Long, Question, URL string
	Page                       bool
}

type entryView struct{ Title, Question, URL string }

type sourceView struct {
	Key, Authors, Title, Where, DOI, Link, For, Strength string

	Read, Kind string // what of it was read, and its kind, in the guide's language
	Memory     bool   // nobody opened it
	Year       int
	Pages      []entryView
	More       int // pages beyond those
}

// Asks tells whether the title is a question, which ends with its own mark.
func (v sourceView) Asks() bool { return strings.HasSuffix(v.Title, "?") }

// knowledgeView is what is known well, poorly or not at all.
type knowledgeView struct {
	Title, Short string
	Says         []knownView
}

// topicView is the part of the guide that cites its sources most.
type topicView struct {
	Title   string
	Sources []sourceView
}

type termView struct {
	Key, Name, Says string
	AlsoListed      string // other names
	Picture         template.HTML
	Pages           []entryView
	More            int // pages beyond those
}

// layouts are the page templates by kind of page, each with the frame.
var layouts = sync.OnceValue(func() map[string]*template.Template {
	frame := template.Must(template.ParseFS(templates.Files, "base.html", "step.html"))
	out := map[string]*template.Template{}
	for _, kind := range []string{"front", "part", "chapter", "find", "glossary", "sources", "lost",
		"elsewhere", "embedded", "bikes", "hosting"} {
		out[kind] = template.Must(template.Must(frame.Clone()).ParseFS(templates.Files, kind+".html"))
	}
	return out
})

// paths are the hashed folders of one publication.
type paths struct{ assets, engine string }

// wholeRail is the number of pages up to which the navigation of every page lists all
// chapters. In a larger guide it lists those of the page's own part only, and of more
// parts, or of more chapters in the part, those near the page, because the size of all
// pages would otherwise grow with the square of their number.
const wholeRail = 100

// railParts is the number of parts up to which it names them all.
const railParts = 40

// carried is the same on every page.
var carried = strings.Join(measure.Carried(), " ")

// view returns a page's view with everything that base.html shows.
func (g *Guide) view(kind, url string, in paths) *view {
	root := rootFrom(url)
	to := func(target string) string { return relative(url, target) }
	if kind == "lost" { // shown in place of any page: see Handler
		root = g.mount()
		to = func(target string) string { return root + target }
	}
	v := &view{
		teller:   teller{g.reader},
		Language: g.around(), Units: g.Units, Carried: carried, Policy: policy, Kind: kind,
		Name: g.Name, Tagline: g.Tagline, Notice: g.Notice, Local: g.Local,
		Contact: g.Contact, ContactURL: contactURL(g.Contact), Booking: g.Booking,
		Root: root, Assets: to(in.assets), Engine: to(in.engine),
		Home: to("index.html"), Find: to(findURL), Glossary: to(glossaryURL), SourceList: to(sourcesURL),
		Licences: to(g.up() + licencesURL), Licence: g.Licence,
		Elsewhere: to(elsewhereURL), Icon: to(in.assets) + "icon.svg", Texts: g.textNames(),
	}
	if m := g.brand.drawn; m != nil {
		v.Mark, v.MarkWidth, v.MarkHeight = to(in.assets)+m.name(), m.width, m.height
		v.MarkWide = m.wide()
		v.Icon = v.Mark
	}
	if sheet := g.pageWith(sheetBlock); sheet != nil && sheet.URL != url {
		v.Sheet = to(sheet.URL)
	}
	if len(g.bikes) > 0 {
		v.BikePage, v.BikeList = to(bikesURL), to(bikesListURL)
	}
	if kind != "lost" {
		v.Canonical = g.onTheWeb(url)
		v.Worker, v.Manifest = to(g.up()+workerURL), to(manifestURL)
		v.Languages = g.languagesAt(url, to)
	}
	v.Direction = direction(g.around())
	if g.said.catalogue != nil {
		v.Said = g.Language
		v.Preloads = append(v.Preloads, g.textModuleName())
	}
	if _, err := templates.Files.Open("page/page.js"); err == nil {
		v.Boot = to(in.assets) + "boot.js"
		v.Modules = append(v.Modules, "page.js")
	}
	here := slices.IndexFunc(g.parts, func(part guidePart) bool { return strings.HasPrefix(url, part.Key+"/") })
	for _, i := range around(len(g.parts), here, railParts, kind == "front") {
		part := g.parts[i]
		r := railPart{Title: part.Title, URL: to(part.Page.URL), Here: i == here,
			Page: part.Page.URL == url, Current: "true"}
		if r.Page {
			r.Current = "page"
		}
		if !r.Here && kind != "front" && len(g.pages) > wholeRail {
			v.Rail = append(v.Rail, r)
			continue
		}
		at := slices.IndexFunc(part.Chapters, func(c *guidePage) bool { return c.URL == url })
		for _, k := range around(len(part.Chapters), at, wholeRail, kind == "front" || r.Page) {
			c := part.Chapters[k]
			r.Chapters = append(r.Chapters, railItem{c.Nav, c.Title, c.Question, to(c.URL), c.URL == url})
		}
		v.Rail = append(v.Rail, r)
	}
	return v
}

// around are the places of a list that the navigation shows: all of them, or of a list
// with more than most those near the page. The page above has the whole list.
func around(n, at, most int, whole bool) (list []int) {
	from, to := 0, n
	if n > most && !whole {
		from = max(0, min(at-most/2, n-most))
		to = from + most
	}
	for i := from; i < to; i++ {
		list = append(list, i)
	}
	return list
}

func contactURL(contact string) string {
	if contact == "" || strings.Contains(contact, "://") {
		return contact
	}
	return "mailto:" + contact
}

// write fills the page's template.
func (v *view) write() ([]byte, error) {
	var b bytes.Buffer
	b.Grow(len(v.Body) + 16<<10)
	if err := layouts()[v.Kind].ExecuteTemplate(&b, "base", v); err != nil {
		return nil, told.Wrong("the page “{0}” could not be written: {1}", v.Title, err)
	}
	return b.Bytes(), nil
}

// page writes page i of g.Pages.
func (g *Guide) page(i int, in paths) ([]byte, error) {
	p := g.ready(g.pages[i])
	body, err := g.body(p)
	if err != nil {
		return nil, err
	}
	kind, part, number := g.standing(g.pages[i])
	v := g.view(kind, p.URL, in)
	v.Title, v.Summary, v.Question = p.Title, p.Summary, p.Question
	v.Speaks = g.speaks(p)
	v.SpeaksTo = g.turned(v.Speaks)
	v.Untranslated = v.Speaks != "" && baseOf(p.lang) != baseOf(g.Language)
	v.Body = trusted(body)
	if p.needsAt() == "" && !slices.ContainsFunc(p.headings, heading.isBrief) {
		v.Needs = trusted([]byte(p.needs(g.reader)))
	}
	for _, key := range g.used(p) {
		v.Sources = append(v.Sources, g.viewSource(g.library.sources[key]))
	}
	v.Stops, v.Checks = g.warnings(p)
	if part != nil {
		v.PartTitle, v.PartURL, v.Number, v.Count = part.Title, relative(p.URL, part.Page.URL), number,
			len(part.Chapters)
	}
	if kind == "part" {
		for _, c := range part.Chapters {
			v.Listed = append(v.Listed, entry1(p.URL, c))
		}
	}
	g.along(v, p, kind)
	opens, err := g.openingList(p)
	if err != nil {
		return nil, err
	}
	v.Opens = trusted([]byte(opens))
	for _, block := range []string{sheetBlock, prepareBlock, symptomsBlock} {
		if p.has(block) {
			v.Modules = append(v.Modules, block+".js")
		}
	}
	v.Near = p.engine()
	if v.Near != "" {
		v.Preloads = append(v.Preloads, imports()...)
	}
	if i > 0 {
		e := entry1(p.URL, g.pages[i-1])
		v.Before = &e
	}
	if i+1 < len(g.pages) {
		e := entry1(p.URL, g.pages[i+1])
		v.After = &e
	}
	g.shared(v, g.ready(p))
	return v.write()
}

// along fills in where a page stands on the newcomer's way, and for a chapter the links
// to the test ride and the setup sheet.
func (g *Guide) along(v *view, p *guidePage, kind string) {
	v.Way = g.way(p.URL)
	if kind != "chapter" && kind != "front" {
		return
	}
	if to := g.byPath[ridePath]; to != nil && !to.is(p) {
		e := entry1(p.URL, to)
		v.Ride = &e
	}
	if to := g.pageWith(sheetBlock); to != nil && !to.is(p) {
		e := entry1(p.URL, to)
		v.Setup = &e
	}
}

// ridePath is the chapter of the test ride, to which every chapter links at its end.
const ridePath = "finish/the-test-ride.md"

// standing tells what kind of page p is, in which part, as which chapter.
func (g *Guide) standing(p *guidePage) (kind string, part *guidePart, number int) {
	switch {
	case p.part < 0:
		return "front", nil, 0
	case p.nth == 0:
		return "part", &g.parts[p.part], 0
	}
	return "chapter", &g.parts[p.part], p.nth
}

// ready is a page that can be rendered.
func (g *Guide) ready(p *guidePage) *guidePage {
	if p.tree == nil {
		p = g.parsed(p)
		g.check(p) // which points its links at what is published
	}
	return p
}

// parsed is a page with all that checking and rendering need: itself, or read once more
// where that was let go.
func (g *Guide) parsed(p *guidePage) *guidePage {
	if p.tree != nil {
		return p
	}
	whole, _ := parsePage(p.source)
	return whole
}

// body renders a page's text once and keeps it.
func (g *Guide) body(p *guidePage) ([]byte, error) {
	p = g.ready(p)
	p.once.Do(func() {
		if g.kept == nil {
			p.html, p.err = g.render(p)
			return
		}
		sum := g.sum(p)
		if p.html = g.kept.rendered(g.within+p.Path, sum); p.html == nil {
			p.html, p.err = g.render(p)
			g.kept.keep(g.within+p.Path, sum, p.html)
		}
	})
	return p.html, p.err
}

// trusted marks what the Markdown renderer or the panel wrote as safe HTML: both
// escape all text.
func trusted(b []byte) template.HTML { return template.HTML(b) }

func entry1(at string, p *guidePage) entryView {
	return entryView{p.Title, p.Question, relative(at, p.URL)}
}

func (g *Guide) viewSource(s *literature.Source) sourceView {
	kind := s.Strength.Say(g.reader)
	read := words.Of("Read: {0}.", s.Opened)
	if s.Strength != "" && s.Strength != s.Opened {
		read = words.Of("Kind: {0}. Read: {1}.", words.Name(kind), s.Opened)
	}
	return sourceView{Key: s.Key, Authors: strings.TrimSuffix(s.By(g.reader), "."),
		Title: strings.TrimSuffix(s.Title, "."), Where: strings.TrimSuffix(s.Place(g.reader), "."),
		DOI: s.DOI, Link: s.Link(), For: s.For, Strength: string(s.Strength), Year: s.Year,
		Read: read.Say(g.reader), Kind: kind, Memory: s.Opened == literature.Memory}
}

package site

import (
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
	"plumbline/content"
	"plumbline/site/told"
)

// Guide is a guide that has been read and checked. It is ready to be published
// any number of times.
type Guide struct {
	settings
	said   *tongue  // the language that it is read in
	others []*Guide // the same in each other language, in folders below this one's
	within string   // its own folder, "" for the guide itself
	home   *Guide   // the guide itself, nil for that

	front *guidePage
	parts []guidePart
	pages []*guidePage // front page, then each part's page with its chapters, in order

	kept    *memory
	paper   *paper // nil unless the guide is made into a book
	layers  *layers
	library *library
	terms   []term
	asked   asked

	ownSymptoms []symptom.Own // what the shop says of symptoms
	bikes       []shopBike

	shelf   *shelf
	reader  *words.Reader
	byPath  map[string]*guidePage
	leftOut []string
	gone    map[string][]string  // headings that guide.yaml hides, by the chapter's path
	path    []*guidePage         // the way through the guide for a newcomer
	shown   map[string]shownFile // pictures that some page shows, and tables it offers, by their paths
	showing sync.RWMutex         // guards shown
}

// manyPages is how many files of a guide are kept whole from reading to rendering. Those
// of a larger one are read once more when they are checked, and once more when they are
// written, so that it needs no memory for all of them at once.
const manyPages = 300

// guidePart is a part of the guide with its chapters in reading order.
type guidePart struct {
	Key, Title string
	Page       *guidePage
	Chapters   []*guidePage
}

// Load reads the guide that the shop's folder makes when it is laid over the
// built-in content; "" loads the built-in guide alone. It returns every mistake
// that it finds, in one run. With mistakes the guide is not fit to be published
// and is nil.
func Load(overlayDir string) (*Guide, []Mistake) { return load(overlayDir, nil) }

// load is Load with pages of an earlier run that may be used again.
func load(overlayDir string, kept *memory) (*Guide, []Mistake) {
	if overlayDir == "" {
		return loadFS(content.Files, nil, "", everything(), kept)
	}
	root, err := openFolder(overlayDir)
	if err != nil {
		return nil, []Mistake{
			{File: overlayDir, What: told.Of("{0}", err), Remedy: told.Of("name a folder that exists")},
		}
	}
	defer root.Close()
	return loadFS(content.Files, root.FS(), overlayDir, everything(), kept)
}

// loadFS is Load on file systems. local may be nil; localName is how messages
// name it.
func loadFS(builtIn, local fs.FS, localName string, on *shelf, kept *memory) (*Guide, []Mistake) {
	g, bad := assembled(builtIn, local, localName, on, kept)
	if len(bad) > 0 {
		return nil, sorted(bad) // what is read in two languages is wrong once
	}
	for _, each := range g.everyLanguage() {
		each.findTerms()
	}
	return g, nil
}

// assembled is a guide with all that is wrong with it.
func assembled(builtIn, local fs.FS, localName string, on *shelf, kept *memory) (*Guide, []Mistake) {
	all, bad := lay(builtIn, local, localName)
	own, more := all.settings() // the languages are known before anything is read in one
	bad = append(bad, more...)
	folders := all.languageFolders(own)
	t, more := all.spokenIn(own.Language)
	bad = append(bad, more...)
	g, more := spokenGuide(all.in(t, own.Language, folders), t, on, kept)
	bad = append(bad, more...)
	for _, tag := range own.Languages {
		if tag == own.Language {
			continue
		}
		t, more := all.spokenIn(tag)
		bad = append(bad, more...)
		laid := all.in(t, own.Language, folders)
		laid.headed(g.layers)
		o, more := spokenGuide(laid, t, on, kept)
		bad = append(bad, more...)
		o.home, o.within = g, tag+"/"
		g.others = append(g.others, o)
	}
	return g, bad
}

// spokenGuide is a guide in one language, and what is wrong with it.
func spokenGuide(l *layers, t *tongue, on *shelf, kept *memory) (g *Guide, bad []Mistake) {
	g = &Guide{kept: kept, layers: l, shelf: on, byPath: map[string]*guidePage{}, shown: map[string]shownFile{},
		gone: map[string][]string{}, said: t}
	add := func(more []Mistake) { bad = append(bad, more...) }
	var more []Mistake
	g.settings, more = l.settings()
	g.Language = t.tag
	add(more)
	reader := *g.said.reader
	reader.Units = g.Units
	g.reader = &reader
	g.library, more = l.library()
	add(more)
	g.terms, more = l.glossary(on.figureNames(), t.tag)
	add(more)
	add(g.assemble())
	add(g.readAsked())
	add(g.readSymptoms())
	add(g.readBikes())
	g.developAll()
	wrong := make([][]Mistake, len(g.pages))
	_ = inParallel(len(g.pages), func(i int) error {
		p := g.pages[i]
		wrong[i] = append(p.wrong, g.check(g.parsed(p))...)
		return nil
	})
	for _, list := range wrong {
		add(list)
	}
	add(g.sameTitles())
	add(g.findMark())
	return g, bad
}

// everyLanguage is the guide in each of its languages, its own first.
func (g *Guide) everyLanguage() []*Guide { return append([]*Guide{g}, g.others...) }

// assemble reads the pages in the order of guide.yaml.
func (g *Guide) assemble() (bad []Mistake) {
	many := len(g.layers.paths) > manyPages && g.kept == nil
	take := func(p string) *guidePage {
		s, ok := g.layers.file(p)
		if !ok {
			return nil
		}
		s, unlike := s.matched()
		s, wrong := g.composed(s)
		wrong = append(unlike, wrong...)
		page, more := parsePage(s)
		page.wrong = append(wrong, more...)
		if many {
			page.forget()
		}
		g.pages = append(g.pages, page)
		g.byPath[p] = page
		return page
	}
	if g.front = take("index.md"); g.front == nil {
		bad = append(
			bad,
			Mistake{File: "index.md", What: told.Of("the guide has no front page"), Remedy: told.Of("write index.md")},
		)
	}
	for _, o := range g.settings.Parts {
		at := func(i *item, what, remedy words.Text) {
			m := Mistake{File: o.file, What: what, Remedy: remedy}
			t := o.at
			if i != nil {
				t, m.File = i.At, i.File
			}
			if t != nil {
				m.Line, m.Column = t.Position.Line, t.Position.Column
			}
			bad = append(bad, m)
		}
		if slices.Contains(g.LeftOut, o.Key) { // a whole part
			g.leftOut = append(g.leftOut, o.Key+".md", o.Key+"/index.md")
			for _, c := range o.chapters {
				g.leftOut = append(g.leftOut, o.Key+"/"+c.Text+".md")
			}
			continue
		}
		part := guidePart{Key: o.Key, Title: o.Title, Page: take(o.Key + "/index.md")}
		if part.Page == nil {
			at(
				nil,
				told.Of("the part “{0}” has no page", o.Key),
				meant(o.Key, g.folders(), told.Of("write {0}/index.md", o.Key)),
			)
		}
		for _, c := range o.chapters {
			p := o.Key + "/" + c.Text + ".md"
			switch {
			case slices.Contains(g.LeftOut, o.Key+"/"+c.Text):
				g.leftOut = append(g.leftOut, p)
			case c.Text == "index":
				at(&c, told.Of("“index” is the part’s own page"), told.Of("take it out of the chapters"))
			case g.byPath[p] != nil:
				at(&c, told.Of("the chapter “{0}” is listed twice", c.Text), told.Of("keep one of them"))
			default:
				page := take(p)
				if page == nil {
					at(&c, told.Of("there is no page “{0}”", p), meant(c.Text, g.chaptersIn(o.Key),
						told.Of("write it or take it out of the list")))
					continue
				}
				part.Chapters = append(part.Chapters, page)
			}
		}
		i := len(g.parts)
		if part.Page != nil {
			part.Page.part = i
		}
		for n, c := range part.Chapters {
			c.part, c.nth = i, n+1
		}
		g.parts = append(g.parts, part)
	}
	return append(append(bad, g.unlisted()...), g.walk()...)
}

// walk finds the pages of the way through the guide. What a shop leaves out, or
// lists no longer, is passed over on the built-in way and a mistake on its own.
func (g *Guide) walk() (bad []Mistake) {
	built := g.layers.base[settingsFile]
	for _, step := range g.steps {
		p := g.byPath[step.Text+".md"]
		switch {
		case p != nil:
			g.path = append(g.path, p)
			if _, ok := readTime(p.Clock, p.said); !ok {
				bad = append(
					bad,
					Mistake{p.file, 1, 1, told.Of("this page is a step of “path”, and its time cannot be counted"),
						told.Of("write “time: 10 minutes” into its header, or “time: 30 minutes, then two rides”")},
				)
			}
		case g.stepsFile != built.file:
			bad = append(bad, Mistake{g.stepsFile, step.At.Position.Line, step.At.Position.Column,
				told.Of("there is no chapter “{0}”", step.Text),
				meant(step.Text, g.ways(), told.Of("write it as part/chapter, without .md"))})
		}
	}
	return bad
}

// unlisted finds the shop's own pages that no reader would ever see, and
// leave_out lines that leave out nothing.
func (g *Guide) unlisted() (bad []Mistake) {
	for _, p := range g.layers.paths {
		s := g.layers.local[p]
		if chapter, adds := strings.CutSuffix(p, additionEnding); adds && s.local {
			if g.byPath[chapter+".md"] == nil && !slices.Contains(g.leftOut, chapter+".md") {
				bad = append(
					bad,
					Mistake{s.file, 1, 1, told.Of("this adds to “{0}.md”, which is no chapter of the guide", chapter),
						meant(chapter, g.ways(), told.Of("name it like the chapter that it adds to"))},
				)
			}
			continue
		}
		if s.local && !g.broken && path.Ext(p) == ".md" && g.byPath[p] == nil && !slices.Contains(g.leftOut, p) {
			bad = append(bad, Mistake{s.file, 1, 1, told.Of("no part of guide.yaml lists this page"),
				told.Of("add it to a part’s chapters in your guide.yaml")})
		}
	}
	for _, h := range g.hide {
		if chapter, _, ok := strings.Cut(h.Text, "#"); !ok || g.byPath[chapter+".md"] == nil {
			bad = append(
				bad,
				Mistake{
					h.File,
					h.At.Position.Line,
					h.At.Position.Column,
					told.Of("“{0}” names no section of a chapter", h.Text),
					told.Of("write it as part/chapter#heading"),
				},
			)
		}
	}
	for _, out := range g.leaveOut {
		if !slices.Contains(g.leftOut, out.Text+".md") {
			bad = append(
				bad,
				Mistake{
					out.File,
					out.At.Position.Line,
					out.At.Position.Column,
					told.Of("leave_out names “{0}”, which is no chapter and no part of the guide", out.Text),
					meant(out.Text, g.ways(), told.Of("write a chapter as part/chapter, and a part as the name of its "+
						"folder")),
				},
			)
		}
	}
	return bad
}

// sameTitles finds two pages that a reader could not tell apart in a list.
func (g *Guide) sameTitles() (bad []Mistake) {
	seen := map[string]*guidePage{}
	for _, p := range g.pages {
		title := strings.ToLower(strings.TrimSpace(p.Title))
		first := seen[title]
		if first == nil || title == "" {
			seen[title] = p
			continue
		}
		own, other := p, first
		if first.local && !p.local {
			own, other = first, p
		}
		bad = append(bad, Mistake{own.file, 1, 1, told.Of("the title “{0}” is also that of {1}", own.Title, other.file),
			told.Of("give each page a title of its own")})
	}
	return bad
}

// folders are the parts that have a page.
func (g *Guide) folders() (keys []string) {
	for _, p := range g.layers.paths {
		if key, ok := strings.CutSuffix(p, "/index.md"); ok {
			keys = append(keys, key)
		}
	}
	return keys
}

// chaptersIn are the chapters that a part's folder holds.
func (g *Guide) chaptersIn(part string) (names []string) {
	for _, p := range g.layers.paths {
		if name, ok := strings.CutPrefix(p, part+"/"); ok && path.Ext(name) == ".md" && name != "index.md" {
			names = append(names, strings.TrimSuffix(name, ".md"))
		}
	}
	return names
}

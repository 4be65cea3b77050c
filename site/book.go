package site

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"golang.org/x/net/html"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// The whole guide as one book has four steps: each page is rendered with its calculators
// and figures as they stand on paper (book_paper.go), read as a tree and freed of all that
// only a screen can do (book_tree.go), put in order under numbers to which its links refer,
// and written twice: as one HTML page made for printing (book_html.go) and as an EPUB
// (book_epub.go).

// BookOptions are how a book is made. The zero value makes the guide's own book, at the
// worked examples.
type BookOptions struct {
	Record *record.Record // whose figures and numbers the book has; nil for the examples
	Units  string         // mm, cm or in; "" is what the record says, or else the guide
	Made   time.Time      // what the EPUB says of its own age
}

// Book is the guide as a book in both its forms.
type Book struct {
	HTML, EPUB []byte

	// Own and Example are how many calculators answer with the record's numbers, and how
	// many show their worked example.
	Own, Example int
}

// paper is what a guide that is made into a book needs while its pages are rendered.
type paper struct {
	own          *record.Record // nil for the worked examples
	name         words.Text     // in whose name the numbers stand
	answered     int
	atTheExample int
}

// numbers is the record as it stands in an address, "" without one.
func (p *paper) numbers() string {
	if p.own == nil {
		return ""
	}
	return p.own.Fragment()
}

// Book makes a book of the guide. A guide that became a book cannot be published any more,
// because each of its pages is rendered once.
func (g *Guide) Book(o BookOptions) (*Book, error) {
	units := o.Units
	if units == "" && o.Record != nil {
		units = o.Record.Units
	}
	if measure.UnitNamed(units) == nil {
		units = g.Units
	}
	g.Units = units
	g.reader = &words.Reader{Language: g.reader.Language, Units: units}
	g.paper = &paper{own: o.Record, name: words.Of("Your numbers")}
	if o.Record != nil {
		g.shelf = g.shelf.of(o.Record.Pairs())
		if o.Record.Name != "" {
			g.paper.name = words.Of("The numbers of {0}", words.Name(o.Record.Name))
		}
	}
	v, err := g.volume()
	if err != nil {
		return nil, err
	}
	b := &Book{Own: g.paper.answered, Example: g.paper.atTheExample}
	if b.HTML, err = v.html(); err != nil {
		return nil, err
	}
	b.EPUB, err = v.epub(o.Made)
	return b, err
}

// volume is a book before it is written in one form or the other.
type volume struct {
	guide      *Guide
	Title      string
	For        []string // whose book it is, line by line
	Notice     []string
	Cover      string // the SVG of the cover's figure
	Front      *leaf
	Parts      []bookPart
	Glossary   *leaf
	Sources    *leaf
	leaves     []*leaf // all of the above in their order
	byKey      map[string]*leaf
	sourceNote map[string]int // the number of each source
}

// bookPart is a part of the guide with its chapters.
type bookPart struct {
	*leaf
	Chapters []*leaf
}

// leaf is one page of the guide in its book: a part's opening, a chapter, or a list at the
// end.
type leaf struct {
	Key, Number, Title, Part string
	page                     *guidePage
	tree                     *html.Node
	ids                      map[string]string // the number of the section that an id is in
}

// volume puts the book together.
func (g *Guide) volume() (*volume, error) {
	v := &volume{guide: g, Title: g.front.Title, byKey: map[string]*leaf{}, sourceNote: map[string]int{}}
	if g.paper.own != nil {
		v.For = g.paper.whose(g.reader)
	}
	for _, s := range []string{g.Notice, g.Local,
		g.say("Local law and the makers’ manuals come before this guide. Where something hurts, " +
			"stop and ask a clinician.")} {
		if s != "" {
			v.Notice = append(v.Notice, s)
		}
	}
	if f := g.shelf.figure("whole-rider", g.reader); f != nil {
		tree, err := g.pruned(f.SVG("figure", g.reader, bookWidth), "cover", "index.html")
		if err != nil {
			return nil, err
		}
		x := treeWriter{}
		x.children(tree)
		v.Cover = x.String()
	}
	// The sources are numbered first, because the chapters cite them by number.
	lists := &view{teller: teller{g.reader}}
	g.fillSources(lists)
	for _, topic := range lists.Library {
		for _, s := range topic.Sources {
			v.sourceNote[s.Key] = len(v.sourceNote) + 1
		}
	}
	var err error
	if v.Front, err = v.chapter(g.front, "", g.say("Introduction"), ""); err != nil {
		return nil, err
	}
	for i := range g.parts {
		part := &g.parts[i]
		number := strconv.Itoa(i + 1)
		p := bookPart{}
		if p.leaf, err = v.chapter(part.Page, number, part.Page.Title, part.Title); err != nil {
			return nil, err
		}
		for k, c := range part.Chapters {
			l, err := v.chapter(c, number+"."+strconv.Itoa(k+1), c.Title, part.Title)
			if err != nil {
				return nil, err
			}
			p.Chapters = append(p.Chapters, l)
		}
		v.Parts = append(v.Parts, p)
	}
	if v.Glossary, err = v.list(glossaryURL, g.say("Glossary"), g.glossaryOnPaper()); err != nil {
		return nil, err
	}
	if v.Sources, err = v.list(sourcesURL, g.say("Sources"), g.sourcesOnPaper(lists)); err != nil {
		return nil, err
	}
	for _, l := range v.leaves {
		v.refer(l)
	}
	return v, nil
}

// whose says for whom the book is.
func (p *paper) whose(r *words.Reader) (lines []string) {
	for _, s := range []string{p.own.Name, p.own.Bike, p.own.Date} {
		if s != "" {
			lines = append(lines, s)
		}
	}
	if lines == nil {
		lines = []string{words.English("With your own numbers").Say(r)}
	}
	return lines
}

// chapter makes a leaf of a page.
func (v *volume) chapter(p *guidePage, number, title, part string) (*leaf, error) {
	body, err := v.guide.onPaper(p)
	if err != nil {
		return nil, err
	}
	l := &leaf{Key: bookKey(p.URL), Number: number, Title: title, Part: part, page: p}
	if l.tree, err = v.guide.pruned(body, l.Key, p.URL); err != nil {
		return nil, fmt.Errorf("%s: %w", p.file, err)
	}
	v.add(l)
	return l, nil
}

// list makes a leaf of what stands at the book's end.
func (v *volume) list(url, title, body string) (*leaf, error) {
	l := &leaf{Key: bookKey(url), Title: title}
	var err error
	if l.tree, err = v.guide.pruned(body, l.Key, url); err != nil {
		return nil, err
	}
	v.add(l)
	return l, nil
}

func (v *volume) add(l *leaf) {
	l.numberSections()
	v.leaves = append(v.leaves, l)
	v.byKey[l.Key] = l
}

// bookKey is the anchor of a page in the book, made of its address in the guide.
func bookKey(url string) string {
	return strings.ReplaceAll(strings.TrimSuffix(url, ".html"), "/", "-")
}

// of returns the shelf with figures drawn for whoever has these numbers.
func (s *shelf) of(own []calculators.Pair) *shelf {
	with := *s
	with.own = own
	return &with
}

// bookWidth is how wide a figure stands in a book, in pixels: two thirds of a page's text,
// and all of what an e-reader has.
const bookWidth = 460

// smallWidth is that of the plates that show how something is measured.
const smallWidth = drawing.Small

// picturesOf are the addresses of the pictures of a shop that the book shows, in their order.
func (g *Guide) picturesOf() (list []string) {
	for _, s := range g.shown {
		if s.picture != nil {
			list = append(list, s.url)
		}
	}
	slices.Sort(list)
	return list
}

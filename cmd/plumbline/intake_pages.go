package main

import (
	"errors"
	"fmt"
	"html/template"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"plumbline/calculators/caution"
	"plumbline/calculators/desk"
	"plumbline/calculators/drawing"
	"plumbline/calculators/intake"
	"plumbline/calculators/markup"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
	"plumbline/site/told"
	"plumbline/templates"
)

// pagesMark stands in a folder that intake has written, which it may write again.
const pagesMark = ".plumbline-intake"

var pagesTemplates = template.Must(template.ParseFS(templates.Files, "intake/clients.html"))

// dated keeps each day of a text on one line.
func dated(text string) template.HTML {
	return template.HTML((&markup.Writer{}).Dated(text).String()) // the writer escapes it
}

// pageView is what a page is filled with, and who reads it.
type pageView struct {
	Language, Title string
	Page            map[string]any
	reader          *words.Reader
}

// Say says a text of the template.
func (v pageView) Say(english words.English) string { return english.Say(v.reader) }

// Told says a text that the template is given.
func (v pageView) Told(text words.English) string { return text.Say(v.reader) }

// pages writes a folder with a printable page for each client and an index.
type pages struct {
	dir    string
	reader *words.Reader

	mu    sync.Mutex
	files map[*arrival]string
	err   error
}

// newPages takes a folder that is new, empty, or was written by intake before. What is
// in it is about people's bodies, so nobody else on this machine may read it.
func newPages(dir string, r *words.Reader) (*pages, error) {
	entries, err := os.ReadDir(dir)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, told.Wrong("{0} cannot be used: {1}", dir, told.Plain(err))
	}
	mark := filepath.Join(dir, pagesMark)
	if _, err := os.Stat(mark); err != nil && len(entries) > 0 {
		return nil, told.Wrong("{0} holds other files. Name a new or an empty folder", dir)
	}
	for _, e := range entries { // what an earlier run wrote, and nothing else
		if name := e.Name(); name == "index.html" ||
			strings.HasPrefix(name, "client-") && filepath.Ext(name) == ".html" {
			if err := os.Remove(filepath.Join(dir, name)); err != nil {
				return nil, err
			}
		}
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, err
	}
	style, err := templates.Files.ReadFile("intake/clients.css")
	if err != nil {
		return nil, err
	}
	figures, err := templates.Files.ReadFile("style/figure.css")
	if err != nil {
		return nil, err
	}
	if err := os.WriteFile(filepath.Join(dir, "style.css"), slices.Concat(style, figures), 0o600); err != nil {
		return nil, err
	}
	return &pages{dir: dir, reader: r, files: map[*arrival]string{}}, os.WriteFile(mark, nil, 0o600)
}

// pageLine is a client in the index.
type pageLine struct {
	Mark, Name, Brief, File, From string
	About                         template.HTML

	Also bool // it belongs to the rider of the line above
}

// pageComparison is a comparison as a page shows it.
type pageComparison struct {
	Title, Left, Right template.HTML
	Only               string
	Rows               []differ
	Figure             template.HTML
	Laid               template.HTML // what the figure’s lines are
}

// compared writes the comparisons of a record, with their figures.
func (p *pages) compared(l look) (list []pageComparison) {
	for i, c := range l.comparisons(p.reader) {
		one := pageComparison{
			Title: dated(c.title),
			Left:  dated(c.left),
			Right: dated(c.right),
			Only:  c.onlyOne(p.reader),
			Rows:  c.rows(p.reader),
		}
		if c.chosen { // all that was not set stays as it is
			one.Only = ""
		}
		if f := c.figure(); f != nil {
			// The writer of figures escapes every text in them.
			one.Figure = template.HTML(f.SVG(fmt.Sprintf("laid-%d", i+1), p.reader, drawing.Anywhere))
			one.Laid = dated(desk.Laid(words.Name(c.left), words.Name(c.right)).Say(p.reader))
		}
		if one.Rows != nil || one.Figure != "" {
			list = append(list, one)
		}
	}
	return list
}

func (p *pages) before(list []*arrival) string {
	var lines, rest []pageLine
	riders, last := map[int]bool{}, -1
	for _, a := range list {
		if a.Record != nil && !a.Replaced() {
			p.files[a] = fmt.Sprintf("client-%04d.html", len(p.files)+1)
			riders[a.Rider] = true
		}
	}
	for _, a := range list {
		switch {
		case a.Record == nil:
			why := a.aside.Say(p.reader)
			for _, x := range a.Problems {
				why = strings.TrimSpace(why + " " + x.Text.Say(p.reader))
			}
			rest = append(rest, pageLine{From: oneLine(a.From), Brief: why})
		case a.Replaced():
			why := a.Shown().Say(p.reader) + ": " + a.kinship(p.reader)
			rest = append(rest, pageLine{From: oneLine(a.From), Brief: why})
		default:
			lines = append(
				lines,
				pageLine{strings.TrimSpace(mark(a.Wants())), a.Shown().Say(p.reader), a.brief(p.reader), p.files[a],
					oneLine(a.From), dated(a.About(p.reader)), last == a.Rider},
			)
			last = a.Rider
		}
	}
	p.write("index.html", "index", say(p.reader, "Clients"), map[string]any{"Lines": lines, "Rest": rest,
		"People": people(len(riders), len(lines)).Say(p.reader)})
	return ""
}

func (p *pages) sheet(l look) string {
	file := p.files[l.arrival]
	if file == "" {
		return ""
	}
	var now [][5]string
	for _, s := range suggestions(l) {
		now = append(now, s.cells(p.reader))
	}
	var asked [][2]string
	for _, a := range request.Answers(l.Record) {
		if !a.Question.Health {
			asked = append(asked, [2]string{a.Question.Text.Say(p.reader), a.Said(p.reader)})
		}
	}
	note := ""
	if l.Record.Note != "" {
		note = say(p.reader, "Note: {0}", name(l.Record.Note))
	}
	var measured [][3]string
	s := sheets{reader: p.reader}
	for i := range l.Record.Entries {
		if e := &l.Record.Entries[i]; e.Read() && !request.IsKey(e.Key) {
			measured = append(measured, [3]string{e.Quantity.Label.Say(p.reader), s.value(e), s.remarks(l.Record, e)})
		}
	}
	p.write(file, "client", l.Shown().Say(p.reader), map[string]any{
		"About":     dated(l.About(p.reader)),
		"From":      oneLine(l.From),
		"Condition": l.Condition().Say(p.reader),
		"Kinship":   l.kinship(p.reader),
		"Note":      note,
		"Asked":     asked,
		"Before":    l.arrival.before(p.reader),
		"Again":     l.slips(p.reader),
		"Now":       now,
		"Yours":     l.advice() != nil,
		"Notes":     l.noted(),
		"Link":      l.link(),
		"Unlinked":  l.unlinked(p.reader),
		"Compared":  p.compared(l),
		"Lacking":   labels(l.Lacking).Say(p.reader),
		"Measured":  measured,
		"Cautions": intake.Cautions(
			l.answers,
		),
		"Certainly": certainly(words.Of("Suggested to begin with"), l.care).Say(p.reader),
	})
	return ""
}

// write writes one page; the first failure is told at the end.
func (p *pages) write(file, name, title string, data map[string]any) {
	var b strings.Builder
	v := pageView{"en", title, data, p.reader}
	if l := p.reader.Language; l != nil {
		v.Language = l.Tag
	}
	err := pagesTemplates.ExecuteTemplate(&b, name, v)
	if err == nil {
		err = os.WriteFile(filepath.Join(p.dir, file), []byte(b.String()), 0o600)
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.err == nil {
		p.err = err
	}
}

func (p *pages) between() string { return "" }

func (p *pages) after([]*caution.Caution) string {
	if p.err != nil {
		return ""
	}
	return words.Count(len(p.files), "{0} page and an index are in {1}. They hold people’s measurements: keep them to "+
		"yourself.", "{0} pages and an index are in {1}. They hold people’s measurements: keep them to yourself.",
		name(filepath.Join(p.dir, "index.html"))).Say(p.reader) + "\n"
}

// failed is what went wrong while writing, nil if nothing.
func (p *pages) failed() error { return p.err }

package main

import (
	_ "embed"
	"errors"
	"fmt"
	"html/template"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"

	"plumbline/calculators/caution"
	"plumbline/calculators/intake"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// pagesMark stands in a folder that intake has written, which it may write again.
const pagesMark = ".plumbline-intake"

//go:embed intake_pages.html
var pagesSource string

//go:embed intake_pages.css
var pagesStyle []byte

var pagesTemplates = template.Must(template.New("").Parse(pagesSource))

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
		return nil, fmt.Errorf("%s cannot be used: %w", dir, err)
	}
	mark := filepath.Join(dir, pagesMark)
	if _, err := os.Stat(mark); err != nil && len(entries) > 0 {
		return nil, fmt.Errorf("%s holds other files. Name a new or an empty folder", dir)
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
	if err := os.WriteFile(filepath.Join(dir, "style.css"), pagesStyle, 0o600); err != nil {
		return nil, err
	}
	return &pages{dir: dir, reader: r, files: map[*arrival]string{}}, os.WriteFile(mark, nil, 0o600)
}

// pageLine is a client in the index.
type pageLine struct {
	Mark, Name, About, Brief, File, From string
}

func (p *pages) before(list []*arrival) string {
	var lines, rest []pageLine
	n := 0
	for _, a := range list {
		if a.record != nil && !a.replaced() {
			n++
			p.files[a] = fmt.Sprintf("client-%04d.html", n)
		}
	}
	for _, a := range byUrgency(list) {
		switch {
		case a.record == nil:
			why := a.aside
			for _, x := range a.problems {
				why = strings.TrimSpace(why + " " + x.Text.Say(p.reader))
			}
			rest = append(rest, pageLine{From: oneLine(a.from), Brief: why})
		case a.replaced():
			rest = append(rest, pageLine{From: oneLine(a.from), Brief: a.name() + ": " + a.kinship()})
		default:
			lines = append(
				lines,
				pageLine{strings.TrimSpace(mark(a.wants())), a.name(), a.about(), a.brief(), p.files[a],
					oneLine(a.from)},
			)
		}
	}
	p.write("index.html", "index", map[string]any{"Lines": lines, "Rest": rest})
	return ""
}

func (p *pages) sheet(l look) string {
	file := p.files[l.arrival]
	if file == "" {
		return ""
	}
	var now [][4]string
	for _, s := range suggestions(l) {
		now = append(now, s.cells(p.reader))
	}
	var asked [][2]string
	for _, a := range request.Answers(l.record) {
		if !a.Question.Health {
			asked = append(asked, [2]string{string(a.Question.Text), a.Text})
		}
	}
	var measured [][3]string
	s := sheets{reader: p.reader}
	for i := range l.record.Entries {
		if e := &l.record.Entries[i]; e.Read() && !request.IsKey(e.Key) {
			measured = append(measured, [3]string{string(e.Quantity.Label), s.value(e), s.remarks(l.record, e)})
		}
	}
	against := ""
	if l.earlier != nil && l.earlier.record != nil {
		against = day(l.earlier.record)
	}
	p.write(file, "client", map[string]any{
		"Name": l.name(), "About": l.about(), "From": oneLine(l.from),
		"Condition": l.condition(), "Kinship": l.kinship(), "Note": l.record.Note, "Asked": asked,
		"Before": l.arrival.before(), "Again": l.slips(p.reader), "Now": now, "Against": against,
		"Compared": l.compared(p.reader), "Lacking": labels(l.lacking), "Measured": measured,
		"Cautions": intake.Cautions(l.answers), "OneWay": oneWay(l.care),
	})
	return ""
}

// write writes one page; the first failure is told at the end.
func (p *pages) write(file, name string, data any) {
	var b strings.Builder
	err := pagesTemplates.ExecuteTemplate(&b, name, data)
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
	return fmt.Sprintf("%s and an index are in %s. They hold people's measurements: keep them to yourself.\n",
		counted(len(p.files), "page", "pages"), filepath.Join(p.dir, "index.html"))
}

// failed is what went wrong while writing, nil if nothing.
func (p *pages) failed() error { return p.err }

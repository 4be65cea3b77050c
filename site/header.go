package site

import (
	"bytes"
	"slices"

	"plumbline/site/told"
	"plumbline/site/yamlfile"
)

// header is what stands between the --- lines at the top of a page.
type header struct {
	Title    string
	Nav      string // the short name in the rail
	Question string
	Summary  string
	Needs    []string
	Time     string
	Sources  []item
	Cautions []item
	Replaces item   // the edition of the built-in chapter that the shop's was made from
	Original item   // the edition of the original that the translation was made from
	Clock    string // Time as the original says it, from which it is read
}

var headerKeys = []string{"title", "nav", "question", "summary", "needs", "time", "sources", "cautions", "replaces",
	"original"}

// from is the header of a translation, with what its original says once for all languages.
func (h header) from(original source) header {
	o, _, _ := readHeader(original)
	h.Sources, h.Cautions, h.Clock = o.Sources, o.Cautions, o.Time
	if h.Time == "" {
		h.Time = o.Time
	}
	if h.Needs == nil {
		h.Needs = o.Needs
	}
	return h
}

// splitHeader parts a page into header and text. at is where the text begins.
func splitHeader(text []byte) (head []byte, at int, ok bool) {
	const fence = "---\n"
	if !bytes.HasPrefix(text, []byte(fence)) {
		return nil, 0, false
	}
	rest := text[len(fence):]
	if bytes.HasPrefix(rest, []byte(fence)) {
		return nil, 2 * len(fence), true
	}
	end := bytes.Index(rest, []byte("\n"+fence))
	if end < 0 {
		if bytes.HasSuffix(rest, []byte("\n---")) {
			return rest[:len(rest)-3], len(text), true
		}
		return nil, 0, false
	}
	return rest[:end+1], len(fence) + end + 1 + len(fence), true
}

// readHeader reads a page's header; at is where its text begins.
func readHeader(s source) (h header, at int, bad []Mistake) {
	head, at, ok := splitHeader(s.text)
	if !ok {
		return h, 0, []Mistake{{s.file, 1, 1, told.Of("the page has no header"),
			told.Of("begin it with a line ---, then title, nav, question and summary, then a line ---")}}
	}
	y := yamlOf(s.file, 1)
	given := []string{}
	for _, e := range y.Root(head) {
		if !y.Known(e, headerKeys...) {
			continue
		}
		given = append(given, e.Key)
		switch e.Key {
		case "title":
			h.Title = y.text(e)
		case "nav":
			h.Nav = y.text(e)
		case "question":
			h.Question = y.text(e)
		case "summary":
			h.Summary = y.text(e)
		case "needs":
			h.Needs = typesetAll(texts(y.List(e)))
		case "time":
			h.Time = y.text(e)
		case "sources":
			h.Sources = y.List(e)
		case "cautions":
			h.Cautions = y.List(e)
		case "replaces":
			h.Replaces = item{Text: y.Raw(e), At: e.Value.GetToken(), File: s.file}
		case "original":
			h.Original = item{Text: y.Raw(e), At: e.Value.GetToken(), File: s.file}
		}
	}
	if len(y.bad()) == 0 {
		for _, k := range []string{"title", "nav", "question", "summary"} {
			if !slices.Contains(given, k) {
				y.Bad = append(y.Bad, yamlfile.Mistake{
					File: s.file, Line: 1, Column: 1,
					What: told.Of("the header has no “{0}”", k), Remedy: told.Of("add a line “{0}: …”", k),
				})
			}
		}
	}
	return h, at, y.bad()
}

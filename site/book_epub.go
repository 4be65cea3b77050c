package site

import (
	"archive/zip"
	"bytes"
	"crypto/sha256"
	"fmt"
	"html"
	"mime"
	"path"
	"strings"
	"text/template"
	"time"

	xhtml "golang.org/x/net/html"

	"plumbline/templates"
)

// An EPUB 3 is a zip file of XHTML pages with a list of them (EPUB 3.2, W3C Community
// Group 2019: package document, navigation document, container). Pages and lists are
// templates; the tests have epubcheck judge the result.

// xmlTemplates write the files of an EPUB. x escapes a text for XML.
var xmlTemplates = template.Must(template.New("").Funcs(template.FuncMap{"x": html.EscapeString}).
	ParseFS(templates.Files, "book/epub/*"))

// epubPage is one file of the book's text.
type epubPage struct {
	ID, File, Title string
	Language        string
	Number          string
	Body            string
	Kind            string // what the page is in the vocabulary of EPUB, "" for nothing of the kind
	SVG             bool
	Chapters        []*epubPage // of a part
}

// epubPicture is a picture of the shop's folder.
type epubPicture struct {
	ID, File, Type string
	data           []byte
}

// epubView is what the lists are filled with.
type epubView struct {
	teller
	Language, Title, Tagline string
	Maker, ID, Modified      string
	Summary                  string
	Own                      bool
	For, Notice              []string
	Pages                    []*epubPage // in reading order, without the cover
	Contents                 []*epubPage // the same as a tree
	Pictures                 []epubPicture
	CoverSVG                 string
	TitleSize, TaglineSize   int // of the letters on the cover, so that each is one line
}

// epubPicture is the picture that is published at an address, as e-readers show it; where
// there is none, the words in its place are written.
func (g *Guide) epubPicture(src string) (p epubPicture, ok bool) {
	made := g.pictureAt(src)
	if made == nil {
		return p, false
	}
	data, ext, err := made.forReaders()
	if err != nil { // which was read when the guide was loaded
		return p, false
	}
	return epubPicture{"i-" + slug(src), "pictures/" + strings.TrimSuffix(src, made.ext) + ext,
		mime.TypeByExtension(ext), data}, true
}

// epub writes the book as an EPUB 3.
func (v *volume) epub(made time.Time) ([]byte, error) {
	g := v.guide
	view := &epubView{
		teller:   teller{g.reader},
		Language: g.Language,
		Title:    v.Title,
		Tagline:  g.Tagline,
		Maker:    g.Name,
		For:      v.For,
		Notice:   v.Notice,
		Own:      g.paper.own != nil,
		CoverSVG: v.Cover,
		Summary:  g.front.Summary,
		Modified: made.UTC().Format("2006-01-02T15:04:05Z"),
	}
	view.TitleSize, view.TaglineSize = fitting(v.Title, 34), fitting(g.Tagline, 15)
	pictures := map[string]epubPicture{}
	write := func(l *leaf, kind string) *epubPage {
		x := treeWriter{
			link: func(key, id string) string {
				to := key + ".xhtml"
				if id != "" {
					to += "#" + id
				}
				return to
			},
			image: func(n *xhtml.Node) (string, bool) {
				src := attrOf(n, "src")
				one, ok := pictures[src]
				if !ok {
					if one, ok = g.epubPicture(src); !ok {
						return "", false
					}
					pictures[src] = one
				}
				return one.File, true
			},
		}
		x.children(l.tree)
		p := &epubPage{ID: "p-" + l.Key, File: l.Key + ".xhtml", Title: l.Title, Number: l.Number, Body: x.String(),
			Kind: kind, Language: g.Language}
		p.SVG = strings.Contains(p.Body, "<svg")
		view.Pages = append(view.Pages, p)
		return p
	}
	view.Contents = append(view.Contents, write(v.Front, "introduction"))
	for _, part := range v.Parts {
		p := write(part.leaf, "part")
		for _, c := range part.Chapters {
			p.Chapters = append(p.Chapters, write(c, "chapter"))
		}
		view.Contents = append(view.Contents, p)
	}
	view.Contents = append(view.Contents, write(v.Glossary, "glossary"), write(v.Sources, "bibliography"))
	for _, src := range g.picturesOf() {
		if p, shown := pictures[src]; shown {
			view.Pictures = append(view.Pictures, p)
		}
	}
	view.ID = v.identity(view)
	return v.packed(view)
}

// fitting is the size of letters at which a line fits on the cover, at most the given one.
func fitting(line string, most int) int {
	const across = 2 * 480 // of the cover, in halves of a letter's height, as wide as letters are
	return max(min(most, across/max(len([]rune(line)), 1)), 6)
}

// identity is a name of the book that changes with its content: a UUID of version 8, which
// RFC 9562 leaves to whoever makes it, of a hash.
func (v *volume) identity(view *epubView) string {
	h := sha256.New()
	for _, p := range view.Pages {
		fmt.Fprintf(h, "%s %d\n%s", p.File, len(p.Body), p.Body)
	}
	b := h.Sum(nil)[:16]
	b[6] = b[6]&0x0f | 0x80
	b[8] = b[8]&0x3f | 0x80
	return fmt.Sprintf("urn:uuid:%x-%x-%x-%x-%x", b[0:4], b[4:6], b[6:8], b[8:10], b[10:])
}

// packed writes the zip file. The media type comes first and is not compressed, so that a
// reader knows the file by its first bytes.
func (v *volume) packed(view *epubView) ([]byte, error) {
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	put := func(name string, method uint16, data []byte) error {
		w, err := z.CreateHeader(&zip.FileHeader{Name: name, Method: method})
		if err == nil {
			_, err = w.Write(data)
		}
		return err
	}
	if err := put("mimetype", zip.Store, []byte("application/epub+zip")); err != nil {
		return nil, err
	}
	type entry struct {
		name, template string
		data           any
	}
	entries := []entry{{"META-INF/container.xml", "container", view}, {"book/package.opf", "package", view},
		{"book/nav.xhtml", "nav", view}, {"book/cover.xhtml", "coverpage", view},
		{"book/cover.svg", "coverpicture", view}}
	for _, p := range view.Pages {
		entries = append(entries, entry{"book/" + p.File, "page", p})
	}
	for _, e := range entries {
		var b bytes.Buffer
		if err := xmlTemplates.ExecuteTemplate(&b, e.template, e.data); err != nil {
			return nil, err
		}
		if err := put(e.name, zip.Deflate, b.Bytes()); err != nil {
			return nil, err
		}
	}
	style, err := templates.Files.ReadFile("book/book.css")
	if err != nil {
		return nil, err
	}
	if err := put("book/book.css", zip.Deflate, style); err != nil {
		return nil, err
	}
	for _, p := range view.Pictures {
		if err := put(path.Join("book", p.File), zip.Store, p.data); err != nil {
			return nil, err
		}
	}
	err = z.Close()
	return out.Bytes(), err
}

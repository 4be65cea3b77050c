package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"html/template"
	"mime"
	"strings"

	"golang.org/x/net/html"

	"plumbline/templates"
)

// pageView is a leaf of the book as its templates know it.
type pageView struct {
	*leaf
	Anchor string
	Body   template.HTML
	Name   string // of the kind of page in print that has the chapter's title at its head
}

// partView is a part of the book.
type partView struct {
	pageView
	Chapters []pageView
}

// bookView is what the book's frame is filled with.
type bookView struct {
	teller
	Language, Title, Maker, Tagline, Policy string
	For, Notice                             []string
	Own                                     bool
	Style                                   template.CSS
	Cover                                   template.HTML
	Front                                   pageView
	Parts                                   []partView
	Ends                                    []pageView // glossary and sources
}

// html writes the book as one page made for printing, with its style and pictures in it.
func (v *volume) html() ([]byte, error) {
	view := bookView{teller: teller{v.guide.reader}, Language: v.guide.Language, Title: v.Title, Maker: v.guide.Name,
		Tagline: v.guide.Tagline, For: v.For, Notice: v.Notice,
		Own: v.guide.paper.own != nil, Cover: template.HTML(v.Cover)}
	link := func(key, id string) string {
		if id == "" {
			id = key
		}
		return "#" + id
	}
	write := func(l *leaf, down int) pageView {
		x := treeWriter{link: link, image: v.embedded, down: down}
		x.children(l.tree)
		return pageView{leaf: l, Anchor: l.Key, Body: template.HTML(x.String()), Name: "p-" + l.Key}
	}
	view.Front = write(v.Front, 0)
	for _, p := range v.Parts {
		part := partView{pageView: write(p.leaf, 0)}
		for _, c := range p.Chapters {
			part.Chapters = append(part.Chapters, write(c, 1))
		}
		view.Parts = append(view.Parts, part)
	}
	view.Ends = []pageView{write(v.Glossary, 0), write(v.Sources, 0)}
	style, err := templates.Files.ReadFile("book/book.css")
	if err != nil {
		return nil, err
	}
	printed, err := templates.Files.ReadFile("book/print.css")
	if err != nil {
		return nil, err
	}
	css := string(style) + string(printed) + v.runningHeads()
	sum := sha256.Sum256([]byte(css))
	view.Policy = "default-src 'none'; img-src data:; style-src 'sha256-" +
		base64.StdEncoding.EncodeToString(sum[:]) + "'"
	view.Style = template.CSS(css)
	var b bytes.Buffer
	err = bookTemplates.ExecuteTemplate(&b, "book", view)
	return b.Bytes(), err
}

// embedded returns a picture of the shop's folder as part of the page.
func (v *volume) embedded(n *html.Node) (string, bool) {
	made := v.guide.pictureAt(attrOf(n, "src"))
	if made == nil {
		return "", false
	}
	kind := mime.TypeByExtension(made.ext)
	return "data:" + kind + ";base64," + base64.StdEncoding.EncodeToString(made.data), true
}

// runningHeads puts the number and title of each chapter at the head of its pages, so that
// a reference to a section is found without numbers of pages, which a browser cannot give
// to a link.
func (v *volume) runningHeads() string {
	var b strings.Builder
	for _, l := range v.leaves {
		head := l.Title
		if l.Number != "" {
			head = l.Number + "  " + head
		}
		head = strings.NewReplacer(`\`, `\\`, `"`, `\"`, "<", `\3c `).Replace(head)
		b.WriteString("\n@page p-" + l.Key + " { @top-right { content: \"" + head + "\"; } }")
		b.WriteString("\n." + "p-" + l.Key + " { page: p-" + l.Key + "; }")
	}
	return b.String() + "\n"
}

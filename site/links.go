package site

import (
	"bytes"
	"errors"
	"net/url"
	"path"
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// where returns the place of a link's address in the page's text.
func (p *guidePage) where(n ast.Node, dest []byte) int {
	at := max(n.Pos(), 0)
	src := p.body()
	// goldmark knows where the link's text ends; the address follows it.
	if last := n.LastChild(); last != nil {
		if t, ok := last.(*ast.Text); ok {
			at = max(at, t.Segment.Stop)
		}
	}
	if at < len(src) && len(dest) > 0 {
		if i := bytes.Index(src[at:], dest); i >= 0 && i < 2000 {
			return at + i
		}
	}
	return at
}

// target is what an address in a chapter leads to.
type target struct {
	page   *guidePage
	file   string // a picture, or a table to download
	anchor string
	away   bool // outside the guide
	out    bool // a chapter that guide.yaml leaves out
}

// resolve finds what an address leads to, or says what is wrong with it.
func (g *Guide) resolve(p *guidePage, dest string) (t target, what, remedy words.Text) {
	if s, ok := g.fileAt(p, dest); ok {
		return target{file: s.path}, words.Text{}, words.Text{}
	}
	u, err := url.Parse(dest)
	switch {
	case err != nil || dest == "":
		return t, told.Of("“{0}” is no address", dest), told.Of("write one like height.md or https://example.org")
	case u.Scheme == "https" || u.Scheme == "http":
		if u.Host == "" {
			return t, told.Of("“{0}” names no host", dest), told.Of("write the address in full")
		}
		return target{away: true}, words.Text{}, words.Text{}
	case u.Scheme == "mailto" || u.Scheme == "tel":
		return target{away: true}, words.Text{}, words.Text{}
	case u.Scheme != "":
		return t, told.Of("links of the kind “{0}:” are not allowed", u.Scheme),
			told.Of("link to a page of the guide or to a web address")
	case u.Host != "" || strings.HasPrefix(u.Path, "/"):
		return t, told.Of("“{0}” begins at the top of some web server", dest),
			told.Of("write the path from this file, like ../saddle/height.md")
	case u.RawQuery != "":
		return t, told.Of("a link inside the guide takes no “?”"), told.Of("take “?{0}” out", u.RawQuery)
	}
	if u.Path == "" {
		return g.anchored(p, u.Fragment)
	}
	to := path.Join(path.Dir(p.Path), u.Path)
	if strings.HasPrefix(to, "../") || to == ".." {
		return t, told.Of("“{0}” leads out of the guide’s folder", dest), told.Of("put the file into the folder")
	}
	if page := g.byPath[to]; page != nil {
		return g.anchored(page, u.Fragment)
	}
	if slices.Contains(g.leftOut, to) {
		return target{out: true}, words.Text{}, words.Text{}
	}
	return g.lost(p, to, dest)
}

// lost explains a path that no page has.
func (g *Guide) lost(p *guidePage, to, dest string) (t target, what, remedy words.Text) {
	if _, ok := g.layers.file(to); ok {
		return t, told.Of("“{0}” is in no part of guide.yaml", dest), told.Of("add it to the part’s chapters")
	}
	if path.Ext(to) == ".html" || path.Ext(to) == "" {
		with := strings.TrimSuffix(to, ".html") + ".md"
		if g.byPath[with] != nil {
			return t, told.Of("“{0}” names no file of the guide", dest), told.Of("write “{0}”", from(p, with))
		}
	}
	for _, q := range g.layers.paths {
		if strings.EqualFold(q, to) {
			return t, told.Of(
					"“{0}” differs from the file’s name only in case",
					dest,
				), told.Of(
					"write “{0}”",
					from(p, q),
				)
		}
	}
	if ext := path.Ext(to); len(ext) > 1 && !strings.ContainsAny(ext, " #") && ext != ".md" && ext != ".html" {
		return t, told.Of("“{0}” is no chapter, and files of this kind are not in a guide", dest),
			told.Of("put it on your web site and link to its address there; a guide has chapters, pictures and " +
				".csv tables")
	}
	var known []string
	for _, q := range g.pages {
		known = append(known, q.Path)
	}
	if near := measure.NearestName(to, known); near != "" {
		return t, told.Of("there is no page “{0}”", dest), told.Of("did you mean “{0}”?", from(p, near))
	}
	for _, q := range known {
		if path.Base(q) == path.Base(to) {
			return t, told.Of("there is no page “{0}”", dest), told.Of("did you mean “{0}”?", from(p, q))
		}
	}
	return t, told.Of(
			"there is no page “{0}”",
			dest,
		), told.Of(
			"write the path of a chapter from this file, or take the link out",
		)
}

// anchored checks an anchor of a page.
func (g *Guide) anchored(p *guidePage, anchor string) (t target, what, remedy words.Text) {
	if anchor == "" {
		return target{page: p}, words.Text{}, words.Text{}
	}
	if slices.Contains(g.gone[p.Path], anchor) {
		return target{page: p}, words.Text{}, words.Text{} // the section is hidden; its chapter is not
	}
	var known []string
	for _, h := range p.headings {
		if h.id == anchor {
			return target{page: p, anchor: anchor}, words.Text{}, words.Text{}
		}
		known = append(known, h.id)
	}
	return t, told.Of("“{0}” has no heading “#{1}”", p.Path, anchor),
		meant(anchor, known, told.Of("its headings are {0}", listed(known)))
}

// from is the path of a file as a page would write it.
func from(p *guidePage, to string) string { return relative(p.Path, to) }

// relative is the way from one slash path to another.
func relative(at, to string) string {
	a, b := strings.Split(at, "/"), strings.Split(to, "/")
	for len(a) > 1 && len(b) > 1 && a[0] == b[0] {
		a, b = a[1:], b[1:]
	}
	return strings.Repeat("../", len(a)-1) + strings.Join(b, "/")
}

// relink checks every link and picture of a page and points it at what is
// published.
func (g *Guide) relink(p *guidePage) (bad []Mistake) {
	for _, n := range p.links {
		dest := n.Destination
		t, what, remedy := g.resolve(p, string(dest))
		switch {
		case !what.None():
			bad = append(bad, p.mistake(p.where(n, dest), what, remedy))
		case t.out:
			unlink(n)
			continue
		case t.away:
		case slices.Contains(tables, strings.ToLower(path.Ext(t.file))):
			url := g.publishedAs(t.file, strings.ToLower(path.Ext(t.file)))
			g.show(t.file, shownFile{url: url})
			n.Destination = []byte(relative(p.URL, url))
		case t.file != "":
			bad = append(bad, p.mistake(p.where(n, dest), told.Of("“{0}” is a picture", string(dest)),
				told.Of("show it with ![what it shows]({0})", string(dest))))
		case p.is(t.page):
			n.Destination = []byte("#" + t.anchor)
		default:
			n.Destination = []byte(relative(p.URL, t.page.URL))
			if t.anchor != "" {
				n.Destination = append(n.Destination, "#"+t.anchor...)
			}
		}
		if n.FirstChild() == nil {
			bad = append(bad, p.mistake(p.where(n, dest), told.Of("this link has no text"),
				told.Of("say in the brackets where it leads")))
		}
	}
	for _, n := range p.images {
		bad = append(bad, g.picture(p, n)...)
	}
	for _, n := range p.autos {
		if t, what, remedy := g.resolve(p, string(n.URL(p.body()))); !what.None() || !t.away {
			bad = append(bad, p.mistake(max(n.Pos(), 0), what, remedy))
		}
	}
	return bad
}

// show notes a file that some page shows or offers.
func (g *Guide) show(file string, as shownFile) {
	g.showing.Lock()
	defer g.showing.Unlock()
	g.shown[file] = as
}

// unlink leaves of a link to a chapter that is left out only its words. An entry of a
// list that begins with it goes, and the list with its last entry; an act of a numbered
// list stays, because it may say more than where to read on.
func unlink(n *ast.Link) {
	block := n.Parent()
	item, inList := block.Parent().(*ast.ListItem)
	if inList && block.FirstChild() == n && (!item.Parent().(*ast.List).IsOrdered() || block.ChildCount() == 1) {
		list := item.Parent()
		if list.RemoveChild(list, item); list.ChildCount() == 0 {
			list.Parent().RemoveChild(list.Parent(), list)
		}
		return
	}
	for c := n.FirstChild(); c != nil; c = n.FirstChild() {
		block.InsertBefore(block, n, c)
	}
	block.RemoveChild(block, n)
}

// asNamed is an address as the file is named.
func asNamed(dest string) string {
	if name, err := url.PathUnescape(dest); err == nil {
		return name
	}
	return dest
}

// picture checks one image: the guide loads nothing from elsewhere.
func (g *Guide) picture(p *guidePage, n *ast.Image) (bad []Mistake) {
	at := p.where(n, n.Destination)
	dest := string(n.Destination)
	t, what, remedy := g.resolve(p, dest)
	switch {
	case what.None() && t.away:
		what, remedy = told.Of("a picture from another server would tell it who reads the guide"),
			told.Of("put the file into the guide’s folder")
	case !what.None() && path.Ext(dest) != ".md" && !strings.Contains(what.Say(nil), "folder") &&
		!strings.Contains(what.Say(nil), "not allowed") && !strings.Contains(what.Say(nil), "case"):
		what, remedy = told.Of(
			"there is no picture “{0}”",
			dest,
		), told.Of(
			"put it into the folder as {0}",
			either(pictures),
		)
	case what.None() && !slices.Contains(pictures, strings.ToLower(path.Ext(t.file))):
		what, remedy = told.Of("“{0}” is no picture", dest), told.Of("name a file that ends in {0}", either(pictures))
	}
	if !what.None() && slices.Contains(g.layers.refused, path.Join(path.Dir(p.Path), asNamed(dest))) {
		return nil // why the file itself is not read is told already
	}
	if !what.None() {
		return []Mistake{p.mistake(at, what, remedy)}
	}
	if len(inlineText(n, p.body())) == 0 {
		bad = append(bad, p.mistake(at, told.Of("the picture has no text for readers who cannot see it"),
			told.Of("say between the brackets what it shows")))
	}
	s, _ := g.layers.file(t.file)
	made, err := develop(t.file, s.text)
	if err != nil {
		var why wrongFile
		if !errors.As(err, &why) {
			why = wrongFile{told.Of("{0}", err), told.Of("save it as PNG or JPEG once more")}
		}
		return append(bad, Mistake{File: s.file, What: why.what, Remedy: why.remedy})
	}
	url := g.publishedAs(t.file, made.ext)
	g.show(t.file, shownFile{url, made})
	n.Destination = []byte(relative(p.URL, url))
	return bad
}

package site

import (
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// A page's text is read as a tree and freed of what only a screen can do: what opens is
// open, what is typed into is a line to write on, and what is pressed is gone. Every id
// gets the page's key before it, because all pages are in one book.

// inBook begins an address inside the book, until it is known in which form it is written:
// book:KEY#ID.
const inBook = "book:"

// screenOnly are classes of elements that a book does without; it has a sheet to write on of
// its own.
var screenOnly = []string{"saves", "garage", "step-on", "offline", "play", "waiting", "problem", "told", "sketch",
	"formula", "compose", "walk", "hand", "progress", "together", "ticked", "doubts", "unseen", "tell", "use", "send",
	"move", "pencil", "screen"}

// pruned returns the tree of a page's text. key is the page's anchor, url its address in
// the guide, from which its links lead.
func (g *Guide) pruned(body, key, url string) (*html.Node, error) {
	root := &html.Node{Type: html.ElementNode, Data: "div", DataAtom: atom.Div}
	nodes, err := html.ParseFragment(strings.NewReader(body), root)
	if err != nil {
		return nil, err
	}
	for _, n := range nodes {
		root.AppendChild(n)
	}
	p := pruner{g: g, key: key, url: url}
	p.children(root)
	return root, nil
}

type pruner struct {
	g        *Guide
	key, url string
}

// children prunes what is inside n.
func (p *pruner) children(n *html.Node) {
	for c := n.FirstChild; c != nil; {
		next := c.NextSibling
		if c.Type == html.ElementNode {
			p.element(c)
		} else if c.Type == html.CommentNode {
			n.RemoveChild(c)
		}
		c = next
	}
}

func (p *pruner) element(n *html.Node) {
	if p.drop(n) {
		n.Parent.RemoveChild(n)
		return
	}
	switch n.Data {
	case "details":
		rename(n, "div", "fold")
	case "summary":
		rename(n, "p", "fold-title")
	case "fieldset":
		rename(n, "div", "")
	case "legend":
		rename(n, "p", "fold-title")
	case "form":
		rename(n, "div", "")
	case "label":
		rename(n, "span", "pick")
	case "input":
		p.input(n)
	case "textarea":
		removeChildren(n)
		rename(n, "div", "lines")
		n.Attr = []html.Attribute{{Key: "class", Val: "lines"}}
		for range 3 {
			n.AppendChild(newElement("div", "line"))
		}
	case "a":
		p.link(n)
	case "img":
		p.picture(n)
	}
	p.attributes(n)
	p.children(n)
}

// drop tells whether an element has no place in a book.
func (p *pruner) drop(n *html.Node) bool {
	if has(n, "hidden") || n.Data == "button" || n.Data == "script" || n.Data == "template" {
		return true
	}
	classes := classesOf(n)
	if n.Data == "svg" && slices.Contains(classes, "choice") && slices.Contains(classes, "narrow") {
		return true // the other drawing of the two is for a page
	}
	if n.Data == "div" && slices.Contains(classes, "reading") && has(n, "data-reading") {
		return true // where a page makes a field
	}
	return slices.ContainsFunc(classes, func(c string) bool { return slices.Contains(screenOnly, c) })
}

// input makes of a field a line to write on, of a tick a box.
func (p *pruner) input(n *html.Node) {
	class := "write"
	if kind := attrOf(n, "type"); kind == "checkbox" || kind == "radio" {
		class = "box"
	}
	n.Data, n.DataAtom = "span", atom.Span
	n.Attr = []html.Attribute{{Key: "class", Val: class}}
}

// link points a link into the book, or leaves only its words where what it leads to is in
// no book.
func (p *pruner) link(n *html.Node) {
	dest := attrOf(n, "href")
	if n.Namespace == "svg" || dest == "" || strings.Contains(dest, ":") {
		if n.Namespace == "svg" && strings.HasPrefix(dest, "#") {
			setAttribute(n, "href", inBook+p.key+"#"+p.id(dest[1:]))
		}
		return
	}
	to, id, _ := strings.Cut(dest, "#")
	key := p.key
	if to != "" {
		key = bookKey(path.Join(path.Dir(p.url), to))
	}
	if strings.HasPrefix(id, "source-") && p.url != sourcesURL {
		key = bookKey(sourcesURL)
	}
	if id != "" {
		id = key + "--" + id
	}
	setAttribute(n, "href", inBook+key+"#"+id)
	if parent := n.Parent; parent != nil && slices.Contains(classesOf(parent), "cite") {
		removeChildren(n)
	}
}

func (p *pruner) picture(n *html.Node) {
	setAttribute(n, "src", path.Join(path.Dir(p.url), attrOf(n, "src")))
}

func (p *pruner) id(id string) string { return p.key + "--" + id }

// reference finds the id that an SVG refers to.
var reference = regexp.MustCompile(`url\(#([^)]+)\)`)

// attributes keeps those attributes that mean something on paper.
func (p *pruner) attributes(n *html.Node) {
	kept := n.Attr[:0]
	for _, a := range n.Attr {
		switch {
		case strings.HasPrefix(a.Key, "data-"), a.Key == "tabindex", a.Key == "for", a.Key == "novalidate",
			a.Key == "disabled", a.Key == "aria-live", a.Key == "aria-describedby", a.Key == "rel",
			a.Key == "name" && n.Namespace == "":
			continue
		case a.Key == "role" && (a.Val == "region" || a.Val == "status" || a.Val == "group"):
			continue
		case a.Key == "aria-label" && n.Data != "svg" && n.Data != "section" && n.Data != "nav":
			continue
		case a.Key == "id":
			a.Val = p.id(a.Val)
		case a.Key == "aria-labelledby":
			ids := strings.Fields(a.Val)
			for i := range ids {
				ids[i] = p.id(ids[i])
			}
			a.Val = strings.Join(ids, " ")
		default:
			a.Val = reference.ReplaceAllString(a.Val, "url(#"+p.key+"--$1)")
		}
		kept = append(kept, a)
	}
	n.Attr = kept
}

// numberSections numbers the sections of a chapter and notes in which of them each id is.
func (l *leaf) numberSections() {
	l.ids = map[string]string{}
	at, count := l.Number, 0
	for n := range l.tree.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		if n.Data == "h2" && l.page != nil && strings.Contains(l.Number, ".") {
			count++
			at = l.Number + "." + strconv.Itoa(count)
			mark := newElement("span", "number")
			mark.AppendChild(textNode(at))
			n.InsertBefore(textNode(" "), n.FirstChild)
			n.InsertBefore(mark, n.FirstChild)
		}
		if id := attrOf(n, "id"); id != "" {
			l.ids[id] = at
		}
	}
}

// refer writes behind each link to another chapter the number of the section it leads to,
// and into each citation the number of its source; a link that leads nowhere in the book
// becomes plain words.
func (v *volume) refer(l *leaf) {
	var links []*html.Node
	for n := range l.tree.Descendants() {
		if n.Type == html.ElementNode && n.Data == "a" && strings.HasPrefix(attrOf(n, "href"), inBook) {
			links = append(links, n)
		}
	}
	for _, n := range links {
		key, id, _ := strings.Cut(strings.TrimPrefix(attrOf(n, "href"), inBook), "#")
		to := v.byKey[key]
		if to == nil {
			unwrap(n)
			continue
		}
		number, there := to.ids[id]
		if !there {
			number, id = to.Number, ""
			setAttribute(n, "href", inBook+key+"#")
		}
		if source, ok := strings.CutPrefix(id, bookKey(sourcesURL)+"--source-"); ok {
			label := strconv.Itoa(v.sourceNote[source])
			if n.FirstChild == nil {
				n.AppendChild(textNode(label))
			} else {
				n.Parent.InsertBefore(textNode(" ["+label+"]"), n.NextSibling)
			}
			continue
		}
		if key == l.Key || number == "" || n.Namespace == "svg" || n.Parent.Data == "dfn" {
			continue
		}
		if slices.Contains(classesOf(n.Parent), "used") { // a list of many: the numbers alone
			removeChildren(n)
			n.AppendChild(textNode(number))
			continue
		}
		ref := newElement("span", "ref")
		ref.AppendChild(textNode("\u00a0(" + number + ")"))
		n.Parent.InsertBefore(ref, n.NextSibling)
	}
}

func attrOf(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

func has(n *html.Node, key string) bool {
	return slices.ContainsFunc(n.Attr, func(a html.Attribute) bool { return a.Key == key })
}

func setAttribute(n *html.Node, key, value string) {
	for i := range n.Attr {
		if n.Attr[i].Key == key {
			n.Attr[i].Val = value
			return
		}
	}
	n.Attr = append(n.Attr, html.Attribute{Key: key, Val: value})
}

func classesOf(n *html.Node) []string { return strings.Fields(attrOf(n, "class")) }

// rename makes another element of n, with one class more.
func rename(n *html.Node, tag, class string) {
	n.Data, n.DataAtom = tag, atom.Lookup([]byte(tag))
	if class != "" {
		setAttribute(n, "class", strings.TrimSpace(attrOf(n, "class")+" "+class))
	}
}

func newElement(tag, class string) *html.Node {
	return &html.Node{Type: html.ElementNode, Data: tag, DataAtom: atom.Lookup([]byte(tag)),
		Attr: []html.Attribute{{Key: "class", Val: class}}}
}

func textNode(s string) *html.Node { return &html.Node{Type: html.TextNode, Data: s} }

func removeChildren(n *html.Node) {
	for n.FirstChild != nil {
		n.RemoveChild(n.FirstChild)
	}
}

// unwrap leaves of an element only what is inside.
func unwrap(n *html.Node) {
	for c := n.FirstChild; c != nil; c = n.FirstChild {
		n.RemoveChild(c)
		n.Parent.InsertBefore(c, n)
	}
	n.Parent.RemoveChild(n)
}

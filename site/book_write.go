package site

import (
	"strconv"
	"strings"

	"golang.org/x/net/html"
)

// void are the elements without an end.
var void = map[string]bool{"br": true, "hr": true, "img": true, "col": true, "wbr": true}

// treeWriter writes trees so that a reader of XML and one of HTML understand the same: every
// element is ended, every attribute has a value, an SVG names its language.
type treeWriter struct {
	strings.Builder
	link  func(key, id string) string // the address of a place in the book
	image func(n *html.Node) (src string, ok bool)
	down  int // by how many levels headings go down
}

// children writes what is inside n.
func (x *treeWriter) children(n *html.Node) {
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		x.node(c)
	}
}

func (x *treeWriter) node(n *html.Node) {
	switch n.Type {
	case html.TextNode:
		x.text(n.Data)
	case html.ElementNode:
		x.element(n)
	}
}

func (x *treeWriter) element(n *html.Node) {
	tag, src := n.Data, ""
	if len(tag) == 2 && tag[0] == 'h' && tag[1] >= '1' && tag[1] <= '6' {
		tag = "h" + strconv.Itoa(min(int(tag[1]-'0')+x.down, 6))
	}
	if tag == "img" {
		var ok bool
		if src, ok = x.image(n); !ok {
			x.WriteString(`<span class="picture">`)
			x.text(attrOf(n, "alt"))
			x.WriteString(`</span>`)
			return
		}
	}
	x.WriteString("<" + tag)
	if tag == "svg" {
		x.attribute("xmlns", "http://www.w3.org/2000/svg")
	}
	for _, a := range n.Attr {
		value := a.Val
		switch {
		case a.Key == "xmlns":
			continue
		case a.Key == "src":
			value = src
		case a.Key == "href" && strings.HasPrefix(value, inBook):
			key, id, _ := strings.Cut(strings.TrimPrefix(value, inBook), "#")
			value = x.link(key, id)
		}
		key := a.Key
		if a.Namespace != "" {
			key = a.Namespace + ":" + key
		}
		x.attribute(key, value)
	}
	if void[tag] {
		x.WriteString("/>")
		return
	}
	x.WriteString(">")
	x.children(n)
	x.WriteString("</" + tag + ">")
}

func (x *treeWriter) attribute(key, value string) {
	x.WriteString(" " + key + `="`)
	_, _ = escapedXML.WriteString(x, value)
	x.WriteString(`"`)
}

func (x *treeWriter) text(s string) { _, _ = escapedXML.WriteString(x, s) }

// escapedXML escapes what means something in XML.
var escapedXML = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;")

package site

import (
	"encoding/json"
	stdhtml "html"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/renderer/html"
	"github.com/yuin/goldmark/util"
)

// The first use of a glossary term on a page links to its entry; the page's script
// shows the entry in place (templates/page/word.js).

// prose writes text, and the first use of each term in it as a link to its entry.
func (w *writer) prose(out util.BufWriter, n ast.Node, value []byte) {
	if !explained(n) {
		html.DefaultWriter.Write(out, unbroken(value))
		return
	}
	for text := looked(string(value)); len(value) > 0; text = text[len(text)-len(value):] {
		at, end, which := -1, 0, -1
		for i := range w.g.terms {
			if from, to := w.g.terms[i].first(text); from >= 0 && (at < 0 || from < at || from == at && to > end) {
				at, end, which = from, to, i
			}
		}
		if which < 0 {
			break
		}
		html.DefaultWriter.Write(out, unbroken(value[:at]))
		t := &w.g.terms[which]
		if w.said[which] {
			html.DefaultWriter.Write(out, unbroken(value[at:end]))
		} else {
			w.said[which] = true
			_, _ = out.WriteString(`<dfn class="word"><a href="` +
				stdhtml.EscapeString(relative(w.p.URL, glossaryURL)+"#"+t.Key) + `">`)
			html.DefaultWriter.Write(out, unbroken(value[at:end]))
			_, _ = out.WriteString("</a></dfn>")
		}
		value = value[end:]
	}
	html.DefaultWriter.Write(out, unbroken(value))
}

// explained tells whether terms are explained at a place: in the text, but not inside
// a heading, a link, a table or a quotation.
func explained(n ast.Node) bool {
	for n = n.Parent(); n != nil; n = n.Parent() {
		if _, other := n.AttributeString("lang"); other {
			return false // the glossary is in the page's language
		}
		switch n.Kind() {
		case ast.KindHeading, ast.KindLink, ast.KindImage, ast.KindCodeSpan, ast.KindBlockquote,
			extast.KindTableCell, extast.KindTableHeader:
			return false
		}
	}
	return true
}

// wordsURL is the list of terms that a page's script finds in forms and answers.
const wordsURL = "words.json"

// wordList is that list: for each term its entry in the glossary, the words that use it,
// and the phrases in which they mean something else, all as looked returns them
// (templates/page/words.js).
func (g *Guide) wordList() []byte {
	type word struct {
		Key   string   `json:"key"`
		Names []string `json:"names"`
		Not   []string `json:"not,omitempty"`
	}
	list := make([]word, len(g.terms))
	for i := range g.terms {
		t := &g.terms[i]
		list[i] = word{Key: t.Key, Names: t.names()}
		for _, phrase := range t.Not {
			if phrase != "" { // the page's script would find it everywhere
				list[i].Not = append(list[i].Not, looked(phrase))
			}
		}
	}
	b, err := json.Marshal(list)
	if err != nil {
		panic(err) // strings alone
	}
	return b
}

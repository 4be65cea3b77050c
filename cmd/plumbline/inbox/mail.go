package inbox

import (
	"bufio"
	"bytes"
	"io"
	"strings"

	"github.com/emersion/go-message"
	_ "github.com/emersion/go-message/charset" // mail in other letters than UTF-8
	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"plumbline/calculators/links"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// The bounds of one mail. What lies beyond them is not looked at: a reply is short,
// and the rest of a long mail is photos.
const (
	longestMail = 40 << 20 // bytes, photos included
	longestPart = 4 << 20  // bytes of one part, decoded
	deepestMail = 6        // mails forwarded inside mails
)

// readMail reads one mail: the links in its text, and the files that hang on it. What
// stands in it twice, as text and as HTML or in a quotation, is one record.
func readMail(name string, r io.Reader, each func(Found)) {
	m := mail{name: name}
	limited := &io.LimitedReader{R: r, N: longestMail}
	entity, err := message.Read(bufio.NewReader(limited))
	if err != nil && !message.IsUnknownCharset(err) && !message.IsUnknownEncoding(err) {
		each(Found{From: name, Err: told.Wrong("the mail cannot be read: {0}", err)})
		return
	}
	m.subject, _ = entity.Header.Text("Subject")
	m.part(entity, 0)
	m.hand(each)
}

// mail gathers what was found in one mail.
type mail struct {
	name, subject string
	found         []Found
	other         words.Text // what hangs on it and is no record, such as a photo
	guide         bool       // it has a link to a page of a guide, without what stands behind #
}

// part looks into one part of a mail, and into the parts of that.
func (m *mail) part(e *message.Entity, depth int) {
	kind, _, _ := e.Header.ContentType()
	if parts := e.MultipartReader(); parts != nil && depth < deepestMail {
		for {
			p, err := parts.NextPart()
			if err != nil && !message.IsUnknownCharset(err) && !message.IsUnknownEncoding(err) {
				return
			}
			m.part(p, depth+1)
		}
	}
	if kind == "message/rfc822" && depth < deepestMail {
		if inner, err := message.Read(e.Body); err == nil || message.IsUnknownCharset(err) {
			m.part(inner, depth+1)
		}
		return
	}
	head := bufio.NewReader(io.LimitReader(e.Body, longestPart))
	body, err := io.ReadAll(head)
	if err != nil && len(body) == 0 {
		return
	}
	if file := fileName(e); file != "" || !strings.HasPrefix(kind, "text/") {
		m.file(file, body)
		return
	}
	if kind == "text/html" {
		body = []byte(textOf(body))
	}
	m.text(body)
}

// fileName is what an attachment is called, "" where a part is the mail's own text.
func fileName(e *message.Entity) string {
	how, params, _ := e.Header.ContentDisposition()
	if how == "attachment" && params["filename"] == "" {
		return "attachment"
	}
	return params["filename"]
}

// file looks at what hangs on a mail.
func (m *mail) file(name string, body []byte) {
	text := bytes.TrimSpace(body)
	if kind := binary(text); !kind.None() || len(text) == 0 {
		if m.other.None() && !kind.None() {
			m.other = kind
		}
		return
	}
	read(name, bytes.NewReader(body), nil, func(f Found) {
		if f.Err == nil || f.Text != "" {
			m.found = append(m.found, f)
		}
	})
}

// text looks for links in a mail's own text.
func (m *mail) text(body []byte) {
	l := linkFinder("", true, func(f Found) { m.found = append(m.found, f) })
	eachLine(bufio.NewReader(bytes.NewReader(body)), func(n int, line string, err error) {
		if err == nil {
			l.Line(n, line)
			m.guide = m.guide || strings.Contains(line, ".html")
		}
	})
	l.End()
}

// hand hands over what was found, each record once, and the best copy of it.
func (m *mail) hand(each func(Found)) {
	var kept links.Copies
	var aside *Found
	for i := range m.found {
		f := &m.found[i]
		if !f.Aside.None() {
			aside = f
			continue
		}
		kept.Add(f.Text)
	}
	for _, text := range kept {
		each(Found{From: m.name, Text: text})
	}
	switch {
	case len(kept) > 0:
	case aside != nil:
		each(Found{From: m.name, Aside: aside.Aside})
	default:
		each(Found{From: m.name, Err: m.nothing()})
	}
}

// nothing says why a mail holds no record.
func (m *mail) nothing() error {
	about := ""
	if s := record.Plain(m.subject, 80, false); s != "" {
		about = " (“" + s + "”)"
	}
	switch {
	case !m.other.None():
		return told.Wrong("this mail{0} brings {1} and no measurements", about, m.other)
	case m.guide:
		return told.Wrong(
			"this mail{0} has a link to the guide, but the part behind # that holds the measurements was lost on "+
				"the way. Ask for the file instead",
			about,
		)
	}
	return told.Wrong("this mail{0} holds no measurements: neither a link nor a file with them", about)
}

// textOf returns the text of HTML, one line a paragraph, and every address that a
// link leads to on a line of its own.
func textOf(page []byte) string {
	doc, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		return ""
	}
	var b strings.Builder
	var walk func(n *html.Node, depth int)
	walk = func(n *html.Node, depth int) {
		if depth > 500 {
			return
		}
		switch {
		case n.Type == html.TextNode:
			b.WriteString(strings.NewReplacer("\r", " ", "\n", " ").Replace(n.Data))
		case n.DataAtom == atom.Script, n.DataAtom == atom.Style, n.DataAtom == atom.Head:
			return
		case n.DataAtom == atom.A:
			for _, a := range n.Attr {
				if a.Key == "href" && a.Val != "" {
					b.WriteString("\n" + strings.TrimSpace(a.Val) + "\n\n")
					return // what is shown of it may be shortened
				}
			}
		case n.DataAtom == atom.P, n.DataAtom == atom.Div, n.DataAtom == atom.Br, n.DataAtom == atom.Td,
			n.DataAtom == atom.Li, n.DataAtom == atom.Blockquote:
			b.WriteString("\n")
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c, depth+1)
		}
		if n.DataAtom == atom.P || n.DataAtom == atom.Div {
			b.WriteString("\n\n")
		}
	}
	walk(doc, 0)
	return b.String()
}

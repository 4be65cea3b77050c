// Package mailtest makes mails as mail programs of several kinds write them, each with one
// link in it. They are made by the standard library's writers and x/text's encoders, and
// beside each stands the text that allows it. The tests of the command and of the page read
// the same ones.
package mailtest

import (
	"bytes"
	"encoding/base64"
	"fmt"
	"html"
	"io"
	"mime"
	"mime/multipart"
	"mime/quotedprintable"
	"net/textproto"
	"net/url"
	"strings"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/japanese"
	"golang.org/x/text/encoding/unicode"
)

// Mail is a mail with a name that says what is special about it.
type Mail struct {
	Name string
	Text string
}

// head are the fields that every mail begins with (RFC 5322, 3.6), one of them folded
// (2.2.3) and one with letters beyond ASCII (RFC 2047, 2).
var head = "Received: from client.example by mx.example.org;\r\n\tFri, 27 Nov 2026 10:00:01 +0100\r\n" +
	"From: " + mime.QEncoding.Encode("utf-8", "Jörg Ash") + " <ash@client.example>\r\n" +
	"To: fitter@example.org\r\n" +
	"Subject: " + mime.BEncoding.Encode("utf-8", "Meine Maße – as asked") + "\r\n" +
	"Date: Fri, 27 Nov 2026 10:00:00 +0100\r\nMessage-ID: <1@client.example>\r\nMIME-Version: 1.0\r\n"

// part is a part of a mail that is written already.
type part struct {
	head textproto.MIMEHeader
	body string
}

// single is a part of one kind, with its words in a transfer encoding of RFC 2045, 6.
func single(kind, coding, body string, more ...string) part {
	h := textproto.MIMEHeader{"Content-Type": {kind}, "Content-Transfer-Encoding": {coding}}
	for i := 0; i+1 < len(more); i += 2 {
		h.Set(more[i], more[i+1])
	}
	switch coding {
	case "quoted-printable":
		var b bytes.Buffer
		w := quotedprintable.NewWriter(&b)
		must(io.WriteString(w, body))
		check(w.Close())
		body = b.String()
	case "base64":
		body = Wrapped(base64.StdEncoding.EncodeToString([]byte(body)), "", 76)
	}
	return part{h, body}
}

// several are parts of a part (RFC 2046, 5.1).
func several(kind string, parts ...part) part {
	var b bytes.Buffer
	w := multipart.NewWriter(&b)
	for _, p := range parts {
		to := must(w.CreatePart(p.head))
		must(io.WriteString(to, p.body))
	}
	check(w.Close())
	return part{textproto.MIMEHeader{"Content-Type": {mime.FormatMediaType(kind,
		map[string]string{"boundary": w.Boundary()})}}, b.String()}
}

// whole is a mail with this body.
func whole(p part) string {
	var b strings.Builder
	b.WriteString(head)
	for _, key := range []string{"Content-Type", "Content-Transfer-Encoding", "Content-Disposition"} {
		if v := p.head.Get(key); v != "" {
			fmt.Fprintf(&b, "%s: %s\r\n", key, v)
		}
	}
	return b.String() + "\r\n" + p.body
}

// Wrapped breaks a text into lines of n letters, each with something in front.
func Wrapped(text, before string, n int) string {
	var b strings.Builder
	for len(text) > n {
		b.WriteString(before + text[:n] + "\r\n")
		text = text[n:]
	}
	return b.String() + before + text + "\r\n"
}

// page is a mail as HTML, with a link whose words are shortened.
func page(link string) string {
	return "<html><head><title>x</title><style>p{color:red}</style></head><body><p>Hello,</p><p>here they are:&nbsp;" +
		"<a href=\"" + html.EscapeString(link) + "\">" + html.EscapeString(link[:min(60, len(link))]) +
		"&hellip;</a></p></body></html>"
}

// in writes a text in other letters than UTF-8.
func in(e encoding.Encoding, text string) string { return must(e.NewEncoder().String(text)) }

// filtered puts a link, percent-encoded (RFC 3986, 2.1), into an address of another host.
func filtered(link string) string {
	return "https://filter.example/v2/check?u=" + url.QueryEscape(link) + "&d=abc&s=12"
}

// flowed breaks a text into lines that end with a blank, which the reader takes out again:
// RFC 3676, 4.2 and, for DelSp, 4.6.
func flowed(text string, n int) string {
	var b strings.Builder
	for len(text) > n {
		b.WriteString(text[:n] + " \r\n")
		text = text[n:]
	}
	return b.String() + text + "\r\n"
}

// photo is what hangs on a mail and is no reply.
var photo = single("image/jpeg; name=bike.jpg", "base64", "\xff\xd8\xff\xe0\x00\x10JFIF a photo",
	"Content-Disposition", `attachment; filename=bike.jpg`)

// Mails are mails that hold this link and nothing else to read.
func Mails(link string) []Mail {
	hello := "Grüße from me,\r\nhere they are:\r\n" + link + "\r\n\r\n-- \r\nJörg\r\n"
	text := single("text/plain; charset=utf-8", "quoted-printable", hello)
	rich := single("text/html; charset=utf-8", "base64", page(link))
	utf16 := unicode.UTF16(unicode.LittleEndian, unicode.UseBOM)
	twice := "https://other.example/?a=1&q=" + url.QueryEscape(filtered(link))
	return []Mail{
		{"without MIME (RFC 5322, A.1.1)", "From: Ash <ash@client.example>\r\nTo: fitter@example.org\r\n" +
			"Subject: Numbers\r\nDate: Fri, 21 Nov 1997 09:55:06 -0600\r\nMessage-ID: <1234@local.example>\r\n\r\n" +
			"Hello\r\n\r\n" + link + "\r\n\r\nAsh\r\n"},
		{"line ends of Unix", strings.ReplaceAll(whole(text), "\r\n", "\n")},
		{"quoted-printable (RFC 2045, 6.7)", whole(text)},
		{"base64 (RFC 2045, 6.8)", whole(single("text/plain; charset=utf-8", "base64", hello))},
		{"8 bits (RFC 2045, 6.2)", whole(single("text/plain; charset=utf-8", "8bit", hello))},
		{"Latin letters (RFC 2046, 4.1.2)", whole(single("text/plain; charset=iso-8859-1", "8bit",
			in(charmap.ISO8859_1, hello)))},
		{"letters of another system", whole(single(`text/plain; charset="windows-1252"`, "quoted-printable",
			in(charmap.Windows1252, "“Grüße” – "+hello)))},
		{"Japanese letters (RFC 1468)", whole(single("text/plain; charset=ISO-2022-JP", "7bit",
			in(japanese.ISO2022JP, "こんにちは\r\n"+link+"\r\n")))},
		{"UTF-16 (RFC 2781)", whole(single("text/plain; charset=utf-16", "base64", in(utf16, hello)))},
		{"saved as UTF-16", in(utf16, whole(text))},
		{"flowed (RFC 3676, 4.1)", whole(single("text/plain; charset=utf-8; format=flowed", "8bit",
			"My numbers are below, and I would like to \r\nknow what you think of them.\r\n"+link+"\r\n"))},
		{"flowed within words (RFC 3676, 4.6)", whole(single("text/plain; charset=utf-8; format=flowed; delsp=yes",
			"8bit", "Hello\r\n"+flowed(link, 70)+"Rowan\r\n"))},
		{"wrapped", whole(single("text/plain", "7bit", "Hello\r\n"+Wrapped(link, "", 72)+"Rowan\r\n"))},
		{"quoted and wrapped (RFC 3676, 4.5)", whole(single("text/plain", "7bit",
			"Ash wrote:\r\n"+Wrapped(link, "> > ", 70)+">\r\n> Regards\r\n"))},
		{"in brackets (RFC 3986, C)", whole(single("text/plain", "7bit", "See <"+link+">.\r\n"))},
		{"HTML", whole(single("text/html; charset=utf-8", "quoted-printable", page(link)))},
		{"HTML without a link of its own", whole(single("text/html", "7bit", "<p>Hello</p>\r\n<pre>"+
			html.EscapeString(link)+"</pre><p>Ash</p>"))},
		{"HTML with numbered entities", whole(single("text/html", "7bit", "<p><a href='"+
			strings.NewReplacer("&", "&#38;", "=", "&#x3d;", "'", "&#39;").Replace(link)+"'>numbers</a>"))},
		{"alternatives, HTML alone (RFC 2046, 5.1.4)", whole(several("multipart/alternative", rich))},
		{"alternatives (RFC 2046, 5.1.4)", whole(several("multipart/alternative", text, rich))},
		{"with a photo, and parts inside parts (RFC 2387)", whole(several("multipart/mixed",
			several("multipart/related", several("multipart/alternative", text, rich),
				single("image/png", "base64", "\x89PNG\r\n\x1a\n", "Content-ID", "<a@b>", "Content-Disposition",
					"inline")), photo))},
		{"signed (RFC 1847, 2.1)", whole(several("multipart/signed", text,
			single("application/pgp-signature; name=signature.asc", "7bit", "-----BEGIN PGP SIGNATURE-----\r\n")))},
		{"forwarded as an attachment (RFC 2046, 5.2.1)", whole(several("multipart/mixed",
			single("text/plain", "7bit", "See below.\r\n"),
			single("message/rfc822", "7bit", whole(several("multipart/alternative", text, rich)),
				"Content-Disposition", `attachment; filename="Fwd: numbers.eml"`)))},
		{"forwarded twice", whole(single("message/rfc822", "7bit", whole(several("multipart/mixed", photo,
			single("message/rfc822", "7bit", whole(text))))))},
		{"forwarded with its words as base64", whole(several("multipart/mixed", single("text/plain", "7bit", "x\r\n"),
			single("message/rfc822; name=a.eml", "base64", whole(text), "Content-Disposition",
				"attachment; filename=a.eml")))},
		{"a mail as a file of bytes", whole(several("multipart/mixed", single("text/plain", "7bit", "x\r\n"),
			single("application/octet-stream", "base64", whole(rich), "Content-Disposition",
				"attachment; filename=a.eml")))},
		{"through a filter", whole(single("text/plain", "7bit", filtered(link)+"\r\n"))},
		{"through two filters", whole(single("text/plain", "quoted-printable", twice+"\r\n"))},
		{"in the path of a filter", whole(single("text/plain", "7bit",
			"https://filter.example/"+url.QueryEscape(link)+"/12\r\n"))},
		{"a filtered page", whole(single("text/html; charset=utf-8", "quoted-printable", page(twice)))},
		{"a text file on it", whole(several("multipart/mixed", single("text/plain", "7bit", "Hello\r\n"),
			single("text/plain; charset=utf-8", "base64", hello, "Content-Disposition",
				"attachment; filename*=UTF-8''Ma%C3%9Fe.txt")))}, // RFC 2231, 4
	}
}

// Attached is a mail with a file on it, as a guide's page saves one, and a photo.
func Attached(name, kind, file string) string {
	return whole(several("multipart/mixed", single("text/plain; charset=utf-8", "8bit", "Grüße\r\n"), photo,
		single(kind, "base64", file, "Content-Disposition", mime.FormatMediaType("attachment",
			map[string]string{"filename": name}))))
}

// Empty is a mail with a photo and no reply.
func Empty() string {
	return whole(several("multipart/mixed", single("text/plain", "7bit", "My bike.\r\n"), photo))
}

// Plain is a mail with this text.
func Plain(text string) string {
	return whole(single("text/plain; charset=utf-8", "quoted-printable", text))
}

// Mailbox puts mails one after the other, as programs export a folder (RFC 4155, A): a line
// of their text that begins like a mail of the box gets a > in front of it.
func Mailbox(mails ...string) string {
	var b strings.Builder
	for _, m := range mails {
		b.WriteString("From ash@client.example Fri Nov 27 10:00:00 2026\n")
		for line := range strings.Lines(strings.ReplaceAll(m, "\r\n", "\n")) {
			if strings.HasPrefix(line, "From ") {
				b.WriteByte('>')
			}
			b.WriteString(line)
		}
		b.WriteString("\n")
	}
	return b.String()
}

func must[T any](x T, err error) T {
	check(err)
	return x
}

// check stops a test whose mails cannot be made.
func check(err error) {
	if err != nil {
		panic(err)
	}
}

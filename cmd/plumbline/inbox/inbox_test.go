package inbox

import (
	"bytes"
	"encoding/base64"
	"fmt"
	"html"
	"io"
	"mime/multipart"
	"mime/quotedprintable"
	"net/textproto"
	"net/url"
	"runtime"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// reply is what a client sends, made as the page makes it.
func reply(name string, inseam int) string {
	client, _ := record.Decode(fmt.Sprintf("name=%s&inseam=%d%%3B%d%%3B829&inseam.unit=cm&stature=1740&mass=72"+
		"&note=my+knee%%3A+left+%%26+right%%0Aboth&ask-ache=left+knee", name, inseam, inseam+4))
	r, _, _ := request.Decode("ask=inseam+stature+mass+arm-span&ask.for=Ash&ask.when=3+December")
	return "https://larch-hollow.example/finish/your-setup-sheet.html#" + r.Back(client, "2026-11-27")
}

const asked = "https://larch-hollow.example/finish/prepare-for-a-fitting.html#ask=inseam+stature&ask.by=Larch" +
	"&ask.reply=mailto%3Aa%40b.example"

// in reads one text as a file and returns what was found.
func in(text string) (list []Found) {
	read("x", strings.NewReader(text), nil, func(f Found) { list = append(list, f) })
	return list
}

// holdsWhole tells that a text holds exactly this reply, unhurt.
func holdsWhole(t *testing.T, text, want string) {
	t.Helper()
	list := in(text)
	require.Len(t, list, 1, "%+v", list)
	require.NoError(t, list[0].Err)
	require.Empty(t, list[0].Aside)
	fragment, ok := exchange.Fragment(list[0].Text)
	require.True(t, ok, list[0].Text)
	assert.Equal(t, request.Whole, request.StateOf(fragment), list[0].Text)
	assert.Equal(t, decoded(want), decoded(list[0].Text))
}

const header = "From: Rowan <rowan@client.example>\r\nTo: workshop@example.org\r\nSubject: My measurements\r\n" +
	"Date: Fri, 27 Nov 2026 10:00:00 +0100\r\nMIME-Version: 1.0\r\n"

// wrapped breaks a text into lines of n letters, each with something in front.
func wrapped(text, before string, n int) string {
	var b strings.Builder
	for len(text) > n {
		b.WriteString(before + text[:n] + "\r\n")
		text = text[n:]
	}
	b.WriteString(before + text + "\r\n")
	return b.String()
}

func quoted(text string) string {
	var b bytes.Buffer
	w := quotedprintable.NewWriter(&b)
	io.WriteString(w, text)
	w.Close()
	return b.String()
}

func page(link string) string {
	return "<html><head><style>p{color:red}</style></head><body><p>Hello,</p><p>here they are: <a href=\"" +
		html.EscapeString(link) + "\">" + html.EscapeString(link[:60]) + "…</a></p></body></html>"
}

// TestMailIsReadAsItArrives makes mails with the writers of the standard library.
func TestMailIsReadAsItArrives(t *testing.T) {
	link := reply("Rowan+Ash", 830)
	both := &bytes.Buffer{}
	w := multipart.NewWriter(both)
	part := func(kind, coding, body string) {
		p, err := w.CreatePart(textproto.MIMEHeader{"Content-Type": {kind}, "Content-Transfer-Encoding": {coding}})
		require.NoError(t, err)
		io.WriteString(p, body)
	}
	part("text/plain; charset=utf-8", "quoted-printable", quoted("Hello,\n\n"+wrapped(link, "", 76)+"\nRowan\n"))
	part("text/html; charset=utf-8", "base64", base64.StdEncoding.EncodeToString([]byte(page(link))))
	part("image/jpeg; name=bike.jpg", "base64", base64.StdEncoding.EncodeToString([]byte("\xff\xd8\xff\xe0 a photo")))
	require.NoError(t, w.Close())

	filter := "https://filter.example/v2/check?u=" + url.QueryEscape(link) + "&d=abc&s=12"
	for name, text := range map[string]string{
		"plain":          header + "Content-Type: text/plain\r\n\r\nHello\r\n\r\n" + link + "\r\n\r\nRowan\r\n",
		"bare line ends": strings.ReplaceAll(header, "\r\n", "\n") + "\nHello\n" + link + "\n",
		"quoted-printable": header + "Content-Transfer-Encoding: quoted-printable\r\n\r\n" +
			quoted("Hi\r\n"+link+"\r\n"),
		"base64": header + "Content-Transfer-Encoding: base64\r\n\r\n" +
			wrapped(base64.StdEncoding.EncodeToString([]byte("Hi\n"+link+"\n")), "", 76),
		"wrapped":            header + "\r\nHi\r\n" + wrapped(link, "", 72) + "Rowan\r\n",
		"quoted and wrapped": header + "\r\nYou wrote:\r\n" + wrapped(link, "> > ", 70) + ">\r\n> Regards\r\n",
		"in brackets":        header + "\r\nSee <" + link + ">.\r\n",
		"HTML":               header + "Content-Type: text/html\r\n\r\n" + page(link),
		"text, HTML and photo": header + "Content-Type: multipart/mixed; boundary=" +
			w.Boundary() + "\r\n\r\n" + both.String(),
		"through a filter":    header + "\r\n" + filter + "\r\n",
		"through two filters": header + "\r\nhttps://other.example/?a=1&q=" + url.QueryEscape(filter) + "\r\n",
		"filter in the path":  header + "\r\nhttps://filter.example/" + url.QueryEscape(link) + "/12\r\n",
		"a filtered page":     header + "Content-Type: text/html\r\n\r\n" + page(filter),
		"in another's letters": header + "Content-Type: text/plain; charset=iso-8859-1\r\n\r\n" +
			"Gr\xfc\xdfe\r\n" + link + "\r\n",
		"forwarded":        header + "Content-Type: message/rfc822\r\n\r\n" + header + "\r\n" + link + "\r\n",
		"with the request": header + "\r\n" + link + "\r\n\r\nYou wrote:\r\n" + wrapped(asked, "> ", 70),
	} {
		t.Run(name, func(t *testing.T) { holdsWhole(t, text, link) })
	}
}

func TestTextFilesAreReadWhateverTheirLetters(t *testing.T) {
	link := reply("Rowan+Ash", 830)
	utf := func(text string, order func(uint16) []byte, mark bool) string {
		var b []byte
		if mark {
			b = append(b, order(0xfeff)...)
		}
		for _, u := range utf16.Encode([]rune(text)) {
			b = append(b, order(u)...)
		}
		return string(b)
	}
	little := func(u uint16) []byte { return []byte{byte(u), byte(u >> 8)} }
	big := func(u uint16) []byte { return []byte{byte(u >> 8), byte(u)} }
	text := "Grüße, hello and welcome\r\n" + link + "\r\n"
	for name, file := range map[string]string{
		"UTF-8":            text,
		"with a mark":      "\ufeff" + text,
		"UTF-16 little":    utf(text, little, true),
		"UTF-16 big":       utf(text, big, true),
		"UTF-16, no mark":  utf("hello and welcome\r\n"+link+"\r\n", little, false),
		"wrapped by hand":  "hello\n" + wrapped(link, "", 64) + "thanks a lot\n",
		"word behind it":   "hello " + link + " Rowan\n",
		"word below it":    link + "\nRowan\n",
		"nothing below it": link,
	} {
		t.Run(name, func(t *testing.T) { holdsWhole(t, file, link) })
	}
}

func TestACutLinkIsFoundAndKnownAsCut(t *testing.T) {
	link := reply("Rowan+Ash", 830)
	for _, n := range []int{120, 180, len(link) - 1} {
		list := in(header + "\r\n" + wrapped(link[:n], "", 72) + "\r\nRowan\r\n")
		require.Len(t, list, 1)
		fragment, ok := exchange.Fragment(list[0].Text)
		require.True(t, ok)
		assert.NotEqual(t, request.Whole, request.StateOf(fragment))
		kept, _ := record.Decode(fragment)
		assert.True(t, request.IsReply(kept))
	}
	list := in(header + "\r\nhttps://larch-hollow.example/finish/your-setup-sheet.html\r\n")
	require.Len(t, list, 1)
	assert.ErrorContains(t, list[0].Err, "was lost on the way")
}

func TestTwoClientsInOneMailStayTwo(t *testing.T) {
	a, b := reply("Ash", 830), reply("Birch", 790)
	list := in(header + "\r\n" + a + "\r\n\r\n" + b + "\r\n")
	require.Len(t, list, 2)
	assert.Equal(t, decoded(a), decoded(list[0].Text))
	assert.Equal(t, decoded(b), decoded(list[1].Text))
	// Links that follow one another without a blank line are two as well.
	list = in(a + "\n" + b + "\n")
	require.Len(t, list, 2)
}

func TestAMailboxIsReadMailByMail(t *testing.T) {
	var b strings.Builder
	for i := range 30 {
		fmt.Fprintf(&b, "From rowan@client.example Fri Nov 27 10:00:00 2026\n%s\nHello\n>From my phone\n%s\n\n",
			strings.ReplaceAll(header, "\r\n", "\n"), wrapped(reply(fmt.Sprintf("Client+%d", i), 800+i), "", 72))
	}
	list := in(b.String())
	require.Len(t, list, 30)
	for i, f := range list {
		require.NoError(t, f.Err)
		assert.Equal(t, fmt.Sprintf("x, mail %d", i+1), f.From)
		assert.Equal(t, decoded(reply(fmt.Sprintf("Client+%d", i), 800+i)), decoded(f.Text))
	}
}

func TestWhatIsNoReplyIsNamedOnce(t *testing.T) {
	for text, want := range map[string]string{
		"\xff\xd8\xff\xe0\x00\x10JFIF photo": "a photo",
		"\x89PNG\r\n\x1a\n\x00\x00":          "a photo",
		"%PDF-1.7\n%âãÏÓ\n1 0 obj":           "a PDF",
		"PK\x03\x04\x14\x00":                 "an archive",
		"\x00\x01\x02\x03\x04":               "a file of bytes",
		"":                                   "empty",
		"Dear shop,\nno tape here.\n":        "It begins “Dear shop,”",
		header + "\r\nNo numbers yet.\r\n":   "this mail (“My measurements”) holds no measurements",
		header + "Content-Type: image/jpeg\r\nContent-Transfer-Encoding: base64\r\n\r\n/9j/4AAQ": "brings a photo",
	} {
		list := in(text)
		require.Len(t, list, 1, text)
		assert.ErrorContains(t, list[0].Err, want)
	}
	for _, text := range []string{asked + "\n", header + "\r\n" + asked + "\r\n"} {
		list := in(text)
		require.Len(t, list, 1)
		assert.NoError(t, list[0].Err)
		assert.Contains(t, list[0].Aside.Say(nil), "the request itself")
		assert.Empty(t, list[0].Text, "it makes no client")
	}
}

// TestAttachedFilesAreRead: JSON and CSV hang on a mail as the page saves them.
func TestAttachedFilesAreRead(t *testing.T) {
	for name, body := range map[string]string{
		"a.json": `{"version":1,"name":"Ash","values":[{"key":"inseam","value":830}]}`,
		"a.csv":  "key,value,unit\r\nname,Ash,\r\ninseam,830,mm\r\n",
	} {
		list := in(
			header + "Content-Type: application/octet-stream\r\nContent-Disposition: attachment; filename=" + name +
				"\r\nContent-Transfer-Encoding: base64\r\n\r\n" + base64.StdEncoding.EncodeToString([]byte(body)),
		)
		require.Len(t, list, 1)
		r, _ := exchange.Open(list[0].Text)
		require.NotNil(t, r, "%+v", list[0])
		assert.Equal(t, "Ash", r.Name)
	}
}

// endless returns a reader of so many bytes of one letter between two texts.
func endless(before string, n int64, after string) io.Reader {
	return io.MultiReader(strings.NewReader(before), io.LimitReader(letters{}, n), strings.NewReader(after))
}

type letters struct{}

func (letters) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = 'a'
	}
	return len(p), nil
}

// TestAnEndlessLineIsPassedOver holds whatever a stranger sends to a few
// megabytes of memory, and finds what stands behind it.
func TestAnEndlessLineIsPassedOver(t *testing.T) {
	const size = 128 << 20 // as good as a gigabyte: more than may be held
	good := reply("Ash", 830)
	for name, x := range map[string]struct {
		before, after string
		found         int
	}{
		"a line":       {"https://x.example/#name=A&inseam=830\n", "\n" + good + "\n", 2},
		"an element":   {`[{"note":"`, `"},{"version":1,"values":[{"key":"inseam","value":830}]}]`, 2},
		"a mail":       {header + "\r\n" + good + "\r\n\r\n", "\r\n", 1},
		"a head":       {header + "X-Long: ", "\r\n\r\n" + good + "\r\n", 1},
		"in a mailbox": {"From a\n" + header + "\r\n", "\n\nFrom b\n" + header + "\r\n" + good + "\n", 2},
		"deep":         {strings.Repeat("[", 5000), strings.Repeat("]", 5000), 1},
	} {
		t.Run(name, func(t *testing.T) {
			var before, now runtime.MemStats
			runtime.GC()
			runtime.ReadMemStats(&before)
			var list []Found
			read("x", endless(x.before, size, x.after), nil, func(f Found) { list = append(list, f) })
			runtime.ReadMemStats(&now)
			assert.Len(t, list, x.found)
			assert.Less(t, now.Sys-before.Sys, uint64(100<<20), "memory taken from the system")
		})
	}
}

func FuzzInbox(f *testing.F) {
	f.Add(header + "\r\n" + reply("Ash", 830))
	f.Add("[{},{\"a\":\"\\\"]\"}]")
	f.Add("> > https://x.example/#a=1&\n> > b=2\n")
	f.Add(
		"From x\n" + header + "Content-Type: multipart/mixed; boundary=x\n\n--x\n\n" +
			"https://y.example/?q=https%3A%2F%2Fz%23a%3D1\n--x--\n",
	)
	f.Fuzz(func(t *testing.T, text string) {
		calctest.Bounded(t, func() {
			for _, found := range in(text) {
				if (found.Err == nil) == (found.Text == "" && found.Aside.None()) {
					t.Fatalf("%+v is neither a record nor a reason", found)
				}
			}
		})
	})
}

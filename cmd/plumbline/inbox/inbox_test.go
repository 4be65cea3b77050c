package inbox

import (
	"encoding/base64"
	"fmt"
	"io"
	"runtime"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
	"plumbline/calculators/exchange"
	"plumbline/calculators/links"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/cmd/plumbline/inbox/mailtest"
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
	assert.Equal(t, links.Plainly(want), links.Plainly(list[0].Text))
}

const header = "From: Rowan <rowan@client.example>\r\nTo: workshop@example.org\r\nSubject: My measurements\r\n" +
	"Date: Fri, 27 Nov 2026 10:00:00 +0100\r\nMIME-Version: 1.0\r\n"

// TestMailIsReadAsItArrives reads mails as programs of several kinds write them.
func TestMailIsReadAsItArrives(t *testing.T) {
	link := reply("Rowan+Ash", 830)
	for _, m := range mailtest.Mails(link) {
		t.Run(m.Name, func(t *testing.T) { holdsWhole(t, m.Text, link) })
	}
	answered := mailtest.Plain(link + "\r\n\r\nYou wrote:\r\n" + mailtest.Wrapped(asked, "> ", 70))
	t.Run("with the request", func(t *testing.T) { holdsWhole(t, answered, link) })
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
		"wrapped by hand":  "hello\n" + mailtest.Wrapped(link, "", 64) + "thanks a lot\n",
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
		list := in(header + "\r\n" + mailtest.Wrapped(link[:n], "", 72) + "\r\nRowan\r\n")
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
	assert.Equal(t, links.Plainly(a), links.Plainly(list[0].Text))
	assert.Equal(t, links.Plainly(b), links.Plainly(list[1].Text))
	// Links that follow one another without a blank line are two as well.
	list = in(a + "\n" + b + "\n")
	require.Len(t, list, 2)
}

func TestAMailboxIsReadMailByMail(t *testing.T) {
	var b strings.Builder
	for i := range 30 {
		fmt.Fprintf(
			&b,
			"From rowan@client.example Fri Nov 27 10:00:00 2026\n%s\nHello\n>From my phone\n%s\n\n",
			strings.ReplaceAll(
				header,
				"\r\n",
				"\n",
			),
			mailtest.Wrapped(reply(fmt.Sprintf("Client+%d", i), 800+i), "", 72),
		)
	}
	list := in(b.String())
	require.Len(t, list, 30)
	for i, f := range list {
		require.NoError(t, f.Err)
		assert.Equal(t, fmt.Sprintf("x, mail %d", i+1), f.From)
		assert.Equal(t, links.Plainly(reply(fmt.Sprintf("Client+%d", i), 800+i)), links.Plainly(f.Text))
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

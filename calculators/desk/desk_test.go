package desk_test

import (
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/sheet"
)

var d = desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}

// put lays what a reply wants written over a fragment, as the page's script does:
// the marks of a value that changes go, and those that the reply names are set.
func put(fragment string, pairs []calculators.Pair) string {
	var kept []string
	for _, pair := range strings.Split(fragment, "&") {
		key, value, _ := strings.Cut(pair, "=")
		key, _, _ = strings.Cut(key, ".")
		if key == "from" || key == "estimated" {
			key, _, _ = strings.Cut(value, ".")
		}
		if key != pairs[0].Key && pair != "" {
			kept = append(kept, pair)
		}
	}
	for _, p := range pairs {
		kept = append(kept, url.QueryEscape(p.Key)+"="+url.QueryEscape(p.Typed))
	}
	return strings.Join(kept, "&")
}

func TestBothValuesOfASettingAreKeptWhicheverIsWrittenFirst(t *testing.T) {
	for _, c := range []struct{ name, record, query, bare, want string }{
		{"now and next at once", "", "key=saddle-height&now=72.2&next=73.6", "cm",
			"saddle-height=736&saddle-height.was=722"},
		{"now alone", "", "key=saddle-height&now=722", "", "saddle-height=722"},
		{"now beside what a calculator gave", "saddle-height=736&from=saddle-height.saddle-height",
			"key=saddle-height&now=722", "",
			"saddle-height=736&saddle-height.was=722&from=saddle-height.saddle-height"},
		{"next beside what was measured", "saddle-height=722", "key=saddle-height&next=736", "",
			"saddle-height=736&saddle-height.was=722"},
		{"another next keeps what the bike has", "saddle-height=736&saddle-height.was=722",
			"key=saddle-height&next=730", "", "saddle-height=730&saddle-height.was=722"},
		{"after a change that was made the new value is what the bike has",
			"saddle-height=736&saddle-height.was=722&saddle-height.done=yes", "key=saddle-height&next=741", "",
			"saddle-height=741&saddle-height.was=736"},
		{"next alone has no way back", "", "key=saddle-height&next=736", "", ""},
		{"inches", "", "key=bar-width&now=30+1/2+in&next=29.5", "in", "bar-width=749.3&bar-width.was=774.7"},
		{"a part that is exchanged", "", "key=pedals&now=Clipped+in&next=flat", "", "pedals=flat&pedals.was=clip"},
		{"not a setting", "", "key=inseam&now=830", "", ""},
		{"nothing", "", "key=saddle-height", "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			reply := d.Answer(desk.Ask{Name: desk.Write, Record: c.record, Query: c.query, Bare: c.bare})
			if c.want == "" {
				require.NotEmpty(t, reply.Problems)
				require.Empty(t, reply.Record)
				return
			}
			require.Empty(t, reply.Problems)
			require.Equal(t, c.want, put(c.record, reply.Record))
		})
	}
}

func TestASlipIsNamedAndNothingIsWritten(t *testing.T) {
	reply := d.Answer(desk.Ask{Name: desk.Write, Query: "key=saddle-height&now=abc&next=5000"})
	require.Len(t, reply.Problems, 2)
	require.Equal(t, "now", reply.Problems[0].Input)
	require.Equal(t, "next", reply.Problems[1].Input)
	require.Empty(t, reply.Record)
}

func TestWhatWasLikelyMeantIsSaidOnTheSheetToo(t *testing.T) {
	reply := d.Answer(desk.Ask{Name: desk.Write, Query: "key=saddle-height&now=73.5&next=740"})
	require.Len(t, reply.Problems, 1)
	require.Equal(t, "73.5 cm", reply.Problems[0].Suggest)
	// 154.32 × 0.45359237 kg, which is the pound by definition; a bare number in a field of pounds is one.
	mass := d.Answer(desk.Ask{Name: desk.Check, Key: "mass", Text: "154.32", Bare: "lb"})
	require.Equal(t, "69.998375", mass.Record[0].Typed)
	asked := "ask=mass+inseam&mass=70&inseam=830&"
	html := d.Answer(desk.Ask{Name: desk.Prepare, Place: "1", Record: asked + "mass.unit=lb&inseam.unit=cm"}).HTML
	require.Contains(t, html, `data-unit="lb" value="154.32">`)
	require.Contains(t, html, `data-unit="cm" value="83">`)
	require.Contains(t, html, `id="prepare-1-inseam-2-c" data-unit-of="inseam" data-next="in"`)
	html = d.Answer(desk.Ask{Name: desk.Prepare, Place: "1", Record: asked + "mass.unit=cm&inseam.unit=kg"}).HTML
	require.Contains(t, html, `data-unit="kg" value="70">`, "a unit of another kind is nobody's")
	require.Contains(t, html, `data-unit="mm" value="830">`)
}

func TestAChartIsCheckedAsANumberIs(t *testing.T) {
	good := d.Answer(desk.Ask{Name: desk.Check, Key: "sizes",
		Text: "\tM\nReach\t46\nStack\t62,5\nHTA\t65\nSTA\t77\nST\t42", Bare: "cm"})
	require.Empty(t, good.Problems)
	require.Equal(t, "name;reach;stack;head-angle;seat-angle;seat-tube-length\nM;460;625;65;77;420",
		good.Record[0].Typed)
	shown := d.Answer(desk.Ask{Name: desk.Chart, Key: "sizes", Text: good.Record[0].Typed, Bare: "mm", Units: "cm"})
	require.Equal(t, "name;reach;stack;head-angle;seat-angle;seat-tube-length\nM;46;62.5;65;77;42", shown.Text)
	bad := d.Answer(desk.Ask{Name: desk.Check, Key: "sizes", Text: "\tM\nReach\t460\nStack\t625\nHTA\t65"})
	require.Contains(t, bad.Problems[0].Text.Say(nil), "no column for “Effective seat angle”")
	require.Empty(t, bad.Record)
}

func TestARecordSurvivesFileAndTable(t *testing.T) {
	const own = "v=7&name=A+%26+B&note=two%0Alines&date=2026-11-24&u=in&inseam=830;834;829%C2%B13&inseam.unit=cm" +
		"&saddle-height=736&from=saddle-height.saddle-height&saddle-height.was=722&later-thing=x%26y&pedals=flat"
	want, _ := record.Decode(own)
	for _, form := range []string{desk.JSON, desk.CSV} {
		saved := d.Answer(desk.Ask{Name: form, Record: own})
		back := d.Answer(desk.Ask{Name: desk.Open, Text: saved.Text})
		got, plain := exchange.FromDevice(back.Text).Plain()
		require.True(t, plain)
		require.ElementsMatch(t, strings.Split(want.Fragment(), "&"), strings.Split(got.Fragment(), "&"), form)
		require.True(t, got.Newer())
		newer := false
		for _, p := range back.Problems {
			newer = newer || strings.Contains(p.Text.Say(nil), "newer version")
		}
		require.True(t, newer, "a record of a newer version is opened without saying so")
	}
	require.Contains(t, d.Answer(desk.Ask{Name: desk.Sheet, Record: own}).HTML, "newer version")
	require.NotEmpty(t, d.Answer(desk.Ask{Name: desk.Open, Text: "dear shop, see you"}).Problems)
}

func TestAClientsWayFromRequestToReply(t *testing.T) {
	made := d.Answer(desk.Ask{Name: desk.Compose, Query: "ask=stature&ask=inseam"})
	require.Contains(t, made.Text, "ask=inseam")
	made = d.Answer(desk.Ask{Name: desk.Compose,
		Query: "ask=stature+inseam+pedals&ask.by=Larch+Hollow&ask.reply=shop@example.org" +
			"&ask.health=yes&ask.note=Bring+%3Cshoes%3E"})
	require.Empty(t, made.Problems)
	form := d.Answer(desk.Ask{Name: desk.Prepare, Place: "1", Record: made.Text})
	require.Equal(t, 3+len(request.Questions)+1, strings.Count(form.HTML, `<li class="step`))
	require.Contains(t, form.HTML, "Bring &lt;shoes&gt;")
	require.Contains(t, form.HTML, "prepare-1-inseam-figure")

	slip := d.Answer(desk.Ask{Name: desk.Check, Record: made.Text, Key: "inseam", Text: "8.3", Bare: "mm"})
	require.NotEmpty(t, slip.Problems)
	apart := d.Answer(desk.Ask{Name: desk.Check, Record: made.Text, Key: "inseam", Text: "83;86;83.2", Bare: "cm"})
	require.Equal(t, "830;860;832", apart.Record[0].Typed)
	require.NotEmpty(t, apart.Doubts, "readings 30 mm apart are taken without a word")
	mixed := d.Answer(desk.Ask{Name: desk.Check, Record: made.Text, Key: "inseam", Text: "83 cm;832; 32 3/4 in",
		Bare: "mm"})
	require.Equal(t, "830;832;831.85", mixed.Record[0].Typed, "each reading has its own unit")
	against := d.Answer(desk.Ask{Name: desk.Check, Record: made.Text + "&stature=1600", Key: "inseam", Text: "930"})
	require.NotEmpty(t, against.Doubts, "an inside leg that does not go with the height is taken without a word")

	own := made.Text + "&stature=1740&inseam=830;834;829&name=Rowan+Ash&bar-width=760&bar-width.was=780&later-key=kept"
	sent := d.Answer(desk.Ask{Name: desk.Back, Record: own, Query: "ask-riding=steep+climbs&ask-care=no",
		Link: "https://example.org/finish/your-setup-sheet.html"})
	require.Contains(t, sent.HTML, "left out") // the pedals
	require.Contains(t, sent.HTML, "steep climbs")
	for _, along := range []string{"Rowan Ash", "later-key", "kept",
		"760\u00a0mm <small>Next</small>, 780\u00a0mm <small>Now</small>"} {
		require.Contains(t, sent.HTML, along, "the record goes along whole, so all of it is shown")
	}
	mail, err := url.Parse(sent.Link)
	require.NoError(t, err)
	require.Equal(t, "mailto", mail.Scheme)
	require.Equal(t, "shop@example.org", mail.Opaque)
	require.Contains(
		t,
		mail.Query().Get("body"),
		"\r\nhttps://example.org/finish/your-setup-sheet.html#"+sent.Text+"\r\n",
	)

	// What the fitter opens.
	sheet := d.Answer(desk.Ask{Name: desk.Sheet, Record: sent.Text}).HTML
	require.Contains(t, sheet, "Asked for and left out: Pedals.")
	require.Contains(t, sheet, "steep climbs")
}

func TestTextOfOthersIsNeverMarkup(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		evil := rapid.SampledFrom(
			[]string{
				`<img src=x onerror=alert(1)>`,
				`"><script>alert(1)</script>`,
				`javascript:alert(1)`,
				`'--><svg/onload=x>`,
				"\x00\u202e",
				"&#x3c;b&#x3e;",
			},
		)
		var pairs []string
		for _, key := range []string{"name", "note", "date", "u", "v", "ask", "ask.by", "ask.note", "ask.reply",
			"ask-ache", "ask-riding", "inseam", "saddle-height", "saddle-height.was",
			"saddle-height.done", "from", "pedals", `"><b>`, "estimated"} {
			if rapid.Bool().Draw(t, key) {
				pairs = append(pairs, url.QueryEscape(key)+"="+url.QueryEscape(evil.Draw(t, "evil")))
			}
		}
		a := desk.Ask{Record: strings.Join(pairs, "&"), Place: "1", Units: evil.Draw(t, "units"),
			Bare: evil.Draw(t, "bare"), Query: strings.Join(pairs, "&"), Text: evil.Draw(t,
				"text"), Key: evil.Draw(t, "key"), Link: "https://example.org/"}
		for _, a.Name = range []string{desk.Sheet, desk.Write, desk.Open, desk.JSON, desk.CSV, desk.Prepare,
			desk.Check, desk.Back, desk.Compose, evil.Draw(t, "name")} {
			reply := d.Answer(a)
			clean(t, reply.HTML)
			require.True(t, reply.Link == "" || strings.HasPrefix(reply.Link,
				"mailto:") || strings.HasPrefix(reply.Link, "sms:"), reply.Link)
		}
	})
}

// clean fails on elements and attributes that only somebody else's text could have
// brought, and on ids that stand twice.
func clean(t require.TestingT, text string) {
	root, err := html.Parse(strings.NewReader(text))
	require.NoError(t, err)
	ids := map[string]bool{}
	for n := range root.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		require.NotContains(t, []string{"script", "img", "iframe", "b-"}, n.Data)
		for _, a := range n.Attr {
			require.False(t, strings.HasPrefix(a.Key, "on"), a.Key)
			require.NotEqual(t, "style", a.Key)
			if a.Key == "href" {
				require.True(t, strings.HasPrefix(a.Val, "../") || strings.HasPrefix(a.Val, "#"), a.Val)
			}
			if a.Key == "id" {
				require.False(t, ids[a.Val], a.Val)
				ids[a.Val] = true
			}
		}
	}
}

func TestThePagesAreCompleteWithoutScript(t *testing.T) {
	var all []string
	for _, s := range sheet.Settings {
		all = append(all, s.Chapter)
	}
	b := desk.Block{Ask: desk.Ask{Place: "1", Root: "../", Ways: strings.Join(all, " ")},
		Sheet: "your-setup-sheet.html"}
	setup := d.SetupPage(b)
	clean(t, setup)
	for _, want := range []string{"736\u00a0mm", "722\u00a0mm", `href="../saddle/height.html"`,
		"Test rider", "data-done"} {
		require.True(t, strings.Contains(setup, want), want)
	}
	prepare := d.PreparePage(b)
	clean(t, prepare)
	for _, q := range request.Usual {
		require.True(t, strings.Contains(prepare, `data-step="`+q.Key+`"`), q.Key)
	}
	require.GreaterOrEqual(t, strings.Count(prepare, "<svg"), 6, "the client is shown how to measure")
}

func BenchmarkSheet(b *testing.B) {
	for b.Loop() {
		d.Answer(desk.Ask{Name: desk.Sheet, Record: desk.Example})
	}
}

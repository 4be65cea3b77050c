package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
	"plumbline/calculators/catalog"
	"plumbline/calculators/desk"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// sentBy is a client's reply, as the page sends it.
func sentBy(own string) string {
	r, _ := record.Decode(own)
	q := &request.Request{Ask: []*measure.Quantity{measure.Inseam, measure.ArmSpan}, Health: true}
	return "https://x.example/p.html#" + q.Back(r, "")
}

func bench(query string, texts ...string) desk.Reply {
	d := desk.Desk{Calculators: catalog.All()}
	return d.Answer(desk.Ask{Name: desk.Replies, Place: "1", Text: strings.Join(texts, "\x00"), Query: query,
		Link: "https://larch-hollow.example/finish/your-setup-sheet.html"})
}

// before, after and namesake are two visits of one rider, and somebody of the same name.
var (
	before = sentBy("name=Rowan&date=2026-03-01&inseam=831&stature=1742&saddle-height=718&bar-width=780")
	after  = sentBy("name=Rowan&date=2026-11-20&inseam=833&stature=1740&saddle-height=735&bar-width=781" +
		"&ask-signs=yes")
	namesake = sentBy("name=Rowan&date=2026-11-21&inseam=741&stature=1590&mass=58")
)

func TestRepliesAreListedByRiderAndShownOneAtATime(t *testing.T) {
	wrapped := "> " + after[:60] + "\n> " + after[60:] + "\n"
	text := bench("at=1", "march.txt", before, "mail.txt", wrapped, "kim.txt", namesake).HTML
	assert.Equal(t, 3, strings.Count(text, `<button type="button" data-at="`))
	assert.Contains(t, text, `data-at="1" aria-current="true">Rowan</button>`)
	assert.Regexp(t, `(?s)Read before the appointment.*<h4>Before the appointment</h4>`, text)
	assert.Regexp(t, `Asked for and left out: Arm span`, text)
	assert.NotContains(t, text, "cut off", "a quoted and wrapped reply is whole")
	// 735 − 718 = 17 mm, ± 2·√(3² + 3²) = 8.5 mm by the tape's repeat error of each; and 1 of
	// 781 − 780 mm is within it (JCGM 100:2008, 5.1.2 and 6.2.1).
	assert.Regexp(t, `Saddle height</th><td>718.mm</td><td>735.mm</td><td>\+17.mm <small>more than the error of `+
		`measuring`, text)
	assert.Regexp(t, `Bar width</th><td>780.mm</td><td>781.mm</td><td>\+1.mm <small>within the error of `+
		`measuring`, text)
	// The namesake's page has nothing of the others', and says that there are two.
	other := bench("at=2", "march.txt", before, "mail.txt", after, "kim.txt", namesake).HTML
	shown := other[strings.Index(other, `class="arrived"`):]
	assert.Contains(t, shown, "Somebody of the same name is in")
	for _, number := range []string{"831", "833", "1742", "718", "735", "780"} {
		assert.NotContains(t, shown, number)
	}
}

func TestASettingBecomesALinkForTheClient(t *testing.T) {
	reply := bench("at=0&from=Larch+Hollow&message=Slowly.&next.saddle-height=741", "x", after)
	require.True(t, strings.HasPrefix(reply.Link, "https://larch-hollow.example/finish/your-setup-sheet.html#"+
		"ask.from=Larch+Hollow&ask.note=Slowly.&name=Rowan&"), reply.Link)
	assert.Contains(t, reply.Text, "&saddle-height=741&from=saddle-height.fitting&saddle-height.was=735&")
	assert.NotContains(t, reply.Text, "ask-signs")
	assert.Regexp(t, `<td class="now">735.mm</td><td class="next">741.mm`, reply.HTML, "and the sheet shows it as Next")
	assert.Empty(t, bench("at=0", "x", after).Link, "without a setting there is nothing to send")
	d := desk.Desk{}
	set := d.Answer(desk.Ask{Name: desk.Set, Key: "saddle-height", Text: "74,1 cm"})
	require.Len(t, set.Record, 1)
	assert.Equal(t, "741", set.Record[0].Typed)
	set = d.Answer(desk.Ask{Name: desk.Set, Key: "saddle-height", Text: "74"})
	require.Len(t, set.Problems, 1)
	assert.Equal(t, "74 cm", strings.ReplaceAll(set.Problems[0].Suggest, "\u00a0", " "))
	set = d.Answer(desk.Ask{Name: desk.Set, Key: "saddle-hight", Text: "741"})
	assert.Contains(t, set.Problems[0].Text.Say(nil), "Did you mean “Saddle height”")
}

func TestWhatIsNoReplyIsNamedAndCostsNoOther(t *testing.T) {
	corrected := sentBy("name=Rowan&date=2026-11-22&inseam=834&stature=1740&ask-signs=yes")
	text := bench("", "photo.txt", "\xff\xd8 no reply", "own.txt", "https://x.example/#ask=inseam&ask.by=Larch",
		"mail.eml", "From: a@b.example\nMIME-Version: 1.0\nContent-Type: text/plain\n\nx",
		"cut.txt", after[:len(after)-30],
		"book.json", `{"format":"plumbline-record","version":1,"name":"Kim","values":[{"key":"inseam","value":790}]}`,
		"again.txt", after, "new.txt", corrected).HTML
	for _, want := range []string{"photo.txt: ", "own.txt: This is your own request", "mail.eml: This is a mail",
		"again.txt: a corrected reply of the same rider takes its place", ">Kim</button>"} {
		assert.Contains(t, text, want)
	}
	assert.Contains(t, bench("", "cut.txt", after[:len(after)-30]).HTML, "The end of this reply was cut off")
	assert.NotPanics(t, func() { bench("at=99999999999999999999", "x") })
}

func FuzzReplies(f *testing.F) {
	f.Add("a\x00" + before + "\x00b\x00{\"values\":[]}\x00c")
	f.Fuzz(func(t *testing.T, s string) {
		calctest.Bounded(t, func() { desk.Desk{}.Answer(desk.Ask{Name: desk.Replies, Text: s}) })
	})
}

package desk_test

import (
	"regexp"
	"slices"
	"strconv"
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
	assert.Contains(t, text, `data-from="mail.txt" data-client="mail.txt" aria-current="true">Rowan</button>`,
		"named by the file, because two riders are called so")
	assert.Regexp(t, `(?s)read before the appointment.*<h4>Before the appointment</h4>`, text)
	assert.Regexp(t, `Asked for and left out: Arm span`, text)
	assert.Regexp(
		t,
		`(?s)data-at="1".*data-at="0".*data-at="2"`,
		text,
		"who has to be read first, and the newest of theirs",
	)
	assert.NotContains(t, text, "cut off", "a quoted and wrapped reply is whole")
	// 735 − 718 = 17 mm, ± 2·√(3² + 3²) = 8.5 mm by the tape's repeat error of each; and 1 of
	// 781 − 780 mm is within it (JCGM 100:2008, 5.1.2 and 6.2.1).
	assert.Regexp(t, `Saddle height</th><td>718.mm</td><td>735.mm</td><td>\+17.±.9.mm <small>more than the error of `+
		`measuring`, text)
	assert.Regexp(t, `Bar width</th><td>780.mm</td><td>781.mm</td><td>\+1.±.3.mm <small>within the error of `+
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
	reply := bench("at=0&from=Larch+Hollow&0.message=Slowly.&0.next.saddle-height=741", "x", after)
	require.True(t, strings.HasPrefix(reply.Link, "https://larch-hollow.example/finish/your-setup-sheet.html#"+
		"ask.from=Larch+Hollow&ask.note=Slowly.&name=Rowan&"), reply.Link)
	assert.Contains(t, reply.Text, "&saddle-height=741&from=saddle-height.fitting&saddle-height.was=735&")
	assert.NotContains(t, reply.Text, "ask-signs")
	assert.Regexp(t, `<td class="now"[^>]*>735.mm</td><td class="next"[^>]*>741.mm`, reply.HTML,
		"and the sheet shows it as Next")
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
		"cut.txt", after[:len(after)-30],
		"book.json", `{"format":"plumbline-record","version":1,"name":"Kim","values":[{"key":"inseam","value":790}]}`,
		"again.txt", after, "new.txt", corrected).HTML
	for _, want := range []string{"photo.txt: ", "own.txt: This is your own request",
		"again.txt: a corrected reply of the same rider takes its place", ">Kim</button>"} {
		assert.Contains(t, text, want)
	}
	cut := after[:strings.Index(after, "bar-width=781")+len("bar-width=78")]
	text = bench("", "cut.txt", strings.Replace(cut, "bar-width=78", "bar-width=781.5", 1)).HTML
	assert.Contains(t, text, "The end of this reply was cut off")
	assert.Contains(t, text, "“Bar width” stood last when this reply was cut off")
	assert.NotPanics(t, func() { bench("at=99999999999999999999", "x") })
}

// doubtful has a saddle that was measured from the pedal, and an arm span that cannot be.
var doubtful = sentBy("name=Elm&date=2026-11-20&inseam=800&saddle-height=905&crank-length=170&stature=1700&arm-span=2")

func TestTheLikelySlipStandsWithAReply(t *testing.T) {
	text := bench("", "elm.txt", doubtful).HTML
	assert.Regexp(t, `2 to look at again`, text)
	assert.Regexp(t, `(?s)<h3>Look again</h3><ul><li>2.mm is not possible for “Arm span”`, text)
	assert.NotContains(t, text, "Not understood", "the sheet says it already")
	odd := bench("", "x", "name=Ash&inseam=830&inseam=831&stature=1740").HTML
	assert.Contains(t, odd, "<h4>Not understood, as it came</h4>")
	assert.Contains(t, odd, "is given twice")
	assert.Equal(t, 1, strings.Count(text, "from the crank axle it would then be 735\u00a0mm"), "on the sheet")
	small := bench("", "kim.txt", sentBy("name=Kim&stature=1380&inseam=640")).HTML
	assert.Regexp(t, `(?s)read before the appointment.*still growing, or smaller`, small)
}

// TestNotesHaveOnePlaceForEachBike: visits and corrections of one bike share it, another bike
// and another rider have their own, and each has a name under which the command finds it.
func TestNotesHaveOnePlaceForEachBike(t *testing.T) {
	corrected := sentBy("name=Rowan&date=2026-11-22&inseam=834&stature=1740&saddle-height=735")
	hardtail := sentBy("name=Rowan&bike=Hardtail&date=2026-11-23&inseam=834&stature=1740&reach=400&stack=600")
	trail := sentBy("name=Rowan&bike=Trail&date=2026-11-20&inseam=833&stature=1740&reach=460&stack=620")
	places := func(texts ...string) (list []string) {
		for _, m := range regexp.MustCompile(`data-at="(\d+)" data-slot="(\d+)".*? data-client="([^"]*)"`).
			FindAllStringSubmatch(bench("", texts...).HTML, -1) {
			list = append(list, strings.Join(m[1:], " "))
		}
		slices.Sort(list)
		return list
	}
	assert.Equal(t, []string{"0 0 Rowan", "2 0 Rowan"}, places("a", before, "b", after, "c", corrected))
	assert.Equal(t, []string{"0 0 Rowan", "1 0 Rowan"}, places("b", after, "a", before), "whichever is opened first")
	assert.Equal(t, []string{"0 0 Rowan, Trail", "1 1 Rowan, Hardtail"}, places("a", trail, "b", hardtail))
	assert.Equal(t, []string{"0 0 a", "2 2 b:2"}, places("a", after, "b", "https://x.example/#ask=inseam&ask.by=L\n"+
		namesake), "two people of one name are named by their files")
	assert.Equal(t, []string{"0 0 mine"}, places("mine", "inseam=830&stature=1700"), "who gave no name too")
	text := bench("at=1&1.next.bar-width=750&0.next.bar-width=700", "a", trail, "b", hardtail)
	assert.Contains(t, text.Text, "bar-width=750")
	assert.NotContains(t, text.Text, "bar-width=700", "what is written of another bike stays there")
}

func TestOneFileTellsWhoseBikesItHas(t *testing.T) {
	text := bench(
		"at=1",
		"bikes.json",
		`{"format": "plumbline-record", "version": 2, "riders": [{"name": "Ash", "values": [],
		"bikes": [{"name": "Trail", "values": [{"key": "saddle-height", "value": 737}]},
			{"name": "Hardtail", "values": [{"key": "saddle-height", "value": 722}]}]}]}`,
	).HTML
	assert.Equal(t, 2, strings.Count(text, `data-rider="0"`))
	assert.Contains(t, text, `data-client="Ash, Hardtail"`)
	assert.Contains(t, text, "<h4>Against Trail</h4>")
}

func TestMoreThanAPageReadsIsSaid(t *testing.T) {
	var texts []string
	for i := range 201 {
		texts = append(texts, "x", "name=R"+strconv.Itoa(i)+"&mass=70")
	}
	text := bench("", texts...).HTML
	assert.Contains(t, text, "A page reads 200 replies at once, and here are more.")
	assert.Equal(t, 200, strings.Count(text, "data-at=")-1)
	assert.NotContains(t, bench("", texts[:400]...).HTML, "here are more")
}

// TestAMailIsOneReply has a link as text and, cut, as HTML, and a file.
func TestAMailIsOneReply(t *testing.T) {
	mail := func(texts ...string) desk.Reply {
		return desk.Desk{}.Answer(desk.Ask{Name: desk.Mail, Text: strings.Join(texts, "\x00")})
	}
	cut := after[:len(after)-20]
	assert.Equal(t, after, mail("Numbers", "", "Hello\n"+cut+"\n", "Hello\n> "+after[:60]+"\n> "+after[60:]+"\n").Text)
	assert.Equal(t, after, mail("Numbers", "", after, "You wrote\nhttps://x.example/#ask=inseam&ask.by=Larch").Text)
	const file = `{"format":"plumbline-record","version":1,"name":"Kim","values":[{"key":"inseam","value":790}]}`
	assert.Equal(t, after+"\x00"+file+"\x00key,value\ninseam,830", mail("", "a photo", after, file,
		"key,value\ninseam,830").Text)
	for says, texts := range map[string][]string{
		"The mail “Bike” brings a photo and no measurements.": {"Bike", "a photo", "Look\n"},
		"is your own request as it went to the client": {"Re", "a photo",
			"https://x.example/#ask=inseam&ask.by=Larch"},
		"the part behind # that holds the measurements was lost": {"Re", "",
			"https://x.example/finish/your-setup-sheet.html\n"},
		"The mail “Re” holds no measurements": {"Re", "", "Hello\n"},
	} {
		reply := mail(texts...)
		require.Len(t, reply.Problems, 1)
		assert.Empty(t, reply.Text)
		assert.Contains(t, reply.Problems[0].Text.Say(nil), says)
	}
	assert.NotEmpty(t, mail().Problems)
}

func FuzzReplies(f *testing.F) {
	f.Add("a\x00" + before + "\x00b\x00{\"values\":[]}\x00c")
	f.Fuzz(func(t *testing.T, s string) {
		calctest.Bounded(t, func() {
			desk.Desk{}.Answer(desk.Ask{Name: desk.Replies, Text: s})
			desk.Desk{}.Answer(desk.Ask{Name: desk.Mail, Text: s})
		})
	})
}

package request_test

import (
	"net/mail"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

func TestARequestIsALink(t *testing.T) {
	r := &request.Request{By: "Larch Hollow Cycles", Note: "Please bring\nyour shoes.",
		Ask:   []*measure.Quantity{measure.Inseam, measure.Stature},
		Reply: request.Reply{Way: request.Mail, To: "workshop@example.org"}, Health: true}
	text := r.Fragment()
	assert.Equal(
		t,
		"ask=inseam+stature&ask.by=Larch+Hollow+Cycles&ask.note=Please+bring%0Ayour+shoes."+
			"&ask.reply=mailto%3Aworkshop%40example.org&ask.health=yes",
		text,
	)
	back, problems, ok := request.Decode("#" + text)
	require.True(t, ok)
	assert.Empty(t, problems)
	assert.Equal(t, r, back)
	_, _, ok = request.Decode("inseam=830&u=in")
	assert.False(t, ok, "a record alone asks for nothing")
}

func TestARecordComesBackWithWhatWasAsked(t *testing.T) {
	client, _ := record.Decode("ask=inseam+stature+mass&ask.by=Larch&ask.for=Ash&ask.when=3+December%2C+10%3A00" +
		"&ask.bike=trail+bike&ask.reply=mailto%3Aa%40b.example&inseam=830%3B834%3B829&stature=17400&ask-ache=left+knee")
	r, _, _ := request.Decode("ask=inseam+stature+mass&ask.by=Larch&ask.for=Ash&ask.when=3+December%2C+10%3A00" +
		"&ask.bike=trail+bike")
	sent := r.Back(client, "2026-11-27")
	const before = "ask.back=yes&ask=inseam+stature+mass&ask.for=Ash&ask.when=3+December%2C+10%3A00" +
		"&ask.bike=trail+bike" +
		"&date=2026-11-27&inseam=830%3B834%3B829&stature=17400&ask-ache=left+knee"
	// The check value by hand: CRC-32 (the one of Ethernet and zip) of the nine decoded pairs,
	// each key and value followed by a zero byte, as Python's zlib.crc32 computes it.
	assert.Equal(t, before+"&ask.end=9.1d7650d1", sent)
	back, _ := record.Decode(sent)
	assert.Equal(t, []*measure.Quantity{measure.Stature, measure.Mass}, request.Lacking(back),
		"what cannot be read is lacking too")
	assert.Equal(t, request.Visit{For: "Ash", When: "3 December, 10:00", Bike: "trail bike"}, request.VisitOf(back))
	assert.Equal(t, "2026-11-27", back.Date, "a reply is dated when it is sent")
	answers := request.Answers(back)
	require.Len(t, answers, 1)
	assert.Equal(t, "left knee", answers[0].Text)
	assert.Contains(t, client.Fragment(), "ask.by", "the client's own record is left alone")
}

// TestACutReplyIsKnown cuts a reply at every place, and lets a mail program write its
// escapes in another way.
func TestACutReplyIsKnown(t *testing.T) {
	client, _ := record.Decode("name=Rowan+Ash&inseam=830%3B834&stature=1740&ask-ache=left+knee")
	r, _, _ := request.Decode("ask=inseam+stature&ask.by=Larch")
	sent := r.Back(client, "2026-11-27")
	assert.Equal(t, request.Whole, request.StateOf(sent))
	assert.Equal(t, request.Whole, request.StateOf("#"+strings.NewReplacer("%3B", ";", "+", "%20").Replace(sent)))
	for n := len("ask.back="); n < len(sent); n++ {
		state := request.StateOf(sent[:n])
		assert.Contains(t, []request.State{request.Cut, request.Changed}, state, sent[:n])
		kept, _ := record.Decode(sent[:n])
		assert.True(t, request.IsReply(kept), "it is still kept apart from other people's numbers")
	}
	assert.Equal(t, request.Changed, request.StateOf(strings.Replace(sent, "stature=1740", "stature=1470", 1)))
	assert.Equal(t, request.Changed, request.StateOf(strings.Replace(sent, "&stature=1740", "", 1)))
	assert.Equal(t, request.Unsigned, request.StateOf("inseam=830&stature=1740"), "a record of one's own has no end")
	assert.Equal(t, request.Unsigned, request.StateOf("inseam=830&ask=inseam+mass&ask.back=yes"), "an older reply")
}

func TestACompleteReplyLacksNothing(t *testing.T) {
	for _, text := range []string{
		"inseam=830&stature=1740&ask=inseam+stature", // all that was asked
		"inseam=830&ask=", // nothing was asked
		"inseam=830",
	} {
		back, _ := record.Decode(text)
		assert.Nil(t, request.Lacking(back), text)
	}
}

func TestWhatAFitterMistypesIsSaid(t *testing.T) {
	r, problems, ok := request.Decode("ask=inseam,inside-leg+saddle-hight+inseam&ask.reply=javascript:alert(1)")
	require.True(t, ok)
	assert.Equal(t, []*measure.Quantity{measure.Inseam}, r.Ask)
	require.Len(t, problems, 3)
	assert.Contains(t, problems[0].Text.Say(nil), "“inside-leg” is not a measurement that this guide knows. Did the "+
		"fitter mean “Inside leg” (inseam)?")
	assert.Contains(t, problems[1].Text.Say(nil), "saddle-height")
	assert.Contains(t, problems[2].Text.Say(nil), "not by “javascript”")
	assert.Equal(t, request.Reply{}, r.Reply)
	r, _, _ = request.Decode("ask=" + strings.Repeat("x+", 4000))
	assert.LessOrEqual(t, len(r.Unknown), 64)
}

func TestOnlyPlainAddressesAreTaken(t *testing.T) {
	for _, s := range []string{"workshop@example.org", "mailto:a.b+fit@shop.example", "sms:+1 (555) 010-0199",
		"+49 30 / 123456", "MAILTO:a@b.example", ""} {
		_, why, ok := request.ReadReply(s)
		assert.True(t, ok, "%s: %s", s, why.Say(nil))
	}
	for _, s := range []string{
		"a@b.example?cc=c@d.example", "a@b.example,c@d.example", "mailto:a@b.example%0Abcc:x", "a " +
			"b@c.example", "@b.example", "a@b", "a@.b", "a@b..c", "a@b.c.",
		"sms:123;drop", "sms:12", "sms:1234567890123456", "tel:123456", "https://evil.example/", "a@@b.example",
		"a@b@c.example", "sms:", "<a@b.example>",
	} {
		r, why, ok := request.ReadReply(s)
		assert.False(t, ok, s)
		assert.Equal(t, request.Reply{}, r)
		assert.False(t, why.None())
	}
}

// TestAMessageHoldsTheLinkWhole reads the address back with the standard library.
func TestAMessageHoldsTheLinkWhole(t *testing.T) {
	const link = "https://larch-hollow.example/p.html#inseam=830%3B834&name=A+B&note=x%26y"
	r := &request.Request{By: "Larch & Sons", Visit: request.Visit{When: "3 December", Bike: "trail bike"},
		Reply: request.Reply{Way: request.Mail, To: "a+b@c.example"}}
	u, err := url.Parse(r.Message(r.Letter("Rowan Ash", link), nil))
	require.NoError(t, err)
	assert.Equal(t, "mailto", u.Scheme)
	assert.Equal(t, "a+b@c.example", u.Opaque)
	assert.Equal(t, "Measurements for a fitting: Rowan Ash, 3 December, trail bike", u.Query().Get("subject"))
	body := u.Query().Get("body")
	assert.Contains(t, body, "\r\n"+link+"\r\n", "the link stands on a line of its own")
	assert.Contains(t, body, "the measurements that Larch & Sons asked for before the fitting.")
	none := &request.Request{}
	assert.Empty(t, none.Message(none.Letter("", link), nil))
	phone := &request.Request{Reply: request.Reply{Way: request.Phone, To: "+15550100"}}
	assert.True(t, strings.HasPrefix(phone.Message(phone.Letter("", link), nil), "sms:+15550100?body=These%20are"))
}

func TestEveryRequestComesBackAsItWas(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := &request.Request{
			By: rapid.StringMatching(`([A-Za-z&=#%+]{1,20})?`).Draw(t, "by"),
			Visit: request.Visit{For: rapid.StringMatching(`([A-Za-z&=]{1,9})?`).Draw(t, "for"),
				When: rapid.StringMatching(`([0-9:]{1,9})?`).Draw(t, "when"),
				Bike: rapid.StringMatching(`([A-Za-z&=]{1,9})?`).Draw(t, "bike")},
			Note: rapid.StringMatching(`([a-z]+\n[ -~]*[a-z])?`).Draw(t, "note"),
			Ask: rapid.SliceOfNDistinct(rapid.SampledFrom(measure.All()), 1, 40, rapid.ID).Draw(t,
				"ask"), Health: rapid.Bool().Draw(t, "health"),
		}
		r.Reply, _, _ = request.ReadReply(rapid.SampledFrom([]string{"", "a@b.example", "sms:+15550100"}).Draw(t,
			"reply"))
		back, problems, ok := request.Decode(r.Fragment())
		require.True(t, ok)
		require.Empty(t, problems)
		require.Equal(t, r, back)
	})
}

func TestQuestionsAreFewAndNoQuantities(t *testing.T) {
	assert.LessOrEqual(t, len(request.Questions), 5)
	for _, q := range request.Questions {
		assert.Nil(t, measure.Named(q.Key))
		assert.True(t, request.IsQuestion(q.Key))
		assert.False(t, request.IsKey(q.Key), "an answer goes back; the request does not")
		assert.True(t, strings.HasSuffix(string(q.Text), "?"))
	}
}

func FuzzRequest(f *testing.F) {
	f.Add("ask=inseam&ask.reply=mailto%3Aa%40b.c&ask.note=%00")
	f.Fuzz(func(t *testing.T, s string) {
		calctest.Bounded(t, func() {
			r, _, ok := request.Decode(s)
			if !ok {
				return
			}
			if r.Reply.Way == request.Mail {
				if _, err := mail.ParseAddress(r.Reply.To); err != nil {
					t.Fatalf("%q is taken for an address", r.Reply.To)
				}
			}
			once := r.Fragment()
			again, _, _ := request.Decode(once)
			if again.Fragment() != once {
				t.Fatalf("%q then %q", once, again.Fragment())
			}
			client, _ := record.Decode(s)
			request.Lacking(client)
			request.Answers(client)
			sent := r.Back(client, "")
			if request.StateOf(sent) != request.Whole {
				t.Fatalf("%q does not know that it is whole", sent)
			}
		})
	})
}

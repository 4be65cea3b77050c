package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/desk"
	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// garage is what a page keeps of a rider with two bikes; the first is on show.
const garage = `{"version":2,"rider":"1","riders":[{"id":"1","bike":"2","record":"name=Rowan&inseam=830","bikes":[
{"id":"2","record":"bike=Trail+bike&reach=460&stack=625&head-angle=65.5&seat-angle=76` +
	`&saddle-height=740&saddle-height.was=737&from=saddle-height.knee-bend&bar-width=760",` +
	`"log":[{"on":"2026-09-12","key":"saddle-height","value":"722","was":"710","note":"<b>knees</b>"},` +
	`{"on":"2026-10-01","key":"saddle-height","value":"737","was":"722","scores":"3;4"},` +
	`{"on":"2026-10-02","note":"rain"}],
"ticks":{"saddle-height 737 ridden once":"2026-10-03"}},
{"id":"3","record":"bike=Hardtail&reach=440&saddle-height=730","log":[],"ticks":{}}]}]}`

func TestTheLogSaysWhatWasChangedAndWhichRidesAreLeft(t *testing.T) {
	html := spaced(d.Answer(desk.Ask{Name: desk.Log, Text: garage}).HTML)
	assert.Contains(t, html, "722 mm → 737 mm")
	assert.Contains(t, html, "scores 3; 4")
	assert.Contains(t, html, "&lt;b&gt;knees&lt;/b&gt;")
	assert.Contains(t, html, `data-tick="saddle-height 737 ridden once" checked`)
	assert.Contains(t, html, `data-tick="saddle-height 737 ridden twice">`)
	assert.NotContains(t, html, "saddle-height 722 ridden", "an older change needs no ride any more")
	done := strings.Replace(garage, `"ticks":{`, `"ticks":{"saddle-height 737 ridden twice":"2026-10-04",`, 1)
	assert.NotContains(t, d.Answer(desk.Ask{Name: desk.Log, Text: done}).HTML, "Rides to do")
	assert.Empty(t, d.Answer(desk.Ask{Name: desk.Log, Text: "nonsense"}).HTML)
}

func TestALineOfTheLogIsRead(t *testing.T) {
	reply := d.Answer(desk.Ask{Name: desk.Note, Query: "on=2026-01-02&note=+wet+&scores=3%2C+4.5%3B6"})
	require.Empty(t, reply.Problems)
	assert.Equal(t, "on=2026-01-02 note=wet scores=3;4.5;6", flat(reply.Record))
	for query, input := range map[string]string{"on=&note=x": "on", "on=2026-02-30&note=x": "on",
		"on=2026-01-02":           "note",
		"on=2026-01-02&scores=11": "scores", "on=2026-01-02&scores=x": "scores",
		"on=2026-01-02&scores=1 1 1 1 1 1 1 1 1 1 1": "scores"} {
		reply := d.Answer(desk.Ask{Name: desk.Note, Query: query})
		require.Len(t, reply.Problems, 1, query)
		assert.Equal(t, input, reply.Problems[0].Input, query)
		assert.Empty(t, reply.Record)
	}
}

func TestTwoStatesAreLaidOverOneAnother(t *testing.T) {
	compare := func(query string) string {
		return spaced(d.Answer(desk.Ask{Name: desk.Compare, Text: garage, Query: query}).HTML)
	}
	var names []string
	for _, s := range desk.States(exchange.FromDevice(garage)) {
		names = append(names, s.Value)
	}
	assert.Equal(t, []string{"now", "next", "2026-10-01", "2026-09-12", "first", "bike 1"}, names)
	assert.Equal(t, "Trail bike, as it is now", desk.States(exchange.FromDevice(garage))[0].Label.Say(nil))
	html := compare("a=first&b=now")
	assert.Contains(t, html, "<svg")
	assert.Contains(t, html, "<td>710 mm</td><td>737 mm</td><td>+27 mm</td>")
	assert.NotContains(t, html, "Reach", "what is alike is not listed")
	assert.Contains(t, compare("a=now&b=next"), "<td>737 mm</td><td>740 mm</td><td>+3 mm</td>")
	html = compare("a=bike 1&b=now")
	assert.Contains(t, html, "<td>440 mm</td><td>460 mm</td><td>+20 mm</td>")
	assert.Contains(t, html, "not known", "a value that one bike does not have")
	assert.Contains(t, compare("a=now&b=now"), "Nothing differs")
	assert.Contains(t, compare("a=x&b=y"), "710 mm", "an unknown name is the first state against now")
	assert.Contains(t, d.Answer(desk.Ask{Name: desk.Compare, Text: `{"riders":[]}`}).HTML, "one state so far")
}

func TestWhatToMeasureNextLeadsToWhereItIsShown(t *testing.T) {
	ask := desk.Ask{Name: desk.Worth, Record: "inseam=830&crank-length=170&saddle-height=722", Root: "../",
		Taken: "start/measure-yourself inseam trochanter-height;start/measure-your-bike seat-angle"}
	html := spaced(d.Answer(ask).HTML)
	assert.Contains(t, html, `href="../start/measure-your-bike.html#measure-seat-angle"`)
	assert.Contains(t, html, `href="../start/measure-yourself.html#measure-trochanter-height"`)
	assert.Regexp(t, `takes \d+ ?% of the doubt out of “Knee bend”`, html)
	assert.Contains(t, html, "needs a helper")
	ask.Record = "inseam=830"
	html = spaced(d.Answer(ask).HTML)
	assert.Contains(t, html, "is, with “Saddle height”, all that is missing for “Saddle fore and aft”")
	none := desk.Desk{}
	assert.Contains(t, none.Answer(ask).HTML, "The next step of the path, named above, leads on.")
	ask.Record = "name=Rowan"
	assert.Empty(t, none.Answer(ask).HTML)
}

func TestAFileOfTheWholeBookComesBack(t *testing.T) {
	saved := d.Answer(desk.Ask{Name: desk.JSON, Text: garage})
	back := d.Answer(desk.Ask{Name: desk.Open, Text: saved.Text})
	require.Empty(t, back.Problems)
	assert.Equal(t, exchange.BookJSON(exchange.FromDevice(garage)), exchange.BookJSON(exchange.FromDevice(back.Text)))
}

// spaced is a text with plain blanks.
func spaced(s string) string { return strings.NewReplacer("\u00a0", " ", "\u202f", " ").Replace(s) }

// flat writes pairs in one line.
func flat(pairs []calculators.Pair) string {
	var list []string
	for _, p := range pairs {
		list = append(list, p.Key+"="+p.Typed)
	}
	return strings.Join(list, " ")
}

func TestTheSheetSaysWhomSettingsAreFrom(t *testing.T) {
	client, _ := record.Decode("name=Rowan+Ash&inseam=831&saddle-height=725")
	link := (&request.Advice{From: "Larch <Hollow>", Note: "One step a week.",
		Next: []calculators.Pair{{Key: "saddle-height", Typed: "741"}}}).Fragment(client)
	d := desk.Desk{Calculators: catalog.All()}
	text := d.Answer(desk.Ask{Name: desk.Sheet, Record: link}).HTML
	assert.Contains(t, text, "Settings from Larch &lt;Hollow&gt;")
	assert.Contains(t, text, "One step a week.")
	assert.Regexp(t, `(?s)<td class="now"[^>]*>725.mm</td><td class="next"[^>]*>741.mm`, text)
	assert.NotContains(t, text, "cut off")
	text = d.Answer(desk.Ask{Name: desk.Sheet, Record: link[:len(link)-25]}).HTML
	assert.Contains(t, text, "cut off")
	text = d.Answer(desk.Ask{Name: desk.Sheet, Record: "name=Rowan&inseam=831"}).HTML
	assert.NotContains(t, text, "cut off")
}

func TestTheSheetDrawsTheBikeNowAndNext(t *testing.T) {
	sheet := func(fragment string) string {
		return spaced(d.Answer(desk.Ask{Name: desk.Sheet, Record: fragment, Width: 346}).HTML)
	}
	html := sheet("reach=460&stack=625&saddle-height=740&saddle-height.was=730")
	assert.Contains(t, html, "Your bike now, in thin lines, and next, in ink")
	assert.Contains(t, html, "saddle’s top moves by 10 mm, the grips move by 0 mm")
	assert.NotContains(t, html, "One rider, one bike")
	for _, unplanned := range []string{"", "saddle-height=740", "lever-reach=60&lever-reach.was=58"} {
		assert.Contains(t, sheet(unplanned), "One rider, one bike", unplanned)
	}
}

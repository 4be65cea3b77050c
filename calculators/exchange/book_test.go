package exchange_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
)

// household is a device with two riders and three bikes, as a page keeps it.
const household = `{"version":2,"count":5,"units":"cm","rider":"1","riders":[
{"id":"1","bike":"2","record":"name=Rowan+Ash&inseam=830%3B834%3B829&cleat-behind-ball=14","bikes":[
{"id":"2","record":"bike=Trail+bike&note=second+season&date=2026-11-24&reach=460` +
	`&saddle-height=737&saddle-height.was=722&from=saddle-height.saddle-height",
"log":[{"on":"2026-09-12","key":"saddle-height","value":"722","was":"710±2","note":"knees","scores":"6;7.5"},` +
	`{"on":"2026-10-01","note":"new tyres"},` +
	`{"on":"2026-10-02","key":"pedals","value":"clip","was":"flat"}],
"ticks":{"saddle/height 1":"2026-11-20"},"drafts":{"note":"half"}},
{"id":"3","record":"bike=Hardtail&reach=440&later-thing=x","log":[],"ticks":{}}]},
{"id":"4","bike":"5","record":"name=Kim&stature=1650","bikes":[` +
	`{"id":"5","record":"bike=Hire","log":[],"ticks":{}}]}]}`

func TestSeveralRidersAndBikesSurviveTheFile(t *testing.T) {
	b := exchange.FromDevice(household)
	text := exchange.BookJSON(b)
	valid(t, schema(t), text)
	back, problems := exchange.OpenBook(text)
	require.Empty(t, problems)
	require.NotNil(t, back)
	assert.Equal(t, exchange.Device(b), exchange.Device(back), "what a device keeps comes back from the file")
	assert.Equal(t, text, exchange.BookJSON(back))

	var got struct {
		Version int
		Units   string
		Riders  []struct {
			Name   string
			Values []struct{ Key string }
			Bikes  []struct {
				Name string
				Log  []map[string]any
			}
		}
	}
	require.NoError(t, json.Unmarshal([]byte(text), &got))
	assert.Equal(t, 2, got.Version)
	assert.Equal(t, "cm", got.Units)
	require.Len(t, got.Riders, 2)
	assert.Equal(t, "inseam", got.Riders[0].Values[0].Key, "the body stands with the rider")
	assert.Equal(t, "Hardtail", got.Riders[0].Bikes[1].Name)
	assert.Equal(
		t,
		map[string]any{"date": "2026-09-12", "key": "saddle-height", "label": "Saddle height", "value": 722.0,
			"unit": "mm", "was": "710±2", "note": "knees", "scores": []any{6.0, 7.5}},
		got.Riders[0].Bikes[0].Log[0],
	)

	var joined []string
	back.Each(
		func(_ *record.Rider, _ *record.Bike, r *record.Record) { joined = append(joined, r.Name+" on "+r.Bike) },
	)
	assert.Equal(t, []string{"Rowan Ash on Trail bike", "Rowan Ash on Hardtail", "Kim on Hire"}, joined)
	r := back.Joined(&back.Riders[0], &back.Riders[0].Bikes[1])
	assert.Equal(t, 830.0, r.Value(measure.Inseam), "the body goes along to another bike")
	assert.Equal(t, 440.0, r.Value(measure.Reach))
	assert.Equal(t, "x", r.At("later-thing").Text)
}

func TestOneRiderOnOneBikeIsStillTheFirstForm(t *testing.T) {
	r, _ := record.Decode("name=Rowan&bike=Trail+bike&inseam=830&reach=460&u=in")
	text := exchange.BookJSON(record.Single(r))
	assert.Contains(t, text, `"version": 1`)
	valid(t, schema(t), text)
	b, problems := exchange.OpenBook(text)
	require.Empty(t, problems)
	again, plain := b.Plain()
	assert.True(t, plain)
	assert.Equal(t, r.Fragment(), again.Fragment())
	b, _ = exchange.OpenBook("inseam=830&reach=460")
	assert.Len(t, b.Riders, 1, "a link is a book of one as well")
}

func TestWhatIsNoBookIsRefusedWhole(t *testing.T) {
	for text, says := range map[string]string{
		`{"riders":[]}`: "its “format” is",
		`{"format":"plumbline-record","version":2,"riders":{}}`:              "is a list",
		`{"format":"plumbline-record","version":2,"riders":[{"values":[]}]}`: "Rider 1",
		`{"format":"plumbline-record","version":2,"riders":[]}`:              "nothing that this guide measures",
		`{"values":[{"key":"colour","value":"red"}]}`:                        "nothing that this guide measures",
		`{"values":[1,2,3]}`:            "nothing that this guide measures",
		"colour=red&x=1":                "nothing that this guide measures",
		"key,value\ncolour,red\n":       "nothing that this guide measures",
		"Dear shop, see you on Monday.": "neither a link with one",
		`{"format":"plumbline-record","version":2,"riders":[1]}`:               "Rider 1",
		`{"format":"plumbline-record","version":2,"riders":[{"bikes":[1,2]}]}`: "nothing that this guide measures",
	} {
		b, problems := exchange.OpenBook(text)
		assert.Nil(t, b, text)
		require.NotEmpty(t, problems, text)
		assert.Contains(t, problems[0].Text.Say(nil), says, text)
	}
	b, problems := exchange.OpenBook(`{"format":"plumbline-record","version":9,"values":[{"key":"leaf","value":1}]}`)
	require.NotNil(t, b, "a later version's record is kept")
	assert.NotEmpty(t, problems)
}

func TestASlipInTheLogIsSaid(t *testing.T) {
	b, problems := exchange.OpenBook(
		`{"format":"plumbline-record","version":3,"riders":[{"name":"A","values":[],"bikes":[{"name":"B","values":[],
"log":[{"date":"yesterday"},{"date":"2026-01-02","key":"saddle-height","value":28.5,` +
			`"unit":"in","was":"71 cm","scores":[3,99,"x",4]},7]}]}]}`,
	)
	require.Len(t, problems, 3)
	assert.Contains(t, problems[0].Text.Say(nil), "newer version")
	assert.Equal(t, "log", problems[1].Input)
	log := b.Riders[0].Bikes[0].Log
	require.Len(t, log, 1)
	// 28.5 in are 723.9 mm: an inch is 25.4 mm (BIPM, SI brochure, 9th edition, from memory).
	assert.Equal(
		t,
		record.Change{On: "2026-01-02", Key: "saddle-height", Value: "723.9", Was: "710", Scores: "3;4"},
		log[0],
	)
}

func TestEveryBookSurvivesTheFile(t *testing.T) {
	s := schema(t)
	rapid.Check(t, func(t *rapid.T) {
		b := &record.Book{}
		for range rapid.IntRange(1, 3).Draw(t, "riders") {
			r, _ := record.Decode(
				"name=A&inseam=" + record.Decimals(rapid.Float64Range(560, 1000).Draw(t, "inseam"), 3),
			)
			rider := record.Rider{Record: r}
			for range rapid.IntRange(0, 3).Draw(t, "bikes") {
				r, _ := record.Decode(
					"reach=450&bike=" + string(record.Escape(nil, rapid.StringN(0, 20, 60).Draw(t, "bike"))),
				)
				bike := record.Bike{Record: r}
				for range rapid.IntRange(0, 3).Draw(t, "lines") {
					bike.Log = append(bike.Log, record.Change{On: "2026-01-02", Key: "saddle-height", Value: "720",
						Note: record.Plain(rapid.String().Draw(t, "note"), 100, true)})
				}
				rider.Bikes = append(rider.Bikes, bike)
			}
			b.Riders = append(b.Riders, rider)
		}
		text := exchange.BookJSON(b)
		valid(t, s, text)
		back, _ := exchange.OpenBook(text)
		require.NotNil(t, back)
		require.Equal(t, text, exchange.BookJSON(back))
		require.Equal(t, exchange.Device(back), exchange.Device(exchange.FromDevice(exchange.Device(back))))
	})
}

func FuzzBook(f *testing.F) {
	f.Add(household)
	f.Add(exchange.BookJSON(exchange.FromDevice(household)))
	f.Add(strings.Repeat(`{"riders":[`, 40))
	f.Fuzz(func(t *testing.T, s string) {
		calctest.Bounded(t, func() {
			_ = exchange.Device(exchange.FromDevice(s))
			b, problems := exchange.OpenBook(s)
			for _, p := range problems {
				_ = p.Text.Say(nil)
			}
			if b == nil {
				return
			}
			if text := exchange.BookJSON(b); !json.Valid([]byte(text)) {
				t.Fatalf("%q is written as %s, which is no JSON", s, text)
			}
		})
	})
}

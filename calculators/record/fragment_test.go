package record_test

import (
	"math"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
)

func TestAFragmentIsReadIntoARecord(t *testing.T) {
	r, problems := record.Decode(
		"#name=Rowan+Ash&date=2026-11-24&u=in&inseam=830;834;829&inseam.unit=cm&stature=1740±5&estimated=stature" +
			"&saddle-height=736&from=saddle-height.saddle-height&saddle-height.was=720±3" +
			"&saddle-height.on=2026-11-25&saddle-height.done=yes&pedals=flat&at=set-it",
	)
	require.Empty(t, problems)
	assert.Equal(t, "Rowan Ash", r.Name)
	assert.Equal(t, "2026-11-24", r.Date)
	assert.Equal(t, "in", r.Units)
	require.Len(t, r.Entries, 4, "an anchor is no part of the record")

	leg := r.Of(measure.Inseam)
	assert.Equal(t, []float64{830, 834, 829}, leg.Readings)
	assert.Equal(t, 830.0, leg.Value, "the middle reading counts")
	assert.Equal(t, measure.Cm, leg.Typed)
	assert.True(t, leg.Measured())

	tall := r.Of(measure.Stature)
	assert.Equal(t, 5.0, tall.Error)
	assert.True(t, tall.Estimated)
	assert.False(t, tall.Measured())

	height := r.Of(measure.SaddleHeight)
	assert.Equal(t, "saddle-height", height.From)
	assert.Equal(t, 720.0, height.Former())
	assert.Equal(t, "2026-11-25", r.Dated(height))
	assert.Equal(t, "2026-11-24", r.Dated(leg))
	assert.Equal(t, "yes", height.Done)
	assert.Equal(t, "flat", r.Choice(measure.Pedals))
	assert.True(t, math.IsNaN(r.Value(measure.Reach)))
}

func TestMarksMayStandBeforeWhatTheySpeakOf(t *testing.T) {
	r, problems := record.Decode("estimated=inseam&inseam.on=2026-01-31&inseam=830")
	require.Empty(t, problems)
	assert.True(t, r.Of(measure.Inseam).Estimated)
	assert.Equal(t, "inseam=830&estimated=inseam&inseam.on=2026-01-31", r.Fragment())
}

func TestTheUnitTypedInAFragmentIsKept(t *testing.T) {
	r, problems := record.Decode("inseam=32+3/4+in&sag-front=25%25")
	require.Empty(t, problems)
	assert.Equal(t, "inseam=831.85&inseam.unit=in&sag-front=25", r.Fragment())
}

func TestUnknownKeysKeepTheirPlaceAndTheirText(t *testing.T) {
	const text = "colour-of-the-frame=red+%26+%3Cb%3E&inseam=830&helmet=&helmet=yes" +
		"&inseam.colour=%7B%22a%22%3A1%7D&estimated=helmet"
	r, problems := record.Decode(text)
	assert.Empty(t, problems)
	back, _ := record.Decode(r.Fragment())
	assert.Equal(t, r.Fragment(), back.Fragment())
	assert.Equal(
		t,
		"colour-of-the-frame=red+%26+%3Cb%3E&inseam=830&helmet=&estimated=helmet&helmet=yes"+
			"&inseam.colour=%7B%22a%22%3A1%7D",
		r.Fragment(),
	)
}

func TestANewerRecordOpensWithANotice(t *testing.T) {
	r, problems := record.Decode("v=7&inseam=830&lean-of-the-rider=12")
	require.Len(t, problems, 1)
	assert.Contains(t, problems[0].Text.Say(nil), "newer version (7; this one reads 1)")
	assert.True(t, r.Newer())
	assert.Equal(t, "v=7&inseam=830&lean-of-the-rider=12", r.Fragment(), "and keeps its version and what is not "+
		"understood")
}

func TestHostileFragmentsAreSaidAndNeverBreakTheRest(t *testing.T) {
	for _, c := range []struct{ name, text, says string }{
		{"a number beyond all", "inseam=1e309", "is not a number"},
		{"not possible", "inseam=83", "Did you mean 83\u00a0cm?"},
		{"script", "inseam=%3Cscript%3Ealert(1)%3C/script%3E", "is not a number"},
		{"control characters", "inseam=8%0030%07", "8�30�"},
		{"bad percent-encoding", "inseam=%E2%9&mass=70%", "not encoded"},
		{"a key twice", "inseam=700&inseam=830", "is given twice, with “700” and “830”; the last one counts"},
		{"half a key", "inseam&=3&x", "not of the form key=value: 3"},
		{"a version that is none", "v=1.5", "not a version of a record"},
		{"a date that is none", "date=2026-02-30", "“2026-02-30” is not a date"},
		{"a choice that is none", "pedals=wings", "is not a choice"},
		{"a table that is none", "sizes=a;b%0Ac;d", "cannot be read as a table"},
		{"readings without end", "inseam=1;2;3;4;5;6", "holds 6 readings"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r, problems := record.Decode(c.text + "&stature=1740")
			require.NotEmpty(t, problems)
			said := ""
			for _, p := range problems {
				said += p.Text.Say(nil) + "\n"
			}
			assert.Contains(t, said, c.says)
			for _, b := range []byte(said) {
				assert.True(t, b >= ' ' || b == '\n', "a control character reaches a reader: %q", said)
			}
			assert.Equal(t, 1740.0, r.Value(measure.Stature), "the next value is read all the same")
		})
	}
	_, problems := record.Decode("inseam=700&inseam=700")
	assert.Empty(t, problems, "the same thing said twice needs no word")
}

func TestMegabytesAreCutAndSaid(t *testing.T) {
	r, problems := record.Decode("inseam=830&" + strings.Repeat("a=b&", 1<<20))
	assert.Equal(t, 830.0, r.Value(measure.Inseam))
	assert.LessOrEqual(t, len(r.Entries), record.MostPairs)
	require.Len(t, problems, 2)
	assert.Contains(t, problems[0].Text.Say(nil), "too long")

	r, problems = record.Decode("inseam=" + strings.Repeat("8", 4<<20))
	assert.Empty(t, r.Entries, "a value that was cut is not half a value")
	require.NotEmpty(t, problems)
}

func TestTextsOfPeopleArePlain(t *testing.T) {
	r, _ := record.Decode("name=" + url.QueryEscape("Rowan\u202e\x1b[31m\nAsh\x00") +
		"&note=" + url.QueryEscape("two\r\nlines\a"))
	assert.Equal(t, "Rowan[31m Ash�", r.Name)
	assert.Equal(t, "two\nlines", r.Note)
	r, _ = record.Decode("name=" + strings.Repeat("é", 500))
	assert.LessOrEqual(t, len(r.Name), 80)
	assert.True(t, strings.HasPrefix(r.Name, "é"))
}

// TestEveryRecordSurvivesItsFragment draws records and reads them back.
func TestEveryRecordSurvivesItsFragment(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRecord(t)
		text := r.Fragment()
		back, problems := record.Decode(text)
		require.Empty(t, problems, text)
		require.Equal(t, text, back.Fragment())
		require.Len(t, back.Entries, len(r.Entries))
		for i, e := range r.Entries {
			got := back.Entries[i]
			if e.Quantity != nil && e.Quantity.Is() == measure.Number {
				require.InDelta(t, e.Value, got.Value, 1e-6)
				require.Equal(t, math.IsNaN(e.Error), math.IsNaN(got.Error))
				require.Len(t, got.Readings, len(e.Readings))
			}
			got.Repeated, e.Repeated = measure.Repeated{}, measure.Repeated{}
			require.Equal(t, e, got)
		}
		// An independent reader of the same format sees the same pairs.
		values, err := url.ParseQuery(text)
		require.NoError(t, err)
		for _, e := range r.Entries {
			require.Contains(t, values[e.Key], e.Text)
		}
	})
}

// drawRecord draws a record as people could have filled it.
func drawRecord(t *rapid.T) *record.Record {
	day := rapid.SampledFrom([]string{"", "2026-11-24", "2024-02-29"})
	r := &record.Record{
		Version: rapid.SampledFrom([]int{1, 1, 1}).Draw(t, "version"),
		Name:    rapid.SampledFrom([]string{"", "Rowan Ash", "Zoë & Søn <b>"}).Draw(t, "name"),
		Note:    rapid.SampledFrom([]string{"", "left knee\n50 % = better?"}).Draw(t, "note"),
		Date:    day.Draw(t, "date"), Units: rapid.SampledFrom([]string{"", "mm", "cm", "in"}).Draw(t, "units"),
		Entries: []record.Entry{},
	}
	for _, q := range rapid.SliceOfNDistinct(rapid.SampledFrom(measure.All()), 0, 40, rapid.ID).Draw(t,
		"quantities") {
		e := record.Entry{Key: q.Key, Quantity: q}
		switch q.Is() {
		case measure.List:
			continue
		case measure.Pick:
			e.Text = rapid.SampledFrom(q.Choices).Draw(t, q.Key).Key
		default:
			e = drawNumber(t, q)
		}
		e.Estimated = rapid.Bool().Draw(t, "estimated")
		e.From = rapid.SampledFrom([]string{"", "saddle-height"}).Draw(t, "from")
		e.Date = day.Draw(t, "on")
		e.Done = rapid.SampledFrom([]string{"", "yes", "2026-12-01"}).Draw(t, "done")
		r.Entries = append(r.Entries, e)
	}
	if rapid.Bool().Draw(t, "unknown") {
		r.Entries = append(r.Entries, record.Entry{Key: "lean", Text: rapid.String().Draw(t, "text")})
		e := &r.Entries[len(r.Entries)-1]
		e.Text = strings.ReplaceAll(e.Text, "\x00", "")
	}
	return r
}

func drawNumber(t *rapid.T, q *measure.Quantity) record.Entry {
	number := rapid.Custom(func(t *rapid.T) float64 {
		x := rapid.Float64Range(q.Low, q.High).Draw(t, q.Key)
		return math.Round(x*1000) / 1000
	})
	var s []string
	for _, x := range rapid.SliceOfN(number, 1, measure.MostReadings).Draw(t, "readings") {
		s = append(s, record.Exactly(x, q.Unit))
	}
	typed := strings.Join(s, ";")
	if rapid.Bool().Draw(t, "±") {
		typed += "±2"
	}
	g, why, ok := q.ParseRepeated(typed, nil)
	if !ok { // ±2 is more than a pedal spacer can vary
		g, why, ok = q.ParseRepeated(strings.TrimSuffix(typed, "±2"), nil)
	}
	require.True(t, ok, "%s=%s: %s", q.Key, typed, why.Say(nil))
	text, ok := record.Canonical(q, strings.TrimSuffix(typed, "±2"), nil)
	require.True(t, ok)
	if !math.IsNaN(g.Error) {
		text += "±2"
	}
	e := record.Entry{Key: q.Key, Quantity: q, Repeated: g, Text: text}
	if rapid.Bool().Draw(t, "was") {
		e.Was = record.Exactly(number.Draw(t, "former"), q.Unit)
	}
	if q.Unit == measure.Mm && rapid.Bool().Draw(t, "typed") {
		e.Typed = measure.Inch
	}
	return e
}

func TestMergingTakesTheNewerValueKeyByKey(t *testing.T) {
	older, _ := record.Decode("name=Rowan&date=2026-01-05&inseam=820&mass=70&odd=1")
	newer, _ := record.Decode("date=2026-11-24&inseam=830&stature=1740")
	both := record.Merge(older, newer)
	assert.Equal(t, "name=Rowan&date=2026-11-24&inseam=830&mass=70&mass.on=2026-01-05&odd=1&stature=1740",
		both.Fragment(),
		"a value that was not taken again keeps its day")
	assert.Equal(t, "name=Rowan&date=2026-01-05&inseam=820&mass=70&odd=1", older.Fragment(),
		"merging leaves its parts alone")
	assert.Equal(t, both.Fragment(), record.Merge(both, newer).Fragment(), "merging twice changes nothing")
}

func TestNoQuantityLooksLikeAMark(t *testing.T) {
	reserved := []string{"v", "name", "bike", "note", "date", "u", "at", "estimated", "from"}
	for _, q := range measure.All() {
		assert.NotContains(t, q.Key, ".")
		assert.NotContains(t, reserved, q.Key)
		assert.LessOrEqual(t, len(q.Key), record.LongestKey)
	}
}

func TestDaysAreChecked(t *testing.T) {
	for _, s := range []string{"2026-01-31", "2024-02-29", "2000-02-29", "2026-12-31", "2026-04-30"} {
		assert.True(t, record.IsDate(s), s)
	}
	for _, s := range []string{"", "2026-1-31", "2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10",
		"2026-04-31", "2026-01-00", "20260131", "2026/01/31", "٢٠٢٦-01-31"} {
		assert.False(t, record.IsDate(s), s)
	}
}

// TestEscapingIsTheBrowsers compares with what URLSearchParams writes, as the URL
// Standard's application/x-www-form-urlencoded percent-encode set says.
func TestEscapingIsTheBrowsers(t *testing.T) {
	assert.Equal(t, "a+b*-._%7E%21%27%28%29%3B%C2%B1%0A%25", string(record.Escape(nil, "a b*-._~!'();±\n%")))
}

func FuzzDecode(f *testing.F) {
	for _, s := range []string{"inseam=830;834;829±3&inseam.was=800", "v=9&a.b.on=x", "sizes=name;reach%0AM;450",
		"estimated=inseam&inseam=32+3/4+in", "%00=%&+=+&==&inseam=1e309"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		calctest.Bounded(t, func() {
			r, problems := record.Decode(text)
			for _, p := range problems {
				_ = p.Text.Say(nil)
			}
			once := r.Fragment()
			if len(once) > record.LongestFragment || strings.Count(once, "&") >= record.MostPairs {
				return // escaping made it longer than is read
			}
			again, _ := record.Decode(once)
			if got := again.Fragment(); got != once {
				t.Fatalf("a record changes when it is read again:\n%q\n%q", once, got)
			}
			_ = r.Pairs()
			_ = record.Merge(r, again).Fragment()
		})
	})
}

func BenchmarkDecode(b *testing.B) {
	const text = "name=Rowan&date=2026-11-24&stature=1740&mass=72&inseam=830%3B834%3B829" +
		"&foot-length=262&hand-length=189&arm-length=640&shoulder-width=390" +
		"&reach=460&stack=625&head-angle=65.5&seat-angle=76.5&chainstay=437" +
		"&bb-drop=32&crank-length=170&pedals=flat&saddle-height=720"
	for b.Loop() {
		record.Decode(text)
	}
}

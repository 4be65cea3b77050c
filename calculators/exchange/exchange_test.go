package exchange_test

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
)

// full is a record with everything that a record can hold.
const full = "name=Rowan+Ash&note=%3Dleft+knee%0Asecond+line&date=2026-11-24&u=in" +
	"&inseam=830%3B834%3B829%C2%B13&inseam.unit=cm&inseam.on=2026-11-20" +
	"&stature=1740&estimated=stature&saddle-height=736&from=saddle-height.saddle-height&saddle-height.was=720" +
	"&saddle-height.done=yes" +
	"&stem-length=45&stem-length.was=50%C2%B12&cleat-shift=-2&pedals=flat" +
	"&sizes=name%3Breach%3Bstack%3Bhead-angle%3Bseat-angle%3Bseat-tube-length" +
	"%0AM%3B450%3B620%3B65%3B76%3B420" +
	"&helmet=%2B1&lean=12.5&lean.unit=%22deg%22&inseam.colour=%7B%22a%22%3A1%7D" +
	"&.rider=%5B1%2C2%5D&reach=46&quantity=nonsense"

func schema(t require.TestingT) *jsonschema.Schema {
	text, err := schemaText()
	require.NoError(t, err)
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("https://larch-hollow.example/record.schema.json", doc))
	s, err := c.Compile("https://larch-hollow.example/record.schema.json")
	require.NoError(t, err)
	return s
}

// valid demands that text is JSON and that the published schema accepts it.
func valid(t require.TestingT, s *jsonschema.Schema, text string) {
	v, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	require.NoError(t, err)
	require.NoError(t, s.Validate(v), text)
}

func TestEveryFormGivesTheSameRecordBack(t *testing.T) {
	r, _ := record.Decode(full)
	valid(t, schema(t), exchange.JSON(r))

	back, problems := exchange.FromJSON(exchange.JSON(r))
	require.NotNil(t, back)
	require.Len(t, problems, 2, "what could not be read is said again: reach and the choice")
	assert.ElementsMatch(t, strings.Split(r.Fragment(), "&"), strings.Split(back.Fragment(), "&"))
	assert.Equal(t, exchange.JSON(r), exchange.JSON(back))

	back, problems = exchange.FromCSV(exchange.CSV(r))
	require.NotNil(t, back)
	require.Len(t, problems, 2)
	assert.Equal(t, r.Fragment(), back.Fragment())
}

func TestTheJSONIsWhatTheSchemaPromises(t *testing.T) {
	r, _ := record.Decode(full)
	var got struct {
		Format  string
		Version int
		Rider   []int
		Values  []map[string]any
	}
	require.NoError(t, json.Unmarshal([]byte(exchange.JSON(r)), &got))
	assert.Equal(t, "plumbline-record", got.Format)
	assert.Equal(t, 1, got.Version)
	assert.Equal(t, []int{1, 2}, got.Rider, "a member of a newer version stays a member")
	assert.Equal(t, map[string]any{
		"key": "inseam", "label": "Inside leg", "value": 830.0, "unit": "mm", "readings": []any{830.0, 834.0, 829.0},
		"repeat_error": 3.0, "typed_unit": "cm", "date": "2026-11-20", "colour": map[string]any{"a": 1.0},
	}, got.Values[0])
	assert.Equal(t, map[string]any{"key": "lean", "value": 12.5, "unit": "deg"}, got.Values[len(got.Values)-3])
	assert.Equal(t, map[string]any{"key": "saddle-height", "label": "Saddle height", "value": 736.0, "unit": "mm",
		"from": "saddle-height", "was": 720.0, "done": "yes"}, got.Values[2])
}

func TestTheSchemaRefusesWhatIsNoRecord(t *testing.T) {
	s := schema(t)
	for _, text := range []string{
		`[]`, `{}`, `{"format":"plumbline-record","version":0,"values":[]}`,
		`{"format":"other","version":1,"values":[]}`,
		`{"format":"plumbline-record","version":1,"values":[{"key":"inseam"}]}`,
		`{"format":"plumbline-record","version":1,"values":[{"key":"","value":1}]}`,
		`{"format":"plumbline-record","version":1,"values":[{"key":"inseam","value":830,` +
			`"unit":"mm","readings":["830",1]}]}`,
		`{"format":"plumbline-record","version":1,"date":"today","values":[]}`,
		`{"format":"plumbline-record","version":1,"units":"ell","values":[]}`,
	} {
		v, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
		require.NoError(t, err)
		assert.Error(t, s.Validate(v), text)
	}
}

func TestTheSchemaKnowsTheUnitsThatPeopleType(t *testing.T) {
	var s struct {
		Defs struct {
			Value struct {
				Properties map[string]struct{ Enum []string }
			}
		} `json:"$defs"`
	}
	text, err := schemaText()
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(text, &s))
	known := s.Defs.Value.Properties["typed_unit"].Enum
	require.NotEmpty(t, known)
	for _, q := range measure.All() {
		for _, u := range known {
			require.NotNil(t, measure.UnitNamed(u), u)
		}
		if q.Unit != measure.One && q.Is() == measure.Number {
			assert.Contains(t, known, q.Unit.Symbol)
		}
	}
}

func TestARecordInAnotherUnitIsTurnedIntoMillimetres(t *testing.T) {
	r, problems := exchange.FromJSON(
		`{"version":1,"values":[{"key":"inseam","value":32.75,"unit":"in"},{"key":"mass","value":"160",` +
			`"unit":"lb","repeat_error":2}]}`,
	)
	require.Empty(t, problems)
	assert.Equal(t, "inseam=831.85&inseam.unit=in&mass=72.574779%C2%B10.907185&mass.unit=lb", r.Fragment())
}

func TestASpreadsheetsTableIsRead(t *testing.T) {
	for _, text := range []string{
		"key;value;unit\r\ninseam;83,2;cm\r\nname;Rowan;\r\n;;\r\n",
		"Label\tUnit\tValue\tKey\nInside leg\tcm\t83.2\tinseam\n\t\tRowan\tname\n",
		"\ufeffkey,value,unit\n\"inseam\",\"83,2\",cm\nname,\"Rowan\"",
	} {
		r, problems := exchange.FromCSV(text)
		require.Empty(t, problems, text)
		assert.Equal(t, "name=Rowan&inseam=832&inseam.unit=cm", r.Fragment(), text)
	}
}

func TestASpreadsheetFindsNoFormula(t *testing.T) {
	r, _ := record.Decode("name=%3Dcmd()&note=%40x&helmet=%2B1&-evil=%09x&odd=%27")
	for _, line := range must(csv.NewReader(strings.NewReader(exchange.CSV(r))).ReadAll())(t) {
		for _, cell := range line {
			if cell != "" {
				assert.NotContains(t, "=+-@\t\r", cell[:1])
			}
		}
	}
	back, _ := exchange.FromCSV(exchange.CSV(r))
	assert.Equal(t, r.Fragment(), back.Fragment())
}

func must[T any](v T, err error) func(t require.TestingT) T {
	return func(t require.TestingT) T {
		require.NoError(t, err)
		return v
	}
}

func TestWhatIsNoRecordIsSaidWithItsPlace(t *testing.T) {
	for text, says := range map[string]string{
		"":                           "nothing to read",
		`{"values":[1,]}`:            "Line 1, column 14: it reads “]}”, but a value is expected",
		"{\n  \"values\" [":          "Line 2, column 12: it reads “[”, but a colon is expected",
		`{"values":[{"key":"inseam"`: "the text ends, but a comma or } is expected",
		`{"a":"` + "\x01" + `"}`:     "an escape for this character",
		`[1,2]`:                      "not a measurement record",
		`{"values":{}}`:              "not a measurement record",
		`{"format":"x","values":[]}`: "another format",
		strings.Repeat("[", 100):     "an end to values inside values",
		"hello there":                "neither a link with one, nor JSON, nor CSV",
		"https://example.org/x.html": "neither a link with one, nor JSON, nor CSV",
		"key,value\n" + strings.Repeat("a,1\n", 600): "where 512 are read",
		strings.Repeat("x", 2<<20):                   "too long",
	} {
		r, problems := exchange.Open(text)
		assert.Nil(t, r)
		require.Len(t, problems, 1)
		assert.Contains(t, problems[0].Text.Say(nil), says)
	}
	r, problems := exchange.FromJSON(
		`{"values":[{"value":1},7,{"key":"inseam","value":1e309},{"key":"mass","value":70}]}`,
	)
	require.Len(t, problems, 3, "each slip is said, and the rest is read")
	assert.Equal(t, 70.0, r.Value(measure.Mass))
}

func TestARecordIsFoundInWhatPeopleSend(t *testing.T) {
	for _, line := range []string{
		"inseam=830&mass=70", "#inseam=830&mass=70",
		"https://larch-hollow.example/guide/finish/your-setup-sheet.html#inseam=830&mass=70",
		"Here it is: <https://larch-hollow.example/x.html#inseam=830&mass=70> see you on " +
			"Tuesday", `file:///tmp/x.html#inseam=830&mass=70`,
	} {
		r, problems := exchange.Open(line)
		require.Empty(t, problems, line)
		assert.Equal(t, "inseam=830&mass=70", r.Fragment(), line)
	}
	for _, line := range []string{"", "See you on Tuesday", "https://larch-hollow.example/?a=b", "a b=c", "=",
		"#set-it", "1, 2 = 3"} {
		_, ok := exchange.Fragment(line)
		assert.False(t, ok, line)
	}
}

func TestEveryRecordSurvivesEveryForm(t *testing.T) {
	s := schema(t)
	rapid.Check(t, func(t *rapid.T) {
		var pairs []string
		for _, q := range rapid.SliceOfNDistinct(rapid.SampledFrom(measure.All()), 0, 20, rapid.ID).Draw(t,
			"quantities") {
			x := rapid.Float64Range(q.Low, q.High).Draw(t, q.Key)
			text := record.Exactly(math.Round(x*100)/100, q.Unit)
			if rapid.Bool().Draw(t, "three") {
				text += ";" + text + ";" + record.Exactly(q.Low, q.Unit)
			}
			pairs = append(pairs, q.Key+"="+string(record.Escape(nil, text)))
			if rapid.Bool().Draw(t, "was") {
				pairs = append(pairs, q.Key+".was="+text)
			}
		}
		key := rapid.StringMatching(`[a-z.]{1,12}`).Draw(t, "key")
		pairs = append(pairs, "u=cm", key+"="+string(record.Escape(nil, rapid.String().Draw(t, "text"))))
		r, _ := record.Decode(strings.Join(pairs, "&"))
		text := exchange.JSON(r)
		valid(t, s, text)
		back, _ := exchange.FromJSON(text)
		require.NotNil(t, back)
		require.Equal(t, text, exchange.JSON(back))
		sheet := exchange.CSV(r)
		_, err := csv.NewReader(strings.NewReader(sheet)).ReadAll()
		require.NoError(t, err)
		back, _ = exchange.FromCSV(sheet)
		require.NotNil(t, back)
		require.Equal(t, r.Fragment(), back.Fragment(), sheet)
	})
}

func BenchmarkJSON(b *testing.B) {
	r, _ := record.Decode(full)
	for b.Loop() {
		exchange.FromJSON(exchange.JSON(r))
	}
}

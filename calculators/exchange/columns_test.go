package exchange_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
)

// written is a record of which every column and member has a value of its own.
const written = "name=Rowan+Ash&note=say+%22left%22%2C+then+right&date=2026-11-24&u=in" +
	"&inseam=831.85%3B834%3B829%C2%B13&inseam.unit=in&inseam.on=2026-11-20&stature=1740&estimated=stature" +
	"&saddle-height=736&from=saddle-height.knee-bend&saddle-height.was=720.5&saddle-height.done=2026-11-23" +
	"&pedals=flat&helmet=%2B1"

// The file is written out by hand as RFC 4180 has it: CR LF behind each row, quotes
// around a cell with a comma or a quote, a quote in it doubled.
func TestCSVByHand(t *testing.T) {
	r, problems := record.Decode(written)
	require.Empty(t, problems)
	assert.Equal(
		t,
		strings.ReplaceAll(`key,label,value,unit,repeat_error,readings,typed_unit,date,estimated,from,was,done
version,,1,,,,,,,,,
name,,Rowan Ash,,,,,,,,,
note,,"say ""left"", then right",,,,,,,,,
date,,2026-11-24,,,,,,,,,
units,,in,,,,,,,,,
inseam,Inside leg,831.85,mm,3,"831.85; 834; 829",in,2026-11-20,,,,
stature,Height,1740,mm,,,,,yes,,,
saddle-height,Saddle height,736,mm,,,,,,knee-bend,720.5,2026-11-23
pedals,Pedals,flat,,,,,,,,,
helmet,,'+1,,,,,,,,,
`, "\n", "\r\n"),
		exchange.CSV(r),
	)
}

// The same as JSON, indented by two spaces, members in the order of the schema.
func TestJSONByHand(t *testing.T) {
	r, problems := record.Decode(written)
	require.Empty(t, problems)
	assert.Equal(t, `{
  "format": "plumbline-record",
  "version": 1,
  "name": "Rowan Ash",
  "note": "say \"left\", then right",
  "date": "2026-11-24",
  "units": "in",
  "values": [
    {
      "key": "inseam",
      "label": "Inside leg",
      "value": 831.85,
      "unit": "mm",
      "readings": [831.85, 834, 829],
      "repeat_error": 3,
      "typed_unit": "in",
      "date": "2026-11-20"
    },
    {
      "key": "stature",
      "label": "Height",
      "value": 1740,
      "unit": "mm",
      "estimated": true
    },
    {
      "key": "saddle-height",
      "label": "Saddle height",
      "value": 736,
      "unit": "mm",
      "from": "knee-bend",
      "was": 720.5,
      "done": "2026-11-23"
    },
    {
      "key": "pedals",
      "label": "Pedals",
      "value": "flat"
    },
    {
      "key": "helmet",
      "value": "+1"
    }
  ]
}
`, exchange.JSON(r))
}

// The unit of a value holds for its readings, its ± and what it was before (an inch is
// 25.4 mm): readings of 32.75, 33 and 32.5 in are 831.85, 838.2 and 825.5 mm, a ± of
// 0.25 in is 6.35 mm, and 32 in were 812.8 mm. Readings win over a single value.
func TestTheUnitHoldsForAllOfAValue(t *testing.T) {
	const want = "inseam=831.85%3B838.2%3B825.5%C2%B16.35&inseam.unit=in&inseam.was=812.8"
	for _, text := range []string{
		`{"values":[{"key":"inseam","value":1,"unit":"in","readings":[32.75,33,32.5],"repeat_error":0.25,"was":32}]}`,
		"key,value,unit,repeat_error,readings,was\ninseam,1,in,0.25,32.75; 33; 32.5,32",
		// The columns stand in any order and are found whatever their letters.
		"Was,READINGS,Repeat_Error, Unit ,key,colour,Value\n32,32.75; 33; 32.5,0.25,in,inseam,red,1",
	} {
		r, problems := exchange.Open(text)
		require.Empty(t, problems, text)
		assert.Equal(t, want, r.Fragment(), text)
		e := r.Of(measure.Inseam)
		assert.InDelta(t, 831.85, e.Value, 1e-9, "the median")
		assert.InDelta(t, 6.35, e.Error, 1e-9)
		assert.InDelta(t, 812.8, e.Former(), 1e-9)
	}
	// What it was may have an error, or a unit, of its own: 50 ± 2 cm, 20 in.
	for was, want := range map[string]string{"50±2": "500%C2%B120", "20 in": "508", "50": "500"} {
		for _, text := range []string{
			`{"values":[{"key":"saddle-height","value":74,"unit":"cm","was":"` + was + `"}]}`,
			"key,value,unit,was\nsaddle-height,74,cm," + was,
		} {
			r, problems := exchange.Open(text)
			require.Empty(t, problems, text)
			assert.Equal(t, "saddle-height=740&saddle-height.unit=cm&saddle-height.was="+want, r.Fragment(), text)
		}
	}
}

// Each mark comes from its own column or member, and nothing else does.
func TestEveryMarkIsReadFromItsPlace(t *testing.T) {
	const fromHeight = "inseam=830&from=inseam.saddle-height"
	const marks = "key,value,unit,repeat_error,readings,typed_unit,date,estimated,from,was,done\n"
	for text, want := range map[string]string{
		marks + "inseam,830,mm,,,cm,,,,,":                                         "inseam=830&inseam.unit=cm",
		marks + "inseam,830,mm,,,,2026-11-20,,,,":                                 "inseam=830&inseam.on=2026-11-20",
		marks + "inseam,830,mm,,,,,yes,,,":                                        "inseam=830&estimated=inseam",
		marks + "inseam,830,mm,,,,,TRUE,,,":                                       "inseam=830&estimated=inseam",
		marks + "inseam,830,mm,,,,,no,,,":                                         "inseam=830",
		marks + "inseam,830,mm,,,,,,saddle-height,,":                              fromHeight,
		marks + "inseam,830,mm,,,,,,,820,":                                        "inseam=830&inseam.was=820",
		marks + "inseam,830,mm,,,,,,,,2026-11-23":                                 "inseam=830&inseam.done=2026-11-23",
		marks + "inseam,830,mm,4":                                                 "inseam=830%C2%B14",
		marks + "units,cm\nversion,1\nname,A\ndate,2026-11-24\nnote,B":            "name=A&note=B&date=2026-11-24&u=cm",
		marks + "'=x,'=1":                                                         "%3Dx=%3D1",
		marks + "'x,2\npedals,flat":                                               "%27x=2&pedals=flat",
		`{"values":[{"key":"inseam","value":830,"unit":"mm","typed_unit":"cm"}]}`: "inseam=830&inseam.unit=cm",
		`{"values":[{"key":"inseam","value":830,"date":"2026-11-20"}]}`:           "inseam=830&inseam.on=2026-11-20",
		`{"values":[{"key":"inseam","value":830,"estimated":true}]}`:              "inseam=830&estimated=inseam",
		`{"values":[{"key":"inseam","value":830,"estimated":false}]}`:             "inseam=830",
		`{"values":[{"key":"inseam","value":830,"from":"saddle-height"}]}`:        fromHeight,
		`{"values":[{"key":"inseam","value":830,"done":"yes"}]}`:                  "inseam=830&inseam.done=yes",
		`{"values":[{"key":"inseam","value":830,"repeat_error":4}]}`:              "inseam=830%C2%B14",
		`{"name":"A","note":"B","date":"2026-11-24","units":"cm","values":[]}`:    "name=A&note=B&date=2026-11-24&u=cm",
	} {
		r, problems := exchange.Open(text)
		require.Empty(t, problems, text)
		assert.Equal(t, want, r.Fragment(), text)
	}
}

// A row, or a value, without a key is named by where it stands; a cell in quotes may run
// over several lines, which count.
func TestWhatHasNoKeyIsNamedByItsPlace(t *testing.T) {
	for text, says := range map[string]string{
		"key,value\nname,\"Rowan\nAsh\"\n,70\ninseam,830":    "Line 4 has no key",
		`{"values":[{"key":"mass","value":70},{"value":1}]}`: "Value 2 of the record has no key",
		`{"name":"A","name":"B","values":[]}`:                "“name” is in the record more than once",
		`{"values":[` + strings.Repeat("1,", 512) + `1]}`:    "The record has 513 values, where 512 are read",
		"key,value\n" + strings.Repeat("a,1\n", 513): "The record has more than 512 values, where 512 are " +
			"read",
	} {
		_, problems := exchange.Open(text)
		require.NotEmpty(t, problems, text)
		assert.Contains(t, problems[0].Text.Say(nil), says)
	}
	most, _ := exchange.Open("key,value\n" + strings.Repeat("a,1\n", 511) + "mass,70")
	require.NotNil(t, most)
	assert.Equal(t, 70.0, most.Value(measure.Mass), "512 values are read, the heading not counted")
}

// RFC 8259 writes U+1D11E, the G clef, as "\uD834\uDD1E". Of two members with one name
// the last counts. A line separator is escaped, because a script may not hold it.
func TestJSONAsItsStandardHasIt(t *testing.T) {
	r, _ := exchange.FromJSON(
		`{"version":2,"name":"\uD834\uDD1E","values":[{"key":"inseam","value":830,"value":835}]}`,
	)
	require.NotNil(t, r)
	assert.Equal(t, "\U0001D11E", r.Name)
	assert.Equal(t, 835.0, r.Value(measure.Inseam))
	assert.Equal(t, 2, r.Version)
	assert.Contains(t, exchange.JSON(r), `"version": 2`)
	r, _ = record.Decode("helmet=a%E2%80%A8b%E2%80%A9c")
	assert.Contains(t, exchange.JSON(r), `"a\u2028b\u2029c"`)
}

// In CSV too the version is kept, and RFC 4180 counts blanks as part of a cell, which
// is quoted so that no program takes them off.
func TestCSVAsItsStandardHasIt(t *testing.T) {
	r, _ := exchange.FromCSV("value,key\r\n830,inseam\r\n2,version\r\n")
	require.NotNil(t, r)
	assert.Equal(t, 2, r.Version)
	assert.Equal(t, 830.0, r.Value(measure.Inseam), "the end of a line is no part of the last cell")
	assert.Contains(t, exchange.CSV(r), "\r\nversion,,2,")
	var b strings.Builder
	exchange.Cell(&b, " a")
	assert.Equal(t, `" a"`, b.String())
	for _, heading := range []string{"key,colour\ninseam,830", "colour,value\nred,830"} {
		r, problems := exchange.FromCSV(heading)
		require.Len(t, problems, 1)
		assert.Nil(t, r)
		assert.Contains(t, problems[0].Text.Say(nil), "where columns named key and value are expected")
	}
	r, _ = record.Decode("inseam=830&from=inseam.%3Dcmd()")
	assert.Contains(t, exchange.CSV(r), ",'=cmd(),")
	back, _ := exchange.FromCSV(exchange.CSV(r))
	assert.Equal(t, r.Fragment(), back.Fragment())
}

// What is found in a line is the record alone, without the sign before it.
func TestAFragmentHasNoHash(t *testing.T) {
	found, ok := exchange.Fragment("https://larch-hollow.example/x.html#inseam=830")
	assert.True(t, ok)
	assert.Equal(t, "inseam=830", found)
}

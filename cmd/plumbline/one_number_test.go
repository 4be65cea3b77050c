package main

import (
	"bytes"
	"encoding/json"
	"html"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/intake"
	"plumbline/calculators/panel"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
)

// The records that are run through page, command, intake and sheet: a rider of whom
// little is known, one with much measured, and one under 1.45 m.
var everywhere = map[string]string{
	"little": "inseam=800&stature=1700&saddle-height=712&grip-x=430&grip-y=700&hand-length=180",
	"much": "sex=m&inseam=861&stature=1788&trochanter-height=917&thigh-length=425&shank-length=432&trunk-length=548&" +
		"arm-length=690&shoulder-width=405&foot-length=270&hand-length=194&saddle-height=762&saddle-setback=181&" +
		"grip-x=458&grip-y=731&reach=472&stack=634&head-angle=64.9&seat-angle=76.8&chainstay=439&bb-drop=30&" +
		"fork-travel=160&rear-travel=150&pedals=clip&crank-length=172.5&bar-width=772&spacers=18&stem-length=42&" +
		"bar-rise=34&q-factor=171&saddle-tilt=1.5&grade=18&toe-out-left=4&toe-out-right=7&lever-reach=54&" +
		"grip-diameter=31",
	"small": "sex=f&inseam=655&stature=1420&saddle-height=570&crank-length=150&grip-x=380&grip-y=620&" +
		"foot-length=215&hand-length=150&pedals=flat&trochanter-height=712&thigh-length=322&shank-length=327&" +
		"trunk-length=428&arm-length=545&shoulder-width=310&finger-length=57&lever-reach=45&grip-diameter=29",
}

var tags = regexp.MustCompile(`<[^>]*>`)

// TestOneNumberEverywhere runs each record through everything and compares: what the
// command prints as JSON, what the page shows, what intake makes of a reply, and what the
// setup sheet offers are the same numbers.
func TestOneNumberEverywhere(t *testing.T) {
	for name, text := range everywhere {
		r, _ := record.Decode(text)
		fromIntake := map[string]float64{}
		answered, _ := intake.Answers(r, catalog.All(), calculators.Full)
		for _, a := range answered {
			for _, x := range a.Answers {
				fromIntake[a.Calculator.Name+"/"+x.Name] = float64(x.Value)
			}
		}
		fromSheet := map[string]float64{}
		s := sheet.Of(r, catalog.All())
		for _, row := range append(s.Rows, s.Open...) {
			for _, o := range row.Offers {
				if o.Answered {
					fromSheet[o.Calculator.Name+"/"+o.Answer.Name] = float64(o.Answer.Value)
				}
			}
		}
		compared, inIntake, inSheet := 0, 0, 0
		for _, c := range catalog.All() {
			var typed []string
			for _, in := range c.Inputs {
				if e := r.Of(in.Quantity); e != nil {
					typed = append(typed, in.Key+"="+e.Text)
				}
			}
			var out, bad bytes.Buffer
			if len(typed) == 0 ||
				(&calc{Name: c.Name, Values: typed, JSON: true}).Run(streams{out: &out, err: &bad}) != nil {
				continue // something is missing, which other tests hold each of them to saying
			}
			var said struct {
				Readings []struct {
					Name  string
					Value *float64
				}
			}
			require.NoError(t, json.Unmarshal(out.Bytes(), &said), c.Name)
			direct, problems := c.Run(r.Pairs(), nil)
			require.Empty(t, problems, "%s: %s", name, c.Name)
			page := panel.Answer(catalog.All(), panel.Ask{Name: c.Name, Record: text})
			assert.False(t, page.Example, "%s: %s", name, c.Name)
			shown := html.UnescapeString(tags.ReplaceAllString(page.HTML(), ""))
			require.Len(t, said.Readings, len(direct.Answers), c.Name)
			for i := range direct.Answers {
				a, key := &direct.Answers[i], c.Name+"/"+direct.Answers[i].Name
				require.Equal(t, a.Name, said.Readings[i].Name)
				if !a.Exists() {
					assert.Nil(t, said.Readings[i].Value, "%s: %s", name, key)
					continue
				}
				compared++
				assert.InDelta(t, float64(a.Value), *said.Readings[i].Value, 1e-9, "%s: %s", name, key)
				number, _, _ := strings.Cut(a.Amount().Say(nil), "\u00a0")
				assert.Contains(t, shown, strings.TrimRight(number, "°%"), "%s: %s on the page", name, key)
				if x, ok := fromIntake[key]; ok {
					inIntake++
					assert.InDelta(t, float64(a.Value), x, 1e-9, "%s: %s in intake", name, key)
				}
				if x, ok := fromSheet[key]; ok {
					inSheet++
					assert.InDelta(t, float64(a.Value), x, 1e-9, "%s: %s on the sheet", name, key)
				}
			}
		}
		assert.Greater(t, compared, 20, name)
		assert.Greater(t, inIntake, 20, name)
		assert.Positive(t, inSheet, name)
	}
}

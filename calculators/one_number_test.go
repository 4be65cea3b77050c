package calculators_test

import (
	"maps"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
)

// The records that are run through everything: few and many fields, small and tall.
var wholeRecords = map[string]string{
	"example": "",
	"few":     "inseam=800 stature=1700",
	"small woman": "sex=f inseam=700 stature=1520 saddle-height=618 grip-x=395 grip-y=640 reach=405 stack=590 " +
		"head-angle=65 seat-angle=76 crank-length=160 front-rim=584 bar-width=720 seat-tube-angle=71",
	"tall man on flats": "sex=m inseam=950 stature=1990 saddle-height=848 grip-x=505 grip-y=770 reach=515 stack=665 " +
		"head-angle=64.5 seat-angle=77 crank-length=175 pedals=flat bar-width=800 spacers=20 stem-length=40 " +
		"bar-rise=40",
	"much measured": "sex=m inseam=861 stature=1788 trochanter-height=917 trunk-length=548 arm-length=690 " +
		"shoulder-width=405 foot-length=270 hand-length=194 saddle-height=762 saddle-setback=181 grip-x=458 " +
		"grip-y=731 " +
		"reach=472 stack=634 head-angle=64.9 seat-angle=76.8 chainstay=439 bb-drop=30 fork-offset=44 " +
		"fork-travel=160 " +
		"sag-front=21 rear-travel=150 sag-rear=29 pedals=clip pedal-height=13 sole-height=14 cleat-behind-ball=11 " +
		"crank-length=172.5 bar-width=772 grip-length=128 spacers=18 stem-length=42 bar-rise=34",
}

// exampleRecord is the one rider and bike of all worked examples.
func exampleRecord() map[string]string {
	all := map[string]string{}
	for _, c := range catalog.All() {
		for _, in := range c.Inputs {
			if in.Example != "" && all[in.Key] == "" && c.Name != "bike-by-tape" {
				all[in.Key] = in.Example
			}
		}
	}
	return all
}

// tried are examples that are no part of the rider: what one calculator tries out. The new
// bike is the next size in size-trial, and another bike in same-position.
var tried = map[*measure.Quantity]bool{measure.Wanted: true, measure.Grade: true, measure.NewReach: true,
	measure.NewStack: true, measure.NewHeadAngle: true, measure.NewSeatAngle: true}

// TestOneExample: the worked examples are one rider on one bike.
func TestOneExample(t *testing.T) {
	record := exampleRecord()
	for _, c := range catalog.All() {
		for _, in := range c.Inputs {
			// A tape finds a little less or more than the chart has, on purpose.
			if in.Example != "" && !tried[in.Quantity] && c.Name != "bike-by-tape" {
				assert.Equal(t, record[in.Key], in.Example, "%s: %s", c.Name, in.Key)
			}
		}
	}
}

// apart are inputs whose stand-in differs for a reason that stands here.
var apart = map[string]string{
	"shoulder-width": "the survey's average, where no height was given",
	"arm-length":     "the survey's average, where no height was given",
	"inseam":         "the survey's middle, where the answer hardly rests on it",
	"foot-length":    "the same",
	"move-x":         "asked for where a move is wanted, tried out elsewhere",
	"move-y":         "the same",
	"stack":          "from the grips, where a calculator asks for them",
	"reach":          "the same",
}

// TestOneStandIn: what stands in for a field that nobody filled in is the same value
// wherever something stands in for it.
func TestOneStandIn(t *testing.T) {
	for name := range wholeRecords {
		typed := wholeRecord(name)
		seen := map[string]float64{}
		where := map[string]string{}
		for _, c := range catalog.All() {
			for i, a := range c.Assumptions(typed, nil) {
				key := c.Inputs[i].Key
				if slices.ContainsFunc(typed, func(p calculators.Pair) bool { return p.Key == key }) {
					continue
				}
				if math.IsNaN(a.Value) || apart[key] != "" {
					continue
				}
				if x, ok := seen[key]; ok {
					assert.InDelta(t, x, a.Value, 1e-9, "%s: %s in %s and %s", name, key, where[key], c.Name)
				}
				seen[key], where[key] = a.Value, c.Name
			}
		}
	}
}

func wholeRecord(name string) (pairs []calculators.Pair) {
	record := map[string]string{}
	if wholeRecords[name] == "" {
		record = exampleRecord()
	}
	for field := range strings.FieldsSeq(wholeRecords[name]) {
		key, value, _ := strings.Cut(field, "=")
		record[key] = value
	}
	for _, key := range slices.Sorted(maps.Keys(record)) {
		pairs = append(pairs, calculators.Pair{Key: key, Typed: record[key]})
	}
	return pairs
}

// sameThing are the answers of several calculators that mean one thing. Answers of one
// name mean one thing too, but for those in otherThing.
var sameThing = map[string]string{
	"saddle-height/knee-bend":             "knee at the bottom",
	"knee-bend/knee-bottom":               "knee at the bottom",
	"knee-bend/knee-top":                  "knee at the top",
	"crank-length/knee-at-top":            "knee at the top",
	"knee-bend/hip-at-top":                "hip at the top",
	"crank-length/hip-at-top":             "hip at the top",
	"climb-balance/trunk-angle":           "trunk, seated",
	"seated-reach/trunk-angle":            "trunk, seated",
	"saddle-setback/seat-angle-at-saddle": "seat angle at the saddle",
	"frame-geometry/seat-angle-at-saddle": "seat angle at the saddle",
	"grip-position/saddle-to-grip":        "saddle to grips",
	"seated-reach/saddle-to-grip":         "saddle to grips",
}

// settled returns a record without what is only tried out, in which grips and saddle are
// where the calculators that answer them put them, as the page's button writes them.
func settled(typed []calculators.Pair) []calculators.Pair {
	typed = slices.DeleteFunc(typed, func(p calculators.Pair) bool {
		return slices.Contains([]string{"new-crank-length", "grade", "new-saddle-setback", "move-x", "move-y",
			"feeling"}, p.Key)
	})
	for _, c := range catalog.All() {
		r, problems := c.Run(asked(c, typed), nil)
		if len(problems) > 0 {
			continue
		}
		for i := range r.Answers {
			a := &r.Answers[i]
			if a.Feeds == nil || !a.Exists() || a.Feeds != measure.GripX && a.Feeds != measure.GripY &&
				a.Feeds != measure.SaddleHeight {
				continue
			}
			typed = slices.DeleteFunc(typed, func(p calculators.Pair) bool { return p.Key == a.Feeds.Key })
			typed = append(typed, calculators.Pair{Key: a.Feeds.Key, Typed: measure.Exact(float64(a.Value))})
		}
	}
	return typed
}

// asked are the pairs that a calculator asks for.
func asked(c *calculators.Calculator, typed []calculators.Pair) []calculators.Pair {
	return slices.DeleteFunc(slices.Clone(typed), func(p calculators.Pair) bool {
		return !slices.ContainsFunc(c.Inputs, func(in calculators.Input) bool { return in.Key == p.Key })
	})
}

// TestOneNumberForOneThing runs each record through every calculator and compares what
// means the same thing.
func TestOneNumberForOneThing(t *testing.T) {
	met := map[string]bool{}
	for name := range wholeRecords {
		typed := settled(wholeRecord(name))
		seen := map[string]float64{}
		where := map[string]string{}
		for _, c := range catalog.All() {
			r, problems := c.Run(asked(c, typed), nil)
			if len(problems) > 0 {
				continue
			}
			for i := range r.Answers {
				a := &r.Answers[i]
				key := c.Name + "/" + a.Name
				thing := sameThing[key]
				if thing == "" || !a.Exists() {
					continue
				}
				if x, ok := seen[thing]; ok {
					assert.InDelta(t, x, float64(a.Value), 1e-9, "%s: %s in %s and %s", name, thing, where[thing], key)
				}
				seen[thing], where[thing] = float64(a.Value), key
				met[key] = true
			}
		}
	}
	for key := range sameThing {
		assert.True(t, met[key], "%s has no value in any record", key)
	}
}

// onTheSheet are the answers that the setup sheet of a record offers, by calculator and
// answer.
func onTheSheet(t *testing.T, typed []calculators.Pair) map[string]float64 {
	t.Helper()
	var fields []string
	for _, p := range typed {
		if p.Key != measure.Sizes.Key {
			fields = append(fields, p.Key+"="+p.Typed)
		}
	}
	r, _ := record.Decode(strings.Join(fields, "&"))
	offers := map[string]float64{}
	s := sheet.Of(r, catalog.All())
	for _, row := range append(s.Rows, s.Open...) {
		for _, o := range row.Offers {
			if o.Answered {
				offers[o.Calculator.Name+"/"+o.Answer.Name] = float64(o.Answer.Value)
			}
		}
	}
	return offers
}

// TestTheSheetSaysTheCalculatorsNumbers compares what the sheet offers for a record with
// what each calculator answers of it.
func TestTheSheetSaysTheCalculatorsNumbers(t *testing.T) {
	for name := range wholeRecords {
		typed := wholeRecord(name)
		offers := onTheSheet(t, typed)
		compared := 0
		for _, c := range catalog.All() {
			r, problems := c.Run(asked(c, typed), nil)
			if len(problems) > 0 {
				continue
			}
			for i := range r.Answers {
				a := &r.Answers[i]
				if x, ok := offers[c.Name+"/"+a.Name]; ok && a.Exists() {
					assert.InDelta(t, float64(a.Value), x, 1e-9, "%s: %s/%s", name, c.Name, a.Name)
					compared++
				}
			}
		}
		assert.Positive(t, compared, name)
	}
}

// TestFiguresSayTheCalculatorsNumbers: the guide's own picture of the whole rider says of
// the example what standing ready answers, as whole degrees and to a millimetre or two,
// for its bike is the drawn one and its grips are not rounded.
func TestFiguresSayTheCalculatorsNumbers(t *testing.T) {
	of := func(c *calculators.Calculator) *calculators.Result {
		r, problems := c.Run(asked(c, settled(wholeRecord("example"))), nil)
		require.Empty(t, problems)
		return r
	}
	value := func(r *calculators.Result, name string) float64 {
		i := slices.IndexFunc(r.Answers, func(a calculators.Answer) bool { return a.Name == name })
		return float64(r.Answers[i].Value)
	}
	ready, seated := of(catalog.Named("ready-position")), of(catalog.Named("seated-reach"))
	said := strings.ReplaceAll(cockpit.WholeRider().Figure(nil, nil).Description.Say(nil), "\u00a0", " ")
	numbers := regexp.MustCompile(
		`the trunk leans ([0-9.]+)°.*the hips lie ([0-9.]+) mm behind the crank axle, the elbows bend ([0-9.]+)°`,
	).FindStringSubmatch(
		said,
	)
	require.Len(t, numbers, 4, said)
	for i, k := range []struct{ want, within float64 }{{value(seated, "trunk-angle"), 1}, {value(ready,
		"hip-behind"), 1.5},
		{value(ready, "elbow-bend"), 1}} {
		got, err := strconv.ParseFloat(numbers[i+1], 64)
		require.NoError(t, err)
		assert.InDelta(t, k.want, got, k.within, said)
	}
}

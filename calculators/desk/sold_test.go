package desk_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/desk"
	"plumbline/calculators/feet"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

// TestWhatIsSoldInMillimetresStaysInThem: a crank says 170 on its inner side in every country. Who reads
// inches has it in millimetres in field, answer, strip, table, JSON and on the sheet, and lengths that are
// taken with a tape in inches. 6 3/4 in is 6.75 × 25.4 = 171.45 mm.
func TestWhatIsSoldInMillimetresStaysInThem(t *testing.T) {
	const record = "inseam=812&crank-length=170&bb-height=340"
	reply := panel.Answer(
		catalog.All(),
		panel.Ask{Name: "crank-length", Record: record, Query: "new-crank-length=6+3/4+in",
			Bare: "in", Units: "in", Whole: true},
	)
	require.Empty(t, reply.Problems)
	for _, p := range reply.Record {
		switch p.Key {
		case "new-crank-length":
			assert.Equal(t, "171.45", p.Typed)
		case "new-crank-length.unit":
			t.Error("the field is read in inches from then on")
		}
	}
	assert.Contains(t, reply.Form, `value="170"`)
	assert.Contains(t, reply.Form, `value="6 3/4 in"`, "nothing that was typed changes its look")
	assert.Contains(t, reply.Form, `value="31 15/16"`, "812 mm are 31.97 inches, 511.5 sixteenths")
	html := reply.HTML()
	assert.Contains(t, html, "171\u00a0mm", "the figure")
	assert.Contains(t, html, "Crank\u00a0<span class=\"unit\">mm</span>", "the table’s head")
	assert.Contains(t, html, "Saddle moves\u00a0<span class=\"unit\">in</span>")
	bare := panel.Answer(catalog.All(), panel.Ask{Name: "crank-length", Record: record, Query: "new-crank-length=165",
		Bare: "in", Units: "in"})
	require.Empty(t, bare.Problems, "a bare number is in millimetres")
	short := panel.Answer(catalog.All(), panel.Ask{Name: "crank-length", Record: record, Query: "new-crank-length=6.5",
		Bare: "in", Units: "in"})
	require.Len(t, short.Problems, 1)
	assert.Equal(t, "6 1/2 in", short.Problems[0].Suggest)

	_, problems := feet.Crank().Run([]calculators.Pair{{Key: "inseam", Typed: "812"}, {Key: "crank-length",
		Typed: "170"}, {Key: "new-crank-length", Typed: "170"}}, &words.Reader{Units: "in"})
	require.NotEmpty(t, problems, "812 is no inside leg in inches")
	result, problems := feet.Crank().Run([]calculators.Pair{{Key: "inseam", Typed: "32"}, {Key: "crank-length",
		Typed: "170"}, {Key: "new-crank-length", Typed: "170"}}, &words.Reader{Units: "in"})
	require.Empty(t, problems)
	assert.Equal(
		t,
		"Keep the 170\u00a0mm unless something troubles you",
		result.Verdict.Say(&words.Reader{Units: "in"}),
	)
	text, err := json.Marshal(result.Complete())
	require.NoError(t, err)
	assert.Contains(t, string(text), `"crank-length":{"value":170,"unit":"mm"`)

	sheet := d.Answer(desk.Ask{Name: desk.Sheet, Record: record + "&saddle-height=737", Units: "in"})
	said := strings.ReplaceAll(sheet.HTML, "\u00a0", " ")
	assert.Contains(t, said, "170 mm")
	assert.Contains(t, said, "29 in", "737 mm are 29.02 inches")
}

// TestPartsAreChosenInTheUnitTheyAreSoldIn: stems, spacers and a bar's rise as well, in the sentence and in
// the table's heads, while the way of the grips is in inches. The example's numbers are the same in both.
func TestPartsAreChosenInTheUnitTheyAreSoldIn(t *testing.T) {
	c := catalog.Named("stem-choice")
	result, problems := c.Run(panel.Example(c), nil)
	require.Empty(t, problems)
	in := &words.Reader{Units: "in"}
	assert.Equal(t, result.Verdict.Say(nil), result.Verdict.Say(in))
	heads := map[string]string{}
	for i, col := range result.Tables[0].Columns {
		if u := result.Tables[0].ReadIn(i, in); u != nil {
			heads[col.Name] = u.Symbol
		}
	}
	assert.Equal(t, map[string]string{"stem": "mm", "angle": "deg", "spacers": "mm", "rise": "mm", "off": "in"}, heads)
	fit, problems := catalog.Named("dropper-travel").Run(panel.Example(catalog.Named("dropper-travel")), nil)
	require.Empty(t, problems)
	assert.Equal(t, fit.Answers[0].Amount().Say(nil), fit.Answers[0].Amount().Say(in), "a dropper’s travel")
}

// TestWhatATapeMeasuresIsNotSoldInMillimetres: what is declared so is a part's own length, never one that
// somebody lays a tape along a bike or a body for; and it can be typed in inches.
func TestWhatATapeMeasuresIsNotSoldInMillimetres(t *testing.T) {
	sold := 0
	for _, q := range measure.All() {
		if q.Unit != measure.SoldInMm {
			continue
		}
		sold++
		assert.NotEqual(t, measure.OfRider, q.Of, q.Key)
		in := measure.Typed((q.Low+q.High)/2/25.4, measure.Inch)
		g, _, ok := q.Parse(in, q.Unit.ReadIn(&words.Reader{Units: "in"}))
		require.True(t, ok, "%s: %s", q.Key, in)
		assert.InDelta(t, (q.Low+q.High)/2, g.Value, 1e-9, q.Key)
		assert.Equal(t, q.Amount(q.High).Say(nil), q.Amount(q.High).Say(&words.Reader{Units: "in"}), q.Key)
	}
	assert.GreaterOrEqual(t, sold, 14)
}

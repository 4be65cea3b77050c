package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/desk"
)

// pasted is a chart as its maker's page might have it, made up, with one cell that is no
// number and one that is missing.
const pasted = "Geometry\tS\tM\tL\nReach (mm)\t435\t460\t485\nStack (mm)\t610\t625\t640\n" +
	"Head tube angle\t65.5°\tx65\t65.5°\n" +
	"Seat angle\t76.8°\t76.5°\t76.5°\nSeat tube length\t390 mm\t420 mm\t450 mm\n" +
	"ETT\t578\t603\t630\nWheelbase\t1180\t\t1240\n" +
	"Warranty\t5 years\t5 years\t5 years"

func TestAChartIsShownAsItWasUnderstood(t *testing.T) {
	r := desk.Desk{}.Answer(
		desk.Ask{Name: desk.Chart, Key: "sizes", Text: pasted, Place: "b-sizes-chart", Units: "mm"},
	)
	require.Empty(t, r.Problems)
	for _, want := range []string{
		"Read: 3 sizes, 2 complete. Not used: “ETT” and “Warranty”.",
		`id="b-sizes-chart-reach-1" aria-label="Reach of M" value="460"`,
		`id="b-sizes-chart-head-angle-1" aria-label="Head angle of M" value="x65" aria-invalid="true"`,
		`id="b-sizes-chart-wheelbase-1" aria-label="Wheelbase of M" value="">`,
		`data-mine="reach=435&amp;stack=610&amp;head-angle=65.5&amp;seat-angle=76.8&amp;` +
			`seat-tube-length=390&amp;wheelbase=1180"`,
		"My size is L",
	} {
		assert.Contains(t, r.HTML, want)
	}
	assert.NotContains(t, r.HTML, "stand-over", "which the chart does not have")
}

func TestAChartIsShownInItsReadersUnit(t *testing.T) {
	r := desk.Desk{}.Answer(desk.Ask{Name: desk.Chart, Key: "sizes", Text: pasted, Place: "x", Units: "in"})
	// 460 mm are 460/25.4 = 18.110 in.
	assert.Contains(t, r.HTML, `aria-label="Reach of M" value="18.11"`)
	assert.Contains(t, r.HTML, "reach=460&amp;", "what goes into the record stays millimetres")
}

func TestAColumnThatIsMissingCanBeFilledIn(t *testing.T) {
	text := strings.ReplaceAll(pasted, "Stack (mm)\t610\t625\t640\n", "")
	r := desk.Desk{}.Answer(desk.Ask{Name: desk.Chart, Key: "sizes", Text: text, Place: "x"})
	assert.Contains(t, r.HTML, "Read: 3 sizes, 0 complete.")
	assert.Equal(t, 3, strings.Count(r.HTML, ` of S" value="" aria-invalid="true"`)+
		strings.Count(r.HTML, `Stack of M" value="" aria-invalid="true"`)+
		strings.Count(r.HTML, `Stack of L" value="" aria-invalid="true"`))
	// The chart as the page writes it once a cell was filled in.
	text = "name;reach;stack;head-angle;seat-angle;seat-tube-length\nM;460;;65,5;76,5;420\nL;485;64x;65.5;76.5;450"
	r = desk.Desk{}.Answer(desk.Ask{Name: desk.Chart, Key: "sizes", Text: text, Place: "x"})
	assert.Contains(t, r.HTML, "Read: 2 sizes, 0 complete.")
	assert.Contains(t, r.HTML, `aria-label="Stack of L" value="64x" aria-invalid="true"`)
	assert.Contains(t, r.HTML, `aria-label="Head angle of M" value="65.5"`)
}

func TestWhatIsNoChartShowsNothing(t *testing.T) {
	for _, text := range []string{"", "nonsense", "1e309", "-5", strings.Repeat("M 460 ", 1<<18),
		"<b>Reach</b>\x00\t1"} {
		assert.Empty(t, desk.Desk{}.Answer(desk.Ask{Name: desk.Chart, Key: "sizes", Text: text, Place: "x"}).HTML)
	}
	for _, key := range []string{"", "inseam", "scores-before", "nothing"} {
		assert.NotEmpty(t, desk.Desk{}.Answer(desk.Ask{Name: desk.Chart, Key: key, Text: pasted}).Problems, key)
	}
}

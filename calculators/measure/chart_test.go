package measure_test

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// cellsOf are the cells of a row by the keys of their columns, the empty ones left out.
func cellsOf(row measure.Row) map[string]float64 {
	m := map[string]float64{}
	for i, c := range measure.Sizes.Columns {
		if !math.IsNaN(row.Cells[i]) {
			m[c.Key] = row.Cells[i]
		}
	}
	return m
}

// The invented bike of these tests, two sizes; every layout below is this chart as a
// person would write or copy it (common practice).
var small = map[string]float64{"reach": 430, "stack": 612, "head-angle": 64.5, "seat-angle": 76.5,
	"seat-tube-length": 400, "wheelbase": 1215}
var large = map[string]float64{"reach": 480, "stack": 640, "head-angle": 64.5, "seat-angle": 77,
	"seat-tube-length": 450, "wheelbase": 1268}

func TestAChartIsReadAsItWasCopied(t *testing.T) {
	for name, typed := range map[string]string{
		"across, tabs, units in heads": "Geometry\tS\tL\nReach (mm)\t430\t480\nStack (mm)\t612\t640\n" +
			"Head tube angle (°)\t64.5\t64.5\n" +
			"Seat angle (°)\t76.5\t77\nSeat tube length (mm)\t400\t450\nWheelbase (mm)\t1,215\t1,268\n",
		"across, the corner lost": "S\tL\nA Reach\t430\t480\nB Stack\t612\t640\nC HTA\t64.5°\t64.5°\n" +
			"D Effective seat tube angle\t76.5°\t77°\n" +
			"E Seat tube\t400\t450\nF WB\t1215\t1268",
		"across, a column of units": "\tUnit\tS\tL\nReach\tmm\t430\t480\nStack\tmm\t612\t640\n" +
			"Head angle\t°\t64.5\t64.5\nSeat angle\t°\t76.5\t77\n" +
			"ST length\tcm\t40\t45\nWheelbase\tmm\t1215\t1268",
		"across, decimal commas": ";S;L\nReach;430;480\nStack;612;640\nHead angle;64,5;64,5\n" +
			"Seat angle;76,5;77\nSeat tube;400;450\n" +
			"Wheel base;1.215;1.268",
		"across, runs of blanks": "Size              S       L\nReach             430 mm  480 mm\n" +
			"Stack             612 mm  640 mm\n" +
			"Head angle        64.5 °  64.5 °\nSeat tube angle   76.5 °  77 °\n" +
			"Seat tube length  400 mm  450 mm\nWheelbase         1 215   1 268",
		"across, single blanks": "Frame size S L\nReach 430 480\nStack 612 640\nHead tube angle 64.5° 64.5°\n" +
			"Seat tube angle effective 76.5° 77°\n" +
			"Seat tube length (c-t) 400 mm 450 mm\nWheelbase 1215 1268",
		"down, commas": "Size,Reach [mm],Stack [mm],HA,SA,\"Seat tube, centre to top\",Wheelbase\n" +
			"S,430,612,64.5,76.5,400,\"1,215\"\n" +
			"L,480,640,64.5,77,450,\"1,268\"",
		"down, a line of units": "\tReach\tStack\tHead angle\tVirtual seat tube angle\tSeat tube\tWheelbase\n" +
			"\tcm\tcm\t°\t°\tcm\tcm\n" +
			"S\t43\t61.2\t64.5\t76.5\t40\t121.5\nL\t48\t64\t64.5\t77\t45\t126.8",
		"down, centimetres unsaid": "Size;Reach;Stack;Head angle;Seat angle;Seat tube;Wheelbase\n" +
			"S;43;61,2;64,5;76,5;40;121,5\nL;48;64;64,5;77;45;126,8",
		"down, single blanks": "Size Reach Stack HTA STA Seat tube length Wheelbase\n" +
			"S 430 612 64.5 76.5 400 1215\nL 480 640 64.5 77 450 1268",
		"down, runs, a title": "Larch Hollow, geometry\n\n" +
			"Size   Reach   Stack   Head angle   Seat angle   Seat tube   Wheelbase\n" +
			"S      430     612     64.5         76.5         400         1215\n" +
			"L      480     640     64.5         77           450         1268",
		"one cell below the other": "Size\nS\nL\nReach\nmm\n430\n480\nStack\n612 mm\n640 mm\nHead angle\n" +
			"64.5°\n64.5°\nSeat angle\n76.5°\n77°\nSeat tube\n400\n450\nWheelbase\n1215\n1268",
		"across, a column of letters": "\tS\tL\nA\tReach\t430\t480\nB\tStack\t612\t640\nC\tHT angle\t64.5\t64.5\n" +
			"D\tSeat angle β\t76.5\t77\nE\tSeat tube\t400\t450\nF\tWheelbase\t1215\t1268",
		"across, two units in a cell": "Size\tS\tL\nReach\t430 mm / 16.9 in\t480 mm / 18.9 in\n" +
			"Stack\t612 mm / 24.1 in\t640 mm / 25.2 in\nHead angle\t64.5°\t64.5°\nSeat angle\t76.5°\t77°\n" +
			"Seat tube\t400 mm / 15.7 in\t450 mm / 17.7 in\nWheelbase\t1215 / 47.8 in\t1268 mm / 49.9\"",
		"German, across": "Rahmengröße;S;L\nReach;430;480\nStack;612;640\nLenkwinkel;64,5°;64,5°\n" +
			"Sitzwinkel (effektiv);76,5°;77°\nSitzrohrlänge;400;450\nRadstand;1.215;1.268",
		"German, single blanks": "Größe S L\nReach 430 480\nStack 612 640\nSteuerrohrwinkel 64,5° 64,5°\n" +
			"Effektiver Sitzrohrwinkel 76,5° 77°\nSitzrohr 400 mm 450 mm\nRadstand 1215 mm 1268 mm",
		"down, footnotes": "Size\tReach\tStack\tHead angle\tSeat angle (at 700 mm)\tSeat tube\tWheelbase\n" +
			"S\t430*\t612 (unsagged)\t64.5°\t76.5° @ 700 mm\t400\t1215\tin stock\n" +
			"L\t480*\t640\t64.5\t77°\t450\t1268\n* with a 150 mm fork",
	} {
		for _, in := range []*words.Reader{nil, {Units: "cm"}, inches} {
			rows, why := measure.Sizes.Table.Read(measure.Sizes, typed, in)
			if !assert.Len(t, rows, 2, "%s: %s", name, said(why)) {
				continue
			}
			assert.Equal(t, "S", rows[0].Name, name)
			assert.Equal(t, "L", rows[1].Name, name)
			assert.InDeltaMapValues(t, small, cellsOf(rows[0]), 1e-9, name)
			assert.InDeltaMapValues(t, large, cellsOf(rows[1]), 1e-9, name)
			assert.Empty(t, measure.Sizes.Table.Chart(measure.Sizes, typed, in).Unread, name)
		}
	}
}

func said(why []words.Text) string {
	var list []string
	for _, w := range why {
		list = append(list, w.Say(nil))
	}
	return strings.Join(list, "\n")
}

// What cannot be used is named, each in one line, and the rest is read. Rim diameters:
// ISO 5775-2, 622 mm for 29 inch, 584 for 27.5, from memory.
func TestAChartNamesWhatItCouldNotUse(t *testing.T) {
	c := measure.Sizes.Table.Chart(measure.Sizes, "Trail bike 2\n"+
		"\tS\tM\tL\n"+
		"Reach\t430\t455\t480\n"+
		"Stack\t612\t–\t640\n"+
		"HTA\t64.5\t64.5\t64.5\n"+
		"Seat tube angle\t76.5\t77\t77\n"+
		"Seat tube angle (actual)\t70\t70.5\tn/a\n"+
		"Seat tube\t400\t420\t450\n"+
		"ETT\t580\t605\t630\n"+
		"Standover\t700 / 710\t715\t-\n"+
		"BB drop\t32\t32\t32\n"+
		"BB height\t345\t345\tabout 345\n"+
		"Wheel size\t27.5\"\t29/27.5\tmullet\n"+
		"Rider height\t160-170\t168-178\t176-188\n"+
		"Weight\n"+
		"Fork travel (mm)\t150\t150\t150\n"+
		"Reach (in)\t16.9\t17.9\t18.9\n", nil)
	assert.Equal(t, "M is left out: “Stack” is missing.", said(c.Unread))
	assert.Equal(t, strings.Join([]string{
		"Line 1 is not used: “Trail bike 2”.",
		"Line 15 is not used: “Weight”.",
		"“Seat tube angle” is taken for the effective seat angle, as most charts mean it.",
		"“ETT” is not used: “Effective top tube” is not asked for here.",
		"“Rider height” is not used.",
		"“Reach (in)” is not used: “Reach” is in the chart before it.",
		"S: “700 / 710” is not one number for “Stand-over”.",
		"L: “about 345” has other words beside the number for “Bottom-bracket height”. Did you mean 345 mm?",
	}, "\n"), said(c.Passed))
	require.Len(t, c.Rows, 2)
	assert.Equal(t, map[string]float64{"reach": 430, "stack": 612, "head-angle": 64.5, "seat-angle": 76.5,
		"seat-tube-length": 400, "seat-tube-angle": 70, "bb-drop": 32, "bb-height": 345, "front-rim": 584,
		"rear-rim": 584, "fork-travel": 150}, cellsOf(c.Rows[0]))
	assert.Equal(t, map[string]float64{"reach": 480, "stack": 640, "head-angle": 64.5, "seat-angle": 77,
		"seat-tube-length": 450, "bb-drop": 32, "front-rim": 622, "rear-rim": 584, "fork-travel": 150},
		cellsOf(c.Rows[1]))
	assert.Equal(t, "Read 2: S and L. Of each: Reach, Stack, Head angle, Effective seat angle, Seat tube’s own "+
		"angle, "+
		"Seat tube, Stand-over, Bottom-bracket drop, Bottom-bracket height, Front rim, Rear rim and Fork travel.",
		c.Summary().Say(nil))
	require.Len(t, c.Columns, 15) // the names, and a head for each line but the first two and "Weight"
	assert.Equal(t, "HTA", c.Columns[3].Head)
	assert.Equal(t, []*measure.Quantity{measure.HeadAngle}, c.Columns[3].As)
	assert.Same(t, measure.Deg, c.Columns[3].Unit)
	assert.Nil(t, c.Columns[7].As)
}

// The usual names of the trade, each in the variants that charts use (common practice).
func TestAChartKnowsTheUsualNames(t *testing.T) {
	for q, names := range map[*measure.Quantity][]string{
		measure.Reach:     {"Reach", "REACH (mm)", "A – Reach", "Reach in mm", "Reach*"},
		measure.HeadAngle: {"Head angle", "Head-tube angle", "HTA", "HA (deg)", "Headtube Angle °"},
		measure.SeatAngle: {"Seat angle", "Seat angle (effective)", "Seat tube angle effective",
			"Effective STA",
			"Eff. seat tube angle", "Virtual seat angle"},
		measure.SeatTubeAngle: {"Actual seat tube angle", "Seat tube angle (actual)"},
		measure.SeatTubeLength: {"Seat tube", "Seat tube length", "Seat tube length (centre to top)",
			"ST length [mm]", "Seat tube (C-T)"},
		measure.StandOver:      {"Standover", "Stand-over", "Standover height", "Stand over height (mm)"},
		measure.HeadTubeLength: {"Head tube", "Head tube length", "HT length"},
		measure.ForkLength:     {"Fork length", "Axle to crown", "Axle-to-crown (mm)"},
		measure.ForkOffset:     {"Fork offset", "Fork rake", "Rake / offset fork"},
		measure.ForkTravel:     {"Fork travel", "Travel, fork", "Front travel"},
		measure.RearTravel:     {"Rear travel", "Travel (rear)", "Rear wheel travel"},
		measure.Chainstay:      {"Chainstay", "Chainstay length", "Chain stay", "Rear center", "CS length"},
		measure.BBDrop:         {"BB drop", "Bottom bracket drop", "BB-drop (mm)"},
		measure.BBHeight:       {"BB height", "Bottom-bracket height"},
		measure.Wheelbase:      {"Wheelbase", "Wheel base", "WB", "Wheelbase length"},
		measure.CrankLength:    {"Crank", "Crank length", "Crank arm length"},
		measure.TravelPost:     {"Dropper travel", "Seatpost travel", "Post travel"},
		measure.FreeDepth:      {"Max. seatpost insertion"},
		measure.StemLength:     {"Stem", "Stem length"},
	} {
		for _, name := range names {
			typed := "Size\t" + name + "\tOwner\tStack\tWeight\nM\t1\t2\t3\t4"
			c := measure.Sizes.Table.Chart(measure.Sizes, typed, nil)
			if assert.Len(t, c.Columns, 5, name) {
				assert.Equal(t, []*measure.Quantity{q}, c.Columns[1].As, name)
			}
		}
	}
}

// A chart that names no unit is in the one that makes sense of most of its lengths: 3.2
// alone could be millimetres, beside a reach of 45.5 it is centimetres. Two numbers
// in one cell are no fraction there.
func TestTheLengthsOfAChartAreInOneUnit(t *testing.T) {
	c := measure.Sizes.Table.Chart(measure.Sizes, "Size\tReach\tStack\tHTA\tSA\tST\tBB drop\n"+
		"M\t45.5\t62\t64\t77\t42\t3.2\n"+
		"L\t48\t64\t64\t77\t45\t3/4", nil)
	require.Len(t, c.Rows, 2)
	split := measure.Sizes.Table.Chart(measure.Sizes, "Size;Reach (mm);Stack;HTA;SA;ST\nM;45,5;620;64;77;420", nil)
	assert.Contains(t, said(split.Unread), "Did you mean 45.5\u00a0cm?",
		"no thousands with one digit behind the comma")
	assert.InDelta(t, 32, cellsOf(c.Rows[0])["bb-drop"], 1e-9)
	assert.NotContains(t, cellsOf(c.Rows[1]), "bb-drop")
	assert.Equal(t, "Lengths without a unit are read in cm.\n"+
		"L: “3/4” is not one number for “Bottom-bracket drop”.", said(c.Passed))
}

// A minus before a drop may mean either side of the axles: it is said which is read.
func TestANegativeDropIsSaid(t *testing.T) {
	c := measure.Sizes.Table.Chart(measure.Sizes, "Size\tReach (mm)\tStack\tHTA\tSA\tST\tBB drop\n"+
		"M\t455\t620\t64\t77\t420\t-20", nil)
	assert.Equal(t, -20.0, cellsOf(c.Rows[0])["bb-drop"])
	assert.Equal(t, "“Bottom-bracket drop” below zero is read as above the axles. Leave the minus out if it lies "+
		"below.", said(c.Passed))
}

// Where cells may have slipped sideways, the line is left out rather than guessed.
func TestACellThatLeftNoTraceCostsItsLine(t *testing.T) {
	c := measure.Sizes.Table.Chart(measure.Sizes, "Size     S    M    L\nReach    430  455  480\n"+
		"Stack    612  625  640\n"+
		"HTA      64   64   64\nSA       76   76   77\nST       400  420  450\nStandover  700    715\n", nil)
	assert.Equal(t, "Line 7 has 3 cells, where the chart has 4. Tabs or semicolons between "+
		"the cells leave no doubt.", said(c.Unread))
	require.Len(t, c.Rows, 3)
	assert.NotContains(t, cellsOf(c.Rows[0]), "stand-over")
	c = measure.Sizes.Table.Chart(measure.Sizes, "Size,Reach,Stack,HTA\nM,455,620,64,5", nil)
	assert.Empty(t, c.Rows)
	assert.Contains(t, said(c.Unread), "Line 2 has 5 cells, where the chart has 4.")
	assert.Contains(t, said(c.Unread), "The table has no column for “Effective seat angle” and “Seat tube”.")
}

// What is no chart is told what a table needs, in one line.
func TestWhatIsNoChartIsToldTheColumns(t *testing.T) {
	for _, typed := range []string{"a;b\nc;d", "", "\n\n", "hello", strings.Repeat("x\n", 1000)} {
		rows, why := measure.Sizes.Table.Read(measure.Sizes, typed, nil)
		assert.Empty(t, rows)
		assert.Len(t, why, 1, "%q", typed)
		assert.Contains(t, said(why), "is not a table for “Sizes”. It needs Reach, Stack, Head angle, Effective "+
			"seat angle and Seat tube, in columns or in lines.", "%q", typed)
	}
}

// A chart copied with the page around it names a few of the other lines and counts the
// rest: of nine, four and five.
func TestThePageAroundAChartIsCounted(t *testing.T) {
	c := measure.Sizes.Table.Chart(measure.Sizes, strings.Repeat("A line of the page\n", 9)+
		"\tM\nReach\t455\nStack\t620\nHTA\t64\nSA\t77\nST\t420", nil)
	require.Len(t, c.Rows, 1)
	assert.Contains(t, said(c.Passed), "Line 4 is not used: “A line of the page”.\n5 more lines are not used.")
}

// FuzzChart: no text panics, is read as something impossible, or takes long.
func FuzzChart(f *testing.F) {
	for _, s := range []string{"Size\tReach\tStack\nM\t455\t620", "Reach 430 455\n" +
		"Stack 610 620", strings.Repeat(`"`, 60000),
		strings.Repeat("Reach ", 10000), strings.Repeat("Reach\t1\n", 7000), strings.Repeat("Reach,",
			10000) + "\nStack",
		strings.Repeat("Reach 1 1 1\n", 5000), strings.Repeat("a  ", 20000), strings.Repeat("\",", 30000),
		"Reach\n" + strings.Repeat("Stack 1 ", 8000),
		strings.Repeat("Reach (", 9000), strings.Repeat("1 ", 30000) + "\nReach 1\n" +
			"Stack 2", strings.Repeat("Seat tube angle;", 4000) + "\n" + strings.Repeat("1;", 4000)} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, typed string) {
		calctest.Bounded(t, func() {
			begun := time.Now()
			c := measure.Sizes.Table.Chart(measure.Sizes, typed, nil)
			// A second is a hundred times what the slowest takes, for a machine that is busy.
			if took := time.Since(begun); took > time.Second {
				t.Fatalf("%d bytes took %v", len(typed), took)
			}
			if len(c.Rows) == 0 && len(c.Unread) == 0 {
				t.Fatalf("%q is nothing without a word", typed)
			}
			if len(c.Rows) > measure.Sizes.Rows {
				t.Fatalf("%d rows", len(c.Rows))
			}
			for _, r := range c.Rows {
				for i, x := range r.Cells {
					col := measure.Sizes.Columns[i]
					if math.IsNaN(x) && !col.Optional || !math.IsNaN(x) && !col.Possible(x) {
						t.Fatalf("%q: %s is %v", typed, col.Key, x)
					}
				}
			}
		})
	})
}

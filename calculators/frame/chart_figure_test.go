package frame

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
)

// Every row of the drawn chart has its name and its number at each width that is
// published: a fixed label that falls on another would be left out. The numbers are the
// stand-in bike's chart (reach 460, stack 625, 65.5° and 76.5°, chainstay 437) and what
// follows from it: the effective top tube is 460 + 625/tan 76.5° = 610.05.
func TestEveryRowOfTheChartIsWritten(t *testing.T) {
	f := chartAndBike(calculators.Values{})
	for _, width := range []float64{320, 346, 480, 930} {
		svg := f.SVG("c", nil, width)
		_, drawn, _ := strings.Cut(svg, "</desc>")
		for _, text := range []string{"Wheelbase", "Chainstay", "Head angle", "Eff. top tube", "Reach", "Seat angle",
			"Stack", "437\u00a0mm", "65.5°", "610\u00a0mm", "460\u00a0mm", "76.5°", "625\u00a0mm"} {
			require.Contains(t, drawn, ">"+text+"<", "%g px", width)
		}
	}
}

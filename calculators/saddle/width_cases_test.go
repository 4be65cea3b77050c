package saddle

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

const (
	betweenCentres = "sit-bone-width=118±4 sit-bone-read=centres sit-bone-edges=33±3 leaning=low"
	betweenEdges   = "sit-bone-width=149±4 sit-bone-read=edges sit-bone-edges=33±3 leaning=upright"
)

// By hand, with 10 mm beyond the outer edges for a rider who sits upright (Lin, Wang
// and Chen 2023) and 10 mm less leaning, 20 mm less low and stretched (common
// practice):
//
//	centres  118 + 33 = 151 between the edges; low: 151 + 10 − 20 = 141
//	edges    149 − 33 = 116 between the centres; upright: 149 + 10 = 159
//	centres only: 121 + 35 = 156 (the two ways differ by 3 to 4 cm), leaning as most
//	trail riders do: 156 + 10 − 10 = 156
func TestWidthCases(t *testing.T) {
	const source = "Lin, Wang and Chen 2023, J Sports Sci Med 22:424, by hand"
	calctest.Cases(t, Width(),
		calctest.Case{Typed: betweenCentres, Source: source, Want: []calctest.Want{
			calctest.Is(saddleWidth, 141, 1e-9),
			calctest.Is(boneEdges, 151, 1e-9),
			calctest.Is(boneCentres, 118, 1e-9),
			calctest.Cell("postures", 0, "saddle-width", 161, 1e-9),
			calctest.Cell("postures", 1, "saddle-width", 151, 1e-9),
			calctest.Cell("postures", 2, "saddle-width", 141, 1e-9),
			calctest.Cell("postures", 0, "from", 151, 1e-9),
			calctest.Cell("postures", 1, "from", 141, 1e-9),
			calctest.Cell("postures", 2, "from", 131, 1e-9),
			calctest.Cell("postures", 0, "to", 171, 1e-9),
			calctest.Cell("postures", 1, "to", 161, 1e-9),
			calctest.Cell("postures", 2, "to", 151, 1e-9),
			calctest.Cell("postures", 0, "uncertainty", 10, 1e-9), // 2·√(4² + 3²)
			calctest.Cell("postures", 2, "uncertainty", 10, 1e-9),
		}},
		calctest.Case{Typed: betweenEdges, Source: source, Want: []calctest.Want{
			calctest.Is(saddleWidth, 159, 1e-9),
			calctest.Is(boneEdges, 149, 1e-9),
			calctest.Is(boneCentres, 116, 1e-9),
		}},
		calctest.Case{Typed: "sit-bone-width=121 sit-bone-read=centres", Source: source, Want: []calctest.Want{
			calctest.Is(saddleWidth, 156, 1e-9),
			calctest.Is(boneEdges, 156, 1e-9),
			calctest.Is(boneCentres, 121, 1e-9),
		}},
		calctest.Case{Typed: "sit-bone-width=149 sit-bone-read=edges", Source: source, Want: []calctest.Want{
			calctest.Is(saddleWidth, 149, 1e-9),
			calctest.None(boneCentres),
		}},
	)
}

// ± at k = 2 (JCGM 100:2008). Between the edges what they are beyond the centres says
// nothing of the saddle.
func TestWidthUncertainty(t *testing.T) {
	margins(t, Width(), betweenCentres, 1e-9, map[*calculators.Output]float64{saddleWidth: 10, boneEdges: 10,
		boneCentres: 8})
	margins(t, Width(), betweenEdges, 1e-9, map[*calculators.Output]float64{saddleWidth: 8, boneEdges: 8,
		boneCentres: 10})
	// 35 ± 5 mm where only the centres are known.
	margins(t, Width(), "sit-bone-width=121±4 sit-bone-read=centres", 1e-9,
		map[*calculators.Output]float64{saddleWidth: 2 * math.Sqrt(41), boneCentres: 8})
}

// The range, the row that the answer rests on, and what is said with numbers.
func TestWhatIsSaidOfTheWidth(t *testing.T) {
	r := calctest.Answer(t, Width(), betweenCentres)
	require.EqualValues(t, 131, r.At(saddleWidth).Low)
	require.EqualValues(t, 151, r.At(saddleWidth).High)
	require.Equal(t, 3, r.Tables[0].Starred)
	require.Equal(t, 1, calctest.Answer(t, Width(), betweenEdges).Tables[0].Starred)
	require.Equal(t, 2, calctest.Answer(t, Width(), "sit-bone-width=149 sit-bone-read=edges").Tables[0].Starred)
	require.True(t, calctest.Says(r, "the outer edges lie some 33\u00a0mm further apart: 151\u00a0±\u00a010\u00a0mm"))
	require.True(t, calctest.Says(r, "A saddle 10\u00a0mm wider than the outer edges suited ten women best"))
	require.Contains(t, r.Figure.Description.Say(nil), "141\u00a0±\u00a010\u00a0mm across at its widest")
	require.Contains(t, r.Figure.Description.Say(nil), "lie 151\u00a0±\u00a010\u00a0mm apart")
}

// Prints give 100 to 150 mm between the centres, and the ten women's edges 155 ± 14; a
// number beyond what its way of reading usually gives is doubted. Saddles are sold from
// about 125 to 175 mm (common practice), both ends included.
func TestDoubtfulWidths(t *testing.T) {
	for typed, doubted := range map[string]bool{
		"145 sit-bone-read=centres": false, "145.1 sit-bone-read=centres": true,
		"125 sit-bone-read=edges": false, "124.9 sit-bone-read=edges": true,
	} {
		r := calctest.Answer(t, Width(), "sit-bone-width="+typed)
		require.Equal(t, doubted, calctest.Says(r, "Were the outer edges measured") || calctest.Says(r,
			"Were the centres measured"), typed)
	}
	r := calctest.Answer(t, Width(), "sit-bone-width=151 sit-bone-read=centres")
	require.True(t, calctest.Says(r, "151\u00a0mm is wide between the centres: prints usually give 100\u00a0mm to"+
		" 150\u00a0mm"))
	r = calctest.Answer(t, Width(), "sit-bone-width=119 sit-bone-read=edges")
	require.True(t, calctest.Says(r, "119\u00a0mm is narrow between the outer edges: ten women measured 155\u00a0mm"+
		" on average"))
	for typed, rare := range map[string]bool{
		"125": false, "124.9": true, "175": false, "175.1": true,
	} {
		r := calctest.Answer(t, Width(), "sit-bone-read=edges leaning=leaning sit-bone-width="+typed)
		require.Equal(t, rare, calctest.Says(r, "Saddles are mostly sold from about 125\u00a0mm to 175\u00a0mm"),
			typed)
	}
}

package calculators_test

import (
	"fmt"
	"math"
	"os"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
)

// trials returns how many draws a simulation takes: 20,000, which takes seconds, or
// the number in PLUMBLINE_TRIALS. The build server takes 50,000. JCGM 101:2008, 7.2.1
// asks for a million to deliver a 95 % interval to one or two significant digits: that is
// for a run of half an hour.
func trials(t *testing.T) int {
	wanted := os.Getenv("PLUMBLINE_TRIALS")
	if wanted == "" {
		return 20_000
	}
	n, err := strconv.Atoi(wanted)
	require.NoError(t, err, "PLUMBLINE_TRIALS has to be a number of draws")
	return n
}

// sampling is by how much an end of a simulated 95 % interval may be off by chance:
// four standard errors of that quantile of a normal distribution with the standard
// uncertainty u, √(p·(1−p)/n) over the density there.
func sampling(u float64, n int) float64 {
	const density = 0.0584 // of the normal distribution at 1.96
	return 4 * u * math.Sqrt(0.025*0.975/float64(n)) / density
}

// TestPropagatedUncertaintyAgreesWithMonteCarlo validates the law of propagation
// as JCGM 101:2008, clause 8 describes (from memory): the ends of y ± 1.96 u
// differ from the 95 % interval with equal tails of many draws by less than half a
// unit of the first significant digit of u. Where they differ by more, because the
// model bends within the inputs' errors or leans to one side, y ± U still has to hold
// 0.93 to 0.97 of the draws, which is what ± says. At the worked example and at two more
// points of every calculator.
func TestPropagatedUncertaintyAgreesWithMonteCarlo(t *testing.T) {
	if runtime.GOARCH == "wasm" {
		t.Skip("a statement about the method, not the platform: checked natively")
	}
	if testing.Short() {
		t.Skip("takes seconds")
	}
	for _, c := range catalog.All() {
		points, ok := morePoints[c.Name]
		require.True(t, ok, "%s has no further points to be simulated at", c.Name)
		simulate(t, c, "example", panel.Example(c))
		for _, p := range points {
			simulate(t, c, p, pairs(p))
		}
	}
}

func simulate(t *testing.T, c *calculators.Calculator, point string, typed []calculators.Pair) {
	t.Helper()
	t.Run(c.Name+"/"+point, func(t *testing.T) {
		t.Parallel()
		r, problems := c.Run(typed, nil)
		require.Empty(t, problems)
		n := trials(t)
		drawn, problems := c.Trials(typed, n, 20260101)
		require.Empty(t, problems)
		for j := range r.Answers {
			x := &r.Answers[j]
			if missed, allowed := miss(x, drawn[j]); missed > allowed+sampling(float64(x.Uncertainty)/2, n) {
				holds(t, x, drawn[j])
			}
		}
	})
}

// holds counts the draws inside y ± U. An answer that most often does not move at all,
// such as how far a chart contradicts itself, may hold more of them.
func holds(t *testing.T, x *calculators.Answer, drawn []float64) {
	t.Helper()
	y, tried, held, moved := float64(x.Value), 0, 0, 0
	for _, d := range drawn {
		if math.IsNaN(d) {
			continue
		}
		tried++
		if math.Abs(d-y) <= float64(x.Uncertainty)+1e-9 {
			held++
		}
		if d != y {
			moved++
		}
	}
	if x.Uncertainty == 0 && float64(moved) < 0.07*float64(tried) {
		return
	}
	covers(t, x.Name, "simulated", tried, held)
}

// miss compares both ends of an interval with the simulated quantiles.
func miss(x *calculators.Answer, drawn []float64) (missed, allowed float64) {
	u := float64(x.Uncertainty) / 2
	drawn = slices.DeleteFunc(slices.Clone(drawn), math.IsNaN) // holds reads the same draws next
	if u == 0 || len(drawn) == 0 {
		return 0, 0
	}
	slices.Sort(drawn)
	low, high := drawn[int(0.025*float64(len(drawn)))], drawn[int(0.975*float64(len(drawn)))]
	y := float64(x.Value)
	missed = max(math.Abs(y-1.96*u-low), math.Abs(y+1.96*u-high))
	return missed, 0.5 * math.Pow(10, math.Floor(math.Log10(u)))
}

// pairs reads "inseam=830 crank-length=170"; a bar stands for the end of a line in
// a table.
func pairs(s string) (p []calculators.Pair) {
	for f := range strings.FieldsSeq(s) {
		k, v, _ := strings.Cut(f, "=")
		p = append(p, calculators.Pair{Key: k, Typed: strings.ReplaceAll(v, "|", "\n")})
	}
	return p
}

// TestMissIsNoticed shows that the comparison can fail.
func TestMissIsNoticed(t *testing.T) {
	drawn := make([]float64, 0, 1000)
	for i := range 1000 {
		drawn = append(drawn, float64(i))
	}
	m, allowed := miss(&calculators.Answer{Value: 500, Uncertainty: 100}, drawn)
	require.Greater(t, m, allowed, fmt.Sprint(m))
}

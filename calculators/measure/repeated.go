package measure

import (
	"math"
	"slices"
	"strings"

	"plumbline/calculators/words"
)

// Repeated is a number as somebody gave it, taken once or several times. Its
// Value is the median of the readings.
type Repeated struct {
	Given
	Readings []float64 // base units, as they were taken; nil for a single number
}

// MostReadings is how many readings of one length are kept.
const MostReadings = 5

// ParseRepeated reads what Parse reads, and several readings of one length
// parted by semicolons: "830; 834; 829", "83.0; 83.4; 82.9 cm ± 3 mm". The unit
// behind the last one holds for those without, and a ± for every one of them.
func (q *Quantity) ParseRepeated(typed string, bare *Unit) (Repeated, words.Text, bool) {
	if !strings.Contains(typed, ";") {
		g, why, ok := q.Parse(typed, bare)
		return Repeated{Given: g}, why, ok
	}
	if len(typed) > longest*MostReadings {
		return Repeated{}, words.Of("“{0}” is too long for a number.", Quoted(typed)), false
	}
	var parts []string
	for part := range strings.SplitSeq(typed, ";") {
		if part = strings.TrimSpace(part); part != "" {
			parts = append(parts, part)
		}
	}
	if len(parts) == 0 || len(parts) > MostReadings {
		return Repeated{}, words.Of("“{0}” holds {1} readings of {2}; between 1 and {3} are read.",
			Quoted(typed), Amount{Value: float64(len(parts)), Unit: One}, q.Named(), Amount{Value: MostReadings,
				Unit: One}), false
	}
	// suggest offers the whole text with reading i mended.
	suggest := func(i int, mended string) string {
		if mended == "" {
			return ""
		}
		parts[i] = mended
		return strings.Join(parts, "; ")
	}
	g, why, ok := q.Parse(parts[len(parts)-1], bare)
	if !ok {
		g.Suggest = suggest(len(parts)-1, g.Suggest)
		return Repeated{Given: g}, why, false
	}
	r := Repeated{Given: g, Readings: make([]float64, len(parts))}
	r.Readings[len(parts)-1] = g.Value
	for i, part := range parts[:len(parts)-1] {
		one, why, ok := q.Parse(part, g.Unit)
		if ok && !math.IsNaN(one.Error) {
			why, ok = words.Of("“{0}” has a ± in the middle. Write one ± behind the last reading; it holds for "+
				"all.", Quoted(typed)), false
		}
		if !ok {
			g.Suggest = suggest(i, one.Suggest)
			return Repeated{Given: g}, why, false
		}
		r.Readings[i] = one.Value
	}
	if r.Value = Median(r.Readings); len(parts) == 1 {
		r.Readings = nil
	}
	return r, words.Text{}, true
}

// Median returns the middle of the readings, or the middle between the two
// middle ones; NaN for none.
func Median(readings []float64) float64 {
	n := len(readings)
	if n == 0 {
		return math.NaN()
	}
	sorted := slices.Clone(readings)
	slices.Sort(sorted)
	return sorted[(n-1)/2]/2 + sorted[n/2]/2
}

// Range returns the greatest reading less the smallest; 0 for none.
func (r Repeated) Range() float64 {
	if len(r.Readings) == 0 {
		return 0
	}
	return slices.Max(r.Readings) - slices.Min(r.Readings)
}

// Scatter returns the standard deviation of one reading, taken from several of the
// same length, in their unit; false for fewer than two or one that is not a number.
//
//	√(Σ (x − mean)² / (n − 1))
//
// Source: JCGM 100:2008, 4.2.2.
func Scatter(readings []float64) (float64, bool) {
	if len(readings) < 2 {
		return 0, false
	}
	mean, sum := 0.0, 0.0
	for _, x := range readings {
		mean += x / float64(len(readings))
	}
	for _, x := range readings {
		d := x - mean
		sum += float64(d * d)
	}
	sd := math.Sqrt(sum / float64(len(readings)-1))
	return sd, !math.IsNaN(sd) && !math.IsInf(sd, 0)
}

// ofMedian is how far the median of two to five readings lies from the truth, in
// standard deviations of one reading: the standard error of the median of a normal
// distribution. For three it is √(1 − √3/π) (tables of order statistics, from memory).
var ofMedian = [MostReadings + 1]float64{2: 0.7071, 3: 0.6698, 4: 0.5461, 5: 0.5356}

// MedianSD returns the standard uncertainty of the median of several readings, in
// their unit: half the expanded uncertainty U at about 95 %. shared is the standard
// uncertainty of what is wrong with every reading alike, which repeating does not
// cure. Fewer than two readings, or more than MostReadings, leave shared as it is.
//
//	a = standard error of the median, from the readings' own scatter (type A)
//
// For three readings and more:
//
//	u² = a² + shared²
//	1/ν = (a/u)⁴ / (n − 1)      (Welch and Satterthwaite)
//	U = t₉₅(ν) · u, and no less than 2 · u
//
// A few readings tell their own scatter badly. That is what the factor t is for: near 2
// while the shared error is the larger one, far above it where the readings lie wide apart.
//
// For two readings that rule holds the truth in 87 of 100 cases only, where a hand scatters
// by several times the shared error: two that lie close together by luck look sure. There
//
//	U = t₉₅(1) · a − 2 · shared, and no less than 2 · shared
//
// where t₉₅(1) is 12.7: the two readings' own U, less what the shared error's U makes up
// for already. It holds the truth in 93.5 to 96.2 of 100 cases for any scatter, as an
// integral over it shows; TestTheReadingsIntervalCovers counts it.
//
// Source: JCGM 100:2008, 4.2, 5.1.2 and G.4.1 (from memory); for two readings the factor
// of its table G.2, the subtraction is our own.
func MedianSD(shared float64, readings []float64) float64 {
	n := len(readings)
	s, ok := Scatter(readings)
	if !ok || n > MostReadings {
		return shared
	}
	a := ofMedian[n] * s
	if n == 2 {
		return max(shared, float64(student95(1)*a)/2-shared)
	}
	u := Quadrature(a, shared)
	if u == 0 {
		return 0
	}
	share := a / u * a / u
	return u * max(1, student95(share*share/float64(n-1))/2)
}

// student95 returns the factor within which 95 % of Student's t distribution lie; x is
// one over the degrees of freedom, from 0 to 1.
//
// Source: a curve through the rows 1, 2, 3, 5 and ∞ of table G.2 of JCGM 100:2008 (from
// memory): 12.706, 4.303, 3.182, 2.571, 1.960. It is within half a percent between them.
func student95(x float64) float64 {
	y := 0.3121778 + float64(x*-0.1252189)
	y = -0.0009034673 + float64(x*y)
	y = -0.6175565 + float64(x*y)
	return 1 / (0.5102041 + float64(x*y))
}

// SD returns the standard uncertainty that r of q is computed with: the typed ±, else
// the usual repeat error, and for several readings what MedianSD makes of it. It is
// never made less by repeating: what the same hand does wrong each time does not
// average out.
func (q *Quantity) SD(r Repeated) float64 {
	sd := q.Repeat
	if !math.IsNaN(r.Error) {
		sd = r.Error
	}
	return MedianSD(sd, r.Readings)
}

// AgreeWithin returns how far apart readings of q may lie before they are to be
// taken again, in base units: the usual repeat error, which is the 10 mm of the
// inside leg, and for a length never less than the 3 mm that a tape cannot tell
// apart. Common practice.
func (q *Quantity) AgreeWithin() float64 {
	if q.Unit.Kind == Lengths {
		return max(q.Repeat, 3)
	}
	return q.Repeat
}

// Agree tells whether readings lie close enough together; a single number always
// does.
func (q *Quantity) Agree(r Repeated) bool {
	// A hair is added, or 1.1 − 0.6 would exceed 0.5.
	return r.Range() <= q.AgreeWithin()+1e-9
}

// Quadrature adds two standard deviations of errors that know nothing of each other. It
// is not math.Hypot, which on amd64 and in WebAssembly may differ in the last bit.
func Quadrature(a, b float64) float64 { return math.Sqrt(float64(a*a) + float64(b*b)) }

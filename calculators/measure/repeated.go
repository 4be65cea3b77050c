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

// meanRange is the mean range of two to five readings, in standard deviations: the
// factor d₂ of control charts (ISO 7870-2, from memory).
var meanRange = [MostReadings + 1]float64{2: 1.128, 3: 1.693, 4: 2.059, 5: 2.326}

// SD returns the standard uncertainty that r of q is computed with: the typed ±,
// else the usual repeat error, and more where the readings themselves scatter
// more. It is never made less by repeating: what the same hand does wrong each
// time does not average out.
func (q *Quantity) SD(r Repeated) float64 {
	sd := q.Repeat
	if !math.IsNaN(r.Error) {
		sd = r.Error
	}
	if n := len(r.Readings); n >= 2 && n <= MostReadings {
		sd = max(sd, r.Range()/meanRange[n])
	}
	return sd
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
	// A hair is added, or 0.3 − 0.1 would exceed 0.2.
	return r.Range() <= q.AgreeWithin()+1e-9
}

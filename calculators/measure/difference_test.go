package measure_test

import (
	"testing"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func TestADifferenceCarriesItsSign(t *testing.T) {
	for _, c := range []struct {
		x    measure.Amount
		in   string
		want string
	}{
		{measure.Millimetres(12.4), "mm", "+12\u00a0mm"},
		{measure.Millimetres(-12.4), "mm", "−12\u00a0mm"},
		{measure.Millimetres(0.2), "mm", "0\u00a0mm"},
		{measure.Degrees(3.44), "mm", "+3.4°"},
		{measure.Millimetres(25.4), "in", "+1.00\u00a0in"},
	} {
		if got := (measure.Difference{Amount: c.x}).Say(&words.Reader{Units: c.in}); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

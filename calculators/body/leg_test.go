package body_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/body"
)

func TestMeanRiderHasTheSurveysMeanLeg(t *testing.T) {
	for _, sex := range []body.Sex{body.Female, body.Male} {
		leg, _, ok := body.NewLeg(body.Measured{Inseam: body.Inseam.Typical(sex).Value}, sex)
		if !ok {
			t.Fatal("no leg")
		}
		near(t, "thigh", leg.Thigh, body.Thigh.Typical(sex).Value, 0.2)
		near(t, "shank", leg.Shank, body.Shank.Typical(sex).Value, 0.2)
		near(t, "foot", leg.FootLength, body.FootLength.Typical(sex).Value, 0.2)
		near(t, "heel to ball", leg.HeelToBall, body.HeelToBall.Typical(sex).Value, 0.2)
		near(t, "malleolus", leg.Malleolus, body.MalleolusHeight.Typical(sex).Value, 0.2)
	}
}

func TestLegAddsUpToTheTrochanter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inseam := rapid.Float64Range(600, 1050).Draw(t, "inseam")
		sex := rapid.SampledFrom([]body.Sex{body.Unknown, body.Female, body.Male}).Draw(t, "sex")
		leg, p, ok := body.NewLeg(body.Measured{Inseam: inseam}, sex)
		if !ok {
			t.Fatal("no leg")
		}
		trochanter, _ := body.TrochanterFromInseam(inseam, sex)
		near(t, "sum", leg.Thigh+leg.Shank+leg.Malleolus, trochanter.Value, 1e-9)
		near(t, "what proportions leave open", p.Trochanter, trochanter.SD, 0)
		if leg.HeelToBall >= leg.FootLength || leg.HeelToBall < 0.7*leg.FootLength {
			t.Fatalf("ball at %v of %v", leg.HeelToBall, leg.FootLength)
		}
		longer, _, _ := body.NewLeg(body.Measured{Inseam: inseam + 10}, sex)
		if longer.Thigh <= leg.Thigh || longer.Shank <= leg.Shank || longer.FootLength <= leg.FootLength {
			t.Fatal("a longer leg is shorter somewhere")
		}
	})
}

func TestWhatWasMeasuredIsTaken(t *testing.T) {
	m := body.Measured{
		Inseam: 800, Stature: 1700, TrochanterHeight: 870, Thigh: 400, Shank: 410,
		FootLength: 260, HeelToBall: 190, Malleolus: 70,
	}
	leg, p, ok := body.NewLeg(m, body.Female)
	if !ok {
		t.Fatal("no leg")
	}
	if want := (body.Leg{Thigh: 400, Shank: 410, FootLength: 260, HeelToBall: 190, Malleolus: 70}); leg != want {
		t.Errorf("got %+v", leg)
	}
	if p != (body.Proportion{}) {
		t.Errorf("measured lengths are left uncertain: %+v", p)
	}
	taller, _, _ := body.NewLeg(body.Measured{Inseam: 800, TrochanterHeight: 880}, body.Female)
	shorter, _, _ := body.NewLeg(body.Measured{Inseam: 800, TrochanterHeight: 870}, body.Female)
	near(t, "the trochanter sets the thigh", taller.Thigh-shorter.Thigh, 10, 1e-9)
	tall, _, _ := body.NewLeg(body.Measured{Inseam: 800, Stature: 1800}, body.Female)
	short, _, _ := body.NewLeg(body.Measured{Inseam: 800, Stature: 1700}, body.Female)
	near(t, "stature sets the foot", tall.FootLength-short.FootLength, 100*body.FootLength.Female.Slope, 1e-9)
	near(t, "and not the thigh", tall.Thigh, short.Thigh, 1e-9)
}

// floats draws any float at all.
func floats() *rapid.Generator[float64] {
	return rapid.OneOf(
		rapid.SampledFrom([]float64{
			0, math.Copysign(0, -1), 1, -1, 850, 1e-300, 5e-324, 1e300, -1e300,
			math.MaxFloat64, -math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN(),
		}),
		rapid.Float64(),
		rapid.Float64Range(-1000, 3000),
	)
}

func TestAnyMeasureIsALegOrARefusal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		next := func() float64 { return floats().Draw(t, "value") }
		sex := body.Sex(rapid.IntRange(-1, 4).Draw(t, "sex"))
		m := body.Measured{Inseam: 830}
		fields := []*float64{&m.Inseam, &m.Stature, &m.TrochanterHeight, &m.Thigh, &m.Shank, &m.FootLength,
			&m.HeelToBall, &m.Malleolus}
		for range rapid.IntRange(0, 3).Draw(t, "spoilt") {
			*fields[rapid.IntRange(0, len(fields)-1).Draw(t, "field")] = next()
		}
		leg, p, ok := body.NewLeg(m, sex)
		if ok != (ok && leg.Valid()) {
			t.Fatalf("not a leg: %+v", leg)
		}
		if ok {
			number(t, p.Trochanter, p.Knee, p.Foot, p.Ball, p.Malleolus)
		}
		for _, survey := range columns {
			if e, ok := survey.FromStature(next(), sex); ok {
				number(t, e.Value, e.SD)
			}
		}
		if e, ok := body.ArmFromStature(next(), sex); ok {
			number(t, e.Value, e.SD)
		}
		if e, ok := body.HeelToBallOf(next(), sex); ok {
			number(t, e.Value, e.SD)
		}
		if e, ok := body.StatureFromInseam(next(), sex); ok {
			number(t, e.Value, e.SD)
		}
		if p, ok := body.Combine(body.Part{Mass: next(), X: next(), Y: next()}, body.Part{Mass: next(), X: next(),
			Y: next()}); ok {
			number(t, p.Mass, p.X, p.Y)
		}
	})
}

func number(t rapid.TB, values ...float64) {
	t.Helper()
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			t.Fatal(values)
		}
	}
}

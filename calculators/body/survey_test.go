package body_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/body"
)

func near(t rapid.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Fatalf("%s: got %v, want %v ± %v", what, got, want, tolerance)
	}
}

// columns names the survey's column behind every length.
var columns = map[string]body.Survey{
	"stature": body.Stature, "crotchheight": body.Inseam, "trochanterionheight": body.TrochanterHeight,
	"lateralfemoralepicondyleheight": body.KneeHeight, "lateralmalleolusheight": body.MalleolusHeight,
	"footlength": body.FootLength, "balloffootlength": body.HeelToBall,
	"d_thigh_troch_to_femepicond": body.Thigh, "d_shank_femepicond_to_latmall": body.Shank,
	"acromialheight": body.ShoulderHeight, "cervicaleheight": body.NeckHeight,
	"d_trunk_troch_to_acromion": body.Trunk,
	"acromionradialelength":     body.UpperArm, "radialestylionlength": body.Forearm,
	"forearmcenterofgriplength": body.ForearmToGrip, "span": body.ArmSpan, "biacromialbreadth": body.ShoulderWidth,
	"bideltoidbreadth": body.DeltoidWidth, "handlength": body.HandLength,
	"handbreadth": body.HandBreadth, "hipbreadthsitting": body.HipBreadth,
}

// TestSurveyIsTheOneMeasured compares every number with the summary of the open
// survey (ANSUR II; Gordon et al. 2014, NATICK/TR-15/007).
func TestSurveyIsTheOneMeasured(t *testing.T) {
	file, err := os.Open("../../testdata/published/ansur2-summary.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	place := map[string]int{}
	for i, name := range rows[0] {
		place[name] = i
	}
	seen := 0
	for _, row := range rows[1:] {
		survey, ok := columns[row[place["variable"]]]
		if !ok {
			continue
		}
		seen++
		sample, people := survey.Male, body.SurveyMen
		if row[place["sex"]] == "female" {
			sample, people = survey.Female, body.SurveyWomen
		}
		for name, got := range map[string]float64{
			"n": float64(people), "mean": sample.Mean, "sd": sample.SD, "p5": sample.P5, "p95": sample.P95,
			"reg_a": sample.Intercept, "reg_b": sample.Slope, "resid_sd": sample.Residual,
		} {
			text := row[place[name]]
			if text == "" {
				continue
			}
			want, err := strconv.ParseFloat(text, 64)
			if err != nil {
				t.Fatal(err)
			}
			if got != want {
				t.Errorf("%s %s: got %v, want %v", row[:2], name, got, want)
			}
		}
		// A least-squares line runs through the means; SD, r and residual agree.
		if row[place["reg_b"]] != "" {
			mean := columns["stature"].Male
			if row[place["sex"]] == "female" {
				mean = columns["stature"].Female
			}
			near(t, row[0]+" at the mean stature", sample.Intercept+sample.Slope*mean.Mean, sample.Mean, 0.01)
			r := sample.Slope * mean.SD / sample.SD
			near(t, row[0]+" residual", sample.Residual, sample.SD*math.Sqrt(1-r*r), 0.02)
		}
	}
	if seen != 2*len(columns) {
		t.Errorf("%d rows for %d lengths", seen, len(columns))
	}
}

// The lines on the inside leg run through the survey's means too.
func TestLinesOnTheInsideLegRunThroughTheMeans(t *testing.T) {
	for _, sex := range []body.Sex{body.Female, body.Male} {
		inseam := body.Inseam.Typical(sex).Value
		trochanter, _ := body.TrochanterFromInseam(inseam, sex)
		knee, _ := body.KneeFromInseam(inseam, sex)
		near(t, "trochanter", trochanter.Value, body.TrochanterHeight.Typical(sex).Value, 0.1)
		near(t, "knee", knee.Value, body.KneeHeight.Typical(sex).Value, 0.1)
		if trochanter.SD >= body.TrochanterHeight.Typical(sex).SD || knee.SD >= body.KneeHeight.Typical(sex).SD {
			t.Error("knowing the inside leg tells nothing")
		}
	}
}

// Leaving the sex out never makes an estimate more certain than the better of the
// two, and its value lies between them. A crowd of half women and half men shows
// the same spread.
func TestLeavingTheSexOutCostsCertainty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stature := rapid.Float64Range(1450, 2100).Draw(t, "stature")
		for name, survey := range columns {
			female, _ := survey.FromStature(stature, body.Female)
			male, _ := survey.FromStature(stature, body.Male)
			either, ok := survey.FromStature(stature, body.Unknown)
			if !ok {
				t.Fatal("no estimate")
			}
			near(t, name, either.Value, (female.Value+male.Value)/2, 1e-9)
			second := (female.SD*female.SD + female.Value*female.Value + male.SD*male.SD + male.Value*male.Value) / 2
			near(t, name+" spread of the crowd", either.SD, math.Sqrt(math.Max(0,
				second-either.Value*either.Value)), 1e-3)
			if either.SD < math.Min(female.SD, male.SD) {
				t.Fatalf("%s: %v without a sex, %v and %v with", name, either.SD, female.SD, male.SD)
			}
		}
	})
}

func TestExtrapolationIsSaid(t *testing.T) {
	for _, test := range []struct {
		stature float64
		sex     body.Sex
		want    bool
	}{
		{1499, body.Unknown, true}, {1500, body.Female, false}, {1599, body.Male, true},
		{1600, body.Male, false}, {1950, body.Unknown, false}, {1951, body.Female, true}, {math.NaN(), body.Male,
			true},
	} {
		if got := body.Extrapolates(test.stature, test.sex); got != test.want {
			t.Errorf("%v, %v: %v", test.stature, test.sex, got)
		}
	}
}

func TestStatureFromInseamReadsTheLineBackwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inseam := rapid.Float64Range(600, 1050).Draw(t, "inseam")
		sex := rapid.SampledFrom([]body.Sex{body.Female, body.Male}).Draw(t, "sex")
		stature, ok := body.StatureFromInseam(inseam, sex)
		if !ok {
			t.Fatal("no stature")
		}
		back, _ := body.Inseam.FromStature(stature.Value, sex)
		near(t, "inside leg", back.Value, inseam, 1e-9)
		if stature.SD < 35 {
			t.Fatalf("too certain: %v", stature.SD)
		}
	})
}

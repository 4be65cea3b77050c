package body_test

import (
	"encoding/json"
	"math"
	"os"
	"strconv"
	"testing"

	"gonum.org/v1/gonum/stat"
	"pgregory.net/rapid"

	"plumbline/calculators/body"
)

// segments names the row of the published table behind every pair.
var segments = map[string]body.SegmentPair{
	"Head": body.HeadMass, "Trunk": body.TrunkMass, "Upper arm": body.UpperArmMass, "Forearm": body.ForearmMass,
	"Hand":  body.HandMass,
	"Thigh": body.ThighMass, "Shank": body.ShankMass, "Foot": body.FootMass, "Head 2": body.HeadFromNeck,
	"Trunk 3": body.TrunkFromShoulders,
}

// TestSegmentsAreDeLevas compares every number with the transcribed table (de
// Leva 1996, J Biomech 29:1223-1230, table 4).
func TestSegmentsAreDeLevas(t *testing.T) {
	data, err := os.ReadFile("../../testdata/published/body-segments.json")
	if err != nil {
		t.Fatal(err)
	}
	var table struct {
		Male   []map[string]string `json:"deLeva_male"`
		Female []map[string]string `json:"deLeva_female"`
	}
	if err := json.Unmarshal(data, &table); err != nil {
		t.Fatal(err)
	}
	seen := 0
	check := func(rows []map[string]string, sex body.Sex) {
		for _, row := range rows {
			pair, ok := segments[row["Segment"]]
			if !ok {
				continue
			}
			seen++
			s := pair.Of(sex)
			for name, got := range map[string]float64{
				"Mass": s.Mass, "CM Long": s.Centre, "Rg Sag": s.Sagittal, "Rg Trans": s.Transverse,
				"Rg Long": s.Lengthwise,
			} {
				want, err := strconv.ParseFloat(row[name], 64)
				if err != nil || got != want {
					t.Errorf("%s %s: got %v, want %q", row["Segment"], name, got, row[name])
				}
			}
		}
	}
	check(table.Male, body.Male)
	check(table.Female, body.Female)
	if seen != 2*len(segments) {
		t.Errorf("%d rows for %d segments", seen, len(segments))
	}
}

// allSegments is the sum of all segments' shares: 1 but for the rounding of the published table.
func allSegments(sex body.Sex) float64 {
	arm := body.UpperArmMass.Of(sex).Mass + body.ForearmMass.Of(sex).Mass + body.HandMass.Of(sex).Mass
	return body.HeadMass.Of(sex).Mass + body.TrunkMass.Of(sex).Mass + 2*(arm+body.LegMass(sex))
}

func TestTheWholeBodyWeighsOne(t *testing.T) {
	for _, sex := range []body.Sex{body.Unknown, body.Female, body.Male} {
		near(t, "sum", allSegments(sex), 1, 0.0002)
	}
	female, male, either := body.ThighMass.Of(body.Female), body.ThighMass.Of(body.Male),
		body.ThighMass.Of(body.Unknown)
	for name, number := range map[string]func(body.Segment) float64{
		"mass":       func(s body.Segment) float64 { return s.Mass },
		"centre":     func(s body.Segment) float64 { return s.Centre },
		"sagittal":   func(s body.Segment) float64 { return s.Sagittal },
		"transverse": func(s body.Segment) float64 { return s.Transverse },
		"lengthwise": func(s body.Segment) float64 { return s.Lengthwise },
	} {
		want := stat.Mean([]float64{number(female), number(male)}, nil)
		near(t, "without a sex, "+name, number(either), want, 1e-15)
	}
}

// Combining in any order or grouping gives the same centre, within the parts.
func TestCombineIsAMean(t *testing.T) {
	part := rapid.Custom(func(t *rapid.T) body.Part {
		return body.Part{
			Mass: rapid.Float64Range(0.1, 100).Draw(t, "mass"),
			X:    rapid.Float64Range(-1000, 1000).Draw(t, "x"), Y: rapid.Float64Range(-1000, 1000).Draw(t, "y"),
		}
	})
	rapid.Check(t, func(t *rapid.T) {
		a, b, c := part.Draw(t, "a"), part.Draw(t, "b"), part.Draw(t, "c")
		all, ok := body.Combine(a, b, c)
		if !ok {
			t.Fatal("no sum")
		}
		pair, _ := body.Combine(c, b)
		again, _ := body.Combine(pair, a)
		near(t, "mass", again.Mass, all.Mass, 1e-9)
		near(t, "x", again.X, all.X, 1e-9)
		near(t, "y", again.Y, all.Y, 1e-9)
		want := stat.Mean([]float64{a.X, b.X, c.X}, []float64{a.Mass, b.Mass, c.Mass})
		near(t, "weighted mean, x", all.X, want, 1e-9)
		want = stat.Mean([]float64{a.Y, b.Y, c.Y}, []float64{a.Mass, b.Mass, c.Mass})
		near(t, "weighted mean, y", all.Y, want, 1e-9)
	})
	for _, parts := range [][]body.Part{nil, {{}}, {{Mass: -1}}, {{Mass: 1, X: math.NaN()}}, {{Mass: math.Inf(1)}}} {
		if sum, ok := body.Combine(parts...); ok {
			t.Errorf("%v weigh %v", parts, sum)
		}
	}
}

func TestSegmentBetweenItsEnds(t *testing.T) {
	s := body.Segment{Mass: 0.1, Centre: 0.4}
	if p := s.Between(100, 200, 200, 100); p != (body.Part{Mass: 0.1, X: 140, Y: 160}) {
		t.Errorf("got %+v", p)
	}
}

func TestProportionsOfTheSurvey(t *testing.T) {
	for _, sex := range []body.Sex{body.Female, body.Male} {
		ball := body.HeelToBall.Typical(sex).Value / body.FootLength.Typical(sex).Value
		near(t, "ball per foot", body.BallPerFoot.Of(sex).Value, ball, 0.0005)
		arm, ok := body.ArmFromStature(body.Stature.Typical(sex).Value, sex)
		if !ok {
			t.Fatal("no arm")
		}
		near(t, "upper arm's share", body.UpperArmShare(sex), body.UpperArm.Typical(sex).Value/arm.Value, 1e-4)
	}
	if share := body.UpperArmShare(body.Unknown); share < body.UpperArmShare(body.Male) ||
		share > body.UpperArmShare(body.Female) {
		t.Errorf("without a sex: %v", share)
	}
	near(t, "shoulder joints", body.ShoulderJointSpacing(400), 352, 1e-9)
	near(t, "grip", body.GripDiameter(190), 37.43, 1e-9) // 0.197·190
	foot, ok := body.HeelToBallOf(250, body.Female)
	if !ok {
		t.Fatal("no ball")
	}
	near(t, "spread of the ball", foot.SD/foot.Value, body.BallPerFoot.Female.SD/body.BallPerFoot.Female.Value, 1e-12)
	near(t, "spread of the ball, mm", foot.SD, 250*body.BallPerFoot.Female.SD, 1e-12)
	// Independent errors add as squares: √(10.463² + 12.433²) = 16.250 for women and
	// √(10.601² + 11.906²) = 15.941, so ± 32 mm, for men (residuals of ansur2-summary.csv).
	arm, _ := body.ArmFromStature(1680, body.Female)
	near(t, "spread of a woman's arm", arm.SD, 16.250, 0.001)
	arm, _ = body.ArmFromStature(1780, body.Male)
	near(t, "spread of a man's arm", arm.SD, 15.941, 0.001)
	// In the whole sample both parts follow the stature: √(0.415315²·64.1995² + 16.250²)
	// = 31.22 for women.
	near(t, "spread of women's arms", body.ArmTypical(body.Female).SD, 31.22, 0.01)
}

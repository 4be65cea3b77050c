package geometry_test

import (
	"encoding/json"
	"math"
	"os"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/geometry"
)

// tapeOf measures a solved bike.
func tapeOf(b geometry.Bike) geometry.Tape {
	return geometry.Tape{
		BBToHead: b.HeadTop.Length(), RearToHead: b.HeadTop.Distance(b.Rear),
		BBToRear: b.Rear.Length(), BBToFront: b.FrontCentre(), RearToFront: b.Front.Distance(b.Rear),
		BBHeight: b.BBHeight(), RearHeight: b.RearRadius, FrontHeight: b.FrontRadius,
		HeadAngle: b.HeadAngle,
	}
}

func TestATapeFindsTheBikeAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := solve(t, charts().Draw(t, "chart"))
		tape := tapeOf(b)
		slip := rapid.Float64Range(-5, 5).Draw(t, "slip")
		tape.RearToFront += slip
		found, err := tape.Solve()
		if err != nil {
			t.Fatal(err)
		}
		near(t, "reach", found.HeadTop.X, b.Reach(), 1e-6)
		near(t, "stack", found.HeadTop.Y, b.Stack(), 1e-6)
		near(t, "drop", found.Drop, b.Drop(), 1e-9)
		near(t, "front axle", found.Front.Distance(b.Front), 0, 1e-9)
		near(t, "offset", found.Offset, b.Offset, 1e-6)
		near(t, "slip of the tape", found.AxleMiss, slip, 1e-8)
	})
}

func TestATapeThatCannotBeNamesItsFault(t *testing.T) {
	good := tapeOf(solve(t, charts().Example(3)))
	for _, test := range []struct {
		fault geometry.Fault
		spoil func(*geometry.Tape)
	}{
		{geometry.NotANumber, func(t *geometry.Tape) { t.BBHeight = math.NaN() }},
		{geometry.HeadAngleRange, func(t *geometry.Tape) { t.HeadAngle = 95 }},
		{geometry.ChainstayTooShort, func(t *geometry.Tape) { t.RearHeight = 2000 }},
		{geometry.FrontCentreTooShort, func(t *geometry.Tape) { t.FrontHeight = 3000 }},
		{geometry.HeadOutOfReach, func(t *geometry.Tape) { t.RearToHead = 90 }},
	} {
		tape := good
		test.spoil(&tape)
		if _, err := tape.Solve(); err != error(test.fault) {
			t.Errorf("%+v: got %v, want %q", tape, err, test.fault)
		}
	}
	bare := good
	bare.HeadAngle, bare.RearToFront = 0, 0
	if found, err := bare.Solve(); err != nil || found.Offset != 0 || found.AxleMiss != 0 {
		t.Errorf("without head angle and axle distance: %+v, %v", found, err)
	}
}

// The measured bikes of Moore 2012 (CC BY 3.0, doi 10.6084/m9.figshare.1198429):
// radius from rollout, trail from radius, head angle and offset.
func TestMeasuredBikesTrailAsPublished(t *testing.T) {
	data, err := os.ReadFile("../../testdata/published/measured-bikes.json")
	if err != nil {
		t.Fatal(err)
	}
	var set struct {
		Bikes []struct {
			ID        string   `json:"id"`
			HeadAngle float64  `json:"head_angle_deg"`
			Offset    float64  `json:"fork_offset_m"`
			FrontRun  float64  `json:"front_rollout_m"`
			FrontTurn float64  `json:"front_turns"`
			RearRun   float64  `json:"rear_rollout_m"`
			RearTurn  float64  `json:"rear_turns"`
			Front     float64  `json:"rF_m"`
			Rear      float64  `json:"rR_m"`
			Published *float64 `json:"trail_published_m"`
			Computed  float64  `json:"trail_computed_m"`
		} `json:"bikes"`
	}
	if err := json.Unmarshal(data, &set); err != nil {
		t.Fatal(err)
	}
	if len(set.Bikes) < 7 {
		t.Fatalf("%d bikes", len(set.Bikes))
	}
	for _, bike := range set.Bikes {
		front, rear := bike.FrontRun/(2*math.Pi*bike.FrontTurn), bike.RearRun/(2*math.Pi*bike.RearTurn)
		near(t, bike.ID+" front radius", front, bike.Front, 1e-12)
		near(t, bike.ID+" rear radius", rear, bike.Rear, 1e-12)
		trail := geometry.Trail(front, bike.HeadAngle, bike.Offset)
		near(t, bike.ID+" trail", trail, bike.Computed, 1e-12)
		if bike.Published != nil {
			near(t, bike.ID+" trail as published", trail, *bike.Published, 1e-9)
		}
	}
}

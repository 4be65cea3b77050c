package intake_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
)

// TestADifferenceHasTheErrorOfBoth takes readings with a stated repeat error, one standard
// deviation, so that the ± is known by hand: u = √(3² + 4²) = 5 mm, U = 2u = 10 mm (JCGM
// 100:2008, 5.1.2, 6.2.1).
func TestADifferenceHasTheErrorOfBoth(t *testing.T) {
	before, _ := record.Decode("inseam=830%C2%B13&saddle-height=720%C2%B13&pedals=flat")
	after, _ := record.Decode("inseam=834%C2%B14&saddle-height=731%C2%B14&pedals=clip")
	list := intake.Differences(before, after)
	require.Len(t, list, 3)
	for i, want := range []struct {
		q      *measure.Quantity
		by     float64
		within bool
	}{{measure.Inseam, 4, true}, {measure.SaddleHeight, 11, false}} {
		d := list[i]
		assert.Equal(t, want.q, d.Quantity)
		assert.InDelta(t, want.by, d.After-d.Before, 1e-9)
		assert.InDelta(t, 10, d.Margin, 1e-9)
		assert.Equal(t, want.within, d.Same, want.q.Key)
	}
	assert.True(t, math.IsNaN(list[2].Margin), "a choice has no error")
	assert.False(t, list[2].Same)
}

func TestRidersAreNumbered(t *testing.T) {
	list := []intake.Relation{{}, {Kin: intake.Again}, {}, {Kin: intake.Namesake},
		{Kin: intake.OtherBike, To: 1}, {Kin: intake.Duplicate, To: 3}}
	assert.Equal(t, []int{0, 0, 1, 2, 0, 2}, intake.Riders(list), "a namesake is somebody else")
}

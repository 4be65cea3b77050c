package fit_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
)

// TestAPostOfTheReaderByHand: rails 741 − 432 − 46 = 263 mm above the tube. Collar and
// head of 29 + 24 = 53 mm leave 263 − 53 = 210 mm of travel, 25 more than the 185 of
// the post. Of its 487 mm, 487 − 263 = 224 are in the tube, 224 − 33 = 191 without the
// actuator: 21 over the post's minimum of 170, 11 under the frame's of 202. The tube has
// 248 mm free, so 24 are left, and 12 mm more travel, 197, would use them up.
//
// With 231 mm of travel the post needs 53 + 231 = 284 mm above the tube. It stands on
// its collar, 21 mm higher than wanted, and so much less of it is in the tube.
func TestAPostOfTheReaderByHand(t *testing.T) {
	asked := optional(measure.SaddleHeight, measure.SeatTubeLength, measure.SaddleStack, measure.TravelPost,
		measure.PostLength,
		measure.FreeDepth, measure.InsertionPost, measure.InsertionFrame)
	const typed = "saddle-height=741 seat-tube-length=432 saddle-stack=46 post-collar=29 post-head=24 " +
		"post-actuator=33 " +
		"post-length=487 free-depth=248 insertion-post=170 insertion-frame=202 "
	p := fit.PostOf(values(t, typed+"travel-post=185", asked, fit.PostParts()))
	assert.Equal(t, fit.Post{Exposed: 263, Stands: 263, ByRoom: 210, Room: 25, Inside: 224, Insertion: 191,
		Left: 24, ByDepth: 197,
		OverPost: 21, OverFrame: -11, Deeper: 202, Rise: -11}, p)
	p = fit.PostOf(values(t, typed+"travel-post=231", asked, fit.PostParts()))
	assert.Equal(t, [5]float64{284, -21, 203, 170, 45}, [5]float64{p.Stands, p.Room, p.Inside, p.Insertion, p.Left})

	// A fixed post has no collar and nothing below it; without a free depth nothing is
	// said of it.
	p = fit.PostOf(values(t, "saddle-height=741 seat-tube-length=432 saddle-stack=46 post-head=24 post-length=400 "+
		"travel-post=0",
		asked[:5], optional(measure.InsertionPost, measure.InsertionFrame), fit.PostParts()))
	assert.Equal(t, [3]float64{239, 137, 137}, [3]float64{p.ByRoom, p.Inside, p.Insertion})
	assert.True(t, math.IsNaN(p.Left) && math.IsNaN(p.ByDepth) && math.IsNaN(p.Rise))
}

// The law wants two diameters (16 CFR 1512.15(b)): 2·31.6 = 63.2 mm.
func TestTheMarkLiesTwoDiametersUp(t *testing.T) {
	assert.InDelta(t, 63.2, fit.MarkAtLeast(31.6), 1e-12)
}

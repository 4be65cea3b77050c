package fit

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestPostsByHand: the saddle's top stands 741 mm from the bottom bracket, the tube ends
// at 432 mm and the saddle takes 46 mm, so the rails are 741 − 432 − 46 = 263 mm above
// the tube. Collar and head of 29 + 24 mm leave 210 mm of travel. A post of 185 mm
// travel and 487 mm length goes 487 − 263 = 224 mm into a tube with 248 mm free: 24 mm
// to spare. Another 12 mm of travel lengthen it by 12 mm above and 12 mm below the
// collar, which is all of the 24.
func TestPostsByHand(t *testing.T) {
	rails := Exposed(741, 432, 46)
	assert.InDelta(t, 263, rails, 1e-12)
	assert.InDelta(t, 210, TravelForRoom(rails, 29+24), 1e-12)
	assert.InDelta(t, 185+12, TravelForDepth(185, 487, 248, rails), 1e-12)
	// 10 mm less free depth than the post needs: 5 mm less travel.
	assert.InDelta(t, 180, TravelForDepth(185, 487, 214, rails), 1e-12)
}

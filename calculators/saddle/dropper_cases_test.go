package saddle

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

const (
	roomyFrame = "saddle-height=738±2 seat-tube-length=417±1.5 saddle-stack=46±1 post-collar=29±1 post-head=24±0.8" +
		" travel-post=185 post-length=497±2 free-depth=262±3 post-actuator=34±1.5 post-diameter=31.6" +
		" insertion-post=112±1 insertion-frame=97±1.2"
	tightFrame = "saddle-height=700±2 seat-tube-length=430±1.5 saddle-stack=52±1 post-collar=31±1 post-head=27±0.8" +
		" travel-post=210 post-length=551±2 free-depth=330±3 post-actuator=36±1.5 insertion-post=140±1" +
		" insertion-frame=160±1.2"
)

// Plain lengths along the seat line, by hand.
//
// The roomy frame:
//
//	above the tube's edge   738 − 417 − 46             = 275
//	collar and head         29 + 24                    = 53
//	travel by the room      275 − 53                   = 222
//	room left               222 − 185                  = 37
//	inside, with actuator   497 − 275                  = 222
//	inside, without         222 − 34                   = 188
//	depth left              262 − 222                  = 40
//	travel by the depth     185 + 40/2                 = 205, the smaller of both
//	over the minimums       188 − 112 = 76, 188 − 97   = 91
//	the post needs          53 + 185                   = 238 of the 275
//
// On the tight frame, 700 − 430 − 52 = 218 above the edge, a post that needs
// 58 + 210 = 268 stands 50 higher on its collar:
//
//	travel by the room      218 − 58                   = 160, the smaller of both
//	room left               160 − 210                  = −50
//	inside, with actuator   551 − 268                  = 283
//	inside, without         283 − 36                   = 247
//	depth left              330 − 283                  = 47
//	travel by the depth, the saddle at its height: 210 + (330 + 218 − 551)/2 = 208.5
//	over the minimums       247 − 140 = 107, 247 − 160 = 87
func TestDropperCases(t *testing.T) {
	const source = "plain lengths by hand"
	calctest.Cases(t, Dropper(),
		calctest.Case{Typed: roomyFrame, Source: source, Want: []calctest.Want{
			calctest.Is(longestTravel, 205, 1e-9),
			calctest.Is(postInsertion, 188, 1e-9),
			calctest.Is(depthLeft, 40, 1e-9),
			calctest.Is(roomLeft, 37, 1e-9),
			calctest.Is(overPost, 76, 1e-9),
			calctest.Is(overFrame, 91, 1e-9),
			calctest.Is(travelByRoom, 222, 1e-9),
			calctest.Is(travelByDepth, 205, 1e-9),
			calctest.Cell("limits", 0, "has", 275, 1e-9),
			calctest.Cell("limits", 0, "needs", 238, 1e-9),
			calctest.Cell("limits", 0, "spare", 37, 1e-9),
			calctest.Cell("limits", 1, "uncertainty", 9, 1e-9),
		}},
		calctest.Case{Typed: tightFrame, Source: source, Want: []calctest.Want{
			calctest.Is(longestTravel, 160, 1e-9),
			calctest.Is(postInsertion, 247, 1e-9),
			calctest.Is(depthLeft, 47, 1e-9),
			calctest.Is(roomLeft, -50, 1e-9),
			calctest.Is(overPost, 107, 1e-9),
			calctest.Is(overFrame, 87, 1e-9),
			calctest.Is(travelByRoom, 160, 1e-9),
			calctest.Is(travelByDepth, 208.5, 1e-9),
		}},
		// 655 − 401 − 48 − 28 − 26 with what is usual for saddle and post.
		calctest.Case{Typed: "saddle-height=655 seat-tube-length=401", Source: source, Want: []calctest.Want{
			calctest.Is(longestTravel, 152, 1e-9),
			calctest.None(postInsertion), calctest.None(depthLeft), calctest.None(travelByDepth),
			calctest.None(roomLeft),
		}},
		// A post whose travel is not known can still be held at the saddle height: 470 −
		// (655 − 401 − 48) − 35 of it are inside.
		calctest.Case{Typed: "saddle-height=655 seat-tube-length=401 post-length=470", Source: source,
			Want: []calctest.Want{
				calctest.Is(postInsertion, 229, 1e-9),
			}},
	)
	cells(t, Dropper(), roomyFrame, "limits", "has", 1e-9, 275, 262, 188, 188)
	cells(t, Dropper(), roomyFrame, "limits", "needs", 1e-9, 238, 222, 112, 97)
	cells(t, Dropper(), roomyFrame, "limits", "spare", 1e-9, 37, 40, 76, 91)
	cells(t, Dropper(), tightFrame, "limits", "has", 1e-9, 218, 330, 247, 247)
	cells(t, Dropper(), tightFrame, "limits", "needs", 1e-9, 268, 283, 140, 160)
	cells(t, Dropper(), tightFrame, "limits", "spare", 1e-9, -50, 47, 107, 87)
}

// ± at k = 2 (JCGM 100:2008), roots of sums of squares. What is above the tube's edge,
// on the roomy frame, has 2² + 1.5² + 1² = 7.25:
//
//	by the room, room left  + 1² + 0.8²               = 8.89
//	insertion               + 2² + 1.5²               = 13.5
//	depth left              + 2² + 3²                 = 20.25; travel by it the half
//	over the post's         13.5 + 1²                 = 14.5
//	over the frame's        13.5 + 1.2²               = 14.94
//
// On the tight frame collar and head decide in its place, with 1² + 0.8² = 1.64:
//
//	insertion               + 2² + 1.5²               = 7.89
//	depth left              + 2² + 3²                 = 14.64
func TestDropperUncertainty(t *testing.T) {
	of := func(variance float64) float64 { return 2 * math.Sqrt(variance) }
	margins(t, Dropper(), roomyFrame, 1e-9, map[*calculators.Output]float64{
		longestTravel: of(20.25) / 2, travelByDepth: of(20.25) / 2, depthLeft: of(20.25),
		travelByRoom: of(8.89), roomLeft: of(8.89), postInsertion: of(13.5), overPost: of(14.5), overFrame: of(14.94),
	})
	cells(t, Dropper(), roomyFrame, "limits", "uncertainty", 1e-9, of(8.89), of(20.25), of(14.5), of(14.94))
	margins(t, Dropper(), tightFrame, 1e-9, map[*calculators.Output]float64{
		longestTravel: of(8.89), postInsertion: of(7.89), depthLeft: of(14.64), overPost: of(8.89),
		overFrame: of(9.33),
	})
	// Usual for a trail saddle and a dropper post (common practice): stack ± 4, collar
	// ± 6, head ± 5, actuator ± 10 mm.
	margins(t, Dropper(), "saddle-height=655±2 seat-tube-length=401±1 post-length=470±3", 1e-9,
		map[*calculators.Output]float64{
			longestTravel: of(2*2 + 1 + 4*4 + 6*6 + 5*5), postInsertion: of(2*2 + 1 + 4*4 + 3*3 + 10*10)})
}

// What is said with numbers, and of which limit.
func TestWhatIsSaidOfThePost(t *testing.T) {
	roomy, tight := calctest.Answer(t, Dropper(), roomyFrame), calctest.Answer(t, Dropper(), tightFrame)
	require.Contains(t, meaning(roomy, longestTravel),
		"The depth in the tube is the limit: the room above would allow 222\u00a0mm")
	deep := calctest.Answer(t, Dropper(), tightFrame+" free-depth=333±3")
	require.Contains(t, meaning(deep, longestTravel),
		"The room above the collar is the limit: the depth would allow 210\u00a0mm")
	require.Contains(t, meaning(roomy, postInsertion), "of which the deeper is 112\u00a0mm")
	require.Contains(t, meaning(tight, postInsertion), "of which the deeper is 160\u00a0mm")
	require.True(t, calctest.Says(tight, "this post still holds the saddle 50\u00a0mm above your height"))
	require.False(t, calctest.Says(roomy, "above your height"))
	require.Equal(t, []string{"met; this is the tightest", "met", "met", "met"}, calctest.Column(t, roomy, "limits",
		"verdict"))
	require.Equal(t, []string{"not met", "met", "met", "met"}, calctest.Column(t, tight, "limits", "verdict"))
	require.Contains(t, roomy.Figure.Description.Say(nil),
		"to the tube’s edge are 417\u00a0mm, to the saddle’s top 738\u00a0mm")
	require.Contains(t, roomy.Figure.Description.Say(nil),
		"reaches 188\u00a0mm into the frame and 40\u00a0mm of depth are left")

	none := calctest.Answer(t, Dropper(), "saddle-height=500 seat-tube-length=398 saddle-stack=48 post-collar=28"+
		" post-head=26")
	require.Contains(t, meaning(none, longestTravel), "Nothing is left for a dropper")
	bare := calctest.Answer(t, Dropper(), "saddle-height=655 seat-tube-length=401")
	require.Contains(t, meaning(bare, longestTravel), "whether the tube is deep enough is not known")
	require.Contains(t, meaning(bare, postInsertion), "of the post that you have in mind")
	require.Contains(t, meaning(bare, depthLeft), "to see whether it goes in")
	require.Contains(t, bare.Figure.Description.Say(nil), "how deep the post sits is not known yet")
	require.Empty(t, bare.Tables)
	for _, m := range bare.Figure.Marks {
		if l, ok := m.(drawing.Dimension); ok {
			require.Equal(t, drawing.Ink, l.Role, "nothing binds where no limit is known")
		}
	}

	const noMinimums = "saddle-height=738 seat-tube-length=417 travel-post=185 post-length=497"
	r := calctest.Answer(t, Dropper(), noMinimums+" insertion-post=150")
	require.True(t, calctest.Says(r, "You left out “Frame’s minimum insertion”"))
	require.False(t, calctest.Says(r, "You left out “Post’s minimum insertion”"))
	require.Contains(t, meaning(r, postInsertion), "Whether that is deep enough is not known")
	r = calctest.Answer(t, Dropper(), noMinimums+" insertion-frame=150")
	require.True(t, calctest.Says(r, "You left out “Post’s minimum insertion”"))
	require.False(t, calctest.Says(r, "You left out “Frame’s minimum insertion”"))
	require.Equal(t, "not known: look it up or measure it", calctest.Column(t, r, "limits", "verdict")[2])

	// 497 − 275 − 35 = 187 are inside. Too shallow for the one minimum that is known is too
	// shallow, whatever the other is; and nothing is enough by less than the errors.
	for _, one := range []string{" insertion-post=190", " insertion-frame=190"} {
		require.Contains(t, meaning(calctest.Answer(t, Dropper(), noMinimums+one), postInsertion), "Do not ride it")
	}
	r = calctest.Answer(t, Dropper(), noMinimums+" insertion-post=100 insertion-frame=185")
	require.Contains(t, meaning(r, postInsertion), "Too close to say")

	// Half a millimetre of travel is some, and half a millimetre of room holds nothing up.
	r = calctest.Answer(t, Dropper(), "saddle-height=502.5 seat-tube-length=400 saddle-stack=48 post-collar=28"+
		" post-head=26")
	require.NotContains(t, meaning(r, longestTravel), "Nothing is left")
	require.False(t, calctest.Says(calctest.Answer(t, Dropper(), roomyFrame+" travel-post=221.5"),
		"above your height"))
}

// A limit is met by less than the measuring errors up to its ±, and not met below zero.
// The roomy frame's depth left is 40 ± 9: with a free depth of 262 − 40 it is zero.
func TestHowALimitStands(t *testing.T) {
	for spare, verdict := range map[float64]string{
		-0.1: "not met", 0.1: "met, but by less than the measuring errors",
		8.9: "met, but by less than the measuring errors",
		9.1: "met; this is the tightest", 36.9: "met; this is the tightest", 37.1: "met",
	} {
		r := answer(t, Dropper(), "%s free-depth=%v±3", roomyFrame, 222+spare)
		require.Equal(t, verdict, calctest.Column(t, r, "limits", "verdict")[1], spare)
		require.Equal(t, spare < 0, calctest.Says(r, "The post meets the obstacle"), spare)
	}
	// Both minimum insertions against the 188 that are inside.
	for typed, shallow := range map[string]bool{
		" insertion-post=187.9": false, " insertion-post=188.1": true, " insertion-frame=187.9": false,
		" insertion-frame=188.1": true,
	} {
		require.Equal(t, shallow, calctest.Says(calctest.Answer(t, Dropper(), roomyFrame+typed), "Do not ride it"),
			typed)
	}
	// Room and depth allow nearly the same where they differ by less than both ±: 222 ±
	// 5.963 by the room, 205 ± 4.5 by the depth, which grows by half a millimetre for each
	// of free depth.
	for depth, near := range map[float64]bool{262 + 2*(17-10.4): true, 262 + 2*(17-10.5): false,
		262 + 2*(17+10.4): true, 262 + 2*(17+10.5): false} {
		r := answer(t, Dropper(), "%s free-depth=%v±3", roomyFrame, depth)
		require.Equal(t, near, calctest.Says(r, "allow nearly the same travel"), depth)
	}
	// 16 CFR 1512.15(b): the mark at least two diameters, 63.2 mm, above the lower end.
	require.True(t, calctest.Says(calctest.Answer(t, Dropper(), roomyFrame+" insertion-post=63.1"),
		"lower end, 63\u00a0mm here"))
	require.False(t, calctest.Says(calctest.Answer(t, Dropper(), roomyFrame+" insertion-post=63.3"), "two diameters"))
}

// Where room or depth is exactly enough it is met; an insertion that is exactly enough is
// too close to the errors for anybody to ride on it.
func TestExactlyEnough(t *testing.T) {
	r := calctest.Answer(t, Dropper(), roomyFrame+" free-depth=222±3")
	require.Equal(t, "met, but by less than the measuring errors", calctest.Column(t, r, "limits", "verdict")[1])
	require.False(t, calctest.Says(r, "The post meets the obstacle"))
	for _, typed := range []string{" insertion-post=188", " insertion-frame=188"} {
		require.Contains(t, meaning(calctest.Answer(t, Dropper(), roomyFrame+typed), postInsertion),
			"Too close to say", typed)
	}
	require.False(t, calctest.Says(calctest.Answer(t, Dropper(), roomyFrame+" travel-post=222"), "above your height"))
	require.False(t, calctest.Says(calctest.Answer(t, Dropper(), roomyFrame+" insertion-post=63.2"), "two diameters"))
	// Both allow 222: 185 + (296 + 275 − 497)/2.
	r = calctest.Answer(t, Dropper(), roomyFrame+" free-depth=296")
	require.Contains(t, meaning(r, longestTravel), "The room above the collar is the limit")
}

package start

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

const (
	dropperInFrame = "saddle-height=738±2 seat-tube-length=417±1.5 saddle-stack=46±1 post-length=497±2 " +
		"travel-post=185±0" +
		" post-collar=29±1 post-head=24±0.8 post-actuator=34±1.5 insertion-post=112±1 insertion-frame=97±1.2"
	fixedInFrame = "saddle-height=700±2 seat-tube-length=430±1.5 saddle-stack=52±1 post-length=350±2 travel-post=0" +
		" insertion-post=140±1 insertion-frame=160±1.2"
)

// Plain lengths along the seat line, by hand.
//
// The dropper:
//
//	above the tube's edge    738 − 417 − 46   = 275
//	inside, without actuator 497 − 275 − 34   = 188
//	the deeper minimum       max(112, 97)     = 112
//	may go up                188 − 112        = 76
//	highest saddle           738 + 76         = 814, or 417 + 46 + (497 − 34 − 112)
//	over the frame's         188 − 97         = 91
//
// The fixed post, without anything below it, of which 700 − 430 − 52 = 218 show:
//
//	inside 350 − 218 = 132; deeper 160; 132 − 160 = −28; 700 − 28 = 672; 132 − 140 = −8
func TestPostDepthByHand(t *testing.T) {
	calctest.Cases(t, Depth(), calctest.Case{
		Typed: dropperInFrame, Source: "hand calculation",
		Want: []calctest.Want{
			calctest.Is(insideFrame, 188, 1e-9), calctest.Is(deeperMinimum, 112, 1e-9), calctest.Is(mayRise, 76, 1e-9),
			calctest.Is(highestSaddle, 814, 1e-9), calctest.Is(overPost, 76, 1e-9), calctest.Is(overFrame, 91, 1e-9),
			calctest.Cell("limits", 0, "has", 188, 0.5), calctest.Cell("limits", 0, "needs", 112, 0.5),
			calctest.Cell("limits", 0, "spare", 76, 0.5), calctest.Cell("limits", 1, "has", 188, 0.5),
			calctest.Cell("limits", 1, "needs", 97, 0.5), calctest.Cell("limits", 1, "spare", 91, 0.5),
			// 2·√(2² + 1.5² + 1² + 2² + 1.5² + 1²) = 7.62, never rounded down
			calctest.Cell("limits", 0, "uncertainty", 8, 0.01),
		},
	}, calctest.Case{
		Typed: fixedInFrame, Source: "hand calculation",
		Want: []calctest.Want{
			calctest.Is(insideFrame, 132, 1e-9), calctest.Is(deeperMinimum, 160, 1e-9), calctest.Is(mayRise, -28,
				1e-9),
			calctest.Is(highestSaddle, 672, 1e-9), calctest.Is(overPost, -8, 1e-9), calctest.Is(overFrame, -28, 1e-9),
		},
	}, calctest.Case{
		// A dropper of 240 that needs 28 + 240 + 26 = 294 above the edge stands 27 higher than
		// 735 − 420 − 48 = 267: 600 − 294 − 32 = 274 inside, and the saddle at 735 + 27 = 762.
		Typed: "saddle-height=735 seat-tube-length=420 saddle-stack=48 post-length=600 travel-post=240 " +
			"post-collar=28" +
			" post-head=26 post-actuator=32 insertion-post=110 insertion-frame=100",
		Source: "hand calculation",
		Want: []calctest.Want{calctest.Is(insideFrame, 274, 1e-9), calctest.Is(mayRise, 164, 1e-9),
			calctest.Is(highestSaddle, 762+164, 1e-9)},
	})
	r := calctest.Answer(t, Depth(), dropperInFrame)
	// 2·√(2² + 1.5² + 1² + 2² + 1.5²) = 7.348; the mark adds 1².
	require.InDelta(t, 7.348, float64(r.At(insideFrame).Uncertainty), 0.01)
	require.InDelta(t, 7.616, float64(r.At(mayRise).Uncertainty), 0.01)
}

// A fixed post has nothing below its tube, a dropper has; without a word about travel
// the more careful of the two is taken.
func TestWhatIsBelowTheTube(t *testing.T) {
	const bare = "saddle-height=700 seat-tube-length=430 saddle-stack=52 post-length=350"
	for typed, inside := range map[string]float64{"": 132 - 35, " travel-post=150": 350 - 218 - 35,
		" travel-post=0":                 132,
		" travel-post=0 post-actuator=4": 128} {
		require.InDelta(t, inside, calctest.Value(calctest.Answer(t, Depth(), bare+typed), insideFrame), 1e-9, typed)
	}
	require.True(t, calctest.Says(calctest.Answer(t, Depth(), bare), "Type 0 for a fixed post"))
	require.False(t, calctest.Says(calctest.Answer(t, Depth(), bare+" travel-post=0"), "Type 0 for a fixed post"))
}

// "Enough" is never said where a limit is missing, nor where the errors are larger than
// what is to spare; what is known to be too little is said all the same.
func TestEnoughIsSaidOnlyWhereItIsKnown(t *testing.T) {
	const post = "saddle-height=700 seat-tube-length=430 saddle-stack=52 post-length=350 travel-post=0" // 132 inside
	for _, c := range []struct {
		typed, says string
		rise        bool
	}{
		{"", "is not known", false},
		{" insertion-post=80", "is not known", false},
		{" insertion-frame=80", "is not known", false},
		{" insertion-post=133", "Too shallow for the post’s own", false},
		{" insertion-frame=133", "Too shallow for the frame’s", false},
		{" insertion-post=80 insertion-frame=133", "Too shallow: the deeper of the two minimum insertions is 133",
			true},
		{" insertion-post=133 insertion-frame=80", "Too shallow: the deeper of the two minimum insertions is 133",
			true},
		{" insertion-post=80 insertion-frame=131", "Too close to say", true},
		{" insertion-post=131 insertion-frame=80", "Too close to say", true},
		{" insertion-post=80 insertion-frame=90", "Deep enough for both minimum insertions, of which the deeper is " +
			"90", true},
	} {
		r := calctest.Answer(t, Depth(), post+c.typed)
		said := r.At(insideFrame).Meaning.Say(nil)
		require.Contains(t, said, c.says, c.typed)
		require.Equal(t, c.says[:4] == "Deep", calctest.Says(r, "eep enough for both"), c.typed)
		require.Equal(t, c.rise, r.At(mayRise).Exists(), c.typed)
		if !c.rise {
			require.True(t, calctest.Says(r, "so nothing here says"), c.typed)
			require.Contains(t, r.At(mayRise).Meaning.Say(nil), "Not known", c.typed)
		}
	}
	r := calctest.Answer(t, Depth(), post+" insertion-post=80")
	require.Equal(t, []string{"met; of the limits that are known this is the tightest",
		"not known: look it up or measure it"},
		calctest.Column(t, r, "limits", "verdict"))
	require.Equal(t, "–\u00a0mm", calctest.Column(t, r, "limits", "uncertainty")[1])
	// What is left when every error goes against the rider: 76 − 7.6.
	r = calctest.Answer(t, Depth(), dropperInFrame)
	require.Contains(t, r.At(mayRise).Meaning.Say(nil), "68\u00a0mm of it is sure")
	require.Contains(t, r.At(deeperMinimum).Meaning.Say(nil), "the frame asks for 15\u00a0mm less")
	r = calctest.Answer(t, Depth(), fixedInFrame)
	require.Contains(t, r.At(mayRise).Meaning.Say(nil), "It is 28\u00a0mm too high already")
	require.Contains(t, r.At(deeperMinimum).Meaning.Say(nil), "the mark on the post lies 20\u00a0mm lower")
	require.Contains(t, calctest.Answer(t, Depth(),
		post+" insertion-post=80 insertion-frame=131").At(mayRise).Meaning.Say(nil),
		"Less than the measuring errors")
}

// What is higher above hides less below, millimetre for millimetre, and a deeper limit
// leaves less.
func TestPostDepthDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		of := func(height, tube, stack, length, below, post, frame float64) *calculators.Result {
			return calctest.Answer(t, Depth(), fmt.Sprintf("saddle-height=%v seat-tube-length=%v saddle-stack=%v "+
				"post-length=%v"+
				" travel-post=0 post-actuator=%v insertion-post=%v insertion-frame=%v", height, tube, stack, length,
				below, post, frame))
		}
		height, tube := calctest.Between(t, "height", 640, 800), calctest.Between(t, "tube", 380, 470)
		length, more := calctest.Between(t, "length", 300, 450), calctest.Between(t, "more", 1, 20)
		post, frame := calctest.Between(t, "post", 60, 150), calctest.Between(t, "frame", 60, 150)
		base := of(height, tube, 46, length, 10, post, frame)
		for _, c := range []struct {
			then         *calculators.Result
			inside, rise float64
		}{
			{of(height+more, tube, 46, length, 10, post, frame), -more, -more},
			{of(height, tube+more, 46, length, 10, post, frame), more, more},
			{of(height, tube, 46+more, length, 10, post, frame), more, more},
			{of(height, tube, 46, length+more, 10, post, frame), more, more},
			{of(height, tube, 46, length, 10+more, post, frame), -more, -more},
			{of(height, tube, 46, length, 10, post+more, frame+more), 0, -more},
		} {
			require.InDelta(t, c.inside, calctest.Value(c.then, insideFrame)-calctest.Value(base, insideFrame), 1e-9)
			require.InDelta(t, c.rise, calctest.Value(c.then, mayRise)-calctest.Value(base, mayRise), 1e-9)
		}
		require.Equal(t, max(post, frame), calctest.Value(base, deeperMinimum))
	})
}

// inFrames returns the marks of all views of a figure.
func inFrames(f *drawing.Figure) (marks []drawing.Mark) {
	for _, g := range f.Frames {
		marks = append(marks, g.Marks...)
	}
	return marks
}

// The picture shows right beside wrong: the mark hidden in one, in sight or above the
// frame's minimum in the other, whichever of them is the reader's.
func TestThePictureOfThePost(t *testing.T) {
	// By hand: 275 show, and 275 + 76 + 25 of the post beside it; 218, and 218 − 28 − 25.
	for typed, said := range map[string][]string{
		dropperInFrame: {"Right: as it is", "Wrong: pulled out too far", "275\u00a0mm", "376\u00a0mm",
			"inside 188\u00a0mm", "inside 87\u00a0mm"},
		fixedInFrame: {"Wrong: as it is, too high", "Right: hidden far enough", "218\u00a0mm", "165\u00a0mm",
			"inside 185\u00a0mm"},
		"saddle-height=700 seat-tube-length=430 saddle-stack=52 post-length=350 travel-post=0 insertion-post=131 " +
			"insertion-frame=80": {"As it is: too close to say"},
		"saddle-height=700 seat-tube-length=430 post-length=350 travel-post=0": {"As it is: not known yet"},
		"saddle-height=700 seat-tube-length=430 post-length=350 travel-post=0 insertion-post=80": {
			"As it is: not known yet", "Wrong: pulled out too far"},
		"saddle-height=700 seat-tube-length=430 post-length=350 travel-post=0 insertion-post=140": {
			"Wrong: as it is, too high", "Deep enough for that limit"},
	} {
		r := calctest.Answer(t, Depth(), typed)
		labels := map[string]drawing.Point{}
		for _, f := range r.Figure.Frames {
			labels[f.Caption.Say(nil)] = drawing.Point{}
		}
		for _, m := range inFrames(r.Figure) {
			switch m := m.(type) {
			case drawing.Label:
				labels[m.Text.Say(nil)] = m.At
			case drawing.Dimension:
				labels[m.Text.Say(nil)] = m.A
			}
		}
		for _, s := range said {
			require.Contains(t, labels, s, typed)
		}
	}
	// By hand: yours has its mark 76 below the edge; the other, 25 beyond the limit, 25 above.
	heights := map[string]float64{}
	for _, m := range inFrames(calctest.Answer(t, Depth(), dropperInFrame).Figure) {
		if l, ok := m.(drawing.Label); ok {
			heights[l.Text.Say(nil)] = l.At.Y
		}
	}
	require.InDelta(t, -76, heights["mark, hidden"], 1e-9)
	require.InDelta(t, 25, heights["mark, in sight"], 1e-9)
	// The frame's line is at −97 in both, and its words keep 30 off those at the mark.
	lines := 0
	for _, m := range inFrames(calctest.Answer(t, Depth(), dropperInFrame).Figure) {
		if l, ok := m.(drawing.Line); ok && l.Pen == drawing.Hidden {
			require.InDelta(t, -97, l.Points[0].Y, 1e-9)
			lines++
		}
	}
	require.Equal(t, 2, lines)
	require.InDelta(t, -9, besideMark(-97, -76), 1e-9)
	require.InDelta(t, 10, besideMark(-97, -117), 1e-9)
	require.Zero(t, besideMark(-97, 25))
}

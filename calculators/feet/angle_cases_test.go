package feet

import (
	"fmt"
	"math"
	"math/cmplx"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/calctest/leg"
	"plumbline/calculators/drawing"
)

const (
	unlikeFeet = "toe-out-left=-2±1.5 toe-out-right=11±2.5 cleat-angle-left=1.5±0.7 cleat-angle-right=6±0.9 " +
		"pedal-float=8±0.6" +
		" foot-offset=61±1.3 foot-length=271±2 crank-length=167.5±0.5 q-factor=169±1 arm-set-in=9±1.1 " +
		"stay-width=131±2.1" +
		" rear-end-width=187±2.4 chainstay=431±1.7 cleat-behind-ball=12±1.6 heel-cup=5±0.8 sex=m"
	usualFeet = "toe-out-left=6 toe-out-right=3"
)

// sideBySide is one foot on its pedal for the independent solve, mm and degrees.
type sideBySide struct {
	own, cleat, float, offset, foot, share, crank, q, setIn, stays, axle, chainstay, behindBall, cup float64
}

var (
	// The ball of a man's foot lies at 74.10 % of it (ANSUR II).
	unlikeLeft = sideBySide{own: -2, cleat: 1.5, float: 8, offset: 61, foot: 271, share: 0.7410, crank: 167.5, q: 169,
		setIn: 9,
		stays: 131, axle: 187, chainstay: 431, behindBall: 12, cup: 5}
	// What nobody gave is usual: common practice, and the middle of the survey for both
	// sexes, a foot of (246.2931 + 271.16)/2 mm and its ball at the mean of 73.92 and 74.10 %.
	usualLeft = sideBySide{own: 6, cleat: 0, float: 6, offset: 56, share: 0.7401, crank: 170, q: 175, setIn: 8,
		stays: 120, axle: 180, chainstay: 437, behindBall: 0, cup: 4}
)

func unlikeRight() sideBySide {
	s := unlikeLeft
	s.own, s.cleat = 11, 6
	return s
}

// corner is the heel's inner corner for toes out by an angle: real ahead of the
// spindle, imaginary outwards of the middle plane. The toes turn outwards, the heel
// inwards.
func (s sideBySide) corner(toeOut float64) complex128 {
	heel := complex(-(s.share*s.foot - s.behindBall + s.cup), -34)
	return complex(0, s.q/2+s.offset) + heel*cmplx.Rect(1, toeOut*math.Pi/180)
}

// arm is the room to the arm's face, a straight line from (0, Q/2) at the spindle to
// (−crank, Q/2 − set-in) at the axle, with the crank forward; no further in than that.
func (s sideBySide) arm(toeOut float64) float64 {
	c := s.corner(toeOut)
	along := math.Min(-real(c), s.crank)
	return imag(c) - (s.q/2 - s.setIn*along/s.crank)
}

// frame is the room to the frame's face with the spindle ahead of the bottom bracket:
// half the stays' width to 180 mm behind it, half the rear end's from the axle on, and
// a straight line between.
func (s sideBySide) frame(toeOut, ahead float64) float64 {
	c := s.corner(toeOut)
	behind := math.Min(math.Max(-real(c)-ahead, 180), s.chainstay)
	face := s.stays/2 + (s.axle-s.stays)/2*(behind-180)/(s.chainstay-180)
	return imag(c) - face
}

// least is a search of the whole circle in tenths of a degree.
func (s sideBySide) least() float64 {
	in := s.own + s.float/2
	least := s.arm(in)
	for i := range 3600 {
		least = math.Min(least, s.frame(in, s.crank*math.Sin(float64(i)*math.Pi/1800)))
	}
	return least
}

func (s sideBySide) wants(f oneFoot, row int, column string) []calctest.Want {
	in := s.own + s.float/2
	return []calctest.Want{
		calctest.Is(f.turn, s.own-s.cleat, 1e-9), calctest.Is(f.least, s.least(), 1e-6),
		calctest.Is(f.inNow, s.float/2-(s.own-s.cleat), 1e-9), calctest.Is(f.outNow, s.float/2+(s.own-s.cleat), 1e-9),
		calctest.Is(f.each, s.float/2, 1e-9), calctest.Is(f.armOwn, s.arm(s.own), 1e-6), calctest.Is(f.armIn,
			s.arm(in),
			1e-6),
		calctest.Is(f.stay, s.frame(in, 0), 1e-6), calctest.Is(f.frame, s.frame(in, -s.crank), 1e-6),
		calctest.Cell("float", row, "own", s.own, 0.051), calctest.Cell("float", row, "in-now",
			s.float/2-(s.own-s.cleat),
			0.051),
		calctest.Cell("float", row, "out-now", s.float/2+(s.own-s.cleat), 0.051), calctest.Cell("float", row,
			"each-way",
			s.float/2, 0.051),
		calctest.Cell("circle", 0, column, s.arm(s.own), 0.51), calctest.Cell("circle", 1, column, s.arm(in), 0.51),
		calctest.Cell("circle", 2, column, s.frame(in, 0), 0.51), calctest.Cell("circle", 3, column, s.frame(in,
			-s.crank), 0.51),
	}
}

// moves are the inputs' standard uncertainties of the unlike feet; own and cleat differ
// by side.
func (s sideBySide) expanded(own, cleat float64, number func(s sideBySide) float64) float64 {
	var effects []func(float64) float64
	for _, move := range []func(s *sideBySide, off float64){
		func(s *sideBySide, off float64) { s.own += own * off }, func(s *sideBySide,
			off float64) {
			s.cleat += cleat * off
		},
		func(s *sideBySide, off float64) { s.float += 0.6 * off }, func(s *sideBySide,
			off float64) {
			s.offset += 1.3 * off
		},
		func(s *sideBySide, off float64) { s.foot += 2 * off }, func(s *sideBySide,
			off float64) {
			s.crank += 0.5 * off
		},
		func(s *sideBySide, off float64) { s.q += off }, func(s *sideBySide, off float64) { s.setIn += 1.1 * off },
		func(s *sideBySide, off float64) { s.stays += 2.1 * off }, func(s *sideBySide,
			off float64) {
			s.axle += 2.4 * off
		},
		func(s *sideBySide, off float64) { s.chainstay += 1.7 * off }, func(s *sideBySide,
			off float64) {
			s.behindBall += 1.6 * off
		},
		func(s *sideBySide, off float64) { s.cup += 0.8 * off },
		// The ball lies at 0.7410 ± 0.0147 of a man's foot, here of 271 mm.
		func(s *sideBySide, off float64) { s.behindBall += 0.0147 * 271 * off },
	} {
		effects = append(effects, func(off float64) float64 { s := s; move(&s, off); return number(s) })
	}
	return leg.Expanded(effects...)
}

func TestFootAngleCases(t *testing.T) {
	const source = "plane geometry, the circle searched in the test"
	armIn := func(s sideBySide) float64 { return s.arm(s.own + s.float/2) }
	left, right := unlikeLeft.expanded(1.5, 0.7, armIn), unlikeRight().expanded(2.5, 0.9, armIn)
	usual := usualLeft
	usual.foot = (246.2931 + 271.1651) / 2
	calctest.Cases(t, FootAngle(),
		calctest.Case{Typed: unlikeFeet, Source: source, Want: append(append(unlikeLeft.wants(leftFoot, 0, "left"),
			unlikeRight().wants(rightFoot, 1, "right")...),
			calctest.Is(leftFoot.turn, -3.5, 1e-9), calctest.Is(rightFoot.turn, 5, 1e-9),
			calctest.Cell("circle", 1, "left-uncertainty", left, 1), calctest.Cell("circle", 1,
				"right-uncertainty", right, 1))},
	)
	// A short foot on a long crank: the heel stays ahead of the crank's axle.
	short := unlikeRight()
	short.foot, short.crank = 228, 175
	shortFoot := calctest.Answer(t, FootAngle(), unlikeFeet+" foot-length=228 crank-length=175")
	require.Less(t, -real(short.corner(11)), 175.0)
	require.InDelta(t, short.arm(11), calctest.Value(shortFoot, rightFoot.armOwn), 1e-6)
	require.InDelta(t, short.least(), calctest.Value(shortFoot, rightFoot.least), 1e-6)
	r := calctest.Answer(t, FootAngle(), usualFeet)
	require.InDelta(t, usual.least(), calctest.Value(r, leftFoot.least), 0.05)
	require.InDelta(t, usual.frame(9, 0), calctest.Value(r, leftFoot.stay), 0.05)
	require.InDelta(t, usual.arm(6), calctest.Value(r, leftFoot.armOwn), 0.05)
}

// ± at k = 2 by differences of the independent solve, JCGM 100:2008.
func TestFootAngleUncertainty(t *testing.T) {
	s, u := unlikeLeft, unlikeRight()
	in := func(s sideBySide) float64 { return s.own + s.float/2 }
	calctest.Margins(t, FootAngle(), unlikeFeet, 1e-4, map[*calculators.Output]float64{
		leftFoot.turn: 2 * math.Hypot(1.5, 0.7), rightFoot.turn: 2 * math.Hypot(2.5, 0.9),
		leftFoot.inNow: 2 * math.Sqrt(1.5*1.5+0.49+0.09), rightFoot.outNow: 2 * math.Sqrt(2.5*2.5+0.81+0.09),
		leftFoot.each:   0.6,
		leftFoot.armOwn: s.expanded(1.5, 0.7, func(s sideBySide) float64 { return s.arm(s.own) }),
		rightFoot.armIn: u.expanded(2.5, 0.9, func(s sideBySide) float64 { return s.arm(in(s)) }),
		leftFoot.stay:   s.expanded(1.5, 0.7, func(s sideBySide) float64 { return s.frame(in(s), 0) }),
		rightFoot.frame: u.expanded(2.5, 0.9, func(s sideBySide) float64 { return s.frame(in(s), -s.crank) }),
		leftFoot.least:  s.expanded(1.5, 0.7, sideBySide.least), rightFoot.least: u.expanded(2.5, 0.9,
			sideBySide.least),
	})
}

func TestWhatIsSaidOfFootAngles(t *testing.T) {
	at := func(typed string) *calculators.Result { return calctest.Answer(t, FootAngle(), typed) }
	turn := func(left, cleat string) string {
		return at("toe-out-right=7 toe-out-left=" + left + "±0.5 cleat-angle-left=" + cleat +
			"±0.5 pedal-float=8").At(leftFoot.turn).Meaning.Say(nil)
	}
	require.Contains(t, turn("5", "2"), "nose inwards, towards the bike")
	require.Contains(t, turn("2", "5"), "nose outwards, away from the bike")
	require.Contains(t, turn("2", "2.9"), "Less than one step")
	require.Contains(t, turn("2", "3.2"), "Too close to tell: it is less than its own ±. Leave the cleat")
	require.NotContains(t, turn("5.9", "2"), "outside the float")
	require.Contains(t, turn("6.1", "2"), "outside the float")
	require.NotContains(t, turn("2", "5.9"), "outside the float")
	require.Contains(t, turn("2", "6.1"), "outside the float")

	// A turn of 4° ± 4.2 (2·√(2² + 0.65²)) advises nothing, even where half the float is less than it.
	for _, angles := range []string{"toe-out-left=6±2 cleat-angle-left=2±0.65",
		"toe-out-left=2±2 cleat-angle-left=6±0.65"} {
		close := at(angles + " toe-out-right=7 pedal-float=6").At(leftFoot.turn).Meaning.Say(nil)
		require.Contains(t, close, "Too close to tell: it is less than its own ±. Both angles want a second reading")
		require.Contains(t, close, "outside the float")
		require.NotContains(t, close, "nose")
	}

	// 7.3 ± 4.4 degrees at 16 years, −8 to 16.4 normal (Lösel and others 1996).
	among := func(left, right string) []string {
		return calctest.Column(t, at("toe-out-left="+left+" toe-out-right="+right), "float", "people")
	}
	require.Equal(t, []string{"as two people in three", "as two people in three"}, among("3", "11.6"))
	require.Equal(t, []string{"as about one in four; no fault", "as about one in four; no fault"}, among("2.8",
		"11.8"))
	require.Equal(t, []string{"rare, within what counts as normal in the young",
		"rare, within what counts as normal in the young"},
		among("-1.6", "16.3"))
	require.Equal(t, []string{"rare; measure again, and if it hurts ask a clinician",
		"rare; measure again, and if it hurts ask a clinician"},
		among("-8.1", "16.5"))

	require.True(t, calctest.Says(at("toe-out-left=2±1 toe-out-right=4.9±1"), "The feet differ by 2.9°"))
	require.False(t, calctest.Says(at("toe-out-left=2±1 toe-out-right=4.7±1"), "The feet differ"))
	require.True(t, calctest.Says(at(usualFeet+" pedal-float=3.9"), "float under 4"))
	require.False(t, calctest.Says(at(usualFeet+" pedal-float=4"), "float under 4"))
	room := func(more string) string { return at(unlikeFeet + more).At(leftFoot.least).Meaning.Say(nil) }
	require.Contains(t, room(" rear-end-width=150"), "Least room at the crank arm")
	require.NotContains(t, room(" rear-end-width=150"), "may touch")
	require.Contains(t, room(""), "Least room at the frame")
	require.Contains(t, room(" rear-end-width=250"), "the heel may touch")
	require.Contains(t, room(" rear-end-width=150 toe-out-left=20"), "By these numbers the heel meets the crank arm")
}

// Toes further out bring the heel in on that side alone; a wider foot offset, a
// narrower frame and more set-in give room; cleats change float but no room.
// A frame that is wider at the stays than at the axle meets the heel while the crank
// points forward: 330 − 170 = 160 mm behind the bottom bracket its half width is the stays',
// 95, which leaves 110 − 95 = 15 mm; at 330 + 170 it is the axle's 60, and the arm's face
// at 40 leaves 70. One that is wider at the axle, 104, meets it behind: 110 − 104 = 6.
func TestTheHeelMeetsTheFrameAtEitherEnd(t *testing.T) {
	heel := heelPlace{behind: 330, out: 110}
	e := rearEnd{face: 40, crank: 170, stays: 95, axle: 60, chainstay: 435}
	require.InDelta(t, 15, e.leastRoom(heel), 1e-9)
	e.axle = 104
	require.InDelta(t, 6, e.leastRoom(heel), 1e-9)
	// With wide frames out of the way the arm decides, set in by 12 over the crank's length.
	e.stays, e.axle, e.face, e.setIn = 40, 40, 90, 12
	require.InDelta(t, 110-90+12, e.leastRoom(heel), 1e-9)
}

func TestFootAngleDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		left, right := calctest.Between(t, "left", -5, 15), calctest.Between(t, "right", -5, 15)
		float, offset := calctest.Between(t, "float", 0, 10), calctest.Between(t, "offset", 48, 70)
		rear, more := calctest.Between(t, "rear", 150, 200), calctest.Between(t, "more", 0.5, 4)
		at := func(left, right, float, offset, rear, cleat float64) *calculators.Result {
			return calctest.Answer(t, FootAngle(), fmt.Sprintf("toe-out-left=%v toe-out-right=%v pedal-float=%v "+
				"foot-offset=%v "+
				"rear-end-width=%v cleat-angle-right=%v foot-length=265", left, right, float, offset, rear, cleat))
		}
		of := calctest.Value
		base := at(left, right, float, offset, rear, 3)
		out := at(left, right+more, float, offset, rear, 3)
		require.InDelta(t, of(base, rightFoot.turn)+more, of(out, rightFoot.turn), 1e-9)
		require.InDelta(t, of(base, leftFoot.turn), of(out, leftFoot.turn), 1e-9)
		require.InDelta(t, of(base, rightFoot.inNow)-more, of(out, rightFoot.inNow), 1e-9)
		require.InDelta(t, of(base, rightFoot.outNow)+more, of(out, rightFoot.outNow), 1e-9)
		require.InDelta(t, of(base, leftFoot.least), of(out, leftFoot.least), 1e-9)
		for _, o := range []*calculators.Output{rightFoot.least, rightFoot.armOwn, rightFoot.armIn, rightFoot.stay,
			rightFoot.frame} {
			require.Less(t, of(out, o), of(base, o), o.Name)
			wider := at(left, right, float, offset+more, rear, 3)
			require.InDelta(t, of(base, o)+more, of(wider, o), 1e-9, o.Name)
		}
		require.Less(t, of(at(left, right, float+more, offset, rear, 3), rightFoot.least), of(base, rightFoot.least))
		require.LessOrEqual(t, of(at(left, right, float, offset, rear+more, 3), rightFoot.least), of(base,
			rightFoot.least))
		turned := at(left, right, float, offset, rear, 3+more)
		require.InDelta(t, of(base, rightFoot.least), of(turned, rightFoot.least), 1e-9)
		require.InDelta(t, of(base, rightFoot.turn)-more, of(turned, rightFoot.turn), 1e-9)
	})
}

// The drawn angles are the cleats' turns, each to its own side, and the drawn gaps the
// heels' room.
func TestTheFeetFromAboveAreToScale(t *testing.T) {
	var turns, gaps []float64
	for _, m := range calctest.Answer(t, FootAngle(), unlikeFeet).Figure.Marks {
		switch m := m.(type) {
		case drawing.Angle:
			turns = append(turns, m.To-m.From)
		case drawing.Dimension:
			gaps = append(gaps, math.Abs(m.B.X-m.A.X))
		}
	}
	// The left one's nose now points inwards of straight ahead, so it turns outwards.
	require.InDeltaSlice(t, []float64{-3.5, -5}, turns, 1e-9)
	require.InDeltaSlice(t, []float64{unlikeLeft.arm(-2), math.Abs(unlikeRight().arm(11))}, gaps, 1e-6)
}

func BenchmarkFootAngle(b *testing.B) {
	for b.Loop() {
		calctest.Answer(b, FootAngle(), unlikeFeet)
	}
}

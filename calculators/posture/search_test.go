package posture

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
)

// These tests look inside the package: each search is compared with a walk in small
// steps over the same poses.

// drawn draws somebody standing ready, and grips in front of that rider.
func drawn(t *rapid.T) (Standing, geometry.Point) {
	within := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
	stature := within("stature", 1500, 1950)
	leg, _, ok := body.NewLeg(body.Measured{Inseam: 0.48 * stature, Stature: stature}, body.Female)
	require.True(t, ok)
	s, ok := NewStanding(leg,
		Setup{Crank: within("crank", 155, 180), PedalHeight: 9, SoleHeight: 13, CleatBehindBall: 20},
		Upper{Trunk: 0.3 * stature, Stature: stature, Sex: body.Female,
			Arm: Arm{Upper: 0.19 * stature, Fore: 0.2 * stature, Aside: within("aside", 90, 170)}},
		Stance{Trunk: within("trunk", 25, 65), Knee: within("knee", 25, 75), FrontHeel: -7, RearHeel: 4,
			Slope: within("slope", -12, 12)})
	require.True(t, ok)
	return s, geometry.Point{X: within("grip x", 330, 560), Y: within("grip y", 600, 850)}
}

// walk returns the first front knee on the way from one bend to another at which over
// holds, and whether there is one: 400 steps, and the last of them halved until nothing is
// left of it. Where a leg is nearly straight a step alone is several millimetres of room.
func walk(from, to float64, over func(t float64) bool) (float64, bool) {
	const steps = 400
	at := func(i int) float64 { return from + (to-from)*float64(i)/steps }
	for i := range steps + 1 {
		if !over(at(i)) {
			continue
		}
		before, end := at(max(i-1, 0)), at(i)
		for range 40 {
			if middle := (before + end) / 2; over(middle) {
				end = middle
			} else {
				before = middle
			}
		}
		return end, true
	}
	return to, false
}

func TestRoomsAgainstAWalk(t *testing.T) {
	seen := map[Limit]int{}
	rapid.Check(t, func(t *rapid.T) {
		s, grip := drawn(t)
		r, err := s.Balance(grip)
		if err != nil || !r.Reaches() || r.ElbowBend >= FoldedElbow {
			t.Skip("hands not on the grips")
		}
		low, high := s.ends()
		length := func(knee float64) float64 {
			p, ok := s.at(knee, grip, 0)
			require.True(t, ok)
			return p.off
		}
		bend := func(knee float64) (float64, bool) {
			p, _ := s.at(knee, grip, 0)
			return s.upper.Arm.Bend(p.shoulder.Distance(grip))
		}
		if room, ok := s.RoomBack(&r, grip); ok {
			seen[room.Limit]++
			end, ended := walk(r.FrontKnee, low, func(knee float64) bool { _, ok := bend(knee); return !ok })
			require.Equal(t, ended, room.Limit == ArmsStraight)
			require.InDelta(t, -length(end), room.Length, 0.01)
		}
		room, ok := s.RoomForward(&r, grip)
		if !ok {
			return
		}
		seen[room.Limit]++
		over, why := func(p geometry.Point) bool { return p.Sub(grip).Dot(s.ahead) > 0 }, RearLegEnds
		end, _ := walk(r.FrontKnee, high, func(knee float64) bool {
			p, _ := s.shoulder(knee)
			elbow, ok := bend(knee)
			now := RearLegEnds
			switch {
			case over(p):
				now = ShouldersOver
			case ok && elbow > FoldedElbow:
				now = ElbowsFolded
			}
			if now != RearLegEnds {
				why = now
			}
			return now != RearLegEnds
		})
		if !over(r.Trunk.Shoulder) {
			require.Equal(t, why, room.Limit)
			require.InDelta(t, length(end), room.Length, 0.01)
		}
	})
	require.Positive(t, seen[ArmsStraight])
	require.Positive(t, seen[ElbowsFolded])
}

// A rider past a limit already: the room is negative, back to where the limit holds.
func TestRoomsPastTheirLimitAgainstAWalk(t *testing.T) {
	short, folded := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		s, grip := drawn(t)
		// Grips as riders have them are seldom past a limit: with those alone one of a hundred
		// runs met no folded elbow. Far and low is out of reach, near and high folds.
		if rapid.Bool().Draw(t, "far") {
			grip.X += rapid.Float64Range(50, 200).Draw(t, "further")
			grip.Y -= rapid.Float64Range(0, 150).Draw(t, "lower")
		} else {
			grip.X -= rapid.Float64Range(50, 250).Draw(t, "nearer")
			grip.Y += rapid.Float64Range(100, 300).Draw(t, "higher")
		}
		r, err := s.Balance(grip)
		if err != nil {
			t.Skip("no pose")
		}
		low, high := s.ends()
		elbow := func(knee float64) (float64, bool) {
			p, _ := s.at(knee, grip, 0)
			return s.upper.Arm.Bend(p.shoulder.Distance(grip))
		}
		length := func(knee float64) float64 {
			p, _ := s.at(knee, grip, 0)
			return p.off
		}
		if !r.Reaches() {
			end, some := walk(r.FrontKnee, high, func(knee float64) bool { _, ok := elbow(knee); return ok })
			if room, ok := s.RoomBack(&r, grip); ok && some {
				short++
				require.InDelta(t, -length(end), room.Length, 0.01)
			}
			return
		}
		over := r.Trunk.Shoulder.Sub(grip).Dot(s.ahead) > 0
		if room, ok := s.RoomForward(&r, grip); ok && !over && r.ElbowBend > FoldedElbow {
			folded++
			end, _ := walk(r.FrontKnee, low, func(knee float64) bool {
				bend, ok := elbow(knee)
				return ok && bend <= FoldedElbow
			})
			require.Equal(t, ElbowsFolded, room.Limit)
			require.InDelta(t, length(end), room.Length, 0.01)
		}
	})
	if !testing.Short() { // which draws too few to meet both for certain
		require.Positive(t, short)
		require.Positive(t, folded)
	}
}

// The ends are where the straight legs begin to meet, or a knee of 165 degrees.
func TestEndsOfTheKnees(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, _ := drawn(t)
		s.stance.Knee = rapid.Float64Range(20, 140).Draw(t, "mean")
		s.setEnds()
		low, high := s.ends()
		require.InDelta(t, 2*s.stance.Knee, low+high, 1e-9)
		require.LessOrEqual(t, high, 165.0)
		require.GreaterOrEqual(t, low, 0.0)
		for knee := low; knee <= high; knee += (high - low) / 16 {
			_, ok := s.legs(knee)
			require.True(t, ok, "knee %v of %v to %v", knee, low, high)
		}
		if _, ok := s.legs(low - 0.02); ok && low > 0 {
			require.InDelta(t, 165, high, 1e-9)
		}
	})
}

func TestSpannedAgainstAWalk(t *testing.T) {
	narrowed := 0
	rapid.Check(t, func(t *rapid.T) {
		s, grip := drawn(t)
		chord := rapid.Float64Range(120, 600).Draw(t, "chord")
		low, high := s.ends()
		spans := func(knee float64) bool {
			p, ok := s.legs(knee)
			_, meets := geometry.Triangulate(p.hip, grip, s.upper.Trunk, chord, true)
			return ok && meets
		}
		from, to, ok := s.spanned(grip, chord, low, high)
		first, some := walk(low, high, spans)
		if !some {
			require.False(t, ok)
			return
		}
		last, _ := walk(high, low, spans)
		_, gap := walk(first, last, func(knee float64) bool { return !spans(knee) })
		if last-first < (high-low)/20 || gap && spans(last) {
			return // two spans, or one so short that the coarse look may step over it
		}
		require.True(t, ok)
		require.InDelta(t, first, from, (high-low)/1000)
		require.InDelta(t, last, to, (high-low)/1000)
		if from > low || to < high {
			narrowed++
		}
	})
	require.Positive(t, narrowed)
}

// x⁹ = 1/2 at 0.925875: a curve on which the plain straight line hardly gets on,
// from either side.
func TestRootOfABentCurve(t *testing.T) {
	power := func(x float64) float64 { return x * x * x * x * x * x * x * x * x }
	for _, turned := range []bool{false, true} {
		count := 0
		f := func(x float64) (float64, bool) {
			count++
			if turned {
				x = 1.5 - x
			}
			return power(x) - 0.5, true
		}
		atLow, _ := f(0)
		atHigh, _ := f(1.5)
		x, ok := root(0, atLow, 1.5, atHigh, f)
		require.True(t, ok)
		if turned {
			x = 1.5 - x
		}
		require.InDelta(t, 0.925875, x, 1e-6)
		require.Less(t, count, 40)
	}
	if _, ok := root(0, -1, 1, 1, func(float64) (float64, bool) { return 0, false }); ok {
		t.Error("a root without a value")
	}
}

// Arms that do not reach point straight at the grips: in three dimensions the hand is
// an arm's length from the shoulder, the elbow on the way.
func TestStraightArmsPointAtTheGrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, grip := drawn(t)
		grip.X += 900
		r, err := s.Balance(grip)
		if err != nil {
			t.Skip("no pose")
		}
		arm, way := s.upper.Arm, grip.Sub(r.Trunk.Shoulder)
		share := (arm.Upper + arm.Fore) / math.Hypot(way.Length(), arm.Aside)
		require.Less(t, share, 1.0)
		require.InDelta(t, 0, r.Hand.Distance(r.Trunk.Shoulder.Add(way.Scale(share))), 1e-6)
		toElbow, toHand := r.Elbow.Sub(r.Trunk.Shoulder), r.Hand.Sub(r.Trunk.Shoulder)
		require.InDelta(t, arm.Upper/(arm.Upper+arm.Fore), toElbow.Length()/toHand.Length(), 1e-9)
		require.InDelta(t, 0, toElbow.Cross(toHand), 1e-3)
		require.InDelta(t, 2*s.stance.Knee, r.FrontKnee+r.RearKnee, 1e-9)

		// No arm spans grips this far apart: out of reach by the whole distance.
		s.upper.Arm.Aside = arm.Upper + arm.Fore + 30
		wide, err := s.Balance(grip)
		if err == nil {
			require.InDelta(t, -wide.Trunk.Shoulder.Distance(grip), wide.Slack, 1e-9)
		}
	})
}

// Hand calculations.
func TestPosesByHand(t *testing.T) {
	require.InDelta(t, 95-170, LegPose{Knee: geometry.Point{X: 95},
		Spindle: geometry.Point{X: 170}}.KneeOverSpindle(), 1e-12)
	head, ok := HeadOn(Trunk{Angle: 50}, 1700, body.Female)
	require.True(t, ok)
	require.InDelta(t, 110.5, head.Radius, 1e-9, "half of 0.13 of stature")

	// 10 mm above neutral, seat line at 73.5 degrees (cos 0.2840153, sin 0.9588197):
	// forward 0.27·10·cos + 0.61·10, up 19 − 0.27·10·sin.
	leg, _, _ := body.NewLeg(body.Measured{Inseam: 846}, body.Male)
	s, ok := NewSeated(leg, Setup{Crank: 170, PedalHeight: 15, SoleHeight: 15, SeatAngle: 73.5})
	require.True(t, ok)
	hip := s.Hip(s.Neutral() + 10).Sub(s.Saddle(s.Neutral() + 10))
	require.InDelta(t, 6.86684, hip.X, 1e-4)
	require.InDelta(t, 16.41119, hip.Y, 1e-4)

	// An ankle on the spindle, the hip 12.2 behind and 700 above the bottom bracket:
	// nearest with the crank pointing at the hip, atan(12.2/700) = 0.9985° before the top.
	c, ok := Chain{Hip: geometry.Point{X: -12.2, Y: 700}, Thigh: 460, Shank: 430, Crank: 165}.Circle(72)
	require.True(t, ok)
	require.InDelta(t, 360-0.9985, c.MostBent.Crank, 1e-3)
	require.InDelta(t, 180-0.9985, c.Straightest.Crank, 1e-3)
}

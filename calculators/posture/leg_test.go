package posture_test

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

func near(t rapid.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Fatalf("%s: got %v, want %v ± %v", what, got, want, tolerance)
	}
}

// riders draws a grown rider's leg, measured proportions mixed with estimated
// ones, and a set-up that could be ridden.
func riders() *rapid.Generator[posture.Seated] {
	return rapid.Custom(func(t *rapid.T) posture.Seated {
		within := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		sex := rapid.SampledFrom([]body.Sex{body.Unknown, body.Female, body.Male}).Draw(t, "sex")
		leg, _, ok := body.NewLeg(body.Measured{Inseam: within("inseam", 640, 980)}, sex)
		if !ok {
			t.Fatal("no leg")
		}
		s, ok := posture.NewSeated(leg, posture.Setup{
			Crank: within("crank", 140, 185), PedalHeight: within("pedal", 5, 25), SoleHeight: within("sole", 5, 30),
			CleatBehindBall: within("cleat", 0, 30), SeatAngle: within("seat angle", 70, 82),
		})
		if !ok {
			t.Fatalf("no seated rider with %+v", leg)
		}
		return s
	})
}

// newton solves f = 0 with difference quotients and gonum's linear solver.
func newton(t rapid.TB, x []float64, f func([]float64) []float64) []float64 {
	t.Helper()
	n := len(x)
	for range 300 {
		slope := mat.NewDense(n, n, nil)
		for j := range n {
			const step = 1e-4
			high, low := append([]float64(nil), x...), append([]float64(nil), x...)
			high[j] += step
			low[j] -= step
			up, down := f(high), f(low)
			for i := range n {
				slope.Set(i, j, (up[i]-down[i])/(2*step))
			}
		}
		var move mat.VecDense
		if err := move.SolveVec(slope, mat.NewVecDense(n, f(x))); err != nil {
			t.Fatalf("linear solve: %v", err)
		}
		length := mat.Norm(&move, 2)
		damp := math.Min(1, 50/length)
		for i := range n {
			x[i] -= damp * move.AtVec(i)
		}
		if length < 1e-10 {
			return x
		}
	}
	t.Fatal("the independent solve did not settle")
	return nil
}

// The unknowns are knee and ankle; the equations are the raw lengths of thigh,
// shank and foot, and the foot's angle. Nothing of the closed form is used.
func TestLegSatisfiesTheRawLengths(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		angle := rapid.Float64Range(0, 360).Draw(t, "crank")
		height := s.Neutral() * rapid.Float64Range(0.8, 1.01).Draw(t, "height")
		p, ok := s.At(height, angle)
		if !ok {
			t.Fatal("not reachable")
		}
		chain := s.Chain(height)
		length := math.Hypot(chain.Foot.Behind, chain.Foot.Above)
		rise := math.Atan2(chain.Foot.Above, chain.Foot.Behind) + p.HeelUp*math.Pi/180
		spindle := geometry.Point{X: chain.Crank * math.Sin(angle*math.Pi/180),
			Y: chain.Crank * math.Cos(angle*math.Pi/180)}
		start := []float64{p.Hip.X + 300, p.Hip.Y - 100, spindle.X - 100, spindle.Y + 100}
		x := newton(t, start, func(x []float64) []float64 {
			knee, ankle := geometry.Point{X: x[0], Y: x[1]}, geometry.Point{X: x[2], Y: x[3]}
			foot := ankle.Sub(spindle)
			return []float64{
				knee.Distance(p.Hip) - chain.Thigh,
				knee.Distance(ankle) - chain.Shank,
				foot.X + length*math.Cos(rise),
				foot.Y - length*math.Sin(rise),
			}
		})
		near(t, "knee x", p.Knee.X, x[0], 1e-6)
		near(t, "knee y", p.Knee.Y, x[1], 1e-6)
		near(t, "ankle x", p.Ankle.X, x[2], 1e-6)
		near(t, "ankle y", p.Ankle.Y, x[3], 1e-6)
	})
}

func TestPoseAgreesWithItself(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		p, ok := s.At(s.Neutral(), rapid.Float64Range(0, 360).Draw(t, "crank"))
		if !ok {
			t.Fatal("not reachable")
		}
		leg := s.Leg()
		near(t, "thigh", p.Knee.Distance(p.Hip), leg.Thigh, 1e-9)
		near(t, "shank", p.Knee.Distance(p.Ankle), leg.Shank, 1e-9)
		near(t, "foot", p.Heel.Distance(p.Toe), leg.FootLength, 1e-9)
		near(t, "heel to ball", p.Heel.Distance(p.Ball), leg.HeelToBall, 1e-9)
		near(t, "crank", p.Spindle.Length(), s.Setup().Crank, 1e-9)
		near(t, "thigh's dip", -p.Knee.Sub(p.Hip).Angle(), p.ThighDip, 1e-9)
		inner, _ := geometry.OppositeAngle(leg.Thigh, leg.Shank, p.HipToAnkle)
		near(t, "knee", p.KneeBend, 180-inner, 1e-9)
		sole := p.Toe.Sub(p.Heel).Angle()
		near(t, "heel up", -sole, p.HeelUp, 1e-9)
		near(t, "ankle", p.AnkleAngle, p.Knee.Sub(p.Ankle).Angle()-sole, 1e-9)
		near(t, "hip angle over an upright trunk", p.HipAngle(90), 90+p.ThighDip, 1e-12)
		if p.Knee.Sub(p.Hip).Cross(p.Ankle.Sub(p.Hip)) > 0 {
			t.Fatal("the knee bends backwards")
		}
	})
}

func TestALegOutOfReachIsReported(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		straight, ok := s.HeightFor(0)
		if !ok {
			t.Fatal("no height for a straight leg")
		}
		beyond := straight + rapid.Float64Range(0.01, 5000).Draw(t, "beyond")
		if p, ok := s.AtBottom(beyond); ok {
			t.Fatalf("reached %v mm beyond a straight leg: %+v", beyond-straight, p)
		}
		if _, ok := s.Circle(beyond, 72); ok {
			t.Fatal("a circle that cannot be pedalled")
		}
		if _, ok := s.Straightest(beyond); ok {
			t.Fatal("straightest beyond a straight leg")
		}
	})
}

func TestKneeStraightensBeforeTheLowestPoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		c, ok := s.Circle(s.Neutral(), 72)
		if !ok {
			t.Fatal("not reachable")
		}
		if !(c.Straightest.Crank > 90 && c.Straightest.Crank < 180) {
			t.Fatalf("straightest at %v", c.Straightest.Crank)
		}
		if !(c.MostBent.Crank > 300 && c.MostBent.Crank < 360) {
			t.Fatalf("most bent at %v", c.MostBent.Crank)
		}
		for i, p := range c.Poses {
			if p.Crank != 5*float64(i) || p.KneeBend < c.Straightest.KneeBend || p.KneeBend > c.MostBent.KneeBend {
				t.Fatalf("pose %d at %v: knee %v outside %v to %v", i, p.Crank, p.KneeBend,
					c.Straightest.KneeBend, c.MostBent.KneeBend)
			}
		}
	})
}

// The straightest pose is found without the circle; a circle cut into degrees has none
// straighter than it, and one within half a degree of it.
func TestTheStraightestLegNeedsNoCircle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		height := s.Neutral() * rapid.Float64Range(0.75, 1.02).Draw(t, "share")
		p, ok := s.Straightest(height)
		c, whole := s.Circle(height, 360)
		if !whole {
			t.Skip("out of reach")
		}
		cut := slices.MaxFunc(c.Poses, func(a, b posture.LegPose) int {
			return cmp.Compare(a.HipToAnkle, b.HipToAnkle)
		})
		if !ok || p.HipToAnkle < cut.HipToAnkle || math.Abs(p.Crank-cut.Crank) > 0.51 ||
			math.Abs(p.KneeBend-c.Straightest.KneeBend) > 1e-7 {
			t.Fatalf("straightest %v at %v, cut %v at %v", p.KneeBend, p.Crank, cut.KneeBend, cut.Crank)
		}
	})
}

func TestACircleNeedsAnglesEnough(t *testing.T) {
	s := riders().Example(1)
	for _, count := range []int{-1, 0, 7, 3601, math.MaxInt} {
		if _, ok := s.Circle(s.Neutral(), count); ok {
			t.Errorf("a circle of %d angles", count)
		}
	}
}

func TestLegGrowsWithItsLengths(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		chain := riders().Draw(t, "rider").Chain(700)
		k := rapid.Float64Range(0.05, 20).Draw(t, "scale")
		angle := rapid.Float64Range(0, 360).Draw(t, "crank")
		big := chain
		big.Hip = chain.Hip.Scale(k)
		for _, v := range []*float64{&big.Thigh, &big.Shank, &big.Crank, &big.Foot.Behind, &big.Foot.Above} {
			*v *= k
		}
		p, ok := chain.At(angle)
		q, fine := big.At(angle)
		if ok != fine {
			t.Fatal("size decides what can be reached")
		}
		if ok {
			near(t, "knee", q.KneeBend, p.KneeBend, 1e-7)
			near(t, "knee's place", q.Knee.Distance(p.Knee.Scale(k)), 0, 1e-6*k)
		}
	})
}

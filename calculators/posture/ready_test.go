package posture_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

// who is a rider and a bar, with lengths from the open survey where nothing else
// is said.
type who struct {
	stature, inseam float64
	sex             body.Sex
	spacing         float64 // between the grip centres, mm
}

// whole returns a rider's leg and upper body.
func (w who) whole(t rapid.TB) (body.Leg, posture.Upper) {
	t.Helper()
	leg, _, ok := body.NewLeg(body.Measured{Inseam: w.inseam, Stature: w.stature}, w.sex)
	trunk, ok1 := body.Trunk.FromStature(w.stature, w.sex)
	arm, ok2 := body.ArmFromStature(w.stature, w.sex)
	shoulders, ok3 := body.ShoulderWidth.FromStature(w.stature, w.sex)
	if !ok || !ok1 || !ok2 || !ok3 {
		t.Fatalf("no rider: %+v", w)
	}
	share := body.UpperArmShare(w.sex)
	return leg, posture.Upper{Trunk: trunk.Value, Stature: w.stature, Sex: w.sex, Arm: posture.Arm{
		Upper: share * arm.Value, Fore: (1 - share) * arm.Value,
		Aside: (w.spacing - body.ShoulderJointSpacing(shoulders.Value)) / 2}}
}

func (w who) standing(t rapid.TB, stance posture.Stance) posture.Standing {
	t.Helper()
	leg, upper := w.whole(t)
	s, ok := posture.NewStanding(leg, flat, upper, stance)
	if !ok {
		t.Fatalf("no rider: %+v", w)
	}
	return s
}

func (w who) ready(t rapid.TB, stance posture.Stance, grip geometry.Point) posture.Ready {
	t.Helper()
	r, err := w.standing(t, stance).Ready(grip)
	if err != nil {
		t.Fatalf("%+v: %v", w, err)
	}
	return r
}

var flat = posture.Setup{Crank: 170, PedalHeight: 10, SoleHeight: 12, CleatBehindBall: 20}

// reference is the survey's mean man on a bar of 780 mm. His bike is bike A of the
// published checks (reach 475, stack 630, head angle 65 degrees) with an ordinary
// cockpit on it.
var reference = who{stature: 1756, inseam: 846, sex: body.Male, spacing: 650}

var referenceGrip = func() geometry.Point {
	b, err := geometry.Chart{Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
		ForkOffset: 44, FrontRadius: 372, RearRadius: 372}.Solve()
	h, ok := geometry.Cockpit{Headset: 10, Spacers: 15, ClampHeight: 40, Stem: 40, Rise: 25, Back: 38}.Hold(b)
	if err != nil || !ok {
		panic("no bike")
	}
	return h.Grip
}()

// The expectations are the project's own contract for its reference rider; no
// measured mountain biker's posture is published.
func TestTheReferenceRiderStandsAsExpected(t *testing.T) {
	for _, sex := range []body.Sex{body.Unknown, body.Female, body.Male} {
		w := reference
		w.sex = sex
		r := w.ready(t, posture.ReadyStance, referenceGrip)
		t.Logf("sex %v: hip %.0f mm behind, elbow %.1f, front knee %.1f, rear %.1f", sex, r.HipBehind(),
			r.ElbowBend, r.Front.KneeBend, r.Rear.KneeBend)
		within(t, "hip behind the crank axle", r.HipBehind(), 180, 220)
		within(t, "elbow", r.ElbowBend, 55, 66)
		within(t, "front knee", r.Front.KneeBend, 37, 43)
		within(t, "rear knee", r.Rear.KneeBend, 57, 63)
		elbow := func(stance posture.Stance, grip geometry.Point) float64 {
			return w.ready(t, stance, grip).ElbowBend - r.ElbowBend
		}
		low, high := posture.ReadyStance, posture.ReadyStance
		low.Trunk, high.Trunk = 40, 50
		within(t, "five degrees of trunk down", elbow(low, referenceGrip), 11, 15)
		within(t, "five degrees of trunk up", -elbow(high, referenceGrip), 11, 15)
		within(t, "20 mm of reach", -elbow(posture.ReadyStance, referenceGrip.Add(geometry.Point{X: 20})), 3, 5)
		within(t, "20 mm of bar height", elbow(posture.ReadyStance, referenceGrip.Add(geometry.Point{Y: 20})), 4, 6)
		stem := geometry.Cockpit{Stem: 10}.StemVector(65)
		within(t, "10 mm of stem", math.Abs(elbow(posture.ReadyStance, referenceGrip.Add(stem))), 0, 1)
	}
}

func within(t rapid.TB, what string, got, low, high float64) {
	t.Helper()
	if !(got >= low && got <= high) {
		t.Errorf("%s: got %.3f, want %v to %v", what, got, low, high)
	}
}

// standers draws riders of 1.45 to 2.05 m.
func standers() *rapid.Generator[who] {
	return rapid.Custom(func(t *rapid.T) who {
		stature := rapid.Float64Range(1450, 2050).Draw(t, "stature")
		return who{
			stature: stature, inseam: stature * rapid.Float64Range(0.455, 0.505).Draw(t, "inseam share"),
			sex:     rapid.SampledFrom([]body.Sex{body.Unknown, body.Female, body.Male}).Draw(t, "sex"),
			spacing: rapid.Float64Range(430, 700).Draw(t, "grip spacing"),
		}
	})
}

func stances() *rapid.Generator[posture.Stance] {
	return rapid.Custom(func(t *rapid.T) posture.Stance {
		return posture.Stance{
			Trunk: rapid.Float64Range(20, 80).Draw(t, "trunk"), Knee: rapid.Float64Range(15, 100).Draw(t, "knee"),
			FrontHeel: rapid.Float64Range(-15, 10).Draw(t, "front heel"), RearHeel: rapid.Float64Range(-10,
				20).Draw(t, "rear heel"),
			Slope: rapid.Float64Range(-32, 15).Draw(t, "slope"),
		}
	})
}

// gripFor draws grips on a bike of a rider's size.
func gripFor(t *rapid.T, w who) geometry.Point {
	return geometry.Point{
		X: w.stature * rapid.Float64Range(0.22, 0.30).Draw(t, "grip x"),
		Y: w.stature * rapid.Float64Range(0.36, 0.46).Draw(t, "grip y"),
	}
}

// TestReadyAgreesWithAnIndependentSolve finds every joint anew from raw distances
// and directions, the elbow in three dimensions, with gonum's linear solver in
// Newton's steps. It knows neither the curve nor the closed forms under test.
func TestReadyAgreesWithAnIndependentSolve(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, stance := standers().Draw(t, "rider"), stances().Draw(t, "stance")
		grip := gripFor(t, w)
		r, err := w.standing(t, stance).Ready(grip)
		if err != nil || r.Slack < 3 || r.Front.KneeBend < 3 || r.Rear.KneeBend < 3 {
			t.Skip("out of reach, or too straight for difference quotients")
		}
		again := solveRaw(t, w, stance, grip, r)
		near(t, "hip x", r.Hip.X, again[0], 1e-6)
		near(t, "hip y", r.Hip.Y, again[1], 1e-6)
		near(t, "front knee x", r.Front.Knee.X, again[2], 1e-6)
		near(t, "rear knee y", r.Rear.Knee.Y, again[5], 1e-6)
		near(t, "shoulder y", r.Trunk.Shoulder.Y, again[7], 1e-6)
		near(t, "elbow x", r.Elbow.X, again[8], 1e-6)
		near(t, "elbow y", r.Elbow.Y, again[9], 1e-6)
		leg, upper := w.whole(t)
		_ = leg
		s3 := [3]float64{again[6], again[7], 0}
		g3 := [3]float64{grip.X, grip.Y, upper.Arm.Aside}
		e3 := [3]float64{again[8], again[9], again[10]}
		near(t, "elbow bend", r.ElbowBend, 180-angleAt(e3, s3, g3), 1e-5)
	})
}

// angleAt is the angle at a between b and c, degrees.
func angleAt(a, b, c [3]float64) float64 {
	dot, p, q := 0.0, 0.0, 0.0
	for i := range 3 {
		dot += (b[i] - a[i]) * (c[i] - a[i])
		p += (b[i] - a[i]) * (b[i] - a[i])
		q += (c[i] - a[i]) * (c[i] - a[i])
	}
	return math.Acos(dot/math.Sqrt(p*q)) * 180 / math.Pi
}

// solveRaw solves eleven unknowns: hip, both knees and shoulder in the plane and
// the elbow in space. It starts a little away from the answer, because the same
// distances are met by mirror images, such as a knee bent backwards.
func solveRaw(t rapid.TB, w who, stance posture.Stance, grip geometry.Point, r posture.Ready) []float64 {
	t.Helper()
	leg, upper := w.whole(t)
	a := upper.Arm
	start := []float64{r.Hip.X + 3, r.Hip.Y - 2, r.Front.Knee.X + 4, r.Front.Knee.Y + 1, r.Rear.Knee.X + 3,
		r.Rear.Knee.Y - 2,
		r.Trunk.Shoulder.X + 2, r.Trunk.Shoulder.Y + 2, r.Elbow.X - 2, r.Elbow.Y - 3, a.Aside / 2}
	front, rear := ankleRaw(leg, 170, stance.FrontHeel), ankleRaw(leg, -170, stance.RearHeel)
	f := func(x []float64) []float64 {
		hip, frontKnee, rearKnee := [2]float64{x[0], x[1]}, [2]float64{x[2], x[3]}, [2]float64{x[4], x[5]}
		shoulder := [2]float64{x[6], x[7]}
		sin, cos := math.Sincos(stance.Trunk * math.Pi / 180)
		// Across the plane that holds the arm's line and the way straight down from it
		// in the bike's own plane: the elbow hangs in it.
		along := [3]float64{grip.X - shoulder[0], grip.Y - shoulder[1], a.Aside}
		down := [3]float64{along[1], -along[0], 0}
		elbow := [3]float64{x[8] - shoulder[0], x[9] - shoulder[1], x[10]}
		bend := func(knee, ankle [2]float64) float64 {
			return 180 - angleAt([3]float64{knee[0], knee[1]}, [3]float64{hip[0], hip[1]}, [3]float64{ankle[0],
				ankle[1]})
		}
		return []float64{
			apart(hip, frontKnee) - leg.Thigh, apart(frontKnee, front) - leg.Shank,
			apart(hip, rearKnee) - leg.Thigh, apart(rearKnee, rear) - leg.Shank,
			shoulder[0] - hip[0] - upper.Trunk*cos, shoulder[1] - hip[1] - upper.Trunk*sin,
			math.Sqrt(elbow[0]*elbow[0]+elbow[1]*elbow[1]+elbow[2]*elbow[2]) - a.Upper,
			math.Sqrt(math.Pow(along[0]-elbow[0], 2)+math.Pow(along[1]-elbow[1], 2)+math.Pow(along[2]-elbow[2],
				2)) - a.Fore,
			triple(along, down, elbow) / 1e6,
			(bend(frontKnee, front)+bend(rearKnee, rear))/2 - stance.Knee,
			plumbRaw(w, leg, stance, x, grip, front, rear),
		}
	}
	return newtonRaw(t, start, f)
}

func apart(p, q [2]float64) float64 { return math.Hypot(p[0]-q[0], p[1]-q[1]) }

func triple(a, b, c [3]float64) float64 {
	return a[0]*(b[1]*c[2]-b[2]*c[1]) + a[1]*(b[2]*c[0]-b[0]*c[2]) + a[2]*(b[0]*c[1]-b[1]*c[0])
}

// ankleRaw turns the foot about the spindle by a matrix.
func ankleRaw(leg body.Leg, spindle, heelUp float64) [2]float64 {
	behind := leg.HeelToBall - 20 - 0.22*leg.FootLength
	above := leg.Malleolus + 12 + 10
	turn := mat.NewDense(2, 2, nil)
	sin, cos := math.Sincos(-heelUp * math.Pi / 180)
	turn.SetRow(0, []float64{cos, -sin})
	turn.SetRow(1, []float64{sin, cos})
	var v mat.VecDense
	v.MulVec(turn, mat.NewVecDense(2, []float64{-behind, above}))
	return [2]float64{spindle + v.AtVec(0), v.AtVec(1)}
}

// plumbRaw returns how far the centre of mass lies ahead of plumb over the bottom
// bracket, from de Leva's table by hand.
func plumbRaw(w who, leg body.Leg, stance posture.Stance, x []float64, grip geometry.Point, front,
	rear [2]float64) float64 {
	mass, sumX, sumY := 0.0, 0.0, 0.0
	add := func(p body.SegmentPair, count float64, a, b [2]float64) {
		g := p.Of(w.sex)
		m := count * g.Mass
		mass += m
		sumX += m * (a[0] + g.Centre*(b[0]-a[0]))
		sumY += m * (a[1] + g.Centre*(b[1]-a[1]))
	}
	hip, shoulder, elbow := [2]float64{x[0], x[1]}, [2]float64{x[6], x[7]}, [2]float64{x[8], x[9]}
	hand := [2]float64{grip.X, grip.Y}
	trunk := math.Atan2(shoulder[1]-hip[1], shoulder[0]-hip[0])
	lean := math.Pi/2 - (math.Pi/2-trunk)/2
	neckHeight, _ := body.NeckHeight.FromStature(w.stature, w.sex)
	shoulderHeight, _ := body.ShoulderHeight.FromStature(w.stature, w.sex)
	root := neckHeight.Value - shoulderHeight.Value
	neck := [2]float64{shoulder[0] + root*math.Cos(trunk), shoulder[1] + root*math.Sin(trunk)}
	vertex := [2]float64{neck[0] + (w.stature-neckHeight.Value)*math.Cos(lean),
		neck[1] + (w.stature-neckHeight.Value)*math.Sin(lean)}
	wrist := [2]float64{elbow[0] + 0.82*(hand[0]-elbow[0]), elbow[1] + 0.82*(hand[1]-elbow[1])}
	add(body.HeadFromNeck, 1, vertex, neck)
	add(body.TrunkFromShoulders, 1, shoulder, hip)
	add(body.UpperArmMass, 2, shoulder, elbow)
	add(body.ForearmMass, 2, elbow, wrist)
	add(body.HandMass, 2, hand, hand)
	add(body.ThighMass, 1, hip, [2]float64{x[2], x[3]})
	add(body.ThighMass, 1, hip, [2]float64{x[4], x[5]})
	add(body.ShankMass, 1, [2]float64{x[2], x[3]}, front)
	add(body.ShankMass, 1, [2]float64{x[4], x[5]}, rear)
	for _, f := range [2][2]float64{{170, stance.FrontHeel}, {-170, stance.RearHeel}} {
		sin, cos := math.Sincos(f[1] * math.Pi / 180)
		mark := func(ahead float64) [2]float64 {
			return [2]float64{f[0] + ahead*cos + 22*sin, -ahead*sin + 22*cos}
		}
		add(body.FootMass, 1, mark(-(leg.HeelToBall - 20)), mark(leg.FootLength-(leg.HeelToBall-20)))
	}
	sin, cos := math.Sincos(stance.Slope * math.Pi / 180)
	return (sumX*cos - sumY*sin) / mass
}

// newtonRaw solves f = 0 with difference quotients and gonum's linear solver.
func newtonRaw(t rapid.TB, x []float64, f func([]float64) []float64) []float64 {
	t.Helper()
	n := len(x)
	for range 60 {
		value := f(x)
		if mat.Norm(mat.NewVecDense(n, value), 2) < 1e-9 {
			return x
		}
		slope := mat.NewDense(n, n, nil)
		for j := range n {
			const step = 1e-4
			keep := x[j]
			x[j] = keep + step
			up := f(x)
			x[j] = keep - step
			down := f(x)
			x[j] = keep
			for i := range n {
				slope.Set(i, j, (up[i]-down[i])/(2*step))
			}
		}
		var move mat.VecDense
		if err := move.SolveVec(slope, mat.NewVecDense(n, value)); err != nil {
			t.Fatalf("linear solve: %v", err)
		}
		for i := range n {
			x[i] -= move.AtVec(i)
		}
	}
	t.Fatal("no independent answer")
	return nil
}

// The quick sum inside the solver is the one that the rest of the package uses.
func TestReadyBalancesByTheWholeBodysCentre(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, stance := standers().Draw(t, "rider"), stances().Draw(t, "stance")
		grip := gripFor(t, w)
		r, err := w.standing(t, stance).Ready(grip)
		if err != nil {
			t.Skip("no pose")
		}
		centre, ok := posture.Joints{
			Vertex: r.Head.Vertex, Neck: r.Head.Neck, Shoulder: r.Trunk.Shoulder, Hip: r.Hip,
			Elbow: r.Elbow, Wrist: posture.Wrist(r.Elbow, r.Hand), Grip: r.Hand,
			FrontLimb: r.Front.Limb(w.sex), RearLimb: r.Rear.Limb(w.sex),
		}.CentreOfMass(w.sex)
		if !ok {
			t.Fatal("no centre")
		}
		near(t, "centre x", r.Centre.X, centre.X, 1e-6)
		near(t, "centre y", r.Centre.Y, centre.Y, 1e-6)
		if alone, err := w.standing(t, stance).CentreOfMass(grip); err != nil || alone != r.Centre {
			t.Fatalf("asked for alone the centre is %v, %v", alone, err)
		}
		sin, cos := math.Sincos(stance.Slope * math.Pi / 180)
		near(t, "plumb", centre.X*cos-centre.Y*sin, 0, 1e-6)
		near(t, "knees", (r.Front.KneeBend+r.Rear.KneeBend)/2, stance.Knee, 1e-6)
		near(t, "trunk", r.Trunk.Angle, stance.Trunk, 1e-9)
	})
}

// The trunk that TrunkAt finds leaves the elbow that was asked for.
func TestTheTrunkAtAnElbowLeavesThatElbow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, stance := standers().Draw(t, "rider"), stances().Draw(t, "stance")
		grip, elbow := gripFor(t, w), rapid.Float64Range(5, 100).Draw(t, "elbow")
		trunk, err := w.standing(t, stance).TrunkAt(grip, elbow)
		if err != nil {
			t.Skip("no pose")
		}
		stance.Trunk = trunk
		if stance.Trunk < -85 {
			t.Skip("head down: no stance")
		}
		again, err := w.standing(t, stance).Ready(grip)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "elbow at that trunk", again.ElbowBend, elbow, 1e-4)
	})
}

// In the last millimetre before an arm is straight its elbow swings so fast that the arms'
// mass may go forward while the hips go back.
func TestRoomEndsWhereItSays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, stance := standers().Draw(t, "rider"), stances().Draw(t, "stance")
		grip := gripFor(t, w)
		s := w.standing(t, stance)
		r, err := s.Ready(grip)
		if err != nil {
			t.Skip("no pose")
		}
		back, ok := s.RoomBack(&r.Balanced, grip)
		if ok && r.Slack > 1 && back.Length <= 0 {
			t.Fatalf("slack %v, room back %+v", r.Slack, back)
		}
		if ok && r.Slack < -1e-6 && (back.Length >= 0 || back.Limit != posture.ArmsStraight) {
			t.Fatalf("slack %v, room back %+v", r.Slack, back)
		}
		forward, ok := s.RoomForward(&r.Balanced, grip)
		if ok && (forward.Length > 0) != (r.ElbowBend < posture.FoldedElbow &&
			r.Trunk.Shoulder.Sub(grip).Dot(geometry.Point{X: math.Cos(stance.Slope * math.Pi / 180),
				Y: -math.Sin(stance.Slope * math.Pi / 180)}) < 0) &&
			math.Abs(forward.Length) > 1e-6 {
			t.Fatalf("elbow %v, room forward %+v", r.ElbowBend, forward)
		}
	})
}

// A lower trunk bends the elbows more, and grips further along the arm less.
func TestReadyAnswersInTheRightDirection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, stance := standers().Draw(t, "rider"), posture.ReadyStance
		stance.Trunk = rapid.Float64Range(30, 60).Draw(t, "trunk")
		grip := gripFor(t, w)
		r, err := w.standing(t, stance).Ready(grip)
		if err != nil || !r.Reaches() {
			t.Skip("no pose")
		}
		low := stance
		low.Trunk--
		if l, err := w.standing(t, low).Ready(grip); err != nil || l.ElbowBend < r.ElbowBend-1e-9 {
			t.Fatalf("a lower trunk: %v after %v, %v", l.ElbowBend, r.ElbowBend, err)
		}
		away := grip.Sub(r.Trunk.Shoulder).Scale(5 / grip.Distance(r.Trunk.Shoulder))
		if f, err := w.standing(t, stance).Ready(grip.Add(away)); err != nil || f.ElbowBend > r.ElbowBend+1e-9 {
			t.Fatalf("grips further away: %v after %v, %v", f.ElbowBend, r.ElbowBend, err)
		}
		// With grips wider than the shoulders and their place held, a wider bar
		// never bends the elbow more.
		wide := w
		wide.spacing += 20
		if _, upper := w.whole(t); upper.Arm.Aside > 0 {
			if f, err := wide.standing(t, stance).Ready(grip); err != nil || f.ElbowBend > r.ElbowBend+1e-9 {
				t.Fatalf("a wider bar: %v after %v, %v", f.ElbowBend, r.ElbowBend, err)
			}
		}
	})
}

// Left and right are alike: an offset of the grips to the other side of the
// shoulder bends the elbow the same.
func TestTheArmIsMirrored(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := posture.Arm{Upper: rapid.Float64Range(200, 400).Draw(t, "upper"), Fore: rapid.Float64Range(200,
			400).Draw(t, "fore"), Aside: rapid.Float64Range(-200, 200).Draw(t, "aside")}
		b := a
		b.Aside = -a.Aside
		chord := rapid.Float64Range(0, 800).Draw(t, "chord")
		p, ok := a.Bend(chord)
		q, fine := b.Bend(chord)
		if ok != fine || p != q {
			t.Fatalf("%v %v, mirrored %v %v", p, ok, q, fine)
		}
	})
}

func TestWhatCannotStandSaysWhy(t *testing.T) {
	s := reference.standing(t, posture.ReadyStance)
	far, err := s.Ready(geometry.Point{X: 640, Y: 600})
	if err != nil || far.Reaches() || far.ElbowBend != 0 {
		t.Errorf("grips far away: %+v, %v", far.Slack, err)
	}
	straight, _ := s.RoomBack(&far.Balanced, geometry.Point{X: 640, Y: 600})
	if straight.Length >= 0 {
		t.Errorf("room back with straight arms: %+v", straight)
	}
	if _, err := s.TrunkAt(geometry.Point{X: 3000, Y: 600}, 60); err != posture.ArmsCannot {
		t.Errorf("got %v", err)
	}
	steep := posture.ReadyStance
	steep.Slope, steep.Knee = -60, 15
	if _, err := reference.standing(t, steep).Ready(referenceGrip); err != posture.TooFarBack {
		t.Errorf("a wall: got %v", err)
	}
	if _, err := (posture.Standing{}).Ready(referenceGrip); err != posture.NoRider {
		t.Errorf("got %v", err)
	}
	if _, ok := posture.NewStanding(body.Leg{}, flat, posture.Upper{}, posture.ReadyStance); ok {
		t.Error("a rider without a leg stands")
	}
}

func BenchmarkReady(b *testing.B) {
	s := reference.standing(b, posture.ReadyStance)
	r, _ := s.Ready(referenceGrip)
	for name, f := range map[string]func(){
		"ready": func() { s.Ready(referenceGrip) },
		"trunk": func() { s.TrunkAt(referenceGrip, 60) },
		"rooms": func() { s.RoomBack(&r.Balanced, referenceGrip); s.RoomForward(&r.Balanced, referenceGrip) },
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				f()
			}
		})
	}
}

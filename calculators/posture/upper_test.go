package posture_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

// arms draws an arm and how far its grip lies outside the shoulder.
func arms() *rapid.Generator[posture.Arm] {
	return rapid.Custom(func(t *rapid.T) posture.Arm {
		within := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		return posture.Arm{Upper: within("upper", 240, 420), Fore: within("fore", 240, 420),
			Aside: within("aside", -60, 250)}
	})
}

// The elbow's angle from raw lengths in three dimensions: shoulder, elbow and
// grip are placed as points and their distances solved for.
func TestArmSpansThreeDimensions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := arms().Draw(t, "arm")
		bend := rapid.Float64Range(0, 130).Draw(t, "bend")
		chord, ok := a.Chord(bend)
		if !ok {
			t.Skip("such an arm does not span the grips")
		}
		// Upper arm along x; the forearm turned by the bend in the plane.
		grip := geometry.Point{X: a.Upper + a.Fore*math.Cos(bend*math.Pi/180), Y: a.Fore * math.Sin(bend*math.Pi/180)}
		near(t, "shoulder to grip", math.Sqrt(chord*chord+a.Aside*a.Aside), grip.Length(), 1e-9)
		back, ok := a.Bend(chord)
		if !ok {
			t.Fatal("no bend")
		}
		near(t, "bend", back, bend, 1e-5)
		wide := a
		wide.Aside = -a.Aside
		same, _ := wide.Chord(bend)
		near(t, "inside or outside the shoulder", same, chord, 1e-12)
		slack, ok := a.Slack(chord)
		if !ok || slack < 0 {
			t.Fatalf("a bent arm has slack: %v, %v", slack, ok)
		}
	})
}

func TestArmOutOfReachIsReported(t *testing.T) {
	a := posture.Arm{Upper: 330, Fore: 345, Aside: 100}
	straight, _ := a.Chord(0)
	if bend, ok := a.Bend(straight + 1); ok {
		t.Errorf("a straight arm bends %v beyond its reach", bend)
	}
	if slack, ok := a.Slack(straight + 12); !ok || math.Abs(slack+12) > 1e-9 {
		t.Errorf("12 mm short: %v, %v", slack, ok)
	}
	for _, bend := range []float64{-1, 181, math.NaN()} {
		if _, ok := a.Chord(bend); ok {
			t.Errorf("a chord at a bend of %v", bend)
		}
	}
	if _, ok := (posture.Arm{Upper: 300, Fore: 300, Aside: 700}).Chord(0); ok {
		t.Error("grips wider than the arm is long")
	}
	if _, ok := (posture.Arm{}).Bend(0); ok {
		t.Error("no arm bends")
	}
}

// Shoulder and trunk angle against the raw distances, and the forearm below.
func TestTrunkReachesTheGrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		within := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		a := arms().Draw(t, "arm")
		hip := geometry.Point{X: within("hip x", -300, -100), Y: within("hip y", 600, 850)}
		grip := geometry.Point{X: within("grip x", 350, 650), Y: within("grip y", 600, 900)}
		length := within("trunk", 380, 680)
		chord, ok := a.Chord(within("bend", 0, 60))
		if !ok {
			t.Skip("no span")
		}
		trunk, ok := posture.SolveTrunk(hip, grip, length, chord)
		if !ok {
			if chord+length > hip.Distance(grip)+1e-6 && math.Abs(chord-length) < hip.Distance(grip)-1e-6 {
				t.Fatal("a triangle that closes was refused")
			}
			t.Skip("out of reach")
		}
		near(t, "trunk", trunk.Shoulder.Distance(hip), length, 1e-6)
		near(t, "arm", trunk.Shoulder.Distance(grip), chord, 1e-6)
		near(t, "angle", trunkAt(hip, length, trunk.Angle).Shoulder.Distance(trunk.Shoulder), 0, 1e-9)
		if grip.Sub(hip).Cross(trunk.Shoulder.Sub(hip)) < 0 {
			t.Fatal("the rider hangs below the bike")
		}
		shoulder, ok := trunk.ShoulderAngle(hip, grip)
		if !ok {
			t.Fatal("no shoulder angle")
		}
		near(t, "shoulder angle", length*length+chord*chord-2*length*chord*math.Cos(shoulder*math.Pi/180),
			math.Pow(hip.Distance(grip), 2), 1e-3)
		elbow, ok := a.Elbow(trunk.Shoulder, grip)
		if !ok {
			t.Fatal("no elbow")
		}
		if grip.Sub(trunk.Shoulder).Cross(elbow.Sub(trunk.Shoulder)) > 1e-6 {
			t.Fatal("the elbow points up")
		}
		if a.Aside == 0 {
			near(t, "upper arm", elbow.Distance(trunk.Shoulder), a.Upper, 1e-6)
		}
	})
}

func TestLowerBarsBringTheTrunkDown(t *testing.T) {
	arm := posture.Arm{Upper: 335, Fore: 349, Aside: 120}
	chord, _ := arm.Chord(30)
	hip := geometry.Point{X: -200, Y: 760}
	last := math.Inf(1)
	for height := 900.0; height >= 600; height -= 10 {
		trunk, ok := posture.SolveTrunk(hip, geometry.Point{X: 480, Y: height}, 540, chord)
		if !ok || trunk.Angle >= last {
			t.Fatalf("bars at %v: trunk %v after %v, %v", height, trunk.Angle, last, ok)
		}
		last = trunk.Angle
	}
}

func TestElbowInThePlaneHasItsTrueLengths(t *testing.T) {
	a := posture.Arm{Upper: 330, Fore: 345}
	shoulder, grip := geometry.Point{X: 30, Y: 1200}, geometry.Point{X: 470, Y: 720}
	elbow, ok := a.Elbow(shoulder, grip)
	if !ok {
		t.Fatal("no elbow")
	}
	near(t, "upper arm", elbow.Distance(shoulder), a.Upper, 1e-9)
	near(t, "forearm", elbow.Distance(grip), a.Fore, 1e-9)
}

// trunkAt is the trunk that leans at an angle above the horizontal.
func trunkAt(hip geometry.Point, length, angle float64) posture.Trunk {
	return posture.Trunk{Shoulder: hip.Add(geometry.Polar(length, angle)), Angle: angle}
}

func TestHeadStandsOnTheTrunk(t *testing.T) {
	hip := geometry.Point{X: -200, Y: 760}
	for angle := 10.0; angle <= 90; angle += 10 {
		trunk := trunkAt(hip, 540, angle)
		head, ok := posture.HeadOn(trunk, 1756, body.Male)
		if !ok {
			t.Fatal("no head")
		}
		if head.Vertex.Y <= head.Neck.Y || head.Neck.Y <= trunk.Shoulder.Y {
			t.Errorf("trunk %v: shoulder %v, neck %v, vertex %v", angle, trunk.Shoulder, head.Neck, head.Vertex)
		}
		near(t, "circle touches the vertex", head.Centre.Distance(head.Vertex), head.Radius, 1e-9)
	}
	// Sitting upright, hip to crown is trunk, neck and head of the survey.
	upright, _ := posture.HeadOn(trunkAt(hip, 540, 90), 1756, body.Male)
	near(t, "hip to crown", upright.Vertex.Y-hip.Y, 540+(1756-1440.5), 1)
	if _, ok := posture.HeadOn(trunkAt(hip, 540, 60), 0, body.Male); ok {
		t.Error("a head without a stature")
	}
}

// The published seated rider's joints, legs apart: a whole body is the same
// whichever leg is called the front one.
func TestCentreOfMassDoesNotCareWhichLegLeads(t *testing.T) {
	s := man(t, 846, nil)
	front, _ := s.At(s.Neutral(), 90)
	rear, _ := s.At(s.Neutral(), 270)
	trunk := trunkAt(front.Hip, 540, 60)
	head, _ := posture.HeadOn(trunk, 1756, body.Male)
	grip := geometry.Point{X: 450, Y: 760}
	elbow := geometry.Point{X: 330, Y: 950}
	for _, sex := range []body.Sex{body.Unknown, body.Female, body.Male} {
		j := posture.Joints{
			Vertex: head.Vertex, Neck: head.Neck, Shoulder: trunk.Shoulder, Hip: front.Hip,
			Elbow: elbow, Wrist: posture.Wrist(elbow, grip), Grip: grip,
			FrontLimb: front.Limb(sex), RearLimb: rear.Limb(sex),
		}
		a, ok := j.CentreOfMass(sex)
		j.FrontLimb, j.RearLimb = j.RearLimb, j.FrontLimb
		b, fine := j.CentreOfMass(sex)
		if !ok || !fine {
			t.Fatal("no centre")
		}
		near(t, "either leg first", a.Distance(b), 0, 1e-9)
		// The whole body moves as one with its joints.
		by := geometry.Point{X: 100, Y: -50}
		for _, p := range []*geometry.Point{&j.Vertex, &j.Neck, &j.Shoulder, &j.Hip, &j.Elbow, &j.Wrist, &j.Grip,
			&j.FrontLimb.Knee, &j.FrontLimb.Ankle, &j.FrontLimb.Foot, &j.RearLimb.Knee, &j.RearLimb.Ankle,
			&j.RearLimb.Foot} {
			*p = p.Add(by)
		}
		moved, _ := j.CentreOfMass(sex)
		near(t, "moved as one", moved.Sub(b).Distance(by), 0, 1e-9)
		if !(a.Y > front.Hip.Y && a.Y < trunk.Shoulder.Y && a.X > front.Hip.X && a.X < grip.X) {
			t.Errorf("centre at %v", a)
		}
	}
	if _, ok := (posture.Joints{Hip: geometry.Point{X: math.NaN()}}).CentreOfMass(body.Male); ok {
		t.Error("a centre without joints")
	}
}

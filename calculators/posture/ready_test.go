package posture_test

import (
	"math"
	"testing"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

// rider returns the test rider of the guide's scenario, or one like it of another
// stature, standing on flat pedals.
func rider(t testing.TB, stature, inseam float64, sex body.Sex, stance posture.Stance) (posture.Standing, posture.Upper, body.Leg) {
	t.Helper()
	leg, _, ok := body.NewLeg(body.Measured{Inseam: inseam, Stature: stature}, sex)
	if !ok {
		t.Fatal("no leg")
	}
	trunk, _ := body.Trunk.FromStature(stature, sex)
	arm, _ := body.ArmFromStature(stature, sex)
	shoulders, _ := body.ShoulderWidth.FromStature(stature, sex)
	share := body.UpperArmShare(sex)
	upper := posture.Upper{Trunk: trunk.Value, Stature: stature, Sex: sex, Arm: posture.Arm{
		Upper: share * arm.Value, Fore: (1 - share) * arm.Value, Aside: (650 - body.ShoulderJointSpacing(shoulders.Value)) / 2}}
	s, ok := posture.NewStanding(leg, flat, upper, stance)
	if !ok {
		t.Fatal("no rider")
	}
	return s, upper, leg
}

var flat = posture.Setup{Crank: 170, PedalHeight: 10, SoleHeight: 12, CleatBehindBall: posture.StandingCleat}

// testGrip is where the scenario's test bike has its grips, nobody on it.
var testGrip = geometry.Point{X: 442, Y: 715}

func TestZZ(t *testing.T) {
	for _, sex := range []body.Sex{body.Unknown, body.Female, body.Male} {
		s, _, _ := rider(t, 1740, 830, sex, posture.ReadyStance)
		r, err := s.Ready(testGrip)
		if err != nil {
			t.Fatal(err)
		}
		q, err := s.ReadyAt(testGrip, 60)
		b, ok1 := s.RoomBack(r, testGrip)
		f, ok2 := s.RoomForward(r, testGrip)
		t.Logf("%v hip %+v elbow %.2f slack %.1f com %+v knees %.1f %.1f at60 %.2f %v back %+v %v fwd %+v %v", sex, r.Hip, r.ElbowBend, r.Slack, r.Centre, r.Front.KneeBend, r.Rear.KneeBend, q.Trunk.Angle, err, b, ok1, f, ok2)
		e := func(st posture.Stance, g geometry.Point) float64 {
			s, _, _ := rider(t, 1740, 830, sex, st)
			r, _ := s.Ready(g)
			return r.ElbowBend - math.Abs(0)
		}
		st := posture.ReadyStance
		st.Trunk -= 5
		t.Logf("trunk-5 %.2f reach+20 %.2f bar+20 %.2f stem+10 %.2f", e(st, testGrip)-r.ElbowBend, e(posture.ReadyStance, geometry.Point{X: 462, Y: 715})-r.ElbowBend,
			e(posture.ReadyStance, geometry.Point{X: 442, Y: 735})-r.ElbowBend, e(posture.ReadyStance, geometry.Point{X: 451.1, Y: 719.1})-r.ElbowBend)
	}
}

func BenchmarkReady(b *testing.B) {
	s, _, _ := rider(b, 1740, 830, body.Male, posture.ReadyStance)
	b.Run("ready", func(b *testing.B) {
		for b.Loop() {
			s.Ready(testGrip)
		}
	})
	b.Run("at", func(b *testing.B) {
		for b.Loop() {
			s.ReadyAt(testGrip, 60)
		}
	})
	r, _ := s.Ready(testGrip)
	b.Run("rooms", func(b *testing.B) {
		for b.Loop() {
			s.RoomBack(r, testGrip)
			s.RoomForward(r, testGrip)
		}
	})
}

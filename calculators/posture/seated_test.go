package posture_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/body"
	"plumbline/calculators/posture"
)

// regression is the saddle height, spindle to top, of Ferrer-Roca et al. 2012.
func regression(inseam, knee float64) float64 { return 221 + 0.896*inseam - 1.5*knee }

// man returns a man of an inside leg on the calibration's set-up, changed by the
// caller.
func man(t testing.TB, inseam float64, change func(*posture.Setup)) posture.Seated {
	t.Helper()
	leg, _, ok := body.NewLeg(body.Measured{Inseam: inseam}, body.Male)
	if !ok {
		t.Fatal("no leg")
	}
	setup := posture.Setup{Crank: 170, PedalHeight: 15, SoleHeight: 15, SeatAngle: 73.5}
	if change != nil {
		change(&setup)
	}
	s, ok := posture.NewSeated(leg, setup)
	if !ok {
		t.Fatal("no seated rider")
	}
	return s
}

func bottom(t testing.TB, s posture.Seated, height float64) posture.LegPose {
	t.Helper()
	p, ok := s.AtBottom(height)
	if !ok {
		t.Fatalf("not reachable at %v mm", height)
	}
	return p
}

// Demand (a) of the calibration.
func TestTheReferenceRiderHasTheRegressionsKnee(t *testing.T) {
	s := man(t, 846, nil)
	knee := bottom(t, s, regression(846, 35)-170).KneeBend
	t.Logf("knee at the regression's height for 35 degrees: %.3f", knee)
	near(t, "knee", knee, 35.0, 0.1)
}

// Demand (b): Ferrer-Roca et al. 2014, -2 % to +2 % of saddle height.
func TestFourPercentOfHeightGivesWhatRidersGive(t *testing.T) {
	s := man(t, 846, nil)
	spindle := s.Neutral() + 170
	low, high := bottom(t, s, 0.98*spindle-170), bottom(t, s, 1.02*spindle-170)
	knee, hip, ankle := low.KneeBend-high.KneeBend, high.ThighDip-low.ThighDip, high.AnkleAngle-low.AnkleAngle
	t.Logf("extension over 4 %%: knee %.2f, hip %.2f, ankle %.2f degrees", knee, hip, ankle)
	near(t, "knee", knee, 7, 1)
	near(t, "hip", hip, 4, 1)
	near(t, "ankle", ankle, 8, 1)
}

// What the model does not claim, measured and printed so that nobody claims it:
// the regression's slope lies between riders, so one rider's knee moves less; and
// riders of other inside legs do not get the regression's angle.
func TestWhatTheCalibrationDoesNotClaim(t *testing.T) {
	s := man(t, 846, nil)
	for _, knee := range []float64{30, 40} {
		got := bottom(t, s, regression(846, knee)-170).KneeBend
		t.Logf("inside leg 846 at the regression's height for %v degrees: %.1f", knee, got)
		near(t, "pulled towards 35", got, 35+(knee-35)*0.28, 0.15)
	}
	for _, inseam := range []float64{720, 960} {
		got := bottom(t, man(t, inseam, nil), regression(inseam, 35)-170).KneeBend
		t.Logf("inside leg %v at the regression's height for 35 degrees: %.1f", inseam, got)
		if (inseam < 846) != (got < 35) {
			t.Errorf("inside leg %v: %v degrees", inseam, got)
		}
		near(t, "knee", got, 35, 3)
	}
}

func TestWhatAChangeCostsAtTheSaddle(t *testing.T) {
	clip := man(t, 846, nil)
	cost := func(change func(*posture.Setup)) float64 { return man(t, 846, change).Neutral() - clip.Neutral() }
	cleat := cost(func(s *posture.Setup) { s.CleatBehindBall = 10 })
	flat := cost(func(s *posture.Setup) { s.PedalHeight, s.SoleHeight, s.CleatBehindBall = 10, 12, 20 })
	crank := cost(func(s *posture.Setup) { s.Crank = 165 })
	t.Logf("10 mm cleat back %.2f mm, flat pedals %.2f mm, 5 mm shorter crank %.2f mm", cleat, flat, crank)
	near(t, "10 mm cleat back", cleat, -4, 0.5)
	near(t, "flat pedals", flat, -16, 0.5)
	near(t, "5 mm shorter crank", crank, 5.0, 1e-9)
	perDegree := func(knee float64) float64 {
		a, _ := clip.HeightFor(knee)
		b, _ := clip.HeightFor(knee + 1)
		return a - b
	}
	t.Logf("a degree of knee is worth %.2f mm at 34 to 35", perDegree(34))
	near(t, "mm a degree", perDegree(34), 5, 0.6)
}

// The neutral height against a search that only looks at the leg's poses.
func TestNeutralHeightBendsTheKneeBy35(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		p, ok := s.AtBottom(s.Neutral())
		if !ok {
			t.Fatal("not reachable")
		}
		near(t, "knee", p.KneeBend, posture.NeutralKnee, 1e-9)
		seat := (p.Hip.Y - posture.HipHeight) / p.Hip.X
		near(t, "hip above the saddle", seat, -math.Tan(s.Setup().SeatAngle*math.Pi/180), 1e-9)
		// The crank lies in line with the seat line, away from the saddle.
		near(t, "bottom", p.Spindle.Cross(s.Saddle(1)), 0, 1e-9)
		if p.Spindle.Dot(s.Saddle(1)) > 0 {
			t.Fatal("the bottom is at the top")
		}
	})
}

func TestHeightForIsTheWayBackFromTheKnee(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		knee := rapid.Float64Range(1, 100).Draw(t, "knee")
		height, ok := s.HeightFor(knee)
		if !ok {
			t.Fatal("no height")
		}
		p, ok := s.AtBottom(height)
		if !ok {
			t.Fatal("not reachable")
		}
		near(t, "knee", p.KneeBend, knee, 1e-6)
	})
}

func TestKneeStraightensAsTheSaddleRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := riders().Draw(t, "rider")
		top, _ := s.HeightFor(1)
		last := math.Inf(1)
		for height := 0.7 * s.Neutral(); height < top; height += 2 {
			p, ok := s.AtBottom(height)
			if !ok {
				t.Fatalf("not reachable at %v of %v", height, top)
			}
			if p.KneeBend >= last {
				t.Fatalf("knee %v after %v at %v mm", p.KneeBend, last, height)
			}
			last = p.KneeBend
		}
	})
}

func TestGivesAreHeldBeyondFivePercent(t *testing.T) {
	s := man(t, 846, nil)
	limit := 0.05 * (s.Neutral() + 170)
	offset := func(height float64) [2]float64 {
		d := s.Hip(height).Sub(s.Saddle(height))
		return [2]float64{d.X, d.Y}
	}
	for _, side := range []float64{-1, 1} {
		edge, beyond := offset(s.Neutral()+side*limit), offset(s.Neutral()+side*(limit+80))
		near(t, "hip over saddle, x", beyond[0], edge[0], 1e-9)
		near(t, "hip over saddle, y", beyond[1], edge[1], 1e-9)
		heel := s.Chain(s.Neutral()+side*200).Ankling.Mean - posture.HeelMean
		near(t, "heel", heel, side*5*posture.HeelGive, 1e-9)
	}
	near(t, "no give at neutral", offset(s.Neutral())[1], posture.HipHeight, 1e-9)
}

func TestStaticReadingIsLess(t *testing.T) {
	near(t, "35 while pedalling", posture.StaticKnee(35), 30, 0)
	near(t, "nearly straight", posture.StaticKnee(2), 0, 0)
}

func TestSeatedNeedsALegAndASetup(t *testing.T) {
	leg, _, _ := body.NewLeg(body.Measured{Inseam: 846}, body.Male)
	good := posture.Setup{Crank: 170, PedalHeight: 15, SoleHeight: 15, SeatAngle: 73.5}
	for name, spoil := range map[string]func(*posture.Setup){
		"no crank":        func(s *posture.Setup) { s.Crank = 0 },
		"endless crank":   func(s *posture.Setup) { s.Crank = math.Inf(1) },
		"no number":       func(s *posture.Setup) { s.SoleHeight = math.NaN() },
		"flat seat line":  func(s *posture.Setup) { s.SeatAngle = 0 },
		"crank of metres": func(s *posture.Setup) { s.CleatBehindBall = 5000 },
	} {
		setup := good
		spoil(&setup)
		if _, ok := posture.NewSeated(leg, setup); ok {
			t.Errorf("%s: seated all the same", name)
		}
	}
	if _, ok := posture.NewSeated(body.Leg{}, good); ok {
		t.Error("seated without a leg")
	}
	if _, ok := (posture.Seated{}).HeightFor(35); ok {
		t.Error("a height without a rider")
	}
}

func BenchmarkNeutral(b *testing.B) {
	s := man(b, 846, nil)
	for b.Loop() {
		posture.NewSeated(s.Leg(), s.Setup())
	}
}

func BenchmarkHeightForKnee(b *testing.B) {
	s := man(b, 846, nil)
	for b.Loop() {
		s.HeightFor(31)
	}
}

func BenchmarkPose(b *testing.B) {
	s := man(b, 846, nil)
	for b.Loop() {
		s.AtBottom(740)
	}
}

func BenchmarkCircle(b *testing.B) {
	s := man(b, 846, nil)
	for b.Loop() {
		s.Circle(740, 72)
	}
}

package figure

import (
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

func seated(t testing.TB, inseam float64, sex body.Sex) (Build, Pose, posture.LegPose, float64) {
	t.Helper()
	leg, _, ok := body.NewLeg(body.Measured{Inseam: inseam}, sex)
	if !ok {
		t.Fatal("no leg")
	}
	b := Demo(inseam, 0)
	s, ok := posture.NewSeated(leg, posture.Setup{Crank: b.Crank, PedalHeight: 12, SoleHeight: 18,
		CleatBehindBall: 8, SeatAngle: 76.5})
	if !ok {
		t.Fatal("no seat")
	}
	h := s.Neutral()
	b.Saddle = h
	b = b.AtBottom()
	near, ok := s.AtBottom(h)
	far, ok2 := s.At(h, s.Bottom()+180)
	if !ok || !ok2 {
		t.Fatal("no pose")
	}
	b.PedalAngle, b.FarPedalAngle = near.HeelUp, far.HeelUp
	u, _ := UpperOf(inseam, sex)
	return b, Legs(near, &far, 18).Sit(b.Grip(), u), near, h
}

func saddleFigure(t testing.TB, inseam float64, sex body.Sex) *drawing.Figure {
	b, p, near, h := seated(t, inseam, sex)
	f := &drawing.Figure{Title: words.Of("Seated at the bottom of the stroke"), Description: words.Of("d")}
	f.Add(Scene(b, &p)...)
	f.Add(SeatLine(b),
		SaddleHeight(b, drawing.Hot, words.Of(words.English(fmt.Sprintf("%.0f ± 18 mm", h)))),
		SpindleToSaddle(b, drawing.Ink, words.Of(words.English(fmt.Sprintf("%.0f", h+b.Crank)))),
		KneeBend(p, drawing.Ink, words.Of(words.English(fmt.Sprintf("%.0f°", near.KneeBend)))))
	return f
}

func frameFigure(t testing.TB) *drawing.Figure {
	b := Demo(830, 700)
	b.CrankAngle = 90
	f := &drawing.Figure{Title: words.Of("Frame"), Description: words.Of("d")}
	f.Add(Scene(b, nil)...)
	f.Add(AxleCrosses(b)...)
	f.Add(SteeringAxis(b), SeatLine(b),
		Reach(b, drawing.Ink, words.Of("Reach 460")), Stack(b, drawing.Ink, words.Of("Stack 625")),
		BBHeight(b, drawing.Ink, words.Of("341")), FrontCentre(b, drawing.Ink, 0, words.Of("Front centre 775")),
		Trail(b, drawing.Hot, 0, words.Of("Trail 118 ± 4")), Wheelbase(b, drawing.Ink, 1,
			words.Of("Wheelbase 1209 mm")),
		HeadAngle(b, drawing.Ink, words.Of("65.5°")),
		Setback(b, drawing.Ink, words.Of("Setback 163 mm")),
		drawing.Label{Role: drawing.Ink, At: b.Grip(), Text: words.Of("Grip centre"), Leader: true,
			Side: Point{X: 1, Y: 0.4}})
	return f
}

func changeFigure(t testing.TB) *drawing.Figure {
	a := Demo(830, 700)
	a.CrankAngle = 90
	b, err := geometry.Settle(a.Bike, geometry.Change{Fork: 30})
	_ = err
	after := a
	after.Bike = b
	f := &drawing.Figure{Title: words.Of("Change"), Description: words.Of("d")}
	f.Add(Over(a, after)...)
	f.Add(drawing.Label{Role: drawing.Before, At: At(a.Bike.HeadTop), Text: words.Of("before")},
		drawing.Label{Role: drawing.Ink, At: At(after.Bike.HeadTop), Text: words.Of("after")})
	return f
}

var update = flag.Bool("update", false, "write the golden files anew")

func TestScenesAreWrittenAsTheirGoldenFiles(t *testing.T) {
	for _, c := range []struct {
		name string
		f    *drawing.Figure
	}{
		{"seated-700", saddleFigure(t, 700, body.Female)},
		{"seated-760", saddleFigure(t, 760, body.Female)},
		{"seated-830", saddleFigure(t, 830, body.Male)},
		{"seated-880", saddleFigure(t, 880, body.Male)},
		{"seated-960", saddleFigure(t, 960, body.Male)},
		{"frame", frameFigure(t)},
		{"change", changeFigure(t)},
	} {
		got := c.f.SVG(c.name, nil, 530) + "\n"
		path := filepath.Join("testdata", c.name+".svg")
		if *update {
			if err := os.MkdirAll("testdata", 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if got != string(want) {
			t.Errorf("%s differs; run go test -update and look at the picture", path)
		}
	}
}

// The saddle may not sit on the frame, whatever the rider's leg: the post shows
// at least a hand's breadth, and the seated rider is complete.
func TestEveryRiderFitsTheStandInBike(t *testing.T) {
	for inseam := 560.0; inseam <= 1040; inseam += 5 {
		for _, sex := range []body.Sex{body.Unknown, body.Female, body.Male} {
			b, p, _, h := seated(t, inseam, sex)
			clear := b.SaddleTop().Minus(b.seatTop()).Length()
			if clear < 105 {
				t.Errorf("inside leg %.0f: saddle at %.0f is %.0f mm above the seat tube", inseam, h, clear)
			}
			if !known(p.Hip, p.Knee, p.Ankle, p.Heel, p.Toe, p.FarKnee, p.Shoulder, p.Elbow, p.Hand, p.Head) {
				t.Errorf("inside leg %.0f: %+v", inseam, p)
			}
			if trunk := p.Shoulder.Minus(p.Hip).Angle(); trunk < 35 || trunk > uprightTrunk+1e-9 {
				t.Errorf("inside leg %.0f: trunk at %.0f degrees", inseam, trunk)
			}
			if d := p.Hand.Minus(b.Grip()).Length(); d > 1e-9 {
				t.Errorf("inside leg %.0f: hand is %.1f mm off the grip", inseam, d)
			}
		}
	}
}

// A dimension line of the saddle height crosses neither tyre.
func TestSaddleHeightStandsClearOfTheWheels(t *testing.T) {
	for inseam := 560.0; inseam <= 1040; inseam += 20 {
		b, _, _, _ := seated(t, inseam, body.Unknown)
		m := SaddleHeight(b, drawing.Hot, words.Of("x")).(drawing.Dimension)
		d := b.SeatDirection()
		from := m.A.Along(d.Left(), m.Offset)
		rear := At(b.Bike.Rear).Minus(from)
		if off := rear.Dot(d.Left()); -off < b.Bike.RearRadius+20 {
			t.Errorf("inside leg %.0f: the line passes %.0f mm from the axle", inseam, -off)
		}
	}
}

func TestNothingBreaksOnABrokenBike(t *testing.T) {
	nan := math.NaN()
	for _, b := range []Build{{}, {Saddle: nan}, {Saddle: 700, Crank: nan, CrankAngle: math.Inf(1)},
		{Bike: geometry.Bike{HeadAngle: nan, SeatAngle: nan}, Saddle: 600}} {
		f := &drawing.Figure{Title: words.Of("t"), Description: words.Of("d")}
		p := Pose{Hip: Point{X: nan}, Knee: Point{Y: 1}}
		f.Add(Scene(b.AtBottom(), &p)...)
		f.Add(Over(b, b)...)
		f.Add(SaddleHeight(b, drawing.Hot, words.Of("x")), KneeBend(p, drawing.Ink, words.Of("x")), SeatLine(b),
			SteeringAxis(b))
		if svg := f.SVG("x", nil, 530); strings.Contains(svg, "NaN") || strings.Contains(svg, "Inf") {
			t.Error(svg)
		}
	}
}

func BenchmarkSeated(b *testing.B) { measured(b, saddleFigure(b, 830, body.Male)) }

// BenchmarkFrame has ten labels.
func BenchmarkFrame(b *testing.B) { measured(b, frameFigure(b)) }

func measured(b *testing.B, f *drawing.Figure) {
	b.ReportMetric(float64(len(f.Marks)), "marks")
	b.ReportMetric(float64(len(f.SVG("x", nil, 530))), "bytes")
	b.ReportAllocs()
	for b.Loop() {
		f.SVG("x", nil, 530)
	}
}

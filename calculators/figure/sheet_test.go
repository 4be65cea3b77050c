package figure

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
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
	s, ok := posture.NewSeated(leg, posture.Setup{Crank: b.Crank, PedalHeight: 12, SoleHeight: 18, CleatBehindBall: 8, SeatAngle: 76.5})
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
		SaddleHeight(b, drawing.Hot, words.Of(fmt.Sprintf("%.0f ± 18 mm", h))),
		SpindleToSaddle(b, drawing.Ink, words.Of(fmt.Sprintf("%.0f mm", h+b.Crank))),
		KneeBend(p, drawing.Ink, words.Of(fmt.Sprintf("%.0f°", near.KneeBend))))
	return f
}

func TestSheet(t *testing.T) {
	if os.Getenv("SHEET") == "" {
		t.Skip()
	}
	css, _ := os.ReadFile("../../templates/style/figure.css")
	light := ":root{--paper:#f6f3ea;--sheet:#fdfcf7;--ink:#1d2b38;--soft:#5a6a75;--rule:#c9c6b8;--hot:#b8380f;--body:#2c6e7f;--wash:#e3ecec}"
	dark := ":root{--paper:#0d1721;--sheet:#111d29;--ink:#dfe8ee;--soft:#93a5b2;--rule:#3a4a58;--hot:#ff8f66;--body:#7cc0d1;--wash:#182c38}"
	figs := []string{}
	for i, in := range []float64{700, 760, 830, 880, 960} {
		sex := body.Male
		if i < 2 {
			sex = body.Female
		}
		figs = append(figs, saddleFigure(t, in, sex).SVG(fmt.Sprintf("f%d", i), nil))
	}
	for name, root := range map[string]string{"light": light, "dark": dark} {
		var b strings.Builder
		b.WriteString("<!doctype html><meta charset=utf-8><meta name=viewport content='width=device-width'><style>" + root + string(css) + "body{margin:16px;background:var(--paper)}figure{margin:0 0 16px;background:var(--sheet);border:1.5px solid var(--ink)}</style>")
		for _, f := range figs {
			b.WriteString("<figure>" + f + "</figure>\n")
		}
		os.WriteFile("/tmp/fig/"+name+".html", []byte(b.String()), 0o644)
	}
}

package symptom

import (
	"slices"

	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// view is the rider from the front or from behind: what a side view cannot tell apart.
type view struct {
	caption   words.English
	low, high drawing.Point
	marks     []drawing.Mark
	spots     []felt
}

// felt is a spot of such a view: a symptom, or else a place with all of its symptoms.
type felt struct {
	felt string
	of   Place
	at   drawing.Point
}

// place is the number of its place, from 0.
func (s felt) place(spots []Spot) int {
	of := s.of
	if known := Named(s.felt); known != nil {
		of = known.Place
	}
	return slices.IndexFunc(spots, func(p Spot) bool { return p.Place == of })
}

// How the views are drawn, mm: the same rider, and numbers as large on the page as those
// of the side view, though these views are less than half as wide.
const (
	drawnLeg, drawnHips    = 880, 172
	drawnFeet, drawnQ      = 286, 174
	drawnGround            = 340
	viewRadius, viewReach  = 54, 80
	besideKnee, underKnee  = 84, 80
	viewAside, overHelmet  = 432, 700
	besideHip, underSeat   = 168, 60
	overSeat, overShoulder = 150, 410
)

// views returns the rider from the front and from behind. The knee on the drawing's left
// is the one whose foot is down; from behind it is on the right.
func views() []view {
	a := figure.Astride{Hips: drawnHips, Feet: drawnFeet, QFactor: drawnQ, Leg: drawnLeg, Crank: drawnCrank,
		Ground: drawnGround}
	low, high := drawing.Point{X: -viewAside, Y: -drawnGround - around},
		drawing.Point{X: viewAside, Y: a.HipHeight() + overHelmet}
	knee, hip := a.Knee(-1), a.HipHeight()
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
	raised := a.Pedalled(1)
	return []view{
		{"From the front", low, high, a.Marks(), []felt{
			{of: Arms, at: a.Elbow(1)}, {of: Hands, at: a.Gripped(-1)}, {felt: "seat-numb", at: at(-14, hip-6)},
			{felt: "knee-outside", at: knee.Plus(at(-besideKnee, 0))},
			{felt: "knee-inside", at: knee.Plus(at(besideKnee, 0))},
			{felt: "knee-front", at: a.Knee(1).Plus(at(12, -underKnee))}, {of: Forefoot, at: raised.Plus(at(0, 30))}}},
		{"From behind", low, high, a.Behind(), []felt{
			{of: Neck, at: at(0, hip+overShoulder)}, {of: LowBack, at: at(0, hip+overSeat)},
			{of: Hip, at: at(-besideHip, hip)}, {felt: "seat-sore", at: at(drawnHips/2-20, hip-underSeat)},
			{felt: "knee-back", at: at(-knee.X, knee.Y)},
			{of: Calf, at: at(-knee.X+8, knee.Y-170)}}},
	}
}

package symptom

import (
	"slices"
	"strconv"

	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// Spot is a place with its number and its name.
type Spot struct {
	Place Place
	Label words.English // English
	at    drawing.Point
}

// The rider and the bike that the places are shown on: the scenario's test rider,
// mm. Nothing is computed from them.
const (
	drawnInseam = 830
	drawnSaddle = 736
	drawnSeat   = 76.5 // degrees
	drawnCrank  = 170
	onPedal     = 15
	behindBack  = 95 // the back's outline behind the line from hip to shoulder
	behindSeat  = 178
	beforeKnee  = 75
	behindCalf  = 85
	spotRadius  = 46
	spotReach   = 79  // of what a finger hits: 25 px on a drawing as wide as a phone
	highest     = 27  // letters: both rows in one window, circles of 24 px and more
	overHead    = 190 // from the middle of the head to the drawing's edge
	around      = 30
)

// Spots returns the places in the order of their numbers, from the head down and
// then the bike.
func Spots() []Spot {
	_, spots := scene()
	return spots
}

// scene draws the rider on the bike and finds the places on both.
func scene() (f *drawing.Figure, spots []Spot) {
	b := figure.Demo(drawnInseam, drawnSaddle).SeatAt(drawnSeat)
	b.Crank = drawnCrank
	b = b.AtBottom()
	leg, _, _ := body.NewLeg(body.Measured{Inseam: drawnInseam}, body.Unknown)
	rider, _ := posture.NewSeated(leg, posture.Setup{Crank: drawnCrank, PedalHeight: onPedal, SoleHeight: onPedal,
		SeatAngle: drawnSeat})
	near, _ := rider.AtBottom(drawnSaddle)
	far, _ := rider.At(drawnSaddle, rider.Bottom()+180)
	b.PedalAngle, b.FarPedalAngle = near.HeelUp, far.HeelUp
	p := figure.Legs(near, &far, onPedal)
	if upper, ok := figure.UpperOf(drawnInseam, body.Unknown); ok {
		p = p.Sit(b.Grip(), upper)
	}
	back := p.Shoulder.Minus(p.Hip)
	front, rear := figure.At(b.Bike.Front), figure.At(b.Bike.Rear)
	f = &drawing.Figure{
		Low:   drawing.Point{X: rear.X - b.Bike.RearRadius - around, Y: rear.Y - b.Bike.RearRadius - around},
		High:  drawing.Point{X: front.X + b.Bike.FrontRadius + around, Y: p.Head.Y + overHead},
		Marks: figure.Scene(b, &p),
	}
	return f, []Spot{
		{Neck, "Neck", p.Shoulder.Along(p.Head.Minus(p.Shoulder), 0.45)},
		{Arms, "Arms", p.Elbow},
		{Hands, "Hands", p.Hand},
		{LowBack, "Low back", p.Hip.Along(back, 0.32).Plus(back.Unit().Left().Times(behindBack))},
		{Hip, "Hip", p.Hip},
		{Seat, "Seat", b.SaddleTop().Plus(drawing.Point{X: -behindSeat, Y: -10})},
		{Knee, "Knee", p.Knee.Plus(drawing.Point{X: beforeKnee})},
		{Calf, "Calf", p.Knee.Along(p.Ankle.Minus(p.Knee), 0.45).Plus(drawing.Point{X: -behindCalf})},
		{Forefoot, "Forefoot", p.Toe},
		{FrontHub, "Front wheel", front},
		{RearHub, "Rear wheel", rear},
		{CentreOfM, "Balance", p.Hip.Along(back, 0.66)},
	}
}

// Figure draws a rider on a bike from the side, from the front and from behind, with the
// number of its place at everything that is felt there.
func Figure() *drawing.Figure {
	side, spots := scene()
	f := &drawing.Figure{
		Title:   words.Of("Where do you feel it?"),
		Apart:   true,
		Upright: true,
		Least:   9,
		Highest: highest,
		Frames: []drawing.Frame{
			{Caption: words.Of("From the side"), Low: side.Low, High: side.High, Marks: side.Marks, Broad: true}},
	}
	var names words.List
	for i, s := range spots {
		names = append(names, words.Of("{0} {1}", numbered(i), words.Of(s.Label)))
		f.Frames[0].Marks = append(f.Frames[0].Marks, mark(i, s.at, spotRadius)...)
	}
	for _, v := range views() {
		marks := v.marks
		for _, s := range v.spots {
			marks = append(marks, mark(s.place(spots), s.at, viewRadius)...)
		}
		f.Frames = append(f.Frames, drawing.Frame{Caption: words.Of(v.caption), Low: v.low, High: v.high, Marks: marks})
	}
	f.Description = words.Of("A rider seated on a bike, seen from the side, from the front and from behind, with "+
		"numbers: {0}. The same numbers stand in the list beside it.", names)
	return f
}

func numbered(i int) words.Text { return words.Of("{0}", words.Name(strconv.Itoa(i+1))) }

// mark is a number in its circle.
func mark(i int, at drawing.Point, radius float64) []drawing.Mark {
	return []drawing.Mark{drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: at,
		Radius: radius}, drawing.Label{Role: drawing.Ink, At: at, Text: numbered(i), Fixed: true, Priority: 1}}
}

// linked returns the figure with a link over every number: to what way says of a place, or
// to what felt says of one of all symptoms, where only that is felt there. The drawing is then a
// group of links and no longer one picture.
func linked(all []*Symptom, way func(Spot) string, felt func(*Symptom) string) *drawing.Figure {
	f := Figure()
	spots := Spots()
	link := func(frame int, at drawing.Point, radius float64, i int, href string, what words.English) {
		g := &f.Frames[frame]
		g.Marks = append(g.Marks, drawing.Link{At: at, Radius: radius, Href: href,
			Text: words.Of("{0}: {1}", words.Name(strconv.Itoa(i+1)), words.Of(what))})
	}
	for i, s := range spots {
		link(0, s.at, spotReach, i, way(s), s.Label)
	}
	for n, v := range views() {
		for _, s := range v.spots {
			i := s.place(spots)
			if k := slices.IndexFunc(all, func(x *Symptom) bool { return x.Key == s.felt }); k >= 0 {
				known := all[k] // in the guide’s own words
				link(n+1, s.at, viewReach, i, felt(known), known.Label)
			} else {
				link(n+1, s.at, viewReach, i, way(spots[i]), spots[i].Label)
			}
		}
	}
	return f
}

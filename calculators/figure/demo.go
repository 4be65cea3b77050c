package figure

import "plumbline/calculators/geometry"

// size is one size of the trail bike that stands in where a calculator has no
// chart of its own. The bike is invented.
type size struct {
	inseam                    float64 // up to this inside leg, mm
	reach, stack              float64
	headTube, seatTube        float64
	chainstay, rim, crank     float64
	spacers, rise, stem, drop float64
}

var sizes = [5]size{
	{735, 410, 592, 95, 365, 430, 584, 160, 10, 20, 40, 22},
	{790, 435, 610, 100, 390, 434, 622, 165, 10, 25, 40, 32},
	{850, 460, 625, 110, 420, 437, 622, 170, 15, 30, 45, 32},
	{905, 485, 640, 125, 450, 440, 622, 170, 20, 35, 45, 32},
	{0, 510, 658, 140, 480, 443, 622, 175, 25, 40, 50, 32},
}

// Tyre is the width of the tyres on the stand-in bike, mm.
const tyre = 61

// Demo returns the stand-in trail bike in the size for an inside leg, mm, with
// its saddle at a height, mm. The picture needs some bike: nothing is computed
// from it.
func Demo(inseam, saddleHeight float64) Build { return DemoWith(inseam, saddleHeight, nil) }

// DemoWith is Demo with the chart changed before it is solved, such as to what a
// reader gave of it; a chart that makes no bike is left as it was.
func DemoWith(inseam, saddleHeight float64, change func(*geometry.Chart)) Build {
	s := sizes[len(sizes)-1]
	for _, c := range sizes[:len(sizes)-1] {
		if inseam <= c.inseam {
			s = c
			break
		}
	}
	radius := s.rim/2 + tyre
	chart := geometry.Chart{
		Reach: s.reach, Stack: s.stack, HeadAngle: 65.5, SeatAngle: 76.5,
		HeadTube: s.headTube, ForkOffset: 44, Chainstay: s.chainstay, Drop: s.drop,
		FrontRadius: radius, RearRadius: radius,
	}
	changed := chart
	if change != nil {
		change(&changed)
	}
	bike, err := changed.Solve()
	if err != nil {
		bike, err = chart.Solve()
	}
	if err != nil {
		return Build{}
	}
	return Build{
		Bike: bike,
		Cockpit: geometry.Cockpit{
			Headset: 10, Spacers: s.spacers, ClampHeight: 40, Stem: s.stem, Rise: s.rise, Back: 40,
		},
		FrontRim: s.rim, RearRim: s.rim, SeatTube: s.seatTube,
		Saddle: saddleHeight, Crank: s.crank,
	}
}

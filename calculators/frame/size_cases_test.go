package frame

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/geometry"
	"plumbline/calculators/panel"
)

// sizeKeys are the inputs of sizes that have an error.
const sizeKeys = "stature inseam trochanter-height trunk-length arm-length shoulder-width bar-width grip-length " +
	"crank-length pedal-height sole-height " +
	"cleat-behind-ball saddle-height grip-x grip-y spacers stem-length bar-rise bar-sweep headset-height " +
	"stem-clamp-height " +
	"pedal-width pedal-thickness q-factor sag-front sag-rear saddle-stack post-collar post-head post-length " +
	"post-actuator insertion-post"

var (
	sizeX = []float64{1779, 841, 887, 541, 662, 412, 765, 127, 168, 14, 11,
		7, 741, 447, 719, 12, 42, 27, 37, 9, 41,
		103, 17, 172, 18, 31, 46, 29, 24, 487, 33, 107}
	sizeSD = []float64{4, 5, 9, 13, 12, 8, 6, 3, 1.5, 2, 3,
		4, 3, 4, 5, 1, 1.5, 2, 3, 1, 1.2,
		2, 1, 3, 3, 4, 2, 4, 3, 2, 2.5, 3}
)

// Two lines: one that leaves nothing out, on unlike wheels, and one that leaves out all
// it may, with its bottom bracket from the floor: 437 mm of chainstay, 44 mm of offset,
// 622 mm rims, 61 mm tyres, the reader's crank and no travel stand in.
const twoSizes = "sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length," +
	"seat-angle-height,seat-tube-angle,stand-over,fork-offset,fork-travel," +
	"rear-travel,chainstay,bb-drop,bb-height,front-rim,rear-rim,front-tyre,rear-tyre," +
	"crank-length,travel-post,free-depth,insertion-frame,stem-length,spacers-limit|" +
	"full,463,628,64.7,76.3,432,655,70.6,731,43,150,137,438,27,,622,584,61,64,172.5,185,248,98,48,24|" +
	"bare,441,611,66.2,75.1,407,,,702,,,,,,338,,,,,,,,,, "

// sizing is one line of the table under the tests' own rider.
type sizing struct {
	level, sunk  drawn
	rider        rider
	x            []float64
	tube, crank  float64
	stand, stem  float64
	known, depth float64 // travel of the post at hand, free depth in the tube
	insertion    float64 // the frame's
}

func newSizing(x []float64, bare bool) sizing {
	r := rider{stature: x[0], inseam: x[1], trochanter: x[2], trunk: x[3], arm: x[4], shoulders: x[5], bar: x[6],
		grip:  x[7],
		crank: x[8], pedal: x[9], sole: x[10], cleat: x[11]}
	if bare {
		level := draw(paper{reach: 441, stack: 611, head: 66.2, seat: 75.1, stay: 437, drop: 372 - 338, offset: 44,
			front: 372, rear: 372})
		nan := math.NaN()
		return sizing{level: level, sunk: level, rider: r, x: x, tube: 407, crank: x[8], stand: 702, stem: x[16],
			known: nan, depth: nan}
	}
	level := draw(mixed)
	sunk := level.settled(moved{sagFront: 1.5 * x[24], sagRear: 1.37 * x[25]})
	return sizing{level: level, sunk: sunk, rider: r, x: x, tube: 432, crank: 172.5, stand: 731, stem: 48, known: 185,
		depth: 248, insertion: 98}
}

// hold is where the grips are: up the steering axis by cover, spacers and half the
// clamp, square ahead by the stem, then up by the rise and back by the sweep.
func (s sizing) hold() vec {
	up := s.x[19] + s.x[15] + s.x[20]/2
	return s.level.top.minus(
		towards(-s.level.head).times(up),
	).plus(
		towards(90 - s.level.head).times(s.stem),
	).plus(
		vec{-s.x[18], s.x[17]},
	)
}

func (s sizing) tipped(p vec) vec { return p.turned(s.level.head - s.sunk.head) }

func (s sizing) trunk() float64 {
	return s.rider.sit(s.tipped(s.level.saddle(s.x[12])), s.tipped(s.hold()), 30).trunk
}

func (s sizing) elbow() float64 { return s.rider.bend(s.rider.stand(s.tipped(s.hold()), 0)) }

func (s sizing) toe() float64 {
	d := s.level
	return d.front.x - math.Sqrt(d.rF*d.rF-d.front.y*d.front.y) - s.crank
}

func (s sizing) lean() float64 {
	return math.Atan((s.sunk.height()-s.crank-s.x[22]/2)/(s.x[23]/2+s.x[21])) * 180 / math.Pi
}

// dropper is what the room above the frame leaves, or what the depth in the tube does:
// half of what is free below and above goes into more travel.
func (s sizing) dropper() float64 {
	rails := s.x[12] - s.tube - s.x[26]
	room := rails - s.x[27] - s.x[28]
	if math.IsNaN(s.depth) {
		return room
	}
	return math.Min(room, s.known+(s.depth-(s.x[29]-rails))/2)
}

// highest has the post at the deeper one of both minimum insertions.
func (s sizing) highest() float64 {
	return s.tube + s.x[26] + s.x[29] - s.x[30] - math.Max(s.x[31], s.insertion)
}

func (s sizing) off() vec { return s.hold().minus(vec{s.x[13], s.x[14]}) }

func (s sizing) want(o sizeOutputs, row int) []calctest.Want {
	var want []calctest.Want
	for _, x := range []struct {
		output        *calculators.Output
		column        string
		value, within float64
	}{
		{o.dropper, "dropper-travel", s.dropper(), 0.51}, {o.highest, "highest-saddle", s.highest(), 0.51},
		{o.standOver, "stand-over-room", s.x[1] - s.stand, 0.51},
		{o.trunk, "trunk-angle", s.trunk(), 0.051}, {o.toe, "toe-room", s.toe(), 0.51},
		{o.lean, "strike-lean", s.lean(), 0.051},
		{o.ahead, "grips-ahead", s.off().x, 0.51}, {o.above, "grips-above", s.off().y, 0.51},
		{o.elbow, "elbow-bend", s.elbow(), 0.051},
	} {
		if math.IsNaN(x.value) {
			want = append(want, calctest.None(x.output))
			continue
		}
		want = append(want, calctest.Is(x.output, x.value, 1e-6),
			calctest.Cell("sizes", row, x.column, x.value, x.within))
	}
	return want
}

func TestSizeCases(t *testing.T) {
	c := Size()
	c.Workings = c.Workings[:2*9] // the further lines' numbers are made like the first two's
	full, bare := newSizing(sizeX, false), newSizing(sizeX, true)
	const source = "the tests’ own rider on the drawn bikes; a post’s lengths added by hand"
	headline := []calctest.Want{
		calctest.Is(sizeAhead, full.off().x, 1e-7), calctest.Is(sizeAbove, full.off().y, 1e-7),
		calctest.Is(sizeDropper, full.dropper(), 1e-7), calctest.Is(sizeTrunk, full.trunk(), 1e-6),
	}
	// Depth binds: 741 − 432 − 46 = 263 mm of post show, 487 − 263 = 224 go in, of 248:
	// 24 mm to spare, 12 of travel, 197; the room leaves 263 − 53 = 210.
	assert.InDelta(t, 197, full.dropper(), 1e-9)
	// Grips nearer to the second line's make that one the headline.
	moved := slices.Clone(sizeX)
	moved[13], moved[14] = 425, 700
	other := newSizing(moved, true)
	calctest.Cases(t, c,
		calctest.Case{Typed: twoSizes + " sex=m " + typedOf(sizeKeys, sizeX, sizeSD), Source: source,
			Want: slices.Concat(headline, full.want(lines[0], 0), bare.want(lines[1], 1))},
		calctest.Case{Typed: twoSizes + " sex=m " + typedOf(sizeKeys, moved, sizeSD), Source: source,
			Want: slices.Concat([]calctest.Want{
				calctest.Is(sizeAhead, other.off().x, 1e-7), calctest.Is(sizeAbove, other.off().y, 1e-7),
				calctest.Is(sizeDropper, other.dropper(), 1e-7), calctest.Is(sizeTrunk, other.trunk(), 1e-6),
			}, newSizing(moved, false).want(lines[0], 1), other.want(lines[1], 0))},
	)
}

// TestEveryLineHasItsOwnNumbers: twelve lines, each a millimetre longer and its seat tube
// two millimetres shorter than the one before.
func TestEveryLineHasItsOwnNumbers(t *testing.T) {
	table := "sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length,stand-over"
	for i := range 12 {
		table += fmt.Sprintf("|S%d,%d,628,64.7,76.3,%d,%d", i, 440+i, 460-2*i, 650+3*i)
	}
	r := calctest.Answer(t, Size(), table+" sex=m grip-x=100 "+typedOf(sizeKeys, sizeX, sizeSD))
	for i := range 12 {
		assert.InDelta(t, calctest.Value(r, lines[0].ahead)+float64(i), calctest.Value(r, lines[i].ahead), 1e-9, i)
		assert.InDelta(t, calctest.Value(r, lines[0].dropper)+2*float64(i), calctest.Value(r, lines[i].dropper), 1e-9,
			i)
		assert.InDelta(t, calctest.Value(r, lines[0].toe)+float64(i), calctest.Value(r, lines[i].toe), 1e-9, i)
		assert.InDelta(t, 841-650-3*float64(i), calctest.Value(r, lines[i].standOver), 1e-9, i)
	}
	assert.Len(t, Size().Workings, 108)
}

// TestTheMarginsOfASize propagates by hand (JCGM 100).
func TestTheMarginsOfASize(t *testing.T) {
	r := calctest.Answer(t, Size(), twoSizes+" sex=m "+typedOf(sizeKeys, sizeX, sizeSD))
	near := func(o *calculators.Output, number func(s sizing) float64) {
		t.Helper()
		want := expanded(func(x []float64) float64 { return number(newSizing(x, false)) }, sizeX, sizeSD)
		assert.InEpsilon(t, want, float64(r.At(o).Uncertainty), 2e-4, o.Name)
	}
	near(sizeAhead, func(s sizing) float64 { return s.off().x })
	near(sizeAbove, func(s sizing) float64 { return s.off().y })
	near(sizeDropper, sizing.dropper)
	near(sizeTrunk, sizing.trunk)
	near(lines[0].highest, sizing.highest)
	near(lines[0].lean, sizing.lean)
	near(lines[0].elbow, sizing.elbow)
}

// oneSize is a line on two wheels of 372 mm whose numbers are easily had by hand: the
// saddle at 736 mm, 46 mm of saddle, 29 + 24 mm of post hardware.
func oneSize(line, more string) string {
	return "sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length,stand-over," +
		"bb-drop,crank-length,stem-length,spacers-limit,fork-offset,chainstay|" +
		line + " inseam=830 stature=1740 saddle-height=736 saddle-stack=46 post-collar=29 post-head=24 spacers=12 " +
		"q-factor=170 pedal-width=105 pedal-thickness=16 " + more
}

// verdictOf is what the first line of the table says of a size.
func verdictOf(t *testing.T, typed string) string {
	t.Helper()
	return calctest.Column(t, calctest.Answer(t, Size(), typed), "sizes", "verdict")[0]
}

// TestWhereAVerdictTurns: the limits of 16 CFR 1512.17 and 1512.19, and what common
// practice wishes, each from both sides with its number worked out by hand.
func TestWhereAVerdictTurns(t *testing.T) {
	const good = "M,463,628,64.7,76.3,420,731,27,170,45,30,43,438"
	line := func(old, new string) string {
		assert.Contains(t, good, old)
		return strings.Replace(good, old, new, 1)
	}
	toe := func(reach float64) float64 {
		p := alike
		p.reach = reach
		s := sizing{level: draw(p), crank: 170}
		return s.toe()
	}
	short := root(160, 463, func(reach float64) float64 { return toe(reach) - 89 })
	for _, c := range []struct{ line, more, says, not string }{
		{good, "", "Nothing in the way", "Out"},
		// 736 − 46 − 53 = 637 mm: a seat tube from there on leaves no travel.
		{line("420", "644"), "", "Ruled out: the seat tube is 7 mm too long", "dropper travel;"},
		{line("420", "637"), "", "The seat tube leaves 0 mm of dropper travel", "Out"},
		{line("420", "636"), "", "The seat tube leaves 1 mm of dropper travel", "Out"},
		{line("420", "488"), "", "The seat tube leaves 149 mm of dropper travel", "Out"},
		{line("420", "486"), "", "Nothing in the way", "dropper travel"},
		// 420 + 46 + 390 − 35 − 110 = 711 mm, 25 short of 736.
		{good, "post-length=390 insertion-post=110 post-actuator=35",
			"Ruled out with this post: it ends 25 mm short", ""},
		{good, "post-length=416 insertion-post=110 post-actuator=35", "Nothing in the way", "Out"},
		// 830 mm of leg.
		{line("731", "833"), "", "Ruled out: the top tube is 3 mm higher", "law"},
		{line("731", "829.6"), "", "Ruled out: 0 mm between you and the top tube", "higher than you can"},
		{line("731", "806"), "", "Ruled out: 24 mm between you and the top tube, where the law asks for 25 mm", ""},
		{line("731", "804"), "", "26 mm of room to stand over it", "Out"},
		{strings.Replace(line("420", "488"), "731", "804", 1), "", "a little more. 26 mm of room to stand over it",
			"Out"},
		{line("731", "781"), "", "49 mm of room to stand over it", "Out"},
		{line("731", "779"), "", "Nothing in the way", "room to stand"},
		// Without sag the bottom bracket is 372 − 100 = 272 mm up; 272 − 180 − 8 = 84 mm
		// over 170/2 + 105 = 190 mm is 23.9°, and with cranks of 170 mm 26.3°.
		{line(",27,170", ",100,180"), "", "A pedal strikes at 23.9° of lean, where the law asks for 25.0°", ""},
		{line(",27,170", ",100,170"), "", "Nothing in the way", "strikes"},
		{line("463", fmt.Sprintf("%.3f", short-3)), "",
			"Only 86 mm from pedal to front tyre, where the law asks for 89 mm", ""},
		{line("463", fmt.Sprintf("%.3f", short+1)), "", "Nothing in the way", "Only"},
	} {
		said := verdictOf(t, oneSize(c.line, c.more))
		assert.Contains(t, said, plain(c.says), c.line+" "+c.more)
		if c.not != "" {
			assert.NotContains(t, said, c.not, c.line+" "+c.more)
		}
	}
}

// TestWhatPutsTheGripsRight places the reader's grips a longer or shorter stem away,
// square to the steering axis, and more or fewer spacers along it; the line's own stem
// is 45 mm, 12 mm of spacers of at most 30 are under it.
func TestWhatPutsTheGripsRight(t *testing.T) {
	s := newSizing(sizeX, false)
	s.level, s.stem = draw(alike), 45
	const cockpit = "stem-clamp-height=41 headset-height=9 bar-rise=27 bar-sweep=37 "
	square, along := towards(90-64.7), towards(180-64.7)
	for _, c := range []struct {
		stem, up float64
		says     string
	}{
		{45, 9.9, "Grips 10 mm from where they are now: a spacer or the bar’s roll makes it up."},
		{45, 10.1, "A stem of 45 mm and 10 mm more under the stem or in the bar’s rise put them right."},
		{-2, 0, "No stem is short enough"},
		{1, 0, "A stem of 1 mm would be needed, and the shortest that are sold are about 30 mm"},
		{29, 0, "A stem of 29 mm would be needed, and the shortest"},
		{31, -6, "A stem of 31 mm and 6 mm less under the stem or in the bar’s rise put them right, at the edge of " +
			"what is usual."},
		{34, 17, "A stem of 34 mm and 17 mm more under the stem or in the bar’s rise put them right, at the edge"},
		{36, 19, "A stem of 36 mm and 19 mm more height, of which spacers may give 18 mm and a bar of more rise " +
			"the rest put them right."},
		{49, -12, "A stem of 49 mm and 12 mm less under the stem or in the bar’s rise put them right."},
		{51, 11, "A stem of 51 mm and 11 mm more under the stem or in the bar’s rise put them right, at the edge"},
		{59, 11, "put them right, at the edge"},
		{57, 0.6, "A stem of 57 mm and 1 mm more under the stem or in the bar’s rise put them right, at the edge"},
		{57, -0.6, "A stem of 57 mm and 1 mm less under the stem or in the bar’s rise put them right, at the edge"},
		{61, 3, "A stem of 61 mm would be needed, longer than this kind of bike steers well with"},
	} {
		aim := s.hold().plus(square.times(c.stem - 45)).plus(along.times(c.up))
		typed := oneSize("M,463,628,64.7,76.3,420,731,27,170,45,30,43,438",
			cockpit+fmt.Sprintf("grip-x=%v grip-y=%v", aim.x, aim.y))
		said := verdictOf(t, typed)
		assert.Contains(t, said, plain(c.says), c)
		// How far off the line's grips are, in the reader's words.
		if off := s.hold().minus(aim); off.length() > 10 {
			ahead, above := "further forward", "higher"
			if off.x < 0 {
				ahead = "nearer"
			}
			if off.y < 0 {
				above = "lower"
			}
			assert.Contains(t, said, plain(fmt.Sprintf("Grips %.0f mm %s and %.0f mm %s than now", math.Abs(off.x),
				ahead, math.Abs(off.y), above)), c)
		}
	}
	// No room for spacers at all: less than none is none.
	aim := s.hold().plus(along.times(14))
	said := verdictOf(t, oneSize("M,463,628,64.7,76.3,420,731,27,170,45,5,43,438",
		cockpit+fmt.Sprintf("grip-x=%v grip-y=%v", aim.x, aim.y)))
	assert.Contains(t, said, plain("14 mm more height, of which spacers may give 0 mm"))
}

// TestSizesPointTheRightWay: which way each number of a line moves.
func TestSizesPointTheRightWay(t *testing.T) {
	example := panel.Example(Size())
	at := func(typed string) *calculators.Result {
		r, problems := Size().Run(append(slices.Clone(example), calctest.Pairs(typed)...), nil)
		assert.Empty(t, problems)
		return r
	}
	rapid.Check(t, func(t *rapid.T) {
		base := fmt.Sprintf("saddle-height=%v inseam=%v ", calctest.Between(t, "saddle", 715, 735),
			calctest.Between(t, "leg", 815, 845))
		here := at(base)
		type turn struct{ typed, signs string } // dropper, stand-over, trunk, toe, lean, ahead, above, elbow
		c := rapid.SampledFrom([]turn{
			{"saddle-height=742", "+0.00000"},
			{"saddle-stack=52", "-0000000"},
			{"post-head=30", "-0000000"},
			{"inseam=850", "0+......"},
			{"sag-front=25", "00..-00."},
			{"sag-rear=33", "00..-00."},
			{"pedal-thickness=20", "0000-000"},
			{"pedal-width=110", "0000-000"},
			{"q-factor=180", "0000-000"},
			{"bar-rise=40", "00+00.+."},
			{"spacers=25", "00+00-+."},
			{"bar-sweep=50", "00+00-0."},
			{"arm-length=720", "00+0000."},
			{"grip-x=462", "00000-00"},
			{"grip-y=735", "000000-0"},
		}).Draw(t, "more")
		there := at(base + c.typed)
		x := lines[2]
		for i, o := range []*calculators.Output{x.dropper, x.standOver, x.trunk, x.toe, x.lean, x.ahead, x.above,
			x.elbow} {
			d := calctest.Value(there, o) - calctest.Value(here, o)
			if sign := c.signs[i]; sign == '+' && !(d > 0) || sign == '-' && !(d < 0) || sign == '0' &&
				!(math.Abs(d) < 1e-9) {
				t.Fatalf("%s moves %s by %v, not %c", c.typed, o.Name, d, sign)
			}
		}
	})
}

// TestWhereGripsLie says both directions, also where one of them is next to nothing.
func TestWhereGripsLie(t *testing.T) {
	for off, want := range map[geometry.Point]string{
		{X: 0.4, Y: 12}:  "0 mm further forward and 12 mm higher than now",
		{X: 12, Y: 0.4}:  "12 mm further forward and 0 mm higher than now",
		{X: 11, Y: -13}:  "11 mm further forward and 13 mm lower than now",
		{X: 0.4, Y: -13}: "0 mm further forward and 13 mm lower than now",
		{X: -11, Y: 13}:  "11 mm nearer and 13 mm higher than now",
		{X: -11, Y: 0.4}: "11 mm nearer and 0 mm higher than now",
		{X: -14, Y: -12}: "14 mm nearer and 12 mm lower than now",
	} {
		assert.Equal(t, plain(want), gripsWhere(off).Say(nil))
	}
}

// TestOneColumnLeftOutIsSaid: even a single one.
func TestOneColumnLeftOutIsSaid(t *testing.T) {
	whole := "sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length,chainstay," +
		"fork-offset,front-rim,front-tyre,crank-length,fork-travel,rear-travel|" +
		"M,463,628,64.7,76.3,420,438,43,622,61,170,150,137 "
	rider := "inseam=830 stature=1740 saddle-height=736"
	assert.False(t, calctest.Says(calctest.Answer(t, Size(), whole+rider), "Some lines leave out"))
	without := strings.Replace(strings.Replace(whole, "crank-length,", "", 1), "170,", "", 1)
	assert.True(t, calctest.Says(calctest.Answer(t, Size(), without+rider), "Some lines leave out “Crank”."))
}

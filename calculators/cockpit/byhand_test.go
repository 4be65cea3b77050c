package cockpit

import (
	"encoding/csv"
	"encoding/json"
	"math"
	"math/cmplx"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// This file solves bike and rider anew for the tests of this section, from the
// published tables in testdata/published and from first principles. It shares no
// code and no number with packages geometry, body and posture: points are complex
// numbers (x forward, y up, mm), and everything that has a closed form there is
// found here by closing in on a root.

// numbers are a record's inputs by key, in base units.
type numbers map[string]float64

// typed writes the record as a command line has it.
func (n numbers) typed() string {
	var fields []string
	for key, x := range n {
		fields = append(fields, key+"="+measure.Exact(x))
	}
	slices.Sort(fields)
	return strings.Join(fields, " ")
}

// with returns the record with other values.
func (n numbers) with(other numbers) numbers {
	all := numbers{}
	for key, x := range n {
		all[key] = x
	}
	for key, x := range other {
		all[key] = x
	}
	return all
}

// off is the name under which a record says by how much something that stands in for
// an input, because nobody typed it, is wrong.
const off = "~"

// complete returns the record with what stands in where a key is missing; what is off
// in it is added.
func (n numbers) complete(standIns numbers) numbers {
	all := standIns.with(n)
	for key := range standIns {
		all[key] += n[key+off]
		delete(all, key+off)
	}
	return all
}

// underGrips are what stands in for a bike of which only the grips are known, as usual
// on a recent trail bike, from common practice: the frame from the grips, the rear
// wheel as in front.
func (n numbers) underGrips() numbers {
	all := n.complete(numbers{"bar-width": 780, "grip-length": 130, "head-angle": 65.5, "seat-angle": 76,
		"chainstay": 437, "bb-drop": 32,
		"fork-offset": 44, "front-rim": 622, "front-tyre": 61, "fork-travel": 150, "sag-front": 20,
		"rear-travel": 140, "sag-rear": 28,
		"reach": n["grip-x"] + 18, "stack": n["grip-y"] - 90})
	return all.complete(numbers{"rear-rim": all["front-rim"], "rear-tyre": all["front-tyre"]})
}

// underGripsSD are the standard uncertainties of those, where they have one.
var underGripsSD = numbers{"bar-width~": 20, "grip-length~": 8, "head-angle~": 1, "seat-angle~": 1,
	"fork-travel~": 15, "sag-front~": 4, "rear-travel~": 15, "sag-rear~": 4}

// bodySD are those of what the survey estimates from stature and inside leg. The trochanter's line leaves 15.9
// mm of women and 19.3 mm of men.
func bodySD(sex string, n numbers) numbers {
	of := func(variable string) float64 { _, sd := surveyed(variable, sex, n["stature"]); return sd }
	trochanter := map[string]float64{"f": 15.9, "m": 19.3}[sex]
	if sex == "" {
		gap := (77.9 + 0.9729*n["inseam"]) - (113.7 + 0.9352*n["inseam"])
		trochanter = math.Sqrt((15.9*15.9+19.3*19.3)/2 + gap*gap/4)
	}
	return numbers{"trunk-length~": of("d_trunk_troch_to_acromion"), "shoulder-width~": of("biacromialbreadth"),
		"trochanter-height~": trochanter,
		"arm-length~":        armSD(sex, n["stature"])}
}

// armSD is the standard uncertainty of an arm by the survey at a stature: beside the
// line on stature both of its parts are independent (JCGM 100:2008, 5.1.2), and where
// the sex is not known half the gap between the two sexes' arms comes to it.
func armSD(sex string, stature float64) float64 {
	arm := func(s string) (value, square float64) {
		for _, part := range []string{"acromionradialelength", "forearmcenterofgriplength"} {
			x, sd := surveyed(part, s, stature)
			value, square = value+x, square+sd*sd
		}
		return value, square
	}
	if sex != "" {
		_, square := arm(sex)
		return math.Sqrt(square)
	}
	f, fsquare := arm("f")
	m, msquare := arm("m")
	return math.Sqrt((fsquare+msquare)/2 + (m-f)*(m-f)/4)
}

// propagates holds every answer and working that byHand computes, and its ±, to the law
// of propagation with k = 2 (JCGM 100:2008, 5.1.2 and 6.2), applied to byHand:
//
//	U = 2·√Σ((y(x+u) − y(x−u))/2)²
//
// What is typed has the standard uncertainty of its key in sd, 0 where it is not
// there; the other keys of sd are of what stands in.
func propagates(t *testing.T, c *calculators.Calculator, record numbers, choices string, sd numbers,
	byHand func(numbers) map[*calculators.Output]float64) {
	t.Helper()
	typed := choices
	for key, x := range record {
		typed += " " + key + "=" + measure.Exact(x) + "±" + measure.Exact(sd[key])
	}
	r := calctest.Answer(t, c, typed)
	middle := byHand(record)
	variance := map[*calculators.Output]float64{}
	for key, u := range sd {
		up, down := byHand(record.with(numbers{key: record[key] + u})),
			byHand(record.with(numbers{key: record[key] - u}))
		for o, y := range middle {
			move := (up[o] - down[o]) / 2
			if (up[o]-y)*(down[o]-y) > 0 { // a fold: the larger of the two moves counts
				move = math.Max(math.Abs(up[o]-y), math.Abs(down[o]-y))
			}
			variance[o] += move * move
		}
	}
	for o, y := range middle {
		if math.IsNaN(y) {
			assert.False(t, r.At(o).Exists(), "%s: %s", c.Name, o.Name)
			continue
		}
		assert.InDelta(t, y, calctest.Value(r, o), 1e-5, "%s: %s", c.Name, o.Name)
		within := 5e-4
		if o.Name == "left-over" || o.Name == "elbow-bend" {
			// Never below zero, and near straight: both bend where several errors meet, and
			// then a simulation's ± stands, which the law meets only roughly. The coverage
			// test is the judge there.
			within = max(within, 0.25*2*math.Sqrt(variance[o]))
		}
		assert.InDelta(t, 2*math.Sqrt(variance[o]), float64(r.At(o).Uncertainty), within, "%s: ± of %s", c.Name,
			o.Name)
	}
}

// halve finds where something begins to hold, between two ends.
func halve(low, high float64, holds func(float64) bool) float64 {
	for range 50 {
		if middle := (low + high) / 2; holds(middle) {
			high = middle
		} else {
			low = middle
		}
	}
	return (low + high) / 2
}

// root finds where a function that grows is 0, between two ends, by false position:
// an end that stays twice counts half (the Illinois rule). Where the function is 0
// nowhere it returns the end that comes nearest.
func root(low, high float64, f func(float64) float64) float64 {
	atLow, atHigh := f(low), f(high)
	switch {
	case atLow > 0:
		return low
	case atHigh < 0:
		return high
	}
	stayed := 0
	for range 100 {
		x := high - atHigh*(high-low)/(atHigh-atLow)
		switch y := f(x); {
		case math.Abs(y) < 1e-11 || high-low < 1e-13:
			return x
		case y < 0:
			if low, atLow = x, y; stayed == 1 {
				atHigh /= 2
			}
			stayed = 1
		default:
			if high, atHigh = x, y; stayed == -1 {
				atLow /= 2
			}
			stayed = -1
		}
	}
	return (low + high) / 2
}

// toward returns a unit's way in a direction in degrees: 0 forward, 90 up.
func toward(degrees float64) complex128 { return cmplx.Exp(complex(0, degrees*math.Pi/180)) }

func scaled(x float64, z complex128) complex128 { return complex(x, 0) * z }

// degreesOf returns the direction of a way.
func degreesOf(z complex128) float64 { return cmplx.Phase(z) * 180 / math.Pi }

func unit(z complex128) complex128 { return z / complex(cmplx.Abs(z), 0) }

// corner returns the point at a distance a from p and b from q, on the left of the
// way from p to q: a is turned away from that way until the rest is b long.
func corner(p, q complex128, a, b float64) complex128 {
	at := func(turn float64) complex128 { return p + scaled(a, unit(q-p)*toward(turn)) }
	return at(root(0, 180, func(turn float64) float64 { return cmplx.Abs(at(turn)-q) - b }))
}

// hinged returns how far apart the ends of two links are that bend by an angle.
func hinged(first, second, bend float64) float64 {
	return cmplx.Abs(complex(first, 0) + scaled(second, toward(bend)))
}

// bendFor returns the bend at which the ends of two links are a distance apart.
func bendFor(first, second, apart float64) float64 {
	return root(0, 180, func(bend float64) float64 { return apart - hinged(first, second, bend) })
}

// survey is the open survey's summary: by variable and sex, its columns (ANSUR II,
// Gordon et al. 2014, NATICK/TR-15/007).
var survey = func() map[string]map[string]float64 {
	file, err := os.Open("../../testdata/published/ansur2-summary.csv")
	if err != nil {
		panic(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		panic(err)
	}
	all := map[string]map[string]float64{}
	for _, row := range rows[1:] {
		of := map[string]float64{}
		for i, name := range rows[0] {
			of[name], _ = strconv.ParseFloat(row[i], 64)
		}
		all[row[0]+" "+row[1][:1]] = of
	}
	return all
}()

// bySex reads a number for a sex: "m", "f", or "" for the mean of both.
func bySex(sex string, f func(sex string) float64) float64 {
	if sex == "" {
		return (f("f") + f("m")) / 2
	}
	return f(sex)
}

// surveyed returns a length at a stature by the survey's line, and the standard
// deviation round it; without a sex half the gap between the lines comes on top.
func surveyed(variable, sex string, stature float64) (value, sd float64) {
	at := func(sex string) float64 {
		s := survey[variable+" "+sex]
		return s["reg_a"] + s["reg_b"]*stature
	}
	value = bySex(sex, at)
	sd = math.Sqrt(bySex(sex, func(sex string) float64 { s := survey[variable+" "+sex]["resid_sd"]; return s * s }))
	if sex == "" {
		sd = math.Hypot(sd, (at("m")-at("f"))/2)
	}
	return value, sd
}

// segments are the published shares of mass and centres (de Leva 1996, J Biomech
// 29:1223-1230), by sex and the names of the ends.
var segments = func() map[string][2]float64 {
	data, err := os.ReadFile("../../testdata/published/body-segments.json")
	if err != nil {
		panic(err)
	}
	var tables map[string]json.RawMessage
	if err := json.Unmarshal(data, &tables); err != nil {
		panic(err)
	}
	all := map[string][2]float64{}
	for sex, name := range map[string]string{"m": "deLeva_male", "f": "deLeva_female"} {
		var rows []map[string]string
		if err := json.Unmarshal(tables[name], &rows); err != nil {
			panic(err)
		}
		for _, row := range rows {
			mass, _ := strconv.ParseFloat(row["Mass"], 64)
			centre, _ := strconv.ParseFloat(row["CM Long"], 64)
			all[sex+" "+row["Segment"]] = [2]float64{mass, centre}
		}
	}
	return all
}()

// handRider is a rider's lengths, mm.
type handRider struct {
	sex                                 string
	stature, trunk, upper, fore, aside  float64
	thigh, shank, foot, ball, malleolus float64
	neck, vertex                        float64 // shoulder to neck, neck to crown
	crank, pedal, sole, cleat           float64
	arm, shoulders, upperShare          float64
}

// handRiderOf makes the rider of a record; what was not measured is estimated from
// the survey's lines.
func handRiderOf(n numbers, sex string) handRider {
	r := handRider{sex: sex, stature: n["stature"]}
	of := func(variable string) float64 { x, _ := surveyed(variable, sex, r.stature); return x }
	mean := func(variable, sex string) float64 { return survey[variable+" "+sex]["mean"] }
	n = n.complete(numbers{"trunk-length": of("d_trunk_troch_to_acromion"), "shoulder-width": of("biacromialbreadth"),
		"arm-length": of("acromionradialelength") + of("forearmcenterofgriplength")})
	r.trunk, r.arm, r.shoulders = n["trunk-length"], n["arm-length"], n["shoulder-width"]
	r.upperShare = bySex(sex, func(s string) float64 {
		up, low := mean("acromionradialelength", s), mean("forearmcenterofgriplength", s)
		return up / (up + low)
	})
	r.upper, r.fore = r.arm*r.upperShare, r.arm*(1-r.upperShare)
	// The shoulder joints lie 12 % of the breadth inside the bony points, from memory.
	r.aside = (n["bar-width"] - n["grip-length"] - 0.88*r.shoulders) / 2
	// Lines on the inside leg, from the survey's public table; the share of the ball in
	// the foot likewise.
	inseam := n["inseam"]
	trochanter := bySex(sex, func(s string) float64 {
		return map[string]float64{"f": 113.7 + 0.9352*inseam, "m": 77.9 + 0.9729*inseam}[s]
	})
	trochanter = n.complete(numbers{"trochanter-height": trochanter})["trochanter-height"]
	knee := bySex(sex, func(s string) float64 {
		return map[string]float64{"f": 34.2 + 0.5518*inseam, "m": 50.3 + 0.5218*inseam}[s]
	})
	r.malleolus, r.foot = of("lateralmalleolusheight"), of("footlength")
	r.ball = r.foot * bySex(sex, func(s string) float64 { return map[string]float64{"f": 0.7392, "m": 0.7410}[s] })
	r.thigh, r.shank = trochanter-knee, knee-r.malleolus
	r.neck, r.vertex = of("cervicaleheight")-of("acromialheight"), r.stature-of("cervicaleheight")
	r.crank, r.pedal, r.sole, r.cleat = n["crank-length"], n["pedal-height"], n["sole-height"], n["cleat-behind-ball"]
	return r
}

// onFoot returns a mark of the foot, which is given ahead of and above the spindle
// with the sole level, once the heel is raised: that turns the foot clockwise.
func onFoot(spindle complex128, ahead, above, heelUp float64) complex128 {
	return spindle + complex(ahead, above)*toward(-heelUp)
}

// ankle returns the ankle joint, which lies 22 % of the foot ahead of the heel.
func (r handRider) ankle(spindle complex128, heelUp float64) complex128 {
	return onFoot(spindle, 0.22*r.foot-(r.ball-r.cleat), r.malleolus+r.sole+r.pedal, heelUp)
}

// armBend returns the elbow's bend for a distance from shoulder to grip as seen from
// the side.
func (r handRider) armBend(chord float64) float64 {
	return bendFor(r.upper, r.fore, math.Hypot(chord, r.aside))
}

// armChord is the same the other way round.
func (r handRider) armChord(bend float64) float64 {
	full := hinged(r.upper, r.fore, bend)
	return math.Sqrt(full*full - r.aside*r.aside)
}

// elbow returns the elbow in space, z to the side: it hangs from the line between
// shoulder and grip, square to it, in the plane through that line that the bike's own
// downward square lies in.
func (r handRider) elbow(shoulder, grip complex128) (xy complex128, z float64) {
	way := grip - shoulder
	chord := cmplx.Abs(way)
	full := math.Hypot(chord, r.aside)
	flat := corner(0, complex(full, 0), r.upper, r.fore) // along the line, and off it
	down := way / complex(chord, 0) * toward(-90)
	return shoulder + scaled(real(flat)/full, way) + scaled(imag(flat), down), r.aside * real(flat) / full
}

// dip returns how far the forearm points below the horizontal, degrees, in space.
func (r handRider) dip(shoulder, grip complex128) float64 {
	xy, z := r.elbow(shoulder, grip)
	fore := grip - xy
	return math.Atan2(-imag(fore), math.Hypot(real(fore), r.aside-z)) * 180 / math.Pi
}

// body is a pose of which the centre of mass is asked.
type bodyPose struct {
	hip, shoulder, elbow, hand complex128
	knees, ankles, heels, toes [2]complex128
}

// centre returns the whole body's centre of mass. The head leans half as far from
// upright as the trunk, and the wrist is at 82 % from elbow to grip.
func (r handRider) centre(p bodyPose) complex128 {
	trunk := p.shoulder - p.hip
	neck := p.shoulder + scaled(r.neck, unit(trunk))
	vertex := neck + scaled(r.vertex, toward(90-(90-degreesOf(trunk))/2))
	wrist := p.elbow + scaled(0.82, p.hand-p.elbow)
	mass, moment := 0.0, complex(0, 0)
	add := func(count float64, segment string, from, to complex128) {
		m := count * bySex(r.sex, func(s string) float64 { return segments[s+" "+segment][0] })
		share := bySex(r.sex, func(s string) float64 { return segments[s+" "+segment][1] })
		mass += m
		moment += scaled(m, from+scaled(share, to-from))
	}
	add(1, "Head 2", vertex, neck)
	add(1, "Trunk 3", p.shoulder, p.hip)
	add(2, "Upper arm", p.shoulder, p.elbow)
	add(2, "Forearm", p.elbow, wrist)
	add(2, "Hand", p.hand, p.hand)
	for i := range 2 {
		add(1, "Thigh", p.hip, p.knees[i])
		add(1, "Shank", p.knees[i], p.ankles[i])
		add(1, "Foot", p.heels[i], p.toes[i])
	}
	return moment / complex(mass, 0)
}

// seatLine is the calibrated leg on a saddle: the model's constants, as published
// beside the model, and nothing else of it.
type seatLine struct {
	rider   handRider
	up      complex128 // towards the saddle
	hipOff  float64    // how much higher the hip is than it was taken to be, mm
	angle   float64
	neutral float64
}

// heelUp is the foot's rule, φ = 20° − 12°·sin(θ − 20°), at neutral height.
func heelUp(crank float64) float64 { return 20 - 12*math.Sin((crank-20)*math.Pi/180) }

// onSeatLine finds the neutral saddle height: the knee bends by 35 degrees with the
// crank in line, the hip 19 mm above the saddle.
func onSeatLine(r handRider, angle float64) seatLine {
	s := seatLine{rider: r, up: toward(180 - angle), angle: angle}
	ankle := r.ankle(scaled(-r.crank, s.up), heelUp(90+angle))
	s.neutral = root(100, 1600, func(h float64) float64 {
		return cmplx.Abs(scaled(h, s.up)+19i-ankle) - hinged(r.thigh, r.shank, 35)
	})
	return s
}

// hip returns the hip, 19 mm above the saddle, or as much more as a test says: neither
// heel nor pelvis gives.
func (s seatLine) hip(height float64) complex128 {
	return scaled(height, s.up) + complex(0, 19+s.hipOff)
}

// limb returns knee, ankle, heel and toe at a crank angle.
func (s seatLine) limb(height, crank float64) (knee, ankle, heel, toe complex128) {
	r := s.rider
	up := heelUp(crank)
	spindle := scaled(r.crank, toward(90-crank))
	ankle = r.ankle(spindle, up)
	heel = onFoot(spindle, -(r.ball - r.cleat), r.sole+r.pedal, up)
	toe = onFoot(spindle, r.foot-(r.ball-r.cleat), r.sole+r.pedal, up)
	return corner(s.hip(height), ankle, r.thigh, r.shank), ankle, heel, toe
}

// shoulder returns the seated rider's shoulder with the hands on the grips.
func (s seatLine) shoulder(height float64, grip complex128, bend float64) complex128 {
	return corner(s.hip(height), grip, s.rider.trunk, s.rider.armChord(bend))
}

// trunk returns the seated rider's trunk above the horizontal, degrees.
func (s seatLine) trunk(height float64, grip complex128, bend float64) float64 {
	return degreesOf(s.shoulder(height, grip, bend) - s.hip(height))
}

// load returns the seated rider's centre of mass with the cranks level.
func (s seatLine) load(height float64, grip complex128, bend float64) complex128 {
	p := bodyPose{hip: s.hip(height), shoulder: s.shoulder(height, grip, bend), hand: grip}
	p.elbow, _ = s.rider.elbow(p.shoulder, grip)
	for i, crank := range [2]float64{90, 270} {
		p.knees[i], p.ankles[i], p.heels[i], p.toes[i] = s.limb(height, crank)
	}
	return s.rider.centre(p)
}

// handStance is how a rider stands: trunk, mean knee bend and slope in degrees.
type handStance struct{ trunk, knee, slope float64 }

// stands returns the rider with a front knee of t: heels 5 degrees down in front and
// up behind, cranks level. off is how far the centre of mass is ahead of plumb.
func (r handRider) stands(s handStance, grip complex128, t float64) (p bodyPose, off float64) {
	for i, side := range [2]float64{1, -1} {
		spindle := complex(side*r.crank, 0)
		p.ankles[i] = r.ankle(spindle, -5*side)
		p.heels[i] = onFoot(spindle, -(r.ball - r.cleat), r.sole+r.pedal, -5*side)
		p.toes[i] = onFoot(spindle, r.foot-(r.ball-r.cleat), r.sole+r.pedal, -5*side)
	}
	p.hip = corner(p.ankles[1], p.ankles[0], hinged(r.thigh, r.shank, 2*s.knee-t), hinged(r.thigh, r.shank, t))
	for i := range 2 {
		p.knees[i] = corner(p.hip, p.ankles[i], r.thigh, r.shank)
	}
	p.shoulder = p.hip + scaled(r.trunk, toward(s.trunk))
	p.hand = grip
	if far := math.Hypot(cmplx.Abs(grip-p.shoulder), r.aside); far >= r.arm {
		p.hand = p.shoulder + scaled(r.arm/far, grip-p.shoulder)
		p.elbow = p.shoulder + scaled(r.upper/far, grip-p.shoulder)
	} else {
		p.elbow, _ = r.elbow(p.shoulder, grip)
	}
	// Gravity leans back as the ground rises.
	return p, real(r.centre(p) * toward(s.slope))
}

// balance returns the front knee at which the centre of mass is plumb over the feet:
// the hip, and with it the centre, goes forward as that knee bends.
func (r handRider) balance(s handStance, grip complex128) float64 {
	low := math.Max(0, 2*s.knee-165)
	return root(low+3, 2*s.knee-low-3, func(t float64) float64 { _, off := r.stands(s, grip, t); return off })
}

// elbowAt returns the elbow's bend in balance.
func (r handRider) elbowAt(s handStance, grip complex128) float64 {
	p, _ := r.stands(s, grip, r.balance(s, grip))
	return r.armBend(cmplx.Abs(grip - p.shoulder))
}

// slack returns how much further the grips could be in balance.
func (r handRider) slack(s handStance, grip complex128) float64 {
	p, _ := r.stands(s, grip, r.balance(s, grip))
	return r.armChord(0) - cmplx.Abs(grip-p.shoulder)
}

// back returns how far the centre of mass can go back until the arms are straight:
// the front knee is straightened in small steps until they are.
func (r handRider) back(s handStance, grip complex128) float64 {
	t := walk(r.balance(s, grip), -1, func(t float64) bool {
		p, _ := r.stands(s, grip, t)
		return cmplx.Abs(grip-p.shoulder) > r.armChord(0)
	})
	_, off := r.stands(s, grip, t)
	return -off
}

// forward returns how far it can go forward until the elbows bend by 120 degrees or
// the shoulders are over the grips.
func (r handRider) forward(s handStance, grip complex128) float64 {
	t := walk(r.balance(s, grip), 1, func(t float64) bool {
		p, _ := r.stands(s, grip, t)
		return cmplx.Abs(grip-p.shoulder) < r.armChord(120) || real((p.shoulder-grip)*toward(s.slope)) > 0
	})
	_, off := r.stands(s, grip, t)
	return off
}

// walk goes in steps until something ends it, and halves the last step.
func walk(from, step float64, over func(float64) bool) float64 {
	for range 180 {
		if over(from + step) {
			break
		}
		from += step
	}
	return from + step*halve(0, 1, func(x float64) bool { return over(from + step*x) })
}

// handBike is a bike's axles and steering axis.
type handBike struct {
	front, rear       complex128
	frontRad, rearRad float64
	head              float64
}

// handBikeOf solves a chart: the front axle is an offset away from the steering axis,
// the bottom bracket lies the drop below the line between the axles, and both wheels
// stand on one ground.
func handBikeOf(n numbers) handBike {
	b := handBike{head: n["head-angle"], frontRad: n["front-rim"]/2 + n["front-tyre"],
		rearRad: n["rear-rim"]/2 + n["rear-tyre"]}
	down := toward(-b.head)
	place := func(rear float64) {
		b.rear = complex(-math.Sqrt(n["chainstay"]*n["chainstay"]-rear*rear), rear)
		height := rear + b.frontRad - b.rearRad
		at := func(along float64) complex128 {
			return complex(n["reach"], n["stack"]) + scaled(along, down) + scaled(n["fork-offset"], down*toward(90))
		}
		b.front = at(root(0, 2000, func(along float64) float64 { return height - imag(at(along)) }))
	}
	place(root(-150, 200, func(rear float64) float64 {
		place(rear)
		share := -real(b.rear) / real(b.front-b.rear)
		return imag(b.rear) + share*imag(b.front-b.rear) - n["bb-drop"]
	}))
	return b
}

// tilt returns by how many degrees a bike tips forward when both ends sink: the fork
// along its axis, the rear axle straight up.
func (b handBike) tilt(n numbers) float64 {
	front := b.front - scaled(n["fork-travel"]*n["sag-front"]/100, toward(-b.head))
	rear := b.rear + complex(0, n["rear-travel"]*n["sag-rear"]/100)
	// Tipped forward by the right angle, both wheels touch one level ground.
	return root(-30, 30, func(tip float64) float64 {
		f, r := front*toward(-tip), rear*toward(-tip)
		return (imag(r) - b.rearRad) - (imag(f) - b.frontRad)
	})
}

// The record of a rider on a bike that most tests of this section use. Nothing in it
// is equal to anything else, and nothing is at a special place.
var testRider = numbers{
	"inseam": 812, "stature": 1713, "trunk-length": 527, "arm-length": 652, "shoulder-width": 383,
	"trochanter-height": 874, "crank-length": 167.5, "pedal-height": 14, "sole-height": 11, "cleat-behind-ball": 17,
	"bar-width": 764, "grip-length": 126,
}

var testBike = numbers{
	"grip-x": 437, "grip-y": 703, "reach": 451, "stack": 617, "head-angle": 64.7, "seat-angle": 76.2,
	"chainstay": 433, "bb-drop": 27, "fork-offset": 42, "front-rim": 622, "front-tyre": 62, "rear-rim": 584,
	"rear-tyre":   59,
	"fork-travel": 163, "sag-front": 23, "rear-travel": 147, "sag-rear": 31,
}

// grips returns where a record's grips are on the level bike.
func (n numbers) grips() complex128 { return complex(n["grip-x"], n["grip-y"]) }

// tableCell is a number in a table, at full precision, with its unit.
type tableCell struct {
	table  string
	row    int
	column string
	value  float64
	unit   *measure.Unit
}

// cases holds a calculator to a case and to cells of its tables.
func cases(t *testing.T, c *calculators.Calculator, k calctest.Case, cells []tableCell, others ...calctest.Case) {
	t.Helper()
	r := calctest.Answer(t, c, k.Typed)
	for _, x := range cells {
		k.Want = append(k.Want, calctest.Cell(x.table, x.row, x.column, x.value, 0.501)) // as it is said
		x.compare(t, r)
	}
	calctest.Cases(t, c, append(others, k)...)
}

func (x tableCell) compare(t *testing.T, r *calculators.Result) {
	t.Helper()
	for _, table := range r.Tables {
		at := slices.IndexFunc(table.Columns, func(c calculators.Column) bool { return c.Name == x.column })
		if table.Name != x.table || at < 0 || x.row >= len(table.Rows) {
			continue
		}
		var got measure.Amount
		switch c := table.Rows[x.row][at].(type) {
		case measure.Amount:
			got = c
		case measure.Difference:
			got = c.Amount
		case measure.Uncertain:
			got = c.Amount
		}
		assert.Equal(t, x.unit, got.Unit, "%s, row %d, %s", x.table, x.row, x.column)
		assert.InDelta(t, x.value, got.Value, 1e-4, "%s, row %d, %s", x.table, x.row, x.column)
		return
	}
	assert.Fail(t, "no such cell", "%s, row %d, %s", x.table, x.row, x.column)
}

package frame

import (
	"math"
	"strconv"
	"strings"
)

// The tests' own rider: a man whose missing lengths come from the lines and means of
// the survey (Gordon et al. 2014, NATICK/TR-15/007), seated by the calibrated leg model
// (its fitted constants are repeated here), standing in balance, weighed with de Leva
// 1996, table 4. Joints are found by turning a limb until its end is as far away as it
// has to be.

type rider struct {
	stature, inseam, trochanter, trunk, arm, shoulders float64
	bar, grip                                          float64 // bar and grip length
	crank, pedal, sole, cleat                          float64
}

func (r rider) knee() float64     { return 50.3 + 0.5218*r.inseam } // height of the knee
func (r rider) ankle() float64    { return 4.983 + 0.038675*r.stature }
func (r rider) thigh() float64    { return r.trochanter - r.knee() }
func (r rider) shank() float64    { return r.knee() - r.ankle() }
func (r rider) foot() float64     { return 30.134 + 0.137252*r.stature }
func (r rider) ball() float64     { return 0.7410 * r.foot() }
func (r rider) upper() float64    { return r.arm * 335.2445 / (335.2445 + 349.0103) }
func (r rider) fore() float64     { return r.arm - r.upper() }
func (r rider) aside() float64    { return (r.bar - r.grip - 0.88*r.shoulders) / 2 }
func (r rider) neck() float64     { return -78.121 + 0.908443*r.stature }
func (r rider) acromion() float64 { return -126.885 + 0.892614*r.stature }

// spans is how far apart the ends of two limbs are whose joint bends by an angle.
func spans(a, b, bend float64) float64 { return vec{a, 0}.plus(towards(bend).times(b)).length() }

// mark is a mark of the foot, so far ahead of the ball's joint and above the ground
// under the shoe, with the heel up by an angle: the spindle lies the cleat behind the
// ball and under pedal and sole.
func (r rider) mark(spindle vec, fromHeel, above, heelUp float64) vec {
	return spindle.plus(vec{fromHeel - (r.ball() - r.cleat), above + r.pedal + r.sole}.turned(-heelUp))
}

// ankleAt is the ankle joint: 0.22 of the foot ahead of the heel.
func (r rider) ankleAt(spindle vec, heelUp float64) vec {
	return r.mark(spindle, 0.22*r.foot(), r.ankle(), heelUp)
}

// limb turns the first of two limbs, which starts at a joint, forward or back from the
// line to the end, until the second one reaches the end.
func limb(from, to vec, a, b float64, sense float64) vec {
	way := to.minus(from)
	line := math.Atan2(way.y, way.x) * 180 / math.Pi
	turn := root(0, 180,
		func(deg float64) float64 { return from.plus(towards(line+sense*deg).times(a)).minus(to).length() - b })
	return from.plus(towards(line + sense*turn).times(a))
}

// leg is one leg, from the hip down.
type leg struct{ knee, ankle, heel, toe vec }

func (r rider) leg(hip, spindle vec, heelUp float64) leg {
	l := leg{ankle: r.ankleAt(spindle, heelUp), heel: r.mark(spindle, 0, 0, heelUp),
		toe: r.mark(spindle, r.foot(), 0, heelUp)}
	l.knee = limb(hip, l.ankle, r.thigh(), r.shank(), 1)
	return l
}

// seated returns hip and legs on level cranks on a saddle: the foot's rule of the
// leg model, and neither heel nor pelvis giving.
func (r rider) seated(saddle vec) (hip vec, front, rear leg) {
	pedal := func(fromTop float64) vec { return towards(90 - fromTop).times(r.crank) }
	ankling := func(fromTop float64) float64 { return 20 - 12*math.Sin(rad(fromTop-20)) }
	hip = saddle.plus(vec{0, 19}) // nothing gives
	return hip, r.leg(hip, pedal(90), ankling(90)), r.leg(hip, pedal(270), ankling(270))
}

// bodyOf is a whole rider from the side.
type bodyOf struct {
	hip, shoulder, elbow, grip vec
	trunk                      float64
	front, rear                leg
}

// sit puts the hands on the grips with elbows bent by an angle.
func (r rider) sit(saddle, grip vec, bend float64) bodyOf {
	hip, front, rear := r.seated(saddle)
	full := spans(r.upper(), r.fore(), bend)
	chord := math.Sqrt(full*full - r.aside()*r.aside())
	shoulder := limb(hip, grip, r.trunk, chord, 1)
	lean := shoulder.minus(hip)
	return r.hands(bodyOf{hip: hip, shoulder: shoulder, grip: grip, trunk: math.Atan2(lean.y, lean.x) * 180 / math.Pi,
		front: front, rear: rear})
}

// hands places the elbow below the line to the grip, which leads outwards too. Arms
// that do not reach point straight at it, and the hands end where they end.
func (r rider) hands(b bodyOf) bodyOf {
	way := b.grip.minus(b.shoulder)
	full := math.Hypot(way.length(), r.aside())
	if full > r.arm {
		b.elbow = b.shoulder.plus(way.times(r.upper() / full))
		b.grip = b.shoulder.plus(way.times(r.arm / full))
		return b
	}
	flat := limb(vec{}, vec{full, 0}, r.upper(), r.fore(), -1)
	b.elbow = b.shoulder.plus(way.times(flat.x / full)).plus(vec{way.y, -way.x}.times(-flat.y / way.length()))
	return b
}

// bend is the elbow's, 0 for a straight arm.
func (r rider) bend(b bodyOf) float64 {
	full := math.Hypot(b.grip.minus(b.shoulder).length(), r.aside())
	return root(0, 180, func(deg float64) float64 { return full - spans(r.upper(), r.fore(), deg) })
}

// stand stands the rider ready on a slope: the trunk at 45 degrees, knees bent by 50 in
// the mean, the front heel 5 degrees down and the rear one up, the foot on the spindle as
// it is seated, the centre of mass plumb over the bottom bracket.
func (r rider) stand(grip vec, slope float64) bodyOf {
	ahead, behind := vec{r.crank, 0}, vec{-r.crank, 0}
	pose := func(knee float64) bodyOf {
		front, rear := r.ankleAt(ahead, -5), r.ankleAt(behind, 5)
		hip := limb(rear, front, spans(r.thigh(), r.shank(), 100-knee), spans(r.thigh(), r.shank(), knee), 1)
		b := bodyOf{hip: hip, shoulder: hip.plus(towards(45).times(r.trunk)), grip: grip, trunk: 45,
			front: r.leg(hip, ahead, -5), rear: r.leg(hip, behind, 5)}
		return r.hands(b)
	}
	return pose(root(1, 99, func(knee float64) float64 { return r.centre(pose(knee)).turned(slope).x }))
}

// centre weighs the segments (de Leva 1996, men).
func (r rider) centre(b bodyOf) vec {
	var sum vec
	total := 0.0
	part := func(mass, share float64, from, to vec) {
		total += mass
		sum = sum.plus(from.plus(to.minus(from).times(share)).times(mass))
	}
	neck := b.shoulder.plus(towards(b.trunk).times(r.neck() - r.acromion()))
	vertex := neck.plus(towards(90 - (90-b.trunk)/2).times(r.stature - r.neck()))
	part(0.0694, 0.5002, vertex, neck)
	part(0.4346, 0.431, b.shoulder, b.hip)
	part(2*0.0271, 0.5772, b.shoulder, b.elbow)
	part(2*0.0162, 0.4574*0.82, b.elbow, b.grip) // the wrist 0.82 of the way to the grip
	part(2*0.0061, 1, b.elbow, b.grip)
	for _, l := range []leg{b.front, b.rear} {
		part(0.1416, 0.4095, b.hip, l.knee)
		part(0.0433, 0.4395, l.knee, l.ankle)
		part(0.0137, 0.4415, l.heel, l.toe)
	}
	return sum.times(1 / total)
}

// typedOf writes inputs with their values and standard uncertainties.
func typedOf(keys string, x, sd []float64) string {
	var b strings.Builder
	for i, key := range strings.Fields(keys) {
		b.WriteString(key + "=" + strconv.FormatFloat(x[i], 'g', -1, 64) + "±" +
			strconv.FormatFloat(sd[i], 'g', -1, 64) + " ")
	}
	return b.String()
}

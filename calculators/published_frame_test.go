package calculators_test

import (
	"math"
	"strings"
	"testing"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

var _ = register(rowChecks{
	"geo.A.": geometryRow, "geo.B.": geometryRow, "geo.C.": geometryRow,
	"pose.A.": changedRow, "pose.B.": changedRow, "pose.C.": changedRow,

	"st.eff_sta.": func(t *testing.T, r publishedRow) any {
		b := solved(t, tubeChart(t, r, 630))
		angle, ok := b.SeatAngleAt(r.num(t, "y"))
		if !ok {
			t.Fatal("no seat angle at the saddle")
		}
		return angle
	},
	"st.ett_actual": func(t *testing.T, r publishedRow) any {
		return solved(t, tubeChart(t, r, r.num(t, "stack"))).EffectiveTopTube()
	},

	"cockpit.spacer20": func(t *testing.T, r publishedRow) any {
		p := geometry.SpacerVector(r.num(t, "spacer"), r.num(t, "hta"))
		return map[string]any{"dx": p.X, "dy": p.Y}
	},
	"cockpit.bar_centre.": func(t *testing.T, r publishedRow) any {
		c := geometry.Cockpit{
			Spacers: r.num(t, "stack_above_headtube_to_stem_centre"),
			Stem:    r.num(t, "stem"), StemAngle: r.num(t, "stem_angle"),
		}
		return xy(held(t, c, headChart(t, r)).Bar)
	},
	"cockpit.grip": func(t *testing.T, r publishedRow) any {
		b := solved(t, chartA())
		c := geometry.Cockpit{
			Headset: 5, Spacers: 5, ClampHeight: 40, Stem: 50,
			Rise: r.num(t, "rise"), Back: r.num(t, "back"), Roll: r.num(t, "roll_forward_deg"),
		}
		hold := held(t, c, chartA())
		bar := r.list(t, "bar_centre")
		near(t, "bar centre", hold.Bar.Distance(geometry.Point{X: bar[0], Y: bar[1]}), 0, 1e-6)
		ahead := hold.Grip.Sub(b.AxisTop).Dot(b.AxisAhead())
		return map[string]any{"x": hold.Grip.X, "y": hold.Grip.Y, "ahead_of_steering_axis": ahead}
	},
	"cockpit.reach_at_higher_stack": func(t *testing.T, r publishedRow) any {
		return solved(t, headChart(t, r)).ReachAt(r.num(t, "new_stack"))
	},
	"cockpit.eff_tt_at_bar_height": func(t *testing.T, r publishedRow) any {
		c := headChart(t, r)
		c.SeatAngle = r.num(t, "sta_eff")
		return solved(t, c).RoomAt(r.num(t, "y"))
	},
	"cockpit.sta_shift": func(t *testing.T, r publishedRow) any {
		slack, steep := chartA(), chartA()
		slack.SeatAngle, steep.SeatAngle = 75, 77
		return solved(t, steep).SeatLineX(r.num(t, "y")) - solved(t, slack).SeatLineX(r.num(t, "y"))
	},
	"clear.pedal_lean": func(t *testing.T, r publishedRow) any {
		lean, ok := geometry.PedalLean(r.num(t, "bb_height"), r.num(t, "crank"),
			r.num(t, "pedal_half_thickness"), r.num(t, "pedal_outer_lateral"))
		if !ok {
			t.Fatal("no lean")
		}
		return lean
	},
	"clear.toe": func(t *testing.T, r publishedRow) any { return solved(t, chartA()).ToeGap(r.num(t, "crank")) },
	"flop.curvature": func(t *testing.T, r publishedRow) any {
		wheel, head, offset := r.num(t, "r"), r.num(t, "hta"), r.num(t, "offset")
		flop := geometry.WheelFlop(geometry.Trail(wheel, head, offset), head)
		// The second difference of the head's height, by a step of 0.05 degrees.
		const step = 0.05
		curvature := 2 * geometry.HeadDrop(wheel, head, offset, step) / math.Pow(step*math.Pi/180, 2)
		near(t, "curvature", curvature, flop, 1e-3)
		return flop
	},
	"flop.drop10": func(t *testing.T, r publishedRow) any { return headDrop(t, r, r.num(t, "steer_deg")) },
	"flop.drop90": func(t *testing.T, r publishedRow) any { return headDrop(t, r, 90) },

	"tyre.": func(t *testing.T, r publishedRow) any {
		radius, ok := geometry.TyreRadius(r.num(t, "bsd"), r.num(t, "w"))
		if !ok {
			t.Fatal("no radius")
		}
		return map[string]any{"r": radius, "circ": 2 * math.Pi * radius}
	},
})

// chartA is bike A of the data, for the rows that only name it.
func chartA() geometry.Chart {
	return geometry.Chart{
		Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, Chainstay: 435, Drop: 35,
		ForkOffset: 44, FrontRadius: 372, RearRadius: 372,
	}
}

// headChart is bike A with the head of a row.
func headChart(t *testing.T, r publishedRow) geometry.Chart {
	c := chartA()
	c.Reach, c.Stack, c.HeadAngle = r.num(t, "reach"), r.num(t, "stack"), r.num(t, "hta")
	return c
}

// tubeChart is bike A with the seat tube of a row, read at a level.
func tubeChart(t *testing.T, r publishedRow, level float64) geometry.Chart {
	t.Helper()
	c := chartA()
	c.SeatTubeAngle, c.SeatAngleHeight = r.num(t, "sta_actual"), level
	back := level/math.Tan(c.SeatTubeAngle*math.Pi/180) - r.num(t, "x0_forward")
	c.SeatAngle = math.Atan2(level, back) * 180 / math.Pi
	return c
}

// rowChart is the chart of a geometry row, which prints both axles' drops.
func rowChart(t *testing.T, r publishedRow) geometry.Chart {
	t.Helper()
	c := geometry.Chart{
		Reach: r.num(t, "reach"), Stack: r.num(t, "stack"),
		HeadAngle: r.num(t, "hta"), SeatAngle: r.num(t, "sta_eff"),
		Chainstay: r.num(t, "chainstay"), ForkOffset: r.num(t, "fork_offset"),
		FrontRadius: r.num(t, "r_front"), RearRadius: r.num(t, "r_rear"),
	}
	c.BBHeight = c.FrontRadius - r.num(t, "drop_front")
	near(t, "the two drops", c.RearRadius-r.num(t, "drop_rear"), c.BBHeight, 1e-9)
	return c
}

func solved(t *testing.T, c geometry.Chart) geometry.Bike {
	t.Helper()
	b, err := c.Solve()
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func held(t *testing.T, c geometry.Cockpit, chart geometry.Chart) geometry.Hold {
	t.Helper()
	h, ok := c.Hold(solved(t, chart))
	if !ok {
		t.Fatal("no hold")
	}
	return h
}

func xy(p geometry.Point) map[string]any { return map[string]any{"x": p.X, "y": p.Y} }

func headDrop(t *testing.T, r publishedRow, steer float64) any {
	return geometry.HeadDrop(r.num(t, "r"), r.num(t, "hta"), r.num(t, "offset"), steer)
}

// geometryRow answers a row about a bike as its chart describes it. The same
// bike is solved again from its drop, as charts print it.
func geometryRow(t *testing.T, r publishedRow) any {
	byHeight := rowChart(t, r)
	b := solved(t, byHeight)
	byDrop := byHeight
	byDrop.BBHeight, byDrop.Drop = 0, b.Drop()
	near(t, "front axle from drop", solved(t, byDrop).Front.Distance(b.Front), 0, 1e-6)
	near(t, "rear axle from drop", solved(t, byDrop).Rear.Distance(b.Rear), 0, 1e-6)
	switch r.last(".") {
	case "front_centre_horizontal":
		return b.FrontCentreLevel()
	case "front_centre_direct":
		return b.FrontCentre()
	case "wheelbase":
		return b.Wheelbase()
	case "axis_length_headtube_top_to_axle_foot":
		return b.AxisLength
	case "ground_trail":
		return b.Trail()
	case "mechanical_trail":
		return b.MechanicalTrail()
	case "wheel_flop_factor":
		return b.WheelFlop()
	case "bb_height":
		return b.BBHeight()
	case "ett":
		return b.EffectiveTopTube()
	}
	return nil
}

// changes are what the rows about a changed bike name.
var changes = map[string]geometry.Change{
	"fork_plus20_along_axis":          {Fork: 20},
	"front_sag45_along_axis":          {FrontSag: 45},
	"front_sag45_rear_vertical_sag42": {FrontSag: 45, RearSag: 42},
	"offset_plus7":                    {Offset: 7},
	"rear_radius_minus19":             {RearRadius: -19},
	"front_radius_plus5":              {FrontRadius: 5},
	"both_radius_minus19":             {FrontRadius: -19, RearRadius: -19},
	"angle_headset_minus1_pivot57.5":  {HeadsetAngle: -1, HeadsetPivot: 57.5},
}

func changedRow(t *testing.T, r publishedRow) any {
	name := strings.SplitN(r.ID, ".", 3)[2]
	change, ok := changes[name]
	if !ok {
		t.Fatalf("no change %q", name)
	}
	before := solved(t, rowChart(t, r))
	b, err := geometry.Settle(before, change)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "both wheels on the ground", b.Front.Y-b.FrontRadius, b.Ground(), 1e-9)
	return map[string]any{
		"beta": b.SeatAngle - before.SeatAngle, "hta": b.HeadAngle, "sta": b.SeatAngle,
		"reach": b.Reach(), "stack": b.Stack(), "bbh": b.BBHeight(), "wb": b.Wheelbase(),
		"fc": b.FrontCentre(), "trail": b.Trail(), "mech": b.MechanicalTrail(),
		"flop": b.WheelFlop(), "ett": b.EffectiveTopTube(),
	}
}

// The benchmark bicycle of Meijaard et al. 2007, table 1, in m and kg; its front
// load and limits follow from the masses.
var _ = register(rowChecks{
	"bench.fork_offset": func(t *testing.T, r publishedRow) any {
		return offsetForTrail(r.num(t, "rF"), 72, r.num(t, "c"))
	},
	"bench.mechanical_trail": func(t *testing.T, r publishedRow) any {
		offset := offsetForTrail(r.num(t, "rF"), 72, r.num(t, "c"))
		return geometry.MechanicalTrail(r.num(t, "rF"), 72, offset)
	},
	"bench.trail_back_from_offset": func(t *testing.T, r publishedRow) any {
		offset := offsetForTrail(r.num(t, "rF"), 72, r.num(t, "c"))
		return geometry.Trail(r.num(t, "rF"), 72, offset)
	},
	"bench.total_mass": func(t *testing.T, r publishedRow) any { return benchmark(t, r).Mass },
	"bench.com_x":      func(t *testing.T, r publishedRow) any { return benchmark(t, r).X },
	"bench.com_h":      func(t *testing.T, r publishedRow) any { return benchmark(t, r).Y },
	"bench.front_load_fraction": func(t *testing.T, r publishedRow) any {
		return benchmarkBalance(t,
			r).FrontShare(0)
	},
	"bench.stoppie_limit_g": func(t *testing.T, r publishedRow) any { return benchmarkBalance(t, r).PitchOver(0) },
	"bench.loopout_deg":     func(t *testing.T, r publishedRow) any { return benchmarkBalance(t, r).LightSlope(0) },

	"measured.": func(t *testing.T, r publishedRow) any {
		radius := rollout(t, r)
		if r.last(".") == "rF" {
			return radius
		}
		return geometry.Trail(radius, r.num(t, "head_angle_deg"), r.num(t, "fork_offset_m"))
	},
	"measured.I.": measuredByDistances,
	"measured.A.combine": func(t *testing.T, r publishedRow) any {
		f, p := r.list(t, "frame"), r.list(t, "rider")
		sum, ok := body.Combine(body.Part{Mass: f[0], X: f[1], Y: f[2]}, body.Part{Mass: p[0], X: p[1], Y: p[2]})
		if !ok {
			t.Fatal("no sum")
		}
		return map[string]any{"x": sum.X, "z": sum.Y}
	},
	"static.bench.":       frontLoad,
	"static.mtb.":         frontLoad,
	"static.mtb.loopout":  func(t *testing.T, r publishedRow) any { return loaded(t, r, 1).LightSlope(0) },
	"static.mtb.stoppie":  func(t *testing.T, r publishedRow) any { return loaded(t, r, r.num(t, "w")).PitchOver(0) },
	"static.wilson":       func(t *testing.T, r publishedRow) any { return loaded(t, r, r.num(t, "w")).PitchOver(0) },
	"static.I_plus_rider": combined,
	"static.A_plus_rider": combined,
	"static.mtb.stoppie_down20": func(t *testing.T, r publishedRow) any {
		return loaded(t, r, r.num(t, "w")).PitchOver(-geometry.SlopeAngle(100 * r.num(t, "grade")))
	},
	"static.riel": func(t *testing.T, r publishedRow) any {
		// A bike whose limit on the level is the published one.
		b := geometry.Balance{Ahead: 0.3, Height: 1, Wheelbase: 0.3 + r.num(t, "level")}
		return b.PitchOver(-geometry.SlopeAngle(100 * r.num(t, "grade")))
	},
})

// offsetForTrail is the fork offset that gives a trail: Trail falls in a straight line as the offset
// grows, so two of its points find it.
func offsetForTrail(radius, headAngle, trail float64) float64 {
	none, one := geometry.Trail(radius, headAngle, 0), geometry.Trail(radius, headAngle, 1)
	return (trail - none) / (one - none)
}

// rollout is the rolling radius of a wheel from the distance that it covered in whole turns, as every
// wheel was measured in Moore 2012, Human Control of a Bicycle, chapter on physical parameters.
func rollout(t *testing.T, r publishedRow) float64 {
	t.Helper()
	return r.num(t, "front_rollout_m") / (2 * math.Pi * r.num(t, "front_turns"))
}

func benchmark(t *testing.T, r publishedRow) body.Part {
	t.Helper()
	places := r.Inputs["COM"].(map[string]any)
	var parts []body.Part
	for _, name := range []string{"R", "B", "H", "F"} {
		p := numbers(t, r.ID, places[name])
		parts = append(parts, body.Part{Mass: r.num(t, "m"+name), X: p[0], Y: p[1]})
	}
	sum, ok := body.Combine(parts...)
	if !ok {
		t.Fatal("no sum")
	}
	return sum
}

func benchmarkBalance(t *testing.T, r publishedRow) geometry.Balance {
	t.Helper()
	sum := benchmark(t, r)
	return geometry.Balance{Ahead: sum.X, Height: sum.Y, Wheelbase: r.num(t, "w")}
}

func loaded(t *testing.T, r publishedRow, wheelbase float64) geometry.Balance {
	t.Helper()
	return geometry.Balance{Ahead: r.num(t, "x"), Height: r.num(t, "h"), Wheelbase: wheelbase}
}

func frontLoad(t *testing.T, r publishedRow) any {
	b := loaded(t, r, r.num(t, "w"))
	slope, push := r.num(t, "slope_deg"), r.num(t, "accel_g")
	near(t, "both loads", b.FrontLoad(slope, push)+b.RearLoad(slope, push), math.Cos(slope*math.Pi/180), 1e-12)
	return b.FrontLoad(slope, push)
}

func combined(t *testing.T, r publishedRow) any {
	var parts []body.Part
	for _, item := range r.Inputs["parts"].([]any) {
		p := numbers(t, r.ID, item)
		parts = append(parts, body.Part{Mass: p[0], X: p[1], Y: p[2]})
	}
	sum, ok := body.Combine(parts...)
	if !ok {
		t.Fatal("no sum")
	}
	b := geometry.Balance{Ahead: sum.X, Height: sum.Y, Wheelbase: r.num(t, "w")}
	return map[string]any{
		"x": sum.X, "h": sum.Y, "front": b.FrontShare(0),
		"stoppie_g": b.PitchOver(0), "loopout_deg": b.LightSlope(0),
	}
}

// measuredByDistances is the instrumented bike: rear and front axle square to the
// steering axis by a and b, and c apart along it, wheels unequal.
func measuredByDistances(t *testing.T, r publishedRow) any {
	rear := geometry.Point{X: -r.num(t, "a")}
	front := geometry.Point{X: r.num(t, "b"), Y: -r.num(t, "c")}
	tilt, ok := geometry.GroundTilt(rear, front, r.num(t, "rR"), r.num(t, "rF"))
	if !ok {
		t.Fatal("no ground")
	}
	switch r.last(".") {
	case "lambda":
		return -tilt * math.Pi / 180
	case "wheelbase":
		return front.Sub(rear).Turn(-tilt).X
	case "trail":
		return geometry.Trail(r.num(t, "rF"), 90+tilt, r.num(t, "b"))
	}
	return nil
}

var _ = register(rowChecks{
	"com.deleva.weighted":     wholeBody,
	"com.deleva.vs_published": wholeBody,
	"com.deleva.mass_sum":     func(t *testing.T, r publishedRow) any { return allSegments(body.Male) },

	"arm.elbow.3d":        func(t *testing.T, r publishedRow) any { return elbow(t, r, 267.5-171.5) },
	"arm.elbow.2d":        func(t *testing.T, r publishedRow) any { return elbow(t, r, 0) },
	"arm.trunk_solve.160": trunkSolve,
	"arm.trunk_solve.150": trunkSolve,

	"grip.": func(t *testing.T, r publishedRow) any { return body.GripDiameter(r.num(t, "hand")) },
	"ansur.": func(t *testing.T, r publishedRow) any {
		part := strings.Split(r.ID, ".")
		survey, ok := surveyed[part[1]]
		if !ok {
			t.Fatalf("no survey column %q", part[1])
		}
		sex := sexOf(t, part[2])
		if len(part) == 4 {
			e, _ := survey.FromStature(r.num(t, "stature"), sex)
			return map[string]any{"pred": e.Value, "resid_sd": e.SD}
		}
		count := float64(body.SurveyMen)
		if sex == body.Female {
			count = body.SurveyWomen
		}
		typical := survey.Typical(sex)
		return map[string]any{"mean": typical.Value, "sd": typical.SD, "n": count}
	},
})

func point(t *testing.T, r publishedRow, name string) geometry.Point {
	t.Helper()
	p := r.list(t, name)
	return geometry.Point{X: p[0], Y: p[1]}
}

// wholeBody is the seated rider of Moore 2012, arm straight through the wrist and
// both feet at the bottom bracket, as that model has them.
func wholeBody(t *testing.T, r publishedRow) any {
	limb := posture.Limb{Knee: point(t, r, "K"), Ankle: point(t, r, "BB"), Foot: point(t, r, "foot_com")}
	centre, ok := posture.Joints{
		Vertex: point(t, r, "V"), Neck: point(t, r, "Cerv"), Shoulder: point(t, r, "S"), Hip: point(t, r, "Hip"),
		Elbow: point(t, r, "E"), Wrist: point(t, r, "G"), Grip: point(t, r, "G"),
		FrontLimb: limb, RearLimb: limb,
	}.CentreOfMass(body.Male)
	if !ok {
		t.Fatal("no centre")
	}
	return xy(centre)
}

// elbow answers the inner angle of the rider's arm in the data.
func elbow(t *testing.T, r publishedRow, aside float64) any {
	arm := posture.Arm{Upper: r.num(t, "upper"), Fore: r.num(t, "fore_to_knuckle"), Aside: aside}
	shoulder, grip := geometry.Point{X: 334.779, Y: 1480.711}, geometry.Point{X: 689.814, Y: 1118.607}
	bend, ok := arm.Bend(shoulder.Distance(grip))
	if !ok {
		t.Fatal("the arm does not reach")
	}
	return 180 - bend
}

func trunkSolve(t *testing.T, r publishedRow) any {
	hip, grip := geometry.Point{X: -175, Y: 735}, geometry.Point{X: 474.513142, Y: 701.294492}
	arm := posture.Arm{Upper: 326.6532, Fore: 344.2152}
	chord, ok := arm.Chord(180 - r.num(t, "elbow"))
	trunk, fine := posture.SolveTrunk(hip, grip, 505.7856, chord)
	if !ok || !fine {
		t.Fatal("no trunk")
	}
	return map[string]any{
		"trunk_deg": trunk.Angle, "chord": chord,
		"shoulder": []float64{trunk.Shoulder.X, trunk.Shoulder.Y},
	}
}

// allSegments is the sum of the shares of every segment of the body.
func allSegments(sex body.Sex) float64 {
	arm := body.UpperArmMass.Of(sex).Mass + body.ForearmMass.Of(sex).Mass + body.HandMass.Of(sex).Mass
	return body.HeadMass.Of(sex).Mass + body.TrunkMass.Of(sex).Mass + 2*(arm+body.LegMass(sex))
}

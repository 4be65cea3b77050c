package calculators_test

// The cockpit's points, beside the worked examples.
func init() {
	morePoints["bar-roll"] = []string{"bar-roll=-6±1 bar-rise=20±1 back-sweep=7 bar-sweep=32±2",
		"bar-roll=9±0.5 bar-rise=60 back-sweep=12±1"}
	morePoints["grip-position"] = []string{
		"reach=435±1 stack=610±1 head-angle=64±0.2 spacers=5 stem-length=35 bar-rise=20±1 stem-angle=0±0.5 " +
			"bar-sweep=35±2",
		"reach=505 stack=650 head-angle=67.5 spacers=30 stem-length=60 bar-rise=40 stem-angle=-6 back-sweep=9 " +
			"bar-width=800 bar-roll=4 seat-angle=74 saddle-height=800",
	}
	morePoints["ready-position"] = []string{
		"inseam=760±5 stature=1640±3 sex=f trunk-length=490±6 arm-length=610±6 shoulder-width=362±4 " +
			"trochanter-height=825±6 grip-x=415±2 grip-y=690±2 bar-width=740 crank-length=165 trunk-angle=42 " +
			"fork-travel=120 rear-travel=0",
		"inseam=920±5 stature=1900±3 sex=m trunk-length=580±6 arm-length=725±6 shoulder-width=420±4 " +
			"trochanter-height=975±6 grip-x=490±2 grip-y=745±2 bar-width=800 crank-length=175 grade=-30±1 " +
			"head-angle=64±0.2",
	}
	morePoints["seated-reach"] = []string{
		"inseam=760±5 stature=1640±3 sex=f trunk-length=490±4 arm-length=610±4 shoulder-width=362±4 " +
			"trochanter-height=825±4 saddle-height=668±2 saddle-setback=150±3 grip-x=425±2 grip-y=680±2 " +
			"bar-width=740 crank-length=165 fork-travel=120 rear-travel=0",
		"inseam=920±5 stature=1900±3 sex=m trunk-length=580±4 arm-length=725±4 shoulder-width=420±4 " +
			"trochanter-height=975±4 saddle-height=815±2 grip-x=500±2 grip-y=745±2 bar-width=800 crank-length=175 " +
			"elbow-bend=20",
	}
	morePoints["stem-choice"] = []string{
		"move-x=-15 move-y=5 reach=435 stack=610 head-angle=64 spacers=10 stem-length=50 bar-rise=20 stem-angle=6",
		"feeling=wanders reach=505 stack=650 head-angle=67.5±0.1 spacers=30 stem-length=60 bar-rise=40 " +
			"stem-angle=-6 spacers-limit=30",
	}
	morePoints["bar-width"] = []string{
		"stature=1640 sex=f shoulder-width=362±4 arm-length=615±6",
		"push-up-width=790±10 shoulder-width=430±5 arm-length=730±6 bar-width=760",
	}
	morePoints["lever-setup"] = []string{
		"hand-length=172±2 lever-reach=70 inseam=760±5 stature=1640±3 sex=f trunk-length=490±4 arm-length=610±4 " +
			"shoulder-width=362±4 trochanter-height=825±4 grip-x=415±2 grip-y=690±2 bar-width=740 crank-length=165 " +
			"fork-travel=120 rear-travel=0",
		"hand-length=205±2 finger-length=80±2 inseam=920±5 stature=1900±3 sex=m trunk-length=580±4 " +
			"arm-length=725±4 shoulder-width=420±4 trochanter-height=975±4 grip-x=490±2 grip-y=745±2 bar-width=800 " +
			"crank-length=175 saddle-height=815",
	}
	morePoints["same-position"] = []string{
		"saddle-setback=150±3 saddle-height=690±2 grip-x=420±2 grip-y=690±2 new-reach=450±1 new-stack=615±1 " +
			"new-head-angle=65±0.2 new-seat-angle=76±0.2 new-seat-tube-angle=72±0.3 new-seat-angle-height=680",
		"bb-height=340 saddle-floor=1130 grip-floor=1060 nose-setback=30 nose-to-grip=500 crank-length=175 " +
			"new-reach=500 new-stack=650 new-head-angle=64 new-seat-angle=78 new-crank-length=170",
	}
}

package calculators_test

// The cockpit's points, beside the worked examples, and its known bends.
func init() {
	morePoints["grip-position"] = []string{
		"reach=435±1 stack=610±1 head-angle=64±0.2 spacers=5 stem-length=35 bar-rise=20±1 stem-angle=0±0.5 bar-sweep=35±2",
		"reach=505 stack=650 head-angle=67.5 spacers=30 stem-length=60 bar-rise=40 stem-angle=-6 back-sweep=9 bar-width=800 bar-roll=4 seat-angle=74 saddle-height=800",
	}
}

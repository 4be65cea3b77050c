package calculators_test

// morePoints are the two further points, beside the worked example, at which each
// calculator is simulated.
var morePoints = map[string][]string{
	"repeat-readings": {"quantity=foot-length first=262 second=266 third=269 helped=help",
		"quantity=stature first=1741 second=1746"},
	"post-depth": {"saddle-height=690 seat-tube-length=430 post-length=400 travel-post=0 " +
		"insertion-post=80 insertion-frame=110", "saddle-height=820±2 seat-tube-length=460±1 saddle-stack=45±1 " +
		"travel-post=210 post-length=560±1 insertion-post=120 insertion-frame=170 post-collar=25±1 " +
		"post-head=25±1 post-actuator=30±1"},
	"ride-scores": {"scores-before=6;5;7;6 scores-after=3;4;4;2", "scores-before=6;5 scores-after=5.5;7"},
	"mobility": {"knee-short-left=31 knee-short-right=22±3 sex=f lunge-right=131 hip-bend=128",
		"knee-short-right=35 lunge-left=60±4 lunge-right=72 sit-and-reach=90"},
	"bike-by-tape": {"bb-to-head-tube=748±1 rear-axle-to-head-tube=1050±1 chainstay=430±1 " +
		"front-centre=729±1 rear-axle-height=364 front-axle-height=364 bb-height=304±1",
		"bb-to-head-tube=790 rear-axle-to-head-tube=1100 chainstay=438 front-centre=813 " +
			"wheelbase=1250 rear-axle-height=353 front-axle-height=372 bb-height=338"},
	"missing-measurement": {"quantity=inseam stature=1650 sex=f", "quantity=arm-length stature=1880±4 sex=m"},
	"climb-balance": {"com-forward=430 com-height=1040 wheelbase=1210 grade=20±0",
		"inseam=750±4 stature=1600±4 sex=f mass=62 saddle-height=655 grip-x=412 grip-y=672 reach=432 stack=605 " +
			"head-angle=65.5 seat-angle=77 chainstay=434 trunk-length=482±6 arm-length=608±6 grade=10±0"},
	"size-match": {
		"sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length,stand-over|" +
			"M,460,625,65.5,76.5,420,725|XL,530,670,65.5,76.5,480,755 " +
			"inseam=870±4 stature=1800 sex=m saddle-height=775 grip-x=470 grip-y=735 " +
			"post-length=470 insertion-post=110",
		"sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length|" +
			"S,435,610,65.5,76.8,390 inseam=760 stature=1620 sex=f " +
			"saddle-height=668 trunk-length=485±6 arm-length=615±6",
	},
	"size-trial": {
		"reach=435 stack=610 head-angle=65.5 seat-angle=76.8 chainstay=434 bb-drop=32 spacers=20 stem-length=50 " +
			"bar-rise=20 stem-angle=6 new-reach=460 new-stack=625 new-seat-angle=76.5 new-chainstay=437 " +
			"saddle-height=668",
		"reach=510 stack=658 head-angle=64±0.2 seat-angle=77±0.3 chainstay=443 bb-height=345 fork-offset=44 " +
			"spacers=10 stem-length=40 bar-rise=35 new-reach=485 new-stack=640 new-head-angle=64 " +
			"seat-tube-length=480 new-seat-tube-length=450 new-stem-length=45 saddle-height=820",
	},
	"suspension-sag": {"reach=440 stack=605 head-angle=67 seat-angle=74.5 chainstay=430 bb-drop=60 fork-offset=51 " +
		"fork-travel=120 sag-front=22 rear-travel=0 sag-rear=0", "reach=505 stack=645 head-angle=63.5 " +
		"seat-angle=78 chainstay=450 bb-drop=28 front-rim=622 front-tyre=65 rear-rim=584 fork-travel=180 " +
		"sag-front=18 rear-travel=170 sag-rear=32 shock-stroke=65"},
	"frame-change": {"reach=475 stack=630 head-angle=65 seat-angle=77 chainstay=435 bb-drop=35 fork-length=551 " +
		"new-fork-length=571 fork-travel=150 sag-front=20 rear-travel=140 sag-rear=30",
		"reach=440 stack=605 head-angle=67 seat-angle=74.5 chainstay=430 bb-height=304 " +
			"fork-offset=51 new-rear-rim=584 new-front-tyre=65"},
	"frame-geometry": {"reach=475±1 stack=630±1 head-angle=65±0.1 seat-angle=77±0.2 chainstay=435±1 " +
		"bb-height=337±2 fork-offset=44 front-rim=622 front-tyre=61 wheelbase=1270±1",
		"reach=410 stack=592 head-angle=67 seat-angle=75 chainstay=430 bb-drop=22 fork-offset=42 " +
			"front-rim=584 front-tyre=61 rear-tyre=58 " +
			"seat-tube-angle=71 saddle-height=640"},
	"cleat-position": {
		"foot-length=255 sex=f",
		"heel-to-ball-inner=205±1.5 heel-to-ball-outer=182±1.5 pedals=flat inseam=905±5 crank-length=175",
	},
	"crank-length": {
		"inseam=720±4 sex=f crank-length=165 new-crank-length=155 bb-height=330±2 pedals=flat",
		"inseam=930±5 sex=m trochanter-height=1000±6 crank-length=175 new-crank-length=170 bb-height=350±2 " +
			"fork-travel=170 sag-front=20±1 rear-travel=160 sag-rear=30±1 front-centre=830±2 pedal-width=110±2 " +
			"pedal-thickness=14 saddle-height=820±3 shank-length=455±6",
	},
	"knee-bend": {
		"inseam=720±4 trochanter-height=779±5 saddle-height=625±2 crank-length=165 pedals=flat knee-reading=36±2 " +
			"knee-read=moving sex=f",
		"inseam=905±5 trochanter-height=965±6 saddle-height=795±2 crank-length=175 seat-angle=77±0.3 " +
			"seated-trunk=50±2",
	},
	"saddle-setback": {
		"saddle-height=640±2 seat-angle=75 inseam=730±4 sex=f nose-setback=-10±3 saddle-nose=145±2 " +
			"new-saddle-setback=150",
		"saddle-height=820±2 seat-angle=78 seat-tube-angle=74±0.5 post-offset=15 rail-shift=5 inseam=930±5 " +
			"trochanter-height=1000±6",
	},
	"dropper-travel": {
		"saddle-height=640 seat-tube-length=400",
		"saddle-height=820±2 seat-tube-length=460±1 saddle-stack=45±1 travel-post=210 post-length=560±1 " +
			"free-depth=290±2 insertion-post=120 insertion-frame=130 post-collar=25±1 post-head=25±1 " +
			"post-actuator=30±1",
	},
	"pedal-change": {
		"inseam=791 sex=m pedals=flat new-pedals=clip saddle-height=690",
		"inseam=905±5 trochanter-height=965±6 pedals=clip pedal-height=14 sole-height=9 cleat-behind-ball=6 " +
			"new-pedals=clip new-pedal-height=11 new-sole-height=17 new-cleat-behind-ball=18 saddle-height=790±2 " +
			"saddle-setback=190 crank-length=175",
	},
	"foot-angle": {
		"toe-out-left=-3 toe-out-right=12±1 cleat-angle-left=2 cleat-angle-right=5 pedal-float=9",
		"toe-out-left=6±2 toe-out-right=9±2 foot-length=291±2 crank-length=165 q-factor=168±1 foot-offset=60±1 " +
			"chainstay=430±2 rear-end-width=190±2 stay-width=125±2 arm-set-in=6±1 heel-cup=5 cleat-behind-ball=14±1",
	},
	"stance-width": {
		"q-factor=168 front-hip-points=208 foot-offset=52±1 toe-out=-4 pedal-thread=15 pedal-spacer=1",
		"q-factor=183 hip-width=190 foot-offset=60±2 toe-out=12±2 inseam=905±5 foot-length=280",
	},
	"shoe-size": {
		"foot-length=245±2",
		"foot-length=290±1 other-foot=281±1 shoe-size=9.5 size-system=uk",
	},
	"leg-difference": {
		"leg-difference=4.5±0.3 difference-found=clinician warning-sign=none",
		"leg-difference=12 difference-found=blocks warning-sign=some",
	},
	"saddle-tilt": {
		"saddle-tilt=-1 grade=25",
		"saddle-tilt=3±0.3 grade=10±1 fork-travel=120 sag-front=20±1 rear-travel=0 sag-rear=0 wheelbase=1180±3",
	},
	"saddle-width": {
		"sit-bone-width=150 sit-bone-read=edges leaning=upright",
		"sit-bone-width=105±3 sit-bone-read=centres sit-bone-edges=32±2 leaning=low",
	},
	"saddle-height": {
		"inseam=720±4 crank-length=165±0.5 pedals=flat sex=f trochanter-height=779±5",
		"inseam=905±5 crank-length=175±0.5 sex=m",
	},
}

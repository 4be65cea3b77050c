package frame

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Floors of law: 16 CFR 1512.19(c), 1512.17(c) and (d).
const (
	standOverFloor = 25 // mm between crotch and top tube
	leanFloor      = 25 // degrees before a pedal strikes
	toeFloor       = 89 // mm from pedal to front tyre, without foot retention
)

// What is common practice: how much more room off road, how short a dropper may
// be before it is missed, how near grips settle with a spacer or a stem, and what
// stems still steer as the bike was meant to.
const (
	standOverWish  = 50
	dropperWish    = 150
	gripsSettled   = 10
	stemFrom       = 30
	stemTo         = 60
	stemAdjustFrom = 35
	stemAdjustTo   = 50
)

// sized is what a line of the table comes to: its numbers, whether it is out, how
// far its grips are from the reader's, mm, and the reasons in words.
type sized struct {
	row     calculators.Row
	numbers lineAnswers
	out     bool
	gap     float64
	reasons []words.Text
}

// lineAnswers are the numbers of one line with their ±.
type lineAnswers struct {
	dropper, highest, standOver, trunk, toe, lean, ahead, above, elbow *calculators.Answer
}

// answers looks a line's numbers up.
func (x sizeOutputs) answers(r *calculators.Result) lineAnswers {
	return lineAnswers{
		dropper: r.At(x.dropper), highest: r.At(x.highest), standOver: r.At(x.standOver),
		trunk: r.At(x.trunk), toe: r.At(x.toe), lean: r.At(x.lean),
		ahead: r.At(x.ahead), above: r.At(x.above), elbow: r.At(x.elbow),
	}
}

// offset returns how far ahead of the reader's grips and above them a line's are.
func (x lineAnswers) offset() geometry.Point {
	return geometry.Point{X: float64(x.ahead.Value), Y: float64(x.above.Value)}
}

// judge gives the reasons for and against a size, the binding limit first, and
// what part would change it.
func judge(v calculators.Values, row calculators.Row, x lineAnswers) sized {
	s := sized{row: row, numbers: x, gap: x.offset().Length()}
	say := func(english words.English, holes ...words.Sayer) {
		s.reasons = append(s.reasons, words.Of(english, holes...))
	}
	rule := func(english words.English, holes ...words.Sayer) { s.out = true; say(english, holes...) }
	b, ok := sizeBike(row)
	if !ok {
		rule("Ruled out: these numbers describe no bike. Check the line.")
		return s
	}
	drop, high, room := float64(x.dropper.Value), float64(x.highest.Value), float64(x.standOver.Value)
	if drop < 0 {
		rule("Ruled out: the seat tube is {0} too long. Even a post without travel, pushed all the way in, holds "+
			"the saddle too high; only a shorter collar, head or saddle would change it.", measure.Millimetres(-drop))
	}
	if high < v.Of(measure.SaddleHeight) {
		rule("Ruled out with this post: it ends {0} short of your saddle height at its minimum insertion. A longer "+
			"post would change it.", measure.Millimetres(v.Of(measure.SaddleHeight)-high))
	}
	switch {
	case room < 0:
		rule("Ruled out: the top tube is {0} higher than you can straddle. Only a lower frame would change it.",
			measure.Millimetres(-room))
	case room < standOverFloor:
		rule("Ruled out: {0} between you and the top tube, where the law asks for {1}. Smaller wheels or tyres "+
			"would change it, if the makers allow "+
			"them.", measure.Millimetres(room), measure.Millimetres(standOverFloor))
	}
	if lean := float64(x.lean.Value); lean < leanFloor {
		say("A pedal strikes at {0} of lean, where the law asks for {1}: shorter cranks would change it.",
			measure.Degrees(lean), measure.Degrees(leanFloor))
	}
	if toe := float64(x.toe.Value); toe < toeFloor {
		say("Only {0} from pedal to front tyre, where the law asks for {1}: shorter cranks would change it.",
			measure.Millimetres(toe), measure.Millimetres(toeFloor))
	}
	if drop >= 0 && drop < dropperWish {
		say("The seat tube leaves {0} of dropper travel; a shorter saddle or post head would give a little more.",
			measure.Sold(drop))
	}
	if room >= standOverFloor && room < standOverWish {
		say("{0} of room to stand over it: enough for the law, but little on steep "+
			"ground.", measure.Millimetres(room))
	}
	if !math.IsNaN(s.gap) {
		s.reasons = append(s.reasons, gripsNeed(v, row, b, x.offset()))
	}
	if len(s.reasons) == 0 {
		say("Nothing in the way. Give your present grips to see which stem you would need.")
	}
	return s
}

// gripsNeed says what puts the grips where the reader has them: the move along
// the steering axis is spacers or rise, the move square to it is stem.
func gripsNeed(v calculators.Values, row calculators.Row, b geometry.Bike, offset geometry.Point) words.Text {
	if gap := offset.Length(); gap <= gripsSettled {
		return words.Of("Grips {0} from where they are now: a spacer or the bar’s roll makes it "+
			"up.", measure.Millimetres(gap))
	}
	need := offset.Scale(-1)
	stem := cell(row, cStem, v.Of(measure.StemLength)) + need.Dot(b.AxisAhead())
	up := -need.Dot(b.AxisDown())
	limit := cell(row, cSpacers, v.Of(measure.SpacersLimit))
	where := gripsWhere(offset)
	bar := words.Of("{0} more under the stem or in the bar’s rise", measure.Sold(up))
	if spacers := v.Of(measure.Spacers) + up; up < 0 {
		bar = words.Of("{0} less under the stem or in the bar’s rise", measure.Sold(-up))
	} else if spacers > limit {
		bar = words.Of("{0} more height, of which spacers may give {1} and a bar of more rise the rest",
			measure.Sold(up), measure.Sold(max(limit-v.Of(measure.Spacers), 0)))
	}
	switch {
	case stem <= 0:
		return words.Of("Grips {0}. No stem is short enough to bring them back: the frame is far too long for "+
			"these grips. A smaller size would change it.", where)
	case stem < stemFrom:
		return words.Of("Grips {0}. A stem of {1} would be needed, and the shortest that are sold are about {2}: "+
			"the frame is too long for these grips. A smaller size would change it.", where,
			measure.Sold(stem), measure.Sold(stemFrom))
	case stem > stemTo:
		return words.Of("Grips {0}. A stem of {1} would be needed, longer than this kind of bike steers well with: "+
			"the frame is too short for these grips. A larger size would change it.", where, measure.Sold(stem))
	case stem < stemAdjustFrom || stem > stemAdjustTo:
		return words.Of("Grips {0}. A stem of {1} and {2} put them right, at the edge of what is usual.", where,
			measure.Sold(stem), bar)
	}
	return words.Of("Grips {0}. A stem of {1} and {2} put them right.", where, measure.Sold(stem), bar)
}

// gripsWhere says where a size's grips lie against the reader's.
func gripsWhere(offset geometry.Point) words.Text {
	a, b := measure.Millimetres(math.Abs(offset.X)), measure.Millimetres(math.Abs(offset.Y))
	switch {
	case offset.X >= 0 && offset.Y >= 0:
		return words.Of("{0} further forward and {1} higher than now", a, b)
	case offset.X >= 0:
		return words.Of("{0} further forward and {1} lower than now", a, b)
	case offset.Y >= 0:
		return words.Of("{0} nearer and {1} higher than now", a, b)
	}
	return words.Of("{0} nearer and {1} lower than now", a, b)
}

// sorted returns the sizes, those that are out last, the rest by how near the
// grips lie, as typed where that is not known.
func sorted(v calculators.Values, r *calculators.Result) []sized {
	var all []sized
	for i, row := range v.Rows(measure.Sizes) {
		all = append(all, judge(v, row, lines[i].answers(r)))
	}
	slices.SortStableFunc(all, func(a, b sized) int {
		switch {
		case a.out != b.out && b.out:
			return -1
		case a.out != b.out:
			return 1
		case a.gap < b.gap:
			return -1
		case b.gap < a.gap:
			return 1
		}
		return 0
	})
	return all
}

func explainSize(v calculators.Values, r *calculators.Result) {
	rows := v.Rows(measure.Sizes)
	ways := make([]geometry.Point, len(rows))
	for i := range rows {
		ways[i] = lines[i].answers(r).offset()
	}
	near := words.Name(rows[nearest(ways)].Name)
	ahead, above, drop, trunk := r.At(sizeAhead), r.At(sizeAbove), r.At(sizeDropper), r.At(sizeTrunk)
	all := sorted(v, r)
	if ahead.Exists() {
		ahead.Label = words.Of("{0}, grips further forward than now", near)
		above.Label = words.Of("{0}, grips higher than now", near)
		ahead.Meaning = words.Of("Of these sizes {0} puts the grips nearest to where they are now, with the same "+
			"bar and spacers on each. Within {1} a stem or spacer makes it up.", near,
			measure.Millimetres(gripsSettled))
		above.Meaning = words.Of("Height is the easier of the two: spacers and the bar’s rise give it.")
	} else {
		none := words.Of("Give {0} and {1}, of the bike you have or the one you liked, and we compare the sizes "+
			"with them.", measure.GripX.Named(), measure.GripY.Named())
		if v.Has(measure.GripX) && v.Has(measure.GripY) {
			none = words.Of("No line of the table describes a bike. Check its numbers.")
		}
		ahead.Meaning, above.Meaning = none, none
	}
	drop.Label, trunk.Label = words.Of("Dropper travel that fits {0}", near), words.Of("Trunk, seated on {0}", near)
	drop.Meaning = words.Of("What the seat tube, the saddle and the post’s fixed parts leave under your saddle " +
		"height.")
	if drop.Value < 0 {
		drop.Meaning = words.Of("Less than nothing: on this size no post lets the saddle down to your height.")
	}
	trunk.Meaning = words.Of("Compare it with your present bike, not with a rule: no trial says which is best.")
	if !trunk.Exists() {
		trunk.Meaning = words.Of("No seated rider of these lengths reaches pedals and grips on it.")
	}
	r.Verdict = sizeVerdict(v, all)
	r.Tables = append(r.Tables, sizeTable(all))
	noteSizes(v, r)
	r.Figure = sizeFigure(v, all)
}

// sizeVerdict answers which size: the nearest of those that can be set up, with what puts
// its grips right; without the grips of a bike the two in the middle of those, to ride.
func sizeVerdict(v calculators.Values, all []sized) words.Text {
	fits := slices.DeleteFunc(slices.Clone(all), func(s sized) bool { return s.out })
	if len(fits) == 0 {
		return words.Of("None of these sizes can be set up for you")
	}
	if first := fits[0]; !math.IsNaN(first.gap) {
		return words.Of("Closest: {0}, {1}", words.Name(first.row.Name), partsFor(v, first))
	}
	// As typed, which is by size.
	switch n := len(fits); n {
	case 1:
		return words.Of("Ride {0}: the others cannot be set up for you", words.Name(fits[0].row.Name))
	default:
		return words.Of("Ride {0} and {1}", words.Name(fits[(n-1)/2].row.Name), words.Name(fits[(n-1)/2+1].row.Name))
	}
}

// partsFor says in a few words what puts a size's grips where the reader has them.
func partsFor(v calculators.Values, s sized) words.Text {
	b, _ := sizeBike(s.row)
	need := s.numbers.offset().Scale(-1)
	own := cell(s.row, cStem, v.Of(measure.StemLength))
	longer, up := need.Dot(b.AxisAhead()), -need.Dot(b.AxisDown())
	stem := words.Of("a stem of {0}", measure.Sold(own+longer))
	height := words.Of("{0} more spacers", measure.Sold(up))
	if up < 0 {
		height = words.Of("{0} fewer spacers", measure.Sold(-up))
	}
	switch {
	case own+longer < stemFrom:
		return words.Of("but it is too long for these grips")
	case own+longer > stemTo:
		return words.Of("but it is too short for these grips")
	case s.gap <= gripsSettled/2:
		return words.Of("as it comes")
	case math.Abs(longer) < felt:
		return words.Of("with {0}", height)
	case math.Abs(up) < felt:
		return words.Of("with {0}", stem)
	}
	return words.Of("with {0} and {1}", stem, height)
}

// felt is the move of the grips below which nobody feels it, mm: common practice.
const felt = 5

// noteSizes says what stands in for empty cells, and what is not judged.
func noteSizes(v calculators.Values, r *calculators.Result) {
	var gone words.List
	for _, q := range [...]*measure.Quantity{measure.Chainstay, measure.ForkOffset, measure.FrontRim,
		measure.FrontTyre,
		measure.CrankLength, measure.ForkTravel, measure.RearTravel} {
		for _, row := range v.Rows(measure.Sizes) {
			if math.IsNaN(row.Cells[columnOf(q)]) {
				gone = append(gone, q.Named())
				break
			}
		}
	}
	if len(gone) > 0 {
		r.Note(calculators.AssumedNote,
			"Some lines leave out {0}. What is usual on a 29 inch trail bike stands in; a bike without travel is "+
				"taken not to sink.", gone)
	}
	r.Note(calculators.PlainNote,
		"Standing is shown and not judged: the elbow changes by about a degree over stems of 30 to 50 mm, so it "+
			"cannot tell two near sizes apart. Ride both.")
	if !v.Has(measure.GripX) || !v.Has(measure.GripY) {
		r.Note(calculators.CheckNote,
			"Without the grips of a bike that you know, no size can be called the nearest: the numbers above are "+
				"those of the first line. Strike out the sizes whose post or stand-over does not fit. Of those "+
				"left, ride the two in the middle before you choose. You can also use the measurements of a "+
				"friend’s bike that you liked.")
	}
	if !v.Has(measure.PostLength) {
		r.Note(calculators.PlainNote,
			"Give {0}, and each size also says whether that post holds your saddle with both minimum insertions met.",
			measure.PostLength.Named())
	}
}

// sizeTable has one line for each size, in the order of sorted.
func sizeTable(all []sized) calculators.Table {
	t := calculators.Table{Name: "sizes", Caption: words.Of("What each size asks of you"),
		Columns: []calculators.Column{
			{Name: "size", Label: words.Of("Size")},
			{Name: "verdict", Label: words.Of("Why, and what it needs")},
			{Name: "grips-ahead", Label: words.Of("Grips ahead"), Unit: "mm"},
			{Name: "grips-above", Label: words.Of("Grips above"), Unit: "mm"},
			{Name: "dropper-travel", Label: words.Of("Dropper travel"), Unit: "mm"},
			{Name: "highest-saddle", Label: words.Of("Highest saddle"), Unit: "mm"},
			{Name: "stand-over-room", Label: words.Of("Stand-over room")},
			{Name: "trunk-angle", Label: words.Of("Trunk seated"), Unit: "deg"},
			{Name: "toe-room", Label: words.Of("Pedal to tyre"), Unit: "mm"},
			{Name: "strike-lean", Label: words.Of("Pedal strikes at"), Unit: "deg"},
			{Name: "elbow-bend", Label: words.Of("Elbows standing"), Unit: "deg"},
		}}
	for _, s := range all {
		x := s.numbers
		t.Rows = append(t.Rows, []words.Sayer{words.Name(s.row.Name), sentences(s.reasons), said(x.ahead),
			said(x.above), said(x.dropper),
			said(x.highest), said(x.standOver), said(x.trunk), said(x.toe), said(x.lean), said(x.elbow)})
	}
	return t
}

// sentences says several sentences one after another, each translated as a whole.
type sentences []words.Text

// Say parts the sentences with a space.
func (s sentences) Say(r *words.Reader) string {
	all := ""
	for i, t := range s {
		if i > 0 {
			all += " "
		}
		all += t.Say(r)
	}
	return all
}

// MarshalText gives the English in base units.
func (s sentences) MarshalText() ([]byte, error) { return []byte(s.Say(nil)), nil }

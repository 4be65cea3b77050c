package intake

import (
	"math"
	"slices"
	"strings"

	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// Kin is what one of many records has to do with an earlier one of the list.
type Kin int

// What there can be between two records.
const (
	Alone     Kin = iota // nothing that is known
	Duplicate            // it says the same
	Corrected            // the same rider sent it anew for the same visit; it goes before the earlier
	Again                // the same rider at a later visit
	OtherBike            // the same rider on another bike
	Namesake             // the same name, but the bodies do not agree: two people
)

// Relation says which record of an earlier day one belongs to.
type Relation struct {
	Kin Kin
	To  int // the place of that record in the list; of Alone no meaning
}

// lengths of a grown body, which tell one rider from another: they stay the same for
// years, other than mass.
var lengths = []*measure.Quantity{measure.Stature, measure.Inseam, measure.TrochanterHeight, measure.KneeHeight,
	measure.TrunkLength, measure.ArmLength, measure.ArmSpan, measure.ShoulderWidth, measure.HandLength,
	measure.FootLength}

// oneRider is how far two measurements of one rider's length may lie apart, as a share
// of it, beyond what the repeat errors give. Common practice: people measure at home in
// other shoes and with other books.
const oneRider = 0.025

// sameVisit is within how many days a second reply corrects the first, where neither
// names an appointment.
const sameVisit = 14

// Relate finds records of one rider among many, which may be nil where nothing could be
// read. Names alone put no two records together: the bodies have to agree, and at least
// one length has to be there to tell.
func Relate(records []*record.Record) []Relation {
	list := make([]Relation, len(records))
	named := map[string][]int{} // places of the records with a name
	seen := map[string]int{}    // what a record says, and who said it first
	for _, i := range byDay(records) {
		r := records[i]
		says := saying(r)
		if first, ok := seen[says]; ok {
			list[i] = Relation{Duplicate, first}
			continue
		}
		seen[says] = i
		name := nameOf(r)
		if name == "" {
			continue
		}
		best := 0
		for _, k := range named[name] { // the latest of several that are as near counts
			kin := between(records[k], r)
			if near := nearness(kin, records[k], r); kin != Alone && near >= best {
				list[i], best = Relation{kin, k}, near
			}
		}
		named[name] = append(named[name], i)
	}
	return list
}

// Riders numbers the riders of a list by its relations, from 0 in the order in which they
// come: records of one rider have one number. Somebody of the same name has another.
func Riders(list []Relation) []int {
	numbers, n := make([]int, len(list)), 0
	first := func(i int) int { // the record that all others of the rider lead back to
		for range list {
			if k := list[i]; k.Kin == Alone || k.Kin == Namesake {
				return i
			}
			i = list[i].To
		}
		return i
	}
	given := map[int]int{}
	for i := range list {
		root := first(i)
		if _, ok := given[root]; !ok {
			given[root] = n
			n++
		}
		numbers[i] = given[root]
	}
	return numbers
}

// nearness ranks relations: a bike of the same name is nearer than another bike, and a
// namesake is the last to count.
func nearness(kin Kin, before, after *record.Record) int {
	switch a, b := bikeOf(before), bikeOf(after); {
	case kin == Namesake:
		return 0
	case kin != OtherBike && a != "" && strings.EqualFold(a, b):
		return 2
	}
	return 1
}

// bikeOf is what a bike is called: by the fitter, or else by the rider.
func bikeOf(r *record.Record) string {
	if v := request.VisitOf(r); v.Bike != "" {
		return v.Bike
	}
	return r.Bike
}

// byDay returns the places of the records in the order of their days; those without a
// day come first, and those of one day stay as they are.
func byDay(records []*record.Record) (places []int) {
	for i, r := range records {
		if r != nil {
			places = append(places, i)
		}
	}
	slices.SortStableFunc(places, func(a, b int) int { return strings.Compare(records[a].Date, records[b].Date) })
	return places
}

// nameOf is a rider's name as it is compared: letters' size and blanks do not count.
func nameOf(r *record.Record) string {
	name := r.Name
	if name == "" {
		name = request.VisitOf(r).For
	}
	return strings.ToLower(strings.Join(strings.Fields(name), " "))
}

// saying is all that a record says of rider and bike, whenever it was sent.
func saying(r *record.Record) string {
	own := *r
	own.Date = ""
	own.Entries = slices.Clone(r.Entries)
	own.Drop(request.IsKey)
	return own.Fragment()
}

// between finds out what a later record of the same name has to do with an earlier one.
func between(before, after *record.Record) Kin {
	switch agree, differ := compare(before, after); {
	case differ > agree:
		return Namesake
	case agree == 0:
		return Alone
	}
	a, b := request.VisitOf(before), request.VisitOf(after)
	from, to := bikeOf(before), bikeOf(after)
	switch {
	case from != "" && to != "" && !strings.EqualFold(from, to), otherFrame(before, after):
		return OtherBike
	case a.When != "" && b.When != "":
		if a.When == b.When {
			return Corrected
		}
		return Again
	case before.Date == "" || after.Date == "" || math.Abs(dayOf(after.Date)-dayOf(before.Date)) <= sameVisit:
		return Corrected
	}
	return Again
}

// compare counts the lengths in which two bodies agree and differ.
func compare(a, b *record.Record) (agree, differ int) {
	for _, q := range lengths {
		x, ok := measured(a)(q)
		y, also := measured(b)(q)
		switch {
		case !ok || !also:
		case math.Abs(x.Value-y.Value) <= max(3*measure.Quadrature(q.SD(x), q.SD(y)), oneRider*x.Value):
			agree++
		default:
			differ++
		}
	}
	return agree, differ
}

// otherFrame tells whether two records have frames that cannot be one.
func otherFrame(a, b *record.Record) bool {
	for _, q := range []*measure.Quantity{measure.Reach, measure.Stack} {
		x, y := a.Value(q), b.Value(q)
		if math.Abs(x-y) > q.AgreeWithin()+5 { // NaN where one is not known
			return true
		}
	}
	return false
}

// dayOf counts days, in months of 31: near enough to tell a week from a season.
func dayOf(date string) float64 {
	number := func(s string) float64 {
		n := 0.0
		for _, c := range s {
			n = n*10 + float64(c-'0')
		}
		return n
	}
	return 372*number(date[:4]) + 31*number(date[5:7]) + number(date[8:])
}

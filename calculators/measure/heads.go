package measure

import (
	"slices"
	"strings"
)

// called is what makers' charts call quantities: names parted by a bar. The order of
// the words in a name does not count, nor capitals, nor hyphens.
type called struct {
	as    []*Quantity
	names string
}

// chartNames are the trade's usual names for the columns of a geometry chart (common
// practice), beside the keys and labels that every quantity has. The last few are
// in most charts but not in the list of sizes: they are known, to be told apart
// from what nobody understands.
var chartNames = []called{
	{[]*Quantity{HeadAngle}, "head tube angle|headtube angle|hta|ha|steering angle"},
	{[]*Quantity{SeatAngle}, "seat angle|sa|effective seat tube angle|effective seattube angle|effective sta|esta|" +
		"effective sa|effective st angle"},
	{[]*Quantity{SeatTubeAngle}, "seat tube angle|seattube angle|sta|st angle|actual seat tube angle|actual seat " +
		"angle|actual seattube angle|actual sta|real seat tube angle|real sta"},
	{[]*Quantity{SeatTubeLength}, "seat tube length|seattube|seattube length|st length|st|stl|" +
		"seat tube centre to top|seat tube length centre to top"},
	{[]*Quantity{StandOver}, "standover|standover height|stand over height|standover clearance"},
	{[]*Quantity{HeadTubeLength}, "head tube length|headtube|headtube length|ht length|ht|htl"},
	{[]*Quantity{ForkLength}, "fork length|axle to crown|a2c|atc|axle to crown length|fork length axle to crown"},
	{[]*Quantity{ForkOffset}, "fork rake|rake|fork offset rake"},
	{[]*Quantity{ForkTravel}, "front travel|suspension travel front|wheel travel front|front suspension travel"},
	{[]*Quantity{RearTravel}, "rear wheel travel|suspension travel rear|rear suspension travel|frame travel"},
	{[]*Quantity{Chainstay}, "chainstay length|chainstays|chain stay|chain stay length|chain stays|cs|cs length|csl|" +
		"rear centre|rear centre length"},
	{[]*Quantity{BBDrop}, "bb drop|bottom bracket drop|bbd"},
	{[]*Quantity{BBHeight}, "bb height|bottom bracket height|bbh"},
	{[]*Quantity{Wheelbase}, "wb|wheel base|wheelbase length"},
	{[]*Quantity{FrontRim, RearRim}, "wheel size|wheels|wheel|wheel diameter"},
	{[]*Quantity{FrontRim}, "front wheel size|front wheel"},
	{[]*Quantity{RearRim}, "rear wheel size|rear wheel"},
	{[]*Quantity{FrontTyre}, "front tyre width"},
	{[]*Quantity{RearTyre}, "rear tyre width"},
	{[]*Quantity{CrankLength}, "crank length|cranks|crankset length|crank arm length|crank arm"},
	{[]*Quantity{TravelPost}, "dropper travel|dropper post travel|seat post travel|seatpost travel"},
	{[]*Quantity{FreeDepth}, "max seatpost insertion|max seat post insertion|maximum seatpost insertion|" +
		"maximum seat post insertion|max post insertion|seatpost insertion max"},
	{[]*Quantity{StemLength}, "stem length|stem"},
	{[]*Quantity{EffectiveTopTube}, "ett|effective top tube length|effective toptube|effective tt|top tube " +
		"effective|tt effective|horizontal top tube|horizontal top tube length|ett length"},
	{[]*Quantity{FrontCentre}, "front centre|fc|front centre length"},
}

// oneWord spells alike the words of a name that are written in several ways.
var oneWord = map[string]string{"center": "centre", "eff": "effective", "virtual": "effective", "tire": "tyre"}

// bag brings a name into one spelling: its words in small letters and alphabetical
// order, without marks and the single letters that point into a drawing ("A", "c-t").
// Units are left out; the one at the end is returned, nil for none.
func bag(name string) (string, *Unit) {
	list := strings.FieldsFunc(strings.ReplaceAll(tidy(name), "'", ""), func(c rune) bool {
		return strings.ContainsRune(" -_/.,:;()[]*†‡¹²³&+=", c)
	})
	var unit *Unit
	kept := list[:0]
	for i, w := range list {
		if u := UnitNamed(w); u != nil {
			if i == len(list)-1 { // not the "in" of "depth in the tube"
				unit = u
			}
		} else if len(w) > 1 {
			if same := oneWord[w]; same != "" {
				w = same
			}
			kept = append(kept, w)
		}
	}
	slices.Sort(kept)
	return strings.Join(kept, " "), unit
}

// headings knows the columns of a list by the names that charts give them.
type headings struct {
	q     *Quantity
	known map[string][]*Quantity
}

// newHeadings knows q's columns, and q itself as the rows' names.
func newHeadings(q *Quantity) *headings {
	h := &headings{q, map[string][]*Quantity{}}
	add := func(name string, as []*Quantity) {
		if b, _ := bag(name); h.known[b] == nil {
			h.known[b] = as
		}
	}
	for _, c := range chartNames {
		for name := range strings.SplitSeq(c.names, "|") {
			add(name, c.as)
		}
		if len(c.as) == 1 {
			add(string(c.as[0].Label), c.as)
		}
	}
	for _, c := range q.Columns {
		add(c.Key, []*Quantity{c.Quantity})
		add(string(c.Label), []*Quantity{c.Quantity})
	}
	for _, name := range []string{"name", "size", "sizes", "frame size", "frame sizes"} {
		add(name, []*Quantity{q})
	}
	return h
}

// find tells what a head stands for, and in which unit its bare numbers are; both
// may be nil. A remark in brackets or behind an @ counts only where it is part of a
// name, and gives a unit only where it is nothing else: the 700 mm of "seat angle
// (at 700 mm)" are not what the column is in.
func (h *headings) find(head string) ([]*Quantity, *Unit) {
	if len(head) > longest {
		return nil, nil
	}
	head, _, _ = strings.Cut(head, "@")
	plain, remark := head, ""
	if i := strings.IndexAny(head, "(["); i >= 0 {
		plain, remark = head[:i], head[i:]
		if j := strings.IndexAny(remark, ")]"); j >= 0 {
			plain, remark = plain+" "+remark[j+1:], remark[:j]
		}
	}
	inside, unit := bag(remark)
	if inside != "" {
		unit = nil
	}
	name, own := bag(plain)
	if own != nil {
		unit = own
	}
	if whole, _ := bag(plain + " " + remark); h.known[whole] != nil {
		name = whole
	}
	return h.known[name], unit
}

package measure

import (
	"slices"
	"strings"
	"unicode/utf8"

	"plumbline/calculators/words"
)

// called is what makers' charts call quantities: names parted by a bar. The order of
// the words in a name does not count, nor capitals, nor hyphens.
type called struct {
	as    []*Quantity
	names string
}

// chartNames are the trade's usual names for the columns of a geometry chart (common
// practice), beside the keys and labels that every quantity has. A chart is read whatever
// language the guide speaks, because a maker's chart is copied from anywhere: German
// charts mix their own names with English ones. The last few are in most charts but not
// in the list of sizes: they are known, to be told apart from what nobody understands.
var chartNames = []called{
	{[]*Quantity{Reach}, "frame reach"},
	{[]*Quantity{Stack}, "stack height|frame stack"},
	{[]*Quantity{HeadAngle}, "head tube angle|headtube angle|ht angle|hta|ha|steering angle|" +
		"lenkwinkel|lenkkopfwinkel|steuerrohrwinkel|steuerkopfwinkel|steuerwinkel"},
	{[]*Quantity{SeatAngle}, "seat angle|sa|effective seat tube angle|effective seattube angle|effective sta|esta|" +
		"effective sa|effective st angle|" +
		"sitzwinkel|effective sitzwinkel|effective sitzrohrwinkel|effective st winkel"},
	{[]*Quantity{SeatTubeAngle}, "seat tube angle|seattube angle|sta|st angle|actual seat tube angle|actual seat " +
		"angle|actual seattube angle|actual sta|" +
		"sitzrohrwinkel|actual sitzrohrwinkel|actual sitzwinkel"},
	{[]*Quantity{SeatTubeLength}, "seat tube length|seattube|seattube length|st length|st|stl|" +
		"seat tube centre to top|seat tube length centre to top|" +
		"sitzrohr|sitzrohrlänge|sitzrohrhöhe"},
	{[]*Quantity{StandOver}, "standover|standover height|stand over height|standover clearance|" +
		"überstandshöhe|überstandhöhe|schritthöhe"},
	{[]*Quantity{HeadTubeLength}, "head tube length|headtube|headtube length|ht length|ht|htl|" +
		"steuerrohr|steuerrohrlänge|steuerkopf|steuerkopflänge"},
	{[]*Quantity{ForkLength}, "fork length|axle to crown|a2c|atc|axle to crown length|fork length axle to crown|" +
		"gabellänge|gabel einbaulänge|gabeleinbaulänge|gabel einbauhöhe|einbauhöhe|einbaulänge"},
	{[]*Quantity{ForkOffset}, "fork rake|rake|fork offset rake|" +
		"gabel offset|gabeloffset|gabelvorbiegung|gabelvorlauf"},
	{[]*Quantity{ForkTravel}, "front travel|suspension travel front|wheel travel front|front suspension travel|" +
		"federweg vorn|federweg vorne|federweg gabel|travel front"},
	{[]*Quantity{RearTravel}, "rear wheel travel|suspension travel rear|rear suspension travel|frame travel|" +
		"federweg hinten|federweg rahmen|federweg heck"},
	{[]*Quantity{Chainstay}, "chainstay length|chainstays|chain stay|chain stay length|chain stays|cs|cs length|csl|" +
		"rear centre|rear centre length|" +
		"kettenstrebe|kettenstreben|kettenstrebenlänge|hinterbaulänge"},
	{[]*Quantity{BBDrop}, "bb drop|bottom bracket drop|bbd|" +
		"tretlagerabsenkung|innenlagerabsenkung|bb absenkung"},
	{[]*Quantity{BBHeight}, "bb height|bottom bracket height|bbh|" +
		"tretlagerhöhe|innenlagerhöhe"},
	{[]*Quantity{Wheelbase}, "wb|wheel base|wheelbase length|" +
		"radstand"},
	{[]*Quantity{FrontRim, RearRim}, "wheel size|wheels|wheel|wheel diameter|" +
		"laufradgrösse|laufrad|laufräder|radgrösse"},
	{[]*Quantity{FrontRim}, "front wheel size|front wheel|" +
		"vorderrad|laufradgrösse vorn"},
	{[]*Quantity{RearRim}, "rear wheel size|rear wheel|" +
		"hinterrad|laufradgrösse hinten"},
	{[]*Quantity{FrontTyre}, "front tyre width|" +
		"reifenbreite vorn"},
	{[]*Quantity{RearTyre}, "rear tyre width|" +
		"reifenbreite hinten"},
	{[]*Quantity{CrankLength}, "crank length|cranks|crankset length|crank arm length|crank arm|" +
		"kurbellänge|kurbel|kurbeln|kurbelarmlänge"},
	{[]*Quantity{TravelPost}, "dropper travel|dropper post travel|seat post travel|seatpost travel|" +
		"verstellweg|variostütze|verstellweg variostütze"},
	{[]*Quantity{FreeDepth}, "max seatpost insertion|max seat post insertion|maximum seatpost insertion|" +
		"maximum seat post insertion|max post insertion|seatpost insertion max|" +
		"maximale einstecktiefe|max einstecktiefe"},
	{[]*Quantity{StemLength}, "stem length|stem|" +
		"vorbaulänge|vorbau"},
	{[]*Quantity{EffectiveTopTube}, "ett|effective top tube length|effective toptube|effective tt|top tube " +
		"effective|tt effective|horizontal top tube|horizontal top tube length|ett length|" +
		"top tube|top tube length|toptube|tt|oberrohr|oberrohrlänge|effective oberrohrlänge|effective oberrohr|" +
		"horizontale oberrohrlänge|oberrohrlänge horizontal|oberrohr horizontal"},
	{[]*Quantity{FrontCentre}, "front centre|fc|front centre length"},
}

// oneWord spells alike the words of a name that are written in several ways.
var oneWord = map[string]string{"center": "centre", "eff": "effective", "virtual": "effective", "tire": "tyre",
	"effektiv": "effective", "effektive": "effective", "effektiver": "effective", "effektives": "effective",
	"virtuell": "effective", "virtueller": "effective", "real": "actual", "realer": "actual",
	"tatsächlich": "actual", "tatsächlicher": "actual"}

// bag brings a name into one spelling: its words in small letters and alphabetical
// order, without marks and the single letters that point into a drawing ("A", "c-t").
// Units are left out; the one at the end is returned, nil for none.
func bag(name string) (string, *Unit) {
	list := strings.FieldsFunc(strings.NewReplacer("'", "", "ß", "ss").Replace(tidy(name)), func(c rune) bool {
		return strings.ContainsRune(" -_/.,:;()[]*†‡¹²³&+=", c)
	})
	var unit *Unit
	kept := list[:0]
	for i, w := range list {
		if u := UnitNamed(w); u != nil {
			if i == len(list)-1 { // not the "in" of "depth in the tube"
				unit = u
			}
		} else if utf8.RuneCountInString(w) > 1 {
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

// newHeadings knows q's columns, by their labels as r reads them too, and q itself as the
// rows' names.
func newHeadings(q *Quantity, r *words.Reader) *headings {
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
		add(words.Of(c.Label).Say(r), []*Quantity{c.Quantity})
	}
	for _, name := range []string{"name", "size", "sizes", "frame size", "frame sizes", "grösse", "grössen",
		"rahmengrösse"} {
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

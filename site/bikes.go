package site

import (
	"encoding/json"
	"math"
	"net/url"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// A shop's bikes are files in its folder, one a bike: bikes/NAME.csv is the maker's size
// chart as it was copied, sizes across or down, below lines that name the bike. They are
// shown on a page of their own, and forms that ask for a bike's numbers offer them by name.

// Where the bikes stand, in a shop's folder and in the published guide.
const (
	bikesFolder  = "bikes/"
	bikesURL     = "bikes.html"
	bikesListURL = "bikes.json"
)

// isBike tells whether a path is that of a bike's size chart.
func isBike(p string) bool {
	return path.Dir(p)+"/" == bikesFolder && slices.Contains(bikeFiles, strings.ToLower(path.Ext(p)))
}

// bikeFiles are the endings of a bike's file.
var bikeFiles = []string{".csv", ".txt"}

// shopBike is a bike with its sizes.
type shopBike struct {
	Key, Name, Year, Note, Link string
	sizes                       []measure.Row
}

// readBikes reads the shop's size charts, in the order of their names.
func (g *Guide) readBikes() (bad []Mistake) {
	named := map[string]string{}
	for _, p := range g.layers.paths {
		s, _ := g.layers.file(p)
		if !isBike(p) || !s.local {
			continue
		}
		b, more := readBike(s)
		title := strings.ToLower(b.title())
		if other := named[title]; title != "" && other != "" {
			more = append(
				more,
				Mistake{
					s.file,
					1,
					1,
					told.Of("“{0}” is the name of the bike in {1} too", b.title(), other),
					told.Of("give this one another name or year"),
				},
			)
		}
		named[title] = s.file
		bad = append(bad, more...)
		g.bikes = append(g.bikes, b)
	}
	return bad
}

// title is the bike's name with its year.
func (b shopBike) title() string { return strings.TrimSpace(b.Name + " " + b.Year) }

// readBike reads one size chart.
func readBike(s source) (b shopBike, bad []Mistake) {
	b.Key = slug(strings.TrimSuffix(path.Base(s.path), path.Ext(s.path)))
	head, at, ok := splitHeader(s.text)
	if !ok && strings.HasPrefix(string(s.text), "---") {
		return b, []Mistake{
			{
				s.file,
				1,
				1,
				told.Of("the lines that name the bike have no end"),
				told.Of("close them with a line of ---"),
			},
		}
	}
	if ok {
		y := yamlOf(s.file, 1)
		for _, e := range y.Root(head) {
			switch {
			case !y.Known(e, "name", "year", "note", "link"):
			case e.Key == "name":
				b.Name = y.text(e)
			case e.Key == "note":
				b.Note = y.text(e)
			case e.Key == "link":
				b.Link = y.Raw(e)
				if u, err := url.Parse(b.Link); err != nil || u.Scheme != "https" || u.Host == "" {
					y.Mistake(
						e.Value.GetToken(),
						told.Of("“{0}” is no web address", b.Link),
						told.Of("begin it with https://"),
					)
				}
			default:
				b.Year = y.Raw(e)
				if n, err := strconv.Atoi(b.Year); err != nil || n < 1970 || n > 2100 {
					y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no year", b.Year), told.Of("write four digits"))
				}
			}
		}
		bad = y.bad()
	}
	if b.Name == "" {
		bad = append(bad, Mistake{s.file, 1, 1, told.Of("the bike has no name"),
			told.Of("begin the file with three lines: “---”, “name: …” and “---”")})
	}
	text := string(s.text[at:])
	table := strings.TrimLeft(text, "\n")
	above := strings.Count(string(s.text[:at]), "\n") + len(text) - len(table)
	chart := measure.Sizes.Table.Chart(measure.Sizes, table, nil)
	b.sizes = chart.Rows
	if len(chart.Columns) == 0 {
		return b, append(
			bad,
			Mistake{s.file, above + 1, 1, told.Of("this cannot be read as a size chart"), told.Of(sizeRemedy)},
		)
	}
	for _, why := range chart.Unread {
		bad = append(bad, chartMistake(s.file, table, above, why))
	}
	for _, head := range chart.Unused {
		if near := nearestColumn(head); near != "" {
			bad = append(
				bad,
				Mistake{s.file, above + lineOf(table, head), 1, told.Of("the column “{0}” is not read", head),
					told.Of("did you mean “{0}”?", near)},
			)
		}
	}
	if len(b.sizes) == 0 && len(chart.Unread) == 0 {
		bad = append(bad, Mistake{s.file, above + 1, 1, told.Of("there is no size in this chart"), told.Of(sizeRemedy)})
	}
	return b, bad
}

const sizeRemedy words.English = "paste the maker’s chart as you copied it, with a column for the reach, stack, " +
	"head angle, seat " +
	"angle and seat tube"

// nearestColumn is the column that a slip in a heading meant, "" for none.
func nearestColumn(head string) string {
	var keys []string
	for _, c := range measure.Sizes.Columns {
		keys = append(keys, c.Key)
	}
	return measure.NearestName(strings.ToLower(head), keys)
}

// lineNamed is a line of the chart that a message begins with, in any language.
var lineNamed = regexp.MustCompile(`^\pL+ (\d+)(, \pL+ |: | )`)

// chartMistake is what could not be read of a chart, with its line in the file: that which
// the message names, or that of the size which it begins with, or else the heading. What
// its second sentence advises is the remedy.
func chartMistake(file, table string, above int, why words.Text) Mistake {
	line := 1
	said := why.Say(nil)
	if m := lineNamed.FindStringSubmatch(said); m != nil {
		line, _ = strconv.Atoi(m[1])
	} else if name, rest, ok := strings.Cut(said, ":"); ok {
		if line = lineOf(table, name); strings.HasPrefix(rest, " “") {
			// The cell itself, where sizes stand across: their names are all in the first line.
			cell, _, _ := strings.Cut(rest[len(" “"):], "”")
			line = max(line, lineOf(table, cell))
		}
	} else if name, _, ok := strings.Cut(said, " is left out"); ok {
		line = lineOf(table, name)
	}
	m := Mistake{file, above + line, 1, told.Of("{0}", halfOf{why, false}), told.Of("mend it there")}
	if (halfOf{why, true}).Say(nil) != "" {
		m.Remedy = told.Of("{0}", halfOf{why, true})
	}
	return m
}

// halfOf is the first sentence of a message without the line that it names, or what comes
// after it.
type halfOf struct {
	why  words.Text
	rest bool
}

// Say says it without its full stop; what is advised goes on in the sentence.
func (h halfOf) Say(r *words.Reader) string {
	said := h.why.Say(r)
	said = said[len(lineNamed.FindString(said)):]
	what, rest, _ := strings.Cut(said, ". ")
	if !h.rest {
		return strings.TrimSuffix(what, ".")
	}
	first, n := utf8.DecodeRuneInString(rest)
	if n == 0 {
		return ""
	}
	return string(unicode.ToLower(first)) + strings.TrimSuffix(rest[n:], ".")
}

// lineOf is the first line of a table with that cell, 1 where there is none.
func lineOf(table, cell string) int {
	cell = strings.TrimSpace(cell)
	for i, line := range strings.Split(table, "\n") {
		parts := strings.FieldsFunc(line, func(r rune) bool { return strings.ContainsRune(",;\t|", r) })
		if slices.ContainsFunc(parts, func(p string) bool { return strings.Trim(p, " \"") == cell }) {
			return i + 1
		}
	}
	return 1
}

// bikeView is a bike as its table shows it.
type bikeView struct {
	Key, Title, Note, Link string
	Sizes                  []sizeView
	Rows                   []bikeRow
}

// sizeView is a size, and what it puts into a reader's record.
type sizeView struct{ Name, Mine string }

// bikeRow is a column of the chart in one unit.
type bikeRow struct {
	Key, Label, Unit string
	Units            string // the reader's units that it is for, “” for all
	Hidden           bool   // in the guide's own units
	Cells            []string
}

// exchanged are the columns of a size chart that may have been exchanged since the bike
// was sold.
func exchanged() string {
	var keys []string
	for _, c := range measure.Sizes.Columns {
		if sheet.SettingOf(c.Quantity) != nil {
			keys = append(keys, c.Key)
		}
	}
	return strings.Join(keys, " ")
}

// mine is a size as pairs of the record, in base units.
func mine(r measure.Row) string {
	var pairs []byte
	for k, c := range measure.Sizes.Columns {
		if x := r.Cells[k]; !math.IsNaN(x) {
			if len(pairs) > 0 {
				pairs = append(pairs, '&')
			}
			pairs = append(record.Escape(pairs, c.Key), '=')
			pairs = record.Escape(pairs, record.Exactly(x, c.Unit))
		}
	}
	return string(pairs)
}

// view is a bike's table in the units of every reader: those of the guide are shown, and the
// page's script shows the others.
func (b shopBike) view(r *words.Reader) bikeView {
	v := bikeView{Key: b.Key, Title: b.title(), Note: b.Note, Link: b.Link}
	for _, s := range b.sizes {
		v.Sizes = append(v.Sizes, sizeView{s.Name, mine(s)})
	}
	for k, c := range measure.Sizes.Columns {
		if !slices.ContainsFunc(b.sizes, func(s measure.Row) bool { return !math.IsNaN(s.Cells[k]) }) {
			continue
		}
		var rows []bikeRow
		for _, units := range lengthUnits {
			reader := words.Reader{Language: r.Language, Units: units}
			unit := c.Unit.ReadIn(&reader)
			i := slices.IndexFunc(rows, func(row bikeRow) bool { return row.Unit == unit.Mark() })
			if i < 0 {
				i = len(rows)
				rows = append(rows, bikeRow{Key: c.Key, Label: c.Label.Say(r), Unit: unit.Mark(),
					Cells: b.cells(k, unit, &reader), Hidden: true})
			}
			rows[i].Units = strings.TrimSpace(rows[i].Units + " " + units)
			rows[i].Hidden = rows[i].Hidden && units != r.LengthUnit()
		}
		if len(rows) == 1 {
			rows[0].Units = ""
		}
		v.Rows = append(v.Rows, rows...)
	}
	return v
}

// cells are a column of the chart in a unit, all with as many decimals as one of them needs.
func (b shopBike) cells(k int, unit *measure.Unit, r *words.Reader) (list []string) {
	decimals := 0
	for _, s := range b.sizes {
		_, after, _ := strings.Cut(record.Decimals(s.Cells[k]/unit.Base, 2), ".")
		if !math.IsNaN(s.Cells[k]) {
			decimals = max(decimals, len(after))
		}
	}
	for _, s := range b.sizes {
		cell := "–"
		if x := s.Cells[k]; !math.IsNaN(x) {
			cell = strings.Replace(strconv.FormatFloat(x/unit.Base, 'f', decimals, 64), ".", r.DecimalSign(), 1)
		}
		list = append(list, cell)
	}
	return list
}

// fillBikes is the page of the shop's bikes.
func (g *Guide) fillBikes(v *view) {
	v.Title = g.say("Our bikes")
	v.Summary = g.say("The size charts of our bikes. Forms that ask for a bike’s numbers offer them by name.")
	v.Exchanged = exchanged()
	for _, b := range g.bikes {
		v.Bikes = append(v.Bikes, b.view(g.reader))
	}
}

// bikesList is what forms offer the bikes from.
func (g *Guide) bikesList() ([]byte, error) {
	type size struct {
		Name string `json:"name"`
		Mine string `json:"mine"`
	}
	type bike struct {
		Name  string `json:"name"`
		Chart string `json:"chart"` // as the record has it, for the field that asks for a chart
		Sizes []size `json:"sizes"`
	}
	list := struct {
		Parts  string            `json:"parts"`
		Labels map[string]string `json:"labels"`
		Bikes  []bike            `json:"bikes"`
	}{exchanged(), map[string]string{}, nil}
	for _, c := range measure.Sizes.Columns {
		list.Labels[c.Key] = c.Label.Say(g.reader)
	}
	for _, b := range g.bikes {
		one := bike{Name: b.title(), Chart: measure.Sizes.Table.Write(measure.Sizes, b.sizes, nil, record.Exactly)}
		for _, s := range b.sizes {
			one.Sizes = append(one.Sizes, size{s.Name, mine(s)})
		}
		list.Bikes = append(list.Bikes, one)
	}
	return json.Marshal(list)
}

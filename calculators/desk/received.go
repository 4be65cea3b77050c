package desk

import (
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/exchange"
	"plumbline/calculators/intake"
	"plumbline/calculators/links"
	"plumbline/calculators/markup"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// The most replies that a page reads at once; the command reads any number.
const mostReplies = 200

// received is one reply that a fitter opened in a page, or why there is none.
type received struct {
	*intake.Sent
	why words.Text

	// slot is where the page keeps what the fitter writes: the first reply about the same
	// bike of the same rider.
	slot int
}

// opened reads what a fitter dropped on the page: names and texts in turn, divided by NUL.
// It tells whether there were more than a page reads.
func opened(text string, r *words.Reader) (list []*received, more bool) {
	parts := strings.Split(text, "\x00")
	for i := 0; i+1 < len(parts) && len(list) <= mostReplies; i += 2 {
		list = append(list, repliesIn(parts[i], parts[i+1], r)...)
	}
	if more = len(list) > mostReplies; more {
		list = list[:mostReplies]
	}
	relate(list)
	return list, more
}

// relate finds out what the replies have to do with one another.
func relate(list []*received) {
	intake.Together(sent(list))
	first := map[*intake.Sent]int{}
	for i, x := range list {
		bike := x.Sent
		for bike.Kin == intake.Duplicate || bike.Kin == intake.Corrected || bike.Kin == intake.Again {
			bike = bike.Earlier
		}
		if _, ok := first[bike]; !ok {
			first[bike] = i
		}
		x.slot = first[bike]
	}
}

// sent are the records of replies.
func sent(list []*received) []*intake.Sent {
	all := make([]*intake.Sent, len(list))
	for i, x := range list {
		all[i] = x.Sent
	}
	return all
}

// repliesIn reads one file, or one pasted text, of any form that a record has.
func repliesIn(name, text string, r *words.Reader) (list []*received) {
	take := func(r *record.Record, state request.State, problems []calculators.Problem) *received {
		x := &received{Sent: &intake.Sent{Record: r, State: state, Problems: problems, From: name}}
		switch {
		case r != nil && !r.Empty():
			x.Judge()
		case problems != nil:
			x.Record, x.why = nil, problems[0].Text
		default:
			x.Record, x.why = nil, words.Of("Nothing in it could be read as a value.")
		}
		list = append(list, x)
		return x
	}
	found := recordsIn(text)
	for _, one := range found {
		before := len(list)
		switch {
		case !one.why.None():
			list = append(list, &received{Sent: &intake.Sent{}, why: one.why})
		case strings.HasPrefix(one.text, "{"):
			book, problems := exchange.OpenBook(one.text)
			if book == nil {
				take(nil, request.Unsigned, problems)
				break
			}
			first := map[*record.Rider]*intake.Sent{}
			book.Each(func(rider *record.Rider, _ *record.Bike, joined *record.Record) {
				x := take(joined, request.Unsigned, problems)
				if x.Sibling = first[rider]; x.Sibling == nil && x.Record != nil {
					first[rider] = x.Sent
				}
				problems = nil // they are the file's, and said once
			})
		case links.IsRequest(one.text):
			why := words.Of("This is your own request as it went to the client. It is no reply.")
			list = append(list, &received{Sent: &intake.Sent{}, why: why})
		default:
			r, problems := exchange.Open(one.text)
			state := request.Unsigned
			if fragment, ok := exchange.Fragment(one.text); ok {
				state = request.StateOf(fragment)
			}
			take(r, state, problems)
		}
		for _, x := range list[before:] {
			if x.From = name; len(found) > 1 || one.nth > 0 {
				x.From = one.from(name, r)
			}
		}
	}
	if found == nil {
		r, problems := exchange.Open(text)
		take(r, request.Unsigned, problems)
	}
	return list
}

// replies lists the replies that a fitter opened, and shows one of them: Text has them,
// Query which one, and under the place of each client what the fitter writes to them.
func (d Desk) replies(a Ask) Reply {
	list, more := opened(a.Text, a.reader())
	f := fields(a.Query)
	w := &markup.Writer{ID: ID(Replies, a.Place), R: a.reader(), Width: a.Width}
	if more {
		w.Raw(`<p class="problem">`).Say("A page reads {0} replies at once, and here are more. The first {0} are "+
			"below. The command plumbline intake reads any number.", words.Name(strconv.Itoa(mostReplies))).Raw(`</p>`)
	}
	order := intake.InOrder(sent(list))
	at := -1
	if n, err := strconv.Atoi(f["at"]); err == nil && slices.Contains(order, n) {
		at = n
	} else if order != nil {
		at = order[0]
	}
	w.Raw(`<ul class="arrivals">`)
	for _, i := range order {
		line(w, list, i, i == at)
	}
	w.Raw(`</ul>`)
	for _, x := range list {
		switch {
		case x.Record == nil:
			w.Raw(`<p class="problem">`).Text(x.From).Raw(`: `).Said(x.why).Raw(`</p>`)
		case x.Replaced() && x.Kin == intake.Duplicate:
			w.Raw(`<p class="how">`).Say("{0}: the same reply once more.", words.Name(x.From)).Raw(`</p>`)
		case x.Replaced():
			w.Raw(`<p class="how">`).Say("{0}: a corrected reply of the same rider takes its place.",
				words.Name(x.From)).Raw(`</p>`)
		}
	}
	if at < 0 {
		return Reply{HTML: w.String()}
	}
	x := list[at]
	slot := strconv.Itoa(x.slot)
	advice := &request.Advice{From: f["from"], Note: f[slot+".message"]}
	for _, s := range sheet.Settings {
		if value := f[slot+".next."+s.Key]; value != "" {
			advice.Next = append(advice.Next, calculators.Pair{Key: s.Key, Typed: value})
		}
	}
	d.reply(w, a, x, at, advice)
	reply := Reply{HTML: w.String()}
	if advice.Next != nil {
		reply.Text = advice.Fragment(x.Record)
		reply.Link = a.Link + "#" + reply.Text
	}
	return reply
}

// line writes one reply in the list, with what the page needs to lay notes beside it.
func line(w *markup.Writer, list []*received, i int, chosen bool) {
	x := list[i]
	w.Raw(`<li><button type="button" data-at="`).Raw(strconv.Itoa(i)).Raw(`" data-slot="`).Raw(strconv.Itoa(x.slot)).
		Raw(`" data-rider="`).Raw(strconv.Itoa(x.Rider)).Raw(`" data-name="`).Text(x.Name()).Raw(`" data-bike="`).
		Text(x.Visit.Bike).Raw(`" data-from="`).Text(x.From).Raw(`" data-client="`).Text(client(list, i)).Raw(`"`)
	if chosen {
		w.Raw(` aria-current="true"`)
	}
	w.Raw(`>`).Said(x.Shown()).Raw(`</button><span class="how">`).Dated(x.About(w.R)).Raw(`</span><span class="brief">`)
	for n, said := range x.Brief() {
		if n > 0 {
			w.Raw(`, `)
		}
		if n == 0 && x.Wants() == 2 {
			w.Raw(`<b>`).Said(said).Raw(`</b>`)
			continue
		}
		w.Said(said)
	}
	w.Raw(`</span></li>`)
}

// client is how notes name the client of a reply, as the command reads it: by name, by name
// and bike where the rider has several, by the file where two people have one name.
func client(list []*received, i int) string {
	x := list[i]
	name := plainly(x.Name())
	if name == "" {
		return x.From
	}
	several, bikes := false, map[string]int{}
	for _, y := range list {
		if y.Record == nil || plainly(y.Name()) != name {
			continue
		}
		if y.Rider != x.Rider {
			return x.From
		}
		several = several || y.slot != x.slot
		if _, ok := bikes[plainly(y.Visit.Bike)]; !ok {
			bikes[plainly(y.Visit.Bike)] = y.slot
		} else if bikes[plainly(y.Visit.Bike)] != y.slot {
			return x.From
		}
	}
	switch {
	case !several:
		return x.Name()
	case x.Visit.Bike == "":
		return x.From
	}
	return x.Name() + ", " + x.Visit.Bike
}

// plainly is a name as it is compared: letters' size and blanks do not count.
func plainly(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), " ")) }

// reply writes one reply: what to know first, then the sheet with what the fitter set, then
// what was otherwise at an earlier visit.
func (d Desk) reply(w *markup.Writer, a Ask, x *received, at int, advice *request.Advice) {
	w.Raw(`<section class="arrived" id="`).Name("-shown").Raw(`" tabindex="-1" data-at="`).Raw(strconv.Itoa(at)).
		Raw(`" aria-labelledby="`).
		Name("-who").Raw(`"><h3 id="`).Name("-who").Raw(`">`).Said(x.Shown()).Raw(`</h3><p class="how">`).
		Dated(x.About(w.R)).Raw(`</p><p class="how">`).Text(x.From).Raw(`</p>`)
	if why := x.Condition(); !why.None() {
		w.Raw(`<p class="notice">`).Said(why).Raw(`</p>`)
	}
	for _, d := range x.Doubts { // the others stand on the sheet
		if d.Kind == intake.Last {
			w.Raw(`<p class="notice">`).Said(d.Text).Raw(`</p>`)
		}
	}
	for _, said := range x.Kinship(w.R) {
		w.Raw(`<p>`).Said(said).Raw(`</p>`)
	}
	foremost(w, x.Record)
	x.unread(w)
	own := advice.Over(x.Record)
	w.Raw(sheet.Of(own, d.Calculators).HTML(w.ID+"-sheet", nil, a.Width, a.reader(), a.way))
	w.Raw(came(w.ID+"-sheet", x.Record, a.reader()))
	if y, kin := x.VisitBefore(); y != nil {
		d.against(w, y, x.Sent, kin)
	}
	w.Raw(`</section>`)
}

// foremost writes what a fitter should know before the appointment.
func foremost(w *markup.Writer, r *record.Record) {
	before, young := request.Before(r), intake.Young(r)
	if before == nil && !young {
		return
	}
	w.Raw(`<section class="first"><h4>`).Say("Before the appointment").Raw(`</h4>`)
	if before != nil {
		w.Raw(`<dl>`)
		for _, b := range before {
			w.Raw(`<div><dt>`).Say(b.Question.Text).Raw(`</dt><dd>`).Lines(b.Said(w.R)).Raw(`</dd></div>`)
		}
		w.Raw(`</dl>`)
	}
	if young {
		w.Raw(`<p>`).Say("The rider is still growing, or smaller than the riders that the guide’s estimates were " +
			"made from.").Raw(`</p>`)
	}
	w.Raw(`</section>`)
}

// Laid says what the lines are in a figure of two states.
func Laid(thin, ink words.Sayer) words.Text {
	return words.Of("Thin lines: {0}. In ink: {1}. What neither says of the bike is drawn as on the guide’s test bike.",
		thin, ink)
}

// against lays an earlier visit or another bike of the rider beside a reply.
func (d Desk) against(w *markup.Writer, y, x *intake.Sent, kin intake.Kin) {
	left, right := words.Name(y.Called(kin)), words.Name(x.Called(kin))
	w.Raw(`<section class="against"><h4>`).Dated(words.Of("Against {0}", left).Say(w.R)).Raw(`</h4>`)
	before, now := record.Now(y.Record), record.Now(x.Record)
	if from, to, ok := Drawable(before, now, kin == intake.OtherBike); ok {
		if d.over(w, from, to, [2]words.Text{words.Of("{0}", left), words.Of("{0}", right)}) {
			w.Raw(`<p class="how">`).Dated(Laid(left, right).Say(w.R)).Raw(`</p>`)
		}
	}
	differences(w, before, now, [2]words.Sayer{left, right}, true)
	w.Raw(`</section>`)
}

// unread says what could not be understood and stands nowhere on the sheet.
func (x *received) unread(w *markup.Writer) {
	said := map[string]bool{}
	for _, d := range x.Doubts {
		for _, key := range d.Keys {
			said[key] = said[key] || d.Kind == intake.Unread
		}
	}
	headed := false
	for _, p := range x.Problems {
		if said[p.Input] {
			continue
		}
		if !headed {
			w.Raw(`<h4>`).Say("Not understood, as it came").Raw(`</h4>`)
			headed = true
		}
		w.Raw(`<p class="notice">`).Said(p.Text).Raw(`</p>`)
	}
}

// set reads one setting that a fitter types for a client's bike.
func set(a Ask) (reply Reply) {
	p, problem, ok := Planned(a.Key, a.Text, a.readerOf(a.Bare))
	switch {
	case !ok:
		reply.Problems = append(reply.Problems, problem)
	default:
		reply.Record = append(reply.Record, p)
	}
	return reply
}

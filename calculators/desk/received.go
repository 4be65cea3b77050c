package desk

import (
	"cmp"
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
	from     string // the file's name, with the line where a text holds several
	record   *record.Record
	state    request.State
	problems []calculators.Problem
	atCut    []intake.Doubt // about the value at which it was cut off
	why      words.Text

	intake.Relation
	rider    int
	sibling  *received // the first bike of the same rider in one file, nil where this is it
	replaced bool      // another one says the same, or corrects it

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

// relate finds duplicates, corrected replies, later visits and people of one name. A
// corrected reply is laid over the one that it corrects.
func relate(list []*received) {
	records := make([]*record.Record, len(list))
	for i, x := range list {
		records[i] = x.record
	}
	relations := intake.Relate(records)
	for i, x := range list { // a file tells better than any length whose bikes they are
		if x.sibling != nil && x.record != nil && relations[i].Kin == intake.Alone {
			relations[i] = intake.Relation{Kin: intake.OtherBike, To: slices.Index(list, x.sibling)}
		}
	}
	riders := intake.Riders(relations)
	done := make([]bool, len(list))
	var settle func(i int)
	settle = func(i int) {
		if done[i] {
			return
		}
		done[i] = true
		x := list[i]
		x.Relation, x.rider, x.slot = relations[i], riders[i], i
		if x.Kin == intake.Alone {
			return
		}
		settle(x.To)
		to := list[x.To]
		switch x.Kin {
		case intake.Duplicate:
			x.replaced = true
		case intake.Corrected:
			to.replaced = true
			x.record = record.Merge(to.record, x.record)
		}
		if x.Kin == intake.Duplicate || x.Kin == intake.Corrected || x.Kin == intake.Again {
			x.slot = to.slot
		}
	}
	first := map[int]int{}
	for i, x := range list {
		settle(i)
		if _, ok := first[x.slot]; !ok {
			first[x.slot] = i
		}
	}
	for _, x := range list {
		x.slot = first[x.slot]
	}
}

// repliesIn reads one file, or one pasted text, of any form that a record has.
func repliesIn(name, text string, r *words.Reader) (list []*received) {
	take := func(r *record.Record, state request.State, problems []calculators.Problem) *received {
		x := &received{from: name, record: r, state: state, problems: problems}
		switch {
		case r != nil && !r.Empty():
			x.atCut = intake.AtCut(r, state)
		case problems != nil:
			x.record, x.why = nil, problems[0].Text
		default:
			x.record, x.why = nil, words.Of("Nothing in it could be read as a value.")
		}
		list = append(list, x)
		return x
	}
	found := recordsIn(text)
	for _, one := range found {
		before := len(list)
		switch {
		case !one.why.None():
			list = append(list, &received{why: one.why})
		case strings.HasPrefix(one.text, "{"):
			book, problems := exchange.OpenBook(one.text)
			if book == nil {
				take(nil, request.Unsigned, problems)
				break
			}
			first := map[*record.Rider]*received{}
			book.Each(func(rider *record.Rider, _ *record.Bike, joined *record.Record) {
				x := take(joined, request.Unsigned, problems)
				if x.sibling = first[rider]; x.sibling == nil && x.record != nil {
					first[rider] = x
				}
				problems = nil // they are the file's, and said once
			})
		case links.IsRequest(one.text):
			list = append(list, &received{why: words.Of("This is your own request as it went to the client. It is " +
				"no reply.")})
		default:
			r, problems := exchange.Open(one.text)
			state := request.Unsigned
			if fragment, ok := exchange.Fragment(one.text); ok {
				state = request.StateOf(fragment)
			}
			take(r, state, problems)
		}
		for _, x := range list[before:] {
			if x.from = name; len(found) > 1 || one.nth > 0 {
				x.from = one.from(name, r)
			}
		}
	}
	if found == nil {
		r, problems := exchange.Open(text)
		take(r, request.Unsigned, problems)
	}
	return list
}

// called is whose reply it is, as the rider or the fitter wrote it, "" where neither did.
func (x *received) called() string { return cmp.Or(x.record.Name, request.VisitOf(x.record).For) }

// name is whose reply it is, for a reader.
func (x *received) name() words.Sayer {
	if name := x.called(); name != "" {
		return words.Name(name)
	}
	return words.Of("No name given")
}

// bike is which bike it is about, as the fitter or the rider wrote it.
func (x *received) bike() string { return cmp.Or(request.VisitOf(x.record).Bike, x.record.Bike) }

// about is for which bike and when it was sent.
func (x *received) about() string {
	var parts []string
	for _, s := range [...]string{x.bike(), request.VisitOf(x.record).When, x.record.Date} {
		if s != "" {
			parts = append(parts, s)
		}
	}
	return strings.Join(parts, ", ")
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
	order := inOrder(list)
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
		case x.record == nil:
			w.Raw(`<p class="problem">`).Text(x.from).Raw(`: `).Said(x.why).Raw(`</p>`)
		case x.replaced && x.Kin == intake.Duplicate:
			w.Raw(`<p class="how">`).Say("{0}: the same reply once more.", words.Name(x.from)).Raw(`</p>`)
		case x.replaced:
			w.Raw(`<p class="how">`).Say("{0}: a corrected reply of the same rider takes its place.",
				words.Name(x.from)).Raw(`</p>`)
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
	d.reply(w, a, list, at, advice)
	reply := Reply{HTML: w.String()}
	if advice.Next != nil {
		reply.Text = advice.Fragment(x.record)
		reply.Link = a.Link + "#" + reply.Text
	}
	return reply
}

// inOrder returns the places of the replies that have a line: those of one rider beside one
// another, the newest first, and riders who need attention before all others.
func inOrder(list []*received) (order []int) {
	wants, first := map[int]int{}, map[int]int{} // by rider
	for i, x := range list {
		if x.record == nil || x.replaced {
			continue
		}
		order = append(order, i)
		wants[x.rider] = max(wants[x.rider], x.wants())
		if _, ok := first[x.rider]; !ok {
			first[x.rider] = i
		}
	}
	slices.SortStableFunc(order, func(i, k int) int {
		a, b := list[i].rider, list[k].rider
		return cmp.Or(wants[b]-wants[a], first[a]-first[b], strings.Compare(list[k].record.Date, list[i].record.Date))
	})
	return order
}

// wants tells how urgently a fitter has to look at a reply: 2 before the appointment, 1 where
// something is missing or doubtful, 0 not at all.
func (x *received) wants() int {
	switch {
	case request.Before(x.record) != nil, intake.Young(x.record):
		return 2
	case x.slips() != nil, request.Lacking(x.record) != nil, x.Kin == intake.Namesake, x.state == request.Cut,
		x.state == request.Changed:
		return 1
	}
	return 0
}

// slips are what a fitter should ask about again.
func (x *received) slips() (said []words.Text) {
	for _, p := range x.problems {
		said = append(said, p.Text)
	}
	for _, d := range append(intake.Doubts(x.record), x.atCut...) {
		if d.Kind != intake.Unread { // said above already
			said = append(said, d.Text)
		}
	}
	return said
}

// line writes one reply in the list, with what the page needs to lay notes beside it.
func line(w *markup.Writer, list []*received, i int, chosen bool) {
	x := list[i]
	w.Raw(`<li><button type="button" data-at="`).Raw(strconv.Itoa(i)).Raw(`" data-slot="`).Raw(strconv.Itoa(x.slot)).
		Raw(`" data-rider="`).Raw(strconv.Itoa(x.rider)).Raw(`" data-name="`).Text(x.called()).Raw(`" data-bike="`).
		Text(x.bike()).Raw(`" data-from="`).Text(x.from).Raw(`" data-client="`).Text(client(list, i)).Raw(`"`)
	if chosen {
		w.Raw(` aria-current="true"`)
	}
	w.Raw(`>`).Said(x.name()).Raw(`</button> <span class="how">`).Text(x.about())
	if x.wants() == 2 {
		w.Raw(` <b>`).Say("Read before the appointment").Raw(`</b>`)
	}
	if n := len(x.slips()); n > 0 {
		w.Raw(`, <span>`).Say("{0} to look at again", words.Name(strconv.Itoa(n))).Raw(`</span>`)
	}
	if n := len(request.Lacking(x.record)); n > 0 {
		w.Raw(`, <span>`).Say("{0} not sent", words.Name(strconv.Itoa(n))).Raw(`</span>`)
	}
	w.Raw(`</span></li>`)
}

// client is how notes name the client of a reply, as the command reads it: by name, by name
// and bike where the rider has several, by the file where two people have one name.
func client(list []*received, i int) string {
	x := list[i]
	name := plainly(x.called())
	if name == "" {
		return x.from
	}
	several, bikes := false, map[string]int{}
	for _, y := range list {
		if y.record == nil || plainly(y.called()) != name {
			continue
		}
		if y.rider != x.rider {
			return x.from
		}
		several = several || y.slot != x.slot
		if _, ok := bikes[plainly(y.bike())]; !ok {
			bikes[plainly(y.bike())] = y.slot
		} else if bikes[plainly(y.bike())] != y.slot {
			return x.from
		}
	}
	switch {
	case !several:
		return x.called()
	case x.bike() == "":
		return x.from
	}
	return x.called() + ", " + x.bike()
}

// plainly is a name as it is compared: letters' size and blanks do not count.
func plainly(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), " ")) }

// reply writes one reply: what to know first, then the sheet with what the fitter set, then
// what was otherwise at an earlier visit.
func (d Desk) reply(w *markup.Writer, a Ask, list []*received, at int, advice *request.Advice) {
	x := list[at]
	w.Raw(`<section class="arrived" id="`).Name("-shown").Raw(`" tabindex="-1" data-at="`).Raw(strconv.Itoa(at)).
		Raw(`" aria-labelledby="`).
		Name("-who").Raw(`"><h3 id="`).Name("-who").Raw(`">`).Said(x.name()).Raw(`</h3><p class="how">`).
		Text(x.about()).Raw(` `).Text(x.from).Raw(`</p>`)
	switch x.state {
	case request.Cut:
		w.Raw(`<p class="notice">`).Say("The end of this reply was cut off on its way. What is here was read; ask " +
			"the client to send it again, as a file if they can.").Raw(`</p>`)
		for _, d := range x.atCut {
			w.Raw(`<p class="notice">`).Said(d.Text).Raw(`</p>`)
		}
	case request.Changed:
		w.Raw(`<p class="notice">`).Say("This reply is not as it was sent: something in it was lost or changed on " +
			"the way. Ask the client to send it again, as a file if they can.").Raw(`</p>`)
	}
	if x.Kin == intake.Corrected {
		w.Raw(`<p class="how">`).Say("It corrects an earlier reply, {0}. What only that one says is kept.",
			words.Name(list[x.To].from)).Raw(`</p>`)
	}
	for i, y := range list {
		if i != at && (x.Kin == intake.Namesake && x.To == i || y.Kin == intake.Namesake && y.To == at) {
			w.Raw(`<p class="notice">`).Say("Somebody of the same name is in {0}, but the two bodies do not agree: "+
				"two people, or one of them measured wrongly. Their numbers are kept apart.", words.Name(y.from)).
				Raw(`</p>`)
		}
	}
	if before := request.Before(x.record); before != nil {
		w.Raw(`<section class="first"><h4>`).Say("Before the appointment").Raw(`</h4><dl>`)
		for _, b := range before {
			w.Raw(`<div><dt>`).Say(b.Question.Text).Raw(`</dt><dd>`).Lines(b.Text).Raw(`</dd></div>`)
		}
		w.Raw(`</dl></section>`)
	}
	if intake.Young(x.record) {
		w.Raw(`<p class="notice">`).Say("The rider is still growing, or smaller than the riders that the guide’s " +
			"estimates were made from.").Raw(`</p>`)
	}
	x.unread(w)
	own := advice.Over(x.record)
	w.Raw(sheet.Of(own, d.Calculators).HTML(w.ID+"-sheet", nil, a.Width, a.reader(), a.way))
	w.Raw(came(w.ID+"-sheet", x.record, a.reader()))
	if y, kin := earlier(list, at); y != nil {
		w.Raw(`<section class="against"><h4>`).Say("Against an earlier visit or another bike: {0}",
			words.Name(strings.TrimSpace(y.about()+" "+y.from))).Raw(`</h4>`)
		before, now := record.Now(y.record), record.Now(x.record)
		if from, to, ok := Drawable(before, now, kin == intake.OtherBike); ok {
			d.over(w, from, to)
		}
		differences(w, before, now, true)
		w.Raw(`</section>`)
	}
	w.Raw(`</section>`)
}

// unread says what could not be understood and stands nowhere on the sheet.
func (x *received) unread(w *markup.Writer) {
	said := map[string]bool{}
	for _, d := range intake.Doubts(x.record) {
		for _, key := range d.Keys {
			said[key] = said[key] || d.Kind == intake.Unread
		}
	}
	headed := false
	for _, p := range x.problems {
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

// earlier is the visit or the bike that a reply stands beside, nil for none.
func earlier(list []*received, at int) (*received, intake.Kin) {
	for range list {
		x := list[at]
		switch x.Kin {
		case intake.Again, intake.OtherBike:
			return list[x.To], x.Kin
		case intake.Corrected:
			at = x.To
		default:
			return nil, intake.Alone
		}
	}
	return nil, intake.Alone
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

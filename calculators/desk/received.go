package desk

import (
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
	from   string // the file's name, or what the page calls the field
	record *record.Record
	state  request.State
	why    words.Text

	intake.Relation
	rider    int
	replaced bool // another one says the same, or corrects it
}

// opened reads what a fitter dropped on the page: names and texts in turn, divided by NUL.
func opened(text string) (list []*received) {
	parts := strings.Split(text, "\x00")
	for i := 0; i+1 < len(parts) && len(list) < mostReplies; i += 2 {
		list = append(list, repliesIn(parts[i], parts[i+1])...)
	}
	if len(list) > mostReplies {
		list = list[:mostReplies]
	}
	records := make([]*record.Record, len(list))
	for i, x := range list {
		records[i] = x.record
	}
	relations := intake.Relate(records)
	riders := intake.Riders(relations)
	done := make([]bool, len(list))
	var settle func(i int)
	settle = func(i int) {
		if done[i] {
			return
		}
		done[i] = true
		x := list[i]
		x.Relation, x.rider = relations[i], riders[i]
		switch x.Kin {
		case intake.Alone:
			return
		case intake.Duplicate:
			x.replaced = true
		}
		settle(x.To)
		if x.Kin == intake.Corrected {
			list[x.To].replaced = true
			x.record = record.Merge(list[x.To].record, x.record)
		}
	}
	for i := range list {
		settle(i)
	}
	return list
}

// repliesIn reads one file, or one pasted text, of any form that a record has.
func repliesIn(name, text string) (list []*received) {
	take := func(r *record.Record, state request.State, problems []calculators.Problem) {
		x := &received{from: name, record: r, state: state}
		switch {
		case r != nil && !r.Empty():
		case problems != nil:
			x.record, x.why = nil, problems[0].Text
		default:
			x.record, x.why = nil, words.Of("Nothing in it could be read as a value.")
		}
		list = append(list, x)
	}
	text = strings.TrimSpace(strings.TrimPrefix(text, "\ufeff"))
	if strings.HasPrefix(text, "{") {
		book, problems := exchange.OpenBook(text)
		if book == nil {
			take(nil, request.Unsigned, problems)
			return list
		}
		book.Each(func(_ *record.Rider, _ *record.Bike, joined *record.Record) {
			take(joined, request.Unsigned, nil)
		})
		return list
	}
	if isMail(text) {
		return []*received{{from: name, why: words.Of("This is a mail as a mail program keeps it. Open it there and " +
			"paste its text, or read it with the command plumbline intake.")}}
	}
	find := links.Finder{Each: func(_ int, link string) {
		if links.IsRequest(link) {
			list = append(list, &received{from: name,
				why: words.Of("This is your own request as it went to the client. It is no reply.")})
			return
		}
		fragment, _ := exchange.Fragment(link)
		r, problems := record.Decode(fragment)
		take(r, request.StateOf(fragment), problems)
	}}
	n := 0
	for line := range strings.Lines(text) {
		n++
		find.Line(n, strings.TrimRight(line, "\r\n"))
	}
	if find.End(); find.Count == 0 {
		r, problems := exchange.Open(text)
		take(r, request.Unsigned, problems)
	}
	return list
}

// isMail tells whether a text is a mail whose words are still encoded (RFC 2045, 6.1).
func isMail(text string) bool {
	head, _, _ := strings.Cut(strings.ReplaceAll(text, "\r\n", "\n"), "\n\n")
	head = strings.ToLower(head)
	return strings.HasPrefix(head, "from ") && strings.Contains(head, "\nfrom:") ||
		strings.Contains("\n"+head, "\nmime-version:") || strings.Contains("\n"+head, "\ncontent-type:")
}

// name is whose reply it is.
func (x *received) name() words.Sayer {
	if name := x.record.Name; name != "" {
		return words.Name(name)
	}
	if name := request.VisitOf(x.record).For; name != "" {
		return words.Name(name)
	}
	return words.Of("No name given")
}

// about is for which bike and when it was sent.
func (x *received) about() string {
	v := request.VisitOf(x.record)
	if v.Bike == "" {
		v.Bike = x.record.Bike
	}
	var parts []string
	for _, s := range [...]string{v.Bike, v.When, x.record.Date} {
		if s != "" {
			parts = append(parts, s)
		}
	}
	return strings.Join(parts, ", ")
}

// replies lists the replies that a fitter opened, and shows one of them: Text has them,
// Query which one and what the fitter writes to its client.
func (d Desk) replies(a Ask) Reply {
	list, f := opened(a.Text), fields(a.Query)
	at, err := strconv.Atoi(f["at"])
	if err != nil || at < 0 || at >= len(list) || list[at].record == nil {
		at = -1
	}
	w := &markup.Writer{ID: ID(Replies, a.Place), R: a.reader(), Width: a.Width}
	w.Raw(`<ul class="arrivals">`)
	shown := map[int]bool{}
	for i, x := range list {
		if x.record == nil || x.replaced {
			continue
		}
		if at < 0 {
			at = i
		}
		if shown[x.rider] {
			continue
		}
		shown[x.rider] = true
		for k, y := range list { // those of one rider beside one another
			if y.rider == x.rider && y.record != nil && !y.replaced {
				y.line(w, k, k == at)
			}
		}
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
	advice := &request.Advice{From: f["from"], Note: f["message"]}
	for _, s := range sheet.Settings {
		if value := f["next."+s.Key]; value != "" {
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

// line writes one reply in the list.
func (x *received) line(w *markup.Writer, i int, chosen bool) {
	w.Raw(`<li><button type="button" data-at="`).Raw(strconv.Itoa(i)).Raw(`"`)
	if chosen {
		w.Raw(` aria-current="true"`)
	}
	w.Raw(`>`).Said(x.name()).Raw(`</button> <span class="how">`).Text(x.about())
	if request.Before(x.record) != nil || intake.Young(x.record) {
		w.Raw(` <b>`).Say("Read before the appointment").Raw(`</b>`)
	}
	w.Raw(`</span></li>`)
}

// reply writes one reply: what to know first, then the sheet with what the fitter set, then
// what was otherwise at an earlier visit.
func (d Desk) reply(w *markup.Writer, a Ask, list []*received, at int, advice *request.Advice) {
	x := list[at]
	w.Raw(`<section class="arrived" id="`).Name("-shown").Raw(`" tabindex="-1" data-at="`).Raw(strconv.Itoa(at)).
		Raw(`" data-name="`).Said(x.name()).Raw(`" data-bike="`).Text(x.record.Bike).Raw(`" aria-labelledby="`).
		Name("-who").Raw(`"><h3 id="`).Name("-who").Raw(`">`).Said(x.name()).Raw(`</h3><p class="how">`).
		Text(x.about()).Raw(` `).Text(x.from).Raw(`</p>`)
	switch x.state {
	case request.Cut:
		w.Raw(`<p class="notice">`).Say("The end of this reply was cut off on its way. What is here was read; ask " +
			"the client to send it again, as a file if they can.").Raw(`</p>`)
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

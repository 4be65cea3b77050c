package desk

import (
	"slices"

	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// Block is what a published page needs beside a question: a page as it stands
// before any script, complete at an example. The engine in the page never writes
// it, so its text costs no download.
type Block struct {
	Ask
	Request  string     // the guide's own request, as a fragment; "" for the usual list
	Requests []Template // what a fitter keeps for kinds of appointments
	Sheet    string     // the way to the setup sheet, where a client's link leads
	Steps    []Step     // the newcomer's way through the guide
}

// Step is one step of the way, with its address from the page.
type Step struct{ Title, URL string }

// Template is a request with a name, to begin from.
type Template struct{ Name, Fragment string }

// Example is the record of the scenario's rider that the pages show without
// script: some settings known, some changed, some made.
const Example = "name=Test+rider&inseam=830&stature=1740&foot-length=266&reach=460&stack=625&head-angle=65.5" +
	"&pedals=flat&crank-length=170" +
	"&cleat-behind-ball=14&cleat-behind-ball.was=8&saddle-height=736&saddle-height.was=722" +
	"&from=saddle-height.saddle-height" +
	"&saddle-tilt=2&saddle-tilt.was=0&saddle-tilt.done=yes&stem-length=45&spacers=15&bar-rise=30&bar-width=760" +
	"&bar-width.was=780"

// begun begins a block's section.
func begun(kind string, b *Block) *markup.Writer {
	w := &markup.Writer{ID: ID(kind, b.Place), R: b.reader()}
	w.Grow(64 << 10)
	w.Raw(`<section class="desk `).Raw(kind).Raw(`-desk" id="`).
		Name("-desk").Raw(`" data-desk="`).Raw(kind).Raw(`" data-place="`).Text(b.Place).
		Raw(`" data-ways="`).Text(b.Ways).Raw(`"`)
	if kind == Sheet {
		w.Raw(` data-taken="`).Text(b.Taken).Raw(`"`)
	}
	if kind == Prepare {
		w.Raw(` data-request="`).Text(b.Request).Raw(`" data-back="`).Text(b.Sheet).Raw(`"`)
	}
	w.Raw(` aria-label="`)
	if kind == Prepare {
		w.Say("Measurements for a fitting")
	} else {
		w.Say("Your setup")
	}
	w.Raw(`">`)
	return w
}

// askable is what a fitter may tick: what a client can measure or read at home.
var askable = []struct {
	title words.English
	list  []*measure.Quantity
}{
	{"Rider", []*measure.Quantity{measure.Stature, measure.Mass, measure.Inseam, measure.TrochanterHeight,
		measure.KneeHeight, measure.TrunkLength,
		measure.ArmLength, measure.ArmSpan, measure.ShoulderWidth, measure.HandLength, measure.FingerLength,
		measure.FootLength, measure.HeelToBallInner,
		measure.SitBoneWidth, measure.PushUpWidth}},
	{"Bike as it is", []*measure.Quantity{measure.Pedals, measure.CrankLength, measure.CleatBehindBall,
		measure.SaddleHeight, measure.SaddleSetback, measure.SaddleTilt,
		measure.StemLength, measure.Spacers, measure.BarRise, measure.BarWidth,
		measure.GripX, measure.GripY, measure.LeverReach}},
	{"Frame", []*measure.Quantity{measure.Reach, measure.Stack, measure.HeadAngle, measure.SeatAngle,
		measure.Chainstay, measure.ForkTravel, measure.RearTravel, measure.SagFront, measure.SagRear}},
}

// PreparePage writes the preparation for a fitting: what the client is led
// through, and below it what a fitter composes a request with.
func (d Desk) PreparePage(b Block) string {
	w := begun(Prepare, &b)
	b.Record = b.Request
	w.Raw(`<p class="offline">`).
		Say("You are led through this step by step where the page’s script runs. " +
			"On paper it works as it is: write beside each figure.").
		Raw(`</p>`)
	w.Raw(`<form class="client" novalidate><fieldset disabled><legend class="unseen">`).
		Say("Your measurements").Raw(`</legend>`)
	w.Raw(`<p class="progress" role="status" hidden></p><div class="paper">`).Raw(d.prepare(b.Ask)).Raw(`</div>`)
	w.Raw(`<div class="line walk" hidden><button type="button" data-do="before">`).
		Say("Back").Raw(`</button><button type="button" data-do="skip">`).
		Say("Leave this out").
		Raw(`</button><button type="button" class="main" data-do="after">`).Say("Go on").
		Raw(`</button></div><div class="line hand" hidden>` +
			`<a class="button main" data-do="message" hidden>`).
		Say("Send it").Raw(`</a>`)
	for _, do := range []struct {
		name  string
		label words.English
	}{{"share", "Share it"}, {"copy", "Copy a link"}, {"json",
		"Save a file"}, {"code", "Show a code"}} {
		w.Raw(`<button type="button" data-do="`).Raw(do.name).Raw(`">`).Say(do.label).Raw(`</button>`)
	}
	w.Raw(`</div><p class="how hand" hidden>`).
		Say("Nothing has been sent. What you see above is in the link, the file and the code, " +
			"and nothing else is. It goes only where you send it.").
		Raw(`</p><div class="code-place"></div></fieldset></form>`)
	d.composer(w, &b)
	reading(w, &b)
	w.Raw(`</section>`)
	return w.String()
}

// composer writes the fitter's own form.
func (d Desk) composer(w *markup.Writer, b *Block) {
	q, _ := asked(b.Request)
	w.Raw(`<details class="compose" id="`).Name("-compose").Raw(`"><summary>`).Say("For a fitter: ask a client").
		Raw(`</summary><form class="request" novalidate><fieldset disabled><legend>`).
		Say("Your request").Raw(`</legend>`)
	if b.Requests != nil {
		w.Raw(`<label class="row">`).Say("Begin with").
			Raw(` <select name="template" autocomplete="off"><option value="`).
			Text(q.Fragment()).Raw(`">`).Say("What this guide asks for").Raw(`</option>`)
		for _, t := range b.Requests {
			w.Raw(`<option value="`).Text(t.Fragment).Raw(`">`).Text(t.Name).Raw(`</option>`)
		}
		w.Raw(`</select></label>`)
	}
	row := func(name string, label words.English, value string, example words.English) {
		w.Raw(`<label class="row">`).Say(label).
			Raw(` <input type="text" autocomplete="off" maxlength="80" name="`).Raw(name).
			Raw(`" value="`).Text(value).Raw(`" placeholder="`).Say(example).Raw(`"></label>`)
	}
	row("ask.for", "For whom", "", "the client’s name")
	row("ask.when", "Appointment", "", "for example 3 December, 10:00")
	row("ask.bike", "Which bike", "", "for example the trail bike")
	w.Raw(`<div class="ticked">`)
	for _, g := range askable {
		w.Raw(`<fieldset><legend>`).Say(g.title).Raw(`</legend>`)
		for _, x := range g.list {
			w.Raw(`<label><input type="checkbox" name="ask" value="`).Text(x.Key).Raw(`"`)
			if slices.Contains(q.Ask, x) {
				w.Raw(` checked`)
			}
			w.Raw(`> `).Say(x.Label).Raw(`</label>`)
		}
		w.Raw(`</fieldset>`)
	}
	w.Raw(`</div><label class="tick"><input type="checkbox" name="ask.health" value="yes"`)
	if q.Health {
		w.Raw(` checked`)
	}
	w.Raw(`> `).Say("Ask the few questions about health as well. Each may be left out.").Raw(`</label>`)
	text := func(name string, label words.English, value, hint string) {
		w.Raw(`<label class="row">`).Say(label).
			Raw(` <input type="text" autocomplete="off" name="`).Raw(name).Raw(`" value="`).Text(value).
			Raw(`" aria-describedby="`).Name("-" + hint).Raw(`"></label>`)
	}
	text("ask.by", "Who asks", q.By, "rp")
	w.Raw(`<label class="row">`).Say("A note to the client").
		Raw(` <textarea rows="3" autocomplete="off" name="ask.note" maxlength="1000">`).
		Raw("\n").Text(q.Note).Raw(`</textarea></label>`)
	text("ask.reply", "Where the answer goes", q.Reply.To, "rh")
	w.Raw(`<p class="how" id="`).Name("-rh").Raw(`">`).
		Say("A mail address, a phone number, or nothing. " +
			"With nothing the client copies a link, saves a file or shows you a code.").
		Raw(`</p><p class="problem" id="`).Name("-rp").
		Raw(`" hidden></p><label class="row">`).Say("Your request, as a link").
		Raw(` <input type="text" readonly name="link" autocomplete="off"></label><div class="line">`)
	for _, do := range []struct {
		name  string
		label words.English
	}{{"copy", "Copy the link"}, {"share", "Share it"}, {"code",
		"Show a code"}, {"try", "See it as your client does"}} {
		w.Raw(`<button type="button" data-do="`).Raw(do.name).Raw(`">`).Say(do.label).Raw(`</button>`)
	}
	w.Raw(`</div><div class="code-place"></div></fieldset></form></details>`)
}

// reading writes the fitter's place for what came back: opened on their device, beside their
// own numbers, with settings to send to the client.
func reading(w *markup.Writer, b *Block) {
	q, _ := asked(b.Request)
	w.Raw(`<details class="compose replies" id="`).Name("-replies").Raw(`"><summary>`).
		Say("For a fitter: read what came back").Raw(`</summary><form class="opening" novalidate><fieldset disabled>` +
		`<legend>`).Say("Replies").Raw(`</legend><p class="how">`).
		Say("Replies are opened on this device, each by itself, and never among your own numbers. Nothing is " +
			"uploaded. What you opened and wrote stays in this tab until you put it away or close the tab.").
		Raw(`</p><div class="drop"><label class="file">`).
		Say("Open replies").
		Raw(` <input type="file" multiple name="files" accept=".json,.csv,.txt,.eml,.mbox,.yaml,` +
			`application/json,text/csv,text/plain,message/rfc822"></label><p class="how">`).
		Say("Files that clients sent, mails as your mail program saves them (.eml, .mbox), and your own notes " +
			"(notes.yaml). You can also drop several here.").
		Raw(`</p></div><label class="row">`).Say("Or paste links or a mail’s text").
		Raw(` <textarea rows="3" autocomplete="off" spellcheck="false" name="pasted"></textarea></label>` +
			`<div class="line"><button type="button" data-do="paste">`).Say("Open what is pasted").
		Raw(`</button></div><p class="problem" role="status" hidden></p></fieldset></form>` +
			`<div class="paper received"></div><form class="advice" novalidate hidden><fieldset disabled><legend>`).
		Say("What you give this client").Raw(`</legend><div class="line"><label class="wide">`).Say("Setting").
		Raw(` <select name="key" autocomplete="off">`)
	settings(w)
	w.Raw(`</select></label><div class="asked"><label for="`).Name("-value").Raw(`">`).Say("Next").
		Raw(`</label><span class="entry"><input type="text" autocomplete="off" spellcheck="false" name="value" id="`).
		Name("-value").Raw(`" aria-describedby="`).Name("-vp").Raw(`"></span></div>` +
		`<button type="button" data-do="set">`).
		Say("Write it down").Raw(`</button></div><p class="problem" id="`).Name("-vp").
		Raw(`" hidden></p><ul class="chosen"></ul><label class="row">`).Say("Your notes, for yourself").
		Raw(` <textarea rows="3" autocomplete="off" name="note" maxlength="2000"></textarea></label>` +
			`<label class="row">`).
		Say("A message to the client").
		Raw(` <textarea rows="2" autocomplete="off" name="message" maxlength="1000"></textarea></label>` +
			`<label class="row">`).Say("From").
		Raw(` <input type="text" autocomplete="off" maxlength="80" name="from" value="`).
		Text(q.By).Raw(`"></label><label class="row">`).Say("Link for the client, with your settings as Next").
		Raw(` <input type="text" readonly name="link" autocomplete="off"></label><div class="line">`)
	for _, do := range []struct {
		name  string
		label words.English
	}{{"copy", "Copy the link"}, {"share", "Share it"}, {"code", "Show a code"}, {"notes", "Save your notes"},
		{"away", "Put all replies away"}} {
		w.Raw(`<button type="button" data-do="`).Raw(do.name).Raw(`">`).Say(do.label).Raw(`</button>`)
	}
	w.Raw(`</div><p class="how">`).
		Say("The link opens the client’s own setup. It has their numbers and your settings. What they told you about " +
			"their health is left out. Your notes are for you alone; plumbline intake reads the file with them too.").
		Raw(`</p><div class="code-place"></div></fieldset></form></details>`)
}

// RequestOf makes a guide's own request from what its guide.yaml says.
func RequestOf(ask []string, by, note, reply string, health bool) (fragment string, why words.Text) {
	r := request.Request{By: by, Note: note, Health: health}
	for _, key := range ask {
		if q := measure.Named(key); q != nil {
			r.Ask = append(r.Ask, q)
		} else {
			return "", words.Of("there is no measurement “{0}”", words.Name(key))
		}
	}
	if len(ask) == 0 {
		r.Ask = request.Usual
	}
	to, problem, ok := request.ReadReply(reply)
	if !ok {
		return "", problem
	}
	r.Reply = to
	return r.Fragment(), words.Text{}
}

package desk

import (
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// SetupPage writes the page "Your setup": who and which bike, where the reader is on the
// way, what to measure next, the sheet, the log, and the tools around them.
func (d Desk) SetupPage(b Block) string {
	w := begun(Sheet, &b)
	b.Record = Example
	w.Raw(`<p class="offline">`).Say("Worked example. Your own setup stands here where the page’s script runs.").
		Raw(`</p>`)
	whose(w)
	standing(w, b.Steps)
	w.Raw(`<div class="worth" id="`).Name("-worth").Raw(`">`).Raw(d.worth(b.Ask)).Raw(`</div><div class="paper">`).
		Raw(d.sheet(b.Ask)).Raw(`</div>`)
	writing(w)
	logging(w)
	handing(w)
	w.Raw(`</section>`)
	return w.String()
}

// whose writes the choice of rider and bike, and their names.
func whose(w *markup.Writer) {
	w.Raw(`<form class="whom" novalidate><fieldset disabled><legend class="unseen">`).Say("Rider and bike").
		Raw(`</legend><div class="line">`)
	for _, f := range []struct {
		name       string
		label, add words.English
	}{{"rider", "Rider", "Add a rider"}, {"bike", "Bike",
		"Add a bike"}} {
		w.Raw(`<label>`).Say(f.label).Raw(` <select name="`).Raw(f.name).Raw(`" autocomplete="off"></select></label>`).
			Raw(`<button type="button" data-do="add-`).Raw(f.name).Raw(`">`).Say(f.add).Raw(`</button>`)
	}
	w.Raw(`</div><details id="`).Name("-names").Raw(`"><summary>`).Say("Names, date and note").
		Raw(`</summary><div class="line about"><label>`).Say("Rider’s name").
		Raw(` <input type="text" autocomplete="off" name="name" maxlength="80"></label><label>`).Say("Bike’s name").
		Raw(` <input type="text" autocomplete="off" name="bike-name" maxlength="80"></label><label>`).Say("Date").
		Raw(` <input type="date" autocomplete="off" name="date"></label><label class="wide">`).Say("Note").
		Raw(` <textarea rows="1" autocomplete="off" name="note" maxlength="2000"></textarea></label></div>` +
			`</details></fieldset></form>`)
}

// standing writes the steps of the way, of which the page shows where the reader is.
func standing(w *markup.Writer, steps []Step) {
	w.Raw(`<div class="standing"><p></p>`)
	if len(steps) > 0 {
		w.Raw(`<ol hidden>`)
		for _, s := range steps {
			w.Raw(`<li><a href="`).Text(s.URL).Raw(`">`).Text(s.Title).Raw(`</a></li>`)
		}
		w.Raw(`</ol>`)
	}
	w.Raw(`</div>`)
}

// settings writes the options of a choice of settings.
func settings(w *markup.Writer) {
	group := sheet.Group("")
	for _, s := range sheet.Settings {
		if s.Group != group {
			if group != "" {
				w.Raw(`</optgroup>`)
			}
			group = s.Group
			w.Raw(`<optgroup label="`).Say(words.English(group)).Raw(`">`)
		}
		w.Raw(`<option value="`).Text(s.Key).Raw(`" data-unit="`).Text(s.Unit.Mark())
		if s.Least < 0 {
			w.Raw(`" data-keyboard="text`) // a pad of digits has no minus
		}
		if s.Is() == measure.Pick {
			w.Raw(`" data-picks="`).Name("-picks-" + s.Key)
		}
		w.Raw(`">`).Say(s.Label).Raw(`</option>`)
	}
	w.Raw(`</optgroup>`)
}

// writing writes the form that puts a setting on the sheet.
func writing(w *markup.Writer) {
	w.Raw(`<form class="entry-line" novalidate><fieldset disabled><legend>`).Say("Write on the sheet").
		Raw(`</legend><div class="line"><label class="wide">`).Say("Setting").
		Raw(` <select name="key" autocomplete="off">`)
	settings(w)
	w.Raw(`</select></label>`)
	for _, f := range []struct {
		name  string
		label words.English
	}{{"now", "Now"}, {"next", "Next"}} {
		w.Raw(`<div class="asked"><label for="`).Name("-" + f.name).Raw(`">`).Say(f.label).
			Raw(`</label><span class="entry"><input type="text" inputmode="decimal" autocomplete="off" ` +
				`spellcheck="false" id="`).Name("-" + f.name).Raw(`" name="`).Raw(f.name).
			Raw(`" aria-describedby="`).Name("-p ").Name("-h").Raw(`"><span class="unit">`).
			Text(sheet.Settings[0].Unit.Mark()).Raw(`</span></span></div>`)
	}
	w.Raw(`<button type="submit">`).Say("Write it down").Raw(`</button></div><p class="how" id="`).Name("-h").
		Raw(`"></p><p class="problem" id="`).Name("-p").Raw(`" hidden></p>`)
	for _, s := range sheet.Settings {
		if s.Is() != measure.Pick {
			continue
		}
		w.Raw(`<datalist id="`).Name("-picks-" + s.Key).Raw(`">`)
		for _, c := range s.Choices {
			w.Raw(`<option value="`).Say(c.Label).Raw(`"></option>`)
		}
		w.Raw(`</datalist>`)
	}
	w.Raw(`</fieldset></form>`)
}

// logging writes the place of the log, the form for a line, and the comparison.
func logging(w *markup.Writer) {
	w.Raw(`<div class="logged"></div><form class="log-line" novalidate><fieldset disabled><legend>`).
		Say("Write in the log").Raw(`</legend><div class="line"><label>`).Say("Day").
		Raw(` <input type="date" autocomplete="off" name="on"></label><label class="wide">`).Say("What you noticed").
		Raw(` <textarea rows="2" autocomplete="off" name="line" maxlength="500"></textarea></label><label>`).
		Say("Scores of the rides").Raw(` <input type="text" inputmode="decimal" autocomplete="off" name="scores" ` +
		`aria-describedby="`).Name("-lh ").Name("-lp").Raw(`"></label><button type="submit">`).Say("Write it down").
		Raw(`</button></div><p class="how" id="`).Name("-lh").Raw(`">`).
		Say("A score says how much something troubled you on a ride: 0 is nothing, 10 unbearable. Changes that you " +
			"mark as made appear in the log by themselves.").Raw(`</p><p class="problem" id="`).Name("-lp").
		Raw(`" hidden></p></fieldset></form><details class="compare" id="`).Name("-compare").Raw(`"><summary>`).
		Say("Lay two states over one another").Raw(`</summary><div class="laid"></div></details>`)
}

// handing writes the ways out and in, and what forgets.
func handing(w *markup.Writer) {
	w.Raw(`<fieldset class="keep" disabled><legend>`).Say("Save it, print it, hand it on").
		Raw(`</legend><div class="line">`)
	for _, do := range []struct {
		name  string
		label words.English
	}{{"print", "Print the setup sheet"}, {"json", "Save a file"},
		{"csv", "Save a table"}, {"share", "Share a link"}, {"copy", "Copy a link"}, {"code", "Show a code"}} {
		w.Raw(`<button type="button" data-do="`).Raw(do.name).Raw(`">`).Say(do.label).Raw(`</button>`)
	}
	w.Raw(`<label class="file">`).Say("Open a file").
		Raw(` <input type="file" accept=".json,.csv,.txt,application/json,` +
			`text/csv,text/plain" name="file" aria-describedby="`).Name("-o").Raw(`"></label></div><p class="how">`).
		Say("A file holds all riders, bikes and logs, and can be opened here again. A table opens in a spreadsheet. " +
			"A link and a code hold the numbers of this rider on this bike: give them only to " +
			"whom you want to have them.").
		Raw(`</p><div class="opened" id="`).Name("-o").Raw(`" role="status"></div><div class="code-place"></div>` +
		`</fieldset><fieldset class="forget" disabled><legend>`).Say("Forget").Raw(`</legend><div class="line">`)
	for _, f := range []struct {
		what  string
		label words.English
	}{{"bike", "Forget this bike"}, {"rider", "Forget this rider"},
		{"all", "Forget everything"}} {
		w.Raw(`<button type="button" data-forget="`).Raw(f.what).Raw(`">`).Say(f.label).Raw(`</button>`)
	}
	w.Raw(`</div><p class="how">`).Say("Forgetting can be undone until you leave the page.").Raw(`</p></fieldset>`)
}

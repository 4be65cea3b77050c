package site

import "plumbline/calculators/words"

// setting is one key of guide.yaml: what it says, and how it is written. It is the one
// place where settings are explained; the file that Adopt writes is made from it.
type setting struct {
	key     string
	says    words.English // for somebody who has never seen the project
	example string        // lines of YAML
}

// documented are the keys of guide.yaml, in the order in which somebody fills them in.
var documented = []setting{
	{"name", "Your shop’s name, or your own. It stands at the top of every page.", "name: Alder Bank Bikes"},
	{
		"contact",
		"Where your readers and clients reach you: a mail address, or a web address. It is needed as soon as " +
			"the name is yours, because clients send their measurements there.",
		"contact: workshop@alder-bank.example",
	},
	{"tagline", "One sentence under the name.", "tagline: Fitted by people who ride the same hills."},
	{
		"mark",
		"Your mark, beside the name on every page and in the browser’s tab: an SVG or PNG file in this folder. " +
			"It stands " +
			"on white on a dark screen, so that dark lines can be seen. On a phone a wide mark stands without " +
			"the name.",
		"mark: mark.svg",
	},
	{
		"colours",
		"Two colours of yours. The first is for what a reader sets and for the main answer, the second for the rider " +
			"in the drawings. Each must be easy to read on a light screen and on paper; if it is not, you are " +
			"told the " +
			"nearest one that is. For dark screens a lighter shade is chosen, unless you name one as first_dark or " +
			"second_dark.",
		"colours:\n  first: \"#8a2a5b\"\n  second: \"#2f6b3a\"",
	},
	{"notice", "Whose guide this is and what it does not replace. It stands at the foot of every page.",
		"notice: >-\n  Alder Bank Bikes publishes this guide as general information for healthy adult riders.\n" +
			"  It does not replace the maker's manual, local law, or the advice of a clinician."},
	{"local", "Opening hours, local law, what applies where you are. It stands beside the notice.",
		"local: Open Tuesday to Saturday. Brakes are set up the way our country’s law asks."},
	{"licence", "How the chapters that you write may be used by others. It stands at the foot of every page.",
		"licence: Our own chapters may be shared under CC BY 4.0."},
	{
		"address",
		"Where the guide will be on the web. Search engines and links that people share are told it, and any web " +
			"server can show the page for lost addresses.",
		"address: https://alder-bank.example/fit/",
	},
	{
		"host_files",
		"Files that tell a host how to send the guide: apache writes .htaccess, headers writes _headers, which " +
			"several hosts of files read. For nginx and Caddy see “plumbline hosting nginx”.",
		"host_files: [headers]",
	},
	{"booking", "The web address at which an appointment is made.", "booking: https://alder-bank.example/book"},
	{"units", "What lengths are shown in at first: mm, cm or in. Every reader can change it.", "units: cm"},
	{"language", "The language of your chapters, as the web writes it (BCP 47).", "language: en-GB"},
	{
		"languages",
		"The languages in which the guide is published, the one of your chapters among them. The built-in chapters " +
			"are there in English and German. Each language but yours has a folder of its own name here, for what " +
			"you say in it: de/guide.yaml, de/shop/how-we-fit.md. What is missing there is shown as you wrote it.",
		"languages: [en, de]",
	},
	{"leave_out", "Chapters of the built-in guide that you do not want, or a whole part by its folder’s name. Links " +
		"to them become plain words.",
		"leave_out: [cockpit/bar-roll-and-rise, feet/shoe-size]"},
	{
		"hide",
		"Sections of built-in chapters that you do not want, as part/chapter#heading. A section with a caution " +
			"stays. To add to a chapter, write a file beside it that ends in .add.md: what stands there under a " +
			"heading of the chapter is added to that section.",
		"hide: [saddle/height#two-lengths-with-one-name]",
	},
	{
		"add",
		"Chapters of your own: the part’s folder and the file’s name without .md. A part of your own has a title, " +
			"a folder, and an index.md in it.",
		"add:\n  saddle: [saddles-we-lend]\n  shop:\n    title: Our workshop\n    chapters: [how-we-fit]",
	},
	{"path", "The newcomer’s way through the guide, step by step. Leave it out for the built-in way. A " +
		"chapter of yours in it says in its header how long it takes, like “time: 10 minutes”.",
		"path:\n  - start/before-you-touch-a-bolt\n  - start/measure-yourself\n  - saddle/height"},
	{
		"request",
		"What a client is asked to measure before an appointment. Your name asks, and the answers go to your " +
			"contact, unless you say otherwise with “by” and “reply”.",
		"request:\n  ask: [stature, inseam, arm-span, saddle-height]\n  " +
			"note: Bring the shoes you ride in.\n  health: yes",
	},
	{"requests", "Requests that you keep for kinds of appointments. “Prepare for a fitting” offers them by name.",
		"requests:\n  - name: Second visit\n    ask: [saddle-height, saddle-setback, bar-width]\n    note: Write " +
			"down what still bothers you."},
	{"parts", "All parts of the guide with their chapters, in your own order. Only for a guide that is built anew; " +
		"“add” and “leave_out” are enough for most.",
		"parts:\n  - key: saddle\n    title: Saddle\n    chapters: [height, tilt]"},
}

// settingsKeys are the keys that guide.yaml may have.
func settingsKeys() (keys []string) {
	for _, s := range documented {
		keys = append(keys, s.key)
	}
	return keys
}

// Package request is what a fitter asks a client to measure before an appointment.
// It is a link and nothing more: the fragment of the page "Prepare for a fitting"
// names the measurements, carries a note and says how the client's record comes
// back. There is no server; nothing is sent until the client sends it.
package request

import (
	"slices"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// The keys of a request in a fragment. They stand beside the client's own numbers
// and are no part of the record.
//
//	ask=inseam+stature      the measurements, parted by spaces
//	ask.by=Larch+Hollow     who asks
//	ask.for=Rowan           whom
//	ask.when=2026-12-03     the appointment, as the fitter wrote it
//	ask.bike=trail+bike     for which bike
//	ask.note=…              what the fitter wrote
//	ask.reply=mailto:a@b.c  where the record goes: mailto:, sms:, or empty
//	ask.health=yes          ask the questions about health too
//
// A reply begins with what was asked and ends with a check value:
//
//	ask.back=yes            this is a reply, to be kept apart from the numbers of whoever opens it
//	ask=, ask.for=, ask.when=, ask.bike= as they were asked
//	ask.end=14.9f3c21aa     what stands before: how many pairs, and their CRC-32
//
// What the fitter sends back begins with who it is from, and ends with a check value too:
//
//	ask.from=Larch+Hollow   the client's own setup with this fitter's settings as Next
//	ask.note=…              what the fitter wrote to the client
const (
	keyAsk    = "ask"
	keyBy     = "ask.by"
	keyFor    = "ask.for"
	keyWhen   = "ask.when"
	keyBike   = "ask.bike"
	keyNote   = "ask.note"
	keyReply  = "ask.reply"
	keyHealth = "ask.health"
	keyBack   = "ask.back"
	keyFrom   = "ask.from"
)

// Request is what a fitter asks for.
type Request struct {
	By   string // the fitter or shop, as they wrote it
	Note string
	Visit
	Ask     []*measure.Quantity
	Unknown []string // keys that this version does not know, kept
	Reply   Reply
	Health  bool // the questions about health are asked too
}

// Visit is what a request is about, in the fitter's words. It comes back with the
// reply. Each may be empty.
type Visit struct {
	For  string // whom
	When string // the appointment
	Bike string // for which bike
}

// VisitOf returns what a reply says of the visit it was made for.
func VisitOf(back *record.Record) (v Visit) {
	for i := range back.Entries {
		v.take(back.Entries[i].Key, back.Entries[i].Text)
	}
	return v
}

// take takes a pair that speaks of the visit.
func (v *Visit) take(key, value string) {
	switch value = record.Plain(value, longestBy, false); key {
	case keyFor:
		v.For = value
	case keyWhen:
		v.When = value
	case keyBike:
		v.Bike = value
	}
}

// Reply is how a record comes back.
type Reply struct {
	Way Way
	To  string // a mail address or a phone number; "" for Aside
}

// Way is a way for a record to come back.
type Way string

// The ways. Aside: the client copies the link, saves a file or shows a code, and
// hands it over however they like.
const (
	Aside Way = ""
	Mail  Way = "mailto"
	Phone Way = "sms"
)

// The longest of what a fitter writes, in bytes.
const (
	longestBy   = 80
	longestNote = 1000
	mostAsked   = 64
)

// Usual are the measurements that a first appointment wants: what a client can
// take alone or with one helper, most telling first.
var Usual = []*measure.Quantity{
	measure.Stature, measure.Mass, measure.Inseam, measure.FootLength, measure.ArmSpan, measure.ShoulderWidth,
	measure.SaddleHeight, measure.SaddleSetback, measure.CrankLength, measure.Pedals,
}

// Decode finds a request in a fragment, with or without its #. It tells whether
// there is one, and what in it could not be understood: the rest still counts.
func Decode(fragment string) (r *Request, problems []calculators.Problem, ok bool) {
	r = &Request{}
	record.Fields(strings.TrimPrefix(fragment, "#"), func(key, value string) {
		r.Visit.take(key, value)
		switch key {
		case keyAsk:
			ok = true
			problems = append(problems, r.ask(value)...)
		case keyBy:
			r.By = record.Plain(value, longestBy, false)
		case keyNote:
			r.Note = record.Plain(value, longestNote, true)
		case keyHealth:
			r.Health = value == "yes"
		case keyReply:
			reply, why, fine := ReadReply(value)
			if r.Reply = reply; !fine {
				problems = append(problems, calculators.Problem{Input: key, Text: why})
			}
		}
	})
	return r, problems, ok
}

// ask takes the keys of the measurements.
func (r *Request) ask(list string) (problems []calculators.Problem) {
	r.Ask, r.Unknown = nil, nil
	for _, key := range strings.FieldsFunc(list, func(c rune) bool { return c == ' ' || c == ',' }) {
		if len(r.Ask)+len(r.Unknown) == mostAsked {
			return append(problems, calculators.Problem{Input: keyAsk, Text: words.Of("More than {0} measurements "+
				"are asked for; the rest is left out.", measure.Amount{Value: mostAsked, Unit: measure.One})})
		}
		switch q := measure.Named(key); {
		case q != nil && !slices.Contains(r.Ask, q):
			r.Ask = append(r.Ask, q)
		case q == nil && len(key) <= record.LongestKey:
			r.Unknown = append(r.Unknown, key)
			why := words.Of("“{0}” is not a measurement that this guide knows.", measure.Quoted(key))
			if near := measure.Nearest(key); near != nil {
				why = words.Of("“{0}” is not a measurement that this guide knows. Did the fitter mean {1} ({2})?",
					measure.Quoted(key), near.Named(), words.Name(near.Key))
			}
			problems = append(problems, calculators.Problem{Input: keyAsk, Text: why})
		}
	}
	return problems
}

// ReadReply reads how a record comes back: "mailto:shop@example.org",
// "sms:+15550100", an address or a number alone, or nothing. Only a plain address
// and a plain number are taken, so that a link cannot slip a subject, a second
// receiver or another scheme into what the client sends.
func ReadReply(s string) (Reply, words.Text, bool) {
	s = strings.TrimSpace(s)
	if s == "" {
		return Reply{}, words.Text{}, true
	}
	way, to, ok := strings.Cut(s, ":")
	if !ok {
		way, to = string(Mail), s
		if !strings.Contains(s, "@") {
			way = string(Phone)
		}
	}
	switch Way(strings.ToLower(way)) {
	case Mail:
		if isAddress(to) {
			return Reply{Mail, to}, words.Text{}, true
		}
		return Reply{}, words.Of("“{0}” is not a mail address. Write one such as you@example.org.",
			measure.Quoted(to)), false
	case Phone:
		if number, ok := phone(to); ok {
			return Reply{Phone, number}, words.Text{}, true
		}
		return Reply{}, words.Of("“{0}” is not a phone number. Write digits, with + and the country’s number in "+
			"front.", measure.Quoted(to)), false
	}
	return Reply{}, words.Of("A record comes back by mailto: or sms:, not by “{0}”.", measure.Quoted(way)), false
}

// isAddress tells whether s is a plain mail address: one @, and nothing that a
// link would read as more than an address (RFC 6068, section 2).
func isAddress(s string) bool {
	name, host, ok := strings.Cut(s, "@")
	if !ok || name == "" || len(s) > 254 || !strings.Contains(host, ".") {
		return false
	}
	for i := range len(s) {
		switch c := s[i]; {
		case c >= 'a' && c <= 'z', c >= 'A' && c <= 'Z', c >= '0' && c <= '9', c == '.', c == '-', c == '_', c == '@':
		case c == '+' && i < len(name):
		default:
			return false
		}
	}
	return !strings.Contains(host, "@") && !strings.Contains(s, "..") && name[0] != '.' &&
		name[len(name)-1] != '.' && host[0] != '.' && host[len(host)-1] != '.' && !strings.ContainsAny(host, "_+")
}

// phone reads a phone number and takes out what people write between the digits.
func phone(s string) (string, bool) {
	var b []byte
	for i := range len(s) {
		switch c := s[i]; {
		case c >= '0' && c <= '9', c == '+' && len(b) == 0:
			b = append(b, c)
		case c == ' ', c == '-', c == '(', c == ')', c == '.', c == '/':
		default:
			return "", false
		}
	}
	digits := strings.TrimPrefix(string(b), "+")
	return string(b), len(digits) >= 3 && len(digits) <= 15 // ITU-T E.164 ends at 15
}

// String writes the reply as a request has it.
func (r Reply) String() string {
	if r.Way == Aside {
		return ""
	}
	return string(r.Way) + ":" + r.To
}

// Fragment writes the request, without the #.
func (r *Request) Fragment() string {
	return pairs([][2]string{{keyAsk, r.keys()}, {keyBy, r.By}, {keyFor, r.For}, {keyWhen, r.When},
		{keyBike, r.Bike}, {keyNote, r.Note}, {keyReply, r.Reply.String()}, {keyHealth, yes(r.Health)}})
}

// keys are the keys of what is asked, parted by spaces.
func (r *Request) keys() string {
	keys := make([]string, 0, len(r.Ask)+len(r.Unknown))
	for _, q := range r.Ask {
		keys = append(keys, q.Key)
	}
	return strings.Join(append(keys, r.Unknown...), " ")
}

// pairs writes a fragment. Of an empty value nothing is written, but what is asked
// always is: it is what makes a request of a fragment.
func pairs(list [][2]string) string {
	var b []byte
	for _, p := range list {
		if p[1] == "" && p[0] != keyAsk {
			continue
		}
		if len(b) > 0 {
			b = append(b, '&')
		}
		b = record.Escape(append(append(b, p[0]...), '='), p[1])
	}
	return string(b)
}

func yes(b bool) string {
	if b {
		return "yes"
	}
	return ""
}

// IsKey tells whether a key of a fragment belongs to a request.
func IsKey(key string) bool { return key == keyAsk || strings.HasPrefix(key, keyAsk+".") }

// component escapes a part of an address as RFC 3986 has it, in which a plus sign
// does not mean a space.
func component(s string) string { return strings.ReplaceAll(string(record.Escape(nil, s)), "+", "%20") }

// Back is what a client sends on that day (2026-11-24; "" where it is not known):
// what was asked and for which visit, so that the fitter sees what was left out, then
// the client's record, then a check value. Who asked, the note and the way back have
// done their work and are left out.
func (r *Request) Back(client *record.Record, day string) string {
	sent := *client
	sent.Entries = slices.Clone(client.Entries)
	sent.Drop(IsKey)
	if record.IsDate(day) {
		sent.Date = day
	}
	text := pairs([][2]string{{keyBack, "yes"}, {keyAsk, r.keys()}, {keyFor, r.For}, {keyWhen, r.When},
		{keyBike, r.Bike}})
	if own := sent.Fragment(); own != "" {
		text += "&" + own
	}
	return signed(text)
}

// IsReply tells whether a fragment is what a client sent.
func IsReply(r *record.Record) bool { return r.At(keyBack) != nil }

// Lacking returns what was asked for in a record that came back and is not in it,
// in the order asked; nil when nothing was asked or the reply is complete.
func Lacking(back *record.Record) (lacking []*measure.Quantity) {
	e := back.At(keyAsk)
	if e == nil {
		return nil
	}
	var r Request
	r.ask(e.Text)
	for _, q := range r.Ask {
		if had := back.Of(q); had == nil || !had.Read() {
			lacking = append(lacking, q)
		}
	}
	return lacking
}

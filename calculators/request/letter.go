package request

import (
	"strings"

	"plumbline/calculators/words"
)

// Labelled is one thing that a visit says, with what it is.
type Labelled struct {
	Label words.Text
	Text  string
}

// Lines returns what a visit says, nil if nothing.
func (v Visit) Lines() (lines []Labelled) {
	for _, x := range [...]Labelled{{words.Of("For"), v.For}, {words.Of("Appointment"), v.When},
		{words.Of("Bike"), v.Bike}} {
		if x.Text != "" {
			lines = append(lines, x)
		}
	}
	return lines
}

// Opening says to the client who asks for what.
func (r *Request) Opening() words.Text {
	return words.Of("{0} asks you for these measurements before your fitting.", words.Name(r.By))
}

// Handling says to the client what happens to the answers.
func (r *Request) Handling() words.Text {
	if r.Reply.To == "" {
		return words.Of("What you type stays on this device until you hand it over as a link, a file or a code.")
	}
	return words.Of("What you type stays on this device. Only when you send it does it go to {0}, and to nobody else.",
		words.Name(r.Reply.To))
}

// Letter is a client's reply as it goes by mail or message.
type Letter struct {
	Subject words.Text
	Body    []words.Text // lines
}

// Letter writes the letter that carries a client's link. Who it is from and for which
// visit stand in the subject, so that it is found among others.
func (r *Request) Letter(client, link string) Letter {
	var about []string
	if client == "" {
		client = r.For
	}
	for _, x := range [...]string{client, r.When, r.Bike} {
		if x != "" {
			about = append(about, x)
		}
	}
	subject := words.Of("Measurements for a fitting")
	if about != nil {
		subject = words.Of("Measurements for a fitting: {0}", words.Name(strings.Join(about, ", ")))
	}
	what := words.Of("These are the measurements that you asked for before the fitting.")
	if r.By != "" {
		what = words.Of("These are the measurements that {0} asked for before the fitting.", words.Name(r.By))
	}
	return Letter{subject, []words.Text{
		what,
		words.Of("They are in the link below, and open in a browser or with the command plumbline intake."),
		{}, words.Of("{0}", words.Name(link)), {},
	}}
}

// Message is the address that opens the client's mail or messages with a letter in
// it, "" where the reply does not go that way.
func (r *Request) Message(letter Letter, in *words.Reader) string {
	lines := make([]string, len(letter.Body))
	for i, line := range letter.Body {
		lines[i] = line.Say(in)
	}
	body := component(strings.Join(lines, "\r\n")) // RFC 6068, section 5: lines end in CR LF
	switch r.Reply.Way {
	case Mail:
		return "mailto:" + r.Reply.To + "?subject=" + component(letter.Subject.Say(in)) + "&body=" + body
	case Phone:
		return "sms:" + r.Reply.To + "?body=" + body
	}
	return ""
}

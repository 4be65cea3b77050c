package intake

import (
	"strconv"
	"strings"

	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// About says which visit a record is for, and when it was sent.
func (s *Sent) About(r *words.Reader) string {
	var parts []string
	add := func(english words.English, text string) {
		if text != "" {
			parts = append(parts, words.Of(english, words.Name(text)).Say(r))
		}
	}
	add("{0}", s.Visit.Bike)
	add("appointment {0}", s.Visit.When)
	if request.IsReply(s.Record) {
		add("sent {0}", s.Record.Date)
	} else {
		add("measured {0}", s.Record.Date)
	}
	return strings.Join(parts, ", ")
}

// Called names a visit by its day, and a bike by its name.
func (s *Sent) Called(kin Kin) string {
	switch {
	case kin == OtherBike && s.Visit.Bike != "":
		return s.Visit.Bike
	case s.Record.Date != "":
		return s.Record.Date
	case s.Visit.When != "":
		return s.Visit.When
	}
	return s.place()
}

// place is where a record came from, safe for a terminal.
func (s *Sent) place() string { return record.Plain(s.From, 300, false) }

// Brief says in a few words each what a fitter has to look at, the most urgent first.
func (s *Sent) Brief() (list []words.Text) {
	add := func(english words.English, holes ...words.Sayer) { list = append(list, words.Of(english, holes...)) }
	if s.Wants() == 2 {
		add("read before the appointment")
	}
	if s.Hurt() {
		add("cut on its way")
	}
	if n := len(s.Slips()); n > 0 {
		add("{0} to look at again", words.Name(strconv.Itoa(n)))
	}
	if n := len(s.Lacking); n > 0 {
		add("{0} not sent", words.Name(strconv.Itoa(n)))
	}
	switch _, kin := s.VisitBefore(); kin {
	case Again:
		add("came before")
	case OtherBike:
		add("another bike")
	}
	if s.Namesake != nil {
		add("shares a name")
	}
	return list
}

// Condition says what happened to a reply on its way, nothing if all is well.
func (s *Sent) Condition() words.Text {
	switch s.State {
	case request.Cut:
		return words.Of("The end of this reply was cut off on its way. What is here was read; ask the client to send " +
			"it again, as a file if they can.")
	case request.Changed:
		return words.Of("This reply is not as it was sent: something in it was lost or changed on the way. Ask the " +
			"client to send it again, as a file if they can.")
	}
	return words.Text{}
}

// Kinship says what a record has to do with others, a sentence or two each.
func (s *Sent) Kinship(r *words.Reader) (said []words.Text) {
	add := func(english words.English, holes ...words.Sayer) { said = append(said, words.Of(english, holes...)) }
	if s.Later != nil {
		add("A corrected reply takes its place: {0}.", words.Name(s.Later.place()))
		return said
	}
	if s.Namesake != nil && (s.Earlier == nil || s.Kin == Namesake) {
		add("Somebody of the same name is in {0}, but the two bodies do not agree: two people, or one of them "+
			"measured wrongly. Their numbers are kept apart.", words.Name(s.Namesake.place()))
		return said
	}
	if s.Earlier != nil {
		from := words.Name(s.Earlier.place())
		switch s.Kin {
		case Duplicate:
			add("It says the same as {0}.", from)
			return said
		case Corrected:
			add("It corrects an earlier reply, {0}. What only that one says is kept, with its day.", from)
			var changes []string
			for _, d := range s.Amended {
				if before, after := d.Values(); d.Before != d.After {
					one := words.Of("{0} {1} instead of {2}", d.Quantity.Label, after, before)
					changes = append(changes, one.Say(r))
				}
			}
			if changes != nil {
				add("It says {0}.", words.Name(strings.Join(changes, ", ")))
			}
		case Again:
			add("The same rider as in {0}, at a later visit.", from)
		case OtherBike:
			add("The same rider as in {0}, on another bike.", from)
		}
	}
	if s.Newer != nil {
		add("The same rider came again: {0}.", words.Name(s.Newer.place()))
	}
	return said
}

// Slips are what a fitter should ask about again.
func (s *Sent) Slips() (said []words.Text) {
	for _, x := range s.Problems {
		said = append(said, x.Text)
	}
	for _, d := range s.Doubts {
		if d.Kind != Unread { // said above already
			said = append(said, d.Text)
		}
	}
	return said
}

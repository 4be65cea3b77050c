package main

import (
	"strings"

	"plumbline/calculators/words"
	"plumbline/site"
	"plumbline/site/catalogue"
	"plumbline/site/told"
)

// languageFlag tells a command what language to print. What the terminal is set to does not
// count: a file made in one shop reads the same in another.
const languageFlag = "--language"

// languageAsked is the language that a command line asks for, "" where it asks for none. It
// is looked for before the command line is understood, because whatever is wrong with that
// is told in it.
func languageAsked(args []string) string {
	for i, a := range args {
		if tag, joined := strings.CutPrefix(a, languageFlag+"="); joined {
			return tag
		}
		if a == languageFlag && i+1 < len(args) {
			return args[i+1]
		}
	}
	return ""
}

// spoken tells whether the program speaks a language.
func spoken(tag string) bool { return catalogue.Built(tag) != nil || catalogue.English(tag) }

// unspoken refuses a language.
func unspoken(tag string) error {
	return refusal{statusUsage, told.Of("this program does not speak “{0}”; its languages are {1}.", tag,
		strings.Join(append([]string{"en"}, catalogue.BuiltIn()...), ", "))}
}

// voice is the language that a command prints.
type voice struct {
	asked  string        // on the command line, "" for none
	reader *words.Reader // who reads it; nil is English
}

// reader is who reads what is printed.
func (s streams) reader() *words.Reader {
	if s.voice == nil {
		return nil
	}
	return s.voice.reader
}

// asked is the language that the command line asks for, "" for none.
func (s streams) asked() string {
	if s.voice == nil {
		return ""
	}
	return s.voice.asked
}

// speakAs has a command that works on a shop's folder print in the folder's language, where
// the command line asks for none. So does what is said once the command has failed.
func (s streams) speakAs(folder string) {
	if s.voice != nil && s.asked() == "" {
		s.voice.reader = site.ReaderOf(folder)
	}
}

// reading is the reader of the command's language in units. JSON and CSV are the same in
// all languages.
func (s streams) reading(units string) *words.Reader {
	r := words.Reader{Units: units}
	if own := s.reader(); own != nil {
		r.Language = own.Language
	}
	return &r
}

// say says a text in the command's language.
func (s streams) say(english words.English, holes ...any) string {
	return told.Of(english, holes...).Say(s.reader())
}

// say says a text to a reader.
func say(r *words.Reader, english words.English, holes ...words.Sayer) string {
	return words.Of(english, holes...).Say(r)
}

// name fills a hole with what is said the same in all languages.
func name(s string) words.Name { return words.Name(s) }

package main

import (
	"fmt"
	"strconv"
	"strings"

	"plumbline/calculators/words"
	"plumbline/site/catalogue"
)

// spoken is the flag by which a command is told what language to print. What the terminal
// is set to does not count: a file made in one shop reads the same in another.
type spoken struct {
	Language string `default:"en" placeholder:"TAG" help:"${language}"`
}

// reader reads that language, in units. JSON and CSV are the same in all languages.
func (s spoken) reader(units string) (*words.Reader, error) {
	c := catalogue.Built(s.Language)
	if c == nil && !catalogue.English(s.Language) {
		return nil, refusal{statusUsage, fmt.Sprintf("this guide does not speak %q; its languages are %s.", s.Language,
			strings.Join(append([]string{"en"}, catalogue.BuiltIn()...), ", "))}
	}
	return &words.Reader{Language: c.Language(), Units: units}, nil
}

// say says a text to a reader.
func say(r *words.Reader, english words.English, holes ...words.Sayer) string {
	return words.Of(english, holes...).Say(r)
}

// name fills a hole with what is said the same in all languages.
func name(s string) words.Name { return words.Name(s) }

// figures fills a hole with a count.
func figures(n int) words.Name { return words.Name(strconv.Itoa(n)) }

// Package told makes the sentences that are told to those who build and publish a guide:
// mistakes in a folder, errors, and what a command prints. They are said at the very end,
// in the language of whoever reads them.
package told

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"plumbline/calculators/words"
)

// Of makes a text whose holes take whatever is at hand: what can be said, an error, or
// anything that is written plain.
func Of(english words.English, holes ...any) words.Text {
	return words.Of(english, sayers(holes)...)
}

func sayers(holes []any) (list []words.Sayer) {
	for _, h := range holes {
		switch h := h.(type) {
		case words.Sayer:
			list = append(list, h)
		case error:
			list = append(list, saidError{h})
		default:
			list = append(list, words.Name(fmt.Sprint(h)))
		}
	}
	return list
}

// Error is an error that can be said in every language of the catalogue.
type Error struct {
	words.Text
	cause error
}

// Wrong makes an error. The first error among its holes is its cause.
func Wrong(english words.English, holes ...any) error {
	e := &Error{Text: Of(english, holes...)}
	for _, h := range holes {
		if err, ok := h.(error); ok {
			e.cause = err
			break
		}
	}
	return e
}

// Error says it in English.
func (e *Error) Error() string { return e.Say(nil) }

// Unwrap is what caused it, if an error did.
func (e *Error) Unwrap() error { return e.cause }

// Say says an error the way r reads.
func Say(err error, r *words.Reader) string {
	var e *Error
	if joined, ok := err.(interface{ Unwrap() []error }); ok {
		var lines []string
		for _, each := range joined.Unwrap() {
			lines = append(lines, Say(each, r))
		}
		return strings.Join(lines, "\n")
	}
	if !errors.As(err, &e) {
		return Said(err).Say(r)
	}
	// What stands around it is the name of a file or the like.
	return strings.Replace(err.Error(), e.Error(), e.Say(r), 1)
}

type saidError struct{ error }

func (e saidError) Say(r *words.Reader) string { return Say(e.error, r) }

// Names are several names in a sentence: a, b and c.
func Names(list []string) words.Sayer {
	if len(list) == 0 {
		return words.English("none")
	}
	var all words.List
	for _, n := range list {
		all = append(all, words.Name(n))
	}
	return all
}

// Tenths is a number with one decimal, with the reader's decimal sign.
func Tenths(x float64) words.Sayer { return tenths(x) }

type tenths float64

func (t tenths) Say(r *words.Reader) string {
	return strings.Replace(strconv.FormatFloat(float64(t), 'f', 1, 64), ".", r.DecimalSign(), 1)
}

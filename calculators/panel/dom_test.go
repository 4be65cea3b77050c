package panel_test

import (
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// element is a parsed element; find and friends look below it.
type element struct{ *html.Node }

func parse(t testing.TB, fragment string) element {
	t.Helper()
	n, err := html.Parse(strings.NewReader(fragment))
	if err != nil {
		t.Fatal(err)
	}
	return element{n}
}

func (e element) attr(name string) string {
	for _, a := range e.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

func (e element) has(name string) bool {
	for _, a := range e.Attr {
		if a.Key == name {
			return true
		}
	}
	return false
}

// all returns every element below e that match approves of.
func (e element) all(match func(element) bool) (list []element) {
	for n := range e.Descendants() {
		if n.Type == html.ElementNode && match(element{n}) {
			list = append(list, element{n})
		}
	}
	return list
}

// tag, class and named make what all looks for.
func tag(name string) func(element) bool { return func(e element) bool { return e.Data == name } }

func class(name string) func(element) bool {
	return func(e element) bool {
		for _, c := range strings.Fields(e.attr("class")) {
			if c == name {
				return true
			}
		}
		return false
	}
}

func named(name string) func(element) bool {
	return func(e element) bool { return e.attr("name") == name }
}

// one returns the only element that matches.
func (e element) one(t testing.TB, match func(element) bool) element {
	t.Helper()
	list := e.all(match)
	if len(list) != 1 {
		t.Fatalf("%d elements match where one was expected", len(list))
	}
	return list[0]
}

// text returns the words below e.
func (e element) text() string {
	var b strings.Builder
	for n := range e.Descendants() {
		if n.Type == html.TextNode {
			b.WriteString(n.Data + " ")
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

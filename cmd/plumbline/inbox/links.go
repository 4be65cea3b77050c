package inbox

import (
	"fmt"
	"strings"

	"plumbline/calculators/links"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// linkFinder finds links in a text of that name. Where whole is set lines have no numbers:
// the text is a mail's, or an argument.
func linkFinder(name string, whole bool, each func(Found)) *links.Finder {
	return &links.Finder{Each: func(n int, text string) {
		f := Found{From: name, Text: text}
		if !whole {
			f.From = fmt.Sprintf("%s:%d", name, n)
		}
		if links.IsRequest(text) {
			f.Aside, f.Text = words.Of("this is the request itself, as it was sent to the client, and no reply"), ""
		}
		each(f)
	}}
}

// nothingIn says that a text holds no record.
func nothingIn(first string) error {
	return told.Wrong(
		"no record was found: neither a link, nor a mail, nor JSON, nor CSV with the columns key and value. It "+
			"begins “{0}”",
		measure.Quoted(strings.TrimSpace(first)),
	)
}

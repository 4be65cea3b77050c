package catalogue

import (
	"slices"
	"strings"

	"golang.org/x/text/feature/plural"
	"golang.org/x/text/language"
	"golang.org/x/text/message"
	"golang.org/x/text/number"
)

// space stands between a number and its unit: a no-break one, or a narrow one where the
// head of a catalogue says “X-Unit-Space: narrow”.
func space(narrow bool) string {
	if narrow {
		return "\u202f"
	}
	return "\u00a0"
}

// decimal is the decimal sign of a language (Unicode CLDR).
func decimal(tag string) string {
	if strings.Contains(message.NewPrinter(language.Make(tag)).Sprint(number.Decimal(0.5)), ",") {
		return ","
	}
	return "."
}

// The forms that a counted text may have, in the order of a catalogue’s msgstr[0], msgstr[1] …
var order = []plural.Form{plural.Zero, plural.One, plural.Two, plural.Few, plural.Many, plural.Other}

// formsOf has for each number below two hundred the digit of its form (Unicode CLDR,
// cardinal rules), all of which repeat from there.
func formsOf(tag string) string {
	var each [200]plural.Form
	used := map[plural.Form]bool{}
	for n := range each {
		each[n] = plural.Cardinal.MatchPlural(language.Make(tag), n, 0, 0, 0, 0)
		used[each[n]] = true
	}
	has := slices.DeleteFunc(slices.Clone(order), func(f plural.Form) bool { return !used[f] })
	var b strings.Builder
	for _, f := range each {
		b.WriteByte('0' + byte(slices.Index(has, f)))
	}
	return b.String()
}

// count is how many forms there are.
func count(forms string) int { return int(slices.Max([]byte(forms))-'0') + 1 }

package yamlfile

import (
	"strings"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

const quoted words.English = "mend the line or put the value in quotes"

// usual are the mistakes that people make in YAML, by a piece of what the parser says of
// them, and how they are told: the parser knows no language but English.
var usual = []struct {
	part         string
	says, remedy words.English
}{
	{"found a tab", "there is a tab where only spaces may stand", "put spaces in its place"},
	{"character '\t'", "there is a tab where only spaces may stand", "put spaces in its place"},
	{"could not find end character", "the quote that begins here has no end", "end it with the same quote"},
	{"already defined", "this key stands here twice", "keep one of them"},
	{"must be specified", "a bracket above is still open", "close it with ] or }"},
	{"could not find '", "a bracket is closed here that none opened", "take it out or put the value in quotes"},
	{"reserved character", "a value cannot begin with this character", "put the value in quotes"},
	{"unexpected directive", "a value cannot begin with this character", "put the value in quotes"},
	{"mapping value is not allowed", "there is a colon too many, or the line begins too far to the right", quoted},
	{"unexpected key name", "a line here has no colon", "write it as “key: value”"},
	{"pre-defined", "there is something behind the quotes", "put the whole value in quotes"},
	{"value is not allowed", "the line begins further to the right or left than those it belongs to",
		"begin it where they begin"},
}

// invalidText is what is wrong with a text that is no YAML, and what to do about it. What
// is not usual is told in the parser's own words.
func invalidText(message string) (what, remedy words.Text) {
	for _, u := range usual {
		if strings.Contains(message, u.part) {
			return told.Of("this is not valid YAML: {0}", u.says), told.Of("{0}", u.remedy)
		}
	}
	return told.Of("this is not valid YAML: {0}", told.Quoted(message)), told.Of("{0}", quoted)
}

package site

import "testing"

func TestTypeset(t *testing.T) {
	for typed, set := range map[string]string{
		"":                           "",
		"the saddle's top":           "the saddle’s top",
		`say "high" and 'low'`:       "say “high” and ‘low’",
		`("quoted")`:                 "(“quoted”)",
		"riders' legs":               "riders’ legs",
		"32 3/4\"":                   "32 3/4”",
		"no marks":                   "no marks",
		"é's":                        "é’s",
		`"'nested' quotes"`:          "“‘nested’ quotes”",
		"\"one\"\n\"two\" \u00a0'x'": "“one”\n“two” \u00a0‘x’",
	} {
		if got := typeset(typed); got != set {
			t.Errorf("typeset(%q) = %q, want %q", typed, got, set)
		}
	}
}

package site

import "testing"

func TestTypeset(t *testing.T) {
	for typed, set := range map[string]string{
		"":                           "",
		"the saddle's top":           "the saddle’s top",
		`say "high" and 'low'`:       "say “high” and ‘low’",
		`("quoted")`:                 "(“quoted”)",
		"riders' legs":               "riders’ legs",
		"32 3/4\"":                   "32\u00a03/4”",
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

func TestHeldKeepsNumberAndUnitTogether(t *testing.T) {
	for typed, set := range map[string]string{
		"move 5 mm at most":  "move 5\u00a0mm at most",
		"0.5 m, 20 % or 3 °": "0.5\u00a0m, 20\u00a0% or 3\u00a0°",
		"32 3/4 in long":     "32\u00a03/4\u00a0in long",
		"± 9 mm":             "±\u00a09\u00a0mm",
		"5 minutes":          "5 minutes",
		"2 men":              "2 men",
		"in 5 mm":            "in 5\u00a0mm",
	} {
		if got := string(held([]byte(typed))); got != set {
			t.Errorf("held(%q) = %q, want %q", typed, got, set)
		}
	}
}

func TestNoLineEndsBehindASingleLetter(t *testing.T) {
	for typed, set := range map[string]string{
		"an e-bike of 5 mm":  "an e\u2011bike of 5\u00a0mm",
		"Q-factors, (X-ray)": "Q\u2011factors, (X\u2011ray)",
		"hip-bone, a1-b, -x": "hip-bone, a1-b, -x",
		"well-to-do, a-":     "well-to-do, a-",
	} {
		if got := string(unbroken([]byte(typed))); got != set {
			t.Errorf("unbroken(%q) = %q, want %q", typed, got, set)
		}
	}
}

package drawing

import (
	"encoding/xml"
	"html"
	"math"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

func TestEscape(t *testing.T) {
	for in, want := range map[string]string{
		"":                         "",
		"plain ± 3 mm":             "plain ± 3 mm",
		`<script>"a" & 'b'`:        "&lt;script&gt;&#34;a&#34; &amp; &#39;b&#39;",
		"a\x00b":                   "a\uFFFDb",
		"a\xffb\xc3":               "a\uFFFDb\uFFFD",
		"tab\tline\n":              "tab\tline\n",
		"\x1b[31m":                 "\uFFFD[31m",
		"\uFFFD stays, \uFFFF not": "\uFFFD stays, \uFFFD not",
	} {
		if got := Escape(in); got != want {
			t.Errorf("Escape(%q) = %q, want %q", in, got, want)
		}
	}
}

// Checked against two parsers from outside: encoding/xml and html.UnescapeString.
func TestEscapedTextIsReadBackUnchanged(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := string(rapid.SliceOf(rapid.Byte()).Draw(t, "bytes"))
		got := Escape(in)
		if !utf8.ValidString(got) || strings.ContainsAny(got, "<>\"'\x00") {
			t.Fatalf("Escape(%q) = %q", in, got)
		}
		var x struct {
			A    string `xml:"a,attr"`
			Text string `xml:",chardata"`
		}
		if err := xml.Unmarshal([]byte(`<x a="`+got+`">`+got+`</x>`), &x); err != nil {
			t.Fatalf("%q: %v", got, err)
		}
		if !strings.ContainsAny(in, "\r") && x.Text != html.UnescapeString(got) {
			t.Fatalf("read back as %q and %q", x.Text, html.UnescapeString(got))
		}
	})
}

func TestAppendingEscapedIsEscaping(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		before := rapid.SampledFrom([]string{"", "<p>", "é"}).Draw(t, "before")
		s := rapid.OneOf(rapid.String(), rapid.Map(rapid.SliceOf(rapid.Byte()),
			func(b []byte) string { return string(b) }),
			rapid.SampledFrom([]string{"−12 ± 3 mm, 45° “so”", "a\xc3", "\ufffd\ufffe\uffff\ue000", "=%#!\x7f",
				"M&M"})).Draw(t, "text")
		if got, want := string(AppendEscaped([]byte(before), s)), before+Escape(s); got != want {
			t.Fatalf("%q became %q, not %q", before+s, got, want)
		}
	})
}

func TestNumbersAreShortAndNeverMinusZero(t *testing.T) {
	for in, want := range map[float64]string{
		0: "0", -0.04: "0", 0.05: "0.1", -0.06: "-0.1", 12: "12", 12.34: "12.3", -12.36: "-12.4",
		99.95: "100", 1e15: "0", math.Inf(1): "0", -0.96: "-1",
	} {
		if got := string(appendNumber(nil, in)); got != want {
			t.Errorf("%v is written %q, want %q", in, got, want)
		}
	}
	if got := string(appendNumber(nil, math.NaN())); got != "0" {
		t.Errorf("NaN is written %q", got)
	}
	if got := string(appendNumber(nil, math.Copysign(0, -1))); got != "0" {
		t.Errorf("-0 is written %q", got)
	}
}

func TestLongLabelsAreBrokenAtSpaces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOf(rapid.StringMatching(`[a-zäöü°0-9]{1,22}`)).Draw(t, "words"), " ")
		cut, width := broken(text, false, 15)
		if strings.Join(cut, " ") != text {
			t.Fatalf("%q became %q", text, cut)
		}
		for _, line := range cut {
			if w := textWidth(line, false); w > width+1e-9 || (w > 15 && strings.Contains(line, " ")) {
				t.Fatalf("line %q is %.1f wide", line, w)
			}
		}
	})
}

// A caption is as even as it can be in no more lines than it needs, which is what a browser does for
// text-wrap: balance (CSS Text Module Level 4, from memory).
func TestACaptionIsBrokenEvenly(t *testing.T) {
	for text, want := range map[string][]string{
		"Crank at 270°: knee bends 89°": {"Crank at 270°:", "knee bends 89°"},
		"Saddle all the way up":         {"Saddle all", "the way up"},
		"short":                         {"short"},
	} {
		most := max(0.9*textWidth(text, true), 5)
		if got := captioned(text, most); !slices.Equal(got, want) {
			t.Errorf("%q is broken into %q", text, got)
		}
		if filled, _ := broken(text, true, most); len(filled) != len(want) {
			t.Errorf("%q needs %d lines", text, len(filled))
		}
	}
}

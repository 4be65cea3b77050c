package exchange_test

import (
	"bytes"
	"encoding/json"
	"os"
	"testing"
	"unicode/utf8"

	"plumbline/calculators/calctest"
	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
)

func schemaText() ([]byte, error) { return os.ReadFile("../../site/record.schema.json") }

// FuzzParse compares the reader with the standard library's: both take and refuse
// the same texts, and see the same strings.
func FuzzParse(f *testing.F) {
	for _, s := range []string{`{"a":[1,-0.5e+3,true,null,"\u00e9\ud83d\ude00\ud800x"],"b":{}}`, ` [ ] `, `01`,
		`"\x"`, `{"a" 1}`, `1e`, `-`, "\"\x01\"", `"\ud800\u0041"`} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		calctest.Bounded(t, func() {
			text, ok := exchange.Parse(s)
			valid := json.Valid([]byte(s))
			if ok != valid && nesting(s) < 32 && !bytes.HasPrefix([]byte(s), []byte("\ufeff")) {
				t.Fatalf("%q: ours %v, the standard library's %v", s, ok, valid)
			}
			var want string
			if valid && utf8.ValidString(s) && json.Unmarshal([]byte(s), &want) == nil && want != "" && text != want {
				t.Fatalf("%q: ours %q, the standard library's %q", s, text, want)
			}
		})
	})
}

// nesting is at least as deep as any value in s.
func nesting(s string) int {
	return bytes.Count([]byte(s), []byte("[")) + bytes.Count([]byte(s), []byte("{"))
}

// FuzzOpen demands that nothing breaks a reader, and that what was read is written
// and read again as it was.
func FuzzOpen(f *testing.F) {
	for _, s := range []string{full, `{"values":[{"key":"inseam","value":830,"x":[1]}],"y":2}`,
		"key,value\ninseam,\"830\n", "key;value;was\n'=x;2;3"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		calctest.Bounded(t, func() {
			r, problems := exchange.Open(s)
			for _, p := range problems {
				_ = p.Text.Say(nil)
			}
			if r == nil || len(r.Entries) > 100 {
				return
			}
			text := exchange.JSON(r)
			if !json.Valid([]byte(text)) {
				t.Fatalf("%q is written as %s, which is no JSON", s, text)
			}
			if len(text) < exchange.Longest {
				back, _ := exchange.FromJSON(text)
				if back == nil || exchange.JSON(back) != text {
					t.Fatalf("%q changes when it is read again:\n%s", s, text)
				}
			}
			if sheet := exchange.CSV(r); len(sheet) < exchange.Longest {
				back, _ := exchange.FromCSV(sheet)
				if back == nil || back.Fragment() != r.Fragment() {
					t.Fatalf("%q changes as CSV:\n%s\n%s", s, sheet, back.Fragment())
				}
			}
			_ = record.Merge(r, r)
		})
	})
}

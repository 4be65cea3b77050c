package site

import (
	"encoding/json"
	"io"
	"net/url"
	"path/filepath"

	"plumbline/calculators/words"
)

// WriteSARIF writes remarks as SARIF 2.1.0 (OASIS, Static Analysis Results Interchange
// Format), which editors and build servers show beside the text. It is written from a few
// structs of our own: a library for the whole of the format would fill in much that it
// does not allow to be empty. A test holds it to the schema of OASIS.
func WriteSARIF(w io.Writer, remarks []Remark, reader *words.Reader) error {
	type text struct {
		Text string `json:"text"`
	}
	type rule struct {
		ID    string `json:"id"`
		Short text   `json:"shortDescription"`
	}
	type region struct {
		Line   int `json:"startLine"`
		Column int `json:"startColumn"`
	}
	type artifact struct {
		URI string `json:"uri"`
	}
	type physical struct {
		Artifact artifact `json:"artifactLocation"`
		Region   *region  `json:"region,omitempty"`
	}
	type location struct {
		Physical physical `json:"physicalLocation"`
	}
	type result struct {
		RuleID    string     `json:"ruleId"`
		Level     string     `json:"level"`
		Message   text       `json:"message"`
		Locations []location `json:"locations"`
	}
	type driver struct {
		Name  string `json:"name"`
		Rules []rule `json:"rules"`
	}
	type tool struct {
		Driver driver `json:"driver"`
	}
	type run struct {
		Tool    tool     `json:"tool"`
		Columns string   `json:"columnKind"`
		Results []result `json:"results"`
	}
	type log struct {
		Schema  string `json:"$schema"`
		Version string `json:"version"`
		Runs    []run  `json:"runs"`
	}
	r := run{Tool: tool{driver{Name: "plumbline proof"}}, Columns: "unicodeCodePoints", Results: []result{}}
	for _, x := range Rules() {
		r.Tool.Driver.Rules = append(r.Tool.Driver.Rules, rule{x.ID, text{x.Says.Say(reader)}})
	}
	for _, m := range remarks {
		x := result{RuleID: m.Rule.ID, Level: "note", Message: text{m.Said(reader)}}
		if m.Error {
			x.Level = "error"
		}
		at := physical{Artifact: artifact{(&url.URL{Path: filepath.ToSlash(m.File)}).EscapedPath()}}
		if m.Line > 0 {
			at.Region = &region{m.Line, max(1, m.Column)}
		}
		x.Locations = []location{{at}}
		r.Results = append(r.Results, x)
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(log{"https://json.schemastore.org/sarif-2.1.0.json", "2.1.0", []run{r}})
}

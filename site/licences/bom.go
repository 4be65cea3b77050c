package main

import (
	"encoding/json"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"

	"plumbline/templates"
)

// component is a part of a bill of materials, as CycloneDX 1.6 writes it.
type component struct {
	Type     string    `json:"type"`
	Name     string    `json:"name"`
	Version  string    `json:"version"`
	Licences []licence `json:"licenses"`
}

type licence struct {
	Licence struct {
		Name string `json:"name"`
		Text struct {
			Content string `json:"content"`
		} `json:"text"`
	} `json:"license"`
}

// complete adds to a bill of materials what was taken over from elsewhere and is no Go
// module: the scripts of the pages, and what stands in a package of our own.
func complete(file, root string) error {
	text, err := os.ReadFile(file)
	if err != nil {
		return err
	}
	bill := map[string]json.RawMessage{}
	var parts []json.RawMessage
	if err := json.Unmarshal(text, &bill); err != nil {
		return fmt.Errorf("%s is no bill of materials in JSON: %w", file, err)
	}
	if err := json.Unmarshal(bill["components"], &parts); err != nil {
		return fmt.Errorf("%s has no list “components”: %w", file, err)
	}
	pages, err := inPages(templates.Files)
	if err != nil {
		return err
	}
	programs, err := inPrograms(root)
	if err != nil {
		return err
	}
	for _, w := range slices.Concat(pages, programs) {
		if !w.taken {
			continue
		}
		part, err := json.Marshal(componentOf(w))
		if err != nil {
			return err
		}
		parts = append(parts, part)
	}
	if bill["components"], err = json.Marshal(parts); err != nil {
		return err
	}
	text, err = json.MarshalIndent(bill, "", "  ")
	if err != nil {
		return err
	}
	return os.WriteFile(file, append(text, '\n'), 0o644)
}

// version matches where the name of a work ends and its version begins: lean-qr 2.7.4 (nano).
var version = regexp.MustCompile(` [0-9]`)

// componentOf tells the version from the rest of a work's name.
func componentOf(w work) component {
	c := component{Type: "library", Name: w.name}
	if i := version.FindStringIndex(w.name); i != nil {
		c.Name, c.Version = w.name[:i[0]], w.name[i[1]-1:]
	}
	for _, t := range w.texts {
		var l licence
		l.Licence.Name = "the licence of " + c.Name
		l.Licence.Text.Content = strings.TrimSpace(t)
		c.Licences = append(c.Licences, l)
	}
	return c
}

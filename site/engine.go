package site

import (
	"path"
	"regexp"
	"slices"
	"sync"

	"plumbline/calculators/catalog"
	"plumbline/templates"
	"plumbline/wasm"
)

// engine names the engine that a page needs as soon as it is open: that of the section of
// its first calculator, the whole one where it works on the whole record, or none.
func (p *guidePage) engine() string {
	if p.has(sheetBlock) || p.has(prepareBlock) {
		return wasm.Whole
	}
	for _, b := range p.blocks {
		if b.kind == calculatorBlock {
			return catalog.Section(b.name)
		}
	}
	return ""
}

// imported finds what a module imports at once, and not what it loads when it is wanted.
var imported = regexp.MustCompile(`(?m)^(?:import|export)(?:[^;("]*from)? ?"\./([^"]+)"`)

// imports lists the modules that come with page.js. A page asks for all of them at once,
// because one after the other would take a round trip each.
var imports = sync.OnceValue(func() (list []string) {
	seen := map[string]bool{"page.js": true}
	for next := []string{"page.js"}; len(next) > 0; {
		text, err := templates.Files.ReadFile(path.Join("page", next[0]))
		next = next[1:]
		if err != nil {
			continue // a missing module is told of where the modules are published
		}
		for _, m := range imported.FindAllSubmatch(text, -1) {
			if name := string(m[1]); !seen[name] {
				seen[name] = true
				next, list = append(next, name), append(list, name)
			}
		}
	}
	slices.Sort(list)
	return list
})

package site

import (
	"encoding/json"
	"strings"

	"plumbline/calculators/words"
	"plumbline/site/phrases"
)

// textModule is the module by which pages learn what they say in the guide's language
// (templates/page/text.js): the translations by their English, and the number of the form
// that a counted text takes for each number of things.
func (g *Guide) textModule() (file, error) {
	list, err := phrases.Modules()
	if err != nil {
		return file{}, err
	}
	texts := map[string]any{}
	for _, x := range list {
		s := words.English(x.English).Say(g.reader)
		switch {
		case s == x.English:
		case x.More != "":
			texts[x.English] = strings.Split(s, "\t")
		default:
			texts[x.English] = s
		}
	}
	language := g.reader.Language
	if language.Decimal != "." {
		texts["."] = language.Decimal
	}
	b, err := json.Marshal(texts) // in the order of the keys
	if err != nil {
		return file{}, err
	}
	forms, err := json.Marshal(language.Forms)
	return file{path: g.textModuleName(),
		data: []byte("export const texts=" + string(b) + ";export const forms=" + string(forms) + ";\n")}, err
}

// textModuleName is the name of that module, beside the others.
func (g *Guide) textModuleName() string { return "texts-" + g.Language + ".js" }

// textModules are those of all languages.
func (g *Guide) textModules() (files []file, err error) {
	for _, each := range g.everyLanguage() {
		if each.said == nil || each.said.catalogue == nil {
			continue
		}
		f, err := each.textModule()
		if err != nil {
			return nil, err
		}
		files = append(files, f)
	}
	return files, nil
}

package site

import (
	"slices"

	"golang.org/x/text/language"

	"plumbline/calculators/words"
	"plumbline/site/catalogue"
)

// ReaderOf is who reads the language that a shop's folder says it is written in, as far as
// the program speaks it; nil, who reads English, in every other case. Mistakes are told in
// that language, so nothing but the settings is read, and no mistake in them matters here.
func ReaderOf(overlayDir string) *words.Reader {
	var r *words.Reader
	inSettings(overlayDir, "language", func(y *yamlReader, e entry) { r = SpeakerOf(y.Raw(e)) })
	return r
}

// LanguagesOf are the languages that a shop's folder says it is published in.
func LanguagesOf(overlayDir string) (tags []string) {
	inSettings(overlayDir, "language", func(y *yamlReader, e entry) { tags = append(tags, y.Raw(e)) })
	inSettings(overlayDir, "languages", func(y *yamlReader, e entry) { tags = append(tags, texts(y.List(e))...) })
	slices.Sort(tags)
	tags = slices.Compact(tags)
	return slices.DeleteFunc(tags, func(tag string) bool {
		_, err := language.Parse(tag)
		return err != nil
	})
}

// inSettings hands over what the settings of a shop's folder have under a key.
func inSettings(overlayDir, key string, found func(y *yamlReader, e entry)) {
	if overlayDir == "" {
		return
	}
	root, err := openFolder(overlayDir)
	if err != nil {
		return
	}
	defer root.Close()
	text, err := root.ReadFile(settingsFile)
	if err != nil {
		return
	}
	y := yamlOf(settingsFile, 0)
	for _, e := range y.Root(text) {
		if e.Key == key {
			found(y, e)
		}
	}
}

// SpeakerOf is who reads a language of the program, nil for English and for one that it
// does not speak.
func SpeakerOf(tag string) *words.Reader {
	if c := catalogue.Built(tag); c != nil {
		return &words.Reader{Language: c.Language()}
	}
	return nil
}

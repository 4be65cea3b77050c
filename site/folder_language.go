package site

import (
	"plumbline/calculators/words"
	"plumbline/site/catalogue"
)

// ReaderOf is who reads the language that a shop's folder says it is written in, as far as
// the program speaks it; nil, who reads English, in every other case. Mistakes are told in
// that language, so nothing but the settings is read, and no mistake in them matters here.
func ReaderOf(overlayDir string) *words.Reader {
	if overlayDir == "" {
		return nil
	}
	root, err := openFolder(overlayDir)
	if err != nil {
		return nil
	}
	defer root.Close()
	text, err := root.ReadFile(settingsFile)
	if err != nil {
		return nil
	}
	y := &yamlReader{file: settingsFile}
	for _, e := range y.root(text) {
		if e.key == "language" {
			return SpeakerOf(y.raw(e))
		}
	}
	return nil
}

// SpeakerOf is who reads a language of the program, nil for English and for one that it
// does not speak.
func SpeakerOf(tag string) *words.Reader {
	if c := catalogue.Built(tag); c != nil {
		return &words.Reader{Language: c.Language()}
	}
	return nil
}

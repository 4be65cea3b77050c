package site

import (
	"regexp"
	"strings"
	"unicode/utf8"
)

// editor is what proof knows of a language beyond what holds for each: how somebody says that
// a study found something, what names a picture without showing it, and how hard a text is.
type editor struct {
	claim, denies *regexp.Regexp
	practice      string   // how a chapter says that nobody has studied it
	pictures      []string // words for a picture

	// grade is the school year in which most can read a text, by a published formula of that name.
	grade   func(words []string, sentences int) float64
	formula string
}

// editors are those of the languages that proof knows, by their tags.
var editors = map[string]*editor{
	"en": {
		claim: regexp.MustCompile(`(?i)\b(stud(y|ies) (found|show|prove|suggest)\w*|` +
			`research (shows|proves|found|says)|scientists|science (says|shows|proves)|` +
			`it (is|has been) (shown|proven)|(was|were) (shown|proven) to)\b`),
		denies: regexp.MustCompile(
			`(?i)\b(no|never|not|without|whether|if) (a |any )?(stud(y|ies)|research|been|shown|proven)`),
		practice: "common practice",
		pictures: []string{"picture", "photo", "image"},
		grade: func(words []string, sentences int) float64 {
			n := 0
			for _, w := range words {
				n += syllables(w)
			}
			return readingGrade(len(words), sentences, n)
		},
		formula: "Flesch–Kincaid",
	},
	"de": {
		claim: regexp.MustCompile(`(?i)\b(studien? (zeig|fand|fanden|beleg|beweis|leg)\pL*|forschung (zeigt|belegt|` +
			`beweist|sagt)|wissenschaft (zeigt|belegt|beweist|sagt)|wissenschaftlich (bewiesen|erwiesen|belegt)|` +
			`(ist|wurde|gilt als) (bewiesen|erwiesen|nachgewiesen))`),
		denies: regexp.MustCompile(`(?i)(^|\PL)(keine|kein|nie|nicht|ohne|ob) ((eine|je) )?(studien?|forschung|` +
			`wissenschaftlich|bewiesen|erwiesen|nachgewiesen|belegt)`),
		practice: "verbreitete praxis",
		pictures: []string{"bild", "foto", "abbildung"},
		grade:    wienerGrade,
		formula:  "Wiener Sachtextformel",
	},
}

// wienerGrade is the school year, from the fourth to the fifteenth, in which most can read a
// German text: the first Wiener Sachtextformel,
//
//	0.1935·MS + 0.1672·SL + 0.1297·IW − 0.0327·ES − 0.875
//
// where MS are the words of three syllables or more, IW those of more than six letters and ES
// those of one syllable, each in percent, and SL is the mean length of a sentence in words.
// Bamberger and Vanecek 1984, Lesen – Verstehen – Lernen – Schreiben (from memory).
func wienerGrade(words []string, sentences int) float64 {
	many, long, one := 0, 0, 0
	for _, w := range words {
		n := germanSyllables(w)
		if n >= 3 {
			many++
		}
		if n == 1 {
			one++
		}
		if utf8.RuneCountInString(w) > 6 {
			long++
		}
	}
	percent := func(n int) float64 { return 100 * float64(n) / float64(len(words)) }
	return 0.1935*percent(many) + 0.1672*float64(len(words))/float64(sentences) + 0.1297*percent(long) -
		0.0327*percent(one) - 0.875
}

// sounds are the vowels of a German word, two letters first that are one sound.
var sounds = regexp.MustCompile(`qu|aa|ee|oo|ai|au|äu|ei|eu|ey|ie|ui|[aeiouyäöü]`)

// germanSyllables counts the syllables of a German word by its vowels.
func germanSyllables(word string) int {
	n := 0
	for _, s := range sounds.FindAllString(strings.ToLower(word), -1) {
		if s != "qu" {
			n++
		}
	}
	return max(n, 1)
}

package words

import (
	"errors"
	"strconv"
	"strings"
)

// Language is a language other than English: how it writes numbers, and what it says for
// each English text. A nil *Language is English. It is filled by Learn, before anybody
// reads in it.
type Language struct {
	Tag     string // BCP 47
	Decimal string // decimal sign
	Space   string // between a number and its unit

	// Forms has for each number of things the digit of the form that a counted text takes,
	// 0 for the first. Beyond its length, which is two hundred, the last two digits decide.
	Forms string

	// Missing is called for each text with words that the language lacks, by several at
	// once; nil for nobody.
	Missing func(english English)

	said map[uint32]string // by the Key of the English; the forms of a counted text have a tab between
}

// Speaking is a language with these texts.
func Speaking(l Language, said map[English]string) *Language {
	l.said = make(map[uint32]string, len(said))
	for english, text := range said {
		l.said[Key(english)] = text
	}
	return &l
}

// Context divides a text's context from the text, for a word that other languages say in
// two ways: English("a way in the woods\x04trail"). It is the divider of GNU gettext.
const Context = "\x04"

// Key is what a text is found under: the 32-bit FNV-1a hash (as in hash/fnv) of the English, its
// context before it. A hash is shorter than the English, which the engine has already; a
// test in site/texts finds two texts with one key.
func Key(english English) uint32 {
	key := uint32(2166136261)
	for i := range len(english) {
		key = (key ^ uint32(english[i])) * 16777619
	}
	return key
}

// The lines of a file that Learn reads: tag, decimal sign, space and forms with a tab
// between, the keys with eight hexadecimal digits each, then a line for each of their texts.
const (
	headLine = iota
	keyLine
	firstText
)

const keyDigits = 8

// Learn adds the texts of one file. The whole language may come in several.
func (l *Language) Learn(file string) error {
	lines := strings.Split(file, "\n")
	if len(lines) < firstText {
		return errors.New("the texts were cut off")
	}
	head, keys, texts := strings.Split(lines[headLine], "\t"), lines[keyLine], lines[firstText:]
	if len(head) != 4 || len(keys) != keyDigits*len(texts) {
		return errors.New("the texts were cut off")
	}
	l.Tag, l.Decimal, l.Space, l.Forms = head[0], head[1], head[2], head[3]
	if l.said == nil {
		l.said = make(map[uint32]string, len(texts))
	}
	for i, text := range texts {
		key, err := strconv.ParseUint(keys[keyDigits*i:keyDigits*(i+1)], 16, 32)
		if err != nil {
			return err
		}
		l.said[uint32(key)] = text
	}
	return nil
}

// Has tells whether the language says an English text; English says all, and what has no
// words needs no saying.
func (l *Language) Has(english English) bool {
	if l == nil || !worded(english) {
		return true
	}
	_, ok := l.said[Key(english)]
	return ok
}

// say finds the sentence for an English one and reports a missing one.
func (l *Language) say(english English) (said string, ok bool) {
	if l == nil || english == "" {
		return "", false
	}
	if said, ok = l.said[Key(english)]; !ok && l.Missing != nil && worded(english) {
		l.Missing(english)
	}
	return said, ok
}

// worded tells whether a text has words.
func worded(english English) bool {
	for i := range len(english) {
		if c := english[i] | 0x20; c >= 'a' && c <= 'z' { // a letter, made small
			return true
		}
	}
	return false
}

// form is the place of the form for n things among a text's forms.
func (l *Language) form(n int) int {
	if n < 0 {
		n = -n
	}
	if n >= 200 {
		n = 100 + n%100
	}
	if n >= len(l.Forms) {
		return 0
	}
	return int(l.Forms[n] - '0')
}

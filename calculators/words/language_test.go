package words_test

import (
	"hash/fnv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/words"
)

// german reads a language that says this, with the forms of German: one, and all others.
func german(said map[words.English]string) *words.Reader {
	return &words.Reader{Language: words.Speaking(words.Language{Tag: "de", Decimal: ",",
		Forms: "10" + strings.Repeat("1", 198)}, said)}
}

// Go's own hash/fnv is the judge.
func TestAKeyIsFNV(t *testing.T) {
	for _, s := range []string{"", "a", "saddle height", "a way\x04trail", "“{0}” ± {1}"} {
		h := fnv.New32a()
		_, _ = h.Write([]byte(s))
		assert.Equal(t, h.Sum32(), words.Key(words.English(s)), s)
	}
}

func TestCountsTakeTheFormOfTheirNumber(t *testing.T) {
	days := func(n int) words.Text { return words.Count(n, "{0} day of {1}", "{0} days of {1}", words.Name("May")) }
	assert.Equal(t, "1 day of May", days(1).Say(nil))
	assert.Equal(t, "0 days of May", days(0).Say(nil))
	assert.Equal(t, "21 days of May", days(21).Say(nil))
	assert.Equal(t, "none", words.Count(2, "one", "none").Say(nil))

	de := german(map[words.English]string{"{0} day of {1}": "{0} Tag im {1}\t{0} Tage im {1}"})
	assert.Equal(t, "1 Tag im May", days(1).Say(de))
	assert.Equal(t, "2 Tage im May", days(2).Say(de))
	assert.Equal(t, "1001 Tage im May", days(1001).Say(de))

	// Lithuanian: 1, 21, 31 … but not 11; 2 to 9, 22 to 29 …; the rest (Unicode CLDR 46).
	lt := &words.Reader{Language: words.Speaking(words.Language{Tag: "lt", Forms: lithuanian()},
		map[words.English]string{"{0} day of {1}": "{0} diena\t{0} dienos\t{0} dienų"})}
	for n, said := range map[int]string{1: "1 diena", 11: "11 dienų", 21: "21 diena", 5: "5 dienos", 10: "10 dienų",
		112: "112 dienų", 1021: "1021 diena", 1011: "1011 dienų"} {
		assert.Equal(t, said, days(n).Say(lt))
	}
}

func lithuanian() string {
	forms := make([]byte, 200)
	for n := range forms {
		switch {
		case n%10 == 0 || n%100 > 10 && n%100 < 20:
			forms[n] = '2'
		case n%10 == 1:
			forms[n] = '0'
		default:
			forms[n] = '1'
		}
	}
	return string(forms)
}

func TestAContextIsNotSaid(t *testing.T) {
	way, wheel := words.English("a way"+words.Context+"trail"), words.English("of the wheel"+words.Context+"trail")
	assert.Equal(t, "trail", words.Of(way).Say(nil))
	assert.Equal(t, "trail", wheel.Say(&words.Reader{}))
	de := german(map[words.English]string{way: "Trail", wheel: "Nachlauf"})
	assert.Equal(t, "Trail", way.Say(de))
	assert.Equal(t, "Nachlauf", words.Of(wheel).Say(de))
}

// What is written for an engine is learned, in one file or in several.
func TestALanguageIsLearned(t *testing.T) {
	a := map[words.English]string{"saddle": "Sattel", "{0} of {1}": "{1}: {0}"}
	b := map[words.English]string{"stem": "Vorbau", "one": "eins\tviele"}
	how := german(nil).Language
	l := &words.Language{}
	require.NoError(t, l.Learn(how.File(a)))
	require.NoError(t, l.Learn(how.File(b)))
	require.NoError(t, l.Learn(how.File(nil)))
	r := &words.Reader{Language: l}
	assert.Equal(t, "Sattel: Vorbau", words.Of("{0} of {1}", words.Of("stem"), words.Of("saddle")).Say(r))
	assert.Equal(t, "viele", words.Count(3, "one", "many").Say(r))
	assert.Equal(t, ",", r.DecimalSign())
	assert.Equal(t, "de", l.Tag)
	assert.True(t, l.Has("stem"))
	assert.False(t, l.Has("pedal"))
	assert.True(t, l.Has("{0} ± {1}"), "there is nothing to say in another way")
	assert.True(t, (*words.Language)(nil).Has("pedal"), "English says everything")
}

func TestWhatIsNoLanguageIsRefused(t *testing.T) {
	whole := german(nil).Language.File(map[words.English]string{"saddle": "Sattel", "stem": "Vorbau"})
	for _, s := range []string{"", "de", whole[:len(whole)-7], "<!DOCTYPE html>\n<html>\n<head>",
		strings.Replace(whole, "\n", "x\n", 2)} {
		assert.Error(t, (&words.Language{}).Learn(s), s)
	}
}

package words

import (
	"maps"
	"slices"
	"strconv"
	"strings"
)

// File writes these texts as Learn reads them: what a page fetches for the engine.
func (l *Language) File(said map[English]string) string {
	var keys, texts strings.Builder
	for _, english := range slices.Sorted(maps.Keys(said)) {
		key := strconv.FormatUint(uint64(Key(english)), 16)
		keys.WriteString(strings.Repeat("0", keyDigits-len(key)) + key)
		texts.WriteString("\n" + said[english])
	}
	return strings.Join([]string{l.Tag, l.Decimal, l.Space, l.Forms}, "\t") + "\n" + keys.String() + texts.String()
}

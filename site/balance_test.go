package site

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSectionsGoToTheColumnThatEndsHigherUp(t *testing.T) {
	tall := `<h3>Foot</h3><svg viewBox="0 0 320 592"><text>not counted</text></svg>` // 1002 px
	short := `<p>` + strings.Repeat("word ", 100) + `</p>`                           // 480 px
	var b balance
	var sides []bool
	for _, html := range []string{tall, short, short, short, tall, short} {
		sides = append(sides, b.second(html))
	}
	assert.Equal(t, []bool{false, true, true, false, true, false}, sides,
		"two short ones end at 960 px beside a tall one of 1002, as good as level: the next one is on the left")
}

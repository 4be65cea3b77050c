package site

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSectionsGoToTheColumnThatEndsHigherUp(t *testing.T) {
	tall := `<h3>Foot</h3><svg viewBox="0 0 320 640"><text>not counted</text></svg>` // 800 px and a little
	short := `<p>` + strings.Repeat("word ", 100) + `</p>`                           // 250 px
	var b balance
	var sides []bool
	for _, html := range []string{tall, short, short, short, short, tall} {
		sides = append(sides, b.second(html))
	}
	assert.Equal(t, []bool{false, true, true, true, false, true}, sides,
		"three short ones end at 750 px beside a tall one, which is as good as level, so that the next is on the left")
}

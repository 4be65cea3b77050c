package markup

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestATableIsWideByColumnsOrByWords(t *testing.T) {
	assert.True(t, Wide([]string{"a", "b", "c", "d"}))
	assert.False(t, Wide([]string{"Unterschiedlichkeit", "Wahrscheinliche Ursache"}), "two share a phone")
	assert.False(t, Wide([]string{"What you notice", "Likely cause", "Next step"}))
	assert.True(t, Wide([]string{"Handgelenke geknickt", "Wahrscheinliche Ursache", "Sattel voreinstellen"}))
	assert.False(t, Wide([]string{"wahr-schein-lich", "a", "b"}), "a line may end behind a hyphen")
}

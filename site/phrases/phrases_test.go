package phrases

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestTextsOfTemplatesAndModulesAreFound(t *testing.T) {
	list, err := All()
	require.NoError(t, err)
	for _, x := range []Text{
		{"Skip to the text", "", "templates/base.html"},
		{"Step {0} of {1}", "", "templates/step.html"}, // inside a template of its own
		{"Licences", "", "templates/base.html"},
		{"Knee bend {0} ± {1}°. A straight leg is 0.", "", "templates/page/photo.js"},
		{"{0} page found.", "{0} pages found.", "templates/page/search.js"},
		{"Your numbers are forgotten.", "", "templates/page/owner.js"}, // one of two
		{"on a button\x04Next", "", "templates/page/garage.js"},        // with its context
	} {
		assert.True(t, slices.Contains(list, x), "%v", x)
	}
}

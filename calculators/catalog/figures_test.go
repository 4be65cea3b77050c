package catalog

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/measure"
)

// A gap between two trees is measured neither on a body nor on a bike.
var undrawn = map[string]bool{"tree-gap": true}

// TestEveryFormHasInstructions walks all forms: whatever is asked for says how it is
// taken or what it means, and a length or an angle that is taken on a body or a bike has
// a picture. What is read off a label or a data sheet takes no tool and needs none.
func TestEveryFormHasInstructions(t *testing.T) {
	drawn := map[string]bool{}
	for _, f := range Figures() {
		assert.False(t, drawn[f.Name], "two figures are called %s", f.Name)
		drawn[f.Name] = true
	}
	for _, c := range All() {
		for _, in := range c.Inputs {
			how := in.How
			assert.NotEmpty(t, how.Text, "%s asks for %s", c.Name, in.Key)
			if how.Figure != "" {
				assert.True(t, drawn[how.Figure], "%s: there is no figure %s", in.Key, how.Figure)
			}
			assert.Equal(t, how.Take != "", how.Taken(), "%s: a tool without a time, or a time without a tool", in.Key)
			if how.Taken() {
				assert.NotEmpty(t, how.Slip, "%s: what goes wrong", in.Key)
			}
			lengthOrAngle := in.Unit == measure.Mm || in.Unit == measure.Deg
			if lengthOrAngle && how.Taken() && !undrawn[in.Key] {
				assert.NotEmpty(t, how.Figure, "%s is measured and has no picture", in.Key)
			}
		}
	}
	for _, f := range Figures() {
		picture := f.Figure(nil, nil)
		if assert.NotNil(t, picture, f.Name) {
			assert.False(t, picture.Title.None() || picture.Description.None(), f.Name)
		}
	}
}

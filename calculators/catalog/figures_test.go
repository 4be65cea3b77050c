package catalog

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/measure"
)

// What is read off a label, a sheet or a clinician’s picture, a tree or a trail, or is
// a scale's number, has no length on a body or a bike to draw.
var undrawn = map[string]bool{"angle-headset": true, "front-tyre": true, "rear-tyre": true,
	"new-front-tyre": true, "new-rear-tyre": true, "grade": true, "tree-gap": true, "first": true, "second": true,
	"third": true, "shock-stroke": true,
	"pedal-float": true, "hip-width": true}

// TestEveryFormHasInstructions walks all forms: whatever is asked for says how it is
// taken or what it means, and a length or an angle of a body or a bike has a picture.
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
			if how.Taken() {
				assert.NotEmpty(t, how.Slip, "%s: what goes wrong", in.Key)
				assert.NotEmpty(t, how.Take, "%s: what to have at hand", in.Key)
			}
			lengthOrAngle := in.Unit == measure.Mm || in.Unit == measure.Deg
			if lengthOrAngle && in.Repeat > 0 && !undrawn[in.Key] {
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

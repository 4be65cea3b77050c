package calculators_test

import (
	"testing"

	"plumbline/calculators/body"
	"plumbline/calculators/cockpit"
)

var _ = register(rowChecks{
	"lever-us-max": func(*testing.T, publishedRow) any { return float64(cockpit.LegalSpan) },
	"lever-us-end": func(*testing.T, publishedRow) any { return cockpit.LegalSpanEnd },
	"lever-gap-": func(t *testing.T, r publishedRow) any {
		span, grip, blade := r.num(t, "span_mm"), r.num(t, "grip_diameter_mm"), r.num(t, "blade_thickness_mm")
		gap := cockpit.FreeGap(span, grip, blade)
		// The reach that a ruler finds is the gap and the blade; with the grip it is the
		// span again.
		near(t, "outside to outside", cockpit.SpanOutside(gap+blade, grip), span, 1e-9)
		return gap
	},
	"grip-kong-":          func(t *testing.T, r publishedRow) any { return body.GripDiameter(r.num(t, "hand_mm")) },
	"grip-bicycle-":       func(t *testing.T, r publishedRow) any { return body.GripHeld(r.num(t, "hand_mm")) },
	"grip-bicycle-ratio-": func(t *testing.T, r publishedRow) any { return body.GripHeld(1) },
})

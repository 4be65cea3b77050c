package templates

import (
	"testing"

	"plumbline/site/colour"
)

// contrast is the contrast ratio of two colours as a style sheet writes them.
func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	x, err := colour.Parse(a)
	if err != nil {
		t.Fatal(err)
	}
	y, err := colour.Parse(b)
	if err != nil {
		t.Fatal(err)
	}
	return colour.Contrast(x, y)
}

// TestEveryPairingPassesAA checks each pairing of text and ground that the style
// sheets use: 4.5 to 1 for text (1.4.3), 3 to 1 for lines and edges that carry
// meaning (1.4.11).
func TestEveryPairingPassesAA(t *testing.T) {
	light, dark, _ := Colours()
	text := map[string][]string{
		"ink":  {"paper", "sheet", "wash", "warn-ground", "warn-hatch"},
		"soft": {"paper", "sheet"},
		"hot":  {"paper", "sheet"},
		"body": {"paper", "sheet", "wash"},
		"warn": {"warn-ground", "warn-hatch", "paper", "sheet"},
	}
	lines := map[string][]string{
		"focus":     {"paper", "sheet", "warn-ground"},
		"soft":      {"paper", "sheet"},
		"warn-edge": {"paper", "sheet", "warn-ground", "warn-hatch"},
		"body":      {"wash", "paper", "sheet"},
	}
	for name, scheme := range map[string]map[string]string{"light": light, "dark": dark} {
		try := func(pairs map[string][]string, least float64) {
			for front, grounds := range pairs {
				for _, ground := range grounds {
					if got := contrast(t, scheme[front], scheme[ground]); got < least {
						t.Errorf("%s: %s on %s is %.2f to 1, and %.1f is needed", name, front, ground, got, least)
					}
				}
			}
		}
		try(text, 4.5)
		try(lines, 3)
	}
}

func TestBothSchemesHaveTheSameColours(t *testing.T) {
	light, dark, _ := Colours()
	for name := range light {
		if dark[name] == "" {
			t.Errorf("the dark scheme lacks %s", name)
		}
	}
	if len(light) != len(dark) {
		t.Errorf("%d colours and %d", len(light), len(dark))
	}
}

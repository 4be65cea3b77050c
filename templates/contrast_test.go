package templates

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// tokens reads the colours of the light and the dark scheme out of base.css.
func tokens(t *testing.T) (light, dark map[string]string) {
	t.Helper()
	b, err := Files.ReadFile("style/base.css")
	if err != nil {
		t.Fatal(err)
	}
	token := regexp.MustCompile(`--([a-z-]+):\s*(#[0-9a-f]{3,6});`)
	head, tail, ok := strings.Cut(string(b), "@media (prefers-color-scheme: dark)")
	if !ok {
		t.Fatal("base.css has no dark scheme")
	}
	read := func(s string) map[string]string {
		m := map[string]string{}
		for _, f := range token.FindAllStringSubmatch(s, -1) {
			m[f[1]] = f[2]
		}
		return m
	}
	return read(head), read(tail)
}

// luminance is the relative luminance of an sRGB colour (WCAG 2.2, definition of
// relative luminance).
func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	n, err := strconv.ParseUint(strings.TrimPrefix(hex, "#"), 16, 32)
	if err != nil || len(hex) != 7 {
		t.Fatalf("%q is no colour of six digits", hex)
	}
	part := func(shift uint) float64 {
		c := float64(n>>shift&0xff) / 255
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*part(16) + 0.7152*part(8) + 0.0722*part(0)
}

// contrast is the contrast ratio of two colours (WCAG 2.2).
func contrast(t *testing.T, a, b string) float64 {
	x, y := luminance(t, a), luminance(t, b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

func TestContrastOfBlackAndWhiteIsTwentyOne(t *testing.T) {
	if got := contrast(t, "#000000", "#ffffff"); math.Abs(got-21) > 1e-9 {
		t.Errorf("%v, WCAG says 21", got)
	}
	// W3C's understanding document gives #767676 on white as the grey that just
	// passes 4.5 to 1.
	if got := contrast(t, "#767676", "#ffffff"); got < 4.5 || got > 4.6 {
		t.Errorf("%v for #767676", got)
	}
}

// TestEveryPairingPassesAA checks each pairing of text and ground that the style
// sheets use: 4.5 to 1 for text (1.4.3), 3 to 1 for lines and edges that carry
// meaning (1.4.11).
func TestEveryPairingPassesAA(t *testing.T) {
	light, dark := tokens(t)
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
	light, dark := tokens(t)
	for name := range light {
		if dark[name] == "" {
			t.Errorf("the dark scheme lacks %s", name)
		}
	}
	if len(light) != len(dark) {
		t.Errorf("%d colours and %d", len(light), len(dark))
	}
}

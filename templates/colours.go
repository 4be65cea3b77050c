package templates

import (
	"regexp"
	"strings"
)

var colourToken = regexp.MustCompile(`--([a-z-]+):\s*(#[0-9a-f]{3,6});`)

// Colours are the style sheet's colours by name: on a light and on a dark screen, and on
// paper.
func Colours() (light, dark, paper map[string]string) {
	screen, _ := Files.ReadFile("style/base.css") // both are embedded
	print, _ := Files.ReadFile("style/print.css")
	first, second, _ := strings.Cut(string(screen), "@media (prefers-color-scheme: dark)")
	return colours(first), colours(second), colours(string(print))
}

func colours(css string) map[string]string {
	m := map[string]string{}
	for _, f := range colourToken.FindAllStringSubmatch(css, -1) {
		m[f[1]] = f[2]
	}
	return m
}

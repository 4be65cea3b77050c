package site

import (
	"path"
	"testing"
)

// TestEveryPageLeadsToTheLicences looks into the footer of every page.
func TestEveryPageLeadsToTheLicences(t *testing.T) {
	all := built(t, demo(t))
	if len(Licences()) == 0 || string(all["licences.txt"]) != Licences() {
		t.Error("the licences are not published as they are")
	}
	pages := 0
	for p, data := range all {
		if path.Ext(p) != ".html" {
			continue
		}
		pages++
		found := 0
		for _, a := range parsed(t, data).all("footer a") {
			if path.Join(path.Dir(p), attribute(a, "href")) == "licences.txt" {
				found++
			}
		}
		if found != 1 {
			t.Errorf("%s leads to the licences %d times", p, found)
		}
	}
	if pages < 8 {
		t.Errorf("only %d pages were looked at", pages)
	}
}

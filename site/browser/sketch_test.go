package browser

import (
	"strings"
	"testing"
)

// A field's fold shows the picture of how its number is taken, drawn when it is opened
// and at the reader's size; the chapter's instruction is the same text.
func TestAFoldShowsThePictureOfTheChapter(t *testing.T) {
	t.Parallel()
	b := open(t, "/saddle/height.html#inseam=900").ready()
	const fold = `document.querySelector("#saddle-height-1-inseam-w")`
	eval[bool](b, fold+`.querySelector("summary").click(), true`)
	b.until(fold + `.querySelector(".sketch svg") !== null`)
	if got := eval[string](b, fold+`.querySelector(".sketch svg").textContent`); !strings.Contains(got, "900") {
		t.Errorf("the picture is not the reader's own: %q", got)
	}
	chapter := eval[string](b, `document.querySelector("#measure-inseam > p").textContent`)
	field := eval[string](b, fold+`.querySelector("p[id$=-h]").textContent`)
	if chapter == "" || chapter != field {
		t.Errorf("the chapter says %q, the field %q", chapter, field)
	}
	// The form is written anew in other units, and the open fold keeps its picture.
	eval[bool](
		b,
		`(() => { const s = document.querySelector("[data-tools] select"); s.value = "in";
			s.dispatchEvent(new Event("change", { bubbles: true }));
			return true; })()`,
	)
	b.until(
		fold + `.open && ` + fold + `.querySelector(".sketch svg") !== null && ` +
			fold + `.querySelector(".sketch").textContent.includes("in")`,
	)
}

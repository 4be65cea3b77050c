package browser

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"regexp"
	"strings"
	"testing"
	"time"

	"plumbline/calculators/catalog"
)

// nonsense is what people type by mistake, and what a page has to live with: letters,
// beyond all numbers, below zero, 83 for 830, an emoji.
var nonsense = []string{"abc", "1e309", "-5", "83", "🚲"}

// typist are the functions that fill and judge all forms of a page at once. A field is
// right when it still holds what was typed, and is either marked, with a sentence of its
// own beside it, or taken into the record.
const typist = `
	globalThis.fields = () => [...document.querySelectorAll(
		".bench form :is(input[type=text], textarea), [data-reading] input, [data-pasted] > textarea")]
		.filter((f) => f.checkVisibility({contentVisibilityAuto: false}) !== null && !f.closest(".chart"));
	globalThis.beside = (f) => f.closest(".bench") ? document.getElementById(f.id + "-p")
		: f.closest("[data-reading], [data-pasted]").querySelector(".problem");
	globalThis.keyOf = (f) => f.name || f.closest("[data-reading]")?.dataset.reading
		|| f.closest("[data-pasted]")?.dataset.pasted;
	// Fields of one quantity get the same; of the texts each gets the one that its key's length picks.
	globalThis.fill = (...texts) => {
		globalThis.given = (f) => texts[keyOf(f).length % texts.length];
		for (const f of fields()) {
			f.value = given(f);
			for (const type of ["input", "change"]) f.dispatchEvent(new Event(type, {bubbles: true}));
		}
	};
	const sense = ["-5", "83"]; // which some fields may take
	globalThis.wrong = () => fields().filter((f) => {
		const said = beside(f), letters = said.textContent.length;
		const marked = f.getAttribute("aria-invalid") === "true" && !said.hidden && letters > 10 && letters < 2000;
		const taken = new URLSearchParams(location.hash.slice(1)).has(keyOf(f))
			&& f.getAttribute("aria-invalid") === null;
		return f.value !== given(f) || !(marked || sense.includes(f.value) && taken);
	}).map((f) => keyOf(f) + ": " + f.value.slice(0, 20) + ": " + beside(f).textContent.slice(0, 80));
	true`

// settled waits until a list of the page is empty, and returns what stays in it.
func (b *tab) settled(js string) string {
	b.Helper()
	left := ""
	for end := time.Now().Add(15 * time.Second); time.Now().Before(end); time.Sleep(40 * time.Millisecond) {
		if left = eval[string](b, js+`.join("\n")`); left == "" {
			return ""
		}
	}
	return left
}

var hasForm = regexp.MustCompile(`data-calculator="([^"]+)"|data-reading=|data-pasted=`)

// The judge of the console at the end of each tab is part of this test.
func TestNonsenseIsToldBesideItsFieldAndNothingIsLost(t *testing.T) {
	t.Parallel()
	seen := map[string]bool{}
	err := fs.WalkDir(published, ".", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".html") || strings.HasPrefix(path, "de/") {
			return err // the forms are the same in every language
		}
		html, err := fs.ReadFile(published, path)
		if err != nil {
			return err
		}
		found := hasForm.FindAllStringSubmatch(string(html), -1)
		if found == nil {
			return nil
		}
		fresh := false
		for _, m := range found {
			fresh = fresh || m[1] == "" || !seen[m[1]]
			seen[m[1]] = true
		}
		if fresh {
			t.Run(strings.TrimSuffix(path, ".html"), func(t *testing.T) { typeNonsense(t, "/"+path) })
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range catalog.All() {
		if !seen[c.Name] {
			t.Errorf("no page has %s", c.Name)
		}
	}
}

func typeNonsense(t *testing.T, path string) {
	t.Parallel()
	b := open(t, path).ready()
	b.until(`[...document.querySelectorAll(".bench fieldset")].every((f) => !f.disabled)`)
	b.until(`[...document.querySelectorAll("[data-reading], [data-pasted]")].every((p) => p.firstChild)`)
	eval[bool](b, typist)
	for _, texts := range [][]string{nonsense, {"abc"}} {
		list, _ := json.Marshal(texts)
		eval[bool](b, fmt.Sprintf(`(fill(...%s), true)`, list))
		if left := b.settled("wrong()"); left != "" {
			t.Errorf("not marked, not said or not kept:\n%s", left)
		}
	}
	// Forms that are written anew keep what nobody could read.
	b.set("[data-tools] select", "in")
	b.until(`location.hash.includes("u=in")`)
	if left := b.settled(`fields().filter((f) => !f.value.startsWith("abc")).map(keyOf)`); left != "" {
		t.Errorf("lost when the units changed: %s", left)
	}
	// An empty field is no mistake.
	eval[bool](b, `(fill(""), true)`)
	if left := b.settled(`fields().filter((f) => f.value || f.getAttribute("aria-invalid")).map(keyOf)`); left != "" {
		t.Errorf("empty fields are marked: %s", left)
	}
}

// A megabyte in one field is refused as a whole, before any field is read, and stays.
func TestAMegabyteIsToldAndStays(t *testing.T) {
	t.Parallel()
	b := open(t, chapter).ready()
	eval[bool](b, `((f) => {
		f.value = "7x".repeat(2 ** 19);
		f.dispatchEvent(new Event("input", {bubbles: true}));
		return true;
	})(document.querySelector("[name=inseam]"))`)
	b.until(`document.querySelector("#saddle-height-1-p").checkVisibility()`)
	if got := b.text("#saddle-height-1-p"); !strings.Contains(got, "too long") {
		t.Errorf("it is told %q", got)
	}
	if got := eval[int](b, `document.querySelector("[name=inseam]").value.length`); got != 1<<20 {
		t.Errorf("the field has %d letters left", got)
	}
	b.typed("inseam", "84")
	b.until(`!document.querySelector("#saddle-height-1-p").checkVisibility()`)
}

func TestNonsenseOnTheSheetIsToldAndKept(t *testing.T) {
	t.Parallel()
	b := open(t, setupPage).drawn()
	b.set("select[name=key]", "saddle-height")
	for _, text := range nonsense {
		b.submit("[name=now]", text)
		b.until(`document.querySelector("[name=now]").getAttribute("aria-invalid") &&
			!document.querySelector(".entry-line .problem").hidden`)
		if got := eval[string](b, `document.querySelector("[name=now]").value`); got != text {
			t.Errorf("of %q the field has %q", text, got)
		}
	}
	// 83 alone is no saddle height: what was meant is one tap.
	b.submit("[name=now]", "73.5")
	b.until(`document.querySelector(".entry-line .mend")`)
	b.press(".entry-line .mend")
	b.press(`.entry-line [type=submit]`)
	b.until(`location.hash.includes("saddle-height=735")`)
}

// set gives a field that value and says that it changed, as a choice from a list does.
func (b *tab) set(selector, value string) {
	b.Helper()
	eval[bool](b, fmt.Sprintf(`(f => {
		f.value = %q;
		for (const type of ["input", "change"]) f.dispatchEvent(new Event(type, {bubbles: true}));
		return true;
	})(document.querySelector(%q))`, value, selector))
}

// submit gives a field that value and sends its form.
func (b *tab) submit(selector, value string) {
	b.Helper()
	eval[bool](b, fmt.Sprintf(`(f => {
		f.value = %q;
		f.form.requestSubmit();
		return true;
	})(document.querySelector(%q))`, value, selector))
}

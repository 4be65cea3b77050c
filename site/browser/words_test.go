package browser

import (
	"encoding/json"
	"testing"
)

// TestWordsInFormsAndAnswersAreExplained: the first use of a term in a bench can be tapped
// and reached by keyboard, and an answer that is written anew has its words once.
func TestWordsInFormsAndAnswersAreExplained(t *testing.T) {
	t.Parallel()
	b := open(t, "/saddle/height.html").ready()
	b.typed("inseam", "830")
	b.until(`document.querySelector(".bench .answer dfn.word a")`)
	if n := eval[int](b, `(() => {
		const keys = [...document.querySelectorAll(".bench dfn.word a")].map((a) => a.hash);
		return keys.length - new Set(keys).size;
	})()`); n != 0 {
		t.Errorf("%d terms are marked twice in one bench", n)
	}
	const said = `document.querySelector(".bench .answer").textContent`
	before := eval[string](b, said)
	b.typed("inseam", "840")
	b.until(said + ` !== ` + asScript(before))
	b.typed("inseam", "830")
	b.until(`document.querySelector(".bench .answer dfn.word a")`)
	b.until(said + ` === ` + asScript(before))
	b.until(`(() => {
		const link = document.querySelector(".bench .answer dfn.word a");
		link?.click();
		return Boolean(link);
	})()`)
	b.until(`document.querySelector("#word:popover-open")?.textContent.length > 20`)
}

// asScript is a text as a script has it.
func asScript(s string) string {
	b, _ := json.Marshal(s)
	return string(b)
}

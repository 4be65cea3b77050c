package browser

import (
	"encoding/json"
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/catalog"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
	"plumbline/templates"
)

// drawings is how many random inputs each figure is drawn for, at each of the widths.
const drawings = 80

// smallest is how high letters have to be as they are seen, in pixels.
const smallest = 12

// overlapping returns, for each drawing in a place of that width, the pairs of labels
// that cover each other, the labels that leave the frame, letters that are too small, and
// on a phone labels that are turned, as the browser really sets them. A label
// along a dimension line is turned, so its corners are carried by its own matrix;
// two turned boxes are apart if one of their sides parts them.
const overlapping = `((svgs, width, smallest) => svgs.map((svg) => {
	document.body.style.width = width + "px";
	document.body.innerHTML = svg;
	const figure = document.querySelector("svg"), frame = figure.viewBox.baseVal,
		back = figure.getScreenCTM().inverse();
	const boxes = [...figure.querySelectorAll("text")].map((text) => {
		const b = text.getBBox(), m = back.multiply(text.getScreenCTM()), slack = b.height * 0.12;
		const corner = (x, y) => new DOMPoint(x, y).matrixTransform(m);
		return { said: text.textContent, corners: [
			corner(b.x, b.y + slack), corner(b.x + b.width, b.y + slack),
			corner(b.x + b.width, b.y + b.height - slack), corner(b.x, b.y + b.height - slack)] };
	});
	const parted = (a, b) => a.some((p, i) => {
		const q = a[(i + 1) % 4], n = { x: q.y - p.y, y: p.x - q.x };
		const along = (c) => c.map((r) => r.x * n.x + r.y * n.y);
		return Math.max(...along(a)) <= Math.min(...along(b)) || Math.max(...along(b)) <= Math.min(...along(a));
	});
	const wrong = [];
	const seen = width / frame.width * parseFloat(getComputedStyle(figure).fontSize);
	if (seen < smallest) wrong.push("letters are " + seen.toFixed(1) + " px high");
	if (width < 400 && figure.querySelector("text[transform]"))
		wrong.push(figure.querySelector("text[transform]").textContent + " is turned");
	boxes.forEach(({ said, corners }, i) => {
		if (corners.some((c) => c.x < frame.x - 1 || c.y < frame.y - 1 ||
			c.x > frame.x + frame.width + 1 || c.y > frame.y + frame.height + 1))
			wrong.push(said + " leaves the frame");
		for (const other of boxes.slice(i + 1)) {
			if (!parted(corners, other.corners) && !parted(other.corners, corners))
				wrong.push(said + " | " + other.said);
		}
	});
	return wrong.join("; ");
}))(SVGS, WIDTH, SMALLEST)`

// sheetOf serves an empty page with the styles of figures, and returns its address.
func sheetOf(t *testing.T) string {
	t.Helper()
	var style strings.Builder
	for _, name := range []string{"base.css", "figure.css"} {
		css, err := templates.Files.ReadFile("style/" + name)
		if err != nil {
			t.Fatal(err)
		}
		style.Write(css)
	}
	sheet := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, "<!doctype html><title>labels</title><link rel=icon href=data:,><style>%s "+
			"body{margin:0}</style><body>", style.String())
	}))
	t.Cleanup(sheet.Close)
	return sheet.URL
}

func TestNoLabelCoversAnotherOrLeavesTheFrame(t *testing.T) {
	t.Parallel()
	at := sheetOf(t)
	for _, c := range catalog.All() {
		t.Run(c.Name, func(t *testing.T) {
			t.Parallel()
			b := openAt(t, at, "/")
			figures, inputs := calctest.Drawn(c, drawings)
			if len(figures) < drawings/2 {
				t.Errorf("only %d of %d random inputs have a drawing", len(figures), drawings)
			}
			for _, width := range calctest.Widths {
				judged(t, b, figures, inputs, width)
			}
		})
	}
}

// judged draws the figures for a place of that width and reports what is wrong with them.
func judged(t *testing.T, b *tab, figures []*drawing.Figure, inputs []string, width float64) {
	t.Helper()
	bad := 0
	for from := 0; from < len(figures); from += 50 {
		var drawn []string
		for _, f := range figures[from:min(from+50, len(figures))] {
			drawn = append(drawn, f.SVG("f", &words.Reader{}, width))
		}
		batch, err := json.Marshal(drawn)
		if err != nil {
			t.Fatal(err)
		}
		ask := strings.NewReplacer("SVGS", string(batch), "WIDTH", fmt.Sprint(width), "SMALLEST", fmt.Sprint(smallest))
		for i, wrong := range eval[[]string](b, ask.Replace(overlapping)) {
			if wrong != "" {
				if bad++; bad <= 3 {
					t.Errorf("%s, at %g px: %s", inputs[from+i], width, wrong)
				}
			}
		}
	}
	if bad > 3 {
		t.Errorf("%d of %d drawings at %g px have such labels", bad, len(figures), width)
	}
}

// The standing figures, at their example and at the sizes of small and large riders.
func TestNoLabelOfAStandingFigureCoversAnother(t *testing.T) {
	t.Parallel()
	b := openAt(t, sheetOf(t), "/")
	for _, s := range catalog.Pictures() {
		t.Run(s.Name, func(t *testing.T) {
			figures, inputs := []*drawing.Figure{s.Figure(nil, nil)}, []string{"the example"}
			if m := s.Motion; m != nil {
				for i := range 9 {
					at := m.From + (m.To-m.From)*float64(i)/8
					moment, said := s.Moment(nil, nil, at)
					figures, inputs = append(figures, moment), append(inputs, said.Say(nil))
				}
			}
			for _, typed := range [][]calculators.Pair{
				{{Key: "inseam", Typed: "660"}, {Key: "stature", Typed: "1480"}},
				{{Key: "inseam", Typed: "960"}, {Key: "stature", Typed: "2010"}},
			} {
				figures, inputs = append(figures, s.Figure(typed, nil)), append(inputs, typed[0].Typed)
			}
			for _, width := range calctest.Widths {
				judged(t, b, figures, inputs, width)
			}
		})
	}
}

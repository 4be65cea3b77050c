package browser

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
	"plumbline/templates"
)

// drawings is how many random inputs each figure is drawn for.
const drawings = 200

// overlapping returns, for each drawing, the pairs of labels that cover each other
// and the labels that leave the frame, as the browser really sets them. A label
// along a dimension line is turned, so its corners are carried by its own matrix;
// two turned boxes are apart if one of their sides parts them.
const overlapping = `((svgs) => svgs.map((svg) => {
	document.body.innerHTML = svg;
	const figure = document.querySelector("svg"), frame = figure.viewBox.baseVal, back = figure.getScreenCTM().inverse();
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
	boxes.forEach(({ said, corners }, i) => {
		if (corners.some((c) => c.x < frame.x - 1 || c.y < frame.y - 1 || c.x > frame.x + frame.width + 1 || c.y > frame.y + frame.height + 1)) wrong.push(said + " leaves the frame");
		for (const other of boxes.slice(i + 1)) {
			if (!parted(corners, other.corners) && !parted(other.corners, corners)) wrong.push(said + " | " + other.said);
		}
	});
	return wrong.join("; ");
}))(SVGS)`

func TestNoLabelCoversAnotherOrLeavesTheFrame(t *testing.T) {
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
			"body{width:620px;margin:0}</style><body>", style.String())
	}))
	defer sheet.Close()
	for _, c := range catalog.All() {
		t.Run(c.Name, func(t *testing.T) {
			b := openAt(t, sheet.URL, "/")
			drawn, inputs := draw(c)
			if len(drawn) < drawings/2 {
				t.Errorf("only %d of %d random inputs have a drawing", len(drawn), drawings)
			}
			bad := 0
			for from := 0; from < len(drawn); from += 50 {
				to := min(from+50, len(drawn))
				batch, err := json.Marshal(drawn[from:to])
				if err != nil {
					t.Fatal(err)
				}
				for i, wrong := range eval[[]string](b, strings.Replace(overlapping, "SVGS", string(batch), 1)) {
					if wrong != "" {
						if bad++; bad <= 3 {
							t.Errorf("%s: %s", inputs[from+i], wrong)
						}
					}
				}
			}
			if bad > 3 {
				t.Errorf("%d of %d drawings have such labels", bad, len(drawn))
			}
		})
	}
}

// draw returns the drawings of a calculator for random inputs, near its worked
// example and anywhere in what is plausible by turns, and what was typed for each.
func draw(c *calculators.Calculator) (drawn, inputs []string) {
	rng := rand.New(rand.NewPCG(7, uint64(len(c.Name))))
	reader := &words.Reader{}
	for n := range 2 * drawings {
		var typed []calculators.Pair
		var said []string
		for _, p := range panel.Example(c) {
			q := quantity(c, p.Key)
			if g, _, ok := q.Parse(p.Typed, nil); ok && q.Is() == measure.Number {
				x := g.Value * (0.9 + 0.2*rng.Float64())
				if n%4 == 3 {
					x = q.Low + (q.High-q.Low)*rng.Float64()
				}
				p.Typed = measure.Exact(min(max(x, q.Low), q.High))
			} else if q.Is() == measure.Pick {
				p.Typed = q.Choices[rng.IntN(len(q.Choices))].Key
			}
			typed = append(typed, p)
			said = append(said, p.Key+"="+p.Typed)
		}
		r, problems := c.Run(typed, nil)
		if problems != nil || r.Figure == nil || len(drawn) == drawings {
			continue
		}
		drawn = append(drawn, r.Figure.SVG("f", reader, 530))
		inputs = append(inputs, strings.Join(said, " "))
	}
	return drawn, inputs
}

func quantity(c *calculators.Calculator, key string) *measure.Quantity {
	for _, in := range c.Inputs {
		if in.Key == key {
			return in.Quantity
		}
	}
	return nil
}

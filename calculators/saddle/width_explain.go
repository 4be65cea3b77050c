package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainWidth(v calculators.Values, r *calculators.Result) {
	// The warning comes before any number is explained.
	r.Notes = append([]calculators.Note{{Kind: calculators.CheckNote,
		Text: words.Of("Numbness between the legs comes first: stand up at once. If it comes back or outlasts the " +
			"ride, see a clinician before you try another saddle.")}}, r.Notes...)
	x, edges := r.At(saddleWidth), r.At(boneEdges)
	x.Low, x.High = x.Value-widthRange, x.Value+widthRange
	x.Meaning = words.Of("Start with what you have if it lies in the range. It is right when you can point to the " +
		"two places that carry you, and nothing else hurts.")
	t := calculators.Table{Name: "postures", Caption: words.Of("The further you lean, the less of the bones " +
		"touches"), Columns: []calculators.Column{
		{Name: "leaning", Label: words.Of("How you sit")},
		{Name: "saddle-width", Label: words.Of("Width to try"), Unit: "mm"},
		{Name: "from", Label: words.Of("From"), Unit: "mm"},
		{Name: "to", Label: words.Of("To"), Unit: "mm"},
		{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
	}}
	for i, c := range measure.Leaning.Choices {
		w := WidthFor(float64(edges.Value)) - leanLess(c.Key)
		t.Rows = append(t.Rows, []words.Sayer{words.Of(c.Label), measure.Sold(w),
			measure.Sold(w - widthRange),
			measure.Sold(w + widthRange), measure.Error{Amount: measure.Sold(edges.Margin().Value)}})
		if v.Is(measure.Leaning, c.Key) {
			t.Starred = i + 1
		}
	}
	r.Tables = append(r.Tables, t)
	noteWidth(v, r)
	r.Figure = widthFigure(v, r)
}

func noteWidth(v calculators.Values, r *calculators.Result) {
	x, edges := r.At(saddleWidth), r.At(boneEdges)
	read := v.Of(measure.SitBoneWidth)
	switch {
	case v.Is(measure.SitBoneRead, "centres") && read > 145:
		r.Note(calculators.CheckNote, "{0} is wide between the centres: prints usually give {1} to {2}. Were the "+
			"outer edges measured?", measure.Millimetres(read), measure.Millimetres(100), measure.Millimetres(150))
	case v.Is(measure.SitBoneRead, "edges") && read < 125:
		r.Note(calculators.CheckNote, "{0} is narrow between the outer edges: ten women measured {1} on average. "+
			"Were the centres measured?", measure.Millimetres(read), measure.Millimetres(155))
	}
	if v.Is(measure.SitBoneRead, "centres") {
		r.Note(calculators.PlainNote, "Measured between the centres, the outer edges lie some {0} further apart: "+
			"{1}. The two ways are often mixed up, so do not trust a chart that does not say which it means.",
			measure.Millimetres(v.Of(measure.SitBoneEdges)), edges.Uncertain())
	}
	if w := float64(x.Value); w < widthSoldFrom || w > widthSoldTo {
		r.Note(calculators.CheckNote, "Saddles are mostly sold from about {0} to {1}. Measure again, and take the "+
			"nearest.", measure.Sold(widthSoldFrom), measure.Sold(widthSoldTo))
	}
	r.Note(calculators.PlainNote, "A saddle {0} wider than the outer edges suited ten women best; the steps for "+
		"leaning, and the range, are common practice. In twenty men width and shape decided how far the blood flow "+
		"fell, and padding did not protect: stand up every few minutes on any saddle.",
		measure.Sold(WidthFor(0)))
}

// widthFigure draws the saddle from above at the width to try, with the bones on
// it.
func widthFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	x, edges, centres := r.At(saddleWidth), r.At(boneEdges), r.At(boneCentres)
	f := &drawing.Figure{Title: words.Of("Your sit bones on the saddle, seen from above"),
		Description: words.Of("A saddle seen from above, {0} across at its widest, its nose to the right. The "+
			"outer edges of the two sit bones lie {1} apart.", x.Uncertain(), edges.Uncertain())}
	half := math.Max(float64(x.Value), 60) / 2
	outline := make([]figure.Point, 0, 2*len(saddlePlan))
	for _, p := range saddlePlan {
		outline = append(outline, figure.Point{X: p.X, Y: p.Y * half})
	}
	for i := len(saddlePlan) - 1; i >= 0; i-- {
		outline = append(outline, figure.Point{X: saddlePlan[i].X, Y: -saddlePlan[i].Y * half})
	}
	f.Add(drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Points: outline, Closed: true, Smooth: true})
	outer := float64(edges.Value) / 2
	inner := outer - 17.5
	if centres.Exists() {
		inner = float64(centres.Value) / 2
	}
	size := math.Max(outer-inner, 4)
	at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
	for _, side := range [2]float64{-1, 1} {
		centre := at(-62, side*(outer-size))
		f.Add(drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch,
			A: centre, B: at(-34, side*(outer-size-4)), Ra: size, Rb: size * 0.8},
			drawing.Cross{Role: drawing.Body, At: centre})
	}
	f.Add(
		drawing.Axis{Role: drawing.Soft, A: at(-120, 0), B: at(165, 0)},
		figure.Upright(drawing.Hot, at(-60, -half), at(-60, half), -190, words.Of("{0}", x.Uncertain())),
		figure.Upright(drawing.Body, at(-62, -outer), at(-62, outer), 130, words.Of("edges {0}", edges.Amount())),
	)
	if centres.Exists() {
		f.Add(figure.Upright(drawing.Body, at(-62, -inner), at(-62, inner), 30, words.Of("centres {0}",
			centres.Amount())))
	}
	return f
}

// saddlePlan is half of a saddle's outline from above: along it from the tail to
// the nose in mm, across it in shares of half its width. Drawn by eye.
var saddlePlan = [12]figure.Point{
	{X: -112, Y: 0.02}, {X: -116, Y: 0.35}, {X: -104, Y: 0.80}, {X: -80, Y: 0.97}, {X: -60, Y: 1}, {X: -30, Y: 0.94},
	{X: 0, Y: 0.72}, {X: 35, Y: 0.44}, {X: 75, Y: 0.30}, {X: 120, Y: 0.26}, {X: 148, Y: 0.20}, {X: 155, Y: 0.02},
}

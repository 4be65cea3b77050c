package start

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// PostInTheFrame is the standing figure of how deep a post has to sit: the calculator's
// own picture of its worked example, for a page that computes nothing.
func PostInTheFrame() *calculators.Illustration {
	return &calculators.Illustration{Name: "post-in-the-frame", Draw: func(calculators.Values) *drawing.Figure {
		c := Depth()
		r, _ := c.Run(c.Example(), nil)
		if r == nil || len(r.Figure.Frames) < 2 {
			return nil
		}
		f := r.Figure
		f.Frames[0].Caption = words.Of("Right: the mark is hidden, and the end lies below the frame’s minimum")
		f.Description = words.Of("{0} The picture’s numbers are an example.", f.Description)
		return f
	}}
}

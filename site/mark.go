package site

import (
	"bytes"
	"encoding/xml"
	"errors"
	"image/png"
	"io"
	"math"
	"path"
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// mark is a shop's mark, checked.
type mark struct {
	data          []byte
	ext           string // .svg or .png
	width, height int    // as it stands in the header, in pixels
}

// name is the mark's file in the published guide.
func (m *mark) name() string { return "mark" + m.ext }

// wide tells whether a mark is so wide that it most likely has the name in it.
func (m *mark) wide() bool { return 2*m.width >= 5*m.height }

// The limits of a mark: it is loaded with every page.
const (
	markBytes  = 64 << 10
	markPixels = 1200
	markHeight = 34 // in the header, in pixels
)

// readMark checks a mark.
func readMark(name string, data []byte) (*mark, error) {
	m := &mark{data: data, ext: strings.ToLower(path.Ext(name))}
	if len(data) > markBytes {
		return nil, wrongFile{told.Of("the mark has {0}, and every page loads it", size(int64(len(data)))),
			told.Of("make it smaller than {0}", size(markBytes))}
	}
	var w, h float64
	var err error
	switch m.ext {
	case ".svg":
		w, h, err = checkSVG(data)
	case ".png":
		c, bad := png.DecodeConfig(bytes.NewReader(data))
		if w, h = float64(c.Width), float64(c.Height); bad != nil {
			err = wrongFile{told.Of("the mark is no PNG"), told.Of("save it as PNG once more")}
		} else if max(c.Width, c.Height) > markPixels {
			err = wrongFile{told.Of("the mark has {0} by {1} pixels", c.Width, c.Height),
				told.Of("make it at most {0} wide and high", markPixels)}
		}
	default:
		err = wrongFile{told.Of("“{0}” is no mark", name), told.Of("save it as SVG or PNG")}
	}
	if err != nil {
		return nil, err
	}
	if w < h/2 || w > 8*h {
		return nil, wrongFile{told.Of("the mark is {0} wide and {1} high, and has no room beside the name", w, h),
			told.Of("make it between half and eight times as wide as it is high")}
	}
	m.height = markHeight
	m.width = int(math.Round(markHeight * w / h))
	return m, nil
}

// What an SVG may consist of. Whatever else SVG has can load something, run something or
// move, and no mark needs it.
var (
	svgElements = []string{"svg", "g", "defs", "title", "desc", "path", "rect", "circle", "ellipse", "line", "polyline",
		"polygon", "linearGradient", "radialGradient", "stop", "clipPath", "mask", "symbol", "use", "metadata"}
	svgText = []string{"text", "tspan", "textPath"}
)

// checkSVG reads an SVG strictly and returns the size that it gives itself.
func checkSVG(data []byte) (w, h float64, err error) {
	d := xml.NewDecoder(bytes.NewReader(data))
	d.Strict = true
	bad := func(what, remedy words.Text) error {
		line, _ := d.InputPos()
		return wrongFile{told.Of("the mark has {0} in line {1}", what, line), remedy}
	}
	const simple words.English = "save it from your drawing program as plain SVG, without scripts and linked files"
	first := true
	for {
		t, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return 0, 0, bad(told.Of("XML that is not well formed ({0})", err.Error()), told.Of(simple))
		}
		switch t := t.(type) {
		case xml.Directive:
			if !bytes.HasPrefix(t, []byte("DOCTYPE")) || bytes.ContainsRune(t, '[') {
				return 0, 0, bad(told.Of("a declaration of entities"), told.Of(simple))
			}
		case xml.ProcInst:
			if t.Target != "xml" {
				return 0, 0, bad(told.Of("an instruction “{0}”", t.Target), told.Of(simple))
			}
		case xml.StartElement:
			if first && t.Name.Local != "svg" {
				return 0, 0, wrongFile{told.Of("the mark is no SVG"), told.Of(simple)}
			}
			if first {
				w, h = svgSize(t)
			}
			first = false
			switch space := t.Name.Space; {
			case strings.HasSuffix(space, "1999/xhtml"):
				return 0, 0, bad(told.Of("a piece of a web page"), told.Of(simple))
			case space != "" && space != "http://www.w3.org/2000/svg":
				continue // a drawing program's notes, which browsers pass over
			case t.Name.Local == "style":
				return 0, 0, bad(told.Of("a style sheet"), told.Of("save it with “presentation attributes” instead"))
			case slices.Contains(svgText, t.Name.Local):
				return 0, 0, bad(
					told.Of("text, which looks different wherever its font is missing"),
					told.Of("turn it into paths"),
				)
			case !slices.Contains(svgElements, t.Name.Local):
				return 0, 0, bad(told.Of("an element “{0}”", t.Name.Local), told.Of(simple))
			}
			if a := harmful(t.Attr); a != "" {
				return 0, 0, bad(told.Of("“{0}”", a), told.Of(simple))
			}
		}
	}
	if first {
		return 0, 0, wrongFile{told.Of("the mark is no SVG"), told.Of(simple)}
	}
	if !(w > 0 && h > 0) {
		return 0, 0, wrongFile{
			told.Of("the mark does not say how large it is"),
			told.Of("give its svg element a viewBox"),
		}
	}
	return w, h, nil
}

// harmful returns an attribute that runs or loads something, or "".
func harmful(list []xml.Attr) string {
	for _, a := range list {
		name, value := strings.ToLower(a.Name.Local), strings.ToLower(a.Value)
		value = strings.Join(strings.Fields(value), "")
		loads := strings.Contains(value, "url(") && strings.Count(value, "url(") != strings.Count(value, "url(#")+
			strings.Count(value, "url('#")+strings.Count(value, "url(\"#")
		switch {
		case strings.HasPrefix(name, "on"),
			(name == "href" || name == "src") && !strings.HasPrefix(value, "#"),
			loads, strings.Contains(value, "javascript:"), strings.Contains(value, "@import"),
			strings.ContainsRune(value, '\\'): // an escape can spell any of these
			return a.Name.Local
		}
	}
	return ""
}

// svgSize is the size of an SVG by its view box, or else by its width and height.
func svgSize(svg xml.StartElement) (w, h float64) {
	number := func(s string) float64 {
		x, err := strconv.ParseFloat(strings.TrimSuffix(strings.TrimSpace(s), "px"), 64)
		if err != nil {
			return 0
		}
		return x
	}
	for _, a := range svg.Attr {
		switch a.Name.Local {
		case "viewBox":
			if f := strings.FieldsFunc(a.Value, func(r rune) bool { return r == ' ' || r == ',' }); len(f) == 4 {
				return number(f[2]), number(f[3])
			}
		case "width":
			w = number(a.Value)
		case "height":
			h = number(a.Value)
		}
	}
	return w, h
}

// findMark reads the mark that guide.yaml names, and finds drawings in the shop's folder
// that are no mark: an SVG can carry script, so no chapter shows one.
func (g *Guide) findMark() (bad []Mistake) {
	m := &g.brand.mark
	name := strings.TrimPrefix(path.Clean(m.Text), "./")
	for p, s := range g.layers.local {
		if strings.ToLower(path.Ext(p)) == markFile && p != name {
			bad = append(
				bad,
				Mistake{
					File: s.file,
					What: told.Of("an SVG can carry script and is not shown in a chapter"),
					Remedy: told.Of(
						"save the picture as PNG or JPEG; as your mark, name it in guide.yaml under “mark”",
					),
				},
			)
		}
	}
	if m.Text == "" {
		return bad
	}
	wrong := func(what, remedy words.Text) []Mistake {
		return append(bad, Mistake{m.File, m.At.Position.Line, m.At.Position.Column, what, remedy})
	}
	s, ok := g.layers.file(name)
	if !ok {
		return wrong(
			told.Of("there is no file “{0}” in your folder", m.Text),
			told.Of("put the mark there as SVG or PNG"),
		)
	}
	drawn, err := readMark(name, s.text)
	if err != nil {
		var why wrongFile
		errors.As(err, &why)
		return wrong(why.what, why.remedy)
	}
	g.brand.drawn = drawn
	return bad
}

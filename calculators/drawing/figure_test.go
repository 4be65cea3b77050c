package drawing

import (
	"encoding/xml"
	"flag"
	"io"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/words"
)

var update = flag.Bool("update", false, "write the golden files anew")

// golden compares with a file of testdata, or writes it.
func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.MkdirAll("testdata", 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(got+"\n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got+"\n" != string(want) {
		t.Errorf("%s differs; run go test -update and look at the difference\n got %s\nwant %s", path, got, want)
	}
}

func figure(marks ...Mark) *Figure {
	return &Figure{Title: words.Of("A drawing"), Description: words.Of("What it shows"), Marks: marks}
}

func TestEachMarkIsWrittenAsItsGoldenFile(t *testing.T) {
	for _, c := range []struct {
		name  string
		marks []Mark
	}{
		{"lines.svg", []Mark{
			Line{Role: Ink, Points: []Point{{0, 0}, {100, 0}, {100, 50}}},
			Line{Role: Ink, Points: []Point{{0, 10}, {50, 60}}},
			Line{Role: Before, Pen: Thin, Points: []Point{{0, 20}, {40, 40}, {80, 20}}, Smooth: true},
			Line{Role: Body, Fill: Hatch, Points: []Point{{0, 0}, {50, 10}, {20, 40}}, Smooth: true, Closed: true},
			Axis{Role: Soft, A: Point{0, 70}, B: Point{100, 70}},
			Cross{Role: Body, At: Point{50, 50}},
			Ground{A: Point{0, -5}, B: Point{60, -5}},
		}},
		{"round.svg", []Mark{
			Wheel{Role: Ink, Centre: Point{0, 0}, Tyre: 372, Rim: 311},
			Circle{Role: Hot, Pen: Heavy, Fill: Solid, Centre: Point{10, 10}, Radius: 8},
			Angle{Role: Soft, Vertex: Point{0, 0}, From: 10, To: 150, Radius: 200},
			Limb{Role: Body, Fill: Hatch, A: Point{0, 300}, B: Point{200, 800}, Ra: 80, Rb: 50},
			Limb{Role: Body, A: Point{0, 0}, B: Point{5, 0}, Ra: 80, Rb: 20},
			Tube{Role: Ink, Fill: Sheet, A: Point{0, 0}, B: Point{300, 300}, Ra: 20, Rb: 15},
		}},
		{"dimensions.svg", []Mark{
			Line{Role: Ink, Points: []Point{{0, 0}, {-170, 700}}},
			Dimension{Role: Hot, A: Point{0, 0}, B: Point{-170, 700}, Offset: 200, Text: words.Of("720 ± 9 mm")},
			Dimension{Role: Ink, A: Point{0, 0}, B: Point{-170, 700}, Along: Point{1, 0}, Offset: -60,
				Text: words.Of("170")},
			Dimension{Role: Ink, A: Point{0, 0}, B: Point{20, 0}, Offset: -160, Text: words.Of("20 mm")},
			Angle{Role: Ink, Vertex: Point{0, 0}, From: 0, To: 103.6, Radius: 250, ArmFrom: 300,
				Text: words.Of("103.6°")},
			Label{Role: Soft, At: Point{-170, 700}, Text: words.Of("saddle & <rails>"), Leader: true},
		}},
	} {
		t.Run(c.name, func(t *testing.T) { golden(t, c.name, figure(c.marks...).SVG("fig", nil, 530)) })
	}
}

// checked reads the SVG as XML and returns every id in it.
func checked(t interface {
	Fatalf(string, ...any)
}, svg, id string) {
	seen := map[string]bool{}
	d := xml.NewDecoder(strings.NewReader(svg))
	d.Strict = true
	for {
		token, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatalf("not well-formed: %v\n%s", err, svg)
		}
		start, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		for _, a := range start.Attr {
			switch a.Name.Local {
			case "id":
				if !strings.HasPrefix(a.Value, id) || seen[a.Value] {
					t.Fatalf("id %q is not prefixed by %q, or not the only one", a.Value, id)
				}
				seen[a.Value] = true
			case "style", "onload", "href":
				t.Fatalf("attribute %s in %s", a.Name.Local, svg)
			case "fill":
				if start.Name.Local != "path" || a.Value != "url(#"+id+"-h)" {
					t.Fatalf("fill=%q", a.Value)
				}
			}
		}
	}
	for _, bad := range []string{"NaN", "Inf", "-0 ", "-0\"", "e+"} {
		if strings.Contains(strings.SplitN(svg, "</desc>", 2)[1], bad) {
			t.Fatalf("%q in %s", bad, svg)
		}
	}
}

var number = rapid.Custom(func(t *rapid.T) float64 {
	if rapid.IntRange(0, 60).Draw(t, "odd") == 0 {
		return rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e300, -1e9, math.Copysign(0,
			-1)}).Draw(t, "bad")
	}
	return rapid.Float64Range(-900, 900).Draw(t, "number")
})

var somewhere = rapid.Custom(func(t *rapid.T) Point {
	return Point{number.Draw(t, "x"), number.Draw(t, "y")}
})

var role = rapid.SampledFrom([]Role{Ink, Before, Hot, Body, Soft})

var said = rapid.Custom(func(t *rapid.T) words.Text {
	return words.Text{English: rapid.SampledFrom([]words.English{
		"728 ± 18 mm", "35°", "Front centre 775 mm", "a", "", "M&M <b>", "über dem Tretlagermittelpunkt gemessene " +
			"Sattelhöhe", "\x00\xff", "Reach 460",
	}).Draw(t, "text")}
})

// anyMark draws every kind of mark, some of them with coordinates that are no
// numbers.
var anyMark = rapid.Custom(func(t *rapid.T) Mark {
	p, q := somewhere.Draw(t, "p"), somewhere.Draw(t, "q")
	r := role.Draw(t, "role")
	switch rapid.IntRange(0, 11).Draw(t, "kind") {
	case 0:
		return Line{Role: r, Points: rapid.SliceOfN(somewhere, 0, 6).Draw(t, "points"), Smooth: rapid.Bool().
			Draw(t, "smooth"), Closed: rapid.Bool().Draw(t, "closed"), Fill: Wash}
	case 1:
		return Circle{Role: r, Centre: p, Radius: number.Draw(t, "r")}
	case 2:
		return Angle{Role: r, Vertex: p, Radius: number.Draw(t, "r"), From: number.Draw(t, "from"),
			To: number.Draw(t, "to")}
	case 3:
		return Limb{Role: Body, Fill: Hatch, A: p, B: q, Ra: number.Draw(t, "ra"), Rb: number.Draw(t, "rb")}
	case 4:
		return Wheel{Role: r, Centre: p, Tyre: number.Draw(t, "tyre"), Rim: number.Draw(t, "rim")}
	case 5:
		return Ground{A: p, B: q}
	case 6:
		return Axis{Role: r, A: p, B: q}
	case 7:
		return Cross{Role: r, At: p}
	case 8:
		return Angle{Role: r, Vertex: p, From: number.Draw(t, "from"), To: number.Draw(t, "to"),
			Radius: number.Draw(t, "r"), ArmFrom: 100, ArmTo: 50, Text: said.Draw(t, "text")}
	case 9:
		return Label{Role: r, At: p, Text: said.Draw(t, "text"), Leader: rapid.Bool().Draw(t, "leader"),
			Side: somewhere.Draw(t, "side"), Fixed: rapid.IntRange(0, 3).Draw(t, "fixed") == 0}
	case 10:
		return Tube{Role: r, A: p, B: q, Ra: 20, Rb: 10}
	default:
		along := rapid.SampledFrom([]Point{{}, {1, 0}, {0, 1}, {-0.2, 0.9}}).Draw(t, "along")
		return Dimension{Role: r, A: p, B: q, Along: along, Offset: number.Draw(t, "offset"), Text: said.Draw(t,
			"text")}
	}
})

var anyFigure = rapid.Custom(func(t *rapid.T) *Figure {
	f := figure(rapid.SliceOfN(anyMark, 0, 40).Draw(t, "marks")...)
	if rapid.Bool().Draw(t, "two scenes") {
		f.Frame(words.Of("first"), f.Marks...)
		f.Frame(words.Of("second"), append(rapid.SliceOfN(anyMark, 0, 10).Draw(t, "second"), nil)...)
	}
	if rapid.IntRange(0, 4).Draw(t, "framed") == 0 {
		f.Low, f.High = somewhere.Draw(t, "low"), somewhere.Draw(t, "high")
	}
	return f
})

func TestAnyFigureIsWellFormedWithPrefixedIdsAndNumbersOnly(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		svg := anyFigure.Draw(t, "figure").SVG("saddle-1", nil, 530)
		checked(t, svg, "saddle-1")
	})
}

func TestAnyFigureIsWrittenTheSameTwice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := anyFigure.Draw(t, "figure")
		first := f.SVG("a", nil, 530)
		if again := f.SVG("a", nil, 530); again != first {
			t.Fatal("two writings differ")
		}
	})
}

// corners returns the corners of a placed label.
func corners(w *want) [4]Point {
	u, v := w.chosen.u, w.chosen.u.Left()
	at := w.chosen.at
	return [4]Point{
		at.Along(u, w.hw).Along(v, w.hh), at.Along(u, -w.hw).Along(v, w.hh),
		at.Along(u, -w.hw).Along(v, -w.hh), at.Along(u, w.hw).Along(v, -w.hh),
	}
}

// meets tells, by sampling and not by the code under test, whether two labels
// share ground.
func meets(a, b *want) bool {
	c := corners(a)
	for i := range 21 {
		for j := range 9 {
			s, t := float64(i)/20, float64(j)/8
			p := c[0].Along(c[1].Minus(c[0]), s).Along(c[3].Minus(c[0]), t)
			d := p.Minus(b.chosen.at)
			x, y := d.Dot(b.chosen.u), d.Dot(b.chosen.u.Left())
			if math.Abs(x) < b.hw-1e-6 && math.Abs(y) < b.hh-1e-6 {
				return true
			}
		}
	}
	return false
}

func TestLabelsStayInTheFrameAndOffEachOther(t *testing.T) {
	flag.Set("rapid.checks", "1000")
	defer flag.Set("rapid.checks", "100")
	rapid.Check(t, func(t *rapid.T) {
		f := anyFigure.Draw(t, "figure")
		c := f.arrange(nil, rapid.SampledFrom([]float64{240, 346, 530, 930}).Draw(t, "width")).cells[0]
		s, frame := c.sheet, c.frame
		for i := range s.wants {
			w := &s.wants[i]
			if !w.placed {
				if !w.fixed {
					t.Fatalf("label %v has no place", w.lines)
				}
				continue
			}
			for _, p := range corners(w) {
				if p.X < frame.low.X-1e-6 || p.X > frame.high.X+1e-6 || p.Y < frame.low.Y-1e-6 ||
					p.Y > frame.high.Y+1e-6 {
					t.Fatalf("label %v at %v leaves the frame %v", w.lines, w.chosen.at, frame)
				}
			}
			for j := range i {
				if o := &s.wants[j]; o.placed && (meets(w, o) || meets(o, w)) {
					t.Fatalf("labels %v at %v and %v at %v overlap", w.lines, w.chosen, o.lines, o.chosen)
				}
			}
		}
	})
}

func TestALabelAvoidsALineWhereThereIsRoom(t *testing.T) {
	f := figure(
		Line{Role: Ink, Points: []Point{{0, 0}, {1000, 0}}},
		Line{Role: Ink, Points: []Point{{0, 500}, {1000, 500}}},
		Label{Role: Ink, At: Point{500, 0}, Text: words.Of("here"), Side: Point{0, -1}},
		Dimension{Role: Ink, A: Point{100, 0}, B: Point{100, 500}, Text: words.Of("500")},
	)
	s := f.arrange(nil, 530).cells[0].sheet
	for i := range s.wants {
		w := &s.wants[i]
		for _, g := range s.segments {
			if crosses(w, &w.chosen, g.p, g.q) {
				t.Errorf("label %v stands on the line %v %v", w.lines, g.p, g.q)
			}
		}
	}
}

func TestLettersAreReadableOnAPhone(t *testing.T) {
	f := figure(Wheel{Role: Ink, Centre: Point{}, Tyre: 372, Rim: 311}, Wheel{Role: Ink, Centre: Point{1200, 0},
		Tyre: 372, Rim: 311},
		Dimension{Role: Hot, A: Point{}, B: Point{1200, 0}, Offset: 500, Text: words.Of("Wheelbase 1200 mm")},
		Label{Role: Ink, At: Point{1572, 0}, Text: words.Of("a label of some length"), Side: Point{1, 0}})
	// 390 px less a margin of 16 px on both sides; letters are 13 units high.
	m := regexp.MustCompile(`viewBox="0 0 ([0-9.]+) `).FindStringSubmatch(f.SVG("x", nil, 346))
	width, err := strconv.ParseFloat(m[1], 64)
	if px := 13 * 346 / width; err != nil || px < 12 {
		t.Errorf("letters are %.1f px high on a phone", px)
	}
}

func TestAMarkThatIsNoNumberIsLeftOut(t *testing.T) {
	nan := math.NaN()
	for _, m := range []Mark{
		Line{Role: Ink, Points: []Point{{0, 0}, {nan, 1}}},
		Circle{Role: Ink, Radius: nan}, Circle{Role: Ink, Centre: Point{math.Inf(1), 0}, Radius: 3},
		Limb{Role: Body, A: Point{nan, 0}, Ra: 1, Rb: 1}, Axis{A: Point{0, nan}}, Cross{At: Point{nan, nan}},
		Dimension{Role: Hot, A: Point{nan, 0}, B: Point{1, 1}, Text: words.Of("secret")},
		Dimension{Role: Hot, A: Point{0, 0}, B: Point{1, 1}, Offset: nan, Text: words.Of("secret")},
		Angle{Role: Hot, Vertex: Point{}, From: nan, Radius: 10, Text: words.Of("secret")},
		Label{At: Point{nan, 0}, Text: words.Of("secret")}, Ground{B: Point{nan, 0}}, nil,
	} {
		svg := figure(m).SVG("x", nil, 530)
		checked(t, svg, "x")
		if strings.Contains(svg, "<path") || strings.Contains(svg, "<circle") || strings.Contains(svg, "secret") {
			t.Errorf("%#v was drawn: %s", m, svg)
		}
	}
}

func TestTextIsSaidToTheReader(t *testing.T) {
	r := &words.Reader{Language: words.Speaking(words.Language{Tag: "de"},
		map[words.English]string{"A drawing": "Eine Zeichnung", "here": "hier"})}
	svg := figure(Label{Role: Ink, At: Point{1, 1}, Text: words.Of("here")}).SVG("x", r, 530)
	if !strings.Contains(svg, "Eine Zeichnung") || !strings.Contains(svg, ">hier<") {
		t.Error(svg)
	}
}

// A frame's detail stands below it where the view shows too little, three widths of a line
// or 4.5 pixels, and is left out where it shows enough; letters go on from frame to frame.
func TestAFramesDetailIsThereWhereItIsNeeded(t *testing.T) {
	apart := func(mm float64) Frame {
		return Frame{High: Point{1000, 400}, Marks: []Mark{Line{Role: Ink, Points: []Point{{0, 0}, {1000, 400}}}},
			Details: []Detail{{At: Point{500, 200}, Radius: 50, Caption: words.Of("near"), Apart: mm}}}
	}
	f := &Figure{Title: words.Of("t"), Description: words.Of("d"), Frames: []Frame{apart(300), apart(3), apart(2)}}
	svg := f.SVG("x", nil, 930)
	require.NotContains(t, svg, "C: near")
	require.Contains(t, svg, "A: near")
	require.Contains(t, svg, "B: near")
	f.Frames = []Frame{apart(300), apart(200)}
	require.NotContains(t, f.SVG("x", nil, 930), "near")
}

func TestABroadFrameHasARowOfItsOwn(t *testing.T) {
	one := func(broad bool) Frame {
		return Frame{
			High:  Point{1000, 400},
			Marks: []Mark{Line{Role: Ink, Points: []Point{{0, 0}, {1000, 400}}}},
			Broad: broad,
		}
	}
	f := &Figure{Frames: []Frame{one(true), one(false), one(false)}, Apart: true, Least: 9}
	p := f.arrange(nil, 346)
	require.Greater(t, p.cells[0].scale, 2*p.cells[1].scale)
	require.GreaterOrEqual(t, p.cells[1].y, p.cells[0].height())
	require.InDelta(t, p.cells[1].y, p.cells[2].y, 1e-9)
	require.Greater(t, p.cells[2].x, p.cells[1].width())
}

// TestWhatALanguageLacksIsMarked: a language that has one label of two, a title and no
// description.
func TestWhatALanguageLacksIsMarked(t *testing.T) {
	r := &words.Reader{Language: words.Speaking(words.Language{Tag: "de"}, map[words.English]string{
		"Saddle": "Sattel", "A bike": "Ein Bike", "{0} mm": "{0} mm"})}
	f := &Figure{Title: words.Of("A bike"), Description: words.Of("Seen from the side.")}
	f.Frame(words.Of("Before"),
		Label{Role: Hot, Text: words.Of("Saddle"), At: Point{0, 900}},
		Label{Role: Hot, Text: words.Of("Reach"), At: Point{600, 100}},
		Label{Role: Hot, Text: words.Of("{0} mm", words.Name("450")), At: Point{600, 500}},
		Label{Role: Hot, Text: words.Of("{0}: {1}", words.Of("Stack"), words.Name("620")), At: Point{0, 300}})
	svg := f.SVG("f", r, page)
	for text, marked := range map[string]bool{"Ein Bike": false, "Seen from the side.": true, "Sattel": false,
		"Reach": true, "450 mm": false, "Stack: 620": true, "Before": true} {
		i := strings.Index(svg, ">"+text)
		require.GreaterOrEqual(t, i, 0, text)
		tag := svg[strings.LastIndex(svg[:i], "<"):i]
		assert.Equal(t, marked, strings.Contains(tag, ` lang="en"`), "%s: %s", text, tag)
	}
	assert.NotContains(t, f.SVG("f", nil, page), "lang=")
}

// On a phone a lone detail with long words on both sides is smaller, and none is cut off.
func TestALoneDetailsWordsStayInThePicture(t *testing.T) {
	near := Point{500, 200}
	f := Figure{Marks: []Mark{Line{Points: []Point{{0, 0}, {1000, 400}}}},
		Details: []Detail{{At: near, Radius: 50, Caption: words.Of("near"), Apart: 1, Marks: []Mark{
			Label{At: near.Plus(Point{X: -52}), Text: words.Of("Lenkerdrehung"), Side: Point{X: -1}, Fixed: true},
			Label{At: near.Plus(Point{X: 52}), Text: words.Of("Vorbauwinkel"), Side: Point{X: 1}, Fixed: true},
		}}}}
	const phone = 320
	p := f.arrange(nil, phone)
	if len(p.cells) != 2 {
		t.Fatalf("%d views", len(p.cells))
	}
	if c := p.cells[1]; c.x+c.width() > phone+1e-6 {
		t.Errorf("the detail and its words are %.0f pixels wide", c.x+c.width())
	}
}

// Details of frames that stand below one another share a row below all of them, and have
// one of their own under its frame where it alone has details.
func TestDetailsOfFramesInAColumnStandAbreast(t *testing.T) {
	detail := []Detail{{At: Point{500, 200}, Radius: 50, Apart: 1, Caption: words.Of("near")}}
	frame := func(d []Detail) Frame {
		return Frame{Marks: []Mark{Line{Points: []Point{{0, 0}, {1000, 400}}}}, Details: d}
	}
	const narrow = 300
	p := (&Figure{Least: 20, Frames: []Frame{frame(detail), frame(detail), frame(detail)}}).arrange(nil, narrow)
	require.Len(t, p.cells, 6)
	first, second, third := p.cells[3], p.cells[4], p.cells[5]
	assert.Greater(t, first.y, p.cells[2].y, "below the last frame")
	assert.Equal(t, first.y, second.y)
	assert.GreaterOrEqual(t, second.x, first.x+first.width())
	assert.LessOrEqual(t, second.x+second.width(), narrow+1e-6)
	assert.Zero(t, third.x)
	assert.Greater(t, third.y, first.y+first.height(), "what does not fit begins a row")

	p = (&Figure{Least: 20, Frames: []Frame{frame(detail), frame(nil)}}).arrange(nil, narrow)
	require.Len(t, p.cells, 3)
	assert.NotNil(t, p.cells[1].round, "under its frame")
	assert.Greater(t, p.cells[2].y, p.cells[1].y)
}

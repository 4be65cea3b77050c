package card

import (
	"encoding/xml"
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"math"
	"strconv"
	"strings"

	"golang.org/x/image/vector"
)

type point struct{ x, y float64 }

// courses are the lines of a path or a circle, curves as short straight pieces.
func courses(e xml.StartElement) ([][]point, error) {
	if e.Name.Local == "path" {
		return course(value(e, "d"))
	}
	var n [3]float64
	for i, name := range []string{"cx", "cy", "r"} {
		var err error
		if n[i], err = strconv.ParseFloat(value(e, name), 64); err != nil {
			return nil, fmt.Errorf("a circle of the drawing has no %s: %w", name, err)
		}
	}
	var out []point
	const pieces = 72
	for i := range pieces + 1 {
		a := 2 * math.Pi * float64(i) / pieces
		out = append(out, point{n[0] + n[2]*math.Cos(a), n[1] + n[2]*math.Sin(a)})
	}
	return [][]point{out}, nil
}

// course reads the path data that package drawing writes (SVG 1.1, 8.3): M, L, C, S, A, Z,
// with places as they are where the letter is large, and as seen from the last where it is small.
func course(d string) (list [][]point, err error) {
	r := &pathReader{rest: d}
	var at, start, control point
	var letter byte
	add := func(p point) {
		list[len(list)-1] = append(list[len(list)-1], p)
		at = p
	}
	for r.more() {
		if c := r.letter(); c != 0 {
			letter = c
		}
		if letter != 'M' && len(list) == 0 {
			return nil, fmt.Errorf("the path “%s” begins nowhere", d)
		}
		before := at
		r.from = point{}
		if letter >= 'a' {
			r.from = at
		}
		switch letter &^ ('a' - 'A') {
		case 'M':
			at = r.point()
			start, letter = at, letter-1 // L or l
			list = append(list, []point{at})
		case 'L':
			add(r.point())
		case 'C', 'S':
			first := point{2*at.x - control.x, 2*at.y - control.y}
			if letter == 'C' || letter == 'c' {
				first = r.point()
			}
			second, end := r.point(), r.point()
			for i := range 12 {
				add(bezier(before, first, second, end, float64(i+1)/12))
			}
			control = second
		case 'A':
			radius := r.number()
			r.number()
			r.number()
			large, clockwise := r.number() != 0, r.number() != 0
			for _, p := range arc(at, r.point(), radius, large, clockwise) {
				add(p)
			}
		case 'Z':
			add(start)
			letter = 0
		default:
			return nil, fmt.Errorf("the path “%s” has the letter “%c”, which is not painted", d, letter)
		}
		if strings.IndexByte("CScs", letter) < 0 {
			control = at
		}
		if r.err != nil {
			return nil, fmt.Errorf("the path “%s” cannot be read: %w", d, r.err)
		}
	}
	return list, nil
}

func bezier(a, b, c, d point, t float64) point {
	u := 1 - t
	mix := func(a, b, c, d float64) float64 { return u*u*u*a + 3*u*u*t*b + 3*u*t*t*c + t*t*t*d }
	return point{mix(a.x, b.x, c.x, d.x), mix(a.y, b.y, c.y, d.y)}
}

// arc is the arc of a circle from a to b in short pieces (SVG 1.1, F.6.5, for a circle).
func arc(a, b point, radius float64, large, clockwise bool) (list []point) {
	dx, dy := b.x-a.x, b.y-a.y
	chord := math.Hypot(dx, dy)
	if chord == 0 || radius == 0 {
		return []point{b}
	}
	radius = max(radius, chord/2)
	off := math.Sqrt(max(radius*radius-chord*chord/4, 0)) / chord
	if large == clockwise {
		off = -off
	}
	cx, cy := (a.x+b.x)/2-dy*off, (a.y+b.y)/2+dx*off
	from, to := math.Atan2(a.y-cy, a.x-cx), math.Atan2(b.y-cy, b.x-cx)
	if clockwise && to < from {
		to += 2 * math.Pi
	} else if !clockwise && to > from {
		to -= 2 * math.Pi
	}
	n := max(int(math.Abs(to-from)/0.12), 2)
	for i := 1; i < n; i++ {
		t := from + (to-from)*float64(i)/float64(n)
		list = append(list, point{cx + radius*math.Cos(t), cy + radius*math.Sin(t)})
	}
	return append(list, b)
}

// pathReader reads the letters and numbers of path data.
type pathReader struct {
	rest string
	from point // places are seen from here
	err  error
}

func (r *pathReader) more() bool {
	r.rest = strings.TrimLeft(r.rest, " ,")
	return r.rest != "" && r.err == nil
}

// letter returns the letter that stands next, 0 where a number does.
func (r *pathReader) letter() (c byte) {
	if c = r.rest[0]; c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' {
		r.rest = r.rest[1:]
		return c
	}
	return 0
}

func (r *pathReader) number() float64 {
	r.more()
	end := 0
	if strings.HasPrefix(r.rest, "-") {
		end++
	}
	for end < len(r.rest) && strings.IndexByte("0123456789.", r.rest[end]) >= 0 {
		end++
	}
	x, err := strconv.ParseFloat(r.rest[:end], 64)
	if err != nil && r.err == nil {
		r.err = err
	}
	r.rest = r.rest[end:]
	return x
}

func (r *pathReader) point() point {
	x := r.from.x + r.number()
	return point{x, r.from.y + r.number()}
}

// fill paints what lies within lines.
func fill(img draw.Image, lines [][]point, c color.Color) {
	z := vector.NewRasterizer(img.Bounds().Dx(), img.Bounds().Dy())
	for _, l := range lines {
		outline(z, l)
	}
	z.Draw(img, img.Bounds(), image.NewUniform(c), image.Point{})
}

func outline(z *vector.Rasterizer, l []point) {
	for i, p := range l {
		if i == 0 {
			z.MoveTo(float32(p.x), float32(p.y))
		} else {
			z.LineTo(float32(p.x), float32(p.y))
		}
	}
	z.ClosePath()
}

// stroke paints lines of a width with round joins: a strip for each piece, and a disc at
// each end of one. All run the same way round, so that what overlaps is painted once.
func stroke(img draw.Image, lines [][]point, width float64, c color.Color) {
	z := vector.NewRasterizer(img.Bounds().Dx(), img.Bounds().Dy())
	half := width / 2
	for _, l := range lines {
		for i, p := range l {
			disc(z, p, half)
			if i == 0 {
				continue
			}
			q := l[i-1]
			dx, dy := p.x-q.x, p.y-q.y
			long := math.Hypot(dx, dy)
			if long == 0 {
				continue
			}
			nx, ny := -dy/long*half, dx/long*half
			outline(z, []point{{q.x - nx, q.y - ny}, {p.x - nx, p.y - ny}, {p.x + nx, p.y + ny}, {q.x + nx, q.y + ny}})
		}
	}
	z.Draw(img, img.Bounds(), image.NewUniform(c), image.Point{})
}

func disc(z *vector.Rasterizer, at point, radius float64) {
	const corners = 10
	var l []point
	for i := range corners {
		a := 2 * math.Pi * float64(i) / corners
		l = append(l, point{at.x + radius*math.Cos(a), at.y + radius*math.Sin(a)})
	}
	outline(z, l)
}

// dashed cuts lines into dashes with gaps between them.
func dashed(lines [][]point, dash, gap float64) (out [][]point) {
	for _, l := range lines {
		on, left := true, dash
		for i := 1; i < len(l); i++ {
			a, b := l[i-1], l[i]
			long := math.Hypot(b.x-a.x, b.y-a.y)
			for done := 0.0; done < long; {
				step := min(left, long-done)
				at := func(t float64) point { return point{a.x + (b.x-a.x)*t/long, a.y + (b.y-a.y)*t/long} }
				if on {
					out = append(out, []point{at(done), at(done + step)})
				}
				done += step
				if left -= step; left <= 1e-9 {
					on = !on
					left = dash
					if !on {
						left = gap
					}
				}
			}
		}
	}
	return out
}

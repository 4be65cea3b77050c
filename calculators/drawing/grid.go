package drawing

// grid sorts segments into square cells, so that a label looks only at those
// near it.
type grid struct {
	low        Point
	perMM      float64 // cells per mm
	cols, rows int
	starts     []uint16 // where each cell's list begins in items
	items      []uint16 // indices of segments
}

// The grid's greatest width in cells, and a cell's size in heights of the
// letters where that allows it.
const (
	mostCells = 32
	cellSize  = 1.8
)

// span returns the cells that the rectangle touches, ends included; what lies
// outside the grid belongs to its outermost cells.
func (g *grid) span(low, high Point) (c0, c1, r0, r1 int) {
	lastCol, lastRow := g.cols-1, g.rows-1
	c0, c1 = int((low.X-g.low.X)*g.perMM), int((high.X-g.low.X)*g.perMM)
	r0, r1 = int((low.Y-g.low.Y)*g.perMM), int((high.Y-g.low.Y)*g.perMM)
	return max(0, min(lastCol, c0)), max(0, min(lastCol, c1)), max(0, min(lastRow, r0)), max(0, min(lastRow, r1))
}

// sortIn fills the grid with segments over a frame. It takes as many as its
// indices can count.
func (g *grid) sortIn(segments []segment, frame bounds, em float64) {
	across, down := frame.high.X-frame.low.X, frame.high.Y-frame.low.Y
	size := max(cellSize*em, max(across, down)/mostCells)
	g.low, g.perMM = frame.low, 1/size
	g.cols, g.rows = int(across/size)+1, int(down/size)+1
	counts := make([]uint16, g.cols*g.rows+1)
	total := 0
	for i := range segments {
		s := &segments[i]
		low, high := box(s.p, s.q)
		c0, c1, r0, r1 := g.span(low, high)
		s.col, s.lastCol, s.row, s.lastRow = uint8(c0), uint8(c1), uint8(r0), uint8(r1)
		if total += (c1 - c0 + 1) * (r1 - r0 + 1); total > 65000 {
			segments = segments[:i]
			break
		}
		for r := r0; r <= r1; r++ {
			for c := c0; c <= c1; c++ {
				counts[r*g.cols+c]++
			}
		}
	}
	sum := uint16(0)
	for i, n := range counts {
		sum += n
		counts[i] = sum
	}
	// Filled from the back, each count ends up where its cell's list begins.
	g.starts, g.items = counts, make([]uint16, sum)
	for i := len(segments) - 1; i >= 0; i-- {
		s := &segments[i]
		for r := int(s.row); r <= int(s.lastRow); r++ {
			for c := int(s.col); c <= int(s.lastCol); c++ {
				at := &counts[r*g.cols+c]
				*at--
				g.items[*at] = uint16(i)
			}
		}
	}
}

// weigh adds up the weights of the segments whose upright box meets the given one,
// with a label only of those that run through it, until the sum reaches enough. It
// looks at thousands of segments a figure, so it calls nothing for most of them; min
// and max of floats are slow calls in a browser too, as they look for NaN.
func (s *sheet) weigh(low, high Point, w *want, p *place, enough float64) (sum float64) {
	g := &s.grid
	c0, c1, r0, r1 := g.span(low, high)
	for r := r0; r <= r1; r++ {
		for c := c0; c <= c1; c++ {
			cell := r*g.cols + c
			for _, i := range g.items[g.starts[cell]:g.starts[cell+1]] {
				l := &s.segments[i]
				// A segment in several cells counts in the first that both share.
				if max(int(l.col), c0) != c || max(int(l.row), r0) != r ||
					l.p.X >= high.X && l.q.X >= high.X || l.p.X <= low.X && l.q.X <= low.X ||
					l.p.Y >= high.Y && l.q.Y >= high.Y || l.p.Y <= low.Y && l.q.Y <= low.Y ||
					w != nil && !crosses(w, p, l.p, l.q) {
					continue
				}
				if sum += l.weight; sum >= enough {
					return sum
				}
			}
		}
	}
	return sum
}

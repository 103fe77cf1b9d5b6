package drawing

import (
	"math"
	"slices"
)

// A scheme is the layout of a schematic: boxes of parts in rows, and between the
// rows the lettering of the lines that join them, so that a line never passes
// through anything but its own lettering. Row 0 is the base that the others hang
// on; even rows hold parts, odd rows lettering, and a higher row lies higher on the
// paper. It follows Sugiyama, Tagawa and Toda (1981) in three steps: rows are given,
// each row is put in order, and then in place.
type scheme struct {
	cells []cell
	wires []wire
	rows  map[int][]int // cells from left to right
}

// A cell is what takes room in a row.
type cell struct {
	of      []int // the part, or in an odd row the line or the two lines, that it stands for
	row     int
	need    Point // least width and height: of a part, that of its lettering
	loop    bool  // the lettering of a line both ends of which come from one side
	base    bool  // the part that neighbouring schemes share
	crossed bool  // the boundary runs above it
	at      Box
}

// A wire is half of a line: from a part to the line's lettering.
type wire struct {
	line        int     // whose half it is
	part, label int     // cells
	to          bool    // the flow goes from the lettering to the part
	end         string  // what is written where it leaves the part
	last        bool    // it meets the right edge of the lettering, not the left one
	x           float64 // where it leaves the part
	written     float64 // middle of what is written there
	level       float64 // y of its level piece, if it has one
}

const (
	cellGap   = 4.0 // between cells of a row, mm
	portGap   = 2.0 // between what is written at two ports, mm
	boxMargin = 2.0 // between the end of a box and the first wire, mm
	near      = 1.0 // below this, two upright pieces of wires touch, mm
)

// foot is where a wire meets its lettering.
func (s *scheme) foot(w wire) float64 {
	if w.last {
		return s.cells[w.label].at.Max.X
	}
	return s.cells[w.label].at.Min.X
}

// up tells whether a wire leaves its part upwards.
func (s *scheme) up(w wire) bool { return s.cells[w.label].row > s.cells[w.part].row }

// levels are the rows that there are, the lowest first.
func (s *scheme) levels() []int {
	var all []int
	for row := range s.rows {
		all = append(all, row)
	}
	slices.Sort(all)
	return all
}

// settle puts the cells of a scheme in order and finds their places from left to
// right: from 0 to a width, if every row fits between.
func (s *scheme) settle(width float64) {
	s.rows = map[int][]int{}
	for i, c := range s.cells {
		s.rows[c.row] = append(s.rows[c.row], i)
	}
	s.widen()
	s.order()
	s.pairFeet()
	s.spreadRows(width)
}

// pairFeet lets the two wires of a loop meet their lettering at either end.
func (s *scheme) pairFeet() {
	at := s.positions()
	first := map[int]int{}
	for i := range s.wires {
		w := &s.wires[i]
		if !s.cells[w.label].loop {
			continue
		}
		other, second := first[w.label]
		if !second {
			first[w.label] = i
			continue
		}
		s.wires[other].last = at[s.wires[other].part] > at[w.part]
		w.last = !s.wires[other].last
	}
}

// positions are the places of the cells within their rows.
func (s *scheme) positions() []int {
	at := make([]int, len(s.cells))
	for _, row := range s.rows {
		for i, c := range row {
			at[c] = i
		}
	}
	return at
}

// spreadRows finds the places from left to right: every cell as near as may be to
// the middle of those that it is joined to.
func (s *scheme) spreadRows(width float64) {
	for _, row := range s.rows {
		x := 0.0
		for _, c := range row {
			s.cells[c].at.Min.X, s.cells[c].at.Max.X = x, x+s.cells[c].need.X
			x += s.cells[c].need.X + cellGap
		}
	}
	levels := s.levels()
	const rounds = 12
	for range rounds {
		for _, row := range levels {
			s.spreadRow(s.rows[row], width)
		}
		slices.Reverse(levels)
	}
	s.shift(-s.extent().Min.X)
}

func (s *scheme) spreadRow(row []int, width float64) {
	wanted, widths := make([]float64, len(row)), make([]float64, len(row))
	from, to := 0.0, width
	if s.cells[row[0]].row%2 != 0 {
		from, to = from+boxMargin, to-boxMargin
	}
	for i, c := range row {
		sum, n := 0.0, 0
		for _, w := range s.wires {
			switch c {
			case w.part:
				sum, n = sum+s.cells[w.label].at.Middle().X, n+1
			case w.label:
				sum, n = sum+s.cells[w.part].at.Middle().X, n+1
			}
		}
		wanted[i], widths[i] = s.cells[c].at.Middle().X, s.cells[c].need.X
		if n > 0 {
			wanted[i] = sum / float64(n)
		}
	}
	for i, x := range spread(wanted, widths, cellGap, from, to) {
		at := &s.cells[row[i]].at
		at.Min.X, at.Max.X = x-widths[i]/2, x+widths[i]/2
	}
}

// extent is the room from left to right that the scheme takes, with that which parts
// need to reach over the feet of their wires.
func (s *scheme) extent() Box {
	b := Box{Point{X: math.Inf(1)}, Point{X: math.Inf(-1)}}
	for _, c := range s.cells {
		b.Min.X, b.Max.X = min(b.Min.X, c.at.Min.X), max(b.Max.X, c.at.Max.X)
	}
	for _, w := range s.wires {
		b.Min.X, b.Max.X = min(b.Min.X, s.foot(w)-boxMargin), max(b.Max.X, s.foot(w)+boxMargin)
	}
	return b
}

func (s *scheme) shift(by float64) {
	for i := range s.cells {
		s.cells[i].at.Min.X += by
		s.cells[i].at.Max.X += by
	}
	for i := range s.wires {
		s.wires[i].x += by
		s.wires[i].written += by
	}
}

// spread finds middles for intervals of given widths that keep a gap, their order
// and the bounds, as near as can be to the middles wanted in the sense of least
// squares: isotonic regression, by pooling neighbours that are in each other's way.
// What does not fit between the bounds begins at the lower one.
func spread(wanted, widths []float64, gap, from, to float64) []float64 {
	type pool struct {
		sum float64
		n   int
	}
	offset := make([]float64, len(wanted)) // of each middle, were they all to touch
	for i := 1; i < len(offset); i++ {
		offset[i] = offset[i-1] + (widths[i-1]+widths[i])/2 + gap
	}
	var pools []pool
	for i, want := range wanted {
		pools = append(pools, pool{want - offset[i], 1})
		for n := len(pools); n > 1; n = len(pools) {
			a, b := pools[n-2], pools[n-1]
			if a.sum/float64(a.n) <= b.sum/float64(b.n) {
				break
			}
			pools = append(pools[:n-2], pool{a.sum + b.sum, a.n + b.n})
		}
	}
	out := make([]float64, 0, len(wanted))
	for _, p := range pools {
		for range p.n {
			i := len(out)
			last := len(wanted) - 1
			x := min(p.sum/float64(p.n), to-widths[last]/2-offset[last])
			out = append(out, max(x, from+widths[0]/2)+offset[i])
		}
	}
	return out
}

// ends tells whether anything is written at the wires above and below a part: 1 for
// yes.
func (s *scheme) ends(part int) (above, below int) {
	for _, w := range s.wires {
		switch {
		case w.part != part || w.end == "":
		case s.up(w):
			above = 1
		default:
			below = 1
		}
	}
	return above, below
}

// height is the room from top to bottom that a cell takes: a part's lettering has
// what is written at its wires above and below it.
func (s *scheme) height(c int) float64 {
	need := s.cells[c].need.Y
	if s.cells[c].row%2 != 0 {
		return need
	}
	above, below := s.ends(c)
	return need + 2*boxPad + float64(above+below)*Lettering*leading
}

// widen makes parts and lettering as wide as what is written at their wires asks.
func (s *scheme) widen() {
	above, below := make([]float64, len(s.cells)), make([]float64, len(s.cells))
	for _, w := range s.wires {
		width := Width(w.end, Lettering)
		if s.up(w) {
			above[w.part] += width + portGap
		} else {
			below[w.part] += width + portGap
		}
		s.cells[w.label].need.X = max(s.cells[w.label].need.X, width)
	}
	for i := range s.cells {
		if c := &s.cells[i]; c.row%2 == 0 {
			c.need.X = max(c.need.X, above[i], below[i]) + 2*boxMargin
		}
	}
}

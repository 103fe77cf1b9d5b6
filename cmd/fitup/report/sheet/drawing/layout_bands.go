package drawing

import (
	"cmp"
	"slices"
)

const bandGap = 10.0 // between bands, mm

// arrange lays a scheme out on paper of a width: what hangs together stays
// together, and what does not goes side by side in bands, each with a base of its
// own. It returns the bands and where the last of them ends.
func (s *scheme) arrange(width, top float64) (bands []*scheme, bottom float64) {
	for _, parts := range bandsOf(s.split(width), width) {
		band := join(parts)
		if len(bands) > 0 {
			top = bottom + bandGap
		}
		band.route(top)
		bands, bottom = append(bands, band), band.bottom()
	}
	return bands, bottom
}

// split takes a scheme apart into those that hang together without their base, and
// settles each. Each keeps a base of its own, if it had one.
func (s *scheme) split(width float64) []*scheme {
	group := make([]int, len(s.cells))
	for i := range group {
		group[i] = i
	}
	root := func(c int) int {
		for group[c] != c {
			c = group[c]
		}
		return c
	}
	for _, w := range s.wires {
		if !s.cells[w.part].base {
			a, b := root(w.part), root(w.label)
			group[max(a, b)] = min(a, b)
		}
	}
	var all []*scheme
	for first, c := range s.cells {
		if root(first) == first && !c.base {
			part := s.only(func(c int) bool { return root(c) == first })
			part.settle(width)
			all = append(all, part)
		}
	}
	return all
}

// only is the scheme of some cells, of the wires that lead to their lettering, and
// of the base if one of those does.
func (s *scheme) only(keep func(cell int) bool) *scheme {
	part, number := &scheme{}, map[int]int{}
	enter := func(c int) int {
		if _, known := number[c]; !known {
			number[c] = len(part.cells)
			part.cells = append(part.cells, s.cells[c])
		}
		return number[c]
	}
	for c := range s.cells {
		if keep(c) {
			enter(c)
		}
	}
	for _, w := range s.wires {
		if keep(w.label) {
			w.part, w.label = enter(w.part), enter(w.label)
			part.wires = append(part.wires, w)
		}
	}
	return part
}

// bandsOf moves schemes beside each other, as many to a band as a width takes. What
// lies wholly below the base may come to lie under what lies wholly above it.
func bandsOf(schemes []*scheme, width float64) [][]*scheme {
	var bands [][]*scheme
	var above, below float64
	for _, s := range schemes {
		high, low := s.reaches()
		x := 0.0
		if high {
			x = above
		}
		if low {
			x = max(x, below)
		}
		if len(bands) == 0 || x > 0 && x+s.extent().Width() > width {
			bands, above, below, x = append(bands, nil), 0, 0, 0
		}
		s.shift(x - s.extent().Min.X)
		last := len(bands) - 1
		bands[last] = append(bands[last], s)
		if high {
			above = s.extent().Max.X + cellGap
		}
		if low {
			below = s.extent().Max.X + cellGap
		}
	}
	return bands
}

// reaches tells whether a scheme takes room above its base and below it. Parts that
// stand beside the base take both.
func (s *scheme) reaches() (above, below bool) {
	for _, c := range s.cells {
		above = above || c.row > 0 || c.row == 0 && !c.base
		below = below || c.row < 0 || c.row == 0 && !c.base
	}
	return above, below
}

// join makes one scheme of those in a band. Bases with nothing between them become
// one.
func join(schemes []*scheme) *scheme {
	band := &scheme{rows: map[int][]int{}}
	for _, s := range schemes {
		first := len(band.cells)
		band.cells = append(band.cells, s.cells...)
		for _, w := range s.wires {
			w.part, w.label = w.part+first, w.label+first
			band.wires = append(band.wires, w)
		}
	}
	for i, c := range band.cells {
		band.rows[c.row] = append(band.rows[c.row], i)
	}
	for _, row := range band.rows {
		slices.SortStableFunc(row, func(a, b int) int { return cmp.Compare(band.cells[a].at.Min.X, band.cells[b].at.Min.X) })
	}
	band.mergeBases()
	return band
}

// mergeBases leads the wires of neighbouring bases to the first of them. The others
// are in no row any more, and so not drawn.
func (s *scheme) mergeBases() {
	var kept []int
	for _, c := range s.rows[0] {
		if n := len(kept); n == 0 || !s.cells[c].base || !s.cells[kept[n-1]].base {
			kept = append(kept, c)
			continue
		}
		base := kept[len(kept)-1]
		s.cells[base].at.Max.X = max(s.cells[base].at.Max.X, s.cells[c].at.Max.X)
		for i := range s.wires {
			if s.wires[i].part == c {
				s.wires[i].part = base
			}
		}
	}
	s.rows[0] = kept
}

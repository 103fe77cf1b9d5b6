package drawing

import (
	"cmp"
	"maps"
	"slices"
)

// order puts every row in an order in which few wires cross: each cell goes to the
// mean of those that it is joined to, row by row, up and down. The first of the best
// orders is kept, so that the same spec always gives the same drawing.
func (s *scheme) order() {
	levels := s.levels()
	best, fewest := s.copyRows(), s.crossings()
	const sweeps = 8
	for range sweeps {
		for i := 1; i < len(levels); i++ {
			s.orderRow(levels[i], levels[i-1])
		}
		slices.Reverse(levels)
		if n := s.crossings(); n < fewest {
			best, fewest = s.copyRows(), n
		}
	}
	s.rows = best
}

func (s *scheme) copyRows() map[int][]int {
	rows := maps.Clone(s.rows)
	for row, cells := range rows {
		rows[row] = slices.Clone(cells)
	}
	return rows
}

// orderRow sorts a row by the places of what its cells are joined to in the row
// beside it; a cell that is joined to nothing there keeps its place.
func (s *scheme) orderRow(row, beside int) {
	at := s.positions()
	mean := map[int]float64{}
	for i, c := range s.rows[row] {
		sum, n := 0, 0
		for _, w := range s.wires {
			far := w.label
			if c == w.label {
				far = w.part
			} else if c != w.part {
				continue
			}
			if s.cells[far].row == beside {
				sum, n = sum+at[far], n+1
			}
		}
		mean[c] = float64(i)
		if n > 0 {
			mean[c] = float64(sum) / float64(n)
		}
	}
	slices.SortStableFunc(s.rows[row], func(a, b int) int { return cmp.Compare(mean[a], mean[b]) })
}

// crossings counts the pairs of wires between two rows that cross.
func (s *scheme) crossings() int {
	at := s.positions()
	n := 0
	for i, a := range s.wires {
		for _, b := range s.wires[:i] {
			if s.cells[a.label].row == s.cells[b.label].row && s.cells[a.part].row == s.cells[b.part].row &&
				cmp.Compare(at[a.part], at[b.part])*cmp.Compare(at[a.label], at[b.label]) < 0 {
				n++
			}
		}
	}
	return n
}

package drawing

import (
	"cmp"
	"math"
	"slices"
)

const (
	trackPitch = 2.5 // between level pieces of wires, mm
	partSide   = 4.2 // of a channel kept straight beside the parts, for arrowheads, mm
	baseSide   = 9.5 // the same where the joints of the boundary are marked
	labelSide  = 1.5 // the same beside the lettering
)

// A side is the channel above or below one row of parts.
type side struct {
	row int
	up  bool
}

// route finds the rest: how wide the boxes of parts are, where wires leave them,
// where they run level, and the places of the rows from the top of the paper down.
func (s *scheme) route(top float64) {
	s.stretch()
	s.straighten()
	s.stretch()
	tracks := map[side]map[int]int{}
	for _, row := range s.levels() {
		if row%2 != 0 {
			continue
		}
		for _, up := range []bool{false, true} {
			channel := side{row, up}
			s.leave(channel)
			tracks[channel] = s.tracks(channel)
		}
	}
	s.stack(top, tracks)
}

// stretch widens the box of each part over the wires that lead to it, as far as its
// row has room: a wire is straight then.
func (s *scheme) stretch() {
	for _, row := range s.levels() {
		if row%2 != 0 {
			continue
		}
		edge := math.Inf(-1)
		cells := s.rows[row]
		for i, c := range cells {
			at := &s.cells[c].at
			left, right := at.Min.X, at.Max.X
			for _, w := range s.wires {
				if w.part == c {
					left, right = min(left, s.foot(w)-boxMargin), max(right, s.foot(w)+boxMargin)
				}
			}
			if i+1 < len(cells) {
				right = min(right, s.cells[cells[i+1]].at.Min.X-cellGap)
			}
			at.Min.X, at.Max.X = max(left, edge), max(right, at.Max.X)
			edge = at.Max.X + cellGap
		}
	}
}

// straighten moves lettering over what both of its parts reach, as far as its row
// has room: its line is straight then.
func (s *scheme) straighten() {
	room := s.extent()
	for _, row := range s.levels() {
		if row%2 == 0 {
			continue
		}
		cells := s.rows[row]
		wanted, widths := make([]float64, len(cells)), make([]float64, len(cells))
		for i, c := range cells {
			at := s.cells[c].at
			low, high := math.Inf(-1), math.Inf(1)
			for _, w := range s.wires {
				if w.label == c && !s.cells[c].loop {
					part := s.cells[w.part].at
					low, high = max(low, part.Min.X+boxMargin), min(high, part.Max.X-boxMargin)
				}
			}
			widths[i] = at.Width()
			wanted[i] = max(low, min(at.Min.X, high)) + widths[i]/2
		}
		for i, x := range spread(wanted, widths, cellGap, room.Min.X+boxMargin, room.Max.X-boxMargin) {
			at := &s.cells[cells[i]].at
			at.Min.X, at.Max.X = x-widths[i]/2, x+widths[i]/2
		}
	}
}

// in lists the wires of a channel by part and place.
func (s *scheme) in(channel side) []int {
	var all []int
	for i, w := range s.wires {
		if s.cells[w.part].row == channel.row && s.up(w) == channel.up {
			all = append(all, i)
		}
	}
	slices.SortStableFunc(all, func(a, b int) int {
		return cmp.Or(
			cmp.Compare(s.cells[s.wires[a].part].at.Min.X, s.cells[s.wires[b].part].at.Min.X),
			cmp.Compare(s.foot(s.wires[a]), s.foot(s.wires[b])))
	})
	return all
}

// leave finds where each wire of a channel leaves its part: straight on to where it
// is going, unless what is written there has to be further from that than it is wide.
func (s *scheme) leave(channel side) {
	all := s.in(channel)
	for len(all) > 0 {
		part := s.wires[all[0]].part
		n := 1
		for n < len(all) && s.wires[all[n]].part == part {
			n++
		}
		wanted, widths := make([]float64, n), make([]float64, n)
		for i, w := range all[:n] {
			wanted[i], widths[i] = s.foot(s.wires[w]), Width(s.wires[w].end, Lettering)
		}
		at := s.cells[part].at
		for i, x := range spread(wanted, widths, portGap, at.Min.X+boxMargin, at.Max.X-boxMargin) {
			w := &s.wires[all[i]]
			w.x, w.written = x, x
			if foot := s.foot(*w); math.Abs(foot-x) <= max(widths[i]/2, near)+near && at.Min.X+near < foot && foot < at.Max.X-near {
				w.x = foot
			}
		}
		all = all[n:]
	}
}

// straight tells whether a wire needs no level piece.
func (s *scheme) straight(w wire) bool { return math.Abs(w.x-s.foot(w)) < 0.01 }

// tracks deals the level pieces of the wires of a channel to as many heights as it
// takes, so that no two lie on each other: the first nearest to the parts. A wire
// that leaves its part where another comes to its lettering has to turn off first.
func (s *scheme) tracks(channel side) map[int]int {
	var waiting []int
	for _, i := range s.in(channel) {
		if !s.straight(s.wires[i]) {
			waiting = append(waiting, i)
		}
	}
	track := map[int]int{}
	for len(waiting) > 0 {
		next := slices.IndexFunc(waiting, func(i int) bool {
			return !slices.ContainsFunc(waiting, func(j int) bool { return i != j && s.turnsFirst(j, i) })
		})
		next = max(next, 0) // wires that go round each other: one of them crosses its fellow's piece
		i := waiting[next]
		waiting = slices.Delete(waiting, next, next+1)
		t := 0
		for j, taken := range track {
			if s.turnsFirst(j, i) {
				t = max(t, taken+1)
			}
		}
		for s.taken(track, t, i) {
			t++
		}
		track[i] = t
	}
	return track
}

// turnsFirst tells whether a wire has to turn off nearer to the parts than another,
// because it leaves its part where that comes to its lettering.
func (s *scheme) turnsFirst(i, j int) bool { return math.Abs(s.wires[i].x-s.foot(s.wires[j])) < near }

func (s *scheme) taken(track map[int]int, t, i int) bool {
	low, high := s.span(i)
	for j, taken := range track {
		if from, to := s.span(j); taken == t && from-near < high && low-near < to {
			return true
		}
	}
	return false
}

// span is what the level piece of a wire covers.
func (s *scheme) span(i int) (low, high float64) {
	a, b := s.wires[i].x, s.foot(s.wires[i])
	return min(a, b), max(a, b)
}

// stack finds the heights of rows and channels, from the top of the paper down.
func (s *scheme) stack(top float64, tracks map[side]map[int]int) {
	levels := s.levels()
	slices.Reverse(levels)
	y := top
	for i, row := range levels {
		if i > 0 {
			y += s.channel(row, levels[i-1], y, tracks)
		}
		height := 0.0
		for _, c := range s.rows[row] {
			height = max(height, s.height(c))
		}
		for _, c := range s.rows[row] {
			cell := &s.cells[c]
			cell.at.Min.Y, cell.at.Max.Y = y, y+height
			if row%2 != 0 { // lettering keeps its own height, a loop near its parts
				if cell.loop && row > 0 {
					cell.at.Min.Y = y + height - cell.need.Y
				}
				cell.at.Max.Y = cell.at.Min.Y + cell.need.Y
			}
		}
		y += height
	}
}

// channel sets the level pieces between a row and the one above it, and returns how
// high the channel is.
func (s *scheme) channel(row, above int, y float64, tracks map[side]map[int]int) float64 {
	channel := side{row, true}
	if row%2 != 0 {
		channel = side{above, false}
	}
	beside := partSide
	if channel.up && slices.ContainsFunc(s.rows[row], func(c int) bool { return s.cells[c].crossed }) {
		beside = baseSide
	}
	most := 0
	for _, t := range tracks[channel] {
		most = max(most, t)
	}
	height := beside + labelSide + trackPitch*float64(most)
	for i, t := range tracks[channel] {
		off := beside + trackPitch*float64(t)
		if channel.up {
			s.wires[i].level = y + height - off
		} else {
			s.wires[i].level = y + off
		}
	}
	return height
}

// bottom is where the last row ends.
func (s *scheme) bottom() float64 {
	y := 0.0
	for _, c := range s.cells {
		y = max(y, c.at.Max.Y)
	}
	return y
}

// run is the way of a wire on the paper, from the part to its lettering.
func (s *scheme) run(w wire) []Point {
	part, label := s.cells[w.part].at, s.cells[w.label]
	from, to := part.Min.Y, label.at.Max.Y
	if !s.up(w) {
		from, to = part.Max.Y, label.at.Min.Y
	}
	foot := s.foot(w)
	points := []Point{{w.x, from}}
	if !s.straight(w) {
		points = append(points, Point{w.x, w.level}, Point{foot, w.level})
	}
	return append(points, Point{foot, to})
}

package drawing

import (
	"math"
	"slices"
)

// A label is lettering about a point that may stand where there is room.
type label struct {
	of    string  // what it is about, for its group
	at    Point   // the point
	clear float64 // radius of what is drawn there, mm
	away  Point   // a direction that it had better lie in; its length is how much, zero for any
	over  bool    // it may lie over the point
	led   bool    // it is led to the point even when it lies at it: other marks are near
	lines []string
	tone  Tone
}

// A plate is what labels have to find room on.
type plate struct {
	frame Box
	taken []Box      // where no label may lie
	drawn [][2]Point // lines that labels had better not lie on
}

const (
	beside   = 1.0 // between a mark and the label at it, mm
	labelGap = 0.8 // kept clear round a label, mm
	step     = 3.0 // from one ring of candidates to the next, mm
	rings    = 24
	rays     = 16
	passes   = 4   // in which labels are moved to make way for each other
	leader   = 4.0 // from which distance on a label is led to its point, mm
)

// draw adds to the plate what is drawn by marks: outlines, and rooms of lettering.
func (p *plate) draw(marks ...Mark) {
	for _, m := range marks {
		switch m := m.(type) {
		case Text:
			p.taken = append(p.taken, m.Box())
		case Dimension:
			p.draw(m.marks()...)
		case Group:
			p.draw(m.Marks...)
		case Circle:
			p.taken = append(p.taken, Around(m.At, 2*m.Radius, 2*m.Radius))
		case Path:
			if m.Fill == Solid || m.Fill == Paper { // a sign, or something that stands on top
				p.taken = append(p.taken, around(m.Points))
				continue
			}
			for i := 1; i < len(m.Points); i++ {
				p.drawn = append(p.drawn, [2]Point{m.Points[i-1], m.Points[i]})
			}
			if m.Closed {
				p.drawn = append(p.drawn, [2]Point{m.Points[len(m.Points)-1], m.Points[0]})
			}
		}
	}
}

// A placed label has its room.
type placed struct {
	label
	room Box
}

// letter finds room for labels: first one after the other, then each again among
// all the others, so that one that came early makes way. One for which there is no
// room goes below the plate, which grows. It returns what is drawn.
func (p *plate) letter(labels []label) []Mark {
	var all []placed
	bottom := p.frame.Max.Y
	below := Point{p.frame.Min.X, bottom}
	for _, l := range labels {
		size := Text{Lines: l.lines}.Box().Grown(labelGap)
		room, ok := p.best(l, size.Width(), size.Height(), all)
		if !ok {
			room = Box{below, below.Plus(Point{size.Width(), size.Height()})}
			if room.Max.X > p.frame.Max.X || p.isTaken(room, all) { // a new row
				below = Point{p.frame.Min.X, p.frame.Max.Y}
				room = Box{below, below.Plus(Point{size.Width(), size.Height()})}
			}
			below.X = room.Max.X
			p.frame.Max.Y = max(p.frame.Max.Y, room.Max.Y)
		}
		all = append(all, placed{l, room})
	}
	for range passes {
		for i, l := range all {
			others := slices.Concat(all[:i:i], all[i+1:])
			if room, ok := p.best(l.label, l.room.Width(), l.room.Height(), others); ok {
				all[i].room = room
			}
		}
	}
	p.frame.Max.Y = bottom
	marks := make([]Mark, len(all))
	for i, l := range all {
		p.frame.Max.Y = max(p.frame.Max.Y, l.room.Max.Y)
		marks[i] = l.mark()
	}
	return marks
}

// mark is the lettering of a label, and its leader where it lies away from its point.
func (l placed) mark() Mark {
	g := Group{Of: l.of}
	if from, to := l.leader(); distance(l.at, to) > l.clear+leader || l.led {
		g.Marks = append(g.Marks, Line(Look{Tone: l.tone}, from, to))
	}
	g.Marks = append(g.Marks, Text{Tone: l.tone, Lines: l.lines, At: l.room.Min.Plus(Point{labelGap, labelGap})})
	return g
}

// leader is the line from the mark at the label's point to its room.
func (l placed) leader() (from, to Point) {
	to = nearest(l.room, l.at)
	share := l.clear / max(distance(l.at, to), l.clear, 1)
	return l.at.Plus(Point{(to.X - l.at.X) * share, (to.Y - l.at.Y) * share}), to
}

// best looks for room round a point among other labels, ring by ring: a place near
// it that spoils little.
func (p *plate) best(l label, width, height float64, others []placed) (Box, bool) {
	var found Box
	least := math.Inf(1)
	try := func(room Box, cost float64) {
		if cost >= least || !p.frame.Holds(room) || p.isTaken(room, others) {
			return
		}
		if cost += p.spoils(placed{l, room}, others); cost < least-1e-9 {
			found, least = room, cost
		}
	}
	if l.over {
		try(Around(l.at, width, height), 0)
	}
	for ring := range rings {
		out := l.clear + beside + step*float64(ring)
		if out > least {
			break // no farther place can be better
		}
		for ray := range rays {
			sin, cos := math.Sincos(2 * math.Pi * float64(ray) / rays)
			// The opposite direction costs twice the length of away.
			cost := out + math.Hypot(l.away.X, l.away.Y) - l.away.X*cos + l.away.Y*sin
			room := seen(l.at.Plus(Point{out * cos, -out * sin}), cos, -sin, width, height)
			try(room, cost)
			for _, slide := range []float64{-0.35, 0.35} { // along the side that faces the point
				aside := Point{Y: slide * height}
				if math.Abs(sin) > math.Abs(cos) {
					aside = Point{X: slide * width}
				}
				try(Box{room.Min.Plus(aside), room.Max.Plus(aside)}, cost+1)
			}
		}
	}
	return found, !math.IsInf(least, 1)
}

// seen is the box of a size that touches a point from the side that a direction
// points to.
func seen(at Point, x, y, width, height float64) Box {
	side := func(v float64) float64 { // -1 to 1: steep directions put it in the middle
		return min(max(v*1.5, -1), 1)
	}
	return Around(at.Plus(Point{side(x) * width / 2, side(y) * height / 2}), width, height)
}

func (p *plate) isTaken(room Box, others []placed) bool {
	return slices.ContainsFunc(p.taken, room.Meets) || slices.ContainsFunc(others, func(o placed) bool { return room.Meets(o.room) })
}

// spoils is what a label would spoil in its room, as the mm that it is worth to go
// out of the way: lines and leaders that it lies on, labels and signs that its own
// leader runs through, and leaders that this crosses.
func (p *plate) spoils(l placed, others []placed) float64 {
	const lines, leaders, labels, signs, crossing = 5, 20, 25, 20, 15
	cost := 0.0
	for _, line := range p.drawn {
		if l.room.crosses(line[0], line[1]) {
			cost += lines
		}
	}
	from, to := l.leader()
	for _, b := range p.taken {
		if b.crosses(from, to) && distance(b.Middle(), l.at) > 0.1 { // not its own sign
			cost += signs
		}
	}
	for _, o := range others {
		a, b := o.leader()
		if l.room.crosses(a, b) {
			cost += leaders
		}
		if o.room.crosses(from, to) {
			cost += labels
		}
		if cross(from, to, a)*cross(from, to, b) < 0 && cross(a, b, from)*cross(a, b, to) < 0 {
			cost += crossing
		}
	}
	return cost
}

// cross is above zero where c lies on one side of the line from a to b, below on
// the other.
func cross(a, b, c Point) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }

// has tells whether a point lies within.
func (b Box) has(p Point) bool { return b.Holds(Box{p, p}) }

// crosses tells whether a line runs through the box: it is clipped by each pair of
// sides in turn.
func (b Box) crosses(from, to Point) bool {
	first, last := 0.0, 1.0
	clip := func(at, along, low, high float64) bool {
		if along == 0 {
			return low < at && at < high
		}
		enters, leaves := (low-at)/along, (high-at)/along
		first, last = max(first, min(enters, leaves)), min(last, max(enters, leaves))
		return true
	}
	return clip(from.X, to.X-from.X, b.Min.X, b.Max.X) && clip(from.Y, to.Y-from.Y, b.Min.Y, b.Max.Y) && first < last
}

// nearest is the point of a box that is nearest to a point.
func nearest(b Box, p Point) Point {
	return Point{min(max(p.X, b.Min.X), b.Max.X), min(max(p.Y, b.Min.Y), b.Max.Y)}
}

func distance(a, b Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

// around is the least box that holds points.
func around(points []Point) Box {
	b := Box{points[0], points[0]}
	for _, p := range points[1:] {
		b = Box{Point{min(b.Min.X, p.X), min(b.Min.Y, p.Y)}, Point{max(b.Max.X, p.X), max(b.Max.Y, p.Y)}}
	}
	return b
}

package drawing

import (
	"fmt"
	"slices"
	"strings"

	"fitup/spec/document"
)

// Circuits draws each circuit of a document as a schematic: parts as boxes, lines
// with what they are made of and which way they flow, the boundary between car and
// driveline through its joints, and flags where they are. Parts are not where they
// are in the car: what hangs on the driveline stands over it, row by row.
func Circuits(d *document.Document, flags []Flag) []Drawing {
	owner := "driveline " + d.Given.Driveline
	if len(d.Cars) > 0 {
		owner = d.Cars[0].CarHead.Name.Or("car")
	}
	var all []Drawing
	for i, c := range circuitsOf(d) {
		s := newSchematic(c, c.place(flags))
		name := fmt.Sprintf("other-%d", i) // a port may carry what its writer calls as they please
		if c.rank < len(services) {
			name = strings.ReplaceAll(c.name, " ", "-")
		}
		all = append(all, Drawing{
			Name: "circuit-" + name, Title: owner + ": " + c.name,
			Text: c.words(s.placed), Size: Point{s.width, s.height}, Marks: s.marks,
		})
	}
	return all
}

// A schematic is a circuit while it is drawn.
type schematic struct {
	*circuit
	placed        flagged
	lettering     []block // of the parts
	sizes         []block // of the lines
	width, height float64
	marks         []Mark
	key           key
}

// paperHeight is what a page of A4 or Letter has room for below a heading and the
// drawing's title, mm.
const paperHeight = 225

const (
	partWidth = 46.0 // of the lettering of a part at most, mm
	nameWidth = 42.0 // of the name of a line at most
	boxPad    = 1.5  // between the outline of a part and its lettering
	edgePad   = 1.0  // between the edge of the paper and what is drawn
	narrowest = 96.0 // of what is drawn: as much as a phone shows at once
	footPad   = 2.0  // between a line and its lettering
	jointOff  = 6.0  // from the driveline to the boundary
	jointSize = 1.2  // radius of a joint's mark
)

// A setting is how the lettering of lines is set: how wide it may be, mm, and
// whether two lines share the room between them.
type setting struct {
	width float64
	pairs bool
}

// settings are tried until the circuit fits the paper as it is. Of those that do not
// fit, the one counts that has to be made smallest by least, and then the first.
var settings = []setting{{42, false}, {60, false}, {55, false}, {50, false}, {36, false}, {31, false}, {27, false}, {36, true}, {27, true}}

func newSchematic(c *circuit, placed flagged) *schematic {
	best := &schematic{}
	for _, set := range settings {
		if s := c.set(placed, set); s.scale() > best.scale() {
			best = s
		}
		if best.scale() == 1 {
			break
		}
	}
	return best
}

// scale is what a circuit has to be drawn at to fit the paper; 0 if it is not drawn.
func (s *schematic) scale() float64 {
	if s.width == 0 {
		return 0
	}
	return min(1, PaperWidth/s.width, paperHeight/s.height)
}

// set draws the circuit in one setting.
func (c *circuit) set(placed flagged, set setting) *schematic {
	s := &schematic{circuit: c, placed: placed, lettering: make([]block, len(c.parts)), sizes: make([]block, len(c.lines))}
	for i, p := range c.parts {
		s.lettering[i] = newBlock(p.name, nil, placed.parts[i], partWidth, partWidth)
	}
	for i, l := range c.lines {
		s.sizes[i] = newBlock(l.name, l.details(), placed.lines[i], nameWidth, set.width)
	}
	bands, bottom := s.scheme(set.pairs).arrange(PaperWidth-2*edgePad, edgePad)
	s.width, s.height = max(widest(bands), narrowest)+2*edgePad, bottom
	for _, band := range bands {
		band.shift((s.width-band.extent().Width())/2 - band.extent().Min.X)
		s.draw(band)
	}
	s.drawWhole()
	explained, bottom := keyMarks(s.key.entries(), s.height, s.width)
	s.marks, s.height = append(s.marks, explained...), bottom+edgePad
	return s
}

func widest(bands []*scheme) float64 {
	width := 0.0
	for _, band := range bands {
		width = max(width, band.extent().Width())
	}
	return width
}

// scheme is what the layout has to know of the circuit: sizes, rows and wires.
func (s *schematic) scheme(pairs bool) *scheme {
	rows := s.rows()
	layout := &scheme{}
	for i, p := range s.parts {
		layout.cells = append(layout.cells, cell{
			of: []int{i}, row: 2 * rows[i], base: p.kind == base, crossed: p.kind.leaves() && rows[i] == 0, need: s.lettering[i].size(),
		})
	}
	for i, l := range s.lines {
		row, loop := rowBetween(rows[l.from.part], rows[l.to.part], s.parts[l.from.part].kind.leaves())
		need := s.sizes[i].size().Plus(Point{X: footPad})
		if loop {
			need = need.Plus(Point{footPad, footPad})
		}
		label, shared := len(layout.cells), false
		if pairs && !loop {
			label, shared = s.mate(layout, i, row)
		}
		if shared {
			both := &layout.cells[label]
			both.of = append(both.of, i)
			both.need = Point{max(both.need.X, need.X) + footPad, both.need.Y + need.Y}
		} else {
			layout.cells = append(layout.cells, cell{of: []int{i}, row: row, loop: loop, need: need})
		}
		layout.wires = append(layout.wires,
			wire{line: i, part: l.from.part, label: label, last: shared, end: clipped(l.from.port)},
			wire{line: i, part: l.to.part, label: label, last: shared, end: clipped(l.to.port), to: true})
	}
	return layout
}

// mate finds the lettering of a line before another, that can stand beside it: in
// one row, alone yet, and with a part in common. Without one the other gets a cell
// of its own.
func (s *schematic) mate(layout *scheme, line, row int) (label int, found bool) {
	for c := len(s.parts); c < len(layout.cells); c++ {
		other := layout.cells[c]
		if other.row == row && !other.loop && len(other.of) == 1 && s.shareParts(other.of[0], line) {
			return c, true
		}
	}
	return len(layout.cells), false
}

// shareParts tells whether two lines meet one part.
func (s *schematic) shareParts(line, other int) bool {
	a, b := s.lines[line], s.lines[other]
	return a.from.part == b.from.part || a.from.part == b.to.part || a.to.part == b.from.part || a.to.part == b.to.part
}

// draw draws a band.
func (s *schematic) draw(band *scheme) {
	for _, row := range band.levels() {
		for _, c := range band.rows[row] {
			if row%2 == 0 {
				s.drawPart(band, c)
			} else {
				s.drawLines(band, c)
			}
		}
	}
	s.drawBoundary(band)
}

func (s *schematic) drawPart(band *scheme, c int) {
	cell := band.cells[c]
	number := cell.of[0]
	part := s.parts[number]
	look := Look{Pen: Wide, Fill: Paper}
	switch part.kind {
	case base, moved:
		look.Tone, look.Fill = Driveline, Tint
	case openAir:
		look.Pen, look.Tone = Dashed, Quiet
	case notKnown:
		look.Pen, look.Tone = Dashed, Unknown
	}
	marks := []Mark{Rectangle(look, cell.at)}
	lettering := s.lettering[number]
	top := cell.at.Middle()
	top.Y -= lettering.size().Y / 2
	above, below := band.ends(c)
	top.Y += float64(above-below) * Lettering * leading / 2
	marks = append(marks, lettering.marks(top, Middle, look.Tone)...)
	for _, w := range band.wires {
		if w.part == c && w.end != "" {
			at := Point{w.written, cell.at.Min.Y + boxPad/2}
			if !band.up(w) {
				at.Y = cell.at.Max.Y - boxPad/2 - Lettering*leading
			}
			marks = append(marks, Text{Tone: Quiet, Lines: []string{w.end}, At: at, Anchor: Middle})
		}
	}
	s.key.flag(s.placed.parts[number])
	s.marks = append(s.marks, Group{Of: part.path, Marks: marks})
}

// drawLines draws the line of a cell, or its two lines, and their lettering: of the
// first beside its left edge, of the second below that beside its right one.
func (s *schematic) drawLines(band *scheme, c int) {
	cell := band.cells[c]
	at, anchor := cell.at.Min.Plus(Point{X: footPad}), Start
	if cell.loop && cell.row > 0 {
		at.Y += footPad
	}
	for _, line := range cell.of {
		marks := append(s.way(band, c, line), s.sizes[line].marks(at, anchor, Ink)...)
		s.key.flag(s.placed.lines[line])
		s.marks = append(s.marks, Group{Of: s.lines[line].path, Marks: marks})
		at, anchor = Point{cell.at.Max.X - footPad, at.Y + s.sizes[line].size().Y}, End
	}
}

// way draws a line from the part that it comes from, beside its lettering, to the
// part that it goes to.
func (s *schematic) way(band *scheme, c, line int) []Mark {
	cell := band.cells[c]
	var from, to wire
	for _, w := range band.wires {
		switch {
		case w.line != line:
		case w.to:
			to = w
		default:
			from = w
		}
	}
	way, back := band.run(from), band.run(to)
	if cell.loop {
		over := cell.at.Min.Y
		if cell.row < 0 {
			over = cell.at.Max.Y
		}
		way = append(way, Point{band.foot(from), over}, Point{band.foot(to), over})
	}
	slices.Reverse(back)
	way = append(way, back...)
	marks := []Mark{Path{Look: Look{Pen: Wide}, Points: way}, flowArrow(way[len(way)-1], way[len(way)-2])}
	for _, end := range []struct {
		wire
		across bool
	}{{from, s.lines[line].from.across}, {to, s.lines[line].to.across}} {
		if end.across {
			marks = append(marks, jointMark(Point{end.x, band.cells[end.part].at.Min.Y - jointOff}))
			s.key.joint = true
		}
	}
	return marks
}

// drawBoundary draws the boundary between car and driveline through the joints.
func (s *schematic) drawBoundary(band *scheme) {
	for _, c := range band.rows[0] {
		if band.cells[c].crossed {
			across := band.extent()
			y := band.cells[c].at.Min.Y - jointOff
			line := Line(boundaryLook, Point{across.Min.X, y}, Point{across.Max.X, y})
			s.marks = append([]Mark{Group{Of: "boundary", Marks: []Mark{line}}}, s.marks...)
			s.key.boundary = true
			return
		}
	}
}

// drawWhole writes what is about the circuit as a whole below it.
func (s *schematic) drawWhole() {
	if len(s.placed.whole) == 0 {
		return
	}
	head := Text{Tone: Ink, Lines: []string{"the circuit as a whole:"}, At: Point{edgePad, s.height + cellGap}}
	at := Point{head.Box().Max.X + footPad, head.At.Y}
	width := s.width - edgePad - at.X
	flags := newBlock("", nil, s.placed.whole, width, width)
	s.marks = append(append(s.marks, head), flags.marks(at, Start, Ink)...)
	s.height = at.Y + flags.size().Y
	s.key.flag(s.placed.whole)
}

const (
	arrowLong = 4.0 // of the arrow that says which way a line flows, mm
	arrowWide = 2.6
)

func sign(x float64) float64 {
	if x < 0 {
		return -1
	}
	return 1
}

// flowArrow is a solid arrowhead at a tip, for a flow that comes straight from
// another point.
func flowArrow(tip, from Point) Mark {
	along := Point{}
	if tip.X == from.X {
		along.Y = sign(tip.Y - from.Y)
	} else {
		along.X = sign(tip.X - from.X)
	}
	base := Point{tip.X - along.X*arrowLong, tip.Y - along.Y*arrowLong}
	wide := Point{along.Y * arrowWide / 2, along.X * arrowWide / 2}
	return Path{Look: Look{Fill: Solid}, Closed: true, Points: []Point{tip, base.Plus(wide), {base.X - wide.X, base.Y - wide.Y}}}
}

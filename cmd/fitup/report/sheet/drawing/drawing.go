// Package drawing makes the drawings of the bench sheet: how a car stands, how its
// driveline hangs, what is joined to what, and where a swap parts it.
//
// A drawing is a list of marks in millimetres of paper, and sentences that say the
// same to somebody who cannot see it. It is laid out from the figures of a
// document; [Drawing.SVG] alone knows how a mark is written. Lines are drawn as ISO
// 128-2 has them, dimensions as ISO 129-1, scales as ISO 5455.
package drawing

// PaperWidth is the greatest width in mm of a drawing on paper: what A4 and Letter both leave
// between margins of 15 mm.
const PaperWidth = 180

// A Drawing is one drawing with its words.
type Drawing struct {
	Name  string   // short, of a-z, 0-9 and hyphens, unique on its page: "plan"
	Title string   // "Squall on her stands, seen from above"
	Text  []string // what it shows, one sentence each
	Size  Point    // width and height of the paper, mm
	Marks []Mark   // in the order in which they are drawn
}

// A Point is a place on the paper, in mm from its top left corner, y downwards.
type Point struct{ X, Y float64 }

// Plus is the point moved by another.
func (p Point) Plus(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// A Box is an upright rectangle on the paper.
type Box struct{ Min, Max Point }

// Around is the box of a width and height about its middle.
func Around(middle Point, width, height float64) Box {
	return Box{Point{middle.X - width/2, middle.Y - height/2}, Point{middle.X + width/2, middle.Y + height/2}}
}

// Width of the box, mm.
func (b Box) Width() float64 { return b.Max.X - b.Min.X }

// Height of the box, mm.
func (b Box) Height() float64 { return b.Max.Y - b.Min.Y }

// Middle of the box.
func (b Box) Middle() Point { return Point{(b.Min.X + b.Max.X) / 2, (b.Min.Y + b.Max.Y) / 2} }

// Grown is the box with a border of a width in mm added all round.
func (b Box) Grown(by float64) Box {
	return Box{Point{b.Min.X - by, b.Min.Y - by}, Point{b.Max.X + by, b.Max.Y + by}}
}

// Meets tells whether two boxes share more than an edge.
func (b Box) Meets(c Box) bool {
	return b.Min.X < c.Max.X && c.Min.X < b.Max.X && b.Min.Y < c.Max.Y && c.Min.Y < b.Max.Y
}

// Holds tells whether another box lies within.
func (b Box) Holds(c Box) bool {
	return b.Min.X <= c.Min.X && b.Min.Y <= c.Min.Y && c.Max.X <= b.Max.X && c.Max.Y <= b.Max.Y
}

// Frame is the whole paper.
func (d Drawing) Frame() Box { return Box{Max: d.Size} }

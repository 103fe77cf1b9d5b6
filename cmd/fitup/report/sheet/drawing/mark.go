package drawing

import "math"

// A Pen is a type of line (ISO 128-2). Its width and dashes are the style sheet's.
type Pen string

// The pens. The zero pen is narrow and continuous: dimensions, leaders, hatching.
const (
	Narrow  Pen = "narrow"
	Wide    Pen = "wide"    // continuous: visible outlines
	Dashed  Pen = "dashed"  // hidden outlines
	Centre  Pen = "centre"  // long dash, dot: centre lines and axes
	Phantom Pen = "phantom" // long dash, two dots: where a moving part comes to
	NoPen   Pen = "no-pen"
)

// A Tone is what a mark is about. The style sheet gives it a colour; nothing is
// told by it that shape, dashes, hatching or words do not tell too.
type Tone string

// The tones.
const (
	Ink       Tone = "ink"
	Quiet     Tone = "quiet"     // what is only there for orientation
	Driveline Tone = "driveline" // what leaves the car
	Support   Tone = "support"   // what holds the car up
	Danger    Tone = "danger"
	Fault     Tone = "fault"
	Advice    Tone = "advice"
	Unknown   Tone = "unknown" // what has to be measured
)

// A Fill is how an outline is filled.
type Fill string

// The fills.
const (
	Hollow Fill = "hollow"
	Paper  Fill = "paper"  // hides what is beneath
	Tint   Fill = "tint"   // the tone, thin
	Solid  Fill = "solid"  // the tone
	Hatch  Fill = "hatch"  // narrow lines at 45 degrees
	Ground Fill = "ground" // hatching of the other hand, for the floor
)

// A Look is how a mark is drawn. Left out it is a narrow line in ink, not filled.
type Look struct {
	Pen  Pen
	Tone Tone
	Fill Fill
}

// A Mark is something drawn: a [Path], [Circle], [Text], [Dimension] or [Group].
type Mark interface {
	element(drawing string) element
}

// A Path is a line through points, or a polygon.
type Path struct {
	Look
	Points []Point
	Closed bool
}

// A Circle is a circle.
type Circle struct {
	Look
	At     Point
	Radius float64
}

// A Group is marks that belong together. Of says what they show: a subject's path,
// or a word. It is kept in the drawing, so that a mark can be found again.
type Group struct {
	Of    string
	Marks []Mark
}

// Anchor is which point of a line of text lies at its place.
type Anchor string

// The anchors.
const (
	Start  Anchor = "start"
	Middle Anchor = "middle"
	End    Anchor = "end"
)

// A Text is lines of lettering below each other.
type Text struct {
	Tone   Tone
	Lines  []string
	At     Point  // top of the first line, at its anchor
	Anchor Anchor // Start unless said
	Size   float64
	Turned bool // one line, read from the right of the paper; At is then its middle
}

// A Dimension is the distance between two points, written along the dimension line:
// above a level one, left of an upright one, to be read from below or from the
// right (ISO 129-1).
type Dimension struct {
	From, To Point   // the points that it is between
	Off      float64 // where the dimension line runs: mm below From, or right of it if Upright; negative above or left
	Upright  bool    // measured up and down, else along
	Label    string
	Tone     Tone
}

// Line is a line between two points.
func Line(l Look, a, b Point) Path { return Path{Look: l, Points: []Point{a, b}} }

// Rectangle is the outline of a box.
func Rectangle(l Look, b Box) Path {
	return Path{Look: l, Closed: true, Points: []Point{b.Min, {b.Max.X, b.Min.Y}, b.Max, {b.Min.X, b.Max.Y}}}
}

// Box is the room that the text takes.
func (t Text) Box() Box {
	width, size := 0.0, t.size()
	for _, line := range t.Lines {
		width = max(width, Width(line, size))
	}
	if t.Turned {
		return Around(t.At, size*leading, width)
	}
	b := Box{t.At, t.At.Plus(Point{width, float64(len(t.Lines)) * size * leading})}
	switch t.Anchor {
	case Middle:
		b.Min.X, b.Max.X = b.Min.X-width/2, b.Max.X-width/2
	case End:
		b.Min.X, b.Max.X = b.Min.X-width, b.Max.X-width
	}
	return b
}

func (t Text) size() float64 {
	if t.Size == 0 {
		return Lettering
	}
	return t.Size
}

const (
	arrowLength = 3.0 // of the arrowhead of a dimension line, mm
	arrowHalf   = 0.5 // half its width: an angle of some 20 degrees
	overrun     = 1.5 // by which an extension line passes its dimension line, mm
	stand       = 0.6 // clear between a dimension line and its figure, mm
)

// marks are what a dimension is drawn with. Where there is no room between the
// arrowheads they come from outside.
func (d Dimension) marks() []Mark {
	look, along, out := Look{Tone: d.Tone}, Point{X: 1}, Point{Y: d.Off}
	a, b := Point{d.From.X, d.From.Y + d.Off}, Point{d.To.X, d.From.Y + d.Off}
	if d.Upright {
		along, out = Point{Y: 1}, Point{X: d.Off}
		a, b = Point{d.From.X + d.Off, d.From.Y}, Point{d.From.X + d.Off, d.To.Y}
	}
	over := Point{overrunOf(out.X), overrunOf(out.Y)}
	marks := []Mark{Line(look, d.From, a.Plus(over)), Line(look, d.To, b.Plus(over))}
	if a.X+a.Y > b.X+b.Y {
		a, b = b, a // from left to right, or downwards
	}
	back, beyond := 1.0, 0.0
	if b.X-a.X+b.Y-a.Y < 2*arrowLength+1 {
		back, beyond = -1, 2*arrowLength
	}
	return append(marks,
		Line(look, Point{a.X - along.X*beyond, a.Y - along.Y*beyond}, Point{b.X + along.X*beyond, b.Y + along.Y*beyond}),
		arrowhead(a, along, back, d.Tone), arrowhead(b, along, -back, d.Tone), d.figure())
}

// overrunOf is how far an extension line goes on past a dimension line that lies
// so far off.
func overrunOf(off float64) float64 {
	if off == 0 {
		return 0
	}
	return math.Copysign(overrun, off)
}

// arrowhead is a closed arrowhead at a place, which reaches back along a direction.
func arrowhead(tip, along Point, back float64, tone Tone) Path {
	base := Point{tip.X + along.X*arrowLength*back, tip.Y + along.Y*arrowLength*back}
	side := Point{-along.Y * arrowHalf, along.X * arrowHalf}
	return Path{Look: Look{Tone: tone, Fill: Solid}, Closed: true, Points: []Point{tip, base.Plus(side), {base.X - side.X, base.Y - side.Y}}}
}

// figure is the lettering of a dimension.
func (d Dimension) figure() Text {
	t := Text{Tone: d.Tone, Lines: []string{d.Label}, Anchor: Middle, At: Point{(d.From.X + d.To.X) / 2, d.From.Y + d.Off - stand - Lettering*leading}}
	if d.Upright {
		t.Turned = true
		t.At = Point{d.From.X + d.Off - stand - Lettering*leading/2, (d.From.Y + d.To.Y) / 2}
	}
	return t
}

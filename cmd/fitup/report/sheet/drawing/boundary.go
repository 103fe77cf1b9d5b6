package drawing

import (
	"math"
	"slices"

	"fitup/spec/document"
	"fitup/spec/swap"
	"fitup/spec/unit"
)

// Boundary draws where a driveline is parted from its car: what stays on the left,
// what leaves on the right, and between them every joint to open, wet or dry, with
// what runs out of it and its planning weight. Below stand what comes off first and
// what stays shut. d is the document of the car with the driveline in it, plan how it
// comes out.
func Boundary(d *document.Document, plan *swap.Plan) Drawing {
	b := newBoundary(d, plan)
	y := b.rows(b.open, b.heading(edgePad), true)
	b.sides(edgePad, y)
	y = b.key(y+boxPad, b.open)
	for _, text := range b.notes() {
		y = b.paragraph(Ink, y, text)
	}
	return Drawing{
		Name: "boundary", Title: "Where to part " + b.car + " from " + b.driveline,
		Text: b.words(), Size: Point{b.columns.right, y + edgePad}, Marks: b.marks,
	}
}

// NextBest draws the next best way to part them: what it opens besides, and what it
// leaves shut. There is none where no part may go either way.
func NextBest(d *document.Document, plan *swap.Plan) (drawn Drawing, ok bool) {
	if plan.Parting.Next == nil {
		return Drawing{}, false
	}
	b := newBoundary(d, plan)
	y := b.paragraph(Ink, edgePad, b.nextWords())
	for _, some := range []struct {
		head   string
		joints []opening
		open   bool
	}{{"open besides:", b.more, true}, {"leave shut:", b.less, false}} {
		if len(some.joints) > 0 {
			y = b.rows(some.joints, b.paragraph(Quiet, y, some.head), some.open)
		}
	}
	return Drawing{
		Name: "next-best", Title: "The next best way to part " + b.car + " from " + b.driveline,
		Text: b.wordsOfNext(), Size: Point{b.columns.right, b.key(y, b.more) + edgePad}, Marks: b.marks,
	}, true
}

// A boundary is what the drawings of one parting share while they are made.
type boundary struct {
	car, driveline string
	plan           *swap.Plan
	open           []opening // by the best cut
	more, less     []opening // that the next best cut opens besides, and leaves shut
	columns        columns
	marks          []Mark
}

// columns are where what is written in the rows begins or ends, mm.
type columns struct {
	stays, leaves Box     // outlines of both sides; their heights are set when they are drawn
	cut           float64 // the boundary itself
	weight, spill float64 // end
	right         float64 // edge of the paper
}

const (
	rowPitch = 5.7  // of joints, mm
	wireHalf = 9.0  // from a side to the boundary
	sidePad  = 2.0  // between the outline of a side and its lettering
	wettest  = 1.9  // radius of the drop of a wet joint
	columnOf = 18.0 // width of a column of figures
)

func newBoundary(d *document.Document, plan *swap.Plan) *boundary {
	b := &boundary{car: "the car", driveline: d.Given.Driveline, plan: plan}
	if len(d.Cars) > 0 {
		b.car = d.Cars[0].CarHead.Name.Or(b.car)
	}
	best := &plan.Parting.Best
	b.open = openings(d, plan, best, best.Open)
	if next := plan.Parting.Next; next != nil {
		b.more = openings(d, plan, next, lacking(next.Open, best.Open))
		b.less = openings(d, plan, best, lacking(best.Open, next.Open))
	}
	b.measure()
	return b
}

// lacking are those of some names that others are not among.
func lacking(names, others []string) []string {
	return slices.DeleteFunc(slices.Clone(names), func(name string) bool { return slices.Contains(others, name) })
}

// measure finds the columns from what is written in them.
func (b *boundary) measure() {
	var group, stays, leaves float64
	stays, leaves = Width(b.staysHeading(), Lettering), Width(b.leavesHeading(), Lettering)
	for _, o := range slices.Concat(b.open, b.more, b.less) {
		group = max(group, Width(o.group, Lettering))
		stays = max(stays, Width(o.stays, Lettering))
		leaves = max(leaves, Width(o.leaves, Lettering))
	}
	c := &b.columns
	c.stays.Min.X = edgePad + group + sidePad
	c.stays.Max.X = c.stays.Min.X + stays + 2*sidePad
	c.cut = c.stays.Max.X + wireHalf
	c.leaves.Min.X = c.cut + wireHalf
	c.leaves.Max.X = c.leaves.Min.X + leaves + 2*sidePad
	c.weight = c.leaves.Max.X + columnOf - sidePad
	c.spill = c.weight + columnOf
	c.right = c.spill + edgePad
}

func (b *boundary) staysHeading() string  { return clipped("stays: " + b.car) }
func (b *boundary) leavesHeading() string { return clipped("leaves: " + b.driveline) }

// heading writes the heads of the columns and returns where the rows begin.
func (b *boundary) heading(y float64) float64 {
	c := &b.columns
	y += boxPad
	b.letter(Ink, c.stays.Min.X+sidePad, y, Start, b.staysHeading())
	b.letter(Driveline, c.leaves.Min.X+sidePad, y, Start, b.leavesHeading())
	b.letter(Quiet, c.weight, y, End, "minutes")
	b.letter(Quiet, c.spill, y, End, "runs out")
	return y + rowPitch + boxPad
}

func (b *boundary) letter(tone Tone, x, y float64, anchor Anchor, lines ...string) float64 {
	t := Text{Tone: tone, Lines: lines, At: Point{x, y}, Anchor: anchor}
	b.marks = append(b.marks, t)
	return t.Box().Max.Y
}

// rows draws joints, one a row: open or, where they are left shut, with the line
// going through. It returns where the next row would begin.
func (b *boundary) rows(joints []opening, y float64, open bool) float64 {
	group := ""
	for _, o := range joints {
		if o.group != group {
			group = o.group
			b.letter(Quiet, edgePad, y, Start, group)
		}
		b.marks = append(b.marks, Group{Of: o.Name, Marks: b.row(o, y, open)})
		y += rowPitch
	}
	return y
}

func (b *boundary) row(o opening, y float64, open bool) []Mark {
	c := &b.columns
	middle := y + Lettering*leading/2
	at := Point{c.cut, middle}
	marks := []Mark{
		Line(Look{Pen: Wide}, Point{c.stays.Max.X, middle}, Point{c.leaves.Min.X, middle}),
		Text{Tone: Ink, Lines: []string{o.stays}, At: Point{c.stays.Max.X - sidePad, y}, Anchor: End},
		Text{Tone: Driveline, Lines: []string{o.leaves}, At: Point{c.leaves.Min.X + sidePad, y}},
		Text{Tone: Ink, Lines: []string{minutesOf(o.Effort)}, At: Point{c.weight, y}, Anchor: End},
	}
	switch {
	case open && o.Wet:
		marks = append(marks, drop(at))
	case open:
		marks = append(marks, jointMark(at))
	}
	switch {
	case o.Spill > 0:
		marks = append(marks, Text{Tone: Ink, Lines: []string{unit.Format(o.Spill, unit.Volume, "")}, At: Point{c.spill, y}, Anchor: End})
	case o.Wet:
		marks = append(marks, Text{Tone: Unknown, Lines: []string{"?"}, At: Point{c.spill, y}, Anchor: End})
	}
	return marks
}

// sides draws the outlines of what stays and of what leaves, beneath the rows, and
// the boundary between them.
func (b *boundary) sides(top, bottom float64) {
	c := &b.columns
	c.stays.Min.Y, c.stays.Max.Y = top, bottom+boxPad
	c.leaves.Min.Y, c.leaves.Max.Y = top, bottom+boxPad
	b.marks = append([]Mark{
		Group{Of: "stays", Marks: []Mark{Rectangle(Look{Pen: Wide}, c.stays)}},
		Group{Of: "leaves", Marks: []Mark{Rectangle(Look{Pen: Wide, Tone: Driveline, Fill: Tint}, c.leaves)}},
		Group{Of: "boundary", Marks: []Mark{Line(boundaryLook, Point{c.cut, top}, Point{c.cut, bottom + boxPad})}},
	}, b.marks...)
}

// paragraph letters a text over the whole width and returns where the next begins.
func (b *boundary) paragraph(tone Tone, y float64, text string) float64 {
	const most = 6
	return b.letter(tone, edgePad, y, Start, Wrap(text, b.columns.right-2*edgePad, Lettering, most)...) + 1
}

// key explains the signs of joints that are opened.
func (b *boundary) key(y float64, joints []opening) float64 {
	const middle = Lettering * leading / 2
	var entries []entry
	for _, e := range []struct {
		entry
		drawn func(o opening) bool
	}{
		{entry{func(at Point) []Mark { return []Mark{drop(at.Plus(Point{wettest, middle}))} }, 2 * wettest, "wet: something runs out"},
			func(o opening) bool { return o.Wet }},
		{entry{func(at Point) []Mark { return []Mark{jointMark(at.Plus(Point{jointSize, middle}))} }, 2 * jointSize, "dry"},
			func(o opening) bool { return !o.Wet }},
		{entry{func(at Point) []Mark { return []Mark{Text{Tone: Unknown, Lines: []string{"?"}, At: at}} }, Width("?", Lettering), "not measured"},
			func(o opening) bool { return o.Wet && o.Spill == 0 }},
	} {
		if slices.ContainsFunc(joints, e.drawn) {
			entries = append(entries, e.entry)
		}
	}
	marks, bottom := keyMarks(entries, y, b.columns.right)
	b.marks = append(b.marks, marks...)
	return bottom + boxPad
}

// drop is the mark of a wet joint: a drop, which is not the ring of a dry one even
// without its colour.
func drop(at Point) Mark {
	p := Path{Look: Look{Tone: Driveline, Fill: Solid}, Closed: true, Points: []Point{at.Plus(Point{Y: -1.7 * wettest})}}
	const steps = 12
	for i := range steps + 1 { // from one side of the point round below to the other
		sin, cos := math.Sincos(-math.Pi/6 + float64(i)*(4*math.Pi/3)/steps)
		p.Points = append(p.Points, at.Plus(Point{wettest * cos, wettest * sin}))
	}
	return p
}

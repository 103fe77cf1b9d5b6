package drawing

import (
	"cmp"
	"math"
	"slices"
	"strconv"
)

// A line is one line of a chart.
type line struct {
	of, name string
	look     Look
	points   []Point // what it shows: per cent along, and a value
}

// A chart shows values over the share of the weight that is on the hook, 0 to 100 %.
type chart struct {
	title string
	box   Box     // of its axes, mm
	right float64 // to which its labels may reach, mm
	lines []line
	floor string // what a value below nothing means, if that may come
}

const (
	axisBelow = 2.6 // from the axis to the figures below it, clear of those beside it, mm
	lineAside = 6   // from the end of a line to its name
)

// draw returns the marks of the chart, and how far down they reach.
func (c chart) draw() ([]Mark, float64) {
	values := span{0, 0}
	for _, l := range c.lines {
		for _, p := range l.points {
			values.over(p.Y)
		}
	}
	tick := round(values.length() / 4)
	values = span{math.Floor(values.low/tick) * tick, math.Ceil(values.high/tick+0.05) * tick}
	at := func(p Point) Point {
		return Point{c.box.Min.X + c.box.Width()*p.X/100, c.box.Max.Y - c.box.Height()*(p.Y-values.low)/values.length()}
	}
	marks := []Mark{Text{Lines: []string{c.title}, At: Point{c.box.Min.X, c.box.Min.Y - 7}}}
	for v := values.low; v <= values.high+tick/2; v += tick {
		y := at(Point{0, v}).Y
		marks = append(marks, Line(Look{Tone: Quiet}, Point{c.box.Min.X, y}, Point{c.box.Max.X, y}),
			Text{Tone: Quiet, Lines: []string{strconv.FormatFloat(v, 'f', -1, 64)}, At: Point{c.box.Min.X - 1, y - Lettering*leading/2}, Anchor: End})
	}
	for _, percent := range []float64{0, 50, 100} {
		x := at(Point{percent, 0}).X
		marks = append(marks, Line(Look{Tone: Quiet}, Point{x, c.box.Min.Y}, Point{x, c.box.Max.Y + 1}),
			Text{Tone: Quiet, Lines: []string{strconv.Itoa(int(percent))}, At: Point{x, c.box.Max.Y + axisBelow}, Anchor: Middle})
	}
	caption := Text{Tone: Quiet, Lines: []string{"% of its weight on the hook"}, At: Point{c.box.Min.X, c.box.Max.Y + axisBelow + Lettering*leading}}
	marks = append(marks, caption)
	if c.floor != "" {
		zero := at(Point{})
		below := Text{Tone: Danger, Lines: []string{c.floor}, At: zero.Plus(Point{2, 0.4})}
		if values.low == 0 {
			below.At.Y = zero.Y - Lettering*leading - 0.4
		}
		marks = append(marks, Line(Look{Pen: Wide, Tone: Danger}, zero, Point{c.box.Max.X, zero.Y}), below)
	}
	var ends []Point
	var shown []line
	for _, l := range c.lines {
		if len(l.points) == 0 {
			continue
		}
		path := Path{Look: l.look}
		for _, v := range l.points {
			path.Points = append(path.Points, at(v))
		}
		marks = append(marks, Group{l.of, []Mark{path}})
		ends, shown = append(ends, path.Points[len(path.Points)-1]), append(shown, l)
	}
	names, bottom := c.names(shown, ends)
	return append(marks, names...), max(bottom, caption.Box().Max.Y)
}

// names writes the name of each line beside its end, in the order of the ends, as
// near to them as there is room, and how far down they reach.
func (c chart) names(lines []line, ends []Point) ([]Mark, float64) {
	order := make([]int, len(lines))
	texts := make([]Text, len(lines))
	x := c.box.Max.X + lineAside
	for i, l := range lines {
		order[i] = i
		texts[i] = Text{Tone: l.look.Tone, Lines: Wrap(l.name, c.right-x, Lettering, 3)}
		texts[i].At = Point{x, ends[i].Y - texts[i].Box().Height()/2}
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(ends[a].Y, ends[b].Y) })
	// Up from the bottom of the axes, then down from their top: where there are too
	// many they go on below.
	floor := c.box.Max.Y + Lettering*leading/2
	for _, i := range slices.Backward(order) {
		texts[i].At.Y = min(texts[i].At.Y, floor-texts[i].Box().Height())
		floor = texts[i].At.Y
	}
	top := c.box.Min.Y - Lettering*leading/2
	marks := make([]Mark, len(lines))
	for n, i := range order {
		texts[i].At.Y = max(texts[i].At.Y, top)
		top = texts[i].Box().Max.Y
		marks[n] = Group{"name " + lines[i].of, []Mark{Line(Look{Tone: lines[i].look.Tone}, ends[i], Point{x - 0.8, texts[i].Box().Middle().Y}), texts[i]}}
	}
	return marks, top
}

// round is the least of 1, 2 and 5 times a power of ten that is no less than a
// value.
func round(v float64) float64 {
	if v <= 0 {
		return 1
	}
	power := math.Pow(10, math.Floor(math.Log10(v)))
	for _, n := range []float64{1, 2, 5} {
		if n*power >= v*(1-1e-9) {
			return n * power
		}
	}
	return 10 * power
}

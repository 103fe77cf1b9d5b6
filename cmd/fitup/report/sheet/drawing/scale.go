package drawing

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec/workings"
)

// reductions are the scales of ISO 5455, with those between that it allows where
// the usual ones make poor use of the paper.
var reductions = []float64{5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 200, 500, 1000}

// A projection puts points in the axes of a car on paper: its front is on the left.
// Seen from above its left side is then below, and the view on that side stands
// below the plan, as third-angle projection has it.
type projection struct {
	reduction float64 // 20 for 1:20
	origin    Point   // where the car's origin comes to
	side      bool    // seen from the left, else from above
}

// A span is a stretch along one axis, m.
type span struct{ low, high float64 }

func (s span) length() float64 { return s.high - s.low }

// over is the least span that holds values too.
func (s *span) over(values ...float64) {
	for _, v := range values {
		s.low, s.high = min(s.low, v), max(s.high, v)
	}
}

// nothing is a span that holds nothing yet.
func nothing() span { return span{math.Inf(1), math.Inf(-1)} }

// fit chooses the largest scale at which a length in m goes into a width in mm.
func fit(length, width float64) float64 {
	for _, r := range reductions {
		if length*1000/r <= width {
			return r
		}
	}
	return reductions[len(reductions)-1]
}

// mm is a length in m on paper.
func (p projection) mm(length float64) float64 { return length * 1000 / p.reduction }

// at is where a point comes to.
func (p projection) at(v r3.Vec) Point {
	if p.side {
		return p.origin.Plus(Point{-p.mm(v.X), -p.mm(v.Z)})
	}
	return p.origin.Plus(Point{-p.mm(v.X), p.mm(v.Y)})
}

// bar is the scale bar at a place, with the scale written beside: paper that is not
// printed at its own size can still be measured.
func (p projection) bar(at Point, in string) Mark {
	length := 1.0
	for p.mm(length) > 60 {
		length /= 2
	}
	half, whole := p.mm(length/2), p.mm(length)
	const thick = 1.2
	dark, light := Look{Fill: Solid}, Look{Fill: Paper}
	return Group{Of: "scale", Marks: []Mark{
		Rectangle(dark, Box{at, at.Plus(Point{half, thick})}),
		Rectangle(light, Box{at.Plus(Point{half, 0}), at.Plus(Point{whole, thick})}),
		Text{Tone: Quiet, Lines: []string{fmt.Sprintf("0 to %g m, scale 1:%g, dimensions in %s", length, p.reduction, in)}, At: at.Plus(Point{whole + 3, -2})},
	}}
}

// outline is the hull of points as they are seen.
func (p projection) outline(points []r3.Vec) []Point {
	flat := make([]r2.Vec, len(points))
	for i, v := range points {
		at := p.at(v)
		flat[i] = r2.Vec{X: at.X, Y: at.Y}
	}
	hull, err := workings.SupportPolygon(flat)
	if err != nil { // a sheet seen from its edge
		b := around(toPoints(flat))
		return []Point{b.Min, b.Max}
	}
	return toPoints(hull)
}

func toPoints(flat []r2.Vec) []Point {
	out := make([]Point, len(flat))
	for i, v := range flat {
		out[i] = Point{v.X, v.Y}
	}
	return out
}

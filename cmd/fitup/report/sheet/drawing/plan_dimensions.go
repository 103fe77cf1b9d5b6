package drawing

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// dimensions writes where wheels and supports are.
func (p *planView) dimensions() {
	front, rear := p.layout.FrontAxle, p.layout.RearAxle
	base := p.bottom() + 3 + laneLabels
	var along []float64
	if front.Known {
		along = append(along, front.At.X)
	}
	if rear.Known {
		along = append(along, rear.At.X)
	}
	for _, s := range p.layout.Supports {
		if s.Known && !slices.ContainsFunc(along, func(x float64) bool { return math.Abs(x-s.At.X) < sameSpot }) {
			along = append(along, s.At.X)
		}
	}
	if len(along) > 2 || !rear.Known { // else the wheelbase says it
		p.chain(along, base, 8)
	}
	if front.Known && rear.Known {
		a, b := p.at(front.At).X, p.at(rear.At).X
		p.add(Dimension{From: Point{a, base}, To: Point{b, base}, Off: 15, Label: p.plain(front.At.X - rear.At.X)})
	}
	for i, edge := range []float64{laneLeft - 2.5, PaperWidth - 2} {
		if len(p.layout.Wheels) == 4 && p.layout.Wheels[2*i].Known {
			left, right := p.layout.Wheels[2*i].At, p.layout.Wheels[2*i+1].At
			a, b := p.at(right), p.at(left)
			p.add(Dimension{From: a, To: b, Off: edge - a.X, Upright: true, Label: p.plain(left.Y - right.Y)})
		}
	}
	p.across()
}

// chain writes the distances from each place along the car to the next, where there
// is room for the figure.
func (p *planView) chain(along []float64, from, off float64) {
	slices.SortFunc(along, func(a, b float64) int { return cmp.Compare(b, a) })
	for i := 1; i < len(along); i++ {
		a, b := p.at(r3.Vec{X: along[i-1]}).X, p.at(r3.Vec{X: along[i]}).X
		text := p.plain(along[i-1] - along[i])
		if b-a > Width(text, Lettering)+1 {
			p.add(Dimension{From: Point{a, from}, To: Point{b, from}, Off: off, Label: text})
		}
	}
}

// across writes how far apart the foremost and the rearmost stands are.
func (p *planView) across() {
	rows := map[float64]span{}
	var at []float64
	for _, s := range p.layout.Supports[:min(len(p.doc.Stands), len(p.layout.Supports))] {
		if !s.Known {
			continue
		}
		row, ok := rows[s.At.X]
		if !ok {
			row = nothing()
			at = append(at, s.At.X)
		}
		row.over(s.At.Y)
		rows[s.At.X] = row
	}
	slices.Sort(at)
	if len(at) < 2 {
		return
	}
	for _, end := range []struct{ x, off float64 }{{at[0], 11}, {at[len(at)-1], -11}} {
		if row := rows[end.x]; p.mm(row.length()) > 12 {
			a, b := p.at(r3.Vec{X: end.x, Y: row.low}), p.at(r3.Vec{X: end.x, Y: row.high})
			p.add(Dimension{From: a, To: b, Off: end.off, Upright: true, Label: p.plain(row.length())})
		}
	}
}

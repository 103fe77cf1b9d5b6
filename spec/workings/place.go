package workings

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
)

// IntoCar is where a point of the driveline lies in the car's axes, m: turned
// about the driveline's datum by the tilt of the crank line in rad (front up
// positive, about the y axis), then moved to where the datum lands. Axes as
// iso-8855: x forward, y left, z up.
func IntoCar(p, datum r3.Vec, noseUp float64) r3.Vec {
	sin, cos := math.Sincos(noseUp)
	return r3.Add(datum, r3.Vec{X: p.X*cos - p.Z*sin, Y: p.Y, Z: p.X*sin + p.Z*cos})
}

// A spot is a point in the axes of the car, or of a driveline judged alone, with
// the inputs that it rests on.
type spot struct {
	in []Input
	r3.Vec
}

// fixed is a point that is written in the axes it is wanted in.
func (n *notebook) fixed(symbol string, p *spec.Position) spot {
	in, at := n.at(symbol, p)
	return spot{[]Input{in}, at}
}

// placed is a point of the driveline, in the car's axes by the pair's own facts.
func (n *notebook) placed(symbol string, p *spec.Position) spot {
	s := n.fixed(symbol, p)
	fit := &n.d.Given.Fit
	datum := n.fixed("datum", &fit.At)
	tilt := n.said("nose up", &fit.NoseUp)
	s.in = append(s.in, datum.in[0], tilt)
	s.Vec = IntoCar(s.Vec, datum.Vec, tilt.Value)
	return s
}

// port is where a port lies, for a line that belongs to an owner: a line of the
// driveline's own needs no car.
func (n *notebook) port(symbol string, p *document.Port, lineOwner string) spot {
	if p.Owner == driveline && lineOwner != driveline {
		return n.placed(symbol, &p.Port.At)
	}
	return n.fixed(symbol, &p.Port.At)
}

// driveline is the owner of what the driveline file describes.
const driveline = "driveline"

// distance is a step's formula for the distance between two spots.
func distance(a, b r3.Vec) func([]float64) (float64, error) {
	return always(result("distance", r3.Norm(r3.Sub(a, b))))
}

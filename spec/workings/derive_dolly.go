package workings

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"fitup/spec"
	"fitup/spec/document"
)

// castors is the height of the floor in the driveline's axes as it stands on the
// dolly, with the places of the castors.
func (n *notebook) castors(s *document.Support) (floor float64, in []Input) {
	for i := range n.d.Castors {
		at := n.fixed("castor_"+n.d.Castors[i].Name, &n.d.Castors[i].At)
		in = append(in, at.in...)
		if i == 0 || at.Z < floor {
			floor = at.Z
		}
	}
	if len(in) == 0 {
		in = []Input{lacking("castors", keyOf(s.Carrier.Path, "castors", join(s.Path, "dolly")))}
	}
	return floor, in
}

// dolly works out what each castor of the dolly carries, when the driveline on it
// goes over, and what its frame bears. For stability the castors are taken turned
// inwards: that is how they come to lie when it is pushed to and fro.
func (n *notebook) dolly(s *document.Support, hung load) {
	if s.Dolly.Said() == spec.None || s.Dolly.Said() == spec.Unsaid {
		return
	}
	floor, in := n.castors(s)
	in = once(hung.in, in)
	var at, contact []r2.Vec
	var middle r2.Vec
	var trails []Input
	for i := range n.d.Castors {
		c := &n.d.Castors[i]
		p := r2.Vec{X: c.At.V.XYZ[0], Y: c.At.V.XYZ[1]}
		at, middle = append(at, p), r2.Add(middle, r2.Scale(1/float64(len(n.d.Castors)), p))
		trails = append(trails, n.said("trail_"+c.Name, &c.Trail))
	}
	for i, p := range at {
		if inwards := r2.Sub(middle, p); r2.Norm(inwards) > 0 {
			p = r2.Add(p, r2.Scale(n.d.Castors[i].Trail.V.SI, r2.Unit(inwards)))
		}
		contact = append(contact, p)
	}
	centre := r2.Vec{X: hung.Centre.X, Y: hung.Centre.Y}
	var loads, worst []float64
	err := hung.err
	if known(in) && err == nil {
		if loads, err = Reactions(hung.Mass, centre, at); err == nil { // kg in, kg out
			worst, err = WorstReactions(hung.Mass, centre, at)
		}
	}
	each := func(values []float64, i int) func([]float64) (float64, error) {
		return func([]float64) (float64, error) {
			if err != nil {
				return 0, err
			}
			return values[i], nil
		}
	}
	for i := range n.d.Castors {
		c := &n.d.Castors[i]
		n.work(step{to: &c.Calc.Load, formula: "by statics on three; on more, a rigid load on castors of equal stiffness", source: "statics", note: "the dolly's own mass left out", in: in, by: each(loads, i)})
		n.work(step{to: &c.Calc.Rocking, formula: "the most on any three castors", source: "statics", note: "the dolly's own mass left out", in: in, by: each(worst, i)})
	}
	n.dollyTips(s, hung, in, trails, contact, floor)
	n.dollyFrame(s, at, in)
}

func (n *notebook) dollyTips(s *document.Support, hung load, in, trails []Input, contact []r2.Vec, floor float64) {
	polygon, err := SupportPolygon(contact)
	n.work(step{
		to:      &s.Calc.DollyEdge,
		formula: "distance of the centre of mass from the nearest edge of the castors' contacts", source: "statics", note: "each castor turned inwards by its trail",
		in: once(in, trails),
		by: func([]float64) (float64, error) {
			if err != nil {
				return 0, err
			}
			return EdgeDistance(polygon, r2.Vec{X: hung.Centre.X, Y: hung.Centre.Y})
		},
	})
	n.work(step{
		to:      &s.Calc.DollyTips,
		formula: "atan(margin / h)", source: "statics", note: "h above the floor; the dolly's own mass, which helps, left out", unit: "deg",
		in: once([]Input{n.worked("margin", &s.Calc.DollyEdge)}, in),
		by: func(x []float64) (float64, error) { return TiltToTip(x[0], hung.Centre.Z-floor) },
	})
	n.work(step{
		to:      &s.Calc.DollyStep,
		formula: "b sin(tilt), b the least width of the castors' contacts", source: "statics", note: "pushed gently: a castor that stops dead tips it sooner",
		in: once([]Input{n.worked("tilt", &s.Calc.DollyTips)}, in, trails),
		by: func(x []float64) (float64, error) {
			if err != nil {
				return 0, err
			}
			return result("step", leastWidth(polygon)*math.Sin(x[0]))
		},
	})
}

// leastWidth is the least distance between two parallel lines that a polygon lies
// between.
func leastWidth(polygon []r2.Vec) float64 {
	least := math.Inf(1)
	for i, a := range polygon {
		b := polygon[(i+1)%len(polygon)]
		across := 0.0
		for _, p := range polygon {
			across = max(across, turn(a, b, p)/r2.Norm(r2.Sub(b, a)))
		}
		least = min(least, across)
	}
	return least
}

// dollyFrame works out the bending of one frame tube that bears the whole weight
// at its middle: more than any tube of a frame does.
func (n *notebook) dollyFrame(s *document.Support, at []r2.Vec, in []Input) {
	span := 0.0
	for _, a := range at {
		for _, b := range at {
			if along := math.Max(math.Abs(a.X-b.X), math.Abs(a.Y-b.Y)); along > span {
				span = along
			}
		}
	}
	tube := &s.Carrier.Frame
	n.work(step{
		to:      &s.Calc.DollyFrame,
		formula: "σ = m g L / (4 W), W of the square section with its round corners", source: "en-10219-2", unit: "MPa",
		note: "one tube with all the weight at its middle, L the longest side: an upper bound; W by how the tube was made",
		in:   once([]Input{n.said("m", &n.d.Given.Weighed.Mass), n.said("B", &tube.Outer), n.said("T", &tube.Wall), n.said("made", &tube.Drawn)}, in),
		by: func(x []float64) (float64, error) {
			section := ColdFormed(x[1], x[2])
			if tube.Drawn.V == "hot-finished" {
				section = HotFinished(x[1], x[2])
			}
			modulus, err := section.Modulus()
			if err != nil {
				return 0, err
			}
			moment, err := BeamMoment(x[0]*StandardGravity, span, span/2, span/2)
			return moment / modulus, err
		},
	})
}

package workings

import (
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
)

// A Layout is where things are while a car stands on its supports and the hook
// takes its driveline: what a drawing needs beside the figures of a document. It
// comes out of the same derivations. Places are in the car's axes at ride height,
// in m.
type Layout struct {
	FrontAxle Place    // on the ground, below the middle of the axle line
	RearAxle  Place    //
	Wheels    []Place  // where the tyres touch the ground
	Supports  []Place  // stands as the document lists them, then wheels that are down
	Polygon   []r2.Vec // that they enclose, counter-clockwise; nil where it is not known
	Raise     Amount   // by which the stands raise the car above ride height, m

	In        Mass    // the car with its driveline; not known of an empty bay
	Hanging   Mass    // the car with all the driveline's weight on the hook
	Out       Mass    // the car without what leaves it
	Driveline Mass    // in its place
	Taken     []Share // from none of the driveline's weight on the hook to all; nil where not known

	Leaving []Solid // of the driveline, in their place
	Staying []Solid // of the car
	Slung   Slung
}

// An Amount is a number that may not be known.
type Amount struct {
	Value   float64
	Known   bool
	Guessed bool     // rests on a guess
	Missing []string // paths that would have to be written first
}

// A Place is a point that may not be known.
type Place struct {
	Name    string
	At      r3.Vec
	Known   bool
	Missing []string
}

// A Mass is a body that may not be known.
type Mass struct {
	Body
	Known   bool      // its mass and where its centre is in plan
	Guessed bool      // one of these rests on a guess
	Missing []string  //
	Height  Amount    // of its centre, m
	Edge    r2.Vec    // the point of the polygon's edge that is nearest to its centre
	Loads   []float64 // on each of the supports, kg; nil where not known
}

// A Share is how the car stands while a share of the driveline's weight is on the
// hook.
type Share struct {
	Taken  float64   // 0 to 1
	Margin float64   // of the centre of mass inside the supports, m
	Left   Amount    // of it, the uncertainty taken off
	Loads  []float64 // on each of the supports, kg; nil where the centre is outside
}

// A Solid is a box, perhaps turned, by its eight corners.
type Solid struct {
	Name    string
	Corners []r3.Vec
}

// Slung is the driveline as it hangs: level axes, the hook at their origin, z up.
type Slung struct {
	Eyes    []Place // named as the lift points
	Centre  r3.Vec
	Solids  []Solid
	Known   bool
	Missing []string
}

// LayoutOf lays out a document that [Derive] has been through. It changes nothing.
func LayoutOf(d *document.Document) Layout {
	n := newNotebook(d)
	var l Layout
	l.Leaving = n.inPlace()
	if len(d.Support) > 0 {
		l.Slung = n.hanging(&d.Support[0])
	}
	if len(d.Cars) == 0 {
		return l
	}
	car := &d.Cars[0]
	l.Staying = solids(&d.Given.CarSolids)
	l.FrontAxle, l.RearAxle = n.axle(car, "front").place("front"), n.axle(car, "rear").place("rear")
	for _, name := range []string{"front-left", "front-right", "rear-left", "rear-right"} {
		l.Wheels = append(l.Wheels, n.wheel(car, name).place(name))
	}
	in, out := n.standing(car)
	lump := n.installed()
	l.Out, l.Driveline = massOf(out), massOf(lump)
	if d.Composition == document.CarWithDriveline {
		l.In, l.Hanging = massOf(in), massOf(onHook(in, lump, 1))
	}
	if len(d.Support) > 0 {
		l.standOn(n, &d.Support[0], in, lump, out)
	}
	return l
}

// standOn adds what depends on the supports.
func (l *Layout) standOn(n *notebook, s *document.Support, in, lump, out load) {
	raise, from := n.raised(s)
	l.Raise = amountOf(raise, from)
	l.Raise.Known = l.Raise.Known && len(n.d.Stands) > 0
	for i := range n.d.Stands {
		l.Supports = append(l.Supports, n.fixed("pad", &n.d.Stands[i].At).place(n.d.Stands[i].Name))
	}
	for _, name := range s.Wheels.V {
		l.Supports = append(l.Supports, n.wheel(&n.d.Cars[0], name).place(name))
	}
	on := n.restingOn(&n.d.Cars[0], s)
	if !known(on.in) {
		return
	}
	polygon, err := SupportPolygon(on.at)
	if err != nil {
		return
	}
	l.Polygon = polygon
	for _, m := range []struct {
		to *Mass
		of load
	}{{&l.In, in}, {&l.Hanging, onHook(in, lump, 1)}, {&l.Out, out}} {
		if m.to.Known {
			m.to.Edge, _, _ = nearestEdge(polygon, r2.Vec{X: m.to.Centre.X, Y: m.to.Centre.Y})
			m.to.Loads = on.bearing(m.of).elastic
		}
	}
	if !l.Hanging.Known {
		return
	}
	for i := range sweep + 1 {
		share := float64(i) / sweep
		rest := onHook(in, lump, share)
		if margin, err := on.margin(rest.Body); err == nil && rest.err == nil {
			l.Taken = append(l.Taken, Share{share, margin, amountOf(margin-rest.Within, rest.doubt), on.bearing(rest).elastic})
		}
	}
}

// hanging lays out the driveline under the hook.
func (n *notebook) hanging(s *document.Support) Slung {
	hung := n.hung()
	slung := n.slung(s, hung)
	out := Slung{Known: known(slung.in) && slung.err == nil, Missing: missing(slung.in)}
	if !out.Known {
		return out
	}
	out.Centre = slung.Level(hung.Centre)
	for i, eye := range slung.eyes {
		out.Eyes = append(out.Eyes, Place{Name: slung.points[i].Name, At: slung.Level(eye), Known: true})
	}
	out.Solids = solids(&n.d.Given.Solids)
	for _, s := range out.Solids {
		for i, p := range s.Corners {
			s.Corners[i] = slung.Level(p)
		}
	}
	return out
}

// inPlace are the driveline's solids in the car's axes. None are known before the
// place of the driveline is.
func (n *notebook) inPlace() []Solid {
	fit := &n.d.Given.Fit
	datum, tilt := n.fixed("datum", &fit.At), n.said("nose up", &fit.NoseUp)
	if !known(append(datum.in, tilt)) {
		return nil
	}
	out := solids(&n.d.Given.Solids)
	for _, s := range out {
		for i, p := range s.Corners {
			s.Corners[i] = IntoCar(p, datum.Vec, tilt.Value)
		}
	}
	return out
}

func solids(of *spec.Table[spec.Solid]) []Solid {
	var out []Solid
	for _, name := range of.Names() {
		if s := of.Named[name]; s.Room.Given() {
			out = append(out, Solid{name, corners(s.Room.V)})
		}
	}
	return out
}

// axle is the point on the ground below the middle of an axle line.
func (n *notebook) axle(c *document.Car, end string) spot {
	at := n.frontAxle(c)
	if end == "rear" {
		base := n.said("L", &c.Wheelbase)
		at.X -= base.Value
		at.in = append(slices.Clone(at.in), base)
	}
	return at
}

// wheel is where a tyre touches the ground, by the name of its corner.
func (n *notebook) wheel(c *document.Car, name string) spot {
	end, side, _ := strings.Cut(strings.ReplaceAll(name, " ", "-"), "-")
	at, track := n.axle(c, end), n.said("t_f", &c.TrackFront)
	if end == "rear" {
		track = n.said("t_r", &c.TrackRear)
	}
	at.in = append(slices.Clone(at.in), track)
	switch side {
	case "left":
		at.Y += track.Value / 2
	case "right":
		at.Y -= track.Value / 2
	default:
		at.in = append(at.in, lacking("wheel "+name+" as front-left, front-right, rear-left or rear-right", n.said("wheels down", &n.d.Support[0].Wheels).Path))
	}
	return at
}

func (s spot) place(name string) Place {
	return Place{Name: name, At: s.Vec, Known: known(s.in), Missing: missing(s.in)}
}

func massOf(l load) Mass {
	of := amountOf(l.Mass, l.in)
	return Mass{Body: l.Body, Known: of.Known && l.err == nil, Guessed: of.Guessed, Missing: of.Missing, Height: amountOf(l.Centre.Z, once(l.in, l.height))}
}

// amountOf is a number that rests on inputs.
func amountOf(v float64, in []Input) Amount {
	return Amount{v, known(in), slices.ContainsFunc(in, func(i Input) bool { return i.Guess }), missing(in)}
}

// missing are the paths that would have to be written for inputs to be known.
func missing(in []Input) []string {
	var out []string
	for _, i := range in {
		out = withPaths(out, i.missing)
	}
	return out
}

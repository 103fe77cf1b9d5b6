package workings

import (
	"errors"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
)

// cars works out totals and centre of mass from the four scales.
func (n *notebook) cars() {
	for i := range n.d.Cars {
		c := &n.d.Cars[i]
		w := &c.Weighing
		fl, fr := n.said("FL", &w.FrontLeft), n.said("FR", &w.FrontRight)
		rl, rr := n.said("RL", &w.RearLeft), n.said("RR", &w.RearRight)
		scales := []Input{fl, fr, rl, rr}
		n.work(step{to: &c.Calc.Mass, formula: "M = FL + FR + RL + RR", source: "faa-ac-43.13-1b", clause: "chapter 10", in: scales, by: sum})
		n.work(step{
			to:      &c.Calc.FrontShare,
			formula: "(FL + FR) / M", source: "statics",
			in: []Input{fl, fr, n.worked("M", &c.Calc.Mass)},
			by: three(func(left, right, all float64) (float64, error) { return quotient(left+right, all) }),
		})
		n.work(step{
			to:      &c.Calc.AxleToMass,
			formula: "a = L (RL + RR) / M", source: "statics",
			in: append(slices.Clone(scales), n.said("L", &c.Wheelbase)),
			by: func(x []float64) (float64, error) { return CentreFromLines(x[0]+x[1], x[2]+x[3], x[4]) },
		})
		n.work(step{
			to:      &c.Calc.FromCentre,
			formula: "y = ((FL - FR) t_f + (RL - RR) t_r) / (2 M)", source: "statics",
			in: append(slices.Clone(scales), n.said("t_f", &c.TrackFront), n.said("t_r", &c.TrackRear), n.worked("M", &c.Calc.Mass)),
			by: func(x []float64) (float64, error) {
				return quotient((x[0]-x[1])*x[4]+(x[2]-x[3])*x[5], 2*x[6])
			},
		})
	}
}

// axleLoads works out what the axles carry with the driveline in the car and
// without it: the ride heights and corner weights that were set are for one of them.
func (n *notebook) axleLoads() {
	for i := range n.d.Cars {
		c := &n.d.Cars[i]
		in, out := n.standing(c)
		base, axle := n.said("L", &c.Wheelbase), n.frontAxle(c)
		axles := func(l load, front, rear *document.Figure, state string) {
			first, second, err := 0.0, 0.0, l.err
			inputs := once(l.in, []Input{base}, axle.in)
			if known(inputs) && err == nil {
				first, second, err = TwoLineReactions(l.Mass, base.Value, axle.X-l.Centre.X) // kg in, kg out
			}
			note := strings.Join(l.notes, "; ")
			n.work(step{to: front, formula: "M (L - a) / L, " + state, source: "statics", note: note, in: inputs, by: always(first, err)})
			n.work(step{to: rear, formula: "M a / L, " + state, source: "statics", note: note, in: inputs, by: always(second, err)})
		}
		if n.d.Composition == document.CarWithDriveline {
			axles(in, &c.Calc.Front, &c.Calc.Rear, "with the driveline in")
		}
		axles(out, &c.Calc.FrontOut, &c.Calc.RearOut, "with the driveline out")
		n.corners(c, out)
	}
}

// corners works out what each wheel carries with the driveline out. The scales say
// it with the driveline in; without, springs and their setting decide, and this is
// the share by place.
func (n *notebook) corners(c *document.Car, out load) {
	base, front, rear := n.said("L", &c.Wheelbase), n.said("t_f", &c.TrackFront), n.said("t_r", &c.TrackRear)
	axle := n.frontAxle(c)
	in := once(out.in, []Input{base, front, rear}, axle.in)
	var loads CornerLoads
	err := out.err
	if known(in) && err == nil {
		wheels := Wheels{Base: base.Value, FrontTrack: front.Value, RearTrack: rear.Value}
		loads, err = CornerEstimate(out.Mass, wheels, axle.X-out.Centre.X, out.Centre.Y-axle.Y) // kg in, kg out
	}
	for _, corner := range []struct {
		to   *document.Figure
		load float64
	}{
		{&c.Calc.FLOut, loads.FrontLeft}, {&c.Calc.FROut, loads.FrontRight}, {&c.Calc.RLOut, loads.RearLeft}, {&c.Calc.RROut, loads.RearRight},
	} {
		n.work(step{
			to:      corner.to,
			formula: "share by place along and across, with the driveline out", source: "statics", note: "springs as set may shift load from one diagonal to the other",
			in: in,
			by: always(corner.load, err),
		})
	}
}

// A load is a body on its way through the workings, with what it rests on. Its
// values hold only where those inputs are known.
type load struct {
	Body
	in     []Input // mass, and centre in plan
	height []Input // height of the centre
	doubt  []Input // how near the centre is known
	notes  []string
	err    error
}

func known(in []Input) bool {
	return !slices.ContainsFunc(in, func(i Input) bool { return !i.Known })
}

// joined is what two loads rest on together.
func (l load) joined(other load) load {
	return load{
		in: once(l.in, other.in), height: once(l.height, other.height), doubt: once(l.doubt, other.doubt),
		notes: append(slices.Clone(l.notes), other.notes...), err: errors.Join(l.err, other.err),
	}
}

// once joins lists of inputs and keeps each input once.
func once(lists ...[]Input) []Input {
	var out []Input
	for _, in := range slices.Concat(lists...) {
		if !slices.ContainsFunc(out, func(o Input) bool { return o.Symbol == in.Symbol && o.Path == in.Path }) {
			out = append(out, in)
		}
	}
	return out
}

func (l load) plus(other load) load { return l.with(other, Combine) }

func (l load) less(other load) load {
	return l.with(other, func(b ...Body) (Body, error) { return Remove(b[0], b[1]) })
}

func (l load) with(other load, by func(...Body) (Body, error)) load {
	out := l.joined(other)
	if known(out.in) && out.err == nil {
		out.Body, out.err = by(l.Body, other.Body)
	}
	return out
}

// share is part of a load that hangs from a hook over its centre.
func (l load) share(s float64) load {
	l.Mass *= s
	return l
}

// frontAxle is the point on the ground below the middle of the front axle line, in
// the car's axes. What the scales know is measured from there.
func (n *notebook) frontAxle(c *document.Car) spot { return n.fixed("front axle", &c.FrontAxle) }

// weighed is the car as it stood on the scales, less the driver, and with the
// fuel that is in it now.
func (n *notebook) weighed(c *document.Car) load {
	axle := n.frontAxle(c)
	w := &c.Weighing
	l := load{
		in:     append(axle.in, n.worked("M", &c.Calc.Mass), n.worked("a", &c.Calc.AxleToMass), n.worked("y", &c.Calc.FromCentre)),
		height: []Input{n.said("h", &w.Height)},
		doubt:  []Input{n.said("u", &w.Unsure)},
	}
	l.Body = Body{
		Mass:   c.Calc.Mass.Value,
		Centre: r3.Add(axle.Vec, r3.Vec{X: -c.Calc.AxleToMass.Value, Y: c.Calc.FromCentre.Value, Z: w.Height.V.SI}),
		Within: w.Unsure.V.SI,
	}
	switch {
	case !w.Driver.Given() && w.Driver.Said() != spec.None:
		l.in = append(l.in, n.said("driver", &w.Driver))
	case w.Driver.V:
		if driver := n.d.Given.CarMasses.Named["driver"]; driver != nil {
			l = l.less(n.massAt(driver))
		} else {
			l.in = append(l.in, lacking("driver", "masses.driver"))
		}
	}
	return n.refuelled(l, w)
}

// refuelled brings the fuel to what is in the tank now, where both are said.
func (n *notebook) refuelled(l load, w *spec.Weighing) load {
	if len(n.d.Fuel) == 0 || !w.Fuel.Given() || !n.d.Fuel[0].Cell.Amount.Given() {
		l.notes = append(l.notes, "with the fuel that it was weighed with")
		return l
	}
	cell := &n.d.Fuel[0].Cell
	volume := cell.Amount.V.SI - w.Fuel.V.SI
	if volume == 0 {
		return l
	}
	density, at := n.fuelDensity(&cell.Filled), n.fixed("tank", &cell.At)
	fuel := load{
		Body: Body{Mass: max(volume, -volume) * density.Value, Centre: at.Vec},
		in:   []Input{n.said("V_weighed", &w.Fuel), n.said("V_now", &cell.Amount), density, at.in[0]},
	}
	if volume > 0 {
		return l.plus(fuel)
	}
	return l.less(fuel)
}

// massAt is a part of known mass and place, in the axes that it is written in.
func (n *notebook) massAt(m *spec.MassAt) load {
	at := n.fixed("c", &m.At)
	return load{Body: Body{Mass: m.Mass.V.SI, Centre: at.Vec}, in: []Input{n.said("m", &m.Mass), at.in[0]}}
}

// hung is the driveline in its own axes: as weighed, with its centre as measured
// or, failing that, that of its parts.
func (n *notebook) hung() load {
	w := &n.d.Given.Weighed
	mass, doubt := n.said("m", &w.Mass), n.said("u_driveline", &w.Unsure)
	if !w.At.Given() && len(n.d.Given.Masses.Named) > 0 {
		var parts load
		for i, name := range n.d.Given.Masses.Names() {
			part := n.massAt(n.d.Given.Masses.Named[name])
			if i == 0 {
				parts = part
			} else {
				parts = parts.plus(part)
			}
		}
		parts.in = once([]Input{mass}, parts.in)
		parts.Mass, parts.Within = mass.Value, w.Unsure.V.SI
		parts.doubt = []Input{doubt}
		parts.notes = append(parts.notes, "the driveline's centre from the masses of its parts")
		return parts
	}
	at := n.fixed("c_driveline", &w.At)
	return load{
		Body: Body{Mass: mass.Value, Centre: at.Vec, Within: w.Unsure.V.SI},
		in:   []Input{mass, at.in[0]}, doubt: []Input{doubt},
	}
}

// installed is the driveline in the car's axes.
func (n *notebook) installed() load {
	l := n.hung()
	fit := &n.d.Given.Fit
	datum, tilt := n.fixed("datum", &fit.At), n.said("nose up", &fit.NoseUp)
	l.in = once(l.in, datum.in, []Input{tilt})
	l.Centre = IntoCar(l.Centre, datum.Vec, tilt.Value)
	return l
}

// standing gives the car with the driveline in it, and without.
func (n *notebook) standing(c *document.Car) (in, out load) {
	car := n.weighed(c)
	with := &c.Weighing.Driveline
	switch {
	case with.Said() == spec.None:
		return car.plus(n.installed()), car
	case with.Given() && n.d.Given.Driveline != "" && spec.Stem(with.V) == n.d.Given.Driveline:
		out = car.less(n.installed())
		for _, part := range n.d.Given.CarMasses.Names() {
			if m := n.d.Given.CarMasses.Named[part]; m.Leaves.V {
				out = out.less(n.massAt(m))
			}
		}
		return car, out
	}
	missing := n.said("weighed with", with)
	if missing.Known { // with a driveline that is not this one
		missing = lacking("weighed with none, or with the driveline judged", missing.Path)
	}
	car.in = append(car.in, missing)
	return car, car
}

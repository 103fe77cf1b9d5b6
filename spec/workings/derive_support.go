package workings

import (
	"fmt"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// sweep is the number of steps in which the hoist takes the driveline's weight.
// Margin and uncertainty are worst at one of the ends; the load on a stand that
// lets go need not be.
const sweep = 20

// supports are what the car rests on, stands first, with what their places rest
// on.
type supports struct {
	at     []r2.Vec
	lowest float64 // height of the lowest saddle or wheel above the ground, m
	in     []Input
	held   bool // by something else too, whose place nobody tells
}

// support works out how the car stands at each stage, and what each stand bears.
func (n *notebook) support() {
	if len(n.d.Cars) == 0 || len(n.d.Support) == 0 || len(n.d.Stands) == 0 {
		return
	}
	car := &n.d.Cars[0]
	on := n.restingOn(car, &n.d.Support[0])
	in, out := n.standing(car)
	if n.d.Composition == document.EmptyBay {
		in = load{}
	}
	lump := n.installed()
	for i := range n.d.Cases {
		c := &n.d.Cases[i]
		switch c.Stage {
		case document.Raised:
			n.stability(c, in, on)
		case document.OutRaised:
			n.stability(c, out, on)
		case document.Hoisting:
			n.hoisting(c, in, out, lump, on)
		}
	}
	n.standLoads(in, out, lump, on)
}

// restingOn lists the stands and the wheels that are down. The wheels have to be
// told of: a wheel that nobody mentions may be down or not.
func (n *notebook) restingOn(c *document.Car, s *document.Support) supports {
	var on supports
	for i := range n.d.Stands {
		p := n.fixed("pad", &n.d.Stands[i].At)
		on.in = append(on.in, p.in...)
		on.at = append(on.at, r2.Vec{X: p.X, Y: p.Y})
		if i == 0 || p.Z < on.lowest {
			on.lowest = p.Z
		}
	}
	on.held = s.HeldBy.Given()
	if s.Wheels.Said() == spec.None {
		return n.enough(on, s)
	}
	down := n.said("wheels down", &s.Wheels)
	axle := n.frontAxle(c)
	on.in = append(on.in, down)
	if !down.Known {
		return on
	}
	on.in, on.lowest = append(on.in, axle.in...), axle.Z
	for _, name := range s.Wheels.V {
		at := n.wheel(c, name)
		on.in, on.at = append(on.in, at.in...), append(on.at, r2.Vec{X: at.X, Y: at.Y})
	}
	on.in = once(on.in)
	return n.enough(on, s)
}

// enough asks for more stands where those that are told of enclose no area.
func (n *notebook) enough(on supports, s *document.Support) supports {
	if _, err := SupportPolygon(on.at); err != nil && known(on.in) {
		on.in = append(on.in, lacking("three supports, not in one line", join(s.Path, "stands")))
	}
	return on
}

// margin is how far in m the centre of a body lies inside the supports.
func (on supports) margin(b Body) (float64, error) {
	polygon, err := SupportPolygon(on.at)
	if err != nil {
		return 0, err
	}
	return EdgeDistance(polygon, r2.Vec{X: b.Centre.X, Y: b.Centre.Y})
}

// stability works out mass, margin and tilt of a body on its supports.
func (n *notebook) stability(c *document.SupportCase, l load, on supports) {
	notes := slices.Clone(l.notes)
	if on.held {
		notes = append(notes, "what else holds the car is not counted")
	}
	all := once(l.in, on.in)
	n.work(step{
		to:      &c.Calc.Mass,
		formula: "mass on the supports", source: "faa-ac-43.13-1b", clause: "chapter 10", note: strings.Join(notes, "; "),
		in: l.in,
		by: always(l.Mass, l.err),
	})
	margin, err := 0.0, l.err
	if known(all) && err == nil {
		margin, err = on.margin(l.Body)
		notes = append(notes, fmt.Sprintf("centre of mass at x %s, y %s", unit.Format(l.Centre.X, unit.Length, ""), unit.Format(l.Centre.Y, unit.Length, "")))
	}
	n.work(step{
		to:      &c.Calc.Margin,
		formula: "distance of the centre of mass from the nearest edge of the supports", source: "statics", note: strings.Join(notes, "; "),
		in: all,
		by: always(margin, err),
	})
	n.work(step{
		to:      &c.Calc.Unsure,
		formula: "Σ m u / Σ m, all wrong the same way", source: "faa-ac-43.13-1b", clause: "chapter 10",
		in: once(l.in, l.doubt),
		by: always(l.Within, l.err),
	})
	n.work(step{
		to:      &c.Calc.Left,
		formula: "margin - uncertainty", source: "statics",
		in: []Input{n.worked("margin", &c.Calc.Margin), n.worked("uncertainty", &c.Calc.Unsure)},
		by: two(difference),
	})
	n.work(step{
		to:      &c.Calc.Tilt,
		formula: "atan(margin left / h)", source: "statics", note: "h above the lowest saddle; level floor, nothing slips",
		in: once([]Input{n.worked("margin left", &c.Calc.Left)}, l.height, l.in, on.in),
		by: func(x []float64) (float64, error) { return TiltToTip(x[0], l.Centre.Z-on.lowest) },
	})
}

// hoisting judges the car while the hoist takes the driveline: from none of its
// weight to all of it. The centre of mass moves along a straight line and its
// uncertainty grows in proportion, so the worst is at one end.
func (n *notebook) hoisting(c *document.SupportCase, in, out, lump load, on supports) {
	worst, share := in, 0.0
	left := func(l load) float64 {
		margin, err := on.margin(l.Body)
		if err != nil || l.err != nil {
			return 0
		}
		if known(l.doubt) {
			margin -= l.Within
		}
		return margin
	}
	if all := once(in.in, out.in, on.in); known(all) && left(out) < left(in) {
		worst, share = out, 1
	}
	worst.in, worst.doubt, worst.height = once(in.in, out.in), once(in.doubt, out.doubt), once(in.height, out.height)
	worst.notes = append(slices.Clone(worst.notes), "the hook over the driveline's centre of mass")
	if polygon, err := SupportPolygon(on.at); err == nil && known(worst.in) && in.err == nil {
		hook := r2.Vec{X: lump.Centre.X, Y: lump.Centre.Y}
		if pull, over, err := LiftingShare(in.Body, hook, lump.Mass, polygon); err == nil && over {
			worst.notes = append(worst.notes, fmt.Sprintf("the centre goes over the edge at %.0f %% of the driveline's weight", 100*pull/lump.Mass))
		}
	}
	n.stability(c, worst, on)
	n.work(step{
		to:      &c.Calc.Share,
		formula: "share of the driveline's weight on the hoist where the margin is least", source: "statics",
		in: []Input{n.worked("margin", &c.Calc.Margin)},
		by: always(share, nil),
	})
}

// A bearing is what the supports bear at one stage, in kg.
type bearing struct {
	elastic []float64 // as an estimate where there are more than three
	rocking []float64 // the most that the floor can make of it
	err     error
}

func (on supports) bearing(l load) bearing {
	b := bearing{err: l.err}
	if b.err != nil || !known(once(l.in, on.in)) {
		return b
	}
	centre := r2.Vec{X: l.Centre.X, Y: l.Centre.Y}
	if b.elastic, b.err = Reactions(l.Mass, centre, on.at); b.err == nil { // kg in, kg out
		b.rocking, b.err = WorstReactions(l.Mass, centre, on.at)
	}
	return b
}

// over looks through the stages for the extreme load of one support.
func over(stages []bearing, support int, of func(bearing) []float64, extreme func([]float64) float64) func([]float64) (float64, error) {
	var loads []float64
	for _, b := range stages {
		if b.err != nil {
			return always(0, b.err)
		}
		if of(b) != nil {
			loads = append(loads, of(b)[support])
		}
	}
	if len(loads) == 0 { // an input is missing
		return always(0, nil)
	}
	return always(extreme(loads), nil)
}

// standLoads works out what each stand bears.
func (n *notebook) standLoads(in, out, lump load, on supports) {
	rests := load{in: on.in}.joined(out)
	var stages []bearing
	if n.d.Composition == document.CarWithDriveline {
		rests = rests.joined(in)
		for i := range sweep {
			stages = append(stages, on.bearing(onHook(in, lump, float64(i)/sweep)))
		}
	}
	stages = append(stages, on.bearing(out))
	last := stages[len(stages)-1:]

	elastic := func(b bearing) []float64 { return b.elastic }
	rocking := func(b bearing) []float64 { return b.rocking }
	const (
		shared = "by statics on three; on more, a rigid car on stands of equal stiffness"
		of     = "of all stages, "
	)
	for i := range n.d.Stands {
		s := &n.d.Stands[i]
		n.capacity(s)
		if n.d.Composition == document.CarWithDriveline {
			n.work(step{to: &s.Calc.LoadIn, formula: shared, source: "statics", in: once(in.in, on.in), by: over(stages[:1], i, elastic, slices.Max)})
		}
		n.work(step{to: &s.Calc.LoadOut, formula: shared, source: "statics", in: once(out.in, on.in), by: over(last, i, elastic, slices.Max)})
		n.work(step{to: &s.Calc.LoadMost, formula: "highest " + of + shared, source: "statics", in: rests.in, by: over(stages, i, elastic, slices.Max)})
		n.work(step{to: &s.Calc.LoadLeast, formula: "lowest " + of + shared, source: "statics", in: rests.in, by: over(stages, i, elastic, slices.Min)})
		n.work(step{to: &s.Calc.Rocking, formula: "highest " + of + "on any three supports", source: "statics", in: rests.in, by: over(stages, i, rocking, slices.Max)})
		height := first(n.said("h", &s.Height), n.said("h", &n.d.Support[0].Saddle))
		n.work(step{
			to:      &s.Calc.Push,
			formula: "F = m g b / h, at the lowest load", source: "statics", note: "the stand's own weight left out",
			in: []Input{n.worked("m", &s.Calc.LoadLeast), n.said("b", &s.Kind.Reach), height},
			by: three(func(mass, reach, height float64) (float64, error) {
				return ToppleForce(mass*StandardGravity, reach, height)
			}),
		})
	}
}

// onHook is the car while a share of the driveline's weight hangs from the hook.
func onHook(in, lump load, share float64) load {
	if share == 0 {
		return in
	}
	return in.less(lump.share(share))
}

// capacity is what one stand is rated for: a rating for a pair is half for each.
func (n *notebook) capacity(s *document.Stand) {
	rated, basis := n.said("rated", &s.Kind.Rated), n.said("basis", &s.Kind.Basis)
	st := step{to: &s.Calc.Capacity, formula: "as rated, each", source: "common-practice", in: []Input{rated, basis}, by: same}
	if s.Kind.Basis.V == "pair" {
		st.formula = "half of the rating for a pair"
		st.by = func(x []float64) (float64, error) { return x[0] / 2, nil }
	}
	n.work(st)
}

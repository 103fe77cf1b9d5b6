package workings

import (
	"cmp"
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
	front, axes := n.axes(c)
	on.in = append(on.in, down)
	if !down.Known {
		return on
	}
	base, trackFront, trackRear := n.said("L", &c.Wheelbase), n.said("t_f", &c.TrackFront), n.said("t_r", &c.TrackRear)
	on.in, on.lowest = append(on.in, axes...), 0
	for _, name := range s.Wheels.V {
		end, side, _ := strings.Cut(strings.ReplaceAll(name, " ", "-"), "-")
		at, track := r2.Vec{X: front}, trackFront
		if end == "rear" {
			at.X, track = front-base.Value, trackRear
			on.in = append(on.in, base)
		}
		on.in = append(on.in, track)
		switch side {
		case "left":
			at.Y = track.Value / 2
		case "right":
			at.Y = -track.Value / 2
		default:
			on.in = append(on.in, lacking("wheel "+name+" as front-left, front-right, rear-left or rear-right", down.Path))
		}
		on.at = append(on.at, at)
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

// standLoads works out what each stand bears.
func (n *notebook) standLoads(in, out, lump load, on supports) {
	var stages []load
	if n.d.Composition == document.CarWithDriveline {
		for i := range sweep {
			stages = append(stages, n.onHook(in, lump, float64(i)/sweep))
		}
	}
	stages = append(stages, out)
	whole := load{in: on.in}
	for _, l := range stages {
		whole = whole.joined(l)
	}
	bear := func(l load, by func(float64, r2.Vec, []r2.Vec) ([]float64, error)) ([]float64, error) {
		if l.err != nil || !known(once(l.in, on.in)) {
			return make([]float64, len(on.at)), l.err
		}
		return by(l.Mass, r2.Vec{X: l.Centre.X, Y: l.Centre.Y}, on.at) // kg in, kg out
	}
	elastic := "statics on three; on more, rigid car on stands of equal stiffness"
	for i := range n.d.Stands {
		s := &n.d.Stands[i]
		n.capacity(s)
		each := func(to *document.Figure, formula string, stages []load, rests []Input, pick func(a, b float64) float64,
			by func(float64, r2.Vec, []r2.Vec) ([]float64, error)) {
			var value float64
			var refused error
			for k, l := range stages {
				loads, err := bear(l, by)
				if refused = cmp.Or(refused, err); err != nil {
					continue
				}
				if value = pick(value, loads[i]); k == 0 {
					value = loads[i]
				}
			}
			n.work(step{to: to, formula: formula, source: "statics", in: once(rests, on.in), by: always(value, refused)})
		}
		if n.d.Composition == document.CarWithDriveline {
			each(&s.Calc.LoadIn, elastic, []load{in}, in.in, larger, Reactions)
		}
		each(&s.Calc.LoadOut, elastic, []load{out}, out.in, larger, Reactions)
		each(&s.Calc.LoadMost, "highest of all stages: "+elastic, stages, whole.in, larger, Reactions)
		each(&s.Calc.LoadLeast, "lowest of all stages: "+elastic, stages, whole.in, smaller, Reactions)
		each(&s.Calc.Rocking, "highest of all stages, on any three supports", stages, whole.in, larger, WorstReactions)
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
func (n *notebook) onHook(in, lump load, share float64) load {
	if share == 0 {
		return in
	}
	return in.less(lump.share(share))
}

func larger(a, b float64) float64  { return max(a, b) }
func smaller(a, b float64) float64 { return min(a, b) }

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

package workings

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// lifting works out how the driveline hangs, what each leg and eye bears, and how
// deep an eye bolt has to go.
func (n *notebook) lifting() {
	hung := n.hung()
	for i := range n.d.Lift {
		l := &n.d.Lift[i]
		eye := n.fixed("eye", &l.At)
		n.work(step{
			to:      &l.Calc.AboveMass,
			formula: "z_eye - z_centre, in the driveline's own axes", source: "statics",
			note: strings.Join(append(hung.notes, "with the driveline level"), "; "),
			in:   once(eye.in, hung.in),
			by:   always(eye.Z-hung.Centre.Z, hung.err),
		})
		if l.Thread.Given() || !l.Bolts.Told() {
			n.eyeBolt(l)
		}
	}
	for i := range n.d.Support {
		s := &n.d.Support[i]
		n.hook(s)
		hanging := n.legs(s, hung)
		n.hookHeight(s, hanging)
		n.saddleHeight(s)
		n.dolly(s, hung)
	}
}

// keyOf is the path of a key in a thing of the shop file, or of what names the
// thing where it is not found.
func keyOf(thing, key, naming string) string {
	if thing == "" {
		return naming
	}
	return join(thing, key)
}

// eyeIn is how the table of eye bolts names each tapped metal.
var eyeIn = map[string]string{
	"steel": "steel", "mild-steel": "steel", "cast-iron": "cast-iron", "aluminium": "aluminium", "cast-aluminium": "aluminium",
	"magnesium": "aluminium-magnesium",
}

func (n *notebook) eyeBolt(l *document.LiftPoint) {
	n.work(step{
		to:      &l.Calc.Diameters,
		formula: "depth / d", source: "common-practice",
		in: []Input{n.said("depth", &l.Depth), n.diameter(&l.Thread)},
		by: two(quotient),
	})
	into := n.said("into", &l.Into)
	s := step{
		to:      &l.Calc.Needed,
		formula: "diameters by tapped metal, for an eye bolt", source: "lifting-eye-instruction",
		in: []Input{into},
		by: always(0, errNoEngagement),
	}
	if row, ok := tables.Engagement("eye-bolt", eyeIn[into.Text], ""); ok {
		s.source, s.clause = row.Source, row.Clause
		s.in = append(s.in, tabled("n", row.Diameters, unit.Ratio, row.Source, row.Clause))
		s.by = func(x []float64) (float64, error) { return x[1], nil }
	}
	n.work(s)
}

// hook works out what hangs from the hoist, and what its plate allows.
func (n *notebook) hook(s *document.Support) {
	in := []Input{n.said("m", &n.d.Given.Weighed.Mass)}
	if s.Lift.Said() != spec.None {
		in = append(in, n.said("m_tackle", &s.Crane.Tackle))
	}
	if s.Sling.Said() != spec.None {
		in = append(in, n.said("m_sling", &s.Tackle.Mass))
	}
	n.work(step{
		to:      &s.Calc.HookLoad,
		formula: "driveline + tackle + sling", source: "statics",
		in: in,
		by: sum,
	})
	rated := n.said("boom", &s.Boom)
	if boom := s.Crane.Booms.Named[s.Boom.V]; boom != nil {
		rated = n.said("rated", &boom.Rated)
	} else if rated.Known {
		rated = lacking(fmt.Sprintf("boom position %q of the hoist", s.Boom.V), rated.Path)
	}
	n.work(step{
		to:      &s.Calc.HookRated,
		formula: "plate figure for the boom position", source: "common-practice",
		in: []Input{rated},
		by: same,
	})
}

// A slung load is how the driveline hangs, with what that rests on.
type slung struct {
	Hanging
	points   []*document.LiftPoint
	eyes     []r3.Vec  // of the points, in the driveline's axes
	tensions []float64 // of the legs to them, kg
	in       []Input
	err      error
}

// slung works out how the driveline hangs and what every leg of the sling bears,
// from where its eye and the hook really are: the load turns until its centre of
// mass is below the hook, and then statics gives each leg its own.
func (n *notebook) slung(s *document.Support, hung load) slung {
	hang := slung{in: slices.Clone(hung.in), err: hung.err}
	var lengths []float64
	for _, name := range s.Tackle.Legs.Names() {
		leg := s.Tackle.Legs.Named[name]
		to := n.said("to", &leg.To)
		if to.Known {
			i := slices.IndexFunc(n.d.Lift, func(l document.LiftPoint) bool { return l.Name == to.Text })
			if i < 0 {
				to = lacking(fmt.Sprintf("lift point %q", to.Text), "driveline.lift."+to.Text)
			} else {
				point := &n.d.Lift[i]
				eye, length := n.fixed("eye_"+name, &point.At), n.said("L_"+name, &leg.Length)
				hang.points, hang.eyes, lengths = append(hang.points, point), append(hang.eyes, eye.Vec), append(lengths, length.Value)
				hang.in = once(hang.in, eye.in, []Input{length})
			}
		}
		if !to.Known {
			hang.in = append(hang.in, to)
		}
	}
	if len(hang.points) == 0 && known(hang.in) {
		hang.in = append(hang.in, lacking("legs", keyOf(s.Tackle.Path, "legs", join(s.Path, "sling"))))
	}
	if !known(hang.in) || hang.err != nil {
		return hang
	}
	if hang.Hanging, hang.err = Hang(hung.Centre, hang.eyes, lengths); hang.err != nil {
		return hang
	}
	level := make([]r3.Vec, len(hang.eyes))
	for i, eye := range hang.eyes {
		level[i] = hang.Level(eye)
	}
	hang.tensions, hang.err = LegTensions(hung.Mass, r3.Vec{}, level) // kg in, kg out
	if len(hang.eyes) > 3 {
		hang.tensions, hang.err = WorstLegTensions(hung.Mass, r3.Vec{}, level)
	}
	return hang
}

// legs records how the driveline hangs.
func (n *notebook) legs(s *document.Support, hung load) slung {
	hang := n.slung(s, hung)
	n.work(step{
		to:      &s.Calc.HangTilt,
		formula: "angle between the driveline's own z and the line from its centre of mass to the hook", source: "statics",
		note: strings.Join(hung.notes, "; "), unit: "deg",
		in: hang.in,
		by: func([]float64) (float64, error) { return hang.Tilt(), hang.err },
	})
	for i, point := range hang.points {
		n.leg(point, hang, i)
	}
	return hang
}

// leg works out one leg of a sling and the pull on its eye.
func (n *notebook) leg(point *document.LiftPoint, hang slung, i int) {
	eye := n.fixed("eye", &point.At)
	at := func(f func() (float64, error)) func([]float64) (float64, error) {
		return func([]float64) (float64, error) {
			if hang.err != nil {
				return 0, hang.err
			}
			return f()
		}
	}
	n.work(step{
		to:      &point.Calc.LegAngle,
		formula: "atan(height of the hook over the eye / distance aside)", source: "osha-sling-guidance", unit: "deg",
		in: hang.in,
		by: at(func() (float64, error) { return LegAngle(hang.Level(eye.Vec), r3.Vec{}) }),
	})
	tension := step{
		to:      &point.Calc.Tension,
		formula: "Σ T u = m g, u along each leg; as the mass that pulls so", source: "statics", note: "the sling's own mass left out",
		in: hang.in,
		by: at(func() (float64, error) { return hang.tensions[i], nil }),
	}
	if len(hang.tensions) > 3 {
		tension.note += "; the worst of the lifts in which three legs carry"
	}
	n.work(tension)
	n.work(step{
		to:      &point.Calc.EyePull,
		formula: "angle between leg and the driveline's own z", source: "bs-4278", note: "the eye taken as screwed in from above", unit: "deg",
		in: hang.in,
		by: at(func() (float64, error) { return EyeAngle(eye.Vec, hang.Hook, r3.Vec{Z: 1}) }),
	})
}

// corners are the eight corners of a box.
func corners(box [2]unit.Position) []r3.Vec {
	var out []r3.Vec
	for i := range 8 {
		out = append(out, r3.Vec{X: box[i&1].XYZ[0], Y: box[i>>1&1].XYZ[1], Z: box[i>>2&1].XYZ[2]})
	}
	return out
}

// room is the room that solids take, as corners, with what it rests on.
func (n *notebook) room(solids *spec.Table[spec.Solid], at string, counts func(*spec.Solid) bool) (points []r3.Vec, in []Input) {
	for _, name := range solids.Names() {
		if s := solids.Named[name]; counts == nil || counts(s) {
			in = append(in, n.said(name, &s.Room))
			if s.Room.Given() {
				points = append(points, corners(s.Room.V)...)
			}
		}
	}
	if len(solids.Named) == 0 {
		in = append(in, lacking("solids", at))
	}
	return points, in
}

// raised is how far the car is raised: nothing on its wheels, else what the first
// stand lifts its pad by.
func (n *notebook) raised(s *document.Support) (float64, []Input) {
	if len(n.d.Stands) == 0 {
		return 0, nil
	}
	stand := &n.d.Stands[0]
	saddle, pad := first(n.said("saddle", &stand.Height), n.said("saddle", &s.Saddle)), n.fixed("pad", &stand.At)
	return saddle.Value - pad.Z, append([]Input{saddle}, pad.in...)
}

// hookHeight works out how high the hook has to go where the driveline leaves
// upwards: over the highest thing that stays in the car on its way out.
func (n *notebook) hookHeight(s *document.Support, hang slung) {
	ways := n.d.Given.Fit.Leaves
	if !slices.Contains(ways.V, "up") {
		return
	}
	own, in := n.room(&n.d.Given.Solids, "driveline.solids", nil)
	off := n.d.Given.Fit.Behind.V
	stays, solids := n.room(&n.d.Given.CarSolids, "solids", func(s *spec.Solid) bool {
		return !slices.ContainsFunc(s.PartOf.V, func(part string) bool { return slices.Contains(off, part) })
	})
	raised, lifted := n.raised(s)
	installed := n.installed()
	n.work(step{
		to:      &s.Calc.HookNeeded,
		formula: "top of what stays in its way + raise + hook over the driveline's lowest point", source: "statics",
		note: "the driveline as it hangs; no clearance added; lifted straight up, then " + strings.Join(slices.DeleteFunc(slices.Clone(ways.V), func(w string) bool { return w == "up" }), " and "),
		in:   once(hang.in, in, solids, lifted, installed.in),
		by: func([]float64) (float64, error) {
			if hang.err != nil {
				return 0, hang.err
			}
			datum, tilt := n.d.Given.Fit.At.V.XYZ, n.d.Given.Fit.NoseUp.V.SI
			lowest := 0.0
			var inCar []r3.Vec
			for _, p := range own {
				lowest = min(lowest, hang.Level(p).Z)
				inCar = append(inCar, IntoCar(p, r3.Vec{X: datum[0], Y: datum[1], Z: datum[2]}, tilt))
			}
			return result("height of the hook", topInWay(stays, inCar, ways.V)+raised-lowest)
		},
	})
}

// topInWay is the height of the highest box, of those given by eight corners each,
// that lies over or in the way of a unit which leaves upwards and then level.
func topInWay(boxes, unit []r3.Vec, ways []string) float64 {
	span := func(points []r3.Vec) (low, high r3.Vec) {
		low, high = points[0], points[0]
		for _, p := range points {
			low = r3.Vec{X: min(low.X, p.X), Y: min(low.Y, p.Y), Z: min(low.Z, p.Z)}
			high = r3.Vec{X: max(high.X, p.X), Y: max(high.Y, p.Y), Z: max(high.Z, p.Z)}
		}
		return low, high
	}
	from, to := span(unit)
	for _, way := range ways {
		switch way {
		case "forward":
			to.X = math.Inf(1)
		case "back":
			from.X = math.Inf(-1)
		case "left":
			to.Y = math.Inf(1)
		case "right":
			from.Y = math.Inf(-1)
		}
	}
	top := 0.0
	for box := range slices.Chunk(boxes, 8) {
		low, high := span(box)
		if high.X > from.X && low.X < to.X && high.Y > from.Y && low.Y < to.Y {
			top = max(top, high.Z)
		}
	}
	return top
}

// saddleHeight works out how high the car has to stand for the driveline to come
// out beneath it on its dolly.
func (n *notebook) saddleHeight(s *document.Support) {
	if !slices.Contains(n.d.Given.Fit.Leaves.V, "down") || len(n.d.Stands) == 0 || len(n.d.Cars) == 0 {
		return
	}
	own, in := n.room(&n.d.Given.Solids, "driveline.solids", nil)
	floor, castors := n.castors(s)
	pad, gap := n.fixed("pad", &n.d.Stands[0].At), n.said("ground clearance", &n.d.Cars[0].GroundGap)
	n.work(step{
		to:      &s.Calc.Saddle,
		formula: "z_pad - ground clearance + height of the driveline on its dolly", source: "statics", note: "no clearance added",
		in: once(in, castors, pad.in, []Input{gap}),
		by: func([]float64) (float64, error) {
			highest := math.Inf(-1)
			for _, p := range own {
				highest = max(highest, p.Z)
			}
			return result("height of the saddles", pad.Z-gap.Value+highest-floor)
		},
	})
}

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
		formula: "b tan(tilt), b the least width of the castors' contacts", source: "statics", note: "pushed gently: a castor that stops dead tips it sooner",
		in: once([]Input{n.worked("tilt", &s.Calc.DollyTips)}, in, trails),
		by: func(x []float64) (float64, error) {
			if err != nil {
				return 0, err
			}
			return result("step", leastWidth(polygon)*math.Tan(x[0]))
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

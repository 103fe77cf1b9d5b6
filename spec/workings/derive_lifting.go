package workings

import (
	"fmt"
	"math"
	"slices"
	"strings"

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
	"steel": "steel", "mild-steel": "steel", "heat-treated-steel": "steel", "cast-iron": "cast-iron", "aluminium": "aluminium", "cast-aluminium": "aluminium",
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
	tensions := LegTensions
	if len(hang.eyes) > 3 {
		tensions = WorstLegTensions
	}
	hang.tensions, hang.err = tensions(hung.Mass, r3.Vec{}, level) // kg in, kg out
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

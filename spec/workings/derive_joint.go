package workings

import (
	"cmp"
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

func (n *notebook) joints() {
	for i := range n.d.Joints {
		j := &n.d.Joints[i]
		if j.Here == nil || j.There == nil {
			continue
		}
		j.Calc.ThreadMatch, j.Calc.NearEffect = threadMatch(j.Here, j.There)
		if j.Here.Form.V == flare37 || j.There.Form.V == flare37 {
			n.flareTorque(j)
		}
	}
}

const flare37 = "37-flare"

// threadMatch compares the threads of two halves: same, near or apart, and what
// a near match does. Both are "" unless both threads are known and, where they
// differ, which is the male one.
func threadMatch(here, there *document.Half) (match, effect string) {
	if here.Thread == nil || there.Thread == nil {
		return "", ""
	}
	male, err := unit.ParseThread(here.Thread.Text)
	female, err2 := unit.ParseThread(there.Thread.Text)
	if err != nil || err2 != nil {
		return "", ""
	}
	if male.Equal(female) {
		return "same", ""
	}
	switch {
	case here.Gender.V == "male" && there.Gender.V == "female":
	case here.Gender.V == "female" && there.Gender.V == "male":
		male, female = female, male
	default:
		return "", ""
	}
	near, isNear := unit.NearMatch(male, female)
	if !isNear {
		return "apart", ""
	}
	return "near", string(near.Effect)
}

// flareTorque looks up the torque band of a flare joint. An aluminium make-up
// governs where either half is aluminium.
func (n *notebook) flareTorque(j *document.Joint) {
	dash := Input{Symbol: "dash", Path: j.Here.Path, Known: true}
	switch {
	case j.Here.Dash != nil:
		dash.Value = float64(*j.Here.Dash)
	case j.There.Dash != nil:
		dash.Value, dash.Path = float64(*j.There.Dash), j.There.Path
	default:
		dash = lacking("dash", j.Here.Path)
	}
	makeUp := Input{Symbol: "make-up", Path: join(j.Path, "make-up"), Text: j.MakeUp, Known: true, Guess: j.Meet.MakeUp.Guess}
	if j.MakeUp == "" {
		makeUp = lacking("make-up", makeUp.Path)
	}
	n.flareSpanner(j, dash)
	set, metal := flareSet(j)
	in := []Input{dash, makeUp}
	if set == "" && makeUp.Known {
		in = append(in, metal)
	}
	row, ok := tables.FlareTorque(set, int(dash.Value))
	refused := error(nil)
	if !ok {
		refused = &RangeError{"dash size", dash.Value, "one that the torque table has"}
	}
	for _, band := range []struct {
		to    *document.Figure
		value float64
		word  string
	}{{&j.Calc.TorqueLeast, row.Low, "least"}, {&j.Calc.TorqueMost, row.High, "most"}} {
		n.work(step{
			to:      band.to,
			formula: band.word + " of the table of its make-up, by dash size", source: cmp.Or(row.Source, "common-practice"), clause: row.Clause,
			note: tables.FlareMakeUps()[set].About,
			in:   in,
			by:   always(band.value, refused),
		})
	}
}

// flareSpanner is the spanner of a flare nut by its dash size.
func (n *notebook) flareSpanner(j *document.Joint, dash Input) {
	row, ok := tables.AcrossFlats("flare-nut", fmt.Sprintf("-%.0f", dash.Value))
	s := step{
		to:      &j.Calc.Spanner,
		formula: "across flats of a flare nut, by dash size", source: cmp.Or(row.Source, "hose-swivel-torque-bands"), clause: row.Clause, unit: "in",
		note: row.Written,
		in:   []Input{dash},
		by:   always(row.AcrossFlats, nil),
	}
	if strings.Contains(j.Here.Metal, "aluminium") {
		s.note += "; on aluminium, of aluminium or with soft jaws, and a second one to hold against it"
	}
	if !ok {
		s.by = always(0, &RangeError{"dash size", dash.Value, "one that the table of flare nuts has"})
	}
	n.work(s)
}

// flareSet names the torque table of a joint's make-up. It is "" where the make-up
// does not settle it, with the metal that is missing.
func flareSet(j *document.Joint) (set string, metal Input) {
	aluminium := strings.Contains(j.Here.Metal, "aluminium") || strings.Contains(j.There.Metal, "aluminium")
	switch j.MakeUp {
	case "machined-swivel":
		return "machined-swivel", Input{}
	case "steel-swivel":
		if aluminium {
			return "machined-swivel", Input{}
		}
		return "steel-swivel", Input{}
	case "soft-tube":
		if aluminium {
			return "soft-tube-aluminium", Input{}
		}
		for _, half := range []*document.Half{j.Here, j.There} {
			if half.Metal == "" {
				return "", lacking("metal", half.Path+".metal")
			}
		}
		return "soft-tube-steel", Input{}
	}
	return "", Input{}
}

func (n *notebook) mounts() {
	for i := range n.d.Mounts {
		m := &n.d.Mounts[i]
		if m.There == nil {
			continue
		}
		here, there := n.fixed("car", &m.At), n.placed("driveline", &m.There.At)
		n.work(step{
			to:      &m.Calc.Offset,
			formula: "offset = |driveline - car|, both in the car's axes", source: "common-practice",
			in: append(here.in, there.in...),
			by: distance(here.Vec, there.Vec),
		})
		if m.Calc.Offset.Known {
			m.Calc.Towards = towards(r3.Sub(there.Vec, here.Vec))
		}
		n.mountEngagement(m)
	}
	n.mountLoads()
}

// towards says which way a vector of the car points, by its largest part and,
// where it is over half as large, the next.
func towards(v r3.Vec) string {
	parts := []struct {
		size      float64
		plus, not string
	}{{v.X, "forward", "back"}, {v.Y, "left", "right"}, {v.Z, "up", "down"}}
	var words []string
	largest := math.Max(math.Abs(v.X), math.Max(math.Abs(v.Y), math.Abs(v.Z)))
	for _, share := range []func(float64) bool{
		func(size float64) bool { return size == largest },
		func(size float64) bool { return size < largest && size > largest/2 },
	} {
		for _, p := range parts {
			if len(words) == 2 || largest == 0 || !share(math.Abs(p.size)) {
				continue
			}
			if p.size > 0 {
				words = append(words, p.plus)
			} else {
				words = append(words, p.not)
			}
		}
	}
	return strings.Join(words, " and ")
}

// mountEngagement works out how far the bolts of a mount screw in, and whether
// they bottom. The tapped half is the driveline's or, failing that, the car's;
// with plain holes in both the bolts have nuts, and there is nothing to work out.
func (n *notebook) mountEngagement(m *document.Mount) {
	holes := &m.There.Holes
	if !holes.Thread.Given() && m.Holes.Thread.Given() {
		holes = &m.Holes
	}
	if !holes.Thread.Given() && holes.Clear.Given() {
		return
	}
	length, grip, depth := n.said("L", &m.Bolts.Length), n.said("grip", &m.Grip), n.said("depth", &holes.Depth)
	n.work(step{
		to:      &m.Calc.Engagement,
		formula: "the lesser of L - grip and depth", source: "common-practice",
		in: []Input{length, grip, depth},
		by: three(func(length, grip, depth float64) (float64, error) {
			if err := notNegative("length past the grip", length-grip); err != nil {
				return 0, err
			}
			return min(length-grip, depth), nil
		}),
	})
	n.work(step{
		to:      &m.Calc.Bottoms,
		formula: "L - grip - depth", source: "common-practice",
		in: []Input{length, grip, depth},
		by: three(func(length, grip, depth float64) (float64, error) { return length - grip - depth, nil }),
	})
	n.work(step{
		to:      &m.Calc.Diameters,
		formula: "engaged / d", source: "common-practice",
		in: []Input{n.worked("engaged", &m.Calc.Engagement), n.diameter(&m.Bolts.Thread, &holes.Thread)},
		by: two(quotient),
	})
}

// diameter is the major diameter of the first thread that is given.
func (n *notebook) diameter(threads ...*spec.Thread) Input {
	for _, t := range threads {
		if t.Given() {
			in := n.said("d", t)
			in.Value, in.Dimension = t.V.Major, unit.Length
			return in
		}
	}
	return n.said("d", threads[0])
}

// mountLoads works out what each mount carries: the driveline's weight at rest, and
// the couple with which the driveline turns against its own output. The mounts are
// taken as equally stiff.
func (n *notebook) mountLoads() {
	var mounts []*document.Mount
	var in []Input
	var at []r2.Vec
	for i := range n.d.Mounts {
		m := &n.d.Mounts[i]
		if m.There == nil || m.There.Light.V {
			continue
		}
		p := n.fixed("mount_"+m.Name, &m.There.At)
		mounts, in, at = append(mounts, m), append(in, p.in...), append(at, r2.Vec{X: p.X, Y: p.Y})
	}
	if len(mounts) == 0 || len(n.d.Gearbox) == 0 {
		return
	}
	hung := n.hung()
	resting := once(hung.in, in)
	var rest []float64
	restErr := hung.err
	if known(resting) && restErr == nil {
		rest, restErr = Reactions(hung.Mass*StandardGravity, r2.Vec{X: hung.Centre.X, Y: hung.Centre.Y}, at)
	}
	g := &n.d.Gearbox[0]
	couple, formula := []Input{n.worked("T", &g.Calc.AxleTorque)}, "T y / Σ y², T = T_engine i of the lowest gear, about the crank"
	across := func(p r2.Vec) float64 { return p.Y }
	if strings.Contains(g.Layout.V, "transaxle") {
		formula = "T x / Σ x², T = T_engine i i_final of the lowest gear, about the axle"
		couple = append(couple, n.said("i_final", &g.Final.Ratio))
		across = func(p r2.Vec) float64 { return p.X }
	}
	for i, m := range mounts {
		n.work(step{
			to:      &m.Calc.Rest,
			formula: "by statics on three mounts; on more, equally stiff", source: "statics", note: strings.Join(hung.notes, "; "),
			in: resting,
			by: func([]float64) (float64, error) {
				if restErr != nil {
					return 0, restErr
				}
				return rest[i], nil
			},
		})
		n.work(step{
			to:      &m.Calc.Reaction,
			formula: formula, source: "statics", note: "from their middle; mounts equally stiff; up on one side, down on the other",
			in: once(couple, in),
			by: func(x []float64) (float64, error) {
				torque := x[0]
				if len(couple) > 1 {
					torque *= x[1]
				}
				var places []float64
				for _, p := range at {
					places = append(places, across(p))
				}
				forces, err := ReactionShares(torque, places)
				if err != nil {
					return 0, err
				}
				return math.Abs(forces[i]), nil
			},
		})
		n.mountBolts(m)
	}
}

// mountBolts works out how a mount's load comes upon its bolts, which stand square
// to its face: along them under a face that looks up or down, else across.
func (n *notebook) mountBolts(m *document.Mount) {
	faces, count := n.said("faces", &m.There.Faces), first(n.said("z", &m.Bolts.Count), n.said("z", &m.Holes.Count))
	level := m.There.Faces.V == "up" || m.There.Faces.V == "down"
	in := []Input{n.worked("rest", &m.Calc.Rest), n.worked("reaction", &m.Calc.Reaction), count, faces}
	share := func(load func(rest, reaction float64) float64) func([]float64) (float64, error) {
		return four(func(rest, reaction, count, _ float64) (float64, error) { return quotient(load(rest, reaction), count) })
	}
	shear := step{to: &m.Calc.BoltShear, formula: "(rest + reaction) / z", source: "statics", note: "shared alike; friction of the face left out", in: in,
		by: share(func(rest, reaction float64) float64 { return rest + reaction })}
	pull := step{to: &m.Calc.BoltPull, formula: "nothing", source: "statics", note: "its face stands upright", in: in, by: share(func(_, _ float64) float64 { return 0 })}
	if level {
		pull.formula, pull.note = "(reaction - rest) / z, if above nothing", "shared alike; the bolt's own preload not counted"
		pull.by = share(func(rest, reaction float64) float64 { return max(reaction-rest, 0) })
		shear.formula, shear.note = "nothing", "its face is level; thrust along the car left out"
		shear.by = share(func(_, _ float64) float64 { return 0 })
	}
	n.work(shear)
	n.work(pull)
}

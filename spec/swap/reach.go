package swap

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
	"fitup/spec/workings"
)

// reaches holds the length of everything between the car and the driveline
// against the distance that it has to span in this car.
func (f *fitter) reaches() {
	for n := range f.d.Lines {
		if l := &f.d.Lines[n]; l.Boundary && l.Owner == "car" {
			f.hose(l)
		}
	}
	for name, shaft := range f.car.Shafts.All() {
		f.shaft(name, shaft)
	}
	for name, rod := range f.car.Rods.All() {
		f.rod(name, rod)
	}
	for name, pipe := range f.car.Exhaust.Pipes.All() {
		f.pipe(name, pipe)
	}
	for n := range f.d.Mounts {
		f.box(&f.d.Mounts[n])
	}
	for n := range f.d.Looms {
		f.loom(&f.d.Looms[n])
	}
}

// A point is where something is in the car's axes, or what would have to be
// written first.
type point struct {
	r3.Vec
	missing []string
}

// placed is where a position lies in the car's axes. That of the driveline lies
// where the pair facts put it.
func (f *fitter) placed(p spec.Position, path, owner string) point {
	var missing []string
	if !p.Given() {
		missing = append(missing, path)
	}
	at := vector(p.V.XYZ)
	if owner == theDriveline {
		fit := f.d.Given.Fit
		missing = append(missing, f.unplaced()...)
		at = workings.IntoCar(at, vector(fit.At.V.XYZ), fit.NoseUp.V.SI)
	}
	return point{at, missing}
}

// unplaced is what the pair facts lack to say where the driveline lies.
func (f *fitter) unplaced() []string {
	var missing []string
	fit, base := f.d.Given.Fit, "fits."+f.d.Given.Driveline
	if !fit.At.Given() {
		missing = append(missing, base+".at")
	}
	if !fit.NoseUp.Given() {
		missing = append(missing, base+".nose-up")
	}
	return missing
}

func vector(xyz [3]float64) r3.Vec { return r3.Vec{X: xyz[0], Y: xyz[1], Z: xyz[2]} }

// port is where the port is that an end in the car's file meets.
func (f *fitter) port(meet spec.Meet) (point, *document.Port) {
	for n := range f.d.Ports {
		if p := &f.d.Ports[n]; p.Name == meet.Port.V {
			return f.placed(p.Port.At, p.Path+".at", p.Owner), p
		}
	}
	return point{missing: []string{meet.Path + ".port"}}, nil
}

// crosses reports whether an end is at the driveline's side and the port is
// there; where it is not, the port itself is what is told.
func crosses(f *fitter, ends ...spec.Meet) (driveline string, ok bool) {
	for _, end := range ends {
		if !strings.HasPrefix(end.Port.V, "driveline.") {
			continue
		}
		_, port := f.port(end)
		if port == nil {
			return "", false
		}
		return port.Path, true
	}
	return "", false
}

// span is an interface about a length, with the verdict left open.
func span(name, car, driveline string) Interface {
	return Interface{Kind: ReachKind, Name: name, Car: car, Driveline: driveline}
}

// lacking gives the interface up for want of what is not written.
func (i *Interface) lacking(missing ...[]string) bool {
	var all []string
	for _, list := range missing {
		all = append(all, list...)
	}
	if len(all) > 0 {
		i.Verdict = CannotTell
		i.Why = append(i.Why, "write "+strings.Join(all, ", "))
	}
	return len(all) > 0
}

func lengthMissing(l spec.Length, path string) []string {
	if l.Given() {
		return nil
	}
	return []string{path}
}

// hose compares what a hose has beyond the straight distance with the least that
// it needs: what the workings ask for movement and pressure, and the bends that
// its two ends force on it.
func (f *fitter) hose(l *document.Line) {
	driveline, ok := crosses(f, l.Line.From, l.Line.To)
	if !ok {
		return
	}
	i := span(l.Name, l.Path, driveline)
	from, fromPort := f.port(l.Line.From)
	to, toPort := f.port(l.Line.To)
	if fromPort == nil || toPort == nil {
		return // an open end, or a port that another interface is about
	}
	slack, asked := l.Calc.Slack, l.Calc.SlackNeeded
	if i.lacking(slack.Missing, asked.Missing) || !slack.Known || !asked.Known {
		i.Verdict = CannotTell
		f.add(i)
		return
	}
	bends := f.bend(fromPort, l.Line.From.End, r3.Sub(to.Vec, from.Vec), l.Kind.Bend) +
		f.bend(toPort, l.Line.To.End, r3.Sub(from.Vec, to.Vec), l.Kind.Bend)
	added := f.added(l)
	spare := slack.Value + added - asked.Value - bends
	i.Figures = []Figure{{"slack", slack.Value, unit.Length}, {"asked", asked.Value, unit.Length}, {"bends", bends, unit.Length}, {"spare", spare, unit.Length}}
	if added > 0 {
		i.Figures = slices.Insert(i.Figures, 1, Figure{"adaptors", added, unit.Length})
	}
	i.Verdict = Meets
	if spare < 0 {
		i.Verdict = MustBeMade
		has := l.Hose.Length.V
		i.Why = []string{fmt.Sprintf("%s too short: it needs %s at least, and has %s", millimetres(-spare), unit.Format(has.SI-spare, unit.Length, has.Unit), has)}
	}
	f.add(i)
}

// added is what the adaptors at the ends of a line add to its length, as far as it
// is known.
func (f *fitter) added(l *document.Line) float64 {
	total := 0.0
	for _, i := range f.found {
		if i.Chain != nil && i.Kind == PortKind && (i.Car == l.Line.From.Path || i.Car == l.Line.To.Path) {
			for _, a := range i.Chain.Adaptors {
				if a.Adds != nil {
					total += *a.Adds
				}
			}
		}
	}
	return total
}

func millimetres(m float64) string { return unit.Format(m, unit.Length, "mm") }

// bend is the least that turning from the way a port faces towards the other end
// adds to a hose. A fitting of angle b may be turned so that the hose starts at
// the angle t = |f - b| to the straight line, where f is that of the port; a
// hose of bend radius R that has to turn by t runs R (t - sin t) further than
// straight, at the least:
//
//	L - s = integral of (1 - cos h) dl >= integral from 0 to R t of (1 - cos(t - l/R)) dl
//
// What is not known adds nothing.
func (f *fitter) bend(port *document.Port, end spec.End, towards r3.Vec, radius spec.Length) float64 {
	facing, known := directions[port.Port.Faces.V]
	if !known || !radius.Given() || r3.Norm(towards) == 0 {
		return 0
	}
	if port.Owner == "driveline" {
		facing = workings.IntoCar(facing, r3.Vec{}, f.d.Given.Fit.NoseUp.V.SI)
	}
	between := math.Acos(max(-1, min(1, r3.Cos(facing, towards))))
	turn := math.Abs(between - end.Bend.Or(unit.Quantity{}).SI)
	return radius.V.SI * (turn - math.Sin(turn))
}

// directions are the axes of ISO 8855: x forward, y left, z up.
var directions = map[string]r3.Vec{
	"forward": {X: 1}, "back": {X: -1}, "left": {Y: 1}, "right": {Y: -1}, "up": {Z: 1}, "down": {Z: -1},
}

// shaft compares a shaft with the distance between the two flanges: what is left
// of its travel in and out has to take up the difference.
func (f *fitter) shaft(name string, s *spec.Shaft) {
	driveline, ok := crosses(f, s.From, s.To)
	if !ok {
		return
	}
	i := span(name, s.Path, driveline)
	from, _ := f.port(s.From)
	to, _ := f.port(s.To)
	if !i.lacking(from.missing, to.missing, lengthMissing(s.Length, s.Path+".length")) {
		distance := r3.Norm(r3.Sub(to.Vec, from.Vec))
		i.stretch(distance-s.Length.V.SI, s.Slip.Given(), s.Slip.V, "slides", s.Path+".slip", f.tol.Offset)
	}
	f.add(i)
}

// rod compares a rod with the distance between its two ends.
func (f *fitter) rod(name string, r *spec.Rod) {
	driveline, ok := crosses(f, r.From, r.To)
	if !ok {
		return
	}
	i := span(name, r.Path, driveline)
	from, _ := f.port(r.From)
	to, _ := f.port(r.To)
	if !i.lacking(from.missing, to.missing, lengthMissing(r.Length, r.Path+".length")) {
		// A rod end screws in and out by a diameter or so (common practice). A cable
		// may be longer than the way between its ends.
		const thread = 0.010
		travel := unit.Range{Low: -thread, High: thread}
		if r.Cable.V || f.car.Car.Throttle.V == "cable" && driveline == "driveline.ports.throttle" {
			travel.Low = math.Inf(-1)
		}
		i.stretch(r3.Norm(r3.Sub(to.Vec, from.Vec))-r.Length.V.SI, true, travel, "can be screwed", "", 0)
	}
	f.add(i)
}

// stretch judges how much longer something has to be than it is.
func (i *Interface) stretch(by float64, known bool, travel unit.Range, moves, path string, small float64) {
	i.Figures = []Figure{{"stretch", by, unit.Length}}
	said := millimetres(math.Abs(by))
	word := "longer"
	if by < 0 {
		word = "shorter"
	}
	switch {
	case !known && math.Abs(by) > small:
		i.Verdict, i.Why = CannotTell, []string{fmt.Sprintf("it would have to be %s %s; write %s", said, word, path)}
	case known && !travel.Holds(by):
		i.Verdict = MustBeMade
		i.Why = []string{fmt.Sprintf("it would have to be %s %s than it %s", millimetres(beyond(by, travel)), word, moves)}
	default:
		i.Verdict = Meets
	}
}

// beyond is how far a value lies outside a range.
func beyond(v float64, r unit.Range) float64 { return max(v-r.High, r.Low-v) }

// pipe compares an exhaust pipe with the straight distance that it spans: with
// bends it may be longer, and it cannot be shorter.
func (f *fitter) pipe(name string, e *spec.ExhaustPipe) {
	driveline, ok := crosses(f, e.From, e.To)
	_, far := f.port(e.To)
	if !ok || far == nil || !e.Length.Given() {
		return
	}
	i := span(name, e.Path, driveline)
	from, _ := f.port(e.From)
	to, _ := f.port(e.To)
	if !i.lacking(from.missing, to.missing) {
		spare := e.Length.V.SI - r3.Norm(r3.Sub(to.Vec, from.Vec))
		i.Figures = []Figure{{"spare", spare, unit.Length}}
		i.Verdict = Meets
		if spare < 0 {
			i.Verdict, i.Why = MustBeMade, []string{millimetres(-spare) + " too short"}
		}
	}
	f.add(i)
}

// box compares the loom tail of a box that hangs on the car with the distance of
// its bracket from the nearest solid of the driveline, which is the least that
// the loom can have to span.
func (f *fitter) box(m *document.Mount) {
	if m.There == nil || !m.There.Tail.Given() || len(f.driveline.Solids.Named) == 0 {
		return
	}
	i := span(m.Name, m.Path, m.There.Path)
	bracket := f.placed(m.At, m.Path+".at", theCar)
	c := [2]float64{bracket.X, bracket.Z}
	least, unmeasured := math.Inf(1), []string(nil)
	for _, solid := range f.driveline.Solids.All() {
		if !solid.Room.Given() {
			unmeasured = append(unmeasured, solid.Path+".box")
			continue
		}
		least = min(least, f.turned(solid.Room).gap(prism{corners: [4][2]float64{c, c, c, c}, low: bracket.Y, right: bracket.Y}))
	}
	if i.lacking(bracket.missing, f.unplaced(), unmeasured) {
		f.add(i)
		return
	}
	spare := m.There.Tail.V.SI - least
	i.Figures = []Figure{{"distance", least, unit.Length}, {"spare", spare, unit.Length}}
	i.Verdict = Meets
	if spare < 0 {
		i.Verdict = MustBeMade
		i.Why = []string{fmt.Sprintf("its loom of %s is %s too short to leave the driveline", m.There.Tail.V, millimetres(-spare))}
	}
	f.add(i)
}

// loom compares the two tails of a connector with the distance between the place
// where the driveline's leaves it and the place where the car's is held.
func (f *fitter) loom(l *document.Loom) {
	driveline, ok := crosses(f, l.Plug.Meets)
	if !ok {
		return
	}
	i := span(l.Name, l.Path, driveline)
	distance, reach, rocks := l.Calc.Distance, l.Calc.Reach, f.d.Given.Fit.Rocks.V.SI
	if i.lacking(distance.Missing, reach.Missing, f.rocking()) || !distance.Known || !reach.Known {
		i.Verdict = CannotTell
		f.add(i)
		return
	}
	spare := reach.Value - distance.Value - rocks
	i.Figures = []Figure{{"distance", distance.Value, unit.Length}, {"reach", reach.Value, unit.Length}, {"spare", spare, unit.Length}}
	i.Verdict = Meets
	if spare < 0 {
		i.Verdict = MustBeMade
		i.Why = []string{fmt.Sprintf("%s too short: both tails together are %s", millimetres(-spare), millimetres(reach.Value))}
	}
	f.add(i)
}

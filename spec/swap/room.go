package swap

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/unit"
	"fitup/spec/workings"
)

// rooms holds each solid of the driveline, where the pair facts put it, against
// each of the car's: the gap has to be what either asks to be kept off, and the
// engine's movement.
func (f *fitter) rooms() {
	for name, mine := range f.driveline.Solids.All() {
		i := Interface{Kind: RoomKind, Name: name, Driveline: mine.Path}
		var missing []string
		if !mine.Room.Given() {
			missing = append(missing, mine.Path+".box")
		}
		missing = append(missing, f.unplaced()...)
		if f.car.Solids.State == spec.Unsaid {
			missing = append(missing, "solids")
		}
		if i.lacking(missing) {
			f.add(i)
			continue
		}
		f.found = append(f.found, f.around(i, f.turned(mine.Room), mine.KeepOff)...)
	}
	f.ground()
}

// ground asks that no solid of the driveline hangs below the lowest point of the
// car, where the car's axes start on the ground and that point is said.
func (f *fitter) ground() {
	head := f.car.Car
	if !strings.Contains(head.Origin.V, "on the ground") || !head.GroundGap.Given() || len(f.unplaced()) > 0 {
		return
	}
	for name, mine := range f.driveline.Solids.All() {
		if !mine.Room.Given() {
			continue
		}
		low := math.Inf(1)
		for _, c := range f.turned(mine.Room).corners {
			low = min(low, c[1])
		}
		if low < head.GroundGap.V.SI {
			f.add(Interface{Kind: RoomKind, Name: name, Driveline: mine.Path, Car: "car.ground-clearance", Verdict: Fouls,
				Why:     []string{fmt.Sprintf("%s above the ground, and the car's lowest point is at %s", millimetres(low), head.GroundGap.V)},
				Figures: []Figure{{"above the ground", low, unit.Length}}})
		}
	}
}

// around judges one solid of the driveline. It returns an interface for each of
// the car's solids that it fouls, else one for the nearest.
func (f *fitter) around(i Interface, body prism, keepOff spec.Length) []Interface {
	var fouled []Interface
	nearest := i
	nearest.Verdict = Meets
	least := math.Inf(1)
	obstacles, unmeasured := f.obstacles()
	for _, theirs := range obstacles {
		gap := body.gap(upright(theirs.Room))
		wants := max(keepOff.V.SI, theirs.KeepOff.V.SI) + f.d.Given.Fit.Rocks.V.SI
		each := i
		each.Car = theirs.Path
		each.Figures = []Figure{{"gap", gap, unit.Length}, {"wanted", wants, unit.Length}}
		if gap <= 0 || gap < wants {
			each.Verdict = Fouls
			each.Why = []string{fouling(gap, wants, theirs)}
			fouled = append(fouled, each)
		} else if gap-wants < least {
			least = gap - wants
			each.Verdict = Meets
			nearest = each
		}
	}
	if fouled == nil {
		nearest.lacking(unmeasured, f.rocking())
		return []Interface{nearest}
	}
	return fouled
}

// obstacles are the car's solids, and its parts whose room is said. A solid that
// has no box yet may be anywhere.
func (f *fitter) obstacles() (all []*spec.Solid, unmeasured []string) {
	for _, solid := range f.car.Solids.All() {
		if solid.Room.Given() {
			all = append(all, solid)
		} else {
			unmeasured = append(unmeasured, solid.Path+".box")
		}
	}
	parts := partsOf(f.carFile)
	for _, path := range slices.Sorted(maps.Keys(parts)) {
		switch part := parts[path]; part.Room.State {
		case spec.Given:
			all = append(all, &spec.Solid{Node: part.Node, Room: part.Room})
		case spec.Asked:
			unmeasured = append(unmeasured, path+".box")
		}
	}
	return all, unmeasured
}

// rocking is the key that lacks where nobody says how far the engine moves.
func (f *fitter) rocking() []string {
	if rocks := &f.d.Given.Fit.Rocks; rocks.Given() || rocks.State == spec.None {
		return nil
	}
	return []string{"fits." + f.d.Given.Driveline + ".rocks"}
}

func fouling(gap, wants float64, theirs *spec.Solid) string {
	said := fmt.Sprintf("%s away, and %s are wanted with the engine rocking", millimetres(gap), millimetres(wants))
	if gap <= 0 {
		said = "both are in one place"
	}
	if theirs.Hot.Given() {
		said += "; its surface is at " + theirs.Hot.V.String()
	}
	if theirs.PartOf.Given() {
		said += "; it comes off with " + strings.Join(theirs.PartOf.V, ", ")
	}
	return said
}

// A prism is a box turned about the y axis: a convex polygon in x and z, over a
// span of y.
type prism struct {
	corners    [4][2]float64 // x and z, in order round
	low, right float64       // span of y
}

func upright(box spec.Box) prism {
	low, high := corners(box)
	return prism{
		corners: [4][2]float64{{low.X, low.Z}, {high.X, low.Z}, {high.X, high.Z}, {low.X, high.Z}},
		low:     low.Y, right: high.Y,
	}
}

func corners(box spec.Box) (low, high r3.Vec) {
	a, b := vector(box.V[0].XYZ), vector(box.V[1].XYZ)
	return r3.Vec{X: min(a.X, b.X), Y: min(a.Y, b.Y), Z: min(a.Z, b.Z)}, r3.Vec{X: max(a.X, b.X), Y: max(a.Y, b.Y), Z: max(a.Z, b.Z)}
}

// turned is a box of the driveline in the car's axes.
func (f *fitter) turned(box spec.Box) prism {
	fit := f.d.Given.Fit
	p := upright(box)
	at := vector(fit.At.V.XYZ)
	for i, c := range p.corners {
		moved := workings.IntoCar(r3.Vec{X: c[0], Z: c[1]}, at, fit.NoseUp.V.SI)
		p.corners[i] = [2]float64{moved.X, moved.Z}
	}
	p.low, p.right = p.low+at.Y, p.right+at.Y
	return p
}

// gap is the distance between two prisms, m; 0 where they overlap or touch. Both
// lie along y, so the distance is that of their polygons and that of their spans,
// at right angles.
func (p prism) gap(q prism) float64 {
	across := max(0, p.low-q.right, q.low-p.right)
	return math.Hypot(across, polygonGap(p.corners, q.corners))
}

// polygonGap is the distance between two convex polygons: the least from a corner
// of one to an edge of the other, unless they overlap.
func polygonGap(p, q [4][2]float64) float64 {
	if !apart(p, q) && !apart(q, p) {
		return 0
	}
	least := math.Inf(1)
	for i := range 4 {
		for j := range 4 {
			least = min(least, fromEdge(p[i], q[j], q[(j+1)%4]), fromEdge(q[i], p[j], p[(j+1)%4]))
		}
	}
	return least
}

// apart reports whether an edge of p, which runs anticlockwise, has all of q on
// its outer side.
func apart(p, q [4][2]float64) bool {
	for i := range 4 {
		a, b := p[i], p[(i+1)%4]
		outside := a != b
		for _, c := range q {
			if (b[0]-a[0])*(c[1]-a[1])-(b[1]-a[1])*(c[0]-a[0]) > 0 {
				outside = false
				break
			}
		}
		if outside {
			return true
		}
	}
	return false
}

// fromEdge is the distance of a point from the stretch between two others.
func fromEdge(c, a, b [2]float64) float64 {
	dx, dz := b[0]-a[0], b[1]-a[1]
	t := 0.0
	if l := dx*dx + dz*dz; l > 0 {
		t = max(0, min(1, ((c[0]-a[0])*dx+(c[1]-a[1])*dz)/l))
	}
	return math.Hypot(c[0]-a[0]-t*dx, c[1]-a[1]-t*dz)
}

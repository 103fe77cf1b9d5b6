package workings

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"
)

// All of this file is statics on a rigid floor. It says nothing of how a
// saddle grips, how firm the floor is or what a side pull does.

func planPoint(name string, p r2.Vec) error { return cmp.Or(number(name, p.X), number(name, p.Y)) }

// stands turns supports under a weight into one-sided members: each carries
// force and, about the centre of mass, two moments.
func stands(weight float64, centre r2.Vec, supports []r2.Vec) (members, r3.Vec, error) {
	if err := cmp.Or(positive("weight", weight), planPoint("centre of mass", centre),
		within("number of supports", float64(len(supports)), 3, mostMembers)); err != nil {
		return members{}, r3.Vec{}, err
	}
	polygon, err := SupportPolygon(supports)
	if err != nil {
		return members{}, r3.Vec{}, err
	}
	margin, err := EdgeDistance(polygon, centre)
	if err != nil {
		return members{}, r3.Vec{}, err
	}
	if margin <= 0 {
		return members{}, r3.Vec{}, &RangeError{"distance of the centre of mass inside the supports", margin, "above zero"}
	}
	var m members
	for _, s := range supports {
		d := r2.Sub(s, centre)
		m.direction = append(m.direction, r3.Vec{X: 1, Y: d.X, Z: d.Y})
		m.stiffness = append(m.stiffness, 1)
	}
	return m, r3.Vec{X: weight}, nil
}

// Reactions returns the load in N on each of three or more supports under a
// weight in N, from their places in plan in m. Three are settled by statics.
// For four and more it is an estimate: supports of equal stiffness under a
// rigid car, those that would have to pull left out. The centre of mass must
// lie inside the supports. Source: statics.
func Reactions(weight float64, centre r2.Vec, supports []r2.Vec) ([]float64, error) {
	m, load, err := stands(weight, centre, supports)
	if err != nil {
		return nil, err
	}
	forces, ok := m.elastic(load)
	if !ok {
		return nil, &RangeError{"number of supports that carry", 0, "three or more"}
	}
	return forces, nil
}

// RockingCases returns the loads in N for every way in which the weight can
// come to stand on three of the supports, the others just clear: what an uneven
// floor makes of more than three. Source: statics.
func RockingCases(weight float64, centre r2.Vec, supports []r2.Vec) ([][]float64, error) {
	m, load, err := stands(weight, centre, supports)
	if err != nil {
		return nil, err
	}
	return m.threes(load), nil
}

// WorstReactions returns the largest load in N that equilibrium allows on each
// support, whatever the floor: the most of [RockingCases]. With the centre on
// the middle line of a rectangle half the weight stands on one corner.
// Source: statics.
func WorstReactions(weight float64, centre r2.Vec, supports []r2.Vec) ([]float64, error) {
	ways, err := RockingCases(weight, centre, supports)
	if err != nil {
		return nil, err
	}
	return most(ways), nil
}

// SupportPolygon returns the convex hull of points in plan, counter-clockwise
// from the one furthest back: what a centre of mass must stay inside. Points
// inside it or along an edge are left out; all in one line are refused.
func SupportPolygon(points []r2.Vec) ([]r2.Vec, error) {
	for _, p := range points {
		if err := planPoint("place of a support", p); err != nil {
			return nil, err
		}
	}
	sorted := slices.Clone(points)
	slices.SortFunc(sorted, func(a, b r2.Vec) int { return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y)) })
	sorted = slices.Compact(sorted)
	half := func(points []r2.Vec) []r2.Vec {
		var chain []r2.Vec
		for _, p := range points {
			for len(chain) > 1 && turn(chain[len(chain)-2], chain[len(chain)-1], p) <= 0 {
				chain = chain[:len(chain)-1]
			}
			chain = append(chain, p)
		}
		return chain[:max(len(chain)-1, 0)]
	}
	hull := half(sorted)
	slices.Reverse(sorted)
	hull = append(hull, half(sorted)...)
	if len(hull) < 3 {
		return nil, &RangeError{"number of supports not in one line", float64(len(hull)), "three or more"}
	}
	return hull, nil
}

// turn is above zero if a, b, c go round counter-clockwise.
func turn(a, b, c r2.Vec) float64 { return r2.Cross(r2.Sub(b, a), r2.Sub(c, a)) }

// EdgeDistance returns how far in m a point lies inside a convex polygon whose
// corners run counter-clockwise, as [SupportPolygon] gives them: the distance
// to the nearest point of its edge, below zero outside.
func EdgeDistance(polygon []r2.Vec, p r2.Vec) (float64, error) {
	if err := cmp.Or(planPoint("point", p),
		within("number of corners", float64(len(polygon)), 3, math.MaxInt32)); err != nil {
		return 0, err
	}
	_, nearest, inside := nearestEdge(polygon, p)
	if !inside {
		nearest = -nearest
	}
	return result("distance to the edge", nearest)
}

// nearestEdge returns the point of a convex polygon's edge that is nearest to p,
// how far it is, and whether p lies inside.
func nearestEdge(polygon []r2.Vec, p r2.Vec) (at r2.Vec, distance float64, inside bool) {
	inside, distance = true, math.Inf(1)
	for i, a := range polygon {
		b := polygon[(i+1)%len(polygon)]
		inside = inside && turn(a, b, p) >= 0
		edge := r2.Sub(b, a)
		along := min(max(r2.Dot(r2.Sub(p, a), edge)/r2.Norm2(edge), 0), 1)
		near := r2.Add(a, r2.Scale(along, edge))
		if d := r2.Norm(r2.Sub(p, near)); d < distance {
			at, distance = near, d
		}
	}
	return at, distance, inside
}

// LiftingShare looks for the pull of a hook at which the centre of mass of
// what still rests on the supports goes over their edge: the hook's mass in kg
// from zero to most is taken off the whole at the place of the hook. It
// returns the pull in kg and true, or most and false if the centre stays
// inside. The centre moves along a straight line away from the hook, so it
// crosses once. Source: statics.
func LiftingShare(whole Body, hook r2.Vec, most float64, polygon []r2.Vec) (pull float64, crosses bool, err error) {
	if err := cmp.Or(whole.check(), planPoint("hook", hook), below("pull", most, "mass of the whole", whole.Mass)); err != nil {
		return 0, false, err
	}
	margin := func(pull float64) float64 {
		rest := 1 / (whole.Mass - pull)
		c := r2.Vec{
			X: (whole.Mass*whole.Centre.X - pull*hook.X) * rest,
			Y: (whole.Mass*whole.Centre.Y - pull*hook.Y) * rest,
		}
		d, e := EdgeDistance(polygon, c)
		err = cmp.Or(err, e)
		return d
	}
	start, end := margin(0), margin(most)
	switch {
	case err != nil:
		return 0, false, err
	case start <= 0:
		return 0, true, nil
	case end > 0:
		return most, false, nil
	}
	low, high := 0.0, most
	for range 60 {
		if mid := (low + high) / 2; margin(mid) > 0 {
			low = mid
		} else {
			high = mid
		}
	}
	return high, true, err
}

// TiltToTip returns the angle in rad by which the floor may tilt before a
// centre of mass a height in m above the supports, and a distance in m inside
// their edge, stands over it: atan(d/h). Source: statics.
func TiltToTip(distance, height float64) (float64, error) {
	if err := cmp.Or(notNegative("distance to the edge", distance), positive("height of the centre of mass", height)); err != nil {
		return 0, err
	}
	return result("tilt", math.Atan2(distance, height))
}

// ToppleForce returns the level push in N at the saddle that tips a stand over
// the edge of its base, W b / h, from the load on it in N, the reach in m from
// its axis to that edge and its height in m: it falls with the load. The
// stand's own weight is left out. Source: statics.
func ToppleForce(load, reach, height float64) (float64, error) {
	if err := cmp.Or(notNegative("load", load), positive("base reach", reach), positive("height", height)); err != nil {
		return 0, err
	}
	return result("push", load*reach/height)
}

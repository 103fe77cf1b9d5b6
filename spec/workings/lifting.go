package workings

import (
	"cmp"
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r3"
)

// LegAngle returns the angle in rad of a sling leg from the horizontal, from
// the eye up to the hook, positions in m. Source: osha-sling-guidance.
func LegAngle(eye, hook r3.Vec) (float64, error) {
	leg := r3.Sub(hook, eye)
	if err := cmp.Or(point("eye", eye), point("hook", hook), positive("height of the hook over the eye", leg.Z)); err != nil {
		return 0, err
	}
	return result("leg angle", math.Atan2(leg.Z, math.Hypot(leg.X, leg.Y)))
}

// EyeAngle returns the angle in rad between a leg and the axis of the eye bolt
// it pulls on, 0 if straight out. axis points out of the part, in any length.
// Source: bs-4278.
func EyeAngle(eye, hook, axis r3.Vec) (float64, error) {
	leg := r3.Sub(hook, eye)
	if err := cmp.Or(point("eye", eye), point("hook", hook), point("axis", axis),
		positive("length of the leg", r3.Norm(leg)), positive("length of the axis", r3.Norm(axis))); err != nil {
		return 0, err
	}
	return result("angle at the eye", math.Acos(min(max(r3.Cos(leg, axis), -1), 1)))
}

// legs turns sling legs into one-sided members that together hold the weight
// up. A leg stretches in proportion to its length.
func legs(weight float64, hook r3.Vec, eyes []r3.Vec) (members, r3.Vec, error) {
	if err := cmp.Or(positive("weight", weight), within("number of legs", float64(len(eyes)), 2, mostMembers)); err != nil {
		return members{}, r3.Vec{}, err
	}
	var m members
	for _, eye := range eyes {
		if _, err := LegAngle(eye, hook); err != nil {
			return members{}, r3.Vec{}, err
		}
		leg := r3.Sub(hook, eye)
		m.direction = append(m.direction, r3.Unit(leg))
		m.stiffness = append(m.stiffness, 1/r3.Norm(leg))
	}
	return m, r3.Vec{Z: weight}, nil
}

// sideways is the share of the weight that a pair of legs may fail to hold
// level before the hook counts as off their plane.
const sideways = 0.01

// LegTensions returns the tension in N of each sling leg from the real places
// of hook and eyes in m, for a load that hangs still: a load swings until its
// centre of mass is under the hook, so the hook's place in plan is that of the
// centre. Two legs (the hook over the line between the eyes) and three are
// settled by statics. For four and more it is an estimate for a rigid load and
// legs of one kind; see [WorstLegTensions] for what a leg must bear.
// Source: statics.
func LegTensions(weight float64, hook r3.Vec, eyes []r3.Vec) ([]float64, error) {
	m, load, err := legs(weight, hook, eyes)
	if err != nil {
		return nil, err
	}
	if len(eyes) == 2 {
		return m.pair(load)
	}
	tensions, ok := m.elastic(load)
	if !ok {
		return nil, fmt.Errorf("the hook must stand over the figure that the %d eyes enclose", len(eyes))
	}
	return tensions, nil
}

// WorstLegTensions returns the largest tension in N that equilibrium allows in
// each leg. With four it is that of the lifts in which the fourth, or the two
// across, hang slack: legs are never of quite one length. Source: navedtra-14081.
func WorstLegTensions(weight float64, hook r3.Vec, eyes []r3.Vec) ([]float64, error) {
	m, load, err := legs(weight, hook, eyes)
	if err != nil {
		return nil, err
	}
	if len(eyes) == 2 {
		return m.pair(load)
	}
	ways := m.threes(load)
	if len(ways) == 0 {
		return nil, fmt.Errorf("the hook must stand over the figure that the %d eyes enclose", len(eyes))
	}
	return most(ways), nil
}

// pair returns the tensions of two legs by least squares over the three force
// equations, and refuses a load that they would hold only by swinging.
func (m members) pair(load r3.Vec) ([]float64, error) {
	u, v := m.direction[0], m.direction[1]
	uv := r3.Dot(u, v)
	det := 1 - uv*uv
	if det < slack {
		return nil, fmt.Errorf("the two eyes must be apart")
	}
	bu, bv := r3.Dot(load, u), r3.Dot(load, v)
	t := []float64{(bu - uv*bv) / det, (bv - uv*bu) / det}
	missing := r3.Norm(r3.Sub(load, r3.Add(r3.Scale(t[0], u), r3.Scale(t[1], v))))
	if weight := r3.Norm(load); missing > sideways*weight || min(t[0], t[1]) < -slack*weight {
		return nil, fmt.Errorf("the hook must stand over the line between the two eyes")
	}
	return []float64{max(t[0], 0), max(t[1], 0)}, nil
}

package workings

import (
	"cmp"

	"gonum.org/v1/gonum/spatial/r3"
)

// A Body is something that weighs.
type Body struct {
	Mass   float64 // kg
	Centre r3.Vec  // m, x forward, y left, z up
	Within float64 // the centre is known to lie this near, m; 0 if exact
}

func (b Body) check() error {
	return cmp.Or(positive("mass", b.Mass), point("centre of mass", b.Centre),
		notNegative("uncertainty of the centre of mass", b.Within))
}

func point(name string, p r3.Vec) error {
	return cmp.Or(number(name, p.X), number(name, p.Y), number(name, p.Z))
}

// Combine returns bodies as one: masses added, the centre weighed by mass,
// sum(m x) / sum(m). The uncertainties are added as if all were wrong the same
// way, sum(m u) / sum(m), since a margin on which somebody depends is judged
// after it. Source: faa-ac-43.13-1b.
func Combine(bodies ...Body) (Body, error) {
	var all Body
	var moment r3.Vec
	var doubt float64
	for _, b := range bodies {
		if err := b.check(); err != nil {
			return Body{}, err
		}
		all.Mass += b.Mass
		moment = r3.Add(moment, r3.Scale(b.Mass, b.Centre))
		doubt += b.Mass * b.Within
	}
	if err := positive("total mass", all.Mass); err != nil {
		return Body{}, err
	}
	all.Centre, all.Within = r3.Scale(1/all.Mass, moment), doubt/all.Mass
	if err := all.check(); err != nil {
		return Body{}, err
	}
	return all, nil
}

// Remove returns what is left of a whole when a part of it is taken out:
// (M X - m x) / (M - m). The uncertainties add, (M U + m u) / (M - m), so a
// light rest of a heavy whole is known badly, as it should be. A hook that
// takes part of the weight is a part removed at the hook.
// Source: faa-ac-43.13-1b.
func Remove(whole, part Body) (Body, error) {
	if err := cmp.Or(whole.check(), part.check(),
		below("mass of the part", part.Mass, "mass of the whole", whole.Mass)); err != nil {
		return Body{}, err
	}
	mass := whole.Mass - part.Mass
	moment := r3.Sub(r3.Scale(whole.Mass, whole.Centre), r3.Scale(part.Mass, part.Centre))
	rest := Body{mass, r3.Scale(1/mass, moment), (whole.Mass*whole.Within + part.Mass*part.Within) / mass}
	if err := rest.check(); err != nil {
		return Body{}, err
	}
	return rest, nil
}

// TwoLineReactions returns the loads in N on two lines of support (the axles,
// or two rows of stands) a span in m apart, under a weight in N whose centre is
// a distance in m behind the first: W (L - a)/L and W a/L. A centre outside the
// span lifts one line and is refused. Source: statics.
func TwoLineReactions(weight, span, behindFirst float64) (first, second float64, err error) {
	if err := cmp.Or(positive("weight", weight), positive("span", span),
		within("distance of the centre behind the first line", behindFirst, 0, span)); err != nil {
		return 0, 0, err
	}
	second = weight * (behindFirst / span)
	return weight - second, second, nil
}

// CentreFromLines returns how far in m behind the first of two lines of
// support the centre lies, L R2 / (R1 + R2), from the loads on them in N.
// Source: statics.
func CentreFromLines(first, second, span float64) (float64, error) {
	if err := cmp.Or(notNegative("load on the first line", first), notNegative("load on the second line", second),
		positive("total load", first+second), positive("span", span)); err != nil {
		return 0, err
	}
	return result("distance of the centre", span*second/(first+second))
}

// Wheels is the plan of four wheels, in m.
type Wheels struct{ Base, FrontTrack, RearTrack float64 }

// CornerLoads are the loads of four wheels or stands in N.
type CornerLoads struct{ FrontLeft, FrontRight, RearLeft, RearRight float64 }

// CornerEstimate shares a weight in N among four wheels: the axles as
// [TwoLineReactions], each axle by how far in m its centre lies to the left of
// the middle. Four supports are statically indeterminate; springs, bars and
// the floor decide the diagonal, so it is an estimate until the wheels are
// weighed. Source: statics.
func CornerEstimate(weight float64, w Wheels, behindFront, left float64) (CornerLoads, error) {
	front, rear, err := TwoLineReactions(weight, w.Base, behindFront)
	if err != nil {
		return CornerLoads{}, err
	}
	if err := cmp.Or(positive("front track", w.FrontTrack), positive("rear track", w.RearTrack)); err != nil {
		return CornerLoads{}, err
	}
	half := min(w.FrontTrack, w.RearTrack) / 2
	if err := within("distance of the centre left of the middle", left, -half, half); err != nil {
		return CornerLoads{}, err
	}
	f, r := left/w.FrontTrack, left/w.RearTrack
	return CornerLoads{
		FrontLeft: front * (0.5 + f), FrontRight: front * (0.5 - f),
		RearLeft: rear * (0.5 + r), RearRight: rear * (0.5 - r),
	}, nil
}

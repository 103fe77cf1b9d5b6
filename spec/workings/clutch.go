package workings

import "cmp"

// WearRadius returns the effective radius in m of a run-in friction face,
// (r_o + r_i) / 2: uniform wear, which gives less than uniform pressure and is the
// one for capacity. Radii in m. Source: shigley-9e.
func WearRadius(outer, inner float64) (float64, error) {
	if err := cmp.Or(positive("outer radius", outer), below("inner radius", inner, "outer radius", outer)); err != nil {
		return 0, err
	}
	return result("effective radius", (outer+inner)/2)
}

// ClutchTorque returns the torque in N m that a plate clutch carries before it
// slips, T = n mu F r, with n friction faces (two to a driven plate), the
// friction coefficient, the clamp load in N and the effective radius in m from
// [WearRadius]. Faces fully engaged and no fade: organic
// linings lose friction when hot. Source: shigley-9e.
func ClutchTorque(faces int, friction, clamp, radius float64) (float64, error) {
	if err := cmp.Or(positive("number of faces", float64(faces)), positive("friction coefficient", friction),
		notNegative("clamp load", clamp), positive("effective radius", radius)); err != nil {
		return 0, err
	}
	return result("clutch torque", float64(faces)*friction*clamp*radius)
}

// CylinderPressure returns the pressure in Pa behind a piston of an area in m2
// pushed with a force in N. Source: openstax-college-physics.
func CylinderPressure(force, area float64) (float64, error) {
	if err := cmp.Or(notNegative("force", force), positive("piston area", area)); err != nil {
		return 0, err
	}
	return result("pressure", force/area)
}

// ReleaseTravel returns the travel in m of a slave piston for a stroke in m of
// the master piston, areas in m2: x = x_m A_m / A_s. Hose swelling and air are
// left out, so it is the most that the slave can be asked to move.
// Source: openstax-college-physics.
func ReleaseTravel(stroke, master, slave float64) (float64, error) {
	if err := cmp.Or(notNegative("master stroke", stroke), positive("master piston area", master),
		positive("slave piston area", slave)); err != nil {
		return 0, err
	}
	return result("release travel", stroke*master/slave)
}

// PedalForce returns the force in N at the pedal for one in N at the slave piston:
// over the slave area as a share of the master area, and over the lever ratio.
// Friction and springs are left out. Source: openstax-college-physics.
func PedalForce(release, ratio, lever float64) (float64, error) {
	if err := cmp.Or(notNegative("release force", release), positive("area ratio", ratio), positive("lever ratio", lever)); err != nil {
		return 0, err
	}
	return result("pedal force", release/(ratio*lever))
}

package workings

import (
	"cmp"
	"math"
)

func ring(outer, inner float64) error {
	return cmp.Or(positive("outer radius", outer), below("inner radius", inner, "outer radius", outer))
}

// WearRadius returns the effective radius in m of a run-in friction face,
// (r_o + r_i) / 2: uniform wear, the smaller of the two and the one for
// capacity. Radii in m. Source: shigley-9e.
func WearRadius(outer, inner float64) (float64, error) {
	if err := ring(outer, inner); err != nil {
		return 0, err
	}
	return result("effective radius", (outer+inner)/2)
}

// PressureRadius returns the effective radius in m of a new, rigid friction
// face, (2/3)(r_o^3 - r_i^3)/(r_o^2 - r_i^2): uniform pressure. Radii in m.
// Source: shigley-9e.
func PressureRadius(outer, inner float64) (float64, error) {
	if err := ring(outer, inner); err != nil {
		return 0, err
	}
	// The common factor r_o - r_i is taken out, so a narrow face loses no digits.
	return result("effective radius", 2./3*(outer*outer+outer*inner+inner*inner)/(outer+inner))
}

// ClutchTorque returns the torque in N m that a plate clutch carries before it
// slips, T = n mu F r, with n friction faces (two to a driven plate), the
// friction coefficient, the clamp load in N and the effective radius in m from
// [WearRadius] or [PressureRadius]. Faces fully engaged and no fade: organic
// linings lose friction when hot. Source: shigley-9e.
func ClutchTorque(faces int, friction, clamp, radius float64) (float64, error) {
	if err := cmp.Or(positive("number of faces", float64(faces)), positive("friction coefficient", friction),
		notNegative("clamp load", clamp), positive("effective radius", radius)); err != nil {
		return 0, err
	}
	return result("clutch torque", float64(faces)*friction*clamp*radius)
}

// WearClamp returns the clamp load in N at which a run-in face reaches its
// highest pressure in Pa, which lies at the inner edge:
// F = 2 pi p r_i (r_o - r_i). Radii in m. Source: shigley-9e.
func WearClamp(pressure, outer, inner float64) (float64, error) {
	if err := cmp.Or(positive("pressure", pressure), ring(outer, inner), positive("inner radius", inner)); err != nil {
		return 0, err
	}
	return result("clamp load", 2*math.Pi*pressure*inner*(outer-inner))
}

// PressureClamp returns the clamp load in N of a face under one pressure in Pa
// all over, F = pi p (r_o^2 - r_i^2). Radii in m. Source: shigley-9e.
func PressureClamp(pressure, outer, inner float64) (float64, error) {
	if err := cmp.Or(positive("pressure", pressure), ring(outer, inner)); err != nil {
		return 0, err
	}
	return result("clamp load", math.Pi*pressure*(outer-inner)*(outer+inner))
}

// AnnulusArea returns the area in m2 between two diameters in m,
// (pi/4)(D^2 - d^2): that of a concentric release cylinder.
func AnnulusArea(outer, inner float64) (float64, error) {
	if err := cmp.Or(positive("outer diameter", outer), below("inner diameter", inner, "outer diameter", outer)); err != nil {
		return 0, err
	}
	return result("area", math.Pi/4*(outer-inner)*(outer+inner))
}

// CylinderPressure returns the pressure in Pa behind a piston of an area in m2
// pushed with a force in N. Source: openstax-college-physics.
func CylinderPressure(force, area float64) (float64, error) {
	if err := cmp.Or(notNegative("force", force), positive("piston area", area)); err != nil {
		return 0, err
	}
	return result("pressure", force/area)
}

// ReleaseForce returns the force in N at a slave piston: pedal force in N
// times lever ratio times slave area over master area, both in m2. Friction
// and springs are left out. Source: openstax-college-physics.
func ReleaseForce(pedal, lever, master, slave float64) (float64, error) {
	if err := cmp.Or(notNegative("pedal force", pedal), positive("lever ratio", lever),
		positive("master piston area", master), positive("slave piston area", slave)); err != nil {
		return 0, err
	}
	return result("release force", pedal*lever*slave/master)
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

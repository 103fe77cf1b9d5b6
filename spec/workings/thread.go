package workings

import "cmp"

// Shares of the proof load to which a bolt is tightened. Source: shigley-9e,
// eq. 8-31.
const (
	ReusedShare    = 0.75 // joints that are taken apart again
	PermanentShare = 0.90
)

// thread accepts a 60 degree thread whose core is not cut away.
func thread(major, pitch float64) error {
	return cmp.Or(positive("major diameter", major), positive("pitch", pitch),
		below("pitch", pitch, "major diameter over 1.2269", major/1.2269))
}

// MetricStressArea returns the tensile stress area in m2 of an ISO metric
// external thread, A = (pi/4)(d - 0.9382 P)^2, from major diameter and pitch in
// m. It holds for M1.6 to M39 with full shank, not for waisted bolts.
// Source: iso-898-1.
func MetricStressArea(major, pitch float64) (float64, error) {
	if err := thread(major, pitch); err != nil {
		return 0, err
	}
	return CircleArea(major - 0.9382*pitch)
}

// UnifiedStressArea returns the tensile stress area in m2 of a unified
// external thread, A = (pi/4)(D - 0.9743 p)^2 with p = 1/n, from major diameter
// and pitch in m. For steels over 690 MPa (100 ksi) tensile strength the standard
// has a smaller one, on the least pitch diameter.
// Source: asme-b1.1.
func UnifiedStressArea(major, pitch float64) (float64, error) {
	if err := thread(major, pitch); err != nil {
		return 0, err
	}
	return CircleArea(major - 0.9743*pitch)
}

// ProofLoad returns the proof load in N of a thread, F = A S, from its stress
// area in m2 and the proof stress in Pa of its property class or grade; with
// the tensile strength it returns the breaking load. Source: iso-898-1.
func ProofLoad(area, stress float64) (float64, error) {
	if err := cmp.Or(positive("stress area", area), positive("proof stress", stress)); err != nil {
		return 0, err
	}
	return result("proof load", area*stress)
}

// Preload returns a share, such as [ReusedShare], of a proof load in N.
// Source: shigley-9e.
func Preload(proofLoad, share float64) (float64, error) {
	if err := cmp.Or(positive("proof load", proofLoad), fraction("share of proof load", share)); err != nil {
		return 0, err
	}
	return result("preload", proofLoad*share)
}

// TorqueForPreload returns the tightening torque in N m, T = K F d, from the
// nut factor K, the preload in N and the major diameter in m. K is about 0.2
// for a fastener of which nothing is known and lower oiled. Source: shigley-9e,
// eq. 8-27.
func TorqueForPreload(factor, preload, major float64) (float64, error) {
	if err := cmp.Or(positive("nut factor", factor), notNegative("preload", preload),
		positive("major diameter", major)); err != nil {
		return 0, err
	}
	return result("torque", factor*preload*major)
}

// PreloadForTorque returns the preload in N that a torque in N m gives,
// F = T / (K d); see [PreloadBand] for how far to trust it.
// Source: shigley-9e, eq. 8-27.
func PreloadForTorque(factor, torque, major float64) (float64, error) {
	if err := cmp.Or(positive("nut factor", factor), notNegative("torque", torque),
		positive("major diameter", major)); err != nil {
		return 0, err
	}
	return result("preload", torque/(factor*major))
}

// PreloadBand returns the least and most preload in N to expect of a torque
// that aims at one, for a scatter as a share: with a torque wrench 0.25 to 0.30.
// Source: from-memory.
func PreloadBand(preload, scatter float64) (low, high float64, err error) {
	if err := cmp.Or(notNegative("preload", preload), below("scatter", scatter, "whole", 1)); err != nil {
		return 0, 0, err
	}
	return preload * (1 - scatter), preload * (1 + scatter), nil
}

package workings

import (
	"cmp"
	"math"
)

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

// MetricPitchDiameter returns the basic pitch diameter in m of an ISO metric
// thread, d2 = d - 0.6495 P, from major diameter and pitch in m.
// Source: iso-724.
func MetricPitchDiameter(major, pitch float64) (float64, error) {
	if err := thread(major, pitch); err != nil {
		return 0, err
	}
	return result("pitch diameter", major-0.6495190528*pitch)
}

// metricStressDiameter is (d2 + d3)/2 = d - 0.9382 P.
func metricStressDiameter(major, pitch float64) float64 { return major - 0.9382*pitch }

// MetricStressArea returns the tensile stress area in m2 of an ISO metric
// external thread, A = (pi/4)(d - 0.9382 P)^2, from major diameter and pitch in
// m. It holds for M1.6 to M39 with full shank, not for waisted bolts.
// Source: iso-898-1.
func MetricStressArea(major, pitch float64) (float64, error) {
	if err := thread(major, pitch); err != nil {
		return 0, err
	}
	return CircleArea(metricStressDiameter(major, pitch))
}

// UnifiedStressArea returns the tensile stress area in m2 of a unified
// external thread, A = (pi/4)(D - 0.9743 p)^2 with p = 1/n, from major diameter
// and pitch in m. For steels up to 690 MPa (100 ksi) tensile strength.
// Source: asme-b1.1.
func UnifiedStressArea(major, pitch float64) (float64, error) {
	if err := thread(major, pitch); err != nil {
		return 0, err
	}
	return CircleArea(major - 0.9743*pitch)
}

// UnifiedStressAreaMinimum returns the smaller stress area in m2 that is used
// above 690 MPa (100 ksi) tensile strength, A = pi (E/2 - 0.16238 p)^2, from the
// least pitch diameter and the pitch in m. Source: fed-std-h28.
func UnifiedStressAreaMinimum(leastPitchDiameter, pitch float64) (float64, error) {
	if err := thread(leastPitchDiameter, pitch); err != nil {
		return 0, err
	}
	return CircleArea(leastPitchDiameter - 2*0.16238*pitch)
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

// A MetricBolt is what the tightening formulas need of a bolt and its seat.
type MetricBolt struct {
	Major, Pitch   float64 // m
	Bearing        float64 // mean diameter under the head, m; see MeanBearing
	ThreadFriction float64
	HeadFriction   float64
}

// MeanBearing returns the mean diameter in m under a head, (d_w + d_h) / 2,
// from the least bearing diameter of the head and the clearance hole in m.
// Source: vdi-2230.
func MeanBearing(bearing, hole float64) (float64, error) {
	if err := cmp.Or(positive("bearing diameter", bearing), below("hole", hole, "bearing diameter", bearing)); err != nil {
		return 0, err
	}
	return result("mean bearing diameter", (bearing+hole)/2)
}

// AssemblyPreload returns the preload in N at which tension and torsion
// together reach a share of the yield strength in Pa (VDI takes 0.9):
//
//	F = share R A / sqrt(1 + 3 (1.5 (d2/d0) (P/(pi d2) + 1.155 mu))^2)
//
// with d0 the diameter of the stress area A. It is another basis than
// [Preload], and the two are not to be compared. Source: vdi-2230.
func AssemblyPreload(b MetricBolt, yield, share float64) (float64, error) {
	if err := cmp.Or(thread(b.Major, b.Pitch), positive("thread friction", b.ThreadFriction),
		positive("yield strength", yield), fraction("share of yield", share)); err != nil {
		return 0, err
	}
	d2, err := MetricPitchDiameter(b.Major, b.Pitch)
	if err != nil {
		return 0, err
	}
	area, err := MetricStressArea(b.Major, b.Pitch)
	if err != nil {
		return 0, err
	}
	d0 := metricStressDiameter(b.Major, b.Pitch)
	twist := 1.5 * d2 / d0 * (b.Pitch/(math.Pi*d2) + 1.155*b.ThreadFriction)
	return result("assembly preload", share*yield*area/math.Sqrt(1+3*twist*twist))
}

// AssemblyTorque returns the torque in N m that gives a preload in N,
//
//	M = F (0.16 P + 0.58 d2 mu_G + (D_Km/2) mu_K)
//
// from the friction in the thread and under the head. Source: vdi-2230.
func AssemblyTorque(b MetricBolt, preload float64) (float64, error) {
	if err := cmp.Or(thread(b.Major, b.Pitch), positive("thread friction", b.ThreadFriction),
		positive("head friction", b.HeadFriction), positive("mean bearing diameter", b.Bearing),
		notNegative("preload", preload)); err != nil {
		return 0, err
	}
	d2, err := MetricPitchDiameter(b.Major, b.Pitch)
	if err != nil {
		return 0, err
	}
	return result("torque", preload*(0.16*b.Pitch+0.58*d2*b.ThreadFriction+b.Bearing/2*b.HeadFriction))
}

// BoltStress returns the stress in Pa in a preloaded bolt that takes a share C
// (the joint constant, 0 to 1) of an outside tension in N,
// (F + C P) / A, area in m2. It holds until the joint opens. Source: shigley-9e,
// eq. 8-24.
func BoltStress(preload, load, share, area float64) (float64, error) {
	if err := cmp.Or(notNegative("preload", preload), notNegative("load", load),
		within("joint constant", share, 0, 1), positive("stress area", area)); err != nil {
		return 0, err
	}
	return result("bolt stress", (preload+share*load)/area)
}

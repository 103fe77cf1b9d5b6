package workings

import (
	"cmp"
	"math"
)

// CrankPower returns the power at the crank in W from the power measured at
// the wheels in W and the loss assumed between them as a share of crank power,
// P = P_wheel / (1 - loss). No standard gives the loss: 0.10 to 0.25 is common
// practice, so it is always an input and always told. Source: common-practice.
func CrankPower(wheelPower, loss float64) (float64, error) {
	if err := cmp.Or(notNegative("power at the wheels", wheelPower), below("loss", loss, "whole", 1)); err != nil {
		return 0, err
	}
	return result("power at the crank", wheelPower/(1-loss))
}

// Displacement returns the swept volume in m3 of a number of cylinders, z (pi/4) B^2 S,
// from bore and stroke in m. Source: rajput-thermal.
func Displacement(cylinders, bore, stroke float64) (float64, error) {
	if err := cmp.Or(positive("number of cylinders", cylinders), positive("bore", bore), positive("stroke", stroke)); err != nil {
		return 0, err
	}
	return result("displacement", cylinders*math.Pi/4*bore*bore*stroke)
}

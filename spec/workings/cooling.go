package workings

import "cmp"

// MassFlowForRise returns the mass flow in kg/s that carries a heat in W away
// with a temperature rise in K, m = Q / (c dT). Source: rajput-thermal.
func MassFlowForRise(heat, specificHeat, rise float64) (float64, error) {
	if err := cmp.Or(notNegative("heat", heat), positive("specific heat", specificHeat),
		positive("temperature rise", rise)); err != nil {
		return 0, err
	}
	return result("mass flow", heat/(specificHeat*rise))
}

// RiseOfFlow returns the temperature rise in K of a mass flow in kg/s that
// takes up a heat in W, dT = Q / (m c). Source: rajput-thermal.
func RiseOfFlow(heat, massFlow, specificHeat float64) (float64, error) {
	if err := cmp.Or(notNegative("heat", heat), positive("mass flow", massFlow),
		positive("specific heat", specificHeat)); err != nil {
		return 0, err
	}
	return result("temperature rise", heat/(massFlow*specificHeat))
}

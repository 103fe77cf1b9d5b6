package workings

import "cmp"

// HeatRate returns the heat in W that a flow carries away, Q = m c dT, from
// mass flow in kg/s, specific heat in J/(kg K) and temperature rise in K. It
// holds without boiling. Source: rajput-thermal.
func HeatRate(massFlow, specificHeat, rise float64) (float64, error) {
	if err := cmp.Or(notNegative("mass flow", massFlow), positive("specific heat", specificHeat),
		notNegative("temperature rise", rise)); err != nil {
		return 0, err
	}
	return result("heat rate", massFlow*specificHeat*rise)
}

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

// HeatStored returns the heat in J that warms a mass in kg by a rise in K,
// E = m c dT: what a short run puts into coolant and metal before the radiator
// matters. Source: rajput-thermal.
func HeatStored(mass, specificHeat, rise float64) (float64, error) {
	if err := cmp.Or(notNegative("mass", mass), positive("specific heat", specificHeat),
		notNegative("temperature rise", rise)); err != nil {
		return 0, err
	}
	return result("heat stored", mass*specificHeat*rise)
}

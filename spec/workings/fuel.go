package workings

import (
	"cmp"
	"math"
)

// MassFraction returns the share by mass of a component, in a mix of two
// liquids, from its share by volume and the densities in kg/m3 of itself and
// of the other, w = rho_a v / (rho_a v + rho_b (1 - v)). The small change of
// volume on mixing is left out. Source: afdc-fuel-properties.
func MassFraction(volumeFraction, density, otherDensity float64) (float64, error) {
	if err := cmp.Or(within("volume fraction", volumeFraction, 0, 1), positive("density", density),
		positive("density of the other", otherDensity)); err != nil {
		return 0, err
	}
	a, b := density*volumeFraction, otherDensity*(1-volumeFraction)
	return result("mass fraction", a/(a+b))
}

// MassAverage returns the property per kilogram of a blend,
// w a + (1 - w) b, from the mass fraction w of the first component and the
// property of each. It is exact for air-fuel ratio by mass and for heating
// value. Source: afdc-fuel-properties.
func MassAverage(massFraction, first, second float64) (float64, error) {
	if err := cmp.Or(within("mass fraction", massFraction, 0, 1), notNegative("first value", first),
		notNegative("second value", second)); err != nil {
		return 0, err
	}
	return result("average", massFraction*first+(1-massFraction)*second)
}

// FuelMassFlow returns the fuel an engine burns in kg/s from its crank power
// in W and its brake specific fuel consumption in kg/J. Source: common-practice.
func FuelMassFlow(power, consumption float64) (float64, error) {
	if err := cmp.Or(notNegative("power", power), positive("specific consumption", consumption)); err != nil {
		return 0, err
	}
	return result("fuel mass flow", power*consumption)
}

// VolumeFlow returns the volume flow in m3/s of a mass flow in kg/s at a
// density in kg/m3.
func VolumeFlow(massFlow, density float64) (float64, error) {
	if err := cmp.Or(notNegative("mass flow", massFlow), positive("density", density)); err != nil {
		return 0, err
	}
	return result("volume flow", massFlow/density)
}

// MassFlow returns the mass flow in kg/s of a volume flow in m3/s at a density
// in kg/m3.
func MassFlow(flow, density float64) (float64, error) {
	if err := cmp.Or(notNegative("flow", flow), positive("density", density)); err != nil {
		return 0, err
	}
	return result("mass flow", flow*density)
}

// InjectorFlow returns the static flow of an injector at a pressure across it
// other than the rated one, Q = Q_r sqrt(dp/dp_r): the orifice law. Both
// pressures are rail less manifold, in Pa; the flow comes out in the unit it
// went in. It says nothing of a pump, which follows its own curve.
// Source: common-practice.
func InjectorFlow(ratedFlow, ratedDrop, drop float64) (float64, error) {
	if err := cmp.Or(positive("rated flow", ratedFlow), positive("rated pressure", ratedDrop),
		positive("pressure across the injector", drop)); err != nil {
		return 0, err
	}
	return result("injector flow", ratedFlow*math.Sqrt(drop/ratedDrop))
}

// InjectorDuty returns the share of time that count injectors of one static
// flow must stand open to pass a total flow (both kg/s, or both m3/s). More
// than one means that they cannot. Source: common-practice.
func InjectorDuty(flow float64, count int, staticFlow float64) (float64, error) {
	if err := cmp.Or(notNegative("flow", flow), positive("number of injectors", float64(count)),
		positive("static flow", staticFlow)); err != nil {
		return 0, err
	}
	return result("duty", flow/(float64(count)*staticFlow))
}

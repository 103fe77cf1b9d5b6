package workings

import "cmp"

// Annealed copper of 100 % conductivity at 20 degC. Source: iec-60228 (IEC
// 60028 value); stranding adds 2 to 8 %.
const (
	CopperResistivity = 1.7241e-8 // ohm m
	CopperCoefficient = 0.00393   // per K
	CopperReference   = 293.15    // K
)

// WireResistance returns the resistance in ohm of a conductor, rho L / A, from
// resistivity in ohm m, length in m and area in m2; with a length of one metre,
// that per metre. Source: bird-electrical.
func WireResistance(resistivity, length, area float64) (float64, error) {
	if err := cmp.Or(positive("resistivity", resistivity), notNegative("length", length),
		positive("conductor area", area)); err != nil {
		return 0, err
	}
	return result("resistance", resistivity*length/area)
}

// ResistanceAt returns the resistance in ohm at a temperature in K of a
// conductor whose resistance is known at a reference temperature in K,
// R (1 + a (T - T_ref)); the coefficient per K belongs to that reference.
// Source: bird-electrical.
func ResistanceAt(resistance, coefficient, reference, temperature float64) (float64, error) {
	if err := cmp.Or(notNegative("resistance", resistance), notNegative("temperature coefficient", coefficient),
		positive("reference temperature", reference), positive("temperature", temperature),
		notNegative("resistance at the temperature", 1+coefficient*(temperature-reference))); err != nil {
		return 0, err
	}
	return result("resistance", resistance*(1+coefficient*(temperature-reference)))
}

// LengthAt returns the length in m of copper that drops at a temperature in K
// what a length in m drops at 20 degC: L 254.5 / (234.5 + t), t in degC.
// Source: faa-ac-43.13-1b, par. 11-66.
func LengthAt(length, temperature float64) (float64, error) {
	celsius := temperature - 273.15
	if err := cmp.Or(notNegative("length", length), positive("temperature above -234.5 degC", 234.5+celsius)); err != nil {
		return 0, err
	}
	return result("length", length*254.5/(234.5+celsius))
}

// VoltageDrop returns the voltage lost in a circuit, I R' (out + back), from
// the current in A, the resistance of the wire in ohm/m, its length out and its
// length back in m. back is zero only if the return is the chassis and that is
// to count for nothing: the caller says which. Source: faa-ac-43.13-1b, ch. 11.
func VoltageDrop(current, resistance, out, back float64) (float64, error) {
	if err := cmp.Or(notNegative("current", current), notNegative("resistance per length", resistance),
		notNegative("length out", out), notNegative("length back", back)); err != nil {
		return 0, err
	}
	return result("voltage drop", current*resistance*(out+back))
}

// AreaForDrop returns the conductor area in m2 that keeps a current in A to a
// voltage drop in V, rho I (out + back) / V. Source: bird-electrical.
func AreaForDrop(current, resistivity, out, back, drop float64) (float64, error) {
	if err := cmp.Or(notNegative("current", current), positive("resistivity", resistivity),
		notNegative("length out", out), notNegative("length back", back), positive("voltage drop", drop)); err != nil {
		return 0, err
	}
	return result("conductor area", resistivity*current*(out+back)/drop)
}

// Derated returns a current rating in A after every factor that lowers it
// (surroundings, bundle, heat soak), each above zero and at most one.
// Source: 33-cfr-183.425.
func Derated(rating float64, factors ...float64) (float64, error) {
	if err := notNegative("rating", rating); err != nil {
		return 0, err
	}
	for _, f := range factors {
		if err := fraction("derating factor", f); err != nil {
			return 0, err
		}
		rating *= f
	}
	return result("derated rating", rating)
}

// LoadCurrent returns the current in A of a load of a power in W at a voltage,
// I = P / V. Source: bird-electrical.
func LoadCurrent(power, voltage float64) (float64, error) {
	if err := cmp.Or(notNegative("power", power), positive("voltage", voltage)); err != nil {
		return 0, err
	}
	return result("current", power/voltage)
}

// PumpCurrent returns the current in A of an electric pump that gives a
// hydraulic power in W, P / (eta V): efficiency of pump and motor together
// (0.2 to 0.3 for fuel pumps) and voltage. A screen for a wrong or missing
// figure, no more. Source: from-memory.
func PumpCurrent(hydraulicPower, efficiency, voltage float64) (float64, error) {
	if err := cmp.Or(notNegative("hydraulic power", hydraulicPower), fraction("efficiency", efficiency),
		positive("voltage", voltage)); err != nil {
		return 0, err
	}
	return result("current", hydraulicPower/(efficiency*voltage))
}

// RunTime returns the time in s for which a battery of a usable charge in
// ampere seconds feeds a steady current in A. Charge is that at a like rate: a
// fast discharge gives less. Source: sae-j537.
func RunTime(charge, current float64) (float64, error) {
	if err := cmp.Or(notNegative("charge", charge), positive("current", current)); err != nil {
		return 0, err
	}
	return result("run time", charge/current)
}

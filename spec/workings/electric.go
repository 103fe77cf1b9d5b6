package workings

import "cmp"

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

// RunTime returns the time in s for which a battery of a usable charge in
// ampere seconds feeds a steady current in A. Charge is that at a like rate: a
// fast discharge gives less. Source: sae-j537.
func RunTime(charge, current float64) (float64, error) {
	if err := cmp.Or(notNegative("charge", charge), positive("current", current)); err != nil {
		return 0, err
	}
	return result("run time", charge/current)
}

package workings

import (
	"cmp"
	"math"
)

// Power returns the power in W of a torque in N m at a speed in rad/s,
// P = T w. Source: shigley-9e.
func Power(torque, speed float64) (float64, error) {
	if err := cmp.Or(notNegative("torque", torque), notNegative("speed", speed)); err != nil {
		return 0, err
	}
	return result("power", torque*speed)
}

// Torque returns the torque in N m of a power in W at a speed in rad/s,
// T = P / w. Source: shigley-9e.
func Torque(power, speed float64) (float64, error) {
	if err := cmp.Or(notNegative("power", power), positive("speed", speed)); err != nil {
		return 0, err
	}
	return result("torque", power/speed)
}

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

// MeanPistonSpeed returns the mean piston speed in m/s, v = S w / pi, from the
// stroke in m and the crank speed in rad/s (two strokes a turn).
// Source: rajput-thermal.
func MeanPistonSpeed(stroke, speed float64) (float64, error) {
	if err := cmp.Or(positive("stroke", stroke), notNegative("speed", speed)); err != nil {
		return 0, err
	}
	return result("mean piston speed", stroke*speed/math.Pi)
}

// CompressionRatio returns the geometric compression ratio,
// r = 1 + (pi/4) B^2 S / V_c, from bore and stroke in m and the clearance
// volume of one cylinder in m3. Source: rajput-thermal.
func CompressionRatio(bore, stroke, clearance float64) (float64, error) {
	if err := cmp.Or(positive("bore", bore), positive("stroke", stroke),
		positive("clearance volume", clearance)); err != nil {
		return 0, err
	}
	return result("compression ratio", 1+math.Pi/4*bore*bore*stroke/clearance)
}

// AbsolutePressure returns the absolute pressure in Pa of a gauge pressure in
// Pa above an atmosphere in Pa. A gauge pressure below a full vacuum is
// refused. Source: common-practice.
func AbsolutePressure(gauge, atmosphere float64) (float64, error) {
	if err := cmp.Or(positive("atmospheric pressure", atmosphere), number("gauge pressure", gauge),
		notNegative("absolute pressure", gauge+atmosphere)); err != nil {
		return 0, err
	}
	return result("absolute pressure", gauge+atmosphere)
}

package workings

import (
	"cmp"
	"math"
)

// A Tube is a round section, solid if Inner is zero. Diameters in m.
type Tube struct{ Outer, Inner float64 }

func (t Tube) check() error {
	return cmp.Or(positive("outer diameter", t.Outer), below("inner diameter", t.Inner, "outer diameter", t.Outer))
}

// bend is the second moment of area about a diameter, m4.
func (t Tube) bend() float64 {
	o, i := t.Outer*t.Outer, t.Inner*t.Inner
	return math.Pi / 64 * (o - i) * (o + i)
}

// TorsionStress returns the shear stress in Pa at a diameter in m of a shaft
// that carries a torque in N m, tau = T r / J with J = (pi/32)(D^4 - d^4). The
// most is at the outer diameter. Elastic, away from splines, welds and keyways.
// Source: shigley-9e.
func TorsionStress(torque float64, shaft Tube, diameter float64) (float64, error) {
	if err := cmp.Or(notNegative("torque", torque), shaft.check(),
		within("diameter", diameter, shaft.Inner, shaft.Outer)); err != nil {
		return 0, err
	}
	return result("torsion stress", torque*diameter/2/(2*shaft.bend()))
}

// WhirlingSpeed returns the first whirling speed in rad/s of a uniform shaft on
// simple supports, w = (pi/L)^2 sqrt(E I / m'): length between joint centres in
// m, Young's modulus in Pa, density in kg/m3. Rigid supports and no mass
// between them; a worn slip joint, a bent tube or a mid bearing lowers it. The
// whole mass lumped at mid-span is not a model of this shaft: it is 30 % low.
// Source: shigley-9e, eq. 7-22.
func WhirlingSpeed(shaft Tube, length, youngsModulus, density float64) (float64, error) {
	if err := cmp.Or(shaft.check(), positive("length", length),
		positive("Young's modulus", youngsModulus), positive("density", density)); err != nil {
		return 0, err
	}
	// I/A of a tube is (D^2 + d^2)/16: the wall thickness drops out.
	gyration := math.Hypot(shaft.Outer, shaft.Inner) / 4
	return result("whirling speed", math.Pi*math.Pi/(length*length)*gyration*math.Sqrt(youngsModulus/density))
}

func jointAngle(name string, angle float64) error {
	return within(name, angle, 0, math.Pi/4)
}

// ResidualAngle returns the angle in rad of the single cross joint that would
// turn the output as unevenly as two in series do: sqrt(|a^2 - b^2|) in phase,
// sqrt(a^2 + b^2) with the yokes a quarter turn out. Source: sae-ae-7.
func ResidualAngle(first, second float64, inPhase bool) (float64, error) {
	if err := cmp.Or(jointAngle("first angle", first), jointAngle("second angle", second)); err != nil {
		return 0, err
	}
	if !inPhase {
		return result("residual angle", math.Hypot(first, second))
	}
	return result("residual angle", math.Sqrt(math.Abs(first-second)*(first+second)))
}

// jointAngles are the greatest angles that a cross joint may run at, rad by
// rad/s. Source: driveline-manual.
var jointAngles = []struct{ speed, angle float64 }{
	{3500 * math.Pi / 30, 5.0 * math.Pi / 180},
	{4000 * math.Pi / 30, 4.2 * math.Pi / 180},
	{4500 * math.Pi / 30, 3.7 * math.Pi / 180},
	{5000 * math.Pi / 30, 3.2 * math.Pi / 180},
}

// JointAngleLimit returns the greatest angle in rad that a cross joint may run at
// at a speed in rad/s: by straight lines between the figures of the table, the
// slowest of which holds below it. Above 5000 rpm the table ends, and speed times
// angle stays what it is there. Source: driveline-manual.
func JointAngleLimit(speed float64) (float64, error) {
	if err := positive("shaft speed", speed); err != nil {
		return 0, err
	}
	if speed <= jointAngles[0].speed {
		return jointAngles[0].angle, nil
	}
	for i, high := range jointAngles[1:] {
		if low := jointAngles[i]; speed <= high.speed {
			along := (speed - low.speed) / (high.speed - low.speed)
			return result("joint angle", low.angle+along*(high.angle-low.angle))
		}
	}
	last := jointAngles[len(jointAngles)-1]
	return result("joint angle", last.angle*last.speed/speed)
}

// RoadSpeed returns the speed in m/s of a car from engine speed in rad/s,
// overall ratio (gear times final drive) and rolling radius under load in m,
// v = w r / i, without slip. Source: driveline-manual.
func RoadSpeed(speed, ratio, radius float64) (float64, error) {
	if err := cmp.Or(notNegative("engine speed", speed), positive("overall ratio", ratio),
		positive("rolling radius", radius)); err != nil {
		return 0, err
	}
	return result("road speed", speed*radius/ratio)
}

// OutputTorque returns the torque in N m after a gear train, T i eta, from the
// torque before it, the ratio and the efficiency. Source: gupta-traction.
func OutputTorque(torque, ratio, efficiency float64) (float64, error) {
	if err := cmp.Or(notNegative("torque", torque), positive("ratio", ratio),
		fraction("efficiency", efficiency)); err != nil {
		return 0, err
	}
	return result("output torque", torque*ratio*efficiency)
}

// ReactionShares returns the force in N on each of two mounts or more from a
// torque reaction in N m, from their distances in m along the line across its
// axis: T y / sum(y^2), y from their middle. Mounts are taken as equally stiff;
// the forces sum to nothing. Source: statics.
func ReactionShares(torque float64, across []float64) ([]float64, error) {
	if err := cmp.Or(notNegative("torque", torque), within("number of mounts", float64(len(across)), 2, mostMembers)); err != nil {
		return nil, err
	}
	middle, squares := 0.0, 0.0
	for _, y := range across {
		if err := number("place of a mount", y); err != nil {
			return nil, err
		}
		middle += y / float64(len(across))
	}
	for _, y := range across {
		squares += (y - middle) * (y - middle)
	}
	if err := positive("spread of the mounts across the axis", squares); err != nil {
		return nil, err
	}
	forces := make([]float64, len(across))
	for i, y := range across {
		forces[i] = torque * (y - middle) / squares
	}
	return forces, nil
}

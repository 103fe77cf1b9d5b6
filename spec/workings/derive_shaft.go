package workings

import (
	"math"
	"strings"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

func (n *notebook) shafts() {
	for i := range n.d.Shafts {
		s := &n.d.Shafts[i]
		n.topSpeed(s)
		modulus, density := n.elastic(&s.Tube.Metal)
		n.work(step{
			to:      &s.Calc.Whirling,
			formula: "ω = (π/L)² √(E I / m'), uniform tube on simple supports", source: "shigley-9e", clause: "eq. 7-22",
			note: "a worn slip joint, a bent tube or a mid bearing lowers it; length taken face to face",
			unit: n.worked("ω_top", &s.Calc.TopSpeed).Unit,
			in:   []Input{n.said("D", &s.Tube.Outer), n.said("wall", &s.Tube.Wall), n.said("L", &s.Length), modulus, density},
			by: func(x []float64) (float64, error) {
				return WhirlingSpeed(Tube{Outer: x[0], Inner: x[0] - 2*x[1]}, x[2], x[3], x[4])
			},
		})
		n.work(step{
			to:      &s.Calc.Share,
			formula: "share = ω_top / ω", source: "common-practice",
			in: []Input{n.worked("ω_top", &s.Calc.TopSpeed), n.worked("ω", &s.Calc.Whirling)},
			by: two(quotient),
		})
		n.torsion(s)
		n.jointAngles(s)
	}
}

// beyondAxle reports whether a shaft is driven by the axle.
func beyondAxle(s *document.Shaft) bool { return strings.HasPrefix(s.From.Port.V, "final-drive") }

// torsion works out what the engine can twist a shaft with. A dropped clutch or a
// gripping tyre can do more for a moment.
func (n *notebook) torsion(s *document.Shaft) {
	torque := lacking("T", "driveline.gearbox")
	if len(n.d.Gearbox) > 0 {
		torque = n.worked("T", &n.d.Gearbox[0].Calc.AxleTorque)
	}
	work := step{
		to:      &s.Calc.Torque,
		formula: "T = T_engine i, i of the lowest gear", source: "gupta-traction", note: "without losses and without the shock of a dropped clutch",
		in: []Input{torque},
		by: same,
	}
	if beyondAxle(s) && len(n.d.Gearbox) > 0 {
		work.formula = "T = T_engine i i_final, i of the lowest gear"
		work.note += "; all of it through one side, as a locked axle can"
		work.in = append(work.in, n.said("i_final", &n.d.Gearbox[0].Final.Ratio))
		work.by = product
	}
	n.work(work)
	n.work(step{
		to:      &s.Calc.Stress,
		formula: "τ = 16 T D / (π (D⁴ - d⁴))", source: "shigley-9e", note: "away from welds and splines", unit: "MPa",
		in: []Input{n.worked("T", &s.Calc.Torque), n.said("D", &s.Tube.Outer), n.said("wall", &s.Tube.Wall)},
		by: three(func(torque, outer, wall float64) (float64, error) {
			return TorsionStress(torque, Tube{Outer: outer, Inner: outer - 2*wall}, outer)
		}),
	})
}

// jointAngles works out how a shaft's two joints run. What one cross joint does
// unevenly the other undoes only at the same angle and with the yokes in line.
func (n *notebook) jointAngles(s *document.Shaft) {
	front, rear := n.said("a", &s.AngleFront), n.said("b", &s.AngleRear)
	n.work(step{
		to:      &s.Calc.Angle,
		formula: "the greater of |a| and |b|", source: "driveline-manual",
		in: []Input{front, rear},
		by: two(func(a, b float64) (float64, error) { return max(math.Abs(a), math.Abs(b)), nil }),
	})
	n.work(step{
		to:      &s.Calc.Unequal,
		formula: "||a| - |b||", source: "driveline-manual",
		in: []Input{front, rear},
		by: two(func(a, b float64) (float64, error) { return math.Abs(math.Abs(a) - math.Abs(b)), nil }),
	})
	if s.Joints.Given() && s.Joints.V != "cross" {
		return
	}
	kind := n.said("joints", &s.Joints)
	n.work(step{
		to:      &s.Calc.Residual,
		formula: "√|a² - b²| in phase, √(a² + b²) a quarter turn out", source: "sae-ae-7", clause: "3.1.1",
		in: []Input{front, rear, n.said("phased", &s.Phased), kind},
		by: four(func(a, b, _, _ float64) (float64, error) { return ResidualAngle(math.Abs(a), math.Abs(b), s.Phased.V) }),
	})
	n.work(step{
		to:      &s.Calc.AngleMost,
		formula: "greatest angle by speed; above 5000 rpm ω a as at 5000", source: "driveline-manual",
		in: []Input{n.worked("ω_top", &s.Calc.TopSpeed), kind},
		by: two(func(speed, _ float64) (float64, error) { return JointAngleLimit(speed) }),
	})
}

// topSpeed is the speed of a shaft at the rev limit in the highest gear. A shaft
// that the axle drives turns slower by the final ratio.
func (n *notebook) topSpeed(s *document.Shaft) {
	top := step{
		to:      &s.Calc.TopSpeed,
		formula: "ω_top = ω_engine / i, i of the highest gear", source: "driveline-manual",
		in: []Input{n.said("ω_engine", &s.Engine.RevLimit), n.highestGear(&s.Gearbox.Ratios)},
		by: two(quotient),
	}
	if beyondAxle(s) && len(n.d.Gearbox) > 0 {
		top.formula = "ω_top = ω_engine / (i i_final), i of the highest gear"
		top.in = append(top.in, n.said("i_final", &n.d.Gearbox[0].Final.Ratio))
		top.by = three(func(speed, gear, final float64) (float64, error) { return quotient(speed, gear*final) })
	}
	n.work(top)
}

// elastic gives Young's modulus and density of a metal.
func (n *notebook) elastic(metal spec.Leaf) (modulus, density Input) {
	named := n.said("E", metal)
	if !named.Known {
		return named, named.under("ρ")
	}
	row, ok := tables.Elastic(strings.TrimPrefix(strings.TrimPrefix(named.Text, "plated-"), "anodised-"))
	if !ok {
		return lacking("E"), lacking("ρ")
	}
	return named.standsFor(row.Modulus, unit.Pressure, row.Source, row.Clause),
		named.under("ρ").standsFor(row.Density, unit.Density, row.Source, row.Clause)
}

package workings

import (
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
	}
}

// topSpeed is the speed of a shaft at the rev limit in the highest gear. A shaft
// that the axle drives turns slower by the final ratio.
func (n *notebook) topSpeed(s *document.Shaft) {
	gear := n.said("i", &s.Gearbox.Ratios)
	if ratios := s.Gearbox.Ratios.V; gear.Known && len(ratios) > 0 {
		gear.Value = ratios[len(ratios)-1]
	} else if gear.Known {
		gear = lacking("i", gear.Path)
	}
	top := step{
		to:      &s.Calc.TopSpeed,
		formula: "ω_top = ω_engine / i, i of the highest gear", source: "driveline-manual",
		in: []Input{n.said("ω_engine", &s.Engine.RevLimit), gear},
		by: two(quotient),
	}
	if strings.HasPrefix(s.From.Port.V, "final-drive") && len(n.d.Gearbox) > 0 {
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
	modulus = tabled("E", row.Modulus, unit.Pressure, row.Source, row.Clause)
	density = tabled("ρ", row.Density, unit.Density, row.Source, row.Clause)
	modulus.Path, modulus.Text, modulus.Guess = named.Path, named.Text, named.Guess
	density.Path, density.Text, density.Guess = named.Path, named.Text, named.Guess
	return modulus, density
}

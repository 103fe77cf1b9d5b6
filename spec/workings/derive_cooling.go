package workings

import (
	"fitup/policies/tables"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// coolantRise is what the coolant warms by from inlet to outlet of an engine in
// health: 5 to 8 K. Source: from-memory.
const coolantRise = 6.0 // K

func (n *notebook) cooling() {
	for i := range n.d.Cooling {
		c := &n.d.Cooling[i]
		heat := n.said("heat", &c.Needs.HeatWater)
		n.heat(&c.Calc.Rise, &c.Calc.Shed, heat, n.said("shed", &c.Radiator.Sheds), "coolant")
		density, specific := n.warm("coolant")
		n.work(step{
			to:      &c.Calc.Flow,
			formula: "Q = heat / (ρ c ΔT), ΔT = 6 K", source: "rajput-thermal",
			note: "for as long as that heat lasts: a short run warms the metal first",
			unit: "L/min",
			in:   []Input{heat, density, specific, tabled("ΔT", coolantRise, unit.TemperatureDifference, "from-memory", "5 to 8 K is usual")},
			by: four(func(heat, density, specific, rise float64) (float64, error) {
				m, err := MassFlowForRise(heat, specific, rise)
				if err != nil {
					return 0, err
				}
				return VolumeFlow(m, density)
			}),
		})
	}
}

// heat works out by how much a liquid warms that carries a heat away at its
// pump's flow, and how much of the heat its cooler sheds.
func (n *notebook) heat(rise, share *document.Figure, heat, shed Input, liquid string) {
	flow, _ := n.pumped(liquid)
	density, specific := n.warm(liquid)
	n.work(step{
		to:      rise,
		formula: "ΔT = heat / (ρ Q c)", source: "rajput-thermal", note: "at the speed that the pump's flow is given for, all of it through the engine",
		in: []Input{heat, flow, density, specific},
		by: four(func(heat, flow, density, specific float64) (float64, error) {
			m, err := MassFlow(flow, density)
			if err != nil {
				return 0, err
			}
			return RiseOfFlow(heat, m, specific)
		}),
	})
	n.work(step{
		to:      share,
		formula: "shed / heat", source: "common-practice",
		in: []Input{shed, heat},
		by: two(quotient),
	})
}

// warm gives density and specific heat of a liquid at work: of each property the
// row at the highest temperature below 100 °C, which is a little high for density.
func (n *notebook) warm(liquid string) (density, specific Input) {
	at := 0.0
	for _, r := range tables.FluidProperties(liquid) {
		if r.Density > 0 && r.Temperature > at && r.Temperature < unit0C+99 {
			at, density = r.Temperature, tabled("ρ", r.Density, unit.Density, r.Source, r.Clause)
		}
		if r.SpecificHeat > 0 {
			specific = tabled("c", r.SpecificHeat, unit.SpecificHeat, r.Source, r.Clause)
		}
	}
	return density, specific
}

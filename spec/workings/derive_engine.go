package workings

import (
	"slices"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

func (n *notebook) engines() {
	for i := range n.d.Engines {
		e := &n.d.Engines[i]
		n.swept(step{to: &e.Calc.Displacement}, &e.Engine)
		n.crankPower(step{to: &e.Calc.Power}, &e.Engine)
		bsfc, note := n.consumption(&e.Engine)
		n.work(step{
			to:      &e.Calc.FuelMassFlow,
			formula: "m = P b", source: "common-practice", note: note,
			in: []Input{n.worked("P", &e.Calc.Power), bsfc},
			by: two(FuelMassFlow),
		})
		n.work(step{
			to:      &e.Calc.FuelFlow,
			formula: "Q = m / ρ", source: "common-practice",
			in: []Input{n.worked("m", &e.Calc.FuelMassFlow), n.fuelDensity(&e.Fuel)},
			by: two(VolumeFlow),
		})
	}
}

// swept works out the displacement: as declared, else from bore and stroke.
func (n *notebook) swept(s step, e *spec.Engine) {
	s.source = "common-practice"
	if e.Displacement.Given() {
		s.formula, s.in, s.by = "V as declared", []Input{n.said("V", &e.Displacement)}, same
	} else {
		s.formula = "V = z (π/4) B² S"
		s.in = []Input{n.said("z", &e.Cylinders), n.said("B", &e.Bore), n.said("S", &e.Stroke)}
		s.by = three(Displacement)
	}
	n.work(s)
}

func (n *notebook) crankPower(s step, e *spec.Engine) {
	s.source = "common-practice"
	if e.PowerCrank.Given() || !e.PowerWheels.Given() {
		s.formula, s.in, s.by = "P as declared", []Input{n.said("P", &e.PowerCrank)}, same
	} else {
		s.formula, s.note = "P = P_wheel / (1 - loss)", "no standard gives the loss; it is as assumed in the spec"
		s.in = []Input{n.said("P_wheel", &e.PowerWheels), n.said("loss", &e.WheelLoss)}
		s.by = two(CrankPower)
	}
	n.work(s)
}

// consumption is the brake-specific fuel consumption at full power: declared,
// else the upper end of the usual band. A fuel without a band takes that of
// petrol by the ratio of heating values.
func (n *notebook) consumption(e *spec.Engine) (b Input, note string) {
	if e.Consumption.Given() {
		return n.said("b", &e.Consumption), ""
	}
	fuel, induction := n.said("fuel", &e.Fuel), n.said("induction", &e.Induction)
	if !fuel.Known || !induction.Known {
		return lacking("b", append(fuel.missing, induction.missing...)...), ""
	}
	name, breathes := e.Fuel.V, "boosted"
	if e.Induction.V == "naturally aspirated" {
		breathes = "natural"
	}
	row, ok := tables.FuelConsumption(name, breathes)
	note = "consumption not declared: the upper end of the usual band, common practice"
	ratio := 1.0
	if !ok {
		petrol, _ := tables.Fuel("petrol")
		own, _ := tables.Fuel(name)
		if own.Ethanol == 0 {
			return lacking("b", n.said("b", &e.Consumption).missing...), "no usual band for this fuel"
		}
		row, _ = tables.FuelConsumption("petrol", breathes)
		ratio = petrol.HeatingValue / own.HeatingValue
		note += ", of petrol by the ratio of heating values"
	}
	b = tabled("b", row.High*ratio, unit.FuelConsumption, row.Source, row.Clause)
	b.Guess = fuel.Guess || induction.Guess
	return b, note
}

// fuelDensity is the density of a fuel by its name.
func (n *notebook) fuelDensity(fuel spec.Leaf) Input {
	named := n.said("ρ", fuel)
	if !named.Known {
		return named
	}
	row, _ := tables.Fuel(named.Text)
	return named.standsFor(row.Density, unit.Density, row.Source, row.Clause)
}

// boost is the boost of an engine: nothing if it has none.
func (n *notebook) boost(e *spec.Engine) Input {
	boost := n.said("boost", &e.Boost)
	if e.Boost.Given() {
		return boost
	}
	if e.Induction.V == "naturally aspirated" || e.Boost.Said() == spec.None {
		from := n.said("boost", &e.Induction)
		if e.Boost.Said() == spec.None {
			from = boost
		}
		from.Known, from.Value, from.Dimension, from.missing = true, 0, unit.Pressure, nil
		return from
	}
	return boost
}

func (n *notebook) oil() {
	for i := range n.d.Oil {
		o := &n.d.Oil[i]
		n.swept(step{to: &o.Calc.Displacement}, &o.Engine)
		n.heat(&o.Calc.Rise, &o.Calc.Shed, n.said("heat", &o.Needs.HeatOil), n.said("shed", &o.Cooler.Sheds), "engine oil")
	}
}

// gearboxes works out what torque gearbox and axle have to bear.
func (n *notebook) gearboxes() {
	for i := range n.d.Gearbox {
		g := &n.d.Gearbox[i]
		torque := n.said("T", &g.Engine.Torque)
		n.work(step{
			to:      &g.Calc.Asked,
			formula: "T_asked = T k, k as declared, or 1 + k where k is below one", source: "common-practice",
			in: []Input{torque, n.said("k", &g.Shock)},
			by: two(func(torque, margin float64) (float64, error) {
				if margin < 1 {
					margin++
				}
				return result("torque", torque*margin)
			}),
		})
		n.work(step{
			to:      &g.Calc.AxleTorque,
			formula: "T_axle = T i, i of the lowest gear", source: "gupta-traction", note: "without losses",
			in: []Input{torque, n.lowestGear(&g.Ratios)},
			by: two(func(torque, ratio float64) (float64, error) { return OutputTorque(torque, ratio, 1) }),
		})
		n.roadSpeed(g)
	}
}

// lowestGear and highestGear are the greatest and the least of the ratios, in
// whatever order they are written.
func (n *notebook) lowestGear(ratios *spec.Numbers) Input  { return n.gear(ratios, slices.Max) }
func (n *notebook) highestGear(ratios *spec.Numbers) Input { return n.gear(ratios, slices.Min) }

func (n *notebook) gear(ratios *spec.Numbers, which func([]float64) float64) Input {
	in := n.said("i", ratios)
	if in.Known {
		in.Value = which(ratios.V)
	}
	return in
}

// roadSpeed is the speed of the car at the limiter in the highest gear.
func (n *notebook) roadSpeed(g *document.Gearbox) {
	radius := lacking("r", "car.tyre-radius")
	if len(n.d.Cars) > 0 {
		radius = n.said("r", &n.d.Cars[0].TyreRadius)
	}
	n.work(step{
		to:      &g.Calc.RoadSpeed,
		formula: "v = ω r / (i i_final), i of the highest gear", source: "driveline-manual", note: "no slip, and power enough", unit: "km/h",
		in: []Input{n.said("ω", &g.Engine.RevLimit), n.highestGear(&g.Ratios), n.said("i_final", &g.Final.Ratio), radius},
		by: four(func(speed, gear, final, radius float64) (float64, error) { return RoadSpeed(speed, gear*final, radius) }),
	})
}

package workings

import (
	"cmp"
	"fmt"
	"slices"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// pumpFlow is the flow at a pressure along a pump's own curve, in SI, by straight
// lines between its points. A pump gives no less at a lower pressure, so below
// the first point the flow is that of the first. Past the last point nothing is
// known: a pump does not follow the orifice law.
func pumpFlow(curve []unit.At, pressure float64) (float64, error) {
	if err := cmp.Or(positive("number of points", float64(len(curve))), notNegative("pressure", pressure)); err != nil {
		return 0, err
	}
	points := slices.Clone(curve)
	slices.SortFunc(points, func(a, b unit.At) int { return cmp.Compare(a.At.SI, b.At.SI) })
	if pressure <= points[0].At.SI {
		return points[0].Value.SI, nil
	}
	for i, high := range points[1:] {
		if low := points[i]; pressure <= high.At.SI {
			along := (pressure - low.At.SI) / (high.At.SI - low.At.SI)
			return result("pump flow", low.Value.SI+along*(high.Value.SI-low.Value.SI))
		}
	}
	return 0, &RangeError{"pressure", pressure, fmt.Sprintf("at most %.6g, the last point of the curve", points[len(points)-1].At.SI)}
}

func (n *notebook) fuel() {
	for i := range n.d.Fuel {
		f := &n.d.Fuel[i]
		c := &f.Calc
		n.work(ethanolIn(&c.Ethanol, n.ethanol(&f.Cell.Ethanol, &f.Cell.Filled)))
		n.work(step{
			to:      &c.Alcohol,
			formula: "alcohol = ethanol + methanol", source: "afdc-fuel-properties",
			in: []Input{n.worked("ethanol", &c.Ethanol), n.methanol(&f.Cell.Filled)},
			by: sum,
		})
		n.railPressure(f)
		n.work(step{
			to:      &c.Demand,
			formula: "as the engine burns at full power", source: "common-practice",
			in: []Input{n.engineFuel()},
			by: same,
		})
		n.pump(f)
		n.work(step{
			to:      &c.Margin,
			formula: "margin = Q_pump / Q_engine", source: "common-practice",
			in: []Input{n.worked("Q_pump", &c.Pump), n.worked("Q_engine", &c.Demand)},
			by: two(quotient),
		})
		n.work(step{
			to:      &c.Return,
			formula: "Q_return = Q_pump - Q_engine", source: "common-practice",
			in: []Input{n.worked("Q_pump", &c.Pump), n.worked("Q_engine", &c.Demand)},
			by: two(difference),
		})
		n.injectors(f)
		n.stoichiometry(f)
	}
}

// injectors works out how long the injectors stand open at full power. What counts
// is the pressure across them: a regulator that follows the manifold keeps it, one
// that does not leaves boost to take from it.
func (n *notebook) injectors(f *document.Fuel) {
	r, i := &f.Regulator, &f.Engine.Injectors
	base := n.said("p_base", &r.Base)
	across := step{to: &f.Calc.Across, formula: "Δp = p_base", source: "common-practice", note: "the regulator follows the manifold", in: []Input{base}, by: same}
	switch {
	case !r.Follows.Given():
		across.in = append(across.in, n.said("follows", &r.Follows))
	case !r.Follows.V:
		across.formula, across.note = "Δp = p_base - boost", ""
		across.in = append(across.in, n.boost(&f.Engine))
		across.by = two(difference)
	}
	n.work(across)
	n.work(step{
		to:      &f.Calc.Injector,
		formula: "Q = Q_rated √(Δp / Δp_rated)", source: "common-practice",
		note: "by volume, as measured: a fuel heavier than that of the flow bench runs a little slower",
		in:   []Input{n.said("Q_rated", &i.Flow), n.said("Δp_rated", &i.Pressure), n.worked("Δp", &f.Calc.Across)},
		by:   three(InjectorFlow),
	})
	n.work(step{
		to:      &f.Calc.Duty,
		formula: "duty = Q_engine / (z Q)", source: "common-practice",
		in: []Input{n.worked("Q_engine", &f.Calc.Demand), n.said("z", &i.Count), n.worked("Q", &f.Calc.Injector)},
		by: three(func(flow, count, static float64) (float64, error) { return InjectorDuty(flow, int(count), static) }),
	})
}

// stoichiometry works out the air that burns what is in the tank. The air of a
// blend goes by the mass of its parts.
func (n *notebook) stoichiometry(f *document.Fuel) {
	name, row := n.fuelNamed("fuel", &f.Cell.Filled)
	s := step{to: &f.Calc.AirFuel, formula: "air to fuel by mass, of the fuel", source: "afdc-fuel-properties", unit: ":1", in: []Input{name}, by: always(row.AirFuel, nil)}
	petrol, _ := tables.Fuel("petrol")
	ethanol, _ := tables.Fuel("ethanol")
	if row.Methanol == 0 && name.Known && name.Text != "diesel" {
		s.formula = "w 9.0 + (1 - w) 14.7, w = ρ_e e / (ρ_e e + ρ_p (1 - e))"
		s.in = []Input{
			n.worked("e", &f.Calc.Ethanol),
			tabled("ρ_e", ethanol.Density, unit.Density, ethanol.Source, ethanol.Clause), tabled("ρ_p", petrol.Density, unit.Density, petrol.Source, petrol.Clause),
		}
		s.by = three(func(share, dense, light float64) (float64, error) {
			w, err := MassFraction(share, dense, light)
			if err != nil {
				return 0, err
			}
			return MassAverage(w, ethanol.AirFuel, petrol.AirFuel)
		})
	}
	n.work(s)
}

// engineFuel is the fuel that the engine burns at full power.
func (n *notebook) engineFuel() Input {
	if len(n.d.Engines) == 0 {
		return lacking("Q_engine", "driveline.engine")
	}
	return n.worked("Q_engine", &n.d.Engines[0].Calc.FuelFlow)
}

// ethanol is the share of ethanol by volume: tested or declared, else what the
// fuel's name stands for.
func (n *notebook) ethanol(declared, fuel spec.Leaf) Input {
	if said := declared.Said(); said == spec.Given || said == spec.Asked { // asked: what the name stands for is not enough
		return n.said("e", declared)
	}
	e, row := n.fuelNamed("e", fuel)
	if row.EthanolHigh > row.EthanolLow {
		e.Guess = true // what is sold under the name varies
	}
	e.Value = row.Ethanol
	return e
}

func (n *notebook) methanol(fuel spec.Leaf) Input {
	m, row := n.fuelNamed("methanol", fuel)
	m.Value = row.Methanol
	return m
}

// fuelNamed is the row of a fuel by its name, and an input that has the row's
// source and waits for its value.
func (n *notebook) fuelNamed(symbol string, fuel spec.Leaf) (Input, tables.FuelRow) {
	name := n.said(symbol, fuel)
	row, ok := tables.Fuel(name.Text)
	if !name.Known || !ok {
		return name, tables.FuelRow{}
	}
	name.Dimension, name.Source, name.Clause = unit.Ratio, row.Source, row.Clause
	return name, row
}

func ethanolIn(to *document.Figure, e Input) step {
	s := step{to: to, formula: "e as tested", source: "afdc-fuel-properties", in: []Input{e}, by: same}
	if e.Source != "" {
		s.formula = "e as the fuel's name says"
		if e.Guess {
			s.note = "what is sold under that name varies: test it"
		}
	}
	return s
}

func (n *notebook) railPressure(f *document.Fuel) {
	r := &f.Regulator
	base, follows := n.said("p_base", &r.Base), n.said("follows", &r.Follows)
	s := step{to: &f.Calc.Pressure, source: "common-practice", formula: "p = p_base", by: same}
	switch {
	case !r.Follows.Given():
		s.in = []Input{base, follows}
	case r.Follows.V:
		s.formula = "p = p_base + the higher boost of engine and map"
		s.in = append([]Input{base, n.boost(&f.Engine)}, counting(n.said("boost of the map", &f.Tune.Boost))...)
		s.by = func(x []float64) (float64, error) { return x[0] + slices.Max(x[1:]), nil }
	default:
		s.in, s.note = []Input{base}, "the regulator does not follow the manifold: boost takes from the pressure across the injectors"
	}
	n.work(s)
}

// pump is what the pump gives at rail pressure. Where the curve stops short of
// it, a point at that pressure is what is missing.
func (n *notebook) pump(f *document.Fuel) {
	curve, pressure := n.said("Q(p)", &f.Pump.Flow), n.worked("p", &f.Calc.Pressure)
	s := step{
		to:      &f.Calc.Pump,
		formula: "Q at p, by straight lines along the pump's own curve", source: "common-practice",
		note: "at the voltage of the curve",
		in:   []Input{curve, pressure},
		by:   func(x []float64) (float64, error) { return pumpFlow(f.Pump.Flow.V, x[1]) },
	}
	if curve.Known && len(f.Pump.Flow.V) > 0 {
		s.in[0].Unit, s.in[0].Dimension = f.Pump.Flow.V[0].Value.Unit, unit.VolumeFlow
		if _, err := pumpFlow(f.Pump.Flow.V, pressure.Value); pressure.Known && err != nil {
			s.in[0] = lacking("Q(p)", curve.Path)
			s.note = "the curve stops short of " + unit.Format(pressure.Value, unit.Pressure, pressure.Unit)
		}
	}
	n.work(s)
}

// tunes sets the fuel that the map was made for beside the fuel in the tank.
func (n *notebook) tunes() {
	for i := range n.d.Tunes {
		t := &n.d.Tunes[i]
		n.work(ethanolIn(&t.Calc.MapEthanol, n.ethanol(&t.Ethanol, &t.Fuel)))
		n.work(ethanolIn(&t.Calc.TankEthanol, n.ethanol(&t.Cell.Ethanol, &t.Cell.Filled)))
	}
}

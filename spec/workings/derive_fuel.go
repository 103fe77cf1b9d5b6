package workings

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

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
	base := n.base(f)
	across := step{to: &f.Calc.Across, formula: "Δp = p_base", source: "common-practice", note: "the regulator follows the manifold", in: []Input{base}, by: same}
	switch {
	case r.State == spec.None:
		across.note = "no regulator: the engine computer holds the pressure of its map"
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
	base, follows := n.base(f), n.said("follows", &r.Follows)
	s := step{to: &f.Calc.Pressure, source: "common-practice", formula: "p = p_base", by: same}
	switch {
	case r.State == spec.None && f.Engine.Injectors.State == spec.None:
		s.formula, s.note = "p = p_relief", "carburettors, and nothing holds the pump back but its own valve"
		s.in = []Input{n.relief(f)}
	case r.State != spec.None && !r.Follows.Given():
		s.in = []Input{base, follows}
	case r.Follows.V, r.State == spec.None:
		s.formula = "p = p_base + the higher boost of engine and map"
		s.in = append([]Input{base, n.boost(&f.Engine)}, counting(n.said("boost of the map", &f.Tune.Boost))...)
		s.by = func(x []float64) (float64, error) { return x[0] + slices.Max(x[1:]), nil }
	default:
		s.in, s.note = []Input{base}, "the regulator does not follow the manifold: boost takes from the pressure across the injectors"
	}
	n.work(s)
}

// base is the pressure over the manifold that the regulator holds; without one, the
// engine computer slows the pump down to what its map was made with.
func (n *notebook) base(f *document.Fuel) Input {
	if f.Regulator.State == spec.None {
		return n.said("p_map", &f.Tune.Pressure)
	}
	return n.said("p_base", &f.Regulator.Base)
}

// fuelPump is the driveline's own fuel pump, where the car has none.
func (n *notebook) fuelPump(f *document.Fuel) *spec.Pump {
	if f.Pump.State != spec.None {
		return nil
	}
	return n.d.Given.Pumps.Named["fuel"]
}

// relief is the pressure at which the fuel pump's own valve opens.
func (n *notebook) relief(f *document.Fuel) Input {
	if driven := n.fuelPump(f); driven != nil {
		return n.said("p_relief", &driven.Relief)
	}
	return n.said("p_relief", &f.Pump.Relief)
}

// pump is what the pump gives at rail pressure. Where the curve stops short of
// it, a point at that pressure is what is missing. A pump that the engine drives
// gives what its driveline says.
func (n *notebook) pump(f *document.Fuel) {
	if driven := n.fuelPump(f); driven != nil {
		n.work(step{to: &f.Calc.Pump, formula: "Q of the pump that the engine drives", source: "common-practice", in: []Input{n.said("Q_pump", &driven.Flow)}, by: same})
		return
	}
	curve, pressure := n.said("Q(p)", &f.Pump.Flow), n.worked("p", &f.Calc.Pressure)
	s := step{
		to:      &f.Calc.Pump,
		formula: "Q at p, by straight lines along the pump's own curve", source: "common-practice",
		note: "at the voltage of the curve",
		in:   []Input{curve, pressure},
		by:   func(x []float64) (float64, error) { return pumpFlow(f.Pump.Flow.V, x[1]) },
	}
	if curve.Known {
		s.in[0].Unit, s.in[0].Dimension = f.Pump.Flow.V[0].Value.Unit, unit.VolumeFlow
		if _, err := pumpFlow(f.Pump.Flow.V, pressure.Value); pressure.Known && err != nil {
			s.in[0] = lacking("Q(p)", curve.Path)
			s.note = "the curve stops short of " + unit.Format(pressure.Value, unit.Pressure, pressure.Unit)
		}
	}
	n.work(s)
}

// feed works out what the lines from the pump to the engine leave of its flow. It
// reckons them with the flow at rail pressure, which is more than what comes to pass.
func (n *notebook) feed() {
	for i := range n.d.Fuel {
		f := &n.d.Fuel[i]
		lost := step{
			to:      &f.Calc.Loss,
			formula: "friction, ends and climb of each line from the pump to the engine", source: "cengel-fluid-mechanics",
			note: "as if one behind the other, without filter and bends",
			by:   sum,
		}
		if n.d.Lines == nil {
			lost.in = []Input{lacking("lines", "lines")}
		}
		for j := range n.d.Lines {
			switch l := &n.d.Lines[j]; {
			case l.Owner == driveline || l.Service != "fuel" && l.Service != "" || l.Line.To.Port.V == spec.OpenAir:
			case l.Service == "" || l.From == nil || l.From.Port == nil:
				lost.in = append(lost.in, lacking("from", l.Path+".from")) // it may be one
			case l.To == nil || l.To.Port == nil:
				lost.in = append(lost.in, lacking("to", l.Path+".to"))
			case l.Flow == "":
				lost.in = append(lost.in, n.said("suction", &l.Suction))
			case feeds(l):
				lost.in = append(lost.in, n.worked("friction", &l.Calc.Drop), n.worked("ends", &l.Calc.Minor), n.worked("climb", &l.Calc.Climb))
			}
		}
		n.work(lost)
		curve, loss := n.said("Q(p)", &f.Pump.Flow), n.worked("Δp", &f.Calc.Loss)
		fed := step{
			to:      &f.Calc.Fed,
			formula: "Q at p + Δp, by straight lines along the pump's own curve", source: "common-practice",
			in: []Input{curve, n.worked("p", &f.Calc.Pressure), loss},
			by: func(x []float64) (float64, error) { return pumpFlow(f.Pump.Flow.V, x[1]+x[2]) },
		}
		if n.fuelPump(f) != nil {
			fed.formula, fed.by = "Q of the pump that the engine drives", same
			fed.in = []Input{n.worked("Q_pump", &f.Calc.Pump)}
		}
		n.work(fed)
	}
}

// feeds tells whether a line of fuel leads from the pump to the engine.
func feeds(l *document.Line) bool {
	return l.Flow == "pump" && !slices.ContainsFunc(pastTheFeed, func(part string) bool { return strings.HasPrefix(l.From.Port.Name, part) })
}

// pastTheFeed is where a pumped line of fuel may begin that is no part of the feed:
// behind the rail, and before the surge pot.
var pastTheFeed = []string{"driveline.", "fuel.lift-pump."}

// tunes sets the fuel that the map was made for beside the fuel in the tank.
func (n *notebook) tunes() {
	for i := range n.d.Tunes {
		t := &n.d.Tunes[i]
		n.work(ethanolIn(&t.Calc.MapEthanol, n.ethanol(&t.Ethanol, &t.Fuel)))
		n.work(ethanolIn(&t.Calc.TankEthanol, n.ethanol(&t.Cell.Ethanol, &t.Cell.Filled)))
	}
}

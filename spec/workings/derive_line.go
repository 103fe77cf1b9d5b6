package workings

import (
	"cmp"
	"fmt"
	"slices"

	"fitup/policies/tables"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// burstShare is the part of its burst pressure at which a hose may work: the
// ratio of operating to burst pressure of aircraft hose.
const burstShare = 0.25

func (n *notebook) lines() {
	for i := range n.d.Lines {
		l := &n.d.Lines[i]
		n.linePressure(l)
		n.lineRating(l)
		n.lineTemperature(l)
		n.lineFlow(l)
		n.lineAge(l)
		if l.From != nil && l.From.Port != nil && l.To != nil && l.To.Port != nil {
			from, to := n.port("from", l.From.Port, l.Owner), n.port("to", l.To.Port, l.Owner)
			n.work(step{
				to:      &l.Calc.Straight,
				formula: "L = |to - from|", source: "common-practice", note: "straight from port to port: no hose runs so",
				in: append(from.in, to.in...),
				by: distance(from.Vec, to.Vec),
			})
			n.lineSlack(l)
			n.lineLosses(l, from, to)
		}
		if l.Fuel != "" && len(n.d.Fuel) > 0 {
			n.work(step{
				to:      &l.Ethanol,
				formula: "e of the fuel in the tank", source: "afdc-fuel-properties",
				in: []Input{n.worked("e", &n.d.Fuel[0].Calc.Ethanol)},
				by: same,
			})
		}
	}
}

// ends are the ports that a line meets.
func ends(l *document.Line) []*document.Port {
	var ports []*document.Port
	for _, end := range []*document.LineEnd{l.From, l.To} {
		if end != nil && end.Port != nil {
			ports = append(ports, end.Port)
		}
	}
	return ports
}

// counting leaves out what is not said or none. What is asked stays: it matters.
func counting(inputs ...Input) []Input {
	var out []Input
	for _, in := range inputs {
		if in.Known || in.asked {
			out = append(out, in)
		}
	}
	return out
}

func (n *notebook) linePressure(l *document.Line) {
	working := n.said("p_line", &l.Working)
	in := []Input{working}
	for _, p := range ends(l) {
		in = append(in, n.said("p_port", &p.Max))
	}
	system := n.systemPressures(l)
	in = counting(append(in, system...)...)
	if len(in) == 0 { // what the system still lacks, else the line's own word
		in = append(system, working)[:1]
	}
	n.work(step{
		to:      &l.Calc.Pressure,
		formula: "p = the highest of what arises in it", source: "common-practice",
		in: in,
		by: highest,
	})
}

// systemPressures are the pressures that the system of a line can put into it:
// the regulator with boost, the relief valve of the pump, the cap.
func (n *notebook) systemPressures(l *document.Line) []Input {
	var in []Input
	pumped := l.Flow == "pump" || l.Flow == "pressure"
	if name, driven := document.PumpOf[l.Service]; driven && pumped {
		if pump := n.d.Given.Pumps.Named[name]; pump != nil {
			in = append(in, n.said("p_relief", &pump.Relief))
		}
	}
	switch {
	case l.Service == "fuel" && pumped && len(n.d.Fuel) > 0:
		f := &n.d.Fuel[0]
		in = append(in, n.worked("p_rail", &f.Calc.Pressure), n.relief(f))
	case l.Service == "coolant" && len(n.d.Cooling) > 0:
		in = append(in, n.said("p_cap", &n.d.Cooling[0].Header.Cap))
	case l.Service == "clutch fluid" && len(n.d.Clutch) > 0:
		in = append(in, n.worked("p_release", &n.d.Clutch[0].Calc.Pressure))
	}
	return in
}

func (n *notebook) lineRating(l *document.Line) {
	rated, burst := n.said("p_rated", &l.Kind.Rated), n.said("p_burst", &l.Kind.Burst)
	s := step{to: &l.Calc.Rating, formula: "p as rated", source: "common-practice", in: []Input{rated}, by: same}
	if !rated.Known && !rated.asked && burst.Known {
		s.formula, s.source, s.clause = "p = p_burst / 4", "faa-ac-43.13-1b", "table 9-3"
		s.in = []Input{burst, tabled("1/4", burstShare, unit.Ratio, "faa-ac-43.13-1b", "table 9-3")}
		s.by = product
	}
	n.work(s)
}

func (n *notebook) lineTemperature(l *document.Line) {
	near := n.said("t_near", &l.Near)
	in := []Input{near}
	for _, p := range ends(l) {
		in = append(in, n.said("t_port", &p.Hot))
	}
	if in = counting(in...); len(in) == 0 {
		in = []Input{near}
	}
	n.work(step{
		to:      &l.Calc.Temperature,
		formula: "t = the highest of fluid and surroundings", source: "common-practice",
		in: in,
		by: highest,
	})
}

func (n *notebook) lineAge(l *document.Line) {
	made := n.said("made", &l.Hose.Made)
	n.work(step{
		to:      &l.Calc.Age,
		formula: "whole months from the day made to " + n.d.Date, source: "common-practice",
		note: "a month or a year on the hose is read as its first day",
		in:   []Input{made},
		by:   always(n.monthsSince(l.Hose.Made.V.First())),
	})
}

// branchBore is the part of the widest bore of its service under which a line is
// a branch: a bleed, a heater, the feed of a turbocharger. Such a line is under
// the pressure of the pump without carrying its flow. Source: common-practice.
const branchBore = 0.6

// isBranch reports whether a line carries only a part of its pump's flow.
func (n *notebook) isBranch(l *document.Line) bool {
	widest := 0.0
	for i := range n.d.Lines {
		if o := &n.d.Lines[i]; o.Service == l.Service && o.Owner == l.Owner {
			widest = max(widest, o.Kind.Bore.V.SI)
		}
	}
	return l.Climbs.Given() || l.Owner == driveline || l.Kind.Bore.Given() && l.Kind.Bore.V.SI < branchBore*widest
}

// pumped is the flow of the pump that moves a service.
func (n *notebook) pumped(service string) (flow Input, ok bool) {
	if service == "fuel" && len(n.d.Fuel) > 0 {
		return n.worked("Q_pump", &n.d.Fuel[0].Calc.Pump), true
	}
	name, ok := document.PumpOf[service]
	if pump := n.d.Given.Pumps.Named[name]; pump != nil {
		return n.said("Q_pump", &pump.Flow), true
	}
	return lacking("Q_pump", "driveline.pumps."+name+".flow"), ok
}

// lineFlow works out flow, velocity and loss of a line that carries the full
// flow of a pump. What flows in a branch is not known.
func (n *notebook) lineFlow(l *document.Line) {
	flow, ok := n.pumped(l.Service)
	switch {
	case !ok || l.Flow != "pump" && l.Flow != "suction":
		return
	case n.isBranch(l):
		l.Flow = "pressure"
		return
	}
	c := &l.Calc
	n.work(step{to: &c.Flow, formula: "Q of the pump", source: "common-practice", note: "all of it through this line", in: []Input{flow}, by: same})
	q, bore := n.worked("Q", &c.Flow), n.said("d", &l.Kind.Bore)
	n.work(step{
		to:      &c.Velocity,
		formula: "v = 4 Q / (π d²)", source: "cengel-fluid-mechanics",
		in: []Input{q, bore},
		by: two(Velocity),
	})
	from, to := n.passages(l)
	n.work(step{
		to:      &c.Fastest,
		formula: "v = 4 Q / (π d²), d the least of hose and adaptors", source: "cengel-fluid-mechanics",
		in: slices.Concat([]Input{q, bore}, from, to),
		by: func(x []float64) (float64, error) { return Velocity(x[0], slices.Min(x[1:])) },
	})
	density, viscosity, note := n.liquid(l)
	if note == "" {
		return
	}
	n.work(step{
		to:      &c.Reynolds,
		formula: "Re = ρ v d / μ", source: "cengel-fluid-mechanics", note: note,
		in: []Input{density, n.worked("v", &c.Velocity), bore, viscosity},
		by: four(Reynolds),
	})
	re := n.worked("Re", &c.Reynolds)
	friction := "1/√f = -2 log(2.51 / (Re √f)), Colebrook, smooth bore"
	if re.Known && re.Value <= LaminarLimit {
		friction = "f = 64 / Re, laminar"
	}
	n.work(step{
		to:      &c.Drop,
		formula: "Δp = f (L/d) ρ v² / 2; " + friction, source: "cengel-fluid-mechanics",
		note: "straight run, without fittings and bends; " + note,
		in:   []Input{density, viscosity, q, bore, n.said("L", &l.Hose.Length), re},
		by: func(x []float64) (float64, error) {
			f, err := PipeDrop(Pipe{Bore: x[3], Length: x[4]}, Liquid{x[0], x[1]}, x[2])
			return f.Drop, err
		},
	})
}

// shortening is the part of its length by which a hose may draw in under
// pressure. Source: faa-ac-43.13-1b, figure 9-9.
const shortening = 0.04

// lineSlack works out how much longer a hose is than the way between its ports,
// and what movement and pressure ask for.
func (n *notebook) lineSlack(l *document.Line) {
	length := n.said("L", &l.Hose.Length)
	slack := step{
		to:      &l.Calc.Slack,
		formula: "L - straight", source: "common-practice", note: "bends have to be made from it too",
		in: []Input{n.worked("straight", &l.Calc.Straight), length},
		by: func(x []float64) (float64, error) {
			total, err := sum(x[1:])
			return total - x[0], err
		},
	}
	if added := n.adaptorLength(l); len(added) > 0 {
		slack.formula = "L + adaptors - straight"
		slack.in = append(slack.in, added...)
	}
	n.work(slack)
	s := step{
		to:      &l.Calc.SlackNeeded,
		formula: "0.04 L", source: "faa-ac-43.13-1b", clause: "figure 9-9", note: "a hose draws in by up to 4 % under pressure",
		in: []Input{length, tabled("shortening", shortening, unit.Ratio, "faa-ac-43.13-1b", "figure 9-9")},
		by: product,
	}
	if l.Boundary {
		s.formula, s.note = "0.04 L + movement of the engine", s.note+"; the engine moves away by all that it rocks"
		s.in = append(s.in, n.orNothing("rocks", &n.d.Given.Fit.Rocks))
		s.by = three(func(length, share, rocks float64) (float64, error) { return result("slack", length*share+rocks) })
	}
	n.work(s)
}

// lineLosses works out what a line loses besides the friction of its straight
// run, and what is left at a pump that sucks through it.
func (n *notebook) lineLosses(l *document.Line, from, to spot) {
	if _, ok := n.page[&l.Calc.Drop]; !ok {
		return
	}
	c := &l.Calc
	density, _, _ := n.liquid(l)
	losses, note, err := n.endLosses(l)
	coefficients := []Input{losses}
	if len(l.From.Adaptors)+len(l.To.Adaptors) > 0 {
		coefficients = append(coefficients, n.adaptorLoss(l))
	}
	count := len(coefficients)
	n.work(step{
		to:      &c.Minor,
		formula: "Δp = K ρ v² / 2, K of entry, exit, bent ends and adaptors together", source: "cengel-fluid-mechanics", clause: "table 8-4", note: note,
		in: append(append(coefficients, density, n.worked("v", &c.Velocity)), n.bends(l)...),
		by: func(x []float64) (float64, error) {
			if err != nil {
				return 0, err
			}
			k, err := sum(x[:count])
			if err != nil {
				return 0, err
			}
			return MinorDrop(k, x[count], x[count+1])
		},
	})
	n.work(step{
		to:      &c.Climb,
		formula: "ρ g (z_to - z_from)", source: "cengel-fluid-mechanics", note: "from port to port",
		in: once([]Input{density}, from.in, to.in),
		by: func(x []float64) (float64, error) { return HeadDrop(x[0], to.Z-from.Z) },
	})
	if l.Flow != "suction" {
		return
	}
	n.work(step{
		to:      &c.Inlet,
		formula: "p = -(friction + ends + climb)", source: "cengel-fluid-mechanics", note: "the tank open to the air; the level of the liquid at its port",
		in: []Input{n.worked("friction", &c.Drop), n.worked("ends", &c.Minor), n.worked("climb", &c.Climb)},
		by: three(func(friction, ends, climb float64) (float64, error) {
			return result("pressure", -(friction + ends + climb))
		}),
	})
}

// bends are the angles of the ends of a line that say theirs.
func (n *notebook) bends(l *document.Line) []Input {
	return counting(n.said("bend", &l.Line.From.End.Bend), n.said("bend", &l.Line.To.End.Bend))
}

// endLosses is the sum of the loss coefficients of both ends of a line.
func (n *notebook) endLosses(l *document.Line) (Input, string, error) {
	k := EntryLoss + ExitLoss
	for _, in := range n.bends(l) {
		bend, err := BendLoss(in.Value)
		if err != nil {
			return lacking("K", in.Path), "", err
		}
		k += bend
	}
	adaptors := 0
	for _, p := range ends(l) {
		if p.Under.Told() {
			adaptors++
			k += AdaptorLoss
		}
	}
	return tabled("K", k, unit.Ratio, "cengel-fluid-mechanics", "table 8-4"), fmt.Sprintf("ends without an angle taken as straight; adaptors: %d", adaptors), nil
}

// liquid gives density and dynamic viscosity of what a line carries, with a note
// that says for what they hold; the note is "" for a fluid that has no figures.
// A fuel with ethanol in it is taken at the viscosity of ethanol, the higher.
func (n *notebook) liquid(l *document.Line) (density, viscosity Input, note string) {
	switch {
	case l.Service == "fuel" && l.Fuel != "":
		fuel := l.Fuel
		thickest := fuel
		if row, ok := tables.Fuel(fuel); ok && row.Ethanol > 0 {
			thickest = "ethanol"
		}
		density = n.fuelDensity(&n.d.Fuel[0].Cell.Filled)
		for _, r := range tables.FluidProperties(thickest) {
			if r.KinematicHigh > 0 && r.Temperature > unit0C+10 {
				viscosity = tabled("μ", r.KinematicHigh*density.Value, unit.DynamicViscosity, r.Source, r.Clause)
				return density, viscosity, fmt.Sprintf("viscosity of %s at %s", thickest, unit.Format(r.Temperature, unit.Temperature, ""))
			}
		}
	case l.Service == "coolant", l.Service == "engine oil":
		var r tables.FluidPropertyRow
		for _, each := range tables.FluidProperties(l.Service) {
			if each.Dynamic > 0 && each.Temperature > r.Temperature {
				r.Temperature, r.Dynamic = each.Temperature, each.Dynamic
				viscosity = tabled("μ", each.Dynamic, unit.DynamicViscosity, each.Source, each.Clause)
				note = cmp.Or(each.Note, l.Service) + " at " + unit.Format(each.Temperature, unit.Temperature, "")
			}
		}
		for _, each := range tables.FluidProperties(l.Service) {
			if each.Density > 0 && each.Temperature == r.Temperature {
				density = tabled("ρ", each.Density, unit.Density, each.Source, each.Clause)
				return density, viscosity, note
			}
		}
	}
	return Input{}, Input{}, ""
}

const unit0C = 273.15 // K

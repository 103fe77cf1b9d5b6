package workings

import (
	"math"
	"strings"

	"fitup/spec/document"
)

// parts works out what is asked of single parts: what a cooler has to bear, how
// far a loom has to reach, what a module feeds, how long ago gear was looked over.
func (n *notebook) parts() {
	n.carMass()
	for i := range n.d.FuelParts {
		if len(n.d.Fuel) > 0 {
			n.work(step{
				to:      &n.d.FuelParts[i].Alcohol,
				formula: "alcohol of the fuel in the tank", source: "afdc-fuel-properties",
				in: []Input{n.worked("alcohol", &n.d.Fuel[0].Calc.Alcohol)},
				by: same,
			})
		}
	}
	for i := range n.d.Coolers {
		n.core(&n.d.Coolers[i])
	}
	for i := range n.d.Looms {
		n.loom(&n.d.Looms[i])
	}
	for i := range n.d.Modules {
		n.module(&n.d.Modules[i])
	}
	for i := range n.d.Circuits {
		if c := &n.d.Circuits[i]; c.Feeds != "" {
			n.work(step{
				to:      &c.Calc.Draws,
				formula: "as the thing at its end is written", source: "common-practice",
				in: []Input{n.drawn(c)},
				by: same,
			})
		}
	}
	for i := range n.d.TowEyes {
		if len(n.d.Cars) > 0 {
			n.work(step{
				to:      &n.d.TowEyes[i].Calc.Weight,
				formula: "W = M g", source: "statics",
				in: []Input{n.worked("M", &n.d.Cars[0].Calc.Mass)},
				by: one(func(mass float64) (float64, error) { return result("weight", mass*StandardGravity) }),
			})
		}
	}
	for i := range n.d.Gear {
		if g := &n.d.Gear[i]; g.Kind != "lift point" {
			n.gearAge(g)
		}
	}
}

// carMass is the mass of the car with the driveline that is in it, and how far it
// is from the mass that the car was set up with.
func (n *notebook) carMass() {
	for i := range n.d.Cars {
		c := &n.d.Cars[i]
		if n.d.Composition != document.CarWithDriveline {
			continue
		}
		in, _ := n.standing(c)
		n.work(step{
			to:      &c.Calc.With,
			formula: "M of the four scales, with the driveline that is in it", source: "statics", note: strings.Join(in.notes, "; "),
			in: in.in,
			by: always(in.Mass, in.err),
		})
		n.work(step{
			to:      &c.Calc.Changed,
			formula: "|M - M_set-up|", source: "common-practice",
			in: []Input{n.worked("M", &c.Calc.With), n.said("M_set-up", &c.SetUp.Mass)},
			by: two(func(now, then float64) (float64, error) { return result("change", math.Abs(now-then)) }),
		})
	}
}

// core is the highest working pressure of the lines that meet a cooler.
func (n *notebook) core(c *document.Cooler) {
	s := step{to: &c.Calc.Pressure, formula: "p = the highest of the lines that meet it", source: "common-practice", by: highest}
	for i := range n.d.Lines {
		l := &n.d.Lines[i]
		for _, port := range ends(l) {
			if strings.HasPrefix(port.Path, c.Path+".ports.") {
				s.in = append(s.in, n.worked("p", &l.Calc.Pressure))
			}
		}
	}
	s.in = counting(s.in...)
	if len(s.in) == 0 {
		s.in = []Input{lacking("p", c.Path+".ports")}
	}
	n.work(s)
}

// loom is how far a loom has to reach, straight, and how far its two tails do.
func (n *notebook) loom(l *document.Loom) {
	if l.Port == nil {
		return
	}
	here, there := n.fixed("here", &l.Plug.At), n.port("there", l.Port, "car")
	n.work(step{
		to:      &l.Calc.Distance,
		formula: "|there - here|", source: "common-practice", note: "straight: no loom runs so",
		in: append(here.in, there.in...),
		by: distance(here.Vec, there.Vec),
	})
	n.work(step{
		to:      &l.Calc.Reach,
		formula: "tail here + tail there", source: "common-practice",
		in: []Input{n.said("tail here", &l.Tail), n.said("tail there", &l.Port.Tail)},
		by: sum,
	})
}

// module adds up the steady loads of the circuits that a module feeds.
func (n *notebook) module(m *document.Module) {
	s := step{to: &m.Calc.Load, formula: "I = the sum of the circuits that it feeds", source: "common-practice", by: sum}
	for i := range n.d.Circuits {
		if c := &n.d.Circuits[i]; strings.HasPrefix(c.From.Port.V, m.Path+".") {
			s.in = append(s.in, n.said("I_"+c.Name, &c.Load))
		}
	}
	if len(s.in) == 0 {
		s.in = []Input{lacking("I", "circuits")}
	}
	n.work(s)
}

// drawn is the current that the thing at the end of a circuit draws.
func (n *notebook) drawn(c *document.Circuit) Input {
	switch c.Feeds {
	case "fuel pump":
		if len(n.d.Fuel) > 0 {
			return n.said("I_pump", &n.d.Fuel[0].Pump.Draws)
		}
	case "lift pump":
		if len(n.d.Fuel) > 0 {
			return n.said("I_pump", &n.d.Fuel[0].Lift.Draws)
		}
	case "fan":
		if len(n.d.Cooling) > 0 {
			return n.said("I_fan", &n.d.Cooling[0].Fan.Draws)
		}
	case "starter":
		if len(n.d.Electric) > 0 {
			return n.said("I_cranking", &n.d.Electric[0].Engine.Cranking)
		}
	case "pin":
		for i := range n.d.Pins {
			if pin := &n.d.Pins[i]; pin.Path == c.To.Port.V && pin.There != nil {
				return n.said("I_pin", &pin.There.Load)
			}
		}
		return lacking("I_pin", "driveline."+c.To.Port.V+".load")
	}
	return lacking("I", c.To.Port.V+".draws")
}

// gearAge counts the months since gear was examined or calibrated.
func (n *notebook) gearAge(g *document.Gear) {
	day := &g.Checked
	if g.Kind == "torque wrench" {
		day = &g.Calibrated
	}
	n.work(step{
		to:      &g.Calc.Age,
		formula: "whole months from that day to " + n.d.Date, source: "common-practice",
		note: "a month or a year is read as its first day",
		in:   []Input{n.said("day", day)},
		by:   always(n.monthsSince(day.V.First())),
	})
}

package workings

import (
	"strings"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

func (n *notebook) circuits() {
	for i := range n.d.Circuits {
		c := &n.d.Circuits[i]
		n.loss(c)
		n.ampacity(c)
		n.protection(c)
	}
}

// loss works out resistance and voltage drop. A chassis that returns the current
// counts for nothing, and an earth is itself the way back.
func (n *notebook) loss(c *document.Circuit) {
	perMetre, note := n.wireResistance(c)
	in := []Input{perMetre, n.said("L", &c.Length)}
	s := step{to: &c.Calc.Resistance, formula: "R = R' L", source: "faa-ac-43.13-1b", clause: "chapter 11", note: note + "; at 20 °C", by: product}
	switch {
	case c.Purpose.V == "earth":
	case !c.Return.Given():
		in = append(in, n.said("return", &c.Return))
	case c.Return.V == "wire":
		s.formula = "R = 2 R' L, out and back by wire"
		s.by = two(func(perMetre, length float64) (float64, error) { return VoltageDrop(1, perMetre, length, length) })
	default:
		s.note += "; the chassis taken at nothing"
	}
	s.in = in
	n.work(s)
	n.work(step{
		to:      &c.Calc.Drop,
		formula: "V = I R", source: "faa-ac-43.13-1b", clause: "chapter 11", note: "terminals left out",
		in: []Input{n.said("I", &c.Load), n.worked("R", &c.Calc.Resistance)},
		by: product,
	})
	if c.Peak.Said() == spec.Unsaid || c.Peak.Said() == spec.None {
		return
	}
	n.work(step{
		to:      &c.Calc.PeakDrop,
		formula: "V = I_peak R", source: "faa-ac-43.13-1b", clause: "chapter 11", note: "terminals left out",
		in: []Input{n.said("I_peak", &c.Peak), n.worked("R", &c.Calc.Resistance)},
		by: product,
	})
}

// electrics works out the balance of supply and load. A circuit that feeds a
// module or a post carries the loads of others and is not counted beside them;
// starting lasts seconds.
func (n *notebook) electrics() {
	for i := range n.d.Electric {
		e := &n.d.Electric[i]
		var loads []Input
		for j := range n.d.Circuits {
			c := &n.d.Circuits[j]
			switch c.Purpose.V {
			case "starter", "charging", "earth", "data":
				continue
			}
			if !c.Purpose.Given() { // it may be any of those
				loads = append(loads, n.said("purpose", &c.Purpose))
				continue
			}
			to := c.To.Port.V
			if strings.HasPrefix(to, "electrics.modules") || strings.HasPrefix(to, "electrics.posts") || c.Load.Said() == spec.None {
				continue
			}
			loads = append(loads, n.said("I_"+c.Name, &c.Load))
		}
		if len(loads) == 0 {
			loads = []Input{lacking("I", "circuits")}
		}
		alternator := n.said("I_alternator", &e.Engine.Alternator)
		n.work(step{to: &e.Calc.Load, formula: "Σ I of the steady loads", source: "faa-ac-43.13-1b", clause: "11-35", note: "starter and feeds of modules left out", in: loads, by: sum})
		load := n.worked("I", &e.Calc.Load)
		if e.Alternator.V || e.Engine.Alternator.Said() == spec.None {
			n.work(step{to: &e.Calc.Isolated, formula: "I", source: "common-practice", note: "no alternator", in: []Input{load}, by: same})
		} else {
			n.work(step{to: &e.Calc.Share, formula: "I / I_alternator", source: "faa-ac-43.13-1b", clause: "11-35", in: []Input{load, alternator}, by: two(quotient)})
			n.work(step{to: &e.Calc.Isolated, formula: "the greater of I and I_alternator", source: "common-practice", in: []Input{load, alternator}, by: highest})
		}
		n.work(step{
			to:      &e.Calc.RunTime,
			formula: "t = C / I", source: "sae-j537", note: "from full, at the 20 hour capacity: at a high current a battery gives less",
			unit: "h",
			in:   []Input{n.said("C", &e.Battery.Holds), load},
			by:   two(RunTime),
		})
	}
}

// wireResistance is the highest resistance per metre of the wire: by gauge from
// the aircraft table, else by area from the metric one.
func (n *notebook) wireResistance(c *document.Circuit) (perMetre Input, note string) {
	wire := n.said("R'", &c.Wire)
	if !wire.Known {
		return wire, "highest resistance of the size"
	}
	set := "plain"
	if c.Wire.V.AWG != "" {
		set = "aircraft"
	}
	row, ok := tables.WireResistance(set, c.Wire.V.Area)
	if !ok {
		return lacking("R'"), "no row for so thin a wire"
	}
	return wire.standsFor(row.Resistance, unit.ResistancePerLength, row.Source, row.Clause), "highest resistance of the size, or of the next below it"
}

// ampacity is what the wire carries as it is laid: singly, in a loaded bundle, or
// singly in an engine space.
func (n *notebook) ampacity(c *document.Circuit) {
	usual := &n.d.Given.Usual
	if c.Owner == driveline {
		usual = &n.d.Given.DrivelineUsual
	}
	area := n.said("A", &c.Wire)
	rated := first(n.said("t_wire", &c.Insulated), n.said("t_wire", &usual.Insulated))
	run := first(n.said("run", &c.Run), n.said("run", &usual.Installed))
	s := step{
		to:      &c.Calc.Ampacity,
		formula: "I by size and insulation, laid " + run.Text, source: "33-cfr-183.425",
		in: []Input{area, rated, run},
		by: always(0, &RangeError{"wire size or insulation", area.Value, "one that the table reaches down to"}),
	}
	laid := run.Text
	if laid == "hot bay" {
		laid = "free"
	}
	if row, ok := tables.Ampacity(laid, area.Value, rated.Value); ok {
		s.source, s.clause, s.note = row.Source, row.Clause, row.Note
		s.in = append(s.in, tabled("I_table", row.Current, unit.Current, row.Source, row.Clause))
		factor := 1.0
		if run.Text == "hot bay" {
			f, _ := tables.HotBayFactor(rated.Value)
			factor = f.Factor
			s.formula = "I by size and insulation, laid singly, times k for an engine space at 50 °C"
			s.in = append(s.in, tabled("k", factor, unit.Ratio, f.Source, f.Clause))
		}
		s.by = func(x []float64) (float64, error) { return Derated(x[3], factor) }
	}
	n.work(s)
}

// protection is the fuse of a circuit, else the trip current of the channel that
// feeds it.
func (n *notebook) protection(c *document.Circuit) {
	trips := n.said("I", &c.Fuse)
	if channel := n.channel(c.From.Port.V); channel != nil && !c.Fuse.Given() {
		trips = n.said("I", &channel.Trips)
	}
	n.work(step{
		to:      &c.Calc.Protected,
		formula: "fuse, or trip of the channel that feeds it", source: "common-practice",
		in: []Input{trips},
		by: same,
	})
}

// channel finds the channel that a reference such as "electrics.modules.pdm.2"
// names.
func (n *notebook) channel(ref string) *spec.Channel {
	rest, ok := strings.CutPrefix(ref, "electrics.modules.")
	name, channel, _ := strings.Cut(rest, ".")
	if !ok || len(n.d.Electric) == 0 {
		return nil
	}
	module := n.d.Electric[0].Modules.Named[name]
	if module == nil {
		return nil
	}
	return module.Channels.Named[channel]
}

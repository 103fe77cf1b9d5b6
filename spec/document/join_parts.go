package document

import (
	"slices"
	"strings"

	"fitup/spec"
)

// parts lists the parts of each system that are judged one by one, whichever
// system they are in.
func (j *joiner) parts(d *Document) {
	if j.car == nil {
		return
	}
	j.fuelParts(d)
	j.coolers(d)
	for _, tank := range []struct {
		kind string
		spec.CatchTank
	}{{"oil", j.car.Oil.Catch}, {"coolant", j.car.Cooling.Catch}} {
		if tank.Told() {
			d.Catch = append(d.Catch, CatchTank{Subject{tank.Path, "catch-tank"}, tank.CatchTank, tank.kind})
		} else if tank.State == spec.None && d.Catch == nil {
			d.Catch = []CatchTank{}
		}
	}
	fill(&d.Pipes, &j.car.Exhaust.Pipes, func(name string, p *spec.ExhaustPipe) ExhaustPipe {
		return ExhaustPipe{Subject{p.Path, name}, *p}
	})
	fill(&d.Ballast, &j.car.Ballast, func(name string, b *spec.Ballast) Ballast { return Ballast{Subject{b.Path, name}, *b} })
}

// fuelParts lists what fuel goes through, from the tank on.
func (j *joiner) fuelParts(d *Document) {
	f := &j.car.Fuel
	if !f.Told() {
		return
	}
	d.FuelParts = []FuelPart{}
	add := func(part spec.FuelFilter) {
		if part.Told() {
			at := strings.LastIndex(part.Path, ".")
			d.FuelParts = append(d.FuelParts, FuelPart{Subject: Subject{part.Path, part.Path[at+1:]}, FuelFilter: part, Fuel: f.Cell.Filled.V})
		}
	}
	add(spec.FuelFilter{Part: f.Cell.Part, Seals: f.Cell.Seals})
	add(spec.FuelFilter{Part: f.Surge.Part, Seals: f.Surge.Seals})
	add(f.Strainer)
	for _, pump := range []spec.FuelPump{f.Lift, f.Pump} {
		add(spec.FuelFilter{Part: pump.Part, Seals: pump.Seals, Fuels: pump.Fuels})
	}
	add(f.Filter)
	add(spec.FuelFilter{Part: f.Regulator.Part, Seals: f.Regulator.Seals, Fuels: f.Regulator.Fuels})
}

// coolers lists what sheds the driveline's heat, in its own system's order.
func (j *joiner) coolers(d *Document) {
	var needs spec.Needs
	if j.driveline != nil {
		needs = j.driveline.Needs
	}
	for _, c := range []struct {
		kind string
		spec.Cooler
	}{
		{"radiator", j.car.Cooling.Radiator}, {"oil cooler", j.car.Oil.Cooler}, {"gearbox cooler", j.car.Gearbox.Cooler},
	} {
		if c.Told() {
			at := strings.LastIndex(c.Path, ".")
			d.Coolers = append(d.Coolers, Cooler{Subject: Subject{c.Path, c.Path[at+1:]}, Cooler: c.Cooler, Kind: c.kind, Needs: needs})
		} else if c.State == spec.None && d.Coolers == nil {
			d.Coolers = []Cooler{}
		}
	}
}

// faces lists what the driveline turns to the car: its mounts with the brackets
// that meet them, the flanges of the shafts, the plugs of the looms.
func (j *joiner) faces(d *Document) {
	if j.driveline != nil {
		fill(&d.DriveMounts, &j.driveline.Mounts, func(name string, m *spec.DriveMount) DriveMount {
			mount := DriveMount{Subject: Subject{m.Path, name}, DriveMount: *m}
			for i := range d.Mounts {
				switch meets := &d.Mounts[i].Meets; {
				case meets.V == "driveline."+name:
					mount.MetBy = append(mount.MetBy, d.Mounts[i].Path)
				case !meets.Given() && meets.State != spec.None:
					mount.strays = append(mount.strays, d.Mounts[i].Path+".meets")
				}
			}
			if len(mount.strays) == 0 {
				mount.Settled = pointer(true)
			}
			return mount
		})
	}
	if j.car == nil {
		return
	}
	for i := range d.Shafts {
		s := &d.Shafts[i]
		for _, end := range []struct {
			key string
			spec.Meet
		}{{"from", s.From}, {"to", s.To}} {
			if end.Told() {
				flange := Flange{Subject: Subject{s.Path + "." + end.key, end.key}, Shaft: s.Name, Holes: s.Holes}
				flange.Port = j.port(end.Port.V, ofCar)
				d.Flanges = append(d.Flanges, flange)
			}
		}
	}
	if d.Shafts != nil && d.Flanges == nil {
		d.Flanges = []Flange{}
	}
	fill(&d.Looms, &j.car.Plugs, func(name string, p *spec.Plug) Loom {
		return Loom{Subject: Subject{p.Path, name}, Plug: *p, Port: j.port(p.Meets.Port.V, ofCar)}
	})
}

// rod puts a rod or cable between the driveline's half and what works it, and
// beside the gear lever if it comes from there.
func (j *joiner) rod(name string, r *spec.Rod) Rod {
	rod := Rod{Subject: Subject{r.Path, name}, Rod: *r}
	for _, end := range []spec.Meet{r.From, r.To} {
		switch port := end.Port.V; {
		case strings.HasPrefix(port, "driveline."):
			rod.Port = j.port(port, ofCar)
			continue
		case strings.HasPrefix(port, "gearbox.lever"):
			rod.Lever = j.car.Gearbox.Lever
		}
		rod.Worked = j.port(end.Port.V, ofCar)
	}
	return rod
}

// feeds names what a circuit feeds, where that thing's own current is written
// with it.
func feeds(c *spec.Circuit) string {
	to := c.To.Port.V
	switch {
	case to == "fuel.pump":
		return "fuel pump"
	case to == "fuel.lift-pump":
		return "lift pump"
	case to == "cooling.fan":
		return "fan"
	case strings.HasPrefix(to, "pins."):
		return "pin"
	case c.Purpose.V == "starter" && strings.HasPrefix(to, "driveline."):
		return "starter"
	}
	return ""
}

// supplies lists the modules and the live poles.
func (j *joiner) supplies(d *Document) {
	e := &j.car.Electrics
	fill(&d.Modules, &e.Modules, func(name string, m *spec.PowerModule) Module {
		return Module{Subject: Subject{m.Path, name}, PowerModule: *m}
	})
	fill(&d.Poles, &e.Posts, func(name string, p *spec.Post) Pole { return Pole{Subject{p.Path, name}, p.Cover} })
	if e.Battery.Told() {
		d.Poles = append(d.Poles, Pole{Subject{e.Battery.Path, "battery"}, e.Battery.Cover})
	}
}

// injected tells whether a line carries fuel at the pressure of the injectors;
// nil where nobody says what the engine has.
func (j *joiner) injected(l *Line) *bool {
	switch {
	case l.Service == "":
		return nil
	case l.Service != "fuel" || l.Flow != "pump":
		return pointer(false)
	case j.driveline == nil || j.driveline.Engine.Injectors.State == spec.Unsaid || j.driveline.Engine.Injectors.State == spec.Asked:
		return nil
	}
	return pointer(j.driveline.Engine.Injectors.Told())
}

// PumpOf names the driveline's pump that moves each service.
var PumpOf = map[string]string{
	"engine oil": "oil", "coolant": "water", "steering fluid": "steering", "gearbox oil": "gearbox",
}

// Where a line that is pumped comes back to, under no pressure to speak of.
var returnsTo = []string{"fuel.cell.", "fuel.surge-pot.", "oil.tank.", "steering.reservoir."}

// returns tells whether a line leads back to a tank. One that a pump feeds
// straight into a surge pot does not.
func returns(l *Line) bool {
	return leads(l.To, returnsTo) && !leads(l.From, []string{"fuel.lift-pump."})
}

// What holds a fluid and pushes none, and what draws it from there.
var (
	drawnFrom = []string{"fuel.cell.", "fuel.surge-pot.", "oil.tank.", "steering.reservoir.", "cooling.radiator.", "air.box."}
	drawnBy   = []string{"fuel.pump.", "fuel.lift-pump.", "driveline."}
)

// drawn tells whether a line looks like one that a pump draws through, which its
// author has to say or deny: a pump may also sit in the tank.
// A pipe between radiator and engine is drawn through like a hose.
func drawn(l *Line) bool {
	piped := l.Service == "coolant" && leads(l.From, []string{"parts."})
	return (piped || leads(l.From, drawnFrom)) && leads(l.To, drawnBy)
}

// leads tells whether an end is on one of some parts.
func leads(end *LineEnd, parts []string) bool {
	return end != nil && end.Port != nil && slices.ContainsFunc(parts, func(part string) bool { return strings.HasPrefix(end.Port.Name, part) })
}

// wayOf sorts the forms of a line's halves by how they are made.
var wayOf = map[string]string{
	"37-flare": "thread", "45-flare": "thread", "inverted-flare": "thread", "bubble-flare": "thread",
	"O-ring-boss": "thread", "metric-O-ring": "thread", "washer-face": "thread", "taper-pipe": "thread", "banjo": "thread",
	"bead": "clamp", "barb": "clamp", "hose": "clamp", "plain-tube": "clamp",
	"dry-break": "coupling", "push-connector": "coupling",
}

// way says how the joint of a line is made. While the form of a half is not said,
// it may be made in any way.
func way(here, there *Half) string {
	if here == nil || there == nil || !here.Form.Given() || !there.Form.Given() {
		return "not said"
	}
	if one := wayOf[here.Form.V]; one != "" && one == wayOf[there.Form.V] {
		return one
	}
	return "mixed"
}

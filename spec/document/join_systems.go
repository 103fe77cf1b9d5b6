package document

import (
	"reflect"
	"slices"
	"strings"

	"fitup/spec"
)

// systems puts each system of the car beside the part of the driveline that it
// serves.
func (j *joiner) systems(d *Document) {
	var engine spec.Engine
	var needs spec.Needs
	var tune spec.Tune
	if j.driveline != nil {
		engine, needs, tune = j.driveline.Engine, j.driveline.Needs, j.driveline.Tune
	}
	var head spec.CarHead
	if j.car != nil {
		head = j.car.Car
	}
	if engine.Told() {
		d.Engines = []Engine{{Subject: Subject{engine.Path, "engine"}, Engine: engine, Tune: tune, Car: head}}
	}
	if j.car == nil {
		return
	}
	d.Cars = []Car{{
		Subject: Subject{head.Path, head.Name.Or("car")}, CarHead: head, Weighing: j.car.Weighing, SetUp: j.car.Set,
		Firewall: j.car.Safety.Firewall, Cage: j.car.Safety.Cage, Safety: j.car.Safety, Final: j.car.Final,
		Fitted: j.name,
	}}
	fill(&d.Books, &j.car.Rulebooks, func(name string, b *spec.Rulebook) Book { return Book{Subject{b.Path, name}, *b} })
	if s := j.car.Fuel; s.Told() {
		d.Fuel = []Fuel{{Subject: Subject{s.Path, "fuel"}, CarFuel: s, Engine: engine, Tune: tune, Needs: needs}}
	}
	if s := j.car.Oil; s.Told() {
		d.Oil = []Oil{{Subject: Subject{s.Path, "oil"}, CarOil: s, Engine: engine, Needs: needs}}
	}
	if s := j.car.Cooling; s.Told() {
		d.Cooling = []Cooling{{Subject: Subject{s.Path, "cooling"}, CarCooling: s, Engine: engine, Needs: needs}}
	}
	if s := j.car.Brakes; s.Told() {
		d.Brakes = []Brakes{{Subject: Subject{s.Path, "brakes"}, CarBrakes: s, Clutch: j.car.Clutch, Needs: needs}}
	}
	if s := j.car.Clutch; s.Told() {
		clutch := Clutch{Subject: Subject{s.Path, "clutch"}, CarClutch: s}
		if j.driveline != nil {
			clutch.Slave = j.driveline.Clutch
		}
		d.Clutch = []Clutch{clutch}
	}
	if j.driveline != nil && j.driveline.Gearbox.Told() {
		box := j.driveline.Gearbox
		d.Gearbox = []Gearbox{{Subject: Subject{box.Path, "gearbox"}, Gearbox: box, Engine: engine, Final: j.car.Final}}
	}
}

// electrics puts battery and isolator beside what the engine asks of them.
func (j *joiner) electrics(d *Document) {
	for _, owner := range []string{ofCar, ofDriveline} {
		table := j.circuitsOf(owner)
		if table == nil {
			continue
		}
		fill(&d.Circuits, table, func(name string, c *spec.Circuit) Circuit {
			crosses := strings.HasPrefix(c.From.Port.V, "driveline.") || strings.HasPrefix(c.To.Port.V, "driveline.")
			return Circuit{Subject: Subject{c.Path, name}, Circuit: *c, Owner: owner, Boundary: crosses, Feeds: feeds(c)}
		})
	}
	if j.car == nil || !j.car.Electrics.Told() {
		return
	}
	j.supplies(d)
	e := Electric{Subject: Subject{j.car.Electrics.Path, "electrics"}, CarElectrics: j.car.Electrics, Car: j.car.Car}
	if j.driveline != nil {
		e.Engine = j.driveline.Engine
	}
	if d.Circuits != nil {
		e.supplied(d.Circuits)
	}
	d.Electric = []Electric{e}
}

// supplied sorts the circuits into those that carry power, those of them that
// the isolator leaves live, and the earths across to the driveline.
func (e *Electric) supplied(circuits []Circuit) {
	e.Supplies, e.Earths = []string{}, []string{}
	if e.Isolator.Kills.State == spec.Given || e.Isolator.Kills.State == spec.None {
		e.Unkilled = []string{}
	}
	for _, c := range circuits {
		switch c.Purpose.V {
		case "earth":
			if c.Boundary {
				e.Earths = append(e.Earths, c.Name)
			}
			if !c.From.Port.Given() {
				e.unearthed = append(e.unearthed, c.Path+".from.port")
			}
			if !c.To.Port.Given() {
				e.unearthed = append(e.unearthed, c.Path+".to.port")
			}
			continue
		case "fire system", "data":
			continue // a fire system must outlive the isolator; data carries no supply
		}
		if !c.Purpose.Given() && c.Boundary {
			e.unearthed = append(e.unearthed, c.Path+".purpose")
		}
		e.Supplies = append(e.Supplies, c.Name)
		switch listed := slices.Contains(e.Isolator.Kills.V, c.Name); {
		case e.Unkilled == nil || listed || c.Switched.V:
		case c.Switched.State == spec.Unsaid || c.Switched.State == spec.Asked:
			e.undecided = append(e.undecided, c.Path+".dead-when-isolated")
		default:
			e.Unkilled = append(e.Unkilled, c.Name)
		}
	}
	if len(e.Unkilled) == 0 && len(e.undecided) > 0 {
		e.Unkilled = nil
	}
	if len(e.Earths) == 0 && len(e.unearthed) > 0 {
		e.Earths = nil
	}
}

func (j *joiner) circuitsOf(owner string) *spec.Table[spec.Circuit] {
	switch {
	case owner == ofCar && j.car != nil:
		return &j.car.Circuits
	case owner == ofDriveline && j.driveline != nil:
		return &j.driveline.Circuits
	}
	return nil
}

// tune puts what the map believes beside what is fitted.
func (j *joiner) tune(d *Document) {
	if j.driveline == nil || !j.driveline.Tune.Told() {
		return
	}
	t := j.driveline.Tune
	tune := Tune{Subject: Subject{t.Path, "tune"}, Tune: t, Engine: j.driveline.Engine}
	carSensors := &spec.Table[spec.Sensor]{}
	if j.car != nil {
		tune.Cell, carSensors = j.car.Fuel.Cell, &j.car.Sensors
	}
	d.Tunes = []Tune{tune}
	switch t.Expects.State {
	case spec.None:
		d.Sensors = []Expected{}
	case spec.Given:
		d.Sensors = []Expected{}
		for _, name := range t.Expects.V {
			e := Expected{Subject: Subject{t.Path + ".expects#" + name, name}, On: ofDriveline, Tune: t}
			table := &j.driveline.Sensors
			if bare, onCar := strings.CutPrefix(name, "car."); onCar {
				e.On, e.Name, table = ofCar, bare, carSensors
			}
			e.Sensor = table.Named[e.Name]
			if table.State != spec.Unsaid {
				e.Present = pointer(e.Sensor != nil)
			}
			d.Sensors = append(d.Sensors, e)
		}
	}
}

// fastenings lists every fastening of the composition, wherever it is written,
// with what it holds and the metal it goes into where its place tells.
func (j *joiner) fastenings(d *Document) {
	type place struct {
		holds, tapped string
		critical      bool
		undone        bool
		hot           *float64
	}
	places := map[string]place{}
	for _, m := range d.Mounts {
		p := place{holds: "the driveline at " + m.Name, critical: m.There != nil && !m.There.Light.V, undone: true}
		if m.There != nil && m.There.Holes.Thread.Given() {
			p.tapped = m.There.Holes.Into.V
		} else if m.Holes.Thread.Given() {
			p.tapped = m.Holes.Into.V
		}
		places[m.Path+".bolts"] = p
	}
	for _, s := range d.Shafts {
		places[s.Path+".bolts"] = place{holds: "the shaft " + s.Name, critical: true, undone: true, tapped: s.Holes.Into.V}
	}
	if j.car != nil && j.fit != nil {
		for _, name := range j.fit.Behind.V {
			if panel := j.car.Access.Named[name]; panel != nil {
				places[panel.Held.Path] = place{undone: true}
			}
		}
	}
	var tables []*spec.Table[spec.Fastener]
	if j.car != nil {
		tables = append(tables, &j.car.Fasteners)
	}
	if j.driveline != nil {
		tables = append(tables, &j.driveline.Fasteners)
	}
	for _, table := range tables {
		for _, f := range table.All() {
			p := place{holds: f.Holds.V, critical: f.Critical.V}
			if f.Hot.Given() {
				p.hot = pointer(f.Hot.V.SI)
			}
			places[f.Path+".bolts"] = p
		}
	}
	add := func(f *spec.Fastening) {
		if !f.Told() {
			return
		}
		p := places[f.Path]
		at := strings.LastIndex(f.Path, ".")
		if p.holds == "" {
			p.holds = f.Path[:max(at, 0)]
		}
		d.Fastenings = append(d.Fastenings, Fastening{
			Subject: Subject{f.Path, f.Path[at+1:]}, Fastening: *f, Holds: p.holds, Critical: p.critical,
			Tapped: f.Into.Usually(p.tapped), Hot: p.hot, Undone: p.undone, Wrench: j.reaches(&f.Torque),
		})
	}
	d.Fastenings = []Fastening{}
	for _, file := range []any{j.car, j.driveline} {
		eachFastening(reflect.ValueOf(file), add)
	}
}

// eachFastening visits every fastening below v in the order of the types and,
// within a collection, of the names.
func eachFastening(v reflect.Value, visit func(*spec.Fastening)) {
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			return
		}
		switch found := v.Interface().(type) {
		case *spec.Fastening:
			visit(found)
		case spec.Collection:
			for _, name := range found.Names() {
				eachFastening(reflect.ValueOf(found.Item(name)), visit)
			}
		case spec.Leaf:
		default:
			eachFastening(v.Elem(), visit)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if f := v.Field(i); f.Kind() == reflect.Struct {
				eachFastening(f.Addr(), visit)
			}
		}
	}
}

// unmentioned names the collections that the spec says nothing of.
func unmentioned(d *Document) []string {
	names := []string{}
	v := reflect.ValueOf(d).Elem()
	for _, m := range members(v.Type()) {
		if f := v.FieldByIndex(m.index); f.Kind() == reflect.Slice && f.IsNil() && m.key != "unknown" {
			names = append(names, m.key)
		}
	}
	return names
}

package document

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"fitup/spec"
)

// Owners of a half.
const (
	ofCar       = "car"
	ofDriveline = "driveline"
)

// withinDriveline marks, in the table of ports, one that only the driveline's own
// lines may name, so that a part of the same name on the car is not met.
const withinDriveline = "within driveline: "

// Join puts a composition together: each half of a joint beside the other, each
// line beside its ports and its hose kind, each system beside the engine that it
// serves. Every Calc is left empty.
func Join(c *spec.Composition, date time.Time) *Document {
	j := newJoiner(c)
	d := &Document{Date: date.Format(time.DateOnly), Composition: composition(c), Rulebooks: []string{"workshop"}}
	d.Stages = StagesOf[d.Composition]
	if j.car != nil {
		d.Rulebooks = append(d.Rulebooks, j.car.Car.Rulebooks.V...)
	}
	j.ports(d)
	j.joints(d)
	j.lines(d)
	j.boundary(d)
	j.faces(d)
	j.systems(d)
	j.parts(d)
	j.electrics(d)
	j.tune(d)
	j.fastenings(d)
	j.safety(d)
	j.standing(d)
	j.gear(d)
	j.weighings(d)
	j.upkeep(d)
	d.Unknown = unmentioned(d)
	d.Given = j.given()
	return d
}

func composition(c *spec.Composition) string {
	switch {
	case c.Car == nil:
		return DrivelineAlone
	case c.Driveline == nil:
		return EmptyBay
	}
	return CarWithDriveline
}

// joiner holds what the parts of one Join share.
type joiner struct {
	car       *spec.Car       // nil for a driveline alone
	driveline *spec.Driveline // nil for an empty bay
	shop      *spec.Shop      // never nil; empty without a shop file
	fit       *spec.Fit
	name      string // the driveline's file name, without folder and ending
	byRef     map[string]*Port
	meetings  []meeting
	adaptors  map[string][]*spec.Adaptor // by the path of the end that they are screwed to
}

func newJoiner(c *spec.Composition) *joiner {
	j := &joiner{shop: &spec.Shop{}, fit: c.Fit, byRef: map[string]*Port{}, adaptors: c.Adaptors}
	if c.Car != nil {
		j.car = c.Car.Car
	}
	if c.Driveline != nil {
		j.driveline, j.name = c.Driveline.Driveline, spec.Stem(c.Driveline.Name)
	}
	if c.Shop != nil {
		j.shop = c.Shop.Shop
	}
	for _, file := range []*spec.File{c.Car, c.Driveline} {
		if file == nil {
			continue
		}
		prefix, owner := "", ofCar
		if file.Kind == spec.KindDriveline {
			prefix, owner = "driveline.", ofDriveline
		}
		for _, at := range file.Ports() {
			j.enter(at, prefix, owner)
		}
	}
	return j
}

// given sets aside what the workings need and no rule judges.
func (j *joiner) given() Given {
	g := Given{Driveline: j.name}
	if j.fit != nil {
		g.Fit = *j.fit
	}
	if j.driveline != nil {
		g.Weighed, g.Masses, g.Pumps = j.driveline.Weighed, j.driveline.Masses, j.driveline.Pumps
		g.DrivelineUsual, g.Solids = j.driveline.Usual, j.driveline.Solids
	}
	if j.car != nil {
		g.CarMasses, g.Usual, g.CarSolids = j.car.Masses, j.car.Usual, j.car.Solids
	}
	return g
}

// enter makes the document's port of one port of a file.
func (j *joiner) enter(at spec.PortAt, prefix, owner string) {
	p := &Port{Subject: Subject{Path: prefix + at.Path, Name: at.Ref}, Port: *at.Port, Owner: owner}
	p.Half = *half(at.Port.End, p.Path+".end", owner, "", j.usualMetal(owner))
	p.Service = cmp.Or(at.Port.Gives.V, at.Port.Takes.V, at.Port.Both.V)
	if said := at.Port; p.Service == "" && said.Gives.State != spec.Asked && said.Takes.State != spec.Asked && said.Both.State != spec.Asked {
		p.Service = at.Carries.V // as most ports of a tank or a pump
	}
	p.Crosses = strings.HasPrefix(at.Ref, "driveline.")
	ref := at.Ref
	if owner == ofDriveline && !p.Crosses {
		ref = withinDriveline + at.Ref
	}
	j.byRef[ref] = p
}

// port finds the port that a reference in a file of owner names.
func (j *joiner) port(ref, owner string) *Port {
	if owner == ofDriveline && !strings.HasPrefix(ref, "driveline.") {
		return j.byRef[withinDriveline+ref]
	}
	return j.byRef[ref]
}

func (j *joiner) usual(owner string) spec.Usual {
	switch {
	case owner == ofCar && j.car != nil:
		return j.car.Usual
	case owner == ofDriveline && j.driveline != nil:
		return j.driveline.Usual
	}
	return spec.Usual{}
}

func (j *joiner) usualMetal(owner string) string { return j.usual(owner).Metal.V }

func (j *joiner) ports(d *Document) {
	for _, p := range j.byRef {
		d.Ports = append(d.Ports, *p)
	}
	slices.SortFunc(d.Ports, func(a, b Port) int { return strings.Compare(a.Path, b.Path) })
}

// A meeting is one half of what meets.
type meeting struct {
	kind, name, on, path, owner string
	size                        string // of the hose, for an end that leaves it out
	meet                        spec.Meet
}

// meetingsIn lists every half of one file that has a mate, in order of path.
func (j *joiner) meetingsIn(owner string) []meeting {
	var all []meeting
	add := func(kind, name, on, key, size string, meet spec.Meet) {
		unknown := meet.Port.State == spec.Unsaid || meet.Port.State == spec.Asked // it meets something; nobody says what
		if meet.Told() && (unknown || strings.Contains(meet.Port.V, ".")) {
			all = append(all, meeting{kind, name, on, on + "." + key, owner, size, meet})
		}
	}
	lines, circuits := &spec.Table[spec.Line]{}, &spec.Table[spec.Circuit]{}
	if owner == ofCar && j.car != nil {
		lines, circuits = &j.car.Lines, &j.car.Circuits
		for name, plug := range j.car.Plugs.All() {
			add("plug", name, plug.Path, "meets", "", plug.Meets)
		}
		for name, rod := range j.car.Rods.All() {
			add("rod", name, rod.Path, "from", "", rod.From)
			add("rod", name, rod.Path, "to", "", rod.To)
		}
		for name, shaft := range j.car.Shafts.All() {
			add("shaft", name, shaft.Path, "from", "", shaft.From)
			add("shaft", name, shaft.Path, "to", "", shaft.To)
		}
		for name, pipe := range j.car.Exhaust.Pipes.All() {
			add("pipe", name, pipe.Path, "from", "", pipe.From)
			add("pipe", name, pipe.Path, "to", "", pipe.To)
		}
	}
	if owner == ofDriveline && j.driveline != nil {
		lines, circuits = &j.driveline.Lines, &j.driveline.Circuits
	}
	for name, line := range lines.All() {
		size := j.hose(line).Size.V
		add("line", name, line.Path, "from", size, line.From)
		add("line", name, line.Path, "to", size, line.To)
	}
	for name, circuit := range circuits.All() {
		add("circuit", name, circuit.Path, "from", "", circuit.From)
		add("circuit", name, circuit.Path, "to", "", circuit.To)
	}
	slices.SortFunc(all, func(a, b meeting) int { return strings.Compare(a.path, b.path) })
	return all
}

// hose is the kind of hose that a line is made from; empty where the shop has
// none of that name.
func (j *joiner) hose(line *spec.Line) spec.HoseKind {
	if kind, known := j.shop.Hoses.Named[line.Hose.Kind.V]; known {
		return *kind
	}
	return spec.HoseKind{}
}

func (j *joiner) joints(d *Document) {
	j.meetings = append(j.meetingsIn(ofCar), j.meetingsIn(ofDriveline)...)
	if j.car != nil && j.car.Lines.State != spec.Unsaid || j.driveline != nil && j.driveline.Lines.State != spec.Unsaid {
		d.Joints = []Joint{}
	}
	index := map[string]int{}
	for i, p := range d.Ports {
		index[p.Path] = i
	}
	for _, m := range j.meetings {
		port := j.port(m.meet.Port.V, m.owner)
		if port != nil {
			at := &d.Ports[index[port.Path]]
			at.Joins = append(at.Joins, m.path)
		}
		if m.kind == "circuit" {
			continue // power posts take many ends, and are judged as circuits
		}
		d.Joints = append(d.Joints, j.joint(m, port))
	}
	j.settle(d.Ports)
}

func (j *joiner) joint(m meeting, port *Port) Joint {
	joint := Joint{
		Subject: Subject{Path: m.path, Name: m.name}, Kind: m.kind, On: m.on, Meet: m.meet,
		Boundary: strings.HasPrefix(m.meet.Port.V, "driveline."),
		MakeUp:   m.meet.MakeUp.Usually(j.usual(m.owner).MakeUp.V),
		Wet:      m.meet.Wet.Usually(j.usual(m.owner).Wet.V),
	}
	if m.meet.End.Told() {
		joint.Here = half(m.meet.End, m.path+".end", m.owner, m.size, j.usualMetal(m.owner))
	}
	if port != nil {
		there := port.Half
		joint.There, joint.Service, joint.Tapped = &there, port.Service, port.Tapped.V
		if port.Service == "fuel" {
			joint.Fuel = j.fuelInTank()
		}
	}
	switch m.kind {
	case "line":
		joint.Way = way(joint.Here, joint.There)
	case "plug":
		joint.Way = "connector"
	}
	return joint
}

func (j *joiner) lines(d *Document) {
	for _, owner := range []string{ofCar, ofDriveline} {
		table := j.linesOf(owner)
		if table == nil || table.State == spec.Unsaid {
			continue
		}
		if d.Lines == nil {
			d.Lines = []Line{}
		}
		for name, line := range table.All() {
			d.Lines = append(d.Lines, j.line(name, line, owner))
		}
	}
}

func (j *joiner) linesOf(owner string) *spec.Table[spec.Line] {
	switch {
	case owner == ofCar && j.car != nil:
		return &j.car.Lines
	case owner == ofDriveline && j.driveline != nil:
		return &j.driveline.Lines
	}
	return nil
}

func (j *joiner) line(name string, line *spec.Line, owner string) Line {
	l := Line{Subject: Subject{Path: line.Path, Name: name}, Line: *line, Owner: owner, Kind: j.hose(line)}
	l.From = j.lineEnd(line.From, line.Path+".from", owner, l.Kind.Size.V)
	l.To = j.lineEnd(line.To, line.Path+".to", owner, l.Kind.Size.V)
	for _, end := range []*LineEnd{l.From, l.To} {
		if end != nil && end.Port != nil {
			l.Service = cmp.Or(l.Service, end.Port.Service)
		}
	}
	l.Boundary = strings.HasPrefix(line.From.Port.V, "driveline.") || strings.HasPrefix(line.To.Port.V, "driveline.")
	l.Flow = moved(&l)
	l.Injected = j.injected(&l)
	if l.Flow == "suction" && j.driveline != nil {
		if pump := j.driveline.Pumps.Named[PumpOf[l.Service]]; pump != nil {
			l.Pump = *pump
		}
	}
	l.Liner = l.Kind.Liner.V
	if line.Clamps.State == spec.Unsaid || line.Clamps.Given() {
		l.Clamp = cmp.Or(line.Clamps.V, line.From.Clamp.V, line.To.Clamp.V, j.usual(owner).Clamp.V)
	}
	if l.Service == "fuel" || l.Service == "fuel vapour" {
		l.Fuel = j.fuelInTank()
	}
	l.Fluid = fluidGroup(j.fluid(l.Service))
	return l
}

// fluid is what is in a line of that service, as the table of fluids names it.
func (j *joiner) fluid(service string) string {
	switch service {
	case "fuel", "fuel vapour":
		return j.fuelInTank()
	case "crankcase breath":
		return "engine oil"
	case "clutch fluid":
		if j.car != nil {
			return j.car.Clutch.Fluid.V
		}
	case "brake fluid":
		if j.car != nil {
			return j.car.Brakes.Fluid.Usually(j.car.Clutch.Fluid.V)
		}
	}
	return service
}

func (j *joiner) fuelInTank() string {
	if j.car == nil {
		return ""
	}
	return j.car.Fuel.Cell.Filled.V
}

func (j *joiner) lineEnd(meet spec.Meet, path, owner, size string) *LineEnd {
	if !meet.Told() {
		return nil
	}
	end := &LineEnd{Path: path, open: meet.Port.V == spec.OpenAir, Adaptors: j.adaptors[path]}
	if meet.End.Told() {
		end.Half = half(meet.End, path+".end", owner, size, j.usualMetal(owner))
	}
	if port := j.port(meet.Port.V, owner); port != nil {
		copied := *port
		end.Port = &copied
	}
	return end
}

// moved says what moves the fluid of a line: the rules for a suction hose and
// for a gravity drain are not those for a pressure hose.
func moved(l *Line) string {
	switch {
	case l.Suction.State == spec.Asked:
		return ""
	case l.Suction.V:
		return "suction"
	case l.Falls.Given():
		return "gravity"
	case l.Service == "fuel vapour", l.Service == "crankcase breath", l.Service == "manifold pressure", l.Service == "vacuum":
		return "nothing"
	case returns(l):
		return "return"
	case l.Suction.State == spec.Unsaid && drawn(l):
		return ""
	}
	return "pump"
}

// boundary joins mounts, shafts, rods and pins.
func (j *joiner) boundary(d *Document) {
	if j.car == nil {
		return
	}
	fill(&d.Mounts, &j.car.Mounts, func(name string, m *spec.CarMount) Mount {
		mount := Mount{Subject: Subject{m.Path, name}, CarMount: *m}
		if j.driveline != nil {
			mount.There = j.driveline.Mounts.Named[strings.TrimPrefix(m.Meets.V, "driveline.")]
		}
		return mount
	})
	fill(&d.Shafts, &j.car.Shafts, func(name string, s *spec.Shaft) Shaft {
		shaft := Shaft{Subject: Subject{s.Path, name}, Shaft: *s}
		if j.driveline != nil {
			shaft.Engine, shaft.Gearbox = j.driveline.Engine, j.driveline.Gearbox
		}
		return shaft
	})
	fill(&d.Rods, &j.car.Rods, j.rod)
	j.pins(d)
}

// pins lists the ways of every connector that either half describes.
func (j *joiner) pins(d *Document) {
	if j.driveline == nil || j.car.Pins.State == spec.Unsaid && j.driveline.Pins.State == spec.Unsaid {
		return
	}
	d.Pins = []Pin{}
	for _, connector := range either(j.car.Pins.Names(), j.driveline.Pins.Names()) {
		here, there := j.car.Pins.Named[connector], j.driveline.Pins.Named[connector]
		if here == nil || there == nil {
			continue // one half is not described at all: the plug's own rules say so
		}
		for _, way := range either(here.Names(), there.Names()) {
			pin := Pin{Subject: Subject{"pins." + connector + "." + way, way}, Connector: connector, Here: here.Named[way], There: there.Named[way]}
			if pin.Here == nil {
				pin.Path = "driveline." + pin.Path
			}
			d.Pins = append(d.Pins, pin)
		}
	}
}

// fill makes a collection of the document from a table of the spec, keeping
// apart what was not said (nil) and what was written none (empty).
func fill[T, S any](into *[]T, table *spec.Table[S], make func(name string, s *S) T) {
	if table.State == spec.Unsaid || table.State == spec.Asked {
		return
	}
	if *into == nil {
		*into = []T{}
	}
	for name, item := range table.All() {
		*into = append(*into, make(name, item))
	}
}

// either lists the names that stand in one list or the other, sorted.
func either(one, other []string) []string {
	return slices.Compact(slices.Sorted(slices.Values(slices.Concat(one, other))))
}

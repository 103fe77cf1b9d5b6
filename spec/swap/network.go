package swap

import (
	"maps"
	"reflect"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
)

// Names of the two lumps that everything else is held to.
const (
	theDriveline = "driveline"
	theCar       = "car"
)

// liquids are what runs out of a joint that is opened.
var liquids = []string{"fuel", "engine oil", "gearbox oil", "axle oil", "coolant", "brake fluid", "clutch fluid", "steering fluid", "water"}

// A map of a composition: what can be parted from what, and where each piece of
// the network is written.
type atlas struct {
	c      *spec.Composition
	d      *document.Document
	car    *spec.Car
	dl     *spec.Driveline
	w      Weights
	held   map[string]Side       // parts that go to a side, by path
	parts  map[string]*spec.Part // the car's, by path
	nodes  map[string]Side       // what goes as a lump of its own, by path
	ports  map[string]*document.Port
	net    Network
	joints map[string]*parted // by name in the network
	needed map[string]bool    // access named so far
}

// parted is where a joint of the network comes from. One of joint, circuit,
// mount, line and part is set.
type parted struct {
	joint   *document.Joint
	circuit *document.Circuit
	mount   *document.Mount
	line    *document.Line  // a hose that may leave its owner, held by its clips
	bolts   *spec.Fastening // that hold a part which may go either way
	part    string          // that part
	there   *document.Port  // the port that is met
	end     *spec.Meet      // of a circuit, the end that is opened
	behind  []string
}

// chart makes the network of a car with the driveline in it. Parts of neither
// that may be parted are one lump with their owner. A hose goes with its owner,
// unless it hangs on a part that may leave it.
func chart(c *spec.Composition, d *document.Document, o Options) *atlas {
	a := &atlas{
		c: c, d: d, car: c.Car.Car, dl: c.Driveline.Driveline, w: o.Weights, held: o.Held,
		parts: partsOf(c.Car), nodes: map[string]Side{}, ports: map[string]*document.Port{},
		joints: map[string]*parted{}, needed: map[string]bool{},
	}
	a.net.Parts = []Part{{Name: theDriveline, Side: Leaves}, {Name: theCar, Side: Stays}}
	for i := range d.Ports {
		a.ports[d.Ports[i].Name] = &d.Ports[i]
	}
	a.lumps()
	for i := range d.Joints {
		a.addJoint(&d.Joints[i])
	}
	for i := range d.Circuits {
		a.addCircuit(&d.Circuits[i])
	}
	for i := range d.Mounts {
		a.addMount(&d.Mounts[i])
	}
	if c.Fit != nil {
		for _, name := range c.Fit.Behind.V {
			a.access(name)
			a.net.Off = append(a.net.Off, name)
		}
	}
	slices.SortFunc(a.net.Joints, func(x, y Joint) int { return strings.Compare(x.Name, y.Name) })
	slices.SortFunc(a.net.Access, func(x, y Access) int { return strings.Compare(x.Name, y.Name) })
	return a
}

// partsOf finds every part of a file, by its path.
func partsOf(f *spec.File) map[string]*spec.Part {
	found := map[string]*spec.Part{}
	partType := reflect.TypeFor[spec.Part]()
	f.Walk(func(path string, _ spec.Field, value any) {
		v := reflect.ValueOf(value).Elem()
		if v.Kind() != reflect.Struct {
			return
		}
		if v.Type() != partType {
			if v = v.FieldByName("Part"); !v.IsValid() || v.Type() != partType {
				return
			}
		}
		if part := v.Addr().Interface().(*spec.Part); part.Told() {
			found[path] = part
		}
	})
	return found
}

var sides = map[string]Side{"driveline": Leaves, "car": Stays, "either": Either}

// lumps finds what may go another way than its owner, and what holds it there.
func (a *atlas) lumps() {
	lump := func(path, home string, side Side, bolts *spec.Fastening, behind []string) {
		if held, is := a.held[path]; is && side == Either {
			side = held
		}
		a.nodes[path] = side
		a.net.Parts = append(a.net.Parts, Part{Name: path, Side: side})
		a.addFixing(path, home, bolts, behind)
	}
	for name, pump := range a.dl.Pumps.All() {
		if side, said := sides[pump.Goes.V]; said && side != Leaves {
			lump("driveline.pumps."+name, theDriveline, side, &pump.Bolts, a.beforePump(name))
		}
	}
	for name, part := range a.dl.Parts.All() {
		if side, said := sides[part.Goes.V]; said && side != Leaves {
			lump("driveline.parts."+name, theDriveline, side, &part.Held, part.Behind.V)
		}
	}
	for _, path := range slices.Sorted(maps.Keys(a.parts)) {
		part := a.parts[path]
		if side, said := sides[part.Goes.V]; said && side != Stays {
			lump(path, theCar, side, &part.Held, part.Behind.V)
		}
	}
	for i := range a.d.Lines {
		l := &a.d.Lines[i]
		for _, end := range []*document.LineEnd{l.From, l.To} {
			if end == nil || end.Port == nil || l.Owner != end.Port.Owner {
				continue
			}
			if at := a.lumpOf(end.Port); at != l.Owner {
				a.nodes[l.Path] = Either
				a.net.Parts = append(a.net.Parts, Part{Name: l.Path, Hose: true})
				a.join(Joint{Name: l.Path + ".clips", Between: [2]string{l.Path, l.Owner}, Effort: a.w.of("extra", "clips")},
					&parted{line: l, behind: a.behind(l.Path)})
				break
			}
		}
	}
}

// beforePump is what must be off before a pump can be reached: the spec does not
// say, so it is what is in the way of every hose on it.
func (a *atlas) beforePump(name string) []string {
	var common []string
	first := true
	for i := range a.d.Joints {
		j := &a.d.Joints[i]
		port := a.met(j)
		if port == nil || strings.TrimPrefix(port.Port.On.V, "driveline.") != "pumps."+name {
			continue
		}
		behind := a.behind(j.On)
		if first {
			common, first = slices.Clone(behind), false
		}
		common = slices.DeleteFunc(common, func(each string) bool { return !slices.Contains(behind, each) })
	}
	return common
}

// lumpOf is the lump that a port is on.
func (a *atlas) lumpOf(p *document.Port) string {
	on, _, _ := strings.Cut(p.Path, ".ports.")
	if p.Port.On.Given() {
		on = p.Port.On.V
		if p.Owner == theDriveline {
			on = theDriveline + "." + strings.TrimPrefix(on, "driveline.")
		}
	}
	if _, own := a.nodes[on]; own {
		return on
	}
	return p.Owner
}

// addFixing joins a part to its home by what holds it.
func (a *atlas) addFixing(path, home string, bolts *spec.Fastening, behind []string) {
	name := path + ".held"
	if bolts.Told() {
		name = bolts.Path
	}
	a.join(Joint{Name: name, Between: [2]string{path, home}, Effort: a.fixing(bolts) + a.w.of("extra", "tie")}, &parted{bolts: bolts, part: path, behind: behind})
}

// fixing is the weight of a set of fasteners.
func (a *atlas) fixing(f *spec.Fastening) Seconds {
	if !f.Told() {
		return a.w.of("extra", "panel")
	}
	return Seconds(max(1, f.Count.V)) * a.w.of("fixing", f.Head.V)
}

// addJoint enters a joint of a line, pipe, plug, rod or shaft, if it can come to
// lie between two lumps.
func (a *atlas) addJoint(j *document.Joint) {
	port := a.met(j)
	if port == nil {
		return
	}
	mine := theCar
	if strings.HasPrefix(j.Path, "driveline.") {
		mine = theDriveline
	}
	if _, own := a.nodes[j.On]; own {
		mine = j.On
	}
	n := Joint{Name: j.Path, Between: [2]string{mine, a.lumpOf(port)}, Circuit: j.Service,
		Effort: a.joint(j), Wet: wet(j), Spill: port.Spills.V.SI, Never: neverOpened(j)}
	a.join(n, &parted{joint: j, there: port, behind: a.behind(j.On)})
}

// neverOpened reports whether a joint is not to be parted for a swap.
func neverOpened(j *document.Joint) bool { return j.Meet.Never.V || j.Service == "brake fluid" }

// shut finds a joint that is never opened and would be, by a part that comes off to
// make way; nil if there is none.
func (a *atlas) shut(off []string) *NoCut {
	for _, name := range off {
		for _, j := range a.jointsOff(name) {
			if neverOpened(j) {
				return &NoCut{Leaving: name, Staying: theCar, Joints: []string{j.Path}}
			}
		}
	}
	return nil
}

// met is the port that a joint meets.
func (a *atlas) met(j *document.Joint) *document.Port {
	if j.There == nil {
		return nil
	}
	path := strings.TrimSuffix(j.There.Path, ".end")
	for i := range a.d.Ports {
		if a.d.Ports[i].Path == path {
			return &a.d.Ports[i]
		}
	}
	return nil
}

// joint is the weight of opening a joint: the dearer of its two ends, and the
// mess.
func (a *atlas) joint(j *document.Joint) Seconds {
	effort := Seconds(0)
	for _, h := range []*document.Half{j.Here, j.There} {
		if h != nil {
			effort = max(effort, a.w.of("joint", h.Form.V))
		}
	}
	if wet(j) {
		effort += a.w.of("extra", "wet")
	}
	return effort
}

// wet reports whether something runs out of a joint: a liquid, unless both halves
// shut themselves.
func wet(j *document.Joint) bool {
	shut := j.Here != nil && j.There != nil && j.Here.Valved.V && j.There.Valved.V
	return slices.Contains(liquids, j.Service) && !shut
}

// behind is what must be off before a line, pipe, plug, rod, shaft or circuit
// can be reached.
func (a *atlas) behind(path string) []string {
	table, name, _ := strings.Cut(path, ".")
	switch table {
	case "lines":
		return fieldOf(a.car.Lines.Named[name], func(l *spec.Line) []string { return l.Behind.V })
	case "plugs":
		return fieldOf(a.car.Plugs.Named[name], func(p *spec.Plug) []string { return p.Behind.V })
	case "rods":
		return fieldOf(a.car.Rods.Named[name], func(r *spec.Rod) []string { return r.Behind.V })
	case "shafts":
		return fieldOf(a.car.Shafts.Named[name], func(s *spec.Shaft) []string { return s.Behind.V })
	}
	if part := a.parts[path]; part != nil {
		return part.Behind.V
	}
	return nil
}

func fieldOf[T any](v *T, get func(*T) []string) []string {
	if v == nil {
		return nil
	}
	return get(v)
}

// addCircuit enters the end of a wire that is at the driveline.
func (a *atlas) addCircuit(c *document.Circuit) {
	for _, end := range []*spec.Meet{&c.Circuit.From, &c.Circuit.To} {
		port := a.ports[end.Port.V]
		if !strings.HasPrefix(end.Port.V, "driveline.") || c.Owner != theCar || port == nil {
			continue
		}
		a.join(Joint{Name: end.Path, Between: [2]string{theCar, a.lumpOf(port)}, Effort: a.w.of("joint", port.Half.Form.V), Never: end.Never.V},
			&parted{circuit: c, there: port, end: end, behind: c.Circuit.Behind.V})
	}
}

func (a *atlas) addMount(m *document.Mount) {
	if m.There == nil {
		return
	}
	a.join(Joint{Name: m.Path, Between: [2]string{theCar, theDriveline}, Effort: a.fixing(&m.Bolts)}, &parted{mount: m, behind: m.Behind.V})
}

// join enters a joint between two lumps, with what is in the way of it.
func (a *atlas) join(j Joint, from *parted) {
	if j.Between[0] == j.Between[1] {
		return
	}
	for _, name := range from.behind {
		a.access(name)
	}
	j.Behind = from.behind
	a.net.Joints = append(a.net.Joints, j)
	a.joints[j.Name] = from
}

// access enters what is in the way, and what is in the way of that.
func (a *atlas) access(name string) {
	if a.needed[name] {
		return
	}
	a.needed[name] = true
	entry := Access{Name: name}
	if panel := a.car.Access.Named[name]; panel != nil {
		entry.Behind = panel.Behind.V
		entry.Price = a.fixing(&panel.Held)
		if panel.Minutes.Given() {
			entry.Price = Seconds(panel.Minutes.V.SI)
		}
	} else {
		entry.Price, entry.Behind = a.takenOff(name)
	}
	for _, more := range entry.Behind {
		a.access(more)
	}
	a.net.Access = append(a.net.Access, entry)
}

// takenOff is what it costs to take a part off the car, and what is in the way of
// it: its fixing, and those of its joints that the parting does not open anyway.
func (a *atlas) takenOff(path string) (Seconds, []string) {
	price := a.w.of("extra", "panel")
	var behind []string
	if part := a.parts[path]; part != nil {
		price, behind = a.fixing(&part.Held), slices.Clone(part.Behind.V)
	}
	for _, j := range a.jointsOff(path) {
		price += a.joint(j)
		for _, more := range a.behind(j.On) {
			if more != path && !slices.Contains(behind, more) {
				behind = append(behind, more)
			}
		}
	}
	slices.Sort(behind)
	return price, behind
}

// jointsOff are the joints to open so that a part comes off the car, beside those
// at the driveline: at the part, unless the hose can come off with it because its
// other end is opened at the driveline; and those of the part itself, if it is a
// line or pipe.
func (a *atlas) jointsOff(path string) []*document.Joint {
	var found []*document.Joint
	for i := range a.d.Joints {
		j := &a.d.Joints[i]
		port := a.met(j)
		switch {
		case port == nil || j.Boundary:
		case j.On == path:
			found = append(found, j)
		case strings.HasPrefix(port.Path, path+".ports.") && !a.reachesDriveline(j.On):
			found = append(found, j)
		}
	}
	return found
}

// reachesDriveline reports whether a line has an end at the driveline.
func (a *atlas) reachesDriveline(line string) bool {
	return slices.ContainsFunc(a.d.Joints, func(j document.Joint) bool { return j.On == line && j.Boundary })
}

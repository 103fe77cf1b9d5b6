package swap

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// A Verdict is how an interface stands.
type Verdict string

// The verdicts, from good to bad.
const (
	Meets       Verdict = "meets"
	WithAdaptor Verdict = "meets with an adaptor"
	LeftOver    Verdict = "left over"    // one half is there and needs no other: cap it, tie it back, or leave it
	CannotTell  Verdict = "cannot tell"  // something is not said
	Missing     Verdict = "missing"      // one half is there and the other is not
	Fouls       Verdict = "fouls"        // two things want one place
	MustBeMade  Verdict = "must be made" // both halves are there and do not meet
)

// Kinds of interface.
const (
	PortKind   = "port"   // one end of a line, pipe, rod, shaft, plug or wire
	MountKind  = "mount"  // what carries the driveline, or a box of it
	PinKind    = "pin"    // one way of a connector
	ReachKind  = "reach"  // whether a hose, loom, rod or shaft is long enough
	SensorKind = "sensor" // one that the map expects
	ThrottleOf = "throttle"
	RoomKind   = "room" // a solid of the driveline among the car's
)

// An Interface is one place where a car and a driveline meet or should.
type Interface struct {
	Kind      string
	Name      string
	Driveline string // key path of the driveline's half; "" if it has none
	Car       string // key path of the car's half; "" if it has none
	Verdict   Verdict
	Why       []string // in what it differs, what is not said, what to do
	Chain     *Chain   // for WithAdaptor
	Figures   []Figure
}

// A Figure is a number of an interface, in SI.
type Figure struct {
	Name      string
	Value     float64
	Dimension unit.Dimension
}

// A Fit is every interface between one car and one driveline.
type Fit struct {
	Interfaces []Interface
	Measured   spec.Label // when the pair facts were measured
	Last       spec.Label // when this driveline was last in this car
}

// Count is how many interfaces have a verdict.
func (f *Fit) Count(v Verdict) int {
	n := 0
	for _, i := range f.Interfaces {
		if i.Verdict == v {
			n++
		}
	}
	return n
}

// Adaptors are those of every chain, by the path of the end of the line that they
// are screwed to: what a composition of the same car takes, to be judged with them.
func (f *Fit) Adaptors() map[string][]*spec.Adaptor {
	found := map[string][]*spec.Adaptor{}
	for _, i := range f.Interfaces {
		if i.Chain != nil {
			for _, a := range i.Chain.Adaptors {
				found[i.Car] = append(found[i.Car], a.spec)
			}
		}
	}
	return found
}

// NewFit looks at every port and mount of the driveline and at every half of the
// car's that names the driveline. d is the document of the composition, with its
// workings derived. behind names parts of the driveline that stay with the giving
// car, as a plan's cut leaves them. Interfaces come by kind, then by the
// driveline's path, then by the car's.
func NewFit(c *spec.Composition, d *document.Document, tol Tolerances, behind ...string) *Fit {
	f := &fitter{d: d, tol: tol, joints: map[string]*document.Joint{}, behind: behind}
	if c.Car == nil || c.Driveline == nil {
		return &Fit{}
	}
	f.carFile, f.car, f.driveline, f.shop = c.Car, c.Car.Car, c.Driveline.Driveline, &spec.Shop{}
	if c.Shop != nil {
		f.shop = c.Shop.Shop
	}
	f.drawer = NewDrawer(f.shop)
	for i := range d.Joints {
		f.joints[d.Joints[i].Path] = &d.Joints[i]
	}
	f.ports()
	f.orphans()
	f.mounts()
	f.pins()
	f.sensors()
	f.throttle()
	f.reaches()
	f.rooms()
	kinds := []string{MountKind, PortKind, PinKind, SensorKind, ThrottleOf, ReachKind, RoomKind}
	slices.SortStableFunc(f.found, func(a, b Interface) int {
		return cmp.Or(cmp.Compare(slices.Index(kinds, a.Kind), slices.Index(kinds, b.Kind)),
			cmp.Compare(a.Driveline, b.Driveline), cmp.Compare(a.Car, b.Car))
	})
	return &Fit{Interfaces: f.found, Measured: d.Given.Fit.Measured, Last: d.Given.Fit.Last}
}

// A fitter holds what the parts of one Fit share.
type fitter struct {
	d         *document.Document
	tol       Tolerances
	car       *spec.Car
	carFile   *spec.File
	driveline *spec.Driveline
	shop      *spec.Shop
	drawer    Drawer
	joints    map[string]*document.Joint
	behind    []string // parts that stay with the giving car
	found     []Interface
}

func (f *fitter) add(i Interface) { f.found = append(f.found, i) }

// settle gives an interface the verdict that follows from a meeting.
func (i *Interface) settle(m Meeting) {
	i.Why = append(i.Why, m.Differs...)
	for _, what := range m.Unknown {
		i.Why = append(i.Why, "not said: "+what)
	}
	switch {
	case len(m.Differs) > 0:
		i.Verdict = MustBeMade
	case len(m.Unknown) > 0:
		i.Verdict = CannotTell
	default:
		i.Verdict = Meets
	}
}

// ports goes through the driveline's ports: each end that meets one, and those
// that nothing meets.
func (f *fitter) ports() {
	for n := range f.d.Ports {
		port := &f.d.Ports[n]
		if !port.Crosses {
			continue
		}
		if f.stayed(port) {
			f.add(f.withoutIts(port))
			continue
		}
		for _, path := range port.Joins {
			i := Interface{Kind: PortKind, Name: port.Name, Driveline: port.Path, Car: path}
			f.end(&i, port, path)
			f.add(i)
		}
		if len(port.Joins) == 0 {
			f.add(f.unmet(port))
		}
	}
}

// stayed reports whether a port is on a part that stays with the giving car.
func (f *fitter) stayed(port *document.Port) bool {
	return port.Port.On.Given() && slices.Contains(f.behind, theDriveline+"."+strings.TrimPrefix(port.Port.On.V, "driveline."))
}

func (f *fitter) withoutIts(port *document.Port) Interface {
	i := Interface{Kind: PortKind, Name: port.Name, Driveline: port.Path, Verdict: LeftOver,
		Why: []string{plain(port.Port.On.V) + " stays with the giving car"}}
	if len(port.Joins) > 0 {
		i.Car, i.Verdict = port.Joins[0], Missing
	}
	return i
}

// end judges one end that meets a port.
func (f *fitter) end(i *Interface, port *document.Port, path string) {
	joint := f.joints[path]
	var here *document.Half
	service := ""
	if joint != nil {
		here, service = joint.Here, f.serviceBeyond(joint)
	} else {
		here = f.wireEnd(path)
	}
	if here == nil {
		i.settle(Meeting{Unknown: []string{"what the car's end is"}})
		return
	}
	m := f.tol.Meet(here, &port.Half)
	if joint != nil && joint.Kind == "shaft" {
		m.flanges(f.shaftHoles(joint.On), port.Holes, f.tol)
	}
	if !m.Meets && len(m.Unknown) == 0 && f.adapts(joint) {
		if i.adapt(here, port, f); i.Verdict == WithAdaptor {
			i.Why = append(m.Differs, i.Why...)
			m = Meeting{}
		}
	}
	if wrong := crossed(joint, port, service); wrong != "" {
		m.Differs = append(m.Differs, wrong)
		i.Chain, i.Verdict = nil, ""
	}
	if i.Verdict == WithAdaptor {
		f.drawer = f.drawer.Without(i.Chain)
	} else {
		i.settle(m)
	}
	if here.Form.V == "dry-break" && i.Verdict == Meets && here.Valved.V != port.End.Valved.V {
		i.Why = append(i.Why, "only one half shuts itself: the other runs out")
	}
}

// adapts reports whether an adaptor may come between the halves: of a hose or
// tube, not of a shaft, rod, plug, pipe or wire.
func (f *fitter) adapts(j *document.Joint) bool { return j != nil && j.Kind == "line" }

// adapt looks for a chain to the port, or to the one beneath an adaptor that is
// screwed into it.
func (i *Interface) adapt(here *document.Half, port *document.Port, f *fitter) {
	i.Chain = f.drawer.Join(here, &port.Half, f.tol)
	if port.Under.Told() {
		under := document.HalfOf(port.Under)
		under.Owner = port.Owner
		if f.tol.Meet(here, under).Meets {
			i.Chain, i.Verdict = &Chain{}, WithAdaptor
			i.Why = []string{"meets the port under the adaptor that is screwed in: take that out"}
			return
		}
		if beneath := f.drawer.Join(here, under, f.tol); beneath != nil && (i.Chain == nil || beneath.Joints < i.Chain.Joints) {
			i.Chain = beneath
			i.Why = []string{"take out the adaptor that is screwed in"}
		}
	}
	if i.Chain != nil {
		i.Verdict = WithAdaptor
	}
}

// serviceBeyond is what the far end of a joint's line carries.
func (f *fitter) serviceBeyond(j *document.Joint) string {
	for n := range f.d.Lines {
		l := &f.d.Lines[n]
		if l.Path != j.On {
			continue
		}
		for _, end := range []*document.LineEnd{l.From, l.To} {
			if end != nil && end.Path != j.Path && end.Port != nil {
				return end.Port.Service
			}
		}
	}
	return ""
}

// crossed says what is wrong with the flow: an end that takes the flow in where
// the port takes it too, or two fluids.
func crossed(j *document.Joint, port *document.Port, service string) string {
	if j == nil || j.Kind != "line" && j.Kind != "pipe" {
		return ""
	}
	from := strings.HasSuffix(j.Path, ".from")
	switch {
	case from && port.Takes.Given():
		return "the line starts at a port that takes " + port.Takes.V
	case !from && port.Gives.Given():
		return "the line ends at a port that gives " + port.Gives.V
	case service != "" && port.Service != "" && service != port.Service:
		return fmt.Sprintf("%s at one end and %s at the other", service, port.Service)
	}
	return ""
}

// wireEnd is the end of a circuit at a path.
func (f *fitter) wireEnd(path string) *document.Half {
	for n := range f.d.Circuits {
		c := &f.d.Circuits[n]
		for _, end := range []*spec.Meet{&c.Circuit.From, &c.Circuit.To} {
			if end.Path == path && end.End.Told() {
				h := document.HalfOf(end.End)
				h.Owner = c.Owner
				return h
			}
		}
	}
	return nil
}

func (f *fitter) shaftHoles(path string) spec.Holes {
	for n := range f.d.Shafts {
		if f.d.Shafts[n].Path == path {
			return f.d.Shafts[n].Holes
		}
	}
	return spec.Holes{}
}

// unmet judges a port of the driveline that nothing meets.
func (f *fitter) unmet(port *document.Port) Interface {
	i := Interface{Kind: PortKind, Name: port.Name, Driveline: port.Path, Verdict: LeftOver}
	switch {
	case port.Capped.Given():
		i.Why = []string{"capped: " + port.Capped.V}
	case port.Open.V:
		i.Why = []string{"may stay open"}
	case port.Purpose.V == "vent" || port.Purpose.V == "breather":
		i.Why = []string{"to be led somewhere: " + port.Purpose.V}
	case port.Purpose.Given():
		i.Why = []string{"to be capped: " + port.Purpose.V}
	default:
		i.Verdict = Missing
		i.Why = []string{"nothing on the car meets it"}
		if port.Service != "" {
			i.Why[0] += ": it " + verb(port) + " " + port.Service
		}
	}
	return i
}

func verb(port *document.Port) string {
	switch {
	case port.Gives.Given():
		return "gives"
	case port.Takes.Given():
		return "takes"
	}
	return "carries"
}

// orphans are the car's halves that name what this driveline does not have.
func (f *fitter) orphans() {
	named := map[string]bool{}
	for n := range f.d.Ports {
		named[f.d.Ports[n].Name] = true
	}
	for n := range f.d.Joints {
		j := &f.d.Joints[n]
		if j.Boundary && j.There == nil && !strings.HasPrefix(j.Path, "driveline.") {
			f.orphan(j.Path, j.Meet.Port.V, j.Kind, f.starved(j))
		}
	}
	for n := range f.d.Circuits {
		c := &f.d.Circuits[n]
		for _, end := range []*spec.Meet{&c.Circuit.From, &c.Circuit.To} {
			if c.Owner != "driveline" && strings.HasPrefix(end.Port.V, "driveline.") && !named[end.Port.V] {
				f.orphan(end.Path, end.Port.V, "circuit", unpowered[c.Circuit.Purpose.V])
			}
		}
	}
}

var tidied = map[string]string{
	"line": "cap it and tie it back", "plug": "cap it and tie it back", "circuit": "insulate it, or take its supply off",
	"rod": "tie it back", "shaft": "take it out", "pipe": "cap it",
}

// starving is what a part of the car cannot do its work without, and what it lacks
// if the driveline does not give it. A radiator that gets no water and an
// intercooler that gets no air want nothing.
var starving = map[string]string{
	"fuel":           "gets no fuel",
	"vacuum":         "gets no vacuum",
	"steering fluid": "gets no pressure",
}

// unpowered is what stops when a circuit ends at nothing, by its purpose.
var unpowered = map[string]string{
	"charging": "nothing charges the battery",
	"earth":    "no strap brings the driveline to earth",
}

// starved says what a line starves that should start at the driveline.
func (f *fitter) starved(j *document.Joint) string {
	if j.Kind != "line" || !strings.HasSuffix(j.Path, ".from") {
		return ""
	}
	for n := range f.d.Lines {
		if l := &f.d.Lines[n]; l.Path == j.On && l.To != nil && l.To.Port != nil {
			if lacks, ok := starving[l.To.Port.Service]; ok {
				return l.To.Port.Name + " " + lacks
			}
		}
	}
	return ""
}

func (f *fitter) orphan(path, ref, kind, stops string) {
	i := Interface{Kind: PortKind, Name: ref, Car: path, Verdict: LeftOver}
	todo := tidied[kind]
	if stops != "" {
		i.Verdict, todo = Missing, stops
	}
	i.Why = []string{fmt.Sprintf("the driveline has no %s: %s", strings.TrimPrefix(ref, "driveline."), todo)}
	f.add(i)
}

// mounts holds each bracket of the car against the face that it meets, and names
// the faces that no bracket meets.
func (f *fitter) mounts() {
	met := map[string]bool{}
	for n := range f.d.Mounts {
		m := &f.d.Mounts[n]
		i := Interface{Kind: MountKind, Name: m.Name, Car: m.Path}
		if m.There == nil {
			i.Verdict = LeftOver
			i.Why = []string{"the driveline has no mount " + strings.TrimPrefix(m.Meets.V, "driveline.")}
			f.add(i)
			continue
		}
		i.Driveline = m.There.Path
		met[m.There.Path] = true
		var meeting Meeting
		meeting.bolted(m.Holes, m.There.Holes, m.Bolts, f.tol)
		f.offset(&i, m, &meeting)
		i.settle(meeting)
		f.add(i)
	}
	for name, there := range f.driveline.Mounts.All() {
		if !met[there.Path] {
			f.add(Interface{Kind: MountKind, Name: name, Driveline: there.Path, Verdict: Missing, Why: []string{"the car has no bracket for it"}})
		}
	}
}

func (f *fitter) offset(i *Interface, m *document.Mount, meeting *Meeting) {
	offset := m.Calc.Offset
	switch {
	case m.There.Light.V:
	case !offset.Known:
		meeting.Unknown = append(meeting.Unknown, "how far the two patterns are apart: write "+strings.Join(offset.Missing, ", "))
	default:
		i.Figures = append(i.Figures, Figure{"offset", offset.Value, unit.Length})
		if offset.Value > f.tol.Offset {
			said := millimetres(offset.Value) + " apart"
			if m.Calc.Towards != "" {
				said += ", the driveline's to the " + m.Calc.Towards
			}
			meeting.Differs = append(meeting.Differs, said)
		}
	}
}

// pins holds the two halves of every connector against each other, way by way.
func (f *fitter) pins() {
	for n := range f.d.Pins {
		p := &f.d.Pins[n]
		i := Interface{Kind: PinKind, Name: p.Connector + "." + p.Name, Verdict: Meets}
		if p.Here != nil {
			i.Car = p.Here.Path
		}
		if p.There != nil {
			i.Driveline = p.There.Path
		}
		switch {
		case p.There == nil:
			i.Verdict, i.Why = LeftOver, []string{"the driveline's half has no wire here: the car " + pinText(p.Here)}
			if p.Here.Takes.Given() {
				i.Verdict = Missing
			}
		case p.Here == nil:
			i.Verdict, i.Why = Missing, []string{"the car's half has no wire here: the driveline " + pinText(p.There)}
		default:
			if here, there := pinText(p.Here), pinText(p.There); !pinsMeet(p.Here, p.There) {
				i.Verdict, i.Why = MustBeMade, []string{fmt.Sprintf("the car %s and the driveline %s", here, there)}
			}
			if here, there := pinText(p.Here), pinText(p.There); here == "" || there == "" {
				i.Verdict, i.Why = CannotTell, []string{"not said: what the pin gives or takes"}
			}
		}
		f.add(i)
	}
}

func pinText(p *spec.Pin) string {
	switch {
	case p.Gives.Given():
		return "gives " + p.Gives.V
	case p.Takes.Given():
		return "takes " + p.Takes.V
	case p.Both.Given():
		return "has " + p.Both.V
	}
	return ""
}

func pinsMeet(a, b *spec.Pin) bool {
	return a.Gives.V == b.Takes.V && a.Takes.V == b.Gives.V && a.Both.V == b.Both.V
}

// sensors are those that the map expects, on either side.
func (f *fitter) sensors() {
	for n := range f.d.Sensors {
		s := &f.d.Sensors[n]
		i := Interface{Kind: SensorKind, Name: s.Name, Driveline: s.Path, Verdict: Meets}
		if s.On == "car" {
			i.Car = "sensors." + s.Name
		}
		switch {
		case s.Present == nil:
			i.Verdict, i.Why = CannotTell, []string{"not said: the sensors of the " + s.On}
		case !*s.Present:
			i.Verdict, i.Why = Missing, []string{"the map expects it on the " + s.On}
		}
		f.add(i)
	}
}

func (f *fitter) throttle() {
	var m meeting
	m.a, m.b = &document.Half{Owner: "car"}, &document.Half{Owner: "driveline"}
	m.words("throttle", f.car.Car.Throttle.V, f.driveline.Engine.Throttle.V)
	i := Interface{Kind: ThrottleOf, Name: "throttle", Driveline: "driveline.engine.throttle", Car: "car.throttle"}
	i.settle(m.done())
	f.add(i)
}

package swap

import (
	"cmp"
	"slices"

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
	PortKind     = "port"   // one end of a line, pipe, rod, shaft, plug or wire
	MountKind    = "mount"  // what carries the driveline, or a box of it
	PinKind      = "pin"    // one way of a connector
	ReachKind    = "reach"  // whether a hose, loom, rod or shaft is long enough
	SensorKind   = "sensor" // one that the map expects
	ThrottleKind = "throttle"
	RoomKind     = "room" // a solid of the driveline among the car's
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
	kinds := []string{MountKind, PortKind, PinKind, SensorKind, ThrottleKind, ReachKind, RoomKind}
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

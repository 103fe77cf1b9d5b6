package swap

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// A Plan is how one driveline comes out of one car, and how it goes back in. It
// is made of what the specs say: what they do not say is no part of it, and
// whether a part of it may be printed is judged elsewhere.
type Plan struct {
	Network Network // all that may be parted
	Parting *Parting
	Remove  []Step
	Refit   []Step

	Tools     []Tool
	Fluids    []Catch
	Renew     []Renewal
	Torques   []Torque
	Caps      []Cap
	Labels    []Label
	Tied      []Tied   // parts left on their lines
	Energy    []Energy // what is stored, and must be let go first
	Checks    []Check  // before and at the first start
	Cold      []Check  // to look at again when it is cold
	SetUp     []Check  // after mass has moved
	Event     []Check  // before it competes
	Finish    []Check  // the state that the giving car is left in
	Inspect   []Check  // what can be seen only now
	Life      []document.LifeItem
	Unmarked  []string // car.fits says nothing of what must be off first, and the like
	NotOpened []string // circuits that stay shut
}

// A Step is one thing to do.
type Step struct {
	Name    string // stable: what is done and to what
	Do      string
	Station string
	Subject string       // key path; "" if it is about nothing that is written
	Hold    bool         // to be signed before going on
	After   []Constraint // what comes before it, and why
	Tools   []string
	Torque  string
	Notes   []string
}

// A Tool is needed for steps.
type Tool struct {
	Name string
	For  []string // subjects
}

// A Catch is a fluid that runs out.
type Catch struct {
	Fluid  string
	Drains []string // key paths of the plugs; none if it runs out at the joints
	Volume float64  // m³ that may run out, as far as it is known
	Known  bool
	Stays  float64 // m³ that stays in the driveline
	Refill float64 // m³ to fill from dry
	Grade  string
	Now    []string // what the specs say is in it now
	At     []string // joints where it runs out
}

// A Renewal is a part that is used once.
type Renewal struct {
	What    string
	Subject string
}

// A Torque is one tightening torque of the refit.
type Torque struct {
	Subject string
	Torque  unit.Quantity
	Threads string // dry, oiled, as written
	By      string // whose figure it is
	Wrench  string // the smallest in the shop that covers it; "" if none is said to
}

// A Cap closes a half that is open.
type Cap struct {
	Subject string
	What    string
}

// A Label is to be put on both halves before they are parted.
type Label struct {
	Subject string
	Text    string
}

// Tied is a part left on its lines.
type Tied struct {
	Part string
	By   string // how the spec says it is tied; "" if it does not
}

// Energy is something stored that can hurt.
type Energy struct {
	What    string
	LetGo   string
	Proved  string
	Subject string
	Running bool // only a driveline that has run in the car stores it
}

// A Check is something to look at.
type Check struct {
	What    string
	Subject string
}

// Options are what a plan may be told beside the specs.
type Options struct {
	Weights Weights
	// Held parts go to a side whatever is cheaper: a pump that the receiving car
	// needs leaves with the driveline. See NeededBy.
	Held map[string]Side
	// EmptyBay says that the driveline goes into a car with none in it, which has
	// yet to be made safe.
	EmptyBay bool
	// Fit is how the driveline fits the car that it goes into; nil for one that was in
	// it before.
	Fit *Fit
	// Emptied is what ran out of the driveline when it came out of the car before.
	Emptied []Catch
}

// NeededBy names the parts of the driveline that may go either way and that a
// car has a use for: it holds an end to one of their ports.
func NeededBy(d *document.Document) map[string]Side {
	held := map[string]Side{}
	for i := range d.Ports {
		p := &d.Ports[i]
		if p.Owner == theDriveline && p.Port.On.Given() && len(p.Joins) > 0 {
			held["driveline."+strings.TrimPrefix(p.Port.On.V, "driveline.")] = Leaves
		}
	}
	return held
}

// A NoPlan is why there is no plan: the specs rule it out. It holds a *NoCut or a
// Cycle.
type NoPlan struct {
	Subject string // key path of something that it is about
	Why     error
}

func (e *NoPlan) Error() string { return e.Why.Error() }

func (e *NoPlan) Unwrap() error { return e.Why }

// NewPlan works out how the driveline of a composition comes out of its car, and
// how it goes in. d is the composition's document with its workings derived. An
// error is a *NoPlan, or tells what is missing.
func NewPlan(c *spec.Composition, d *document.Document, o Options) (*Plan, error) {
	if c.Car == nil || c.Driveline == nil {
		return nil, fmt.Errorf("a plan needs a car and the driveline that is in it")
	}
	a := chart(c, d, o)
	parting, err := a.net.Part()
	if no, is := errors.AsType[*NoCut](err); is {
		return nil, &NoPlan{no.subject(), no}
	}
	if err != nil {
		return nil, err
	}
	if no := a.shut(parting.Best.Off); no != nil {
		return nil, &NoPlan{no.subject(), no}
	}
	b := &planner{atlas: a, options: o, cut: parting.Best, plan: &Plan{Network: a.net, Parting: parting, NotOpened: parting.Unopened}, fastenings: map[string]*document.Fastening{}}
	for i := range d.Fastenings {
		b.fastenings[d.Fastenings[i].Path] = &d.Fastenings[i]
	}
	if len(d.Mounts) == 0 {
		b.plan.Unmarked = append(b.plan.Unmarked, "mounts")
	}
	if c.Fit == nil || c.Fit.Behind.State == spec.Unsaid || c.Fit.Behind.State == spec.Asked {
		b.plan.Unmarked = append(b.plan.Unmarked, "fits."+d.Given.Driveline+".behind")
	}
	if b.plan.Remove, err = b.removal().sorted(); err != nil {
		return nil, err
	}
	if b.plan.Refit, err = b.refit().sorted(); err != nil {
		return nil, err
	}
	b.lists()
	return b.plan, nil
}

// A planner holds what the parts of one plan share.
type planner struct {
	*atlas
	options    Options
	cut        Cut
	plan       *Plan
	fastenings map[string]*document.Fastening
}

// A sequence is steps in the making.
type sequence struct {
	steps       []Step
	constraints []Constraint
}

func (s *sequence) add(step Step) { s.steps = append(s.steps, step) }

func (s *sequence) has(name string) bool {
	return slices.ContainsFunc(s.steps, func(each Step) bool { return each.Name == name })
}

// before asks for an order, where both steps are there.
func (s *sequence) before(first, then, why string) {
	if s.has(first) && s.has(then) && first != then {
		s.constraints = append(s.constraints, Constraint{first, then, why})
	}
}

// late asks for an order of steps of which one is yet to be added, and will be.
func (s *sequence) late(first, then, why string) {
	s.constraints = append(s.constraints, Constraint{first, then, why})
}

// each asks that one step comes before all those that a test picks.
func (s *sequence) each(first string, pick func(Step) bool, why string) {
	for _, step := range s.steps {
		if pick(step) {
			s.before(first, step.Name, why)
		}
	}
}

// all asks that those steps that a test picks come before one.
func (s *sequence) all(pick func(Step) bool, then, why string) {
	for _, step := range s.steps {
		if pick(step) {
			s.before(step.Name, then, why)
		}
	}
}

func (s *sequence) sorted() ([]Step, error) {
	tasks := make([]Task, len(s.steps))
	at := map[string]int{}
	for i, step := range s.steps {
		tasks[i] = Task{step.Name, step.Station}
		at[step.Name] = i
	}
	order, err := Order(tasks, s.constraints)
	if cycle, is := errors.AsType[Cycle](err); is {
		return nil, &NoPlan{s.steps[at[cycle[0].Before]].Subject, cycle}
	}
	if err != nil {
		return nil, err
	}
	for _, c := range s.constraints {
		step := &s.steps[at[c.After]]
		if !slices.Contains(step.After, c) {
			step.After = append(step.After, c)
		}
	}
	sorted := make([]Step, len(order))
	for i, name := range order {
		sorted[i] = s.steps[at[name]]
	}
	return sorted, nil
}

// Stations, as specs name them.
const (
	outsideFront = "outside front"
	outsideRear  = "outside rear"
	under        = "under"
	cabin        = "cabin"
	engineBay    = "engine bay"
	bench        = "bench"
)

// Names of steps that others are asked to come before or after.
const (
	stepStand       = "stand the car"
	stepUnder       = "hold: before going under"
	stepCool        = "let it cool"
	stepRail        = "let the rail pressure down"
	stepFuelShut    = "shut the fuel off"
	stepBattery     = "battery off"
	stepJacks       = "let the air jacks down"
	stepAccumulator = "let the accumulator down"
	stepPin         = "pin the fire system"
	stepWalk        = "hold: walk round every joint"
	stepSling       = "sling on"
	stepTake        = "hold: before the hook takes weight"
	stepLastBolt    = "hold: before the last mount bolt"
	stepLift        = "lift out"
	stepStrap       = "strap down"
	stepHook        = "hold: before the hook comes off"
)

// stationOf is where the builder stands to reach something: where what is in the
// way of it comes off from under or from the cabin, there; else where the thing
// is; else at the engine bay.
func (p *planner) stationOf(behind []string, place string) string {
	for _, station := range []string{under, cabin} {
		for _, name := range p.closure(behind) {
			if panel := p.car.Access.Named[name]; panel != nil && panel.Station.V == station {
				return station
			}
		}
	}
	if station, known := stationAt[place]; known {
		return station
	}
	return engineBay
}

// stationAt is where the builder stands to reach a compartment.
var stationAt = map[string]string{"boot": outsideRear, "cockpit": cabin, "under floor": under, "outside": outsideFront}

// closure is all that must be off for a list of names, themselves included.
func (p *planner) closure(names []string) []string {
	seen := map[string]bool{}
	var visit func(string)
	visit = func(name string) {
		if seen[name] {
			return
		}
		seen[name] = true
		i := slices.IndexFunc(p.net.Access, func(a Access) bool { return a.Name == name })
		if i >= 0 {
			for _, more := range p.net.Access[i].Behind {
				visit(more)
			}
		}
	}
	for _, name := range names {
		visit(name)
	}
	return slices.Sorted(maps.Keys(seen))
}

func sortByName[T any](list []T, name func(T) string) {
	slices.SortStableFunc(list, func(a, b T) int { return cmp.Compare(name(a), name(b)) })
}

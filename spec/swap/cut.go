package swap

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
)

// Seconds is an effort or a price: a planning weight, by which ways of parting
// are compared, and no promise of how long the work takes.
type Seconds int

// A Side is where a part goes when the driveline comes out.
type Side int

// The sides.
const (
	Either Side = iota // may go either way
	Leaves             // with the driveline
	Stays              // with the car
)

func (s Side) String() string { return [...]string{"either", "leaves", "stays"}[s] }

func (s Side) other() Side {
	if s == Leaves {
		return Stays
	}
	return Leaves
}

// A Part is a thing that goes as a whole.
type Part struct {
	Name string
	Side Side
	// Hose marks a hose, pipe or shaft: it goes where it costs least and is not a
	// choice that a builder weighs.
	Hose bool
}

// A Joint holds two parts together: an end of a hose, a connector, the bolts of
// a pump.
type Joint struct {
	Name    string
	Between [2]string // names of parts
	Effort  Seconds   // to open it and make it again, without what is in the way
	Wet     bool      // something runs out
	Spill   float64   // m³; 0 if it is not known
	Never   bool      // not to be opened
	Behind  []string  // names of what must be off before it can be reached
	Circuit string    // what flows through it; "" for bolts
}

// Access is what must come off to reach a joint. Its price is paid once, however
// many joints are behind it.
type Access struct {
	Name   string
	Price  Seconds
	Behind []string // what must be off before it, in its turn
}

// A Network is all that may be parted.
type Network struct {
	Parts  []Part
	Joints []Joint
	Access []Access
	Off    []string // access that comes off wherever the parting goes
}

// A Cut is one way to part a network.
type Cut struct {
	Leaves []string // parts that go with the driveline, by name
	Open   []string // joints to open, by name
	Off    []string // access to take off, by name
	Effort Seconds  // of the joints, and of the access once
	Wet    int      // joints of those that are wet
	Spill  float64  // m³ from them, as far as it is known
}

// A Parting is the best way to part a network, and what may be said of it.
type Parting struct {
	Best Cut
	// Next is the cheapest cut in which at least one part that may go either way
	// goes the other way than in Best; nil if none may.
	Next *Cut
	// Turned names the parts that go the other way in Next.
	Turned []string
	// Unopened names the circuits that could have been opened and are not.
	Unopened []string
	// Loose names parts that may go either way and hang on nothing that is held to
	// a side. They stay.
	Loose []string
	// Bound is what the cut must cost at least, by the greatest flow through the
	// joints. Without shared access it is what it costs.
	Bound Seconds
}

// NoCut says why a network cannot be parted: a chain of joints that are never
// opened holds a part that must leave to one that must stay.
type NoCut struct {
	Leaving, Staying string
	Joints           []string // from the one to the other; none if it is one part
}

// subject is the key path of the joint, else of the part, that it is about.
func (e *NoCut) subject() string {
	if len(e.Joints) == 0 {
		return e.Leaving
	}
	return e.Joints[0]
}

func (e *NoCut) Error() string {
	if len(e.Joints) == 0 {
		return fmt.Sprintf("%s must both leave and stay", e.Leaving)
	}
	return fmt.Sprintf("%s must leave and %s must stay, and what holds them together is never opened: %s; open one of these, or let both go the same way",
		e.Leaving, e.Staying, strings.Join(e.Joints, ", "))
}

// Part finds the cheapest way to part what must leave from what must stay. Of
// equal cuts it takes the one with the fewest wet joints, then the fewest
// joints, then the one whose joints come first by name, and then the one in
// which fewest parts leave. The search is exact. An error is a *NoCut, or tells of a
// name that is not in the network, or of more ways than can be weighed.
func (n Network) Part() (*Parting, error) {
	x, err := newIndex(n)
	if err != nil {
		return nil, err
	}
	s, err := newSearch(x, nil)
	if err != nil {
		return nil, err
	}
	best := s.run()
	if x.tired() {
		return nil, errTooManyWays
	}
	p := &Parting{Best: x.cut(best), Bound: s.rootBound}
	p.Unopened = x.unopened(best)
	p.Loose = x.loose()

	var next *labels
	for i, part := range n.Parts {
		if part.Side != Either || part.Hose || slices.Contains(p.Loose, part.Name) {
			continue
		}
		other, err := newSearch(x, map[int]Side{i: best.side[i].other()})
		if err != nil {
			continue // held to its side by what is never opened
		}
		other.best = next // what is no better need not be looked at
		if next = other.run(); x.tired() {
			return nil, errTooManyWays
		}
	}
	if next != nil {
		cut := x.cut(next)
		p.Next = &cut
		for i, part := range n.Parts {
			if part.Side == Either && !part.Hose && best.side[i] != next.side[i] {
				p.Turned = append(p.Turned, part.Name)
			}
		}
		slices.Sort(p.Turned)
	}
	return p, nil
}

// An index is a network with its names looked up.
type index struct {
	Network
	ends   [][2]int // of each joint, in Parts
	behind [][]int  // of each joint, in Access: all that must be off, in the end
	off    []bool   // access that is off anyway
	tries  int      // branches that all searches have looked at
}

// mostTries bounds the branches that one parting may take: some seconds. A car that
// was built takes hundreds; parts that could go either way at one price, which no bound
// tells apart, double them each.
const mostTries = 1 << 18

func (x *index) tired() bool { return x.tries > mostTries }

var errTooManyWays = errors.New("too many parts may go either way at much the same price to weigh them all; say of some whether they go with the driveline or with the car")

func newIndex(n Network) (*index, error) {
	x := &index{Network: n}
	parts, err := positions("part", n.Parts, func(p Part) string { return p.Name })
	if err != nil {
		if twice := n.pinnedTwice(); twice != "" {
			return nil, &NoCut{Leaving: twice, Staying: twice}
		}
		return nil, err
	}
	access, err := positions("access", n.Access, func(a Access) string { return a.Name })
	if err != nil {
		return nil, err
	}
	if _, err := positions("joint", n.Joints, func(j Joint) string { return j.Name }); err != nil {
		return nil, err
	}
	needs := make([][]int, len(n.Access))
	for i, a := range n.Access {
		if a.Price < 0 {
			return nil, fmt.Errorf("%s takes less than no time", a.Name)
		}
		if needs[i], err = lookUp(a.Name, a.Behind, access); err != nil {
			return nil, err
		}
	}
	x.off = make([]bool, len(n.Access))
	gone, err := lookUp("what comes off anyway", n.Off, access)
	if err != nil {
		return nil, err
	}
	for _, a := range closure(gone, needs) {
		x.off[a] = true
	}
	for _, j := range n.Joints {
		if j.Effort < 0 {
			return nil, fmt.Errorf("%s takes less than no time", j.Name)
		}
		var ends [2]int
		for i, name := range j.Between {
			at, known := parts[name]
			if !known {
				return nil, fmt.Errorf("%s joins %q, which is no part", j.Name, name)
			}
			ends[i] = at
		}
		first, err := lookUp(j.Name, j.Behind, access)
		if err != nil {
			return nil, err
		}
		x.ends, x.behind = append(x.ends, ends), append(x.behind, closure(first, needs))
	}
	return x, nil
}

// pinnedTwice names a part that stands in the list for both sides.
func (n Network) pinnedTwice() string {
	for i, p := range n.Parts {
		for _, q := range n.Parts[:i] {
			if p.Name == q.Name && p.Side != q.Side && p.Side != Either && q.Side != Either {
				return p.Name
			}
		}
	}
	return ""
}

func positions[T any](what string, list []T, name func(T) string) (map[string]int, error) {
	at := make(map[string]int, len(list))
	for i, each := range list {
		if _, twice := at[name(each)]; twice {
			return nil, fmt.Errorf("there are two of the %s %q", what, name(each))
		}
		at[name(each)] = i
	}
	return at, nil
}

func lookUp(who string, names []string, at map[string]int) ([]int, error) {
	var found []int
	for _, name := range names {
		i, known := at[name]
		if !known {
			return nil, fmt.Errorf("%s is behind %q, which is not there", who, name)
		}
		found = append(found, i)
	}
	return found, nil
}

// closure is all that the first ones need, themselves included, in order.
func closure(first []int, needs [][]int) []int {
	seen := map[int]bool{}
	var all []int
	var visit func(int)
	visit = func(i int) {
		if !seen[i] {
			seen[i] = true
			all = append(all, i)
			for _, next := range needs[i] {
				visit(next)
			}
		}
	}
	for _, i := range first {
		visit(i)
	}
	slices.Sort(all)
	return all
}

// cut writes a labelling out.
func (x *index) cut(l *labels) Cut {
	c := Cut{Open: l.open, Leaves: l.leaves, Effort: l.effort, Wet: l.wet}
	off := slices.Clone(x.off)
	for j, ends := range x.ends {
		if l.side[ends[0]] == l.side[ends[1]] {
			continue
		}
		c.Spill += x.Joints[j].Spill
		for _, a := range x.behind[j] {
			off[a] = true
		}
	}
	for a, is := range off {
		if is {
			c.Off = append(c.Off, x.Access[a].Name)
		}
	}
	slices.Sort(c.Off)
	return c
}

// unopened names the circuits with a joint that some cut might open, and with
// none that this one does.
func (x *index) unopened(l *labels) []string {
	shut := map[string]bool{}
	for j, ends := range x.ends {
		circuit := x.Joints[j].Circuit
		one, two := x.Parts[ends[0]].Side, x.Parts[ends[1]].Side
		if circuit != "" && (one == Either || one != two) {
			shut[circuit] = true
		}
	}
	for j, ends := range x.ends {
		if l.side[ends[0]] != l.side[ends[1]] {
			delete(shut, x.Joints[j].Circuit)
		}
	}
	return slices.Sorted(maps.Keys(shut))
}

// loose names the parts that no chain of joints leads from to one that is held.
func (x *index) loose() []string {
	groups := newGroups(len(x.Parts))
	for _, ends := range x.ends {
		groups.join(ends[0], ends[1])
	}
	held := map[int]bool{}
	for i, p := range x.Parts {
		if p.Side != Either {
			held[groups.of(i)] = true
		}
	}
	var names []string
	for i, p := range x.Parts {
		if p.Side == Either && !held[groups.of(i)] {
			names = append(names, p.Name)
		}
	}
	slices.Sort(names)
	return names
}

// labels is one complete cut, as the search compares it.
type labels struct {
	side   []Side // of each part
	effort Seconds
	wet    int
	open   []string
	leaves []string
}

func (l *labels) compare(o *labels) int {
	return cmp.Or(
		cmp.Compare(l.effort, o.effort),
		cmp.Compare(l.wet, o.wet),
		cmp.Compare(len(l.open), len(o.open)),
		slices.Compare(l.open, o.open),
		cmp.Compare(len(l.leaves), len(o.leaves)),
		slices.Compare(l.leaves, o.leaves),
	)
}

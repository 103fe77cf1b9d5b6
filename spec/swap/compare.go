package swap

import (
	"cmp"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
)

// A Likeness is how the same interface of two cars compares.
type Likeness string

// The likenesses.
const (
	Same    Likeness = "same"     // the two halves are alike
	Carries Likeness = "meets"    // they differ, and each meets the driveline that is in the other
	Differs Likeness = "differs"  // what fits the one does not fit the other
	OnlyOne Likeness = "only one" // one of the cars has no such half
	Unknown Likeness = "cannot tell"
)

// A Pair is one interface of two cars, side by side.
type Pair struct {
	Kind       string // mount, port or pin
	Name       string // as the driveline names it
	One, Other string // key paths; "" where a car has none
	Likeness   Likeness
	Why        []string
}

// A Comparison is every half that either of two cars holds out to a driveline.
type Comparison struct {
	Pairs []Pair
}

// CarriesOver names what a driveline finds alike in both, or meets in both: what
// needs nothing done when it moves.
func (c *Comparison) CarriesOver() []string {
	var names []string
	for _, p := range c.Pairs {
		if p.Likeness == Same || p.Likeness == Carries {
			names = append(names, p.Kind+" "+p.Name)
		}
	}
	return names
}

// held is what one car holds out.
type held struct {
	path  string
	half  *document.Half
	mount *spec.CarMount
	pin   *spec.Pin
	port  *document.Port // of the driveline that is in this car
}

// Compare puts the halves of two cars side by side, each by the name of what it
// meets. The documents are those of the two cars with what is in them.
func Compare(one, other *document.Document, tol Tolerances) *Comparison {
	mine, theirs := heldOut(one), heldOut(other)
	all := map[[2]string]bool{}
	for key := range mine {
		all[key] = true
	}
	for key := range theirs {
		all[key] = true
	}
	c := &Comparison{}
	for key := range all {
		a, b := mine[key], theirs[key]
		p := Pair{Kind: key[0], Name: key[1]}
		switch {
		case b == nil:
			p.One, p.Likeness = a.path, OnlyOne
		case a == nil:
			p.Other, p.Likeness = b.path, OnlyOne
		default:
			p.One, p.Other = a.path, b.path
			p.Likeness, p.Why = alike(a, b, tol)
		}
		c.Pairs = append(c.Pairs, p)
	}
	kinds := []string{MountKind, PortKind, PinKind}
	slices.SortFunc(c.Pairs, func(a, b Pair) int {
		return cmp.Or(cmp.Compare(slices.Index(kinds, a.Kind), slices.Index(kinds, b.Kind)), cmp.Compare(a.Name, b.Name))
	})
	return c
}

// heldOut collects the halves of a car that name the driveline, by kind and name.
// Of two ends at one port the first by path counts.
func heldOut(d *document.Document) map[[2]string]*held {
	found := map[[2]string]*held{}
	ports := map[string]*document.Port{}
	for i := range d.Ports {
		ports[d.Ports[i].Name] = &d.Ports[i]
	}
	enter := func(kind, ref string, h *held) {
		key := [2]string{kind, strings.TrimPrefix(ref, "driveline.")}
		if before := found[key]; before == nil || h.path < before.path {
			h.port = ports[ref]
			found[key] = h
		}
	}
	for i := range d.Joints {
		if j := &d.Joints[i]; j.Boundary && !strings.HasPrefix(j.Path, "driveline.") {
			enter(PortKind, j.Meet.Port.V, &held{path: j.Path, half: j.Here})
		}
	}
	for i := range d.Circuits {
		c := &d.Circuits[i]
		for _, end := range []*spec.Meet{&c.Circuit.From, &c.Circuit.To} {
			if c.Owner != theCar || !strings.HasPrefix(end.Port.V, "driveline.") {
				continue
			}
			h := &held{path: end.Path}
			if end.End.Told() {
				h.half = document.HalfOf(end.End)
			}
			enter(PortKind, end.Port.V, h)
		}
	}
	for i := range d.Mounts {
		m := &d.Mounts[i]
		enter(MountKind, m.Meets.V, &held{path: m.Path, mount: &m.CarMount})
	}
	for i := range d.Pins {
		if p := &d.Pins[i]; p.Here != nil {
			enter(PinKind, p.Connector+"."+p.Name, &held{path: p.Here.Path, pin: p.Here})
		}
	}
	return found
}

func alike(a, b *held, tol Tolerances) (Likeness, []string) {
	switch {
	case a.pin != nil:
		if one, other := pinText(a.pin), pinText(b.pin); one != other {
			return Differs, []string{one + " against " + other}
		}
		return Same, nil
	case a.mount != nil:
		return mountsAlike(a, b, tol)
	case a.half == nil || b.half == nil:
		return Unknown, []string{"not said: what one of the ends is"}
	}
	one, other := fullText(a.half), fullText(b.half)
	if one == other {
		return Same, nil
	}
	if meetsPort(b, a.port, tol) && meetsPort(a, b.port, tol) {
		return Carries, []string{one + " and " + other}
	}
	return Differs, []string{one + " against " + other}
}

// fullText is all of an end that decides what it meets.
func fullText(h *document.Half) string {
	text := []string{endText(h)}
	for _, word := range []string{h.Family.V, h.Key.V, h.Outer.V.Text} {
		if word != "" {
			text = append(text, word)
		}
	}
	return strings.Join(text, " ")
}

// meetsPort reports whether a half meets a port of the driveline in the other
// car; an empty bay asks for nothing.
func meetsPort(h *held, port *document.Port, tol Tolerances) bool {
	return port != nil && tol.Meet(h.half, &port.Half).Meets
}

func mountsAlike(a, b *held, tol Tolerances) (Likeness, []string) {
	var m Meeting
	m.flanges(a.mount.Holes, b.mount.Holes, tol)
	if one, other := a.mount.Bolts.Thread, b.mount.Bolts.Thread; one.Given() && other.Given() && !one.V.Equal(other.V) {
		m.Differs = append(m.Differs, "bolts "+one.V.String()+" against "+other.V.String())
	}
	switch {
	case len(m.Differs) > 0:
		return Differs, m.Differs
	case len(m.Unknown) > 0:
		return Unknown, m.Unknown
	}
	return Same, nil
}

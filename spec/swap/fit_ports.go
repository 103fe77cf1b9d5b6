package swap

import (
	"fmt"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
)

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

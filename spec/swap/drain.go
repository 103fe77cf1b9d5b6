package swap

import (
	"maps"
	"slices"
	"strings"

	"fitup/spec/document"
	"fitup/spec/unit"
)

// drains lets out what would run out of the joints, through the plugs there are.
func (p *planner) drains(s *sequence) {
	for _, service := range p.openLiquids() {
		catch := Catch{Fluid: service}
		for _, name := range p.cut.Open {
			from := p.joints[name]
			if from.joint != nil && from.joint.Service == service && wet(from.joint) {
				catch.At = append(catch.At, name)
				catch.Volume += from.there.Port.Spills.V.SI
				catch.Known = catch.Known || from.there.Port.Spills.Given()
			}
		}
		p.drainDriveline(s, service, &catch)
		p.drainCar(s, service, &catch)
		p.plan.Fluids = append(p.plan.Fluids, catch)
	}
}

// openLiquids are the liquids that the plan lets out, in a fixed order.
func (p *planner) openLiquids() []string {
	var found []string
	for _, service := range liquids {
		if p.opensService(service) && slices.ContainsFunc(p.cut.Open, func(name string) bool {
			j := p.joints[name].joint
			return j != nil && j.Service == service && wet(j)
		}) {
			found = append(found, service)
		}
	}
	return found
}

func (p *planner) drainDriveline(s *sequence, service string, catch *Catch) {
	if service == "engine oil" {
		catch.Refill = p.dl.Engine.OilCapacity.V.SI
	}
	fluid := p.dl.Fluids.Named[strings.ReplaceAll(service, " ", "-")]
	if fluid == nil {
		return
	}
	catch.Grade, catch.Stays = fluid.Grade.V, fluid.Stays.V.SI
	catch.Refill = fluid.Fill.Or(unit.Quantity{SI: catch.Refill}).SI
	if drain := p.dl.Drains.Named[fluid.Drain.V]; drain != nil {
		catch.Drains = append(catch.Drains, drain.Path+".plug")
		if fluid.Fill.Given() && fluid.Stays.Given() {
			catch.Volume, catch.Known = fluid.Fill.V.SI-fluid.Stays.V.SI, true
		}
		p.drain(s, service, drain.Path+".plug", under)
		if drain.At.Given() {
			step := &s.steps[len(s.steps)-1]
			step.Notes = append(step.Notes, "the plug is at "+drain.At.V.String()+" from the driveline's datum")
		}
	}
}

// drainCar opens the drain of a radiator, tank or cooler of the car from which a
// joint that is opened would run dry.
func (p *planner) drainCar(s *sequence, service string, catch *Catch) {
	for _, path := range slices.Sorted(maps.Keys(p.parts)) {
		part := p.parts[path]
		if !p.feedsOpen(path, service) {
			continue
		}
		if part.Contents.Given() && !slices.Contains(catch.Now, part.Contents.V) {
			catch.Now = append(catch.Now, part.Contents.V)
		}
		if !part.Drain.Told() {
			continue
		}
		catch.Drains = append(catch.Drains, part.Drain.Path)
		p.drain(s, service, part.Drain.Path, p.stationOf(part.Behind.V, part.Place.V))
	}
}

// feedsOpen reports whether a line from a part to a joint that is opened carries
// a service.
func (p *planner) feedsOpen(part, service string) bool {
	for i := range p.d.Lines {
		l := &p.d.Lines[i]
		if l.Service != service || !slices.ContainsFunc(p.cut.Open, func(name string) bool { return strings.HasPrefix(name, l.Path+".") }) {
			continue
		}
		for _, end := range []*document.LineEnd{l.From, l.To} {
			if end != nil && end.Port != nil && strings.HasPrefix(end.Port.Path, part+".ports.") {
				return true
			}
		}
	}
	return false
}

// drained is what a drain plug is on, as it is said: the sump, the oil tank.
func drained(plug string) string {
	plug, _ = strings.CutPrefix(plug, "driveline.drains.")
	plug = plug[:strings.LastIndex(plug, ".")]
	return plain(plug)
}

// atDriveline reports whether a drain plug goes with the driveline.
func atDriveline(plug string) bool { return strings.HasPrefix(plug, "driveline.") }

func (p *planner) drain(s *sequence, service, plug, station string) {
	name := "drain " + plug
	step := Step{Name: name, Do: "drain the " + service + " at the " + drained(plug) + " into a clean tray", Station: station, Subject: plug}
	p.fastener(&step, plug)
	if service == "fuel" {
		step.Do = "drain the fuel at the " + drained(plug) + " into an approved container, earthed to the tank, outdoors"
	}
	s.add(step)
	for _, open := range p.cut.Open {
		if j := p.joints[open].joint; j != nil && j.Service == service {
			s.late(name, "open "+open, "what is drained does not run over the hands")
		}
	}
}

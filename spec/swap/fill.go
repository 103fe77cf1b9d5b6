package swap

import (
	"slices"
	"strings"
)

// fill fills what was let out, once everything that carries it is joined and its
// plugs are back.
func (p *planner) fill(s *sequence) {
	p.addEmptied()
	for _, catch := range p.plan.Fluids {
		service := catch.Fluid
		name := "fill " + service
		step := Step{Name: name, Do: "fill with " + service + ", and look at every joint that was opened", Station: engineBay, Subject: service}
		switch service {
		case "coolant":
			step.Do = "fill with coolant, heater open, bled at its highest point; level again when it is cold"
		case "clutch fluid", "brake fluid":
			step.Do = "fill with " + service + " from a new bottle and bleed"
		case "fuel":
			step.Do = "fill with the fuel that the map was made for; what was in the tank before is out, or the same"
			step.Station = p.stationOf(nil, p.car.Fuel.Cell.Place.V)
			step.Notes = p.bottle()
		}
		step.Notes = append(step.Notes, p.unclosed(service)...)
		s.add(step)
		s.before(stepHook, name, "the driveline has to be where it stays")
		for _, open := range p.cut.Open {
			if j := p.joints[open].joint; j != nil && j.Service == service {
				s.before("join "+open, name, "it would run out")
			}
		}
		for _, plug := range catch.Drains {
			p.plugged(s, plug, name)
		}
	}
}

// unclosed names the ports of the driveline that a fluid would run out of.
func (p *planner) unclosed(service string) []string {
	var notes []string
	for i := range p.d.Ports {
		port := &p.d.Ports[i]
		shut := len(port.Joins) > 0 || port.Capped.Given() || port.Open.V || port.Purpose.Given()
		if port.Crosses && port.Service == service && !shut {
			notes = append(notes, plain(port.Name)+" meets nothing on this car: join it or cap it first")
		}
	}
	return notes
}

// addEmptied adds what ran out of the driveline in the car before, where no joint
// of this one lets it out.
func (p *planner) addEmptied() {
	for _, catch := range p.options.Emptied {
		if slices.ContainsFunc(p.plan.Fluids, func(c Catch) bool { return c.Fluid == catch.Fluid }) {
			continue
		}
		catch.Drains = slices.DeleteFunc(slices.Clone(catch.Drains), func(plug string) bool { return !atDriveline(plug) })
		if len(catch.Drains) > 0 {
			catch.At, catch.Now = nil, nil
			p.plan.Fluids = append(p.plan.Fluids, catch)
		}
	}
}

// plugged puts a drain plug back: of the driveline before it is lifted in, where it
// is reached best.
func (p *planner) plugged(s *sequence, plug, filled string) {
	step := Step{Name: "close " + plug, Do: "put the drain plug of the " + drained(plug) + " back, with a new washer", Subject: plug}
	if atDriveline(plug) {
		step.Station = bench
	} else {
		part := p.parts[strings.TrimSuffix(plug, ".drain")]
		step.Station = p.stationOf(part.Behind.V, part.Place.V)
	}
	p.tighten(&step, plug)
	s.add(step)
	s.before(step.Name, filled, "it would run out")
	if atDriveline(plug) {
		s.before(step.Name, stepTake, "it is reached best on the dolly")
	}
}

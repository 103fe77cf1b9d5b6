package swap

import (
	"slices"
	"strings"

	"fitup/spec"
)

// A store is something stored, with the step that lets it go.
type store struct {
	step, station string
	Energy
}

// stores lists what is stored in the car, in the order that it is let go in.
func (p *planner) stores() []store {
	var all []store
	if f := p.car.Safety.Plumbed; f.Told() {
		all = append(all, store{stepPin, cabin, Energy{
			What: "the fire system's bottle", LetGo: "put the pin in the fire system, and hang a tag where the driver sits",
			Proved: "the pin is in and its tag hangs out", Subject: f.Path,
		}})
	}
	switch {
	case !p.opensService("fuel"):
	case p.dl.Engine.Injectors.State == spec.None:
		all = append(all, store{stepFuelShut, engineBay, Energy{
			What: "fuel that runs down from the tank", LetGo: "shut the fuel off at the tank, or clamp the line there, and open a union under a rag",
			Proved: "no more than drips", Subject: "driveline.ports", Running: true,
		}})
	default:
		all = append(all, store{stepRail, engineBay, Energy{
			What: "fuel pressure in the rail", LetGo: "let the rail pressure down: the pump's fuse out, and the engine run until it stalls or a joint opened under a rag",
			Proved: "the gauge reads nothing, or fuel only drips", Subject: "driveline.ports", Running: true,
		}})
	}
	if slices.ContainsFunc([]string{"coolant", "exhaust", "engine oil", "gearbox oil"}, p.opensService) {
		all = append(all, store{stepCool, outsideFront, Energy{
			What: "heat, and pressure under the cap", LetGo: "leave it until a hand can rest on it, 40 to 50 C, before the cap or a band is touched",
			Proved: "the cap comes off without a hiss", Subject: "cooling", Running: true,
		}})
	}
	if acc := p.car.Oil.Accumulator; acc.Told() {
		what, letGo := "oil pressure in the accumulator", "let the accumulator down with the engine stopped"
		if acc.Pressure.Given() {
			what += ", charged to " + acc.Pressure.V.String()
		}
		if acc.Valve.Given() {
			letGo += ", by its valve: " + acc.Valve.V
		}
		all = append(all, store{stepAccumulator, engineBay, Energy{What: what, LetGo: letGo, Proved: "its gauge reads nothing", Subject: acc.Path}})
	}
	if battery := p.car.Electrics.Battery; battery.Told() {
		all = append(all, store{stepBattery, p.batteryStation(), Energy{
			What: "the battery", LetGo: "isolator open, then the earth lead off the battery and tied away",
			Proved: "no voltage from the starter stud to the block", Subject: battery.Path,
		}})
	}
	for _, what := range p.car.Support.HeldBy.V {
		if strings.Contains(what, "air jack") {
			all = append(all, store{stepJacks, outsideFront, Energy{
				What: "air in the jacks", LetGo: "car on its stands, air let out of the jacks, line unplugged",
				Proved: "no jack carries anything", Subject: "support.held-by",
			}})
		}
	}
	return all
}

// makeSafe lists what is stored, with a step for each that has to be let go.
func (p *planner) makeSafe(s *sequence) {
	for _, each := range p.stores() {
		p.plan.Energy = append(p.plan.Energy, each.Energy)
		s.add(each.letGo())
	}
}

func (st store) letGo() Step {
	return Step{Name: st.step, Do: st.LetGo, Station: st.station, Subject: st.Subject, Notes: []string{"proved: " + st.Proved}}
}

// batteryStation is where the builder stands to reach the battery.
func (p *planner) batteryStation() string { return p.stationOf(nil, p.car.Electrics.Battery.Place.V) }

// prepare makes a car safe whose bay is empty, before a driveline is lifted into
// it. What only a driveline that has run stores is not there.
func (p *planner) prepare(s *sequence) {
	for _, each := range p.stores() {
		if !each.Running {
			s.add(each.letGo())
		}
	}
	s.add(p.stood())
	s.each(stepPin, p.inReachOfPull, "an arm against its pull sets the fire system off")
	s.before(stepStand, stepJacks, "something else has to carry the car first")
	s.before(stepStand, stepTake, "the stands carry the driveline once it is in")
	s.before(stepJacks, stepTake, "nothing is held up by air")
	for _, first := range []string{stepPin, stepBattery, stepAccumulator} {
		s.before(first, stepIn, "it is reached while the bay is empty")
	}
}

// inReachOfPull reports whether a step is done where an arm may catch the pull of
// the fire system.
func (p *planner) inReachOfPull(step Step) bool {
	return step.Station == engineBay && !step.Hold || strings.HasPrefix(step.Name, "off ")
}

// company is what somebody who works alone is asked.
func (p *planner) company() []string {
	if p.c.Shop != nil && p.c.Shop.Shop.Shop.Works.V == "with a second person" {
		return nil
	}
	return []string{"who knows that you are under it? a phone within reach on the floor"}
}

// floor is what the car stands on: this car's own word, or the shop's.
func (p *planner) floor() []string {
	floor := p.car.Support.Floor.V
	if floor == "" && p.c.Shop != nil {
		floor = p.c.Shop.Shop.Shop.Floor.V
	}
	if floor == "" {
		return nil
	}
	return []string{"floor: " + floor}
}

// bottle is where the extinguisher is.
func (p *planner) bottle() []string {
	if p.c.Shop != nil && p.c.Shop.Shop.Shop.Extinguisher.Given() {
		return []string{"extinguisher: " + p.c.Shop.Shop.Shop.Extinguisher.V}
	}
	return nil
}

// opensService reports whether the plan opens a joint that carries something.
func (p *planner) opensService(service string) bool {
	return slices.ContainsFunc(p.cut.Open, func(name string) bool {
		j := p.joints[name].joint
		return j != nil && j.Service == service
	})
}

// standing puts the car up and asks for a look before anybody goes under it.
func (p *planner) standing(s *sequence) {
	s.add(p.stood())
	s.add(Step{Name: stepUnder, Do: "a firm push by hand with nobody under; nothing shifts", Station: under, Subject: "support", Hold: true, Notes: p.company()})
}

func (p *planner) stood() Step {
	return Step{Name: stepStand, Do: "jack the car up and set it down on its stands; wheels that stay down are chocked", Station: outsideFront, Subject: "support", Notes: p.floor()}
}

// safeFirst puts what makes it safe before what it makes safe.
func (p *planner) safeFirst(s *sequence) {
	s.before(stepStand, stepTake, "the stands carry it while the hook pulls")
	s.each(stepCool, func(step Step) bool { return strings.HasPrefix(step.Name, "drain ") }, "what is hot burns, and flashes to steam when the pressure goes")
	s.before(stepStand, stepJacks, "something else has to carry the car first")
	s.before(stepJacks, stepUnder, "it is looked at as it stands, with nothing held up by air")
	s.before(stepStand, stepUnder, "it is looked at as it stands")
	s.each(stepUnder, at(under), "nobody goes under before the stands are looked at")
	s.each(stepPin, p.inReachOfPull, "an arm against its pull sets the fire system off")
	s.each(stepBattery, func(step Step) bool { return opens(step) || strings.HasPrefix(step.Name, "drain ") },
		"a live lead makes a spark, and a fan or pump can start")
	s.before(stepBattery, stepFuelShut, "a live lead makes a spark")
	s.before(stepRail, stepCool, "the engine runs for it")
	s.before(stepRail, stepStand, "the engine runs for it: on its wheels, and with nobody under")
	s.before(stepRail, stepBattery, "the pump is shut off first, so that nothing builds the pressure up again")
	for _, name := range p.cut.Open {
		j := p.joints[name].joint
		if j == nil {
			continue
		}
		switch j.Service {
		case "fuel":
			s.before(stepRail, "open "+name, "fuel at pressure sprays")
			s.before(stepFuelShut, "open "+name, "it runs down from the tank")
		case "exhaust":
			s.before(stepCool, "open "+name, "it burns")
		case "coolant":
			s.before(stepCool, "open "+name, "hot coolant flashes to steam when the pressure goes")
		case "engine oil":
			s.before(stepAccumulator, "open "+name, "oil at pressure sprays")
		}
	}
}

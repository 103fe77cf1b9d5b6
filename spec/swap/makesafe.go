package swap

import (
	"slices"
	"strings"
)

// makeSafe lists what is stored, with a step for each that has to be let go.
func (p *planner) makeSafe(s *sequence) {
	energy := func(name, station, subject, what, letGo, proved string) {
		p.plan.Energy = append(p.plan.Energy, Energy{What: what, LetGo: letGo, Proved: proved, Subject: subject})
		s.add(Step{Name: name, Do: letGo, Station: station, Subject: subject, Notes: []string{"proved: " + proved}})
	}
	if f := p.car.Safety.Plumbed; f.Told() {
		energy(stepPin, cabin, f.Path, "the fire system's bottle", "put the pin in the fire system, and hang a tag where the driver sits", "the pin is in and its tag hangs out")
	}
	if p.opensService("fuel") {
		energy(stepRail, engineBay, "driveline.ports", "fuel pressure in the rail", "let the rail pressure down: the pump's fuse out, and the engine run until it stalls or a joint opened under a rag", "the gauge reads nothing, or fuel only drips")
	}
	if slices.ContainsFunc([]string{"coolant", "exhaust", "engine oil", "gearbox oil"}, p.opensService) {
		energy(stepCool, outsideFront, "cooling", "heat, and pressure under the cap", "leave it until a hand can rest on it, 40 to 50 C, before the cap or a band is touched", "the cap comes off without a hiss")
	}
	if acc := p.car.Oil.Accumulator; acc.Told() {
		what, letGo := "oil pressure in the accumulator", "let the accumulator down with the engine stopped"
		if acc.Pressure.Given() {
			what += ", charged to " + acc.Pressure.V.String()
		}
		if acc.Valve.Given() {
			letGo += ", by its valve: " + acc.Valve.V
		}
		energy(stepAccumulator, engineBay, acc.Path, what, letGo, "its gauge reads nothing")
	}
	if battery := p.car.Electrics.Battery; battery.Told() {
		energy(stepBattery, p.stationOf(nil, battery.Place.V), battery.Path, "the battery", "isolator open, then the earth lead off the battery and tied away", "no voltage from the starter stud to the block")
	}
	for _, what := range p.car.Support.HeldBy.V {
		if strings.Contains(what, "air jack") {
			energy(stepJacks, outsideFront, "support.held-by", "air in the jacks", "car on its stands, air let out of the jacks, line unplugged", "no jack carries anything")
		}
	}
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
	s.add(Step{Name: stepStand, Do: "jack the car up and set it down on its stands; wheels that stay down are chocked", Station: outsideFront, Subject: "support", Notes: p.floor()})
	s.add(Step{Name: stepUnder, Do: "a firm push by hand with nobody under; nothing shifts", Station: under, Subject: "support", Hold: true, Notes: p.company()})
}

// safeFirst puts what makes it safe before what it makes safe.
func (p *planner) safeFirst(s *sequence) {
	s.before(stepStand, stepTake, "the stands carry it while the hook pulls")
	s.each(stepCool, func(step Step) bool { return strings.HasPrefix(step.Name, "drain ") }, "what is hot burns, and flashes to steam when the pressure goes")
	s.before(stepStand, stepJacks, "something else has to carry the car first")
	s.before(stepJacks, stepUnder, "it is looked at as it stands, with nothing held up by air")
	s.before(stepStand, stepUnder, "it is looked at as it stands")
	s.each(stepUnder, at(under), "nobody goes under before the stands are looked at")
	s.each(stepPin, func(step Step) bool {
		return step.Station == engineBay && !step.Hold || strings.HasPrefix(step.Name, "off ")
	}, "an arm against the pull sets it off")
	s.each(stepBattery, func(step Step) bool { return opens(step) || strings.HasPrefix(step.Name, "drain ") },
		"a live lead makes a spark, and a fan or pump can start")
	s.before(stepRail, stepBattery, "the pump is shut off first, so that nothing builds the pressure up again")
	for _, name := range p.cut.Open {
		j := p.joints[name].joint
		if j == nil {
			continue
		}
		switch j.Service {
		case "fuel":
			s.before(stepRail, "open "+name, "fuel at pressure sprays")
		case "exhaust":
			s.before(stepCool, "open "+name, "it burns")
		case "coolant":
			s.before(stepCool, "open "+name, "hot coolant flashes to steam when the pressure goes")
		case "engine oil":
			s.before(stepAccumulator, "open "+name, "oil at pressure sprays")
		}
	}
}

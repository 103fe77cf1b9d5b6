package swap

import (
	"fmt"
	"slices"
	"strings"
)

func joins(s Step) bool { return strings.HasPrefix(s.Name, "join ") }

// Names of the steps of the refit that others are asked to come before or after.
const (
	stepIn        = "lift in"
	stepFilled    = "levels"
	stepLeads     = "battery on"
	stepArm       = "arm the fire system"
	stepClutch    = "bleed and measure the clutch"
	stepCrank     = "hold: before cranking"
	stepPressure  = "crank for oil pressure"
	stepFuelHold  = "hold: before fuel"
	stepTight     = "fuel tightness"
	stepStart     = "hold: before first start"
	stepRun       = "first start"
	stepHeat      = "hold: after the heat cycle"
	stepCold      = "cold re-check"
	stepSetUp     = "set-up"
	stepTrailer   = "hold: before the trailer"
	stepUnderBack = "hold: before going under again"
)

// refit puts the steps of putting the driveline in together: the removal
// backwards, then filling, proving and starting.
func (p *planner) refit() *sequence {
	s := &sequence{}
	s.add(Step{Name: stepTake, Do: "sling, lift points and stands looked at; nobody under it", Station: bench, Subject: "driveline.lift", Hold: true})
	s.add(Step{Name: stepIn, Do: "lift it in and line it up; no bolt is pulled to bring it there", Station: engineBay, Subject: "fits." + p.d.Given.Driveline})
	s.add(Step{Name: stepHook, Do: "every mount bolt is in by hand and run down; nothing hangs from the hook", Station: engineBay, Subject: "mounts", Hold: true})
	s.add(Step{Name: stepUnderBack, Do: "stands looked at once more with the driveline in; a firm push by hand with nobody under", Station: under, Subject: "support", Hold: true})
	s.before(stepTake, stepIn, "it hangs from then on")
	s.before(stepIn, stepHook, "the mounts have to carry it")
	s.before(stepHook, stepUnderBack, "the load on the stands has changed")
	for _, name := range slices.Backward(p.cut.Open) {
		p.joining(s, name)
	}
	for _, name := range slices.Backward(p.cut.Off) {
		p.panelOn(s, name)
	}
	for _, name := range p.cut.Open {
		for _, first := range p.joints[name].behind {
			s.before("join "+name, "on "+first, "it is behind "+plain(first))
		}
	}
	for _, access := range p.net.Access {
		for _, outer := range access.Behind {
			s.before("on "+access.Name, "on "+outer, plain(access.Name)+" is behind "+plain(outer))
		}
		for _, name := range p.comesWith(access.Name) {
			if slices.Contains(p.cut.Off, access.Name) {
				s.before("on "+access.Name, "join "+name, "the hose goes on with it")
			}
		}
	}
	for _, name := range p.heavyMounts() {
		mount := "join " + strings.TrimPrefix(name, "open ")
		s.before(stepIn, mount, "there is nothing to bolt yet")
		s.before(mount, stepHook, "the mounts have to carry it")
	}
	light := func(step Step) bool { return joins(step) && !p.carries(step.Name) }
	s.each(stepHook, light, "the driveline has to be where it stays")
	s.each(stepUnderBack, func(step Step) bool { return at(under)(step) && !p.carries(step.Name) }, "nobody goes under before the stands are looked at")
	p.fill(s)
	p.start(s)
	return s
}

// carries reports whether a step of the refit does up what carries the weight.
func (p *planner) carries(step string) bool {
	return slices.Contains(p.heavyMounts(), "open "+strings.TrimPrefix(step, "join "))
}

// joining makes one joint again.
func (p *planner) joining(s *sequence, name string) {
	from := p.joints[name]
	step := Step{Name: "join " + name, Subject: name, Station: p.stationOf(from.behind, "")}
	switch {
	case from.mount != nil:
		step.Do = "bolt up " + from.mount.Name + " mount"
		step.Notes = append(step.Notes, p.besideNotUnder(step.Station, from.mount)...)
		p.tighten(&step, from.mount.Path+".bolts")
	case from.line != nil:
		step.Do = "clip " + plain(from.line.Path) + " back"
	case from.bolts != nil:
		step.Do = "bolt " + plain(from.part) + " on"
		if from.bolts.Told() {
			p.tighten(&step, from.bolts.Path)
		}
		if pump := p.dl.Pumps.Named[strings.TrimPrefix(from.part, "driveline.pumps.")]; pump != nil && pump.Driven.Given() {
			step.Notes = append(step.Notes, "driven by "+pump.Driven.V+": tension it")
		}
	case from.circuit != nil:
		step.Do = "put the wire on " + plain(from.there.Name)
		if from.end.Torque.Given() {
			p.torque(&step, Torque{Subject: from.end.Path, Torque: from.end.Torque.V})
		}
	default:
		p.makeJoint(&step, from)
	}
	s.add(step)
}

func (p *planner) makeJoint(step *Step, from *parted) {
	j := from.joint
	step.Do = fmt.Sprintf("join %s to %s", plain(j.On), plain(from.there.Name))
	p.loosened(step, j)
	switch j.Kind {
	case "plug":
		step.Do = "plug in " + j.Name
	case "shaft":
		step.Do = "bolt " + plain(j.On) + " to " + plain(from.there.Name) + ", to its marks"
		p.tighten(step, j.On+".bolts")
	}
	if j.Meet.Torque.Given() {
		p.torque(step, Torque{Subject: j.Path, Torque: j.Meet.Torque.V, Threads: j.Wet})
	}
	p.renewed(j)
}

// panelOn puts back what was in the way.
func (p *planner) panelOn(s *sequence, name string) {
	step := Step{Name: "on " + name, Do: "put " + plain(name) + " back", Station: engineBay, Subject: name}
	if panel := p.car.Access.Named[name]; panel != nil {
		step.Subject = panel.Path
		if panel.Station.Given() {
			step.Station = panel.Station.V
		}
		p.tighten(&step, panel.Path+".held")
	} else if part := p.parts[name]; part != nil {
		step.Station = p.stationOf(p.behind(name), part.Place.V)
		p.tighten(&step, part.Path+".held")
		for _, j := range p.jointsOff(name) {
			step.Notes = append(step.Notes, "closes "+j.Path)
			p.loosened(&step, j)
			if j.Meet.Torque.Given() {
				p.torque(&step, Torque{Subject: j.Path, Torque: j.Meet.Torque.V, Threads: j.Wet})
			}
			p.renewed(j)
		}
	}
	s.add(step)
	s.before(stepHook, step.Name, "the driveline is in")
}

// fill fills what was let out, once everything that carries it is joined.
func (p *planner) fill(s *sequence) {
	for _, service := range p.openLiquids() {
		name := "fill " + service
		step := Step{Name: name, Do: "fill with " + service + ", and look at every joint that was opened", Station: engineBay, Subject: service}
		switch service {
		case "coolant":
			step.Do = "fill with coolant, heater open, bled at its highest point; level again when it is cold"
		case "clutch fluid", "brake fluid":
			step.Do = "fill with " + service + " from a new bottle and bleed"
		case "fuel":
			step.Do = "fill with the fuel that the map was made for; what was in the tank before is out, or the same"
		}
		s.add(step)
		for _, open := range p.cut.Open {
			if j := p.joints[open].joint; j != nil && j.Service == service {
				s.before("join "+open, name, "it would run out")
			}
		}
		for _, catch := range p.plan.Fluids {
			if catch.Fluid != service {
				continue
			}
			for _, plug := range catch.Drains {
				step.Notes = append(step.Notes, "drain plug in first, with a new washer: "+plug)
				p.tighten(&step, plug)
			}
		}
		s.steps[len(s.steps)-1] = step
	}
}

// start proves and starts the engine, and looks again.
func (p *planner) start(s *sequence) {
	steps := []Step{
		{Name: stepFilled, Do: "levels: engine oil, coolant, gearbox oil, clutch and brake fluid, steering", Station: engineBay, Notes: p.tankLevel()},
		{Name: stepLeads, Do: "earth strap on the block, then the battery on; the isolator opens and closes everything it should", Station: outsideRear, Subject: "electrics.battery"},
		{Name: stepClutch, Do: "clutch bled if it was opened; its travel measured at the fork or bearing: it frees, and stops short of its limit", Station: cabin, Subject: "clutch"},
		{Name: stepCrank, Do: "plugs out or fuel and spark off, out of gear, nobody at the belts, extinguisher in hand", Station: engineBay, Hold: true, Notes: p.bottle()},
		{Name: stepPressure, Do: "crank in short goes until there is oil pressure; stop if there is none", Station: cabin, Subject: "driveline.engine"},
		{Name: stepFuelHold, Do: "every fuel joint done up and looked at; extinguisher in hand; air moving", Station: engineBay, Hold: true, Notes: p.bottle()},
		{Name: stepTight, Do: "pump on, engine off, two minutes: look at every fuel joint that was opened", Station: engineBay, Subject: "fuel"},
		{Name: stepStart, Do: "not in gear on stands; throttle shuts by itself; doors open; somebody at the isolator", Station: cabin, Hold: true},
		{Name: stepRun, Do: "start; oil pressure within seconds or off; leaks; charging; the isolator stops the running engine; fan cuts in", Station: cabin, Subject: "driveline.engine", Notes: p.running()},
		{Name: stepHeat, Do: "stopped and left until it is cold", Station: engineBay, Hold: true},
		{Name: stepCold, Do: "the joints of the cold list, one by one; coolant level again", Station: engineBay},
		{Name: stepSetUp, Do: "ride height, corner weights, toe, shaft angles, brake balance", Station: outsideFront, Subject: "set-up"},
		{Name: stepTrailer, Do: "panels shut, fire system armed, wheel nuts to torque, nothing drips", Station: outsideFront, Hold: true},
	}
	if p.car.Safety.Plumbed.Told() {
		steps = append(steps, Step{Name: stepArm, Do: "take the pin out of the fire system, and its tag off", Station: cabin, Subject: p.car.Safety.Plumbed.Path})
	}
	for _, step := range steps {
		s.add(step)
	}
	s.all(func(step Step) bool { return strings.HasPrefix(step.Name, "fill ") }, stepFilled, "there has to be something in it")
	s.all(func(step Step) bool { return joins(step) && !p.carries(step.Name) }, stepLeads, "no lead is live while joints are made")
	for _, pair := range [][3]string{
		{stepFilled, stepCrank, "a dry pump picks up nothing"},
		{stepLeads, stepCrank, "it turns on the battery"},
		{stepLeads, stepClutch, "joined and dry first"},
		{stepClutch, stepStart, "a clutch that drags moves the car"},
		{stepCrank, stepPressure, "looked at before it turns"},
		{stepPressure, stepFuelHold, "oil before fire"},
		{stepFuelHold, stepTight, "looked at before there is pressure"},
		{stepTight, stepStart, "no spark before it is tight"},
		{stepStart, stepRun, "looked at before it runs"},
		{stepRun, stepHeat, "it has to have been hot"},
		{stepHeat, stepCold, "what was hot settles, and is judged cold"},
		{stepCold, stepSetUp, "the car is whole"},
		{stepSetUp, stepTrailer, "the last look"},
		{stepRun, stepArm, "nobody reaches past the pull any more"},
		{stepArm, stepTrailer, "it must be armed before the car goes"},
	} {
		s.before(pair[0], pair[1], pair[2])
	}
	s.all(func(step Step) bool { return strings.HasPrefix(step.Name, "on ") }, stepTrailer, "the car is whole")
	s.all(at(under), stepStart, "nobody is under a car that starts")
}

// running is what to wait for at the first start.
func (p *planner) running() []string {
	if open := p.dl.Engine.Thermostat; open.Given() {
		return []string{"until the thermostat has opened, at " + open.V.String()}
	}
	return nil
}

// tankLevel is how a dry-sump tank is read.
func (p *planner) tankLevel() []string {
	if fill := p.car.Oil.Tank.Fill; fill.Given() {
		return []string{"the oil tank holds " + fill.V.String() + " at its mark, and is read running and hot"}
	}
	return nil
}

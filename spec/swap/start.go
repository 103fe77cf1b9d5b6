package swap

import (
	"slices"
	"strings"

	"fitup/spec"
)

// Names of the steps from the last joint to the trailer.
const (
	stepFilled   = "levels"
	stepLeads    = "battery on"
	stepArm      = "arm the fire system"
	stepClutch   = "bleed and measure the clutch"
	stepCrank    = "hold: before cranking"
	stepPressure = "crank for oil pressure"
	stepFuelHold = "hold: before fuel"
	stepTight    = "fuel tightness"
	stepStart    = "hold: before first start"
	stepRun      = "first start"
	stepHeat     = "hold: after the heat cycle"
	stepCold     = "cold re-check"
	stepSetUp    = "set-up"
	stepTrailer  = "hold: before the trailer"
)

// start proves and starts the engine, and looks again.
func (p *planner) start(s *sequence) {
	steps := []Step{
		{Name: stepFilled, Do: "levels: engine oil, coolant, gearbox oil, clutch and brake fluid, steering", Station: engineBay, Notes: p.tankLevel()},
		{Name: stepLeads, Do: "earth strap on the block, then the battery on; the isolator opens and closes everything it should", Station: p.batteryStation(), Subject: "electrics.battery"},
		{Name: stepClutch, Do: p.freed(), Station: cabin, Subject: "clutch"},
		{Name: stepCrank, Do: "plugs out or fuel and spark off, out of gear, nobody at the belts, extinguisher in hand", Station: engineBay, Hold: true, Notes: p.bottle()},
		{Name: stepPressure, Do: "crank in short goes until there is oil pressure; stop if there is none", Station: cabin, Subject: "driveline.engine"},
		{Name: stepFuelHold, Do: "every fuel joint done up and looked at; extinguisher in hand; air moving", Station: engineBay, Hold: true, Notes: p.bottle()},
		{Name: stepTight, Do: p.tight(), Station: engineBay, Subject: "fuel"},
		{Name: stepStart, Do: "not in gear on stands; throttle shuts by itself; doors open; somebody at the isolator", Station: cabin, Hold: true},
		{Name: stepRun, Do: "start; oil pressure within seconds or off; leaks; charging; the isolator stops the running engine; fan cuts in", Station: cabin, Subject: "driveline.engine", Notes: p.running()},
		{Name: stepHeat, Do: "stopped and left until it is cold", Station: engineBay, Hold: true},
		{Name: stepCold, Do: "the joints of the cold list, one by one; coolant level again", Station: engineBay},
		{Name: stepSetUp, Do: "ride height, corner weights, toe, shaft angles, brake balance", Station: outsideFront, Subject: "set-up"},
		{Name: stepTrailer, Do: "panels shut, wheel nuts to torque, nothing drips", Station: outsideFront, Hold: true},
	}
	if p.car.Safety.Plumbed.Told() {
		steps[len(steps)-1].Do = "panels shut, fire system armed, wheel nuts to torque, nothing drips"
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
	late := p.coversLate()
	s.all(func(step Step) bool { return at(under)(step) && !late(step) }, stepStart, "nobody is under a car that starts")
	s.each(stepCold, late, "what is behind it is looked at first, run and cold")
	s.all(late, stepSetUp, "the car is whole")
}

// freed is how the clutch is proved to free.
func (p *planner) freed() string {
	if p.car.Clutch.Master.State == spec.None {
		return "free play set at the pedal; the clutch's travel measured at the fork: it frees, and stops short of its limit"
	}
	return "clutch bled if it was opened; its travel measured at the fork or bearing: it frees, and stops short of its limit"
}

// drivenPump reports whether fuel flows only while the engine turns.
func (p *planner) drivenPump() bool { return p.car.Fuel.Pump.State == spec.None }

// tight is how the fuel joints are proved, before there is a spark.
func (p *planner) tight() string {
	if p.drivenPump() {
		return "ignition off, cranked until the float chambers are full: look at every fuel joint that was opened, and once more at idle"
	}
	return "pump on, engine off, two minutes: look at every fuel joint that was opened"
}

// coversLate picks the panels that stay off until the car has run: those with a
// joint behind them that is looked at again, and nothing but panels before them.
func (p *planner) coversLate() func(Step) bool {
	again := func(name string) bool {
		from := p.joints[name]
		return from.mount != nil || from.joint != nil && (wet(from.joint) || from.joint.Kind == "pipe")
	}
	covers := map[string]bool{}
	for _, name := range p.cut.Open {
		if !again(name) {
			continue
		}
		for _, panel := range p.closure(p.joints[name].behind) {
			covers[panel] = true
		}
	}
	panel := func(name string) bool { return p.car.Access.Named[name] != nil }
	return func(step Step) bool {
		name, on := strings.CutPrefix(step.Name, "on ")
		return on && covers[name] && !slices.ContainsFunc(p.closure([]string{name}), func(outer string) bool { return !panel(outer) })
	}
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

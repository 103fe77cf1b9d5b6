package swap

import (
	"cmp"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
)

// lists fills in what is not steps.
func (p *planner) lists() {
	fuel := "fuel joints tight at pressure, two minutes, engine off"
	if p.drivenPump() {
		fuel = "fuel joints dry with the float chambers full, and again at idle"
	}
	p.plan.Checks = []Check{
		{"oil pressure by cranking, before fuel and spark", "driveline.engine"},
		{fuel, "fuel"},
		{"isolator stops the running engine", "electrics.isolator"},
		{"charging voltage", "driveline.ports.alternator"},
		{"throttle shuts by itself", "driveline.engine.throttle"},
		{"clutch frees, and stops short of its limit", "clutch"},
		{"levels, cold", "fluids"},
	}
	for _, name := range p.cut.Open {
		from := p.joints[name]
		switch {
		case from.mount != nil:
			p.plan.Cold = append(p.plan.Cold, Check{"mount bolts", from.mount.Path + ".bolts"})
		case from.joint != nil && from.there.Half.Form.V == "V-band":
			p.plan.Cold = append(p.plan.Cold, Check{"band, and that its flanges touch", name})
		case from.joint != nil && from.joint.Kind == "shaft":
			p.plan.Cold = append(p.plan.Cold, Check{"shaft bolts", from.joint.On + ".bolts"})
		case from.joint != nil && wet(from.joint):
			p.plan.Cold = append(p.plan.Cold, Check{"dry outside", name})
		}
	}
	for i := range p.d.Fastenings {
		f := &p.d.Fastenings[i]
		if f.Hot != nil && *f.Hot > hotJoint && !f.Once.V && strings.HasPrefix(f.Path, "driveline.") {
			p.plan.Cold = append(p.plan.Cold, Check{f.Holds, f.Path})
		}
	}
	p.setUp()
	p.event()
	p.plan.Finish = []Check{
		{"stands or wheels: what holds it now that the driveline is out; chocked", "support"},
		{"every open end capped and named", "lines"},
		{"isolator open, earth lead off; ends of wires insulated", "electrics"},
		{"brakes hold without their servo, or it is tagged", "brakes"},
		{"its balance has moved: who may move it, and how", "weighing"},
		{"drained fluids named on their cans", "fuel"},
	}
	if f := p.car.Safety.Plumbed; f.Told() {
		p.plan.Finish = append(p.plan.Finish, Check{"fire system pinned, and its tag says so; armed again before anybody fuels or drives it", f.Path})
	}
	p.plan.Inspect = []Check{
		{"rear seal, spigot bearing, release bearing and its guide", "driveline.clutch"},
		{"clutch thickness and fingers; flywheel bolts; starter teeth", "driveline.clutch"},
		{"filter cut open, drain plug's magnet", "driveline.drains"},
		{"mounts: rubber, cracks in their tabs", "mounts"},
		{"bay: pipes, loom chafe, holes in the bulkhead, heat shields", "safety.firewall"},
	}
	p.plan.Life = append(p.plan.Life, p.d.Life...)
	slices.SortStableFunc(p.plan.Life, func(a, b document.LifeItem) int { return cmp.Compare(b.Calc.Share.Value, a.Calc.Share.Value) })
	p.tools()
}

// setUp lists what moves with the mass, beside what was last set.
func (p *planner) setUp() {
	set := p.car.Set
	was := func(leaf spec.Leaf) string {
		if text, _ := leaf.Written(); text != "" && leaf.Said() == spec.Given {
			return ": was " + text
		}
		return ""
	}
	p.plan.SetUp = []Check{
		{"ride height, front" + was(&set.Front), "set-up.ride-height-front"},
		{"ride height, rear" + was(&set.Rear), "set-up.ride-height-rear"},
		{"corner weights" + was(&p.car.Weighing.Date), "weighing"},
		{"toe" + was(&set.Toe), "set-up.toe"},
		{"camber" + was(&set.Camber), "set-up.camber"},
		{"shaft angles", "shafts"},
		{"brake balance" + was(&set.Balance), "set-up.brake-balance"},
		{"date and mass of the set-up" + was(&set.Date), "set-up.date"},
	}
}

// event lists what follows the driveline to the scrutineer.
func (p *planner) event() {
	head := p.car.Car
	add := func(what, subject string, leaf spec.Leaf) {
		if text, _ := leaf.Written(); text != "" && leaf.Said() == spec.Given {
			what += ": " + text
		}
		p.plan.Event = append(p.plan.Event, Check{what, subject})
	}
	add("papers and class: capacity goes with the driveline, with its factor if it is boosted", "car.papers", &head.Papers)
	add("noise", "car.noise", &head.Noise)
	add("minimum mass of the class", "car.minimum-mass", &head.MinMass)
	if p.car.Oil.Catch.Told() {
		add("oil catch tank emptied", p.car.Oil.Catch.Path, &p.car.Oil.Catch.Emptied)
	}
	if p.car.Cooling.Catch.Told() {
		add("overflow bottle emptied", p.car.Cooling.Catch.Path, &p.car.Cooling.Catch.Emptied)
	}
	for _, eye := range []spec.TowEye{p.car.Safety.TowFront, p.car.Safety.TowRear} {
		if eye.Told() {
			add("towing eye still reached, and its panel back", eye.Path, &eye.Behind)
		}
	}
}

// hotJoint is the temperature above which a fastening is looked at again after
// its first heat, K: an exhaust is, a block is not (common practice).
const hotJoint = 273.15 + 300

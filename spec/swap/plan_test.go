package swap

import (
	"errors"
	"os"
	"slices"
	"strings"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"

	"fitup/spec"
	"fitup/spec/tree"
)

func planOf(t *testing.T, o *spec.Outfit, car string, options Options) *Plan {
	t.Helper()
	c, d := composed(t, o, car)
	p, err := NewPlan(c, d, options)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func names(steps []Step) []string {
	var all []string
	for _, s := range steps {
		all = append(all, s.Name)
	}
	return all
}

func TestWhereToPartIt(t *testing.T) {
	for _, test := range []struct {
		name    string
		edits   []string
		options Options
		open    string // with what every plan opens left out
		shut    string
		next    Seconds // dearer than the best; below nothing if there is no other way
	}{
		{"three dry bolts and a cord against two wet hoses", nil, Options{}, "driveline.pumps.steering.bolts", "steering fluid", 120},
		{"eight bolts are dearer", []string{"bolts = \"3 x M8x1.25x45 -> bolts = \"8 x M8x1.25x45"}, Options{}, "lines.steer-pressure.from lines.steer-suction.to", "", 480},
		{"a workshop that hates bolts", nil, Options{Weights: Weights{"fixing.hex": 600}}, "lines.steer-pressure.from lines.steer-suction.to", "", 1320},
		{"the other car needs the pump", nil, Options{Held: map[string]Side{"driveline.pumps.steering": Leaves}}, "lines.steer-pressure.from lines.steer-suction.to", "", -1},
		{"a pump of the car's", []string{`goes = "either" -> goes = "car"`}, Options{}, "driveline.pumps.steering.bolts", "", -1},
		{"a hose that is never opened", []string{`"19 N m, oiled"] -> "19 N m, oiled, never-open"]`, "bolts = \"3 x M8x1.25x45 -> bolts = \"8 x M8x1.25x45"}, Options{}, "driveline.pumps.steering.bolts", "steering fluid", -1},
	} {
		t.Run(test.name, func(t *testing.T) {
			p := planOf(t, fleet(t, test.edits...), "wagtail.toml", test.options)
			always := []string{"circuits.starter.to", "lines.feed.to", "lines.water-cold.to", "lines.water-hot.from", "mounts.left", "mounts.right", "plugs.loom.meets", "shafts.prop.from"}
			var open []string
			for _, name := range p.Parting.Best.Open {
				if !slices.Contains(always, name) {
					open = append(open, name)
				}
			}
			next := Seconds(-1)
			if p.Parting.Next != nil {
				next = p.Parting.Next.Effort - p.Parting.Best.Effort
			}
			got := []any{strings.Join(open, " "), strings.Join(p.NotOpened, " "), next}
			if diff := gocmp.Diff([]any{test.open, test.shut, test.next}, got); diff != "" {
				t.Errorf("opened, shut, next (-want +got):\n%s", diff)
			}
		})
	}
}

// TestACarPartThatTravels: a tank of the car's that may go with the driveline
// takes its hose along, or is left and its hose opened at the cheaper end.
func TestACarPartThatTravels(t *testing.T) {
	tank := `[steering] -> [oil]
carries = "engine oil"
[oil.tank]
goes = "either"
held = "2 x M8x1.25x25 8.8 hex"
ports.out = "-16 male 37-flare"
[lines.oil]
hose = "0.5 m of braid-10"
from = ["oil.tank.out", "-16 female 37-flare"]
to = ["driveline.oil-in", "-16 female 37-flare"]
[steering]`
	port := `[pins.loom]
A = { takes -> [ports.oil-in]
end = "-16 male 37-flare"
takes = "engine oil"
[pins.loom]
A = { takes`
	for _, test := range []struct {
		name, held string
		leaves     []string
	}{
		{"two bolts are dearer than one wet joint", `held = "2 x M8x1.25x25 8.8 hex"`, []string{"driveline"}},
		{"two quarter-turns are not", `held = "2 x quarter-turn"`, []string{"driveline", "lines.oil", "oil.tank"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			p := planOf(t, fleet(t, strings.Replace(tank, `held = "2 x M8x1.25x25 8.8 hex"`, test.held, 1), port), "wagtail.toml", Options{})
			if diff := gocmp.Diff(test.leaves, p.Parting.Best.Leaves); diff != "" {
				t.Errorf("what leaves (-want +got):\n%s", diff)
			}
			if shut := slices.Contains(p.NotOpened, "engine oil"); shut != (len(test.leaves) > 1) {
				t.Errorf("the oil circuit stays shut: %v", shut)
			}
		})
	}
}

func TestNoPlan(t *testing.T) {
	o := fleet(t, `"19 N m, oiled"] -> "19 N m, oiled, never-open"]`, `goes = "either" -> goes = "driveline"`)
	c, d := composed(t, o, "wagtail.toml")
	_, err := NewPlan(c, d, Options{})
	var no *NoCut
	if !errors.As(err, &no) || !slices.Equal(no.Joints, []string{"lines.steer-pressure.from"}) {
		t.Errorf("a hose that is never opened holds the driveline: %v", err)
	}

	o = fleet(t, `from = "outside front", takes = "3 min" -> from = "outside front", behind = "tray"`, `from = "under", takes = "6 min" -> from = "under", behind = "bonnet"`)
	c, d = composed(t, o, "wagtail.toml")
	_, err = NewPlan(c, d, Options{})
	var cycle Cycle
	if !errors.As(err, &cycle) || len(cycle) != 2 || !strings.Contains(err.Error(), "off tray before off bonnet (bonnet is behind tray)") {
		t.Errorf("each panel behind the other: %v", err)
	}

	o = fleet(t, `"cooling.radiator"] -> "cooling.radiator", "parts.servo"]`, `[sensors.wheel-speed] -> [parts.servo.ports.out]
end = "M10x1 female inverted-flare"
gives = "brake fluid"
[parts.caliper.ports.in]
end = "M10x1 female inverted-flare"
takes = "brake fluid"
[lines.brake]
from = ["parts.servo.out", "M10x1 male inverted-flare"]
to = ["parts.caliper.in", "M10x1 male inverted-flare"]
[sensors.wheel-speed]`)
	c, d = composed(t, o, "wagtail.toml")
	_, err = NewPlan(c, d, Options{})
	if !errors.As(err, &no) || no.Leaving != "parts.servo" || !slices.Equal(no.Joints, []string{"lines.brake.from"}) {
		t.Errorf("a part in the way holds a brake line: %v", err)
	}

	c, ok := fleet(t).Car("pipit.toml")
	if !ok {
		t.Fatal("no pipit")
	}
	if _, err := NewPlan(c, derived(c), Options{}); err == nil {
		t.Error("an empty bay has a plan")
	}
}

// TestCarburettors: what a pump on the engine and a cable to the clutch leave no other
// way to do.
func TestCarburettors(t *testing.T) {
	p := planOf(t, fleet(t, `throttle = "electronic"
[ports] -> throttle = "electronic"
injectors = "none"
[ports]`, `[fuel]
carries = "fuel" -> [clutch]
master = "none"
[fuel]
pump = "none"
carries = "fuel"`), "wagtail.toml", Options{})
	removed, do := names(p.Remove), map[string]string{}
	for _, step := range p.Refit {
		do[step.Name] = step.Do
	}
	if slices.Contains(removed, stepRail) {
		t.Error("a rail is let down that is not there")
	}
	for _, order := range [][2]string{{stepBattery, stepFuelShut}, {stepFuelShut, "open lines.feed.to"}} {
		one, other := slices.Index(removed, order[0]), slices.Index(removed, order[1])
		if one < 0 || one > other {
			t.Errorf("%s at %d, %s at %d", order[0], one, order[1], other)
		}
	}
	if !strings.HasPrefix(do[stepTight], "ignition off, cranked") || !strings.HasPrefix(do[stepClutch], "free play set") {
		t.Errorf("%s: %s\n%s: %s", stepTight, do[stepTight], stepClutch, do[stepClutch])
	}
}

// TestALineInTheWay: a hose that has to come off is parted at both of its ends.
func TestALineInTheWay(t *testing.T) {
	p := planOf(t, fleet(t, `"cooling.radiator"] -> "lines.water-fill"]`), "wagtail.toml", Options{})
	for _, test := range []struct {
		steps []Step
		name  string
		want  []string
	}{
		{p.Remove, "off lines.water-fill", []string{"opens lines.water-fill.from", "opens lines.water-fill.to"}},
		{p.Refit, "on lines.water-fill", []string{"closes lines.water-fill.from", "closes lines.water-fill.to"}},
	} {
		i := slices.Index(names(test.steps), test.name)
		if i < 0 {
			t.Fatalf("no step %s", test.name)
		}
		if diff := gocmp.Diff(test.want, test.steps[i].Notes); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
		if len(test.steps[i].Tools) == 0 {
			t.Errorf("%s: no tool for its ends", test.name)
		}
	}
	if i := slices.Index(names(p.Refit), "on lines.water-fill"); p.Refit[i].Torque != "35 N m" {
		t.Errorf("torque of its ends: %q", p.Refit[i].Torque)
	}
}

func TestPlanSaysWhatItDoesNotKnow(t *testing.T) {
	o := fleet(t, `behind = ["bonnet", "cooling.radiator"] -> last-in = 2026-01-01`)
	if got := planOf(t, o, "wagtail.toml", Options{}).Unmarked; !slices.Equal(got, []string{"fits.lump.behind"}) {
		t.Errorf("not known: %v", got)
	}
}

// TestPlanHoldsTogether checks what must be true of any plan, on the fleet and on
// the demo.
func TestPlanHoldsTogether(t *testing.T) {
	demo := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../..")})
	for _, test := range []struct {
		name string
		o    *spec.Outfit
		car  string
	}{
		{"wagtail", fleet(t), "wagtail.toml"},
		{"demo, front engine", demo, "cars/mizzle.toml"},
		{"demo, rear engine", demo, "cars/squall.toml"},
	} {
		t.Run(test.name, func(t *testing.T) {
			p := planOf(t, test.o, test.car, Options{})
			removed, refitted := names(p.Remove), names(p.Refit)
			for _, steps := range [][]Step{p.Remove, p.Refit} {
				place := map[string]int{}
				for i, s := range steps {
					place[s.Name] = i
				}
				for i, s := range steps {
					for _, c := range s.After {
						if before, known := place[c.Before]; !known || before >= i || c.After != s.Name || c.Why == "" {
							t.Errorf("%v is not kept", c)
						}
					}
					if s.Do == "" || s.Station == "" {
						t.Errorf("%s: nothing to do, or nowhere: %+v", s.Name, s)
					}
				}
			}
			for _, name := range p.Parting.Best.Open {
				if !slices.Contains(removed, "open "+name) || !slices.Contains(refitted, "join "+name) {
					t.Errorf("%s is opened %v, and joined %v", name, slices.Contains(removed, "open "+name), slices.Contains(refitted, "join "+name))
				}
			}
			for _, name := range p.Parting.Best.Off {
				off, on := slices.Index(removed, "off "+name), slices.Index(refitted, "on "+name)
				if off < 0 || on < 0 || off > slices.Index(removed, stepSling) {
					t.Errorf("%s comes off at %d and goes on at %d", name, off, on)
				}
			}
			for _, part := range p.Tied {
				i := slices.Index(removed, "open "+part.Part+".bolts")
				if i < 0 || i > slices.Index(removed, stepWalk) || part.By != "" && !slices.Contains(p.Remove[i].Notes, part.By) {
					t.Errorf("%s is unbolted at %d, and not tied up by %s", part.Part, i, part.By)
				}
			}
			nobodyUnder(t, p.Remove, stepTake, stepHook)
			nobodyUnder(t, p.Refit, stepTake, stepHook)
			again := planOf(t, test.o, test.car, Options{})
			if diff := gocmp.Diff(names(p.Remove), names(again.Remove)); diff != "" {
				t.Errorf("a second plan is another one:\n%s", diff)
			}
		})
	}
}

// nobodyUnder: between two steps nothing is done under the car but the mounts
// that carry the weight, and those say to keep out from under.
func nobodyUnder(t *testing.T, steps []Step, first, last string) {
	t.Helper()
	all := names(steps)
	from, to := slices.Index(all, first), slices.Index(all, last)
	if from < 0 || to < from {
		t.Fatalf("%s at %d, %s at %d", first, from, last, to)
	}
	for _, s := range steps[from:to] {
		if s.Station == under && !(strings.Contains(s.Name, " mounts.") && strings.Contains(strings.Join(s.Notes, " "), "from the side")) {
			t.Errorf("%s has somebody under a driveline that hangs", s.Name)
		}
	}
}

// TestOrderOfWork holds the plan of the small car against one made by hand.
func TestOrderOfWork(t *testing.T) {
	p := planOf(t, fleet(t), "wagtail.toml", Options{})
	removed, refitted := names(p.Remove), names(p.Refit)
	for _, test := range []struct {
		in            []string
		first, second string
	}{
		{removed, stepRail, stepBattery},
		{removed, stepRail, stepCool},
		{removed, stepRail, stepStand},
		{removed, stepBattery, "open lines.feed.to"},
		{removed, stepRail, "open lines.feed.to"},
		{removed, stepPin, "off bonnet"},
		{removed, stepUnder, "off tray"},
		{removed, stepStand, stepUnder},
		{removed, stepCool, "drain driveline.drains.block.plug"},
		{removed, "drain cooling.radiator.drain", "open lines.water-hot.from"},
		{removed, "drain driveline.drains.block.plug", "open lines.water-cold.to"},
		{removed, "off bonnet", "open plugs.loom.meets"},
		{removed, "off tray", "open shafts.prop.from"},
		{removed, "off tray", "open driveline.pumps.steering.bolts"},
		{removed, "open lines.water-hot.from", "off cooling.radiator"},
		{removed, "open lines.water-cold.to", "off cooling.radiator"},
		{removed, "off cooling.radiator", stepSling},
		{removed, stepWalk, stepSling},
		{removed, stepSling, stepTake},
		{removed, stepTake, "open mounts.left"},
		{removed, "open mounts.left", stepLastBolt},
		{removed, stepLastBolt, "open mounts.right"},
		{removed, "open mounts.right", stepLift},
		{removed, stepStrap, stepHook},
		{refitted, stepIn, "join mounts.left"},
		{refitted, "join mounts.right", stepHook},
		{refitted, stepHook, "torque mounts.right.bolts"},
		{refitted, "torque mounts.right.bolts", stepRun},
		{refitted, stepHook, "join lines.feed.to"},
		{refitted, "on cooling.radiator", "join lines.water-hot.from"},
		{refitted, "on cooling.radiator", "on bonnet"},
		{refitted, "join shafts.prop.from", "on tray"},
		{refitted, "join lines.water-cold.to", "fill coolant"},
		{refitted, "fill coolant", stepCrank},
		{refitted, stepPressure, stepTight},
		{refitted, stepTight, stepRun},
		{refitted, "close driveline.drains.block.plug", stepTake},
		{refitted, "close cooling.radiator.drain", "fill coolant"},
		{refitted, stepCold, "on tray"},
		{refitted, "on tray", stepSetUp},
		{refitted, stepHeat, stepCold},
		{refitted, stepArm, stepTrailer},
	} {
		one, other := slices.Index(test.in, test.first), slices.Index(test.in, test.second)
		if one < 0 || other < 0 || one > other {
			t.Errorf("%s at %d, %s at %d", test.first, one, test.second, other)
		}
	}
	if last := p.Remove[len(p.Remove)-1].Name; last != stepHook {
		t.Errorf("the removal ends with %s", last)
	}
	if last := p.Refit[len(p.Refit)-1].Name; last != stepTrailer {
		t.Errorf("the refit ends with %s", last)
	}
}

// An empty bay is made safe before a driveline is lifted into it; what only one that
// has run stores is not there.
func TestRefitIntoAnEmptyBay(t *testing.T) {
	for _, empty := range []bool{true, false} {
		refitted := names(planOf(t, fleet(t), "wagtail.toml", Options{EmptyBay: empty}).Refit)
		for _, step := range []string{stepPin, stepBattery, stepStand} {
			at := slices.Index(refitted, step)
			if is := at >= 0; is != empty {
				t.Errorf("empty bay %v: %s is there: %v", empty, step, is)
			}
			if at > slices.Index(refitted, stepIn) {
				t.Errorf("%s comes after the driveline is in", step)
			}
		}
		for _, step := range []string{stepRail, stepCool} {
			if slices.Contains(refitted, step) {
				t.Errorf("empty bay %v: %s", empty, step)
			}
		}
	}
}

// What ran out of a driveline goes back into it, also where the car has no joint for
// it; its plug is put back, and what belongs to the car before is not.
func TestRefitFillsWhatWasEmptied(t *testing.T) {
	emptied := []Catch{
		{Fluid: "gearbox oil", Drains: []string{"driveline.drains.gearbox.plug", "oil.cooler.drain"}, At: []string{"lines.gone.to"}},
		{Fluid: "steering fluid", Drains: []string{"steering.reservoir.drain"}},
	}
	p := planOf(t, fleet(t), "wagtail.toml", Options{Emptied: emptied})
	want := Catch{Fluid: "gearbox oil", Drains: []string{"driveline.drains.gearbox.plug"}}
	if diff := gocmp.Diff(want, p.Fluids[len(p.Fluids)-1]); diff != "" {
		t.Errorf("last to fill (-want +got):\n%s", diff)
	}
	refitted := names(p.Refit)
	for _, step := range []string{"close driveline.drains.gearbox.plug", "fill gearbox oil"} {
		if !slices.Contains(refitted, step) {
			t.Errorf("no step %q", step)
		}
	}
	for _, step := range []string{"close oil.cooler.drain", "fill steering fluid"} {
		if slices.Contains(refitted, step) {
			t.Errorf("step %q", step)
		}
	}
}

// The order of work says what comes between two halves, or has to be made, where
// they are joined, and what is open where a fluid is filled in.
func TestRefitSaysWhatDoesNotMeet(t *testing.T) {
	o := fleet(t, `fuel-in = { end = "-8 male 37-flare" -> fuel-in = { end = "-6 male 37-flare"`, `holes = "2 x M10x1.5 tapped 28 mm, 80 mm -> holes = "2 x M10x1.5 tapped 28 mm, 90 mm`,
		`water-out = { end = -> water-out-two = { end = "38 mm bead", gives = "coolant" }
water-out = { end =`)
	c, d := composed(t, o, "wagtail.toml")
	p, err := NewPlan(c, d, Options{Fit: NewFit(c, d, testTolerances)})
	if err != nil {
		t.Fatal(err)
	}
	for step, want := range map[string]string{
		"join lines.feed.to": "between the two: flare expander, -8 male 37-flare to -6 female 37-flare",
		"join mounts.left":   "to be made first: holes 80 mm against 90 mm",
		"fill coolant":       "water out two meets nothing on this car: join it or cap it first",
	} {
		i := slices.Index(names(p.Refit), step)
		if i < 0 || !slices.Contains(p.Refit[i].Notes, want) {
			t.Errorf("%s does not say %q: %q", step, want, p.Refit[max(i, 0)].Notes)
		}
	}
	for _, each := range p.Refit {
		if each.Name == "join mounts.right" && strings.Contains(strings.Join(each.Notes, " "), "made first") {
			t.Errorf("%s: %q", each.Name, each.Notes)
		}
	}
}

func TestPlanLists(t *testing.T) {
	p := planOf(t, fleet(t), "wagtail.toml", Options{})
	step := func(name string) Step { return p.Remove[slices.Index(names(p.Remove), name)] }
	wants := []struct {
		what      string
		want, got any
	}{
		{"fluids", []Catch{
			{Fluid: "fuel", Volume: 0.2e-3, Known: true, At: []string{"lines.feed.to"}},
			{Fluid: "coolant", Drains: []string{"driveline.drains.block.plug", "cooling.radiator.drain"}, Volume: 6e-3, Known: true, Stays: 1e-3, Refill: 7e-3,
				Grade: "water and inhibitor", At: []string{"lines.water-cold.to", "lines.water-hot.from"}},
		}, p.Fluids},
		{"to renew", []Renewal{
			{"12 x 16 copper washer", "cooling.radiator.drain"}, {"14 x 20 copper washer", "driveline.drains.block.plug"},
			{"lock wire", "mounts.left.bolts"}, {"lock wire", "mounts.right.bolts"},
		}, p.Renew},
		{"to cap", []Cap{
			{"driveline.ports.fuel-in", "cap for -8 male 37-flare"}, {"driveline.ports.water-in", "cap for 38 mm bead"}, {"driveline.ports.water-out", "cap for 38 mm bead"},
			{"lines.feed.to", "plug for -8 female 37-flare"}, {"lines.water-cold.to", "plug for 38 mm hose"}, {"lines.water-hot.from", "plug for 38 mm hose"},
		}, p.Caps},
		{"to label", []Label{{"plugs.loom", "loom"}}, p.Labels},
		{"tied up", []Tied{{"driveline.pumps.steering", "cord to the rail"}}, p.Tied},
		{"tool of a mount", []string{"spanner and socket to suit M10x1.5 hex", "side cutters"}, step("open mounts.left").Tools},
		{"tool of M8 bolts", []string{"13 mm spanner and socket"}, step("open driveline.pumps.steering.bolts").Tools},
		{"tool of a flare", []string{"7/8 in flare-nut spanner", "second spanner to hold the port"}, step("open lines.feed.to").Tools},
		{"a panel from under", under, step("off tray").Station},
		{"a joint behind it", under, step("open shafts.prop.from").Station},
		{"a joint behind the bonnet", engineBay, step("open plugs.loom.meets").Station},
		{"a battery in the boot", outsideRear, step(stepBattery).Station},
		{"what hangs on the radiator", []string{"opens lines.water-fill.to"}, step("off cooling.radiator").Notes},
	}
	for _, w := range wants {
		if diff := gocmp.Diff(w.want, w.got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", w.what, diff)
		}
	}
	wrench := map[string]string{}
	for _, torque := range p.Torques {
		wrench[torque.Subject] = torque.Torque.String() + " " + torque.Wrench
	}
	for subject, want := range map[string]string{
		"mounts.left.bolts": "40 N m big", "shafts.prop.bolts": "68 N m big", "driveline.pumps.steering.bolts": "20 N m small",
		"lines.feed.to": "35 N m big", "circuits.starter.to": "12 N m small", "cooling.radiator.held": "8 N m small", "lines.water-fill.to": "35 N m big",
	} {
		if wrench[subject] != want {
			t.Errorf("%s: %q, want %q", subject, wrench[subject], want)
		}
	}
}

func TestNeededBy(t *testing.T) {
	_, d := composed(t, fleet(t), "wagtail.toml")
	if diff := gocmp.Diff(map[string]Side{"driveline.pumps.steering": Leaves}, NeededBy(d)); diff != "" {
		t.Errorf("a car with steering hoses (-want +got):\n%s", diff)
	}
	m, err := FromCar(fleet(t), "wagtail.toml", "pipit.toml")
	if err != nil {
		t.Fatal(err)
	}
	if got := NeededBy(derived(m.Received)); len(got) != 0 {
		t.Errorf("a car without: %v", got)
	}
}

func TestPlanSaysHowItIsHeld(t *testing.T) {
	p := planOf(t, fleet(t), "wagtail.toml", Options{})
	var holds []string
	for _, s := range slices.Concat(p.Remove, p.Refit) {
		if s.Hold {
			holds = append(holds, s.Name)
		}
	}
	want := []string{stepUnder, stepWalk, stepTake, stepLastBolt, stepHook, stepTake, stepHook, stepUnderBack, stepCrank, stepFuelHold, stepStart, stepHeat, stepTrailer}
	if diff := gocmp.Diff(want, holds); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	var energy []string
	for _, e := range p.Energy {
		energy = append(energy, e.What)
	}
	if diff := gocmp.Diff([]string{"the fire system's bottle", "fuel pressure in the rail", "heat, and pressure under the cap", "the battery"}, energy); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	for _, s := range slices.Concat(p.Remove, p.Refit) {
		if text := s.Do + strings.Join(s.Notes, " "); strings.Contains(text, "safe ") || strings.HasSuffix(text, "safe") {
			t.Errorf("%s calls something safe", s.Name)
		}
	}
}

// TestPlanReadsTheSpecs adds what a spec may say, and looks for it where the
// builder needs it.
func TestPlanReadsTheSpecs(t *testing.T) {
	p := planOf(t, fleet(t,
		`[sensors.wheel-speed] -> [oil]
carries = "engine oil"
tank = { fill = "7 L" }
accumulator = { pressure = "4 bar", valve = "tap on its end" }
catch-tank = { emptied = 2026-05-02 }
[set-up]
date = 2026-02-08
ride-height-front = "85 mm"
brake-balance = "bar two turns to the front"
[safety.tow-front]
inside = "64 mm"
behind = "bonnet"
[usual]
clamp = "T-bolt"
[support]
dolly = "long"
held-by = ["air jacks"]
[sensors.wheel-speed]`,
		`throttle = "electronic" -> throttle = "electronic"
noise = "102 dB, limit 105"`,
		`feed = { hose = "1.9 m of braid-8" -> feed = { bulkhead = "union", hose = "1.9 m of braid-8"`,
		`driven = "front belt" -> driven = "front belt"
mass = "2.4 kg"`,
		`[engine]
throttle = "electronic" -> [lift.front]
on = "cylinder head"
[engine]
thermostat = "80 C"
throttle = "electronic"`,
		`[adaptors] -> [dollies.long]
rated = "500 kg"
straps = 2
[adaptors]`,
		`[drains.block] -> [drains.block]
at = "120, -200, -10 mm"`,
		`main = { end = "M8 stud" } -> main = { end = "M8 stud", dead-when = "isolator open" }`,
		`name = "Barn" -> name = "Barn"
floor = "hard and level"
works = "alone"
extinguisher = "6 L foam by the door"`,
	), "wagtail.toml", Options{})
	note := func(steps []Step, name string) string {
		return strings.Join(steps[slices.Index(names(steps), name)].Notes, "; ")
	}
	checks := func(list []Check) (all []string) {
		for _, c := range list {
			all = append(all, c.What)
		}
		return all
	}
	for _, test := range []struct{ what, in, want string }{
		{"somebody works alone", note(p.Remove, stepUnder), "who knows that you are under it? a phone within reach on the floor"},
		{"the floor", note(p.Remove, stepStand), "floor: hard and level"},
		{"where a plug is", note(p.Remove, "drain driveline.drains.block.plug"), "the plug is at 120, -200, -10 mm from the driveline's datum"},
		{"a live post", note(p.Remove, "open circuits.starter.to"), "it is dead when: isolator open"},
		{"mass of a pump", note(p.Remove, "open driveline.pumps.steering.bolts"), "it weighs 2.4 kg"},
		{"bulkhead", note(p.Remove, "open lines.feed.to"), "through the bulkhead: union"},
		{"lift points", note(p.Remove, stepSling), "front: on the cylinder head"},
		{"dolly", note(p.Remove, stepStrap), "rated for 500 kg; 2 straps"},
		{"extinguisher", note(p.Refit, stepFuelHold), "6 L foam by the door"},
		{"thermostat", note(p.Refit, stepRun), "at 80 C"},
		{"oil tank", note(p.Refit, stepFilled), "7 L at its mark"},
		{"clamp", strings.Join(p.Remove[slices.Index(names(p.Remove), "open lines.water-hot.from")].Tools, "; "), "driver for hose clamps (T-bolt)"},
		{"set-up", strings.Join(checks(p.SetUp), "; "), "ride height, front: was 85 mm"},
		{"balance", strings.Join(checks(p.SetUp), "; "), "brake balance: was bar two turns to the front"},
		{"noise", strings.Join(checks(p.Event), "; "), "noise: 102 dB, limit 105"},
		{"catch tank", strings.Join(checks(p.Event), "; "), "oil catch tank emptied: 2026-05-02"},
		{"towing eye", strings.Join(checks(p.Event), "; "), "towing eye still reached"},
	} {
		if !strings.Contains(test.in, test.want) {
			t.Errorf("%s: %q is not in %q", test.what, test.want, test.in)
		}
	}
	if removed := names(p.Remove); slices.Index(removed, stepStand) > slices.Index(removed, stepJacks) || slices.Index(removed, stepJacks) > slices.Index(removed, stepUnder) {
		t.Errorf("air jacks: %v", removed)
	}
	i := slices.IndexFunc(p.Energy, func(e Energy) bool { return e.Subject == "oil.accumulator" })
	if i < 0 || p.Energy[i].What != "oil pressure in the accumulator, charged to 4 bar" || !strings.Contains(p.Energy[i].LetGo, "tap on its end") {
		t.Errorf("energy: %+v", p.Energy)
	}
}

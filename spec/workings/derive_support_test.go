package workings

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"
)

// onStands is a car of 1200 kg on four stands at the corners of its wheels, 2.0 by
// 1.2 m, with its centre of mass 0.9 m behind the front ones and on the centreline:
// 330 kg at each front corner and 270 kg at each rear one, whatever the stiffness,
// and 600 kg on one front stand if the car rocks.
func onStands(says string) string {
	text := "wheelbase = \"2000 mm\"\ntrack-front = \"1200 mm\"\ntrack-rear = \"1200 mm\"\n" +
		"[weighing]\nfront-left = \"330 kg\"\nfront-right = \"330 kg\"\nrear-left = \"270 kg\"\nrear-right = \"270 kg\"\n" +
		"driver = false\nheight = \"~400 mm\"\nunsure = \"25 mm\"\n" + says
	if !strings.Contains(says, "[support.stands") {
		for name, at := range map[string]string{"fl": "0, 600", "fr": "0, -600", "rl": "-2000, 600", "rr": "-2000, -600"} {
			text += fmt.Sprintf("[support.stands.%s]\nstand = \"tall\"\nat = \"%s, 100 mm\"\nheight = \"400 mm\"\n", name, at)
		}
	}
	return text
}

const (
	standShop = "[stands.tall]\nrated = \"1000 kg\"\nbasis = \"pair\"\nbase-reach = \"110 mm\"\n"
	noWheels  = "[support]\nwheels-down = \"none\"\n"
	// 300 kg, its centre 0.2 m behind the front axle line and on the centreline.
	lump = "[weighing]\nmass = \"300 kg\"\nat = \"100, 0, 50 mm\"\nunsure = \"10 mm\"\n"
	fit  = "[fits.it]\nfile = \"driveline.toml\"\nat = \"-300, 0, 250 mm\"\nnose-up = \"0 deg\"\n"
)

func TestSupport(t *testing.T) {
	runAll(t, []derivation{
		{
			// The margin is the 600 mm to either side, less 25; the centre is 300 mm
			// above the saddles: atan(575/300). 330 kg at the saddle 400 mm up on a base
			// that reaches 110 mm: 330 g × 110/400.
			name:      "empty car",
			specs:     specs{car: onStands("driveline = \"none\"\n" + noWheels), shop: standShop},
			tolerance: 1e-6,
			want: map[string]string{
				"support#out-raised mass": "1200 kg", "support#out-raised margin": "600 mm", "support#out-raised unsure": "25 mm",
				"support#out-raised margin_left": "575 mm", "support#out-raised tilt": "~" + fmt.Sprint(math.Atan2(0.575, 0.300)) + " rad",
				"support.stands.fl load_out": "330 kg", "support.stands.rr load_out": "270 kg", "support.stands.fl rocking": "600 kg",
				"support.stands.fl load_in": "absent", "support.stands.fl load_most": "330 kg", "support.stands.fl capacity": "500 kg",
				"support.stands.fl push": fmt.Sprint(330*StandardGravity*110/400) + " N",
			},
		},
		{
			// Out: (1200 × 0.9 - 300 × 0.2) / 900 = 1.1333 m behind the front, 405 kg
			// by the rear axle's share 1.1333/2: 255 on each rear stand, 195 on each
			// front one. u = (1200 × 25 + 300 × 10) / 900.
			name:      "the driveline comes out",
			specs:     specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels), driveline: lump, shop: standShop},
			tolerance: 1e-6,
			want: map[string]string{
				"support#raised mass": "1200 kg", "support#raised margin": "600 mm",
				"support#out-raised mass": "900 kg", "support#out-raised margin": "600 mm", "support#out-raised unsure": fmt.Sprint(33e-3/0.9) + " m",
				"support#hoisting mass": "900 kg", "support#hoisting margin_left": fmt.Sprint(0.6-33e-3/0.9) + " m", "support#hoisting at_share": "1",
				"support.stands.fl load_in": "330 kg", "support.stands.fl load_out": "195 kg", "support.stands.rl load_out": "255 kg",
				"support.stands.fl load_most": "330 kg", "support.stands.fl load_least": "195 kg", "support.stands.rl load_least": "255 kg",
				"support.stands.rl rocking": "540 kg",
			},
		},
		{
			// The car alone was weighed; with the driveline the centre is at
			// (1200 × 0.9 + 300 × 0.2) / 1500 = 0.76 m.
			name:      "weighed without",
			specs:     specs{car: onStands("driveline = \"none\"\n" + fit + noWheels), driveline: lump, shop: standShop},
			tolerance: 1e-6,
			want: map[string]string{
				"support#raised mass": "1500 kg", "support#out-raised mass": "1200 kg",
				"support.stands.fl load_in": "465 kg", "support.stands.rl load_in": "285 kg", "support.stands.fl load_out": "330 kg",
			},
		},
		{
			// Stands at 0.8 and 1.1 m: in, the centre is 100 mm inside the front edge, which
			// bears two thirds of 1200 kg;
			// out, at 1.1333 m, it is 33.3 mm past the rear one.
			name: "over the edge on the hoist",
			specs: specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels +
				"[support.stands.fl]\nat = \"-800, 600, 100 mm\"\n[support.stands.fr]\nat = \"-800, -600, 100 mm\"\n[support.stands.rl]\nat = \"-1100, 600, 100 mm\"\n[support.stands.rr]\nat = \"-1100, -600, 100 mm\"\n"),
				driveline: lump, shop: standShop},
			tolerance: 1e-6,
			want: map[string]string{
				"support#raised margin": "100 mm", "support#hoisting margin": fmt.Sprint(-0.1/3) + " m", "support#hoisting at_share": "1",
				"support#hoisting tilt": "refused distance to the edge", "support.stands.fl load_out": "refused centre of mass inside",
				"support.stands.fl load_most": "refused centre of mass inside", "support.stands.fl load_in": "400 kg",
			},
		},
		{
			// Two stands in front and the rear wheels on the floor.
			name: "wheels down",
			specs: specs{car: onStands("driveline = \"none\"\n[support]\nwheels-down = [\"rear-left\", \"rear-right\"]\n" +
				"[support.stands.fl]\nat = \"0, 600, 100 mm\"\n[support.stands.fr]\nat = \"0, -600, 100 mm\"\n"), shop: standShop},
			tolerance: 1e-6,
			want:      map[string]string{"support#out-raised margin": "600 mm", "support.stands.fl load_out": "330 kg"},
		},
		{
			name:  "nobody says which wheels are down",
			specs: specs{car: onStands("driveline = \"none\"\n[support]\nfloor = \"hard and level\"\n"), shop: standShop},
			want: map[string]string{
				"support#out-raised mass": "1200 kg", "support#out-raised margin": "missing support.wheels-down",
				"support.stands.fl load_out": "missing support.wheels-down",
			},
		},
		{
			name:  "two stands alone",
			specs: specs{car: onStands("driveline = \"none\"\n" + noWheels + "[support.stands.fl]\nat = \"0, 600, 100 mm\"\n[support.stands.fr]\nat = \"0, -600, 100 mm\"\n")},
			want:  map[string]string{"support#out-raised margin": "missing support.stands", "support.stands.fl capacity": "missing support.stands.fl.stand"},
		},
		{
			name:  "weighed with another driveline",
			specs: specs{car: onStands("driveline = \"elsewhere\"\n" + fit + noWheels), driveline: lump, shop: standShop},
			want: map[string]string{
				"support#raised mass": "missing weighing.driveline", "support#out-raised margin": "missing weighing.driveline",
				"support.stands.fl load_most": "missing weighing.driveline",
			},
		},
		{
			name:  "a driveline that nobody weighed",
			specs: specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels), driveline: "[engine]\nlayout = \"four\"\n", shop: standShop},
			want: map[string]string{
				"support#raised mass": "1200 kg", "support#out-raised mass": "missing driveline.weighing.mass driveline.weighing.at",
				"support#hoisting margin": "missing driveline.weighing.mass driveline.weighing.at",
			},
		},
		{
			// Its parts: (200 × 0.1 + 100 × 0.4) / 300 = 0.2 m before the datum, 0.1 m
			// behind the front axle line; out (1080 - 30) / 900 = 1.16667 m.
			name: "a centre from the parts",
			specs: specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels), shop: standShop,
				driveline: "[weighing]\nmass = \"300 kg\"\n[masses.engine]\nmass = \"200 kg\"\nat = \"100, 0, 0 mm\"\n[masses.box]\nmass = \"~100 kg\"\nat = \"400, 0, 0 mm\"\n"},
			tolerance: 1e-6,
			want:      map[string]string{"support.stands.rl load_out": "~262.5 kg", "support#out-raised margin_left": "missing driveline.weighing.unsure"},
		},
		{
			// A driver of 80 kg at 1.4 m is taken off: (1080 - 112) / 1120 = 0.8643 m.
			// 10 L of petrol at 2 m, 7.45 kg, have been burnt since: with 7.45 kg less,
			// 953.1 / 1112.55 = 0.85668 m.
			name: "driver and fuel",
			specs: specs{car: strings.Replace(onStands("driveline = \"none\"\nfuel = \"30 L\"\n"+noWheels+
				"[masses.driver]\nmass = \"80 kg\"\nat = \"-1400, 0, 300 mm\"\n[fuel.cell]\nat = \"-2000, 0, 300 mm\"\nfilled-with = \"petrol\"\namount = \"20 L\"\n"),
				"driver = false", "driver = true", 1), shop: standShop},
			tolerance: 1e-4,
			want:      map[string]string{"support#out-raised mass": "1112.55 kg", "support.stands.rl load_out": fmt.Sprint(1112.55*0.85668/4) + " kg"},
		},
		{
			// What comes off before the driveline is lifted: 20 kg at the nose, 0.5 m
			// before the axle. (1080 - 60 + 10) / 880 = 1.17045 m.
			name: "parts that come off first",
			specs: specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels + "[masses.nose]\nmass = \"20 kg\"\nat = \"500, 0, 300 mm\"\nleaves = true\n"),
				driveline: lump, shop: standShop},
			tolerance: 1e-4,
			want:      map[string]string{"support#out-raised mass": "880 kg", "support.stands.rl load_out": fmt.Sprint(880*1.17045/4) + " kg"},
		},
	})
}

// TestStandLoadsSum: whatever the stage, the stands carry all of the car.
func TestStandLoadsSum(t *testing.T) {
	d, trace := specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels), driveline: lump, shop: standShop}.derive(t)
	in, out := 0.0, 0.0
	for _, s := range d.Stands {
		in += s.Calc.LoadIn.Value
		out += s.Calc.LoadOut.Value
		if s.Calc.LoadMost.Value < max(s.Calc.LoadIn.Value, s.Calc.LoadOut.Value) || s.Calc.LoadLeast.Value > min(s.Calc.LoadIn.Value, s.Calc.LoadOut.Value) {
			t.Errorf("%s: %+v", s.Name, s.Calc)
		}
		if s.Calc.Rocking.Value < s.Calc.LoadMost.Value {
			t.Errorf("%s: rocking gives %g, less than %g", s.Name, s.Calc.Rocking.Value, s.Calc.LoadMost.Value)
		}
	}
	if math.Abs(in-1200) > 1e-9 || math.Abs(out-900) > 1e-9 {
		t.Errorf("the stands carry %g kg in and %g kg out", in, out)
	}
	w, _ := trace.find("support#hoisting margin")
	if !strings.Contains(w.Note, "over the driveline's centre") || strings.Contains(w.Note, "over the edge") {
		t.Errorf("note %q", w.Note)
	}
}

// TestEdgeCrossed: the centre reaches 1.1 m when the hook, 0.2 m behind the
// front, takes p: (1080 - 0.2 p) / (1200 - p) = 1.1, p = 266.7 kg, 89 % of 300.
func TestEdgeCrossed(t *testing.T) {
	_, trace := specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels +
		"[support.stands.fl]\nat = \"-800, 600, 100 mm\"\n[support.stands.fr]\nat = \"-800, -600, 100 mm\"\n[support.stands.rl]\nat = \"-1100, 600, 100 mm\"\n[support.stands.rr]\nat = \"-1100, -600, 100 mm\"\n"),
		driveline: lump}.derive(t)
	w, _ := trace.find("support#hoisting margin")
	if !strings.Contains(w.Note, "over the edge at 89 % of") {
		t.Errorf("note %q", w.Note)
	}
}

// TestAxesElsewhere: moving the origin moves every position and no margin. A car
// whose axes start nowhere near an axle is judged as well as any other.
func TestAxesElsewhere(t *testing.T) {
	for axle, want := range map[string]string{
		"0, 0, 0 mm":        "600 mm",
		"2000, 0, 0 mm":     "600 mm",
		"2000, 100, -50 mm": "600 mm",
		"2700, 0, 0 mm":     "200 mm",
		"?":                 "missing car.front-axle",
	} {
		stands := onStands("driveline = \"none\"\n" + noWheels)
		switch axle {
		case "2000, 0, 0 mm", "2700, 0, 0 mm":
			stands = moved(stands, 2000, 0, 0)
		case "2000, 100, -50 mm":
			stands = moved(stands, 2000, 100, -50)
		}
		_, trace := specs{car: stands, shop: standShop, axle: axle}.derive(t)
		expect(t, trace, map[string]string{"support#out-raised margin": want}, 1e-6)
	}
}

// moved rewrites every position in millimetres of a spec for axes that start
// elsewhere.
func moved(text string, dx, dy, dz int) string {
	return position.ReplaceAllStringFunc(text, func(old string) string {
		var x, y, z int
		if _, err := fmt.Sscanf(old, `"%d, %d, %d mm"`, &x, &y, &z); err != nil {
			return old
		}
		return fmt.Sprintf(`"%d, %d, %d mm"`, x+dx, y+dy, z+dz)
	})
}

var position = regexp.MustCompile(`"-?\d+, -?\d+, -?\d+ mm"`)

func TestLifting(t *testing.T) {
	const shop = "[hoists.crane]\ntackle = \"14 kg\"\nbooms.2 = { rated = \"700 kg\" }\n[slings.chain]\nmass = \"~6 kg\"\n"
	runAll(t, []derivation{
		{
			// 480 - 60 mm; 22 mm of M10; 2 diameters in aluminium by the maker of eyes.
			name: "driveline alone",
			specs: specs{driveline: "[weighing]\nmass = \"231 kg\"\nat = \"-60, -20, 60 mm\"\n" +
				"[lift.front]\nat = \"520, 0, 480 mm\"\nthread = \"M10x1.5\"\ndepth = \"22 mm\"\ninto = \"cast-aluminium\"\n" +
				"[lift.low]\nat = \"520, 0, 40 mm\"\nbolts = \"2 x M10x1.5x30 10.9 hex\"\n"},
			want: map[string]string{
				"driveline.lift.front above_mass": "420 mm", "driveline.lift.low above_mass": "-20 mm",
				"driveline.lift.front depth_diameters": "2.2", "driveline.lift.front depth_needed": "2", "driveline.lift.low depth_needed": "absent",
			},
		},
		{
			name:  "no centre of mass",
			specs: specs{driveline: "[weighing]\nmass = \"231 kg\"\n[lift.front]\nat = \"520, 0, 480 mm\"\n"},
			want: map[string]string{
				"driveline.lift.front above_mass":      "missing driveline.weighing.at",
				"driveline.lift.front depth_diameters": "missing driveline.lift.front.depth driveline.lift.front.thread",
			},
		},
		{
			name:  "on the hook",
			specs: specs{car: "[support]\nhoist = \"crane\"\nboom = \"2\"\nsling = \"chain\"\n", driveline: "[weighing]\nmass = \"231 kg\"\n", shop: shop},
			want:  map[string]string{"support hook_load": "~251 kg", "support hook_rated": "700 kg"},
		},
		{
			name:  "no such boom position",
			specs: specs{car: "[support]\nhoist = \"crane\"\nboom = \"4\"\nsling = \"none\"\n", driveline: "[weighing]\nmass = \"231 kg\"\n", shop: shop},
			want:  map[string]string{"support hook_load": "245 kg", "support hook_rated": "missing support.boom"},
		},
		{
			name:  "no hoist named",
			specs: specs{car: "[support]\nfloor = \"hard and level\"\n", driveline: "[weighing]\nmass = \"231 kg\"\n", shop: shop},
			want:  map[string]string{"support hook_load": "missing support.hoist support.sling", "support hook_rated": "missing support.boom"},
		},
	})
}

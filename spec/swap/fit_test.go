package swap

import (
	"fmt"
	"math"
	"strings"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
)

// told is an interface in one line.
func told(i Interface) string {
	text := fmt.Sprintf("%s %s: %s", i.Kind, i.Name, i.Verdict)
	if i.Chain != nil {
		for _, a := range i.Chain.Adaptors {
			text += ", " + a.Name
		}
	}
	if len(i.Why) > 0 {
		text += ": " + strings.Join(i.Why, "; ")
	}
	return text
}

func TestFitOfWhatIsIn(t *testing.T) {
	c, d := composed(t, fleet(t), "wagtail.toml")
	fit := NewFit(c, d, testTolerances)
	var bad []string
	for _, i := range fit.Interfaces {
		if i.Verdict != Meets {
			bad = append(bad, told(i))
		}
	}
	want := []string{
		"port driveline.spare: left over: to be capped: spare",
		"port driveline.test-point: left over: capped: cap on a chain",
		"port driveline.vent: left over: to be led somewhere: vent",
	}
	if diff := gocmp.Diff(want, bad); diff != "" {
		t.Errorf("what does not meet (-want +got):\n%s", diff)
	}
	if got, want := len(fit.Interfaces), 2+11+2+2+1+7+1; got != want {
		t.Errorf("%d interfaces, want %d", got, want)
	}
}

// TestFitFindsFaults makes one edit a time in a car that fits, and asks for the
// one interface that then does not.
func TestFitFindsFaults(t *testing.T) {
	for _, test := range []struct{ edit, want string }{
		{`2 x 10.5 mm clear, 80 mm apart -> 2 x 10.5 mm clear, 82 mm apart`, "mount left: must be made: holes 82 mm against 80 mm"},
		{`2 x 10.5 mm clear, 80 mm apart -> 3 x 10.5 mm clear, 80 mm apart`, "mount left: must be made: 3 holes against 2"},
		{`2 x 10.5 mm clear -> 2 x 9 mm clear`, "mount left: must be made: bolts M10x1.5 through the car's holes of 9 mm"},
		{`2 x M10x1.5x40 -> 2 x M10x1.25x40`, "mount left: must be made: bolts M10x1.25 into the driveline's M10x1.5"},
		{`80 mm apart fore-aft" -> 80 mm apart upright"`, "mount left: must be made: upright against fore-aft"},
		{`at = "-300, 200, 250 mm" -> at = "-312, 200, 250 mm"`, "mount left: must be made: 12 mm apart, the driveline's to the forward"},
		{`at = "-300, 200, 250 mm" -> at = "?"`, "mount left: cannot tell: not said: how far the two patterns are apart: write mounts.left.at"},
		{`meets = "driveline.right" -> meets = "driveline.wrong"`, "mount right: left over: the driveline has no mount wrong"},
		{`female 37-flare 90deg -> female 45-flare 90deg`, "port driveline.fuel-in: meets with an adaptor, 37 to 45 degree union, swivel union: 45-flare against 37-flare; seat of 45 deg against 37 deg"},
		{`female 37-flare 90deg -> -6 female 37-flare 90deg`, "port driveline.fuel-in: meets with an adaptor, step: thread 9/16-18 against 3/4-16"},
		{`female 37-flare 90deg -> -10 female 37-flare 90deg`, "port driveline.fuel-in: meets with an adaptor, flare expander: thread 7/8-14 against 3/4-16"},
		{`fuel-in = { end = "-8 male 37-flare" -> fuel-in = { end = "-10 female O-ring-boss"`, "port driveline.fuel-in: meets with an adaptor, flare to O-ring boss: 37-flare against O-ring-boss; thread 3/4-16 against 7/8-14"},
		{`fuel-in = { end = "-8 male 37-flare" -> fuel-in = { under-it = "-8 female 37-flare", end = "M22x1.5 male 37-flare"`, "port driveline.fuel-in: meets with an adaptor, flare union: thread 3/4-16 against M22x1.5; take out the adaptor that is screwed in"},
		{`takes = "fuel" -> takes = "engine oil"`, "port driveline.fuel-in: must be made: fuel at one end and engine oil at the other"},
		{`gives = "coolant" -> takes = "coolant"`, "port driveline.water-out: must be made: the line starts at a port that takes coolant"},
		{`["driveline.water-out", "38 mm hose"] -> ["driveline.water-out", "32 mm hose"]`, "port driveline.water-out: meets with an adaptor, hose joiner, stepped coupling hose: size 32 mm against 38 mm"},
		{`["driveline.water-out", "38 mm hose"] -> "driveline.water-out"`, "port driveline.water-out: cannot tell: not said: what the car's end is"},
		{`"driveline.fuel-in" -> "driveline.fuel-inn"`, "port driveline.fuel-in: missing: nothing on the car meets it: it takes fuel"},
		{`fuel-in = { end = "-8 male 37-flare" -> fuel-in = { end = "3 in male slip"`, "port driveline.fuel-in: must be made: 37-flare against slip"},
		{`6 x 10.2 mm clear, on 90 mm circle, 60 mm pilot -> 6 x 10.2 mm clear, on 86 mm circle, 60 mm pilot`, "port driveline.prop: must be made: bolt circle 86 mm against 90 mm"},
		{`6 x 10.2 mm clear, on 90 mm circle, 60 mm pilot -> 6 x 10.2 mm clear, on 90 mm circle, 50 mm pilot`, "port driveline.prop: must be made: pilot 50 mm against 60 mm"},
		{`size-24 key-W sockets -> size-24 key-N sockets`, "port driveline.loom: must be made: key N against W"},
		{`M8 ring copper -> M6 ring copper`, "port driveline.starter: must be made: size M6 against M8"},
		{`A = { gives = "computer supply" } -> A = { gives = "coil supply" }`, "pin loom.A: must be made: the car gives coil supply and the driveline takes computer supply"},
		{`A = { gives = "computer supply" } -> C = { gives = "computer supply" }`, "pin loom.A: missing: the car's half has no wire here: the driveline takes computer supply"},
		{`B = { gives = "fan request" } -> C = { gives = "fan request" }`, "pin loom.B: missing: the driveline's half has no wire here: the car takes fan request"},
		{`B = { takes = "fan request" } -> B = { takes = "fan request" }
C = { gives = "start request" }`, "pin loom.C: left over: the driveline's half has no wire here: the car gives start request"},
		{`[sensors.wheel-speed] -> [sensors.oil-level]`, "sensor wheel-speed: missing: the map expects it on the car"},
		{`throttle = "electronic" -> throttle = "cable"`, "throttle throttle: must be made: throttle cable against electronic"},
		{`1.9 m of braid-8 -> 1.5 m of braid-8`, "reach feed: must be made: 126 mm too short: it needs 1.63 m at least, and has 1.5 m"},
		{`at = "-2000, 0, 300 mm" -> at = "?"`, "reach feed: cannot tell: write fuel.cell.ports.feed.at"},
		{`length = "700 mm" -> length = "680 mm"`, "reach prop: must be made: it would have to be 5 mm longer than it slides"},
		{`length = "700 mm" -> length = "720 mm"`, "reach prop: must be made: it would have to be 5 mm shorter than it slides"},
		{cable("200 mm"), "reach throttle: must be made: it would have to be 290 mm longer than it can be screwed"},
		{`tail = "0.3 m" -> tail = "0.01 m"`, "reach loom: must be made: 11.8 mm too short: both tails together are 110 mm"},
		{`bulkhead = { box = ["-1.30, -> bulkhead = { box = ["-0.20,`, "room block: fouls: both are in one place"},
		{`0.75 m", "0.4, -> 0.72 m", "0.4,`, "room block: fouls: 20 mm away, and 30 mm are wanted with the engine rocking; it comes off with bonnet"},
		{`throttle = "electronic" -> throttle = "electronic"
origin = "on the ground, under the front axle"
ground-clearance = "110 mm"`, "room block: fouls: 100 mm above the ground, and the car's lowest point is at 110 mm"},
		{`held = "4 x M6x1x20 8.8 hex, 8 N m, dry" -> held = "4 x M6x1x20 8.8 hex, 8 N m, dry"
box = ["0.01, -0.1, 0.3 m", "0.1, 0.1, 0.5 m"]`, "room block: fouls: 10 mm away, and 30 mm are wanted with the engine rocking"},
		{`left = { at = "200, 200, 50 mm" -> left = { light = true, tail = "0.05 m", at = "200, 200, 50 mm" && at = "-300, 200, 250 mm" -> at = "300, 200, 250 mm"`,
			"reach left: must be made: its loom of 0.05 m is 250 mm too short to leave the driveline"},
		{`vent = { end = "12 mm barb", gives = "crankcase breath", purpose = "vent" } -> exhaust = { end = "60 mm male slip", at = "100, 250, 0 mm", gives = "exhaust" } && [sensors.wheel-speed] -> [exhaust.pipes.front]
from = ["driveline.exhaust", "60 mm female slip"]
to = ["exhaust.pipes.tail.in", "60 mm male slip"]
length = "1.05 m"
[exhaust.pipes.tail.ports.in]
end = "60 mm female slip"
at = "-1500, 250, 200 mm"
[sensors.wheel-speed]`, "reach front: must be made: 50 mm too short"},
		{`nose-up = "0 deg" -> nose-up = "?"`, "room block: cannot tell: write fits.lump.nose-up"},
		{`rocks = "10 mm" -> rocks = "?"`, "room block: cannot tell: write fits.lump.rocks"},
		{`rocks = "10 mm" -> rocks = "?"`, "reach loom: cannot tell: write fits.lump.rocks"},
		{`[solids]
bulkhead = -> [solids]
strut = { hot = "90 °C" }
bulkhead =`, "room block: cannot tell: write solids.strut.box"},
		{`drain = "1 x M12x1.5 hex, -> box = "?"
drain = "1 x M12x1.5 hex,`, "room block: cannot tell: write cooling.radiator.box"},
		{`left = { at = "200, 200, 50 mm" -> left = { light = true, tail = "0.05 m", at = "200, 200, 50 mm" && [tune] -> [solids.turbo]
keep-off = "20 mm"
[tune]`, "reach left: cannot tell: write driveline.solids.turbo.box"},
	} {
		t.Run(test.edit, func(t *testing.T) {
			c, d := composed(t, fleet(t, strings.Split(test.edit, " && ")...), "wagtail.toml")
			var all []string
			for _, i := range NewFit(c, d, testTolerances).Interfaces {
				if text := told(i); i.Verdict != Meets {
					all = append(all, text)
					if text == test.want {
						return
					}
				}
			}
			t.Errorf("want %s\ngot  %s", test.want, strings.Join(all, "\n     "))
		})
	}
}

// cable is an edit that lays a cable of a length over a way of 500 mm.
func cable(length string) string {
	return `vent = { end = "12 mm barb", gives = "crankcase breath", purpose = "vent" } -> throttle = { end = "M6x1 male rod-end", at = "0, 0, 300 mm" } && [sensors.wheel-speed] -> [parts.pedal.ports.top]
end = "M6x1 male rod-end"
at = "-500, 500, 500 mm"
[rods.throttle]
from = ["driveline.throttle", "M6x1 female rod-end"]
to = ["parts.pedal.top", "M6x1 female rod-end"]
cable = true
length = "` + length + `"
[sensors.wheel-speed]`
}

// TestACableMayBeLong: it bends.
func TestACableMayBeLong(t *testing.T) {
	edits := strings.Split(cable("900 mm"), " && ")
	c, d := composed(t, fleet(t, edits...), "wagtail.toml")
	for _, i := range NewFit(c, d, testTolerances).Interfaces {
		if i.Kind == ReachKind && i.Name == "throttle" && i.Verdict == Meets {
			return
		}
	}
	t.Error("a cable of 900 mm over a way of 500 mm does not meet")
}

// TestFitOnSolidMounts: an engine that does not rock asks for no slack.
func TestFitOnSolidMounts(t *testing.T) {
	c, d := composed(t, fleet(t, `rocks = "10 mm" -> rocks = "none"`), "wagtail.toml")
	for _, i := range NewFit(c, d, testTolerances).Interfaces {
		if (i.Kind == ReachKind || i.Kind == RoomKind) && i.Verdict != Meets {
			t.Error(told(i))
		}
	}
}

func TestFitOfAnotherCar(t *testing.T) {
	m, err := FromCar(fleet(t), "wagtail.toml", "pipit.toml")
	if err != nil {
		t.Fatal(err)
	}
	fit := NewFit(m.Received, derived(m.Received), testTolerances)
	var got []string
	for _, i := range fit.Interfaces {
		got = append(got, told(i))
	}
	want := []string{
		"mount left: meets",
		"mount right: missing: the car has no bracket for it",
		"port driveline.gauge: left over: the driveline has no gauge: cap it and tie it back",
		"port driveline.fuel-in: meets with an adaptor, step: thread 9/16-18 against 3/4-16",
		"port driveline.loom: missing: nothing on the car meets it",
		"port driveline.prop: missing: nothing on the car meets it",
		"port driveline.spare: left over: to be capped: spare",
		"port driveline.starter: missing: nothing on the car meets it: it takes battery feed",
		"port driveline.steer-in: missing: nothing on the car meets it: it takes steering fluid",
		"port driveline.steer-out: missing: nothing on the car meets it: it gives steering fluid",
		"port driveline.test-point: left over: capped: cap on a chain",
		"port driveline.vent: left over: to be led somewhere: vent",
		"port driveline.water-in: missing: nothing on the car meets it: it takes coolant",
		"port driveline.water-out: missing: nothing on the car meets it: it gives coolant",
		"sensor wheel-speed: cannot tell: not said: the sensors of the car",
		"sensor crank: meets",
		"throttle throttle: must be made: throttle cable against electronic",
		"reach feed: cannot tell: write fits.lump.rocks",
		"room block: cannot tell: write solids",
	}
	if diff := gocmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if fit.Count(Missing) != 8 {
		t.Errorf("%d missing", fit.Count(Missing))
	}
}

// TestFitEmptiesTheDrawer asks for two chains of the one adaptor that the shop has.
func TestFitEmptiesTheDrawer(t *testing.T) {
	for _, test := range []struct {
		have string
		want []string
	}{
		{"have = 2", []string{"step", "step"}},
		{"have = 1", []string{"step", "flare reducer"}},
	} {
		c, d := composed(t, fleet(t, "female 37-flare 90deg -> -6 female 37-flare 90deg", "have = 1 -> "+test.have,
			`water-out = { end = "38 mm bead" -> water-out = { end = "-8 male 37-flare"`,
			`["driveline.water-out", "38 mm hose"] -> ["driveline.water-out", "-6 female 37-flare"]`), "wagtail.toml")
		var got []string
		for _, i := range NewFit(c, d, testTolerances).Interfaces {
			got = append(got, adaptorNames(i.Chain)...)
		}
		if diff := gocmp.Diff(test.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.have, diff)
		}
	}
}

// TestFitNamesWhatStarves takes from the driveline what the car cannot do
// without, and what it can.
func TestFitNamesWhatStarves(t *testing.T) {
	line := func(port, service string) string {
		return fmt.Sprintf(`[sensors.wheel-speed] -> [lines.more]
from = ["driveline.%s", "12 mm hose"]
to = ["parts.more.in", "12 mm hose"]
[parts.more.ports.in]
end = "12 mm barb"
takes = "%s"
[sensors.wheel-speed]`, port, service)
	}
	for _, test := range []struct{ edit, want string }{
		{line("tap", "vacuum"), "port driveline.tap: missing: the driveline has no tap: parts.more.in gets no vacuum"},
		{line("tap", "fuel"), "port driveline.tap: missing: the driveline has no tap: parts.more.in gets no fuel"},
		{line("tap", "coolant"), "port driveline.tap: left over: the driveline has no tap: cap it and tie it back"},
		{circuit("charging"), "port driveline.stud: missing: the driveline has no stud: nothing charges the battery"},
		{circuit("earth"), "port driveline.stud: missing: the driveline has no stud: no strap brings the driveline to earth"},
		{circuit("starter"), "port driveline.stud: left over: the driveline has no stud: insulate it, or take its supply off"},
	} {
		c, d := composed(t, fleet(t, test.edit), "wagtail.toml")
		var got []string
		for _, i := range NewFit(c, d, testTolerances).Interfaces {
			if i.Kind == PortKind && i.Driveline == "" {
				got = append(got, told(i))
			}
		}
		if diff := gocmp.Diff([]string{test.want}, got); diff != "" {
			t.Errorf("%s\n(-want +got):\n%s", test.edit, diff)
		}
	}
}

func circuit(purpose string) string {
	return fmt.Sprintf(`[sensors.wheel-speed] -> [circuits.more]
from = ["driveline.stud", "M8 ring copper"]
to = "chassis"
purpose = "%s"
[sensors.wheel-speed]`, purpose)
}

func TestFitWithoutAPump(t *testing.T) {
	o := fleet(t)
	c, d := composed(t, o, "wagtail.toml")
	m, err := FromCar(o, "wagtail.toml", "pipit.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		fit  *Fit
		want string
	}{
		{NewFit(m.Received, derived(m.Received), testTolerances, "driveline.pumps.steering"), "left over"},
		{NewFit(c, d, testTolerances, "driveline.pumps.steering"), "missing"},
	} {
		for _, name := range []string{"driveline.steer-in", "driveline.steer-out"} {
			found := ""
			for _, i := range test.fit.Interfaces {
				if i.Kind == PortKind && i.Name == name {
					found += told(i)
				}
			}
			if want := "port " + name + ": " + test.want + ": steering stays with the giving car"; found != want {
				t.Errorf("got %q, want %q", found, want)
			}
		}
	}
}

// TestPrismGap works out distances that can be read off a drawing.
func TestPrismGap(t *testing.T) {
	box := func(x0, x1, y0, y1, z0, z1 float64) prism {
		return prism{corners: [4][2]float64{{x0, z0}, {x1, z0}, {x1, z1}, {x0, z1}}, low: y0, right: y1}
	}
	diamond := prism{corners: [4][2]float64{{0, -1}, {1, 0}, {0, 1}, {-1, 0}}, low: 0, right: 1} // a square on its corner
	for _, test := range []struct {
		name string
		a, b prism
		want float64
	}{
		{"face to face", box(0, 1, 0, 1, 0, 1), box(3, 4, 0, 1, 0, 1), 2},
		{"across", box(0, 1, 0, 1, 0, 1), box(0, 1, 4, 5, 0, 1), 3},
		{"corner to corner", box(0, 1, 0, 1, 0, 1), box(4, 5, 0, 1, 5, 6), 5},
		{"corner to corner in all three", box(0, 1, 0, 1, 0, 1), box(3, 4, 3, 4, 2, 3), 3},
		{"touching", box(0, 1, 0, 1, 0, 1), box(1, 2, 0, 1, 0, 1), 0},
		{"one in the other", box(0, 9, 0, 9, 0, 9), box(3, 4, 3, 4, 3, 4), 0},
		{"a corner to a face", diamond, box(2, 3, 0, 1, -5, 5), 1},
		{"a corner to a slope", diamond, box(1, 2, 0, 1, 1, 2), math.Sqrt2 / 2},
		{"slopes overlap", diamond, box(0.4, 2, 0, 1, 0.4, 2), 0},
	} {
		for _, got := range []float64{test.a.gap(test.b), test.b.gap(test.a)} {
			if math.Abs(got-test.want) > 1e-12 {
				t.Errorf("%s: %g, want %g", test.name, got, test.want)
			}
		}
	}
}

// TestBend holds the allowance for bends against the length of an arc: a hose
// that starts square to the straight line and ends along it runs at least R (pi/2
// - 1) further, and one that needs no turn nothing.
func TestBend(t *testing.T) {
	for _, test := range []struct{ edit, spare string }{
		{"", "90deg"}, // the elbow turns the hose to where it has to go
		{"female 37-flare 90deg -> female 37-flare", "straight"},
	} {
		edits := []string{}
		if test.edit != "" {
			edits = append(edits, test.edit)
		}
		c, d := composed(t, fleet(t, edits...), "wagtail.toml")
		bends := 0.0
		for _, i := range NewFit(c, d, testTolerances).Interfaces {
			if i.Kind == ReachKind && i.Name == "feed" {
				for _, f := range i.Figures {
					if f.Name == "bends" {
						bends = f.Value
					}
				}
			}
		}
		// From the tank at (-2.0, 0, 0.3) the hose runs to the port at (-0.5, -0.15,
		// 0.5), which faces back, as the tank's faces forward: both 9.46 degrees off
		// the line.
		off := math.Atan2(math.Hypot(0.15, 0.2), 1.5)
		turn := off
		if test.spare == "90deg" {
			turn = math.Pi/2 - off
		}
		want := 0.085 * (off - math.Sin(off) + turn - math.Sin(turn))
		if math.Abs(bends-want) > 1e-9 {
			t.Errorf("%s: bends ask for %g, want %g", test.spare, bends, want)
		}
	}
}

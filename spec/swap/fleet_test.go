package swap

import (
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// A fleet of two cars and two drivelines that says just enough to swap.
const (
	wagtail = `
[car]
name = "Wagtail"
driveline = "lump.toml"
shop = "barn.toml"
throttle = "electronic"
[fits.lump]
at = "-0.5, 0, 0.2 m"
nose-up = "0 deg"
rocks = "10 mm"
leaves = ["up", "forward"]
behind = ["bonnet", "cooling.radiator"]
[mounts]
left = { meets = "driveline.left", at = "-300, 200, 250 mm", holes = "2 x 10.5 mm clear, 80 mm apart fore-aft", bolts = "2 x M10x1.5x40 8.8 hex, 40 N m, oiled, wire", behind = "bonnet" }
right = { meets = "driveline.right", at = "-300, -200, 250 mm", holes = "2 x 10.5 mm clear, 80 mm apart fore-aft", bolts = "2 x M10x1.5x40 8.8 hex, 40 N m, oiled, wire", behind = "bonnet" }
[fuel]
carries = "fuel"
[fuel.cell.ports]
feed = { end = "-8 male 37-flare", at = "-2000, 0, 300 mm", faces = "forward" }
[cooling]
carries = "coolant"
[cooling.radiator]
held = "4 x M6x1x20 8.8 hex, 8 N m, dry"
drain = "1 x M12x1.5 hex, 15 N m, into aluminium, 12 x 16 copper washer"
behind = "bonnet"
ports.in = { end = "38 mm bead", at = "400, 0, 400 mm", faces = "back" }
ports.out = { end = "38 mm bead", at = "400, 100, 200 mm", faces = "back" }
ports.fill = { end = "-8 male 37-flare", at = "400, 200, 300 mm", faces = "back" }
[cooling.header]
ports.fill = { end = "-8 male 37-flare", at = "-600, 300, 600 mm", faces = "down" }
[steering]
carries = "steering fluid"
[steering.rack]
ports.in = { end = "-6 male 37-flare", at = "100, 100, 150 mm", faces = "back" }
ports.out = { end = "-10 male 37-flare", at = "100, -100, 150 mm", faces = "back" }
[lines]
feed = { hose = "1.9 m of braid-8", from = ["fuel.cell.feed", "female 37-flare"], to = ["driveline.fuel-in", "female 37-flare 90deg", "35 N m, oiled"], behind = "bonnet" }
water-hot = { hose = "0.7 m of water-38", from = ["driveline.water-out", "38 mm hose"], to = ["cooling.radiator.in", "38 mm hose"], behind = "bonnet" }
water-cold = { hose = "0.9 m of water-38", from = ["cooling.radiator.out", "38 mm hose"], to = ["driveline.water-in", "38 mm hose"], behind = "tray" }
water-fill = { hose = "1.6 m of braid-8", from = ["cooling.header.fill", "female 37-flare"], to = ["cooling.radiator.fill", "female 37-flare", "35 N m, oiled"] }
steer-pressure = { hose = "0.5 m of braid-6", from = ["driveline.steer-out", "female 37-flare", "19 N m, oiled"], to = ["steering.rack.in", "female 37-flare"], behind = "tray", tied = "cord to the rail" }
steer-suction = { hose = "0.6 m of braid-10", from = ["steering.rack.out", "female 37-flare"], to = ["driveline.steer-in", "female 37-flare", "45 N m, oiled"], behind = "tray" }
[shafts.prop]
from = ["driveline.prop", "65 mm female flange"]
to = ["final-drive.nose", "65 mm female flange"]
holes = "6 x 10.2 mm clear, on 90 mm circle, 60 mm pilot"
bolts = "6 x M10x1.5x35 10.9 hex, 68 N m, oiled"
length = "700 mm"
slip = "-15 to 15 mm"
behind = "tray"
[final-drive.ports]
nose = { end = "65 mm male flange", at = "-2000, 0, 200 mm", faces = "forward" }
[plugs.loom]
meets = ["driveline.loom", "size-24 key-W sockets connector"]
at = "-600, -200, 500 mm"
tail = "0.1 m"
behind = "bonnet"
[pins.loom]
A = { gives = "computer supply" }
B = { takes = "fan request" }
[electrics.battery]
place = "boot"
[electrics.posts]
main = { end = "M8 stud" }
[circuits]
starter = { from = "electrics.posts.main", to = ["driveline.starter", "M8 ring copper", "12 N m"], purpose = "starter", tail-when-out = "lug in a boot", behind = "tray" }
[sensors.wheel-speed]
kind = "hall"
[safety.fire-system]
state = "armed"
[access]
bonnet = { held = "4 x quarter-turn", from = "outside front", takes = "3 min" }
tray = { held = "8 x quarter-turn", from = "under", takes = "6 min" }
[solids]
bulkhead = { box = ["-1.30, -0.6, 0.1 m", "-1.29, 0.6, 0.8 m"] }
skin = { box = ["-1.0, -0.6, 0.75 m", "0.4, 0.6, 0.76 m"], part-of = "bonnet" }
`
	pipit = `
[car]
name = "Pipit"
driveline = "none"
shop = "barn.toml"
throttle = "cable"
[fits.lump]
at = "-0.5, 0, 0.2 m"
nose-up = "0 deg"
behind = "lid"
[mounts.left]
meets = "driveline.left"
at = "-300, 200, 250 mm"
holes = "2 x 10.5 mm clear, 80 mm apart fore-aft"
bolts = "2 x M10x1.5x40 8.8 hex, 40 N m, oiled"
[fuel]
carries = "fuel"
[fuel.cell.ports]
feed = { end = "-6 male 37-flare", at = "-2000, 0, 300 mm", faces = "forward" }
[lines.feed]
hose = "2.0 m of braid-6"
from = ["fuel.cell.feed", "female 37-flare"]
to = ["driveline.fuel-in", "female 37-flare"]
[lines.spare]
hose = "0.4 m of braid-6"
from = ["driveline.gauge", "female 37-flare"]
to = "open air"
[access]
lid = { from = "outside rear" }
`
	lump = `
[driveline]
name = "Lump"
shop = "barn.toml"
[engine]
throttle = "electronic"
[ports]
fuel-in = { end = "-8 male 37-flare", at = "0, -150, 300 mm", faces = "back", takes = "fuel", spills = "0.2 L" }
water-out = { end = "38 mm bead", at = "450, 0, 300 mm", faces = "forward", gives = "coolant", spills = "1 L" }
water-in = { end = "38 mm bead", at = "450, 100, 0 mm", faces = "forward", takes = "coolant", spills = "2 L" }
steer-out = { end = "-6 male 37-flare", at = "400, 200, 0 mm", faces = "forward", gives = "steering fluid", on = "pumps.steering" }
steer-in = { end = "-10 male 37-flare", at = "400, 200, 50 mm", faces = "right", takes = "steering fluid", on = "pumps.steering" }
prop = { end = "65 mm male flange", at = "-800, 0, 0 mm", faces = "back", holes = "6 x 10.2 mm clear, on 90 mm circle, 60 mm pilot" }
loom = { end = "size-24 key-W pins connector", at = "0, -200, 250 mm", tail = "0.3 m" }
starter = { end = "M8 stud", at = "50, -150, 0 mm", takes = "battery feed" }
vent = { end = "12 mm barb", gives = "crankcase breath", purpose = "vent" }
spare = { end = "12 mm barb", purpose = "spare" }
test-point = { end = "-4 male 37-flare", capped = "cap on a chain" }
[mounts]
left = { at = "200, 200, 50 mm", faces = "left", holes = "2 x M10x1.5 tapped 28 mm, 80 mm apart fore-aft, into cast-aluminium" }
right = { at = "200, -200, 50 mm", faces = "right", holes = "2 x M10x1.5 tapped 28 mm, 80 mm apart fore-aft, into cast-aluminium" }
[pins.loom]
A = { takes = "computer supply" }
B = { gives = "fan request" }
[pumps.steering]
goes = "either"
driven = "front belt"
bolts = "3 x M8x1.25x45 8.8 hex, 20 N m, oiled, into cast-aluminium"
[fluids]
coolant = { grade = "water and inhibitor", stays-in = "1 L", fill = "7 L", drain = "block" }
[drains.block]
plug = "1 x M14x1.5 hex, 25 N m, into cast-iron, 14 x 20 copper washer"
[sensors.crank]
kind = "hall"
[tune]
expects = ["crank", "car.wheel-speed"]
[solids]
block = { box = ["0, -0.2, -0.1 m", "0.5, 0.2, 0.5 m"], keep-off = "20 mm" }
`
	other = `
[driveline]
name = "Other"
[ports]
fuel-in = "-6 male 37-flare"
water-out = "38 mm bead"
loom = "size-24 key-W pins connector"
starter = "M8 stud"
[pins.loom]
A = { takes = "computer supply" }
B = { takes = "fan request" }
`
	barn = `
[shop]
name = "Barn"
[hoses]
braid-6 = { size = "-6", bend = "65 mm" }
braid-8 = { size = "-8", bend = "85 mm" }
braid-10 = { size = "-10", bend = "100 mm" }
water-38 = { size = "38 mm", bend = "100 mm" }
[adaptors]
step = { one = "-6 male 37-flare", other = "-8 female 37-flare", adds = "35 mm", have = 1 }
[torque-wrenches]
small = { range = "2 to 25 N m" }
big = { range = "20 to 100 N m" }
huge = { range = "30 to 300 N m" }
`
)

// fleet loads the four files, each with edits "old -> new" made first.
func fleet(t *testing.T, edits ...string) *spec.Outfit {
	t.Helper()
	files := map[string]string{"wagtail.toml": wagtail, "pipit.toml": pipit, "lump.toml": lump, "barn.toml": barn, "other.toml": other}
	for _, edit := range edits {
		old, now, _ := strings.Cut(edit, " -> ")
		done := false
		for _, name := range []string{"wagtail.toml", "lump.toml", "pipit.toml", "barn.toml"} {
			if !done && strings.Contains(files[name], old) {
				files[name], done = strings.Replace(files[name], old, now, 1), true
			}
		}
		if !done {
			t.Fatalf("no file says %q", old)
		}
	}
	disk := fstest.MapFS{}
	for name, text := range files {
		disk[name] = &fstest.MapFile{Data: []byte(text)}
	}
	o := spec.NewOutfit(&tree.Tree{FS: disk})
	for name := range files {
		o.Load(name)
	}
	for _, p := range o.Problems() {
		t.Fatal(p.Error())
	}
	return o
}

func composed(t *testing.T, o *spec.Outfit, car string) (*spec.Composition, *document.Document) {
	t.Helper()
	c, ok := o.Car(car)
	if !ok {
		t.Fatalf("%s: %v", car, o.Problems())
	}
	return c, derived(c)
}

func derived(c *spec.Composition) *document.Document {
	d := document.Join(c, time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC))
	workings.Derive(d)
	return d
}

package spec

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestPhrases loads each phrase and its long form at the same key, and wants
// equal values.
func TestPhrases(t *testing.T) {
	for _, c := range []struct{ name, file, key, phrase, long string }{
		{"end", "shop.toml", "adaptors.x.one", `"-8 male 37-flare 90deg steel"`,
			`{ size = "-8", gender = "male", form = "37-flare", bend = "90deg", metal = "steel" }`},
		{"end in another order", "shop.toml", "adaptors.x.one", `"steel 37-flare, male, 90deg -8"`,
			`{ size = "-8", gender = "male", form = "37-flare", bend = "90deg", metal = "steel" }`},
		{"end of a hose", "shop.toml", "adaptors.x.one", `"female 37-flare straight"`, `{ gender = "female", form = "37-flare", bend = "0 deg" }`},
		{"bead", "shop.toml", "adaptors.x.one", `"38 mm bead"`, `{ size = "38 mm", form = "bead" }`},
		{"bead guessed", "shop.toml", "adaptors.x.one", `"~38 mm bead"`, `{ size = "~38 mm", form = "bead" }`},
		{"size unknown", "shop.toml", "adaptors.x.one", `"? male 37-flare"`, `{ size = "?", gender = "male", form = "37-flare" }`},
		{"taper pipe", "shop.toml", "adaptors.x.one", `"1/8-27 NPT male taper-pipe"`, `{ size = "1/8-27 NPT", gender = "male", form = "taper-pipe" }`},
		{"banjo", "shop.toml", "adaptors.x.one", `"M10x1 female banjo"`, `{ size = "M10x1", gender = "female", form = "banjo" }`},
		{"inch thread", "shop.toml", "adaptors.x.one", `"3/8-24 UNF male inverted-flare"`, `{ size = "3/8-24 UNF", gender = "male", form = "inverted-flare" }`},
		{"connector", "shop.toml", "adaptors.x.one", `"size-24 key-N pins connector"`, `{ size = "size-24", key = "N", gender = "pins", form = "connector" }`},
		{"coupling", "shop.toml", "adaptors.x.one", `"-4 male dry-break stainless family-A valved O-ring"`,
			`{ size = "-4", gender = "male", form = "dry-break", metal = "stainless", family = "A", valved = true, seal = "O-ring" }`},
		{"stud", "shop.toml", "adaptors.x.one", `"M8 stud"`, `{ size = "M8", form = "stud" }`},
		{"port", "car.toml", "parts.x.ports.in", `"-6 male 37-flare"`, `{ end = { size = "-6", gender = "male", form = "37-flare" } }`},
		{"port with its end as a phrase", "car.toml", "parts.x.ports.in", `"-6 male 37-flare"`, `{ end = "-6 male 37-flare" }`},

		{"tapped holes", "car.toml", "mounts.x.holes", `"4 x M10x1.5 tapped 22 mm, 110 x 80 mm, long-side fore-aft"`,
			`{ count = 4, thread = "M10x1.5", depth = "22 mm", apart = "110 mm", wide = "80 mm", along = "fore-aft" }`},
		{"plain holes", "car.toml", "mounts.x.holes", `"2 x 10.5 mm clear, 70 mm apart fore-aft"`,
			`{ count = 2, clear = "10.5 mm", apart = "70 mm", along = "fore-aft" }`},
		{"holes on a circle", "car.toml", "mounts.x.holes", `"6 x 10.1 mm clear, on 84 mm circle, 30 mm pilot"`,
			`{ count = 6, clear = "10.1 mm", circle = "84 mm", pilot = "30 mm" }`},
		{"holes without a pilot", "car.toml", "mounts.x.holes", `"6 x 8.1 mm clear, on 86 mm circle, no pilot"`,
			`{ count = 6, clear = "8.1 mm", circle = "86 mm", pilot = "none" }`},
		{"holes in inches", "car.toml", "mounts.x.holes", `"4 x 3/8-16 tapped 0.9 in into cast-iron, 4 1/2 x 3.25 in"`,
			`{ count = 4, thread = "3/8-16", depth = "0.9 in", into = "cast-iron", apart = "4 1/2 in", wide = "3.25 in" }`},
		{"holes not measured", "car.toml", "mounts.x.holes", `"? x M10x1.5 tapped ?, ~110 x ? mm"`,
			`{ count = "?", thread = "M10x1.5", depth = "?", apart = "~110 mm", wide = "?" }`},

		{"hose", "car.toml", "lines.x.hose", `"2.95 m of ptfe-8, 2023-02"`, `{ length = "2.95 m", kind = "ptfe-8", made = "2023-02" }`},
		{"hose with no date", "car.toml", "lines.x.hose", `"~34 in of ptfe-8"`, `{ length = "~34 in", kind = "ptfe-8" }`},
		{"hose not measured", "car.toml", "lines.x.hose", `"? of ptfe-8, 2023"`, `{ length = "?", kind = "ptfe-8", made = "2023" }`},
		{"hose of no known kind", "car.toml", "lines.x.hose", `"1 m of ?"`, `{ length = "1 m", kind = "?" }`},

		{"bolts", "car.toml", "mounts.x.bolts", `"2 x M10x1.5x35 10.9 hex, 50 N m, wire"`,
			`{ count = 2, thread = "M10x1.5", length = "35 mm", class = "10.9", head = "hex", torque = "50 N m", lock = "wire" }`},
		{"bolts in another order", "car.toml", "mounts.x.bolts", `"wire, hex, 50 Nm, 10.9, 2 x M10x1.5x35"`,
			`{ count = 2, thread = "M10x1.5", length = "35 mm", class = "10.9", head = "hex", torque = "50 Nm", lock = "wire" }`},
		{"bolts guessed", "car.toml", "mounts.x.bolts", `"2 x M10x1.5x~35, ~50 N m"`, `{ count = 2, thread = "M10x1.5", length = "~35 mm", torque = "~50 N m" }`},
		{"torque unknown", "car.toml", "mounts.x.bolts", `"2 x M10x1.5, ? N m"`, `{ count = 2, thread = "M10x1.5", torque = "?" }`},
		{"inch bolts", "car.toml", "mounts.x.bolts", `"4 x 7/16-20 x 1 1/4 in grade-8 hex, 50 lbf ft, nyloc-nut"`,
			`{ count = 4, thread = "7/16-20", length = "1 1/4 in", class = "grade-8", head = "hex", torque = "50 lbf ft", nut = "nyloc-nut" }`},
		{"bolts into metal", "car.toml", "mounts.x.bolts", `"3 x M8x1.25x25 8.8 socket into cast-aluminium, 16 mm engaged, 13 mm across-flats, thread-lock-wet, thread-lock"`,
			`{ count = 3, thread = "M8x1.25", length = "25 mm", class = "8.8", head = "socket", into = "cast-aluminium", engaged = "16 mm", across-flats = "13 mm", threads = "thread-lock-wet", lock = "thread-lock" }`},
		{"drain plug", "car.toml", "oil.tank.drain", `"M18x1.5 hex, 35 N m, 18x24 copper washer"`,
			`{ thread = "M18x1.5", head = "hex", torque = "35 N m", washer = "18x24 copper washer" }`},
		{"tab washer is a lock", "car.toml", "mounts.x.bolts", `"M8x1.25x20, tab-washer, use-once"`,
			`{ thread = "M8x1.25", length = "20 mm", lock = "tab-washer", use-once = true }`},
		{"quarter-turns", "car.toml", "access.x.held", `"4 x quarter-turn"`, `{ count = 4, head = "quarter-turn" }`},

		{"injectors", "driveline.toml", "engine.injectors", `"5 x 1050 mL/min at 3.0 bar, measured with n-heptane"`,
			`{ count = 5, flow = "1050 mL/min", pressure = "3.0 bar", measured-with = "n-heptane" }`},
		{"injectors of the tune", "driveline.toml", "tune.injectors", `"~1050 mL/min at 3.0 bar"`, `{ flow = "~1050 mL/min", pressure = "3.0 bar" }`},
		{"tube", "car.toml", "safety.cage.main-tube", `"45 x 2.5 mm cold-drawn steel"`,
			`{ outer = "45 mm", wall = "2.5 mm", made = "cold-drawn", metal = "steel" }`},
		{"tube in inches", "car.toml", "safety.cage.main-tube", `"1 3/4 x 0.095 in steel"`, `{ outer = "1 3/4 in", wall = "0.095 in", metal = "steel" }`},

		{"where a line ends", "car.toml", "lines.x.to", `"driveline.fuel-in"`, `{ port = "driveline.fuel-in" }`},
		{"open end", "car.toml", "lines.x.to", `"open air"`, `{ port = "open air" }`},
		{"where and what", "car.toml", "lines.x.to", `["driveline.fuel-in", "female 37-flare 90deg"]`,
			`{ port = "driveline.fuel-in", end = { gender = "female", form = "37-flare", bend = "90deg" } }`},
		{"where, what and how tight", "car.toml", "lines.x.to", `["driveline.fuel-in", "?", "35 N m, oiled, machined-swivel, two copper washers, never-open"]`,
			`{ port = "driveline.fuel-in", end = "?", torque = "35 N m", threads = "oiled", make-up = "machined-swivel", washers = "two copper washers", never-open = true }`},
		{"clamped", "car.toml", "lines.x.to", `["driveline.water-in", "hose", "~5 N m, T-bolt clamp"]`,
			`{ port = "driveline.water-in", end = "hose", torque = "~5 N m", clamp = "T-bolt clamp" }`},
	} {
		t.Run(c.name, func(t *testing.T) {
			head := map[string]string{"car.toml": carHead, "driveline.toml": lineHead, "shop.toml": shopHead}[c.file]
			values := map[string]any{}
			for _, written := range []string{c.phrase, c.long} {
				i := strings.LastIndexByte(c.key, '.')
				o, problems := loadAll(map[string]string{c.file: head + "[" + c.key[:i] + "]\n" + c.key[i+1:] + " = " + written})
				if problems != "" {
					t.Fatalf("%s: %s", written, problems)
				}
				values[written] = o.Load(c.file).root()
			}
			if diff := cmp.Diff(values[c.long], values[c.phrase]); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// TestFind holds the words that subject paths lead to.
func TestFind(t *testing.T) {
	_, problems := loadAll(map[string]string{"car.toml": findText})
	if problems != "" {
		t.Fatal(problems)
	}
	f := outfitOf(map[string]string{"car.toml": findText}).Load("car.toml")
	for _, c := range []struct{ path, want string }{
		{"mounts.left.bolts", `"2 x M10x1.5x35 10.9 hex, ~50 N m, wire"`},
		{"mounts.left.bolts.torque", "~50 N m"},
		{"mounts.left.bolts#torque", "~50 N m"},
		{"mounts.left.bolts.count", "2"},
		{"mounts.left.bolts.length", "35"},
		{"mounts.left.bolts#10.9", "10.9"},
		{"mounts.left.bolts.washer", `"2 x M10x1.5x35 10.9 hex, ~50 N m, wire"`},
		{"mounts.left.holes.wide", "80"},
		{"mounts.left", "[mounts.left]"},
		{"mounts.left.grip", "[mounts.left]"},
		{"lines.feed.to.port", "driveline.fuel-in"},
		{"lines.feed.to.end", "female 37-flare 90deg"},
		{"lines.feed.to.end.bend", "90deg"},
		{"lines.feed.to.end.metal", "female 37-flare 90deg"},
		{"lines.feed.to.end#form", "37-flare"},
		{"lines.feed.to.torque", "35 N m"},
		{"lines.feed.to#threads", "oiled"},
		{"lines.feed.to.clamp", `["driveline.fuel-in", "female 37-flare 90deg", "35 N m, oiled"]`},
		{"lines.feed.to.0", `"driveline.fuel-in"`},
		{"lines.feed.from.port", "open air"},
		{"lines.feed.hose.kind", "ptfe-8"},
		{"lines.feed.hose#made", "2023-02"},
		{"lines.feed.tightest_bend", `"140 mm"`},
		{"fuel.cell.ports.feed.end", "-8 male 37-flare"},
		{"fuel.cell.ports.feed.end.size", "-8"},
		{"fuel.cell.ports.feed.max", `"-8 male 37-flare"`},
		{"fuel.cell.ports.vent.end.size", "-6"},
		{"fuel.cell.ports.vent.both", `"fuel vapour"`},
		{"fuel.cell.behind.1", `"boot-floor"`},
		{"fuel.cell.held.torque", `"24 N m"`},
	} {
		s := f.Find(c.path)
		if got := string(f.Text[s.Start:s.End]); got != c.want {
			t.Errorf("%s is at %q, want %q", c.path, got, c.want)
		}
	}
}

const findText = carHead + `
[access.boot-floor]
[access.bonnet]
[mounts.left]
bolts = "2 x M10x1.5x35 10.9 hex, ~50 N m, wire"
holes = "4 x 10.5 mm clear, 110 x 80 mm"
[lines.feed]
hose = "2.95 m of ptfe-8, 2023-02"
from = "open air"
to = ["driveline.fuel-in", "female 37-flare 90deg", "35 N m, oiled"]
tightest-bend = "140 mm"
[fuel.cell]
ports.feed = "-8 male 37-flare"
ports.vent = { end = "-6 male 37-flare", both = "fuel vapour" }
behind = ["bonnet", "boot-floor"]
held = { count = 4, torque = "24 N m" }
`

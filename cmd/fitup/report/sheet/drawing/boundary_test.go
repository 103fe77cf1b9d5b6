package drawing

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/swap"
)

// parted plans how the driveline of a car comes out of it, with some parts held to
// leave with it.
func parted(t *testing.T, car string, held ...string) (*document.Document, *swap.Plan) {
	t.Helper()
	o := demo()
	if car == "car.toml" {
		o = crowded()
	}
	return partedOf(t, o, car, held...)
}

func partedOf(t *testing.T, o *spec.Outfit, car string, held ...string) (*document.Document, *swap.Plan) {
	t.Helper()
	c, d := compositionOf(t, o, car)
	options := swap.Options{Held: map[string]swap.Side{}}
	for _, part := range held {
		options.Held[part] = swap.Leaves
	}
	plan, err := swap.NewPlan(c, d, options)
	if err != nil {
		t.Fatal(err)
	}
	return d, plan
}

// partings are all ways in which a driveline of the demo is parted from its car: a
// receiving car may need the steering pump. The last car is crowded on purpose.
var partings = []struct {
	car  string
	held []string
}{
	{"cars/mizzle.toml", nil},
	{"cars/mizzle.toml", []string{"driveline.pumps.steering"}},
	{"cars/squall.toml", nil},
	{"car.toml", nil},
}

// TestBoundaryKeepsClear asks that the boundary can be read.
func TestBoundaryKeepsClear(t *testing.T) {
	for _, c := range partings {
		d, plan := parted(t, c.car, c.held...)
		drawn := Boundary(d, plan)
		checkClear(t, drawn)
		next, _ := NextBest(d, plan)
		checkClear(t, next)
		if drawn.Size.X > PaperWidth || drawn.Size.Y > paperHeight {
			t.Errorf("%s: %.0f x %.0f mm", c.car, drawn.Size.X, drawn.Size.Y)
		}
	}
	d, plan := partedOf(t, longNames(), "car.toml")
	checkClear(t, Boundary(d, plan))
}

// TestHalvesStandOnTheirSides moves a part of the car out with the driveline: its
// joint is between a line that stays and a port that leaves, and the line from it to
// the driveline leaves its clips. Minutes are those of the table of efforts.
func TestHalvesStandOnTheirSides(t *testing.T) {
	const hose = "hose = \"1 m of braided-8\"\n"
	d, plan := partedOf(t, outfit("[car]\nname = \"Car\"\ndriveline = \"lump.toml\"\nshop = \"shop.toml\"\n"+
		"[parts.log]\ngoes = \"driveline\"\nports.out = { end = \"-8 male 37-flare\", gives = \"fuel\" }\nports.in = { end = \"-8 male 37-flare\", takes = \"fuel\" }\n"+
		"[parts.tank]\nports.out = { end = \"-8 male 37-flare\", gives = \"fuel\" }\nports.back = { end = \"-8 male 37-flare\", takes = \"fuel\" }\n"+
		"[lines.to-log]\n"+hose+"from = [\"parts.tank.out\", \"female 37-flare\"]\nto = [\"parts.log.in\", \"female 37-flare\"]\n"+
		"[lines.from-log]\n"+hose+"from = [\"parts.log.out\", \"female 37-flare\"]\nto = [\"driveline.in\", \"female 37-flare\"]\n",
		"[driveline]\nname = \"Lump\"\n[ports]\nin = { end = \"-8 male 37-flare\", takes = \"fuel\" }\n"), "car.toml")
	want := map[string]string{
		"lines.to-log.to":      "to-log | log in | 5 | ? | wet",
		"lines.from-log.clips": "car | from-log | 1 | dry",
		"parts.log.held":       "car | log | 7 | dry",
	}
	if diff := cmp.Diff(want, rowsOf(Boundary(d, plan))); diff != "" {
		t.Errorf("rows, want -, got +\n%s", diff)
	}
}

// rowsOf are the rows of a boundary: the words of each joint, and its mark.
func rowsOf(d Drawing) map[string]string {
	rows := map[string]string{}
	for _, m := range d.Marks {
		g, isGroup := m.(Group)
		if !isGroup || len(g.Marks) == 0 || slices.Contains([]string{"key", "stays", "leaves", "boundary"}, g.Of) {
			continue
		}
		words, sign := []string{}, "shut"
		for _, m := range g.Marks {
			switch m := m.(type) {
			case Text:
				words = append(words, m.Lines...)
			case Circle:
				sign = "dry"
			case Path:
				if m.Closed {
					sign = "wet"
				}
			}
		}
		rows[g.Of] = strings.Join(append(words, sign), " | ")
	}
	return rows
}

// TestBoundaryOfTheDemo compares rows with what the demo's files say: which ends
// meet, what runs out (`spills`), and the table of efforts.
func TestBoundaryOfTheDemo(t *testing.T) {
	d, plan := parted(t, "cars/mizzle.toml")
	got := rowsOf(Boundary(d, plan))
	for joint, want := range map[string]string{
		"lines.fuel-feed.to":                  "fuel-feed | fuel-in | 5 | 0.15 L | wet",
		"lines.water-bleed.from":              "water-bleed | water-bleed | 5 | ? | wet",
		"lines.clutch.to":                     "clutch | clutch-in | 0.5 | dry", // a dry-break that shuts itself
		"lines.oil-breather.from":             "oil-breather | oil-breather | 3 | dry",
		"exhaust.pipes.front.from":            "front | exhaust-out | 7 | dry",
		"circuits.starter.to":                 "starter | starter | 3 | dry",
		"driveline.pumps.steering.bolts":      "steering pump | driveline | 8 | dry",
		"lines.steer-pressure.from":           "", // the pump stays on its lines
		"mounts.engine-left":                  "bracket engine-left | engine-left | 4 | dry",
		"shafts.prop.from":                    "prop | prop | 15 | dry",
		"lines.turbo-oil-feed.from":           "",
		"driveline.lines.turbo-oil-feed.to":   "",
		"driveline.lines.turbo-water-back.to": "",
	} {
		if got[joint] != want {
			t.Errorf("%s is drawn as %q, want %q", joint, got[joint], want)
		}
	}
}

// TestNextBestOfTheDemo asks for what the next best way changes: the steering pump
// leaves, so its two hoses are opened and its bolts are not.
func TestNextBestOfTheDemo(t *testing.T) {
	d, plan := parted(t, "cars/mizzle.toml")
	next, ok := NextBest(d, plan)
	want := map[string]string{
		"lines.steer-pressure.from":      "steer-pressure | steer-out | 5 | 0.1 L | wet",
		"lines.steer-suction.to":         "steer-suction | steer-in | 5 | 0.4 L | wet",
		"driveline.pumps.steering.bolts": "steering pump | driveline | 8 | shut",
	}
	if diff := cmp.Diff(want, rowsOf(next)); !ok || diff != "" {
		t.Errorf("rows, want -, got +\n%s", diff)
	}
	if _, ok := NextBest(parted(t, "cars/squall.toml")); ok {
		t.Error("squall has no part that may go either way, and yet a next best way")
	}
}

// TestBoundaryIsTheCut asks that the rows are the joints of the cut, no more and no
// less, and that their weights with those of what comes off first are the whole.
func TestBoundaryIsTheCut(t *testing.T) {
	for _, c := range partings {
		d, plan := parted(t, c.car, c.held...)
		b := newBoundary(d, plan)
		var names []string
		sum, wet, spill := swap.Seconds(0), 0, 0.0
		for _, o := range b.open {
			names = append(names, o.Name)
			sum += o.Effort
			spill += o.Spill
			if o.Wet {
				wet++
			}
		}
		for _, a := range plan.Network.Access {
			if slices.Contains(plan.Parting.Best.Off, a.Name) {
				sum += a.Price
			}
		}
		slices.Sort(names)
		best := plan.Parting.Best
		if diff := cmp.Diff(best.Open, names); diff != "" {
			t.Errorf("%s: joints, want -, got +\n%s", c.car, diff)
		}
		if sum != best.Effort || wet != best.Wet || math.Abs(spill-best.Spill) > 1e-9 {
			t.Errorf("%s: rows sum to %d s, %d wet, %g m³; the cut to %d s, %d wet, %g m³", c.car, sum, wet, spill, best.Effort, best.Wet, best.Spill)
		}
	}
}

// TestNothingToPart draws a car of which nothing is written that joins it to its
// driveline.
func TestNothingToPart(t *testing.T) {
	d, plan := partedOf(t, outfit("[car]\nname = \"Car\"\ndriveline = \"lump.toml\"\n", "[driveline]\nname = \"Lump\"\n"), "car.toml")
	drawn := Boundary(d, plan)
	checkClear(t, drawn)
	want := []string{"Nothing joins it to its driveline, as far as it is written."}
	if diff := cmp.Diff(want, drawn.Text); diff != "" {
		t.Errorf("text, want -, got +\n%s", diff)
	}
}

// TestPumpChangesSides asks that a part held to leave is drawn on the side that
// leaves, with its hoses opened.
func TestPumpChangesSides(t *testing.T) {
	d, plan := parted(t, "cars/mizzle.toml", "driveline.pumps.steering")
	drawn := Boundary(d, plan)
	rows := rowsOf(drawn)
	if want := "steer-suction | steer-in | 5 | 0.4 L | wet"; rows["lines.steer-suction.to"] != want {
		t.Errorf("steer-suction is drawn as %q, want %q", rows["lines.steer-suction.to"], want)
	}
	if row, is := rows["driveline.pumps.steering.bolts"]; is {
		t.Errorf("the pump leaves with its bolts shut, and is drawn as %q", row)
	}
	for _, line := range drawn.Text {
		if strings.HasPrefix(line, "Left on its lines") {
			t.Errorf("the pump leaves, yet %q", line)
		}
	}
}

// TestBoundaryInWords asks that the text equivalents tell of joints, of what is tied,
// of what stays shut and of the next best way.
func TestBoundaryInWords(t *testing.T) {
	d, plan := parted(t, "cars/mizzle.toml")
	next, _ := NextBest(d, plan)
	told := append(Boundary(d, plan).Text, next.Text...)
	for _, want := range []string{
		"Open fuel, fuel-in from fuel-feed: 5 min, wet, 0.15 L runs out.",
		"Open coolant, water-bleed from water-bleed: 5 min, wet, how much runs out is not measured.",
		"Left on its lines: steering pump, tied by cord to the left wing stay, when the pump stays with the car.",
		"Not opened: steering fluid.",
		"The other way goes: steering pump; 2 minutes more.",
		"Open besides steering, steer-in from steer-suction: 5 min, wet, 0.4 L runs out.",
		"Leave shut bolts, driveline from steering pump: 8 min, dry.",
	} {
		if !slices.Contains(told, want) {
			t.Errorf("the text equivalents lack %q:\n%s", want, strings.Join(told, "\n"))
		}
	}
}

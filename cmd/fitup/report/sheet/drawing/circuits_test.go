package drawing

import (
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/swap"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

var demoCars = []string{"cars/squall.toml", "cars/mizzle.toml", "cars/haar.toml"}

func demo() *spec.Outfit {
	return spec.NewOutfit(&tree.Tree{FS: os.DirFS("../../../../..")})
}

// compositionOf is a car of an outfit as it stands, with its document.
func compositionOf(t *testing.T, o *spec.Outfit, car string) (*spec.Composition, *document.Document) {
	t.Helper()
	c, ok := o.Car(car)
	if !ok {
		t.Fatalf("%s: %v", car, o.Problems())
	}
	return c, documentOf(c)
}

func documentOf(c *spec.Composition) *document.Document {
	d := document.Join(c, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC))
	workings.Derive(d)
	return d
}

// crowded is a car with far more in it than anybody would draw by hand: parts that
// all hang on each other, long names, ends that lead nowhere.
func crowded() *spec.Outfit {
	var car, driveline strings.Builder
	car.WriteString("[car]\nname = \"Crowd\"\ndriveline = \"lump.toml\"\nshop = \"shop.toml\"\n[fuel]\ncarries = \"fuel\"\n")
	driveline.WriteString("[driveline]\nname = \"Lump\"\n[ports]\n")
	const parts, ports = 9, 12
	for i := range ports {
		fmt.Fprintf(&driveline, "in-with-a-long-name-%d = { end = \"-8 male 37-flare\", takes = \"fuel\" }\n", i)
	}
	for i := range parts {
		fmt.Fprintf(&car, "[parts.%s-%d]\n", strings.Repeat("manifold-", 1+i%3), i)
		for j := range parts {
			fmt.Fprintf(&car, "ports.outlet-%d = { end = \"-8 male 37-flare\", gives = \"fuel\" }\n", j)
		}
	}
	part := func(i int) string { return fmt.Sprintf("parts.%s-%d", strings.Repeat("manifold-", 1+i%3), i) }
	line := func(name, from, to string) {
		fmt.Fprintf(&car, "[lines.%s]\nhose = \"1.25 m of braided-8, 2024-01\"\nfrom = [%q, \"female 37-flare\"]\nto = [%q, \"female 37-flare 90deg\"]\n", name, from, to)
	}
	for i := range ports {
		line(fmt.Sprintf("feed-%d", i), fmt.Sprintf("%s.outlet-%d", part(i%parts), i%3), fmt.Sprintf("driveline.in-with-a-long-name-%d", i))
	}
	for i := range parts {
		line(fmt.Sprintf("across-%d", i), part(i)+".outlet-4", part((i*4+1)%parts)+".outlet-5")
		line(fmt.Sprintf("onward-%d", i), part(i)+".outlet-6", part((i*2+3)%parts)+".outlet-7")
	}
	line("vent", part(0)+".outlet-8", "open air")
	fmt.Fprintf(&car, "[lines.lost]\nfrom = [%q, \"female 37-flare\"]\n", part(1)+".outlet-8")
	fmt.Fprintf(&car, "[lines.astray]\nfrom = [%q, \"female 37-flare\"]\nto = \"?\"\n", part(2)+".outlet-8")
	return outfit(car.String(), driveline.String())
}

// manifold is a car with one part from which more lines lead to the driveline than
// lettering side by side has room for.
func manifold() *spec.Outfit {
	var car, driveline strings.Builder
	car.WriteString("[car]\nname = \"Fan\"\ndriveline = \"lump.toml\"\nshop = \"shop.toml\"\n[parts.log.ports]\n")
	driveline.WriteString("[driveline]\nname = \"Lump\"\n[ports]\n")
	for i := range 8 {
		fmt.Fprintf(&driveline, "in-%d = { end = \"-8 male 37-flare\", takes = \"fuel\" }\n", i)
		fmt.Fprintf(&car, "out-%d = { end = \"-8 male 37-flare\", gives = \"fuel\" }\n", i)
	}
	for i := range 8 {
		fmt.Fprintf(&car, "[lines.feed-%d]\nhose = \"1.25 m of braided-8, 2024-01\"\nfrom = [\"parts.log.out-%d\", \"female 37-flare\"]\nto = [\"driveline.in-%d\", \"female 37-flare\"]\n", i, i, i)
	}
	return outfit(car.String(), driveline.String())
}

// longNames is a car of which every name is as long as may be.
func longNames() *spec.Outfit {
	long := func(name string) string { return name + strings.Repeat("-and-more", 4) }
	car := "[car]\nname = \"" + strings.Repeat("Long ", 60) + "\"\ndriveline = \"lump.toml\"\nshop = \"shop.toml\"\n" +
		"[parts." + long("part") + ".ports]\n" + long("out") + " = { end = \"-8 male 37-flare\", gives = \"" + strings.Repeat("goo <b> & ", 40) + "\" }\n" +
		"[lines." + long("line") + "]\nhose = \"1 m of braided-8\"\nends = \"" + strings.Repeat("somewhere ", 40) + "\"\n" +
		"from = [\"parts." + long("part") + "." + long("out") + "\", \"female 37-flare\"]\nto = \"open air\"\n" +
		"[lines." + long("across") + "]\nfrom = [\"parts." + long("part") + "." + long("out") + "\", \"female 37-flare\"]\n" +
		"to = [\"driveline." + long("in") + "\", \"female 37-flare\"]\n"
	return outfit(car, "[driveline]\nname = \"Lump\"\n[ports]\n"+long("in")+" = { end = \"-8 male 37-flare\" }\n")
}

// outfit is a car in memory, with its driveline and the hose that both use.
func outfit(car, driveline string) *spec.Outfit {
	return spec.NewOutfit(&tree.Tree{FS: fstest.MapFS{
		"car.toml":  {Data: []byte(car)},
		"lump.toml": {Data: []byte(driveline)},
		"shop.toml": {Data: []byte("[shop]\nname = \"Shop\"\n[hoses.braided-8]\nsize = \"-8\"\nbore = \"11.1 mm\"\n")},
	}})
}

// manyFlags flags everything in a document that the circuits could show.
func manyFlags(d *document.Document) []Flag {
	var all []Flag
	levels := []policies.Level{0, policies.LevelAdvice, policies.LevelFault, policies.LevelDanger}
	for i := range d.Lines {
		for n := range 1 + i%5 {
			all = append(all, Flag{Sign: fmt.Sprint(10*i + n), Level: levels[(i+n)%4], Subject: d.Lines[i].Path, Says: "flagged"})
		}
	}
	return append(all, Flag{Sign: "7", Level: policies.LevelFault, Subject: "fuel", Says: "too little of it"})
}

// parts of a drawing by which it is tested.
type traits struct {
	outlines []Box  // of parts
	ways     []Path // of lines
}

func traitsOf(marks []Mark) traits {
	var all traits
	for _, m := range marks {
		switch m := m.(type) {
		case Group:
			within := traitsOf(m.Marks)
			all.outlines, all.ways = append(all.outlines, within.outlines...), append(all.ways, within.ways...)
		case Path:
			switch {
			case m.Closed && len(m.Points) == 4 && (m.Pen == Wide || m.Pen == Dashed):
				all.outlines = append(all.outlines, Box{m.Points[0], m.Points[2]})
			case !m.Closed && m.Pen == Wide:
				all.ways = append(all.ways, m)
			}
		}
	}
	return all
}

// legs are the straight pieces of a way, as boxes without width.
func legs(p Path) []Box {
	var all []Box
	for i := 1; i < len(p.Points); i++ {
		a, b := p.Points[i-1], p.Points[i]
		all = append(all, Box{Point{min(a.X, b.X), min(a.Y, b.Y)}, Point{max(a.X, b.X), max(a.Y, b.Y)}})
	}
	return all
}

const hair = 0.02 // mm, by which what touches may seem to meet

// checkClear asks that nothing in a drawing lies on anything else, and nothing
// outside its frame.
func checkClear(t *testing.T, d Drawing) {
	t.Helper()
	texts, found := textsOf(d.Marks), traitsOf(d.Marks)
	for i, a := range texts {
		box := a.Box().Grown(-hair)
		if !d.Frame().Holds(box) {
			t.Errorf("%s: %q leaves the frame: %v in %v", d.Name, a.Lines, box, d.Size)
		}
		for _, b := range texts[:i] {
			if len(a.Lines) > 0 && len(b.Lines) > 0 && box.Meets(b.Box().Grown(-hair)) {
				t.Errorf("%s: %q lies on %q", d.Name, a.Lines, b.Lines)
			}
		}
		for _, o := range found.outlines {
			if box.Meets(o) && !o.Holds(box) {
				t.Errorf("%s: %q lies across the outline %v", d.Name, a.Lines, o)
			}
		}
		for _, way := range found.ways {
			for _, leg := range legs(way) {
				if leg.Grown(hair).Meets(box) {
					t.Errorf("%s: a line goes through %q", d.Name, a.Lines)
				}
			}
		}
	}
	for i, a := range found.outlines {
		if !d.Frame().Holds(a) {
			t.Errorf("%s: the outline %v leaves the frame %v", d.Name, a, d.Size)
		}
		for _, b := range found.outlines[:i] {
			if a.Grown(-hair).Meets(b) {
				t.Errorf("%s: the outlines %v and %v meet", d.Name, a, b)
			}
		}
		for _, way := range found.ways {
			for _, leg := range legs(way) {
				if leg.Grown(hair).Meets(a.Grown(-2 * hair)) {
					t.Errorf("%s: a line goes through the part %v", d.Name, a)
				}
			}
		}
	}
}

// demoDocuments are the cars of the demo as they stand, and with every driveline
// that may come into them from another.
func demoDocuments(t *testing.T) map[string]*document.Document {
	t.Helper()
	all := map[string]*document.Document{}
	for _, car := range demoCars {
		_, all[car] = compositionOf(t, demo(), car)
		for _, from := range demoCars[:2] {
			if from == car {
				continue
			}
			move, err := swap.FromCar(demo(), from, car)
			if err != nil {
				t.Fatal(err)
			}
			all[car+" with what is in "+from] = documentOf(move.Received)
		}
	}
	return all
}

// TestCircuitsKeepClear asks that circuits can be read: those of the demo, with and
// without flags, and of cars that are crowded on purpose.
func TestCircuitsKeepClear(t *testing.T) {
	all := demoDocuments(t)
	for name, o := range map[string]*spec.Outfit{"crowded": crowded(), "manifold": manifold(), "long names": longNames()} {
		_, all[name] = compositionOf(t, o, "car.toml")
	}
	for _, d := range all {
		for _, flags := range [][]Flag{nil, manyFlags(d)} {
			for _, drawn := range Circuits(d, flags) {
				checkClear(t, drawn)
				checkApart(t, drawn)
			}
		}
	}
}

// TestCircuitsOfTheDemoFitThePaper asks that none has to be drawn smaller.
func TestCircuitsOfTheDemoFitThePaper(t *testing.T) {
	for name, d := range demoDocuments(t) {
		for _, drawn := range Circuits(d, nil) {
			if drawn.Size.X > PaperWidth || drawn.Size.Y > paperHeight {
				t.Errorf("%s: %s is %.0f x %.0f mm", name, drawn.Name, drawn.Size.X, drawn.Size.Y)
			}
		}
	}
}

// TestManyLinesOfOnePartFitThePaper asks that eight lines beside each other do: two
// share the room between them.
func TestManyLinesOfOnePartFitThePaper(t *testing.T) {
	_, d := compositionOf(t, manifold(), "car.toml")
	if drawn := Circuits(d, nil)[0]; drawn.Size.X > PaperWidth {
		t.Errorf("%.0f mm wide", drawn.Size.X)
	}
}

// TestNamesAreFitForAPage asks for names of drawings that an id and a file can have,
// whatever the spec calls what its ports carry.
func TestNamesAreFitForAPage(t *testing.T) {
	for _, o := range []*spec.Outfit{longNames(), crowded()} {
		_, d := compositionOf(t, o, "car.toml")
		for _, drawn := range Circuits(d, nil) {
			if !regexp.MustCompile(`^[a-z0-9-]{1,60}$`).MatchString(drawn.Name) {
				t.Errorf("a drawing is named %q", drawn.Name)
			}
		}
	}
}

// TestCircuitsShowEveryLine asks that each line, tube and pipe of the demo is in one
// circuit, and each joint with the driveline on the boundary.
func TestCircuitsShowEveryLine(t *testing.T) {
	for _, car := range demoCars {
		_, d := compositionOf(t, demo(), car)
		want, got := map[string]int{}, map[string]int{}
		for _, l := range d.Lines {
			want[l.Path] = 1
		}
		joints := 0
		for _, j := range d.Joints {
			if j.Boundary && (j.Kind == "line" || j.Kind == "pipe") {
				joints++
			}
		}
		rings := 0
		for _, drawn := range Circuits(d, nil) {
			edges := map[float64]bool{}
			for _, m := range drawn.Marks {
				g, isGroup := m.(Group)
				if !isGroup {
					continue
				}
				if g.Of == "boundary" {
					edges[g.Marks[0].(Path).Points[0].Y] = true
				}
				if _, is := want[g.Of]; is {
					got[g.Of]++
				}
				for _, m := range g.Marks {
					if ring, is := m.(Circle); is && g.Of != "key" {
						rings++
						if !edges[ring.At.Y] {
							t.Errorf("%s: joint of %s at %g, boundary at %v", car, g.Of, ring.At.Y, edges)
						}
					}
				}
			}
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s: lines, want -, got +\n%s", car, diff)
		}
		if rings != joints {
			t.Errorf("%s: %d joints on the boundary, want %d", car, rings, joints)
		}
	}
}

// TestLinesFlowFromPartToPart follows lines of the demo on the paper, from the
// outline that they begin at to the one that they end at.
func TestLinesFlowFromPartToPart(t *testing.T) {
	_, d := compositionOf(t, demo(), "cars/mizzle.toml")
	got := map[string]string{}
	for _, drawn := range Circuits(d, nil) {
		outlines, ways := map[Box]string{}, map[string]Path{}
		for _, m := range drawn.Marks {
			g, isGroup := m.(Group)
			if !isGroup {
				continue
			}
			found := traitsOf(g.Marks)
			if len(found.outlines) == 1 {
				outlines[found.outlines[0]] = g.Of
			}
			if len(found.ways) == 1 {
				ways[g.Of] = found.ways[0]
			}
		}
		at := func(p Point) string {
			for b, part := range outlines {
				if p.X > b.Min.X && p.X < b.Max.X && (p.Y == b.Min.Y || p.Y == b.Max.Y) {
					return part
				}
			}
			return "nothing"
		}
		for line, way := range ways {
			got[line] = at(way.Points[0]) + " to " + at(way.Points[len(way.Points)-1])
		}
	}
	for line, want := range map[string]string{
		"lines.fuel-suction":              "fuel.cell to fuel.pump",
		"lines.fuel-delivery":             "fuel.pump to fuel.filter",
		"lines.fuel-feed":                 "fuel.filter to driveline",
		"lines.fuel-to-regulator":         "driveline to fuel.regulator",
		"lines.fuel-return":               "fuel.regulator to fuel.cell",
		"lines.fuel-vent":                 "fuel.cell to ", // the open air
		"lines.steer-pressure":            "driveline.pumps.steering to steering.rack",
		"lines.steer-suction":             "steering.reservoir to driveline.pumps.steering",
		"driveline.lines.turbo-oil-feed":  "driveline to driveline.turbo",
		"driveline.lines.turbo-oil-drain": "driveline.turbo to driveline",
		"exhaust.pipes.front.from":        "driveline to exhaust.pipes.front",
		"driveline.ports.gate-out":        "driveline to ", // nothing: it may stay open
		"driveline.ports.vacuum":          "driveline to ", // it is capped
		"exhaust.pipes.front.to":          "exhaust.pipes.front to exhaust.pipes.tail",
	} {
		if got[line] != want {
			t.Errorf("%s is drawn from %q, want %q", line, got[line], want)
		}
	}
}

// TestCircuitsInWords reads text equivalents of lines of the demo as its files have
// them.
func TestCircuitsInWords(t *testing.T) {
	_, d := compositionOf(t, demo(), "cars/mizzle.toml")
	var told []string
	for _, drawn := range Circuits(d, []Flag{{Sign: "3", Level: policies.LevelDanger, Subject: "lines.fuel-feed", Says: "it leaks."}}) {
		told = append(told, drawn.Text...)
	}
	for _, want := range []string{
		"fuel-feed: -8, bore 10.4 mm, 2.35 m, ptfe-8 from fuel filter, out (-8 (3/4-16) female 37-flare 45deg) to driveline: bellows, fuel-in (-8 (3/4-16) female 37-flare 90deg), across the boundary between car and driveline.",
		"From driveline: bellows, exhaust-out (76.2 mm female V-band) to exhaust front, from, across the boundary between car and driveline.",
		"From driveline: bellows, gate-out (44.5 mm male V-band) to nothing; may stay open.",
		"Danger 3 at lines.fuel-feed: it leaks.",
	} {
		if !slices.Contains(told, want) {
			t.Errorf("the text equivalents lack %q:\n%s", want, strings.Join(told, "\n"))
		}
	}
}

// TestFlagsStandWhereTheyAre asks that a flag is in the group of what it is about,
// with the shape of its level, and in the key.
func TestFlagsStandWhereTheyAre(t *testing.T) {
	_, d := compositionOf(t, demo(), "cars/mizzle.toml")
	const hose = "shop.hoses.ptfe-8"
	flags := []Flag{
		{Sign: "1", Level: policies.LevelDanger, Subject: "lines.fuel-feed.hose"},
		{Sign: "2", Level: policies.LevelFault, Subject: "fuel.regulator.seals"},
		{Sign: "3", Level: policies.LevelAdvice, Subject: "driveline.ports.fuel-out"},
		{Sign: "4", Level: policies.LevelDanger, Subject: hose},
		{Subject: "fuel.cell.made"},
		{Sign: "5", Level: policies.LevelAdvice, Subject: "fuel.strainer"},
		{Sign: "6", Level: policies.LevelAdvice, Subject: "electrics.battery"},
		{Sign: "8", Level: policies.LevelFault, Subject: "driveline.ports.gate-out.end"}, // nothing meets it
	}
	got, hoses := map[string]string{}, 0
	var visit func(group string, marks []Mark)
	visit = func(group string, marks []Mark) {
		for _, m := range marks {
			g, is := m.(Group)
			if !is {
				continue
			}
			for _, f := range flags {
				switch {
				case g.Of != f.Subject:
				case f.Subject == hose:
					hoses++
				default:
					got[f.Subject] = group + ": " + shapeOf(g.Marks)
				}
			}
			visit(g.Of, g.Marks)
		}
	}
	for _, drawn := range Circuits(d, flags) {
		if drawn.Name == "circuit-fuel" || drawn.Name == "circuit-exhaust" {
			visit("drawing", drawn.Marks)
		}
	}
	want := map[string]string{
		"lines.fuel-feed.hose":         "lines.fuel-feed: triangle 1",
		"fuel.regulator.seals":         "fuel.regulator: square 2",
		"driveline.ports.fuel-out":     "lines.fuel-to-regulator: disc 3",
		"fuel.cell.made":               "fuel.cell: ?",
		"fuel.strainer":                "drawing: disc 5",
		"driveline.ports.gate-out.end": "driveline.ports.gate-out: square 8",
	}
	if hoses != 4 { // suction, delivery, feed and vent are of it
		t.Errorf("a flag on a kind of hose stands %d times, want 4", hoses)
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("flags, want -, got +\n%s", diff)
	}
}

func shapeOf(marks []Mark) string {
	var words []string
	for _, m := range marks {
		switch m := m.(type) {
		case Circle:
			words = append(words, "disc")
		case Path:
			words = append(words, map[int]string{3: "triangle", 4: "square"}[len(m.Points)])
		case Text:
			words = append(words, m.Lines...)
		}
	}
	return strings.Join(words, " ")
}

// TestDrawnTwiceTheSame asks for the same bytes of the same spec.
func TestDrawnTwiceTheSame(t *testing.T) {
	draw := func() string {
		var out strings.Builder
		for _, o := range []*spec.Outfit{demo(), crowded()} {
			for _, car := range append(demoCars, "car.toml") {
				if c, ok := o.Car(car); ok {
					d := documentOf(c)
					for _, drawn := range Circuits(d, manyFlags(d)) {
						if err := drawn.SVG(&out, true); err != nil {
							t.Fatal(err)
						}
					}
				}
			}
		}
		return out.String()
	}
	if first, second := draw(), draw(); first != second {
		t.Errorf("two drawings of one spec differ:\n%s", cmp.Diff(first, second))
	}
}

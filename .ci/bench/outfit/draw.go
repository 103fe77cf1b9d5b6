package outfit

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
)

// A car that was drawn, with the driveline in it.
type car struct {
	name      string // of the file
	text      string
	driveline string // text; empty for an empty bay
	engine    string // the name of the driveline's file
}

// Of the things in these collections a car may have fewer than the demo, as far as
// nothing else speaks of them by name.
var fewer = []string{"lines", "parts", "circuits", "fasteners", "solids", "gaps", "life", "sensors", "ballast", "masses", "drains", "history", "access"}

// Of these, too, an author may not have written anything.
var unwritten = []string{"set-up", "gaps", "life", "ballast", "history", "weighing", "safety", "support", "fasteners"}

var (
	fitted = []string{"rolling", "rolling", "rolling", "raised", "hoisting", "hanging", "trial fit", "joined", "filled", "first start", "event"}
	empty  = []string{"out and raised", "out and raised", "out and stored"}
)

// draw draws a car and its driveline.
func (d *Demo) draw(r *rand.Rand, number int) car {
	m := d.cars[r.IntN(len(d.cars))]
	if m.driveline == "" && chance(r, 0.5) {
		m = d.cars[r.IntN(len(d.cars))]
	}
	c := car{name: fmt.Sprintf("%05d-%s", number, m.name), text: m.text, engine: m.driveline, driveline: d.drivelines[m.driveline]}
	if faults := d.faultsOf(m); len(faults) > 0 && chance(r, 0.3) {
		for range 1 + r.IntN(3) {
			c.seed(faults[r.IntN(len(faults))], m)
		}
	}
	if chance(r, 0.1) {
		c.loseMount(r)
	}
	var k knowledge
	if chance(r, 0.4) {
		k = knowledge{asked: 0.04 * r.Float64(), guessed: 0.06 * r.Float64(), unsaid: 0.04 * r.Float64()}
	}
	if c.driveline != "" {
		c.driveline = k.of(r, c.fewer(r, c.driveline))
	}
	c.text = k.of(r, c.fewer(r, c.text))
	for n := range r.IntN(4) {
		c.text += extraLine(r, n)
	}
	for n := range r.IntN(3) {
		c.text += extraCircuit(r, n)
	}
	stages := fitted
	if m.driveline == "" || chance(r, 0.1) {
		stages, c.driveline = empty, ""
	}
	c.sign(r, m, number, stages)
	return c
}

func chance(r *rand.Rand, likely float64) bool { return r.Float64() < likely }

// seed makes a fault in the car or in its driveline.
func (c *car) seed(f fault, m model) {
	if f.File == m.file() {
		c.text = f.seed(c.text)
	} else {
		c.driveline = f.seed(c.driveline)
	}
}

// loseMount takes both halves of a mount out.
func (c *car) loseMount(r *rand.Rand) {
	t := parse(c.text)
	mounts := t.things([]string{"mounts"})
	if len(mounts) == 0 {
		return
	}
	lost := mounts[r.IntN(len(mounts))]
	c.text = t.without(lost).String()
	c.driveline = parse(c.driveline).without(lost).String()
}

// fewer takes things out of one of the car's two specs that neither speaks of
// anywhere else.
func (c *car) fewer(r *rand.Rand, spec string) string {
	likely := []float64{0, 0, 0.03, 0.1}[r.IntN(4)]
	t := parse(spec)
	spoken := words(c.text, c.driveline)
	for _, path := range t.things(fewer) {
		if _, name, _ := cutLast(path); spoken[name] == 1 && chance(r, likely) {
			t = t.without(path)
		}
	}
	for _, path := range unwritten {
		if chance(r, likely/2) {
			t = t.without(path)
		}
	}
	return t.String()
}

// of draws what an author of such knowledge writes.
func (k knowledge) of(r *rand.Rand, spec string) string {
	t := parse(spec)
	forget(r, t, k.unsaid)
	return vary(r, t.String(), k)
}

// sign writes who the car is: its name, where its files are, and its stage.
func (c *car) sign(r *rand.Rand, m model, number int, stages []string) {
	t := parse(c.text)
	head := slices.IndexFunc(t, func(b block) bool { return b.path == "car" })
	for i, e := range t[head].entries {
		var value string
		switch e.key {
		case "name":
			value = fmt.Sprintf("%s %d", strings.ToUpper(m.name[:1])+m.name[1:], number)
		case "stage":
			value = stages[r.IntN(len(stages))]
		case "shop":
			value = "../shop/outfit.toml"
		case "driveline":
			value = "none"
			if c.driveline != "" {
				value = fmt.Sprintf("../drivelines/%05d/%s.toml", number, c.engine)
			}
		default:
			continue
		}
		before, _, _ := strings.Cut(e.text, "=")
		t[head].entries[i].text = fmt.Sprintf("%s= %q\n", before, value)
	}
	c.text = t.String()
	c.driveline = strings.Replace(c.driveline, `"../shop/outfit.toml"`, `"../../shop/outfit.toml"`, 1)
}

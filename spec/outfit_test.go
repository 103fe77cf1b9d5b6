package spec

import (
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"fitup/spec/tree"
)

// told puts a composition in one line.
func told(c *Composition, ok bool) string {
	if !ok {
		return "broken"
	}
	name := func(f *File) string {
		if f == nil {
			return "-"
		}
		return f.Name
	}
	line := strings.Join([]string{name(c.Car), name(c.Driveline), name(c.Shop)}, " ")
	if c.Fit != nil {
		line += " " + c.Fit.Path
	}
	if c.Trial {
		line += " trial"
	}
	return line
}

func car(keys string) string       { return "[car]\nname = \"A\"\n" + keys }
func driveline(keys string) string { return "[driveline]\nname = \"D\"\n" + keys }

const shop = "[shop]\nname = \"S\"\n[hoses.ptfe-8]\nsize = \"-8\"\n"

func TestCar(t *testing.T) {
	for _, c := range []struct {
		name           string
		files          map[string]string
		want, problems string
	}{
		{"car alone", map[string]string{"a.toml": car("")}, "a.toml - -", ""},
		{"empty bay", map[string]string{"a.toml": car(`driveline = "none"`)}, "a.toml - -", ""},
		{"driveline not known", map[string]string{"a.toml": car(`driveline = "?"`)}, "a.toml - -", ""},
		{"with driveline", map[string]string{"a.toml": car(`driveline = "d/x.toml"`), "d/x.toml": driveline("")}, "a.toml d/x.toml -", ""},
		{"folder below and back", map[string]string{"a.toml": car(`driveline = "d/../x.toml"`), "x.toml": driveline("")}, "a.toml x.toml -", ""},
		{"pair facts by file name", map[string]string{
			"a.toml": car("driveline = \"x.toml\"\n[fits.x]\nrocks = \"6 mm\"\n[fits.y]\n"), "x.toml": driveline("")}, "a.toml x.toml - fits.x", ""},
		{"pair facts by file key", map[string]string{
			"a.toml":   car("driveline = \"d/x.toml\"\n[fits.x]\nfile = \"e/x.toml\"\n[fits.other]\nfile = \"d/x.toml\"\n"),
			"d/x.toml": driveline(""), "e/x.toml": driveline("")}, "a.toml d/x.toml - fits.other", ""},
		{"one shop file", map[string]string{
			"a.toml": car("driveline = \"d/x.toml\"\nshop = \"s.toml\""), "d/x.toml": driveline(`shop = "../s.toml"`), "s.toml": shop}, "a.toml d/x.toml s.toml", ""},
		{"the car's shop file for both", map[string]string{
			"a.toml": car("driveline = \"x.toml\"\nshop = \"s.toml\""), "x.toml": driveline(""), "s.toml": shop}, "a.toml x.toml s.toml", ""},
		{"the driveline's shop file for both", map[string]string{
			"a.toml": car(`driveline = "x.toml"`), "x.toml": driveline(`shop = "s.toml"`), "s.toml": shop}, "a.toml x.toml s.toml", ""},

		{"two shop files", map[string]string{
			"a.toml": car("driveline = \"x.toml\"\nshop = \"s.toml\""), "x.toml": driveline(`shop = "t.toml"`), "s.toml": shop, "t.toml": shop}, "broken",
			"a.toml:3:13: the shop file of this car is s.toml, and that of x.toml is t.toml; one shop file in both, or none in the driveline's"},
		{"no such driveline", map[string]string{"a.toml": car(`driveline = "x.toml"`)}, "broken",
			"a.toml:3:13: x.toml: there is no such file or folder; the name of a file, relative to the folder of this one"},
		{"driveline that is a car", map[string]string{"a.toml": car(`driveline = "b.toml"`), "b.toml": car("")}, "broken",
			"a.toml:3:13: b.toml is the file of a car; the file of a driveline"},
		{"driveline that is the car itself", map[string]string{"a.toml": car(`driveline = "a.toml"`)}, "broken",
			"a.toml:3:13: a.toml is the file of a car; the file of a driveline"},
		{"shop that is a driveline", map[string]string{"a.toml": car(`shop = "x.toml"`), "x.toml": driveline("")}, "broken",
			"a.toml:3:8: x.toml is the file of a driveline; the file of a shop"},
		{"absolute path", map[string]string{"a.toml": car(`driveline = "/x.toml"`)}, "broken",
			`a.toml:3:13: "/x.toml" is an absolute path; write it relative to the folder of a.toml`},
		{"out of the root", map[string]string{"a.toml": car(`driveline = "../x.toml"`)}, "broken",
			`a.toml:3:13: "../x.toml" leads out of the root; name a file inside it`},
		{"no such file in fits", map[string]string{"a.toml": car("[fits.x]\nfile = \"x.toml\"")}, "broken",
			"a.toml:4:8: x.toml: there is no such file or folder; the name of a file, relative to the folder of this one"},
		{"broken driveline", map[string]string{"a.toml": car(`driveline = "x.toml"`), "x.toml": driveline("[engine]\nbore = 86")}, "broken",
			`x.toml:4:8: found the bare number 86; a length with its unit in quotes, such as "86 mm"`},
		{"broken shop", map[string]string{"a.toml": car(`shop = "s.toml"`), "s.toml": shop + "[jack]"}, "broken",
			`s.toml:5:2: "jack" is not a key of a shop file; did you mean "jacks"?`},
		{"not a car", map[string]string{"a.toml": driveline("")}, "broken", ""},
		{"no file", map[string]string{}, "broken", "a.toml:1:1: there is no such file or folder"},

		{"hose that the shop has not", map[string]string{
			"a.toml": car("shop = \"s.toml\"\n[lines.x]\nhose = \"1 m of ptfe-9\""), "s.toml": shop}, "broken",
			`a.toml:5:16: "ptfe-9" is not in [hoses] of s.toml; did you mean "ptfe-8"?`},
		{"stand that the shop has not", map[string]string{
			"a.toml": car("shop = \"s.toml\"\n[support]\nsling = \"chain\"\nstands.x = { stand = \"tall\" }"), "s.toml": shop + "[stands.low]\nbasis = \"each\""}, "broken",
			`a.toml:5:9: "chain" is not in [slings] of s.toml; a name from there
a.toml:6:22: "tall" is not in [stands] of s.toml; a name from there: low`},
		{"driveline's hose that the car's shop has not", map[string]string{
			"a.toml": car("driveline = \"x.toml\"\nshop = \"s.toml\""), "x.toml": driveline("[lines.x]\nhose = \"1 m of nitrile-8\""), "s.toml": shop}, "broken",
			`x.toml:4:16: "nitrile-8" is not in [hoses] of s.toml; a name from there: ptfe-8`},
		{"hose of no shop", map[string]string{"a.toml": car("[lines.x]\nhose = \"1 m of ptfe-9\"")}, "a.toml - -", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			o := outfitOf(c.files)
			if diff := cmp.Diff(c.want, told(o.Car("a.toml"))); diff != "" {
				t.Error(diff)
			}
			o.Car("a.toml") // a second time tells nothing twice
			if diff := cmp.Diff(c.problems, problemLines(o)); diff != "" {
				t.Error(diff)
			}
		})
	}
}

func TestDrivelineAndItsCars(t *testing.T) {
	o := outfitOf(map[string]string{
		"d/x.toml":         driveline(`shop = "../s.toml"`),
		"d/y.toml":         driveline(""),
		"s.toml":           shop,
		"t.toml":           shop,
		"fitted.toml":      car(`driveline = "d/x.toml"`),
		"accepts.toml":     car("driveline = \"d/y.toml\"\n[fits.lent]\nfile = \"d/x.toml\"\n"),
		"by-name.toml":     car("driveline = \"none\"\n[fits.x]\nrocks = \"6 mm\"\n"),
		"other.toml":       car("[fits.z]\n"),
		"other-shop.toml":  car("shop = \"t.toml\"\ndriveline = \"d/y.toml\"\n[fits.x]\n"),
		"broken.toml":      car("[fits.x]\nrock = 1"),
		"not-a-car.toml":   shop,
		"no-fit-said.toml": car(`driveline = "?"`),
	})
	if diff := cmp.Diff("- d/x.toml s.toml", told(o.Driveline("d/x.toml"))); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff("broken", told(o.Driveline("fitted.toml"))); diff != "" {
		t.Error(diff)
	}
	var got []string
	for _, c := range o.CarsFor("d/x.toml", []string{"fitted.toml", "accepts.toml", "by-name.toml", "other.toml", "other-shop.toml", "broken.toml", "not-a-car.toml", "no-fit-said.toml"}) {
		got = append(got, told(c, true))
	}
	want := []string{
		"fitted.toml d/x.toml s.toml",
		"accepts.toml d/x.toml s.toml fits.lent trial",
		"by-name.toml d/x.toml s.toml fits.x trial",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	problems := `broken.toml:4:1: "rock" is not a key of [fits.x]; did you mean "rocks"?
other-shop.toml:5:1: the shop file of this car is t.toml, and that of d/x.toml is s.toml; one shop file in both, or none in the driveline's`
	if diff := cmp.Diff(problems, problemLines(o)); diff != "" {
		t.Error(diff)
	}
	// A car that cannot take this driveline is still judged with its own.
	if diff := cmp.Diff("other-shop.toml d/y.toml t.toml", told(o.Car("other-shop.toml"))); diff != "" {
		t.Error(diff)
	}
	if o.CarsFor("fitted.toml", []string{"accepts.toml"}) != nil {
		t.Error("a car is taken for a driveline")
	}
}

func TestLinks(t *testing.T) {
	link := func(to string) *fstest.MapFile {
		return &fstest.MapFile{Data: []byte(to), Mode: fs.ModeSymlink}
	}
	o := NewOutfit(&tree.Tree{FS: fstest.MapFS{
		"cars/a.toml":       {Data: []byte(car("driveline = \"now.toml\"\n[fits.x]\n"))},
		"cars/now.toml":     link("../drivelines/x.toml"),
		"drivelines/x.toml": {Data: []byte(driveline(`shop = "s.toml"`))},
		"drivelines/s.toml": {Data: []byte(shop)},
		"cars/out.toml":     {Data: []byte(car(`driveline = "away.toml"`))},
		"cars/away.toml":    link("../../elsewhere.toml"),
	}})
	if diff := cmp.Diff("cars/a.toml drivelines/x.toml drivelines/s.toml fits.x", told(o.Car("cars/a.toml"))); diff != "" {
		t.Error(diff)
	}
	if o.Load("cars/now.toml") != o.Load("drivelines/x.toml") {
		t.Error("a file is loaded twice, under its own name and a link's")
	}
	if diff := cmp.Diff("broken", told(o.Car("cars/out.toml"))); diff != "" {
		t.Error(diff)
	}
	want := "cars/out.toml:3:13: cars/away.toml: the link cars/away.toml leads out of the root; use a link that stays inside it, or the file itself"
	if diff := cmp.Diff(want, problemLines(o)); diff != "" {
		t.Error(diff)
	}
}

const portsCar = `
[fuel]
carries = "fuel"
cell.ports.feed = "-8 male 37-flare"
cell.ports.vent = { end = "-6 male 37-flare", gives = "fuel vapour" }
[parts.tee]
ports.run = "?"
[exhaust.pipes.front]
ports.in = "76 mm female slip"
[cooling]
fan.draws = "20 A"
[electrics.posts.main]
end = "M8 stud"
[electrics.modules.pdm.channels]
2 = { trips = "20 A" }
[plugs.loom-a]
[pins.loom-a]
A = { load = "1 A" }
[access.bonnet]
`

const portsDriveline = `
[ports]
fuel-in = "-8 male 37-flare"
[mounts]
left = { light = true }
[engine]
ports.gallery = "M10x1 female banjo"
[pumps.water]
stages = 1
`

func TestPorts(t *testing.T) {
	o, problems := loadAll(map[string]string{"car.toml": carHead + portsCar, "driveline.toml": lineHead + portsDriveline})
	if problems != "" {
		t.Fatal(problems)
	}
	for _, c := range []struct{ file, want string }{
		{"car.toml", `fuel.cell.ports.feed fuel.cell.feed fuel
fuel.cell.ports.vent fuel.cell.vent fuel
exhaust.pipes.front.ports.in exhaust.pipes.front.in 
parts.tee.ports.run parts.tee.run `},
		{"driveline.toml", `engine.ports.gallery engine.gallery 
ports.fuel-in driveline.fuel-in `},
	} {
		var lines []string
		for _, at := range o.Load(c.file).Ports() {
			if at.Port.Path != o.Load(c.file).Kind.owner()+at.Path {
				t.Errorf("the port at %s says it is at %s", at.Path, at.Port.Path)
			}
			lines = append(lines, fmt.Sprintf("%s %s %s", at.Path, at.Ref, at.Carries.V))
		}
		if diff := cmp.Diff(c.want, strings.Join(lines, "\n")); diff != "" {
			t.Error(diff)
		}
	}
	for _, c := range []struct {
		file, ref, path string
		port, ok        bool
	}{
		{"car.toml", "fuel.cell.feed", "fuel.cell.ports.feed", true, true},
		{"car.toml", "fuel.cell", "fuel.cell", false, true},
		{"car.toml", "exhaust.pipes.front.in", "exhaust.pipes.front.ports.in", true, true},
		{"car.toml", "electrics.posts.main", "electrics.posts.main", true, true},
		{"car.toml", "electrics.modules.pdm.2", "electrics.modules.pdm.channels.2", false, true},
		{"car.toml", "pins.loom-a.A", "pins.loom-a.A", false, true},
		{"car.toml", "cooling.fan", "cooling.fan", false, true},
		{"car.toml", "bonnet", "access.bonnet", false, true},
		{"car.toml", "chassis", "", false, true},
		{"car.toml", "open air", "", false, true},
		{"car.toml", "driveline.fuel-in", "", false, false},
		{"car.toml", "fuel.cell.fed", "", false, false},
		{"car.toml", "fuel.filter", "", false, false},
		{"driveline.toml", "driveline.fuel-in", "ports.fuel-in", true, true},
		{"driveline.toml", "driveline.left", "mounts.left", false, true},
		{"driveline.toml", "driveline.pumps.water", "pumps.water", false, true},
		{"driveline.toml", "engine.gallery", "engine.ports.gallery", true, true},
		{"driveline.toml", "fuel-in", "", false, false},
	} {
		port, path, ok := o.Load(c.file).Port(c.ref)
		if path != c.path || ok != c.ok || (port != nil) != c.port {
			t.Errorf("%s: %s is %v at %q, %v", c.file, c.ref, port, path, ok)
		}
	}
	if post, _, _ := o.Load("car.toml").Port("electrics.posts.main"); post.End.Size.V != "M8" {
		t.Errorf("the post's end is %v", post.End)
	}
}

// TestForget: what is wrong with a file stays known, and it is read again if it is
// wanted again.
func TestForget(t *testing.T) {
	o := NewOutfit(&tree.Tree{FS: fstest.MapFS{
		"a.toml": {Data: []byte(car(`driveline = "d.toml"`))},
		"b.toml": {Data: []byte(car(`driveline = "gone.toml"`))},
		"d.toml": {Data: []byte(driveline(""))},
	}})
	first := o.Load("a.toml")
	before, broken := told(o.Car("a.toml")), told(o.Car("b.toml"))
	problems := problemLines(o)
	for _, name := range []string{"a.toml", "b.toml", "d.toml"} {
		o.Forget(name)
	}
	if problems == "" || problemLines(o) != problems {
		t.Errorf("problems are %q, and were %q", problemLines(o), problems)
	}
	if o.Load("a.toml") == first {
		t.Error("what was forgotten is still held")
	}
	if diff := cmp.Diff([]string{before, broken, problems}, []string{told(o.Car("a.toml")), told(o.Car("b.toml")), problemLines(o)}); diff != "" {
		t.Errorf("before (-) and read again (+)\n%s", diff)
	}
}

package outfit

import (
	"encoding/json"
	"errors"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

const repository = "../../.."

func readDemo(t *testing.T) *Demo {
	t.Helper()
	d, err := ReadDemo(os.DirFS(repository))
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// files are the texts of a folder by name.
func files(t *testing.T, folder string) map[string]string {
	t.Helper()
	all := map[string]string{}
	tree := os.DirFS(folder)
	err := fs.WalkDir(tree, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := fs.ReadFile(tree, name)
		all[name] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func written(t *testing.T, seed uint64, cars int) (folder string) {
	t.Helper()
	folder = t.TempDir()
	if err := readDemo(t).Write(folder, seed, cars); err != nil {
		t.Fatal(err)
	}
	return folder
}

func TestSameSeedSameBytes(t *testing.T) {
	first, second := files(t, written(t, 7, 30)), files(t, written(t, 7, 30))
	if !maps.Equal(first, second) {
		t.Error("two fleets of one seed differ")
	}
	if maps.Equal(first, files(t, written(t, 8, 30))) {
		t.Error("another seed draws the same fleet")
	}
	for name, text := range files(t, written(t, 7, 10)) {
		if first[name] != text {
			t.Errorf("%s is another in a larger fleet", name)
		}
	}
}

// TestParse shows that a text which nothing was taken out of is what it was.
func TestParse(t *testing.T) {
	d := readDemo(t)
	specs := []string{d.shop}
	for _, m := range d.cars {
		specs = append(specs, m.text)
	}
	for _, spec := range specs {
		if parse(spec).String() != spec {
			t.Error("parsed and put together again it is another text")
		}
	}
}

func TestWithout(t *testing.T) {
	const spec = "# one\n[lines]\na = { x = [\n  1,\n] }\nb = 2\n[lines.c]\nd = 3\n[fuel.cell]\nports.in = 1\nports.out = 2\n"
	for _, c := range []struct{ path, want string }{
		{"lines.a", "# one\n[lines]\nb = 2\n[lines.c]\nd = 3\n[fuel.cell]\nports.in = 1\nports.out = 2\n"},
		{"lines.c", "# one\n[lines]\na = { x = [\n  1,\n] }\nb = 2\n[fuel.cell]\nports.in = 1\nports.out = 2\n"},
		{"lines", "# one\n[fuel.cell]\nports.in = 1\nports.out = 2\n"},
		{"fuel.cell.ports", "# one\n[lines]\na = { x = [\n  1,\n] }\nb = 2\n[lines.c]\nd = 3\n[fuel.cell]\n"},
		{"line", spec},
	} {
		if got := parse(spec).without(c.path).String(); got != c.want {
			t.Errorf("without %s:\n%s", c.path, got)
		}
	}
}

// TestFleetIsValid lets fitup check a fleet: every spec is read, and there is
// enough of everything that a measurement should see.
func TestFleetIsValid(t *testing.T) {
	program := filepath.Join(t.TempDir(), "fitup")
	build := exec.Command("go", "build", "-o", program, "./cmd/fitup")
	build.Dir = repository
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	const cars = 40
	folder := written(t, 7, cars)
	text, err := exec.Command(program, "check", folder, "--on", "2026-11-25", "--format", "json").Output()
	if exit, ok := errors.AsType[*exec.ExitError](err); err != nil && !(ok && exit.ExitCode() == 1) {
		t.Fatalf("%v\n%s", err, text)
	}
	var report struct {
		Read     struct{ Cars, Drivelines int }
		Problems []struct {
			File          string
			Line          int
			Message, Want string
		}
		Findings []struct{ Level, Rule string }
		Measure  []struct{ Asked bool }
	}
	if err := json.Unmarshal(text, &report); err != nil {
		t.Fatal(err)
	}
	for _, p := range report.Problems {
		t.Errorf("%s:%d: %s; %s", p.File, p.Line, p.Message, p.Want)
	}
	if report.Read.Cars != cars {
		t.Errorf("%d cars were read of %d", report.Read.Cars, cars)
	}
	levels, rules, asked := map[string]int{}, map[string]bool{}, 0
	for _, f := range report.Findings {
		levels[f.Level]++
		rules[f.Rule] = true
	}
	for _, m := range report.Measure {
		if m.Asked {
			asked++
		}
	}
	if levels["danger"] == 0 || levels["fault"] == 0 || levels["advice"] == 0 || len(rules) < 15 {
		t.Errorf("too little is found to measure with: %v by %d rules", levels, len(rules))
	}
	if asked < 10 || len(report.Measure) < asked+10 {
		t.Errorf("too little is unknown: %d keys are asked, of %d to measure", asked, len(report.Measure))
	}
	fleet := joined(files(t, folder))
	for _, part := range []string{`= "event"`, `= "out and stored"`, `"~`, `= "?"`, "[lines.extra-2]", "[circuits.extra-1]"} {
		if !strings.Contains(fleet, part) {
			t.Errorf("nowhere in the fleet stands %s", part)
		}
	}
}

func joined(files map[string]string) string {
	var all strings.Builder
	for _, text := range files {
		all.WriteString(text)
	}
	return all.String()
}

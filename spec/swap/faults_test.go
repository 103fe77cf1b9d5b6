package swap

import (
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/BurntSushi/toml"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
)

// A swapFault is one edit of the demo and what has to be said of it: a line of the
// fit (or how it begins, if it ends in a space), or a rule and its subject.
type swapFault struct {
	File, In, Find, Put string
	Move                string
	Fit                 string
	Giving, Received    string // a rule of the car it comes out of, or goes into
	On                  string
}

// TestSwapFaults makes each edit alone and asks for what is said then and was
// not before.
func TestSwapFaults(t *testing.T) {
	var faults map[string]swapFault
	if _, err := toml.DecodeFile("../../testdata/swaps/faults.toml", &faults); err != nil {
		t.Fatal(err)
	}
	if len(faults) < 40 {
		t.Fatalf("%d faults, want 40 at least", len(faults))
	}
	files := demoFiles(t)
	engine, err := policies.New(t.Context(), policies.Options{Only: rulesOf(faults)})
	if err != nil {
		t.Fatal(err)
	}
	before := map[string][]string{}
	for _, name := range slices.Sorted(maps.Keys(faults)) {
		fault := faults[name]
		if _, ok := before[fault.key()]; !ok {
			before[fault.key()] = fault.said(t, engine, files)
		}
		t.Run(name, func(t *testing.T) {
			edited := fault.edit(t, files)
			said := fault.said(t, engine, edited)
			new := slices.DeleteFunc(slices.Clone(said), func(s string) bool { return slices.Contains(before[fault.key()], s) })
			if !slices.ContainsFunc(new, fault.is) {
				t.Errorf("want %s\ngot  %s", fault.want(), strings.Join(new, "\n     "))
			}
		})
	}
}

func demoFiles(t *testing.T) fstest.MapFS {
	t.Helper()
	files := fstest.MapFS{}
	err := filepath.WalkDir("../../cars", func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || filepath.Ext(path) != ".toml" {
			return err
		}
		text, err := os.ReadFile(path)
		files[filepath.ToSlash(strings.TrimPrefix(path, filepath.Join("..", "..")+string(filepath.Separator)))] = &fstest.MapFile{Data: text}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func rulesOf(faults map[string]swapFault) []string {
	var rules []string
	for _, f := range faults {
		if rule := f.Giving + f.Received; rule != "" && !slices.Contains(rules, rule) {
			rules = append(rules, rule)
		}
	}
	slices.Sort(rules)
	return rules
}

// edit replaces what is found once after the heading.
func (f swapFault) edit(t *testing.T, files fstest.MapFS) fstest.MapFS {
	t.Helper()
	edited := fstest.MapFS{}
	for name, file := range files {
		edited[name] = file
	}
	file, ok := files[f.File]
	if !ok {
		t.Fatalf("no file %s", f.File)
	}
	head, rest, ok := strings.Cut(string(file.Data), "\n"+f.In)
	before, after, found := strings.Cut(rest, f.Find)
	if !ok || !found {
		t.Fatalf("%s does not say %q after %s", f.File, f.Find, f.In)
	}
	edited[f.File] = &fstest.MapFile{Data: []byte(head + "\n" + f.In + before + f.Put + after)}
	return edited
}

// key is what faults share that are held against the same words.
func (f swapFault) key() string { return strings.Join([]string{f.Move, f.Giving, f.Received}, "|") }

func (f swapFault) want() string {
	if f.Fit != "" {
		return f.Fit
	}
	return f.Giving + f.Received + " on " + f.On
}

func (f swapFault) is(said string) bool {
	return said == f.want() || strings.HasSuffix(f.want(), " ") && strings.HasPrefix(said, f.want())
}

// said is what the fit, or the rule, says of a swap of the demo.
func (f swapFault) said(t *testing.T, engine *policies.Engine, files fstest.MapFS) []string {
	t.Helper()
	o := spec.NewOutfit(&tree.Tree{FS: files})
	if f.Move != "" {
		name, ok := strings.CutSuffix(f.Move, " as it is")
		if !ok {
			t.Fatalf("move %q: want CAR as it is", f.Move)
		}
		c, d := composed(t, o, "cars/"+name+".toml")
		return fitLines(c, d)
	}
	m, err := FromCar(o, "cars/mizzle.toml", "cars/haar.toml")
	if err != nil {
		t.Fatalf("%v %v", err, o.Problems())
	}
	switch {
	case f.Received != "":
		return findings(t, engine, derived(m.Received))
	case f.Giving != "":
		return findings(t, engine, derived(m.From))
	}
	return fitLines(m.Received, derived(m.Received))
}

func fitLines(c *spec.Composition, d *document.Document) []string {
	var lines []string
	for _, i := range NewFit(c, d, testTolerances).Interfaces {
		lines = append(lines, told(i))
	}
	return lines
}

func findings(t *testing.T, engine *policies.Engine, d *document.Document) []string {
	t.Helper()
	outcome, err := engine.Evaluate(t.Context(), d.Encode())
	if err != nil {
		t.Fatal(err)
	}
	var lines []string
	for _, f := range outcome.Findings {
		lines = append(lines, f.Rule+" on "+f.Subject)
	}
	return lines
}

package judge_test

import (
	"context"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"runtime/debug"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"
	"time"

	"github.com/BurntSushi/toml"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/source"
	"fitup/spec/tree"
)

// The tests of seeded faults, of sound oddities and of gaps all judge the demo
// with a little of its text changed. They read it once and share one engine.

// Judging makes garbage much faster than it keeps anything.
func init() { debug.SetGCPercent(400) }

// day is when the demo is judged.
var day = time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)

const root = "../.." // of the module

var demo = sync.OnceValue(func() texts {
	all := texts{}
	for _, pattern := range []string{"cars/*.toml", "cars/*/*.toml"} {
		names, err := filepath.Glob(filepath.Join(root, pattern))
		if err != nil {
			panic(err)
		}
		for _, name := range names {
			if filepath.Base(name) == tree.ConfigName {
				continue
			}
			text, err := os.ReadFile(name)
			if err != nil {
				panic(err)
			}
			rel, err := filepath.Rel(root, name)
			if err != nil {
				panic(err)
			}
			all[filepath.ToSlash(rel)] = string(text)
		}
	}
	return all
})

var engine = sync.OnceValue(func() *policies.Engine {
	e, err := policies.New(context.Background(), policies.Options{})
	if err != nil {
		panic(err)
	}
	return e
})

// texts are the files of a fleet by name.
type texts map[string]string

// An edit changes one place of one file. Find stands there once: in the whole
// file, or in the table whose header is In, or on the one line that begins with
// In.
type edit struct{ File, In, Find, Put string }

// change makes edits. Every one has to match.
func (t texts) change(edits ...edit) (texts, error) {
	changed := maps.Clone(t)
	for _, e := range edits {
		text, ok := changed[e.File]
		if !ok {
			return nil, fmt.Errorf("there is no file %s", e.File)
		}
		start, end, err := region(text, e.In)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", e.File, err)
		}
		if n := strings.Count(text[start:end], e.Find); e.Find == "" || n != 1 {
			return nil, fmt.Errorf("%s: %q stands %d times in %q", e.File, e.Find, n, e.In)
		}
		if e.Find == e.Put {
			return nil, fmt.Errorf("%s: %q is put in place of itself", e.File, e.Find)
		}
		changed[e.File] = text[:start] + strings.Replace(text[start:end], e.Find, e.Put, 1) + text[end:]
	}
	return changed, nil
}

// region is where an edit may match.
func region(text, in string) (start, end int, err error) {
	if in == "" {
		return 0, len(text), nil
	}
	if n := strings.Count("\n"+text, "\n"+in); n != 1 {
		return 0, 0, fmt.Errorf("%d lines begin with %q", n, in)
	}
	start = strings.Index("\n"+text, "\n"+in)
	stop := "\n"
	if strings.HasPrefix(in, "[") {
		stop = "\n["
	}
	if i := strings.Index(text[start+len(in):], stop); i >= 0 {
		return start, start + len(in) + i, nil
	}
	return start, len(text), nil
}

// about lists the cars of the demo that the files concern.
func about(files []string) []string {
	var cars []string
	for name, needs := range whole().needs {
		if slices.ContainsFunc(files, func(file string) bool { return slices.Contains(needs, file) }) {
			cars = append(cars, name)
		}
	}
	slices.Sort(cars)
	return cars
}

// judged judges some cars of a fleet by all rules, each with the driveline in it.
func (t texts) judged(cars []string) (*judge.Report, error) { return t.judgedBy(engine(), cars) }

func (t texts) judgedBy(engine *policies.Engine, cars []string) (*judge.Report, error) {
	return judgeOutfit(t.outfit(demoShelf()), engine, cars)
}

func judgeOutfit(outfit *spec.Outfit, engine *policies.Engine, cars []string) (*judge.Report, error) {
	var all []*spec.Composition
	for _, car := range cars {
		if c, ok := outfit.Car(car); ok {
			all = append(all, c)
		}
	}
	if problems := outfit.Problems(); len(problems) > 0 {
		return nil, unreadable(problems)
	}
	run := judge.Run{Engine: engine, Date: day, Workers: 1, Fleet: true, Whole: true}
	report, err := run.Judge(context.Background(), all)
	if err == nil && len(report.Faults) > 0 {
		err = fmt.Errorf("a rule broke: %v", report.Faults)
	}
	return report, err
}

// outfit loads files of the fleet as they are asked for, those on the shelf from
// there.
func (t texts) outfit(kept shelf) *spec.Outfit {
	o := spec.NewOutfit(t.tree())
	o.Read = kept.read
	return o
}

func (t texts) tree() *tree.Tree {
	files := fstest.MapFS{}
	for name, text := range t {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return &tree.Tree{FS: files}
}

// A shelf keeps sound files as they were read, by name: of thousands of small
// changes each needs one file read anew, not all.
type shelf map[string]shelved

type shelved struct {
	text string
	file *spec.File
}

func (t texts) onShelf() shelf {
	kept, files := shelf{}, t.tree()
	for name, text := range t {
		if file, problems := spec.LoadFile(files, name); len(problems) == 0 {
			kept[name] = shelved{text, file}
		}
	}
	return kept
}

// read is spec.LoadFile, but takes a file of the same text from the shelf.
func (s shelf) read(t *tree.Tree, name string) (*spec.File, []source.Problem) {
	if kept, ok := s[name]; ok {
		if text, err := t.Read(name); err == nil && string(text) == kept.text {
			return kept.file, nil
		}
	}
	return spec.LoadFile(t, name)
}

var demoShelf = sync.OnceValue(func() shelf { return demo().onShelf() })

// unreadable is the error of specs that cannot be judged.
type unreadable []spec.FileProblem

func (u unreadable) Error() string { return u[0].Error() }

// clean is the demo as it stands.
type clean struct {
	needs map[string][]string // of each car, the files that it is judged from
	of    func(cars []string) *judge.Report
}

var whole = sync.OnceValue(func() clean {
	c := clean{needs: map[string][]string{}}
	outfit := demo().outfit(demoShelf())
	for name := range demo() {
		if outfit.Load(name).Kind != spec.KindCar {
			continue
		}
		composed, ok := outfit.Car(name)
		if !ok {
			panic(unreadable(outfit.Problems()))
		}
		for _, f := range []*spec.File{composed.Car, composed.Driveline, composed.Shop} {
			if f != nil {
				c.needs[name] = append(c.needs[name], f.Name)
			}
		}
	}
	var lock sync.Mutex
	reports := map[string]*judge.Report{}
	c.of = func(cars []string) *judge.Report {
		lock.Lock()
		defer lock.Unlock()
		key := strings.Join(cars, " ")
		if reports[key] == nil {
			report, err := demo().judged(cars)
			if err != nil {
				panic(err)
			}
			reports[key] = report
		}
		return reports[key]
	}
	return c
})

// everyCar lists the cars of the demo.
func everyCar() []string { return slices.Sorted(maps.Keys(whole().needs)) }

// A said is one thing that a report says: a finding, or a key that could not be
// told without, with a rule that waits for it.
type said struct {
	Rule, Case string
	File, Path string
	Asks       bool // it waits for this key
	Waived     bool
}

func (s said) String() string {
	what := s.Rule
	if s.Case != "" {
		what += "/" + s.Case
	}
	if s.Asks {
		what += " waits for"
	}
	if s.Waived {
		what += " (waived)"
	}
	return what + " " + s.File + " " + s.Path
}

// says counts what a report says.
func says(r *judge.Report) map[said]int {
	all := map[said]int{}
	for _, f := range r.Findings {
		all[said{Rule: f.Rule, Case: f.Case, File: f.File, Path: f.Path}]++
	}
	for _, f := range r.Waived {
		all[said{Rule: f.Rule, Case: f.Case, File: f.File, Path: f.Path, Waived: true}]++
	}
	for _, m := range r.Measures {
		for _, rule := range m.Rules {
			all[said{Rule: rule, File: m.File, Path: m.Path, Asks: true}]++
		}
	}
	return all
}

// compared lists what only the later of two reports says, and what only the
// earlier.
func compared(before, after map[said]int) (appears, goes []said) {
	for s, n := range after {
		for range n - before[s] {
			appears = append(appears, s)
		}
	}
	for s, n := range before {
		for range n - after[s] {
			goes = append(goes, s)
		}
	}
	byText := func(a, b said) int { return strings.Compare(a.String(), b.String()) }
	slices.SortFunc(appears, byText)
	slices.SortFunc(goes, byText)
	return appears, goes
}

// grave lists the dangers and faults of a report.
func grave(r *judge.Report) []string {
	var all []string
	for _, f := range r.Findings {
		if f.Level >= policies.LevelFault {
			all = append(all, fmt.Sprintf("%s:%d: %s: %s [%s]", f.File, f.Line, f.Level, f.Message, f.Rule))
		}
	}
	return all
}

// readVariants reads tables by name from every TOML file of a folder.
func readVariants[T any](t *testing.T, folder string) map[string]T {
	t.Helper()
	all := map[string]T{}
	names, err := filepath.Glob(filepath.Join(root, "testdata", folder, "*.toml"))
	if err != nil || len(names) == 0 {
		t.Fatal(folder, names, err)
	}
	for _, name := range names {
		if filepath.Base(name) == "partial.toml" {
			continue
		}
		var in map[string]T
		decoded, err := toml.DecodeFile(name, &in)
		if err != nil {
			t.Fatal(name, err)
		}
		for _, key := range decoded.Undecoded() {
			t.Errorf("%s: %s is no key of a variant", name, key)
		}
		for each, v := range in {
			if _, twice := all[each]; twice {
				t.Errorf("%s: %s is there twice", name, each)
			}
			all[each] = v
		}
	}
	return all
}

func TestCleanDemo(t *testing.T) {
	report := whole().of(everyCar())
	for _, line := range grave(report) {
		t.Error(line)
	}
	if report.Judged == 0 || len(everyCar()) < 3 {
		t.Error("the demo is not there")
	}
}

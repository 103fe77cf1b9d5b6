package judge_test

import (
	"bytes"
	"context"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/BurntSushi/toml"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/workings"
)

// What is left out, or asked with "?", must never make a danger look like a pass.
// These tests take one value at a time out of specs. They work on the long form,
// in which every phrase is written out as the table that it stands for, so that
// each of its words can be taken out as well.

// long says whether to go through every value; FITUP_LONG=1 does. Else some are
// sampled, by a stride that meets every kind of value in time.
var long = os.Getenv("FITUP_LONG") != ""

// sampled is the stride of faults, and sampledLeaves that of the demo's values.
const (
	sampled       = 16
	sampledLeaves = 397
)

// A longForm is one file, every phrase written out, with the paths of its values.
type longForm struct {
	file   string
	root   map[string]any
	leaves []string
}

func writtenOut(f *spec.File) longForm {
	l := longForm{file: f.Name, root: map[string]any{}}
	f.Walk(func(path string, _ spec.Field, value any) {
		if path == "" {
			return
		}
		var raw any
		switch value := value.(type) {
		case spec.Leaf:
			if value.Said() == spec.Unsaid {
				return
			}
			raw = rawOf(f, path, value)
			l.leaves = append(l.leaves, path)
		case spec.Collection:
			raw = ofState(value.Said())
		default:
			if state := reflect.ValueOf(value).Elem().FieldByName("State"); state.IsValid() {
				raw = ofState(state.Interface().(spec.State))
			}
		}
		if raw != nil {
			put(l.root, strings.Split(path, "."), raw)
		}
	})
	return l
}

// rawOf is a value as TOML has it: as it stands, or what a phrase says.
func rawOf(f *spec.File, path string, leaf spec.Leaf) any {
	if raw, ok := at(f.Root, strings.Split(path, ".")); ok {
		return raw
	}
	switch leaf.Said() {
	case spec.Asked:
		return "?"
	case spec.None:
		return "none"
	}
	if kind := leaf.Kind().TOML; !leaf.Guessed() && (kind == "boolean" || kind == "integer" || kind == "number") {
		return leaf.Document()
	}
	text, _ := leaf.Written()
	if leaf.Guessed() {
		text = "~" + text
	}
	return text
}

func ofState(s spec.State) any {
	switch s {
	case spec.Asked:
		return "?"
	case spec.None:
		return "none"
	case spec.Given:
		return map[string]any{}
	}
	return nil
}

// at follows keys through tables.
func at(table map[string]any, keys []string) (any, bool) {
	value, ok := table[keys[0]]
	if !ok || len(keys) == 1 {
		return value, ok
	}
	below, ok := value.(map[string]any)
	if !ok {
		return nil, false
	}
	return at(below, keys[1:])
}

// put sets a value, and takes one of nil out. A table does not replace one that
// is there.
func put(table map[string]any, keys []string, value any) {
	if len(keys) > 1 {
		below, ok := table[keys[0]].(map[string]any)
		if !ok {
			below = map[string]any{}
			table[keys[0]] = below
		}
		put(below, keys[1:], value)
		return
	}
	_, isTable := value.(map[string]any)
	if _, there := table[keys[0]]; isTable && there {
		return
	}
	if value == nil {
		delete(table, keys[0])
		return
	}
	table[keys[0]] = value
}

// with is the text of the file with another value at a path; nil for none.
func (l longForm) with(path string, value any) string {
	keys := strings.Split(path, ".")
	was, _ := at(l.root, keys)
	put(l.root, keys, value)
	text := l.text()
	put(l.root, keys, was)
	return text
}

func (l longForm) text() string {
	var b bytes.Buffer
	if err := toml.NewEncoder(&b).Encode(l.root); err != nil {
		panic(fmt.Errorf("%s: %w", l.file, err))
	}
	return b.String()
}

// TestLongFormSaysTheSame: a phrase and the table that it stands for are judged
// alike, on every car of the demo.
func TestLongFormSaysTheSame(t *testing.T) {
	appears, goes := compared(says(whole().of(everyCar())), says(mustJudge(t, longDemo(t, demo()), everyCar())))
	for _, s := range appears {
		t.Error("only in the long form: ", s)
	}
	for _, s := range goes {
		t.Error("only as it is written: ", s)
	}
}

// longDemo writes all files out.
func longDemo(t *testing.T, short texts) texts {
	t.Helper()
	out := texts{}
	for name, form := range longForms(t, short) {
		out[name] = form.text()
	}
	return out
}

func longForms(t *testing.T, short texts) map[string]longForm {
	t.Helper()
	o, all := short.outfit(), map[string]longForm{}
	for name := range short {
		all[name] = writtenOut(o.Load(name))
	}
	if problems := o.Problems(); len(problems) > 0 {
		t.Fatal(unreadable(problems))
	}
	return all
}

func mustJudge(t *testing.T, all texts, cars []string) *judge.Report {
	t.Helper()
	report, err := all.judged(cars)
	if err != nil {
		t.Fatal(err)
	}
	return report
}

// A gap is a value that is taken out, and what is then put: nothing, or "?".
type gap struct {
	file, path string
	put        any
}

func (g gap) String() string {
	if g.put == nil {
		return g.file + " without " + g.path
	}
	return fmt.Sprintf("%s with %s = %q", g.file, g.path, g.put)
}

// names reports whether the loader's problem is about the gap.
func (g gap) names(err error) bool {
	problems, ok := err.(unreadable)
	return ok && slices.ContainsFunc(problems, func(p spec.FileProblem) bool {
		return within(p.Path, g.path) || within(g.path, p.Path)
	})
}

// within reports whether a key path is another, or below it.
func within(path, other string) bool { return path == other || strings.HasPrefix(path, other+".") }

// TestPartialFaults: each value that a danger or fault rests on is taken out in
// turn. The finding stays, or its rule cannot tell, or the loader names the key.
func TestPartialFaults(t *testing.T) {
	allowed := readAllowed(t)
	all := readVariants[fault](t, "faults")
	for i, name := range slices.Sorted(maps.Keys(all)) {
		if !long && i%sampled != 0 {
			continue
		}
		f := all[name]
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			_, after, err := f.judged()
			if err != nil {
				t.Fatal(err)
			}
			is, err := demo().change(append(slices.Clone(f.Given), f.edit)...)
			if err != nil {
				t.Fatal(err)
			}
			for _, found := range firstOfEach(f, after) {
				testGaps(t, is, found, allowed)
			}
		})
	}
}

// firstOfEach lists the dangers and faults that the fault raises, one a rule and
// case: its others are the same thing said of another subject.
func firstOfEach(f fault, report *judge.Report) []judge.Finding {
	var all []judge.Finding
	listed := map[said]bool{}
	for _, c := range f.Appears {
		for _, s := range c.said(f.File) {
			listed[s] = true
		}
	}
	for _, found := range report.Findings {
		s := said{Rule: found.Rule, Case: found.Case, File: found.File, Path: found.Path}
		again := slices.ContainsFunc(all, func(o judge.Finding) bool { return o.Rule == found.Rule && o.Case == found.Case })
		if found.Level >= policies.LevelFault && listed[s] && !again && !own(found.Rule) {
			all = append(all, found)
		}
	}
	return all
}

// own reports whether a rule is one of the tool's own, which no document decides.
func own(rule string) bool {
	return slices.ContainsFunc(judge.Own(), func(r *policies.Rule) bool { return r.ID == rule })
}

// testGaps takes out what a finding rests on, value by value.
func testGaps(t *testing.T, is texts, found judge.Finding, allowed []allowance) {
	car := carOf(t, is, found)
	forms, all := longForms(t, is), longDemo(t, is)
	alone := soleEngine(t, found.Rule)
	gaps := rests(t, is, car, found, forms)
	if !long && len(gaps) > 3 {
		gaps = []gap{gaps[0], gaps[len(gaps)/2], gaps[len(gaps)-1]}
	}
	for _, g := range gaps {
		changed := maps.Clone(all)
		changed[g.file] = forms[g.file].with(g.path, g.put)
		report, err := changed.judgedBy(alone, []string{car})
		switch {
		case err != nil && !g.names(err):
			t.Errorf("%s: %v", g, err)
		case err == nil && !stays(report, found) && !unclear(report, found) && !allows(allowed, found.Rule, g):
			t.Errorf("%s: %s on %s is gone, and nothing is said", g, found.Rule, found.Subject)
		}
	}
}

func stays(report *judge.Report, found judge.Finding) bool {
	return slices.ContainsFunc(report.Findings, func(f judge.Finding) bool {
		return f.Rule == found.Rule && f.File == found.File && f.Path == found.Path
	})
}

// unclear reports whether the finding's rule could not tell: of its subject, of
// something that the subject is part of, or of a table that is not written.
func unclear(report *judge.Report, found judge.Finding) bool {
	for _, account := range report.Accounts {
		for _, j := range account.Judgements {
			if j.Rule == found.Rule && slices.ContainsFunc(j.Unclear, func(l judge.Location) bool {
				return strings.HasPrefix(found.Path, l.Path)
			}) {
				return true
			}
		}
	}
	return false
}

// carOf is the car that a finding was found with.
func carOf(t *testing.T, is texts, found judge.Finding) string {
	t.Helper()
	for _, car := range about([]string{found.File}) {
		if report, err := is.judgedBy(soleEngine(t, found.Rule), []string{car}); err == nil && stays(report, found) {
			return car
		}
	}
	t.Fatalf("%s: no car has it", found.Identity())
	return ""
}

var soleEngines sync.Map // rule id -> *policies.Engine

// soleEngine asks one rule only, which is far quicker than all.
func soleEngine(t *testing.T, rule string) *policies.Engine {
	t.Helper()
	if e, ok := soleEngines.Load(rule); ok {
		return e.(*policies.Engine)
	}
	e, err := policies.New(context.Background(), policies.Options{Only: []string{rule}})
	if err != nil {
		t.Fatal(err)
	}
	soleEngines.Store(rule, e)
	return e
}

// rests lists the gaps that a finding may turn on: every value behind a field that
// its rule reads. Behind a figure are the inputs of its working, and behind a word
// that the join found, such as what a line carries, is all that is joined there.
func rests(t *testing.T, is texts, car string, found judge.Finding, forms map[string]longForm) []gap {
	t.Helper()
	composed, ok := is.outfit().Car(car)
	if !ok {
		t.Fatal(car)
	}
	doc := document.Join(composed, day)
	workedOut := map[string]workings.Working{}
	for _, w := range workings.Derive(doc) {
		workedOut[w.Subject+"."+w.Name] = w
	}
	rule, _ := engine().Rule(found.Rule)
	paths := map[string]bool{}
	var add func(path string)
	add = func(path string) {
		if paths[path] {
			return
		}
		paths[path] = true
		for _, in := range workedOut[path].Inputs {
			if in.Path != "" {
				add(in.Path)
			}
		}
	}
	for _, field := range fieldsRead(t, rule) {
		f := doc.Resolve(rule.Subject, found.Subject, field)
		switch {
		case f.Figure != nil:
			add(found.Subject + "." + field[strings.LastIndex(field, ".")+1:])
		case f.Leaf != nil:
			add(f.Path)
		default:
			add(found.Subject)
			for _, path := range joined(doc, found.Subject) {
				add(path)
			}
		}
		if f.By != "" {
			add(f.By)
		}
	}
	var gaps []gap
	for _, file := range slices.Sorted(maps.Keys(forms)) {
		prefix := prefixOf(composed, file)
		for _, leaf := range forms[file].leaves {
			for path := range paths {
				if prefix != "-" && within(prefix+leaf, path) {
					gaps = append(gaps, gap{file, leaf, nil}, gap{file, leaf, "?"})
					break
				}
			}
		}
	}
	return gaps
}

// prefixOf is what paths of a file begin with in the document; "-" if it is not
// in it.
func prefixOf(c *spec.Composition, file string) string {
	for prefix, f := range map[string]*spec.File{"": c.Car, "driveline.": c.Driveline, "shop.": c.Shop} {
		if f != nil && f.Name == file {
			return prefix
		}
	}
	return "-"
}

// joined lists what meets at a line or a joint: its ports, and the kind of hose.
func joined(doc *document.Document, subject string) []string {
	var all []string
	for _, j := range doc.Joints {
		if (j.Path == subject || j.On == subject) && j.There != nil {
			all = append(all, strings.TrimSuffix(j.There.Path, ".end"), j.On)
		}
	}
	for _, l := range doc.Lines {
		if within(subject, l.Path) && l.Kind.Path != "" {
			all = append(all, l.Kind.Path)
		}
	}
	for _, p := range doc.Ports {
		if p.Path == subject {
			all = append(all, p.Joins...)
		}
	}
	return all
}

var readBy = regexp.MustCompile(`\b([a-z]+)((?:\.[a-z_]+)+)`)

// fieldsRead lists the fields of its subject that a rule's text names, in guards
// and figures as in needs.
func fieldsRead(t *testing.T, rule *policies.Rule) []string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(root, "policies", rule.File))
	if err != nil {
		t.Fatal(err)
	}
	each := regexp.MustCompile(`some (\w+) in input\.` + rule.Subject).FindSubmatch(text)
	if each == nil {
		t.Fatalf("%s: what is its subject called?", rule.ID)
	}
	fields := map[string]bool{}
	for _, m := range readBy.FindAllStringSubmatch(string(text), -1) {
		if m[1] == string(each[1]) {
			fields[strings.TrimPrefix(m[2], ".")] = true
		}
	}
	for _, list := range regexp.MustCompile(`"needs": \[([^\]]*)\]`).FindAllStringSubmatch(string(text), -1) {
		for _, need := range regexp.MustCompile(`"([^"]+)"`).FindAllStringSubmatch(list[1], -1) {
			for _, field := range strings.Split(need[1], "|") {
				fields[field] = true
			}
		}
	}
	return slices.Sorted(maps.Keys(fields))
}

// An allowance is a gap that may change what is found without a word, and why.
type allowance struct {
	Rule, Key string // a rule or "any", and the end of a key path
	Put       string // "nothing" or "?": only when that is put
	Why       string
}

func readAllowed(t *testing.T) []allowance {
	t.Helper()
	var in struct{ Allowed []allowance }
	decoded, err := toml.DecodeFile(filepath.Join(root, "testdata", "faults", "partial.toml"), &in)
	if err != nil || len(decoded.Undecoded()) > 0 {
		t.Fatal(err, decoded.Undecoded())
	}
	for _, a := range in.Allowed {
		if a.Why == "" || a.Rule == "" || a.Key == "" {
			t.Errorf("%+v: a rule, a key and a reason", a)
		}
	}
	return in.Allowed
}

func allows(all []allowance, rule string, g gap) bool {
	return slices.ContainsFunc(all, func(a allowance) bool {
		return (a.Rule == rule || a.Rule == "any") && strings.HasSuffix("."+g.path, "."+a.Key) && (a.Put == "" || (a.Put == "?") == (g.put != nil))
	})
}

// TestPartialDemo: each value of the clean demo is taken out in turn. Nothing
// breaks, and no danger or fault comes of it but those that are allowed.
func TestPartialDemo(t *testing.T) {
	allowed := readAllowed(t)
	forms, all := longForms(t, demo()), longDemo(t, demo())
	stride := sampledLeaves
	if long {
		stride = 1
	}
	var gaps []gap
	for _, file := range slices.Sorted(maps.Keys(forms)) {
		for i := 0; i < len(forms[file].leaves); i += stride {
			leaf := forms[file].leaves[i]
			gaps = append(gaps, gap{file, leaf, nil}, gap{file, leaf, "?"})
		}
	}
	t.Logf("%d gaps", len(gaps))
	for part := range 8 {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for i := part; i < len(gaps); i += 8 {
				g := gaps[i]
				changed := maps.Clone(all)
				changed[g.file] = forms[g.file].copied().with(g.path, g.put)
				report, err := changed.judged(about([]string{g.file}))
				if err != nil {
					if !g.names(err) {
						t.Errorf("%s: %v", g, err)
					}
					continue
				}
				for _, f := range report.Findings {
					if f.Level >= policies.LevelFault && !allows(allowed, f.Rule, g) {
						t.Errorf("%s: %s: %s [%s]", g, f.Level, f.Message, f.Rule)
					}
				}
			}
		})
	}
}

// copied is the form with a root of its own.
func (l longForm) copied() longForm {
	l.root = cloned(l.root)
	return l
}

func cloned(table map[string]any) map[string]any {
	out := make(map[string]any, len(table))
	for key, value := range table {
		if below, ok := value.(map[string]any); ok {
			value = cloned(below)
		}
		out[key] = value
	}
	return out
}

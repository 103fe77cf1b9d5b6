package policies

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"fitup/policies/tables"
)

// A ruleCase is one of the cases in a rule's test.
type ruleCase struct {
	Input map[string]any
	Want  []struct {
		Subject string
		Case    string
		Missing []string
		Judged  *bool // of a subject that passes, or is none of the rule's business
	}
}

// want lists what the case wants said, as verdicts does what was said.
func (c ruleCase) want() []string {
	var all []string
	for _, w := range c.Want {
		switch {
		case w.Judged != nil: // lib/cases_test.rego looks after it
		case w.Missing != nil:
			slices.Sort(w.Missing)
			all = append(all, gapText(w.Subject, w.Missing))
		default:
			all = append(all, findingText(w.Subject, w.Case))
		}
	}
	slices.Sort(all)
	return all
}

func findingText(subject, name string) string { return strings.TrimSpace(subject + " found " + name) }

func gapText(subject string, missing []string) string {
	return subject + " misses " + strings.Join(missing, ", ")
}

func verdicts(o Outcome) []string {
	var all []string
	for _, f := range o.Findings {
		all = append(all, findingText(f.Subject, f.Case))
	}
	for _, g := range o.CannotTell {
		all = append(all, gapText(g.Subject, g.Missing))
	}
	slices.Sort(all)
	return all
}

// A ruleTest is a rule with its cases and an engine that holds nothing else.
type ruleTest struct {
	*testing.T
	rule         *Rule
	engine       *Engine
	module, test module
	cases        map[string]ruleCase
	data         map[string]any // limits and tables
	store        storage.Store  // of data
}

// TestRules holds every rule, whatever rules there are, to the rule contract.
func TestRules(t *testing.T) {
	list, err := builtInFiles()
	if err != nil {
		t.Fatal(err)
	}
	if len(list) == 0 {
		t.Fatal("no rules")
	}
	for _, f := range list {
		t.Run(f.area+"/"+f.name, func(t *testing.T) {
			t.Parallel()
			rt := openRule(t, f)
			rt.checkReferences()
			checkSyntax(t, rt.module.parsed, rt.rule.Basis)
			rt.tryCases()
			rt.nearMisses()
			rt.withoutNeeds()
			rt.withoutAnyField()
		})
	}
}

func openRule(t *testing.T, f ruleFile) *ruleTest {
	t.Helper()
	if before, ok := opened.Load(f.id()); ok {
		rt := *before.(*ruleTest)
		rt.T = t
		return &rt
	}
	engine, err := New(context.Background(), Options{Only: []string{f.id()}})
	if err != nil {
		t.Fatal(err)
	}
	testFile := strings.TrimSuffix(f.path, ".rego") + "_test.rego"
	rt := &ruleTest{
		T: t, engine: engine, rule: engine.byID[f.id()].whole(),
		module: readModule(files, f.path, f.path),
	}
	if rt.test, err = readTest(testFile); err != nil {
		t.Fatal(err)
	}
	rt.data, err = engine.data(Options{}, tablesRead(with(rt.module, rt.test)))
	if err != nil {
		t.Fatal(err)
	}
	rt.store = storeOf(rt.data)
	rt.query("cases", &rt.cases)
	if len(rt.cases) == 0 {
		t.Fatalf("%s: no cases", testFile)
	}
	opened.Store(f.id(), rt)
	return rt
}

// opened are the rules by id, which more than one test puts to proof.
var opened sync.Map

// folder is this package's, with the tests that the program does without.
var folder = os.DirFS(".")

// readTest reads a Rego file that may call any function.
func readTest(file string) (module, error) {
	text, err := fs.ReadFile(folder, file)
	if err != nil {
		return module{}, err
	}
	parsed, err := ast.ParseModuleWithOpts(file, string(text), ast.ParserOptions{RegoVersion: ast.RegoV1})
	return module{file: file, text: text, parsed: parsed}, err
}

// library are the modules that rules share.
var library = sync.OnceValue(func() []module {
	files, err := regoFiles(folder, "lib")
	if err != nil {
		panic(err)
	}
	var all []module
	for _, file := range files {
		all = append(all, mustReadTest(file))
	}
	return all
})

// casesModule is how cases are tried.
var casesModule = sync.OnceValue(func() module { return mustReadTest("lib/cases_test.rego") })

func mustReadTest(file string) module {
	m, err := readTest(file)
	if err != nil {
		panic(err)
	}
	return m
}

// with adds modules to the library.
func with(modules ...module) []module { return append(slices.Clone(library()), modules...) }

// query evaluates a name of the rule's test.
func (rt *ruleTest) query(name string, into any) {
	rt.Helper()
	c := ast.NewCompiler()
	if err := compile(c, with(casesModule(), rt.module, rt.test)); err != nil {
		rt.Fatal(err)
	}
	if err := ask(c, rt.store, rt.test.parsed.Package.Path.String()+"."+name, into); err != nil {
		rt.Fatal(err)
	}
}

func ask(c *ast.Compiler, store storage.Store, query string, into any) error {
	results, err := rego.New(rego.Compiler(c), rego.Store(store), rego.Query(query)).Eval(context.Background())
	if err != nil {
		return err
	}
	if len(results) == 0 {
		return fmt.Errorf("%s is undefined", query)
	}
	text, err := json.Marshal(results[0].Expressions[0].Value)
	if err != nil {
		return err
	}
	return json.Unmarshal(text, into)
}

func storeOf(data map[string]any) storage.Store {
	return inmem.NewFromObjectWithOpts(data, inmem.OptReturnASTValuesOnRead(true), inmem.OptRoundTripOnWrite(false))
}

// say evaluates the rule on a part of a document, at a stage that it holds in.
func (rt *ruleTest) say(input map[string]any) Outcome {
	rt.Helper()
	whole := maps.Clone(input)
	whole["stages"], whole["rulebooks"] = rt.rule.Stages[:1], []string{rt.rule.Rulebook}
	o, err := rt.engine.Evaluate(context.Background(), whole)
	if err != nil {
		rt.Fatal(err)
	}
	for _, fault := range o.Faults {
		rt.Errorf("fault of the rule: %s", fault.Message)
	}
	return o
}

// checkReferences holds METADATA and the literal fields of the rule's sets to
// the document's schema.
func (rt *ruleTest) checkReferences() {
	s := documentSchema()
	subject, ok := s.subject(rt.rule.Subject)
	if !ok {
		rt.Fatalf("METADATA: subject: the document has no collection %q", rt.rule.Subject)
	}
	for name, figure := range rt.rule.Figures {
		if figure.Like == "" {
			continue
		}
		for way := range strings.SplitSeq(figure.Like, "|") {
			if _, ok := s.dotted(subject, way); !ok {
				rt.Errorf("METADATA: figures.%s.like: %s have no field %q", name, rt.rule.Subject, way)
			}
		}
	}
	for _, r := range rt.module.parsed.Rules {
		if r.Head.Key == nil {
			continue
		}
		for _, text := range literals(r.Head.Key, "needs", "at") {
			for _, way := range strings.Split(text, "|") {
				if _, ok := s.dotted(subject, way); !ok {
					rt.Errorf("%s:%d: %s have no field %q", r.Location.File, r.Location.Row, rt.rule.Subject, way)
				}
			}
		}
	}
	c, err := checker(schemaFor(rt.module.parsed))
	if err == nil {
		err = compile(c, with(rt.module))
	}
	if err != nil {
		rt.Error(err)
	}
}

// schemaFor is the schema of the collections that a rule reads.
func schemaFor(m *ast.Module) []byte {
	read := map[string]bool{}
	ast.WalkRefs(m, func(ref ast.Ref) bool {
		if ref.HasPrefix(ast.InputRootRef) && len(ref) > 1 {
			if name, ok := ref[1].Value.(ast.String); ok {
				read[string(name)] = true
			}
		}
		return false
	})
	return documentSchema().only(read)
}

// literals returns the texts under the given keys of an object literal.
func literals(object *ast.Term, keys ...string) []string {
	var all []string
	o, ok := object.Value.(ast.Object)
	if !ok {
		return nil
	}
	for _, key := range keys {
		if value := o.Get(ast.StringTerm(key)); value != nil {
			ast.WalkTerms(value, func(t *ast.Term) bool {
				if s, ok := t.Value.(ast.String); ok {
					all = append(all, string(s))
				}
				return false
			})
		}
	}
	return all
}

// tryCases tries each case, as stock OPA does and through fitup.rego.
func (rt *ruleTest) tryCases() {
	var passed map[string]bool
	rt.query("test_cases", &passed)
	for _, name := range slices.Sorted(maps.Keys(rt.cases)) {
		rt.Run(name, func(t *testing.T) {
			c := rt.cases[name]
			if err := partOfDocument().Validate(jsonValue(t, c.Input)); err != nil {
				t.Errorf("input: %s", schemaError(err))
			}
			one := *rt
			one.T = t
			got := verdicts(one.say(c.Input))
			if !slices.Equal(got, c.want()) {
				t.Errorf("said %q, want %q", got, c.want())
			}
			if !passed[name] {
				t.Error("fails in opa test: look at the figures, at and also of what it wants")
			}
		})
	}
}

func jsonValue(t *testing.T, v any) any {
	t.Helper()
	text, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return value
}

// schemaError is the last line of a validator's error, which names the place.
func schemaError(err error) string {
	lines := strings.Split(err.Error(), "\n")
	return strings.TrimSpace(strings.Join(lines[1:], ";"))
}

// nearMisses asks for each case of METADATA an input that fires, and one that is
// judged, does not fire and differs in one value.
func (rt *ruleTest) nearMisses() {
	outcomes := map[string]Outcome{}
	for name, c := range rt.cases {
		outcomes[name] = rt.say(c.Input)
	}
	for _, name := range rt.rule.CaseNames() {
		fires, nearest := 0, 1<<30
		for firing, o := range outcomes {
			for _, f := range o.Findings {
				if f.Case != name {
					continue
				}
				fires++
				for other, p := range outcomes {
					if passes(p, f) {
						nearest = min(nearest, differences(rt.cases[firing].Input, rt.cases[other].Input))
					}
				}
			}
		}
		switch {
		case fires == 0:
			rt.Errorf("no case in which it finds %q", name)
		case nearest != 1:
			rt.Errorf("no case that differs in one value from one that finds %q, is judged, and does not find it", name)
		}
	}
}

// passes reports whether the finding's subject was judged in o without it.
func passes(o Outcome, f Finding) bool {
	return slices.Contains(o.Judged[f.Rule], f.Subject) &&
		!slices.ContainsFunc(o.Findings, func(g Finding) bool { return g.Subject == f.Subject && g.Case == f.Case }) &&
		!slices.ContainsFunc(o.CannotTell, func(g Gap) bool { return g.Subject == f.Subject })
}

// differences counts the values in which two inputs differ.
func differences(a, b map[string]any) int {
	x, y := map[string]any{}, map[string]any{}
	leaves(a, "", x)
	leaves(b, "", y)
	n := 0
	for path, value := range x {
		if other, ok := y[path]; !ok || other != value {
			n++
		}
	}
	for path := range y {
		if _, ok := x[path]; !ok {
			n++
		}
	}
	return n
}

func leaves(v any, path string, into map[string]any) {
	switch v := v.(type) {
	case map[string]any:
		for key, each := range v {
			leaves(each, path+"."+key, into)
		}
	case []any:
		for i, each := range v {
			leaves(each, fmt.Sprintf("%s[%d]", path, i), into)
		}
	default:
		into[path] = v
	}
}

// withoutNeeds takes each need out of each judged subject: then the rule cannot
// tell, or found something that does not turn on it.
func (rt *ruleTest) withoutNeeds() {
	gaps := map[string]bool{}
	for _, need := range rt.needs() {
		gaps[need] = false
	}
	for name, c := range rt.cases {
		for _, subject := range rt.say(c.Input).Judged[rt.rule.ID] {
			for need := range gaps {
				input := clone(c.Input)
				for _, way := range strings.Split(need, "|") {
					remove(thing(input, rt.rule.Subject, subject), way)
				}
				o := rt.say(input)
				if !slices.Contains(o.Judged[rt.rule.ID], subject) {
					rt.Errorf("case %q without %s: %s is not judged any more", name, need, subject)
				}
				if slices.ContainsFunc(o.CannotTell, func(g Gap) bool { return g.Subject == subject && slices.Contains(g.Missing, need) }) {
					gaps[need] = true
				}
			}
		}
	}
	for _, need := range slices.Sorted(maps.Keys(gaps)) {
		if !gaps[need] {
			rt.Errorf("no judged case in which it cannot tell without the need %s", need)
		}
	}
}

func (rt *ruleTest) needs() []string {
	var all []string
	for _, r := range rt.module.parsed.Rules {
		if r.Head.Key != nil {
			all = append(all, literals(r.Head.Key, "needs")...)
		}
	}
	return all
}

// alwaysThere are the fields that joining a document fills without fail, so that
// a rule may choose its subjects by them.
var alwaysThere = []string{"path", "name", "kind", "owner", "boundary", "stage", "on", "connector", "critical", "present", "leaves", "undone", "way", "moves"}

// withoutAnyField takes each field out of each judged subject: a rule that does
// not know whether it applies must still judge, and cannot tell.
func (rt *ruleTest) withoutAnyField() {
	for name, c := range rt.cases {
		for _, subject := range rt.say(c.Input).Judged[rt.rule.ID] {
			for _, field := range fields(thing(c.Input, rt.rule.Subject, subject), "") {
				input := clone(c.Input)
				remove(thing(input, rt.rule.Subject, subject), field)
				if !slices.Contains(rt.say(input).Judged[rt.rule.ID], subject) {
					rt.Errorf("case %q without %s: %s is not judged any more, in silence", name, field, subject)
				}
			}
		}
	}
}

// fields lists the fields of a thing that may be absent, dotted.
func fields(thing map[string]any, prefix string) []string {
	var all []string
	for _, key := range slices.Sorted(maps.Keys(thing)) {
		inner, isObject := thing[key].(map[string]any)
		switch {
		case isObject:
			all = append(all, prefix+key)
			all = append(all, fields(inner, prefix+key+".")...)
		case key == "none" || key == "asked" || key == "guessed" || slices.Contains(alwaysThere, key):
		default:
			all = append(all, prefix+key)
		}
	}
	for _, word := range texts(thing["none"]) {
		all = append(all, prefix+word)
	}
	return all
}

func texts(list any) []string {
	var all []string
	items, _ := list.([]any)
	for _, each := range items {
		all = append(all, fmt.Sprint(each))
	}
	return all
}

func thing(input map[string]any, collection, path string) map[string]any {
	items, _ := input[collection].([]any)
	for _, each := range items {
		if t, ok := each.(map[string]any); ok && t["path"] == path {
			return t
		}
	}
	return nil
}

// remove takes a dotted field out of a thing, and out of the list of what is
// none there.
func remove(thing map[string]any, path string) {
	first, rest, deeper := strings.Cut(path, ".")
	if inner, ok := thing[first].(map[string]any); ok && deeper {
		remove(inner, rest)
		return
	}
	delete(thing, first)
	if list, ok := thing["none"].([]any); ok {
		thing["none"] = slices.DeleteFunc(slices.Clone(list), func(word any) bool { return word == first })
	}
}

func clone(input map[string]any) map[string]any {
	text, err := json.Marshal(input)
	if err != nil {
		panic(err)
	}
	var c map[string]any
	if err := json.Unmarshal(text, &c); err != nil {
		panic(err)
	}
	return c
}

// TestRego runs every Rego test as stock opa does, those of fitup.rego and lib
// among them.
func TestRego(t *testing.T) {
	modules := map[string]*ast.Module{}
	err := fs.WalkDir(folder, ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".rego") {
			return err
		}
		m, err := readTest(path)
		modules[path] = m.parsed
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	data, err := newEngine(t, Options{}).data(Options{}, tables.Names())
	if err != nil {
		t.Fatal(err)
	}
	results, err := tester.NewRunner().SetModules(modules).SetStore(inmem.NewFromObject(data)).
		RaiseBuiltinErrors(true).RunTests(context.Background(), nil)
	if err != nil {
		t.Fatal(err)
	}
	ran := 0
	for result := range results {
		ran++
		t.Run(strings.TrimPrefix(result.Package, "data.")+"/"+result.Name, func(t *testing.T) {
			if result.Error != nil {
				t.Fatal(result.Error)
			}
			if result.Fail {
				t.Errorf("%s\n%s", result, result.SubResults)
			}
		})
	}
	if ran == 0 {
		t.Error("no tests")
	}
}

// TestLimitsBelongToRules shows that every limit belongs to a rule.
func TestLimitsBelongToRules(t *testing.T) {
	byArea, err := new(Engine).limits(nil)
	if err != nil {
		t.Fatal(err)
	}
	for area, l := range byArea {
		for rule := range l {
			if _, err := fs.Stat(files, fmt.Sprintf("rules/%s/%s.rego", area, rule)); err != nil {
				t.Errorf("rules/%s/data.yaml: limits.%s: there is no such rule", area, rule)
			}
		}
	}
}

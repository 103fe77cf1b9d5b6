package policies

import (
	"bytes"
	"context"
	"fmt"
	"maps"
	"os"
	"path"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"go.yaml.in/yaml/v3"

	"fitup/spec/unit"
)

// TestMutations makes every small wrong in every rule, and in what rules share, one
// at a time. Each must fail one of the rule's cases, or, if it is a misspelt field,
// the check against the document's schema; one that does not is a part of the rule
// that nothing tests, or that the rule does not need.
func TestMutations(t *testing.T) {
	list, err := builtInFiles()
	if err != nil {
		t.Fatal(err)
	}
	listed := readEquivalents(t)
	var all tally
	t.Cleanup(func() { // after the subtests
		t.Logf("%d mutants of %d modules, %d of them listed as equivalent", all.mutants, len(all.modules), all.listed)
		if len(all.modules) < len(list) { // only some were asked for
			return
		}
		if all.listed*100 > all.mutants*3 {
			t.Error("more than 3 % of the mutants are listed as equivalent")
		}
		for id := range listed {
			if !slices.Contains(all.modules, id) {
				t.Errorf("equivalent.yaml: %s: there is no such rule", id)
			}
		}
	})
	for _, m := range library() { // before the rules, which do not run at once with it
		name := strings.TrimSuffix(path.Base(m.file), ".rego")
		if slices.Contains(engineParts, name) {
			continue
		}
		t.Run("lib/"+name, func(t *testing.T) {
			var trials []*trial
			for _, f := range list {
				if rt := openRule(t, f); slices.ContainsFunc(imported(rt.module), func(o module) bool { return o.file == m.file }) {
					trials = append(trials, rt.openTrial())
				}
			}
			all.try(t, "lib."+name, mutantsOf(m.parsed), listed["lib."+name], func(mutant) (bool, error) {
				for _, each := range trials {
					if passes, err := each.passes(); !passes {
						return false, err
					}
				}
				return true, nil
			})
		})
	}
	for _, f := range list {
		t.Run(f.area+"/"+f.name, func(t *testing.T) {
			t.Parallel()
			rt := openRule(t, f)
			each := rt.openTrial()
			mutants := slices.Concat(mutantsOf(rt.module.parsed), rt.limitMutants(each), rt.rowMutants(each))
			all.try(t, f.id(), mutants, listed[f.id()], func(m mutant) (bool, error) {
				passes, err := each.passes()
				return passes && (!m.field || rt.checks(each.schema)), err
			})
		})
	}
}

// engineParts are modules of the library that no rule imports: fitup.rego does, and
// has tests of its own.
var engineParts = []string{"asked", "needs", "scope"}

// An equivalent is a mutant that no input can tell from its rule.
type equivalent struct{ Where, What, Why string }

func readEquivalents(t *testing.T) map[string][]equivalent {
	text, err := os.ReadFile("equivalent.yaml")
	if err != nil {
		t.Fatal(err)
	}
	d := yaml.NewDecoder(bytes.NewReader(text))
	d.KnownFields(true)
	var byRule map[string][]equivalent
	if err := d.Decode(&byRule); err != nil {
		t.Fatal(err)
	}
	return byRule
}

// A tally is what came of all mutants.
type tally struct {
	sync.Mutex
	modules         []string
	mutants, listed int
}

// try changes a module in every way, and asks each time whether it passes. An error
// of passes is that there is nothing to try.
func (all *tally) try(t *testing.T, id string, mutants []mutant, listed []equivalent, passes func(mutant) (bool, error)) {
	if ok, err := passes(mutant{}); !ok {
		t.Fatalf("%s fails its cases unchanged: %v", id, err)
	}
	tried, used := 0, map[string]bool{}
	for _, m := range mutants {
		undo := m.change()
		ok, err := passes(m)
		undo()
		if err != nil { // nothing sets a variable
			continue
		}
		tried++
		isListed := slices.ContainsFunc(listed, func(e equivalent) bool { return e.Where == m.where && e.What == m.what })
		switch {
		case isListed && !ok:
			t.Errorf("equivalent.yaml: %s: %s: a case fails of it", id, m)
		case isListed:
			used[m.String()] = true
		case ok && m.at != nil:
			t.Errorf("%s:%d: no case fails of %s", m.at.File, m.at.Row, m)
		case ok:
			t.Errorf("%s: no case fails of %s", id, m)
		}
	}
	for _, e := range listed {
		if !used[e.Where+": "+e.What] || e.Why == "" {
			t.Errorf("equivalent.yaml: %s: %s: %s: no such mutant passes, or no reason is given", id, e.Where, e.What)
		}
	}
	all.Lock()
	defer all.Unlock()
	all.modules = append(all.modules, id)
	all.mutants += tried
	all.listed += len(used)
}

// A trial puts a rule's cases to the rule, whatever has been made of it.
type trial struct {
	modules []module // the rule and what it imports
	query   string
	cases   []trialCase
	schema  []byte
	data    map[string]any
	store   storage.Store
}

// A trialCase is one of the rule's cases, as agrees of lib/cases_test.rego asks for
// it: without what the rule said.
type trialCase struct {
	input ast.Value
	asked ast.Object
}

func (rt *ruleTest) openTrial() *trial {
	t := &trial{
		modules: imported(rt.module),
		query:   rt.module.parsed.Package.Path.String(),
		schema:  schemaFor(rt.module.parsed),
		data:    clone(rt.data),
	}
	t.store = storeOf(t.data)
	var cases map[string]map[string]any
	rt.query("cases", &cases)
	for _, name := range slices.Sorted(maps.Keys(cases)) {
		each := cases[name]
		each["collection"] = rt.rule.Subject
		asked := ast.MustInterfaceToValue(each).(ast.Object)
		t.cases = append(t.cases, trialCase{asked.Get(ast.StringTerm("input")).Value, asked})
	}
	return t
}

// imported returns the modules and what they use of the library.
func imported(modules ...module) []module {
	for i := 0; i < len(modules); i++ {
		ast.WalkRefs(modules[i].parsed, func(ref ast.Ref) bool {
			for _, m := range library() {
				if ref.HasPrefix(m.parsed.Package.Path) && !slices.ContainsFunc(modules, func(o module) bool { return o.file == m.file }) {
					modules = append(modules, m)
				}
			}
			return false
		})
	}
	return modules
}

// idleStages of the compiler neither change what a rule says nor tell whether it
// is one: without a check on the head of a rule, a variable that nothing sets would
// pass.
var idleStages = append(slices.DeleteFunc(slices.Clone(pureChecks), func(s ast.StageID) bool {
	return s == ast.StageCheckSafetyRuleHeads
}), ast.StageBuildComprehensionIndices)

// passes reports whether the rule, as it is now, passes every case. Its error is
// that there is no rule: the compiler refuses it.
func (t *trial) passes() (bool, error) {
	c := ast.NewCompiler().WithSkipStages(idleStages...)
	if err := compile(c, t.modules); err != nil {
		return false, err
	}
	ctx := context.Background()
	query, err := rego.New(rego.Compiler(c), rego.Store(t.store), rego.Query(t.query)).PrepareForEval(ctx)
	if err != nil {
		return false, err
	}
	for _, each := range t.cases {
		said, err := query.Eval(ctx, rego.EvalParsedInput(each.input))
		if err != nil { // a function with two values
			return false, nil
		}
		asked := each.asked.Copy()
		asked.Insert(ast.StringTerm("said"), ast.NewTerm(ast.MustInterfaceToValue(said[0].Expressions[0].Value)))
		answer, err := agreement().Eval(ctx, rego.EvalParsedInput(asked))
		if err != nil || !answer.Allowed() {
			return false, err
		}
	}
	return true, nil
}

// agreement is the question whether a rule said what a case wants.
var agreement = sync.OnceValue(func() rego.PreparedEvalQuery {
	const text = `package trial

agrees if {
	asked := input
	data.lib.cases_test.agrees(asked.said, asked.collection, asked.want) with input as asked.input
}`
	c := ast.NewCompiler()
	if err := compile(c, imported(module{file: "trial.rego", parsed: ast.MustParseModule(text)}, casesModule())); err != nil {
		panic(err)
	}
	query, err := rego.New(rego.Compiler(c), rego.Query("data.trial.agrees")).PrepareForEval(context.Background())
	if err != nil {
		panic(err)
	}
	return query
})

// checks reports whether the rule, as it is now, passes the compiler and the check
// against the document's schema.
func (rt *ruleTest) checks(schema []byte) bool {
	c, err := checker(schema)
	if err != nil {
		rt.Fatal(err)
	}
	return compile(c, imported(rt.module)) == nil
}

// limitMutants moves each of the rule's limits up and down.
func (rt *ruleTest) limitMutants(t *trial) []mutant {
	var all []mutant
	for _, name := range slices.Sorted(maps.Keys(rt.rule.Limits)) {
		limit := rt.rule.Limits[name]
		at := t.data
		for _, key := range []string{rulesRoot, rt.rule.Area, limitsKey, rt.rule.Name, name} {
			at = at[key].(map[string]any)
		}
		for _, off := range beside(limit.Value, limit.dimension == unit.Count) {
			all = append(all, mutant{where: "limits." + name, what: fmt.Sprint(off), change: t.replace(at, "value", off)})
		}
	}
	return all
}

// replace puts another value into the data, and takes it out again.
func (t *trial) replace(at map[string]any, key string, value any) func() func() {
	return func() func() {
		own := at[key]
		set := func(v any) {
			at[key] = v
			t.store = storeOf(t.data)
		}
		set(value)
		return func() { set(own) }
	}
}

// rowMutants takes away each row of a table that the rule may find a danger or a
// fault by, and moves each number in it that the rule reads.
func (rt *ruleTest) rowMutants(t *trial) []mutant {
	if rt.rule.Level == LevelAdvice {
		return nil
	}
	var all []mutant
	found := readings(rt.module.parsed)
	for _, name := range tablesRead([]module{rt.module}) {
		if !slices.ContainsFunc(found, func(r reading) bool { return r.table == name }) {
			rt.Errorf("%s: write some row in data.tables.%s.rows, so that its rows can be tried", rt.rule.File, name)
		}
	}
	for _, read := range found {
		table := t.data["tables"].(map[string]any)[read.table].(map[string]any)
		rows := table["rows"].([]any)
		for i, r := range rows {
			row := r.(map[string]any)
			if !read.mayTake(row) {
				continue
			}
			add := func(what string, change func() func()) {
				all = append(all, mutant{where: "tables." + read.table, what: what + read.title(row), at: read.at, change: change})
			}
			add("without ", t.replace(table, "rows", slices.Delete(slices.Clone(rows), i, i+1)))
			for _, column := range read.columns {
				if n, ok := row[column].(float64); ok {
					for _, off := range beside(n, false) {
						add(fmt.Sprintf("%s %v in ", column, off), t.replace(row, column, off))
					}
				}
			}
		}
	}
	return all
}

package policies

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage"

	"fitup/spec/unit"
)

// A mutation is one small wrong in a rule's text.
type mutation struct {
	at    *ast.Location
	what  string
	field bool   // a field is misspelt
	make  func() // changes the term that it was found in
}

// mutations tries every small wrong in turn. Each must fail the check against
// the document's schema or one of the rule's cases; one that does not is a part
// of the rule that nothing tests.
func (rt *ruleTest) mutations() {
	schema := schemaFor(rt.module.parsed)
	store := rt.storeWithCases(rt.data)
	trial := rt.trial()
	for i, original := range mutationsOf(rt.module.parsed) {
		variant := rt.module
		variant.parsed = rt.module.parsed.Copy()
		mutationsOf(variant.parsed)[i].make()
		if original.field && !rt.checks(variant, schema) {
			continue
		}
		if rt.passes(variant, trial, store) {
			rt.Errorf("%s:%d: no case fails when %s", original.at.File, original.at.Row, original.what)
		}
	}
	for name, limit := range rt.rule.Limits {
		for _, sign := range []float64{-1, 1} {
			step := sign
			if limit.dimension != unit.Count {
				step *= max(math.Abs(limit.Value)*0.01, 1e-9)
			}
			data := clone(rt.data)
			area := data[rulesRoot].(map[string]any)[rt.rule.Area].(map[string]any)
			area[limitsKey].(map[string]any)[rt.rule.Name].(map[string]any)[name].(map[string]any)["value"] = limit.Value + step
			if rt.passes(rt.module, trial, rt.storeWithCases(data)) {
				rt.Errorf("no case fails when the limit %s is %v", name, limit.Value+step)
			}
		}
	}
}

// checks reports whether a variant of the rule passes the compiler and the
// check against the document's schema.
func (rt *ruleTest) checks(variant module, schema []byte) bool {
	c, err := checker(schema)
	if err != nil {
		rt.Fatal(err)
	}
	if !usesLibrary(variant.parsed) {
		return compile(c, []module{variant}) == nil
	}
	return compile(c, with(variant)) == nil
}

func usesLibrary(m *ast.Module) bool {
	lib := ast.MustParseRef("data.lib")
	found := false
	ast.WalkRefs(m, func(ref ast.Ref) bool {
		found = found || ref.HasPrefix(lib)
		return found
	})
	return found
}

// trial is the rule's test in small: the same question, put to cases that are
// data, so that the compiler need not read them for every variant.
func (rt *ruleTest) trial() module {
	text := fmt.Sprintf(`package trial

passed contains name if {
	some name, each in data.cases
	data.lib.cases_test.agrees(%s, %q, each.want) with input as each.input
}`, rt.module.parsed.Package.Path, rt.rule.Subject)
	return module{file: "trial.rego", parsed: ast.MustParseModule(text)}
}

func (rt *ruleTest) storeWithCases(data map[string]any) storage.Store {
	var cases any
	rt.query("cases", &cases)
	data = maps.Clone(data)
	data["cases"] = cases
	return storeOf(data)
}

// passes reports whether a variant of the rule passes every case.
func (rt *ruleTest) passes(variant, trial module, store storage.Store) bool {
	c := ast.NewCompiler().WithSkipStages(pureChecks...)
	if compile(c, with(casesModule(), variant, trial)) != nil {
		return false
	}
	var passed []string
	return ask(c, store, "data.trial.passed", &passed) == nil && len(passed) == len(rt.cases)
}

// swapped are comparisons next to each other.
var swapped = map[string]string{"lt": "lte", "lte": "lt", "gt": "gte", "gte": "gt", "equal": "neq", "neq": "equal"}

// mutationsOf finds what can be made wrong in a rule, always in one order: each
// field of a reference and each word looked for among what is none, misspelt;
// each comparison swapped for its neighbour; each number a little off.
func mutationsOf(m *ast.Module) []mutation {
	data := map[ast.Var]bool{"data": true}
	for _, i := range m.Imports {
		data[i.Name()] = true
	}
	var all []mutation
	add := func(at *ast.Location, what string, make func()) {
		all = append(all, mutation{at: at, what: what, make: make})
	}
	misspell := func(at *ast.Location, t *ast.Term, whole string) {
		word := t.Value.(ast.String)
		add(at, fmt.Sprintf("%q in %s is misspelt", word, whole), func() { t.Value = word + "_x" })
		all[len(all)-1].field = true
	}
	terms := func(operator *ast.Term, operands []*ast.Term) {
		name := operator.Value.String()
		if other, ok := swapped[name]; ok {
			add(operator.Location, name+" is "+other, func() { operator.Value = ast.BuiltinMap[other].Ref() })
		}
		for _, operand := range operands {
			if n, ok := operand.Value.(ast.Number); ok {
				off := nudge(n)
				add(operand.Location, fmt.Sprintf("%s is %s", n, off), func() { operand.Value = off })
			}
		}
		if name == ast.Member.Name && len(operands) == 2 {
			_, isWord := operands[0].Value.(ast.String)
			if isWord && strings.HasSuffix(operands[1].String(), ".none") {
				misspell(operator.Location, operands[0], operands[1].String())
			}
		}
	}
	ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case *ast.Package, *ast.Import:
			return true
		case *ast.Expr:
			if list, ok := x.Terms.([]*ast.Term); ok {
				terms(list[0], list[1:])
			}
		case *ast.Term:
			switch v := x.Value.(type) {
			case ast.Call:
				terms(v[0], v[1:])
			case ast.Ref:
				head, _ := v[0].Value.(ast.Var)
				if data[head] || ast.BuiltinMap[v.String()] != nil || strings.HasPrefix(v.String(), "internal.") {
					return false
				}
				whole := v.String()
				for _, part := range v[1:] {
					if _, ok := part.Value.(ast.String); ok {
						misspell(x.Location, part, whole)
					}
				}
			}
		}
		return false
	}).Walk(m)
	return all
}

// nudge returns a number next to n: the next whole one, or one percent off.
func nudge(n ast.Number) ast.Number {
	if i, ok := n.Int(); ok {
		return ast.Number(strconv.Itoa(i + 1))
	}
	f, _ := n.Float64()
	return ast.Number(json.Number(strconv.FormatFloat(f*1.01, 'g', -1, 64)))
}

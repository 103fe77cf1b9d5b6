package policies

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
)

// checkSyntax holds a rule's text to what keeps a subject from being lost in
// silence and a misspelt field from being overlooked.
func checkSyntax(t errorer, m *ast.Module, basis Basis) {
	s := syntax{t, m, documentSchema()}
	for _, r := range m.Rules {
		s.shape(r)
		s.calls(r)
		s.words(r)
	}
	s.expressions()
	if basis == Hazard {
		s.hazard()
	}
}

type errorer interface {
	Errorf(format string, args ...any)
}

type syntax struct {
	errorer
	module *ast.Module
	schema schema
}

func (s syntax) bad(at *ast.Location, text string) { s.Errorf("%s:%d: %s", at.File, at.Row, text) }

// shape allows the two sets, constants, and helpers that work on scalars.
func (s syntax) shape(r *ast.Rule) {
	name := r.Head.Ref().String()
	switch {
	case name == "judges":
		s.set(r, []string{"subject", "needs"}, nil)
	case name == "findings":
		s.set(r, []string{"subject", "figures"}, []string{"at", "also", "case"})
	case r.Head.RuleKind() == ast.MultiValue || len(r.Head.Ref()) > 1:
		s.bad(r.Location, name+": a rule has the sets judges and findings, and no other")
	case readsInput(r):
		s.bad(r.Location, name+": only judges and findings read the input; a helper takes scalars")
	case len(r.Head.Args) > 0 && builds(r):
		s.bad(r.Location, name+": a helper builds no collection")
	}
}

// set checks the element of a set: an object literal of known keys.
func (s syntax) set(r *ast.Rule, required, optional []string) {
	if r.Head.RuleKind() != ast.MultiValue {
		s.bad(r.Location, r.Head.Ref().String()+" is a set: write contains")
		return
	}
	o, ok := r.Head.Key.Value.(ast.Object)
	if !ok {
		s.bad(r.Location, "write the element out as an object")
		return
	}
	var keys []string
	o.Foreach(func(k, v *ast.Term) {
		key := strings.Trim(k.String(), `"`)
		keys = append(keys, key)
		if _, isList := v.Value.(*ast.Array); key == "needs" && (!isList || !v.IsGround()) {
			s.bad(v.Location, "needs: write the fields out, so that they can be checked")
		}
		if _, isText := v.Value.(ast.String); (key == "at" || key == "case") && !isText {
			s.bad(v.Location, key+": write the word out, so that it can be checked")
		}
		if _, isObject := v.Value.(ast.Object); key == "figures" && !isObject {
			s.bad(v.Location, "figures: write the object out")
		}
	})
	for _, key := range required {
		if !slices.Contains(keys, key) {
			s.bad(r.Location, "missing: "+key)
		}
	}
	for _, key := range keys {
		if !slices.Contains(required, key) && !slices.Contains(optional, key) {
			s.bad(r.Location, "unknown: "+key)
		}
	}
}

func readsInput(x any) bool {
	found := false
	ast.WalkRefs(x, func(ref ast.Ref) bool {
		found = found || ref.HasPrefix(ast.InputRootRef)
		return found
	})
	return found
}

// builds reports whether a helper has a collection for its value, or makes one.
func builds(r *ast.Rule) bool {
	found := false
	ast.WalkTerms(r.Head.Value, func(t *ast.Term) bool {
		found = found || isCollection(t)
		return found
	})
	ast.WalkTerms(r.Body, func(t *ast.Term) bool {
		found = found || ast.IsComprehension(t.Value)
		return found
	})
	return found
}

func isCollection(t *ast.Term) bool {
	switch t.Value.(type) {
	case *ast.Array, ast.Object, ast.Set, *ast.ArrayComprehension, *ast.ObjectComprehension, *ast.SetComprehension:
		return true
	}
	return false
}

// calls checks what is handed to functions: helpers take scalars, and no
// built-in looks up a field by its name in text.
func (s syntax) calls(r *ast.Rule) {
	vars := s.variables(r)
	check := func(operator ast.Ref, args []*ast.Term, at *ast.Location) {
		name := operator.String()
		if name == "object.get" || name == "walk" || name == "sprintf" {
			s.bad(at, name+": not in a rule: write the field out; Go prints figures")
		}
		if ast.BuiltinMap[name] != nil {
			return
		}
		for _, arg := range args {
			ref, isRef := arg.Value.(ast.Ref)
			if v, isVar := arg.Value.(ast.Var); isVar {
				ref, isRef = ast.Ref{ast.NewTerm(v)}, true
			}
			handed := isCollection(arg)
			if isRef {
				n, known := s.schema.follow(ref, vars)
				handed = known && s.schema.composite(n)
			}
			if handed {
				s.bad(at, name+": a helper takes scalars, and "+arg.String()+" is none")
			}
		}
	}
	ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case *ast.Expr:
			if x.IsCall() && !x.IsEquality() {
				check(x.Operator(), x.Operands(), x.Location)
			}
		case *ast.Term:
			if call, ok := x.Value.(ast.Call); ok {
				check(call[0].Value.(ast.Ref), call[1:], x.Location)
			}
		}
		return false
	}).Walk(r)
}

// variables tells what the variables of a rule stand for in the document.
func (s syntax) variables(r *ast.Rule) map[ast.Var]node {
	vars := map[ast.Var]node{ast.InputRootDocument.Value.(ast.Var): s.schema.root}
	bind := func(name, value *ast.Term, element bool) {
		v, isVar := name.Value.(ast.Var)
		ref, isRef := value.Value.(ast.Ref)
		if !isVar || !isRef {
			return
		}
		n, ok := s.schema.follow(ref, vars)
		if ok && element {
			n, ok = s.schema.items(n)
		}
		if ok {
			vars[v] = n
		}
	}
	ast.WalkExprs(r, func(e *ast.Expr) bool {
		switch terms := e.Terms.(type) {
		case *ast.SomeDecl:
			if call, ok := terms.Symbols[0].Value.(ast.Call); ok { // some x in y; some k, x in y
				bind(call[len(call)-2], call[len(call)-1], true)
			}
		case []*ast.Term:
			if e.IsAssignment() {
				bind(e.Operand(0), e.Operand(1), false)
			}
		}
		return false
	})
	return vars
}

// compares are the functions that compare a field with a word, or with a set of them.
var compares = []string{ast.Equal.Name, ast.NotEqual.Name, ast.Member.Name}

// words checks that a word which a field is compared with is one that it may be.
func (s syntax) words(r *ast.Rule) {
	ast.WalkExprs(r, func(e *ast.Expr) bool {
		if !e.IsCall() || !slices.Contains(compares, e.Operator().String()) {
			return false
		}
		words := s.choice(r, e.Operand(0))
		for _, word := range s.written(e.Operand(1)) {
			if words != nil && !slices.Contains(words, word) {
				s.bad(e.Location, fmt.Sprintf("%s is never %q", e.Operand(0), word))
			}
		}
		return false
	})
}

// written lists the words that a term is made of.
func (s syntax) written(t *ast.Term) (words []string) {
	switch v := t.Value.(type) {
	case ast.String:
		return []string{string(v)}
	case ast.Set:
		v.Foreach(func(t *ast.Term) { words = append(words, s.written(t)...) })
	case ast.Var:
		if constant := s.constant(v); constant != nil {
			return s.written(constant)
		}
	}
	return words
}

// choice lists the words that the document's schema has a field choose from, or
// the field that is handed to a helper. It is nil if there is no such choice.
func (s syntax) choice(r *ast.Rule, t *ast.Term) []string {
	switch v := t.Value.(type) {
	case ast.Ref:
		n, _ := s.schema.follow(v, s.variables(r))
		return texts(s.schema.resolve(n)["enum"])
	case ast.Var:
		return s.handed(r, t)
	}
	return nil
}

// constant returns the value of a constant of the module.
func (s syntax) constant(name ast.Var) *ast.Term {
	for _, r := range s.module.Rules {
		if r.Head.Name.Equal(name) && r.Head.RuleKind() == ast.SingleValue && len(r.Head.Args) == 0 {
			return r.Head.Value
		}
	}
	return nil
}

// handed lists the words that the callers of a helper choose from.
func (s syntax) handed(r *ast.Rule, parameter *ast.Term) (words []string) {
	i := slices.IndexFunc(r.Head.Args, parameter.Equal)
	known := i >= 0
	for _, caller := range s.module.Rules {
		ast.WalkExprs(caller, func(e *ast.Expr) bool {
			if known && e.IsCall() && e.Operator().Equal(r.Head.Ref()) {
				more := s.choice(caller, e.Operand(i))
				words, known = append(words, more...), more != nil
			}
			return false
		})
	}
	if !known {
		return nil
	}
	return words
}

// expressions checks every expression on its own.
func (s syntax) expressions() {
	ast.WalkExprs(s.module, func(e *ast.Expr) bool {
		if e.IsEvery() {
			s.bad(e.Location, "every: a misspelt field in it would pass; write some and not")
		}
		if e.Negated && !mayNegate(e) && holdsField(e) {
			s.bad(e.Location, "not: a subject's field stands bare or in ==; else a subject without it is lost in silence")
		}
		return false
	})
}

func mayNegate(e *ast.Expr) bool {
	if t, ok := e.Terms.(*ast.Term); ok {
		_, bare := t.Value.(ast.Ref)
		return bare
	}
	name := e.Operator().String()
	return name == ast.Equal.Name || name == ast.Equality.Name
}

// holdsField reports whether there is a field of the input or of a variable in x.
func holdsField(e *ast.Expr) bool {
	found := false
	operator := ast.Ref{}
	if e.IsCall() {
		operator = e.Operator()
	}
	ast.WalkRefs(e, func(ref ast.Ref) bool {
		found = found || len(ref) > 1 && !ref.Equal(operator) && !ref.HasPrefix(ast.DefaultRootRef) && ast.BuiltinMap[ref.String()] == nil
		return false
	})
	return found
}

// hazard allows no figure that could be in dispute.
func (s syntax) hazard() {
	ast.WalkTerms(s.module, func(t *ast.Term) bool {
		switch v := t.Value.(type) {
		case ast.Number:
			s.bad(t.Location, "a hazard reads no number: "+v.String())
		case ast.Ref:
			if v.HasPrefix(ast.DefaultRootRef) && len(v) > 1 && !v[1].Equal(ast.StringTerm("lib")) && !v.HasPrefix(s.module.Package.Path) {
				s.bad(t.Location, "a hazard reads no limit and no table: "+v.String())
			}
		}
		return false
	})
}

// lines collects errors as text.
type lines []string

func (l *lines) Errorf(format string, args ...any) {
	_, text, _ := strings.Cut(strings.TrimSpace(fmt.Sprintf(format, args...)), ": ")
	*l = append(*l, text)
}

func TestCheckSyntax(t *testing.T) {
	const judges = "judges contains {\"subject\": line.path, \"needs\": [\"clips\"]} if some line in input.lines\n"
	const found = "findings contains {\"subject\": line.path, \"figures\": {}} if {\n\tsome line in input.lines\n"
	tests := map[string]struct {
		text  string
		basis Basis
		want  string // the beginning of the only error; empty for none
	}{
		"whole":                      {text: judges + found + "line.clips > 1\n}"},
		"constant":                   {text: judges + found + "line.clips in few\n}\nfew := {1, 2}"},
		"helper on a scalar":         {text: judges + found + "long(line.clips)\n}\nlong(n) if n > 1"},
		"helper on a subject":        {text: judges + found + "long(line)\n}\nlong(l) if l.clips > 1", want: "long: a helper takes scalars, and line is none"},
		"helper on an object":        {text: judges + found + "long(line.hose)\n}\nlong(h) if h.length > 1", want: "long: a helper takes scalars, and line.hose is none"},
		"helper on an alias":         {text: judges + found + "h := line.hose\nlong(h)\n}\nlong(h) if h.length > 1", want: "long: a helper takes scalars, and h is none"},
		"helper within an operation": {text: judges + found + "1 + long(line) > 2\n}\nlong(l) := l.clips", want: "long: a helper takes scalars, and line is none"},
		"helper that builds":         {text: judges + found + "pair(line.clips)\n}\npair(n) := [n, n]", want: "pair: a helper builds no collection"},
		"helper that gathers":        {text: judges + found + "big(line.clips)\n}\nbig(n) if count([1 | n > 1]) > 0", want: "big: a helper builds no collection"},
		"helper on the input":        {text: judges + found + "boosted\n}\nboosted if input.date", want: "boosted: only judges and findings read the input"},
		"third set":                  {text: judges + found + "line.clips\n}\nlong contains 1", want: "long: a rule has the sets judges and findings, and no other"},
		"object":                     {text: judges + found + "line.clips\n}\nlong[x] := 1 if some x in [1]", want: "long[x]: a rule has the sets judges and findings, and no other"},
		"unknown key":                {text: judges + "findings contains {\"subject\": \"x\", \"figures\": {}, \"note\": 1}", want: "unknown: note"},
		"missing key":                {text: judges + "findings contains {\"subject\": \"x\"}", want: "missing: figures"},
		"needs computed":             {text: "judges contains {\"subject\": \"x\", \"needs\": all}\nall := [\"clips\"]\n", want: "needs: write the fields out"},
		"case computed":              {text: judges + found + "\n}\nfindings contains {\"subject\": \"x\", \"figures\": {}, \"case\": c} if c := \"a\"", want: "case: write the word out"},
		"every":                      {text: judges + found + "every c in line.behind { c != \"x\" }\n}", want: "every: "},
		"object.get":                 {text: judges + found + "object.get(line, \"clips\", 0) > 1\n}", want: "object.get: not in a rule"},
		"walk":                       {text: judges + found + "walk(line, [p, v])\np == v\n}", want: "walk: not in a rule"},
		"not bare":                   {text: judges + found + "not line.bonded\n}"},
		"not equal":                  {text: judges + found + "not line.service == \"fuel\"\n}"},
		"not in":                     {text: judges + found + "not line.service in few\n}\nfew := {\"fuel\"}", want: "not: a subject's field stands bare or in =="},
		"not less":                   {text: judges + found + "not line.clips < 3\n}", want: "not: a subject's field stands bare or in =="},
		"not helper":                 {text: judges + found + "not long(line.clips)\n}\nlong(n) if n > 1", want: "not: a subject's field stands bare or in =="},
		"not on a variable":          {text: judges + found + "c := line.clips\nnot long(c)\n}\nlong(n) if n > 1"},
		"hazard":                     {text: judges + found + "line.bonded == false\n}", basis: Hazard},
		"hazard with a number":       {text: judges + found + "line.clips > 1\n}", basis: Hazard, want: "a hazard reads no number: 1"},
		"hazard with a limit":        {text: judges + found + "line.clips > data.rules.lines.limits.x.y.value\n}", basis: Hazard, want: "a hazard reads no limit and no table"},
		"word":                       {text: judges + found + "line.kind.liner == \"nylon\"\n}"},
		"word that never stands":     {text: judges + found + "line.kind.liner == \"nylno\"\n}", want: "line.kind.liner is never \"nylno\""},
		"word in a constant":         {text: judges + found + "line.kind.liner in soft\n}\nsoft := {\"nylon\", \"nylno\"}", want: "line.kind.liner is never \"nylno\""},
		"word handed to a helper":    {text: judges + found + "hard(line.kind.liner)\n}\nhard(l) if l != \"nylno\"", want: "l is never \"nylno\""},
		"hazard with a table":        {text: "import data.tables\n" + judges + found + "line.clips == tables.dash\n}", basis: Hazard, want: "a hazard reads no limit and no table"},
	}
	for _, name := range slices.Sorted(maps.Keys(tests)) {
		t.Run(name, func(t *testing.T) {
			test := tests[name]
			m, err := ast.ParseModule("rule.rego", "package rules.lines.tried\n\n"+test.text)
			if err != nil {
				t.Fatal(err)
			}
			var got lines
			checkSyntax(&got, m, test.basis)
			if test.want == "" && len(got) > 0 || test.want != "" && (len(got) != 1 || !strings.HasPrefix(got[0], test.want)) {
				t.Errorf("got %q, want %q", got, test.want)
			}
		})
	}
}

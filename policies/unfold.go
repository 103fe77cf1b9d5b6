package policies

import (
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
)

// What the text of an own rule may unfold to. The compiler and each comparison
// take a value apart at every place where it stands, so forty lines that each hold
// the line before twice would keep them busy for ever.
const (
	mostNesting  = 64      // terms within terms
	mostUnfolded = 100_000 // values, each counted where it stands
)

// checkUnfolded tells of a rule that is nested too deep, or that describes a value
// which would unfold beyond all use.
func checkUnfolded(module *ast.Module) error {
	if at := nestedAt(module); at != nil {
		return fmt.Errorf("%s:%d: this is nested more than %d deep; give the parts names", at.File, at.Row, mostNesting)
	}
	w := newWeigher(module)
	for w.again() {
		for i, r := range w.rules {
			if w.rule(i) > mostUnfolded {
				return fmt.Errorf("%s:%d: %s unfolds to more than %d values; make no value of many copies of another",
					r.Location.File, r.Location.Row, nameOf(r), mostUnfolded)
			}
		}
	}
	return nil
}

// nestedAt is where a module is nested too deep, or nil.
func nestedAt(module *ast.Module) (at *ast.Location) {
	depth := 0
	ast.NewBeforeAfterVisitor(func(x any) bool {
		if t, ok := x.(*ast.Term); ok {
			if depth++; depth > mostNesting && at == nil {
				at = t.Location
			}
		}
		return at != nil
	}, func(x any) {
		if _, ok := x.(*ast.Term); ok {
			depth--
		}
	}).Walk(module)
	return at
}

// nameOf is the name that a rule of a module goes by in it.
func nameOf(r *ast.Rule) ast.Var {
	name, _ := r.Head.Ref()[0].Value.(ast.Var)
	return name
}

// A weigher finds how many values the terms of a module unfold to, at most. What
// comes from outside counts as one. Weights begin at one and are worked out again
// until they stay, which needs no order among what refers to one another.
type weigher struct {
	rules   []*ast.Rule // with those of else
	bound   map[variable][]*ast.Term
	weights map[variable]float64 // floating, so that none overflows
	grown   bool                 // whether a weight has changed since it was asked
}

// A variable is a name in one of the rules, or that of a rule itself.
type variable struct {
	rule int // in rules, or inModule
	name ast.Var
}

const inModule = -1

func newWeigher(module *ast.Module) *weigher {
	w := &weigher{bound: map[variable][]*ast.Term{}, weights: map[variable]float64{}, grown: true}
	for _, r := range module.Rules {
		for ; r != nil; r = r.Else {
			w.rules = append(w.rules, r)
			w.weights[variable{inModule, nameOf(r)}] = 1
		}
	}
	for i, r := range w.rules {
		w.bind(i, r)
	}
	return w
}

// bind notes what the variables of a rule stand for. If a variable stands for
// several things they are equal, so that what a pattern says of one goes only for
// those of which nothing else is said.
func (w *weigher) bind(rule int, r *ast.Rule) {
	reverse := map[variable][]*ast.Term{}
	note := func(to map[variable][]*ast.Term, pattern, value *ast.Term) {
		ast.WalkVars(pattern, func(v ast.Var) bool {
			to[variable{rule, v}] = append(to[variable{rule, v}], value)
			return false
		})
	}
	ast.WalkExprs(r, func(e *ast.Expr) bool {
		switch terms := e.Terms.(type) {
		case *ast.SomeDecl:
			if member, ok := terms.Symbols[0].Value.(ast.Call); ok {
				for _, pattern := range member[1 : len(member)-1] {
					note(w.bound, pattern, member[len(member)-1])
				}
			}
		case *ast.Every:
			note(w.bound, terms.Value, terms.Domain)
		case []*ast.Term:
			switch operator := terms[0].Value.(ast.Ref); {
			case operator.Equal(ast.Assign.Ref()):
				note(w.bound, terms[1], terms[2])
			case operator.Equal(ast.Equality.Ref()):
				if _, plain := terms[1].Value.(ast.Var); plain {
					note(w.bound, terms[1], terms[2])
					note(reverse, terms[2], terms[1])
				} else {
					note(w.bound, terms[2], terms[1])
					note(reverse, terms[1], terms[2])
				}
			default: // the last operand may take the result
				last := len(terms) - 1
				note(reverse, terms[last], ast.CallTerm(terms[:last]...))
			}
		}
		return false
	})
	for v, terms := range reverse {
		if w.bound[v] == nil {
			w.bound[v] = terms
		}
	}
}

// again works the weights of all variables out once more, and reports whether
// that changed any since it was last asked.
func (w *weigher) again() bool {
	if !w.grown {
		return false
	}
	w.grown = false
	for v, terms := range w.bound {
		weight := 1.0
		for _, t := range terms {
			weight = max(weight, w.term(v.rule, t))
		}
		w.set(v, weight)
	}
	named := map[ast.Var]float64{}
	for i, r := range w.rules {
		named[nameOf(r)] += w.rule(i)
	}
	for name, weight := range named {
		w.set(variable{inModule, name}, weight)
	}
	return true
}

func (w *weigher) set(v variable, weight float64) {
	if weight > w.weights[v] && w.weights[v] <= mostUnfolded {
		w.weights[v], w.grown = weight, true
	}
}

// rule weighs what one rule adds to what its name stands for.
func (w *weigher) rule(i int) float64 {
	head := w.rules[i].Head
	weight := 1.0
	for _, t := range append(head.Ref()[1:], head.Key, head.Value) {
		if t != nil {
			weight += w.term(i, t)
		}
	}
	return weight
}

func (w *weigher) term(rule int, t *ast.Term) float64 {
	weight := 1.0
	add := func(t *ast.Term) { weight += w.term(rule, t) }
	switch v := t.Value.(type) {
	case ast.Var:
		return w.named(rule, v)
	case ast.Ref:
		return w.ref(rule, v)
	case ast.Call:
		for _, operand := range v[1:] {
			add(operand)
		}
		return weight * w.term(rule, v[0]) // a function may repeat what it is given
	case *ast.Array:
		v.Foreach(add)
	case ast.Set:
		v.Foreach(add)
	case ast.Object:
		v.Foreach(func(key, value *ast.Term) { add(key); add(value) })
	case *ast.ArrayComprehension:
		add(v.Term)
	case *ast.SetComprehension:
		add(v.Term)
	case *ast.ObjectComprehension:
		add(v.Key)
		add(v.Value)
	}
	return weight
}

// named weighs what a name in a rule stands for: a variable, or a rule of the
// module.
func (w *weigher) named(rule int, name ast.Var) float64 {
	return max(1, w.weights[variable{rule, name}], w.weights[variable{inModule, name}])
}

// ref weighs a part of something by the whole.
func (w *weigher) ref(rule int, ref ast.Ref) float64 {
	if len(ref) > 4 && ref[0].Equal(ast.DefaultRootDocument) { // data.rules.own.NAME.x
		if name, ok := ref[4].Value.(ast.String); ok && ref[1].Equal(ast.StringTerm(rulesRoot)) {
			return w.named(inModule, ast.Var(name))
		}
	}
	if name, ok := ref[0].Value.(ast.Var); ok {
		return w.named(rule, name)
	}
	return w.term(rule, ref[0])
}

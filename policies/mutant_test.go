package policies

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/open-policy-agent/opa/v1/ast"
)

// A mutant is a rule with one small wrong in it.
type mutant struct {
	where, what string        // name it: the body, limit or table, and the change
	at          *ast.Location // nil if it is not in the rule's text
	field       bool          // a field is misspelt: the check against the schema may notice
	change      func() (undo func())
}

func (m mutant) String() string { return m.where + ": " + m.what }

// others are the comparisons that each could be mistaken for: its neighbour and
// its negation.
var others = map[string][]string{
	"lt": {"lte", "gte"}, "lte": {"lt", "gt"}, "gt": {"gte", "lte"}, "gte": {"gt", "lt"}, "equal": {"neq"}, "neq": {"equal"},
}

// mutantsOf lists the mutants of a module: each comparison exchanged, each
// condition dropped and negated, each number up and down, and each field of a
// reference, and each word looked for among what is none, misspelt.
func mutantsOf(m *ast.Module) []mutant {
	s := surgeon{data: map[ast.Var]bool{"data": true}}
	for _, i := range m.Imports {
		s.data[i.Name()] = true
	}
	bodies := map[string]int{}
	for _, r := range m.Rules {
		name := r.Head.Ref().String()
		bodies[name]++
		s.where = fmt.Sprintf("%s %d", name, bodies[name])
		ast.NewGenericVisitor(s.visit).Walk(r)
	}
	return s.mutants
}

// A surgeon walks a rule and notes what can be changed in it.
type surgeon struct {
	data    map[ast.Var]bool // names that stand for data, not for a part of the document
	where   string
	mutants []mutant
}

func (s *surgeon) add(at *ast.Location, what string, change func() func()) {
	s.mutants = append(s.mutants, mutant{where: s.where, what: what, at: at, change: change})
}

func (s *surgeon) visit(x any) bool {
	switch x := x.(type) {
	case *ast.Rule:
		s.body(&x.Body)
	case *ast.Expr:
		if list, ok := x.Terms.([]*ast.Term); ok {
			s.call(x, list)
		}
	case *ast.Term:
		switch v := x.Value.(type) {
		case ast.Call:
			s.call(x, v)
		case ast.Number:
			s.number(x, v)
		case ast.Ref:
			s.reference(x, v)
		case *ast.ArrayComprehension:
			s.body(&v.Body)
		case *ast.SetComprehension:
			s.body(&v.Body)
		case *ast.ObjectComprehension:
			s.body(&v.Body)
		}
	}
	return false
}

// body drops and negates each condition. What only sets a variable is none.
func (s *surgeon) body(b *ast.Body) {
	whole := *b
	for i, e := range whole {
		if e.IsAssignment() || len(whole) == 1 && isTrue(e) { // the latter stands for a body that is not written
			continue
		}
		rest := slices.Delete(slices.Clone(whole), i, i+1)
		if len(rest) == 0 {
			rest = ast.NewBody(ast.NewExpr(ast.BooleanTerm(true)))
		}
		s.add(e.Location, "without "+onLine(e), func() func() {
			*b = rest
			return func() { *b = whole }
		})
		if _, some := e.Terms.(*ast.SomeDecl); some || e.IsCall() && others[e.Operator().String()] != nil && !e.Negated {
			continue // the other comparison is its negation
		}
		s.add(e.Location, "negated "+onLine(e), func() func() {
			e.Negated = !e.Negated
			return func() { e.Negated = !e.Negated }
		})
	}
}

func isTrue(e *ast.Expr) bool {
	t, ok := e.Terms.(*ast.Term)
	return ok && t.Value.Compare(ast.Boolean(true)) == 0
}

// call exchanges a comparison, and misspells the word that is looked for among
// what is none.
func (s *surgeon) call(x ast.Node, terms []*ast.Term) {
	operator, operands := terms[0], terms[1:]
	name := operator.Value.String()
	for _, other := range others[name] {
		s.add(x.Loc(), fmt.Sprintf("%s for %s in %s", other, name, onLine(x)), func() func() {
			own := operator.Value
			operator.Value = ast.BuiltinMap[other].Ref()
			return func() { operator.Value = own }
		})
	}
	if name == ast.Member.Name && len(operands) == 2 && strings.HasSuffix(operands[1].String(), ".none") {
		if _, isWord := operands[0].Value.(ast.String); isWord {
			s.misspell(operands[0], onLine(x))
		}
	}
}

// beside returns the numbers next to n: one off if it is whole and counts
// something, else one percent.
func beside(n float64, counts bool) []float64 {
	step := math.Abs(n) / 100
	if counts && n == math.Trunc(n) || n == 0 {
		step = 1
	}
	return []float64{n - step, n + step}
}

// number moves a literal up and down.
func (s *surgeon) number(t *ast.Term, n ast.Number) {
	value, _ := n.Float64()
	for _, off := range beside(value, true) {
		other := ast.Number(strconv.FormatFloat(off, 'g', -1, 64))
		s.add(t.Location, fmt.Sprintf("%s for %s", other, n), func() func() {
			t.Value = other
			return func() { t.Value = n }
		})
	}
}

// reference misspells each field.
func (s *surgeon) reference(t *ast.Term, ref ast.Ref) {
	head, _ := ref[0].Value.(ast.Var)
	if s.data[head] || ast.BuiltinMap[ref.String()] != nil || strings.HasPrefix(ref.String(), "internal.") {
		return
	}
	whole := ref.String()
	for _, part := range ref[1:] {
		if _, ok := part.Value.(ast.String); ok {
			s.misspell(part, whole)
		}
	}
}

func (s *surgeon) misspell(t *ast.Term, whole string) {
	word := t.Value.(ast.String)
	s.add(t.Location, fmt.Sprintf("%s misspelt in %s", string(word), whole), func() func() {
		t.Value = word + "_x"
		return func() { t.Value = word }
	})
	s.mutants[len(s.mutants)-1].field = true
}

// onLine is a piece of a rule as it stands in the file, on one line.
func onLine(x ast.Node) string { return strings.Join(strings.Fields(string(x.Loc().Text)), " ") }

// TestMutantsOf shows what is made of a rule.
func TestMutantsOf(t *testing.T) {
	m := ast.MustParseModule(`package rules.lines.tried

few := 2.5

findings contains {"subject": line.path} if {
	some line in input.lines
	line.clips > few
	not line.bonded
	count({end | some end in line.ends; end != "open"}) == 1
	"hose" in line.none
}`)
	want := []string{
		"few 1: 2.475 for 2.5",
		"few 1: 2.525 for 2.5",
		"findings 1: without some line in input.lines",
		"findings 1: without line.clips > few",
		"findings 1: without not line.bonded",
		"findings 1: negated not line.bonded",
		`findings 1: without count({end | some end in line.ends; end != "open"}) == 1`,
		`findings 1: without "hose" in line.none`,
		`findings 1: negated "hose" in line.none`,
		"findings 1: path misspelt in line.path",
		"findings 1: lines misspelt in input.lines",
		"findings 1: gte for gt in line.clips > few",
		"findings 1: lte for gt in line.clips > few",
		"findings 1: clips misspelt in line.clips",
		"findings 1: bonded misspelt in line.bonded",
		`findings 1: neq for equal in count({end | some end in line.ends; end != "open"}) == 1`,
		"findings 1: without some end in line.ends",
		`findings 1: without end != "open"`,
		"findings 1: ends misspelt in line.ends",
		`findings 1: equal for neq in end != "open"`,
		"findings 1: 0 for 1",
		"findings 1: 2 for 1",
		`findings 1: hose misspelt in "hose" in line.none`,
		"findings 1: none misspelt in line.none",
	}
	var got []string
	before := m.String()
	for _, each := range mutantsOf(m) {
		got = append(got, each.String())
		undo := each.change()
		if m.String() == before {
			t.Errorf("%s: changes nothing", each)
		}
		undo()
		if after := m.String(); after != before {
			t.Fatalf("%s: is not undone: %s", each, after)
		}
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

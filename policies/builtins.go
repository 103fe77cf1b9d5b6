package policies

import (
	"fmt"
	"slices"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// builtins are the functions of Rego that a rule may call: only those that the
// rules use, so that a later OPA cannot widen the list unseen. None reaches the
// network, the environment, a clock or a source of chance. What makes much out of
// little is bounded, see bounds, or is not here at all: one bits.lsh can fill the
// memory before anything can stop it.
var builtins = []string{
	"abs",
	"array.concat",
	"array.slice",
	"assign",
	"concat",
	"contains",
	"count",
	"eq",
	"equal",
	"gt",
	"gte",
	"internal.member_2",
	"lower",
	"lt",
	"lte",
	"minus",
	"mul",
	"neq",
	"object.get",
	"object.keys",
	"object.union",
	"plus",
	"split",
	"startswith",
}

// capabilities are what the rules are parsed and compiled with.
var capabilities = sync.OnceValue(func() *ast.Capabilities {
	c := ast.CapabilitiesForThisVersion()
	c.AllowNet = []string{}
	c.Builtins = slices.DeleteFunc(c.Builtins, func(b *ast.Builtin) bool {
		return !slices.Contains(builtins, b.Name)
	})
	return c
})

// What one call may be given or may make. A call cannot be stopped once it runs,
// so what it could grow out of all measure is refused before.
const (
	mostText   = 64 << 10 // bytes
	mostItems  = 100_000  // elements of an array; values, with all that they hold
	mostDigits = 1024     // characters of a number
)

// A bound says what is too much for a function of Rego: for what it is given, or
// for what it made.
type bound struct {
	given func(operands []*ast.Term) error
	made  func(result *ast.Term) error
}

// bounds are those of functions whose result can be far larger than what they are
// given, or takes far longer than it is large.
var bounds = map[string]bound{
	"array.concat": {given: boundArrays},
	"concat":       {given: boundText},
	"mul":          {made: boundNumber},
	"object.union": {given: boundValues},
}

// OPA keeps one table of functions for the program, read without a lock.
func init() {
	for name, b := range bounds {
		topdown.RegisterBuiltinFunc(name, b.around(topdown.GetBuiltin(name)))
	}
}

// around is a function within a bound.
func (b bound) around(f topdown.BuiltinFunc) topdown.BuiltinFunc {
	return func(call topdown.BuiltinContext, operands []*ast.Term, next func(*ast.Term) error) error {
		if b.given != nil {
			if err := b.given(operands); err != nil {
				return err
			}
		}
		return f(call, operands, func(result *ast.Term) error {
			if b.made != nil {
				if err := b.made(result); err != nil {
					return err
				}
			}
			return next(result)
		})
	}
}

func boundText(operands []*ast.Term) error {
	list, ok := operands[1].Value.(interface {
		Len() int
		Foreach(func(*ast.Term))
	})
	if !ok {
		return nil // the function itself says what it wants
	}
	size := max(0, list.Len()-1) * textSize(operands[0])
	list.Foreach(func(t *ast.Term) { size += textSize(t) })
	if size > mostText {
		return fmt.Errorf("the text would have %d bytes; the most is %d", size, mostText)
	}
	return nil
}

func textSize(t *ast.Term) int {
	s, _ := t.Value.(ast.String)
	return len(s)
}

func boundArrays(operands []*ast.Term) error {
	size := 0
	for _, each := range operands {
		if array, ok := each.Value.(*ast.Array); ok {
			size += array.Len()
		}
	}
	if size > mostItems {
		return fmt.Errorf("the array would have %d elements; the most is %d", size, mostItems)
	}
	return nil
}

func boundValues(operands []*ast.Term) error {
	left := budget{values: mostItems, text: mostItems * mostDigits}
	for _, each := range operands {
		if !left.spend(each) {
			return fmt.Errorf("the objects hold more than %d values", mostItems)
		}
	}
	return nil
}

func boundNumber(result *ast.Term) error {
	if n, ok := result.Value.(ast.Number); ok && len(n) > mostDigits {
		return fmt.Errorf("the number would have %d characters; the most is %d", len(n), mostDigits)
	}
	return nil
}

package policies

import (
	"slices"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
)

// builtins are the functions of Rego that a rule may call: only those that the
// rules use, so that a later OPA cannot widen the list unseen. None reaches the
// network, the environment, a clock or a source of chance, and none makes much
// out of little: one bits.lsh can fill the memory before anything can stop it.
var builtins = []string{
	"abs",
	"and",
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
	"intersection",
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
	"union",
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

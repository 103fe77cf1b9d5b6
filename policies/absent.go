package policies

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"fitup/policies/tables"
)

// absent tells which limits and tables a compiled rule reads that are not there. To
// Rego they are undefined, like a field that nobody wrote: the rule would keep
// silent for ever.
func absent(module *ast.Module, byArea map[string]limits) error {
	var all problems
	ast.WalkTerms(module, func(t *ast.Term) bool {
		ref, ok := t.Value.(ast.Ref)
		if !ok || t.Location == nil {
			return false
		}
		path := namesIn(ref)
		switch {
		case len(path) > 1 && path[0] == tablesRoot && !slices.Contains(tables.Names(), path[1]):
			all.add("%s:%d: there is no table %s", t.Location.File, t.Location.Row, path[1])
		case len(path) > 4 && path[0] == rulesRoot && path[2] == limitsKey:
			if _, ok := byArea[path[1]][path[3]][path[4]]; !ok {
				all.add("%s:%d: there is no limit %s", t.Location.File, t.Location.Row, strings.Join([]string{path[1], path[3], path[4]}, "."))
			}
		}
		return false
	})
	return all.join()
}

// namesIn are the keys that a reference into data begins with, as far as they are
// written out.
func namesIn(ref ast.Ref) []string {
	if !ref[0].Equal(ast.DefaultRootDocument) {
		return nil
	}
	var names []string
	for _, t := range ref[1:] {
		name, ok := t.Value.(ast.String)
		if !ok {
			break
		}
		names = append(names, string(name))
	}
	return names
}

package policies

import (
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// A reading is a body's way through the rows of a table.
type reading struct {
	at      *ast.Location
	table   string
	columns []string            // that the body reads, sorted
	words   map[string][]string // what may stand in a column for the body to take the row
}

// readings finds where a rule goes through a table: some row in data.tables.NAME.rows.
func readings(m *ast.Module) []reading {
	s := syntax{module: m, schema: documentSchema()}
	var all []reading
	for _, r := range m.Rules {
		for _, e := range r.Body {
			some, ok := e.Terms.(*ast.SomeDecl)
			if !ok {
				continue
			}
			in, ok := some.Symbols[0].Value.(ast.Call)
			if !ok {
				continue
			}
			rows, ok := in[len(in)-1].Value.(ast.Ref)
			if !ok || !rows.HasPrefix(ast.MustParseRef("data.tables")) {
				continue
			}
			read := reading{at: e.Location, table: string(rows[2].Value.(ast.String)), words: map[string][]string{}}
			read.conditions(s, r, in[len(in)-2])
			all = append(all, read)
		}
	}
	return all
}

// conditions notes what the rule's body asks of the columns of a row.
func (r *reading) conditions(s syntax, rule *ast.Rule, row *ast.Term) {
	column := func(t *ast.Term) string {
		if ref, ok := t.Value.(ast.Ref); ok && len(ref) == 2 && ref[0].Equal(row) {
			return string(ref[1].Value.(ast.String))
		}
		return ""
	}
	ast.WalkTerms(rule, func(t *ast.Term) bool {
		if name := column(t); name != "" && !slices.Contains(r.columns, name) {
			r.columns = append(r.columns, name)
		}
		return false
	})
	slices.Sort(r.columns)
	for _, e := range rule.Body {
		if !e.IsCall() || e.Negated || len(e.Operands()) != 2 {
			continue
		}
		name, other := column(e.Operand(0)), e.Operand(1)
		operator := e.Operator().String()
		if name != "" && (operator == ast.Equal.Name || operator == ast.Member.Name) {
			words := s.written(other)
			if words == nil {
				words = s.choice(rule, other)
			}
			if words != nil {
				r.words[name] = words
			}
		}
	}
}

// mayTake reports whether the body may take the row for some document.
func (r reading) mayTake(row map[string]any) bool {
	for column, words := range r.words {
		if text, _ := row[column].(string); !slices.Contains(words, text) {
			return false
		}
	}
	return true
}

// title names a row by the columns that are read.
func (r reading) title(row map[string]any) string {
	var all []string
	for _, column := range r.columns {
		all = append(all, fmt.Sprint(row[column]))
	}
	return strings.Join(all, " ")
}

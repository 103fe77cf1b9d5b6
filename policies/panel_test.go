package policies

import (
	"context"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/open-policy-agent/opa/v1/ast"

	"fitup/policies/tables"
)

// TestPanels: however many share the rules, each rule is in one of them, with all
// that judge the same, and they say the same together.
func TestPanels(t *testing.T) {
	e := newEngine(t, Options{Only: []string{"own", "lines", "fuel", "coolant", "support", "mounts"}, Own: ownFolder(nil)})
	document := joined(guessed(line("feed", 3)), line("vent", 1), map[string]any{"path": "lines.brake"})
	want := evaluate(t, e, document)
	if len(want.Findings) == 0 || len(want.CannotTell) == 0 || len(want.Guesses) == 0 {
		t.Fatalf("too little said to compare: %+v", want)
	}
	for _, cores := range []int{1, 2, mostPanels + 1} {
		e.panels = panelsOf(e.modules, e.reads, cores)
		var ids []string
		in := map[string]*panel{} // by subject
		for _, p := range e.panels {
			for id := range p.registry {
				ids = append(ids, id)
				if subject := e.byID[id].subject; in[subject] != nil && in[subject] != p {
					t.Errorf("%d cores: the rules that judge %s are in two panels", cores, subject)
				} else {
					in[subject] = p
				}
			}
		}
		slices.Sort(ids)
		if diff := cmp.Diff(e.IDs(), ids); diff != "" {
			t.Errorf("%d cores: rules (-) and those in panels (+)\n%s", cores, diff)
		}
		if len(e.panels) != min(cores, mostPanels) {
			t.Errorf("%d cores: %d panels", cores, len(e.panels))
		}
		prepareAll(context.Background(), e.panels)
		if err := e.prepared(); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(want, evaluate(t, e, document)); diff != "" {
			t.Errorf("%d cores: (-want +got)\n%s", cores, diff)
		}
	}
}

func TestTablesRead(t *testing.T) {
	for text, want := range map[string][]string{
		"one := input.lines":                                nil,
		"one := data.tables.fuels.rows":                     {"fuels"},
		"import data.tables.fluids\n\none := fluids.rows":   {"fluids"},
		"import data.tables as t\n\none := t.fluids.rows":   tables.Names(),
		"one := data.tables[input.name]":                    tables.Names(),
		"one := [data.tables.fuels, data.tables[\"dash\"]]": {"dash", "fuels"},
	} {
		m := module{parsed: ast.MustParseModule("package p\n\n" + text)}
		if diff := cmp.Diff(want, tablesRead([]module{m})); diff != "" {
			t.Errorf("%s: (-want +got)\n%s", text, diff)
		}
	}
}

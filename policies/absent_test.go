package policies

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/open-policy-agent/opa/v1/ast"
)

// TestNothingAbsent: every limit and table that the built-in rules read is there.
func TestNothingAbsent(t *testing.T) {
	e := newEngine(t, Options{})
	c := newCompiler(e.modules)
	if err := compile(c, e.modules); err != nil {
		t.Fatal(err)
	}
	for _, m := range c.Modules {
		if err := absent(m, e.byArea); err != nil {
			t.Error(err)
		}
	}
}

func TestAbsent(t *testing.T) {
	byArea := map[string]limits{"lines": {"bend": {"least": {}}}}
	for text, want := range map[string]string{
		"one := data.tables.fluids.rows":                         "",
		"one := data.tables[input.name]":                         "",
		"one := data.tables.fluid.rows":                          "rule.rego:3: there is no table fluid",
		"import data.tables as t\n\none := t.fluid":              "rule.rego:5: there is no table fluid",
		"one := data.rules.lines.limits.bend.least.value":        "",
		"one := data.rules.lines.limits.bend[input.name].value":  "",
		"one := data.rules.lines.limits.bend.most.value":         "rule.rego:3: there is no limit lines.bend.most",
		"one if input.x > data.rules.line.limits.bend.least.why": "rule.rego:3: there is no limit line.bend.least",
		"import data.rules.lines.limits\n\none := limits.x.y":    "rule.rego:5: there is no limit lines.x.y",
	} {
		c := ast.NewCompiler()
		parsed, err := ast.ParseModuleWithOpts("rule.rego", "package rules.lines.tried\n\n"+text, ast.ParserOptions{RegoVersion: ast.RegoV1})
		if err != nil {
			t.Fatal(err)
		}
		m := module{file: "rule.rego", parsed: parsed}
		if err := compile(c, []module{m}); err != nil {
			t.Fatal(err)
		}
		got := ""
		if err := absent(c.Modules[m.file], byArea); err != nil {
			got = err.Error()
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s: (-want +got)\n%s", text, diff)
		}
	}
}

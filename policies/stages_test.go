package policies

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/open-policy-agent/opa/v1/ast"
)

// TestUnusedStages compiles the built-in rules with every stage and without those
// that are left out, and finds the same rules.
func TestUnusedStages(t *testing.T) {
	e := newEngine(t, Options{})
	full := ast.NewCompiler().WithCapabilities(capabilities()).WithStrict(true)
	brief := newCompiler(e.modules)
	for _, c := range []*ast.Compiler{full, brief} {
		if err := compile(c, e.modules); err != nil {
			t.Fatal(err)
		}
	}
	for file, want := range full.Modules {
		if diff := cmp.Diff(rulesOf(want), rulesOf(brief.Modules[file])); diff != "" {
			t.Errorf("%s: with all stages (-) and without the unused ones (+)\n%s", file, diff)
		}
		ast.WalkTerms(want, func(x *ast.Term) bool {
			if full.ComprehensionIndex(x) != nil {
				t.Errorf("%s: the compiler would index %s: take the stage that does out of unusedStages", x.Location, x)
			}
			return false
		})
	}
}

func rulesOf(m *ast.Module) []string {
	var texts []string
	for _, r := range m.Rules {
		texts = append(texts, r.String())
	}
	return texts
}

// TestNoStageIsSkippedForOwnRules: what nobody has tested is compiled with all
// that the compiler can see.
func TestNoStageIsSkippedForOwnRules(t *testing.T) {
	e := newEngine(t, Options{Only: []string{"own", "lines"}, Own: ownFolder(nil)})
	want := ast.NewCompiler().StagesToRun()
	if diff := cmp.Diff(want, newCompiler(e.modules).StagesToRun()); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

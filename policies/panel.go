package policies

import (
	"context"
	"errors"
	"maps"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
)

// A panel is a share of the rules, compiled by itself: OPA compiles and judges on
// one core, and panels do so at once. What rules share is in each.
type panel struct {
	modules  []module
	data     map[string]any
	registry map[string]any // that of the data

	compiler *ast.Compiler
	store    storage.Store
	query    rego.PreparedEvalQuery
}

// mostPanels is how many are worth what each does over again.
const mostPanels = 4

// panelsOf deals modules out to a panel for each core.
func panelsOf(modules []module, data map[string]any, cores int) []*panel {
	panels := make([]*panel, min(cores, mostPanels))
	for i := range panels {
		p := &panel{data: maps.Clone(data), registry: map[string]any{}}
		p.data["registry"] = p.registry
		panels[i] = p
	}
	registry := data["registry"].(map[string]any)
	next := 0
	for _, m := range modules {
		if m.rule == nil {
			for _, p := range panels {
				p.modules = append(p.modules, m)
			}
			continue
		}
		p := panels[next%len(panels)]
		p.modules = append(p.modules, m)
		p.registry[m.rule.ID] = registry[m.rule.ID]
		next++
	}
	return panels[:max(1, min(next, len(panels)))]
}

// prepareAll makes panels ready to be asked.
func prepareAll(ctx context.Context, panels []*panel) error {
	errs := make([]error, len(panels))
	var wait sync.WaitGroup
	for i, p := range panels {
		wait.Go(func() { errs[i] = p.prepare(ctx) })
	}
	wait.Wait()
	return errors.Join(errs...)
}

// pureChecks are the stages of the compiler that only check. The built-in rules
// have passed them in this package's tests, and own rules have in checkOwn.
var pureChecks = []ast.StageID{
	ast.StageCheckUnusedImports, ast.StageCheckKeywordOverrides, ast.StageCheckDuplicateImports,
	ast.StageCheckVoidCalls, ast.StageCheckRuleConflicts, ast.StageCheckUndefinedFuncs,
	ast.StageCheckSafetyRuleHeads, ast.StageCheckRecursion, ast.StageCheckTypes,
	ast.StageCheckUnsafeBuiltins, ast.StageCheckDeprecatedBuiltins, ast.StageBuildRequiredCapabilities,
}

func (p *panel) prepare(ctx context.Context) error {
	p.compiler = ast.NewCompiler().WithCapabilities(capabilities()).WithSkipStages(pureChecks...)
	if err := compile(p.compiler, p.modules); err != nil {
		return err
	}
	p.store = inmem.NewFromObjectWithOpts(p.data, inmem.OptReturnASTValuesOnRead(true), inmem.OptRoundTripOnWrite(false))
	var err error
	p.query, err = p.prepareQuery(ctx, "data.fitup")
	return err
}

func (p *panel) prepareQuery(ctx context.Context, query string) (rego.PreparedEvalQuery, error) {
	return rego.New(rego.Compiler(p.compiler), rego.Store(p.store), rego.Query(query)).PrepareForEval(ctx)
}

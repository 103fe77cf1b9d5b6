package policies

import (
	"cmp"
	"context"
	"errors"
	"maps"
	"slices"
	"strings"
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
	data     map[string]any // values of Rego, which panels share, and the registry
	registry map[string]any // that of the data

	compiler *ast.Compiler
	prepared func() error // waits until the panel can be asked

	mu    sync.RWMutex // of what follows, which changes if a rule is struck off
	store storage.Store
	query rego.PreparedEvalQuery
}

// mostPanels is how many are worth what each does over again.
const mostPanels = 4

// panelsOf deals modules out to a panel for each core. Rules that judge the same
// things are in one panel: what there is to know of those is found out once.
func panelsOf(modules []module, data map[string]any, cores int) []*panel {
	bySubject := map[string][]module{}
	var shared []module
	for _, m := range modules {
		if m.entry == nil {
			shared = append(shared, m)
			continue
		}
		bySubject[m.entry.subject] = append(bySubject[m.entry.subject], m)
	}
	read := map[string]any{} // in the form that a store keeps, so that panels share it
	for root, content := range data {
		if root != registryRoot {
			read[root] = ast.MustInterfaceToValue(content)
		}
	}
	panels := make([]*panel, max(1, min(cores, mostPanels, len(bySubject))))
	for i := range panels {
		p := &panel{modules: slices.Clone(shared), data: maps.Clone(read), registry: map[string]any{}, compiler: newCompiler(modules)}
		p.data[registryRoot] = p.registry
		panels[i] = p
	}
	registry := data[registryRoot].(map[string]any)
	subjects := slices.SortedFunc(maps.Keys(bySubject), func(a, b string) int {
		return cmp.Or(cmp.Compare(sizeOf(bySubject[b]), sizeOf(bySubject[a])), strings.Compare(a, b))
	})
	for _, subject := range subjects {
		p := slices.MinFunc(panels, func(a, b *panel) int { return cmp.Compare(sizeOf(a.modules), sizeOf(b.modules)) })
		p.modules = append(p.modules, bySubject[subject]...)
		for _, m := range bySubject[subject] {
			p.registry[m.entry.id()] = registry[m.entry.id()]
		}
	}
	return panels
}

// sizeOf is the length of texts, which their work follows.
func sizeOf(modules []module) int {
	size := 0
	for _, m := range modules {
		size += len(m.code)
	}
	return size
}

// prepareAll begins to make panels ready to be asked.
func prepareAll(ctx context.Context, panels []*panel) {
	for _, p := range panels {
		p.prepared = begin(func() error { return p.prepare(ctx) })
	}
}

// prepared waits until all panels can be asked.
func (e *Engine) prepared() error {
	errs := make([]error, len(e.panels))
	for i, p := range e.panels {
		errs[i] = p.prepared()
	}
	return errors.Join(errs...)
}

func (p *panel) prepare(ctx context.Context) error {
	if err := compile(p.compiler, p.modules); err != nil {
		return err
	}
	return p.prepareAnswer(ctx)
}

// prepareAnswer makes the one query over all rules of the panel.
func (p *panel) prepareAnswer(ctx context.Context) error {
	p.store = inmem.NewFromObjectWithOpts(p.data, inmem.OptReturnASTValuesOnRead(true), inmem.OptRoundTripOnWrite(false))
	var err error
	p.query, err = p.prepareQuery(ctx, "data.fitup")
	return err
}

// answering is the query over all rules that are not struck off.
func (p *panel) answering() rego.PreparedEvalQuery {
	p.mu.RLock()
	defer p.mu.RUnlock()
	return p.query
}

// registered is what is registered of each rule that is not struck off.
func (p *panel) registered() map[string]any {
	p.mu.RLock()
	defer p.mu.RUnlock()
	return p.registry
}

// strike takes a rule off the panel, which may be in use.
func (p *panel) strike(ctx context.Context, id string) error {
	p.mu.Lock()
	defer p.mu.Unlock()
	left, data := maps.Clone(p.registry), maps.Clone(p.data)
	delete(left, id)
	data[registryRoot] = left
	p.registry, p.data = left, data
	return p.prepareAnswer(ctx)
}

func (p *panel) prepareQuery(ctx context.Context, query string) (rego.PreparedEvalQuery, error) {
	return rego.New(rego.Compiler(p.compiler), rego.Store(p.store), rego.Query(query), rego.GenerateJSON(writtenOut)).PrepareForEval(ctx)
}

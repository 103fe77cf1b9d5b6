package policies

import (
	"cmp"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/util"

	"fitup/policies/tables"
)

// Options say which rules an Engine holds and with which limits.
type Options struct {
	// Schema is the JSON Schema of the document. A workshop's own rules are
	// checked against it, so that a misspelt field does not pass.
	Schema []byte
	// Only and Skip choose rules, each an AREA or AREA.NAME. A name that matches
	// nothing is an error.
	Only, Skip []string
	// Own are folders of a workshop's own rules.
	Own []Folder
	// Limits replaces limits, by AREA.RULE.NAME, with what an author wrote, such
	// as "20 in".
	Limits map[string]string
	// Timeout bounds the judgement of one document. Zero means ten seconds.
	Timeout time.Duration
}

// An Engine holds rules, compiled. Many goroutines may use it at once.
type Engine struct {
	rules    []*Rule  // sorted by id
	names    []string // ids of all rules there are, chosen or not, sorted
	byID     map[string]*Rule
	byFile   map[string]*Rule
	loosened []Loosened
	faults   []Fault
	digest   string
	timeout  time.Duration
	heap     uint64 // bytes that an evaluation may add

	registry map[string]any
	compiler *ast.Compiler
	store    storage.Store
	query    rego.PreparedEvalQuery
}

// New loads and compiles the rules. A built-in rule that is broken is an error,
// and so is a name in o that matches nothing. An own rule that is broken is left
// out and told by Faults.
func New(ctx context.Context, o Options) (*Engine, error) {
	e := &Engine{
		byID: map[string]*Rule{}, byFile: map[string]*Rule{}, registry: map[string]any{},
		timeout: cmp.Or(o.Timeout, 10*time.Second), heap: 256 << 20,
	}
	rules, err := e.list(o)
	if err != nil {
		return nil, err
	}
	shared, err := loadShared()
	if err != nil {
		return nil, err
	}
	modules, err := e.load(rules, shared, o.Schema)
	if err != nil {
		return nil, err
	}
	data, err := e.data(o)
	if err != nil {
		return nil, err
	}
	e.digest = digest(modules, data)
	data["registry"] = e.registry
	return e, e.prepare(ctx, modules, data)
}

// Rules returns the rules that the engine holds, sorted by id.
func (e *Engine) Rules() []*Rule { return slices.Clone(e.rules) }

// Names returns the ids of all rules that there are, also of those that were not
// chosen, sorted.
func (e *Engine) Names() []string { return slices.Clone(e.names) }

// Rule returns the rule with the given id, or one that it had before.
func (e *Engine) Rule(id string) (*Rule, bool) {
	if r, ok := e.byID[id]; ok {
		return r, true
	}
	i := slices.IndexFunc(e.rules, func(r *Rule) bool { return slices.Contains(r.Formerly, id) })
	if i < 0 {
		return nil, false
	}
	return e.rules[i], true
}

// Loosened returns the limits that were replaced, sorted by name.
func (e *Engine) Loosened() []Loosened { return slices.Clone(e.loosened) }

// Faults returns what is wrong with own rules: each was left out.
func (e *Engine) Faults() []Fault { return slices.Clone(e.faults) }

// Digest identifies the rules, limits and tables that the engine judges by.
func (e *Engine) Digest() string { return e.digest }

// list finds the rules that o chooses.
func (e *Engine) list(o Options) ([]ruleFile, error) {
	all, err := builtInFiles()
	if err != nil {
		return nil, err
	}
	for _, folder := range o.Own {
		own, err := ownFiles(folder)
		if err != nil {
			return nil, err
		}
		for _, f := range own {
			if i := slices.IndexFunc(all, func(g ruleFile) bool { return g.id() == f.id() }); i >= 0 {
				e.fault(f.id(), fmt.Errorf("%s:1: %s has a rule of that name", f.file, all[i].file))
				continue
			}
			all = append(all, f)
		}
	}
	for _, f := range all {
		e.names = append(e.names, f.id())
	}
	slices.Sort(e.names)
	return choose(all, o.Only, o.Skip)
}

// loadShared loads the entry point and what rules share.
func loadShared() ([]module, error) {
	paths, err := regoFiles(files, "lib")
	if err != nil {
		return nil, err
	}
	shared := loadAll(append(paths, "fitup.rego"), func(p string) module { return readModule(files, p, p) })
	var all []error
	for _, m := range shared {
		all = append(all, m.err)
	}
	return shared, errors.Join(all...)
}

// load loads the listed rules and registers those that are whole.
func (e *Engine) load(list []ruleFile, shared []module, schema []byte) ([]module, error) {
	modules := slices.Clone(shared)
	var broken []error
	for i, m := range loadAll(list, ruleFile.load) {
		own := list[i].area == ownArea
		if own && m.err == nil {
			m.err = checkOwn(m, list[i].name, shared, schema)
		}
		switch {
		case m.err == nil:
			modules = append(modules, m)
			e.register(m.rule)
		case own:
			e.fault(list[i].id(), m.err)
		default:
			broken = append(broken, m.err)
		}
	}
	slices.SortFunc(e.rules, func(a, b *Rule) int { return strings.Compare(a.ID, b.ID) })
	return modules, errors.Join(broken...)
}

func (e *Engine) register(r *Rule) {
	e.rules = append(e.rules, r)
	e.byID[r.ID], e.byFile[r.File] = r, r
	e.registry[r.ID] = map[string]any{
		"area": r.Area, "name": r.Name, "stages": r.Stages, "rulebook": r.Rulebook, "subject": r.Subject,
	}
}

// fault records each line of err as a fault of the rule.
func (e *Engine) fault(id string, err error) {
	for text := range strings.Lines(err.Error()) {
		e.faults = append(e.faults, Fault{Rule: id, Message: strings.TrimSuffix(text, "\n")})
	}
}

// data returns what rules read beside the document: tables and limits.
func (e *Engine) data(o Options) (map[string]any, error) {
	byArea, err := e.limits(o.Own)
	if err != nil {
		return nil, err
	}
	for _, name := range slices.Sorted(maps.Keys(o.Limits)) {
		area, rest, _ := strings.Cut(name, ".")
		change, err := byArea[area].set(area, rest, o.Limits[name])
		if err != nil {
			return nil, err
		}
		if r, ok := e.byID[change.Rule]; ok { // else it was not chosen
			change.Level = r.Level
			e.loosened = append(e.loosened, change)
		}
	}
	areas := make(map[string]any, len(byArea))
	for area, l := range byArea {
		areas[area] = map[string]any{limitsKey: l.data()}
	}
	for _, r := range e.rules {
		r.Limits = byArea[r.Area][r.Name]
	}
	return map[string]any{"tables": tables.Data(), rulesRoot: areas}, nil
}

// limits reads the limits of every area.
func (e *Engine) limits(own []Folder) (map[string]limits, error) {
	byArea := map[string]limits{}
	paths, err := fs.Glob(files, path.Join(rulesRoot, "*", limitsFile))
	if err != nil {
		return nil, err
	}
	for _, p := range paths {
		text, err := fs.ReadFile(files, p)
		if err != nil {
			return nil, err
		}
		if byArea[path.Base(path.Dir(p))], err = readLimits(p, text); err != nil {
			return nil, err
		}
	}
	for _, folder := range own {
		text, err := fs.ReadFile(folder.FS, limitsFile)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		var l limits
		if err == nil {
			l, err = readLimits(path.Join(folder.Name, limitsFile), text)
		}
		if err != nil {
			e.fault(ownArea, err)
			continue
		}
		if byArea[ownArea] == nil {
			byArea[ownArea] = limits{}
		}
		maps.Copy(byArea[ownArea], l)
	}
	return byArea, nil
}

// digest is a hash over the text of the modules and over the data.
func digest(modules []module, data map[string]any) string {
	hash := sha256.New()
	for _, m := range slices.SortedFunc(slices.Values(modules), func(a, b module) int { return strings.Compare(a.file, b.file) }) {
		fmt.Fprintf(hash, "%s %d\n%s", m.file, len(m.text), m.text)
	}
	if err := json.NewEncoder(hash).Encode(data); err != nil { // sorts keys
		panic(err) // text, numbers and booleans only
	}
	return hex.EncodeToString(hash.Sum(nil))
}

// pureChecks are the stages of the compiler that only check. The built-in rules
// have passed them in this package's tests, and own rules have in checkOwn.
var pureChecks = []ast.StageID{
	ast.StageCheckUnusedImports, ast.StageCheckKeywordOverrides, ast.StageCheckDuplicateImports,
	ast.StageCheckVoidCalls, ast.StageCheckRuleConflicts, ast.StageCheckUndefinedFuncs,
	ast.StageCheckSafetyRuleHeads, ast.StageCheckRecursion, ast.StageCheckTypes,
	ast.StageCheckUnsafeBuiltins, ast.StageCheckDeprecatedBuiltins, ast.StageBuildRequiredCapabilities,
}

func (e *Engine) prepare(ctx context.Context, modules []module, data map[string]any) error {
	e.compiler = ast.NewCompiler().WithCapabilities(capabilities()).WithSkipStages(pureChecks...)
	if err := compile(e.compiler, modules); err != nil {
		return err
	}
	e.store = inmem.NewFromObjectWithOpts(data, inmem.OptReturnASTValuesOnRead(true), inmem.OptRoundTripOnWrite(false))
	var err error
	e.query, err = e.prepareQuery(ctx, "data.fitup")
	return err
}

func (e *Engine) prepareQuery(ctx context.Context, query string) (rego.PreparedEvalQuery, error) {
	return rego.New(rego.Compiler(e.compiler), rego.Store(e.store), rego.Query(query)).PrepareForEval(ctx)
}

func compile(c *ast.Compiler, modules []module) error {
	parsed := make(map[string]*ast.Module, len(modules))
	for _, m := range modules {
		parsed[m.file] = m.parsed
	}
	if c.Compile(parsed); c.Failed() {
		return plain(c.Errors)
	}
	return nil
}

// checkOwn checks an own rule on its own, with every check there is: what it
// refers to, then whether it compiles against the document's schema.
func checkOwn(m module, name string, shared []module, schema []byte) error {
	if err := reach(m.parsed, name); err != nil {
		return err
	}
	c, err := checker(schema)
	if err != nil {
		return err
	}
	return compile(c, append(slices.Clone(shared), m))
}

// checker is a compiler that checks all it can.
func checker(schema []byte) (*ast.Compiler, error) {
	c := ast.NewCompiler().WithCapabilities(capabilities()).WithStrict(true)
	if schema == nil {
		return c, nil
	}
	var document any
	if err := util.UnmarshalJSON(schema, &document); err != nil {
		return nil, fmt.Errorf("schema of the document: %w", err)
	}
	set := ast.NewSchemaSet()
	set.Put(ast.SchemaRootRef, document)
	return c.WithSchemas(set), nil
}

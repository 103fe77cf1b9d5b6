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
	"runtime"
	"slices"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/util"

	"fitup/policies/tables"
)

// Options say which rules an Engine holds and with which limits.
type Options struct {
	// Schema makes the JSON Schema of the document. A workshop's own rules are
	// checked against it, so that a misspelt field does not pass.
	Schema func() []byte
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
	entries  []*entry // sorted by id
	names    []string // ids of all rules there are, chosen or not, sorted
	byID     map[string]*entry
	byFile   map[string]*entry
	loosened []Loosened
	faults   []Fault
	digest   string
	timeout  time.Duration
	heap     uint64 // bytes that an evaluation may add

	byArea   map[string]limits
	registry map[string]any
	modules  []module       // the rules and what they share
	reads    map[string]any // what rules read beside the document
	panels   []*panel
}

// New loads the rules and begins to compile them, which Evaluate waits for. A
// built-in rule that is broken is an error, and so is a name in o that matches
// nothing. An own rule that is broken is left out and told by Faults.
func New(ctx context.Context, o Options) (*Engine, error) {
	e := &Engine{
		byID: map[string]*entry{}, byFile: map[string]*entry{}, registry: map[string]any{},
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
	if e.byArea, err = e.limits(o.Own); err != nil {
		return nil, err
	}
	modules, err := e.load(rules, shared, o.Schema)
	if err != nil {
		return nil, err
	}
	data, err := e.data(o, tablesRead(modules))
	if err != nil {
		return nil, err
	}
	data[registryRoot] = e.registry
	e.modules, e.reads = modules, data
	e.panels = panelsOf(modules, data, runtime.GOMAXPROCS(0))
	prepareAll(ctx, e.panels)
	e.digest = digest(modules, data[rulesRoot])
	return e, nil
}

// begin starts what can be done meanwhile. The function that it returns waits for
// the end.
func begin(do func() error) (wait func() error) {
	var err error
	done := make(chan struct{})
	go func() {
		defer close(done)
		err = do()
	}()
	return func() error {
		<-done
		return err
	}
}

// Rules returns the rules that the engine holds, sorted by id. To read all that
// there is to know of them takes a while; IDs does not.
func (e *Engine) Rules() []*Rule {
	rules := make([]*Rule, len(e.entries))
	for i, each := range e.entries {
		rules[i] = each.whole()
	}
	return rules
}

// IDs returns the ids of the rules that the engine holds, sorted.
func (e *Engine) IDs() []string {
	ids := make([]string, len(e.entries))
	for i, each := range e.entries {
		ids[i] = each.id()
	}
	return ids
}

// Names returns the ids of all rules that there are, also of those that were not
// chosen, sorted.
func (e *Engine) Names() []string { return slices.Clone(e.names) }

// Rule returns the rule with the given id, or one that it had before.
func (e *Engine) Rule(id string) (*Rule, bool) {
	if known, ok := e.byID[id]; ok {
		return known.whole(), true
	}
	rules := e.Rules()
	i := slices.IndexFunc(rules, func(r *Rule) bool { return slices.Contains(r.Formerly, id) })
	if i < 0 {
		return nil, false
	}
	return rules[i], true
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
	builtIn := len(all)
	for _, folder := range o.Own {
		own, err := ownFiles(folder)
		if err != nil {
			return nil, err
		}
		for _, f := range own {
			if n := len(all) - builtIn; n == mostOwnRules {
				e.fault(f.id(), fmt.Errorf("%s:1: not read; a workshop has at most %d rules of its own", f.file, n))
				continue
			}
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
func (e *Engine) load(list []ruleFile, shared []module, schema func() []byte) ([]module, error) {
	modules := slices.Clone(shared)
	var broken []error
	for i, m := range loadAll(list, ruleFile.load) {
		own := list[i].area == ownArea
		if own && m.err == nil {
			m.err = e.checkOwn(m, list[i].name, shared, schema)
		}
		switch {
		case m.err == nil:
			modules = append(modules, m)
			e.register(m.entry)
		case own:
			e.fault(list[i].id(), m.err)
		default:
			broken = append(broken, m.err)
		}
	}
	slices.SortFunc(e.entries, func(a, b *entry) int { return strings.Compare(a.id(), b.id()) })
	return modules, errors.Join(broken...)
}

func (e *Engine) register(r *entry) {
	e.entries = append(e.entries, r)
	e.byID[r.id()], e.byFile[r.file] = r, r
	e.registry[r.id()] = r.registered()
}

// fault records each line of err as a fault of the rule.
func (e *Engine) fault(id string, err error) {
	for text := range strings.Lines(err.Error()) {
		e.faults = append(e.faults, Fault{Rule: id, Message: strings.TrimSuffix(text, "\n")})
	}
}

// data returns what rules read beside the document: the named tables, and limits.
func (e *Engine) data(o Options, names []string) (map[string]any, error) {
	byArea := e.byArea
	for _, name := range slices.Sorted(maps.Keys(o.Limits)) {
		area, rest, _ := strings.Cut(name, ".")
		change, err := byArea[area].set(area, rest, o.Limits[name])
		if err != nil {
			return nil, err
		}
		if _, ok := e.byID[change.Rule]; ok { // else it was not chosen
			e.loosened = append(e.loosened, change)
		}
	}
	areas := make(map[string]any, len(byArea))
	for area, l := range byArea {
		areas[area] = map[string]any{limitsKey: l.data()}
	}
	for _, r := range e.entries {
		r.limits = byArea[r.area][r.name]
	}
	for i, change := range e.loosened {
		e.loosened[i].Level = e.byID[change.Rule].whole().Level
	}
	return map[string]any{tablesRoot: tables.Named(names), rulesRoot: areas}, nil
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
		text, err := ownFS{folder}.ReadFile(limitsFile)
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

// digest is a hash over the text of the modules and of all tables, and over the
// limits.
func digest(modules []module, limits any) string {
	hash := sha256.New()
	for _, m := range slices.SortedFunc(slices.Values(modules), func(a, b module) int { return strings.Compare(a.file, b.file) }) {
		fmt.Fprintf(hash, "%s %d\n%s", m.file, len(m.text), m.text)
	}
	if err := json.NewEncoder(hash).Encode(limits); err != nil { // sorts keys
		panic(err) // text and numbers only
	}
	for _, name := range tables.Names() {
		text, err := fs.ReadFile(tables.FS(), path.Join(name, "data.yaml"))
		if err != nil {
			panic(err) // it is embedded
		}
		fmt.Fprintf(hash, "%s %d\n%s", name, len(text), text)
	}
	return hex.EncodeToString(hash.Sum(nil))
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
// refers to and what it unfolds to, then whether it compiles against the document's
// schema.
func (e *Engine) checkOwn(m module, name string, shared []module, schema func() []byte) error {
	if err := cmp.Or(reach(m.parsed, name), checkUnfolded(m.parsed)); err != nil {
		return err
	}
	var text []byte
	if schema != nil {
		text = schema()
	}
	c, err := checker(text)
	if err != nil {
		return err
	}
	ctx, stop := context.WithTimeoutCause(context.Background(), e.timeout,
		fmt.Errorf("%s:1: it does not compile within %v", m.file, e.timeout))
	defer stop()
	if _, err = patiently(ctx, func() (*ast.Compiler, error) { return c, compile(c, append(slices.Clone(shared), m)) }); err != nil {
		return err
	}
	return absent(c.Modules[m.file], e.byArea)
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

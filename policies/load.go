package policies

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"github.com/open-policy-agent/opa/v1/ast"

	"fitup/policies/tables"
)

const (
	rulesRoot    = "rules"
	tablesRoot   = "tables"
	registryRoot = "registry"
	limitsKey    = "limits"
	limitsFile   = "data.yaml"
)

// A module is one Rego file. For a rule, entry is set.
type module struct {
	file   string // in messages, and as the compiler knows it
	text   []byte
	code   string // the text without the METADATA
	parsed *ast.Module
	entry  *entry
	err    error
}

// A ruleFile says where a rule is to be read from.
type ruleFile struct {
	fsys       fs.FS
	path, file string
	area, name string
}

func (f ruleFile) id() string { return f.area + "." + f.name }

// builtInFiles lists the built-in rules.
func builtInFiles() ([]ruleFile, error) {
	paths, err := regoFiles(files, rulesRoot+"/*")
	var list []ruleFile
	for _, p := range paths {
		list = append(list, ruleFile{files, p, p, path.Base(path.Dir(p)), strings.TrimSuffix(path.Base(p), ".rego")})
	}
	return list, err
}

// ownFiles lists the rules of a workshop's folder.
func ownFiles(folder Folder) ([]ruleFile, error) {
	paths, err := regoFiles(folder.FS, ".")
	var list []ruleFile
	for _, p := range paths {
		list = append(list, ruleFile{ownFS{folder}, p, path.Join(folder.Name, p), ownArea, strings.TrimSuffix(p, ".rego")})
	}
	if err == nil && len(list) == 0 {
		err = fmt.Errorf("%s: no rule in it: a rule is a file NAME.rego", folder.Name)
	}
	return list, err
}

// regoFiles lists the Rego files in the folders that match, without tests.
func regoFiles(fsys fs.FS, folders string) ([]string, error) {
	paths, err := fs.Glob(fsys, path.Join(folders, "*.rego"))
	return slices.DeleteFunc(paths, func(p string) bool { return strings.HasSuffix(p, "_test.rego") }), err
}

// load reads and parses a rule, and of its METADATA what the registry holds.
func (f ruleFile) load() module {
	m := readModule(f.fsys, f.path, f.file)
	if m.err != nil {
		return m
	}
	var bad error
	m.entry, bad = newEntry(f, m.text)
	m.err = errors.Join(bad, f.checkModule(m.parsed))
	return m
}

// checkModule tells whether a rule stands in its package and has the two sets that
// it is asked for.
func (f ruleFile) checkModule(m *ast.Module) error {
	var all problems
	at := m.Package.Location
	if want := packageOf(f.area, f.name); !m.Package.Path.Equal(want) {
		all.add("%s:%d: %s: the rule in %s is package %s", at.File, at.Row, m.Package, f.file, strings.TrimPrefix(want.String(), "data."))
	}
	for _, set := range []string{"judges", "findings"} {
		if !slices.ContainsFunc(m.Rules, func(r *ast.Rule) bool {
			return r.Head.RuleKind() == ast.MultiValue && r.Head.Ref().String() == set
		}) {
			all.add("%s:%d: the rule has no set %q", at.File, at.Row, set)
		}
	}
	return all.join()
}

func packageOf(area, name string) ast.Ref {
	return ast.Ref{ast.DefaultRootDocument, ast.StringTerm(rulesRoot), ast.StringTerm(area), ast.StringTerm(name)}
}

// tablesRead lists the tables that modules refer to; all, if one may be any.
func tablesRead(modules []module) []string {
	named := map[string]bool{}
	for _, m := range modules {
		ast.WalkRefs(m.parsed, func(ref ast.Ref) bool {
			if ref.HasPrefix(tablesRef) {
				name := ast.String("")
				if len(ref) > len(tablesRef) {
					name, _ = ref[len(tablesRef)].Value.(ast.String)
				}
				named[string(name)] = true
			}
			return false
		})
	}
	if named[""] {
		return tables.Names()
	}
	return slices.Sorted(maps.Keys(named))
}

var tablesRef = ast.Ref{ast.DefaultRootDocument, ast.StringTerm(tablesRoot)}

func readModule(fsys fs.FS, path, file string) module {
	m := module{file: file}
	if m.text, m.err = fs.ReadFile(fsys, path); m.err != nil {
		return m
	}
	m.code = withoutHeading(m.text)
	m.parsed, m.err = ast.ParseModuleWithOpts(file, m.code, ast.ParserOptions{
		RegoVersion: ast.RegoV1, Capabilities: capabilities(),
	})
	m.err = plain(m.err)
	return m
}

// withoutHeading blanks the comment that a module begins with: most of a rule is
// METADATA, which the parser and the compiler would carry along. Lines stay where
// they are.
func withoutHeading(text []byte) string {
	rest, lines := text, 0
	for row := range bytes.Lines(text) {
		if row[0] != '#' && row[0] != '\n' {
			break
		}
		rest = rest[len(row):]
		lines++
	}
	return strings.Repeat("\n", lines) + string(rest)
}

// loadAll loads on all cores at once and keeps the order. A goroutine is used over
// and over: the parser needs a large stack, and to grow one for each rule costs more
// than to start it.
func loadAll[T any](list []T, load func(T) module) []module {
	loaded := make([]module, len(list))
	var next atomic.Int64
	var wait sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			for i := next.Add(1) - 1; i < int64(len(list)); i = next.Add(1) - 1 {
				loaded[i] = load(list[i])
			}
		})
	}
	wait.Wait()
	return loaded
}

// plain gives the compiler's errors in the form FILE:LINE: MESSAGE.
func plain(err error) error {
	list, ok := errors.AsType[ast.Errors](err)
	if !ok {
		return err
	}
	var all []error
	for _, e := range list {
		text := e.Message
		if name, ok := strings.CutPrefix(text, "undefined function "); ok && ast.BuiltinMap[name] != nil {
			text = name + " is not one of the functions that a rule may call"
		}
		if e.Location != nil {
			text = fmt.Sprintf("%s:%d: %s", e.Location.File, e.Location.Row, text)
		}
		if e.Details != nil {
			for _, line := range e.Details.Lines()[2:] { // after the text and a caret
				text += "; " + strings.TrimSpace(line)
			}
		}
		all = append(all, errors.New(text))
	}
	return errors.Join(all...)
}

// choose returns the rules that only and skip leave, each an AREA or AREA.NAME.
func choose(list []ruleFile, only, skip []string) ([]ruleFile, error) {
	names := func(want string) func(ruleFile) bool {
		return func(f ruleFile) bool { return want == f.area || want == f.id() }
	}
	var all problems
	for _, want := range slices.Concat(only, skip) {
		if !slices.ContainsFunc(list, names(want)) {
			all.add("no rule or area is called %q", want)
		}
	}
	chosen := slices.DeleteFunc(slices.Clone(list), func(f ruleFile) bool {
		among := func(want string) bool { return names(want)(f) }
		return len(only) > 0 && !slices.ContainsFunc(only, among) || slices.ContainsFunc(skip, among)
	})
	return chosen, all.join()
}

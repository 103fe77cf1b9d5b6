package document

import (
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io/fs"
	"maps"
	"os"
	"path"
	"reflect"
	"slices"
	"strings"
	"testing"

	rego "github.com/open-policy-agent/opa/v1/ast"

	"fitup/policies"
	"fitup/spec"
)

// notes are keys that only people read: whoever stands at the car wants them beside
// the rest. A key that is read must not stand here.
var notes = []string{
	"Ballast.At", "Ballast.Mass", "Cage.Standard", "CarHead.Use", "CarMount.Moves", "CarMount.Rubber",
	"Channel.Feeds", "Clock.Read", "Clutch.Lining", "DrivelineHead.Datum",
	"DrivelineWeighing.Date", "Engine.Layout", "Engine.Mass", "ExhaustPipe.Wrap", "Fastener.Behind",
	"Fastener.Grip", "FinalDrive.NoseUp", "FinalDrive.Oil", "FireSystem.Agent", "FireSystem.Nozzles",
	"Firewall.Made", "FuelFilter.Changed", "FuelPump.At", "FuelPump.InTank", "Gearbox.Output", "Harness.Points",
	"HistoryOf.Note", "Hoist.Legs", "HoseKind.Cold", "Injectors.Fluid", "Jack.Lifts", "Jack.Rated", "LifeItem.Of",
	"Needs.Air", "Part.Mass", "Port.Load", "Pump.Stages", "Rulebook.Article", "Sensor.Into", "Sensor.Measures",
	"Sensor.Range", "Sensor.Thread", "Sensor.Torque", "Shaft.Mass", "ShopHead.Name", "Stand.Count", "TowEye.On",
	"Tune.File", "Turbo.Frame", "Turbo.Limit", "Usual.Seals", "Weighing.HeightBy",
}

// TestEveryKeyIsRead holds every key of a spec to being read by a rule, by a
// working, by the joining of documents, by the judging of waivers and fleets, or by a
// drawing. A key that nobody reads is a question put to a builder for nothing, unless
// it is a note.
func TestEveryKeyIsRead(t *testing.T) {
	read := map[string]string{}
	readByGo(t, read)
	readByRules(t, read)
	keys := map[string]bool{}
	for _, file := range []reflect.Type{reflect.TypeFor[spec.Car](), reflect.TypeFor[spec.Driveline](), reflect.TypeFor[spec.Shop]()} {
		leafKeys(file, keys, map[reflect.Type]bool{})
	}
	for _, key := range slices.Sorted(maps.Keys(keys)) {
		listed := slices.Contains(notes, key)
		switch {
		case read[key] == "" && !listed:
			t.Errorf("%s is read by nothing; list it as a note, or do without it", key)
		case read[key] != "" && listed:
			t.Errorf("%s is read by %s; it is no note", key, read[key])
		}
	}
	for _, key := range notes {
		if !keys[key] {
			t.Errorf("%s is a note, and no key", key)
		}
	}
}

// leafKeys collects the values that may be written below a table, as
// TYPE.FIELD.
func leafKeys(t reflect.Type, into map[string]bool, seen map[reflect.Type]bool) {
	if seen[t] {
		return
	}
	seen[t] = true
	if element, ok := elementOf(t); ok {
		leafKeys(element, into, seen)
		return
	}
	for i := range t.NumField() {
		f := t.Field(i)
		if f.Type.Kind() != reflect.Struct || f.Type == reflect.TypeFor[spec.Node]() {
			continue
		}
		if _, isLeaf := leafKind(f.Type); isLeaf {
			into[t.Name()+"."+f.Name] = true
			continue
		}
		leafKeys(f.Type, into, seen)
	}
}

// readByGo notes the fields of spec types that Go code selects.
func readByGo(t *testing.T, read map[string]string) {
	t.Helper()
	l := &loader{fset: token.NewFileSet(), done: map[string]*types.Package{}, info: &types.Info{Selections: map[*ast.SelectorExpr]*types.Selection{}}}
	l.std = importer.ForCompiler(l.fset, "source", nil)
	owners := map[types.Object]string{}
	for _, name := range []string{"fitup/spec", "fitup/spec/document", "fitup/spec/workings", "fitup/spec/swap", "fitup/policies/judge", "fitup/cmd/fitup/report/sheet/drawing"} {
		pkg, err := l.Import(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, each := range pkg.Scope().Names() {
			typ, ok := pkg.Scope().Lookup(each).Type().Underlying().(*types.Struct)
			if !ok || name != "fitup/spec" {
				continue
			}
			for i := range typ.NumFields() {
				owners[typ.Field(i)] = each + "." + typ.Field(i).Name()
			}
		}
	}
	for _, key := range owners {
		if strings.HasSuffix(key, ".Carries") {
			read[key] = "ports.go" // by its type, whatever the system
		}
	}
	for expr, selection := range l.info.Selections {
		if key := owners[selection.Obj()]; key != "" {
			read[key] = path.Base(l.fset.Position(expr.Pos()).Filename)
		}
	}
}

// loader type-checks the packages of this module. Modules of others are left
// empty: what is selected from them is no key of ours.
type loader struct {
	fset *token.FileSet
	std  types.Importer
	done map[string]*types.Package
	info *types.Info
}

func (l *loader) Import(name string) (*types.Package, error) {
	if pkg, ok := l.done[name]; ok {
		return pkg, nil
	}
	first, _, _ := strings.Cut(name, "/")
	dir, ours := strings.CutPrefix(name, "fitup/")
	switch {
	case ours:
		return l.check(name, path.Join("..", "..", dir))
	case !strings.Contains(first, "."):
		return l.std.Import(name)
	}
	pkg := types.NewPackage(name, path.Base(name))
	pkg.MarkComplete()
	l.done[name] = pkg
	return pkg, nil
}

func (l *loader) check(name, dir string) (*types.Package, error) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return nil, err
	}
	var files []*ast.File
	for _, e := range entries {
		if !strings.HasSuffix(e.Name(), ".go") || strings.HasSuffix(e.Name(), "_test.go") {
			continue
		}
		f, err := parser.ParseFile(l.fset, path.Join(dir, e.Name()), nil, 0)
		if err != nil {
			return nil, err
		}
		files = append(files, f)
	}
	config := types.Config{Importer: l, Error: func(error) {}} // the empty modules make errors
	pkg, _ := config.Check(name, l.fset, files, l.info)
	l.done[name] = pkg
	return pkg, nil
}

// readByRules notes the fields that rules name on their subjects, in
// expressions and among their needs.
func readByRules(t *testing.T, read map[string]string) {
	t.Helper()
	rules := policies.BuiltIn()
	err := fs.WalkDir(rules, "rules", func(name string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(name, ".rego") || strings.HasSuffix(name, "_test.rego") {
			return err
		}
		text, err := fs.ReadFile(rules, name)
		if err != nil {
			return err
		}
		module, err := rego.ParseModuleWithOpts(name, string(text), rego.ParserOptions{RegoVersion: rego.RegoV1})
		if err != nil {
			return err
		}
		for _, field := range fieldsOf(module) {
			follow(field, name, read)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// fieldsOf lists what a rule reads, each as a collection and a dotted field. A
// need is tried on every collection that the rule reads.
func fieldsOf(module *rego.Module) [][]string {
	vars := map[rego.Var][]string{}
	var out [][]string
	collections := map[string]bool{}
	rego.WalkExprs(module, func(e *rego.Expr) bool {
		if some, ok := e.Terms.(*rego.SomeDecl); ok && len(some.Symbols) == 1 {
			if call, ok := some.Symbols[0].Value.(rego.Call); ok {
				if v, ok := call[len(call)-2].Value.(rego.Var); ok {
					if ref, ok := call[len(call)-1].Value.(rego.Ref); ok {
						vars[v] = words(ref)
					}
				}
			}
		}
		return false
	})
	rego.WalkRefs(module, func(ref rego.Ref) bool {
		head, _ := ref[0].Value.(rego.Var)
		fields := words(ref)
		for range len(vars) { // a variable may stand for an element below another
			if base, ok := vars[head]; ok && len(base) > 0 {
				fields = append(slices.Clone(base), fields[1:]...)
				head = rego.Var(base[0])
			}
		}
		if head == "input" && len(fields) > 1 {
			out = append(out, fields[1:])
			collections[fields[1]] = true
		}
		return false
	})
	rego.WalkTerms(module, func(term *rego.Term) bool {
		if text, ok := term.Value.(rego.String); ok && text != "at" { // where a finding points, not a place
			for need := range strings.SplitSeq(string(text), "|") {
				for collection := range collections {
					out = append(out, append([]string{collection}, strings.Split(need, ".")...))
				}
			}
		}
		return false
	})
	return out
}

// words are the names along a reference, its variables left out.
func words(ref rego.Ref) []string {
	out := []string{fmt.Sprint(ref[0].Value)}
	for _, term := range ref[1:] {
		if name, ok := term.Value.(rego.String); ok {
			out = append(out, string(name))
		}
	}
	return out
}

// follow walks a field through the types of the document and notes the key that
// it ends on.
func follow(field []string, rule string, read map[string]string) {
	t := reflect.TypeFor[Document]()
	for _, key := range field {
		for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice {
			t = t.Elem()
		}
		if element, ok := elementOf(t); ok {
			t = element
		}
		if t.Kind() != reflect.Struct {
			return
		}
		i := slices.IndexFunc(members(t), func(m member) bool { return m.key == key })
		if i < 0 {
			return
		}
		m := members(t)[i]
		owner := t
		for _, step := range m.index[:len(m.index)-1] {
			owner = owner.Field(step).Type
		}
		if owner.PkgPath() == reflect.TypeFor[spec.Car]().PkgPath() {
			read[owner.Name()+"."+owner.Field(m.index[len(m.index)-1]).Name] = rule
		}
		t = m.typ
	}
}

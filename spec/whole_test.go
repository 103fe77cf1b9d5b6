package spec

import (
	"bytes"
	"encoding/json"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"fitup/spec/tree"
)

// wholeOutfit loads the three files of testdata/whole, which say something of every
// key that there is.
func wholeOutfit(t *testing.T) *Composition {
	t.Helper()
	o := NewOutfit(&tree.Tree{FS: os.DirFS("testdata/whole")})
	c, ok := o.Car("car.toml")
	if !ok {
		t.Fatal(problemLines(o))
	}
	return c
}

// TestWhole holds that each key of each table type is written somewhere in
// testdata/whole, and that it was read. A key of an embedded type counts once for
// all that embed it.
func TestWhole(t *testing.T) {
	c := wholeOutfit(t)
	said := map[string]bool{} // by the type that declares the key
	var declared []string
	seen := map[reflect.Type]bool{}
	for _, f := range []*File{c.Car, c.Driveline, c.Shop} {
		if len(f.Notes) > 0 {
			t.Errorf("%s: %v", f.Name, f.Notes)
		}
		f.Walk(func(_ string, _ Field, value any) {
			switch value.(type) {
			case Leaf, Collection:
				return
			}
			v := reflect.ValueOf(value).Elem()
			note(v, said)
			declared = declaredKeys(v.Type(), seen, declared)
		})
	}
	for _, key := range declared {
		if !said[key] {
			t.Errorf("%s is not in testdata/whole", key)
		}
	}
}

// note records the keys of one table that are said.
func note(v reflect.Value, said map[string]bool) {
	for i := range v.NumField() {
		f := v.Type().Field(i)
		if f.Anonymous && f.Type != reflect.TypeFor[Node]() {
			note(v.Field(i), said)
		}
		if f.Anonymous {
			continue
		}
		var state State
		switch x := v.Field(i).Addr().Interface().(type) {
		case Leaf:
			state = x.Said()
		case Collection:
			state = x.Said()
		default:
			if n := nodeOf(v.Field(i).Addr().Interface()); n != nil {
				state = n.State
			}
		}
		if state != Unsaid {
			said[v.Type().Name()+"."+f.Tag.Get("spec")] = true
		}
	}
}

// declaredKeys adds the keys that a type and those it is made of declare.
func declaredKeys(t reflect.Type, seen map[reflect.Type]bool, keys []string) []string {
	if seen[t] || t == reflect.TypeFor[Node]() {
		return keys
	}
	seen[t] = true
	for i := range t.NumField() {
		f := t.Field(i)
		key := f.Tag.Get("spec")
		inner := f.Type
		for {
			named, ok := inner.FieldByName("Named")
			if !ok {
				break
			}
			inner = named.Type.Elem().Elem()
		}
		if _, isLeaf := reflect.New(inner).Interface().(Leaf); !isLeaf {
			keys = declaredKeys(inner, seen, keys)
		}
		if !f.Anonymous {
			keys = append(keys, t.Name()+"."+key)
		}
	}
	return keys
}

// TestFields holds what every field of a table type has to have.
func TestFields(t *testing.T) {
	refers := []string{
		"", "port", "terminal", "plug", "mount", "behind", "thing", "thing or chassis", "thing or words",
		"circuits", "drains", "sensors", "shop.hoses", "shop.stands", "shop.hoists", "shop.slings", "shop.dollies",
	}
	for _, kind := range fileKinds {
		Walk("", reflect.New(kind.typ()).Interface(), func(path string, _ Field, value any) {
			switch value.(type) {
			case Leaf, Collection:
				return
			}
			keys := map[string]bool{}
			for _, f := range fieldsOf(reflect.TypeOf(value).Elem()) {
				switch {
				case keys[f.Key]:
					t.Errorf("%s: two fields have the key %s", path, f.Key)
				case !nameForm.MatchString(f.Key):
					t.Errorf("%s: %q is not a key", path, f.Key)
				case f.Doc == "":
					t.Errorf("%s.%s has no doc", path, f.Key)
				case !slices.Contains(refers, f.Refers):
					t.Errorf("%s.%s refers to %q, which means nothing", path, f.Key, f.Refers)
				}
				keys[f.Key] = true
			}
		})
	}
}

// plainJSON turns decoded TOML into what a JSON Schema judges.
func plainJSON(t *testing.T, raw any) any {
	text, err := json.Marshal(dateless(raw))
	if err != nil {
		t.Fatal(err)
	}
	out, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// dateless writes the dates of decoded TOML as editors hand them to a schema.
func dateless(raw any) any {
	switch raw := raw.(type) {
	case time.Time:
		return raw.Format(time.DateOnly)
	case map[string]any:
		out := map[string]any{}
		for k, v := range raw {
			out[k] = dateless(v)
		}
		return out
	case []any:
		out := make([]any, len(raw))
		for i, v := range raw {
			out[i] = dateless(v)
		}
		return out
	}
	return raw
}

func compiled(t *testing.T, kind FileKind) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema(kind)))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("spec.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("spec.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestSchema(t *testing.T) {
	c := wholeOutfit(t)
	for _, f := range []*File{c.Car, c.Driveline, c.Shop} {
		if err := compiled(t, f.Kind).Validate(plainJSON(t, f.Root)); err != nil {
			t.Errorf("%s: %v", f.Name, err)
		}
		if !bytes.Equal(makeSchema(f.Kind), makeSchema(f.Kind)) {
			t.Errorf("the schema of a %s is not the same twice", f.Kind)
		}
	}
}

// TestSchemaRefuses changes one thing at a time of a file that the schema takes.
func TestSchemaRefuses(t *testing.T) {
	for _, c := range []struct {
		name  string
		kind  FileKind
		right string
		wrong string
	}{
		{"unknown table", KindCar, "[fuel]", "[feul]"},
		{"unknown key", KindCar, "[fuel.cell]\nholds = \"45 L\"", "[fuel.cell]\nhold = \"45 L\""},
		{"unknown key of a long form", KindCar, "[mounts.x.bolts]\ncount = 2", "[mounts.x.bolts]\ncuont = 2"},
		{"word", KindCar, "[fuel.cell]\nmetal = \"steel\"", "[fuel.cell]\nmetal = \"wood\""},
		{"guessed word", KindCar, "[fuel.cell]\nmetal = \"~steel\"", "[fuel.cell]\nmetal = \"~wood\""},
		{"one word of several", KindCar, "[lines.x]\nthrough = [\"cabin\"]", "[lines.x]\nthrough = [\"attic\"]"},
		{"number for a quantity", KindCar, "[weighing]\nheight = \"390 mm\"", "[weighing]\nheight = 390"},
		{"text for a quantity", KindCar, "[weighing]\nheight = \"?\"", "[weighing]\nheight = \"tall\""},
		{"text for a number", KindCar, "[final-drive]\nratio = 4", "[final-drive]\nratio = \"4\""},
		{"text for a flag", KindCar, "[fuel.cell]\nwalled-off = \"none\"", "[fuel.cell]\nwalled-off = \"yes\""},
		{"name", KindCar, "[access.bonnet]", "[access.Bonnet]"},
		{"name of a pin", KindDriveline, "[pins.loom-a]\nA = { load = \"1 A\" }", "[pins.loom-a]\nignition-feed = { load = \"1 A\" }"},
		{"number for a phrase", KindDriveline, "[engine]\ninjectors = \"?\"", "[engine]\ninjectors = 4"},
		{"four strings for a line end", KindCar, "[lines.x]\nto = [\"a.b\", \"hose\", \"dry\"]", "[lines.x]\nto = [\"a.b\", \"hose\", \"dry\", \"dry\"]"},
		{"waiver without a reason", KindShop, "[waivers.x]\nrule = \"a.b\"\non = \"c\"\nwhy = \"d\"\nuntil = \"2026\"", "[waivers.x]\nrule = \"a.b\"\non = \"c\"\nuntil = \"2026\""},
		{"table of another file", KindShop, "[jacks]", "[engine]"},
	} {
		t.Run(c.name, func(t *testing.T) {
			head := map[FileKind]string{KindCar: carHead, KindDriveline: lineHead, KindShop: shopHead}[c.kind]
			schema := compiled(t, c.kind)
			for text, wanted := range map[string]bool{c.right: true, c.wrong: false} {
				f := outfitOf(map[string]string{"x.toml": head + text}).Load("x.toml")
				if err := schema.Validate(plainJSON(t, f.Root)); (err == nil) != wanted {
					t.Errorf("%s\n%v", text, err)
				}
			}
		})
	}
}

// TestStarter loads what each kind of starter says, and holds that one for a
// driveline has a half of each of its ports and mounts.
func TestStarter(t *testing.T) {
	slate := wholeOutfit(t).Driveline
	for _, c := range []struct {
		name string
		text string
	}{
		{"car.toml", Starter(KindCar, "Sedge", nil)},
		{"car.toml", Starter(KindCar, "Sedge", slate)},
		{"car.toml", Starter(KindCar, "", nil)},
		{"car.toml", Starter(KindCar, "a \"b\"\n[c]\x00\\ é", nil)},
		{"driveline.toml", Starter(KindDriveline, "Slate", nil)},
		{"shop.toml", Starter(KindShop, "Far Barn", nil)},
	} {
		o, problems := loadAll(map[string]string{c.name: c.text})
		if problems != "" {
			t.Errorf("%s\n%s", problems, c.text)
		}
		if notes := o.Load(c.name).Notes; len(notes) > 0 {
			t.Errorf("%v", notes)
		}
	}

	met := map[string]bool{}
	f := outfitOf(map[string]string{"car.toml": Starter(KindCar, "Sedge", slate)}).Load("car.toml")
	f.Walk(func(_ string, field Field, value any) {
		switch v := value.(type) {
		case *Meet:
			met[v.Port.V] = true
		case *CarMount:
			met[v.Meets.V] = true
		}
	})
	var missed []string
	for _, name := range slices.Concat(slate.Driveline.Ports.Names(), slate.Driveline.Mounts.Names()) {
		if !met["driveline."+name] {
			missed = append(missed, name)
		}
	}
	if diff := cmp.Diff([]string(nil), missed); diff != "" {
		t.Error(diff)
	}
	if got := f.Car.Car.Name.V; got != "Sedge" || !strings.Contains(Starter(KindCar, "a \"b\"", nil), `name         = "a \"b\""`) {
		t.Errorf("the name is %q", got)
	}
}

package judge_test

import (
	"bytes"
	"fmt"
	"maps"
	"reflect"
	"strings"
	"sync"
	"testing"

	"github.com/BurntSushi/toml"

	"fitup/spec"
)

// The long form of a spec has every phrase written out as the table that it stands
// for, so that each of its words can be changed alone.

// A longForm is one file, every phrase written out, with the paths of its values.
type longForm struct {
	file   string
	root   map[string]any
	leaves []string
}

func writtenOut(f *spec.File) longForm {
	l := longForm{file: f.Name, root: map[string]any{}}
	f.Walk(func(path string, _ spec.Field, value any) {
		if path == "" {
			return
		}
		var raw any
		switch value := value.(type) {
		case spec.Leaf:
			if value.Said() == spec.Unsaid {
				return
			}
			raw = rawOf(f, path, value)
			l.leaves = append(l.leaves, path)
		case spec.Collection:
			raw = ofState(value.Said())
		default:
			if state := reflect.ValueOf(value).Elem().FieldByName("State"); state.IsValid() {
				raw = ofState(state.Interface().(spec.State))
			}
		}
		if raw != nil {
			fill(l.root, strings.Split(path, "."), raw)
		}
	})
	return l
}

// rawOf is a value as TOML has it: as it stands, or what a phrase says.
func rawOf(f *spec.File, path string, leaf spec.Leaf) any {
	if raw, ok := at(f.Root, strings.Split(path, ".")); ok {
		return raw
	}
	switch leaf.Said() {
	case spec.Asked:
		return "?"
	case spec.None:
		return "none"
	}
	if kind := leaf.Kind().TOML; !leaf.Guessed() && (kind == "boolean" || kind == "integer" || kind == "number") {
		return leaf.Document()
	}
	text, _ := leaf.Written()
	if leaf.Guessed() {
		text = "~" + text
	}
	return text
}

func ofState(s spec.State) any {
	switch s {
	case spec.Asked:
		return "?"
	case spec.None:
		return "none"
	case spec.Given:
		return map[string]any{}
	}
	return nil
}

// at follows keys through tables.
func at(table map[string]any, keys []string) (any, bool) {
	value, ok := table[keys[0]]
	if !ok || len(keys) == 1 {
		return value, ok
	}
	below, ok := value.(map[string]any)
	if !ok {
		return nil, false
	}
	return at(below, keys[1:])
}

// fill sets a value and makes the tables above it. A table does not replace one that
// is there.
func fill(table map[string]any, keys []string, value any) {
	if len(keys) > 1 {
		below, ok := table[keys[0]].(map[string]any)
		if !ok {
			below = map[string]any{}
			table[keys[0]] = below
		}
		fill(below, keys[1:], value)
		return
	}
	_, isTable := value.(map[string]any)
	if _, there := table[keys[0]]; !isTable || !there {
		table[keys[0]] = value
	}
}

// replaced is the table with another value at the end of keys, or none for nil. The
// table itself stays as it is.
func replaced(table map[string]any, keys []string, value any) map[string]any {
	out := maps.Clone(table)
	switch {
	case len(keys) > 1:
		below, _ := table[keys[0]].(map[string]any)
		out[keys[0]] = replaced(below, keys[1:], value)
	case value == nil:
		delete(out, keys[0])
	default:
		out[keys[0]] = value
	}
	return out
}

// with is the text of the file with another value at a path; nil for none.
func (l longForm) with(path string, value any) string {
	return textOf(replaced(l.root, strings.Split(path, "."), value))
}

func textOf(root map[string]any) string {
	var b bytes.Buffer
	if err := toml.NewEncoder(&b).Encode(root); err != nil {
		panic(err)
	}
	return b.String()
}

// A longFleet is a fleet with every file written out.
type longFleet struct {
	short texts // as it was
	forms map[string]longForm
	kept  shelf // of what is written out
}

var longDemo = sync.OnceValue(func() *longFleet { return demo().writtenOut(&longFleet{}) })

// writtenOut writes a fleet out, but for the files that a fleet like it has.
func (t texts) writtenOut(like *longFleet) *longFleet {
	l := &longFleet{short: t, forms: map[string]longForm{}, kept: shelf{}}
	anew := texts{}
	for name, text := range t {
		if like.short[name] == text {
			l.forms[name], l.kept[name] = like.forms[name], like.kept[name]
			continue
		}
		file, problems := demoShelf().read(t.tree(), name)
		if len(problems) > 0 {
			panic(fmt.Errorf("%s: %v", name, problems))
		}
		l.forms[name] = writtenOut(file)
		anew[name] = textOf(l.forms[name].root)
	}
	maps.Copy(l.kept, anew.onShelf())
	return l
}

// texts are the files, written out.
func (l *longFleet) texts() texts {
	all := texts{}
	for name, kept := range l.kept {
		all[name] = kept.text
	}
	return all
}

// with is the fleet with a gap.
func (l *longFleet) with(g gap) *spec.Outfit {
	changed := l.texts()
	changed[g.file] = l.forms[g.file].with(g.path, g.put)
	return changed.outfit(l.kept)
}

// TestLongFormSaysTheSame: a phrase and the table that it stands for are judged
// alike, on every car of the demo.
func TestLongFormSaysTheSame(t *testing.T) {
	report, err := longDemo().texts().judged(everyCar())
	if err != nil {
		t.Fatal(err)
	}
	appears, goes := compared(says(whole().of(everyCar())), says(report))
	for _, s := range appears {
		t.Error("only in the long form: ", s)
	}
	for _, s := range goes {
		t.Error("only as it is written: ", s)
	}
}

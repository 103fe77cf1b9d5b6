package spec

import (
	"reflect"
	"sync"
)

// A Field is one key of a table type.
type Field struct {
	Key      string // as it is written in TOML
	Doc      string // what it means
	Refers   string // what its value is the name of; see refs.go
	Required bool   // a table without it says nothing
	index    []int
	typ      reflect.Type
	leaf     bool // it is a Leaf
}

var fieldsByType sync.Map // reflect.Type -> []Field

// fieldsOf lists the keys that a table type may hold, those of embedded types
// included, in the order in which they are declared.
func fieldsOf(t reflect.Type) []Field {
	if known, ok := fieldsByType.Load(t); ok {
		return known.([]Field)
	}
	var fields []Field
	for i := range t.NumField() {
		f := t.Field(i)
		key := f.Tag.Get("spec")
		switch {
		case f.Anonymous:
			for _, inner := range fieldsOf(f.Type) {
				inner.index = append([]int{i}, inner.index...)
				fields = append(fields, inner)
			}
		case key != "-":
			fields = append(fields, Field{
				Key: key, Doc: f.Tag.Get("doc"), Refers: f.Tag.Get("refers"),
				Required: f.Tag.Get("required") == "true", index: []int{i}, typ: f.Type,
				leaf: reflect.PointerTo(f.Type).Implements(reflect.TypeFor[Leaf]()),
			})
		}
	}
	fieldsByType.Store(t, fields)
	return fields
}

// keys are the names of fields.
func keys(fields []Field) []string {
	names := make([]string, len(fields))
	for i, f := range fields {
		names[i] = f.Key
	}
	return names
}

// Walk calls visit for a table and for everything in it, outer before inner,
// fields as they are declared and named tables by name. What is not said is
// visited too. The value is a pointer: to a table type, a Leaf or a Collection.
func Walk(path string, value any, visit func(path string, field Field, value any)) {
	walk(path, Field{}, value, anyLeaf, func(path string, field Field, value any) bool {
		visit(path, field, value)
		return true
	})
}

// anyLeaf and noLeaf tell walk which leaves to visit.
func anyLeaf(Field) bool { return true }
func noLeaf(Field) bool  { return false }

// walk is Walk for a visit that returns whether to go on below the value, and of the
// leaves visits only those that are wanted: there are many, and the path of each
// costs.
func walk(path string, field Field, value any, wanted func(Field) bool, visit func(string, Field, any) bool) {
	if !visit(path, field, value) {
		return
	}
	switch value := value.(type) {
	case Leaf:
	case Collection:
		for _, name := range value.Names() {
			walk(join(path, name), field, value.Item(name), wanted, visit)
		}
	default:
		v := reflect.ValueOf(value).Elem()
		for _, f := range fieldsOf(v.Type()) {
			if f.leaf && !wanted(f) {
				continue
			}
			walk(join(path, f.Key), f, v.FieldByIndex(f.index).Addr().Interface(), wanted, visit)
		}
	}
}

func join(path, step string) string {
	if path == "" {
		return step
	}
	return path + "." + step
}

// nodeOf returns the Node that a table type embeds, or nil: the three file
// types embed none. The table is a pointer.
func nodeOf(table any) *Node {
	if t, ok := table.(interface{ node() *Node }); ok {
		return t.node()
	}
	return nil
}

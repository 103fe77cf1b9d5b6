package document

import (
	"reflect"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"fitup/spec"
)

// shape is what an object of the document holds.
type shape struct {
	members []member
	node    []int // index of its spec.Node; nil if it is no spec table
}

// member is one field of an object of the document.
type member struct {
	key   string // as rules write it
	term  *ast.Term
	doc   string
	dim   string
	by    string // the field that names what this one was looked up by
	index []int
	typ   reflect.Type
}

var shapes sync.Map // reflect.Type -> *shape

func shapeOf(t reflect.Type) *shape {
	if known, ok := shapes.Load(t); ok {
		return known.(*shape)
	}
	s := &shape{members: membersOf(t)}
	if f, ok := t.FieldByName("Node"); ok && f.Type == reflect.TypeFor[spec.Node]() {
		s.node = f.Index
	}
	shapes.Store(t, s)
	return s
}

// members lists the fields of an object type: its own, then those of the spec
// types that it embeds. Where a name stands twice the outer one holds, so that a
// joined half replaces the reference that it was joined by.
func members(t reflect.Type) []member { return shapeOf(t).members }

func membersOf(t reflect.Type) []member {
	var out []member
	taken := map[string]bool{}
	level := []member{{typ: t}}
	for len(level) > 0 {
		var next []member
		for _, outer := range level {
			for i := range outer.typ.NumField() {
				f := outer.typ.Field(i)
				index := append(append([]int{}, outer.index...), i)
				if f.Anonymous {
					next = append(next, member{typ: f.Type, index: index})
					continue
				}
				key := memberKey(f)
				if key == "" || taken[key] {
					continue
				}
				taken[key] = true
				out = append(out, member{key: key, term: ast.StringTerm(key), doc: f.Tag.Get("doc"), dim: f.Tag.Get("dim"), by: f.Tag.Get("by"), index: index, typ: f.Type})
			}
		}
		level = next
	}
	return out
}

// memberKey is the field's name in the document; "" for what rules do not see.
func memberKey(f reflect.StructField) string {
	if key := f.Tag.Get("json"); key != "" {
		return key
	}
	key := f.Tag.Get("spec")
	if key == "" || key == "-" {
		return ""
	}
	return strings.ReplaceAll(key, "-", "_")
}

var (
	leafType       = reflect.TypeFor[spec.Leaf]()
	collectionType = reflect.TypeFor[spec.Collection]()
	figureType     = reflect.TypeFor[Figure]()
)

// leafKind returns the kind of a spec value type.
func leafKind(t reflect.Type) (spec.Kind, bool) {
	if !reflect.PointerTo(t).Implements(leafType) {
		return spec.Kind{}, false
	}
	return reflect.New(t).Interface().(spec.Leaf).Kind(), true
}

// elementOf returns what a spec collection holds.
func elementOf(t reflect.Type) (reflect.Type, bool) {
	if !reflect.PointerTo(t).Implements(collectionType) {
		return nil, false
	}
	named, _ := t.FieldByName("Named")
	return named.Type.Elem().Elem(), true
}

// nodeOf returns the state and path of a spec table; nil if v, a struct of the
// shape, is none.
func (s *shape) nodeOf(v reflect.Value) *spec.Node {
	if s.node == nil {
		return nil
	}
	return v.FieldByIndex(s.node).Addr().Interface().(*spec.Node)
}

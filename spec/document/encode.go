package document

import (
	"fmt"
	"reflect"

	"github.com/open-policy-agent/opa/v1/ast"

	"fitup/spec"
)

// Value makes what rules see, in the form that they see it in: of maps made first
// every part would be made twice.
func (d *Document) Value() ast.Value { return object(reflect.ValueOf(d).Elem(), "") }

// Encode is Value for everybody else: maps, slices, strings, float64s and bools only,
// and nil in a list for what nothing is said of.
func (d *Document) Encode() map[string]any { return plain(d.Value()).(map[string]any) }

func plain(v ast.Value) any {
	switch v := v.(type) {
	case ast.Object:
		object := make(map[string]any, v.Len())
		v.Foreach(func(key, value *ast.Term) { object[string(key.Value.(ast.String))] = plain(value.Value) })
		return object
	case *ast.Array:
		list := make([]any, 0, v.Len())
		v.Foreach(func(item *ast.Term) { list = append(list, plain(item.Value)) })
		return list
	case ast.Null:
		return nil
	case ast.String:
		return string(v)
	case ast.Boolean:
		return bool(v)
	case ast.Number:
		if f, ok := v.Float64(); ok {
			return f
		}
	}
	panic(fmt.Sprintf("document: no plain form for %v", v))
}

// A lacker knows of fields that its author named a thing for which is not there.
// They count as none: what such a thing would hold, nobody can write.
type lacker interface{ lacks() []string }

// lacks tells of a port that the other file does not have.
func (j *Joint) lacks() []string {
	if j.There == nil && j.Meet.Port.Given() {
		return []string{"there"}
	}
	return nil
}

// lacks tells of a mount that the driveline does not have.
func (m *Mount) lacks() []string {
	if m.There == nil && m.Meets.Given() {
		return []string{"there"}
	}
	return nil
}

// lacks tells of a hose that is pushed on and no more.
func (l *Line) lacks() []string {
	if l.Clamps.State == spec.None {
		return []string{"clamped_by"}
	}
	return nil
}

// lacks tells of an end that meets nothing: neither half nor port is there.
func (e *LineEnd) lacks() []string {
	if e.open {
		return []string{"half", "port"}
	}
	return nil
}

// object encodes a struct, with the name that it carries as an element of a spec
// collection. A nested spec table that was not said, asked or none is left out, and
// the last two are named in the object's lists.
func object(v reflect.Value, name string) ast.Value {
	s := shapeOf(v.Type())
	var room [roomy]property
	said := room[:0]
	var none, asked, guessed []string
	if node := s.nodeOf(v); node != nil && node.Path != "" {
		said = append(said, property{pathKey, text(node.Path)})
	}
	if name != "" {
		said = append(said, property{nameKey, text(name)})
	}
	for _, m := range s.members {
		value, state, guess := encode(v.FieldByIndex(m.index))
		switch state {
		case spec.Given:
			said = append(said, property{m.term, value})
		case spec.None:
			none = append(none, m.key)
		case spec.Asked:
			asked = append(asked, m.key)
		}
		if guess {
			guessed = append(guessed, m.key)
		}
	}
	if l, ok := v.Addr().Interface().(lacker); ok {
		none = append(none, l.lacks()...)
	}
	for _, list := range []struct {
		key    *ast.Term
		fields []string
	}{{noneKey, none}, {askedKey, asked}, {guessedKey, guessed}} {
		if len(list.fields) > 0 {
			said = append(said, property{list.key, valueOf(list.fields)})
		}
	}
	return objectOf(said)
}

// roomy is how many properties hardly any object exceeds.
const roomy = 32

// A property is a key of an object with its value.
type property struct {
	key   *ast.Term
	value ast.Value
}

// objectOf makes an object, and its terms in one piece.
func objectOf(said []property) ast.Value {
	var room [roomy][2]*ast.Term
	terms, pairs := make([]ast.Term, len(said)), room[:0]
	for i, p := range said {
		terms[i].Value = p.value
		pairs = append(pairs, [2]*ast.Term{p.key, &terms[i]})
	}
	return ast.NewObject(pairs...)
}

// The keys that every object may have.
var (
	pathKey, nameKey              = ast.StringTerm("path"), ast.StringTerm("name")
	noneKey, askedKey, guessedKey = ast.StringTerm("none"), ast.StringTerm("asked"), ast.StringTerm("guessed")
)

func text(s string) ast.Value { return ast.InternedValue(s) }

// valueOf is the value of a leaf: a string, a number, a bool, or a list of them.
func valueOf(x any) ast.Value {
	v, err := ast.InterfaceToValue(x)
	if err != nil {
		panic("document: " + err.Error()) // JSON has all of them
	}
	return v
}

// encode returns a field's value, whether it is there, and whether it rests on a
// guess.
func encode(v reflect.Value) (value ast.Value, state spec.State, guess bool) {
	if v.Type() == figureType {
		f := v.Addr().Interface().(*Figure)
		if !f.Known {
			return nil, spec.Unsaid, false
		}
		return valueOf(f.Value), spec.Given, f.Guessed
	}
	if v.CanAddr() {
		switch s := v.Addr().Interface().(type) {
		case spec.Leaf:
			if s.Said() != spec.Given {
				return nil, s.Said(), false
			}
			return valueOf(s.Document()), spec.Given, s.Guessed()
		case spec.Collection:
			return collection(s)
		}
	}
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			return nil, spec.Unsaid, false
		}
		return encode(v.Elem())
	case reflect.Struct:
		if node := shapeOf(v.Type()).nodeOf(v); node != nil && node.State != spec.Given {
			return nil, node.State, false
		}
		return object(v, ""), spec.Given, false
	case reflect.Slice:
		if v.IsNil() {
			return nil, spec.Unsaid, false
		}
		list := make([]*ast.Term, v.Len())
		for i := range list {
			list[i] = ast.NullTerm() // of which nothing is said
			if item, state, _ := encode(v.Index(i)); state == spec.Given {
				list[i] = ast.NewTerm(item)
			}
		}
		return ast.NewArray(list...), spec.Given, false
	case reflect.String:
		if v.Len() == 0 {
			return nil, spec.Unsaid, false
		}
		return text(v.String()), spec.Given, false
	case reflect.Bool:
		return valueOf(v.Bool()), spec.Given, false
	case reflect.Int:
		return valueOf(v.Int()), spec.Given, false
	case reflect.Float64:
		return valueOf(v.Float()), spec.Given, false
	}
	panic("document: no form for " + v.Type().String())
}

// collection encodes a spec collection inside an object as an array of objects
// that carry their own names.
func collection(c spec.Collection) (ast.Value, spec.State, bool) {
	switch c.Said() {
	case spec.None:
		return ast.NewArray(), spec.Given, false
	case spec.Asked, spec.Unsaid:
		return nil, c.Said(), false
	}
	names := c.Names()
	list := make([]*ast.Term, len(names))
	for i, name := range names {
		list[i] = ast.NewTerm(object(reflect.ValueOf(c.Item(name)).Elem(), name))
	}
	return ast.NewArray(list...), spec.Given, false
}

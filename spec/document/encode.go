package document

import (
	"reflect"

	"fitup/spec"
)

// Encode makes the value that rules see: maps, slices, strings, float64 and
// bools only.
func (d *Document) Encode() map[string]any {
	return object(reflect.ValueOf(d).Elem())
}

// A lacker knows of fields that its author named a thing for which is not there.
// They count as none: what such a thing would hold, nobody can write.
type lacker interface{ lacks() []any }

// lacks tells of a port that the other file does not have.
func (j *Joint) lacks() []any {
	if j.There == nil && j.Meet.Port.Given() {
		return []any{"there"}
	}
	return nil
}

// lacks tells of a mount that the driveline does not have.
func (m *Mount) lacks() []any {
	if m.There == nil && m.Meets.Given() {
		return []any{"there"}
	}
	return nil
}

// lacks tells of a hose that is pushed on and no more.
func (l *Line) lacks() []any {
	if l.Clamps.State == spec.None {
		return []any{"clamped_by"}
	}
	return nil
}

// lacks tells of an end that meets nothing: neither half nor port is there.
func (e *LineEnd) lacks() []any {
	if e.open {
		return []any{"half", "port"}
	}
	return nil
}

// object encodes a struct. A nested spec table that was not said, asked or none
// is left out, and the last two are named in the object's lists.
func object(v reflect.Value) map[string]any {
	out := map[string]any{}
	var none, asked, guessed []any
	if node, ok := nodeOf(v); ok && node.Path != "" {
		out["path"] = node.Path
	}
	for _, m := range members(v.Type()) {
		value, state, guess := encode(v.FieldByIndex(m.index))
		switch state {
		case spec.Given:
			out[m.key] = value
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
	for key, list := range map[string][]any{"none": none, "asked": asked, "guessed": guessed} {
		if len(list) > 0 {
			out[key] = list
		}
	}
	return out
}

// encode returns a field's value, whether it is there, and whether it rests on a
// guess.
func encode(v reflect.Value) (value any, state spec.State, guess bool) {
	if v.Type() == figureType {
		f := v.Interface().(Figure)
		if !f.Known {
			return nil, spec.Unsaid, false
		}
		return f.Value, spec.Given, f.Guessed
	}
	if v.CanAddr() {
		switch s := v.Addr().Interface().(type) {
		case spec.Leaf:
			if s.Said() != spec.Given {
				return nil, s.Said(), false
			}
			return s.Document(), spec.Given, s.Guessed()
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
		if node, ok := nodeOf(v); ok && node.State != spec.Given {
			return nil, node.State, false
		}
		return object(v), spec.Given, false
	case reflect.Slice:
		if v.IsNil() {
			return nil, spec.Unsaid, false
		}
		list := make([]any, v.Len())
		for i := range list {
			list[i], _, _ = encode(v.Index(i))
		}
		return list, spec.Given, false
	case reflect.String:
		if v.Len() == 0 {
			return nil, spec.Unsaid, false
		}
		return v.String(), spec.Given, false
	case reflect.Bool:
		return v.Bool(), spec.Given, false
	case reflect.Int:
		return float64(v.Int()), spec.Given, false
	case reflect.Float64:
		return v.Float(), spec.Given, false
	}
	panic("document: no form for " + v.Type().String())
}

// collection encodes a spec collection inside an object as an array of objects
// that carry their own names.
func collection(c spec.Collection) (any, spec.State, bool) {
	switch c.Said() {
	case spec.None:
		return []any{}, spec.Given, false
	case spec.Asked, spec.Unsaid:
		return nil, c.Said(), false
	}
	list := []any{}
	for _, name := range c.Names() {
		item := object(reflect.ValueOf(c.Item(name)).Elem())
		item["name"] = name
		list = append(list, item)
	}
	return list, spec.Given, false
}

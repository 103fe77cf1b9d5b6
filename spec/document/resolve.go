package document

import (
	"reflect"
	"strings"

	"fitup/spec"
)

// A Field is what stands behind one dotted field of a subject.
type Field struct {
	Path    string    // where it is, or would be, written
	By      string    // for what was looked up in another file: where the subject names it
	Leaf    spec.Leaf // nil unless it is a value of a spec
	Figure  *Figure   // nil unless it was computed
	Missing []string  // what would have to be written for it to be known
}

// Resolve follows a dotted field, as rules write it, from a subject of a
// collection. A field that leads nowhere resolves to the subject itself.
func (d *Document) Resolve(collection, subject, field string) Field {
	v, found := d.subject(collection, subject)
	out := Field{Path: subject}
	if !found || field == "" {
		return out
	}
	var awaited []string
	for _, key := range strings.Split(field, ".") {
		if v.CanAddr() {
			if a, ok := v.Addr().Interface().(awaiter); ok {
				awaited = a.awaits(key)
			}
		}
		next, by, ok := step(v, key)
		if by != "" {
			out.By = d.Resolve(collection, subject, by).Path
		}
		if !ok {
			out.Path += "." + strings.ReplaceAll(key, "_", "-")
			v = reflect.Value{}
			continue
		}
		v = next
		if base := ownPath(v); base != "" {
			out.Path = base
		} else if key != "calc" {
			out.Path += "." + strings.ReplaceAll(key, "_", "-")
		}
	}
	out.Missing = []string{out.Path}
	if len(awaited) > 0 {
		out.Missing = awaited
	}
	if !v.IsValid() {
		return out
	}
	if f, ok := v.Interface().(Figure); ok {
		out.Figure, out.Missing = &f, f.Missing
		if len(f.Missing) == 0 { // nobody can write a computed field; its subject can be looked at
			out.Missing = []string{subject}
		}
	}
	if v.CanAddr() {
		if leaf, ok := v.Addr().Interface().(spec.Leaf); ok {
			out.Leaf = leaf
		}
	}
	return out
}

// subject finds the element of a collection that has the path.
func (d *Document) subject(collection, path string) (reflect.Value, bool) {
	v := reflect.ValueOf(d).Elem()
	for _, m := range members(v.Type()) {
		if m.key != collection {
			continue
		}
		elements := v.FieldByIndex(m.index)
		for i := range elements.Len() {
			if e := elements.Index(i); e.FieldByName("Subject").Interface().(Subject).Path == path {
				return e, true
			}
		}
	}
	return reflect.Value{}, false
}

// An awaiter knows what would have to be written for a field of its own that the
// join leaves open.
type awaiter interface{ awaits(key string) []string }

func (p *Port) awaits(key string) []string {
	if key != "settled" {
		return nil
	}
	return p.strays
}

func (m *DriveMount) awaits(key string) []string {
	if key != "settled" {
		return nil
	}
	return m.strays
}

func (s *Support) awaits(key string) []string {
	if key != "locking" {
		return nil
	}
	return s.unlocked
}

func (e *Electric) awaits(key string) []string {
	switch key {
	case "unkilled":
		return e.undecided
	case "earths":
		return e.unearthed
	}
	return nil
}

// step goes to the field of that key, through pointers, and tells by which other
// field it was looked up.
func step(v reflect.Value, key string) (next reflect.Value, by string, ok bool) {
	if !v.IsValid() || v.Kind() != reflect.Struct {
		return v, "", false
	}
	for _, m := range members(v.Type()) {
		if m.key != key {
			continue
		}
		f := v.FieldByIndex(m.index)
		if f.Kind() == reflect.Pointer {
			if f.IsNil() {
				return reflect.Value{}, m.by, false
			}
			f = f.Elem()
		}
		return f, m.by, true
	}
	return v, "", false
}

// ownPath is the path that an object carries, if it is one.
func ownPath(v reflect.Value) string {
	if v.Kind() != reflect.Struct {
		return ""
	}
	if f := v.FieldByName("Path"); f.IsValid() && f.Kind() == reflect.String {
		return f.String()
	}
	return ""
}

// CollectionKey is the table that would have to be written for a collection to
// be known.
func CollectionKey(collection string) string {
	t := reflect.TypeFor[Document]()
	for i := range t.NumField() {
		if f := t.Field(i); f.Tag.Get("json") == collection {
			return f.Tag.Get("key")
		}
	}
	return collection
}

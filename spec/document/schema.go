package document

import (
	"encoding/json"
	"reflect"
	"strings"
	"sync"
)

// Schema is the JSON Schema (draft-07) of the document, made from its types.
// Objects are closed, so that a misspelt field in a test case is found, and
// collections are arrays, because OPA's checker does not look into maps.
//
// Each type stands once under definitions: the same engine is seen from many
// subjects.
var Schema = sync.OnceValue(func() []byte {
	defined := definitions{}
	root := defined.object(reflect.TypeFor[Document](), false)
	root["$schema"] = "http://json-schema.org/draft-07/schema#"
	root["title"] = "fitup input document"
	root["definitions"] = map[string]any(defined)
	text, err := json.Marshal(root)
	if err != nil {
		panic(err) // only maps, strings and bools: cannot happen
	}
	return text
})

// definitions holds the schemas of struct types by name.
type definitions map[string]any

// refer returns a reference to the schema of a struct type, entering it first if
// it is new.
func (d definitions) refer(t reflect.Type, named bool) map[string]any {
	key := strings.ReplaceAll(t.String(), ".", "_")
	if named {
		key += "_named"
	}
	if _, known := d[key]; !known {
		d[key] = nil // taken, so that a type within itself ends
		d[key] = d.object(t, named)
	}
	return map[string]any{"$ref": "#/definitions/" + key}
}

// object describes a struct; named adds the name that an element of a spec
// collection carries.
func (d definitions) object(t reflect.Type, named bool) map[string]any {
	properties := map[string]any{}
	for _, key := range []string{"none", "asked", "guessed"} {
		properties[key] = list(map[string]any{"type": "string"})
	}
	if _, isNode := t.FieldByName("Node"); isNode {
		properties["path"] = map[string]any{"type": "string"}
	}
	if named {
		properties["name"] = map[string]any{"type": "string"}
	}
	for _, m := range members(t) {
		s := d.field(m.typ)
		if m.doc != "" {
			s["description"] = m.doc
		}
		if m.dim != "" {
			s["title"] = m.dim
		}
		properties[m.key] = s
	}
	return map[string]any{"type": "object", "properties": properties, "additionalProperties": false}
}

func (d definitions) field(t reflect.Type) map[string]any {
	if t == figureType {
		return map[string]any{"type": "number"}
	}
	if kind, ok := leafKind(t); ok {
		s := d.leaf(kind.Document)
		if kind.Dimension != "" {
			s["title"] = string(kind.Dimension)
		}
		if kind.Words != nil && kind.Document == "string" {
			s["enum"] = kind.Words
		}
		return s
	}
	if element, ok := elementOf(t); ok {
		return list(d.refer(element, true))
	}
	switch t.Kind() {
	case reflect.Pointer:
		return d.field(t.Elem())
	case reflect.Struct:
		return d.refer(t, false)
	case reflect.Slice:
		return list(d.field(t.Elem()))
	case reflect.String:
		return map[string]any{"type": "string"}
	case reflect.Bool:
		return map[string]any{"type": "boolean"}
	case reflect.Int, reflect.Float64:
		return map[string]any{"type": "number"}
	}
	panic("document: no schema for " + t.String())
}

// leaf gives the schema of each form that spec.Kind.Document names.
func (d definitions) leaf(form string) map[string]any {
	number := map[string]any{"type": "number"}
	text := map[string]any{"type": "string"}
	switch form {
	case "number", "string", "boolean":
		return map[string]any{"type": form}
	case "numbers", "pair", "position":
		return list(number)
	case "pairs", "positions":
		return list(list(number))
	case "strings":
		return list(text)
	case "thread":
		return d.refer(reflect.TypeFor[Thread](), false)
	case "lives":
		return list(map[string]any{"type": "object", "additionalProperties": false,
			"properties": map[string]any{"dimension": text, "value": number, "text": text}})
	}
	panic("document: no schema for values of form " + form)
}

func list(items map[string]any) map[string]any {
	return map[string]any{"type": "array", "items": items}
}

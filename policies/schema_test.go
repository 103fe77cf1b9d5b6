package policies

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"fitup/spec/document"
)

// A schema is the document's JSON Schema, looked into the way rules look into
// the document.
type schema struct{ root map[string]any }

var documentSchema = sync.OnceValue(func() schema {
	var s schema
	if err := json.Unmarshal(document.Schema(), &s.root); err != nil {
		panic(err)
	}
	return s
})

// A node describes one value of the document.
type node map[string]any

// resolve follows a reference such as #/definitions/NAME.
func (s schema) resolve(n node) node {
	for {
		ref, ok := n["$ref"].(string)
		if !ok {
			return n
		}
		var at any = s.root
		for _, key := range strings.Split(strings.TrimPrefix(ref, "#/"), "/") {
			at = at.(map[string]any)[key]
		}
		n = at.(map[string]any)
	}
}

// field returns the description of a field of what n describes.
func (s schema) field(n node, name string) (node, bool) {
	properties, _ := s.resolve(n)["properties"].(map[string]any)
	f, ok := properties[name].(map[string]any)
	return f, ok
}

// items returns the description of an element of the array that n describes.
func (s schema) items(n node) (node, bool) {
	i, ok := s.resolve(n)["items"].(map[string]any)
	return i, ok
}

// dotted follows a path such as here.form from n.
func (s schema) dotted(n node, path string) (node, bool) {
	ok := true
	for _, name := range strings.Split(path, ".") {
		if n, ok = s.field(n, name); !ok {
			return nil, false
		}
	}
	return n, true
}

// subject describes the elements of a collection.
func (s schema) subject(collection string) (node, bool) {
	n, ok := s.field(s.root, collection)
	if !ok {
		return nil, false
	}
	return s.items(n)
}

func (s schema) composite(n node) bool {
	kind := s.resolve(n)["type"]
	return kind == "object" || kind == "array"
}

// follow returns what ref describes, given what the variables stand for; false
// if it does not lead into the document.
func (s schema) follow(ref ast.Ref, vars map[ast.Var]node) (node, bool) {
	n, ok := vars[ref[0].Value.(ast.Var)]
	if !ok {
		return nil, false
	}
	for _, term := range ref[1:] {
		if name, isText := term.Value.(ast.String); isText {
			n, ok = s.field(n, string(name))
		} else {
			n, ok = s.items(n)
		}
		if !ok {
			return nil, false
		}
	}
	return n, true
}

// only returns the schema of the given collections and of what every document
// has, so that a compiler need not read the rest.
func (s schema) only(collections map[string]bool) []byte {
	root := maps.Clone(s.root)
	properties := map[string]any{}
	var names []string
	var reach func(v any)
	reach = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			if ref, ok := v["$ref"].(string); ok {
				if name := strings.TrimPrefix(ref, "#/definitions/"); !slices.Contains(names, name) {
					names = append(names, name)
					reach(map[string]any(s.resolve(v)))
				}
			}
			for _, each := range v {
				reach(each)
			}
		case []any:
			for _, each := range v {
				reach(each)
			}
		}
	}
	for name, property := range s.root["properties"].(map[string]any) {
		if items, isList := s.subject(name); !isList || !s.composite(items) || collections[name] {
			properties[name] = property
			reach(property)
		}
	}
	all, _ := s.root["definitions"].(map[string]any)
	definitions := map[string]any{}
	for _, name := range names {
		definitions[name] = all[name]
	}
	root["properties"], root["definitions"] = properties, definitions
	text, err := json.Marshal(root)
	if err != nil {
		panic(err)
	}
	return text
}

// partOfDocument validates a part of a document: every field must be known and
// well formed, and none is required.
var partOfDocument = sync.OnceValue(func() *jsonschema.Schema {
	relaxed, err := jsonschema.UnmarshalJSON(bytes.NewReader(document.Schema()))
	if err != nil {
		panic(err)
	}
	var relax func(v any)
	relax = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			if _, ok := v["properties"]; ok {
				v["additionalProperties"] = false
				delete(v, "required")
			}
			for _, each := range v {
				relax(each)
			}
		case []any:
			for _, each := range v {
				relax(each)
			}
		}
	}
	relax(relaxed)
	c := jsonschema.NewCompiler()
	if err := c.AddResource("document", relaxed); err != nil {
		panic(err)
	}
	return c.MustCompile("document")
})

// TestSchemaOnly shows that a part of the schema describes its collection as the
// whole does.
func TestSchemaOnly(t *testing.T) {
	whole := documentSchema()
	var part schema
	if err := json.Unmarshal(whole.only(map[string]bool{"joints": true}), &part.root); err != nil {
		t.Fatal(err)
	}
	subject, ok := part.subject("joints")
	if !ok {
		t.Fatal("no joints")
	}
	if n, ok := part.dotted(subject, "here.form"); !ok || part.composite(n) {
		t.Errorf("joint.here.form: %v, %v; want a word", n, ok)
	}
	if _, ok := part.subject("lines"); ok {
		t.Error("lines are there though nobody asked for them")
	}
	if _, err := checker(whole.only(nil)); err != nil {
		t.Error(err)
	}
	if fmt.Sprint(whole.root["type"]) != "object" {
		t.Error("the document is no object")
	}
}

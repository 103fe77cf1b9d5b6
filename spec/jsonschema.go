package spec

import (
	"reflect"
	"regexp"
	"strings"
	"sync"

	"github.com/invopop/jsonschema"

	"fitup/spec/unit"
)

// Schema returns the JSON Schema of a kind of file, for editors. It is made from
// the types, so that it cannot say less or more than the loader does of keys,
// types of value and closed lists; what units and phrases mean only the loader
// knows.
func Schema(kind FileKind) []byte { return schemas[kind]() }

var schemas = func() map[FileKind]func() []byte {
	made := map[FileKind]func() []byte{}
	for _, kind := range fileKinds {
		made[kind] = sync.OnceValue(func() []byte { return makeSchema(kind) })
	}
	return made
}()

func makeSchema(kind FileKind) []byte {
	m := &schemaMaker{defs: map[string]*definition{}}
	m.reflector = &jsonschema.Reflector{
		Anonymous:    true,
		FieldNameTag: "spec",
		Namer:        defName,
		Mapper:       m.mapped,
		LookupComment: func(t reflect.Type, field string) string {
			f, _ := t.FieldByName(field)
			return f.Tag.Get("doc")
		},
	}
	root := m.table(kind.typ())
	root.Title = "the file of a " + kind.String()
	root.Required = []string{kind.String()}
	for len(m.pending) > 0 {
		t := m.pending[0]
		m.pending = m.pending[1:]
		m.define(defName(t), m.written(t, m.table(t)))
	}
	return m.text(root)
}

// A schemaMaker makes the schema of one kind of file: a definition for each
// table type and for each form of value.
type schemaMaker struct {
	reflector *jsonschema.Reflector
	defs      map[string]*definition
	pending   []reflect.Type // table types that are referred to and not made yet
	writing   sync.WaitGroup // of definitions
}

func defName(t reflect.Type) string { return strings.ToLower(t.Name()) }

func refTo(name string) *jsonschema.Schema { return &jsonschema.Schema{Ref: "#/$defs/" + name} }

// mapped tells the reflector what stands for a type. It sees one table type at a
// time, so that the names of definitions stay in one place.
func (m *schemaMaker) mapped(t reflect.Type) *jsonschema.Schema {
	switch v := reflect.New(t).Interface().(type) {
	case Leaf:
		return m.leaf(v.Kind(), t)
	case Collection:
		return m.collection(t)
	}
	if t.Kind() != reflect.Struct {
		return &jsonschema.Schema{} // the state of a table, which is no key
	}
	return m.refToTable(t)
}

func (m *schemaMaker) refToTable(t reflect.Type) *jsonschema.Schema {
	if m.defs[defName(t)] == nil {
		m.defs[defName(t)] = &definition{} // made when its turn comes
		m.pending = append(m.pending, t)
	}
	return refTo(defName(t))
}

// table is the schema of a table type written out.
func (m *schemaMaker) table(t reflect.Type) *jsonschema.Schema {
	r := *m.reflector
	r.ExpandedStruct = true
	r.Mapper = func(inner reflect.Type) *jsonschema.Schema {
		if inner == t {
			return nil
		}
		return m.mapped(inner)
	}
	s := r.ReflectFromType(t)
	s.Version, s.Definitions, s.Required = "", nil, nil
	for _, field := range fieldsOf(t) {
		if field.Required {
			s.Required = append(s.Required, field.Key)
		}
	}
	return s
}

// written adds the other ways in which a table may be written.
func (m *schemaMaker) written(t reflect.Type, table *jsonschema.Schema) *jsonschema.Schema {
	if len(table.Required) > 0 { // it cannot be none or unknown
		return table
	}
	ways := []*jsonschema.Schema{m.states()}
	if p, ok := reflect.New(t).Interface().(phrased); ok {
		phrasing := p.phrasing()
		one, three := uint64(1), uint64(3)
		text := &jsonschema.Schema{Type: "string", MinLength: &one, Description: phrasing.due}
		if t == reflect.TypeFor[Meet]() {
			text.Description = "the port that it meets"
			ways = append(ways, &jsonschema.Schema{Type: "array", Items: &jsonschema.Schema{Type: "string"},
				MinItems: &one, MaxItems: &three, Description: phrasing.due + ", such as " + phrasing.example})
		} else {
			text.Examples = []any{phrasing.example}
		}
		ways = append(ways, text)
	}
	return &jsonschema.Schema{AnyOf: append(ways, table)}
}

// states are the words that stand in place of a value.
func (m *schemaMaker) states() *jsonschema.Schema {
	if m.defs["state"] == nil {
		m.define("state", &jsonschema.Schema{Enum: []any{"?", "none"}, Description: "\"?\" for what matters and is not measured, \"none\" for what is not there"})
	}
	return refTo("state")
}

// collection is the schema of a Table[T].
func (m *schemaMaker) collection(t reflect.Type) *jsonschema.Schema {
	named, _ := t.FieldByName("Named")
	element := named.Type.Elem().Elem()
	form := nameForm
	if element == reflect.TypeFor[Pin]() {
		form = pinForm
	}
	var each *jsonschema.Schema
	if _, nested := reflect.New(element).Interface().(Collection); nested {
		each = m.collection(element)
	} else {
		each = m.refToTable(element)
	}
	return &jsonschema.Schema{AnyOf: []*jsonschema.Schema{m.states(), {
		Type: "object", PropertyNames: m.reserved(), PatternProperties: map[string]*jsonschema.Schema{form.String(): each}, AdditionalProperties: jsonschema.FalseSchema,
	}}}
}

// reserved are the names that have a meaning of their own.
func (m *schemaMaker) reserved() *jsonschema.Schema {
	if m.defs["free-name"] == nil {
		words := make([]any, len(reserved))
		for i, name := range reserved {
			words[i] = name
		}
		m.define("free-name", &jsonschema.Schema{Not: &jsonschema.Schema{Enum: words}, Description: "a name that has no meaning of its own"})
	}
	return refTo("free-name")
}

var vocabularyName = regexp.MustCompile(`spec\.(\w+)\]+$`)

// leaf is the schema of a form of value: a definition that all keys with that
// form share.
func (m *schemaMaker) leaf(kind Kind, t reflect.Type) *jsonschema.Schema {
	name := strings.NewReplacer(" ", "-", "_", "-").Replace(kind.Name)
	if len(kind.Words) > 0 {
		name = vocabularyName.FindStringSubmatch(t.String())[1]
		if kind.Document == "strings" {
			name += "-list"
		}
	}
	if m.defs[name] == nil {
		m.define(name, &jsonschema.Schema{AnyOf: append([]*jsonschema.Schema{m.states()}, m.plainValues(kind)...)})
	}
	return refTo(name)
}

// plainValues are the ways in which a value of a kind may be written.
func (m *schemaMaker) plainValues(kind Kind) []*jsonschema.Schema {
	switch kind.TOML {
	case "boolean", "integer", "number":
		return m.bare(kind.TOML)
	case "array":
		return []*jsonschema.Schema{m.list(kind)}
	}
	one := m.texts(kind)
	if kind.TOML == "string or array" {
		least := uint64(1)
		return append(one, &jsonschema.Schema{Type: "array", Items: &jsonschema.Schema{AnyOf: one}, MinItems: &least})
	}
	return one
}

// bare is a value that stands without quotes, unless it is a guess.
func (m *schemaMaker) bare(tomlType string) []*jsonschema.Schema {
	written := map[string]string{"boolean": "true|false", "integer": `\d+`, "number": `\d+(?:\.\d+)?`}[tomlType]
	plain := &jsonschema.Schema{Type: tomlType}
	if tomlType != "boolean" {
		plain.Minimum = "0"
	}
	return []*jsonschema.Schema{plain, {Type: "string", Pattern: "^~ *(?:" + written + ")$", Description: "a guess"}}
}

// list is a value that is always a list.
func (m *schemaMaker) list(kind Kind) *jsonschema.Schema {
	s := &jsonschema.Schema{Type: "array", Description: kind.Name + ", such as " + kind.Example}
	switch kind.Document {
	case "numbers":
		least := uint64(1)
		s.Items, s.MinItems = &jsonschema.Schema{AnyOf: m.bare("number")}, &least
	case "positions":
		corners := uint64(2)
		s.Items, s.MinItems, s.MaxItems = &jsonschema.Schema{Type: "string", Pattern: written(kind.Pattern())}, &corners, &corners
	}
	return s
}

// texts are the ways in which a value may stand in quotes.
func (m *schemaMaker) texts(kind Kind) []*jsonschema.Schema {
	if len(kind.Words) > 0 {
		words := make([]any, len(kind.Words))
		for i, w := range kind.Words {
			words[i] = w
		}
		guess := "^~ *(" + strings.Join(quoteAll(kind.Words), "|") + ")$"
		return []*jsonschema.Schema{{Enum: words}, {Type: "string", Pattern: guess, Description: "a guess"}}
	}
	least := uint64(1)
	text := &jsonschema.Schema{Type: "string", MinLength: &least, Description: kind.Name, Examples: []any{kind.Example}}
	if kind.Pattern == nil {
		return []*jsonschema.Schema{text}
	}
	text.Pattern = written(kind.Pattern())
	if kind.Dimension == "" {
		return []*jsonschema.Schema{text}
	}
	text.Description += ", in " + strings.Join(kind.Dimension.Units(), ", ")
	if m.defs["hides-a-choice"] == nil {
		m.define("hides-a-choice", &jsonschema.Schema{Type: "string", Pattern: written(unit.HidingPattern()), Description: "a unit that means two things: it is read, but nothing can be made of it"})
	}
	return []*jsonschema.Schema{text, refTo("hides-a-choice")}
}

// written is the pattern of a value with the mark of a guess.
func written(pattern string) string { return "^ *(?:~ *)?(?:" + pattern + ") *$" }

func quoteAll(words []string) []string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = regexp.QuoteMeta(w)
	}
	return quoted
}

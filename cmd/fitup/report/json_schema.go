package report

import (
	"reflect"
	"strings"

	"github.com/invopop/jsonschema"
)

// The functions below make the JSON Schema (draft 2020-12) of each JSON form from
// the types that are printed.

// JSONSchema is that of a check.
func JSONSchema() ([]byte, error) { return schemaOf("fitup report", jsonCheck{}) }

// SwapJSONSchema is that of a swap.
func SwapJSONSchema() ([]byte, error) { return schemaOf("fitup swap", jsonSwap{}) }

// CompareJSONSchema is that of a comparison of two cars.
func CompareJSONSchema() ([]byte, error) { return schemaOf("fitup compare", jsonCompared{}) }

// DueJSONSchema is that of what runs out.
func DueJSONSchema() ([]byte, error) { return schemaOf("fitup due", jsonDue{}) }

func schemaOf(title string, form any) ([]byte, error) {
	reflector := jsonschema.Reflector{ExpandedStruct: true, Anonymous: true, Namer: func(t reflect.Type) string {
		return strings.ToLower(strings.TrimPrefix(t.Name(), "json"))
	}}
	schema := reflector.Reflect(form)
	schema.Title = title
	return indented(schema)
}

// jsonNumbers are figures by name, in SI; null for one that is not known.
type jsonNumbers map[string]*float64

// JSONSchema says of the values what reflection cannot: each may be null.
func (jsonNumbers) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{
		Type: "object", Description: "in SI units, by name; null where it is not known",
		AdditionalProperties: &jsonschema.Schema{OneOf: []*jsonschema.Schema{{Type: "number"}, {Type: "null"}}},
	}
}

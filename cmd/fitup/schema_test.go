package main

import (
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// TestSchemasOfOutputs holds what commands print of the demo as JSON to the schemas
// that the program gives out.
func TestSchemasOfOutputs(t *testing.T) {
	demo(t)
	for _, test := range []struct {
		schema string
		code   int
		call   string
	}{
		{"swap", exitFindings, "swap --from cars/mizzle.toml --into cars/haar.toml"},
		{"swap", exitFindings, "swap --from cars/squall.toml --into cars/mizzle.toml"}, // into a bay that is not empty
		{"compare", exitGood, "compare cars/mizzle.toml cars/haar.toml"},
		{"due", exitFindings, "due cars --by 2027-06-01"},
	} {
		t.Run(test.call, func(t *testing.T) {
			schema := compiled(t, call(t, exitGood, "schema", test.schema))
			said, err := jsonschema.UnmarshalJSON(strings.NewReader(call(t, test.code, strings.Fields(test.call+" --on 2026-11-25 --format json")...)))
			if err != nil {
				t.Fatal(err)
			}
			if err := schema.Validate(said); err != nil {
				t.Error(err)
			}
			said.(map[string]any)["extra"] = true
			if schema.Validate(said) == nil {
				t.Error("the schema lets an unknown key pass")
			}
		})
	}
}

func compiled(t *testing.T, text string) *jsonschema.Schema {
	t.Helper()
	parsed, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	compiler.AssertFormat()
	if err := compiler.AddResource("output.json", parsed); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("output.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

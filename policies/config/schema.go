package config

import "encoding/json"

// Schema is the JSON Schema (draft 2020-12) of the file, for editors.
func Schema() []byte {
	properties := map[string]any{}
	for _, k := range keys {
		described := map[string]any{"description": k.doc}
		for name, value := range k.schema {
			described[name] = value
		}
		properties[k.name] = described
	}
	schema, err := json.MarshalIndent(map[string]any{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"title":   "fitup configuration",
		"type":    "object", "properties": properties, "additionalProperties": false,
	}, "", "  ")
	if err != nil {
		panic(err) // maps and strings only
	}
	return schema
}

package spec

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"slices"

	"github.com/invopop/jsonschema"
)

// A definition is one of $defs, as text once it is written.
type definition struct{ text []byte }

// define adds a definition, and writes it while others are made: the library writes
// each level of a schema anew into the one above it, which takes as long as making
// them.
func (m *schemaMaker) define(name string, s *jsonschema.Schema) {
	d := &definition{}
	m.defs[name] = d
	m.writing.Go(func() { d.text = marshalled(s) })
}

// text is the whole schema with its definitions.
func (m *schemaMaker) text(root *jsonschema.Schema) []byte {
	own := marshalled(root)
	m.writing.Wait()
	var defs [][]byte
	for _, name := range slices.Sorted(maps.Keys(m.defs)) {
		defs = append(defs, fmt.Appendf(nil, "%q:%s", name, m.defs[name].text))
	}
	whole := fmt.Appendf(nil, `{"$schema":%q,"$defs":{%s},%s`, jsonschema.Version, bytes.Join(defs, []byte(",")), own[len("{"):])
	var text bytes.Buffer
	if err := json.Indent(&text, whole, "", "  "); err != nil {
		panic("spec: " + err.Error())
	}
	text.WriteByte('\n')
	return text.Bytes()
}

func marshalled(s *jsonschema.Schema) []byte {
	text, err := json.Marshal(s)
	if err != nil {
		panic("spec: " + err.Error())
	}
	return text
}

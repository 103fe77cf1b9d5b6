package spec

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
	"github.com/santhosh-tekuri/jsonschema/v6"
)

// beyondSchema names the shape errors that only the loader can see.
var beyondSchema = []string{
	"range the wrong way",
	"thread without pitch",
	"no thread",
	"no size",
	"dash size that nobody makes",
	"flare alone",
	"unknown word in an end",
	"word that says nothing",
	"two sizes",
	"dash size in an end",
	"bad unit of torque",
	"torque in joules",
	"bolt without pitch",
	"length for pitch",
	"unknown class",
	"unknown lock",
	"holes",
	"short side first",
	"bad axis",
	"hose",
	"hose date",
	"tube",
	"injectors",
	"injector flow",
	"end and port swapped",
	"bad end of a line",
	"bad joining",
	"gap between three",
	"port and mount of one name",
	"dead port",
	"part for a port",
	"part with no ports for a port",
	"chassis is no end of a hose",
	"dead terminal",
	"dead channel",
	"dead pin",
	"pins of no plug",
	"pins of no port",
	"mount on the car",
	"dead access panel",
	"dead access panel with nothing near",
	"dead part in behind",
	"panel in a driveline",
	"dead circuit",
	"dead drain",
	"dead sensor",
	"dead part with a life",
	"stand under nothing",
	"gap to nothing",
	"own port of a driveline",
	"name unknown",
}

// schemaKind is the kind of file that an editor would take it for.
func (e shapeError) schemaKind() FileKind {
	for _, kind := range fileKinds {
		if e.file == kind.String()+".toml" || strings.HasPrefix(e.text, "["+kind.String()+"]") {
			return kind
		}
	}
	return KindCar
}

// TestSchemaSeesShapeErrors holds that the schemas refuse whatever the loader
// refuses, save what is listed in beyondSchema. With FITUP_SHAPES=DIR it leaves
// the texts in DIR/seen and DIR/beyond, each with a line that names its schema
// in DIR, for a checker of other making.
func TestSchemaSeesShapeErrors(t *testing.T) {
	leave := os.Getenv("FITUP_SHAPES")
	schemas := map[FileKind]*jsonschema.Schema{}
	for _, kind := range fileKinds {
		schemas[kind] = compiled(t, kind)
	}
	for i, e := range shapeErrors {
		t.Run(e.name, func(t *testing.T) {
			var root map[string]any
			if _, err := toml.Decode(e.whole(), &root); err != nil {
				return // no TOML: no schema comes to see it
			}
			if _, err := json.Marshal(dateless(root)); err != nil {
				return // nor what JSON cannot hold
			}
			seen := schemas[e.schemaKind()].Validate(plainJSON(t, root)) != nil
			if beyond := slices.Contains(beyondSchema, e.name); beyond == seen {
				t.Errorf("the schema refuses it: %v; in beyondSchema: %v", seen, beyond)
			}
			if leave == "" {
				return
			}
			folder := filepath.Join(leave, map[bool]string{true: "seen", false: "beyond"}[seen])
			text := fmt.Sprintf("#:schema ../%s.schema.json\n%s", e.schemaKind(), e.whole())
			if err := errors.Join(os.MkdirAll(folder, 0o777), os.WriteFile(filepath.Join(folder, fmt.Sprintf("%03d.toml", i)), []byte(text), 0o666)); err != nil {
				t.Fatal(err)
			}
		})
	}
	for _, name := range beyondSchema {
		if !slices.ContainsFunc(shapeErrors, func(e shapeError) bool { return e.name == name }) {
			t.Errorf("beyondSchema: there is no shape error %q", name)
		}
	}
}

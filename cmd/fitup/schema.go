package main

import (
	"bytes"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/report"
	"fitup/policies/config"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/nearest"
)

// schemas are the JSON Schemas of everything that is read or printed.
var schemas = map[string]func() ([]byte, error){
	"car":       func() ([]byte, error) { return spec.Schema(spec.KindCar), nil },
	"driveline": func() ([]byte, error) { return spec.Schema(spec.KindDriveline), nil },
	"shop":      func() ([]byte, error) { return spec.Schema(spec.KindShop), nil },
	"config":    func() ([]byte, error) { return config.Schema(), nil },
	"input":     func() ([]byte, error) { return document.Schema(), nil },
	"report":    report.JSONSchema,
	"swap":      report.SwapJSONSchema,
	"compare":   report.CompareJSONSchema,
	"due":       report.DueJSONSchema,
}

// edited are the schemas that an editor wants: of the files that people write.
var edited = []string{"car", "config", "driveline", "shop"}

func newSchema() *cobra.Command {
	names := slices.Sorted(maps.Keys(schemas))
	var folder string
	cmd := &cobra.Command{
		Use:   "schema car|driveline|shop|config|input|report|swap|compare|due",
		Short: "Print the JSON Schema of a file",
		Long: `Schema prints the JSON Schema of what fitup reads or prints:

  car, driveline, shop   a spec, for editors that complete and check TOML
  config                 .fitup.toml
  input                  what rules see, as "fitup workings --format input"
  report                 what "fitup check --format json" prints
  swap, compare, due     what these commands print with --format json

Many editors take the schema of a TOML file from a remark in its first line:
  #:schema .schema/car.schema.json

With --write it writes car, config, driveline and shop, each to a file
NAME.schema.json in a folder, for such remarks.`,
		Example: `  fitup schema report > report.schema.json
  fitup schema --write cars/.schema`,
		ValidArgs: names,
		RunE: func(cmd *cobra.Command, args []string) error {
			if folder != "" {
				if err := arguments(0, 0)(cmd, args); err != nil {
					return err
				}
				return writeSchemas(folder)
			}
			if err := arguments(1, 1)(cmd, args); err != nil {
				return err
			}
			schema, ok := schemas[args[0]]
			if !ok {
				if near := nearest.To(args[0], names); near != "" {
					return callErrorf("there is no schema of %q; did you mean %s?", args[0], near)
				}
				return callErrorf("there is no schema of %q; write %s", args[0], words(names))
			}
			text, err := schema()
			if err != nil {
				return err
			}
			_, err = cmd.OutOrStdout().Write(oneNewline(text))
			return err
		},
	}
	cmd.Flags().StringVar(&folder, "write", "", "write the schemas for editors into `DIR`")
	completeFolders(cmd, "write")
	return cmd
}

// writeSchemas writes the schemas that an editor wants into a folder.
func writeSchemas(folder string) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return callErrorf("%w; give --write a folder", err)
	}
	for _, name := range edited {
		text, err := schemas[name]()
		if err != nil {
			return err
		}
		if err := writeFile(filepath.Join(folder, name+".schema.json"), oneNewline(text)); err != nil {
			return callErrorf("%w; give --write a folder that can be written", err)
		}
	}
	return nil
}

// oneNewline ends a text as a file should end.
func oneNewline(text []byte) []byte { return append(bytes.TrimRight(text, "\n"), '\n') }

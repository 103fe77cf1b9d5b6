package main

import (
	"maps"
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
}

func newSchema() *cobra.Command {
	names := slices.Sorted(maps.Keys(schemas))
	return &cobra.Command{
		Use:   "schema car|driveline|shop|config|input|report",
		Short: "Print the JSON Schema of a file",
		Long: `Schema prints the JSON Schema of what fitup reads or prints:

  car, driveline, shop   a spec, for editors that complete and check TOML
  config                 .fitup.toml
  input                  what rules see, as "fitup workings --format input"
  report                 what "fitup check --format json" prints

Many editors take the schema of a TOML file from a remark in its first line:
  #:schema ./car.schema.json`,
		Example: `  fitup schema car > car.schema.json
  fitup schema report > report.schema.json`,
		ValidArgs: names,
		Args:      arguments(1, 1),
		RunE: func(cmd *cobra.Command, args []string) error {
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
			_, err = cmd.OutOrStdout().Write(append(text, '\n'))
			return err
		},
	}
}

package main

import (
	"bytes"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
)

type packOptions struct {
	file, config string
	rules        []string
}

func newPack() *cobra.Command {
	var o packOptions
	cmd := &cobra.Command{
		Use:   "pack",
		Short: "Pack the rules for stock OPA",
		Long: `Pack writes the rules with their tables and limits as a standard OPA bundle, a
gzipped tar. The configuration that holds in the folder that you are in is
applied: rules that it skips are not in the bundle, limits that it sets are, and
so are rules of your own. Whatever can read a bundle then judges by the same
rules; of the document that "fitup workings CAR --format input" prints,
data.fitup holds the findings and what could not be told, before any waiver.

The same rules and limits make the same bundle, byte for byte. Its revision is
the digest of the rules that "fitup check --format json" prints.`,
		Example: `  fitup pack -o rules.tar.gz
  fitup workings cars/blue.toml --format input > input.json
  opa eval --bundle rules.tar.gz --input input.json data.fitup.findings`,
		Args: arguments(0, 0),
		RunE: func(cmd *cobra.Command, _ []string) error { return runPack(cmd, o) },
	}
	flags := cmd.Flags()
	flags.StringVarP(&o.file, "output", "o", "", "`FILE` to write (default standard output)")
	flags.StringVar(&o.config, "config", "", "configuration `FILE`, or none\n(default the nearest .fitup.toml upward)")
	flags.StringArrayVar(&o.rules, "rules", nil, "`DIR` with rules of your own; may be given several times")
	completeFiles(cmd, "config")
	completeFolders(cmd, "rules")
	return cmd
}

func runPack(cmd *cobra.Command, o packOptions) error {
	if o.file == "" && isTerminal(cmd.OutOrStdout()) {
		return callErrorf("a bundle is nothing to look at; name a file with -o FILE")
	}
	choice, err := choiceOf(checkOptions{rules: o.rules})
	if err != nil {
		return err
	}
	settings, err := fleet.Configuration(".", o.config)
	if err != nil {
		return err
	}
	engine, err := settings.Engine(cmd.Context(), choice)
	if err != nil {
		return err
	}
	if err := brokenRules(cmd, engine); err != nil {
		return err // a bundle that lacks a rule in silence is worse than none
	}
	var packed bytes.Buffer
	if err := engine.WriteBundle(&packed); err != nil {
		return err
	}
	if o.file == "" {
		_, err := cmd.OutOrStdout().Write(packed.Bytes())
		return err
	}
	if err := writeFile(o.file, packed.Bytes()); err != nil {
		return callErrorf("%w; give -o a file that can be written", err)
	}
	return nil
}

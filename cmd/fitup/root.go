package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

func newRoot() *cobra.Command {
	root := &cobra.Command{
		Use:   "fitup",
		Short: "Check the written specs of competition cars and their drivelines",
		Long: `fitup checks the written specs of competition cars.

A car, a driveline that several cars share, and what the workshop has are each
a TOML file. fitup reads them, works out the engineering, judges both with
rules, and says what does not fit, what is not allowed for, and what has still
to be measured. It checks what is written, not the car.`,
		Example: `  fitup new car "Blue hill climber" > cars/blue.toml
  fitup check cars
  fitup workings cars/blue.toml lines.fuel-feed
  fitup rules fuel`,
		Args:          unknownCommand,
		RunE:          func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
		SilenceErrors: true,
		SilenceUsage:  true,

		DisableFlagsInUseLine:      true,
		SuggestionsMinimumDistance: 2,
	}
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		return callErrorf("%w; `%s --help` lists the flags", err, cmd.CommandPath())
	})
	root.AddCommand(newCheck(), newSwap(), newSheet(), newCompare(), newDue(), newWorkings(), newRules(), newNew(), newSchema(), newPack(), newVersion(), newHelpExitCodes(), newHelpConfig(), newHelpBaseline())
	return root
}

// unknownCommand refuses what is not a command, and says which may be meant.
func unknownCommand(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	near := cmd.SuggestionsFor(args[0])
	if len(near) == 0 {
		return callErrorf("%q is not a command; `fitup help` lists them", args[0])
	}
	return callErrorf("%q is not a command; did you mean %s?", args[0], strings.Join(near, " or "))
}

// arguments asks for a number of arguments.
func arguments(least, most int) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		switch {
		case len(args) < least:
			return callErrorf("something is left out; the form is: %s", cmd.UseLine())
		case len(args) > most:
			return callErrorf("%q is too much; the form is: %s", args[most], cmd.UseLine())
		}
		return nil
	}
}

// words joins names in prose.
func words(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return fmt.Sprintf("%s or %s", strings.Join(names[:len(names)-1], ", "), names[len(names)-1])
}

package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

// Groups of commands, in the order in which a builder comes to them.
const (
	groupWrite = "write"
	groupJudge = "judge"
	groupMove  = "move"
	groupOther = "other"
)

func newRoot() *cobra.Command {
	cobra.EnableCommandSorting = false // the order is that of the work
	root := &cobra.Command{
		Use:   "fitup",
		Short: "Check the written specs of competition cars and their drivelines",
		Long: `fitup checks the written specs of competition cars, and plans how a driveline
goes from one into another.

A car, a driveline that several cars share, and what the workshop has are each
a TOML file. fitup reads them, works out the engineering, judges both with
rules, and says what does not fit, what is not allowed for, and what has still
to be measured. It checks what is written, not the car.

To begin, write a car and ask what to measure first, as the examples do.`,
		Example: `  mkdir -p cars
  fitup new car "Blue hill climber" > cars/blue.toml
  fitup check cars
  fitup rules lifting.leg_angle
  fitup sheet cars/blue.toml -o blue.html`,
		Args:          unknownCommand,
		RunE:          func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
		SilenceErrors: true,
		SilenceUsage:  true,
		Version:       versionLine(),

		DisableFlagsInUseLine:      true,
		SuggestionsMinimumDistance: 2,
	}
	root.SetVersionTemplate("{{.Version}}\n")
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		return callErrorf("%w; `%s --help` lists the flags", err, cmd.CommandPath())
	})
	for _, group := range []struct {
		id, title string
		commands  []*cobra.Command
	}{
		{groupWrite, "To write specs:", []*cobra.Command{newNew(), newSchema()}},
		{groupJudge, "To judge them:", []*cobra.Command{newCheck(), newRules(), newWorkings(), newDue()}},
		{groupMove, "To move a driveline:", []*cobra.Command{newCompare(), newSwap(), newSheet()}},
		{groupOther, "Besides:", []*cobra.Command{newPack(), newVersion()}},
	} {
		root.AddGroup(&cobra.Group{ID: group.id, Title: group.title})
		for _, cmd := range group.commands {
			cmd.GroupID = group.id
			root.AddCommand(cmd)
		}
	}
	root.AddCommand(newHelpExitCodes(), newHelpConfig(), newHelpBaseline())
	root.SetHelpCommand(newHelp())
	root.SetHelpCommandGroupID(groupOther)
	addCompletion(root)
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

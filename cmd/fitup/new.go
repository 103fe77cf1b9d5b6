package main

import (
	"strings"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
	"fitup/spec"
)

// kinds are the kinds of file, by the words of a call.
var kinds = map[string]spec.FileKind{"car": spec.KindCar, "driveline": spec.KindDriveline, "shop": spec.KindShop}

func newNew() *cobra.Command {
	var driveline string
	cmd := &cobra.Command{
		Use:   "new car|driveline|shop [NAME]",
		Short: "Print a spec to start from",
		Long: `New prints a new file, with what matters most in it and a remark on each key.
What has to be measured is "?". Send it to a file and fill it in.

With --for it prints the car's half of every port and mount of a driveline:
what you have to find out before that driveline goes in.`,
		Example: `  fitup new car "Blue hill climber" > cars/blue.toml
  fitup new driveline "Two litre" > cars/drivelines/two-litre.toml
  fitup new shop > cars/shop/shop.toml
  fitup new --for cars/drivelines/two-litre.toml > cars/green.toml`,
		Args:      arguments(0, 2),
		ValidArgs: []string{"car", "driveline", "shop"},
		RunE: func(cmd *cobra.Command, args []string) error {
			return runNew(cmd, driveline, args)
		},
	}
	cmd.Flags().StringVar(&driveline, "for", "", "print the car's half for a `DRIVELINE`")
	completeFiles(cmd, "for")
	return cmd
}

func runNew(cmd *cobra.Command, driveline string, args []string) error {
	word, rest := "car", args
	if len(args) > 0 && kinds[args[0]] != 0 {
		word, rest = args[0], args[1:]
	} else if driveline == "" || len(args) > 1 {
		return callErrorf("say what it is to be, a car, a driveline or a shop; the form is: %s", cmd.UseLine())
	}
	var file *spec.File
	if driveline != "" {
		if word != "car" {
			return callErrorf("--for goes with a car, not with a %s", word)
		}
		var err error
		if file, err = fleet.Driveline(driveline); err != nil {
			return err
		}
	}
	_, err := cmd.OutOrStdout().Write([]byte(spec.Starter(kinds[word], strings.Join(rest, ""), file)))
	return err
}

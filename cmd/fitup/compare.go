package main

import (
	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/policies/config"
	"fitup/spec"
	"fitup/spec/swap"
)

type compareOptions struct {
	on, config, colour string
	formats            []string
}

func newCompare() *cobra.Command {
	var o compareOptions
	cmd := &cobra.Command{
		Use:   "compare CAR CAR",
		Short: "Put two cars side by side, interface by interface",
		Long: `Compare puts what two cars hold out to a driveline side by side, each mount, port
and pin by the name of what it meets: the same, different and yet each meets the
driveline that is in the other, different, or only in one. At the end it says how
much carries over: what needs nothing done when a driveline moves.

The exit code is 2 if a spec or the call is wrong, else 0: two cars may differ.`,
		Example: `  fitup compare cars/blue.toml cars/green.toml
  fitup compare cars/blue.toml cars/green.toml --format markdown`,
		Args:              arguments(2, 2),
		ValidArgsFunction: specFiles,
		RunE:              func(cmd *cobra.Command, args []string) error { return runCompare(cmd, o, args) },
	}
	flags := cmd.Flags()
	flags.StringVar(&o.on, "on", "", "ages and lives as of a `DAY`, such as 2027-04-01 (default today)")
	flags.StringVar(&o.config, "config", "", "configuration `FILE`, or none\n(default the nearest .fitup.toml upward)")
	addFormat(cmd, &o.formats, report.CompareForms)
	addColour(cmd, &o.colour)
	completeFiles(cmd, "config")
	return cmd
}

func runCompare(cmd *cobra.Command, o compareOptions, args []string) error {
	date, err := parseDay(o.on)
	if err != nil {
		return err
	}
	outputs, err := outputs(o.formats, report.CompareForms)
	if err != nil {
		return err
	}
	style, err := styleFor(o.colour)
	if err != nil {
		return err
	}
	specs, cars, err := twoCars(args, o.config)
	if err != nil {
		return err
	}
	shown := showProgress(cmd, "comparing")
	defer shown.end()
	cars = [2]*spec.Composition{fitted(specs, cars[0], cars[1]), fitted(specs, cars[1], cars[0])}
	engine, err := specs.Config.Engine(cmd.Context(), config.Choice{})
	if err != nil {
		return err
	}
	compared := &report.Compared{
		One: cars[0].Car.Name, Other: cars[1].Car.Name,
		Comparison: swap.Compare(joined(cars[0], date), joined(cars[1], date), tolerances(engine)),
	}
	style.Shown = shownFrom(specs.Tree.Root)
	shown.end()
	return write(cmd, outputs, compared, style)
}

// twoCars reads two cars of one tree.
func twoCars(paths []string, configFile string) (*fleet.Selection, [2]*spec.Composition, error) {
	var cars [2]*spec.Composition
	for _, path := range paths {
		c, err := fleet.One(path)
		if err != nil {
			return nil, cars, err
		}
		if c.Car == nil {
			return nil, cars, callErrorf("%s: this is the file of a driveline; give that of a car", path)
		}
	}
	specs, err := fleet.Open(paths, configFile)
	if err != nil {
		return nil, cars, err
	}
	for i, path := range paths {
		c, ok := specs.Outfit.Car(specs.NameOf(path))
		if !ok {
			return nil, cars, config.Problems{Root: specs.Tree.Root, List: specs.Outfit.Problems()}
		}
		cars[i] = c
	}
	if cars[0].Car == cars[1].Car {
		return nil, cars, callErrorf("%s and %s are one car; give two", paths[0], paths[1])
	}
	return specs, cars, nil
}

// fitted is a car with what is in it. An empty bay is held against the driveline
// of the other car: which of its pins and ports are alike only shows beside one.
func fitted(specs *fleet.Selection, car, other *spec.Composition) *spec.Composition {
	if car.Driveline != nil || other.Driveline == nil {
		return car
	}
	if accepted := specs.Outfit.CarsFor(other.Driveline.Name, []string{car.Car.Name}); len(accepted) == 1 {
		return accepted[0]
	}
	return &spec.Composition{Car: car.Car, Driveline: other.Driveline, Shop: car.Shop, Trial: true}
}

package main

import (
	"errors"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/policies/config"
	"fitup/spec"
	"fitup/spec/nearest"
	"fitup/spec/source"
	"fitup/spec/swap"
)

type swapOptions struct {
	from, into, driveline      string
	on, failOn, config, colour string
	rules, formats, parts      []string
	write, force               bool
}

func newSwap() *cobra.Command {
	var o swapOptions
	cmd := &cobra.Command{
		Use:   "swap --into CAR (--from CAR | --driveline FILE)",
		Short: "Plan how a driveline goes from one car into another",
		Long: `Swap plans a move before a spanner is lifted: the driveline in one car, or one on
the bench, into another car.

  fit        every interface: meets, meets with an adaptor, must be made, missing,
             left over
  breaks     what the rules find because of the swap, and of adaptors in a line;
             what it mends, what stays
  parting    which joints to open, the next best choice, what leaves unopened
  order      what to do in what order, from where, with what, and why
  lists      tools, fluids, seals, torques, caps, labels, checks
  standing   loads and margins on stands, hook, sling and dolly
  holds      what is signed on the way, stored energy, how the giving car is left

Standing, order and holds are withheld while a figure is not written that they
depend on: they say what to measure instead.

With --write it exchanges the values of driveline in the two files, and nothing
else in them: write it when the work is done. It refuses where a file has changes
that are not committed, or errors in it, unless --force is given.

Exit codes: 0 the swap brings nothing at or above the fail level, 1 it does, or a
part is withheld, 2 a spec or the call is wrong, 3 a rule is broken.`,
		Example: `  fitup swap --from cars/blue.toml --into cars/green.toml
  fitup swap --from cars/blue.toml --into cars/green.toml --part fit --part breaks
  fitup swap --driveline cars/drivelines/two-litre.toml --into cars/green.toml
  fitup swap --from cars/blue.toml --into cars/green.toml --write`,
		Args: arguments(0, 0),
		RunE: func(cmd *cobra.Command, _ []string) error { return runSwap(cmd, o) },
	}
	flags := cmd.Flags()
	flags.StringVar(&o.from, "from", "", "`CAR` that gives its driveline")
	flags.StringVar(&o.driveline, "driveline", "", "`FILE` of a driveline that is on the bench")
	flags.StringVar(&o.into, "into", "", "`CAR` that receives it")
	flags.StringArrayVar(&o.parts, "part", nil, "print only this `PART`, as text or markdown; may be given several times")
	flags.BoolVar(&o.write, "write", false, "exchange the two values of driveline")
	flags.BoolVar(&o.force, "force", false, "with --write: also in files with changes or errors")
	flags.StringVar(&o.on, "on", "", "judge as of a `DAY`, such as 2027-04-01 (default today)")
	flags.StringVar(&o.failOn, "fail-on", "", "`LEVEL` from which findings make the exit code 1:\ndanger, fault, advice or never (default fault)")
	flags.StringArrayVar(&o.rules, "rules", nil, "`DIR` with rules of your own; may be given several times")
	flags.StringVar(&o.config, "config", "", "configuration `FILE`, or none\n(default the nearest .fitup.toml upward)")
	addFormat(cmd, &o.formats, report.SwapForms)
	addColour(cmd, &o.colour)
	completeFiles(cmd, "from", "into", "driveline", "config")
	completeFolders(cmd, "rules")
	complete(cmd, "fail-on", config.FailLevels...)
	complete(cmd, "part", report.SwapParts...)
	return cmd
}

func runSwap(cmd *cobra.Command, o swapOptions) error {
	date, err := parseDay(o.on)
	if err != nil {
		return err
	}
	outputs, err := outputs(o.formats, report.SwapForms)
	if err != nil {
		return err
	}
	style, err := styleFor(o.colour)
	if err != nil {
		return err
	}
	choice, err := choiceOf(checkOptions{failOn: o.failOn, rules: o.rules})
	if err != nil {
		return err
	}
	if err := o.check(); err != nil {
		return err
	}
	m, err := o.findMove()
	if err != nil {
		if wrong, is := errors.AsType[config.Problems](err); is && o.write && o.force {
			return o.exchangeUnplanned(cmd, wrong)
		}
		return err
	}
	shown := showProgress(cmd, "judging")
	defer shown.end()
	plan, fail, err := m.judge(judging{cmd.Context(), choice, date, shown.step})
	if err != nil {
		return err
	}
	shown.end()
	plan.Parts = o.parts
	style.Shown = shownFrom(m.specs.Tree.Root)
	if err := write(cmd, outputs, plan, style); err != nil {
		return err
	}
	if o.write {
		if err := o.exchange(cmd, m); err != nil {
			return err
		}
	}
	return swapped(plan, fail)
}

// check looks at what the flags say together.
func (o swapOptions) check() error {
	const form = "the form is: fitup swap --from CAR --into CAR, or --driveline FILE --into CAR"
	switch {
	case o.into == "":
		return callErrorf("--into is left out; %s", form)
	case (o.from == "") == (o.driveline == ""):
		return callErrorf("one of --from and --driveline is needed; %s", form)
	case o.write && o.from == "":
		return callErrorf("--write exchanges the drivelines of two cars; give --from, or write the driveline into %s", o.into)
	case o.force && !o.write:
		return callErrorf("--force goes with --write")
	}
	for _, part := range o.parts {
		if slices.Contains(report.SwapParts, part) {
			continue
		}
		if near := nearest.To(part, report.SwapParts); near != "" {
			return callErrorf("--part %s: no part is called so; did you mean %s?", part, near)
		}
		return callErrorf("--part %s: no part is called so; write %s", part, words(report.SwapParts))
	}
	return nil
}

// A moving is a move with the specs that it is about.
type moving struct {
	*swap.Move
	specs *fleet.Selection
}

// findMove reads the two files and what they need.
func (o swapOptions) findMove() (*moving, error) {
	giver := o.from
	if giver == "" {
		giver = o.driveline
	}
	for _, path := range []string{giver, o.into} {
		c, err := fleet.One(path)
		if err != nil {
			return nil, err
		}
		switch wantsCar := path == o.into || o.from != ""; {
		case wantsCar && c.Car == nil:
			return nil, callErrorf("%s: this is the file of a driveline; give that of a car, or --driveline for one on the bench", path)
		case !wantsCar && c.Car != nil:
			return nil, callErrorf("%s: this is the file of a car; give that of a driveline, or --from for the one in a car", path)
		}
	}
	specs, err := fleet.Open([]string{giver, o.into}, o.config)
	if err != nil {
		return nil, err
	}
	find := swap.FromCar
	if o.from == "" {
		find = swap.FromBench
	}
	m, err := find(specs.Outfit, specs.NameOf(giver), specs.NameOf(o.into))
	if err != nil {
		return nil, noMove(specs, err)
	}
	if m.From == nil {
		for _, c := range specs.Compositions {
			if c.Car != nil && c.Driveline == m.Driveline && !c.Trial {
				return nil, callErrorf("%s is in %s, not on the bench; give --from for that car", m.Driveline.Name, c.Car.Name)
			}
		}
	}
	return &moving{m, specs}, nil
}

// noMove says why there is no move: at a place in a file, if it is about one.
func noMove(specs *fleet.Selection, err error) error {
	cannot, is := errors.AsType[*swap.CannotMove](err)
	if is && cannot.Path != "" {
		return placed(specs, cannot.File, cannot.Path, cannot.Path+": "+cannot.Reason)
	}
	if problems := specs.Outfit.Problems(); len(problems) > 0 {
		return config.Problems{Root: specs.Tree.Root, List: problems}
	}
	return callErrorf("%w", err)
}

// noPlan says why there is no plan: what the specs of a car with a driveline in it
// rule out, at its place.
func noPlan(specs *fleet.Selection, car, driveline string, err error) error {
	no, is := errors.AsType[*swap.NoPlan](err)
	if !is {
		return callErrorf("%s: %w", car, err)
	}
	file, path := car, no.Subject
	if of, is := strings.CutPrefix(path, "driveline."); is {
		file, path = driveline, of
	}
	return placed(specs, file, path, no.Error())
}

// placed is what is wrong with a call because of what stands at a place.
func placed(specs *fleet.Selection, file, path, message string) error {
	f := specs.Outfit.Load(file)
	return config.Problems{Root: specs.Tree.Root, List: []spec.FileProblem{{
		File: file, Place: f.Place(f.Find(path)), Problem: source.Problem{Path: path, Message: message},
	}}}
}

// swapped is the outcome of a swap.
func swapped(s *report.Swap, fail config.FailLevel) error {
	if len(s.Report.Faults) > 0 {
		return outcome(exitTool)
	}
	if len(s.Withheld) > 0 || slices.ContainsFunc(s.Change.Appears, turnFails(fail)) {
		return outcome(exitFindings)
	}
	return nil
}

package main

import (
	"time"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/policies/config"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/source"
)

type dueOptions struct {
	on, by, config, colour string
	formats                []string
}

func newDue() *cobra.Command {
	var o dueOptions
	cmd := &cobra.Command{
		Use:   "due [PATH...]",
		Short: "List what runs out of date or life",
		Long: `Due lists what runs out, the soonest first: safety items by their labels or by
the life that an authority gives them, services, hoses, items with a life of
their own, and waivers. Lives in hours or runs follow, the most used first, and
then what too little is written of to tell.

A PATH is one that check takes. --format ics makes events for a calendar; taking
in a later list moves them.

The exit code is 1 if something has run out already, 2 if a spec or the call is
wrong.`,
		Example: `  fitup due cars --by 2027-10-01
  fitup due cars/blue.toml
  fitup due cars --format text --format ics=due.ics`,
		ValidArgsFunction: specFiles,
		RunE:              func(cmd *cobra.Command, args []string) error { return runDue(cmd, o, args) },
	}
	flags := cmd.Flags()
	flags.StringVar(&o.on, "on", "", "ages and lives as of a `DAY`, such as 2027-04-01 (default today)")
	flags.StringVar(&o.by, "by", "", "last `DAY` to look ahead to (default a year on)")
	flags.StringVar(&o.config, "config", "", "configuration `FILE`, or none\n(default the nearest .fitup.toml upward)")
	addFormat(cmd, &o.formats, report.DueForms)
	addColour(cmd, &o.colour)
	completeFiles(cmd, "config")
	return cmd
}

func runDue(cmd *cobra.Command, o dueOptions, paths []string) error {
	on, by, err := dueDays(o.on, o.by)
	if err != nil {
		return err
	}
	outputs, err := outputs(o.formats, report.DueForms)
	if err != nil {
		return err
	}
	style, err := styleFor(o.colour)
	if err != nil {
		return err
	}
	if len(paths) == 0 {
		paths = []string{"."}
	}
	call, err := fleet.Find(paths, o.config)
	if err != nil {
		return err
	}
	shown := showProgress(cmd, "reading")
	defer shown.end()
	list := judge.NewDueList(on, by)
	specs, err := call.Each(func(c *spec.Composition) error {
		list.Add(c)
		shown.step()
		return cmd.Context().Err()
	})
	if err != nil {
		return err
	}
	due := list.Due()
	style.Shown = shownFrom(specs.Tree.Root)
	shown.end()
	if err := write(cmd, outputs, due, style); err != nil {
		return err
	}
	if err := wrongIn(specs); err != nil {
		return err
	}
	if len(specs.Unread) > 0 {
		return callErrorf("not read: %s", specs.Unread[0])
	}
	if due.Past() > 0 {
		return outcome(exitFindings)
	}
	return nil
}

// dueDays reads the day that it is judged on, and the last that is looked ahead to.
func dueDays(on, by string) (from, to time.Time, err error) {
	if from, err = parseDay(on); err != nil || by == "" {
		return from, from.AddDate(1, 0, 0), err
	}
	if to, err = time.Parse(time.DateOnly, by); err != nil {
		err = callErrorf("--by %s: this is no day; write it as 2027-04-01", by)
	}
	return from, to, err
}

// wrongIn is what is wrong with the text of specs, as an error; nil if nothing is.
func wrongIn(specs *fleet.Selection) error {
	if len(specs.Problems) == 0 {
		return nil
	}
	wrong := config.Problems{Root: specs.Tree.Root}
	for _, p := range specs.Problems {
		wrong.List = append(wrong.List, spec.FileProblem{File: p.File, Place: p.Place, Problem: source.Problem{Path: p.Path, Message: p.Message, Want: p.Want}})
	}
	return wrong
}

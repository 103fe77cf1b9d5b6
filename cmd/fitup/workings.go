package main

import (
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/nearest"
	"fitup/spec/workings"
)

type workingsOptions struct {
	on, colour string
	formats    []string
}

func newWorkings() *cobra.Command {
	var o workingsOptions
	cmd := &cobra.Command{
		Use:   "workings CAR [SUBJECT]",
		Short: "Print every computed number with its formula, inputs and source",
		Long: `Workings prints the engineering of a car, or of a driveline by itself: each
number that was worked out, the formula, what went into it as you wrote it, and
where the formula or table is from. What could not be worked out says what is
missing. Bench phrases are printed back as they were understood.

SUBJECT narrows it to one subject, as a finding prints it, or to all below it:
"lines.fuel-feed", or "lines".`,
		Example: `  fitup workings cars/blue.toml
  fitup workings cars/blue.toml lines.fuel-feed
  fitup workings cars/blue.toml --format input > input.json`,
		Args:              arguments(1, 2),
		ValidArgsFunction: carAndSubject,
		RunE:              func(cmd *cobra.Command, args []string) error { return runWorkings(cmd, o, args) },
	}
	cmd.Flags().StringVar(&o.on, "on", "", "ages and lives as of a `DAY`, such as 2027-04-01 (default today)")
	addFormat(cmd, &o.formats, report.NotebookForms)
	addColour(cmd, &o.colour)
	return cmd
}

func runWorkings(cmd *cobra.Command, o workingsOptions, args []string) error {
	date, err := parseDay(o.on)
	if err != nil {
		return err
	}
	outputs, err := outputs(o.formats, report.NotebookForms)
	if err != nil {
		return err
	}
	style, err := styleFor(o.colour)
	if err != nil {
		return err
	}
	notebook, err := notebookOf(args[0], date)
	if err != nil {
		return err
	}
	if len(args) == 2 {
		subjects := notebook.Subjects()
		if notebook.Narrow(args[1]); len(notebook.Trace)+len(notebook.Phrases) == 0 {
			return noSubject(args, subjects)
		}
	}
	return write(cmd, outputs, notebook, style)
}

// notebookOf works out all of a car, or of a driveline by itself.
func notebookOf(file string, date time.Time) (*report.Notebook, error) {
	composition, err := fleet.One(file)
	if err != nil {
		return nil, err
	}
	doc := document.Join(composition, date)
	notebook := &report.Notebook{Of: file, Trace: workings.Derive(doc), Phrases: phrases(composition)}
	notebook.Document = doc.Encode()
	return notebook, nil
}

// carAndSubject completes a spec, and then what is worked out in it.
func carAndSubject(cmd *cobra.Command, args []string, word string) ([]string, cobra.ShellCompDirective) {
	if len(args) == 0 {
		return specFiles(cmd, args, word)
	}
	var subjects []string
	if notebook, err := notebookOf(args[0], time.Now()); err == nil && len(args) == 1 {
		subjects = notebook.Subjects()
	}
	return subjects, cobra.ShellCompDirectiveNoFileComp
}

// phrases are those of all files of a composition, by the paths that rules use.
func phrases(c *spec.Composition) []report.Phrase {
	var all []report.Phrase
	for _, part := range []struct {
		file   *spec.File
		prefix string
	}{{c.Car, ""}, {c.Driveline, "driveline."}, {c.Shop, "shop."}} {
		if part.file != nil {
			all = append(all, report.Understand(part.file, part.prefix)...)
		}
	}
	return all
}

func noSubject(args, subjects []string) error {
	if near := nearest.To(args[1], subjects); near != "" {
		return callErrorf("nothing is worked out of %s in %s; did you mean %s?", args[1], args[0], near)
	}
	var tops []string
	for _, s := range subjects {
		tops = append(tops, s[:strings.IndexAny(s+".", ".#")])
	}
	slices.Sort(tops)
	return callErrorf("nothing is worked out of %s in %s; there is something of %s", args[1], args[0], strings.Join(slices.Compact(tops), ", "))
}

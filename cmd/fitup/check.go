package main

import (
	"os"
	"time"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/report"
	"fitup/policies"
	"fitup/policies/config"
	"fitup/spec/document"
)

type checkOptions struct {
	on, failOn, config, colour string
	since, as, baseline        string
	only, skip, rules, formats []string
	strict, all                bool
	staged, writeBaseline      bool
}

func newCheck() *cobra.Command {
	var o checkOptions
	cmd := &cobra.Command{
		Use:   "check [PATH...]",
		Short: "Judge specs by the rules",
		Long: `Check reads specs and says what is wrong with them.

A PATH may be:
  a folder      every spec in it and below; a driveline that is in no car there
                is judged by itself
  a car         that car, with the driveline in it
  a driveline   every car that has it fitted, or accepts it (as a trial); by
                itself if there is none
  a shop file   every car that uses it
  -             a text on standard input, for the file that --as names
Without a PATH it is the folder that you are in.

--since tells what a change breaks, mends and leaves: it judges what differs from
a revision as it was and as it is, a changed driveline or shop file with every
car that uses it, each side by its own configuration. Only what the change brings
counts for the exit code. --staged judges what the next commit would hold.

--baseline sets the findings of an old fleet aside until a day, save dangers. See
"fitup help baseline".

What a rule could not tell, because a figure is not written, is never a pass:
the report lists what to measure, and what waits for it.

Exit codes: 0 nothing at or above the fail level, 1 findings, 2 a spec or the
call is wrong, 3 a rule is broken. See "fitup help exit-codes".`,
		Example: `  fitup check
  fitup check cars/blue.toml --only fuel,lines
  fitup check cars --fail-on danger --format text --format json=report.json
  fitup check cars --on 2027-04-01
  fitup check cars --since main...
  fitup check --staged --since HEAD
  fitup check - --as cars/blue.toml < unsaved.toml`,
		ValidArgsFunction: specFiles,
		RunE: func(cmd *cobra.Command, args []string) error {
			return runCheck(cmd, o, args)
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&o.on, "on", "", "judge as of a `DAY`, such as 2027-04-01 (default today)")
	flags.StringVar(&o.failOn, "fail-on", "", "`LEVEL` from which findings make the exit code 1:\ndanger, fault, advice or never (default fault)")
	flags.StringSliceVar(&o.only, "only", nil, "ask only these `RULES`: AREA or AREA.NAME")
	flags.StringSliceVar(&o.skip, "skip", nil, "do not ask these `RULES`: AREA or AREA.NAME")
	flags.BoolVar(&o.strict, "strict", false, "what could not be told makes the exit code 1 too")
	flags.StringArrayVar(&o.rules, "rules", nil, "`DIR` with rules of your own; may be given several times")
	flags.StringVar(&o.config, "config", "", "configuration `FILE`, or none\n(default the nearest .fitup.toml upward)")
	flags.StringVar(&o.since, "since", "", "tell what has changed since a `REVISION`; A...B is where A and B parted")
	flags.BoolVar(&o.staged, "staged", false, "judge the index of git, not the work tree")
	flags.StringVar(&o.as, "as", "", "`FILE` that the text on standard input is for")
	flags.StringVar(&o.baseline, "baseline", "", "`FILE` of findings to set aside until its last day")
	flags.BoolVar(&o.writeBaseline, "write-baseline", false, "make that file; if it is there, take out what is mended")
	flags.BoolVar(&o.all, "all", false, "print every key to measure, not only the first")
	addFormat(cmd, &o.formats, report.CheckForms)
	addColour(cmd, &o.colour)
	complete(cmd, "fail-on", config.FailLevels...)
	completeWith(cmd, "only", ruleList)
	completeWith(cmd, "skip", ruleList)
	completeFiles(cmd, "config", "as")
	completeFolders(cmd, "rules")
	return cmd
}

func runCheck(cmd *cobra.Command, o checkOptions, paths []string) error {
	date, err := parseDay(o.on)
	if err != nil {
		return err
	}
	outputs, err := outputs(o.formats, report.CheckForms)
	if err != nil {
		return err
	}
	style, err := styleFor(o.colour)
	if err != nil {
		return err
	}
	choice, err := choiceOf(o)
	if err != nil {
		return err
	}
	if len(paths) == 0 {
		paths = []string{"."}
	}
	calls, err := findCalls(cmd, o, paths)
	if err != nil {
		return err
	}
	defer calls.close()
	shown := showProgress(cmd, "judging")
	defer shown.end()
	judge := judging{cmd.Context(), choice, date, shown.step}
	rules := judge.rules(calls.now)
	before := judge.before(calls.change, rules)
	now, err := judge.state(calls.now, rules)
	if err != nil {
		return err
	}
	if err := o.cover(cmd, now); err != nil {
		return err
	}
	if calls.change != nil {
		if err := o.compare(calls.change, before, now); err != nil {
			return err
		}
	}
	specs, fail := now.specs, now.specs.Config.Fails(choice)
	check := &report.Check{
		Report: now.Report, Version: version(), Config: specs.Config.Name, ConfigDigest: specs.Config.Digest,
		FailOn: string(fail), Strict: o.strict, Rules: len(now.Asked), Skipped: specs.Skipped, Unread: specs.Unread,
	}
	style.All, style.Shown = o.all, shownFrom(specs.Tree.Root)
	shown.end()
	if err := write(cmd, outputs, check, style); err != nil {
		return err
	}
	return judged(check, fail)
}

// begin starts what can be done meanwhile. The function that it returns waits for
// the end.
func begin[T any](do func() (T, error)) (wait func() (T, error)) {
	var result T
	var err error
	done := make(chan struct{})
	go func() {
		defer close(done)
		result, err = do()
	}()
	return func() (T, error) {
		<-done
		return result, err
	}
}

// choiceOf reads the flags that choose rules.
func choiceOf(o checkOptions) (config.Choice, error) {
	choice := config.Choice{Only: o.only, Skip: o.skip, Schema: document.Schema}
	if o.failOn != "" {
		level, err := config.ParseFailLevel(o.failOn)
		if err != nil {
			return choice, callErrorf("--fail-on: %w", err)
		}
		choice.FailOn = level
	}
	for _, name := range o.rules {
		folder, err := os.OpenRoot(name) // no link leads out of it
		if err != nil || !config.HoldsRules(folder.FS()) {
			return choice, callErrorf("--rules %s: no rule in it; give a folder with rules NAME.rego", name)
		}
		choice.Rules = append(choice.Rules, policies.Folder{Name: name, FS: folder.FS()})
	}
	return choice, nil
}

// parseDay reads a day; without one it is today.
func parseDay(text string) (time.Time, error) {
	if text == "" {
		return time.Parse(time.DateOnly, time.Now().Format(time.DateOnly))
	}
	day, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return day, callErrorf("--on %s: this is no day; write it as 2027-04-01", text)
	}
	return day, nil
}

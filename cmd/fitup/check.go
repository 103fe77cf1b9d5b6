package main

import (
	"os"
	"time"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/policies"
	"fitup/policies/config"
	"fitup/policies/judge"
	"fitup/spec/document"
)

type checkOptions struct {
	on, failOn, config, colour string
	only, skip, rules, formats []string
	strict, all                bool
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
Without a PATH it is the folder that you are in.

What a rule could not tell, because a figure is not written, is never a pass:
the report lists what to measure, and what waits for it.

Exit codes: 0 nothing at or above the fail level, 1 findings, 2 a spec or the
call is wrong, 3 a rule is broken. See "fitup help exit-codes".`,
		Example: `  fitup check
  fitup check cars/blue.toml --only fuel,lines
  fitup check cars --fail-on danger --format text --format json=report.json
  fitup check cars --on 2027-04-01`,
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
	flags.BoolVar(&o.all, "all", false, "print every key to measure, not only the first")
	addFormat(cmd, &o.formats, report.CheckForms)
	addColour(cmd, &o.colour)
	complete(cmd, "fail-on", config.FailLevels...)
	completeWith(cmd, "only", ruleNames)
	completeWith(cmd, "skip", ruleNames)
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
	specs, err := fleet.Open(paths, o.config)
	if err != nil {
		return err
	}
	engine, err := specs.Config.Engine(cmd.Context(), choice)
	if err != nil {
		return err
	}
	run := judge.Run{
		Engine: engine, Outfit: specs.Outfit, Date: date, Fleet: specs.Fleet,
		Whole: specs.Whole && len(choice.Only)+len(choice.Skip)+len(specs.Config.Skip) == 0,
	}
	found, err := run.Judge(cmd.Context(), specs.Compositions)
	if err != nil {
		return err
	}
	found.Read, found.Problems, found.Notes = specs.Read, specs.Problems, specs.Notes
	found.Taken = specs.Config.Taken(engine, choice)
	fail := specs.Config.Fails(choice)
	check := &report.Check{
		Report: found, Version: version(), Config: specs.Config.Name, ConfigDigest: specs.Config.Digest,
		FailOn: string(fail), Strict: o.strict, Rules: len(engine.Rules()), Skipped: specs.Skipped, Unread: specs.Unread,
	}
	style.All, style.Shown = o.all, shownFrom(specs.Tree.Root)
	if err := write(cmd, outputs, check, style); err != nil {
		return err
	}
	return judged(check, fail)
}

// choiceOf reads the flags that choose rules.
func choiceOf(o checkOptions) (config.Choice, error) {
	choice := config.Choice{Only: o.only, Skip: o.skip, Schema: document.Schema()}
	if o.failOn != "" {
		level, err := config.ParseFailLevel(o.failOn)
		if err != nil {
			return choice, callErrorf("--fail-on: %w", err)
		}
		choice.FailOn = level
	}
	for _, name := range o.rules {
		folder := os.DirFS(name)
		if !config.HoldsRules(folder) {
			return choice, callErrorf("--rules %s: no rule in it; give a folder with rules NAME.rego", name)
		}
		choice.Rules = append(choice.Rules, policies.Folder{Name: name, FS: folder})
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

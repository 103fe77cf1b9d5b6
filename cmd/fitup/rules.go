package main

import (
	"cmp"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/nearest"
)

type rulesOptions struct {
	colour, config string
	rules, formats []string
}

func newRules() *cobra.Command {
	var o rulesOptions
	cmd := &cobra.Command{
		Use:   "rules [RULE|AREA]",
		Short: "List the rules, or print one in full",
		Long: `Rules lists the rules with their level, and prints one in full: why it is there,
what it judges and when, its limits and where they are from, and what to do.

An AREA lists the rules in it. RULE is the id that a finding ends with, in
brackets. What the configuration of this folder sets or skips is told.`,
		Example: `  fitup rules
  fitup rules fuel
  fitup rules fittings.seat_angle`,
		Args:              arguments(0, 1),
		ValidArgsFunction: allRuleNames,
		RunE:              func(cmd *cobra.Command, args []string) error { return runRules(cmd, o, args) },
	}
	cmd.Flags().StringVar(&o.config, "config", "", "configuration `FILE`, or none\n(default the nearest .fitup.toml upward)")
	cmd.Flags().StringArrayVar(&o.rules, "rules", nil, "`DIR` with rules of your own; may be given several times")
	addFormat(cmd, &o.formats, report.RulesForms)
	addColour(cmd, &o.colour)
	completeFiles(cmd, "config")
	completeFolders(cmd, "rules")
	return cmd
}

func runRules(cmd *cobra.Command, o rulesOptions, args []string) error {
	outputs, err := outputs(o.formats, report.RulesForms)
	if err != nil {
		return err
	}
	style, err := styleFor(o.colour)
	if err != nil {
		return err
	}
	choice, err := choiceOf(checkOptions{rules: o.rules})
	if err != nil {
		return err
	}
	set, err := fleet.Configuration(".", o.config)
	if err != nil {
		return err
	}
	all := *set
	all.Skip = nil // what is skipped is listed too
	engine, err := all.Engine(cmd.Context(), choice)
	if err != nil {
		return err
	}
	rules := append(engine.Rules(), judge.Own()...)
	slices.SortFunc(rules, func(a, b *policies.Rule) int { return strings.Compare(a.ID, b.ID) })
	broken := brokenRules(cmd, engine)
	list := &report.Rules{Rules: rules}
	if len(args) == 1 {
		if list, err = selectRules(rules, args[0]); err != nil {
			return cmp.Or(broken, err) // the rule may be one that is broken
		}
	}
	list.Config = set.Name
	list.Skipped = func(r *policies.Rule) bool {
		return slices.Contains(set.Skip, r.ID) || slices.Contains(set.Skip, r.Area)
	}
	if err := write(cmd, outputs, list, style); err != nil {
		return err
	}
	return broken
}

// selectRules finds the rule of an id, or of one that it had before, or the
// rules of an area.
func selectRules(rules []*policies.Rule, name string) (*report.Rules, error) {
	var names []string
	area := &report.Rules{}
	for _, r := range rules {
		if r.ID == name || slices.Contains(r.Formerly, name) {
			return &report.Rules{Rules: []*policies.Rule{r}, Full: true}, nil
		}
		if r.Area == name {
			area.Rules = append(area.Rules, r)
		}
		names = append(names, r.ID, r.Area)
	}
	if len(area.Rules) > 0 {
		return area, nil
	}
	if near := nearest.To(name, names); near != "" {
		return nil, callErrorf("no rule or area is called %q; did you mean %s?", name, near)
	}
	return nil, callErrorf("no rule or area is called %q; `fitup rules` lists them", name)
}

// brokenRules tells of own rules that were left out.
func brokenRules(cmd *cobra.Command, engine *policies.Engine) error {
	faults := engine.Faults()
	for _, f := range faults {
		cmd.PrintErrln(f.Message)
	}
	if len(faults) > 0 {
		return outcome(exitTool)
	}
	return nil
}

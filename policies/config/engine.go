package config

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/nearest"
	"fitup/spec/source"
	"fitup/spec/unit"
)

// A Choice is what the flags of a call choose, on top of the configuration.
type Choice struct {
	FailOn     FailLevel // "" leaves it to the configuration
	Only, Skip []string
	Rules      []policies.Folder
	Schema     func() []byte // of the document, for the workshop's own rules
}

// A NameError is a flag that names no rule.
type NameError struct{ Flag, Name, Want string }

func (e NameError) Error() string {
	return fmt.Sprintf("--%s %s: no rule or area is called so; %s", e.Flag, e.Name, e.Want)
}

// Fails is the fail level that holds.
func (c *Config) Fails(choice Choice) FailLevel {
	for _, level := range []FailLevel{choice.FailOn, c.FailOn} {
		if level != "" {
			return level
		}
	}
	return Usual
}

// Engine makes the rules that the configuration and a choice leave. An error of
// type Problems or NameError is the author's; any other is the tool's.
func (c *Config) Engine(ctx context.Context, choice Choice) (*policies.Engine, error) {
	own := policies.Options{Schema: choice.Schema, Own: slices.Concat(c.Rules, choice.Rules)}
	wanted := own
	wanted.Only, wanted.Skip, wanted.Limits = choice.Only, slices.Concat(c.Skip, choice.Skip), c.Limits
	engine, err := policies.New(ctx, wanted)
	if err == nil {
		return engine, nil
	}
	// Names and limits can only be wrong against the rules that there are.
	all, bad := policies.New(ctx, own)
	if bad != nil {
		return nil, bad
	}
	if wrong := c.wrong(all.Rules(), choice); wrong != nil {
		return nil, wrong
	}
	return nil, err
}

// wrong tells which names and limits do not fit the rules.
func (c *Config) wrong(rules []*policies.Rule, choice Choice) error {
	for i, names := range [][]string{choice.Only, choice.Skip} {
		for _, name := range names {
			if want := wantRule(name, rules); want != "" {
				return NameError{[]string{"only", "skip"}[i], name, want}
			}
		}
	}
	var problems []source.Problem
	for i, name := range c.Skip {
		if want := wantRule(name, rules); want != "" {
			path := fmt.Sprintf("skip.%d", i)
			problems = append(problems, source.Problem{Path: path, Span: c.file.Find(path), Want: want,
				Message: fmt.Sprintf("no rule or area is called %q", name)})
		}
	}
	for _, name := range slices.Sorted(maps.Keys(c.Limits)) {
		if p, bad := c.wrongLimit(name, rules); bad {
			problems = append(problems, p)
		}
	}
	return c.place(problems)
}

func (c *Config) wrongLimit(name string, rules []*policies.Rule) (source.Problem, bool) {
	path := "limits." + name
	p := source.Problem{Path: path, Span: c.file.Find(path)}
	limit, names := limitOf(name, rules)
	if limit == nil {
		p.Span, _ = c.file.Key(path)
		p.Message = fmt.Sprintf("no rule has a limit %s", name)
		p.Want = "`fitup rules AREA.RULE` shows the limits of a rule"
		if near := nearest.To(name, names); near != "" {
			p.Want = fmt.Sprintf("did you mean %s?", near)
		}
		return p, true
	}
	_, err := unit.Parse(c.Limits[name], limit.Dimension())
	if bad, ok := err.(*unit.Error); ok {
		p.Message, p.Want = bad.Problem, bad.Want
		if bad.End > bad.Start {
			p.Span = c.file.Word(path, bad.Start, bad.End)
		}
		return p, true
	}
	return p, false
}

// limitOf finds a limit by AREA.RULE.NAME, else the names of all.
func limitOf(name string, rules []*policies.Rule) (*policies.Limit, []string) {
	var names []string
	for _, r := range rules {
		for _, short := range slices.Sorted(maps.Keys(r.Limits)) {
			if name == r.ID+"."+short {
				limit := r.Limits[short]
				return &limit, nil
			}
			names = append(names, r.ID+"."+short)
		}
	}
	return nil, names
}

// wantRule is what would be right in place of a name that is of no rule and no
// area; "" if it is of one.
func wantRule(name string, rules []*policies.Rule) string {
	var names []string
	for _, r := range rules {
		if name == r.ID || name == r.Area {
			return ""
		}
		names = append(names, r.ID, r.Area)
	}
	for _, r := range judge.Own() {
		if name == r.ID || name == r.Area {
			return "it is the tool's own and always asked"
		}
	}
	if near := nearest.To(name, names); near != "" {
		return fmt.Sprintf("did you mean %s?", near)
	}
	return "`fitup rules` lists them"
}

// Taken is what the configuration and a choice take away from a judgement by an
// engine that was made of them.
func (c *Config) Taken(e *policies.Engine, choice Choice) judge.Taken {
	from := c.Name
	taken := judge.Taken{Only: said(choice.Only, "--only")}
	for _, l := range e.Loosened() {
		if l.Looser {
			taken.Loosened = append(taken.Loosened, l)
		}
	}
	taken.Skipped = slices.Concat(said(c.Skip, from), said(choice.Skip, "--skip"))
	taken.Excluded = said(c.Exclude, from)
	switch level := c.Fails(choice); {
	case !level.BelowUsual():
	case choice.FailOn != "":
		taken.FailOn = fmt.Sprintf("%s (--fail-on)", level)
	default:
		taken.FailOn = fmt.Sprintf("%s (%s)", level, from)
	}
	return taken
}

// said adds to each name who said it.
func said(names []string, who string) []string {
	var all []string
	for _, name := range names {
		all = append(all, fmt.Sprintf("%s (%s)", name, strings.TrimSpace(who)))
	}
	return all
}

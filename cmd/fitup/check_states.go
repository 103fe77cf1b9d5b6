package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"time"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"fitup/cmd/fitup/fleet"
	"fitup/policies"
	"fitup/policies/config"
	"fitup/policies/judge"
	"fitup/spec/source"
)

// calls are what a check is about: specs in one state, or in two.
type calls struct {
	now    *fleet.Call
	change *fleet.Change // nil for one state
	close  func()
}

// standardInput is the path for a text on standard input.
const standardInput = "-"

// findCalls finds the specs that the flags and paths of a call are about.
func findCalls(cmd *cobra.Command, o checkOptions, paths []string) (*calls, error) {
	c := &calls{close: func() {}}
	typed := paths[0] == standardInput
	var err error
	switch {
	case typed != (o.as != ""):
		return nil, callErrorf("a text on standard input needs a file that it is for; write: fitup check - --as FILE")
	case typed && (len(paths) > 1 || o.staged || o.since != ""):
		return nil, callErrorf("a text on standard input is judged by itself; leave out other paths, --staged and --since")
	case o.writeBaseline && o.baseline == "":
		return nil, callErrorf("--write-baseline needs a file; write: --baseline FILE --write-baseline")
	case o.writeBaseline && (typed || o.staged || o.since != ""):
		return nil, callErrorf("--write-baseline is about the work tree; leave out standard input, --staged and --since")
	case typed:
		if in, ok := cmd.InOrStdin().(*os.File); ok && term.IsTerminal(int(in.Fd())) {
			fmt.Fprintln(cmd.ErrOrStderr(), "fitup: type a spec, and end it with Ctrl-D")
		}
		c.now, err = fleet.FindTyped(o.as, cmd.InOrStdin(), o.config)
	case o.since != "":
		change, bad := fleet.FindChange(paths, o.config, o.since, o.staged)
		if change != nil {
			c.close = func() { change.Close() }
			c.now, c.change = change.After, change
		}
		err = bad
	case o.staged:
		call, repository, bad := fleet.FindStaged(paths, o.config)
		if repository != nil {
			c.close = func() { repository.Close() }
		}
		c.now, err = call, bad
	default:
		c.now, err = fleet.Find(paths, o.config)
	}
	if err != nil {
		c.close()
		return nil, err
	}
	return c, nil
}

// A state is what is found in one state of the specs.
type state struct {
	*judge.Report
	specs  *fleet.Selection
	engine *policies.Engine
	whole  bool // every car and driveline was judged by every rule
}

// judging is what states are judged by. States are judged side by side.
type judging struct {
	ctx    context.Context
	choice config.Choice
	date   time.Time
	heard  func() // called for each that is judged
}

// rules begins to make the rules of a call.
func (j judging) rules(call *fleet.Call) func() (*policies.Engine, error) {
	return begin(func() (*policies.Engine, error) { return call.Config.Engine(j.ctx, j.choice) })
}

// before begins to judge the state before a change, if there is one.
func (j judging) before(change *fleet.Change, rules func() (*policies.Engine, error)) func() (*state, error) {
	if change == nil {
		return nil
	}
	if !change.SameRules {
		rules = j.rules(change.Before)
	}
	return begin(func() (*state, error) { return j.state(change.Before, rules) })
}

// state reads and judges the specs of a call by rules that are made meanwhile.
func (j judging) state(call *fleet.Call, rules func() (*policies.Engine, error)) (*state, error) {
	run := judge.Run{Date: j.date, Heard: j.heard}
	sitting := run.Start(j.ctx, rules)
	specs, err := call.Each(sitting.Add)
	if err != nil {
		return nil, err
	}
	s := &state{specs: specs}
	s.whole = specs.Whole && len(j.choice.Only)+len(j.choice.Skip)+len(specs.Config.Skip) == 0
	run.Fleet, run.Whole = specs.Fleet, s.whole
	if s.Report, err = sitting.Report(); err != nil {
		return nil, err
	}
	s.engine = run.Engine
	s.Read, s.Problems, s.Notes = specs.Read, specs.Problems, specs.Notes
	s.Take(specs.Config.Taken(s.engine, j.choice))
	for _, folder := range specs.Without {
		s.Taken.Excluded = append(s.Taken.Excluded, folder+" (a repository of its own)")
	}
	return s, nil
}

// compare waits for the state before a change, and tells what became of it.
func (o checkOptions) compare(change *fleet.Change, wait func() (*state, error), now *state) error {
	before, err := wait()
	if err != nil {
		if _, wrong := errors.AsType[config.Problems](err); wrong {
			return callErrorf("at %s: %w; choose another configuration with --config, or none", change.Since, err)
		}
		return err
	}
	if o.baseline != "" {
		switch b, err := readBaseline(before, o.baseline); {
		case err == nil:
			b.Apply(before.Report, false, before.specs.Gone)
		case !errors.Is(err, fs.ErrNotExist):
			return callErrorf("--baseline %s, at %s: %w", o.baseline, change.Since, err)
		}
	}
	now.Change = judge.Compare(before.Report, now.Report, judge.Comparison{
		Since: change.Since, Moved: change.Moved, NotBefore: before.specs.Skipped, NotNow: now.specs.Skipped,
	})
	return nil
}

// cover sets aside what the baseline covers, and writes the baseline if that is
// wanted.
func (o checkOptions) cover(cmd *cobra.Command, now *state) error {
	if o.baseline == "" {
		return nil
	}
	b, err := readBaseline(now, o.baseline)
	missing := errors.Is(err, fs.ErrNotExist)
	switch {
	case missing && o.writeBaseline:
		b = judge.NewBaseline(now.specs.NameOf(o.baseline), now.Report)
	case missing:
		return callErrorf("--baseline %s: there is no such file; --write-baseline makes it", o.baseline)
	case err != nil:
		return callErrorf("--baseline %s: %w", o.baseline, err)
	}
	listed := len(b.Last)
	b.Apply(now.Report, now.whole, now.specs.Gone)
	if !o.writeBaseline {
		return nil
	}
	if err := writeFile(o.baseline, b.Text()); err != nil {
		return callErrorf("%w; give --baseline a file that can be written", err)
	}
	now.Findings = judge.WithoutStale(now.Findings)
	what := fmt.Sprintf("%d taken out", listed-len(b.Last))
	if missing {
		what = "dangers are not in it"
	}
	fmt.Fprintf(cmd.ErrOrStderr(), "fitup: %s: %d findings until %s; %s\n", o.baseline, len(b.Last), b.Until.Format(time.DateOnly), what)
	return nil
}

// readBaseline reads a baseline as it is in the state of the specs, if it is
// below their root.
func readBaseline(s *state, file string) (*judge.Baseline, error) {
	name := s.specs.NameOf(file)
	var text []byte
	var err error
	if fs.ValidPath(name) {
		text, err = s.specs.Tree.Read(name)
	} else {
		text, err = os.ReadFile(file)
	}
	if err != nil {
		return nil, err
	}
	if len(text) > source.MaxSize {
		return nil, fmt.Errorf("a baseline has at most %d bytes; mend some of the findings first", source.MaxSize)
	}
	return judge.ReadBaseline(name, text)
}

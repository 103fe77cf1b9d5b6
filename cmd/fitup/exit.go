package main

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"time"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/policies/config"
)

// Exit codes. The highest that applies is given.
const (
	exitGood     = iota // nothing at or above the fail level
	exitFindings        // findings; with --strict also what could not be told
	exitInput           // a spec or the call is wrong
	exitTool            // the tool failed: a rule is broken
)

// exitInterrupted is the exit code of what Ctrl-C ended, as shells give it for a
// program that SIGINT ended.
const exitInterrupted = 128 + 2

// A callError is a call that cannot be carried out as it was made.
type callError struct{ error }

func callErrorf(format string, args ...any) error { return callError{fmt.Errorf(format, args...)} }

// An outcome is the exit code of a run that has printed all there is to say.
type outcome int

func (o outcome) Error() string { return fmt.Sprintf("exit code %d", int(o)) }

// codeOf is the one place where errors become exit codes.
func codeOf(err error) int {
	if err == nil {
		return exitGood
	}
	if o, ok := errors.AsType[outcome](err); ok {
		return int(o)
	}
	if errors.Is(err, context.Canceled) {
		return exitInterrupted
	}
	if _, ok := errors.AsType[callError](err); ok {
		return exitInput
	}
	if _, ok := errors.AsType[fleet.CallError](err); ok {
		return exitInput
	}
	if _, ok := errors.AsType[config.NameError](err); ok {
		return exitInput
	}
	if _, ok := errors.AsType[config.Problems](err); ok {
		return exitInput
	}
	return exitTool
}

// judged is the outcome of a check.
func judged(c *report.Check, fail config.FailLevel) error {
	code := exitGood
	switch {
	case len(c.Faults) > 0:
		code = exitTool
	case len(c.Problems)+len(c.Unread) > 0:
		code = exitInput
	case fail.Fails(c.Worst()), c.Strict && len(c.Measures)+len(c.Notes) > 0:
		code = exitFindings
	default:
		return nil
	}
	return outcome(code)
}

// run runs a command and returns the exit code. When ctx ends it does not wait
// for the command, which may be amid a long step: what is being written is written,
// and what is shown of its progress is taken back.
func run(ctx context.Context, root *cobra.Command) int {
	ended := make(chan int, 1)
	go func() { ended <- execute(ctx, root) }()
	select {
	case code := <-ended:
		return code
	case <-ctx.Done():
	}
	files.close()
	select {
	case <-ended:
	case <-time.After(200 * time.Millisecond):
	}
	return exitInterrupted
}

func execute(ctx context.Context, root *cobra.Command) int {
	out := &printed{Writer: root.OutOrStdout()}
	root.SetOut(out)
	err := root.ExecuteContext(ctx)
	err = cmp.Or(err, out.err)
	if _, said := errors.AsType[outcome](err); err != nil && !said && ctx.Err() == nil {
		printError(root.ErrOrStderr(), err)
	}
	return codeOf(err)
}

// A printed is standard output that knows whether all was written: who prints help
// does not ask.
type printed struct {
	io.Writer
	err error // the first
}

func (p *printed) Write(text []byte) (int, error) {
	n, err := p.Writer.Write(text)
	p.err = cmp.Or(p.err, err)
	return n, err
}

// isTerminal reports whether what is written is for a terminal.
func isTerminal(w io.Writer) bool {
	if p, is := w.(*printed); is {
		w = p.Writer
	}
	file, is := w.(*os.File)
	return is && term.IsTerminal(int(file.Fd()))
}

// printError says what is wrong: with a file, as lines that editors follow.
func printError(w io.Writer, err error) {
	problems, ok := errors.AsType[config.Problems](err)
	if !ok {
		fmt.Fprintln(w, "fitup:", report.Plain(err.Error()))
		return
	}
	shown := shownFrom(problems.Root)
	for _, p := range problems.List {
		p.File = shown(p.File)
		fmt.Fprintln(w, report.Plain(p.Error()))
	}
}

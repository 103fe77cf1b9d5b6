package main

import (
	"context"
	"io"
	"os"
	"sync"
	"sync/atomic"
	"time"

	"github.com/schollz/progressbar/v3"
	"github.com/spf13/cobra"
	"golang.org/x/term"
)

// When progress is shown, and how often it moves.
const (
	longRun  = time.Second
	spinTime = 100 * time.Millisecond
)

// A progress says on the terminal that a long run goes on, and how many cars and
// drivelines it has judged. Nothing of it stays.
type progress struct {
	judged atomic.Int64
	finish func()
}

// showProgress begins to show progress on standard error, if that is a terminal
// which can take a line back. End it before anything is printed.
func showProgress(cmd *cobra.Command) *progress {
	p := &progress{finish: func() {}}
	if screen, ok := cmd.ErrOrStderr().(*os.File); ok && term.IsTerminal(int(screen.Fd())) && os.Getenv("TERM") != "dumb" {
		p.show(cmd.Context(), screen)
	}
	return p
}

func (p *progress) show(ctx context.Context, screen io.Writer) {
	ctx, stop := context.WithCancel(ctx)
	var shown sync.WaitGroup
	shown.Go(func() { p.spin(ctx, screen) })
	p.finish = func() {
		stop()
		shown.Wait()
	}
}

// spin shows progress until ctx ends, and takes it back.
func (p *progress) spin(ctx context.Context, screen io.Writer) {
	select {
	case <-ctx.Done():
		return
	case <-time.After(longRun):
	}
	bar := progressbar.NewOptions64(-1, progressbar.OptionSetWriter(screen), progressbar.OptionSetDescription("fitup: judging"),
		progressbar.OptionSpinnerType(9), progressbar.OptionShowCount(), progressbar.OptionUseANSICodes(true))
	ticker := time.NewTicker(spinTime)
	defer ticker.Stop()
	for {
		_ = bar.Set64(p.judged.Load()) // a terminal that is gone
		select {
		case <-ctx.Done():
			_ = bar.Clear()
			return
		case <-ticker.C:
		}
	}
}

// step counts one car or driveline more.
func (p *progress) step() { p.judged.Add(1) }

// end takes what is shown back.
func (p *progress) end() { p.finish() }

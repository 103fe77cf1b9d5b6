package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"sync"
	"sync/atomic"
	"time"

	"github.com/schollz/progressbar/v3"
	"github.com/spf13/cobra"
)

// When progress is shown, and how often it moves.
const (
	longRun  = time.Second
	spinTime = 100 * time.Millisecond
)

// A progress says on the terminal that a long run goes on, and with how many cars
// and drivelines it is done. Nothing of it stays.
type progress struct {
	doing  string
	done   atomic.Int64
	finish func()
}

// showProgress begins to show that something is being done on standard error, if that
// is a terminal which can take a line back. End it before anything is printed.
func showProgress(cmd *cobra.Command, doing string) *progress {
	p := &progress{doing: doing, finish: func() {}}
	if screen := cmd.ErrOrStderr(); isTerminal(screen) && os.Getenv("TERM") != "dumb" {
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
	bar := progressbar.NewOptions64(-1, progressbar.OptionSetWriter(screen), progressbar.OptionSpinnerType(9), progressbar.OptionUseANSICodes(true),
		progressbar.OptionSetSpinnerChangeInterval(0)) // or it moves by itself, also when it is taken back
	ticker := time.NewTicker(spinTime)
	defer ticker.Stop()
	for {
		bar.Describe(p.text())
		select {
		case <-ctx.Done():
			_ = bar.Clear() // its error is that of a terminal that is gone
			return
		case <-ticker.C:
		}
	}
}

func (p *progress) text() string {
	if done := p.done.Load(); done > 0 {
		return fmt.Sprintf("fitup: %s, %d done", p.doing, done)
	}
	return "fitup: " + p.doing
}

// step counts one car or driveline more.
func (p *progress) step() { p.done.Add(1) }

// end takes what is shown back.
func (p *progress) end() { p.finish() }

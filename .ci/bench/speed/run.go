package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"syscall"
	"time"

	"golang.org/x/perf/benchmath"
)

// A call is one run of a program, as a whole process.
type call struct {
	argv   []string
	env    []string  // beside the environment
	output io.Writer // of standard output; nil for nowhere
}

// A cost is what a call took.
type cost struct {
	wall time.Duration
	cpu  time.Duration // on all cores, for user and system
	peak int64         // bytes resident at most
}

// run makes the call. Exit code 1 is no error: it says that something was found.
func (c call) run(ctx context.Context) (cost, error) {
	cmd := exec.CommandContext(ctx, c.argv[0], c.argv[1:]...)
	cmd.Env = append(os.Environ(), c.env...)
	cmd.Stdout = c.output
	var said bytes.Buffer
	cmd.Stderr = &said
	start := time.Now()
	err := cmd.Run()
	wall := time.Since(start)
	if exit, ok := errors.AsType[*exec.ExitError](err); err != nil && !(ok && exit.ExitCode() == 1 && said.Len() == 0) {
		return cost{}, fmt.Errorf("%s: %w\n%s", strings.Join(c.argv, " "), err, said.Bytes())
	}
	used := cmd.ProcessState
	return cost{
		wall: wall,
		cpu:  used.UserTime() + used.SystemTime(),
		peak: used.SysUsage().(*syscall.Rusage).Maxrss * 1024, // Linux counts in KiB
	}, nil
}

// alternate makes the calls in turn, so many times, so that what else the machine
// does falls on all of them alike. It returns what each took.
func alternate(ctx context.Context, times int, calls ...call) ([][]cost, error) {
	costs := make([][]cost, len(calls))
	for range times {
		for i, c := range calls {
			took, err := c.run(ctx)
			if err != nil {
				return nil, err
			}
			costs[i] = append(costs[i], took)
		}
	}
	return costs, nil
}

// median is the middle one of what calls took, with the bounds that it lies in at 95 in
// 100, which need six calls or more.
func median(costs []cost, of func(cost) float64) benchmath.Summary {
	values := make([]float64, len(costs))
	for i, each := range costs {
		values[i] = of(each)
	}
	return benchmath.AssumeNothing.Summary(benchmath.NewSample(values, &benchmath.DefaultThresholds), 0.95)
}

func wall(c cost) float64 { return c.wall.Seconds() }
func cpu(c cost) float64  { return c.cpu.Seconds() }
func peak(c cost) float64 { return float64(c.peak) }

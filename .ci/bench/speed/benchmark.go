package main

import (
	"bytes"
	"context"
	"fmt"
	"time"

	"golang.org/x/perf/benchfmt"
)

// A benchmark is one of fitup's own Go benchmarks, in a test program.
type benchmark struct {
	program, name string
	env           string // what tells it what to measure with
}

type result struct{ *benchfmt.Result }

// run measures once.
func (b benchmark) run(ctx context.Context) (result, error) {
	var text bytes.Buffer
	c := call{
		argv:   []string{b.program, "-test.run", "^$", "-test.bench", "^Benchmark" + b.name + "$", "-test.benchtime", "1x"},
		env:    []string{b.env},
		output: &text,
	}
	if _, err := c.run(ctx); err != nil {
		return result{}, err
	}
	reader := benchfmt.NewReader(&text, b.name)
	for reader.Scan() {
		if r, ok := reader.Result().(*benchfmt.Result); ok {
			return result{r.Clone()}, nil
		}
	}
	return result{}, fmt.Errorf("no result of Benchmark%s in %s", b.name, b.program)
}

// time is a value of the result that is in seconds.
func (r result) time(unit string) time.Duration {
	seconds, _ := r.Value(unit)
	return time.Duration(seconds * float64(time.Second))
}

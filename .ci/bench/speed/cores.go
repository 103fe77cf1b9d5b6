package main

import (
	"context"
	"fmt"
	"os"
	"runtime"
	"sync"
	"sync/atomic"
)

// cores tells what a second core gains for a fleet, beside what it gains for a loop
// that does nothing but allocate: no machine gives twice.
func (b *bench) cores(ctx context.Context) ([]row, error) {
	self, err := os.Executable()
	if err != nil {
		return nil, err
	}
	fleet, err := b.fleet(b.size.cores)
	if err != nil {
		return nil, err
	}
	var calls []call
	for _, c := range []call{b.check(fleet), {argv: []string{self, loopWord}}} {
		for _, cores := range []string{"1", "2"} {
			c.env = []string{"GOMAXPROCS=" + cores}
			calls = append(calls, c)
		}
	}
	costs, err := alternate(ctx, b.size.long, calls...)
	if err != nil {
		return nil, err
	}
	gain := func(one, two []cost) float64 { return median(one, wall).Center / median(two, wall).Center }
	checking, loop := gain(costs[0], costs[1]), gain(costs[2], costs[3])
	return []row{
		{part: "d", what: "the second core makes an allocating loop faster", figure: fmt.Sprintf("%.2f times", loop)},
		{part: "d", what: fmt.Sprintf("the second core makes `fitup check` of %d cars faster", b.size.cores), figure: fmt.Sprintf("%.2f times", checking)},
		atLeast("d", "the second as a part of the first", "%.2f", checking/loop, 0.8),
	}, nil
}

// loopWord is the argument that makes this program the allocating loop.
const loopWord = "allocating-loop"

// allocatingLoop makes small maps on all the cores that it may use. It keeps the last
// of them, as a program does that is at work on something: with next to nothing
// kept, garbage is collected all the time and a second core only gets in the way.
func allocatingLoop() {
	const maps, keys, kept = 12000, 1000, 500
	var wait sync.WaitGroup
	var next atomic.Int64
	var last [kept]atomic.Pointer[map[int][]byte]
	for range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			for n := next.Add(1); n <= maps; n = next.Add(1) {
				made := map[int][]byte{}
				for key := range keys {
					made[key] = make([]byte, 64)
				}
				last[n%kept].Store(&made)
			}
		})
	}
	wait.Wait()
}

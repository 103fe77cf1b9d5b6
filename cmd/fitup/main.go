// Fitup checks the written specs of competition cars. See `fitup help`.
package main

import (
	"context"
	"os"
	"os/signal"
	"runtime"
	"runtime/debug"
)

func main() {
	delayCollection()
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	code := run(ctx, newRoot())
	stop()
	os.Exit(code)
}

// delayCollection lets the heap grow to 96 MiB before garbage is collected for the
// first time: a run over a few cars ends before. From then on the pace is Go's own,
// so that a large fleet takes no more memory than it would.
func delayCollection() {
	const leastHeap = 4 << 20 // at 100 per cent
	debug.SetGCPercent(100 * (96 << 20) / leastHeap)
	runtime.AddCleanup(new([64]byte), func(usual int) { debug.SetGCPercent(usual) }, 100)
}

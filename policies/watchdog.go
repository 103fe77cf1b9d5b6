package policies

import (
	"context"
	"fmt"
	"runtime"
	"runtime/metrics"
	"time"
)

// A stopError says why something was stopped that would have gone on.
type stopError struct{ why string }

func (e stopError) Error() string { return e.why }

// watchHeap returns a context that ends when the heap has grown by so many bytes.
// What is garbage does not count: before it gives up it collects.
func watchHeap(ctx context.Context, growth uint64) (context.Context, context.CancelFunc) {
	ctx, cancel := context.WithCancelCause(ctx)
	limit := heapSize() + growth
	go func() {
		ticker := time.NewTicker(10 * time.Millisecond)
		defer ticker.Stop()
		for {
			select {
			case <-ctx.Done():
				return
			case <-ticker.C:
			}
			if heapSize() < limit {
				continue
			}
			if runtime.GC(); heapSize() >= limit {
				cancel(stopError{fmt.Sprintf("stopped after it took %d MiB of memory", growth>>20)})
				return
			}
		}
	}()
	return ctx, func() { cancel(nil) }
}

func heapSize() uint64 {
	sample := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	metrics.Read(sample)
	return sample[0].Value.Uint64()
}

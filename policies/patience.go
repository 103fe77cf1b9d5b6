package policies

import (
	"context"
	"time"
)

// grace is how long what was told to stop may take to do so. Some steps cannot be
// told: the comparison of two values that hold one another many times over is one
// step, and may outlast any patience.
const grace = time.Second

// patiently does something that ctx should end. It waits no longer than grace for
// that; what is done then goes on by itself, and its result is lost.
func patiently[T any](ctx context.Context, do func() (T, error)) (T, error) {
	type result struct {
		value T
		err   error
	}
	done := make(chan result, 1)
	go func() {
		value, err := do()
		done <- result{value, err}
	}()
	select {
	case r := <-done:
		return r.value, r.err
	case <-ctx.Done():
	}
	select {
	case r := <-done:
		return r.value, r.err
	case <-time.After(grace):
		var none T
		return none, context.Cause(ctx)
	}
}

// Fitup checks the written specs of competition cars. See `fitup help`.
package main

import (
	"context"
	"os"
	"os/signal"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	code := run(ctx, newRoot())
	stop()
	os.Exit(code)
}

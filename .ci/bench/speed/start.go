package main

import (
	"context"
	"strings"
)

// start tells how long the commands take that need no rule.
func (b *bench) start(ctx context.Context) ([]row, error) {
	var calls []call
	words := []string{"version", "help", "schema car", "completion bash", "new car"}
	for _, each := range words {
		calls = append(calls, call{argv: append([]string{b.fitup}, strings.Fields(each)...)})
	}
	costs, err := alternate(ctx, b.size.short, calls...)
	if err != nil {
		return nil, err
	}
	var rows []row
	for i, each := range words {
		rows = append(rows, atMost("e", "`fitup "+each+"`", "%.1f ms", 1000*median(costs[i], wall).Center, 15))
	}
	return rows, nil
}

package main

import (
	"context"
	"fmt"
	"path/filepath"
)

// oneCar compares the check of one car, as a whole process, with stock opa that is
// given the rules as a bundle and the car as a document.
func (b *bench) oneCar(ctx context.Context) ([]row, error) {
	var rows []row
	for _, name := range []string{"squall", "mizzle", "haar"} {
		spec := filepath.Join(b.repository, "cars", name+".toml")
		document := filepath.Join(b.scratch, name+".json")
		if err := b.document(ctx, spec, document); err != nil {
			return nil, err
		}
		costs, err := alternate(ctx, b.size.short,
			b.check(spec),
			call{argv: []string{b.opa, "eval", "--bundle", b.bundle, "--input", document, "data.fitup"}},
		)
		if err != nil {
			return nil, err
		}
		ours, theirs := median(costs[0], wall), median(costs[1], wall)
		label := func(command string, costs []cost) string {
			return fmt.Sprintf("`%s` of %s, %.0f ms of processor", command, name, 1000*median(costs, cpu).Center)
		}
		rows = append(rows,
			row{part: "a", what: label("opa eval", costs[1]), figure: seconds(theirs)},
			atMost("a", label("fitup check", costs[0]), "%.0f ms", 1000*ours.Center, 75),
			atMost("a", "the same as a part of `opa eval`", "%.2f", ours.Center/theirs.Center, 0.8),
		)
	}
	return rows, nil
}

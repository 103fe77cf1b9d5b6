package main

import (
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"slices"
)

// A grown is what one size of fleet took.
type grown struct {
	cars, told int     // how many, and what was told of them
	perCar     float64 // seconds
	peak       float64 // bytes
}

// growth tells how time and memory grow with a fleet.
func (b *bench) growth(ctx context.Context) ([]row, error) {
	var all []grown
	for _, cars := range b.size.growing {
		one, err := b.grow(ctx, cars)
		if err != nil {
			return nil, err
		}
		all = append(all, one)
	}
	return growthRows(all), nil
}

// grow measures one size, the small ones several times.
func (b *bench) grow(ctx context.Context, cars int) (grown, error) {
	folder, err := b.fleet(cars)
	if err != nil {
		return grown{}, err
	}
	times := max(1, b.size.growing[0]*b.size.long/cars)
	costs, err := alternate(ctx, times, b.check(folder))
	if err != nil {
		return grown{}, err
	}
	told, err := b.told(ctx, folder)
	if err != nil {
		return grown{}, err
	}
	return grown{cars, told, median(costs[0], wall).Center / float64(cars), median(costs[0], peak).Center}, os.RemoveAll(folder)
}

func growthRows(all []grown) []row {
	var rows []row
	var perCar []float64
	for _, g := range all {
		perCar = append(perCar, g.perCar)
		rows = append(rows, row{
			part: "c", what: fmt.Sprintf("%d cars: %d findings and cannot-tells", g.cars, g.told),
			figure: fmt.Sprintf("%.1f ms a car, at most %.0f MiB", 1000*g.perCar, g.peak/(1<<20)),
		})
	}
	first, last := all[0], all[len(all)-1]
	return append(rows,
		atMost("c", "time a car, the most of these by the least", "%.2f", slices.Max(perCar)/slices.Min(perCar), 1.15),
		atMost("c", fmt.Sprintf("memory that grows from %d to %d cars, a finding or cannot-tell", first.cars, last.cars),
			"%.1f KiB", (last.peak-first.peak)/float64(last.told-first.told)/1024, 4),
	)
}

// told counts the findings of a fleet, and what cannot be told of it.
func (b *bench) told(ctx context.Context, folder string) (int, error) {
	from, to := io.Pipe()
	asked := b.check(folder, "--format", "json")
	asked.output = to
	failed := make(chan error, 1)
	go func() {
		_, err := asked.run(ctx)
		to.Close()
		failed <- err
	}()
	var said struct {
		Findings, Waived []struct{}
		Measure          []struct{ Judgements int }
	}
	err := json.NewDecoder(from).Decode(&said)
	from.CloseWithError(err) // so that the program is not left writing
	if bad := <-failed; bad != nil {
		err = bad
	}
	all := len(said.Findings) + len(said.Waived)
	for _, m := range said.Measure {
		all += m.Judgements
	}
	return all, err
}

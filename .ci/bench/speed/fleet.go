package main

import (
	"bytes"
	"context"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"

	"golang.org/x/sync/errgroup"
)

// fleetAgainstStock compares a fleet, once as a whole process and once with the
// documents made already, with stock opa that is given those documents.
func (b *bench) fleetAgainstStock(ctx context.Context) ([]row, error) {
	folder, err := b.fleet(b.size.fleet)
	if err != nil {
		return nil, err
	}
	documents, err := b.documents(ctx, folder)
	if err != nil {
		return nil, err
	}
	judging := benchmark{program: b.policiesTest, name: "Documents", env: "FITUP_DOCUMENTS=" + documents}
	var alone []cost
	whole := make([][]cost, 2)
	for range b.size.long {
		turn, err := alternate(ctx, 1,
			b.check(folder),
			call{argv: []string{b.opa, "exec", "--bundle", b.bundle, "--decision", "fitup", documents}},
		)
		if err != nil {
			return nil, err
		}
		result, err := judging.run(ctx)
		if err != nil {
			return nil, err
		}
		for i := range whole {
			whole[i] = append(whole[i], turn[i]...)
		}
		alone = append(alone, cost{wall: result.time("sec/op")})
	}
	ours, theirs, judged := median(whole[0], wall), median(whole[1], wall), median(alone, wall)
	n := b.size.fleet
	rows := []row{
		{part: "b", what: fmt.Sprintf("`opa exec` of %d documents, %.1f s of processor", n, median(whole[1], cpu).Center), figure: seconds(theirs)},
		{part: "b", what: fmt.Sprintf("`fitup check` of %d cars, %.1f s of processor", n, median(whole[0], cpu).Center), figure: seconds(ours)},
		{part: "b", what: "judging their documents, read and compiled first", figure: seconds(judged)},
		atMost("b", "whole process as a part of `opa exec`", "%.2f", ours.Center/theirs.Center, 1.0),
		atMost("b", "judging alone as a part of `opa exec`", "%.2f", judged.Center/theirs.Center, 0.55),
	}
	split, err := benchmark{program: b.judgeTest, name: "Fleet", env: "FITUP_FLEET=" + folder}.run(ctx)
	if err != nil {
		return nil, err
	}
	for _, part := range []string{"load", "derive", "judge"} {
		rows = append(rows, row{part: "b", what: "to " + part + " a car, on one core", figure: fmt.Sprintf("%.1f ms", 1000*split.time(part+"-sec/car").Seconds())})
	}
	return rows, nil
}

// documents makes what rules see of every car and every driveline in no car.
func (b *bench) documents(ctx context.Context, fleet string) (folder string, err error) {
	folder = filepath.Join(b.scratch, "documents")
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return "", err
	}
	var specs []string
	for _, pattern := range []string{"cars/*.toml", "drivelines/00000/*.toml"} {
		found, err := fs.Glob(os.DirFS(fleet), pattern)
		if err != nil {
			return "", err
		}
		specs = append(specs, found...)
	}
	group, ctx := errgroup.WithContext(ctx)
	group.SetLimit(runtime.NumCPU())
	for _, spec := range specs {
		group.Go(func() error {
			name := strings.TrimSuffix(filepath.Base(spec), ".toml") + ".json"
			return b.document(ctx, filepath.Join(fleet, filepath.FromSlash(spec)), filepath.Join(folder, name))
		})
	}
	return folder, group.Wait()
}

// document writes what rules see of one car.
func (b *bench) document(ctx context.Context, spec, file string) error {
	var text bytes.Buffer
	make := call{argv: []string{b.fitup, "workings", spec, "--on", day, "--format", "input"}, output: &text}
	if _, err := make.run(ctx); err != nil {
		return err
	}
	return os.WriteFile(file, text.Bytes(), 0o644)
}

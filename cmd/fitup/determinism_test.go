package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"testing"

	"fitup/cmd/fitup/report"
)

// TestSameBytes judges one fleet a hundred times, on one core and on several, with
// its files named in any order. Every form of the report is the same to the byte.
func TestSameBytes(t *testing.T) {
	if testing.Short() {
		t.Skip("takes a while")
	}
	root := filepath.Join("..", "..", "cars")
	var cars []string
	for _, pattern := range []string{"*.toml", "drivelines/*.toml"} {
		found, err := filepath.Glob(filepath.Join(root, pattern))
		if err != nil {
			t.Fatal(err)
		}
		cars = append(cars, found...)
	}
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	random := rand.New(rand.NewPCG(1, 2)) // the same orders each time
	var first map[string][]byte
	for i := range 100 {
		runtime.GOMAXPROCS([]int{1, 2, 4}[i%3])
		random.Shuffle(len(cars), func(a, b int) { cars[a], cars[b] = cars[b], cars[a] })
		got := reports(t, cars)
		if first == nil {
			first = got
		}
		for name, text := range got {
			if !bytes.Equal(text, first[name]) {
				t.Fatalf("run %d: another report as %s:\n%s\nnot\n%s", i, name, text, first[name])
			}
		}
	}
}

// reports are all forms of the report of one check.
func reports(t *testing.T, paths []string) map[string][]byte {
	t.Helper()
	dir := t.TempDir()
	args := append([]string{"check", "--on", "2027-11-25", "--all", "--only", "lines,service,mass"}, paths...)
	for _, form := range report.CheckForms {
		args = append(args, "--format", form.Name+"="+filepath.Join(dir, form.Name))
	}
	command := newRoot()
	command.SetArgs(args)
	command.SetOut(io.Discard)
	command.SetErr(io.Discard)
	err := command.ExecuteContext(context.Background())
	if _, judged := errors.AsType[outcome](err); err != nil && !judged {
		t.Fatal(err)
	}
	texts := map[string][]byte{}
	for _, form := range report.CheckForms {
		text, err := os.ReadFile(filepath.Join(dir, form.Name))
		if err != nil || len(text) == 0 {
			t.Fatalf("%s: %d bytes, %v", form.Name, len(text), err)
		}
		texts[form.Name] = text
	}
	return texts
}

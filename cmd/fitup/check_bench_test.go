package main

import (
	"context"
	"io"
	"path/filepath"
	"testing"
)

// BenchmarkCheck judges each car of the demo as the program does, from the rules'
// text on. The compiler's profile is made of it (.ci/bench/profile).
func BenchmarkCheck(b *testing.B) {
	cars, err := filepath.Glob(filepath.Join("..", "..", "cars", "[a-z]*.toml"))
	if err != nil || len(cars) == 0 {
		b.Fatal(cars, err)
	}
	for b.Loop() {
		for _, car := range cars {
			command := newRoot()
			command.SetArgs([]string{"check", "--on", "2026-11-25", car})
			command.SetOut(io.Discard)
			command.SetErr(io.Discard)
			if code := execute(context.Background(), command); code != exitGood {
				b.Fatalf("%s: exit code %d", car, code)
			}
		}
	}
}

package spec_test

import (
	"testing"

	"fitup/spec"
	"fitup/spec/tree"
)

// BenchmarkLoad reads a full-sized car with its driveline and the workshop.
func BenchmarkLoad(b *testing.B) {
	t, name, err := tree.Open("../cars/squall.toml")
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		outfit := spec.NewOutfit(t)
		if _, ok := outfit.Car(name); !ok {
			b.Fatal(outfit.Problems())
		}
	}
}

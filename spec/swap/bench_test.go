package swap

import (
	"os"
	"testing"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// BenchmarkNewPlan works out where to part a full-sized car from its driveline, and in
// what order.
func BenchmarkNewPlan(b *testing.B) {
	outfit := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../..")})
	car, ok := outfit.Car("cars/mizzle.toml")
	if !ok {
		b.Fatal(outfit.Problems())
	}
	joined := document.Join(car, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC))
	workings.Derive(joined)
	for b.Loop() {
		if _, err := NewPlan(car, joined, Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

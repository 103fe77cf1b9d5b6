package policies

import (
	"context"
	"testing"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// BenchmarkNew is what every run of the program pays before it judges.
func BenchmarkNew(b *testing.B) {
	for b.Loop() {
		if _, err := New(context.Background(), Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkEvaluate judges a full-sized car with its driveline.
func BenchmarkEvaluate(b *testing.B) {
	e, err := New(context.Background(), Options{})
	if err != nil {
		b.Fatal(err)
	}
	t, name, err := tree.Open("../cars/squall.toml")
	if err != nil {
		b.Fatal(err)
	}
	outfit := spec.NewOutfit(t)
	car, ok := outfit.Car(name)
	if !ok {
		b.Fatal(outfit.Problems())
	}
	joined := document.Join(car, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC))
	workings.Derive(joined)
	encoded := joined.Encode()
	for b.Loop() {
		if _, err := e.Evaluate(context.Background(), encoded); err != nil {
			b.Fatal(err)
		}
	}
}

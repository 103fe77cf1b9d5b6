package document_test

import (
	"testing"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
)

var day = time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)

// fullCar is a full-sized car with its driveline and the workshop.
func fullCar(b *testing.B) *spec.Composition {
	b.Helper()
	t, name, err := tree.Open("../../cars/squall.toml")
	if err != nil {
		b.Fatal(err)
	}
	outfit := spec.NewOutfit(t)
	car, ok := outfit.Car(name)
	if !ok {
		b.Fatal(outfit.Problems())
	}
	return car
}

// BenchmarkJoin puts the halves of every joint side by side.
func BenchmarkJoin(b *testing.B) {
	car := fullCar(b)
	for b.Loop() {
		document.Join(car, day)
	}
}

// BenchmarkEncode makes what rules see of the joined document.
func BenchmarkEncode(b *testing.B) {
	joined := document.Join(fullCar(b), day)
	for b.Loop() {
		joined.Value()
	}
}

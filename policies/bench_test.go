package policies

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"runtime"
	"sync"
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
	encoded := joined.Value()
	for b.Loop() {
		if _, err := e.Evaluate(context.Background(), encoded); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkDocuments judges the documents in the folder FITUP_DOCUMENTS, each what
// `fitup workings --format input` prints, on all cores. Reading them and compiling
// the rules is part of it: it is what the stock opa program does when it is given
// the same folder.
func BenchmarkDocuments(b *testing.B) {
	folder := os.Getenv("FITUP_DOCUMENTS")
	if folder == "" {
		b.Skip("left out: .ci/bench/run gives it documents")
	}
	files, err := filepath.Glob(filepath.Join(folder, "*.json"))
	if err != nil || len(files) == 0 {
		b.Fatal(folder, err)
	}
	for b.Loop() {
		e, err := New(b.Context(), Options{})
		if err != nil {
			b.Fatal(err)
		}
		next := make(chan string)
		var wait sync.WaitGroup
		for range runtime.GOMAXPROCS(0) {
			wait.Go(func() {
				for file := range next {
					if err := judgeFile(b.Context(), e, file); err != nil {
						b.Error(file, err)
					}
				}
			})
		}
		for _, file := range files {
			next <- file
		}
		close(next)
		wait.Wait()
	}
	b.ReportMetric(float64(len(files)), "documents/op")
}

func judgeFile(ctx context.Context, e *Engine, file string) error {
	text, err := os.ReadFile(file)
	if err != nil {
		return err
	}
	var document any
	if err := json.Unmarshal(text, &document); err != nil {
		return err
	}
	_, err = e.Evaluate(ctx, document)
	return err
}

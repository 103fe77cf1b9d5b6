package policies

import (
	"context"
	"fmt"
	"testing"
)

// BenchmarkNew is what every run of the program pays before it judges.
func BenchmarkNew(b *testing.B) {
	for b.Loop() {
		if _, err := New(context.Background(), Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkEvaluate judges a document of a full-sized car's hoses.
func BenchmarkEvaluate(b *testing.B) {
	e, err := New(context.Background(), Options{})
	if err != nil {
		b.Fatal(err)
	}
	half := map[string]any{"form": "37-flare", "gender": "male"}
	var lines, joints []any
	for i := range 30 {
		path := fmt.Sprintf("lines.a%d", i)
		lines = append(lines, map[string]any{"path": path, "clips": 0.3, "hose": map[string]any{"length": 1.0}})
		for _, end := range []string{".from", ".to"} {
			joints = append(joints, map[string]any{"path": path + end, "kind": "line", "here": half, "there": half})
		}
	}
	document := joined(lines...)
	document["joints"] = joints
	for b.Loop() {
		if _, err := e.Evaluate(context.Background(), document); err != nil {
			b.Fatal(err)
		}
	}
}

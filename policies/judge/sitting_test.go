package judge

import (
	"context"
	"errors"
	"testing"
	"testing/fstest"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/tree"
)

// TestSittingWithoutRules: if the rules turn out to be broken while cars come, no
// more of them are taken, and the report is that error.
func TestSittingWithoutRules(t *testing.T) {
	outfit := spec.NewOutfit(&tree.Tree{FS: fstest.MapFS{"a.toml": {Data: []byte("[car]\nname = \"Tern\"\n")}}})
	car, ok := outfit.Car("a.toml")
	if !ok {
		t.Fatal(outfit.Problems())
	}
	broken := errors.New("no rules")
	s := (&Run{Workers: 2}).Start(context.Background(), func() (*policies.Engine, error) { return nil, broken })
	var err error
	for range 100 {
		if err = s.Add(car); err != nil {
			break
		}
	}
	if err == nil {
		t.Error("a hundred cars were taken")
	}
	if _, err := s.Report(); !errors.Is(err, broken) {
		t.Errorf("error %v, want %v", err, broken)
	}
}

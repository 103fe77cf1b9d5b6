//go:build !race

// The race detector keeps memory of its own.

package judge_test

import (
	"fmt"
	"runtime"
	"testing"
	"testing/fstest"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/tree"
)

// mostKept is what a report may keep, in bytes, for each judgement that could not be
// made, in a fleet in which cars are much alike. With a text of its own for each, and
// a few words for each rule that has nothing to say, it would be half as much again.
const mostKept = 64

// TestReportKeepsLittle judges a few cars and many, with most of them left out, and
// asks what the report of the many holds on to more.
func TestReportKeepsLittle(t *testing.T) {
	if testing.Short() {
		t.Skip("takes a while")
	}
	few, many := keeping(t, 20), keeping(t, 120)
	kept, told := many.bytes-few.bytes, many.told-few.told
	t.Logf("%d bytes for each of %d judgements that could not be made", kept/told, told)
	if kept > told*mostKept {
		t.Errorf("%d bytes are kept for each of %d judgements that could not be made, want at most %d", kept/told, told, mostKept)
	}
}

// A keep is what a report holds on to.
type keep struct{ bytes, told int }

func keeping(t *testing.T, cars int) keep {
	t.Helper()
	car := spec.Starter(spec.KindCar, "Blue", nil) // with most still to be measured
	texts := fstest.MapFS{}
	names := make([]string, cars)
	for i := range names {
		names[i] = fmt.Sprintf("car-%03d.toml", i)
		texts[names[i]] = &fstest.MapFile{Data: []byte(car)}
	}
	rules := engine()
	before := held()
	run := judge.Run{Date: day}
	sitting := run.Start(t.Context(), func() (*policies.Engine, error) { return rules, nil })
	outfit := spec.NewOutfit(&tree.Tree{FS: texts})
	for _, name := range names {
		c, ok := outfit.Car(name)
		if !ok {
			t.Fatal(outfit.Problems())
		}
		if err := sitting.Add(c); err != nil {
			t.Fatal(err)
		}
		outfit.Forget(name)
	}
	report, err := sitting.Report()
	if err != nil {
		t.Fatal(err)
	}
	k := keep{bytes: held() - before}
	for _, m := range report.Measures {
		k.told += m.Subjects
	}
	runtime.KeepAlive(report)
	return k
}

// held is what is in use on the heap, in bytes.
func held() int {
	runtime.GC()
	runtime.GC() // what the first made unreachable by running cleanups
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return int(m.HeapAlloc)
}

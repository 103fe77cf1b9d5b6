package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestReadmeSwap makes the edit that README describes before its second example on
// a copy of the demo, and holds the output printed there to what the program says.
// With -update it writes it.
func TestReadmeSwap(t *testing.T) {
	readme, err := filepath.Abs(filepath.Join("..", "..", "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	text := read(t, readme)
	const from, to = "chain-two", "webbing-two"
	if !strings.Contains(text, "`"+from+"` to\n`"+to+"`") {
		t.Fatal("README no longer describes the edit that this test makes")
	}
	before, rest, _ := strings.Cut(text, "```console\n$ fitup swap ")
	flags, rest, _ := strings.Cut(rest, "\n")
	printed, after, ok := strings.Cut("\n"+rest, "\n```\n")
	if !ok {
		t.Fatal("README has no console block with a call of fitup swap")
	}
	demo(t)
	car := read(t, cars[0])
	if n := strings.Count(car, from); n != 1 {
		t.Fatalf("the demo car has %q %d times, want once", from, n)
	}
	if err := os.WriteFile(cars[0], []byte(strings.Replace(car, from, to, 1)), 0o600); err != nil {
		t.Fatal(err)
	}
	got := strings.TrimSuffix(call(t, exitFindings, append([]string{"swap"}, strings.Fields(flags)...)...), "\n")
	if *update {
		if err := os.WriteFile(readme, []byte(before+"```console\n$ fitup swap "+flags+"\n"+got+"\n```\n"+after), 0o600); err != nil {
			t.Fatal(err)
		}
		return
	}
	if diff := cmp.Diff(strings.TrimPrefix(printed, "\n"), got); diff != "" {
		t.Errorf("README shows something else (-README +program):\n%s", diff)
	}
	for _, shown := range []string{" danger: ", "must be made", "in the shop's\n        drawer", "leaves unopened: "} {
		if !strings.Contains(got, shown) {
			t.Errorf("the example no longer shows %q", shown)
		}
	}
}

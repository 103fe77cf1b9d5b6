package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestReadmeSwap holds README's second example to what the program says of the
// demo. With -update it writes it.
func TestReadmeSwap(t *testing.T) {
	readme, err := filepath.Abs(filepath.Join("..", "..", "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	text := read(t, readme)
	before, rest, _ := strings.Cut(text, "```console\n$ fitup swap ")
	flags, rest, _ := strings.Cut(rest, "\n")
	printed, after, ok := strings.Cut("\n"+rest, "\n```\n")
	if !ok {
		t.Fatal("README has no console block with a call of fitup swap")
	}
	demo(t)
	if err := os.Mkdir(".git", 0o700); err != nil { // the root, as for a reader in this repository
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

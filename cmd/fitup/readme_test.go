package main

import (
	"bytes"
	"context"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"fitup/policies"
)

// TestReadme makes the edit that README describes on a copy of the demo and holds
// the output printed there to what the program says. With -update it writes it.
func TestReadme(t *testing.T) {
	readme, err := filepath.Abs(filepath.Join("..", "..", "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(readme)
	if err != nil {
		t.Fatal(err)
	}
	const from, to = "2.35 m of ptfe-8", "2.35 m of vent-8"
	if !strings.Contains(string(text), "`"+from+"` to\n`"+to+"`") {
		t.Fatal("README no longer describes the edit that this test makes")
	}
	work := t.TempDir()
	if err := os.CopyFS(filepath.Join(work, "cars"), os.DirFS(filepath.Join("..", "..", "cars"))); err != nil {
		t.Fatal(err)
	}
	spec := filepath.Join(work, "cars", "mizzle.toml")
	car, err := os.ReadFile(spec)
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(string(car), from); n != 1 {
		t.Fatalf("the demo car has %q %d times, want once", from, n)
	}
	if err := os.WriteFile(spec, []byte(strings.Replace(string(car), from, to, 1)), 0o600); err != nil {
		t.Fatal(err)
	}
	t.Chdir(work)

	before, rest, _ := strings.Cut(string(text), "```console\n$ fitup ")
	call, rest, _ := strings.Cut(rest, "\n")
	printed, after, ok := strings.Cut("\n"+rest, "\n```\n")
	if !ok {
		t.Fatal("README has no console block with a call of fitup")
	}
	var out bytes.Buffer
	root := newRoot()
	root.SetArgs(strings.Fields(call))
	root.SetOut(&out)
	if code := run(context.Background(), root); code != exitFindings {
		t.Errorf("exit code %d, want %d", code, exitFindings)
	}
	got := strings.TrimSuffix(out.String(), "\n")
	if *update {
		rewrite(t, readme, before+"```console\n$ fitup "+call+"\n"+got+"\n```\n"+after)
		return
	}
	if diff := cmp.Diff(strings.TrimPrefix(printed, "\n"), got); diff != "" {
		t.Errorf("README shows something else (-README +program):\n%s", diff)
	}
}

const (
	rulesFrom = "<!-- made from the rules by go test ./cmd/fitup -run TestReadme -update -->\n"
	rulesTo   = "<!-- end of what is made from the rules -->\n"
)

// TestReadmeRules holds README's list of what is checked to the rules that there
// are. With -update it writes it.
func TestReadmeRules(t *testing.T) {
	readme := filepath.Join("..", "..", "README.md")
	text, err := os.ReadFile(readme)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, _ := strings.Cut(string(text), rulesFrom)
	listed, after, ok := strings.Cut(rest, rulesTo)
	if !ok {
		t.Fatal("README has no place for the rules between its two comments")
	}
	engine, err := policies.New(context.Background(), policies.Options{})
	if err != nil {
		t.Fatal(err)
	}
	got := checked(engine.Rules())
	if *update {
		rewrite(t, readme, before+rulesFrom+got+rulesTo+after)
		return
	}
	if diff := cmp.Diff(listed, got); diff != "" {
		t.Errorf("README lists other rules (-README +rules):\n%s", diff)
	}
}

// checked counts the rules by area.
func checked(rules []*policies.Rule) string {
	areas := map[string]int{}
	for _, r := range rules {
		areas[r.Area]++
	}
	var counts []string
	for _, area := range slices.Sorted(maps.Keys(areas)) {
		counts = append(counts, fmt.Sprintf("%s %d", area, areas[area]))
	}
	return fmt.Sprintf("%d rules, by area: %s. `fitup rules AREA` lists them.\n", len(rules), strings.Join(counts, ", "))
}

func rewrite(t *testing.T, file, text string) {
	t.Helper()
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}

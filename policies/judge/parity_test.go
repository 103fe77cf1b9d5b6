package judge_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"github.com/open-policy-agent/opa/v1/bundle"

	"fitup/cmd/fitup/report"
	"fitup/policies"
	"fitup/policies/config"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// TestStockOPA gives the stock opa program a bundle of `fitup pack` and what
// `fitup workings --format input` prints of the demo and of every seeded fault.
// In one run over all of them it has to say exactly what the engine says, before
// any waiver. FITUP_OPA is the program, FITUP_BUNDLE the bundle, packed with the
// configuration of the demo.
func TestStockOPA(t *testing.T) {
	opa, packed := os.Getenv("FITUP_OPA"), os.Getenv("FITUP_BUNDLE")
	if opa == "" || packed == "" {
		t.Skip("left out: .ci/parity runs it, with the program and a bundle")
	}
	settings, err := config.Read(&tree.Tree{FS: os.DirFS(root)}, "cars/"+tree.ConfigName)
	if err != nil {
		t.Fatal(err)
	}
	ours, err := settings.Engine(t.Context(), config.Choice{})
	if err != nil {
		t.Fatal(err)
	}
	if got := revision(t, packed); got != ours.Digest() {
		t.Fatalf("the bundle is of revision %s, the rules of %s", got, ours.Digest())
	}

	folder := t.TempDir()
	want := map[string][]string{}
	for name, doc := range seededDocuments(t) {
		text, err := report.NotebookInput(&report.Notebook{Document: doc}, report.Style{})
		if err != nil {
			t.Fatal(err)
		}
		file := filepath.Join(folder, name+".json")
		if err := os.WriteFile(file, text, 0o600); err != nil {
			t.Fatal(err)
		}
		outcome, err := ours.Evaluate(t.Context(), doc)
		if err != nil || len(outcome.Faults) > 0 {
			t.Fatal(name, err, outcome.Faults)
		}
		want[file] = engineSays(outcome)
	}

	got, findings := map[string][]string{}, 0
	for _, answer := range stockSays(t, opa, packed, folder) {
		if answer.Error != nil {
			t.Errorf("%s: %s", answer.Path, answer.Error)
		}
		got[answer.Path] = answer.says()
		findings += len(answer.Result.Findings)
	}
	for file, all := range want {
		if diff := cmp.Diff(all, got[file]); diff != "" {
			t.Errorf("%s (-fitup +opa):\n%s", filepath.Base(file), diff)
		}
	}
	if len(got) != len(want) || findings < len(readVariants[fault](t, "faults")) {
		t.Errorf("opa judged %d documents of %d, and found %d things in them", len(got), len(want), findings)
	}
	t.Logf("%d documents, %d findings", len(got), findings)
}

func revision(t *testing.T, file string) string {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	b, err := bundle.NewReader(bytes.NewReader(text)).Read()
	if err != nil {
		t.Fatal(err)
	}
	return b.Manifest.Revision
}

// seededDocuments are what rules see of each demo car and of each car that a
// seeded fault concerns.
func seededDocuments(t *testing.T) map[string]map[string]any {
	t.Helper()
	all := map[string]map[string]any{}
	add := func(name string, fleet texts, cars []string) {
		files := fstest.MapFS{}
		for file, text := range fleet {
			files[file] = &fstest.MapFile{Data: []byte(text)}
		}
		outfit := spec.NewOutfit(&tree.Tree{FS: files})
		for _, car := range cars {
			composed, ok := outfit.Car(car)
			if !ok {
				t.Fatal(name, unreadable(outfit.Problems()))
			}
			doc := document.Join(composed, day)
			workings.Derive(doc)
			all[name+"-"+strings.TrimSuffix(filepath.Base(car), ".toml")] = doc.Encode()
		}
	}
	add("clean", demo(), everyCar())
	for name, f := range readVariants[fault](t, "faults") {
		changed, err := demo().change(append(slices.Clone(f.Given), f.edit)...)
		if err != nil {
			t.Fatal(name, err)
		}
		files := []string{f.File}
		for _, e := range f.Given {
			files = append(files, e.File)
		}
		add(name, changed, about(files))
	}
	return all
}

// An answer is what opa says of one document.
type answer struct {
	Path   string
	Error  json.RawMessage
	Result struct {
		Findings, Guesses []map[string]any
		CannotTell        []map[string]any `json:"cannot_tell"`
	}
}

// stockSays asks opa, in one run, for data.fitup of every document in a folder.
func stockSays(t *testing.T, opa, packed, folder string) []answer {
	t.Helper()
	cmd := exec.CommandContext(t.Context(), opa, "exec", "--bundle", packed, "--decision", "fitup", folder)
	cmd.Stderr = os.Stderr
	text, err := cmd.Output()
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	var said struct{ Result []answer }
	if err := json.Unmarshal(text, &said); err != nil {
		t.Fatal(err)
	}
	return said.Result
}

// says lists each finding, each field that was missing and each that was guessed
// as sorted JSON.
func (a answer) says() []string {
	var all []string
	for _, f := range a.Result.Findings {
		all = append(all, line("finding", f))
	}
	each := func(kind, field string, list []map[string]any) {
		for _, said := range list {
			fields, _ := said[field].([]any)
			delete(said, field)
			all = append(all, line(kind, said))
			for _, f := range fields {
				all = append(all, line(kind+" "+field+" "+fmt.Sprint(f), said))
			}
		}
	}
	each("cannot tell", "missing", a.Result.CannotTell)
	each("guess", "guessed", a.Result.Guesses)
	slices.Sort(all)
	return slices.Compact(all)
}

// engineSays lists the same of an outcome.
func engineSays(o policies.Outcome) []string {
	var a answer
	a.Result.Findings = plainMaps(o.Findings)
	a.Result.CannotTell = plainMaps(o.CannotTell)
	a.Result.Guesses = plainMaps(o.Guesses)
	return a.says()
}

func plainMaps[T any](list []T) []map[string]any {
	text, err := json.Marshal(list)
	if err != nil {
		panic(err) // plain data
	}
	var all []map[string]any
	if err := json.Unmarshal(text, &all); err != nil {
		panic(err)
	}
	return all
}

// line is a statement as JSON, which has sorted keys, without what is empty.
func line(kind string, said map[string]any) string {
	said = maps.Clone(said)
	maps.DeleteFunc(said, func(_ string, v any) bool {
		list, isList := v.([]any)
		return v == nil || v == "" || isList && len(list) == 0
	})
	text, err := json.Marshal(said)
	if err != nil {
		panic(err) // it comes of JSON
	}
	return kind + " " + string(text)
}

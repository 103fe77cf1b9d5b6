package policies

import (
	"bytes"
	"context"
	"maps"
	"path/filepath"
	"slices"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
	"github.com/open-policy-agent/opa/v1/rego"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// pack returns the bundle of an engine, as bytes and as OPA reads it.
func pack(t *testing.T, e *Engine) ([]byte, bundle.Bundle) {
	t.Helper()
	var packed bytes.Buffer
	if err := e.WriteBundle(&packed); err != nil {
		t.Fatal(err)
	}
	read, err := bundle.NewReader(bytes.NewReader(packed.Bytes())).WithRegoVersion(ast.RegoV0).Read() // the manifest says v1
	if err != nil {
		t.Fatal(err)
	}
	return packed.Bytes(), read
}

// demoDocuments are what rules see of the demo, by file.
func demoDocuments(t *testing.T) map[string]map[string]any {
	t.Helper()
	files, err := filepath.Glob("../cars/[^.]*.toml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no demo car: %v", err)
	}
	documents := map[string]map[string]any{}
	for _, file := range files {
		in, name, err := tree.Open(file)
		if err != nil {
			t.Fatal(err)
		}
		outfit := spec.NewOutfit(in)
		car, ok := outfit.Car(name)
		if !ok {
			t.Fatal(outfit.Problems())
		}
		joined := document.Join(car, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC))
		workings.Derive(joined)
		documents[file] = joined.Encode()
	}
	return documents
}

// A bundle, read back by OPA, says of the demo what the engine says. The limit is
// so low that there is something to say.
func TestBundleSaysTheSame(t *testing.T) {
	e := newEngine(t, Options{Own: ownFolder(nil), Limits: map[string]string{"lines.support_spacing.free_run": "1 in"}})
	_, read := pack(t, e)
	query, err := rego.New(rego.Query("data.fitup"), rego.ParsedBundle("fitup", &read)).PrepareForEval(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	findings := 0
	for file, doc := range demoDocuments(t) {
		results, err := query.Eval(t.Context(), rego.EvalInput(doc))
		if err != nil {
			t.Fatal(err)
		}
		said := results[0].Expressions[0].Value.(map[string]any)
		got := e.outcome(reply{
			findings: said["findings"].([]any), cannotTell: said["cannot_tell"].([]any),
			guesses: said["guesses"].([]any), strays: said["strays"].([]any), judged: said["judged"].(map[string]any),
		})
		want := evaluate(t, e, doc)
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s: (-engine +bundle)\n%s", file, diff)
		}
		findings += len(got.Findings)
	}
	if findings == 0 {
		t.Error("nothing was found, so nothing was compared")
	}
}

func TestBundleManifest(t *testing.T) {
	e := newEngine(t, Options{Only: []string{"own", "lines"}, Own: ownFolder(nil)})
	_, read := pack(t, e)
	version := ast.RegoV1.Int()
	want := bundle.Manifest{Revision: e.Digest(), Roots: &[]string{"fitup", "lib", "registry", "rules", "tables"}, RegoVersion: &version}
	if !read.Manifest.Equal(want) {
		t.Errorf("manifest %v, want %v", read.Manifest, want)
	}
	if got, want := slices.Sorted(maps.Keys(read.Data["registry"].(map[string]any))), idsOf(e); !slices.Equal(got, want) {
		t.Errorf("the registry has %v, want %v", got, want)
	}
	var paths []string
	for _, m := range read.Modules {
		paths = append(paths, m.Path)
	}
	for _, path := range []string{"/fitup.rego", "/lib/needs.rego", "/rules/lines/bend_radius.rego", "/rules/own/whole.rego"} {
		if !slices.Contains(paths, path) {
			t.Errorf("%s is not in the bundle, which has %v", path, paths)
		}
	}
}

func idsOf(e *Engine) []string {
	var ids []string
	for _, r := range e.Rules() {
		ids = append(ids, r.ID)
	}
	return ids
}

func TestBundleIsReproducible(t *testing.T) {
	own := ownFolder(map[string]string{"also.rego": ownRule("also", "")})
	first, _ := pack(t, newEngine(t, Options{Own: own}))
	again, _ := pack(t, newEngine(t, Options{Own: own}))
	if !bytes.Equal(first, again) {
		t.Error("packed twice, with two results")
	}
	touched := fstest.MapFS{}
	for name, file := range own[0].FS.(fstest.MapFS) {
		touched[name] = &fstest.MapFile{Data: file.Data, Mode: 0o400, ModTime: time.Date(2020, 1, 1, 0, 0, 0, 0, time.UTC)}
	}
	if same, _ := pack(t, newEngine(t, Options{Own: []Folder{{Name: "bench", FS: touched}}})); !bytes.Equal(first, same) {
		t.Error("another time or mode of the files makes another bundle")
	}
	other, err := New(context.Background(), Options{Own: own, Limits: map[string]string{"lines.support_spacing.free_run": "1 in"}})
	if err != nil {
		t.Fatal(err)
	}
	if packed, _ := pack(t, other); bytes.Equal(first, packed) {
		t.Error("another limit makes the same bundle")
	}
}

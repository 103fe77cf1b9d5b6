package judge_test

import (
	"context"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"sync"
	"testing"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/workings"
)

// sampledLeaves is the stride of the demo's values.
const sampledLeaves = 397

// TestPartialDemo: each value of the clean demo is taken out in turn. Nothing
// breaks, and no danger or fault comes of it but those that are allowed.
func TestPartialDemo(t *testing.T) {
	allowed := readAllowed(t)
	stride := sampledLeaves
	if long {
		stride = 1
	}
	var gaps []gap
	for _, file := range slices.Sorted(maps.Keys(longDemo().forms)) {
		leaves := longDemo().forms[file].leaves
		for i := 0; i < len(leaves); i += stride {
			gaps = append(gaps, gap{file, leaves[i], nil}, gap{file, leaves[i], "?"})
		}
	}
	t.Logf("%d gaps", len(gaps))
	const parts = 8
	for part := range parts {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for i := part; i < len(gaps); i += parts {
				for _, car := range about([]string{gaps[i].file}) {
					testLeaf(t, gaps[i], car, allowed)
				}
			}
		})
	}
}

func testLeaf(t *testing.T, g gap, car string, allowed []allowance) {
	doc, err := encoded(longDemo().with(g), car)
	if err != nil {
		if !g.named(err) {
			t.Errorf("%s: %v", g, err)
		}
		return
	}
	for _, f := range graveIn(t, doc, cleanDocument(car)) {
		if !allows(allowed, f.Rule, g) {
			t.Errorf("%s: %s %s on %s", g, f.Rule, f.Case, f.Subject)
		}
	}
}

// encoded is the document of a car, as rules see it.
func encoded(outfit *spec.Outfit, car string) (map[string]any, error) {
	composed, ok := outfit.Car(car)
	if problems := outfit.Problems(); !ok || len(problems) > 0 {
		return nil, unreadable(problems)
	}
	doc := document.Join(composed, day)
	workings.Derive(doc)
	return doc.Encode(), nil
}

var cleanDocuments sync.Map // car -> document

func cleanDocument(car string) map[string]any {
	if doc, ok := cleanDocuments.Load(car); ok {
		return doc.(map[string]any)
	}
	doc, err := encoded(longDemo().texts().outfit(longDemo().kept), car)
	if err != nil {
		panic(err)
	}
	cleanDocuments.Store(car, doc)
	return doc
}

// graveIn lists the dangers and faults of a document that another does not have. A
// rule reads one collection and no other, so those of a collection that is the same
// in both need not be asked.
func graveIn(t *testing.T, doc, was map[string]any) []policies.Finding {
	t.Helper()
	var all []policies.Finding
	scope := !reflect.DeepEqual(beside(doc, ""), beside(was, ""))
	for _, collection := range judgedCollections() {
		if !scope && reflect.DeepEqual(doc[collection], was[collection]) {
			continue
		}
		before := found(t, collection, was)
		for _, f := range found(t, collection, doc) {
			same := func(o policies.Finding) bool { return o.Rule == f.Rule && o.Case == f.Case && o.Subject == f.Subject }
			if !slices.ContainsFunc(before, same) {
				all = append(all, f)
			}
		}
	}
	return all
}

// found lists the dangers and faults in one collection of a document.
func found(t *testing.T, collection string, doc map[string]any) []policies.Finding {
	t.Helper()
	outcome, err := engineOf(collection).Evaluate(context.Background(), beside(doc, collection))
	if err != nil || len(outcome.Faults) > 0 {
		t.Errorf("%s: %v %v", collection, err, outcome.Faults)
	}
	return slices.DeleteFunc(outcome.Findings, func(f policies.Finding) bool {
		rule, _ := engine().Rule(f.Rule)
		which, _ := rule.Case(f.Case)
		return which.Level < policies.LevelFault
	})
}

// beside is one collection of a document, with what is no collection.
func beside(doc map[string]any, collection string) map[string]any {
	out := maps.Clone(doc)
	maps.DeleteFunc(out, func(key string, _ any) bool {
		return key != collection && slices.Contains(judgedCollections(), key)
	})
	return out
}

// judgedCollections are those that rules judge.
var judgedCollections = sync.OnceValue(func() []string {
	all := map[string]bool{}
	for _, r := range engine().Rules() {
		all[r.Subject] = true
	}
	return slices.Sorted(maps.Keys(all))
})

var collectionEngines sync.Map // collection -> *policies.Engine

// engineOf asks the rules of one collection.
func engineOf(collection string) *policies.Engine {
	if e, ok := collectionEngines.Load(collection); ok {
		return e.(*policies.Engine)
	}
	var only []string
	for _, r := range engine().Rules() {
		if r.Subject == collection {
			only = append(only, r.ID)
		}
	}
	e, err := policies.New(context.Background(), policies.Options{Only: only})
	if err != nil {
		panic(err)
	}
	collectionEngines.Store(collection, e)
	return e
}

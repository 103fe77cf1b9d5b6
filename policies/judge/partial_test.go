package judge_test

import (
	"context"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/BurntSushi/toml"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/source"
)

// What is left out, or asked with "?", must never make a danger look like a pass.
// These tests take one value at a time out of specs. They work on the long form,
// in which every phrase is written out as the table that it stands for, so that
// each of its words can be taken out as well.

// long says whether to go through every value; FITUP_LONG=1 does. Else some are
// sampled, by a stride that meets every kind of value in time.
var long = os.Getenv("FITUP_LONG") != ""

// sampled is the stride of faults.
const sampled = 16

// A gap is a value that is taken out, and what is then put: nothing, or "?".
type gap struct {
	file, path string
	put        any
}

func (g gap) String() string {
	if g.put == nil {
		return g.file + " without " + g.path
	}
	return fmt.Sprintf("%s with %s = %q", g.file, g.path, g.put)
}

// named reports whether the loader's problem is about the gap.
func (g gap) named(err error) bool {
	problems, ok := err.(unreadable)
	return ok && slices.ContainsFunc(problems, func(p spec.FileProblem) bool {
		return within(p.Path, g.path) || within(g.path, p.Path)
	})
}

// noted reports whether the loader remarks on the gap.
func (g gap) noted(in *spec.Outfit) bool {
	return slices.ContainsFunc(in.Load(g.file).Notes, func(p source.Problem) bool { return p.Path == g.path })
}

// within reports whether a key path is another, or below it.
func within(path, other string) bool { return path == other || strings.HasPrefix(path, other+".") }

// TestPartialFaults: each value that a danger or fault rests on is taken out in
// turn. The finding stays, or its rule cannot tell, or the loader names the key.
func TestPartialFaults(t *testing.T) {
	allowed := readAllowed(t)
	all := readVariants[fault](t, "faults")
	for i, name := range slices.Sorted(maps.Keys(all)) {
		if !long && i%sampled != 0 {
			continue
		}
		f := all[name]
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			_, after, err := f.judged()
			if err != nil {
				t.Fatal(err)
			}
			is, err := demo().change(append(slices.Clone(f.Given), f.edit)...)
			if err != nil {
				t.Fatal(err)
			}
			written := is.writtenOut(longDemo())
			for _, found := range firstOfEach(f, after) {
				testGaps(t, written, found, allowed)
			}
		})
	}
}

// firstOfEach lists the dangers and faults that the fault raises, one a rule and
// case: its others are the same thing said of another subject.
func firstOfEach(f fault, report *judge.Report) []judge.Finding {
	var all []judge.Finding
	listed := map[said]bool{}
	for _, c := range f.Appears {
		for _, s := range c.said(f.File) {
			listed[s] = true
		}
	}
	for _, found := range report.Findings {
		s := said{Rule: found.Rule, Case: found.Case, File: found.File, Path: found.Path}
		again := slices.ContainsFunc(all, func(o judge.Finding) bool { return o.Rule == found.Rule && o.Case == found.Case })
		if found.Level >= policies.LevelFault && listed[s] && !again && !own(found.Rule) {
			all = append(all, found)
		}
	}
	return all
}

// own reports whether a rule is one of the tool's own, which no document decides.
func own(rule string) bool {
	return slices.ContainsFunc(judge.Own(), func(r *policies.Rule) bool { return r.ID == rule })
}

// testGaps takes out what a finding rests on, value by value.
func testGaps(t *testing.T, is *longFleet, found judge.Finding, allowed []allowance) {
	alone := soleEngine(t, found.Rule)
	car := carOf(t, is, alone, found)
	gaps := rests(t, is, car, found)
	if !long && len(gaps) > 3 {
		gaps = []gap{gaps[0], gaps[len(gaps)/2], gaps[len(gaps)-1]}
	}
	for _, g := range gaps {
		outfit := is.with(g)
		report, err := judgeOutfit(outfit, alone, []string{car})
		switch {
		case err != nil && !g.named(err):
			t.Errorf("%s: %v", g, err)
		case err == nil && !stays(report, found) && !unclear(report, found) && !g.noted(outfit) && !allows(allowed, found.Rule, g):
			t.Errorf("%s: %s on %s is gone, and nothing is said", g, found.Rule, found.Subject)
		}
	}
}

// stays reports whether the rule still finds a danger or a fault on the subject.
func stays(report *judge.Report, found judge.Finding) bool {
	return slices.ContainsFunc(report.Findings, func(f judge.Finding) bool {
		return f.Rule == found.Rule && f.File == found.File && f.Path == found.Path && f.Level >= policies.LevelFault
	})
}

// unclear reports whether the finding's rule could not tell: of its subject, of
// something that the subject is part of, or of a table that is not written.
func unclear(report *judge.Report, found judge.Finding) bool {
	for _, account := range report.Accounts {
		for _, j := range account.Said {
			if j.Rule == found.Rule && slices.ContainsFunc(j.Unclear, func(l judge.Key) bool {
				return l.File == found.File && within(found.Path, l.Path)
			}) {
				return true
			}
		}
	}
	return false
}

// carOf is the car that a finding was found with.
func carOf(t *testing.T, is *longFleet, alone *policies.Engine, found judge.Finding) string {
	t.Helper()
	for _, car := range everyCar() {
		if report, err := judgeOutfit(is.texts().outfit(is.kept), alone, []string{car}); err == nil && stays(report, found) {
			return car
		}
	}
	t.Fatalf("%s: no car has it", found.Identity())
	return ""
}

var soleEngines sync.Map // rule id -> *policies.Engine

// soleEngine asks one rule only, which is far quicker than all.
func soleEngine(t *testing.T, rule string) *policies.Engine {
	t.Helper()
	if e, ok := soleEngines.Load(rule); ok {
		return e.(*policies.Engine)
	}
	e, err := policies.New(context.Background(), policies.Options{Only: []string{rule}})
	if err != nil {
		t.Fatal(err)
	}
	soleEngines.Store(rule, e)
	return e
}

// An allowance is a gap that may change what is found without a word, and why.
type allowance struct {
	Rule, Key string // a rule or "any", and the end of a key path
	Put       string // "nothing" or "?": only when that is put
	Why       string
}

func readAllowed(t *testing.T) []allowance {
	t.Helper()
	var in struct{ Allowed []allowance }
	decoded, err := toml.DecodeFile(filepath.Join(root, "testdata", "faults", "partial.toml"), &in)
	if err != nil || len(decoded.Undecoded()) > 0 {
		t.Fatal(err, decoded.Undecoded())
	}
	for _, a := range in.Allowed {
		if a.Why == "" || a.Rule == "" || a.Key == "" {
			t.Errorf("%+v: a rule, a key and a reason", a)
		}
	}
	return in.Allowed
}

func allows(all []allowance, rule string, g gap) bool {
	return slices.ContainsFunc(all, func(a allowance) bool {
		return (a.Rule == rule || a.Rule == "any") && strings.HasSuffix("."+g.path, "."+a.Key) && (a.Put == "" || (a.Put == "?") == (g.put != nil))
	})
}

package judge_test

import (
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/workings"
)

// rests lists the gaps that a finding may turn on: every value behind a field that
// its rule reads. Behind a figure are the inputs of its working, and behind a word
// that the join found, such as what a line carries, is all that is joined there.
func rests(t *testing.T, is *longFleet, car string, found judge.Finding) []gap {
	t.Helper()
	composed, ok := is.texts().outfit(is.kept).Car(car)
	if !ok {
		t.Fatal(car)
	}
	doc := document.Join(composed, day)
	workedOut := map[string]workings.Working{}
	for _, w := range workings.Derive(doc) {
		workedOut[w.Subject+"."+w.Name] = w
	}
	rule, _ := engine().Rule(found.Rule)
	paths := map[string]bool{}
	var add func(path string)
	add = func(path string) {
		if paths[path] {
			return
		}
		paths[path] = true
		for _, in := range workedOut[path].Inputs {
			if in.Path != "" {
				add(in.Path)
			}
		}
	}
	for _, field := range fieldsRead(t, rule) {
		f := doc.Resolve(rule.Subject, found.Subject, field)
		switch {
		case f.Figure != nil:
			add(found.Subject + "." + field[strings.LastIndex(field, ".")+1:])
		case f.Leaf != nil:
			add(f.Path)
		default:
			add(found.Subject)
			for _, path := range joined(doc, found.Subject) {
				add(path)
			}
		}
		if f.By != "" {
			add(f.By)
		}
	}
	var gaps []gap
	for _, file := range slices.Sorted(maps.Keys(is.forms)) {
		prefix := prefixOf(composed, file)
		for _, leaf := range is.forms[file].leaves {
			for path := range paths {
				if prefix != "-" && within(prefix+leaf, path) {
					gaps = append(gaps, gap{file, leaf, nil}, gap{file, leaf, "?"})
					break
				}
			}
		}
	}
	return gaps
}

// prefixOf is what paths of a file begin with in the document; "-" if it is not
// in it.
func prefixOf(c *spec.Composition, file string) string {
	for prefix, f := range map[string]*spec.File{"": c.Car, "driveline.": c.Driveline, "shop.": c.Shop} {
		if f != nil && f.Name == file {
			return prefix
		}
	}
	return "-"
}

// joined lists what meets at a line or a joint: its ports, and the kind of hose.
func joined(doc *document.Document, subject string) []string {
	var all []string
	for _, j := range doc.Joints {
		if (j.Path == subject || j.On == subject) && j.There != nil {
			all = append(all, strings.TrimSuffix(j.There.Path, ".end"), j.On)
		}
	}
	for _, l := range doc.Lines {
		if within(subject, l.Path) && l.Kind.Path != "" {
			all = append(all, l.Kind.Path)
		}
	}
	for _, p := range doc.Ports {
		if p.Path == subject {
			all = append(all, p.Joins...)
		}
	}
	return all
}

var readBy = regexp.MustCompile(`\b([a-z]+)((?:\.[a-z_]+)+)`)

// fieldsRead lists the fields of its subject that a rule's text names, in guards
// and figures as in needs.
func fieldsRead(t *testing.T, rule *policies.Rule) []string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(root, "policies", rule.File))
	if err != nil {
		t.Fatal(err)
	}
	each := regexp.MustCompile(`some (\w+) in input\.` + rule.Subject).FindSubmatch(text)
	if each == nil {
		t.Fatalf("%s: what is its subject called?", rule.ID)
	}
	fields := map[string]bool{}
	for _, m := range readBy.FindAllStringSubmatch(string(text), -1) {
		if m[1] == string(each[1]) {
			fields[strings.TrimPrefix(m[2], ".")] = true
		}
	}
	for _, list := range regexp.MustCompile(`"needs": \[([^\]]*)\]`).FindAllStringSubmatch(string(text), -1) {
		for _, need := range regexp.MustCompile(`"([^"]+)"`).FindAllStringSubmatch(list[1], -1) {
			for _, field := range strings.Split(need[1], "|") {
				fields[field] = true
			}
		}
	}
	return slices.Sorted(maps.Keys(fields))
}

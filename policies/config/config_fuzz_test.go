package config

import (
	"context"
	"errors"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"fitup/policies"
	"fitup/spec/tree"
)

var builtInEngine = sync.OnceValues(func() (*policies.Engine, error) {
	return (&Config{}).Engine(context.Background(), Choice{})
})

// FuzzRead reads any text as a configuration. What is wrong has a place in it;
// what is taken names all that it takes away.
func FuzzRead(f *testing.F) {
	for _, text := range []string{
		"", "fail-on = \"never\"", "exclude = [\"old-*\", \"[\", \"../x\", \"\"]", "skip = [\"fuel\", \"fuel.nothing\", \"\"]", "rules = [\"own\", \"..\", \"/\"]",
		"[limits.lines.bend_radius]\nleast = \"1 m\"", "[limits]\nlines = 3", "[effort.joint]\nclean = \"4 min\"", "[effort]\na = {b = \"-1 h\"}", "skip = [[]]", "fail-on = 07:32:00",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		files := fstest.MapFS{"cars/.fitup.toml": {Data: []byte(text)}, "cars/own/long.rego": {Data: []byte("package rules.own.long")}}
		c, err := Read(&tree.Tree{FS: files}, "cars/.fitup.toml")
		if problems, ok := errors.AsType[Problems](err); ok {
			for _, p := range problems.List {
				if p.Message == "" || p.Span.Start < 0 || p.Span.Start > p.Span.End || p.Span.End > len(text) || p.Place.Line < 1 || p.Place.Column < 1 {
					t.Errorf("problem %+v in a text of %d bytes", p, len(text))
				}
			}
			return
		}
		if err != nil {
			t.Fatalf("%T: %v", err, err)
		}
		engine, err := builtInEngine()
		if err != nil {
			t.Fatal(err)
		}
		if wrong := c.wrong(engine.Rules(), Choice{}); wrong != nil {
			if _, ok := errors.AsType[Problems](wrong); !ok {
				t.Errorf("%T: %v", wrong, wrong)
			}
		}
		taken := c.Taken(engine, Choice{})
		if c.FailOn.BelowUsual() && !strings.HasPrefix(taken.FailOn, string(c.FailOn)) {
			t.Errorf("fail level %q is told as %q", c.FailOn, taken.FailOn)
		}
		told(t, c.Skip, taken.Skipped)
		told(t, c.Exclude, taken.Excluded)
		for _, folder := range c.Rules {
			if folder.Name != "cars/own" {
				t.Errorf("rules from %q", folder.Name)
			}
		}
	})
}

// told wants each name in what is told of it.
func told(t *testing.T, names, lines []string) {
	t.Helper()
	if len(lines) != len(names) {
		t.Fatalf("%q of %q", lines, names)
	}
	for i, name := range names {
		if !strings.HasPrefix(lines[i], name) {
			t.Errorf("%q of %q", lines[i], name)
		}
	}
}

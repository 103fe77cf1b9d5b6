// Package config reads a workshop's configuration, .fitup.toml, and makes the
// rules that it and the flags of a call leave in force.
//
// Anybody who can edit the file can switch rules off, so whatever it takes away
// from a judgement is told in the report, as judge.Taken.
package config

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/source"
	"fitup/spec/swap"
	"fitup/spec/tree"
)

// A Config is what one configuration file says. Its zero value is no file.
type Config struct {
	Name    string            // the file in its tree; "" for none
	Digest  string            // of its text; "" for none
	FailOn  FailLevel         // "" if it does not say
	Exclude []string          // paths and patterns, relative to the root of the tree
	Rules   []policies.Folder // the workshop's own rules
	Skip    []string          // AREA or AREA.NAME
	Limits  map[string]string // by AREA.RULE.NAME, as written
	Effort  swap.Weights      // planning weights that are not the table's

	root string
	file *source.File
}

// A FailLevel is the level from which findings make a call fail.
type FailLevel string

// Usual is the fail level where nobody chose one; Never lets no finding fail.
const (
	Usual FailLevel = "fault"
	Never FailLevel = "never"
)

// FailLevels are the fail levels, the strictest last.
var FailLevels = []string{string(Never), "danger", "fault", "advice"}

// ParseFailLevel reads a fail level.
func ParseFailLevel(text string) (FailLevel, error) {
	for _, level := range FailLevels {
		if text == level {
			return FailLevel(text), nil
		}
	}
	return "", fmt.Errorf("%q is no fail level: write danger, fault, advice or never", text)
}

// Fails reports whether findings of which the worst is given make a call fail;
// 0 is no finding.
func (f FailLevel) Fails(worst policies.Level) bool {
	var least policies.Level
	return f != Never && worst != 0 && least.UnmarshalText([]byte(f)) == nil && worst >= least
}

// BelowUsual reports whether less fails than usual.
func (f FailLevel) BelowUsual() bool { return f == Never || f == "danger" }

// Problems are what is wrong with files, in the order of their places.
type Problems struct {
	Root string // of the tree that the files are in; "" if it is no folder
	List []spec.FileProblem
}

// Error is one line for each problem, as an editor can follow it.
func (p Problems) Error() string {
	lines := make([]string, len(p.List))
	for i, each := range p.List {
		lines[i] = each.Error()
	}
	return strings.Join(lines, "\n")
}

// Find returns the configuration file nearest to a file or folder of a tree,
// going upward from it, or "". A folder of that name is none. What else is there
// but cannot be read, such as a link that leads nowhere, is found all the same: to
// go on without it would judge by other rules in silence.
func Find(t *tree.Tree, name string) string {
	for {
		at := path.Join(name, tree.ConfigName)
		if info, err := fs.Stat(t.FS, at); err == nil && !info.IsDir() {
			return at
		}
		if info, err := fs.Lstat(t.FS, at); err == nil && !info.IsDir() {
			return at
		}
		if name == "." {
			return ""
		}
		name = path.Dir(name)
	}
}

// Read reads a configuration file of a tree. Its error is of type Problems, or
// that the file cannot be read.
func Read(t *tree.Tree, name string) (*Config, error) {
	text, err := t.Read(name)
	if err != nil {
		return nil, err
	}
	file, problems := source.Parse(name, text)
	sum := sha256.Sum256(text)
	r := reader{tree: t, Config: &Config{Name: name, Digest: hex.EncodeToString(sum[:]), root: t.Root, file: file}}
	r.problems = problems
	if len(problems) == 0 {
		r.read()
	}
	return r.Config, r.place(r.problems)
}

// place makes an error of problems of the file; none is no error.
func (c *Config) place(problems []source.Problem) error {
	if len(problems) == 0 {
		return nil
	}
	slices.SortStableFunc(problems, func(a, b source.Problem) int { return cmp.Compare(a.Span.Start, b.Span.Start) })
	placed := make([]spec.FileProblem, len(problems))
	for i, p := range problems {
		placed[i] = spec.FileProblem{File: c.Name, Problem: p, Place: c.file.Place(p.Span)}
	}
	return Problems{c.root, placed}
}

package config

import (
	"fmt"
	"io/fs"
	"maps"
	"math"
	"path"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/policies/tables"
	"fitup/spec/nearest"
	"fitup/spec/source"
	"fitup/spec/swap"
	"fitup/spec/tree"
	"fitup/spec/unit"
)

// A key is one key that the file may hold: the one place for its name, meaning,
// schema and reading.
type key struct {
	name, doc string
	schema    map[string]any
	read      func(r *reader, raw any)
}

var (
	text   = map[string]any{"type": "string"}
	texts  = map[string]any{"type": "array", "items": text}
	values = map[string]any{"type": "object", "additionalProperties": text}
	byRule = map[string]any{"type": "object", "additionalProperties": values}
	byArea = map[string]any{"type": "object", "additionalProperties": byRule}
)

// keys is made by init, because the readers refer to it for its names.
var keys []key

func init() {
	keys = []key{
		{"fail-on", "level from which a finding makes the exit code 1; fault unless told",
			map[string]any{"type": "string", "enum": FailLevels}, (*reader).failOn},
		{"exclude", "specs not to read: folders, files, patterns; relative to this file",
			texts, (*reader).exclude},
		{"rules", "folders of the workshop's own rules, relative to this file", texts, (*reader).rules},
		{"skip", "rules not to ask: AREA, or AREA.NAME", texts, (*reader).skip},
		{"limits", "the workshop's own limits, in tables [limits.AREA.RULE]", byArea, (*reader).limits},
		{"effort", "the workshop's own planning weights for a swap, in tables [effort.SET]", byRule, (*reader).effort},
	}
}

// Keys lists the keys of the file with their meaning.
func Keys() (names, docs []string) {
	for _, k := range keys {
		names, docs = append(names, k.name), append(docs, k.doc)
	}
	return names, docs
}

// A reader collects all that is wrong with a file while it reads it.
type reader struct {
	*Config
	tree     *tree.Tree
	problems []source.Problem
}

// problem notes what is wrong with the value at a key path.
func (r *reader) problem(path, want, message string, args ...any) {
	r.problems = append(r.problems, source.Problem{Path: path, Span: r.file.Find(path), Message: fmt.Sprintf(message, args...), Want: want})
}

func (r *reader) read() {
	names, _ := Keys()
	for _, name := range slices.Sorted(maps.Keys(r.file.Root)) {
		i := slices.Index(names, name)
		if i < 0 {
			want := "its keys are " + strings.Join(names, ", ")
			if near := nearest.To(name, names); near != "" {
				want = fmt.Sprintf("did you mean %q?", near)
			}
			span, _ := r.file.Key(name)
			r.problems = append(r.problems, source.Problem{Path: name, Span: span, Message: fmt.Sprintf("%q is not a key of a configuration", name), Want: want})
			continue
		}
		keys[i].read(r, r.file.Root[name])
	}
}

func (r *reader) failOn(raw any) {
	written, _ := raw.(string)
	level, err := ParseFailLevel(written)
	if err != nil {
		r.problem("fail-on", `"danger", "fault", "advice" or "never"`, "found %s", found(raw))
	}
	r.FailOn = level
}

func (r *reader) exclude(raw any) {
	for _, e := range r.texts("exclude", raw) {
		name := path.Join(path.Dir(r.Name), e.text)
		if _, err := path.Match(name, ""); err != nil || !fs.ValidPath(name) {
			r.problem(e.path, "a folder, a file or a pattern such as old-*, relative to this file", "%q is no path below the root", e.text)
			continue
		}
		r.Exclude = append(r.Exclude, name)
	}
}

func (r *reader) rules(raw any) {
	for _, e := range r.texts("rules", raw) {
		name := path.Join(path.Dir(r.Name), e.text)
		sub, err := fs.Sub(r.tree.FS, name)
		if err != nil || !HoldsRules(sub) {
			r.problem(e.path, "a folder with rules NAME.rego, relative to this file and below the same root", "%q holds no rule", e.text)
			continue
		}
		r.Rules = append(r.Rules, policies.Folder{Name: name, FS: sub})
	}
}

// HoldsRules reports whether a folder has a workshop's own rules in it.
func HoldsRules(folder fs.FS) bool {
	names, err := fs.Glob(folder, "*.rego")
	return err == nil && slices.ContainsFunc(names, func(name string) bool { return !strings.HasSuffix(name, "_test.rego") })
}

func (r *reader) skip(raw any) {
	for _, e := range r.texts("skip", raw) {
		r.Skip = append(r.Skip, e.text)
	}
}

// limits reads [limits.AREA.RULE] NAME = "20 in". Which limits there are is not
// known before the rules are: see Engine.
func (r *reader) limits(raw any) {
	r.Limits = map[string]string{}
	r.table("limits", raw, "[limits.AREA.RULE]", func(area string, raw any) {
		r.table(area, raw, "[limits.AREA.RULE]", func(rule string, raw any) {
			r.table(rule, raw, `NAME = "20 in" for each limit`, func(name string, raw any) {
				written, ok := raw.(string)
				if !ok {
					r.problem(name, `a value with its unit, such as "20 in"`, "found %s", found(raw))
					return
				}
				r.Limits[strings.TrimPrefix(name, "limits.")] = written
			})
		})
	})
}

// effort reads [effort.SET] NAME = "4 min".
func (r *reader) effort(raw any) {
	r.Effort = swap.Weights{}
	known := effortNames()
	r.table("effort", raw, "[effort.SET]", func(set string, raw any) {
		r.table(set, raw, `NAME = "4 min" for each weight`, func(path string, raw any) {
			name := strings.TrimPrefix(path, "effort.")
			if !slices.Contains(known, name) {
				want := "a set is joint, fixing or extra, as in " + known[0]
				if near := nearest.To(name, known); near != "" {
					want = fmt.Sprintf("did you mean %s?", near)
				}
				span, _ := r.file.Key(path)
				r.problems = append(r.problems, source.Problem{Path: path, Span: span, Message: fmt.Sprintf("no effort is called %s", name), Want: want})
				return
			}
			written, _ := raw.(string)
			weight, err := unit.ParseNonNegative(written, unit.Duration)
			if err != nil {
				r.problem(path, `minutes with their unit, such as "4 min"`, "found %s", found(raw))
				return
			}
			r.Effort[name] = swap.Seconds(math.Round(weight.SI))
		})
	})
}

// effortNames are the planning weights that there are, as SET.NAME.
func effortNames() []string {
	var names []string
	table := tables.Named([]string{"effort"})["effort"].(map[string]any)
	for _, raw := range table["rows"].([]any) {
		row := raw.(map[string]any)
		names = append(names, fmt.Sprintf("%s.%s", row["set"], row["name"]))
	}
	return names
}

// table calls visit for each entry of a table, with its key path.
func (r *reader) table(at string, raw any, want string, visit func(path string, raw any)) {
	entries, ok := raw.(map[string]any)
	if !ok {
		r.problem(at, want, "found %s", found(raw))
		return
	}
	for _, name := range slices.Sorted(maps.Keys(entries)) {
		visit(at+"."+name, entries[name])
	}
}

// An element is one text of a list, with its path.
type element struct{ path, text string }

// texts reads a list of texts.
func (r *reader) texts(at string, raw any) []element {
	list, ok := raw.([]any)
	if !ok {
		r.problem(at, `a list such as ["one", "two"]`, "found %s", found(raw))
		return nil
	}
	var all []element
	for i, each := range list {
		path := fmt.Sprintf("%s.%d", at, i)
		if written, ok := each.(string); ok {
			all = append(all, element{path, written})
			continue
		}
		r.problem(path, "a text in quotes", "found %s", found(each))
	}
	return all
}

// found names a value in TOML's words.
func found(raw any) string {
	switch raw := raw.(type) {
	case string:
		return fmt.Sprintf("%q", raw)
	case map[string]any:
		return "a table"
	case []any, []map[string]any:
		return "a list"
	}
	return fmt.Sprint(raw)
}

package policies

import (
	"bytes"
	"slices"
	"strings"
	"sync"
)

// An entry is a rule as the registry lists it: what has to be known to ask it.
// Most rules of a run find nothing, and what else there is to know of one is read
// when somebody wants to know it.
type entry struct {
	ruleFile
	subject  string
	stages   []string
	rulebook string
	limits   map[string]Limit

	whole func() *Rule // the same at every call
}

// newEntry reads the METADATA in the text of a rule. That of an own rule is read
// and checked whole; tests have checked that of the built-in rules.
func newEntry(f ruleFile, text []byte) (*entry, error) {
	if f.area != ownArea {
		if e, ok := briefEntry(f, text); ok {
			return e, nil
		}
	}
	meta, err := readMetadata(f.file, text)
	if err != nil {
		return nil, err
	}
	e := &entry{ruleFile: f, subject: meta.Custom.Subject, stages: meta.Custom.Stages, rulebook: meta.Custom.Rulebook}
	e.read(func() metadata { return meta })
	return e, nil
}

// briefEntry reads three keys of METADATA by itself: to have YAML read all of it
// takes as long as to parse the rule. It returns false if one is not in the plain
// form of a line each, as in "subject: lines" and "stages: [raised, hoisting]".
func briefEntry(f ruleFile, text []byte) (*entry, bool) {
	lines, _, ok := metadataBlock(text)
	if !ok {
		return nil, false
	}
	e := &entry{ruleFile: f}
	for line := range lines {
		key, value, _ := bytes.Cut(bytes.TrimRight(line, "\r\n"), []byte(": "))
		switch string(key) {
		case "  subject": // below custom, and not deeper
			e.subject = string(value)
		case "  rulebook":
			e.rulebook = string(value)
		case "  stages":
			if list, closed := strings.CutSuffix(strings.TrimPrefix(string(value), "["), "]"); closed {
				e.stages = strings.Split(list, ", ")
			}
		}
	}
	e.read(func() metadata {
		meta, err := readMetadata(f.file, text)
		if err != nil {
			panic(err) // it is embedded, and a test has read it
		}
		return meta
	})
	plain := !slices.ContainsFunc(append([]string{e.subject, e.rulebook}, e.stages...), func(word string) bool {
		return word == "" || strings.Trim(word, "abcdefghijklmnopqrstuvwxyz0123456789_-") != ""
	})
	return e, plain && len(e.stages) > 0
}

// read sets how the whole rule is read.
func (e *entry) read(meta func() metadata) {
	e.whole = sync.OnceValue(func() *Rule {
		m := meta()
		r := m.rule(e.area, e.name, e.file)
		r.Limits = e.limits
		return r
	})
}

// registered is what the registry holds of the rule.
func (e *entry) registered() map[string]any {
	return map[string]any{
		"area": e.area, "name": e.name, "stages": e.stages, "rulebook": e.rulebook, "subject": e.subject,
	}
}

package report

import (
	"strings"

	"fitup/policies"
	"fitup/policies/judge"
)

// A Note is one line that hangs under a finding.
type Note struct {
	Label string
	At    *judge.Location // the place that it is about; nil for none
	Text  string
}

// Notes are what a reader is told of a finding beside its message. shown tells how
// a file is called from where the reader is.
func Notes(f judge.Finding, shown func(file string) string) []Note {
	var all []Note
	add := func(label, text string) {
		if text != "" {
			all = append(all, Note{Label: label, Text: text})
		}
	}
	add("caution", f.Caution) // before what to do: a warning comes before its step
	add("fix", f.Fix)
	add("source", SourcesShort(f.Sources, f.Confidence))
	if f.Rulebook != policies.Workshop {
		add("rulebook", f.Rulebook)
	}
	for _, path := range f.Guessed {
		add("rests on a guess", path)
	}
	if f.With != "" {
		add("on trial with", shown(f.With)+", which is not the one fitted")
	}
	for _, at := range f.Also {
		all = append(all, Note{"also", &at, at.Path})
	}
	for _, at := range f.See {
		all = append(all, Note{"see", &at, at.Path})
	}
	add("seen by", strings.Join(each(f.SeenBy, shown), ", "))
	return all
}

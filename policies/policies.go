// Package policies holds the rules that judge a spec, and asks them.
//
// A rule is one Rego file, rules/AREA/NAME.rego, with its test beside it. What
// there is to know of a rule (title, level, message, source, fix) stands in its
// METADATA and nowhere else: New reads it, and lists, reports and documentation
// are printed from the Rule that comes of it.
//
// An Engine is made once and asked for each document. It answers with an
// Outcome: what the rules found, what they could not tell, and what rests on a
// guess. An Outcome knows subject paths only; files, lines and waivers are the
// business of the packages above.
package policies

import (
	"embed"
	"io/fs"
)

//go:embed fitup.rego lib rules
var files embed.FS

// BuiltIn returns the rules that are part of fitup, as files: fitup.rego, the
// one entry point; lib/, what rules share; and rules/AREA/, the rules with their
// tests and, in data.yaml, their limits.
func BuiltIn() fs.FS { return files }

// Package report prints what fitup has found. Each form is one pure function of
// its data, in a file of its own; nothing here decides anything.
package report

import (
	"fitup/policies"
	"fitup/policies/judge"
)

// A Check is what `fitup check` found, with what a reader has to know of the
// call.
type Check struct {
	*judge.Report
	Version      string   // of the tool
	Config       string   // configuration file; "" for none
	ConfigDigest string   // of its text
	FailOn       string   // fail level that held
	Strict       bool     // cannot tell counts as failing
	Rules        int      // how many were asked
	Skipped      []string // cars and drivelines that were not judged, because of problems
	Unread       []string // what could not be looked at, with the reason
}

// Closing ends every report.
const Closing = "Local codes, the event's own regulations and a licensed inspector or scrutineer decide. " +
	"This checks a written spec, not the car."

// CheckForms are all forms of a check's report. A new one is a file with its
// function, and a line here.
var CheckForms = []Form[*Check]{
	{"text", "for a reader at a terminal or on paper", Text},
	{"json", "everything, for programs (see fitup schema report)", JSON},
	{"sarif", "SARIF 2.1.0, for code scanning", SARIF},
	{"github", "annotations of GitHub Actions", whole(GitHub)},
	{"junit", "a test report in JUnit XML", JUnit},
	{"markdown", "for a job summary, or a comment on a change", whole(Markdown)},
}

// count counts the findings in force of a level.
func (c *Check) count(level policies.Level) int {
	n := 0
	for _, f := range c.Findings {
		if f.Level == level {
			n++
		}
	}
	return n
}

// WaivedDangers are the dangers that a waiver sets aside: they stay printed.
func (c *Check) WaivedDangers() []judge.Finding {
	var all []judge.Finding
	for _, f := range c.Waived {
		if f.Level == policies.LevelDanger {
			all = append(all, f)
		}
	}
	return all
}

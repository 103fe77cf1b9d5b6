// Package judge makes one run: compositions of a fleet in, a report out. It
// places each finding in its file, applies waivers, says once what several cars
// share, gathers what could not be told by what to measure, and sorts.
//
// A Report is plain data. Printing it is the business of cmd/fitup/report.
package judge

import (
	"fmt"
	"strings"
	"time"

	"fitup/policies"
	"fitup/spec/source"
)

// A Report is what one run found.
type Report struct {
	Date     time.Time
	Digest   string // of rules, limits and tables
	Read     Read
	Problems []Problem        // what could not be read
	Notes    []Problem        // what was read, but cannot be judged as it is written
	Findings []Finding        // in force, sorted by file, place and rule
	Waived   []Finding        // set aside, with the waiver
	Covered  []Finding        // set aside by the baseline
	Measures []Measure        // what to write so that more can be told, most wanted first
	Faults   []policies.Fault // rules that broke
	Taken    Taken            // what configuration and flags took away
	Areas    []string         // areas that judged anything, sorted
	Unjudged int              // danger rules that could not tell, by subject
	Judged   int              // judgements made: rule and subject

	Asked    []string                // ids of the rules that there were to ask, sorted
	Describe func() []*policies.Rule // what is known of those rules; to read it takes a while
	Accounts []Account               // of each composition, in the order that they were given in
	Waivers  []Waiver                // all that hold, whether they set anything aside or not
	Baseline *Baseline               // that set findings aside; nil for none
	Change   *Change                 // what became of the findings of an earlier state; nil if none was judged
}

// Read counts the specs that were read.
type Read struct{ Cars, Drivelines, Shops int }

// Specs is the number of files read.
func (r Read) Specs() int { return r.Cars + r.Drivelines + r.Shops }

// Taken is what a configuration or a flag took away from the judgement. A
// stranger can edit a configuration, so it is always told.
type Taken struct {
	Loosened []policies.Loosened
	Skipped  []string // rules or areas
	Only     []string
	Excluded []string // paths
	Waived   []string // waivers in force, with rule, last day and place
	FailOn   string   // a fail level below the usual one, with its origin
}

// Nothing reports whether nothing was taken away.
func (t Taken) Nothing() bool {
	return len(t.Loosened)+len(t.Skipped)+len(t.Only)+len(t.Excluded)+len(t.Waived) == 0 && t.FailOn == ""
}

// Take notes what was taken away, and of itself the waivers in force.
func (r *Report) Take(t Taken) {
	for _, w := range r.Waivers {
		t.Waived = append(t.Waived, fmt.Sprintf("%s on %s until %s (%s:%d)",
			w.Rule, strings.Join(w.On, ", "), w.Until.Format(time.DateOnly), w.File, w.Line))
	}
	r.Taken = t
}

// A Location is a place in a file.
type Location struct {
	File string
	Path string // key path within the file
	source.Place
}

// A Problem is something wrong with the text of a file.
type Problem struct {
	Location
	Message, Want string
	Excerpt       string
}

// A Finding is what a rule found, in its place.
type Finding struct {
	Rule    string
	Case    string
	Level   policies.Level
	Subject string // as the document names it: driveline. and shop. paths lead to those files
	Location
	Excerpt    string // the line of the file
	Message    string
	Figures    []Figure
	Fix        string
	Caution    string
	Sources    []policies.Source
	Also       []Location // other subjects that it is about
	See        []Location // what it rests on in another file
	Guessed    []string   // paths of guesses that it rests on
	SeenBy     []string   // cars that see a finding in a file that they share
	With       string     // driveline judged with, when it is not the one fitted
	Rulebook   string
	Waiver     *Waiver
	Confidence policies.Confidence
}

// A Figure is one number of a finding as it is printed.
type Figure struct {
	Name      string
	Value     any // SI number, text or path
	Dimension string
	Text      string // in the author's unit
}

// A Waiver is why a finding is set aside.
type Waiver struct {
	Location
	Rule  string
	On    []string // subjects
	Why   string
	Until time.Time
}

// A Measure is one key that rules wait for.
type Measure struct {
	Location          // where it is, or would be, written
	Asked    bool     // it is written "?"
	Rules    []string // rules that wait, sorted
	Dangers  int      // how many of those could find a danger
	Subjects int      // how many judgements wait
}

// Identity is what stays of a finding when the file is edited elsewhere: no
// line, no figure, no wording.
func (f *Finding) Identity() string {
	id := f.Rule + "|" + f.Case + "|" + f.File + "|" + f.Path
	for _, also := range f.Also {
		id += "|" + also.File + ":" + also.Path
	}
	if f.With != "" {
		id += "|with " + f.With
	}
	return id
}

// Identity is what stays of a problem when the file is edited elsewhere.
func (p *Problem) Identity() string { return "|" + p.File + "|" + p.Path + "|" + p.Message }

// Worst is the highest level among the findings in force; 0 with none.
func (r *Report) Worst() policies.Level {
	var worst policies.Level
	for _, f := range r.Findings {
		worst = max(worst, f.Level)
	}
	return worst
}

package report

import (
	"bytes"
	"cmp"
	"encoding/xml"
	"fmt"
	"path"
	"slices"
	"strings"
	"time"

	"fitup/policies/config"
	"fitup/policies/judge"
)

// The types below are the part of JUnit XML that readers agree on. It has no
// standard; https://github.com/testmoapp/junitxml records what is common.
type (
	junitSuites struct {
		XMLName  xml.Name      `xml:"testsuites"`
		Name     string        `xml:"name,attr"`
		Tests    int           `xml:"tests,attr"`
		Failures int           `xml:"failures,attr"`
		Errors   int           `xml:"errors,attr"`
		Skipped  int           `xml:"skipped,attr"`
		Time     string        `xml:"time,attr"`
		Suites   []*junitSuite `xml:"testsuite"`
	}
	junitSuite struct {
		Name     string      `xml:"name,attr"`
		Tests    int         `xml:"tests,attr"`
		Failures int         `xml:"failures,attr"`
		Errors   int         `xml:"errors,attr"`
		Skipped  int         `xml:"skipped,attr"`
		Time     string      `xml:"time,attr"`
		Cases    []junitCase `xml:"testcase"`

		file string
	}
	junitCase struct {
		Name    string       `xml:"name,attr"`
		Class   string       `xml:"classname,attr"`
		File    string       `xml:"file,attr,omitempty"`
		Line    int          `xml:"line,attr,omitempty"`
		Time    string       `xml:"time,attr"`
		Error   *junitReason `xml:"error"`
		Failure *junitReason `xml:"failure"`
		Skipped *junitReason `xml:"skipped"`
		Out     string       `xml:"system-out,omitempty"`
	}
	junitReason struct {
		Message string `xml:"message,attr"`
		Type    string `xml:"type,attr,omitempty"`
		Text    string `xml:",chardata"`
	}
)

// JUnit prints a check as a test report: a suite for each car, with a case for
// each rule that applied to it. A case fails if the check would; what could not
// be told, or is waived, is skipped.
func JUnit(c *Check, _ Style) ([]byte, error) {
	j := junitCheck{Check: c, all: map[string]*standing{}, told: map[string]bool{}}
	for _, f := range c.Findings {
		j.enter(f, "")
	}
	for _, f := range c.Waived {
		j.enter(f, fmt.Sprintf("waived until %s: %s", f.Waiver.Until.Format(time.DateOnly), f.Waiver.Why))
	}
	for _, f := range c.Covered {
		j.enter(f, "covered by the baseline until "+c.Report.Baseline.Until.Format(time.DateOnly))
	}
	j.itself()
	j.taken()
	for _, a := range c.Accounts {
		j.account(a)
	}
	j.texts()
	j.own()
	out := junitSuites{Name: "fitup", Time: "0"}
	for _, s := range j.suites {
		for _, each := range s.Cases {
			s.Tests++
			s.Errors += one(each.Error)
			s.Failures += one(each.Failure)
			s.Skipped += one(each.Skipped)
		}
		out.Suites = append(out.Suites, s)
		out.Tests, out.Errors, out.Failures, out.Skipped = out.Tests+s.Tests, out.Errors+s.Errors, out.Failures+s.Failures, out.Skipped+s.Skipped
	}
	var text bytes.Buffer
	text.WriteString(xml.Header)
	encoder := xml.NewEncoder(&text)
	encoder.Indent("", "  ")
	err := encoder.Encode(out)
	text.WriteByte('\n')
	return text.Bytes(), err
}

func one(r *junitReason) int {
	if r == nil {
		return 0
	}
	return 1
}

// taken tells what was not judged because somebody chose so, as cases left out.
func (j *junitCheck) taken() {
	all := TakenAway(j.Taken)
	if len(all) == 0 {
		return
	}
	s := j.suite("taken away from this judgement", "")
	for _, each := range all {
		word, what, _ := strings.Cut(Plain(each), ": ")
		s.Cases = append(s.Cases, junitCase{Name: word, Class: "fitup.taken-away", Time: "0", Skipped: &junitReason{Message: what}})
	}
}

// A standing is the findings of one identity, and why they are set aside.
type standing struct {
	found []judge.Finding
	aside string
}

type junitCheck struct {
	*Check
	suites []*junitSuite
	all    map[string]*standing // by identity
	told   map[string]bool      // identities that stand in a suite
}

func (j *junitCheck) enter(f judge.Finding, aside string) {
	id := f.Identity()
	if j.all[id] == nil {
		j.all[id] = &standing{aside: aside}
	}
	j.all[id].found = append(j.all[id].found, f)
}

func (j *junitCheck) suite(name, file string) *junitSuite {
	s := &junitSuite{Name: Plain(name), Time: "0", file: file}
	j.suites = append(j.suites, s)
	return s
}

// suiteOf is the suite about a file, a new one if there is none.
func (j *junitCheck) suiteOf(file string) *junitSuite {
	for _, s := range j.suites {
		if s.file == file {
			return s
		}
	}
	return j.suite(file, file)
}

func (s *junitSuite) add(name string, at judge.Location) *junitCase {
	class := cmp.Or(strings.TrimSuffix(s.file, path.Ext(s.file)), "fitup")
	s.Cases = append(s.Cases, junitCase{Name: Plain(name), Class: Plain(class), File: Plain(at.File), Line: at.Line, Time: "0"})
	return &s.Cases[len(s.Cases)-1]
}

// itself is the suite of the run itself. It is never empty, so that no reader
// takes a check without findings for one that did not run.
func (j *junitCheck) itself() {
	s := j.suite("fitup", "")
	if len(j.Faults) == 0 {
		s.add("rules", judge.Location{})
	}
	for _, f := range j.Faults {
		s.add(cmp.Or(f.Rule, "rules"), judge.Location{}).Error = reason(f.Message, "broken rule")
	}
	for _, what := range j.Unread {
		s.add("read", judge.Location{}).Error = reason(what, "not read")
	}
}

// account is the suite of one car, or driveline.
func (j *junitCheck) account(a judge.Account) {
	s := j.suite(a.File, a.File)
	if a.With != "" {
		s.Name, s.file = Plain(a.File+" with "+a.With), a.File+" with "+a.With
	}
	for _, said := range a.Judgements {
		if said.Subjects == 0 && len(said.Unclear) == 0 {
			continue // it applied to nothing
		}
		var found []judge.Finding
		var aside []judge.Finding
		why := ""
		for _, id := range slices.Compact(said.Found) {
			j.told[id] = true
			if st := j.all[id]; st == nil {
				continue
			} else if st.aside == "" {
				found = append(found, st.found...)
			} else {
				aside, why = append(aside, st.found...), st.aside
			}
		}
		at := judge.Location{File: a.File}
		for _, f := range slices.Concat(found, aside) {
			at = f.Location
			break
		}
		one := s.add(said.Rule, at)
		j.verdict(one, found)
		switch {
		case one.Failure != nil:
		case len(said.Unclear) > 0:
			one.Skipped = reason(unclear(said.Unclear), "")
		case len(aside) > 0:
			one.Skipped = reason(why, "")
		}
	}
}

// verdict fills a case in with findings: the case fails if the check would.
func (j *junitCheck) verdict(to *junitCase, found []judge.Finding) {
	if len(found) == 0 {
		return
	}
	worst := found[0]
	var text []string
	for _, f := range found {
		if f.Level > worst.Level {
			worst = f
		}
		text = append(text, fmt.Sprintf("%s: %s: %s", Plain(PlaceText(f.Location)), f.Level, lines(f.Message, label("  fix", f.Fix), label("  caution", f.Caution))))
	}
	all := strings.Join(text, "\n")
	if !config.FailLevel(j.FailOn).Fails(worst.Level) {
		to.Out = all
		return
	}
	message := worst.Message
	if more := len(found) - 1; more > 0 {
		message += fmt.Sprintf(" (and %d more)", more)
	}
	to.Failure = reason(message, worst.Level.String())
	to.Failure.Text = all
}

func unclear(at []judge.Location) string {
	var all []string
	for _, l := range at {
		all = append(all, l.Path)
	}
	return "cannot tell of " + strings.Join(all, ", ")
}

func reason(message, kind string) *junitReason {
	return &junitReason{Message: Plain(message), Type: kind}
}

// texts are the files that cannot be read, and what was not judged for them.
func (j *junitCheck) texts() {
	for _, p := range j.Problems {
		r := reason(p.Message, "spec")
		r.Text = Plain(PlaceText(p.Location)) + ": " + lines(p.Message, label("wanted", p.Want))
		j.suiteOf(p.File).add(specError.ID, p.Location).Error = r
	}
	for _, name := range j.Skipped {
		j.suiteOf(name).add("judged", judge.Location{File: name}).Error = reason("an error in it, or in a file that it needs", "not judged")
	}
}

// own are the findings that no composition has: of waivers, of the baseline, of
// a fleet.
func (j *junitCheck) own() {
	byCase := map[string][]judge.Finding{}
	var order []string
	for _, f := range j.Findings {
		if j.told[f.Identity()] {
			continue
		}
		key := f.Rule + "|" + f.File
		if byCase[key] == nil {
			order = append(order, key)
		}
		byCase[key] = append(byCase[key], f)
	}
	for _, key := range order {
		found := byCase[key]
		j.verdict(j.suiteOf(found[0].File).add(found[0].Rule, found[0].Location), found)
	}
}

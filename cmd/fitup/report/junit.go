package report

import (
	"cmp"
	"encoding/xml"
	"fmt"
	"io"
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
		XMLName  xml.Name     `xml:"testsuites"`
		Name     string       `xml:"name,attr"`
		Tests    int          `xml:"tests,attr"`
		Failures int          `xml:"failures,attr"`
		Errors   int          `xml:"errors,attr"`
		Skipped  int          `xml:"skipped,attr"`
		Time     string       `xml:"time,attr"`
		Suites   []junitMaker `xml:"testsuite"`
	}
	junitSuite struct {
		Name     string      `xml:"name,attr"`
		Tests    int         `xml:"tests,attr"`
		Failures int         `xml:"failures,attr"`
		Errors   int         `xml:"errors,attr"`
		Skipped  int         `xml:"skipped,attr"`
		Time     string      `xml:"time,attr"`
		Cases    []junitCase `xml:"testcase"`
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
func JUnit(w io.Writer, c *Check, _ Style) error {
	j := junitCheck{Check: c, all: map[string]*standing{}, late: map[string][]junitCase{}}
	for i := range c.Findings {
		j.enter(&c.Findings[i], "")
	}
	for i, f := range c.Waived {
		j.enter(&c.Waived[i], fmt.Sprintf("waived until %s: %s", f.Waiver.Until.Format(time.DateOnly), f.Waiver.Why))
	}
	for i := range c.Covered {
		j.enter(&c.Covered[i], "covered by the baseline until "+c.Report.Baseline.Until.Format(time.DateOnly))
	}
	j.texts()
	j.own()
	out := junitSuites{Name: "fitup", Time: "0", Suites: j.suites()}
	for _, make := range out.Suites {
		s := make()
		out.Tests, out.Errors, out.Failures, out.Skipped = out.Tests+s.Tests, out.Errors+s.Errors, out.Failures+s.Failures, out.Skipped+s.Skipped
	}
	if _, err := io.WriteString(w, xml.Header); err != nil {
		return err
	}
	encoder := xml.NewEncoder(w)
	encoder.Indent("", "  ")
	if err := encoder.Encode(out); err != nil {
		return err
	}
	_, err := io.WriteString(w, "\n")
	return err
}

// A junitMaker makes a suite when it is counted, and again when it is written: those of
// a large fleet are not to be there all at once.
type junitMaker func() *junitSuite

// MarshalXML writes the suite.
func (m junitMaker) MarshalXML(e *xml.Encoder, start xml.StartElement) error {
	return e.EncodeElement(m(), start)
}

// suites are those of the run itself, of each car or driveline, and of files that
// are about none.
func (j *junitCheck) suites() []junitMaker {
	all := []junitMaker{j.itself}
	if taken := TakenAway(j.Taken); len(taken) > 0 {
		all = append(all, func() *junitSuite { return takenSuite(taken) })
	}
	placed := map[string]bool{}
	for i := range j.Accounts {
		a := &j.Accounts[i]
		var late []junitCase
		if a.With == "" && !placed[a.File] {
			placed[a.File], late = true, j.late[a.File]
		}
		all = append(all, func() *junitSuite { return j.account(a, late) })
	}
	for _, file := range j.lateFiles {
		if !placed[file] {
			all = append(all, func() *junitSuite { return suite(file, j.late[file]) })
		}
	}
	return all
}

// suite is a suite with its cases counted.
func suite(name string, cases []junitCase) *junitSuite {
	s := &junitSuite{Name: Plain(name), Time: "0", Cases: cases, Tests: len(cases)}
	for _, each := range cases {
		s.Errors += one(each.Error)
		s.Failures += one(each.Failure)
		s.Skipped += one(each.Skipped)
	}
	return s
}

func one(r *junitReason) int {
	if r == nil {
		return 0
	}
	return 1
}

// takenSuite tells what was not judged because somebody chose so, as cases left out.
func takenSuite(all []string) *junitSuite {
	var cases []junitCase
	for _, each := range all {
		word, what, _ := strings.Cut(Plain(each), ": ")
		cases = append(cases, junitCase{Name: word, Class: "fitup.taken-away", Time: "0", Skipped: &junitReason{Message: what}})
	}
	return suite("taken away from this judgement", cases)
}

// A standing is the findings of one identity, and why they are set aside.
type standing struct {
	found []*judge.Finding
	aside string
}

type junitCheck struct {
	*Check
	all       map[string]*standing   // by identity
	late      map[string][]junitCase // cases about a file that are no rule's judgement
	lateFiles []string               // those files, in the order met
}

func (j *junitCheck) enter(f *judge.Finding, aside string) {
	id := f.Identity()
	if j.all[id] == nil {
		j.all[id] = &standing{aside: aside}
	}
	j.all[id].found = append(j.all[id].found, f)
}

// add adds a case about a file.
func (j *junitCheck) add(file string, c junitCase) {
	if j.late[file] == nil {
		j.lateFiles = append(j.lateFiles, file)
	}
	j.late[file] = append(j.late[file], c)
}

// caseOf is a case in the suite of a file.
func caseOf(file, name string, at judge.Location) junitCase {
	class := cmp.Or(strings.TrimSuffix(file, path.Ext(file)), "fitup")
	return junitCase{Name: Plain(name), Class: Plain(class), File: Plain(at.File), Line: at.Line, Time: "0"}
}

// failed is a case that ended in an error.
func failed(c junitCase, r *junitReason) junitCase {
	c.Error = r
	return c
}

// itself is the suite of the run itself. It is never empty, so that no reader
// takes a check without findings for one that did not run.
func (j *junitCheck) itself() *junitSuite {
	var cases []junitCase
	if len(j.Faults) == 0 {
		cases = append(cases, caseOf("", "rules", judge.Location{}))
	}
	for _, f := range j.Faults {
		cases = append(cases, failed(caseOf("", cmp.Or(f.Rule, "rules"), judge.Location{}), reason(f.Message, "broken rule")))
	}
	for _, what := range j.Unread {
		cases = append(cases, failed(caseOf("", "read", judge.Location{}), reason(what, "not read")))
	}
	return suite("fitup", cases)
}

// account is the suite of one car, or driveline, with the late cases about it.
func (j *junitCheck) account(a *judge.Account, late []junitCase) *junitSuite {
	name := a.File
	if a.With != "" {
		name += " with " + a.With
	}
	var cases []junitCase
	for said := range a.Judgements() {
		if !said.Applied && len(said.Unclear) == 0 {
			continue // it applied to nothing
		}
		var found, aside []*judge.Finding
		why := ""
		for _, id := range slices.Compact(said.Found) {
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
		one := caseOf(name, said.Rule, at)
		j.verdict(&one, found)
		switch {
		case one.Failure != nil:
		case len(said.Unclear) > 0:
			one.Skipped = reason(unclear(said.Unclear), "")
		case len(aside) > 0:
			one.Skipped = reason(why, "")
		}
		cases = append(cases, one)
	}
	return suite(name, slices.Concat(cases, late))
}

// verdict fills a case in with findings: the case fails if the check would.
func (j *junitCheck) verdict(to *junitCase, found []*judge.Finding) {
	if len(found) == 0 {
		return
	}
	worst := found[0]
	var text []string
	for _, f := range found {
		if f.Level > worst.Level {
			worst = f
		}
		text = append(text, fmt.Sprintf("%s: %s: %s", Plain(PlaceText(f.Location)), f.Level, lines(f.Message, label("  caution", f.Caution), label("  fix", f.Fix))))
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

func unclear(at []judge.Key) string {
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
		j.add(p.File, failed(caseOf(p.File, specError.ID, p.Location), r))
	}
	for _, name := range j.Skipped {
		r := reason("an error in it, or in a file that it needs", "not judged")
		j.add(name, failed(caseOf(name, "judged", judge.Location{File: name}), r))
	}
}

// own are the findings that no composition has: of waivers, of the baseline, of
// a fleet.
func (j *junitCheck) own() {
	told := map[string]bool{} // identities that stand in the suite of an account
	for _, a := range j.Accounts {
		for _, said := range a.Said {
			for _, id := range said.Found {
				told[id] = true
			}
		}
	}
	byCase := map[[2]string][]*judge.Finding{} // by rule and file
	var order [][2]string
	for i := range j.Findings {
		f := &j.Findings[i]
		if told[f.Identity()] {
			continue
		}
		key := [2]string{f.Rule, f.File}
		if byCase[key] == nil {
			order = append(order, key)
		}
		byCase[key] = append(byCase[key], f)
	}
	for _, key := range order {
		found := byCase[key]
		one := caseOf(key[1], key[0], found[0].Location)
		j.verdict(&one, found)
		j.add(key[1], one)
	}
}

package report

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"flag"
	"fmt"
	"io"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"fitup/policies"
	"fitup/policies/judge"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// forged is what somebody might write into a spec so that a report says what
// they want. No form may let any of it through as more than text.
const forged = "x\n::error file=a.toml::forged\r\n%0A::warning::forged ##[error]forged ]]><failure/> " +
	"<script>forged()</script> <!-- ![i](http://example.org/i) [l](https://example.org) www.example.org `b` ``c`` | a | *s* _u_ ~~d~~ " +
	"@everyone #1 &lt; \x1b[31mred\x1b[0m \u202egnp.exe \u2028 \x00 \ufffe \xff"

const forgedFile = "::error,a b\n## x`<i>@all\u202e.toml"

// rich is a check with one of everything that forms for machines have to say.
func rich() *Check {
	day := time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC)
	rule := func(id string, level policies.Level, more policies.Rule) *policies.Rule {
		more.ID, more.Level = id, level
		more.Area, more.Name, _ = strings.Cut(id, ".")
		more.Rulebook, more.Confidence = policies.Workshop, policies.Practice
		more.Sources = []policies.Source{{Key: "common-practice", Clause: "two people know"}}
		return &more
	}
	asked := []*policies.Rule{
		rule("fuel.spray", policies.LevelDanger, policies.Rule{
			Title: "Fuel over a hot part", Description: "A union that lets go\nsprays what is under it.", Fix: "move it", Caution: "let it cool",
			Limits: map[string]policies.Limit{"gap": {Written: "50 mm", Source: "common-practice", Clause: "a hand's width"}}, Formerly: []string{"fuel.hot"},
		}),
		rule("lines.age", policies.LevelFault, policies.Rule{Title: "An old hose", Description: "Rubber hardens.", Fix: "renew it"}),
		rule("lines.tied", policies.LevelAdvice, policies.Rule{Title: "A loose line", Description: "It chafes.", Fix: "tie it up"}),
		rule("own.mine", policies.LevelFault, policies.Rule{Title: forged, Description: forged, Fix: forged, Caution: forged}),
	}
	find := func(r *policies.Rule, at judge.Location, message string) judge.Finding {
		return judge.Finding{
			Rule: r.ID, Level: r.Level, Subject: at.Path, Location: at, Message: message, Fix: r.Fix, Caution: r.Caution,
			Sources: r.Sources, Confidence: r.Confidence, Rulebook: r.Rulebook,
		}
	}
	spray := find(asked[0], at("b.toml", 7, 9, 31, "lines.feed"), "lines.feed sprays on the exhaust")
	spray.Excerpt, spray.See = `hose = "4 m of ptfe-8 [1](2)"`, []judge.Location{at("a.toml", 2, 1, 3, "exhaust")}
	age := find(asked[1], at("a.toml", 3, 1, 4, "lines.oil"), "lines.oil is 9 years old")
	age.Also, age.SeenBy, age.Guessed = []judge.Location{at("b.toml", 9, 2, 3, "lines.oil.to")}, []string{"b.toml", forgedFile}, []string{"lines.oil.hose.made"}
	tied := find(asked[2], at("b.toml", 12, 1, 12, "lines.back"), "nothing ties lines.back up")
	tied.EndLine = 14
	mine := find(asked[3], at(forgedFile, 1, 1, 2, "car."+forged), forged)
	mine.Excerpt, mine.With = forged, forgedFile
	waived := find(asked[0], at("b.toml", 20, 1, 9, "lines.vent"), "lines.vent sprays on the exhaust")
	waived.Waiver = &judge.Waiver{Location: at("b.toml", 40, 1, 9, "waivers.vent"), Rule: "fuel.spray", On: []string{"lines.vent"}, Why: "shielded; " + forged, Until: day.AddDate(0, 1, 0)}
	covered := find(asked[1], at("b.toml", 22, 1, 9, "lines.vent"), "lines.vent is 8 years old")
	expired := find(judge.Own()[1], at("old.txt", 5, 1, 17, "until"), "a line of the baseline")
	ids := func(found ...judge.Finding) (out []string) {
		for _, f := range found {
			out = append(out, f.Identity())
		}
		return out
	}
	four := []string{"fuel.spray", "lines.age", "lines.tied", "own.mine"}
	return &Check{
		Report: &judge.Report{
			Date: day, Digest: strings.Repeat("0", 64), Read: judge.Read{Cars: 2, Drivelines: 1},
			Problems: []judge.Problem{{Location: at("c.toml", 2, 1, 5, "car"), Message: `"nane" is not a key`, Want: `did you mean "name"?`, Excerpt: `nane = "x"`}},
			Notes:    []judge.Problem{{Location: at("s.toml", 4, 9, 16, "stands.tall.rated"), Message: "a rating that does not say for what", Want: "each or pair"}},
			Findings: []judge.Finding{mine, age, spray, tied, expired}, Waived: []judge.Finding{waived}, Covered: []judge.Finding{covered},
			Measures: []judge.Measure{
				{Location: at("b.toml", 5, 1, 2, "lines.feed.near"), Asked: true, Rules: []string{"fuel.spray", "lines.age"}, Dangers: 1, Subjects: 3},
				{Location: at(forgedFile, 5, 1, 2, forged), Rules: []string{"lines.age"}, Subjects: 1},
			},
			Faults: []policies.Fault{{Message: "no answer"}, {Rule: "own.mine", Message: "own/mine.rego:3: it broke; " + forged}},
			Taken: judge.Taken{
				Loosened: []policies.Loosened{{Limit: "fuel.spray.gap", Rule: "fuel.spray", Level: policies.LevelDanger, Was: "50 mm", Is: "5 mm", Looser: true}},
				Skipped:  []string{"oil (.fitup.toml)"}, Only: []string{"fuel (--only)"}, Excluded: []string{forged}, FailOn: "danger (--fail-on)",
			},
			Areas: []string{"fuel", "lines"}, Unjudged: 1, Judged: 12, Describe: func() []*policies.Rule { return asked },
			Accounts: []judge.Account{
				{File: "b.toml", Rules: four, Reach: []judge.Reach{judge.Applied, judge.Applied, judge.Applied, judge.Idle}, Said: []judge.Judgement{
					{Rule: "fuel.spray", Applied: true, Found: ids(spray, waived)},
					{Rule: "lines.age", Applied: true, Unclear: []judge.Key{{File: "b.toml", Path: "lines.feed"}}, Found: ids(age, covered)},
					{Rule: "lines.tied", Applied: true, Found: ids(tied)},
				}},
				{File: forgedFile, With: "a.toml", Rules: four, Reach: []judge.Reach{judge.Outside, judge.Applied, judge.Outside, judge.Applied}, Said: []judge.Judgement{
					{Rule: "own.mine", Applied: true, Found: ids(mine)},
				}},
				{File: "a.toml", Alone: true, Rules: four, Reach: []judge.Reach{judge.Idle, judge.Applied, judge.Idle, judge.Idle}, Said: []judge.Judgement{
					{Rule: "lines.age", Applied: true, Found: ids(covered)},
				}},
			},
			Baseline: &judge.Baseline{Name: "old.txt", Until: day.AddDate(0, 6, 0)},
		},
		Version: "v1.2.3", Config: ".fitup.toml", ConfigDigest: strings.Repeat("1", 64), FailOn: "fault", Rules: 4,
		Skipped: []string{"c.toml"}, Unread: []string{"x: reading it is not permitted; " + forged},
	}
}

// compared is rich beside an earlier state: age was there, spray is new, tied
// could not be told before, two others are gone.
func compared() *Check {
	c := rich()
	find := func(i int) judge.Finding { return c.Findings[i] }
	gone, lost := find(1), find(1)
	gone.Path, gone.Line, gone.EndLine, gone.Message = "lines.back", 30, 30, "lines.back is 7 years old"
	lost.Path, lost.Line, lost.EndLine, lost.Message = "lines.up", 31, 31, "lines.up is 7 years old; "+forged
	age := find(1)
	c.Change = &judge.Change{
		Since:   "main " + forged,
		Appears: []judge.Turn{{Finding: find(2), Other: judge.Clear}, {Finding: find(3), Other: judge.Unclear}},
		Goes:    []judge.Turn{{Finding: gone, Other: judge.Clear}, {Finding: lost, Other: judge.Unclear}, {Finding: c.Waived[0], Other: judge.SetAside}},
		Stays:   []string{age.Identity()},
		Shifts: []judge.Shift{
			{Kind: judge.WaiverHolds, What: "fuel.spray on lines.vent in b.toml until 2026-04-01", Place: c.Waived[0].Waiver.Location},
			{Kind: judge.RuleSkipped, What: "oil (.fitup.toml)", Back: true},
		},
	}
	for _, f := range []judge.Finding{age, gone, lost, c.Waived[0]} {
		c.Change.Known = append(c.Change.Known, f.Identity())
	}
	slices.Sort(c.Change.Known)
	return c
}

// calm is a check that found nothing.
func calm() *Check {
	c := rich()
	return &Check{
		Report:  &judge.Report{Date: c.Date, Digest: c.Digest, Read: judge.Read{Cars: 1}, Judged: 3, Describe: func() []*policies.Rule { return c.Describe()[:3] }, Accounts: []judge.Account{{File: "a.toml", Rules: []string{"lines.age"}, Reach: []judge.Reach{judge.Applied}}}},
		Version: "(devel)", FailOn: "fault", Rules: 3,
	}
}

var machineForms = []struct {
	file  string
	print func(io.Writer, *Check, Style) error
}{{"sarif", SARIF}, {"github.txt", whole(GitHub)}, {"junit.xml", JUnit}, {"md", whole(Markdown)}}

// TestForms holds whole outputs; read a change before you accept it with -update.
func TestForms(t *testing.T) {
	for name, check := range map[string]*Check{"rich": rich(), "compared": compared(), "calm": calm()} {
		for _, form := range machineForms {
			t.Run(name+"."+form.file, func(t *testing.T) {
				got := printed(t, form.print, check)
				golden := filepath.Join("testdata", name+"."+form.file)
				if *update {
					if err := os.WriteFile(golden, got, 0o644); err != nil {
						t.Fatal(err)
					}
				}
				want, err := os.ReadFile(golden)
				if err != nil {
					t.Fatal(err)
				}
				if diff := cmp.Diff(string(want), string(got)); diff != "" {
					t.Errorf("-want +got:\n%s", diff)
				}
			})
		}
	}
}

func printed[T any](t testing.TB, print func(io.Writer, T, Style) error, data T) []byte {
	t.Helper()
	return printedIn(t, print, data, plainStyle())
}

func printedIn[T any](t testing.TB, print func(io.Writer, T, Style) error, data T, style Style) []byte {
	t.Helper()
	var got bytes.Buffer
	if err := print(&got, data, style); err != nil {
		t.Fatal(err)
	}
	return got.Bytes()
}

// TestFormsAreText holds that no form lets a control character, or one that
// turns or hides text, through from a spec.
func TestFormsAreText(t *testing.T) {
	for _, form := range machineForms {
		for _, c := range []*Check{rich(), compared()} {
			got := printed(t, form.print, c)
			if form.file == "sarif" { // JSON writes them as escapes of its own, and its readers show them
				continue
			}
			for i, r := range string(got) {
				if r != '\n' && forges(r) || r == '\ufffe' && form.file == "junit.xml" {
					t.Errorf("%s: %q at byte %d: %q", form.file, r, i, got[max(0, i-40):i])
				}
			}
		}
	}
}

// TestSARIF checks what the schema cannot: the rules across objects of the
// standard, and what code scanning asks for.
func TestSARIF(t *testing.T) {
	for name, c := range map[string]*Check{"rich": rich(), "compared": compared(), "calm": calm()} {
		t.Run(name, func(t *testing.T) {
			var log sarifLog
			decoder := json.NewDecoder(bytes.NewReader(printed(t, SARIF, c)))
			decoder.DisallowUnknownFields()
			if err := decoder.Decode(&log); err != nil {
				t.Fatal(err)
			}
			run := log.Runs[0]
			if log.Version != "2.1.0" || run.ColumnKind != "unicodeCodePoints" || run.Tool.Driver.Name != "fitup" {
				t.Errorf("version %s, columns %s, driver %s", log.Version, run.ColumnKind, run.Tool.Driver.Name)
			}
			if got := run.Invocations[0].Successful; got != (len(c.Faults) == 0) {
				t.Errorf("successful is %t", got)
			}
			for _, r := range run.Tool.Driver.Rules {
				for _, text := range []string{r.Short.Text, r.Full.Text, r.Help.Text, r.Help.Markdown} {
					if text == "" {
						t.Errorf("%s: a text is empty", r.ID)
					}
				}
			}
			if !slices.IsSortedFunc(run.Tool.Driver.Rules, func(a, b sarifRule) int { return strings.Compare(a.ID, b.ID) }) {
				t.Error("the rules are not sorted")
			}
			for _, r := range run.Results {
				if got := run.Tool.Driver.Rules[r.RuleIndex].ID; got != r.RuleID {
					t.Errorf("%s is %s by its index", r.RuleID, got)
				}
				if r.Suppressions == nil {
					t.Errorf("%s: suppressions are null: 3.27.23", r.RuleID)
				}
				if (r.Baseline == "") != (c.Change == nil) {
					t.Errorf("%s: baselineState %q: all results have one, or none has: 3.27.24", r.RuleID, r.Baseline)
				}
				if len(r.Fingerprints[sarifFingerprint]) != 32 || r.Message.Text == "" {
					t.Errorf("%s: fingerprint %q, message %q", r.RuleID, r.Fingerprints, r.Message.Text)
				}
				at := r.Locations[0].Physical
				if name, err := url.PathUnescape(strings.TrimPrefix(at.Artifact.URI, "./")); err != nil || strings.ContainsAny(at.Artifact.URI, " \n<>") || filepath.IsAbs(name) {
					t.Errorf("uri %q: %v", at.Artifact.URI, err)
				}
				if at.Region.StartLine == at.Region.EndLine && at.Region.EndColumn < at.Region.StartColumn {
					t.Errorf("%s: columns %d to %d", r.RuleID, at.Region.StartColumn, at.Region.EndColumn)
				}
			}
		})
	}
}

func TestSARIFBaselineStates(t *testing.T) {
	var log sarifLog
	if err := json.Unmarshal(printed(t, SARIF, compared()), &log); err != nil {
		t.Fatal(err)
	}
	got := map[string]string{}
	for _, r := range log.Runs[0].Results {
		if len(r.Locations[0].Logical) > 0 {
			got[r.RuleID+" "+r.Locations[0].Logical[0].Name] = r.Baseline
		}
	}
	for key, want := range map[string]string{
		"fuel.spray lines.feed": "new", "lines.tied lines.back": "new", "lines.age lines.oil": "unchanged",
		"lines.age lines.back": "absent", "lines.age lines.up": "absent", "fuel.spray lines.vent": "unchanged", "spec.error car": "new",
	} {
		if got[key] != want {
			t.Errorf("%s is %q, want %q", key, got[key], want)
		}
	}
}

// TestSARIFSchema validates with the schema of OASIS, which is not part of this
// project: its path comes from the environment.
func TestSARIFSchema(t *testing.T) {
	file := os.Getenv("FITUP_SARIF_SCHEMA")
	if file == "" {
		t.Skip("left out: FITUP_SARIF_SCHEMA does not name the file of the SARIF 2.1.0 schema")
	}
	schema, err := jsonschema.NewCompiler().Compile(file)
	if err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]*Check{"rich": rich(), "compared": compared(), "calm": calm()} {
		v, err := jsonschema.UnmarshalJSON(bytes.NewReader(printed(t, SARIF, c)))
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(v); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// TestJSONOfAChange holds the JSON form of a change, and of a baseline, to its
// published schema.
func TestJSONOfAChange(t *testing.T) {
	text, err := JSONSchema()
	if err != nil {
		t.Fatal(err)
	}
	parsed, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	if err := compiler.AddResource("report.json", parsed); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("report.json")
	if err != nil {
		t.Fatal(err)
	}
	v, err := jsonschema.UnmarshalJSON(bytes.NewReader(printed(t, JSON, compared())))
	if err != nil {
		t.Fatal(err)
	}
	if err := schema.Validate(v); err != nil {
		t.Error(err)
	}
	var got struct {
		Covered []struct{ Identity string }
		Change  struct {
			Appears, Goes []struct{ Identity, Other string }
			Stays         []string
			Shifts        []struct{ Kind string }
		}
	}
	if err := json.Unmarshal(printed(t, JSON, compared()), &got); err != nil {
		t.Fatal(err)
	}
	if c := got.Change; len(got.Covered) != 1 || len(c.Appears) != 2 || c.Appears[1].Other != string(judge.Unclear) || len(c.Goes) != 3 || len(c.Stays) != 1 || len(c.Shifts) != 2 {
		t.Errorf("read back %+v", got)
	}
}

// A commandForm is a workflow command as the runner reads it: leading space is
// dropped, "::" has to begin the line, the next "::" ends the properties.
var commandForm = regexp.MustCompile(`^\s*::([a-z-]+)( [^:]*)?::(.*)$`)

func readCommands(t *testing.T, text []byte) (commands []annotation, log []string) {
	t.Helper()
	undo := strings.NewReplacer("%25", "%", "%0D", "\r", "%0A", "\n", "%3A", ":", "%2C", ",")
	for line := range strings.Lines(string(text)) {
		line = strings.TrimSuffix(line, "\n")
		m := commandForm.FindStringSubmatch(line)
		if m == nil {
			if strings.HasPrefix(strings.TrimSpace(line), "::") || strings.Contains(line, "##[") {
				t.Errorf("neither a command nor plain: %q", line)
			}
			log = append(log, line)
			continue
		}
		a := annotation{kind: m[1], text: undo.Replace(m[3])}
		for _, property := range strings.Split(strings.TrimSpace(m[2]), ",") {
			name, value, ok := strings.Cut(property, "=")
			if !ok || value == "" {
				t.Errorf("property %q in %q", property, line)
			}
			value = undo.Replace(value)
			switch name {
			case "file":
				a.at.File = value
			case "line":
				fmt.Sscan(value, &a.at.Line)
			case "endLine":
				fmt.Sscan(value, &a.at.EndLine)
			case "col":
				fmt.Sscan(value, &a.at.Column)
			case "endColumn":
				fmt.Sscan(value, &a.at.EndColumn)
			case "title":
				a.title = value
			default:
				t.Errorf("property %q in %q", name, line)
			}
		}
		commands = append(commands, a)
	}
	return commands, log
}

func TestGitHubReadBack(t *testing.T) {
	c := rich()
	commands, log := readCommands(t, printed(t, whole(GitHub), c))
	want := annotations(c)
	slices.SortStableFunc(want, func(a, b annotation) int {
		return slices.Index(annotationKinds, a.kind) - slices.Index(annotationKinds, b.kind)
	})
	if len(commands) != len(want) {
		t.Fatalf("%d commands of %d annotations", len(commands), len(want))
	}
	for i, a := range commands {
		if a.kind != want[i].kind || a.at.File != Plain(want[i].at.File) || a.at.Line != want[i].at.Line || !strings.Contains(a.title, "forged") && a.title != want[i].title {
			t.Errorf("%d: read %+v of %+v", i, a, want[i])
		}
	}
	if got := log[len(log)-1]; got != Closing {
		t.Errorf("it ends with %q", got)
	}
}

func TestGitHubSaysWhatIsCut(t *testing.T) {
	c := calm()
	for i := range 13 {
		f := rich().Findings[1]
		f.Line, f.EndLine = i+1, i+1
		c.Findings = append(c.Findings, f)
	}
	spray := rich().Findings[2]
	spray.File = forgedFile
	c.Findings = append(c.Findings, spray)
	commands, log := readCommands(t, printed(t, whole(GitHub), c))
	if len(commands) != 11 || commands[0].kind != "error" {
		t.Errorf("%d commands, the first an %s; want 11, errors first", len(commands), commands[0].kind)
	}
	want := []string{
		"Not annotated, as only 10 of a kind are kept: 3 warnings.",
		"- a.toml:11:1: fault: lines.age: lines.oil is 9 years old",
		"- a.toml:12:1: fault: lines.age: lines.oil is 9 years old",
		"- a.toml:13:1: fault: lines.age: lines.oil is 9 years old",
		"1 danger, 13 faults, no pieces of advice.",
		Closing,
	}
	if diff := cmp.Diff(want, log); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

// TestJUnitReadBack reads cases back by a reader of its own, and holds the sums.
func TestJUnitReadBack(t *testing.T) {
	text := printed(t, JUnit, rich())
	decoder := xml.NewDecoder(bytes.NewReader(text))
	known := []string{"testsuites", "testsuite", "testcase", "error", "failure", "skipped", "system-out"}
	for {
		token, err := decoder.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		if start, ok := token.(xml.StartElement); ok && !slices.Contains(known, start.Name.Local) {
			t.Errorf("element %s", start.Name.Local)
		}
	}
	var all readSuites
	if err := xml.Unmarshal(text, &all); err != nil {
		t.Fatal(err)
	}
	got := map[string]string{}
	sum := [4]int{}
	for _, s := range all.Suites {
		for _, one := range s.Cases {
			how := "passes"
			sum[0]++
			switch {
			case one.Error != nil:
				sum[1]++
				how = "error"
			case one.Failure != nil:
				sum[2]++
				how = "fails: " + one.Failure.Type
			case one.Skipped != nil:
				sum[3]++
				how, _, _ = strings.Cut(one.Skipped.Message, " ")
			}
			got[strings.Replace(s.Name, Plain(forgedFile), "FORGED", 1)+" "+one.Name] = how
		}
	}
	want := map[string]string{
		"fitup rules": "error", "fitup own.mine": "error", "fitup read": "error",
		"b.toml fuel.spray": "fails: danger", "b.toml lines.age": "fails: fault", "b.toml lines.tied": "passes",
		"FORGED with a.toml lines.age": "passes", "FORGED with a.toml own.mine": "fails: fault",
		"a.toml lines.age":  "covered",
		"c.toml spec.error": "error", "c.toml judged": "error",
		"old.txt baseline.expired": "fails: fault",

		"taken away from this judgement limit of a danger": "fuel.spray.gap", "taken away from this judgement rules skipped": "oil",
		"taken away from this judgement no rules but": "fuel", "taken away from this judgement specs excluded": `x\x0a::error`,
		"taken away from this judgement fails only from": "danger",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
	if want := [4]int{all.Tests, all.Errors, all.Failures, all.Skipped}; sum != want {
		t.Errorf("counted %v, written %v", sum, want)
	}
}

// readSuites is what a reader makes of JUnit XML.
type readSuites struct {
	Tests    int          `xml:"tests,attr"`
	Failures int          `xml:"failures,attr"`
	Errors   int          `xml:"errors,attr"`
	Skipped  int          `xml:"skipped,attr"`
	Suites   []junitSuite `xml:"testsuite"`
}

func TestJUnitUnclear(t *testing.T) {
	c := calm()
	c.Accounts[0].Said = []judge.Judgement{{Rule: "lines.age", Applied: true, Unclear: []judge.Key{{File: "a.toml", Path: "lines.feed"}}}}
	var all readSuites
	if err := xml.Unmarshal(printed(t, JUnit, c), &all); err != nil {
		t.Fatal(err)
	}
	if got := all.Suites[1].Cases[0].Skipped; got == nil || got.Message != "cannot tell of lines.feed" {
		t.Errorf("%+v; cannot tell is never a pass", got)
	}
}

func TestMarkdownStaysShort(t *testing.T) {
	c := calm()
	for i := range 2000 {
		f := rich().Findings[1]
		f.Line = i + 1
		c.Findings = append(c.Findings, f)
	}
	text := string(printed(t, whole(Markdown), c))
	if len(text) > 65_536 {
		t.Errorf("%d bytes are too many for a comment", len(text))
	}
	shown := strings.Count(text, "years old")
	if !strings.Contains(text, fmt.Sprintf("- and %d findings more, for which there is no room here", 2000-shown)) {
		t.Errorf("%d are shown, and the rest is not counted", shown)
	}
	if !strings.HasSuffix(text, markdown(Closing)+"\n") {
		t.Error("the closing line is cut off")
	}
}

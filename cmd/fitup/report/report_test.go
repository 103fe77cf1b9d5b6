package report

import (
	"bytes"
	"io/fs"
	"path"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/source"
	"fitup/spec/workings"
)

func at(file string, line, column, end int, path string) judge.Location {
	return judge.Location{File: file, Path: path, Place: source.Place{Line: line, Column: column, EndLine: line, EndColumn: end}}
}

// everything is a check in which no list is empty.
func everything() *Check {
	day := time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC)
	practice := []policies.Source{{Key: "common-practice", Clause: "two people know"}}
	spray := judge.Finding{
		Rule: "fuel.spray", Case: "hot", Level: policies.LevelDanger, Subject: "lines.feed", Location: at("b.toml", 7, 9, 13, "lines.feed"),
		Excerpt: `hose = "4 m of ptfe-8"`, Message: "lines.feed sprays on the exhaust, which is 400 C there, and on the arm of whoever leans over it",
		Figures: []judge.Figure{{Name: "hot", Value: 673.15, Dimension: "temperature", Text: "400 C"}},
		Fix:     "move it", Caution: "let it cool", Sources: []policies.Source{{Key: "sae-j514", Clause: "37-degree flare"}},
		Confidence: policies.Published, Rulebook: policies.Workshop,
	}
	shared := judge.Finding{
		Rule: "lines.old", Level: policies.LevelAdvice, Subject: "driveline.lines.oil", Location: at("a.toml", 3, 1, 4, "lines.oil"),
		Message: "lines.oil is old", Fix: "renew it", Sources: practice, Confidence: policies.Memory, Rulebook: "hill-climb",
		Also: []judge.Location{at("b.toml", 9, 2, 3, "lines.oil.to")}, Guessed: []string{"lines.oil.hose.made"},
		SeenBy: []string{"b.toml", "c.toml"}, With: "a.toml",
	}
	waived := spray
	waived.Waiver = &judge.Waiver{Location: at("b.toml", 40, 1, 9, "waivers.spray"), Why: "shielded since", Until: day}
	minor := shared
	minor.Waiver = &judge.Waiver{Location: at("a.toml", 41, 1, 9, "waivers.old"), Why: "renewed in winter", Until: day}
	return &Check{
		Report: &judge.Report{
			Date: day, Digest: strings.Repeat("0", 64), Read: judge.Read{Cars: 2, Drivelines: 1},
			Problems: []judge.Problem{{Location: at("b.toml", 2, 1, 5, "car"), Message: `"nane" is not a key`, Want: `did you mean "name"?`, Excerpt: `nane = "x"`}},
			Notes:    []judge.Problem{{Location: at("s.toml", 4, 9, 16, "stands.tall.rated"), Message: "a rating that does not say for what", Want: "each or pair"}},
			Findings: []judge.Finding{shared, spray}, Waived: []judge.Finding{waived, minor},
			Measures: []judge.Measure{{Location: at("b.toml", 5, 1, 2, "lines.feed.near"), Asked: true, Rules: []string{"fuel.spray", "lines.old"}, Dangers: 1, Subjects: 3}},
			Faults:   []policies.Fault{{Message: "no answer"}, {Rule: "own.mine", Message: "own/mine.rego:3: it broke"}},
			Taken: judge.Taken{
				Loosened: []policies.Loosened{{Limit: "fuel.spray.gap", Rule: "fuel.spray", Level: policies.LevelDanger, Was: "50 mm", Is: "5 mm", Looser: true}},
				Skipped:  []string{"oil (.fitup.toml)"}, Only: []string{"fuel (--only)"}, Excluded: []string{"old (.fitup.toml)"}, FailOn: "never (--fail-on)",
			},
			Areas: []string{"fuel", "lines"}, Unjudged: 1, Judged: 12,
		},
		Version: "v1", Config: ".fitup.toml", ConfigDigest: strings.Repeat("1", 64), FailOn: "never", Strict: true, Rules: 2,
		Skipped: []string{"b.toml"}, Unread: []string{"x: reading it is not permitted"},
	}
}

func plainStyle() Style {
	return Style{Width: 80, Whole: true, Shown: func(file string) string { return "cars/" + file }}
}

func TestText(t *testing.T) {
	got := printed(t, Text, everything())
	const want = `1 danger found, 1 danger waived, 1 danger could not be judged: see what to
measure.

cars/b.toml:7:9: danger: lines.feed sprays on the exhaust, which is 400 C there, and on the arm of whoever leans over it [fuel.spray]
    7 | hose = "4 m of ptfe-8"
      |         ^^^^
  caution: let it cool
  fix: move it
  source: SAE J514: 37-degree flare

cars/a.toml:3:1: advice: lines.oil is old [lines.old]
  fix: renew it
  source: from memory: common practice: two people know
  rulebook: hill-climb
  rests on a guess: lines.oil.hose.made
  on trial with: cars/a.toml, which is not the one fitted
  also: cars/b.toml:9:2: lines.oil.to
  seen by: cars/b.toml, cars/c.toml

cars/b.toml:2:1: error: "nane" is not a key: did you mean "name"?
    2 | nane = "x"
      | ^^^^

not judged: cars/b.toml: an error in it, or in a file that it needs
not read: x: reading it is not permitted

cars/b.toml:7:9: waived danger: lines.feed sprays on the exhaust, which is 400 C there, and on the arm of whoever leans over it [fuel.spray]
  waived: until 2026-03-01, cars/b.toml:40:1: shielded since
  caution: let it cool

cars/s.toml:4:9: unclear: a rating that does not say for what: each or pair

What to measure, most wanted first:
  cars/b.toml:5:1: lines.feed.near (written "?"): 2 rules wait (1 danger)

Taken away from this judgement:
  limit of a danger: fuel.spray.gap is 5 mm, looser than 50 mm
  rules skipped: oil (.fitup.toml)
  no rules but: fuel (--only)
  specs excluded: old (.fitup.toml)
  fails only from: never (--fail-on)

rule broken: one of the rules: no answer
rule broken: own.mine: own/mine.rego:3: it broke

3 specs read (2 cars, 1 driveline, no shop files); 12 judgements by 2 rules on
2026-03-01.
1 error, 1 danger, no faults, 1 piece of advice, 2 findings waived (1 danger), 1
key to measure. 1 danger could not be judged: see what to measure.

Before you go near:
  fuel: no flame, spark or hot lamp near; air the room, isolate the battery, let
        the rail pressure off into a rag and have an extinguisher at hand.

Local codes, the event's own regulations and a licensed inspector or scrutineer
decide. This checks a written spec, not the car.
`
	if diff := cmp.Diff(want, string(got)); diff != "" {
		t.Error(diff)
	}
}

// On a terminal the first line of a finding is broken like any other.
func TestTextOnTerminal(t *testing.T) {
	style := plainStyle()
	style.Whole, style.Width = false, 60
	got := printedIn(t, Text, everything(), style)
	for line := range strings.Lines(string(got)) {
		if n := len([]rune(strings.TrimSuffix(line, "\n"))); n > 60 {
			t.Errorf("%d columns: %s", n, line)
		}
	}
	want := `cars/b.toml:7:9: danger: lines.feed sprays on the exhaust,
    which is 400 C there, and on the arm of whoever leans
    over it [fuel.spray]
`
	if !strings.Contains(string(got), want) {
		t.Errorf("the finding is not broken as it should be:\n%s", got)
	}
}

// All keys are shown only where that is asked for; the rest is counted.
func TestMeasuresShown(t *testing.T) {
	c := everything()
	for range 14 {
		c.Measures = append(c.Measures, c.Measures[0])
	}
	for all, want := range map[bool]int{false: 10, true: 15} {
		style := plainStyle()
		style.All = all
		got := printedIn(t, Text, c, style)
		if n := strings.Count(string(got), "lines.feed.near"); n != want {
			t.Errorf("all %v: %d keys are shown, want %d", all, n, want)
		}
		if counted := strings.Contains(string(got), "and 5 more: --all shows them"); counted == all {
			t.Errorf("all %v: the rest is counted: %v", all, counted)
		}
	}
}

func TestJSON(t *testing.T) {
	described, err := JSONSchema()
	if err != nil {
		t.Fatal(err)
	}
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(described))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	compiler.AssertFormat()
	if err := compiler.AddResource("report.json", document); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("report.json")
	if err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]*Check{"everything": everything(), "nothing": {Report: &judge.Report{}, FailOn: "fault"}} {
		text := printed(t, JSON, c)
		value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(value); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if bytes.Contains(text, []byte("null")) {
			t.Errorf("%s: a list is null", name)
		}
		value.(map[string]any)["extra"] = true
		if schema.Validate(value) == nil {
			t.Errorf("%s: the schema lets an unknown key pass", name)
		}
	}
}

// What could move the cursor, hide text or turn its direction is written out.
// The characters are those of general categories Cc, Cf, Zl and Zp in Unicode.
func TestSourcesShort(t *testing.T) {
	source := func(clause string) policies.Source { return policies.Source{Key: "sae-j514", Clause: clause} }
	for _, test := range []struct {
		clauses []string
		want    string
	}{
		{[]string{"37-degree flare"}, "SAE J514: 37-degree flare"},
		{[]string{"table 3", "table 4"}, "SAE J514: table 3; SAE J514: table 4"},
		{[]string{"table 3, and its note", "table 3"}, "SAE J514: table 3, and its note"},
		{[]string{"table 3", "table 30"}, "SAE J514: table 3; SAE J514: table 30"},
		{[]string{"table 3", "table 3, and its note"}, "SAE J514: table 3, and its note"},
	} {
		if got := SourcesShort(each(test.clauses, source), policies.Published); got != test.want {
			t.Errorf("SourcesShort(%q) = %q, want %q", test.clauses, got, test.want)
		}
	}
}

func TestTally(t *testing.T) {
	one := []judge.Problem{{Message: "no TOML"}}
	for _, test := range []struct {
		check *judge.Report
		want  string
	}{
		{&judge.Report{Judged: 3}, "No dangers, no faults, no pieces of advice."},
		{&judge.Report{Judged: 3, Problems: one}, "1 error, no dangers, no faults, no pieces of advice."},
		{&judge.Report{Problems: one}, "1 error; nothing was judged."},
		{&judge.Report{Judged: 3, Waived: []judge.Finding{{Level: policies.LevelAdvice}}}, "No dangers, no faults, no pieces of advice, 1 finding waived."},
		{&judge.Report{Judged: 3, Waived: []judge.Finding{{Level: policies.LevelDanger}}}, "No dangers, no faults, no pieces of advice, 1 finding waived (1 danger)."},
	} {
		if got := Tally(&Check{Report: test.check}); got != test.want {
			t.Errorf("Tally(%+v) = %q, want %q", test.check, got, test.want)
		}
	}
}

func TestPlain(t *testing.T) {
	for text, want := range map[string]string{
		"2 µm, 45°, Öl":                  "2 µm, 45°, Öl",
		"a\x1b[2Jb":                      `a\x1b[2Jb`,
		"a\r\nb":                         `a\x0d\x0ab`,
		"a\tb":                           "a b",
		"a\u0085b":                       `a\x85b`,
		"a\u202eb\u2066c":                `a\u202eb\u2066c`,
		"a\u200bb\u2028c\u2029":          `a\u200bb\u2028c\u2029`,
		"::error file=x::y":              "::error file=x::y",
		"not \xff UTF-8":                 "not \uFFFD UTF-8",
		"\U000e0041 an invisible letter": `\ue0041 an invisible letter`,
	} {
		if got := Plain(text); got != want {
			t.Errorf("Plain(%q) = %q, want %q", text, got, want)
		}
	}
}

// No string of a spec can forge a line of the report, wherever it stands.
func TestTextForged(t *testing.T) {
	const forged = "x\nb.toml:1:1: danger: forged\x1b[2J"
	c := everything()
	c.Skipped, c.Unread = []string{forged}, []string{forged}
	for i := range c.Findings {
		f := &c.Findings[i]
		f.Message, f.Excerpt, f.Guessed, f.SeenBy, f.Fix = forged, forged, []string{forged}, []string{forged}, forged
		f.File, f.Path, f.With, f.Rulebook = forged, forged, forged, forged
	}
	c.Problems[0].Message, c.Problems[0].Want, c.Problems[0].Excerpt = forged, forged, forged
	c.Waived[0].Waiver.Why = forged
	c.Measures[0].Path = forged
	c.Taken.Skipped = []string{forged}
	c.Faults[0].Message = forged
	got := printed(t, Text, c)
	if strings.Contains(string(got), "\x1b") || strings.Contains(string(got), "\nb.toml:1:1") {
		t.Errorf("forged:\n%s", got)
	}
}

func TestWindow(t *testing.T) {
	for _, test := range []struct {
		line, mark         string
		width              int
		wantLine, wantMark string
	}{
		{"short", " ^^  ", 10, "short", " ^^  "},
		{"0123456789abcdef", "^^              ", 8, "0123456…", "^^      "},
		{"0123456789abcdef", "        ^^      ", 8, "…56789a…", "    ^^  "},
		{"0123456789abcdef", "              ^^", 8, "…9abcdef", "      ^^"},
	} {
		line, mark := window([]rune(test.line), []rune(test.mark), test.width)
		if line != test.wantLine || mark != test.wantMark {
			t.Errorf("window(%q, %q, %d) = %q, %q, want %q, %q", test.line, test.mark, test.width, line, mark, test.wantLine, test.wantMark)
		}
	}
}

// Every area whose rules can find a danger has its usual caution, and none says
// that anything is without danger.
func TestCautions(t *testing.T) {
	engine, err := policies.New(t.Context(), policies.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, rule := range engine.Rules() {
		if rule.Level == policies.LevelDanger && Cautions[rule.Area] == "" {
			t.Errorf("%s can find a danger, but its area has no caution", rule.ID)
		}
	}
	areas, err := fs.Glob(policies.BuiltIn(), "rules/*")
	if err != nil {
		t.Fatal(err)
	}
	known := map[string]bool{}
	for _, area := range areas {
		known[path.Base(area)] = true
	}
	for area, caution := range Cautions {
		if !known[area] {
			t.Errorf("there is no area %s to be cautious in", area)
		}
		if strings.Contains(caution, "safe") {
			t.Errorf("%s: a caution is no verdict: %s", area, caution)
		}
	}
}

func TestNarrow(t *testing.T) {
	notebook := func() *Notebook {
		return &Notebook{
			Trace: workings.Trace{
				{Subject: "lines.feed", Name: "velocity"}, {Subject: "lines.feed", Name: "age"}, {Subject: "lines.feed-2", Name: "velocity"}, {Subject: "car", Name: "mass"},
			},
			Phrases: []Phrase{{Path: "lines.feed.hose"}, {Path: "mounts.left.bolts"}},
		}
	}
	for subject, want := range map[string][2]int{ // workings, phrases
		"lines":               {3, 1},
		"lines.feed":          {2, 1},
		"lines.feed.velocity": {1, 0},
		"lines.fe":            {0, 0},
		"mounts":              {0, 1},
		"car":                 {1, 0},
	} {
		n := notebook()
		n.Narrow(subject)
		if got := [2]int{len(n.Trace), len(n.Phrases)}; got != want {
			t.Errorf("Narrow(%q) keeps %v, want %v", subject, got, want)
		}
	}
}

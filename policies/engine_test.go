package policies

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/open-policy-agent/opa/v1/ast"

	"fitup/spec/document"
)

// metadataOf begins an own rule that finds what is long.
const longMetadata = `# METADATA
# title: Long line
# description: it is long
# related_resources:
#   - {ref: common-practice, description: none}
# custom:
#   level: advice
#   subject: lines
#   stages: [joined]
#   message: "{subject} is {length} long"
#   figures: {length: {dimension: length, like: hose.length}}
#   fix: cut it
#   rulebook: workshop
#   confidence: practice
`

const longBody = `
judges contains {"subject": line.path, "needs": ["hose.length"]} if some line in input.lines

findings contains {"subject": line.path, "figures": {"length": line.hose.length}} if {
	some line in input.lines
	line.hose.length > 2
}
`

// ownRule is a whole own rule with more text after it.
func ownRule(name, more string) string {
	return longMetadata + "package rules.own." + name + "\n" + longBody + more
}

// ownFolder holds the rule "whole" and what a test adds.
func ownFolder(more map[string]string) []Folder {
	fsys := fstest.MapFS{"whole.rego": {Data: []byte(ownRule("whole", ""))}}
	for name, text := range more {
		fsys[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return []Folder{{Name: "bench", FS: fsys}}
}

// joined is a document of lines in the stage joined.
func joined(lines ...any) map[string]any {
	return map[string]any{"stages": []any{"joined"}, "lines": lines}
}

func line(name string, length float64) map[string]any {
	return map[string]any{"path": "lines." + name, "hose": map[string]any{"length": length}}
}

// guessed marks the length of a line as a guess.
func guessed(line map[string]any) map[string]any {
	line["hose"].(map[string]any)["guessed"] = []any{"length"}
	return line
}

var longFinding = Finding{Rule: "own.whole", Subject: "lines.feed", Figures: map[string]any{"length": 3.0}}

func newEngine(t *testing.T, o Options) *Engine {
	t.Helper()
	e, err := New(context.Background(), o)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func evaluate(t *testing.T, e *Engine, document any) Outcome {
	t.Helper()
	o, err := e.Evaluate(context.Background(), document)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

func TestEvaluate(t *testing.T) {
	e := newEngine(t, Options{Only: []string{"own", "lines.bend_radius"}, Own: ownFolder(nil)})
	got := evaluate(t, e, joined(guessed(line("feed", 3)), guessed(line("vent", 1)), map[string]any{"path": "lines.brake"}))
	want := Outcome{
		Findings: []Finding{longFinding},
		CannotTell: []Gap{
			{Rule: "lines.bend_radius", Subject: "lines.brake", Missing: []string{"kind.bend", "tightest_bend"}},
			{Rule: "lines.bend_radius", Subject: "lines.feed", Missing: []string{"kind.bend", "tightest_bend"}},
			{Rule: "lines.bend_radius", Subject: "lines.vent", Missing: []string{"kind.bend", "tightest_bend"}},
			{Rule: "own.whole", Subject: "lines.brake", Missing: []string{"hose.length"}},
		},
		Guesses: []Guess{{Rule: "own.whole", Subject: "lines.feed", Guessed: []string{"hose.length"}}}, // of the vent nothing is found
		Judged: map[string][]string{
			"lines.bend_radius": {"lines.brake", "lines.feed", "lines.vent"},
			"own.whole":         {"lines.brake", "lines.feed", "lines.vent"},
		},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

// TestBrokenOwnRules leaves a broken rule out, names its file and line, and lets
// the others judge.
func TestBrokenOwnRules(t *testing.T) {
	first := strings.Count(longMetadata, "\n") + 1 // the line of the package
	body := first + strings.Count(longBody, "\n")  // the last line of a whole rule
	tests := map[string]struct {
		text string
		line int
		want string
	}{
		"syntax":         {ownRule("broken", "findings contains {"), body + 1, "unexpected eof token"},
		"no METADATA":    {"package rules.own.broken\n" + longBody, 1, "no METADATA before the package"},
		"misspelt key":   {strings.Replace(ownRule("broken", ""), "# title", "# titel", 1), 2, "METADATA: unknown key titel"},
		"no sets":        {longMetadata + "package rules.own.broken\n", first, `the rule has no set "judges"`},
		"other package":  {longMetadata + "package limits\n" + longBody, first, "package limits: the rule in bench/broken.rego is package rules.own.broken"},
		"other rule":     {ownRule("broken", "x := data.rules.lines.bend_radius.findings"), body + 1, "data.rules.lines.bend_radius.findings: an own rule may read"},
		"other own rule": {ownRule("broken", "x := data.rules.own.whole.findings"), body + 1, "data.rules.own.whole.findings: an own rule may read"},
		"any rule":       {ownRule("broken", "x := data.rules[input.date]"), body + 1, "data.rules[input.date]: an own rule may read"},
		"registry":       {ownRule("broken", "x := data.registry"), body + 1, "data.registry: an own rule may read"},
		"entry point":    {ownRule("broken", "x := data.fitup.findings"), body + 1, "data.fitup.findings: an own rule may read"},
		"all data":       {ownRule("broken", "x := data"), body + 1, "data: an own rule may read"},
		"import":         {strings.Replace(ownRule("broken", "x := f.findings"), "\n\njudges", "\n\nimport data.fitup as f\n\njudges", 1), first + 2, "data.fitup: an own rule may read"},
		"mocked data":    {ownRule("broken", "x if 1 == 1 with data.tables as {}"), body + 1, "with data.tables: an own rule may replace the input only"},
		"mocked call":    {ownRule("broken", "x if count([]) == 1 with count as 1"), body + 1, "with count: an own rule may replace the input only"},
		"network":        {ownRule("broken", `x := http.send({"method": "get", "url": "http://localhost"})`), body + 1, "http.send is not one of the functions that a rule may call"},
		"no function":    {ownRule("broken", `x := measure(1)`), body + 1, "undefined function measure"},
		"misspelt field": {ownRule("broken", "x if input.lines[0].lenght"), body + 1, `undefined ref: input.lines[0].lenght; have: "lenght"; want (one of): ["asked"`},
		"no table":       {ownRule("broken", "x := data.tables.fluid.rows"), body + 1, "there is no table fluid"},
		"no limit":       {ownRule("broken", "x := data.rules.own.limits.broken.most.value"), body + 1, "there is no limit own.broken.most"},
		"unused":         {ownRule("broken", "x if y := 1"), body + 1, "assigned var y unused"},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			e := newEngine(t, Options{
				Schema: document.Schema, Only: []string{"own"}, Own: ownFolder(map[string]string{"broken.rego": test.text}),
			})
			faults := e.Faults()
			place := fmt.Sprintf("bench/broken.rego:%d: ", test.line)
			if len(faults) == 0 || faults[0].Rule != "own.broken" || !strings.HasPrefix(faults[0].Message, place) || !strings.Contains(faults[0].Message, test.want) {
				t.Errorf("faults %q, want one of own.broken at %s%s", faults, place, test.want)
			}
			got := evaluate(t, e, joined(line("feed", 3)))
			if diff := cmp.Diff([]Finding{longFinding}, got.Findings); diff != "" {
				t.Errorf("the whole rule's findings (-want +got)\n%s", diff)
			}
		})
	}
}

func TestOwnRuleMayReadTablesLimitsAndItself(t *testing.T) {
	e := newEngine(t, Options{Only: []string{"own"}, Own: ownFolder(map[string]string{
		"reader.rego": strings.NewReplacer("> 2", "> limits.reader.most.value").Replace(
			strings.Replace(ownRule("reader", `
tables if data.tables.sources
two if data.rules.lines.limits.support_spacing.free_run.value
three if data.rules.own.reader.two
`), "\n\njudges", "\n\nimport data.rules.own.limits\n\njudges", 1)),
		"data.yaml": "limits: {reader: {most: {value: 2.5, unit: m, written: 2.5 m, looser: up, why: it is long, source: common-practice, clause: none}}}",
	})})
	if len(e.Faults()) > 0 {
		t.Fatal(e.Faults())
	}
	got := evaluate(t, e, joined(line("feed", 2.5), line("vent", 2.6)))
	if len(got.Faults) > 0 {
		t.Fatal(got.Faults)
	}
	var found []string
	for _, f := range got.Findings {
		found = append(found, f.Rule+" "+f.Subject)
	}
	want := []string{"own.reader lines.vent", "own.whole lines.feed", "own.whole lines.vent"}
	if diff := cmp.Diff(want, found); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

func TestOwnLimitsThatCannotBeRead(t *testing.T) {
	e := newEngine(t, Options{Only: []string{"own"}, Own: ownFolder(map[string]string{"data.yaml": "limits: {whole: {most: {value: 1, colour: red}}}"})})
	want := []Fault{{"own", "bench/data.yaml:1: unknown key colour"}}
	if diff := cmp.Diff(want, e.Faults()); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

func TestOwnRuleOfOneNameTwice(t *testing.T) {
	folders := append(ownFolder(nil), Folder{Name: "other", FS: ownFolder(nil)[0].FS})
	e := newEngine(t, Options{Only: []string{"own"}, Own: folders})
	want := []Fault{{"own.whole", "other/whole.rego:1: bench/whole.rego has a rule of that name"}}
	if diff := cmp.Diff(want, e.Faults()); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

// TestFailingRules finds the rule that fails while it is asked, and lets the
// others judge.
func TestFailingRules(t *testing.T) {
	many := make([]any, 60)
	for i := range many {
		many[i] = line(fmt.Sprintf("a%d", i), 1)
	}
	many[0] = line("feed", 3)
	tests := map[string]struct{ text, want string }{
		"conflict": {
			ownRule("failing", "pick := n if some n in [1, 2]\n\nfindings contains {\"subject\": \"x\", \"figures\": {\"length\": pick}}"),
			"bench/failing.rego:23: rule data.rules.own.failing.pick produced conflicting values",
		},
		"endless": {
			ownRule("failing", `
findings contains {"subject": "x", "figures": {"length": 1}} if {
	some a in input.lines
	some b in input.lines
	some c in input.lines
	some d in input.lines
	count([a, b, c, d]) > 5
}`), "no answer within",
		},
		"greedy": {
			ownRule("failing", `
findings contains {"subject": "x", "figures": {"length": 1}} if {
	count({[a, b, c, d] | some a in input.lines; some b in input.lines; some c in input.lines; some d in input.lines}) < 5
}`), "stopped after it took 24 MiB of memory",
		},
		"failed call": {
			ownRule("failing", "\nfindings contains {\"subject\": \"x\", \"figures\": {\"length\": count(line.hose.length)}} if some line in input.lines"),
			"bench/failing.rego:24: count: operand 1 must be one of",
		},
		"needs of a wrong form": {
			ownRule("failing", "\njudges contains {\"subject\": line.path, \"needs\": [5]} if some line in input.lines"),
			"split: operand 1 must be string",
		},
		"subject of a wrong form": {
			ownRule("failing", "\njudges contains {\"subject\": 5, \"needs\": []}"),
			"a subject is no path",
		},
		"finding of a wrong form": {
			ownRule("failing", "\nfindings contains {\"subject\": \"lines.feed\", \"figures\": 5}"),
			"cannot unmarshal number",
		},
		"misspelt key": {
			ownRule("failing", "\nfindings contains {\"subject\": \"lines.feed\", \"figuers\": {}}"),
			`unknown field "figuers"`,
		},
		"unknown figure": {
			ownRule("failing", "\nfindings contains {\"subject\": \"lines.feed\", \"figures\": {\"length\": 1, \"bore\": 2}}"),
			`figure "bore" is not in METADATA`,
		},
		"missing figure": {
			ownRule("failing", "\nfindings contains {\"subject\": \"lines.feed\", \"figures\": {}}"),
			`figure "length" of the message is missing`,
		},
		"figure of a wrong form": {
			ownRule("failing", "\nfindings contains {\"subject\": \"lines.feed\", \"figures\": {\"length\": \"3 m\"}}"),
			"figure length: 3 m is no length",
		},
		"unknown case": {
			ownRule("failing", "\nfindings contains {\"subject\": \"lines.feed\", \"figures\": {\"length\": 1}, \"case\": \"odd\"}"),
			`case "odd" is none of`,
		},
		"found, not judged": {
			ownRule("failing", "\nfindings contains {\"subject\": \"ports.x\", \"figures\": {\"length\": 1}}"),
			"ports.x: found, but not judged",
		},
		"judged, not there": {
			ownRule("failing", "\njudges contains {\"subject\": \"ports.x\", \"needs\": []}"),
			"ports.x: judged, but not one of lines",
		},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			e := newEngine(t, Options{
				Only: []string{"own"}, Own: ownFolder(map[string]string{"failing.rego": test.text}), Timeout: time.Minute,
			})
			if len(e.Faults()) > 0 {
				t.Fatal(e.Faults())
			}
			e.heap = 24 << 20
			if name == "endless" {
				e.timeout = 100 * time.Millisecond
			}
			got := evaluate(t, e, joined(many...))
			if !slices.ContainsFunc(got.Faults, func(f Fault) bool { return f.Rule == "own.failing" && strings.Contains(f.Message, test.want) }) {
				t.Errorf("faults %q, want own.failing: %s", got.Faults, test.want)
			}
			if slices.ContainsFunc(got.Faults, func(f Fault) bool { return f.Rule != "own.failing" }) {
				t.Errorf("faults %q: another rule is blamed", got.Faults)
			}
			if !slices.ContainsFunc(got.Findings, func(f Finding) bool { return cmp.Equal(f, longFinding) }) {
				t.Errorf("the whole rule did not judge: %v", got.Findings)
			}
		})
	}
}

func TestEvaluateStopsWithItsContext(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, err := newEngine(t, Options{Only: []string{"lines"}}).Evaluate(ctx, joined())
	if !errors.Is(err, context.Canceled) {
		t.Errorf("error %v, want that of the context", err)
	}
}

func TestChoose(t *testing.T) {
	ids := func(e *Engine) (ids []string) {
		for _, r := range e.Rules() {
			ids = append(ids, r.ID)
		}
		return ids
	}
	all := ids(newEngine(t, Options{}))
	if !slices.IsSorted(all) || len(all) < 3 {
		t.Fatalf("all rules: %q", all)
	}
	if got := ids(newEngine(t, Options{Only: []string{"lines.bend_radius", "fittings.seat_angle"}})); !slices.Equal(got, []string{"fittings.seat_angle", "lines.bend_radius"}) {
		t.Errorf("two: %q", got)
	}
	without := slices.DeleteFunc(slices.Clone(all), func(id string) bool { return strings.HasPrefix(id, "lines.") })
	if got := ids(newEngine(t, Options{Skip: []string{"lines"}})); !slices.Equal(got, without) {
		t.Errorf("without lines: %q", got)
	}
	for _, o := range []Options{{Only: []string{"lines.colour"}}, {Skip: []string{"colour"}}} {
		if _, err := New(context.Background(), o); err == nil || !strings.Contains(err.Error(), "no rule or area is called") {
			t.Errorf("%+v: error %v", o, err)
		}
	}
}

// TestFormerIDs shows that an id names one rule, now and before.
func TestFormerIDs(t *testing.T) {
	e := newEngine(t, Options{})
	seen := map[string]string{}
	for _, r := range e.Rules() {
		for _, id := range append(slices.Clone(r.Formerly), r.ID) {
			if other, ok := seen[id]; ok {
				t.Errorf("%s names both %s and %s", id, other, r.ID)
			}
			seen[id] = r.ID
			if got, ok := e.Rule(id); !ok || got.ID != r.ID {
				t.Errorf("Rule(%q) = %v, %v; want %s", id, got, ok, r.ID)
			}
		}
	}
	if r, ok := e.Rule("no.rule"); ok {
		t.Errorf("there is a rule no.rule: %v", r)
	}
}

func TestLimitsReplaced(t *testing.T) {
	const name = "lines.support_spacing.free_run"
	base := newEngine(t, Options{Only: []string{"lines.support_spacing"}})
	clipped := map[string]any{"path": "lines.feed", "clips": 0.7}
	if len(evaluate(t, base, joined(clipped)).Findings) != 1 {
		t.Fatal("0.7 m between clips is not found")
	}
	loose := newEngine(t, Options{Only: []string{"lines.support_spacing"}, Limits: map[string]string{name: "700 mm"}})
	if got := evaluate(t, loose, joined(clipped)).Findings; len(got) != 0 {
		t.Errorf("found %v with a limit of 700 mm", got)
	}
	want := []Loosened{{Limit: name, Rule: "lines.support_spacing", Level: LevelAdvice, Was: "24 in", Is: "700 mm", Looser: true}}
	if diff := cmp.Diff(want, loose.Loosened()); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
	if base.Digest() == loose.Digest() {
		t.Error("another limit gives the same digest")
	}
	if again := newEngine(t, Options{Only: []string{"lines.support_spacing"}}); again.Digest() != base.Digest() {
		t.Error("the same rules give another digest")
	}
	strict := newEngine(t, Options{Limits: map[string]string{name: "1 ft"}})
	if got := strict.Loosened(); len(got) != 1 || got[0].Looser {
		t.Errorf("a lower limit: %+v, want one that is not looser", got)
	}
	if got := strict.byID["lines.support_spacing"].whole().Limits["free_run"]; got.Value != 0.3048 || got.Written != "1 ft" {
		t.Errorf("the rule tells the limit %v", got)
	}
	for name, text := range map[string]string{"lines.support_spacing.colour": "1 m", "lines.support_spacing": "1 m", "colour.a.b": "1 m", name: "1 kg"} {
		if _, err := New(context.Background(), Options{Limits: map[string]string{name: text}}); err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("%s = %s: error %v", name, text, err)
		}
	}
}

func TestManyAtOnce(t *testing.T) {
	e := newEngine(t, Options{Only: []string{"own"}, Own: ownFolder(nil)})
	var wait sync.WaitGroup
	for range 20 {
		wait.Go(func() {
			got, err := e.Evaluate(context.Background(), joined(line("feed", 3), line("vent", 1)))
			if err != nil || !cmp.Equal(got.Findings, []Finding{longFinding}) {
				t.Errorf("%v, %v", got.Findings, err)
			}
		})
	}
	wait.Wait()
}

// TestBuiltins lists the functions that rules call, so that none slips in and
// none is left over.
func TestBuiltins(t *testing.T) {
	modules := map[string]*ast.Module{}
	err := fs.WalkDir(files, ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".rego") || strings.HasSuffix(path, "_test.rego") {
			return err
		}
		m, err := readTest(path)
		modules[path] = m.parsed
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	called := []string{ast.Equality.Name} // the compiler unifies with it
	call := func(operator ast.Ref) {
		if name := operator.String(); ast.BuiltinMap[name] != nil && !slices.Contains(called, name) {
			called = append(called, name)
		}
	}
	for _, m := range modules {
		ast.NewGenericVisitor(func(x any) bool {
			switch x := x.(type) {
			case *ast.SomeDecl: // `some x in y` calls nothing, but y may
				if member, ok := x.Symbols[0].Value.(ast.Call); ok {
					ast.WalkTerms(member[len(member)-1], func(t *ast.Term) bool {
						if c, ok := t.Value.(ast.Call); ok {
							call(c[0].Value.(ast.Ref))
						}
						return false
					})
				}
				return true
			case *ast.Expr:
				if x.IsCall() {
					call(x.Operator())
				}
			case *ast.Term:
				if c, ok := x.Value.(ast.Call); ok {
					call(c[0].Value.(ast.Ref))
				}
			}
			return false
		}).Walk(m)
	}
	slices.Sort(called)
	if diff := cmp.Diff(called, builtins); diff != "" {
		t.Errorf("functions called (-) and allowed (+)\n%s", diff)
	}
}

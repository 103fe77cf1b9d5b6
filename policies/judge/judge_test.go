package judge

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/tree"
)

// A workshop's own rules keep these tests apart from what the built-in ones say:
// one fault that may be waived and one danger that may not, both on a hose that
// the author called short, and one need.
const ownRules = `# METADATA
# title: A short hose
# description: for tests
# related_resources:
#   - {ref: common-practice, description: none}
# custom:
#   level: %s
#   subject: lines
#   stages: [joined]
#   message: "{subject} is {length} long"
#   figures:
#     length: {dimension: length, like: hose.length}
#   fix: make it longer
#   caution: keep out
#   rulebook: workshop
#   confidence: practice
#   basis: %s
#   waivable: %t
package rules.own.%s

judges contains {"subject": line.path, "needs": ["hose.length", "kind.bore"]} if some line in input.lines

findings contains {"subject": line.path, "at": "hose.length", "figures": {"length": line.hose.length}} if {
	some line in input.lines
	line.hose.length
	line.sleeve == "%s"
}
`

func folder() policies.Folder {
	fault := fmt.Sprintf(ownRules, "fault", "hazard", true, "short", "short")
	danger := fmt.Sprintf(ownRules, "danger", "hazard", false, "deadly", "deadly")
	for _, key := range []string{"#   caution: keep out\n", "#   basis: hazard\n"} {
		fault = strings.Replace(fault, key, "", 1)
	}
	return policies.Folder{Name: "own", FS: fstest.MapFS{
		"short.rego": {Data: []byte(fault)}, "deadly.rego": {Data: []byte(danger)},
	}}
}

const (
	shopFile = "[shop]\nname = \"Barn\"\n[hoses]\nbraid = { bore = \"10 mm\" }\nplain = { liner = \"nitrile\" }\n"
	four     = "[driveline]\nname = \"Four\"\nshop = \"shop.toml\"\n[lines.feed]\nhose = \"1.5 in of braid\"\nsleeve = \"short\"\n"
)

func car(driveline, more string) string {
	return "[car]\nname = \"Tern\"\nshop = \"shop.toml\"\ndriveline = \"" + driveline + "\"\n" + more
}

// judged judges the cars of a fleet given as files by name.
func judged(t *testing.T, workers int, files map[string]string) *Report {
	t.Helper()
	all := fstest.MapFS{"shop.toml": {Data: []byte(shopFile)}}
	for name, text := range files {
		all[name] = &fstest.MapFile{Data: []byte(text)}
	}
	outfit := spec.NewOutfit(&tree.Tree{FS: all})
	var cars []*spec.Composition
	for _, name := range []string{"a.toml", "b.toml", "c.toml"} {
		if _, there := all[name]; !there {
			continue
		}
		outfit.Load(name)
		if c, ok := outfit.Car(name); ok {
			cars = append(cars, c)
		}
	}
	for _, p := range outfit.Problems() {
		t.Fatal(p.Error())
	}
	engine, err := policies.New(context.Background(), policies.Options{Own: []policies.Folder{folder()}, Only: []string{"own"}})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range engine.Faults() {
		t.Fatal(f.Rule, f.Message)
	}
	run := &Run{Engine: engine, Date: time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC), Fleet: true, Whole: true, Workers: workers}
	report, err := run.Judge(context.Background(), cars)
	if err != nil {
		t.Fatal(err)
	}
	return report
}

// lines prints findings in the form that tests compare.
func lines(findings []Finding) []string {
	var out []string
	for _, f := range findings {
		out = append(out, fmt.Sprintf("%s:%d:%d: %s: %s [%s]", f.File, f.Line, f.Column, f.Level, f.Message, f.Rule))
	}
	return out
}

func TestFindingsStandInTheirPlace(t *testing.T) {
	report := judged(t, 1, map[string]string{
		"a.toml": car("none", "[lines.vent]\nhose = \"~0.5 m of braid\"\nsleeve = \"short\"\n"),
	})
	want := []string{`a.toml:6:9: fault: lines.vent is 0.5 m long [own.short]`}
	if diff := cmp.Diff([]string(nil), lines(report.Findings)); diff != "" {
		t.Errorf("an empty bay is not joined, so nothing holds:\n%s", diff)
	}
	report = judged(t, 1, map[string]string{
		"a.toml":    car("four.toml", "[lines.vent]\nhose = \"0.5 m of braid\"\nsleeve = \"short\"\n"),
		"four.toml": "[driveline]\nname = \"Four\"\n",
	})
	if diff := cmp.Diff(want, lines(report.Findings)); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
	f := report.Findings[0]
	if f.Excerpt != `hose = "0.5 m of braid"` || f.Path != "lines.vent" || f.Fix != "make it longer" {
		t.Errorf("excerpt %q, path %q, fix %q", f.Excerpt, f.Path, f.Fix)
	}
	if got := f.Excerpt[f.Column-1 : f.EndColumn-1]; got != "0.5 m" {
		t.Errorf("the place is that of %q, want the words of the length", got)
	}
}

func TestWhatCarsShareIsToldOnce(t *testing.T) {
	report := judged(t, 2, map[string]string{
		"a.toml": car("four.toml", ""), "b.toml": car("four.toml", ""), "four.toml": four,
	})
	want := []string{
		`a.toml:4:13: fault: four.toml is also written as fitted in b.toml [fleet.fitted_twice]`,
		`b.toml:4:13: fault: four.toml is also written as fitted in a.toml [fleet.fitted_twice]`,
		`four.toml:5:9: fault: lines.feed is 1.5 in long [own.short]`,
	}
	if diff := cmp.Diff(want, lines(report.Findings)); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
	if diff := cmp.Diff([]string{"a.toml", "b.toml"}, report.Findings[2].SeenBy); diff != "" {
		t.Errorf("seen by (-want +got):\n%s", diff)
	}
}

func TestWaivers(t *testing.T) {
	const hose = "[lines.vent]\nhose = \"0.5 m of braid\"\nsleeve = \"short\"\n"
	waiver := func(rule, on, until string) string {
		return hose + fmt.Sprintf("[waivers.w]\nrule = %q\non = %q\nwhy = \"new one ordered\"\nuntil = %s\n", rule, on, until)
	}
	for _, test := range []struct {
		name, text string
		want       []string
		waived     int
	}{
		{"holds on its last day", waiver("own.short", "lines.vent", "2026-11-25"), nil, 1},
		{"runs out the day after", waiver("own.short", "lines.vent", "2026-11-24"), []string{
			`a.toml:6:9: fault: lines.vent is 0.5 m long [own.short]`,
			`a.toml:12:9: fault: the waiver of own.short ran out on 2026-11-24: its findings are in force again [waiver.expired]`,
		}, 0},
		{"names no rule", waiver("own.shrt", "lines.vent", "2026-11-25"), []string{
			`a.toml:6:9: fault: lines.vent is 0.5 m long [own.short]`,
			`a.toml:9:8: fault: no rule is called own.shrt; did you mean own.short? [waiver.unknown_rule]`,
		}, 0},
		{"names nothing in the file", waiver("own.short", "lines.went", "2026-11-25"), []string{
			`a.toml:6:9: fault: lines.vent is 0.5 m long [own.short]`,
			`a.toml:10:6: fault: this file has no lines.went [waiver.unknown_subject]`,
		}, 0},
		{"sets nothing aside", waiver("own.short", "mounts", "2026-11-25") + "[mounts]\n", []string{
			`a.toml:6:9: fault: lines.vent is 0.5 m long [own.short]`,
			`a.toml:10:6: advice: the waiver of own.short on mounts set nothing aside [waiver.unused]`,
		}, 0},
		{"is about danger to somebody", strings.ReplaceAll(waiver("own.deadly", "lines.vent", "2026-11-25"), `"short"`, `"deadly"`), []string{
			`a.toml:6:9: danger: lines.vent is 0.5 m long [own.deadly]`,
			`a.toml:9:8: fault: own.deadly is about danger to a person and cannot be waived [waiver.not_waivable]`,
		}, 0},
	} {
		t.Run(test.name, func(t *testing.T) {
			report := judged(t, 1, map[string]string{"a.toml": car("four.toml", test.text), "four.toml": "[driveline]\nname = \"Four\"\n"})
			if diff := cmp.Diff(test.want, lines(report.Findings)); diff != "" {
				t.Errorf("-want +got:\n%s", diff)
			}
			if len(report.Waived) != test.waived {
				t.Errorf("%d waived, want %d", len(report.Waived), test.waived)
			}
			for _, f := range report.Waived {
				if f.Waiver == nil || f.Waiver.Why != "new one ordered" {
					t.Errorf("the waiver's reason is lost: %+v", f.Waiver)
				}
			}
		})
	}
}

// A waiver of a rule that was not asked is nobody's mistake.
func TestWaiverOfARuleLeftOut(t *testing.T) {
	engine, err := policies.New(context.Background(), policies.Options{Only: []string{"lines.bend_radius"}})
	if err != nil {
		t.Fatal(err)
	}
	outfit := spec.NewOutfit(&tree.Tree{FS: fstest.MapFS{"a.toml": {Data: []byte(
		"[car]\nname = \"Tern\"\n[waivers.w]\nrule = \"lines.support_spacing\"\non = \"car\"\nwhy = \"later\"\nuntil = 2027-01-01\n")}}})
	c, _ := outfit.Car("a.toml")
	run := &Run{Engine: engine, Date: time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC), Whole: true}
	report, err := run.Judge(context.Background(), []*spec.Composition{c})
	if err != nil || len(report.Findings) != 0 {
		t.Errorf("%v, %v; want nothing said", lines(report.Findings), err)
	}
}

func TestWaiverOfASharedFileLivesThere(t *testing.T) {
	const waiver = "[waivers.w]\nrule = \"own.short\"\non = \"lines.feed\"\nwhy = \"new one ordered\"\nuntil = 2027-01-01\n"
	report := judged(t, 1, map[string]string{"a.toml": car("four.toml", ""), "four.toml": four + waiver})
	if len(report.Findings) != 0 || len(report.Waived) != 1 {
		t.Errorf("%d in force and %d waived, want 0 and 1", len(report.Findings), len(report.Waived))
	}
}

func TestWhatToMeasure(t *testing.T) {
	report := judged(t, 1, map[string]string{
		"a.toml":    car("four.toml", "[lines.vent]\nhose = \"0.5 m of plain\"\n[lines.feed]\nhose = \"? of plain\"\n"),
		"four.toml": "[driveline]\nname = \"Four\"\n",
	})
	var got []string
	for _, m := range report.Measures {
		got = append(got, fmt.Sprintf("%s:%d %s asked=%t rules=%s dangers=%d waits=%d", m.File, m.Line, m.Path, m.Asked, strings.Join(m.Rules, ","), m.Dangers, m.Subjects))
	}
	want := []string{
		"shop.toml:5 hoses.plain.bore asked=false rules=own.deadly,own.short dangers=1 waits=4",
		"a.toml:8 lines.feed.hose.length asked=true rules=own.deadly,own.short dangers=1 waits=2",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
	if report.Unjudged != 2 {
		t.Errorf("%d dangers unjudged, want 2", report.Unjudged)
	}
}

func TestReportDoesNotDependOnWorkers(t *testing.T) {
	files := map[string]string{"four.toml": four, "c.toml": car("none", "[lines.vent]\nhose = \"0.5 m of plain\"\n")}
	for _, name := range []string{"a.toml", "b.toml"} {
		files[name] = car("four.toml", "[lines.vent]\nhose = \"0.5 m of plain\"\nsleeve = \"short\"\n")
	}
	// What reads the rules' descriptions is a function, and those cannot be compared.
	but := cmpopts.IgnoreFields(Report{}, "Describe")
	if diff := cmp.Diff(judged(t, 1, files), judged(t, 8, files), but); diff != "" {
		t.Errorf("one worker and eight differ:\n%s", diff)
	}
}

func TestIdentityHoldsWhenTheFileIsEditedElsewhere(t *testing.T) {
	const hose = "[lines.vent]\nhose = \"0.5 m of braid\"\nsleeve = \"short\"\n"
	before := judged(t, 1, map[string]string{"a.toml": car("four.toml", hose), "four.toml": "[driveline]\nname = \"Four\"\n"})
	after := judged(t, 1, map[string]string{"a.toml": car("four.toml", "# a line more\n[clock]\n"+strings.Replace(hose, "0.5", "0.6", 1)), "four.toml": "[driveline]\nname = \"Four\"\n"})
	if a, b := before.Findings[0].Identity(), after.Findings[0].Identity(); a != b {
		t.Errorf("identity %q became %q", a, b)
	}
}

package config

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/BurntSushi/toml"
	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/swap"
	"fitup/spec/tree"
)

func TestFind(t *testing.T) {
	files := &tree.Tree{FS: fstest.MapFS{
		".fitup.toml":                   {},
		"cars/yard/.fitup.toml":         {},
		"cars/yard/red.toml":            {},
		"cars/yard/deep/old/grey.toml":  {},
		"cars/blue.toml":                {},
		"cars/folder/.fitup.toml/x":     {}, // a folder of that name is none
		"cars/folder/orange.toml":       {},
		"other/tree/without/green.toml": {},
		"away/.fitup.toml":              {Data: []byte("nowhere.toml"), Mode: fs.ModeSymlink | 0o777},
		"pipe/.fitup.toml":              {Mode: fs.ModeNamedPipe | 0o644},
	}}
	for name, want := range map[string]string{
		".":                            ".fitup.toml",
		"cars":                         ".fitup.toml",
		"cars/blue.toml":               ".fitup.toml",
		"cars/yard":                    "cars/yard/.fitup.toml",
		"cars/yard/red.toml":           "cars/yard/.fitup.toml",
		"cars/yard/deep/old/grey.toml": "cars/yard/.fitup.toml",
		"cars/folder/orange.toml":      ".fitup.toml",
		"away":                         "away/.fitup.toml",
		"pipe":                         "pipe/.fitup.toml",
	} {
		if got := Find(files, name); got != want {
			t.Errorf("Find(%q) = %q, want %q", name, got, want)
		}
	}
	if got := Find(&tree.Tree{FS: fstest.MapFS{"cars/blue.toml": {}}}, "cars/blue.toml"); got != "" {
		t.Errorf("without any file: %q", got)
	}
}

func TestFails(t *testing.T) {
	for level, want := range map[FailLevel][4]bool{ // nothing, advice, fault, danger
		"advice": {false, true, true, true},
		"fault":  {false, false, true, true},
		"danger": {false, false, false, true},
		Never:    {},
	} {
		for worst := range policies.LevelDanger + 1 {
			if got := level.Fails(worst); got != want[worst] {
				t.Errorf("%s with the worst %d: %v, want %v", level, worst, got, want[worst])
			}
		}
	}
}

func read(t *testing.T, text string) (*Config, error) {
	t.Helper()
	return Read(&tree.Tree{FS: fstest.MapFS{
		"cars/.fitup.toml":    {Data: []byte(text)},
		"bench/mine.rego":     {},
		"tests/one_test.rego": {},
	}}, "cars/.fitup.toml")
}

func TestRead(t *testing.T) {
	c, err := read(t, `
fail-on = "danger"
exclude = ["old-*", "./yard", "../spare.toml"]
rules   = ["../bench"]
skip    = ["fuel", "lines.velocity"]

[limits.lines.support_spacing]
free_run = "30 in"

[effort.joint]
banjo = "7 min"
37-flare = "90 s"
`)
	if err != nil {
		t.Fatal(err)
	}
	if len(c.Rules) != 1 || c.Rules[0].Name != "bench" {
		t.Errorf("rules: %v", c.Rules)
	}
	got := []any{c.FailOn, c.Exclude, c.Skip, c.Limits, c.Effort}
	want := []any{
		FailLevel("danger"), []string{"cars/old-*", "cars/yard", "spare.toml"}, []string{"fuel", "lines.velocity"},
		map[string]string{"lines.support_spacing.free_run": "30 in"},
		swap.Weights{"joint.banjo": 420, "joint.37-flare": 90},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	other, err := read(t, "fail-on = \"danger\" # and a remark\n")
	if err != nil || other.Digest == c.Digest || len(other.Digest) != 64 {
		t.Errorf("digests %q and %q: %v", c.Digest, other.Digest, err)
	}
}

// Each problem is told at its place with what would be right, and the schema for
// editors refuses what is refused here for its shape. With FITUP_SHAPES=DIR it
// leaves the texts in DIR/seen and DIR/beyond for a checker of other making.
func TestReadRefuses(t *testing.T) {
	schema := compiled(t)
	for i, test := range []struct {
		text, want string
		shape      bool // the schema can see it
	}{
		{`skpi = ["fuel"]`, `1:1: "skpi" is not a key of a configuration; did you mean "skip"?`, true},
		{`colour = ["fuel"]`, `1:1: "colour" is not a key of a configuration; its keys are fail-on, exclude, rules, skip, limits, effort`, true},
		{`limit = 1`, `1:1: "limit" is not a key of a configuration; did you mean "limits"?`, true},
		{`fail-on = "fatal"`, `1:11: found "fatal"; "danger", "fault", "advice" or "never"`, true},
		{`fail-on = 3`, `1:11: found 3; "danger", "fault", "advice" or "never"`, true},
		{`exclude = "old"`, `1:11: found "old"; a list such as ["one", "two"]`, true},
		{`exclude = ["a", 3]`, `1:17: found 3; a text in quotes`, true},
		{`exclude = ["../../x"]`, `1:12: "../../x" is no path below the root; a folder, a file or a pattern such as old-*, relative to this file`, false},
		{`exclude = ["[x"]`, `1:12: "[x" is no path below the root; a folder, a file or a pattern such as old-*, relative to this file`, false},
		{`rules = ["none"]`, `1:10: "none" holds no rule; a folder with rules NAME.rego, relative to this file and below the same root`, false},
		{`rules = ["../tests"]`, `1:10: "../tests" holds no rule; a folder with rules NAME.rego, relative to this file and below the same root`, false},
		{`rules = ["/etc"]`, `1:10: "/etc" holds no rule; a folder with rules NAME.rego, relative to this file and below the same root`, false},
		{`skip = { a = 1 }`, `1:8: found a table; a list such as ["one", "two"]`, true},
		{`limits = 3`, `1:10: found 3; [limits.AREA.RULE]`, true},
		{"[limits]\nlines = \"3 m\"", `2:9: found "3 m"; [limits.AREA.RULE]`, true},
		{"[limits.lines]\nspacing = \"3 m\"", `2:11: found "3 m"; NAME = "20 in" for each limit`, true},
		{`effort = "much"`, `1:10: found "much"; [effort.SET]`, true},
		{"[effort.joint]\nbanjo = 5", `2:9: found 5; minutes with their unit, such as "4 min"`, true},
		{"[effort.joint]\nbanjo = \"5 kg\"", `2:9: found "5 kg"; minutes with their unit, such as "4 min"`, false},
		{"[effort.joint]\nbanyo = \"5 min\"", `2:1: no effort is called joint.banyo; did you mean joint.banjo?`, false},
		{"[limits.lines.spacing]\nfree = 3", `2:8: found 3; a value with its unit, such as "20 in"`, true},
	} {
		_, err := read(t, test.text)
		if got := strings.TrimPrefix(textOf(err), "cars/.fitup.toml:"); got != test.want {
			t.Errorf("%s\ngot  %s\nwant %s", test.text, got, test.want)
		}
		if refused := schema.Validate(decoded(t, test.text)) != nil; refused != test.shape {
			t.Errorf("%s: the schema refuses it: %v, want %v", test.text, refused, test.shape)
		}
		if leave := os.Getenv("FITUP_SHAPES"); leave != "" {
			folder := filepath.Join(leave, map[bool]string{true: "seen", false: "beyond"}[test.shape])
			text := "#:schema ../config.schema.json\n" + test.text + "\n"
			if err := errors.Join(os.MkdirAll(folder, 0o777), os.WriteFile(filepath.Join(folder, fmt.Sprintf("config-%02d.toml", i)), []byte(text), 0o666)); err != nil {
				t.Fatal(err)
			}
		}
	}
	if _, err := read(t, "fail-on = \n"); err == nil || !strings.HasPrefix(err.Error(), "cars/.fitup.toml:1:") {
		t.Errorf("a file that is no TOML: %v", err)
	}
}

func textOf(err error) string {
	if err == nil {
		return "no error"
	}
	return err.Error()
}

func compiled(t *testing.T) *jsonschema.Schema {
	t.Helper()
	document, err := jsonschema.UnmarshalJSON(strings.NewReader(string(Schema())))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("config.json", document); err != nil {
		t.Fatal(err)
	}
	schema, err := c.Compile("config.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

// decoded is a TOML text as JSON values.
func decoded(t *testing.T, text string) any {
	t.Helper()
	var root map[string]any
	if _, err := toml.Decode(text, &root); err != nil {
		t.Fatal(err)
	}
	asJSON, err := json.Marshal(root)
	if err != nil {
		t.Fatal(err)
	}
	value, err := jsonschema.UnmarshalJSON(strings.NewReader(string(asJSON)))
	if err != nil {
		t.Fatal(err)
	}
	return value
}

// Whatever is taken away is told, with who took it.
func TestTaken(t *testing.T) {
	c, err := read(t, "fail-on = \"never\"\nexclude = [\"yard\"]\nskip = [\"fittings\"]\n"+
		"[limits.lines.support_spacing]\nfree_run = \"30 in\"\n")
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		choice Choice
		want   judge.Taken
	}{
		{Choice{}, judge.Taken{
			Loosened: []policies.Loosened{{
				Limit: "lines.support_spacing.free_run", Rule: "lines.support_spacing", Level: policies.LevelAdvice,
				Was: "24 in", Is: "30 in", Looser: true, // NAVEDTRA 14105 has 24 in
			}},
			Skipped: []string{"fittings (cars/.fitup.toml)"}, Excluded: []string{"cars/yard (cars/.fitup.toml)"}, FailOn: "never (cars/.fitup.toml)",
		}},
		{Choice{FailOn: "fault", Only: []string{"lines.bend_radius"}, Skip: []string{"lines.support_spacing"}}, judge.Taken{
			Only:    []string{"lines.bend_radius (--only)"},
			Skipped: []string{"fittings (cars/.fitup.toml)", "lines.support_spacing (--skip)"}, Excluded: []string{"cars/yard (cars/.fitup.toml)"},
		}},
		{Choice{FailOn: "danger", Only: []string{"lines.bend_radius"}}, judge.Taken{
			Only:    []string{"lines.bend_radius (--only)"},
			Skipped: []string{"fittings (cars/.fitup.toml)"}, Excluded: []string{"cars/yard (cars/.fitup.toml)"}, FailOn: "danger (--fail-on)",
		}},
	} {
		engine, err := c.Engine(t.Context(), test.choice)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(test.want, c.Taken(engine, test.choice)); diff != "" {
			t.Errorf("%+v: %s", test.choice, diff)
		}
	}
	var none Config
	engine, err := none.Engine(t.Context(), Choice{Only: []string{"lines.bend_radius"}})
	if err != nil {
		t.Fatal(err)
	}
	if taken := none.Taken(engine, Choice{}); !taken.Nothing() {
		t.Errorf("without a configuration: %+v", taken)
	}
}

// A stricter limit takes nothing away.
func TestStricterIsNotTaken(t *testing.T) {
	c, err := read(t, "[limits.lines.support_spacing]\nfree_run = \"20 in\"\n")
	if err != nil {
		t.Fatal(err)
	}
	engine, err := c.Engine(t.Context(), Choice{})
	if err != nil {
		t.Fatal(err)
	}
	if taken := c.Taken(engine, Choice{}); !taken.Nothing() {
		t.Errorf("taken: %+v", taken)
	}
	rule, _ := engine.Rule("lines.support_spacing")
	if got := rule.Limits["free_run"].Written; got != "20 in" {
		t.Errorf("the limit is %s, want 20 in", got)
	}
}

func TestEngineRefuses(t *testing.T) {
	c, err := read(t, "skip = [\"lnes\", \"waiver.unused\"]\n[limits.lines.support_spacing]\nfree_ran = \"30 in\"\nfree_run = \"30 kg\"\n")
	if err != nil {
		t.Fatal(err)
	}
	_, err = c.Engine(t.Context(), Choice{})
	want := `cars/.fitup.toml:1:9: no rule or area is called "lnes"; did you mean lines?
cars/.fitup.toml:1:17: no rule or area is called "waiver.unused"; it is the tool's own and always asked
cars/.fitup.toml:3:1: no rule has a limit lines.support_spacing.free_ran; did you mean lines.support_spacing.free_run?
cars/.fitup.toml:4:16: kg is a mass; a length is due, in mm, cm, m, in, ft, thou or km`
	if got := textOf(err); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	var none Config
	_, err = none.Engine(t.Context(), Choice{Skip: []string{"lines.bend_radios"}})
	if got, want := err, error(NameError{"skip", "lines.bend_radios", "did you mean lines.bend_radius?"}); got != want {
		t.Errorf("got %v, want %v", got, want)
	}
}

package policies

import (
	"slices"
	"testing"
)

// TestBriefEntry: of each built-in rule the three keys that are read by themselves
// are what YAML makes of them, and the whole METADATA can be read.
func TestBriefEntry(t *testing.T) {
	list, err := builtInFiles()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range list {
		text, err := files.ReadFile(f.path)
		if err != nil {
			t.Fatal(err)
		}
		want, err := readMetadata(f.file, text)
		if err != nil {
			t.Error(err)
			continue
		}
		got, ok := briefEntry(f, text)
		if !ok {
			t.Errorf("%s: write subject, stages and rulebook on a line each, as the other rules do", f.file)
			continue
		}
		c := want.Custom
		if got.subject != c.Subject || !slices.Equal(got.stages, c.Stages) || got.rulebook != c.Rulebook {
			t.Errorf("%s: %q %q %q, want %q %q %q", f.file, got.subject, got.stages, got.rulebook, c.Subject, c.Stages, c.Rulebook)
		}
	}
}

// TestBriefEntryLeavesTheRestToYAML: what is written in another form is no reason
// to read it wrong.
func TestBriefEntryLeavesTheRestToYAML(t *testing.T) {
	f := ruleFile{file: "worn.rego", area: "lines", name: "worn"}
	for name, swap := range map[string][]string{
		"stages in a block": {"#   stages: [joined, event]\n", "#   stages:\n#     - joined\n#     - event\n"},
		"quotes":            {"#   rulebook: workshop\n", "#   rulebook: \"workshop\"\n"},
		"a comment":         {"#   subject: lines\n", "#   subject: lines # all of them\n"},
		"a deeper key":      {"#   subject: lines\n", "#   figures: {}\n#     subject: lines\n"},
	} {
		text := replaced(t, wholeMetadata, swap...)
		if e, ok := briefEntry(f, []byte(text)); ok {
			t.Errorf("%s: read as %q %q %q", name, e.subject, e.stages, e.rulebook)
		}
	}
}

package policies

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const wholeMetadata = `# METADATA
# title: Worn
# description: |
#   It wears.
# related_resources:
#   - ref: sae-j514
#     description: table 1
# custom:
#   level: danger
#   subject: lines
#   stages: [joined, event]
#   message: "{subject} has {left} left"
#   figures:
#     left: {dimension: length, like: hose.length}
#   fix: renew it
#   caution: keep clear
#   rulebook: workshop
#   confidence: published
#   basis: threshold
package rules.lines.worn
`

func TestReadMetadata(t *testing.T) {
	m, err := readMetadata("worn.rego", []byte(wholeMetadata))
	if err != nil {
		t.Fatal(err)
	}
	want := &Rule{
		ID: "lines.worn", Area: "lines", Name: "worn", Title: "Worn", Description: "It wears.",
		Level: LevelDanger, Message: "{subject} has {left} left", Subject: "lines", Stages: []string{"joined", "event"},
		Figures: map[string]Figure{"left": {Dimension: "length", Like: "hose.length"}},
		Fix:     "renew it", Caution: "keep clear", Rulebook: "workshop", Confidence: Published, Basis: Threshold, Waivable: true,
		Sources: []Source{{Key: "sae-j514", Clause: "table 1"}}, File: "worn.rego",
	}
	if diff := cmp.Diff(want, m.rule("lines", "worn", "worn.rego")); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

func TestRuleCases(t *testing.T) {
	text := replaced(t, wholeMetadata, "level: danger", "cases:", `message: "{subject} has {left} left"`,
		"  bare: {level: advice, message: \"{left}\"}\n#     torn: {level: danger, message: torn, caution: stand back}\n#     cut: {level: danger, message: cut}")
	text = replaced(t, text, "#   subject: lines\n#   stages: [joined, event]\n", "", "#   fix:", "#   subject: lines\n#   stages: [joined, event]\n#   fix:")
	m, err := readMetadata("worn.rego", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	r := m.rule("lines", "worn", "worn.rego")
	if r.Level != LevelDanger {
		t.Errorf("level %v, want the highest of the cases", r.Level)
	}
	for name, want := range map[string]string{"torn": "stand back", "cut": "keep clear"} {
		if c, ok := r.Case(name); !ok || c.Caution != want {
			t.Errorf("case %s: %+v, %v; want the caution %q", name, c, ok, want)
		}
	}
	for _, name := range []string{"", "odd"} {
		if c, ok := r.Case(name); ok {
			t.Errorf("there is a case %q: %+v", name, c)
		}
	}
	if diff := cmp.Diff([]string{"bare", "cut", "torn"}, r.CaseNames()); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

// replaced swaps texts, each of which must be there.
func replaced(t *testing.T, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("no %q in\n%s", pairs[i], text)
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

// TestMetadataRefused shows that what OPA lets pass is an error here, with its
// file and key.
func TestMetadataRefused(t *testing.T) {
	tests := map[string]struct {
		swap []string
		want string
	}{
		"unknown key":        {[]string{"# title", "# titel"}, "worn.rego:2: METADATA: unknown key titel"},
		"unknown custom key": {[]string{"  fix:", "  fixed:"}, "worn.rego:15: METADATA: unknown key fixed"},
		"unknown figure key": {[]string{"like:", "alike:"}, "worn.rego:14: METADATA: unknown key alike"},
		"no title":           {[]string{"# title: Worn\n", ""}, "worn.rego:1: METADATA: title: missing"},
		"no description":     {[]string{"#   It wears.\n", ""}, "description: missing"},
		"no source":          {[]string{"# related_resources:\n#   - ref: sae-j514\n#     description: table 1\n", ""}, "related_resources: missing"},
		"unknown source":     {[]string{"sae-j514", "sae-j999"}, `related_resources: no source "sae-j999"`},
		"no level":           {[]string{"#   level: danger\n", ""}, "custom.level: missing"},
		"unknown level":      {[]string{"danger", "deadly"}, `"deadly" is no level`},
		"no message":         {[]string{"#   message: \"{subject} has {left} left\"\n", ""}, "custom.message: missing"},
		"no subject":         {[]string{"#   subject: lines\n", ""}, "custom.subject: missing"},
		"no stages":          {[]string{"#   stages: [joined, event]\n", ""}, "custom.stages: missing"},
		"unknown stage":      {[]string{"event", "parade"}, `custom.stages: "parade" is none of`},
		"stage twice":        {[]string{"event", "joined"}, "custom.stages: joined twice"},
		"no fix":             {[]string{"#   fix: renew it\n", ""}, "custom.fix: missing"},
		"no rulebook":        {[]string{"#   rulebook: workshop\n", ""}, "custom.rulebook: missing"},
		"no confidence":      {[]string{"#   confidence: published\n", ""}, "custom.confidence: missing"},
		"unknown confidence": {[]string{"confidence: published", "confidence: sure"}, `custom.confidence: "sure" is none of`},
		"unit of another":    {[]string{"length, like: hose.length", "length, unit: bar"}, `custom.figures.left.unit: "bar" is no unit of length; write one of `},
		"unit of a text":     {[]string{"length, like: hose.length", "text, unit: mm"}, `custom.figures.left.unit: text has no units; leave it out`},
		"unit and like":      {[]string{"length, like", "length, unit: mm, like"}, `custom.figures.left: it has both like and unit; keep one`},
		"unknown dimension":  {[]string{"dimension: length", "dimension: colour"}, `custom.figures.left.dimension: "colour" is none of`},
		"figure not used":    {[]string{"{left} left", "none left"}, "custom.figures.left: in no message"},
		"figure not there":   {[]string{"{left} left", "{left} of {whole}"}, "custom.message: {whole} is no figure"},
		"danger, no caution": {[]string{"#   caution: keep clear\n", ""}, "custom.caution: missing"},
		"danger, no basis":   {[]string{"#   basis: threshold\n", ""}, "custom.basis: missing"},
		"danger on practice": {[]string{"confidence: published", "confidence: practice"}, "custom.confidence: practice: a danger on a threshold"},
		"danger from memory": {[]string{"confidence: published", "confidence: memory", "threshold", "hazard"}, "custom.level: danger from memory: advice at most"},
		"fault from memory":  {[]string{"danger", "fault", "confidence: published", "confidence: memory", "#   basis: threshold\n", ""}, "custom.level: fault from memory: advice at most"},
		"fault with basis":   {[]string{"danger", "fault"}, "custom.basis: only a danger has one"},
		"fault not waivable": {[]string{"danger", "fault", "basis: threshold", "waivable: false"}, "custom.waivable: only a danger"},
		"level beside cases": {[]string{"  fix: renew it", "  fix: renew it\n#   cases: {torn: {level: danger, message: \"{left}\"}}"}, "custom.level, custom.message: each case has its own"},
		"case without level": {[]string{"level: danger", "cases: {torn: {message: \"{left}\"}}", "#   message: \"{subject} has {left} left\"\n", ""}, "custom.cases.torn.level: missing"},
		"no METADATA":        {[]string{"# METADATA", "# metadata"}, "worn.rego:1: no METADATA"},
		"not before package": {[]string{"# METADATA\n", "package rules.lines.worn\n# METADATA\n"}, "worn.rego:1: no METADATA"},
		"not YAML":           {[]string{"stages: [joined, event]", "stages: [joined, event"}, "METADATA: did not find expected"},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			_, err := readMetadata("worn.rego", []byte(replaced(t, wholeMetadata, test.swap...)))
			if err == nil || !strings.Contains(err.Error(), test.want) || !strings.HasPrefix(err.Error(), "worn.rego:") {
				t.Errorf("error %v\nwant  %s", err, test.want)
			}
		})
	}
	for _, fine := range [][]string{
		{"confidence: published", "confidence: practice", "threshold", "hazard"},
		{"basis: threshold", "basis: threshold\n#   waivable: false\n#   formerly: [lines.old]"},
		{"danger", "advice", "confidence: published", "confidence: memory", "#   basis: threshold\n", ""},
	} {
		if _, err := readMetadata("worn.rego", []byte(replaced(t, wholeMetadata, fine...))); err != nil {
			t.Errorf("%q: %v", fine, err)
		}
	}
}

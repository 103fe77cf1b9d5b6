package report

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"iter"
	"maps"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
)

// The types below are the part of SARIF 2.1.0 (OASIS, errata 01) that a check
// fills in. Sections in remarks are those of the standard.
type (
	sarifLog struct {
		Schema  string     `json:"$schema"`
		Version string     `json:"version"`
		Runs    []sarifRun `json:"runs"`
	}
	sarifRun struct {
		Tool        sarifTool         `json:"tool"`
		Invocations []sarifInvocation `json:"invocations"`
		ColumnKind  string            `json:"columnKind"`
		Results     []sarifResult     `json:"results"`
		Properties  map[string]any    `json:"properties"`
	}
	sarifTool struct {
		Driver sarifDriver `json:"driver"`
	}
	sarifDriver struct {
		Name            string      `json:"name"`
		Version         string      `json:"version,omitempty"`
		SemanticVersion string      `json:"semanticVersion,omitempty"`
		Rules           []sarifRule `json:"rules"`
	}
	sarifRule struct {
		ID            string         `json:"id"`
		DeprecatedIDs []string       `json:"deprecatedIds,omitempty"`
		Short         sarifText      `json:"shortDescription"`
		Full          sarifText      `json:"fullDescription"`
		Help          sarifText      `json:"help"`
		Configuration sarifLevel     `json:"defaultConfiguration"`
		Properties    map[string]any `json:"properties,omitempty"`
	}
	sarifText struct {
		Text     string `json:"text"`
		Markdown string `json:"markdown,omitempty"`
	}
	sarifLevel struct {
		Level string `json:"level"`
	}
	sarifInvocation struct {
		Successful bool                `json:"executionSuccessful"`
		Execution  []sarifNotification `json:"toolExecutionNotifications"`
		Setting    []sarifNotification `json:"toolConfigurationNotifications"`
	}
	sarifNotification struct {
		Level     string          `json:"level"`
		Message   sarifText       `json:"message"`
		Locations []sarifLocation `json:"locations,omitempty"`
		Rule      *sarifReference `json:"associatedRule,omitempty"`
	}
	sarifReference struct {
		ID string `json:"id"`
	}
	sarifResult struct {
		RuleID       string             `json:"ruleId"`
		RuleIndex    int                `json:"ruleIndex"`
		Level        string             `json:"level"`
		Message      sarifText          `json:"message"`
		Locations    []sarifLocation    `json:"locations"`
		Related      []sarifLocation    `json:"relatedLocations,omitempty"`
		Fingerprints map[string]string  `json:"partialFingerprints"`
		Suppressions []sarifSuppression `json:"suppressions"` // never null: 3.27.23
		Baseline     string             `json:"baselineState,omitempty"`
		Properties   map[string]any     `json:"properties,omitempty"`
	}
	sarifLocation struct {
		ID       int            `json:"id,omitempty"`
		Physical sarifPhysical  `json:"physicalLocation"`
		Logical  []sarifLogical `json:"logicalLocations,omitempty"`
		Message  *sarifText     `json:"message,omitempty"`
	}
	sarifPhysical struct {
		Artifact sarifArtifact `json:"artifactLocation"`
		Region   *sarifRegion  `json:"region,omitempty"`
	}
	sarifArtifact struct {
		URI string `json:"uri"`
	}
	sarifRegion struct {
		StartLine   int        `json:"startLine"`
		StartColumn int        `json:"startColumn"`
		EndLine     int        `json:"endLine"`
		EndColumn   int        `json:"endColumn"`
		Snippet     *sarifText `json:"snippet,omitempty"`
	}
	sarifLogical struct {
		Name string `json:"fullyQualifiedName"`
	}
	sarifSuppression struct {
		Kind          string         `json:"kind"`
		Status        string         `json:"status"`
		Justification string         `json:"justification"`
		Location      *sarifLocation `json:"location,omitempty"`
	}
)

const (
	sarifSchema      = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	sarifFingerprint = "fitup/v1" // of the identity; a change of either is a new version
)

// What can be wrong with the text of a spec, in the form of rules.
var (
	specError = &policies.Rule{
		ID: "spec.error", Area: "spec", Title: "A spec that cannot be read", Level: policies.LevelFault,
		Description: "What is written is not what a spec may say, so nothing in the file was judged, nor in files that need it.",
		Fix:         "write what the message asks for", Confidence: policies.Published,
	}
	specUnclear = &policies.Rule{
		ID: "spec.unclear", Area: "spec", Title: "A word that hides a choice", Level: policies.LevelAdvice,
		Description: "What is written can mean two things that are far apart, so it counts as unknown until it says which.",
		Fix:         "write which of the choices it is", Confidence: policies.Published,
	}
)

var sarifLevels = map[policies.Level]string{policies.LevelDanger: "error", policies.LevelFault: "warning", policies.LevelAdvice: "note"}

// SARIF prints a check in the Static Analysis Results Interchange Format, 2.1.0,
// with what code scanning asks for beyond it. There is no time of day and no
// absolute path in it, so that two runs on one state print the same.
func SARIF(w io.Writer, c *Check, _ Style) error {
	rules := slices.Concat(c.Describe(), judge.Own(), []*policies.Rule{specError, specUnclear})
	slices.SortFunc(rules, func(a, b *policies.Rule) int { return strings.Compare(a.ID, b.ID) })
	s := sarifCheck{Check: c, index: map[string]int{}, covered: map[string]bool{}}
	for i := range c.Covered {
		s.covered[c.Covered[i].Identity()] = true
	}
	run := sarifRun{
		Tool:       sarifTool{sarifDriver{Name: "fitup", Version: c.Version, Rules: each(rules, ruleSARIF)}},
		ColumnKind: "unicodeCodePoints",
		Properties: map[string]any{"date": c.Date.Format(time.DateOnly), "rulesDigest": c.Digest, "closing": Closing},
	}
	if c.ConfigDigest != "" {
		run.Properties["configDigest"] = c.ConfigDigest
	}
	if version := strings.TrimPrefix(c.Version, "v"); semantic.MatchString(version) {
		run.Tool.Driver.SemanticVersion = version
	}
	for i, r := range rules {
		s.index[r.ID] = i
	}
	run.Results = []sarifResult{}
	run.Invocations = []sarifInvocation{{len(c.Faults) == 0, []sarifNotification{}, s.settings()}}
	return writeJSON(w, sarifLog{sarifSchema, "2.1.0", []sarifRun{run}}, map[string]iter.Seq[any]{
		"results":                    lazily(s.items(), func(i sarifItem) sarifResult { return i.make() }),
		"toolExecutionNotifications": chain(lazily(s.execution(), itself), lazily(s.Measures, untold)),
	})
}

var semantic = regexp.MustCompile(`^\d+\.\d+\.\d+(-[0-9A-Za-z.-]+)?(\+[0-9A-Za-z.-]+)?$`)

type sarifCheck struct {
	*Check
	index   map[string]int  // of rules, by id
	covered map[string]bool // identities that the baseline covers
}

// A sarifItem is a result that is made when its turn comes, and where it stands.
type sarifItem struct {
	uri  string
	line int
	rule string
	make func() sarifResult
}

func itemOf(at judge.Location, rule string, result func() sarifResult) sarifItem {
	return sarifItem{uriOf(at.File), at.Line, rule, result}
}

// items are findings and what is wrong with texts, by place.
func (s *sarifCheck) items() []sarifItem {
	var all []sarifItem
	for _, p := range s.Problems {
		all = append(all, itemOf(p.Location, specError.ID, func() sarifResult { return s.problem(specError, p) }))
	}
	for _, n := range s.Notes {
		all = append(all, itemOf(n.Location, specUnclear.ID, func() sarifResult { return s.problem(specUnclear, n) }))
	}
	for _, list := range [][]judge.Finding{s.Findings, s.Waived, s.Covered} {
		for i := range list {
			all = append(all, itemOf(list[i].Location, list[i].Rule, func() sarifResult { return s.finding(list[i]) }))
		}
	}
	if s.Change != nil {
		for _, gone := range s.Change.Goes {
			if gone.Other == judge.SetAside || gone.Other == judge.Covered {
				continue // it is there, with its suppression
			}
			all = append(all, itemOf(gone.Location, gone.Rule, func() sarifResult {
				r := s.finding(gone.Finding)
				r.Baseline = "absent"
				r.Properties["standing"] = string(gone.Other)
				return r
			}))
		}
	}
	slices.SortStableFunc(all, func(a, b sarifItem) int {
		return cmp.Or(strings.Compare(a.uri, b.uri), cmp.Compare(a.line, b.line), strings.Compare(a.rule, b.rule))
	})
	return all
}

func (s *sarifCheck) finding(f judge.Finding) sarifResult {
	r := s.result(f.Rule, f.Identity(), f.Level, f.Location, f.Excerpt)
	r.Message.Text = unlinked(sentences(f.Message, label("caution", f.Caution), label("fix", f.Fix)))
	for i, also := range slices.Concat(f.Also, f.See) {
		at := locationSARIF(also, "")
		at.ID, at.Message = i+1, &sarifText{Text: unlinked(Plain(also.Path))}
		r.Related = append(r.Related, at)
	}
	r.Properties = map[string]any{"level": f.Level.String(), "confidence": string(f.Confidence), "rulebook": f.Rulebook}
	for name, value := range map[string][]string{"guesses": f.Guessed, "seenBy": f.SeenBy} {
		if len(value) > 0 {
			r.Properties[name] = value
		}
	}
	if f.With != "" {
		r.Properties["onTrialWith"] = f.With
	}
	switch {
	case f.Waiver != nil:
		at := locationSARIF(f.Waiver.Location, "")
		why := sentences(f.Waiver.Why, "until "+f.Waiver.Until.Format(time.DateOnly))
		r.Suppressions = append(r.Suppressions, sarifSuppression{"inSource", "accepted", why, &at})
	case s.covered[f.Identity()]:
		why := sentences("covered by the baseline " + s.Report.Baseline.Name + " until " + s.Report.Baseline.Until.Format(time.DateOnly))
		r.Suppressions = append(r.Suppressions, sarifSuppression{"external", "accepted", why, nil})
	}
	return r
}

func (s *sarifCheck) problem(rule *policies.Rule, p judge.Problem) sarifResult {
	r := s.result(rule.ID, p.Identity(), rule.Level, p.Location, p.Excerpt)
	if rule == specError {
		r.Level = "error"
	}
	r.Message.Text = unlinked(sentences(p.Message, label("wanted", p.Want)))
	return r
}

func (s *sarifCheck) result(rule, identity string, level policies.Level, at judge.Location, excerpt string) sarifResult {
	sum := sha256.Sum256([]byte(identity))
	r := sarifResult{
		RuleID: rule, RuleIndex: s.index[rule], Level: sarifLevels[level],
		Locations:    []sarifLocation{locationSARIF(at, excerpt)},
		Fingerprints: map[string]string{sarifFingerprint: hex.EncodeToString(sum[:16])},
		Suppressions: []sarifSuppression{},
	}
	if s.Change != nil {
		r.Baseline = "new"
		if _, known := slices.BinarySearch(s.Change.Known, identity); known {
			r.Baseline = "unchanged"
		}
	}
	return r
}

func uriOf(file string) string { return (&url.URL{Path: file}).String() }

func locationSARIF(at judge.Location, excerpt string) sarifLocation {
	l := sarifLocation{Physical: sarifPhysical{Artifact: sarifArtifact{uriOf(at.File)}}}
	if at.Line > 0 {
		l.Physical.Region = &sarifRegion{StartLine: at.Line, StartColumn: at.Column, EndLine: at.EndLine, EndColumn: at.EndColumn}
		if excerpt != "" {
			l.Physical.Region.Snippet = &sarifText{Text: excerpt}
		}
	}
	if at.Path != "" {
		l.Logical = []sarifLogical{{at.Path}}
	}
	return l
}

// execution tells what broke, and what was not judged or read.
func (s *sarifCheck) execution() []sarifNotification {
	var out []sarifNotification
	for _, f := range s.Faults {
		n := notification("error", "a rule is broken: "+f.Message)
		if _, known := s.index[f.Rule]; known {
			n.Rule = &sarifReference{f.Rule}
		}
		out = append(out, n)
	}
	for _, name := range s.Skipped {
		out = append(out, notification("error", "not judged: "+name+": an error in it, or in a file that it needs"))
	}
	for _, what := range s.Unread {
		out = append(out, notification("error", "not read: "+what))
	}
	return out
}

// untold tells what could not be told.
func untold(m judge.Measure) sarifNotification {
	n := notification("note", "could not tell: "+m.Path+" is not written; "+Waits(m))
	if m.Dangers > 0 {
		n.Level = "warning"
	}
	n.Locations = []sarifLocation{locationSARIF(m.Location, "")}
	return n
}

// settings tells what was taken away from the judgement.
func (s *sarifCheck) settings() []sarifNotification {
	out := []sarifNotification{}
	for _, what := range TakenAway(s.Taken) {
		out = append(out, notification("warning", what))
	}
	if s.Change != nil {
		for _, shift := range s.Change.Shifts {
			out = append(out, notification("warning", shiftText(shift)))
		}
	}
	return out
}

func notification(level, text string) sarifNotification {
	return sarifNotification{Level: level, Message: sarifText{Text: unlinked(sentences(text))}}
}

func ruleSARIF(r *policies.Rule) sarifRule {
	lines := []string{label("why", flat(r.Description)), label("caution", r.Caution), label("fix", r.Fix)}
	for _, name := range slices.Sorted(maps.Keys(r.Limits)) {
		l := r.Limits[name]
		line := fmt.Sprintf("limit: %s = %s, by %s", name, cmp.Or(l.Was, l.Written), SourceShort(l.Source, l.Clause))
		if l.Was != "" {
			line += fmt.Sprintf("; in force is %s, set by the configuration", l.Written)
		}
		lines = append(lines, line)
	}
	for _, source := range r.Sources {
		lines = append(lines, label("source", citation(source)))
	}
	lines = slices.DeleteFunc(lines, func(s string) bool { return s == "" })
	marked := make([]string, len(lines))
	for i, l := range lines {
		marked[i] = "- " + markdown(l)
	}
	out := sarifRule{
		ID: r.ID, DeprecatedIDs: r.Formerly,
		Short: sarifText{Text: sentences(r.Title)}, Full: sarifText{Text: sentences(flat(r.Description))},
		Help:          sarifText{Text: strings.Join(lines, "\n"), Markdown: strings.Join(marked, "\n")},
		Configuration: sarifLevel{sarifLevels[r.Level]},
		Properties: map[string]any{
			"tags": []string{r.Area, r.Level.String()}, "precision": precisions[r.Confidence], "problem.severity": severities[r.Level],
		},
	}
	if r == specError {
		out.Configuration.Level, out.Properties["problem.severity"] = "error", "error"
	}
	return out
}

// Words of code scanning for what a rule rests on, and for its level.
var (
	precisions = map[policies.Confidence]string{policies.Published: "very-high", policies.Practice: "high", policies.Memory: "medium"}
	severities = map[policies.Level]string{policies.LevelDanger: "error", policies.LevelFault: "warning", policies.LevelAdvice: "recommendation"}
)

// unlinked keeps a text from being read as one with links in it (3.11.6).
func unlinked(text string) string {
	if !strings.Contains(text, "](") {
		return text
	}
	return strings.NewReplacer(`\`, `\\`, "[", `\[`, "]", `\]`).Replace(text)
}

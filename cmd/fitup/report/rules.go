package report

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/policies/tables"
)

// A Rules is a list of rules to print: in full, or a line each.
type Rules struct {
	Rules   []*policies.Rule
	Full    bool
	Config  string                    // the configuration that holds; "" for none
	Skipped func(*policies.Rule) bool // whether it says not to ask a rule; nil for none
}

// skips reports whether the configuration says not to ask a rule.
func (r *Rules) skips(rule *policies.Rule) bool { return r.Skipped != nil && r.Skipped(rule) }

// RulesForms are the forms that rules can be printed in.
var RulesForms = []Form[*Rules]{{"text", "for a reader", whole(RulesText)}, {"json", "all that is known of each", whole(RulesJSON)}}

// RulesText prints rules for a reader.
func RulesText(r *Rules, s Style) ([]byte, error) {
	p := &page{width: s.Width, colour: s.Colour}
	if !r.Full {
		for _, rule := range r.Rules {
			// One line each, so that it can be searched.
			title := rule.Title
			if rule.Rulebook != policies.Workshop {
				title += fmt.Sprintf(" (%s)", rule.Rulebook)
			}
			if r.skips(rule) {
				title += fmt.Sprintf(" (not asked: %s)", r.Config)
			}
			p.line("%-34s %s  %s", rule.ID, p.paint(levelColours[rule.Level], fmt.Sprintf("%-6s", rule.Level)), title)
		}
		return []byte(p.String()), nil
	}
	for _, rule := range r.Rules {
		p.gap()
		p.rule(rule)
		if r.skips(rule) {
			p.item(0, "not asked:", "%s says to skip it", r.Config)
		}
	}
	return []byte(p.String()), nil
}

func (p *page) rule(r *policies.Rule) {
	p.para(0, 2, "%s: %s", p.paint(bold, r.ID), r.Title)
	p.gap()
	for text := range strings.SplitSeq(strings.TrimSpace(r.Description), "\n\n") {
		p.para(0, 0, "%s", strings.Join(strings.Fields(text), " "))
	}
	p.gap()
	for _, name := range r.CaseNames() {
		c, _ := r.Case(name)
		label := c.Level.String() + ":"
		if name != "" {
			label = fmt.Sprintf("%s (%s):", c.Level, strings.ReplaceAll(name, "_", " "))
		}
		p.item(0, label, "%s", c.Message)
		if name != "" && c.Caution != "" && c.Caution != r.Caution {
			p.item(2, "caution:", "%s", c.Caution)
		}
	}
	if r.Caution != "" {
		p.item(0, "caution:", "%s", r.Caution)
	}
	p.item(0, "judges:", "%s", strings.ReplaceAll(r.Subject, "_", " "))
	p.item(0, "when:", "%s", stages(r.Stages))
	p.item(0, "fix:", "%s", r.Fix)
	for _, name := range slices.Sorted(maps.Keys(r.Limits)) {
		l := r.Limits[name]
		p.item(0, "limit:", "%s = %s; %s (%s)", name, cmp.Or(l.Was, l.Written), strings.Join(strings.Fields(l.Why), " "), SourceShort(l.Source, l.Clause))
		if l.Was != "" {
			p.item(2, "in force:", "%s, set by the configuration in place of %s", l.Written, l.Was)
		}
		p.para(2, 2, "to set your own: [limits.%s] %s = \"...\"", r.ID, name)
	}
	for _, s := range r.Sources {
		p.item(0, "source:", "%s", citation(s))
	}
	p.item(0, "confidence:", "%s", confidences[r.Confidence])
	if r.Rulebook != policies.Workshop {
		p.item(0, "rulebook:", "%s; a car is held to it if its rulebooks name it", r.Rulebook)
	}
	if !r.Waivable {
		p.item(0, "waiver:", "a finding of this rule cannot be waived")
	}
	if len(r.Formerly) > 0 {
		p.item(0, "formerly:", "%s", strings.Join(r.Formerly, ", "))
	}
}

var confidences = map[policies.Confidence]string{
	policies.Published: "published: every figure can be looked up",
	policies.Practice:  "common practice in the trade",
	policies.Memory:    "from memory: look it up before you rely on it",
}

func stages(all []string) string {
	if len(all) == len(policies.Stages) {
		return "always"
	}
	return strings.ReplaceAll(strings.Join(all, ", "), "_", " ")
}

// citation names a source in full.
func citation(s policies.Source) string {
	cited, _ := tables.Source(s.Key)
	text := cmp.Or(cited.Title, s.Key)
	if cited.Edition != "" {
		text += ", " + cited.Edition
	}
	if s.Clause != "" {
		text += ": " + s.Clause
	}
	if cited.Seen != "" {
		text += " <" + cited.Seen + ">"
	}
	return text
}

type (
	jsonRule struct {
		ID          string               `json:"id"`
		Title       string               `json:"title"`
		Description string               `json:"description"`
		Level       string               `json:"level"`
		Cases       map[string]jsonCase  `json:"cases,omitempty"`
		Message     string               `json:"message,omitempty"`
		Subject     string               `json:"subject"`
		Stages      []string             `json:"stages"`
		Fix         string               `json:"fix"`
		Caution     string               `json:"caution,omitempty"`
		Limits      map[string]jsonLimit `json:"limits,omitempty"`
		Sources     []jsonSource         `json:"sources"`
		Confidence  string               `json:"confidence"`
		Basis       string               `json:"basis,omitempty"`
		Rulebook    string               `json:"rulebook"`
		Waivable    bool                 `json:"waivable"`
		Formerly    []string             `json:"formerly,omitempty"`
		Own         bool                 `json:"own"`
		Skipped     bool                 `json:"skipped,omitempty" jsonschema_description:"the configuration says not to ask it"`
	}
	jsonCase struct {
		Level   string `json:"level"`
		Message string `json:"message"`
		Caution string `json:"caution,omitempty"`
	}
	jsonLimit struct {
		Value   float64    `json:"value"`
		Unit    string     `json:"unit"`
		Written string     `json:"written"`
		Was     string     `json:"was,omitempty" jsonschema_description:"before the configuration set another; the source is of this one"`
		Looser  string     `json:"looser"`
		Why     string     `json:"why"`
		Source  jsonSource `json:"source"`
	}
)

// RulesJSON prints all that is known of rules, for programs.
func RulesJSON(r *Rules, _ Style) ([]byte, error) {
	return indented(each(r.Rules, func(rule *policies.Rule) jsonRule {
		out := ruleJSON(rule)
		out.Skipped = r.skips(rule)
		return out
	}))
}

func ruleJSON(r *policies.Rule) jsonRule {
	out := jsonRule{
		ID: r.ID, Title: r.Title, Description: r.Description, Level: r.Level.String(), Message: r.Message, Subject: r.Subject,
		Stages: list(r.Stages), Fix: r.Fix, Caution: r.Caution, Sources: each(r.Sources, sourceJSON), Confidence: string(r.Confidence),
		Basis: string(r.Basis), Rulebook: r.Rulebook, Waivable: r.Waivable, Formerly: r.Formerly, Own: r.Own,
		Cases: map[string]jsonCase{}, Limits: map[string]jsonLimit{},
	}
	for name, c := range r.Cases {
		out.Cases[name] = jsonCase{c.Level.String(), c.Message, c.Caution}
	}
	for name, l := range r.Limits {
		out.Limits[name] = jsonLimit{l.Value, l.Unit, l.Written, l.Was, l.Looser, l.Why, sourceJSON(policies.Source{Key: l.Source, Clause: l.Clause})}
	}
	return out
}
